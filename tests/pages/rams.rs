//! Rams: a season by ram, who sired a litter, a ewe's own years, and the warning before a ram meets his near kin.

use yeanling_core::book::{Animal, Cause, Event, EweId, GroupId, LambId, Life, Sex};
use yeanling_core::units::{Mass, Moment};
use yeanling_pages::Screen;
use yeanling_words::{ewe as ewe_words, group, rams as words};

use crate::phone::Phone;
use crate::year::moment;

/// Puts these ewes to a ram for fifty days, so that they lamb from 1 March 2026 on.
fn mated(phone: &mut Phone, name: &str, ewes: &[EweId], ram: &str) -> GroupId {
    let at = |day: &str| moment(&format!("{day} 09:00"));
    let group = phone.note_at(Event::GroupFormed { name: name.to_owned() }, at("2025-09-20")).as_group();
    for ewe in ewes {
        phone.note_at(Event::JoinedGroup { ewe: *ewe, group }, at("2025-09-21"));
    }
    let ram_in = Event::RamIn { group, ram: Some(ram.to_owned()), age: None };
    phone.note_at(ram_in, at("2025-10-01"));
    phone.note_at(Event::RamOut { group }, at("2025-11-20"));
    phone.note_at(Event::GroupParted { group }, at("2025-11-21"));
    group
}

fn ewes(phone: &mut Phone, tags: std::ops::Range<usize>) -> Vec<EweId> {
    let came = moment("2025-08-01 09:00");
    let one = |tag: usize| phone.note_at(Event::EweCame { tag: Some(tag.to_string()) }, came).as_ewe();
    tags.map(one).collect()
}

fn born(phone: &mut Phone, dam: EweId, sex: Sex, at: Moment) -> LambId {
    let born = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(sex), alive: true };
    phone.note_at(born, at).as_lamb()
}

/// Two rams with ten ewes each; so many lambs of the second are lost.
fn two_rams(lost: usize) -> Phone {
    let mut phone = Phone::at("2026-06-20 09:00");
    let all = ewes(&mut phone, 1..21);
    mated(&mut phone, "Top", &all[..10], "Flint");
    mated(&mut phone, "Low", &all[10..], "Moss");
    for (number, ewe) in all.into_iter().enumerate() {
        let lamb = born(&mut phone, ewe, Sex::Ewe, moment("2026-03-01 04:00"));
        let mass = Mass::from_kilograms(4.0);
        phone.note_at(Event::Weighed { lamb, mass }, moment("2026-03-01 05:00"));
        if number >= 10 && number - 10 < lost {
            let died = Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Unknown };
            phone.note_at(died, moment("2026-03-04 05:00"));
        }
    }
    phone.open(Screen::Summary);
    phone
}

#[test]
fn a_season_is_told_by_ram_with_the_number_behind_each_and_only_what_is_no_chance_differs() {
    let phone = two_rams(2);
    phone.says(words::BY_RAM).says("Flint").says("10 ewes put to him, 10 lambed, 10 in the first cycle");
    phone.says("2 lost of 10 born alive").says("4.0\u{a0}kg (10 weighed)").says(words::LIKE_OTHERS);
    phone.says_nowhere("than the others");
    let mut phone = two_rams(8);
    phone
        .says("more lost than the others")
        .says("fewer lost than the others")
        .says_nowhere(words::LIKE_OTHERS);
    phone.press(&format!("why? {}", words::BY_RAM)).says("Fisher’s exact test");
}

#[test]
fn where_no_ram_is_noted_nothing_is_told_by_ram() {
    let mut phone = Phone::at("2026-06-20 09:00");
    let all = ewes(&mut phone, 1..3);
    born(&mut phone, all[0], Sex::Ewe, moment("2026-03-01 04:00"));
    phone.open(Screen::Summary).says_nowhere(words::BY_RAM);
}

#[test]
fn a_ewe_shows_her_years_in_one_chart_who_sired_each_litter_and_who_was_kept_of_it() {
    let mut phone = Phone::at("2026-12-20 09:00");
    let all = ewes(&mut phone, 1..2);
    born(&mut phone, all[0], Sex::Ram, moment("2025-03-01 04:00"));
    phone.open(Screen::Ewe(all[0])).says_nowhere(ewe_words::HER_YEARS);
    mated(&mut phone, "Top", &all, "Flint");
    let lamb = born(&mut phone, all[0], Sex::Ewe, moment("2026-03-02 04:00"));
    phone.note_at(
        Event::Tagged { animal: Animal::Lamb(lamb), tag: "31".to_owned() },
        moment("2026-04-02 04:00"),
    );
    let kept = phone.note_at(Event::Life(Life::KeptAsEwe { lamb }), moment("2026-10-02 04:00")).as_ewe();
    phone.open(Screen::Ewe(all[0])).says(ewe_words::HER_YEARS).says("2025: 1 born, 1 not lost. 2026: 1 born");
    phone.says("Sire: Flint");
    phone.press("Kept: Ewe 31");
    assert_eq!(phone.screen, Screen::Ewe(kept));
}

#[test]
fn before_a_ram_is_put_to_his_daughter_or_his_dam_that_is_said() {
    let mut phone = Phone::at("2026-12-20 09:00");
    let all = ewes(&mut phone, 1..4);
    mated(&mut phone, "Top", &all[..1], "Flint");
    let daughter = born(&mut phone, all[0], Sex::Ewe, moment("2026-03-02 04:00"));
    let flint = born(&mut phone, all[1], Sex::Ram, moment("2025-03-02 04:00"));
    phone.note_at(
        Event::Tagged { animal: Animal::Lamb(flint), tag: "Flint".to_owned() },
        moment("2025-04-02 04:00"),
    );
    let kept =
        phone.note_at(Event::Life(Life::KeptAsEwe { lamb: daughter }), moment("2026-10-02 04:00")).as_ewe();
    phone.note(Event::Tagged { animal: Animal::Ewe(kept), tag: "31".to_owned() });
    let group = phone.note(Event::GroupFormed { name: "Next".to_owned() }).as_group();
    for ewe in [all[1], all[2], kept] {
        phone.note(Event::JoinedGroup { ewe, group });
    }
    phone.open(Screen::Group(group)).says_nowhere("Near kin");
    phone.press(group::RAM_IN);
    phone.write(group::RAM, "moss");
    phone.says_nowhere("Near kin");
    phone.write(group::RAM, " flint");
    phone.says("Ewe 2 is the dam of flint.").says("Ewe 31 is a daughter of flint.").says_nowhere("Ewe 3 is");
    phone.press("Save");
    phone.says("Ewe 31 is a daughter of flint.");
}
