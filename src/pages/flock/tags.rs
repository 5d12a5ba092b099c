//! What is typed into the field that finds: a tag or a name, or a range or list of tags, such as "1-18".

use std::collections::BTreeSet;

use yeanling_core::units::parse_tags;
use yeanling_words::animals;

use crate::everyone::Found;
use crate::view::View;
use crate::{Action, Does, Screen};

/// Returns the tags of a range or list, in small and large letters as typed; nothing for a single name, also one of several
/// words, such as "41 blue".
pub(super) fn listed(part: &str) -> Option<Vec<String>> {
    let list = parse_tags(animals::tag_of(part));
    let numbers = list.tags.iter().all(|tag| tag.contains(|c: char| c.is_ascii_digit()));
    (list.unread.is_empty() && list.tags.len() > 1 && numbers).then_some(list.tags)
}

/// Says whether what is typed as a range can be the tag of one animal.
pub(super) fn may_be_one(part: &str) -> bool {
    !part.contains(|c: char| c.is_whitespace() || matches!(c, ',' | ';'))
}

/// Returns the tags of a list that no living ewe or ram wears.
pub(super) fn fresh(view: &View, listed: &[String]) -> Vec<String> {
    let ewes = view.flock.ewes.values().chain(view.flock.rams.values()).filter(|ewe| ewe.lives());
    let worn: BTreeSet<String> = ewes.filter_map(|ewe| ewe.tag.as_deref()).map(str::to_lowercase).collect();
    listed.iter().filter(|tag| !worn.contains(&tag.to_lowercase())).cloned().collect()
}

/// Returns who is found by what is typed: by a list those that wear one of its tags, else whoever has it in a name.
pub(super) fn find(view: &View, part: &str) -> Found {
    let Some(listed) = listed(part) else { return view.everyone.find(part) };
    let taken = fresh(view, &listed).is_empty();
    let tags = listed.iter().map(|tag| tag.to_lowercase()).collect();
    Found { taken, ..view.everyone.tagged(view.flock, &tags) }
}

/// Returns what Enter does: it adds what nobody wears, a number or what nothing is found by; else it leads to the one that is
/// called just so, or to the only one found.
pub(super) fn enter(view: &View, part: &str, found: &Found) -> Option<Action> {
    if listed(part).is_some() && !animals::is_of_ram(part) {
        return (!found.taken).then_some(Action::Does(Does::AddMany));
    }
    let tag = animals::tag_of(part);
    let number = !tag.is_empty() && tag.bytes().all(|byte| byte.is_ascii_digit());
    if !tag.is_empty() && !found.taken && (number || found.is_empty()) {
        let ram = animals::is_of_ram(part);
        return Some(Action::Does(if ram { Does::AddRam } else { Does::AddFound }));
    }
    let one = found.only().or_else(|| view.everyone.called(view.flock, part));
    one.map(|animal| Action::Go(Screen::of(animal)))
}
