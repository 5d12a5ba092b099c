//! A first night on an empty book: what one screen says of an animal in danger, every other says too.

use yeanling_core::book::{Animal, Care, Event, EweId, Illness, LambId, Life, Milk, Way};
use yeanling_core::reckon::illness::{ewe, lamb as lamb_table};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign, Mouth, Suck};
use yeanling_core::units::{Mass, Moment, Temperature, TimeDelta, Volume};
use yeanling_core::watch::{hold_milk, lamb_illness};
use yeanling_pages::{Action, Screen, Sheet};
use yeanling_words::illness as words;

use crate::laws;
use crate::phone::Phone;
use crate::reach::texts;

const NOT: Gate = Gate::NotChecked;

fn lamb_seen(lamb: LambId, [head_up, swallows, warm]: [Gate; 3], signs: &[LambSign]) -> Event {
    Event::Illness(Illness::LambSeen { lamb, head_up, swallows, warm, signs: signs.to_vec() })
}

fn with_lamb(minutes: i64) -> (Phone, EweId, LambId) {
    let mut phone = Phone::at("2027-02-01 03:12");
    let ewe = phone.ewe("12");
    let lamb = phone.lamb(ewe);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.later(minutes);
    (phone, ewe, lamb)
}

/// Says whether a line tells that nothing, or no milk, goes in by mouth whatever else is so.
fn shuts(line: &str) -> bool {
    let line = line.to_lowercase();
    line.starts_with("nothing by mouth")
        || line == "no milk."
        || line.starts_with("stop milk")
        || line.starts_with("stop feeding by mouth")
        || line.starts_with("never tube")
}

#[test]
fn where_the_words_of_illness_say_no_milk_every_screen_of_the_lamb_says_so_at_once() {
    let mut judged = 0;
    for row in lamb_table::Row::ALL {
        let told = words::lamb::row(row);
        let says = told.until.iter().chain(told.never).any(|line| shuts(line));
        assert!(!says || row.shuts_mouth(), "{row:?} says no milk, and the table holds none");
    }
    for sign in LambSign::ALL.into_iter().filter(|sign| !sign.is_good_news()) {
        for hours in [4, 26, 24 * 15] {
            let (mut phone, _, lamb) = with_lamb(hours * 60);
            phone.note(lamb_seen(lamb, [NOT; 3], &[sign]));
            let of = phone.flock.lamb(lamb).expect("a lamb");
            let rows = lamb_illness(of, phone.now).expect("an illness").answer;
            let says = |line: &&str| shuts(line);
            let mut told = rows.rows.iter().map(|found| words::lamb::row(found.row));
            let none = told.any(|row| row.until.iter().chain(row.never).any(&says));
            if !none && !rows.nothing_by_mouth {
                continue;
            }
            judged += 1;
            let hold = hold_milk(of);
            assert!(hold.is_some(), "{sign:?} at {hours} h: no milk, and no hold");
            let why = yeanling_words::lamb::hold(hold.expect("a hold"), yeanling_core::units::System::Metric);
            let why = why[0].replace('*', "");
            for screen in [Screen::Lamb(lamb), Screen::Watch, Screen::IllLamb(lamb), Screen::Night] {
                phone.open(screen);
                let wrong = laws::broken(&phone, screen, &phone.page());
                assert!(wrong.is_empty(), "{sign:?} at {hours} h, {screen:?}: {wrong:?}");
                let said = texts(&phone.page()).join("\n");
                assert!(!said.contains("feed it"), "{sign:?} at {hours} h, {screen:?}:\n{said}");
            }
            let said = texts(&phone.page_of(Screen::Lamb(lamb))).join("\n").replace('\u{a0}', " ");
            assert!(said.contains(&why), "{sign:?} at {hours} h: {why}\n{said}");
            // The sheet of another feed says why, and its save is a record.
            phone.open(Screen::Lamb(lamb)).ask(Sheet::Feed(lamb, None, Milk::EweColostrum));
            phone.tells(&why).tells("already had");
        }
    }
    assert!(judged > 10, "{judged}");
}

#[test]
fn a_chin_wet_again_is_said_wherever_the_lamb_is_named() {
    let (mut phone, _, lamb) = with_lamb(348);
    phone.open(Screen::IllLamb(lamb)).press("Chin wet again").press("What now?").says("No milk.");
    phone.open(Screen::Watch).says("chin wet again").says_nowhere("Temperature first");
    phone.open(Screen::Lamb(lamb)).says("Its chin was wet again").says_nowhere("then feed it");
    phone.press("Already fed").tells("Its chin was wet again");
    phone.later(200).open(Screen::Watch).says("chin wet again").says_nowhere("No colostrum: feed it");
    phone.open(Screen::IllLamb(lamb)).press("Chin stays dry");
    phone.open(Screen::Lamb(lamb)).says_nowhere("Its chin was wet again");
}

#[test]
fn of_a_lamb_that_was_found_no_page_tells_its_birth_as_a_fact() {
    let mut phone = Phone::at("2027-02-01 08:00");
    let ewe = phone.ewe("12");
    phone.open(Screen::LambingEwe(ewe)).press("Wet, under 5 h").press("Ram lamb");
    let lamb = *phone.flock.lambs.keys().next().expect("a lamb");
    phone.later(10);
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) });
    phone.open(Screen::Lamb(lamb)).says("born before").says("up to 5\u{a0}h").says_nowhere("born 03:00");
    phone
        .open(Screen::ColdLamb(Some(lamb)))
        .press("Yes, both")
        .says("up to 5 h old")
        .says_nowhere("over 5 h");
}

#[test]
fn a_tube_is_saved_once_head_and_swallow_are_answered_or_as_a_record() {
    let (mut phone, _, lamb) = with_lamb(20);
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(39.2) });
    let sheet = Sheet::Feed(lamb, Some(Volume::from_milliliters(195.0)), Milk::EweColostrum);
    phone.open(Screen::Lamb(lamb)).ask(sheet).press("Tube");
    phone.tells("Does it swallow?").has_no_button("Save").has_no_button("½");
    let answer =
        |phone: &mut Phone, key: &str, place| phone.act(&Action::Choose(key.to_owned().into(), place));
    let mut not = phone.clone();
    answer(&mut not, "tube-head", 0);
    not.has_no_button("Save");
    answer(&mut not, "tube-swallow", 1);
    not.tells("No tube").press("Save: no swallow").is_closed();
    not.has_noted(&Event::SwallowTried { lamb, able: false });
    assert!(not.flock.lamb(lamb).and_then(hold_milk).is_some());
    let mut record = phone.clone();
    record.press("Tubed already, not checked").tells("already had").press("Save the record").is_closed();
    let way = Way::Tube;
    let fed = Event::Fed { lamb, volume: Volume::from_milliliters(195.0), milk: Milk::EweColostrum, way };
    record.has_noted(&fed);
    answer(&mut phone, "tube-head", 0);
    answer(&mut phone, "tube-swallow", 0);
    phone.press("Save").is_closed().has_noted(&fed);
    assert_eq!(
        phone.flock.lamb(lamb).and_then(|lamb| lamb.swallow.last().map(|(_, able)| *able)),
        Some(true)
    );
}

#[test]
fn a_lamb_in_danger_is_fostered_last_with_its_reason_and_asked_about_once() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let (ewe, other) = (phone.ewe("7"), phone.ewe("12"));
    phone.lamb(ewe);
    let (cold, well) = (phone.lamb(other), phone.lamb(other));
    phone.note(Event::Accepted { lamb: cold, accepts: false });
    phone.later(1).note(Event::TemperatureTaken { lamb: cold, temperature: Temperature::from_celsius(35.0) });
    phone.later(1).open(Screen::Ewe(ewe)).ask(Sheet::TakeOn(ewe));
    let names: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    assert_eq!(names, [phone.name(Animal::Lamb(well)), phone.name(Animal::Lamb(cold))]);
    phone.tells("it read 35.0");
    let count = phone.book.entries().count();
    let name = phone.name(Animal::Lamb(cold));
    phone.press(&name).tells("no milk under 37");
    assert_eq!(phone.book.entries().count(), count, "it asks once");
    phone.press("Foster all the same").is_closed();
    phone.has_noted(&Event::Life(Life::Fostered { lamb: cold, dam: ewe }));
    phone.open(Screen::Lamb(cold)).ask(Sheet::Foster(cold)).tells("no milk under 37");
}

#[test]
fn a_newborn_that_does_not_suck_yet_is_rubbed_and_looked_at_and_told_as_answered() {
    let (mut phone, _, lamb) = with_lamb(1);
    phone.note(Event::Care(Care::MouthFelt { lamb, mouth: Mouth::Cold, suck: Suck::None }));
    // What the finger said is not asked again.
    phone.open(Screen::IllLamb(lamb)).act(&Action::Choose(format!("head-up-{lamb}").into(), 0));
    phone.press("What now?");
    let noted = phone.noted().clone();
    assert_eq!(noted, lamb_seen(lamb, [Gate::Good, Gate::Bad, Gate::Bad], &[]));
    phone.says("Look again at").says("rub it").says_nowhere("Call your vet now").says_nowhere("humane");
    phone.open(Screen::Lamb(lamb)).says_nowhere("hold its head up and swallow:");
    for screen in phone.screens() {
        let said = texts(&phone.page_of(screen)).join("\n");
        assert!(!said.contains("Its head was down"), "{screen:?}: {said}");
    }
}

#[test]
fn no_step_gives_a_ewe_that_is_down_or_does_not_swallow_anything_by_mouth() {
    let offers = [
        "feed and water",
        "glycol",
        "hay and water",
        "water in reach",
        "House and feed",
        "lambs fed",
        "her lambs",
    ];
    let mut judged = 0;
    for row in ewe::Row::ALL {
        for lead in row.leads() {
            let ewe::Lead::Sign(sign) = lead else { continue };
            for stage in [EweStage::LateInLamb, EweStage::Milking, EweStage::Other] {
                let mut phone = Phone::at("2027-02-01 03:12");
                let ewe = phone.ewe("5");
                phone.note(Event::Illness(Illness::EweSeen {
                    ewe,
                    stage,
                    standing: Gate::Bad,
                    eating: Gate::Bad,
                    nothing_out: Gate::Good,
                    signs: vec![sign, EweSign::KeepsApart],
                    onset: None,
                }));
                let said = texts(&phone.page_of(Screen::IllEwe(ewe)));
                judged += 1;
                let wrong = said.iter().find(|line| offers.iter().any(|offer| line.contains(offer)));
                assert!(wrong.is_none(), "{sign:?}, {stage:?}: {wrong:?}");
            }
        }
    }
    assert!(judged > 50, "{judged}");
}

#[test]
fn a_look_has_one_time_on_a_page() {
    let (mut phone, _, lamb) = with_lamb(60 * 24 * 5);
    phone.note(lamb_seen(lamb, [NOT; 3], &[LambSign::HollowBelly]));
    let said = texts(&phone.page_of(Screen::IllLamb(lamb)));
    let looks: Vec<&String> = said.iter().filter(|line| line.contains("Look again")).collect();
    assert_eq!(looks.len(), 1, "{looks:?}");
    let now: Moment = phone.now;
    phone.later(10);
    assert_eq!(phone.now, now + TimeDelta::minutes(10));
    phone.open(Screen::Watch).says_nowhere("by now");
}
