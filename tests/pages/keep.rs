//! Which ewe to keep: rules turned on where they are used, every ewe by rank with her reasons, and the ewe lambs.

use yeanling_core::book::{BirthDay, Event, Life};
use yeanling_core::settings::FarmSettings;
use yeanling_pages::Screen;
use yeanling_pages::block::{Kind, Row};
use yeanling_words::keep as words;

use crate::phone::Phone;
use crate::reach::texts;
use crate::year::{choose, two_seasons};

fn rows(phone: &Phone) -> Vec<Row> {
    let page = phone.page();
    let rows = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Row(row) => Some(row.clone()),
        _ => None,
    });
    rows.collect()
}

#[test]
fn in_spring_the_ewes_to_sell_are_named_with_their_reasons() {
    let mut phone = two_seasons();
    phone.open(Screen::Season).press(words::TITLE);
    assert_eq!(phone.screen, Screen::Keep);
    phone.says(words::NO_RULES).says("Common practice, no source.");
    assert_eq!(phone.flock.settings, FarmSettings::default(), "all are off at first");
    choose(&mut phone, "Lambs lost", "1+");
    phone.says("8 of 30 ewes meet your cull rules").says(words::RANKED);
    let first = &rows(&phone)[0];
    assert_eq!((first.says.plain().as_str(), first.kind.plain().as_str()), ("1 lamb lost", "1 lambing"));
    assert!(first.text.plain().contains("lost 1 (cold)"), "{:?}", first.text);
    choose(&mut phone, words::SHOW, words::MET);
    assert_eq!(rows(&phone).len(), 8);
    choose(&mut phone, "Lambs lost", "off");
    phone.says(words::NO_RULES);
    assert!(rows(&phone).is_empty());
    assert!(phone.undo());
    assert_eq!(rows(&phone).len(), 8);
}

#[test]
fn they_are_sorted_as_it_is_chosen_and_a_season_stands_beside_the_last() {
    let mut phone = two_seasons();
    phone.open(Screen::Keep);
    phone.says("2025: no lambing noted").says("2026: 2 born · 2 at her").says("1 of 2 reared weighed");
    choose(&mut phone, words::SORT, "Lost");
    assert!(rows(&phone)[0].text.plain().contains("lost 1"));
    choose(&mut phone, words::SORT, "Tag");
    assert_eq!(rows(&phone)[0].name, "Ewe 2025-1");
}

#[test]
fn lambs_that_are_at_her_still_are_reared_so_far() {
    let mut phone = two_seasons();
    let ewe = phone.ewe("8");
    phone.lamb(ewe);
    phone.later(10 * 24 * 60).open(Screen::Keep).says("born 1 · reared 0 so far");
    phone.later(40 * 24 * 60).open(Screen::Keep).says("born 1 · reared 1").says_nowhere("so far");
}

#[test]
fn eight_years_old_without_a_lambing_is_never_left_without_a_word() {
    let mut phone = two_seasons();
    let ewe = phone.ewe("8");
    phone.note(Event::Life(Life::Described { ewe, born: Some(BirthDay::Year(2018)), breed: None }));
    phone.open(Screen::Keep);
    choose(&mut phone, "Years of age", "8+");
    let first = &rows(&phone)[0];
    assert_eq!((first.name.as_str(), first.says.plain().as_str()), ("Ewe 8", "8 years old"));
    phone.says("8 years · no lambing noted").says("earlier years are not known; no ram noted for her");
    for screen in phone.screens() {
        let said = texts(&phone.page_of(screen));
        assert!(said.iter().all(|text| !text.starts_with("0 lambings")), "{screen:?}: {said:?}");
    }
}

#[test]
fn ewe_lambs_stand_with_their_dams() {
    let mut phone = two_seasons();
    phone.open(Screen::Keep);
    choose(&mut phone, words::SHOW, words::YOUNG);
    let young = rows(&phone);
    // The ewe lamb of each litter of both years; each lived, and those of last year are thirteen months old.
    assert_eq!(young.len(), 30);
    assert!(young.iter().all(|row| row.kind.plain().starts_with("born twin")));
    phone.says("of Ewe 2026-2: 2 born");
}

#[test]
fn the_table_of_all_is_seen_on_a_wide_screen_and_printed_from_any() {
    let mut phone = two_seasons();
    phone.open(Screen::Keep);
    for wide in [false, true] {
        phone.wide = wide;
        let page = phone.page();
        let table = page.all().into_iter().find_map(|block| match &block.kind {
            Kind::PaperTable(table) => Some(table.clone()),
            _ => None,
        });
        let table = table.expect("a table");
        assert_eq!((table.rows.len(), table.on_screen), (30, wide));
        assert!(table.rows.iter().all(|row| row.len() == table.heads.len()));
    }
    phone.press(words::PRINT);
    assert_eq!(phone.asked, [yeanling_pages::Request::Print]);
}
