//! The stores: counted, used up, refused where there is not as much; colostrum frozen and thawed by the bag.

use yeanling_pages::Screen;
use yeanling_pages::block::{Kind, Row};

use crate::phone::Phone;

/// The stores of a farm with three ewes.
fn stores() -> Phone {
    let mut phone = Phone::at("2026-01-10 10:00");
    for tag in ["1", "2", "3"] {
        phone.ewe(tag);
    }
    phone.open(Screen::Supplies);
    phone
}

/// Returns what stands in the row of a thing.
#[track_caller]
fn row(phone: &Phone, name: &str) -> String {
    let page = phone.page();
    let found = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Row(row) if row.name == name => Some(told(row)),
        _ => None,
    });
    found.unwrap_or_else(|| panic!("no row {name:?}"))
}

fn told(row: &Row) -> String {
    format!("{} {}", row.text.plain(), row.says.plain()).replace('\u{a0}', " ")
}

#[track_caller]
fn stands(phone: &Phone, name: &str, text: &str) {
    let row = row(phone, name);
    assert!(row.contains(text), "{name}: {row:?} does not say {text:?}");
}

#[test]
fn what_is_short_is_told_and_what_is_enough_says_so() {
    let mut phone = stores();
    // 3 ewes: one case of help, four pairs of gloves and a spare pair.
    stands(&phone, "Gloves", "not counted, 10 needed");
    phone.press("Count gloves").write("How much", "2").press("Save");
    stands(&phone, "Gloves", "2 of 10");
    stands(&phone, "Gloves", "short of 8");
    // What the shelf counts in another unit says for how many uses.
    stands(&phone, "Iodine", "navel dips");
    phone.press("Count teats").write("How much", "50").press("Save");
    stands(&phone, "Teats", "enough");
    assert!(phone.undo());
    stands(&phone, "Teats", "not counted");
}

#[test]
fn what_is_no_amount_or_more_than_is_there_is_refused_at_its_field_and_stays() {
    let mut phone = stores();
    phone.press("Count gloves").write("How much", "two").press("Save").tells("“two”").wrong_at("How much");
    phone.write("How much", "2").press("Save").is_closed();
    phone.press("Count gloves").press("used").write("How much", "7").press("Save");
    phone.wrong_at("How much").has_typed("How much", "7");
    phone.write("How much", "1").press("Save").is_closed();
    stands(&phone, "Gloves", "1 of 10");
}

#[test]
fn the_freezer_is_counted_by_the_bag_the_oldest_first() {
    let mut phone = stores();
    phone.tells("Have frozen: ").tells("the first day of ");
    phone.press("Freeze colostrum").write("Bags", "three").press("Save").wrong_at("Bags");
    phone.write("Bags", "3").write("In each", "9000").press("Save");
    phone.tells("is out of range for a bag").wrong_at("In each").has_typed("In each", "9000");
    phone.write("In each", "150").write("Brix, if measured", "24,5").press("Save").is_closed();
    stands(&phone, "a ewe", "3 bags of 150 ml, Brix 24.5");
    stands(&phone, "a ewe", "use this first");
    phone.press("Thawed one, a ewe");
    stands(&phone, "a ewe", "2 bags of 150 ml");
    assert!(phone.undo());
    stands(&phone, "a ewe", "3 bags of 150 ml");
}
