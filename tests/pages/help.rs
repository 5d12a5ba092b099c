//! Help: one page a topic, told by the farm's own choices; the finder; the words of the trade. And an address that is none.

use yeanling_core::book::Event;
use yeanling_core::settings::{Choice, DayRule, Limits};
use yeanling_core::units::System;
use yeanling_pages::block::{Block, Kind};
use yeanling_pages::{Action, Screen};
use yeanling_words::help::glossary::{TERMS, Term};
use yeanling_words::help::{self as words, Topic};
use yeanling_words::{cautions, frame};

use crate::phone::Phone;

fn help() -> Phone {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Help);
    phone
}

/// Returns all that a topic says, with plain room between a number and its unit.
fn said(phone: &Phone, topic: Topic) -> String {
    let page = phone.page_of(Screen::Topic(topic));
    let texts: Vec<String> = page.all().into_iter().flat_map(|block| block.texts()).collect();
    texts.join("\n").replace('\u{a0}', " ")
}

/// Returns the topics that can be opened on the page, in order.
fn offered(phone: &Phone) -> Vec<Topic> {
    let topic = |does: &Action| match does {
        Action::Go(Screen::Topic(topic)) => Some(*topic),
        _ => None,
    };
    phone.pressables().iter().filter_map(|one| topic(&one.does)).collect()
}

#[test]
fn every_topic_is_a_tap_away_and_the_vet_is_first() {
    let phone = help();
    let mut all = offered(&phone);
    assert_eq!(all.first(), Some(&Topic::Vet));
    all.sort_unstable();
    assert_eq!(all, Topic::ALL.to_vec());
    for topic in Topic::ALL {
        let page = phone.page_of(Screen::Topic(topic));
        assert_eq!(
            (page.title.as_str(), page.back),
            (topic.title(), Some((Screen::Help, frame::HELP.to_owned())))
        );
        assert!(!page.blocks.is_empty(), "{topic:?}");
    }
}

/// The topic that is found first for what is typed.
#[track_caller]
fn finds(typed: &str, topic: Topic) {
    let mut phone = help();
    phone.write(words::FIND, typed);
    assert_eq!(offered(&phone).first(), Some(&topic), "{typed:?} finds {:?}", offered(&phone));
}

#[test]
fn what_is_looked_for_is_found_in_the_words_people_use() {
    finds("how to tube", Topic::Tube);
    finds("tubing", Topic::Tube);
    finds("when to call the vet", Topic::Vet);
    finds("colostrum too late", Topic::TooLate);
    finds("12 h", Topic::TooLate);
    finds("cold lamb", Topic::Cold);
    finds("hypothermia", Topic::Cold);
    finds("backup", Topic::BackUp);
    finds("how do I back up", Topic::BackUp);
    finds("new phone", Topic::NewPhone);
    finds("lost phone", Topic::NewPhone);
    finds("breech", Topic::Presentation);
}

#[test]
fn what_only_stands_in_a_text_is_found_too_and_a_word_of_the_trade_with_its_meaning() {
    let mut phone = help();
    phone.write(words::FIND, "glucose");
    assert!(offered(&phone).contains(&Topic::Cold));
    phone.says("Glucose: ");
    phone.write(words::FIND, "ringwomb").says("Ringwomb: A cervix that does not open");
    phone.write(words::FIND, "xyzzy").says(words::NOT_FOUND);
    phone.write(words::FIND, "calculator");
    assert!(phone.pressables().iter().any(|one| one.does == Action::Go(Screen::Calculators)));
}

#[test]
fn what_was_looked_for_stands_there_again_after_a_topic_and_not_after_another_tab() {
    let mut phone = help();
    phone.write(words::FIND, "tube").press(Topic::Tube.title()).open(Screen::Help);
    assert_eq!(offered(&phone).first(), Some(&Topic::Tube));
    phone.open(Screen::Flock).open(Screen::Help);
    assert_eq!(offered(&phone).len(), Topic::ALL.len());
}

#[test]
fn each_topic_says_what_it_is_there_for() {
    let phone = help();
    for (topic, says) in [
        (Topic::Bottle, "200 g added to 1 L of water is only 167 g/L"),
        (Topic::Weaning, "By Teagasc’s rule"),
        (Topic::Quality, "Never in a microwave."),
        (Topic::Chill, "Agriculture Victoria, 1000"),
        (Topic::Cold, "does not hold its head up and swallow"),
        (Topic::Rings, "Never a ring in the first 24 h"),
        (Topic::Tube, "from nose to last rib"),
        (Topic::Vet, "Crosswise, too big or deformed: at once."),
        (Topic::People, cautions::PEOPLE),
        (Topic::Limits, "It does not wake you."),
        (Topic::Vigor, "Grade 1:"),
        (Topic::TooLate, "No antibody gets through."),
        (Topic::BackUp, "is no backup"),
        (Topic::NewPhone, "Find your last backup"),
    ] {
        let told = said(&phone, topic);
        assert!(told.contains(says), "{says:?} is not told under {topic:?}:\n{told}");
    }
}

#[test]
fn before_how_to_tube_stands_when_not_to() {
    let phone = help();
    let told = said(&phone, Topic::Tube);
    let place = |text: &str| told.find(text).unwrap_or_else(|| panic!("{text:?} is not told"));
    assert!(place("nothing by tube") < place(words::tube::FIRST));
    assert!(place(words::tube::FIRST) < place("Wash your hands"));
}

#[test]
fn no_step_of_a_lamb_that_does_not_swallow_gives_it_milk() {
    // Source: Eales et al. 1982 and 1984, Henderson 1996: nothing by mouth for a lamb that does not swallow.
    let page = help().page_of(Screen::Topic(Topic::Cold));
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
    let told = said(&phone, Topic::FirstDay);
    assert!(told.contains("10% of body weight") && told.contains("Up within 25 min"), "{told}");
    phone.note(Event::Chose(Choice::System(System::Us)));
    assert!(said(&phone, Topic::Bottle).contains("fl oz"));
}

#[test]
fn every_source_is_there_with_how_many_there_are() {
    let told = said(&help(), Topic::Sources);
    let counted: usize = told
        .lines()
        .filter_map(|line| line.rsplit_once(" · ").and_then(|(_, count)| count.parse::<usize>().ok()))
        .sum();
    assert!(counted > 100, "{counted}:\n{told}");
}

#[test]
fn each_word_of_the_trade_is_used_as_it_is_written() {
    // What the app says, as it is written in the source of its words; what its tests say is no part of that.
    fn gather(folder: &std::path::Path, to: &mut String) {
        for entry in std::fs::read_dir(folder).expect("a folder").flatten() {
            let path = entry.path();
            if path.is_dir() {
                gather(&path, to);
            } else if path.extension().is_some_and(|end| end == "rs") && !path.ends_with("help/glossary.rs") {
                let text = std::fs::read_to_string(&path).expect("a file");
                let told = text.split("#[cfg(test)]").next().unwrap_or_default();
                let is_code = |line: &&str| !line.trim_start().starts_with("//");
                to.extend(told.lines().filter(is_code).flat_map(|line| [line, "\n"]));
            }
        }
    }
    let mut said = String::new();
    gather(&std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../words"), &mut said);
    let said = said.to_lowercase();
    let unused: Vec<&str> =
        TERMS.iter().map(|term| term.word).filter(|word| !said.contains(&word.to_lowercase())).collect();
    assert_eq!(unused, Vec::<&str>::new(), "no screen uses these words");
    for Term { word, not, .. } in &TERMS {
        for other in *not {
            assert!(!said.contains(&other.to_lowercase()), "{other:?} is said for {word:?}");
        }
    }
}

#[test]
fn the_glossary_holds_sixty_words_each_with_its_sentence() {
    fn lists(block: &Block) -> usize {
        let own = if let Kind::List(list) = &block.kind { list.items.len() } else { 0 };
        own + block.inside().into_iter().map(|inside| lists(inside)).sum::<usize>()
    }
    let page = help().page_of(Screen::Topic(Topic::Glossary));
    assert_eq!(page.blocks.iter().map(|block| lists(block)).sum::<usize>(), TERMS.len());
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

#[test]
fn when_the_watch_sends_to_the_vet_for_an_afterbirth_help_says_the_same_hour() {
    use yeanling_core::book::{Animal, Awaited, Care};
    for hanging in [false, true] {
        let mut phone = Phone::at("2027-02-01 23:55");
        let ewe = phone.ewe("7");
        let lamb = phone.lamb(ewe);
        phone.note(Event::AllBorn { lamb });
        let vet = |phone: &Phone| {
            phone.view(|view| {
                let tasks = view.duties.iter().filter(|duty| {
                    duty.subject() == Animal::Ewe(ewe)
                        && duty.state(view.now) > yeanling_core::watch::State::Coming
                });
                let said = tasks.map(|duty| yeanling_words::watch::task(duty.task, System::Metric));
                said.filter(|said| said.contains("fterbirth")).any(|said| said.contains("call your vet"))
            })
        };
        let mut hours = 0;
        while !vet(&phone) {
            phone.later(60);
            hours += 1;
            assert!(hours < 48, "nobody is sent to the vet");
            if hanging && hours == 7 {
                phone.note(Event::Care(Care::AfterbirthAwaited { ewe, seen: Awaited::Hanging }));
            }
        }
        let told = said(&phone, Topic::Vet);
        let line = told.lines().find(|line| line.starts_with("The afterbirth")).expect("it is told");
        assert!(line.contains(&format!("{hours} h")), "{hours} h is not in {line:?}");
    }
}

/// The screens that are found for what is typed.
#[track_caller]
fn finds_screen(typed: &str, screen: Screen) {
    let mut phone = help();
    phone.write(words::FIND, typed);
    assert!(
        phone.pressables().iter().any(|one| one.does == Action::Go(screen)),
        "{typed:?} does not find {screen:?}"
    );
}

#[test]
fn every_screen_is_found_in_help_by_its_name_and_by_the_words_people_use() {
    let phone = help();
    for screen in Screen::alone() {
        match screen {
            // It is Help itself, or is come to from another.
            Screen::Help | Screen::Calculators | Screen::LambingUnknown => {}
            // Its large line is the clock.
            Screen::Watch => finds_screen(frame::WATCH, screen),
            _ => finds_screen(&phone.page_of(screen).title, screen),
        }
    }
    for (typed, screen) in [
        ("export", Screen::Tables),
        ("csv", Screen::Tables),
        ("feed to buy", Screen::Feed),
        ("shopping list", Screen::Supplies),
        ("backup", Screen::Share),
        ("alarm", Screen::Night),
        ("cull", Screen::Keep),
        ("withdrawal", Screen::Medicines),
        ("sick", Screen::NotRight),
        ("lambing rate", Screen::Summary),
        ("wean", Screen::WeighLambs),
        ("ear tag", Screen::TagLambs),
        ("who lambs when", Screen::Season),
        ("units", Screen::SettingsOf(yeanling_pages::SettingsPart::Farm)),
        ("reset", Screen::Erase),
    ] {
        finds_screen(typed, screen);
    }
}
