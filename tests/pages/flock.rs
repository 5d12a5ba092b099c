//! All animals: any of them is found by any tag or mark it ever wore, or by where it is.

use yeanling_core::book::{Animal, BirthDay, Cause, Departure, Event, EweId, Life, Sign};
use yeanling_pages::block::{Kind, Tile};
use yeanling_pages::{Action, Does, Screen, Sheet, State};

use crate::phone::Phone;
use crate::reach::{fields, reached};

/// A phone with so many ewes, tagged from 1 on.
fn with_ewes(count: usize) -> (Phone, Vec<EweId>) {
    let mut phone = Phone::at("2026-02-21 01:00");
    let ewes = (1..=count).map(|tag| phone.ewe(&tag.to_string())).collect();
    phone.open(Screen::Flock);
    (phone, ewes)
}

/// The names of the rows that are seen.
fn seen(phone: &Phone) -> Vec<String> {
    let rows = phone.pressables().into_iter();
    let is_row = |does: &Action| matches!(does, Action::Go(Screen::Ewe(_) | Screen::Lamb(_)));
    rows.filter(|one| is_row(&one.does)).map(|one| one.name).collect()
}

/// What Enter does in the field that finds.
fn enter(phone: &Phone) -> Option<Action> {
    fields(&phone.page())[0].1.enter.clone()
}

/// The tiles that are seen, each as its number and what it says.
fn tiles(phone: &Phone) -> Vec<(String, String)> {
    let tiles = reached(&phone.page()).into_iter().filter_map(|block| match &block.kind {
        Kind::Tile(tile) => Some((tile.number.clone(), tile.says.clone())),
        _ => None,
    });
    tiles.collect()
}

fn numbers(phone: &Phone) -> Vec<String> {
    tiles(phone).into_iter().map(|(number, _)| number).collect()
}

#[track_caller]
fn tile(phone: &Phone, number: &str) -> Tile {
    let found = reached(&phone.page()).into_iter().find_map(|block| match &block.kind {
        Kind::Tile(tile) if tile.number == number => Some(tile.clone()),
        _ => None,
    });
    found.unwrap_or_else(|| panic!("no tile {number:?} among {:?}", tiles(phone)))
}

#[test]
fn an_empty_flock_says_what_to_do_first() {
    let mut phone = Phone::at("2026-02-21 01:00");
    phone.open(Screen::Flock).says("No animals yet.").says("0 ewes · 0 lambs");
}

#[test]
fn a_tag_finds_its_ewe_and_her_lambs_and_enter_leads_to_the_only_one() {
    let (mut phone, ewes) = with_ewes(3);
    let lamb = phone.lamb(ewes[1]);
    phone.write("Find a tag or a name", "2a");
    assert_eq!(seen(&phone), ["2a"]);
    assert_eq!(enter(&phone), Some(Action::Go(Screen::Lamb(lamb))));
    phone.write("Find a tag or a name", "2");
    assert_eq!(seen(&phone), ["Ewe 2", "2a"]);
    assert_eq!(enter(&phone), Some(Action::Go(Screen::Ewe(ewes[1]))), "she is called just so");
    phone.write("Find a tag or a name", "7").says("Nothing is called that.");
    phone.write("Find a tag or a name", "").says("Shown: here");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3", "2a"]);
}

#[test]
fn a_tag_that_nobody_wears_can_be_added_and_one_that_is_worn_not() {
    let (mut phone, _) = with_ewes(3);
    phone.write("Find a tag or a name", "7").press("Add ewe 7").says("4 ewes");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3", "Ewe 7"]);
    phone.write("Find a tag or a name", "7");
    assert!(phone.pressables().iter().all(|one| !one.label.starts_with("Add ewe")));
    phone.write("Find a tag or a name", "");
    assert!(phone.undo());
    phone.says("3 ewes");
}

#[test]
fn a_ewe_is_found_by_her_tag_with_the_word_before_it_and_none_of_that_name_is_offered() {
    let (mut phone, _) = with_ewes(3);
    phone.write("Find a tag or a name", "ewe 2").has_no_button("Add ewe");
    assert_eq!(seen(&phone), ["Ewe 2"]);
    phone.write("Find a tag or a name", "Ewe 77").press("Add ewe 77").says("4 ewes");
}

#[test]
fn an_animal_is_found_by_every_tag_and_mark_it_ever_had_and_no_other_living_one_has_its_tag() {
    let (mut phone, ewes) = with_ewes(3);
    let lamb = Animal::Lamb(phone.lamb(ewes[1]));
    let tag = |phone: &mut Phone, tag: &str| {
        _ = phone.ask(Sheet::Tag(lamb)).write("Tag or mark", tag).press("Save");
    };
    tag(&mut phone, "3");
    phone.tells("Tag 3 is on another live animal").act(&Action::Close);
    tag(&mut phone, "7001");
    tag(&mut phone, "7002");
    phone.note(Event::Life(Life::Marked { animal: lamb, mark: "41 blue".to_owned() }));
    for known in ["7001", "7002", "41 bl"] {
        phone.write("Find a tag or a name", known);
        assert_eq!(seen(&phone), ["7002"], "{known}");
    }
}

#[test]
fn of_a_large_flock_a_dozen_are_drawn_and_more_when_they_are_asked_for() {
    let (mut phone, _) = with_ewes(61);
    assert_eq!((seen(&phone).len(), tiles(&phone).len()), (12, 0));
    phone.press("Show more (49)");
    assert_eq!(seen(&phone).len(), 61);
    phone.write("Find a tag or a name", "1");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 10", "Ewe 11", "Ewe 12"]);
    phone.press("Show more (12)");
    assert_eq!(seen(&phone).len(), 16);
    phone.write("Find a tag or a name", "12");
    phone.write("Find a tag or a name", "1");
    assert_eq!(seen(&phone).len(), 4, "another key begins anew");
}

#[test]
fn which_animals_are_shown_can_be_chosen() {
    let (mut phone, ewes) = with_ewes(2);
    let lamb = phone.lamb(ewes[0]);
    phone.press("Dead or gone").says("Shown: dead or gone").says("None at the moment.");
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Starved });
    assert_eq!(seen(&phone), ["1a"]);
}

#[test]
fn what_was_looked_for_stands_again_for_who_comes_back_from_an_animal_alone() {
    let (mut phone, ewes) = with_ewes(3);
    phone.write("Find a tag or a name", "2");
    phone.open(Screen::Ewe(ewes[1])).open(Screen::Flock);
    assert_eq!(seen(&phone), ["Ewe 2"]);
    phone.open(Screen::Farm).open(Screen::Flock);
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3"]);
}

#[test]
fn a_key_draws_nothing_anew_but_the_rows_it_finds() {
    let (mut phone, _) = with_ewes(200);
    let list = |phone: &Phone| {
        let page = phone.page();
        page.all().into_iter().find(|block| block.key == "here-list").cloned().expect("the list")
    };
    phone.write("Find a tag or a name", "1");
    let before = list(&phone);
    phone.write("Find a tag or a name", "19");
    assert!(std::sync::Arc::ptr_eq(&before, &list(&phone)), "what is out of sight is the same");
    let rows = phone.page().all().iter().filter(|block| block.key.starts_with("found-ewes-")).count();
    // The list and four places.
    assert_eq!(rows, 5);
    let places = |phone: &Phone| -> Vec<String> {
        let page = phone.page();
        let rows = page.all().into_iter().filter(|block| matches!(block.kind, Kind::Row(_)));
        rows.map(|row| row.key.to_string()).filter(|key| key.starts_with("found")).collect()
    };
    let before = places(&phone);
    phone.write("Find a tag or a name", "1");
    assert_eq!(places(&phone), before, "a row is a place that takes other words");
}

#[test]
fn a_small_flock_is_numbers_that_keep_their_places_whatever_happens() {
    let (mut phone, ewes) = with_ewes(60);
    let places = numbers(&phone);
    assert_eq!(places.len(), 60);
    assert_eq!((places[0].as_str(), places[59].as_str()), ("1", "60"));
    let lamb = phone.lamb(ewes[3]);
    phone.note(Event::SignSeen { ewe: ewes[4], sign: Sign::Restless });
    phone.note(Event::WaterBagSeen { ewe: ewes[5] });
    phone.note(Event::Died { animal: Animal::Ewe(ewes[6]), cause: Cause::Unknown });
    let sold = Life::Went { animal: Animal::Ewe(ewes[7]), how: Departure::Sold, to: None };
    phone.note(Event::Life(sold));
    phone.later(80);
    assert_eq!(numbers(&phone)[..60], places[..]);
    assert_eq!(tile(&phone, "6").says, "lambing 1 h");
    assert_eq!(tile(&phone, "5").state, Some(State::Now));
    assert_eq!((tile(&phone, "7").says.as_str(), tile(&phone, "7").past), ("died", true));
    assert_eq!((tile(&phone, "8").says.as_str(), tile(&phone, "8").past), ("sold", true));
    phone.note(Event::AllBorn { lamb });
    assert_eq!((tile(&phone, "4").says.as_str(), tile(&phone, "4").past), ("lambed 1", true));
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Starved });
    assert_eq!(tile(&phone, "4").says, "0 of 1 alive");
    assert_eq!((tile(&phone, "4a").says.as_str(), tile(&phone, "4a").past), ("died", true));
    // A season later the gone have no place any more.
    phone.later(91 * 24 * 60);
    assert_eq!(numbers(&phone).iter().filter(|number| ["7", "8"].contains(&number.as_str())).count(), 0);
}

#[test]
fn a_tile_says_what_presses_most_by_a_shape_and_a_word() {
    let (mut phone, ewes) = with_ewes(2);
    let lamb = phone.lamb(ewes[0]);
    phone.note(Event::AllBorn { lamb });
    phone.later(150);
    assert_eq!(
        (tile(&phone, "1a").says.as_str(), tile(&phone, "1a").state),
        ("unfed 2 h", Some(State::Late))
    );
    phone.note(Event::VigorScored { lamb, scale: yeanling_core::book::VigorScale::FourGrade, score: 4 });
    assert_eq!((tile(&phone, "1a").says.as_str(), tile(&phone, "1a").state), ("danger", Some(State::Danger)));
    // A missed navel does not shout.
    let other = phone.lamb(ewes[1]);
    phone.note(Event::Stood { lamb: other });
    phone.note(Event::Sucked { lamb: other });
    phone.later(90);
    assert_eq!((tile(&phone, "2a").says.as_str(), tile(&phone, "2a").state), ("navel", Some(State::Now)));
}

#[test]
fn names_too_long_for_a_tile_make_a_list() {
    let (mut phone, _) = with_ewes(2);
    assert_eq!(numbers(&phone), ["1", "2"]);
    phone.ewe("101 Clover");
    assert_eq!(numbers(&phone).len(), 3);
    phone.ewe("826000123456789");
    assert_eq!(numbers(&phone).len(), 0);
    assert_eq!(seen(&phone).len(), 4);
}

#[test]
fn a_row_tells_what_a_shepherd_asks_of_her() {
    let (mut phone, _) = with_ewes(61);
    let ewe = phone.ewe("101 Clover");
    let born = Some(BirthDay::Year(2020));
    phone.note(Event::Life(Life::Described { ewe, born, breed: Some("Dorper".to_owned()) }));
    phone.note(Event::Conditioned { ewe, score: yeanling_core::units::Condition::from_quarters(12) });
    phone.write("Find a tag or a name", "clover").says("Dorper · 6 y · BCS 3");
    let lambs = [phone.lamb(ewe), phone.lamb(ewe)];
    phone.note(Event::AllBorn { lamb: lambs[0] });
    phone.says("Dorper · 6 y · lambed 21 Feb · 2 lambs · BCS 3");
    phone.note(Event::Died { animal: Animal::Lamb(lambs[1]), cause: Cause::Starved });
    phone.says("lambed 21 Feb · 1 of 2 alive · BCS 3");
    let told = |phone: &Phone, name: &str| -> String {
        let row = reached(&phone.page()).into_iter().find_map(|block| match &block.kind {
            Kind::Row(row) if row.name == name => Some(row.kind.plain()),
            _ => None,
        });
        row.unwrap_or_else(|| panic!("no row {name:?}"))
    };
    assert!(told(&phone, "101 Clovera").ends_with("1 of 2 alive"), "{}", told(&phone, "101 Clovera"));
    assert!(!told(&phone, "101 Cloverb").contains("alive"), "its death is told instead");
}

#[test]
fn a_ewe_with_the_ram_says_when_she_is_due_and_one_past_her_days_that_she_is_overdue() {
    let mut phone = Phone::at("2026-10-01 09:00");
    let ewe = phone.ewe("14");
    let group = phone.note(Event::GroupFormed { name: "Field".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.note(Event::RamIn { group, ram: Some("Flint".to_owned()), age: None });
    phone.note(Event::CrayonMark { ewe, color: "blue".to_owned() });
    phone.later(17 * 24 * 60);
    phone.note(Event::RamOut { group });
    phone.open(Screen::Flock).later(100 * 24 * 60);
    let says = tile(&phone, "14").says;
    assert!(says.starts_with("due ") && says.ends_with("Feb"), "{says}");
    phone.later(60 * 24 * 60);
    assert_eq!((tile(&phone, "14").says.as_str(), tile(&phone, "14").state), ("overdue", Some(State::Now)));
}

#[test]
fn a_range_adds_what_is_new_and_finds_what_is_there() {
    let (mut phone, _) = with_ewes(3);
    phone.write("Find a tag or a name", "2-5").has_button("Add 2 ewes: 4 to 5");
    assert_eq!(seen(&phone), ["Ewe 2", "Ewe 3"]);
    assert_eq!(enter(&phone), Some(Action::Does(Does::AddMany)));
    phone.press("Add 2 ewes: 4 to 5").says("5 ewes");
    phone.write("Find a tag or a name", "2-5").has_no_button("Add ");
    assert_eq!(seen(&phone), ["Ewe 2", "Ewe 3", "Ewe 4", "Ewe 5"]);
    assert_eq!(enter(&phone), None);
    phone.write("Find a tag or a name", "5-6").press("Add ewe 6").says("6 ewes");
    phone.write("Find a tag or a name", "Y-01 to Y-08").press("Add 8 ewes: Y-01 to Y-08").says("14 ewes");
    assert_eq!(numbers(&phone).last().map(String::as_str), Some("Y-08"));
    assert!(phone.undo());
    phone.says("6 ewes");
}

#[test]
fn enter_adds_one_number_after_another_and_leads_to_one_that_is_there() {
    let (mut phone, ewes) = with_ewes(0);
    assert!(ewes.is_empty());
    for tag in ["12", "2", "1"] {
        phone.write("Find a tag or a name", tag);
        let does = enter(&phone).expect("Enter adds");
        assert_eq!(does, Action::Does(Does::AddFound), "{tag}");
        phone.act(&does);
        assert_eq!(fields(&phone.page())[0].1.value, "", "the next is typed at once");
    }
    assert_eq!(numbers(&phone), ["1", "2", "12"]);
    let twelve = *phone
        .flock
        .ewes
        .values()
        .find(|ewe| ewe.tag.as_deref() == Some("12"))
        .map(|ewe| &ewe.id)
        .expect("she");
    phone.note(Event::Life(Life::Marked { animal: Animal::Ewe(twelve), mark: "41 blue".to_owned() }));
    // A mark is no number: what is found by it is gone to, and nobody is added by a slip.
    phone.write("Find a tag or a name", "41 bl");
    assert_eq!(enter(&phone), Some(Action::Go(Screen::Ewe(twelve))));
}

#[test]
fn who_has_not_lambed_can_be_shown_alone() {
    let (mut phone, ewes) = with_ewes(3);
    phone.lamb(ewes[1]);
    phone.press("Not lambed").says("Shown: not lambed");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 3"]);
}

#[test]
fn a_ram_is_added_by_his_tag_and_stands_among_the_rams() {
    let (mut phone, _) = with_ewes(2);
    phone.write("Find a tag or a name", "R7");
    phone.press("Add ram R7").says("2 ewes · 1 ram · 0 lambs").says("Ram R7");
    assert_eq!((phone.flock.ewes.len(), phone.flock.rams.len()), (2, 1));
    phone.press("Ram R7").says("Note about him").says("Is a ram").says_nowhere("Lambing");
    assert!(phone.undo());
    assert_eq!((phone.flock.ewes.len(), phone.flock.rams.len()), (2, 0));
    phone.open(Screen::Flock);
    phone.write("Find a tag or a name", "ram 5");
    assert_eq!(enter(&phone), Some(Action::Does(Does::AddRam)));
}

#[test]
fn a_ewe_that_is_a_ram_is_put_right_and_taken_for_a_ewe_again() {
    let (mut phone, ewes) = with_ewes(1);
    phone.open(Screen::Ewe(ewes[0])).press("This is a ram").says("Ram 1");
    assert!(phone.flock.ewes.is_empty());
    assert!(phone.undo());
    phone.says("Ewe 1");
}
