//! Two living ewes of one tag, as two phones make them: asked about pair by pair, joined by an entry.

use std::collections::BTreeMap;

use yeanling_core::book::{Animal, Event, EweId};
use yeanling_core::flock::{Ewe, Flock};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Moment;
use yeanling_words::common::day_and_clock;
use yeanling_words::share as words;

use super::Does as Only;
use crate::block::{Item, ListLook};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does};

/// Two records that may be of one ewe.
#[derive(Clone, Debug, PartialEq)]
struct Pair {
    tag: String,
    older: Record,
    newer: Record,
}

/// One of them, with what tells it from the other.
#[derive(Clone, Debug, PartialEq)]
struct Record {
    ewe: EweId,
    came: Moment,
    lambs: usize,
}

/// Asks about every pair that was not kept apart since the screen was opened.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let mut pairs = pairs(view.flock);
    pairs.retain(|pair| !draft.share.apart.contains(&(pair.older.ewe, pair.newer.ewe)));
    if pairs.is_empty() {
        return Blocks::new();
    }
    let blocks = pairs.iter().fold(Blocks::new().small(words::SAME_SUB), |blocks, pair| {
        blocks.card(format!("twice-{}-{}", pair.older.ewe, pair.newer.ewe), ask(view, pair))
    });
    Blocks::new().section("twice", words::SAME_HEAD, blocks)
}

/// Asks about a pair.
fn ask(view: &View, pair: &Pair) -> Blocks {
    let (older, newer) = (pair.older.ewe, pair.newer.ewe);
    let told =
        |record: &Record| Item::new(words::record(&day_and_clock(record.came, view.now), record.lambs));
    let join = Event::SameAnimal { keep: Animal::Ewe(older), also: Animal::Ewe(newer) };
    let same = Button::new("same", words::SAME, Action::Note(vec![join])).filled();
    let apart = Action::Does(Does::Share(Only::Apart(older, newer)));
    Blocks::new()
        .text(words::same_tag(&pair.tag))
        .list(ListLook::Pair, [told(&pair.older), told(&pair.newer)])
        .buttons(2, [same, Button::new("apart", words::NOT_SAME, apart)])
}

/// Returns the tags that more than one living ewe carries.
pub(super) fn tags_twice(flock: &Flock) -> Vec<String> {
    let mut tags: Vec<String> = pairs(flock).into_iter().map(|pair| pair.tag).collect();
    tags.dedup();
    tags
}

/// Returns living ewes of one tag, each with the one that came first; capitals make no difference.
fn pairs(flock: &Flock) -> Vec<Pair> {
    let mut by_tag: BTreeMap<String, Vec<&Ewe>> = BTreeMap::new();
    for ewe in flock.ewes.values().filter(|ewe| ewe.lives()) {
        if let Some(tag) = ewe.tag.as_deref().map(str::trim).filter(|tag| !tag.is_empty()) {
            by_tag.entry(tag.to_lowercase()).or_default().push(ewe);
        }
    }
    let record = |ewe: &Ewe| Record {
        ewe: ewe.id,
        came: ewe.came,
        lambs: flock.litters_of(ewe.id).iter().map(|litter| litter.lambs.len()).sum(),
    };
    let mut pairs = Vec::new();
    for ewes in by_tag.values_mut() {
        ewes.sort_small_by_key(|ewe| (ewe.came, ewe.id));
        let Some((oldest, others)) = ewes.split_first() else { continue };
        pairs.extend(others.iter().map(|other| Pair {
            tag: oldest.tag.clone().unwrap_or_default(),
            older: record(oldest),
            newer: record(other),
        }));
    }
    pairs
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flock(tags: &[(u128, &str)]) -> Flock {
        let mut flock = Flock::default();
        for (number, tag) in tags {
            let id = EweId::from_uuid(uuid::Uuid::from_u128(*number));
            let came = Moment::from_unix_milliseconds(i64::try_from(*number).unwrap_or_default(), 0);
            flock.ewes.insert(id, Ewe { tag: Some((*tag).to_owned()), ..Ewe::new(id, came) });
        }
        flock
    }

    #[test]
    fn ewes_of_one_tag_are_paired_with_the_one_that_came_first() {
        let flock = flock(&[(3, "a7"), (1, "A7"), (2, "A7 "), (4, "8")]);
        let pairs = pairs(&flock);
        let numbers: Vec<(u128, u128)> = pairs
            .iter()
            .map(|pair| (pair.older.ewe.as_uuid().as_u128(), pair.newer.ewe.as_uuid().as_u128()))
            .collect();
        assert_eq!(numbers, [(1, 2), (1, 3)]);
        assert_eq!(tags_twice(&flock), ["A7"]);
    }
}
