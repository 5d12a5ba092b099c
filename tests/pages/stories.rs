//! Stories that go over many screens: a whole season from a table of ewes to the year, and a medicine from the needle to
//! the market.

use yeanling_core::book::{Animal, Event, EweId, GroupId, LambId};
use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::Mass;
use yeanling_pages::block::{Kind, Row};
use yeanling_pages::{Action, Request, Screen};

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

/// Returns the rows that are on the page.
fn rows(phone: &Phone) -> Vec<Row> {
    let row = |kind: &Kind| match kind {
        Kind::Row(row) => Some(row.clone()),
        _ => None,
    };
    phone.page().all().into_iter().filter_map(|block| row(&block.kind)).collect()
}

/// Asserts that a figure of the flock's table, by the beginning of its name, stands with this value and note.
#[track_caller]
fn figure(phone: &Phone, name: &str, says: &str) {
    let page = phone.page();
    let ledgers = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Ledger(ledger) => Some(ledger.rows.clone()),
        _ => None,
    });
    let told: Vec<String> = ledgers
        .flatten()
        .filter(|row| row.name.starts_with(name))
        .map(|row| format!("{} {}", row.value.plain(), row.note))
        .collect();
    assert!(told.iter().any(|told| told.contains(says)), "{name}: {told:?} does not say {says:?}");
}

fn ewe(phone: &Phone, tag: &str) -> EweId {
    let found = phone.flock.ewes.values().find(|ewe| ewe.tag.as_deref() == Some(tag));
    found.unwrap_or_else(|| panic!("no ewe {tag}")).id
}

/// Ewes of a table are put to the ram for fifty days from now on.
fn put_to_ram(phone: &mut Phone, count: usize) -> GroupId {
    let rows: String = (1..=count).map(|tag| format!("{tag},{}\n", 2020 + tag % 4)).collect();
    phone.open(Screen::Tables).pick("Open a table", format!("tag,born\n{rows}").as_bytes());
    phone.press(&format!("Add {count} ewes"));
    phone.open(Screen::Season).press("Form a group").write("Name", "All").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", &format!("1-{count}"));
    phone.press(&format!("Put {count} ewes in")).press("Ram in").press("Save");
    phone.later(50 * DAY).press("Ram out").press("Save");
    group
}

/// She lambs now: her first lamb weighs 4 kg.
fn lambs(phone: &mut Phone, tag: &str, more: &[&str]) {
    let her = ewe(phone, tag);
    phone.open(Screen::LambingEwe(her)).press("Ewe lamb").keys("4");
    for sex in more {
        phone.press("Next lamb").press(sex);
    }
    phone.press("All lambs born");
}

#[test]
fn a_season_of_twenty_ewes_goes_from_their_table_over_the_ram_and_every_birth_to_the_year() {
    let mut phone = Phone::at("2026-10-01 09:00");
    put_to_ram(&mut phone, 20);
    phone.later(96 * DAY);
    // Eighteen lamb from day 146 on, three a night: every other with twins, and one lamb is born dead.
    for tag in 1..=18 {
        let more: &[&str] = if tag % 2 == 1 {
            &[]
        } else if tag == 10 {
            &["Born dead"]
        } else {
            &["Ram lamb"]
        };
        lambs(&mut phone, &tag.to_string(), more);
        phone.later(8 * 60);
    }
    phone.later(10 * DAY).open(Screen::Summary);
    // 18 of 20 is 90%, 9 singles and 9 twins are 27 lambs, 27 of 20 are 135%, 26 of 27 born alive.
    figure(&phone, "Ewes that lambed", "18");
    figure(&phone, "Lambed", "90%");
    figure(&phone, "Lambs born", "27");
    figure(&phone, "Lambing rate", "135%");
    figure(&phone, "Litters", "9 · 9 · 0");
    figure(&phone, "Dead at birth", "1 of 27 born");
    figure(&phone, "Alive at one week", "26 of 26");

    // At eight weeks a weight unlike the last is asked about, and all are weaned together, with one undo.
    phone.later(50 * DAY).open(Screen::WeighLambs).keys("3.2").press("Save, next");
    phone.tells("If 3.2 kg is right, tap Save again.").keys("<<<21").press("Save, next");
    phone.press("Wean all 26").press("Yes, all 26 today").has_no_button("Wean all");
    assert!(phone.undo());
    phone.press("Wean all 26").press("Yes, all 26 today").open(Screen::Summary);
    figure(&phone, "Weaned", "26 from 20 put to the ram");
    // Its own sheet asks as the scales do.
    let first = phone.flock.births().next().expect("a lamb").1;
    phone.open(Screen::Lamb(first)).press("Weigh").write("Weight", "12").press("Save");
    phone.tells("It weighed 21.0 kg on").press("Save").is_closed();
}

#[test]
fn a_mark_narrows_her_days_and_a_birth_leaves_the_forecast() {
    let mut phone = Phone::at("2026-10-01 10:00");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    for tag in ["1", "2", "3", "4"] {
        let ewe = phone.ewe(tag);
        phone.note(Event::JoinedGroup { ewe, group });
    }
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(8 * DAY);
    let marked = ewe(&phone, "2");
    phone.open(Screen::Ewe(marked)).says("8 in 10 from 22 Feb to ");
    phone.press("Crayon mark").write("Color", "red").press("Save");
    // 9 October and 147 days: 5 March. One mark in four does not hold, so half of the chance has passed a day later.
    phone.says("likely 6 Mar");
    // In the new year the ram is long out, and it is the night of the fourth of March.
    phone.later(146 * DAY).open(Screen::Season);
    assert_eq!(rows(&phone).first().map(|row| row.name.as_str()), Some("Ewe 2"), "she is the nearest");
    phone.open(Screen::LambingEwe(marked)).press("Ewe lamb");
    phone.open(Screen::Season).says("4 put to the ram · 1 has lambed");
    phone.open(Screen::Summary).says("1 of 4 put to the ram");
}

#[test]
fn once_half_have_lambed_the_forecast_is_of_the_other_half() {
    let mut phone = Phone::at("2026-10-01 12:00");
    put_to_ram(&mut phone, 20);
    phone.open(Screen::Season).says("20 put to the ram · none has lambed");
    // One a night, as ewes of the first cycle do: from 144 days after the ram came in.
    phone.later(94 * DAY);
    for tag in 1..=10 {
        lambs(&mut phone, &tag.to_string(), &[]);
        phone.later(DAY);
    }
    phone.open(Screen::Season).says("20 put to the ram · 10 have lambed").says("Of 20 put to the ram,");
    let texts = crate::reach::texts(&phone.page());
    let to_come =
        texts.iter().find_map(|text| text.split_once(" lambings to come")).expect("what is to come");
    let to_come: f64 = to_come.0.parse().unwrap_or_else(|_| panic!("{to_come:?}"));
    assert!(to_come > 7.0 && to_come <= 10.0, "{to_come}");
    // No one who has lambed is near.
    let near: Vec<u32> =
        rows(&phone).iter().filter_map(|row| row.name.strip_prefix("Ewe ")?.parse().ok()).collect();
    assert!(!near.is_empty() && near.iter().all(|tag| *tag > 10), "{near:?}");
}

#[test]
fn ewes_past_their_days_stand_on_the_watch_and_lead_to_each_with_what_a_scan_saw() {
    let mut phone = Phone::at("2026-10-01 12:00");
    put_to_ram(&mut phone, 4);
    phone.later(50 * DAY);
    for (tag, lambs) in [("1", 0), ("2", 2), ("3", 1)] {
        let ewe = ewe(&phone, tag);
        phone.note(Event::Scanned { ewe, lambs, days: None });
    }
    phone.later(50 * DAY);
    lambs(&mut phone, "3", &[]);
    phone.later(66 * DAY).open(Screen::Watch);
    let told = rows(&phone).into_iter().find(|row| row.name == "2 ewes").expect("both stand together");
    assert!(told.text.plain().contains("Overdue, not lambed"), "{told:?}");
    assert_eq!(told.to, Some(Screen::Season));
    phone.open(Screen::Season).says("Overdue");
    let past: Vec<Row> = rows(&phone).into_iter().filter(|row| row.to.is_some_and(is_ewe)).collect();
    let names: Vec<&str> = past.iter().map(|row| row.name.as_str()).collect();
    assert_eq!(names, ["Ewe 2", "Ewe 4"]);
    let first = past.first().map(|row| format!("{} {}", row.text.plain(), row.says.plain()));
    assert!(first.as_ref().is_some_and(|said| said.contains("scanned 2")), "{first:?}");
}

fn is_ewe(screen: Screen) -> bool {
    matches!(screen, Screen::Ewe(_) | Screen::LambingEwe(_))
}

#[test]
fn weighed_lambs_show_how_they_grew_who_lags_and_which_ewe_meets_a_mark() {
    let mut phone = Phone::at("2026-03-01 09:00");
    let mut all: Vec<LambId> = Vec::new();
    for tag in ["1", "2"] {
        let dam = phone.ewe(tag);
        for _ in 0..3 {
            let lamb = phone.lamb(dam);
            phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
            phone.note(Event::Sucked { lamb });
            all.push(lamb);
        }
    }
    phone.later(2 * DAY);
    phone.note(Event::Died { animal: Animal::Lamb(all[1]), cause: yeanling_core::book::Cause::Cold });
    phone.later(55 * DAY).open(Screen::WeighLambs).says("1 of 5 · weighed today 0");
    // A slip of the keys is said and stays.
    phone.keys("620").press("Save, next").tells("620 kg is too heavy for a lamb of its age.").keys("<<<");
    for weight in ["20.5", "20.5", "14.5", "20.5", "20.5"] {
        phone.keys(weight).press("Save, next");
    }
    // 16.5 kg in 57 days are 289 g a day; the light one gained 184 and lags.
    phone.tells("All lambs done.").tells("20.5 kg at 57 days, 289 g a day since birth");
    phone.tells("adjusted to 60 days");
    let lags = |row: &Row| format!("{} {}", row.text.plain(), row.says.plain()).contains("lags behind");
    assert_eq!(rows(&phone).iter().filter(|row| lags(row)).count(), 1);

    phone.note(Event::Chose(Choice::CullRules(CullRules { lost: Some(1), ..CullRules::default() })));
    phone.open(Screen::Summary).says("born triplet or more, reared triplet or more");
    let again: Vec<String> = rows(&phone).into_iter().map(|row| row.name).collect();
    assert!(again.contains(&"Ewe 1".to_owned()) && !again.contains(&"Ewe 2".to_owned()), "{again:?}");
    let first = ewe(&phone, "1");
    phone.open(Screen::Ewe(first)).tells("1 lambing, 3 lambs: 1 lost, 2 reared");
    phone.tells("Reared 41.0 kg in all, 41.0 kg a lambing").tells("Meets your cull rule: 1 lamb lost");
}

#[test]
fn a_medicine_withholds_her_a_sale_is_refused_until_then_and_the_record_goes_to_a_spreadsheet() {
    let mut phone = Phone::at("2027-03-01 09:00");
    let her = phone.ewe("41");
    phone.open(Screen::Ewe(her)).press("Medicine").write("Name of the medicine", "White drench");
    phone
        .write("Meat withdrawal", "8")
        .write("Milk withdrawal", "8")
        .write("For what", "worms")
        .press("Save")
        .is_closed();
    phone.tells("Meat withdrawal: until 9 Mar 09:00 (White drench)");
    phone.press("Sold or gone").press("Sold").press("Save").tells("Do not sell or slaughter until then");
    phone.act(&Action::Close);

    phone.open(Screen::Tables).press("Medicines");
    let Some(Request::GiveTable(_, name, table)) = phone.asked.last() else { panic!("no table") };
    assert_eq!(name, "yeanling-medicines-2027-03-01.csv");
    let row: Vec<&str> = table.lines().nth(1).expect("a row").split(',').collect();
    assert_eq!(
        row[3..],
        ["White drench", "", "", "worms", "", "", "8", "2027-03-09 09:00", "8", "2027-03-09 09:00"]
    );

    // Once it ends she may go, and lives here no more.
    phone.later(9 * DAY).open(Screen::Ewe(her)).press("Sold or gone").press("Sold");
    phone.write("To whom or where, if you like", "the mart").press("Save").is_closed();
    phone.tells("Sold on 10 Mar 2027: the mart. The record stays.");
    phone.open(Screen::Flock);
    // Her place stays, and says so; among those that are here she is none.
    phone.says("sold");
    phone.press("In withdrawal").says_nowhere("Ewe 41");
    phone.press("Dead or gone").says("sold");
}

#[test]
fn what_was_found_in_a_dead_lamb_is_asked_of_no_living_one_can_be_changed_and_goes_along() {
    let mut phone = Phone::at("2026-03-01 09:00");
    let dam = phone.ewe("40");
    let lamb = phone.lamb(dam);
    phone.open(Screen::Lamb(lamb)).has_no_button("Post-mortem");
    phone.press("Died").press("infection").press("Post-mortem").press("Save");
    let label = yeanling_words::life::EXAMINED_LABEL;
    phone.wrong_at(label).write(label, "milk in the lungs").press("Save").is_closed();
    phone.tells("Post-mortem: milk in the lungs");
    phone
        .press("change: Post-mortem: milk in the lungs")
        .write("Note", "joint ill")
        .press("Save")
        .is_closed();
    phone.tells("Post-mortem: joint ill").open(Screen::Tables).press("Animals");
    let Some(Request::GiveTable(_, _, table)) = phone.asked.last() else { panic!("no table") };
    assert!(table.contains("joint ill"), "{table}");
}

#[test]
fn the_table_of_animals_has_what_is_known_of_each() {
    let mut phone = Phone::at("2026-03-02 09:00");
    let dam = phone.ewe("=1+1");
    let born = Some(yeanling_core::book::BirthDay::Year(2022));
    let breed = Some("hill cross".to_owned());
    phone.note(Event::Life(yeanling_core::book::Life::Described { ewe: dam, born, breed }));
    for text in ["one teat", "lame in May"] {
        phone.note(Event::Remarked { animal: Animal::Ewe(dam), text: text.to_owned() });
    }
    let lamb = phone.lamb(dam);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: yeanling_core::book::Cause::Cold });
    phone.open(Screen::Tables).press("Animals");
    let Some(Request::GiveTable(_, _, table)) = phone.asked.last() else { panic!("no table") };
    let table: Vec<Vec<&str>> = table.lines().map(|row| row.split(',').collect()).collect();
    assert_eq!(table.len(), 3, "heads, a ewe, a lamb");
    assert!(table.iter().all(|row| row.len() == table[0].len()), "{table:?}");
    let [ewe, lamb] = [&table[1], &table[2]];
    assert_eq!(
        [ewe[2], ewe[4], ewe[6], ewe[ewe.len() - 1]],
        ["'=1+1", "2022", "hill cross", "\"one teat; lame in May\""]
    );
    assert_eq!((&lamb[11..13], lamb[16]), (["4.00", "4.00"].as_slice(), "cold"));
}

#[test]
fn after_a_feed_the_next_is_due_on_the_watch_where_one_press_notes_it_and_at_five_weeks_it_asks_to_wean() {
    let mut phone = Phone::at("2026-02-25 01:00");
    let dam = phone.ewe("12");
    let lamb = phone.lamb(dam);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.open(Screen::Lamb(lamb)).press("Fed 200");
    phone.later(6 * 60 + 5).open(Screen::Watch).tells("Feed 200 ml").press("Fed 200 ml, 12a");
    phone.open(Screen::Lamb(lamb)).tells("400 of 800 ml");
    phone.later(35 * DAY).open(Screen::Watch).says("Ready to wean?");
    let asked = rows(&phone).into_iter().find(|row| row.name == "12a").expect("its row");
    assert_eq!(asked.to, Some(Screen::Lamb(lamb)));
    phone.note(Event::Weaned { lamb });
    phone.open(Screen::Farm).open(Screen::Watch);
    assert!(rows(&phone).iter().all(|row| row.name != "12a"));
}

#[test]
fn who_may_lamb_tonight_stands_on_the_watch_and_a_tight_udder_first() {
    let mut phone = Phone::at("2026-09-01 07:00");
    let group = phone.note(Event::GroupFormed { name: "Top field".to_owned() }).as_group();
    for tag in ["1", "2", "3"] {
        let ewe = phone.ewe(tag);
        phone.note(Event::JoinedGroup { ewe, group });
    }
    phone.later(30 * DAY);
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(35 * DAY);
    phone.note(Event::RamOut { group });
    // In the middle of the first cycle's days each of them may lamb tonight.
    phone.later((153 - 35) * DAY).open(Screen::Watch).tells("May lamb tonight").tells("within 24 h");
    let tight = ewe(&phone, "3");
    phone.note(Event::SignSeen { ewe: tight, sign: yeanling_core::book::Sign::UdderTight });
    let near = rows(&phone).into_iter().find(|row| row.to.is_some_and(is_ewe)).map(|row| row.name);
    assert_eq!(near.as_deref(), Some("Ewe 3"));
}
