//! Farm settings: each choice is noted as it is made; what is wrong stays as it was typed; what is taken back is shown again.

use yeanling_core::settings::{BreedType, DayRule, FarmSettings, Housing, RingRule};
use yeanling_core::units::System;
use yeanling_pages::block::Kind;
use yeanling_pages::phone::Look;
use yeanling_pages::{Request, Screen, SettingsPart as Part};
use yeanling_words::{cull_rules, farm, settings as words};

use crate::phone::Phone;
use crate::reach::fields;

fn settings(part: Part) -> Phone {
    let mut phone = Phone::at("2027-02-01 08:00");
    phone.open(Screen::SettingsOf(part));
    phone
}

/// What stands in a field, and what is wrong with it.
#[track_caller]
fn field(phone: &Phone, label: &str) -> (String, String) {
    let all = fields(&phone.page());
    let found = all.into_iter().find(|(_, field)| field.label == label);
    let (_, field) = found.unwrap_or_else(|| panic!("no field {label:?}"));
    (field.value, field.error)
}

/// What is down of these choices.
#[track_caller]
fn chosen(phone: &Phone, label: &str) -> Option<String> {
    let page = phone.page();
    let found = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Choices(it) if it.label == label => Some(it.clone()),
        _ => None,
    });
    let choices = found.unwrap_or_else(|| panic!("no choices {label:?}"));
    choices.chosen.map(|place| choices.options[place].label.clone())
}

#[test]
fn a_rule_is_one_tap_and_undo_brings_the_other_back() {
    let mut phone = settings(Part::Feeding);
    assert_eq!(chosen(&phone, words::FIRST_MILK).as_deref(), Some("AHDB, 200 ml/kg (3.05 fl oz/lb)"));
    phone.press("10% of body weight");
    phone.open(Screen::SettingsOf(Part::Farm)).press("outdoors").press("lb, fl oz, °F");
    assert_eq!(phone.flock.settings.day_rule, DayRule::TenPercent);
    assert_eq!(phone.flock.settings.housing, Housing::Outdoors);
    assert_eq!(phone.flock.settings.system, System::Us);
    assert!(phone.undo());
    assert_eq!(chosen(&phone, words::UNITS).as_deref(), Some("kg, ml, °C"));
}

#[test]
fn what_stands_already_is_not_noted_again() {
    let mut phone = settings(Part::Farm);
    for (part, stands) in [
        (Part::Farm, "kg, ml, °C"),
        (Part::Farm, "under a roof"),
        (Part::Farm, "any sheep"),
        (Part::Feeding, "AHDB, 200 ml/kg (3.05 fl oz/lb)"),
        (Part::Feeding, "1 year"),
        (Part::Care, "no rings"),
    ] {
        phone.open(Screen::SettingsOf(part)).press(stands);
    }
    assert_eq!(phone.book.len(), 0);
}

#[test]
fn each_part_has_a_way_back_to_its_defaults_as_one_press_that_can_be_taken_back() {
    let mut phone = settings(Part::Feeding);
    phone.says(words::ALL_DEFAULTS);
    phone.press("10% of body weight").press("6 months").write(words::POWDER_RATE_LABEL, "150");
    phone.press(words::BACK_TO_DEFAULTS).says(words::ALL_DEFAULTS);
    assert_eq!(field(&phone, words::POWDER_RATE_LABEL).0, "200");
    assert_eq!(phone.flock.settings, FarmSettings::default());
    assert!(phone.undo());
    assert_eq!(phone.flock.settings.day_rule, DayRule::TenPercent);
    // The name, the numbers and the units are nobody's default.
    phone.open(Screen::SettingsOf(Part::Farm)).press("lb, fl oz, °F").press("hair sheep");
    phone.write(words::FARM_NAME, "High Moor").press(words::SAVE_NAME).press(words::BACK_TO_DEFAULTS);
    let farm = &phone.flock.settings;
    assert_eq!(
        (farm.farm_name.as_str(), farm.system, farm.breed_type),
        ("High Moor", System::Us, BreedType::Any)
    );
    phone.says.look = Look::Night;
    phone.open(Screen::SettingsOf(Part::Display)).press(words::BACK_TO_DEFAULTS);
    assert_eq!(phone.asked, [Request::ChooseLook(Look::Phone)]);
}

#[test]
fn the_parts_say_how_much_was_changed_in_each() {
    let mut phone = settings(Part::Feeding);
    phone.press("10% of body weight").open(Screen::Settings);
    phone.says(&words::part(words::FEEDING_ABOUT, 1)).says(words::ALERT_TIMES_ABOUT);
    phone.press(words::CARE);
    assert_eq!(phone.screen, Screen::SettingsOf(Part::Care));
}

#[test]
fn the_look_is_this_phones_and_stands_in_no_book() {
    let mut phone = settings(Part::Display);
    phone.press("Night");
    assert_eq!(phone.asked, [Request::ChooseLook(Look::Night)]);
    assert_eq!(phone.book.len(), 0);
}

#[test]
fn the_farm_is_named_once_its_name_was_changed() {
    let mut phone = settings(Part::Farm);
    phone.says_nowhere(words::SAVE_NAME);
    phone.write(words::FARM_NAME, "  High Moor ").press(words::SAVE_NAME).says_nowhere(words::SAVE_NAME);
    assert_eq!(phone.flock.settings.farm_name, "High Moor");
    assert_eq!(field(&phone, words::FARM_NAME).0, "High Moor");
    assert!(phone.undo());
    assert_eq!(field(&phone, words::FARM_NAME).0, "");
}

#[test]
fn a_name_that_is_too_long_is_refused_at_its_field() {
    let mut phone = settings(Part::Farm);
    let long = "moor ".repeat(200);
    phone.write(words::FARM_NAME, &long).press(words::SAVE_NAME);
    let (typed, wrong) = field(&phone, words::FARM_NAME);
    assert_eq!((typed, wrong.is_empty()), (long, false));
}

#[test]
fn a_strength_on_no_label_is_refused_and_stays_as_it_was_typed() {
    let mut phone = settings(Part::Feeding);
    phone.write(words::POWDER_RATE_LABEL, "0").press(words::SAVE_RATE);
    let (typed, wrong) = field(&phone, words::POWDER_RATE_LABEL);
    assert_eq!(typed, "0");
    assert!(wrong.starts_with("0 g/L is out of range. Enter 100 to 300 g/L."), "{wrong}");
    phone.write(words::POWDER_RATE_LABEL, "160").press(words::SAVE_RATE).says_nowhere(words::SAVE_RATE);
    assert_eq!(words::rate(phone.flock.settings.powder_rate, System::Metric), "160 g/L");
    assert!(phone.undo());
    assert_eq!(field(&phone, words::POWDER_RATE_LABEL).0, "200");
}

#[test]
fn limits_are_saved_together_and_told_until_they_change() {
    let mut phone = settings(Part::AlertTimes);
    phone.press("Save alert times").says(words::UNCHANGED);
    phone.write("Up on its feet", "20").says_nowhere(words::UNCHANGED);
    phone.press("Save alert times").says(words::SAVED);
    assert_eq!(phone.flock.settings.limits.up_minutes, 20);
    assert!(phone.undo());
    phone.says_nowhere(words::SAVED);
    assert_eq!(field(&phone, "Up on its feet").0, "30");
}

#[test]
fn a_limit_that_is_no_number_or_out_of_order_is_said_at_its_field() {
    let mut phone = settings(Part::AlertTimes);
    phone.write("Colostrum late", "soon").press("Save alert times");
    let wrong = "“soon” is not a whole number. Type it like 120.";
    assert_eq!(field(&phone, "Colostrum late"), ("soon".to_owned(), wrong.to_owned()));
    // Late comes after the help, by our own order of the limits.
    phone.write("Colostrum late", "50").press("Save alert times");
    let (typed, wrong) = field(&phone, "Colostrum late");
    assert_eq!((typed.as_str(), wrong.is_empty()), ("50", false));
    // It is right once the other is.
    phone.write("Help it nurse", "40").press("Save alert times").says(words::SAVED);
    assert_eq!(field(&phone, "Colostrum late").1, "");
    assert_eq!(phone.book.len(), 1);
}

#[test]
fn a_long_limit_is_told_in_hours_while_it_is_typed() {
    let mut phone = settings(Part::AlertTimes);
    phone.write("Colostrum deadline", "390").says("6 h 30 min · usual: 360");
}

#[test]
fn the_stays_in_the_pens_are_saved_too() {
    let mut phone = settings(Part::AlertTimes);
    phone.write("Twins stay", "60").press(words::SAVE_STAY).says(words::SAVED);
    assert_eq!(phone.flock.settings.stay.twins_hours, 60);
}

#[test]
fn whoever_first_chooses_a_ring_rule_means_tails() {
    let mut phone = settings(Part::Care);
    phone.says_nowhere(words::RINGS_BOTH);
    phone.press("England and Wales");
    assert_eq!(chosen(&phone, words::RINGS_ON).as_deref(), Some(words::RINGS_TAILS));
    phone.press(words::RINGS_BOTH);
    let rings = phone.flock.settings.rings;
    assert_eq!((rings.rule, rings.tails, rings.ram_lambs), (RingRule::EnglandWales, true, true));
}

#[test]
fn a_ring_that_the_law_bans_is_not_offered_and_one_chosen_before_is_told() {
    let mut phone = settings(Part::Care);
    phone.press("New Zealand").press(words::RINGS_BOTH).press("Germany").says(words::RINGS_BANNED);
    phone.says_nowhere(words::RINGS_RAMS);
    phone.press(words::RINGS_TAILS).says_nowhere(words::RINGS_BANNED);
}

#[test]
fn the_farms_own_days_for_rings_keep_within_what_is_allowed() {
    let mut phone = settings(Part::Care);
    phone.press(words::RINGS_OWN);
    assert_eq!(field(&phone, words::RINGS_DAYS).0, "7");
    phone.write(words::RINGS_DAYS, "5000").press(words::SAVE_DAYS);
    assert_ne!(field(&phone, words::RINGS_DAYS).1, "");
    phone.write(words::RINGS_DAYS, "a week").press(words::SAVE_DAYS);
    assert_eq!(field(&phone, words::RINGS_DAYS).1, words::not_whole("a week", 7));
    phone.write(words::RINGS_DAYS, "10").press(words::SAVE_DAYS);
    assert_eq!(phone.flock.settings.rings.rule, RingRule::Own { days: 10 });
    assert_eq!(chosen(&phone, words::RINGS).as_deref(), Some(words::RINGS_OWN));
}

#[test]
fn a_mark_is_noted_when_its_field_is_left_and_what_is_none_goes_with_the_screen() {
    let mut phone = settings(Part::Care);
    phone
        .write(cull_rules::HARD, "31")
        .leave_field(cull_rules::HARD)
        .says("Enter 1 to 30, or leave it blank.");
    phone.write(cull_rules::HARD, "1").leave_field(cull_rules::HARD);
    assert_eq!(phone.flock.settings.cull_rules.hard_births, Some(1));
    phone.write(cull_rules::LOST, "3").open(Screen::Farm).open(Screen::SettingsOf(Part::Care));
    assert_eq!(phone.flock.settings.cull_rules.lost, Some(3));
    phone.write(cull_rules::LOST, "x").open(Screen::Farm).open(Screen::SettingsOf(Part::Care));
    assert_eq!(field(&phone, cull_rules::LOST), ("3".to_owned(), String::new()));
    phone.write(cull_rules::LOST, " ").leave_field(cull_rules::LOST);
    assert_eq!(phone.flock.settings.cull_rules.lost, None);
}

#[test]
fn half_typed_limits_are_still_there_after_a_look_elsewhere() {
    let mut phone = settings(Part::AlertTimes);
    phone.write("Up on its feet", "25").open(Screen::Farm).says(farm::SETTINGS);
    phone.open(Screen::SettingsOf(Part::AlertTimes));
    assert_eq!(field(&phone, "Up on its feet").0, "25");
    assert_eq!(phone.page().back.map(|(screen, _)| screen), Some(Screen::Settings));
}
