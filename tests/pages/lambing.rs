//! One ewe at work: who lambs, what was seen, each lamb as it comes.

use std::time::Duration;

use yeanling_core::book::{Event, EweId};
use yeanling_pages::Screen;
use yeanling_pages::block::{Field, Kind};

use crate::phone::Phone;

/// The keys rest so long.
pub(crate) const REST: Duration = Duration::from_millis(700);

fn at_night() -> Phone {
    let mut phone = Phone::at("2026-02-25 01:00");
    phone.open(Screen::Lambing);
    phone
}

/// Begins the lambing of a ewe, who is new to the book.
pub(crate) fn lambing(tag: &str) -> Phone {
    let mut phone = at_night();
    phone.write("Her tag", tag).press(&format!("Add ewe {tag}"));
    phone
}

pub(crate) fn first_ewe(phone: &Phone) -> EweId {
    *phone.flock.ewes.keys().next().expect("a ewe")
}

/// The birth weight that stands noted of a lamb, in kilograms.
pub(crate) fn weighs(phone: &Phone, name: &str) -> Option<f64> {
    let lamb =
        phone.flock.lambs.values().find(|lamb| yeanling_words::animals::lamb(&phone.flock, lamb) == name);
    lamb.expect("the lamb").birth_weight().map(|mass| (mass.as_kilograms() * 100.0).round() / 100.0)
}

/// What stands on the keys.
pub(crate) fn readout(phone: &Phone) -> Option<String> {
    phone.page().all().into_iter().find_map(|block| match &block.kind {
        Kind::Readout(readout) => Some(readout.value.clone()),
        _ => None,
    })
}

/// Which of the buttons that stay down are down.
pub(crate) fn down(phone: &Phone) -> Vec<String> {
    let mut down = Vec::new();
    for block in phone.page().all() {
        match &block.kind {
            Kind::Toggle(toggle) if toggle.pressed => down.push(toggle.label.clone()),
            Kind::Choices(choices) => {
                down.extend(choices.chosen.map(|place| choices.options[place].label.clone()));
            }
            _ => {}
        }
    }
    down
}

fn filled(phone: &Phone) -> Vec<String> {
    let thumb = phone.page().thumb;
    let buttons = thumb.iter().flat_map(|block| block.buttons().into_iter().cloned().collect::<Vec<_>>());
    buttons.filter(|one| one.weight == yeanling_pages::Weight::Filled).map(|one| one.label).collect()
}

// Who.

#[test]
fn an_empty_book_says_what_to_do_and_a_ewe_is_added_by_her_tag_or_left_unknown() {
    let mut phone = at_night();
    phone.says("Type her tag, then add her.").has_button("Dam unknown");
    phone.write("Her tag", "14").press("Add ewe 14").says("Ewe 14 lambing");
    assert_eq!(phone.screen, Screen::LambingEwe(first_ewe(&phone)));
    phone.open(Screen::Lambing).says_nowhere("Type her tag").has_button("14");
    // What was looked for last time is not looked for again.
    let find = crate::reach::fields(&phone.page());
    assert!(matches!(&find[..], [(_, Field { value, .. })] if value.is_empty()));
}

#[test]
fn those_at_work_stand_first_with_what_was_seen_of_them_last() {
    let mut phone = lambing("14");
    phone.press("Restless").later(5).open(Screen::Lambing).says("Lambing or close");
    phone.press("Ewe 14 · Restless 01:00").press("Ewe lamb").open(Screen::Lambing).press("Ewe 14");
    phone.says("Another lamb is here");
}

#[test]
fn a_small_flock_keeps_its_places_where_she_is_picked_and_who_has_lambed_is_dimmed_in_hers() {
    let tiles = |phone: &Phone| -> Vec<(String, String, bool)> {
        let page = phone.page();
        let tiles = page.all().into_iter().filter_map(|block| match &block.kind {
            Kind::Tile(tile) => Some((tile.number.clone(), tile.says.clone(), tile.past)),
            _ => None,
        });
        tiles.collect()
    };
    let mut phone = at_night();
    let ewes = [1, 2, 3, 12].map(|tag| phone.ewe(&tag.to_string()));
    let numbers = |phone: &Phone| tiles(phone).into_iter().map(|(number, ..)| number).collect::<Vec<_>>();
    assert_eq!(numbers(&phone), ["1", "2", "3", "12"]);
    let lamb = phone.lamb(ewes[1]);
    phone.note(Event::AllBorn { lamb });
    phone.note(Event::WaterBagSeen { ewe: ewes[2] });
    phone.later(5);
    assert_eq!(numbers(&phone), ["1", "2", "3", "12"]);
    let of = |phone: &Phone, number: &str| {
        tiles(phone).into_iter().find(|(other, ..)| other == number).expect("she")
    };
    assert_eq!(of(&phone, "2"), ("2".to_owned(), "lambed 1".to_owned(), true));
    assert_eq!(of(&phone, "3"), ("3".to_owned(), "lambing 5 min".to_owned(), false));
    phone.write("Her tag", "2");
    assert_eq!(numbers(&phone), ["2", "12"]);
    phone.press("12");
    assert_eq!(phone.screen, Screen::LambingEwe(ewes[3]));
    // So is who is not right.
    phone.open(Screen::NotRight);
    assert_eq!(numbers(&phone), ["1", "2", "3", "12"]);
}

// The ewe before the lamb.

#[test]
fn a_sign_is_noted_by_a_tap_and_taken_back_by_another() {
    let mut phone = lambing("14");
    assert!(phone.flock.ewe(first_ewe(&phone)).is_some_and(|ewe| ewe.labor.is_none()));
    phone.press("Straining").has_button("Looked, all well");
    assert_eq!(down(&phone), ["Just now", "Straining"]);
    phone.press("Straining").has_no_button("Looked, all well");
    assert_eq!(down(&phone), ["Just now"]);
    assert!(phone.undo());
    assert_eq!(down(&phone), ["Just now", "Straining"]);
}

#[test]
fn what_begins_by_a_press_stands_below_and_above_once_the_screen_is_opened_again() {
    let mut phone = lambing("14");
    let places = |phone: &Phone| -> Vec<String> {
        phone.page().blocks.iter().map(|block| block.key.to_string()).filter(|key| !key.is_empty()).collect()
    };
    phone.press("Water bag").says("under 1 min");
    assert_eq!(places(&phone).last().map(String::as_str), Some("due"));
    let here = phone.screen;
    phone.open(Screen::Lambing).open(here);
    assert!(places(&phone).contains(&"labor-due".to_owned()));
    // It keeps its room when nothing is due any more.
    phone.press("Water bag").says_nowhere("since her waters");
    assert!(places(&phone).contains(&"labor-due".to_owned()));
}

#[test]
fn what_falls_due_while_the_screen_lies_open_comes_above_all_and_stays_there() {
    let mut phone = lambing("14");
    let first = |phone: &Phone| -> Option<String> {
        phone.page().blocks.iter().map(|block| block.key.to_string()).find(|key| !key.is_empty())
    };
    phone.press("Straining");
    assert_ne!(first(&phone).as_deref(), Some("labor-due"), "nothing moves under the finger");
    phone.later(80).says("1 h 20 min").says("call your vet");
    assert_eq!(first(&phone).as_deref(), Some("labor-due"));
    phone.press("Looked");
    assert_eq!(first(&phone).as_deref(), Some("labor-due"));
}

#[test]
fn what_is_due_can_be_asked_why_and_a_lie_says_what_to_do() {
    let mut phone = lambing("14");
    phone.press("Water bag").later(30).says("30 min").says("since her waters 01:00");
    phone.press("Check inside").press("One leg back").says("bring the leg forward");
    assert!(phone.draft().sheets.is_empty(), "the sheet is answered");
    let why = phone.pressables().into_iter().find(|one| one.name.starts_with("why? ")).expect("a why");
    phone.act(&why.does);
    phone.says("Counted from 01:30");
}

#[test]
fn each_call_to_the_vet_counts() {
    let mut phone = lambing("14");
    phone.press("Vet called").has_button("Vet called 01:00");
    phone.later(10).press("Vet called 01:00").has_button("Vet called 01:10");
    assert_eq!(phone.flock.ewe(first_ewe(&phone)).map(|ewe| ewe.vet.len()), Some(2));
}

// The lambs.

#[test]
fn twins_are_born_and_all_that_was_tapped_is_noted_of_the_one_that_was_chosen() {
    let mut phone = lambing("27");
    phone.says("A lamb is here");
    phone.press("Ewe lamb").says("27a");
    phone.keys("3.9").press("No help").press("Navel dipped").press("Nursed");
    phone.rest(REST).press("Next lamb").press("Ram lamb").keys("4.2").press("Up");
    assert_eq!(down(&phone), ["27b", "Ram lamb", "kg", "Up"]);
    // The keys did not rest: leaving early loses nothing.
    phone.press("All lambs born");
    assert_eq!(phone.screen, Screen::Watch);
    assert_eq!((weighs(&phone, "27a"), weighs(&phone, "27b")), (Some(3.9), Some(4.2)));
}

#[test]
fn a_tick_is_taken_back_by_a_tap_and_that_too_can_be_undone() {
    let mut phone = lambing("8");
    phone.press("Ewe lamb").press("Nursed").press("Nursed");
    assert!(!down(&phone).contains(&"Nursed".to_owned()));
    assert!(phone.undo());
    assert!(down(&phone).contains(&"Nursed".to_owned()));
}

#[test]
fn a_lamb_turned_into_one_born_dead_by_a_slip_is_brought_back_by_undo() {
    let mut phone = lambing("9");
    phone.press("Ewe lamb").keys("4.1").rest(REST).press("Up").press("Born dead");
    let inert = |phone: &Phone| {
        let drawn = crate::tree::drawn(crate::html::nodes(phone, phone.screen, &phone.page()));
        drawn.all().iter().any(|node| node.attribute("inert").is_some())
    };
    assert!(inert(&phone));
    assert!(phone.undo());
    assert!(!inert(&phone));
    assert_eq!(readout(&phone).as_deref(), Some("4.1"));
    assert_eq!(down(&phone), ["Ewe lamb", "kg", "Up"]);
    // What stands already is not noted again.
    let noted = phone.book.len();
    phone.press("Ewe lamb");
    assert_eq!(phone.book.len(), noted);
}

#[test]
fn a_birth_that_is_undone_leaves_the_next_lamb_to_come() {
    let mut phone = lambing("9");
    phone.press("Ewe lamb").says("9a");
    assert!(phone.undo());
    phone.says("A lamb is here").has_no_button("All lambs born");
}

#[test]
fn a_lambing_that_is_opened_again_begins_with_the_next_lamb() {
    let mut phone = lambing("22");
    phone.press("Ewe lamb").keys("4.1").rest(REST);
    let litter = *phone.flock.lambs.keys().next().expect("a lamb");
    for screen in [Screen::LambingEwe(first_ewe(&phone)), Screen::LambingLamb(litter)] {
        phone.open(Screen::Lambing).open(screen).says("Another lamb is here");
        assert_eq!(
            (readout(&phone), down(&phone)),
            (None, vec!["Next lamb".to_owned(), "Just now".to_owned()])
        );
        phone.press("22a");
        assert_eq!(readout(&phone).as_deref(), Some("4.1"));
    }
}

#[test]
fn one_more_lamb_after_all_were_said_to_be_born_joins_its_litter() {
    let mut phone = lambing("6");
    phone.press("Ewe lamb").press("All lambs born");
    let ewe = first_ewe(&phone);
    phone.later(1).open(Screen::LambingEwe(ewe)).says("A lamb is here");
    phone.press("Ram lamb");
    assert_eq!(down(&phone), ["6b", "Ram lamb", "kg"]);
    assert_eq!(phone.flock.litters.len(), 1);
}

#[test]
fn a_litter_without_a_dam_stays_together_and_is_given_its_dam_later() {
    let mut phone = at_night();
    phone.ewe("8");
    phone.press("Dam unknown").says("Dam unknown").has_no_button("Give its dam");
    phone.press("Ram lamb");
    // Its address is that of its first lamb, which is in hand.
    assert!(matches!(phone.screen, Screen::LambingLamb(_)));
    assert_eq!(down(&phone), ["Ram lamb", "kg"]);
    phone.press("Next lamb").press("Ewe lamb");
    assert_eq!(phone.flock.litters.len(), 1);
    phone.press("Give its dam").press("8").says("Ewe 8 lambing").says("8b").has_no_button("Give its dam");
    assert!(phone.undo());
    phone.has_button("Give its dam");
}

#[test]
fn a_birth_on_the_address_of_a_lamb_that_is_gone_begins_a_litter_of_its_own() {
    let mut phone = at_night();
    phone.press("Dam unknown").press("Ram lamb");
    assert!(phone.undo());
    phone.says("A lamb is here");
    phone.press("Ewe lamb");
    assert_eq!(down(&phone), ["Ewe lamb", "kg"]);
    assert!(matches!(phone.screen, Screen::LambingLamb(lamb) if phone.flock.lamb(lamb).is_some()));
}

#[test]
fn a_ewe_scanned_with_two_is_not_done_after_one_unless_that_is_said() {
    let mut phone = Phone::at("2026-02-25 01:00");
    let ewe = phone.ewe("9");
    phone.note_at(
        Event::Scanned { ewe, lambs: 2, days: None },
        phone.now + yeanling_core::units::TimeDelta::days(-70),
    );
    phone.open(Screen::LambingEwe(ewe)).says("scanned 2");
    phone.press("Ewe lamb").says("first lamb 01:00 · scanned 2");
    assert_eq!(filled(&phone), ["Next lamb"]);
    phone.press("All lambs born").says("The scan saw 2, and 1 is noted.");
    phone.press("No, one is still to come");
    phone.says("Another lamb is here");
    phone.press("Ram lamb");
    assert_eq!(filled(&phone), ["All lambs born"]);
    assert!(phone.undo());
    phone.press("All lambs born").press("Yes, all are born");
    assert_eq!(phone.screen, Screen::Watch);
    assert!(phone.flock.litters.values().all(|litter| litter.all_born.is_some()));
}

#[test]
fn three_lambs_that_were_found_are_noted_with_their_age_one_after_another() {
    let mut phone = Phone::at("2026-02-25 06:00");
    let ewe = phone.ewe("14");
    // Six presses: the first two are "Lambing" and her tag.
    phone.open(Screen::LambingEwe(ewe)).press("1–6 h").press("Ewe lamb").press("Ewe lamb").press("Ram lamb");
    let lambs: Vec<_> = phone.flock.lambs.values().collect();
    assert_eq!(lambs.len(), 3);
    for lamb in lambs {
        assert_eq!(lamb.age(phone.now).num_hours(), 6);
        assert_eq!(lamb.found, Some(phone.now));
    }
    assert_eq!(phone.flock.litters.len(), 1);
    phone.has_button("14c").says("Another lamb is here");
    // Lambs of nobody known, however old they may be.
    phone.open(Screen::Lambing).press("Dam unknown").press("Not known").press("Ram lamb").press("Ewe lamb");
    assert_eq!(phone.flock.litters.len(), 2, "the second is of the same litter as the first");
    assert!(phone.undo());
    assert_eq!(phone.flock.lambs.len(), 4);
    // Who comes again finds lambs that are born now.
    phone.open(Screen::LambingEwe(ewe)).press("Ewe lamb");
    assert!(phone.flock.lambs.values().any(|lamb| lamb.born == phone.now && lamb.found.is_none()));
}

#[test]
fn the_next_lamb_is_large_until_the_time_for_looking_for_it_is_over() {
    let mut phone = lambing("14");
    phone.press("Ewe lamb");
    assert_eq!(filled(&phone), ["Next lamb"]);
    phone.later(59);
    assert_eq!(filled(&phone), ["Next lamb"]);
    phone.later(1);
    assert_eq!(filled(&phone), ["All lambs born"]);
}

#[test]
fn the_job_of_her_clock_stands_on_its_card_and_only_there() {
    let mut phone = lambing("14");
    phone.press("Water bag").later(31);
    let hands = phone.pressables().into_iter().filter(|one| one.label == "Check inside").count();
    assert_eq!(hands, 1);
    phone.says("since her waters 01:00").says("If nothing shows: check inside");
    phone.press("Water bag").has_button("Check inside").has_button("Vet called");
}

#[test]
fn who_keeps_away_is_a_line_that_can_be_asked_why() {
    let mut phone = lambing("14");
    phone.says("Pregnant, or may be? Keep away from lambing.").says_nowhere("heart-valve");
    phone.press("why? Who keeps away").says("heart-valve").says("call your own doctor today");
}

#[test]
fn a_lamb_on_hold_is_not_said_to_have_sucked_by_a_slip() {
    use yeanling_core::units::Temperature;
    let mut phone = lambing("14");
    phone.press("Ewe lamb").later(400);
    let lamb = *phone.flock.lambs.keys().next().expect("a lamb");
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) });
    phone.has_no_button("Nursed").has_button("Cold lamb steps");
}

#[test]
fn the_likeliest_dam_of_a_lamb_stands_first_though_she_has_lambed() {
    let mut phone = Phone::at("2026-02-25 01:00");
    let (early, now, later) = (phone.ewe("5"), phone.ewe("6"), phone.ewe("7"));
    let born = |dam| Event::LambBorn { dam: Some(dam), beside: None, sex: None, alive: true };
    phone.note_at(born(early), phone.now + yeanling_core::units::TimeDelta::days(-9));
    phone.note(born(now));
    phone.open(Screen::Lambing).press("Dam unknown").press("Ram lamb").press("Give its dam");
    let offered: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    let place = |tag: &str| offered.iter().position(|one| one == tag).expect("offered");
    assert!(place("6") < place("5") && place("5") < place("7"), "{offered:?}");
    assert!(phone.flock.ewe(later).is_some());
    phone.says("Likeliest");
}

#[test]
fn a_dam_is_given_from_the_lambs_page_in_two_presses_and_put_right_where_the_birth_is_changed() {
    let mut phone = Phone::at("2026-02-25 01:00");
    let (six, seven) = (phone.ewe("6"), phone.ewe("7"));
    phone.open(Screen::Lambing).press("Dam unknown").press("Ram lamb");
    let lamb = *phone.flock.lambs.keys().next().expect("a lamb");
    phone.open(Screen::Lamb(lamb)).press("Give its dam").press("6");
    assert_eq!(phone.flock.lambs[&lamb].dam, Some(six));
    phone.ask(yeanling_pages::Sheet::Amend(lamb.entry())).press("Wrong ewe?").press("7");
    phone.press("Move to ewe 7");
    assert_eq!(phone.flock.lambs[&lamb].dam, Some(seven));
}
