//! What stands on a page as a limit is the farm's own: with other limits no page holds one of those before.
//!
//! A time that has passed can be as long as a limit by chance; a minute later it is not.

use std::collections::BTreeSet;

use yeanling_core::book::{Event, Sign};
use yeanling_core::settings::{Choice, FarmSettings, Limit};
use yeanling_core::units::{Moment, System};
use yeanling_pages::{Page, sample};
use yeanling_words::common::span;

use crate::phone::Phone;
use crate::reach::{pressables, texts};
use crate::unusual::{self, every_limit, length};

fn choose(settings: &FarmSettings, phone: &mut Phone) {
    let FarmSettings { limits, labor, stay, .. } = settings;
    for choice in [Choice::Limits(*limits), Choice::LaborLimits(*labor), Choice::PenStay(*stay)] {
        phone.note(Event::Chose(choice));
    }
}

/// Returns a farm's limits as people read them.
fn told(settings: &FarmSettings) -> Vec<String> {
    let told = |limit: Limit| {
        let length = length(settings, limit);
        if Limit::OF_THE_STAY.contains(&limit) {
            return vec![format!("{} hours", length.num_hours())];
        }
        vec![span(length), format!("{} minutes", length.num_minutes())]
    };
    every_limit().flat_map(told).collect()
}

/// Returns every text of a page and of the reasons that can be asked for on it.
fn all_texts(phone: &Phone, page: &Page) -> BTreeSet<String> {
    let mut all: BTreeSet<String> = texts(page).into_iter().collect();
    for one in pressables(page).into_iter().filter(|one| one.name.starts_with("why?")) {
        let mut other = phone.clone();
        other.act(&one.does);
        all.extend(texts(&other.page()));
    }
    all
}

/// A barn in which every limit has something to be told of.
fn barn() -> Phone {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut phone = Phone::with(sample::book(begins, System::Metric), begins);
    let ewe = phone.ewe("901");
    phone.note(Event::SignSeen { ewe, sign: Sign::Restless });
    let ewe = phone.ewe("902");
    phone.note(Event::StrainingSeen { ewe });
    let ewe = phone.ewe("903");
    phone.lamb(ewe);
    phone.later(7);
    phone
}

#[test]
fn no_page_holds_a_limit_that_is_not_the_farms() {
    let (first, second) = (unusual::first(), unusual::second());
    let mut found = BTreeSet::new();
    let mut phones = Vec::new();
    for wait in [0, 1] {
        for set in [&first, &second] {
            let mut phone = barn();
            phone.later(wait);
            choose(set, &mut phone);
            phones.push(phone);
        }
    }
    let screens = phones[0].screens();
    for screen in screens {
        let said: Vec<BTreeSet<String>> = phones
            .iter_mut()
            .map(|phone| {
                phone.open(screen);
                let page = phone.page();
                all_texts(phone, &page)
            })
            .collect();
        let holds = |texts: &BTreeSet<String>, limit: &str| texts.iter().any(|text| holds(text, limit));
        for limit in told(&first) {
            let (now, later) = (holds(&said[0], &limit), holds(&said[2], &limit));
            if now && later {
                found.insert(limit.clone());
                let stays = holds(&said[1], &limit) && holds(&said[3], &limit);
                let says: Vec<_> = said[1].iter().filter(|text| self::holds(text, &limit)).collect();
                assert!(!stays, "{screen:?} says {limit:?} with other limits, too: {says:?}");
            }
        }
    }
    assert!(found.len() >= 12, "only these limits were told anywhere: {found:?}");
}

/// Says whether a figure stands in a text, and not as a part of a longer one.
fn holds(text: &str, figure: &str) -> bool {
    let text = text.replace('\u{a0}', " ");
    text.match_indices(figure).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + figure.len()..].chars().next();
        // The minutes behind hours are a part of a longer time.
        let of_hours = text[..at].ends_with(" h ");
        !of_hours
            && !before.is_some_and(|c| c.is_ascii_digit() || c == '.')
            && !after.is_some_and(char::is_alphanumeric)
    })
}

#[test]
fn a_figure_is_told_from_a_part_of_another() {
    assert!(holds("After 23\u{a0}min: help it.", "23 min"));
    assert!(!holds("After 123 min", "23 min"));
}
