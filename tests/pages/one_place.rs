//! One fact, one place: a booster is a medicine and reaches the lambs, a bag knows its day and its ewe, who leaves brings a
//! price, who is born dead has a cause.

use yeanling_core::book::{Animal, Event, EweId, GroupId, LambId};
use yeanling_pages::block::{Kind, Row};
use yeanling_pages::{Action, Request, Screen, Sheet};
use yeanling_words::{kit, life, medicines};

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

/// So many ewes with a ram since 1 October: no ewe of theirs lambs before 20 February, and the booster is due on 23 January.
fn put_to_ram(count: usize) -> (Phone, GroupId) {
    let mut phone = Phone::at("2026-10-01 09:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Top field").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", &format!("1-{count}"));
    phone.press(&format!("Put {count} ewes in")).press("Ram in").press("Save");
    phone.later(40 * DAY).press("Ram out").press("Save");
    (phone, group)
}

fn ewe(phone: &Phone, tag: &str) -> EweId {
    let found = phone.flock.ewes.values().find(|ewe| ewe.tag.as_deref() == Some(tag));
    found.unwrap_or_else(|| panic!("no ewe {tag}")).id
}

fn rows(phone: &Phone) -> Vec<Row> {
    let row = |kind: &Kind| match kind {
        Kind::Row(row) => Some(row.clone()),
        _ => None,
    };
    phone.page().all().into_iter().filter_map(|block| row(&block.kind)).collect()
}

/// What stands in the row whose text begins so; nothing where none does.
fn says(phone: &Phone, text: &str) -> Option<String> {
    let row = rows(phone).into_iter().find(|row| row.text.plain().starts_with(text));
    row.map(|row| row.says.plain())
}

/// On the morning of a day of the winter.
fn on(phone: &mut Phone, day: &str) {
    let day: chrono::NaiveDate = day.parse().expect("a day");
    let today = phone.now.local().date();
    phone.later((day - today).num_days() * DAY);
}

#[test]
fn a_booster_ticked_on_the_watch_is_a_medicine_of_each_ewe_and_reaches_her_lambs() {
    let (mut phone, _) = put_to_ram(3);
    on(&mut phone, "2027-01-24");
    phone.open(Screen::Watch).press("Given: Top field, Booster, from 9 Jan to 6 Feb. Ask your vet");
    phone.says("Noted for 3 ewes that have not had it.");
    phone.write(life::MEDICINE, "Eight in one").write(life::MEAT_DAYS, "21").press("Save");
    phone.later(1).open(Screen::Watch);
    assert_eq!(says(&phone, "Booster"), None);
    phone.open(Screen::Medicines).says("Booster: Eight in one; meat withdrawal 21 days").says("3 ewes");
    assert_eq!(phone.flock.treatments().len(), 3);
    on(&mut phone, "2027-02-25");
    let lamb = phone.lamb(ewe(&phone, "2"));
    phone.open(Screen::Lamb(lamb)).says("dam boosted 24 Jan");
    // The next year it stands ready as it was given.
    phone.act(&Action::Ask(Sheet::Boost(GroupId::from_uuid(uuid::Uuid::nil()))));
    phone.says("Every ewe here has had it.");
}

#[test]
fn a_booster_given_for_many_in_medicines_ends_the_reminder_and_one_ewe_left_out_is_told() {
    let (mut phone, _) = put_to_ram(3);
    on(&mut phone, "2027-01-20");
    for tag in ["1", "2"] {
        let animal = Animal::Ewe(ewe(&phone, tag));
        phone.act(&Action::Ask(Sheet::Treat(vec![animal])));
        phone.write(life::MEDICINE, "Eight in one").press(life::IS_BOOSTER).press("Save");
    }
    phone.open(Screen::Watch).says("Booster for the 1 ewe that has not had it");
    phone.open(Screen::Medicines).press(medicines::MANY).press("All ewes · 3");
    phone.press("Eight in one").press("Save");
    phone.open(Screen::Watch);
    assert_eq!(says(&phone, "Booster"), None);
}

#[test]
fn a_medicine_that_is_no_booster_ends_no_reminder() {
    let (mut phone, _) = put_to_ram(3);
    on(&mut phone, "2027-01-23");
    phone.open(Screen::Medicines).press(medicines::MANY).press("All ewes · 3");
    phone.write(life::MEDICINE, "Drench").press("Save").open(Screen::Watch);
    assert!(says(&phone, "Booster").is_some());
}

#[test]
fn in_its_window_a_booster_is_due_and_not_given_it_is_told_until_its_use_is_past() {
    let (mut phone, _) = put_to_ram(3);
    on(&mut phone, "2027-02-06");
    phone.open(Screen::Watch);
    assert_eq!(says(&phone, "Booster").as_deref(), Some("due, until 6 Feb"));
    let late = |phone: &Phone| {
        rows(phone)
            .iter()
            .any(|row| row.text.plain().starts_with("Booster") && row.state == yeanling_pages::State::Now)
    };
    assert!(!late(&phone), "due, not late");
    on(&mut phone, "2027-02-07");
    phone.open(Screen::Watch).says("late, its best days ended yesterday");
    assert!(late(&phone));
    // Out on 10 November: the last ewe lambs by about 12 April, and two weeks before that a booster no longer serves her.
    on(&mut phone, "2027-03-20");
    phone.open(Screen::Watch);
    assert!(says(&phone, "Booster").is_some());
    on(&mut phone, "2027-04-12");
    phone.open(Screen::Watch);
    assert_eq!(says(&phone, "Booster"), None);
}

#[test]
fn a_step_of_extra_feed_is_ticked_or_put_off() {
    let (mut phone, _) = put_to_ram(3);
    on(&mut phone, "2027-01-24");
    phone.open(Screen::Watch);
    let put_off = |phone: &Phone| {
        let all = phone.pressables();
        all.iter().find(|one| one.name.starts_with("Put off: Top field")).map(|one| one.name.clone())
    };
    let name = put_off(&phone).expect("a step to put off");
    phone.press(&name).press("In 3 days");
    phone.later(1).open(Screen::Watch);
    assert_eq!(says(&phone, "Extra feed"), None);
    phone.later(3 * DAY).open(Screen::Watch);
    assert!(says(&phone, "Extra feed").is_some());
}

#[test]
fn a_bag_frozen_last_january_is_used_first_and_knows_its_ewe_and_her_booster() {
    let mut phone = Phone::at("2026-11-10 10:00");
    let ewe = phone.ewe("12");
    phone.ewe("14");
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "Eight in one").write(life::WHEN, "2025-12-20T08:00");
    phone.press(life::IS_BOOSTER).press("Save");
    phone.open(Screen::Supplies);
    phone.press(kit::FREEZE).write(kit::BAGS, "2").write(kit::EACH, "150").press("Save").is_closed();
    phone.press(kit::FREEZE).write(kit::FROM_EWE, "99").write(kit::BAGS, "1").write(kit::EACH, "200");
    phone.press("Save").says("No ewe here wears 99");
    phone
        .write(kit::FROM_EWE, "12")
        .write(kit::FROZEN_DAY, "2026-01-15")
        .write(kit::BRIX, "27")
        .press("Save");
    let rows = rows(&phone);
    let bag = rows.iter().find(|row| row.name == "Ewe 12").expect("the bag of January");
    assert!(bag.text.plain().contains("Brix 27 · ewe boosted 20 Dec"), "{}", bag.text.plain());
    assert!(bag.says.plain().starts_with("use this first · frozen 15 Jan 2026"), "{}", bag.says.plain());
    let other = rows.iter().find(|row| row.name == "a ewe").expect("the bag of today");
    assert!(!other.says.plain().contains("use this first"));
    assert!(
        rows.iter().position(|row| row.name == "Ewe 12") < rows.iter().position(|row| row.name == "a ewe")
    );
}

#[test]
fn a_bag_of_a_day_to_come_is_refused_at_its_day() {
    let mut phone = Phone::at("2026-11-10 10:00");
    phone.open(Screen::Supplies).press(kit::FREEZE).write(kit::BAGS, "1").write(kit::EACH, "150");
    phone.write(kit::FROZEN_DAY, "2027-01-15").press("Save").says("is in the future");
    assert_eq!(phone.flock.stores.batches.len(), 0);
}

#[test]
fn a_sale_has_day_price_weight_and_buyer_and_a_cull_its_reason() {
    let mut phone = Phone::at("2027-08-20 10:00");
    let ewe = phone.ewe("7");
    phone.later(20 * DAY).open(Screen::Ewe(ewe));
    phone.act(&Action::Ask(Sheet::Leave(Animal::Ewe(ewe))));
    phone.press("Sold").write(life::LEAVE_DAY, "2027-09-03").write(life::TO, "Miller");
    phone.write(life::PRICE, "one eighty").press("Save").says("“one eighty”");
    phone
        .write(life::PRICE, "$182.50")
        .write(life::LEAVE_WEIGHT, "900")
        .press("Save")
        .says("900 kg is too heavy");
    phone.write(life::LEAVE_WEIGHT, "61").press("udder or teats").press("Save");
    phone.says("Sold on 3 Sep 2027: Miller. The record stays.");
    phone.says("Sold for 182.50 · weighed 61.0\u{a0}kg · culled: udder or teats");
    assert!(phone.undo());
    assert!(phone.flock.ewe(ewe).is_some_and(|ewe| ewe.lives() && ewe.weights.is_empty()));
    phone.says_nowhere("The record stays");
}

#[test]
fn who_is_sold_tomorrow_is_here_today() {
    let mut phone = Phone::at("2027-08-20 10:00");
    let ewe = phone.ewe("7");
    phone.open(Screen::Ewe(ewe)).act(&Action::Ask(Sheet::Leave(Animal::Ewe(ewe))));
    phone.press("Sold").write(life::LEAVE_DAY, "2027-08-21").press("Save").says("is in the future");
    assert!(phone.flock.ewe(ewe).is_some_and(yeanling_core::flock::Ewe::lives));
}

#[test]
fn a_lamb_born_dead_has_its_sex_its_weight_and_its_cause() {
    let mut phone = Phone::at("2027-02-25 03:00");
    let dam = phone.ewe("7");
    let born = Event::LambBorn { dam: Some(dam), beside: None, sex: None, alive: false };
    let lamb: LambId = phone.note(born).as_lamb();
    phone.open(Screen::Lamb(lamb)).press("What it is").press("Ram lamb").press("Save");
    phone.press("Weigh").keys("3.2").press("Save");
    phone.press("Cause").press("hard birth");
    phone.says("Ram lamb · weighed 3.2\u{a0}kg · cause: hard birth").has_no_button("Cause");
    phone.open(Screen::Summary).says("hard birth");
}

#[test]
fn the_whole_kit_is_counted_on_one_sheet_and_the_list_is_printed_or_shared() {
    let (mut phone, _) = put_to_ram(14);
    on(&mut phone, "2026-12-30");
    phone.open(Screen::Watch).says(kit::ASKED).says("first lamb possible");
    phone.open(Screen::Supplies).press(kit::COUNT_ALL);
    let fields = crate::reach::fields(&phone.page());
    let labels: Vec<String> = fields.into_iter().map(|(_, field)| field.label).collect();
    assert_eq!(labels.len(), 16, "{labels:?}");
    phone.press("Save").says(kit::NONE_COUNTED);
    for label in &labels {
        phone.write(label, "40");
    }
    phone.write("Gloves", "many").press("Save").says("“many”");
    phone.write("Gloves", "3").press("Save").is_closed();
    assert_eq!(
        phone.flock.lines.iter().filter(|line| matches!(line.event, Event::StoreCounted { .. })).count(),
        16
    );
    phone.open(Screen::Watch).says_nowhere(kit::ASKED);
    phone.open(Screen::Supplies).press(kit::PRINT_LIST).press(kit::SHARE_LIST);
    let Some(Request::GiveTable(_, name, table)) = phone.asked.last() else {
        panic!("no table: {:?}", phone.asked)
    };
    assert_eq!(name, "yeanling-kit-2026-12-30.csv");
    assert!(table.contains("Gloves,10,3,7"), "{table}");
    // Four weeks before the first lamb it is asked again.
    on(&mut phone, "2027-01-28");
    phone.open(Screen::Watch).says(kit::ASKED);
}
