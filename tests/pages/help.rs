//! Help: every part is there, led to from the list at the top, and told by the farm's own choices. And an address that is none.

use yeanling_core::book::Event;
use yeanling_core::practice::{Choice, DayRule, Limits};
use yeanling_core::units::System;
use yeanling_pages::block::{Block, Kind, Shape};
use yeanling_pages::{Action, Key, Page, Screen};
use yeanling_words::help::{self as words, milk};
use yeanling_words::{cautions, frame};

use crate::html::nodes;
use crate::phone::Phone;
use crate::tree;

fn help() -> Phone {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Help);
    phone
}

/// Returns the text of the part under this heading, with plain room between a number and its unit.
#[track_caller]
fn part(page: &Page, title: &str) -> String {
    fn gather(block: &Block, to: &mut Vec<String>) {
        to.extend(block.texts());
        block.inside().into_iter().for_each(|inside| gather(inside, to));
    }
    let is_it = |block: &Block| match &block.kind {
        Kind::Section(section) => section.title == title,
        _ => false,
    };
    let found = page.all().into_iter().find(|block| is_it(block));
    let mut texts = Vec::new();
    gather(found.unwrap_or_else(|| panic!("no part {title:?}")), &mut texts);
    texts.join("\n").replace('\u{a0}', " ")
}

#[test]
fn the_list_at_the_top_leads_to_every_part_in_order() {
    let phone = help();
    let page = phone.page();
    let parts: Vec<Key> = page
        .all()
        .into_iter()
        .filter(|block| matches!(&block.kind, Kind::Group(group) if group.shape == Shape::HelpPart))
        .map(|block| block.key.clone())
        .collect();
    let links: Vec<Key> = phone
        .pressables()
        .into_iter()
        .filter_map(|one| match one.does {
            Action::Show(key) => Some(key),
            _ => None,
        })
        .collect();
    assert_eq!((links.len(), &links), (19, &parts));
}

#[test]
fn each_part_can_take_the_focus_and_stands_under_a_heading_of_the_second_level() {
    let phone = help();
    let html = tree::drawn(nodes(&phone, Screen::Help, &phone.page())).html();
    assert!(
        html.contains("<nav aria-label=\"On this page\" class=\"contents\"><ul role=\"list\"><li><button")
    );
    assert!(html.contains("<div class=\"help-part\" id=\"help-vet\" tabindex=\"-1\"><section"));
    assert!(html.contains("<li class=\"drawn-line\"><svg aria-hidden=\"true\" class=\"drawing\""));
    assert!(html.contains("<details class=\"source-fold\"><summary>"));
}

#[test]
fn there_is_a_page_for_each_subject() {
    let page = help().page();
    for (title, says) in [
        (milk::BOTTLE, "200 g added to 1 L of water is only 167 g/L"),
        (milk::WEANING, "By Teagasc’s rule"),
        (milk::BAG, "Never in a microwave."),
        (milk::WEATHER, "Agriculture Victoria, 1000"),
        (words::COLD, "does not hold its head up and swallow"),
        (words::RINGS, "Never a ring in the first 24 h"),
        (words::TUBE, "that swallows,"),
        (words::VET, "Crosswise, too big or deformed: at once."),
        (words::PEOPLE, cautions::PEOPLE),
        (words::LIMITS, "It does not wake you."),
        (words::VIGOR, "Grade 1:"),
    ] {
        let told = part(&page, title);
        assert!(told.contains(says), "{says:?} is not told under {title:?}:\n{told}");
    }
}

#[test]
fn no_step_of_a_lamb_that_does_not_swallow_gives_it_milk() {
    // Source: Eales et al. 1982 and 1984, Henderson 1996: nothing by mouth for a lamb that does not swallow.
    let page = help().page();
    let unable = words::row("", false);
    let folds: Vec<String> = page
        .all()
        .into_iter()
        .filter(|block| matches!(&block.kind, Kind::Fold(fold) if fold.label.plain().ends_with(&unable)))
        .map(|block| {
            block.inside().into_iter().flat_map(|inside| inside.texts()).collect::<Vec<_>>().join(" ")
        })
        .collect();
    assert!(folds.len() >= 3, "{folds:?}");
    for fold in folds {
        assert!(!fold.contains("by tube now"), "{fold}");
        assert!(fold.to_lowercase().contains("vet"), "{fold}");
    }
}

#[test]
fn it_is_told_by_the_farms_own_choices() {
    let mut phone = help();
    phone.note(Event::Chose(Choice::DayRule(DayRule::TenPercent)));
    phone.note(Event::Chose(Choice::Limits(Limits { up_minutes: 25, ..Limits::default() })));
    let told = part(&phone.page(), words::FIRST_DAY);
    assert!(told.contains("10% of body weight") && told.contains("Up within 25 min"), "{told}");
    phone.note(Event::Chose(Choice::System(System::Us)));
    let told = part(&phone.page(), milk::BOTTLE);
    assert!(told.contains("fl oz"), "{told}");
}

#[test]
fn every_source_is_there_with_how_many_there_are() {
    let told = part(&help().page(), words::SOURCES);
    let counted: usize = told
        .lines()
        .filter_map(|line| line.rsplit_once(" · ").and_then(|(_, count)| count.parse::<usize>().ok()))
        .sum();
    assert!(counted > 100, "{counted}:\n{told}");
}

#[test]
fn an_address_that_is_none_leads_home() {
    let mut phone = help();
    phone.open(Screen::Lost).says(frame::LOST);
    assert_eq!(phone.page().back, Some((Screen::Watch, frame::BACK.to_owned())));
    let home = phone.pressables().into_iter().map(|one| one.does).collect::<Vec<_>>();
    assert_eq!(home, [Action::Go(Screen::Watch)]);
}

#[test]
fn an_address_that_is_none_keeps_the_laws() {
    let mut phone = help();
    phone.open(Screen::Lost);
    assert_eq!(crate::laws::broken(&phone, Screen::Lost, &phone.page()), Vec::<String>::new());
}
