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
