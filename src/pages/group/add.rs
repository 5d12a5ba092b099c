//! The sheet that puts many ewes in at once: a list is typed or they are picked, what it comes to is shown, and one press does it all or nothing.

use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::flock::{Ewe, Flock};
use yeanling_core::units::{Moment, TagList, parse_tags};
use yeanling_words::{animals, group as words, rejections};

use super::{day_of, on_day};
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::pick_many::{self, Pickable};
use crate::view::View;
use crate::{Action, Button, Effect};

const TAGS: &str = "add-tags";
const SINCE: &str = "add-since";
const EWES: &str = "add-ewe";

/// What a typed list of tags comes to in this flock.
struct Listed {
    known: Vec<EweId>,
    fresh: Vec<String>,
    list: TagList,
}

fn listed(flock: &Flock, text: &str) -> Listed {
    let list = parse_tags(text);
    let (mut known, mut fresh) = (Vec::new(), Vec::new());
    for tag in &list.tags {
        let same =
            |ewe: &&Ewe| ewe.lives() && ewe.tag.as_ref().is_some_and(|there| there.eq_ignore_ascii_case(tag));
        match flock.ewes.values().find(same) {
            Some(ewe) => known.push(ewe.id),
            None => fresh.push(tag.clone()),
        }
    }
    Listed { known, fresh, list }
}

/// The living ewes that are not in the group.
fn pickable(view: &View, group: GroupId) -> Vec<EweId> {
    let is_here = |ewe: EweId| view.flock.group_of(ewe).is_some_and(|here| here.id == group);
    let living = view.flock.ewes.values().filter(|ewe| ewe.lives()).map(|ewe| ewe.id);
    living.filter(|ewe| !is_here(*ewe)).collect()
}

/// What was typed and picked, each ewe once.
fn all(view: &View, fields: &Fields, group: GroupId) -> Listed {
    let mut all = listed(view.flock, &fields.text(TAGS, ""));
    for ewe in pick_many::picked(fields, EWES, &pickable(view, group)) {
        if !all.known.contains(&ewe) {
            all.known.push(ewe);
        }
    }
    all
}

/// When the ram came to them last.
fn ram_came(view: &View, group: GroupId) -> Option<Moment> {
    let group = view.flock.groups.get(&group)?;
    group.ram_times().last().map(|(came, _)| *came)
}

/// The day that stands there until another is typed: the ram's, else today.
fn first_day(view: &View, group: GroupId) -> String {
    day_of(ram_came(view, group).unwrap_or(view.now))
}

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, group: GroupId) -> SheetPage {
    let text = fields.text(TAGS, "");
    let Listed { known, fresh, list } = all(view, fields, group);
    let tags =
        Field::new(words::TAGS, FieldKind::Long, text).hint(words::TAGS_HINT).error(fields.error(TAGS));
    let day = Field::new(words::SINCE, FieldKind::Date, fields.text(SINCE, &first_day(view, group)));
    let lines = words::preview(known.len(), &fresh, &list.repeated, &list.unread);
    let blocks = lines.into_iter().fold(Blocks::new().field(TAGS, tags), Blocks::text).field(SINCE, day);
    let here = pickable(view, group).into_iter().map(|ewe| {
        let other = view.flock.group_of(ewe).map(|group| group.name.clone());
        Pickable { ewe, note: other.unwrap_or_default() }
    });
    let grid = pick_many::blocks(view, fields, EWES, here.collect());
    let blocks = blocks.section("pick", words::PICK, grid);
    let count = known.len() + fresh.len();
    let save = (count > 0).then(|| Button::new("save", words::put_in(count), Action::Save).filled());
    SheetPage::new(words::ADD_ASK, save.into_iter().fold(blocks, Blocks::button))
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft, group: GroupId) -> Vec<Effect> {
    draft.top_mut().all_right();
    let fields = draft.top();
    let day = fields.text(SINCE, &first_day(view, group));
    // The ram's own instant, where his day was left as it stood: else the morning of that day.
    let at = ram_came(view, group).filter(|came| day_of(*came) == day).or_else(|| on_day(view, &day));
    let Some(at) = at else { return draft.say_wrong(TAGS, words::NO_DAY) };
    let notings = notings(view, &all(view, fields, group), group, at);
    match view.allow_each(&notings) {
        Ok(()) => {
            draft.close();
            vec![Effect::Note(notings)]
        }
        Err((place, rejection)) => {
            let said = rejections::rejection(&rejection, view.now, view.system());
            let who = notings.get(place).and_then(|noting| known(view, &noting.event));
            draft.say_wrong(TAGS, who.map_or_else(|| said.clone(), |who| format!("{who}: {said}")))
        }
    }
}

/// What is noted: those of the book join, those new to it come and join.
fn notings(view: &View, listed: &Listed, group: GroupId, at: Moment) -> Vec<Noting> {
    let joins = |ewe| view.noting_at(Event::JoinedGroup { ewe, group }, at);
    let fresh = listed.fresh.iter().flat_map(|tag| {
        let came = view.noting_at(Event::EweCame { tag: Some(tag.clone()) }, at);
        let joins = joins(came.id.as_ewe());
        [came, joins]
    });
    listed.known.iter().map(|ewe| joins(*ewe)).chain(fresh).collect()
}

/// The name of the ewe that was to join, if the book has her.
fn known(view: &View, event: &Event) -> Option<String> {
    let Event::JoinedGroup { ewe, .. } = event else { return None };
    view.flock.ewe(*ewe).map(animals::ewe)
}
