//! One lamb: its first milk and the next feed, what holds milk back, weaning, rings, growing up, and the right dam.

use yeanling_core::book::{Animal, Cause, Event, LambId, Life, Milk, Sex, Sign, VigorScale, Way};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System, Temperature, Volume};
use yeanling_pages::block::{Fold, Kind};
use yeanling_pages::{Action, Button, Screen, Sheet};

use crate::phone::Phone;
use crate::reach::texts;

/// A phone at a ewe lamb of ewe 12, born just now; weighed if a weight is given.
#[track_caller]
fn at_lamb(kilograms: Option<f64>) -> (Phone, LambId) {
    let mut phone = Phone::at("2027-02-01 23:55");
    let dam = phone.ewe("12");
    let born = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(Sex::Ewe), alive: true };
    let lamb = phone.note(born).as_lamb();
    if let Some(kilograms) = kilograms {
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(kilograms) });
    }
    phone.open(Screen::Lamb(lamb));
    (phone, lamb)
}

/// Returns what the page says, a number beside its unit with a plain space.
fn said(phone: &Phone) -> Vec<String> {
    texts(&phone.page()).into_iter().map(|text| text.replace('\u{a0}', " ")).collect()
}

#[track_caller]
fn says(phone: &Phone, all: &[&str]) {
    let said = said(phone);
    for text in all {
        assert!(said.iter().any(|one| one.contains(text)), "{text:?} is not said:\n{}", said.join("\n"));
    }
}

#[track_caller]
fn says_none(phone: &Phone, none: &[&str]) {
    let said = said(phone);
    for text in none {
        assert!(!said.iter().any(|one| one.contains(text)), "{text:?} is said:\n{}", said.join("\n"));
    }
}

/// Returns the button of this label, in use or not.
#[track_caller]
fn button(phone: &Phone, label: &str) -> Button {
    let page = phone.page();
    let mut all = page.all().into_iter().flat_map(|block| block.buttons());
    all.find(|button| button.label == label).cloned().unwrap_or_else(|| panic!("no button says {label:?}"))
}

fn has_button(phone: &Phone, label: &str) -> bool {
    phone.pressables().iter().any(|one| one.label == label)
}

#[test]
fn a_bottle_feed_is_one_tap_with_the_volume_filled_in_counts_at_once_and_is_undone_by_one() {
    let (mut phone, _) = at_lamb(Some(4.0));
    says(&phone, &["200 ml", "0 of 400 ml", "0 of 720 ml", "0 of 800 ml"]);
    phone.press("Fed 200");
    // Source: Mellor & Murray 1986: 4.0 kg wants 720 ml in 18 h, housed; AHDB: 800 ml in 24 h.
    says(&phone, &["200 of 400 ml", "200 of 720 ml", "200 of 800 ml", "200 ml of 800 ml given by hand"]);
    assert!(phone.undo());
    says(&phone, &["0 of 720 ml"]);
    says_none(&phone, &["200 of 720 ml", "fed by hand"]);
}

#[test]
fn the_next_feed_is_told_when_it_is_due_and_that_it_is_late() {
    let (mut phone, _) = at_lamb(Some(4.0));
    phone.press("Fed 200").later(5 * 60);
    let before = said(&phone);
    phone.later(3 * 60);
    assert_ne!(before, said(&phone));
    says(&phone, &["late"]);
}

#[test]
fn a_tube_feed_stands_under_its_safety_list() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    says(&phone, &["hold its head up", "37 °C"]);
    assert!(
        phone.pressables().iter().all(|one| !one.label.starts_with("All true")),
        "nobody tried its swallow"
    );
    phone.note(Event::SwallowTried { lamb, able: true });
    phone.press("All true: save 200 ml");
    let fed = &phone.flock.lamb(lamb).expect("the lamb").feeds;
    assert_eq!(fed.iter().map(|feed| feed.way).collect::<Vec<_>>(), [Way::Tube]);
}

#[test]
fn a_lamb_that_was_not_weighed_is_fed_no_volume() {
    let (phone, lamb) = at_lamb(None);
    says(&phone, &["Weigh it to see the volumes."]);
    assert!(phone.pressables().iter().all(|one| !one.label.starts_with("Fed")));
    let other = button(&phone, "Other feed").does;
    assert_eq!(other, Action::Ask(Sheet::Feed(lamb, None, Milk::DamColostrum)));
}

#[test]
fn pounds_and_fluid_ounces_give_the_same_feed_as_kilograms() {
    let (mut phone, lamb) = at_lamb(None);
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.note(Event::Weighed { lamb, mass: Mass::parse("8.8", System::Us).expect("a weight") });
    // 8.8 lb is 3.99 kg: 50 ml/kg is 199.6 ml, 6.7 fl oz.
    says(&phone, &["8.8 lb", "6.7 fl oz", "200 ml"]);
    phone.press("Fed 6.7");
    says(&phone, &["6.7 of 13.5 fl oz"]);
}

#[test]
fn every_figure_says_why_under_the_name_it_is_asked_by() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.press("Fed 200");
    let mut screens = vec![phone.clone()];
    phone.later(40 * 24 * 60);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(12.0) });
    screens.push(phone);
    let mut asked = 0;
    for phone in screens {
        for one in phone.pressables() {
            let Action::Ask(Sheet::Why(reason)) = &one.does else { continue };
            let answer = phone.view(|view| reason.answer(view));
            assert!(one.name.ends_with(&answer.heading), "{:?} asks for {:?}", one.name, answer.heading);
            assert!(!answer.working.is_empty() && !answer.sources.is_empty(), "{:?}", one.name);
            asked += 1;
        }
    }
    assert!(asked > 8, "{asked}");
}

#[test]
fn why_tells_the_working_who_says_so_and_what_others_say() {
    let (mut phone, _) = at_lamb(Some(4.0));
    phone.press("why? Next feed");
    says(&phone, &["50 ml/kg", "200 ml", "Others say", "does not replace your vet"]);
}

#[test]
fn a_newborn_has_its_time_left_until_it_is_hungry_and_then_how_long_it_has_had_none() {
    let (mut phone, _) = at_lamb(Some(4.0));
    says(&phone, &["24 h", "left", "not seen to nurse", "help from 00:55"]);
    phone.later(95);
    says(&phone, &["1 h 35 min", "22 h 25 min"]);
    phone.press("Nursed");
    says(&phone, &["nursed 01:30", "Nursed ✓"]);
    assert!(phone.undo());
    says_none(&phone, &["Nursed ✓"]);
    phone.later(23 * 60);
    says_none(&phone, &["Colostrum"]);
}

#[test]
fn the_hour_of_help_is_the_farms_own() {
    let (mut phone, _) = at_lamb(Some(4.0));
    let mut limits = phone.flock.settings.limits;
    limits.help_minutes = 30;
    limits.red_minutes = 90;
    phone.note(Event::Chose(Choice::Limits(limits)));
    says(&phone, &["help from 00:25"]);
}

#[test]
fn what_holds_milk_back_stands_in_the_place_of_every_feed() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(36.0) });
    says(&phone, &["No milk yet", "It read 36.0 °C (96.8 °F): no milk"]);
    assert!(
        phone.pressables().iter().all(|one| !one.label.starts_with("Fed") && !one.label.contains("tubed"))
    );
    // What was seen of it stays in its place, out of use: nothing moves under a thumb.
    assert!(button(&phone, "Nursed").off);
    assert_eq!(button(&phone, "Cold lamb: what to do").does, Action::Go(Screen::ColdLamb(Some(lamb))));
}

#[test]
fn what_holds_milk_back_is_told_of_a_lamb_that_its_dam_feeds_too() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.press("Nursed").later(3 * 24 * 60);
    phone.note(Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 4 });
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(36.5) });
    says(&phone, &["No milk yet"]);
    assert!(button(&phone, "Nursed ✓").off);
}

#[test]
fn a_lamb_in_danger_says_the_sign_and_the_step_first() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.later(6 * 60);
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) });
    let page = phone.page();
    let Kind::Notice(first) = &page.blocks[0].kind else { panic!("{:?}", page.blocks[0]) };
    assert!(!first.inside[0].texts().is_empty());
    phone.press("Vet called");
    says(&phone, &["vet called 05:55"]);
}

/// A bottle lamb of five weeks.
fn bottle_lamb(kilograms: f64) -> (Phone, LambId) {
    let (mut phone, lamb) = at_lamb(Some(kilograms));
    let volume = Volume::from_milliliters(200.0);
    phone.note(Event::Fed { lamb, volume, milk: Milk::EweColostrum, way: Way::Bottle });
    phone.later(35 * 24 * 60 + 60);
    (phone, lamb)
}

#[test]
fn from_the_question_to_weaned_by_the_feed_makers_rule() {
    let (mut phone, _) = bottle_lamb(4.0);
    says(
        &phone,
        &[
            "Not enough known yet, by the feed maker’s rule",
            "Yes: 35 days old",
            "Not known: weighs 10.0 kg",
            "Not known: eats 250 g of solids on 3 days running",
        ],
    );
    for day in 0..3 {
        if day > 0 {
            phone.later(24 * 60);
        }
        phone.press("Solids eaten").write("Solid feed", "260").press("Save");
    }
    says(&phone, &["Yes: eats 250 g of solids"]);
    let lamb = match phone.screen {
        Screen::Lamb(lamb) => lamb,
        other => panic!("{other:?}"),
    };
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(10.4) });
    says(&phone, &["Ready to wean, by the feed maker’s rule", "10.4 kg at 37 days"]);
    phone.press("Weaned");
    says_none(&phone, &["Ready to wean", "Bottle round"]);
    assert!(phone.undo());
    says(&phone, &["Ready to wean"]);
}

#[test]
fn solid_feed_that_cannot_be_is_refused_where_it_was_typed_and_stays_typed() {
    let (mut phone, lamb) = bottle_lamb(4.0);
    phone.press("Solids eaten");
    for (typed, why) in [
        ("abc", "is not a number"),
        ("", "Nothing typed yet"),
        ("-20", "solid feed"),
        ("5000", "too heavy for a day’s solid feed"),
    ] {
        phone.write("Solid feed", typed).press("Save");
        says(&phone, &[why]);
        assert_eq!(phone.draft().top().typed("solids"), Some(typed));
    }
    assert!(phone.flock.lamb(lamb).expect("the lamb").solids.is_empty());
}

#[test]
fn a_farm_in_ounces_notes_solids_in_ounces() {
    let (mut phone, lamb) = bottle_lamb(4.0);
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.press("Solids eaten").write("Solid feed", "9").press("Save");
    let solids = &phone.flock.lamb(lamb).expect("the lamb").solids;
    assert_eq!(solids.len(), 1);
    assert_eq!(solids[0].mass, Mass::parse("9 oz", System::Us).expect("a weight"));
}

#[test]
fn a_lamb_on_its_dam_is_weaned_from_the_register_once_it_is_old_enough() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.press("Nursed");
    assert!(!has_button(&phone, "Weaned"));
    phone.later(60 * 24 * 60).press("Weaned");
    assert!(phone.flock.lamb(lamb).expect("the lamb").weaned.is_some());
    assert!(!has_button(&phone, "Weaned"));
}

fn register(phone: &Phone) -> Fold {
    let page = phone.page();
    let fold = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Fold(fold) if block.key == "register" => Some(fold.clone()),
        _ => None,
    });
    fold.expect("the register")
}

#[test]
fn the_register_is_folded_away_in_the_first_days() {
    let (mut phone, _) = at_lamb(Some(4.0));
    assert!(!register(&phone).open);
    phone.later(7 * 24 * 60);
    let page = phone.page();
    let open = page
        .blocks
        .iter()
        .any(|block| block.key == "fits" && block.inside().iter().any(|one| !one.inside().is_empty()));
    assert!(open, "from then on what fits its age stands open");
}

#[test]
fn a_ring_is_offered_in_the_farms_window_and_noted_once() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    let mut rings = phone.flock.settings.rings;
    rings.rule = yeanling_core::settings::RingRule::EnglandWales;
    rings.tails = true;
    phone.note(Event::Chose(Choice::Rings(rings)));
    says(&phone, &["Not in the first 24 h"]);
    phone.later(30 * 60).press("Tail ringed");
    says(&phone, &["Tail ring: on since"]);
    assert!(!has_button(&phone, "Tail ringed"));
    assert_eq!(phone.flock.lamb(lamb).expect("the lamb").rings.len(), 1);
    assert!(phone.undo());
    assert!(has_button(&phone, "Tail ringed"));
}

#[test]
fn a_ewe_lamb_that_is_kept_is_gone_to_as_a_ewe() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.press("Nursed").later(300 * 24 * 60).press("Keep for breeding");
    let kept = phone.flock.lamb(lamb).expect("the lamb").kept.expect("kept");
    assert_eq!(phone.screen, Screen::Ewe(kept));
    phone.open(Screen::Lamb(lamb));
    assert_eq!(button(&phone, "Her life as a ewe").does, Action::Go(Screen::Ewe(kept)));
    assert!(!has_button(&phone, "Nursed ✓"));
}

#[test]
fn a_dead_lamb_keeps_its_record_and_nothing_is_asked_of_it() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown });
    says(&phone, &["This lamb is dead. Its record stays.", "Dam: Ewe 12"]);
    says_none(&phone, &["Colostrum", "Next feed", "Look at it"]);
    assert_eq!(button(&phone, "Post-mortem").does, Action::Ask(Sheet::Examined(Animal::Lamb(lamb))));
}

#[test]
fn a_lamb_nobody_has_says_so_and_leads_back() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let (_, lamb) = at_lamb(None);
    phone.open(Screen::Lamb(lamb));
    says(&phone, &["not in the book"]);
    assert!(phone.page().back.is_some());
}

#[test]
fn a_fostered_lamb_leads_to_who_bore_it_and_to_who_rears_it() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    let other = phone.ewe("41");
    phone.note(Event::Life(Life::Fostered { lamb, dam: other }));
    says(&phone, &["fostered to Ewe 41"]);
    assert_eq!(button(&phone, "Reared by Ewe 41").does, Action::Go(Screen::Ewe(other)));
    assert!(has_button(&phone, "Dam: Ewe 12"));
}

/// A phone at the first of two lambs of ewe 14, whose waters were seen; ewe 41 is here too.
fn given_to_the_wrong_ewe() -> (Phone, [LambId; 2]) {
    let mut phone = Phone::at("2027-02-01 23:55");
    let wrong = phone.ewe("14");
    phone.ewe("41");
    phone.note(Event::SignSeen { ewe: wrong, sign: Sign::Restless });
    phone.later(20);
    let lambs = [phone.lamb(wrong), phone.lamb(wrong)];
    phone.open(Screen::Lamb(lambs[0]));
    (phone, lambs)
}

#[test]
fn a_litter_given_to_the_wrong_ewe_is_put_right_by_one_press_and_back_by_one() {
    let (mut phone, lambs) = given_to_the_wrong_ewe();
    let dam = |phone: &Phone, lamb| phone.flock.lamb(lamb).and_then(|lamb| lamb.dam);
    let wrong = dam(&phone, lambs[0]);
    phone.press("Wrong ewe?");
    assert!(!has_button(&phone, "14"));
    phone.press("41");
    says(
        &phone,
        &["From ewe 14 to ewe 41.", "Both lambs", "Noted of ewe 14 at this lambing", "That was ewe 41 too"],
    );
    phone.press("Another ewe");
    assert!(has_button(&phone, "41"));
    phone.press("41").press("Move to ewe 41");
    assert!(phone.page().sheets.is_empty());
    assert_ne!(dam(&phone, lambs[0]), wrong);
    assert_eq!(dam(&phone, lambs[0]), dam(&phone, lambs[1]));
    says(&phone, &["Dam: Ewe 41"]);
    assert!(phone.undo());
    assert_eq!((dam(&phone, lambs[0]), dam(&phone, lambs[1])), (wrong, wrong));
}

#[test]
fn one_lamb_of_several_goes_alone_and_leaves_what_was_noted_of_the_ewe() {
    let (mut phone, lambs) = given_to_the_wrong_ewe();
    let dam = |phone: &Phone, lamb| phone.flock.lamb(lamb).and_then(|lamb| lamb.dam);
    let wrong = dam(&phone, lambs[0]).expect("a dam");
    phone.press("Wrong ewe?").press("41").press("Only 14a");
    assert_eq!(phone.draft().top().chosen("dam-noted"), Some(1));
    phone.press("Move to ewe 41");
    assert_ne!(dam(&phone, lambs[0]), Some(wrong));
    assert_eq!(dam(&phone, lambs[1]), Some(wrong));
    let seen = phone.flock.lines_of(Animal::Ewe(wrong));
    assert!(seen.filter(|line| matches!(line.event, Event::SignSeen { .. })).count() == 1);
}

#[test]
fn a_chart_of_the_first_day_and_of_the_weights_is_told_in_words() {
    let (mut phone, lamb) = at_lamb(Some(4.0));
    phone.press("Fed 200");
    says(&phone, &["Given by hand so far: 200 ml", "400 ml by 6 h"]);
    phone.later(20 * 24 * 60);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(8.0) });
    says(&phone, &["8.0 kg at 20 days", "Under 85%"]);
}
