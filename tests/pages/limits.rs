//! What stands on a page as a limit is the farm's own: with other limits no page holds one of those before.
//!
//! A time that has passed can be as long as a limit by chance; a minute later it is not.

use std::collections::BTreeSet;

use yeanling_core::book::{Event, Sign};
use yeanling_core::practice::{Choice, LaborLimits, Limits, PenStay};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_pages::{Page, made_up};
use yeanling_words::common::span;

use crate::phone::Phone;
use crate::reach::{pressables, texts};

/// Limits of which none is usual and none is another's.
struct Set {
    limits: Limits,
    labor: LaborLimits,
    stay: PenStay,
}

const FIRST: Set = Set {
    limits: Limits {
        up_minutes: 23,
        help_minutes: 47,
        red_minutes: 131,
        last_call_minutes: 397,
        navel_again_minutes: 283,
    },
    labor: LaborLimits {
        look_minutes: 41,
        restless_minutes: 317,
        hand_check_minutes: 19,
        step_in_minutes: 53,
        progress_minutes: 17,
        neck_minutes: 7,
        put_right_minutes: 11,
        next_lamb_minutes: 29,
        next_check_minutes: 59,
        afterbirth_ask_minutes: 331,
        afterbirth_late_minutes: 677,
        afterbirth_vet_minutes: 1009,
    },
    stay: PenStay { single_hours: 31, twins_hours: 67, more_hours: 109 },
};

const SECOND: Set = Set {
    limits: Limits {
        up_minutes: 26,
        help_minutes: 44,
        red_minutes: 127,
        last_call_minutes: 389,
        navel_again_minutes: 277,
    },
    labor: LaborLimits {
        look_minutes: 37,
        restless_minutes: 313,
        hand_check_minutes: 21,
        step_in_minutes: 51,
        progress_minutes: 18,
        neck_minutes: 8,
        put_right_minutes: 13,
        next_lamb_minutes: 33,
        next_check_minutes: 57,
        afterbirth_ask_minutes: 337,
        afterbirth_late_minutes: 683,
        afterbirth_vet_minutes: 1013,
    },
    stay: PenStay { single_hours: 34, twins_hours: 71, more_hours: 113 },
};

impl Set {
    fn choose(&self, phone: &mut Phone) {
        for choice in [
            Choice::Limits(self.limits.checked().expect("allowed")),
            Choice::LaborLimits(self.labor.checked().expect("allowed")),
            Choice::PenStay(self.stay.checked().expect("allowed")),
        ] {
            phone.note(Event::Chose(choice));
        }
    }

    /// As people read them.
    fn told(&self) -> Vec<String> {
        let Self { limits: l, labor: b, stay: s } = self;
        let minutes = [
            l.up_minutes,
            l.help_minutes,
            l.red_minutes,
            l.last_call_minutes,
            l.navel_again_minutes,
            b.look_minutes,
            b.restless_minutes,
            b.hand_check_minutes,
            b.step_in_minutes,
            b.progress_minutes,
            b.neck_minutes,
            b.put_right_minutes,
            b.next_lamb_minutes,
            b.next_check_minutes,
            b.afterbirth_ask_minutes,
            b.afterbirth_late_minutes,
            b.afterbirth_vet_minutes,
        ];
        let mut told: Vec<String> =
            minutes.iter().map(|minutes| span(TimeDelta::minutes(i64::from(*minutes)))).collect();
        told.extend(minutes.iter().map(|minutes| format!("{minutes} minutes")));
        told.extend([s.single_hours, s.twins_hours, s.more_hours].map(|hours| format!("{hours} hours")));
        told
    }
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
    let mut phone = Phone::with(made_up::book(begins, System::Metric), begins);
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
    let (first, second) = (FIRST, SECOND);
    let mut found = BTreeSet::new();
    let mut phones = Vec::new();
    for wait in [0, 1] {
        for set in [&first, &second] {
            let mut phone = barn();
            phone.later(wait);
            set.choose(&mut phone);
            phones.push(phone);
        }
    }
    let screens = phones[0].screens();
    for screen in screens {
        let told: Vec<BTreeSet<String>> = phones
            .iter_mut()
            .map(|phone| {
                phone.open(screen);
                let page = phone.page();
                all_texts(phone, &page)
            })
            .collect();
        let holds = |texts: &BTreeSet<String>, limit: &str| texts.iter().any(|text| holds(text, limit));
        for limit in first.told() {
            let (now, later) = (holds(&told[0], &limit), holds(&told[2], &limit));
            if now && later {
                found.insert(limit.clone());
                let stays = holds(&told[1], &limit) && holds(&told[3], &limit);
                let says: Vec<_> = told[1].iter().filter(|text| self::holds(text, &limit)).collect();
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
