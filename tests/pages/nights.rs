//! Whole nights as they happen, seen on the pages: after every few facts every screen is held against the laws, and what is
//! worse never looks milder.
//!
//! `YEANLING_CASES` says how many facts are noted, over all.

use yeanling_core::book::{Animal, Event};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::before_milk;
use yeanling_pages::block::{Kind, Row};
use yeanling_pages::{Action, Screen, Sheet, State};

use crate::event::{of_ewe, of_lamb};
use crate::laws;
use crate::phone::Phone;
use crate::step::{About, OfEwe, OfLamb, What, night};

/// How many nights are played, over all, where nobody asks for more.
const NIGHTS: u64 = 400;
/// Every screen is looked at once in so many facts.
const LOOK: usize = 12;

fn begins() -> Moment {
    Moment::from_unix_milliseconds(1_771_995_600_000, -300)
}

fn nights(about: About) {
    let asked: Option<u64> = std::env::var("YEANLING_CASES").ok().and_then(|cases| cases.parse().ok());
    let (mut facts, mut worse, mut records) = (0, 0, 0);
    for seed in 0..asked.map_or(NIGHTS, |cases| cases / 20).div_ceil(4) {
        let (noted, judged, recorded) = play(about, seed);
        facts += noted;
        worse += judged;
        records += recorded;
    }
    // Nights in which nothing happens prove nothing.
    assert!(facts > 20 && worse > 5, "{about:?}: {facts} facts, {worse} of them worse");
    assert!(records > 5 || about == About::Labor, "{about:?}: {records} records");
}

/// Plays a night, and returns how many facts were noted, how many of them were worse signs, and how often milk that should
/// have waited could be recorded.
fn play(about: About, seed: u64) -> (usize, usize, usize) {
    let mut phone = Phone::with(yeanling_core::book::Book::default(), begins() - TimeDelta::days(300));
    let ewes = [phone.ewe("7"), phone.ewe("8")];
    phone.now = begins();
    let mut lambs = Vec::new();
    let (mut noted, mut judged, mut records) = (0, 0, 0);
    let mut story = Vec::new();
    for step in night(about, seed) {
        phone.now = phone.now + TimeDelta::seconds(step.wait);
        let event = match step.what {
            What::Ewe(ewe, fact) => of_ewe(ewes[ewe], fact, phone.now),
            What::Lamb(lamb, fact) => match lambs.get(lamb) {
                Some(lamb) => of_lamb(*lamb, fact, phone.now, &ewes),
                None => continue,
            },
            What::Press(_)
            | What::PutOff(..)
            | What::Strike(_)
            | What::Restore(_)
            | What::Move(..)
            | What::Jump(_)
            | What::Offset(_)
            | What::Part
            | What::Meet => continue,
        };
        let before = row_states(&phone);
        let at = phone.now - TimeDelta::minutes(step.ago);
        let Some(id) = phone.try_note_at(event.clone(), at) else { continue };
        noted += 1;
        story.push(format!("{event:?}"));
        if matches!(event, Event::LambBorn { .. }) {
            lambs.push(id.as_lamb());
        }
        if let Some(animal) = is_worse(step.what, &event).filter(|_| step.ago == 0) {
            judged += 1;
            let state = |states: &[(Animal, State)]| {
                states.iter().find(|(one, _)| *one == animal).map_or(State::Done, |(_, state)| *state)
            };
            let (was, is) = (state(&before), state(&row_states(&phone)));
            assert!(is <= was, "{event:?} made {animal:?} look {is:?} after {was:?}:\n{}", story.join("\n"));
        }
        if noted % LOOK == 0 {
            look(&phone, seed, &story);
            records += sheets(&phone, seed, &story);
        }
    }
    look(&phone, seed, &story);
    records += sheets(&phone, seed, &story);
    (noted, judged, records)
}

/// Holds every screen against the laws.
fn look(phone: &Phone, seed: u64, story: &[String]) {
    for screen in phone.screens() {
        let page = phone.page_of(screen);
        let wrong = laws::broken(phone, screen, &page);
        assert!(
            wrong.is_empty(),
            "night {seed}, {screen:?}:\n{}\nafter:\n{}",
            wrong.join("\n"),
            story.join("\n")
        );
    }
}

/// Holds each sheet of a feed against the laws, of every lamb for which something comes before milk.
fn sheets(phone: &Phone, seed: u64, story: &[String]) -> usize {
    let mut asked = 0;
    for lamb in phone.flock.lambs.values().filter(|lamb| lamb.lives()) {
        if before_milk(lamb, phone.now, &phone.flock.settings).is_none() {
            continue;
        }
        let mut phone = phone.clone();
        phone.open(Screen::Lamb(lamb.id));
        for one in phone.pressables() {
            if matches!(one.does, Action::Ask(Sheet::Feed(..))) {
                let mut phone = phone.clone();
                phone.act(&one.does);
                let wrong = laws::broken(&phone, phone.screen, &phone.page());
                let told = format!(
                    "night {seed}, {:?}:\n{}\nafter:\n{}",
                    one.name,
                    wrong.join("\n"),
                    story.join("\n")
                );
                assert!(wrong.is_empty(), "{told}");
                asked += 1;
            }
        }
    }
    asked
}

/// How each animal stands on the Watch.
fn row_states(phone: &Phone) -> Vec<(Animal, State)> {
    let row = |row: &Row| match row.to {
        Some(Screen::Ewe(ewe) | Screen::LambingEwe(ewe)) => Some((Animal::Ewe(ewe), row.state)),
        Some(Screen::Lamb(lamb) | Screen::ColdLamb(Some(lamb))) => Some((Animal::Lamb(lamb), row.state)),
        _ => None,
    };
    let page = phone.page_of(Screen::Watch);
    let rows = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Row(one) => row(one),
        _ => None,
    });
    rows.collect()
}

/// The animal for which a fact is a worse sign, whatever was before it.
fn is_worse(what: What, event: &Event) -> Option<Animal> {
    let worse = matches!(
        what,
        What::Ewe(_, OfEwe::Straining | OfEwe::Bag)
            | What::Lamb(_, OfLamb::Vigor(4) | OfLamb::Swallow(false))
            | What::Lamb(_, OfLamb::Temperature(0..350))
    );
    event.animals().next().filter(|_| worse)
}

#[test]
fn a_ewe_in_labor_is_seen_rightly() {
    nights(About::Labor);
}

#[test]
fn a_cold_lamb_is_seen_rightly() {
    nights(About::Cold);
}

#[test]
fn a_bottle_lamb_is_seen_rightly() {
    nights(About::Bottle);
}

#[test]
fn a_whole_barn_is_seen_rightly() {
    nights(About::Barn);
}
