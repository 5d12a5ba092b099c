//! Hay for winter, check a ration, water: each answer as soon as all is typed, each refusal in words.

use yeanling_core::book::{Event, Item};
use yeanling_core::units::Amount;
use yeanling_pages::{Action, Screen};

use crate::phone::Phone;
use crate::reach::fields;

fn phone() -> Phone {
    let mut phone = Phone::at("2026-10-01 10:00");
    phone.open(Screen::Feed);
    phone
}

/// Types a weight in pounds.
fn pounds(phone: &mut Phone, label: &str, text: &str) {
    let all = fields(&phone.page());
    let (_, field) = all.iter().find(|(_, field)| field.label == label).expect("the field");
    let pounds = field.units.as_ref().and_then(|units| units.options.iter().find(|unit| unit.label == "lb"));
    let does: Action = pounds.expect("pounds").does.clone();
    phone.act(&does);
    phone.write(label, text);
}

#[test]
fn hay_is_told_once_every_field_is_filled_and_refused_where_no_ewe_eats_so_much() {
    let mut phone = phone();
    phone.says("Fill in every field");
    phone.write("Ewes", "10").write("Days of feeding", "210");
    pounds(&mut phone, "Ewe weight", "125");
    pounds(&mut phone, "Bale weight", "40");
    // 10 × 125 lb × 210 days × 4% = 10,500 lb: 263 bales of 40 lb. The farm counts in kilograms.
    phone.says("263 bales").says("4763\u{a0}kg in all");
    phone.write("Hay a day, % of body weight", "20");
    phone.says("Feed, a ewe a season: 2381\u{a0}kg is out of range. Enter 0\u{a0}kg to 1500\u{a0}kg.");
    phone.write("Hay a day, % of body weight", "four").says("“four”").says("Fill in every field");
    phone
        .write("Hay a day, % of body weight", "4")
        .press("why? Hay for the winter")
        .says("263 bales of 40\u{a0}lb");
    phone.act(&Action::Close);
    phone.note(Event::StoreCounted { item: Item::Hay, amount: Amount::from_units(1000.0) });
    phone.says("On hand");
}

#[test]
fn the_living_ewes_of_the_book_stand_there_until_others_are_typed() {
    let mut phone = phone();
    let ewes = |phone: &Phone| {
        fields(&phone.page())
            .into_iter()
            .find(|(_, field)| field.label == "Ewes")
            .map(|(_, field)| field.value)
    };
    assert_eq!(ewes(&phone).as_deref(), Some(""));
    phone.ewe("1");
    phone.ewe("2");
    assert_eq!(ewes(&phone).as_deref(), Some("2"));
    phone.press("Water").write("Ewes", "40").says("120 L to 320 L of water a day");
    phone.press("why? Water").act(&Action::Close);
    phone.write("Ewes", "4000").says("Ewes: 4000 is out of range. Enter 1 to 3000.");
    phone.press("Hay");
    assert_eq!(ewes(&phone).as_deref(), Some("4000"));
}

#[test]
fn a_ration_names_what_is_shortest_and_copper_that_poisons() {
    let mut phone = phone();
    phone.press("Ration").press("dry (maintenance)").says("Fill in every field to see what she gets");
    // Straw alone: 1.4 kg of 90% dry matter, 6.3 MJ, 4% protein, 0.3% calcium.
    phone.write("As fed", "1.4").write("Dry matter", "90").write("Energy (ME) of the dry matter", "6.3");
    phone.write("Crude protein", "4").write("Calcium", "0.3");
    phone.says("Most short: protein").says("Copper is not known for every feed");
    phone
        .write("Copper, if known", "12")
        .says("Copper 12 ppm: can poison where molybdenum is low. Ask your vet.");
    phone.write("Copper, if known", "300");
    phone.says("Copper 300 ppm is too much for sheep: over 15. Do not feed it; ask your vet.");
    phone.write("Copper, if known", "6").write("Selenium, if known", "0.1").says("Copper 6 ppm: under 10.");
    phone.press("why? Against what she needs").act(&Action::Close);
}

#[test]
fn what_was_typed_of_a_feed_outlives_another_that_comes_and_goes() {
    let mut phone = phone();
    phone.press("Ration").write("Crude protein", "4").press("Another feed");
    let protein = |phone: &Phone| -> Vec<String> {
        let all = fields(&phone.page()).into_iter();
        all.filter(|(_, field)| field.label == "Crude protein").map(|(_, field)| field.value).collect()
    };
    assert_eq!(protein(&phone), ["4", ""]);
    for _ in 0..3 {
        phone.press("Another feed");
    }
    assert!(phone.pressables().iter().all(|one| one.label != "Another feed"), "five are the most");
    for _ in 0..4 {
        phone.press("Remove the last feed");
    }
    assert_eq!(protein(&phone), ["4"]);
    assert!(phone.pressables().iter().all(|one| one.label != "Remove the last feed"));
}

#[test]
fn hay_and_ration_stand_on_one_basis_with_the_waste_apart() {
    let mut phone = phone();
    phone
        .write("Ewes", "10")
        .write("Days of feeding", "210")
        .write("Ewe weight", "70")
        .write("Bale weight", "20");
    // 4% of 70 kg: 2.8 kg as fed, of which a tenth is waste; the rest is 88% dry.
    phone.says("For one ewe 2.8\u{a0}kg a day as fed, waste included");
    phone.says("Of it a ewe eats 2.52\u{a0}kg as fed, 2.22\u{a0}kg dry matter; 0.28\u{a0}kg is waste.");
    phone.says("The ration’s table, first 15 weeks: 1.4\u{a0}kg dry matter a day, no waste.");
    phone.write("Wasted", "90").says("The share: 90% is out of range");
    phone
        .press("Ration")
        .write("As fed", "2.0")
        .write("Dry matter", "90")
        .write("Energy (ME) of the dry matter", "9");
    phone.write("Crude protein", "10").write("Calcium", "0.5");
    phone.says("Eaten, no waste: 2.0\u{a0}kg as fed, 1.8\u{a0}kg dry matter a day.");
}

#[test]
fn extra_feed_goes_by_scan_and_score_to_a_card_and_to_bags() {
    let mut phone = Phone::at("2026-11-25 10:00");
    let group = phone.note(Event::GroupFormed { name: "Top".to_owned() }).as_group();
    let at = |day: &str| crate::year::moment(&format!("{day} 08:00"));
    let ewes: Vec<_> = (1..=6)
        .map(|tag| phone.note_at(Event::EweCame { tag: Some(tag.to_string()) }, at("2026-09-01")).as_ewe())
        .collect();
    for ewe in &ewes {
        phone.note_at(Event::JoinedGroup { ewe: *ewe, group }, at("2026-09-30"));
    }
    phone.note_at(Event::RamIn { group, ram: None, age: None }, at("2026-10-01"));
    phone.note_at(Event::RamOut { group }, at("2026-10-20"));
    for (ewe, lambs) in ewes.iter().zip([1, 1, 2, 2, 3]) {
        phone.note_at(Event::Scanned { ewe: *ewe, lambs, days: None }, at("2026-11-24"));
    }
    let score = yeanling_core::units::Condition::from_quarters(8);
    phone.note_at(Event::Conditioned { ewe: ewes[3], score }, at("2026-11-24"));
    phone.open(Screen::Feed).press("Groups");
    let value = |phone: &Phone, label: &str| {
        let all = fields(&phone.page()).into_iter();
        all.filter(|(_, field)| field.label == label).map(|(_, field)| field.value).next()
    };
    let counts = ["Singles", "Twins", "Triplets and more", "Thin", "Not scanned"];
    let counts: Vec<String> = counts.iter().map(|label| value(&phone, label).expect("a field")).collect();
    assert_eq!(counts, ["2", "1", "1", "1", "1"]);
    // Ram in and 142 days, less six weeks; ram out and 152 days after that.
    assert_eq!(value(&phone, "First day of feeding").as_deref(), Some("2027-01-09"));
    assert_eq!(value(&phone, "Days of feeding").as_deref(), Some("71"));
    phone
        .says("usual for any sheep, until you weigh 5 ewes")
        .says("380\u{a0}g each a day, 0.76\u{a0}kg for all");
    phone
        .says("9 Jan 100\u{a0}g · 11 Jan 200\u{a0}g · 13 Jan 300\u{a0}g · 15 Jan 380\u{a0}g")
        .says("Give it in two feeds a day");
    phone.says("bags of 25\u{a0}kg").says("Singles, 2 ewes").says("100 g each, 0.2 kg in the trough");
    phone.press("why? Extra feed by group").act(&Action::Close);
    phone.press("Print the feeding card");
    assert_eq!(phone.asked, [yeanling_pages::Request::Print]);
}

#[test]
fn a_ewe_weighs_what_the_flocks_own_weigh_once_there_are_five() {
    let mut phone = phone();
    phone.note(Event::Chose(yeanling_core::settings::Choice::BreedType(
        yeanling_core::settings::BreedType::Hair,
    )));
    phone.says("60\u{a0}kg: usual for hair sheep, until you weigh 5 ewes.");
    for (tag, kilograms) in [("1", 50.0), ("2", 52.0), ("3", 54.0), ("4", 56.0), ("5", 58.0)] {
        let ewe = phone.ewe(tag);
        let mass = yeanling_core::units::Mass::from_kilograms(kilograms);
        phone.note(Event::EweWeighed { ewe, mass });
    }
    phone.says("54\u{a0}kg: mean of 5 of your ewes.");
}
