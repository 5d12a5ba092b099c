//! Two living ewes of one tag, as two phones make them: asked about pair by pair, joined by an entry.

use std::collections::BTreeMap;

use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Animal, Event, EweId};
use yeanling_core::flock::{Ewe, Flock};
use yeanling_core::units::Moment;

use crate::farm::use_farm;
use crate::parts::{Button, Buttons, Card, Said, Section, Weight, each, live};
use crate::words::common::day_and_clock;
use crate::words::hand_over as words;

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

/// Asks about every pair that was not kept apart in this visit.
#[component]
pub(super) fn Twice() -> impl IntoView {
    let farm = use_farm();
    let apart = RwSignal::new(Vec::<(EweId, EweId)>::new());
    let pairs = Memo::new(move |_| {
        let apart = apart.get();
        let mut pairs = farm.with(|ground| pairs(&ground.flock));
        pairs.retain(|pair| !apart.contains(&(pair.older.ewe, pair.newer.ewe)));
        pairs
    });
    let some = Memo::new(move |_| pairs.with(|pairs| !pairs.is_empty()));
    let ask = move |pair: Pair| {
        let (older, newer) = (pair.older.ewe, pair.newer.ewe);
        let now = farm.peek_now();
        let told = |record: &Record| words::record(&day_and_clock(record.came, now), record.lambs);
        let (told_older, told_newer) = (told(&pair.older), told(&pair.newer));
        let join = move || {
            farm.tap(Event::SameAnimal { keep: Animal::Ewe(older), also: Animal::Ewe(newer) });
        };
        view! {
            <Card>
                <p><Said text=words::same_tag(&pair.tag) /></p>
                <ol class="pair">
                    <li>{told_older}</li>
                    <li>{told_newer}</li>
                </ol>
                <Buttons columns=2>
                    <Button label=words::SAME on_press=join weight=Weight::Filled />
                    <Button
                        label=words::NOT_SAME
                        on_press=move || apart.update(|apart| apart.push((older, newer)))
                    />
                </Buttons>
            </Card>
        }
        .into_any()
    };
    live(move || {
        some.get().then(|| {
            view! {
                <Section title=words::SAME_HEAD>
                    <p class="small-print">{words::SAME_SUB}</p>
                    {each(move || pairs.get(), |pair| format!("{} {}", pair.older.ewe, pair.newer.ewe), ask)}
                </Section>
            }
        })
        .into_any()
    })
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
        ewes.arrange_by_key(|ewe| (ewe.came, ewe.id));
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
