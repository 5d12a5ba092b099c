//! What fits the day: a ewe in June and a lamb of fourteen weeks offer what belongs to their age and the season first.

use std::sync::Arc;

use yeanling_core::book::{Animal, Event, EweId, LambId, Sex};
use yeanling_core::units::{Mass, System, TimeDelta};
use yeanling_core::watch::State;
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Block, Page, Screen, sample};

use crate::phone::Phone;
use crate::reach::texts;

/// What a page lets one note or ask for, outside of what is due, of a bottle and of what is folded away.
fn open_actions(page: &Page) -> Vec<String> {
    fn add(block: &Arc<Block>, to: &mut Vec<String>) {
        let apart = matches!(&block.kind, Kind::Fold(_) | Kind::Row(_) | Kind::Card(_) | Kind::Timeline(_));
        if apart || block.key == "weaning" {
            return;
        }
        let notes = |does: &Action| match does {
            Action::Ask(sheet) => !matches!(sheet, yeanling_pages::Sheet::Why(_)),
            does => matches!(does, Action::Note(_) | Action::Does(_)),
        };
        to.extend(block.buttons().into_iter().filter(|one| notes(&one.does)).map(|one| one.label.clone()));
        block.inside().into_iter().for_each(|inside| add(inside, to));
    }
    let mut all = Vec::new();
    page.blocks.iter().chain(&page.thumb).for_each(|block| add(block, &mut all));
    // Who bore a lamb is no note about the day.
    all.retain(|label| label != "Wrong ewe?" && label != "Give its dam");
    all
}

/// The sample flock, so many days after its night.
fn after(days: i64) -> Phone {
    let night = Phone::at("2027-02-01 23:55").now;
    let mut phone = Phone::with(sample::book(night, System::Metric), night);
    phone.later(days * 24 * 60);
    phone
}

#[test]
fn nobody_past_the_first_week_offers_more_than_four_things_at_once() {
    let mut held = 0;
    for days in [0, 8, 15, 30, 70, 98, 140, 200, 300] {
        let phone = after(days);
        for ewe in phone.flock.ewes.values().filter(|ewe| ewe.lives()) {
            let open = open_actions(&phone.page_of(Screen::Ewe(ewe.id)));
            assert!(open.len() <= 4, "{days} days on, {:?}: {open:?}", ewe.tag);
            held += 1;
        }
        for lamb in phone.flock.lambs.values().filter(|lamb| lamb.lives()) {
            if lamb.age(phone.now) < TimeDelta::days(7) {
                continue;
            }
            let open = open_actions(&phone.page_of(Screen::Lamb(lamb.id)));
            assert!(open.len() <= 4, "{days} days on, {:?}: {open:?}", lamb.id);
            held += 1;
        }
    }
    assert!(held > 100, "{held}");
}

/// A ewe that lambed on the first of March, and her ewe lamb.
fn in_march() -> (Phone, EweId, LambId) {
    let mut phone = Phone::at("2027-03-01 08:00");
    let ewe = phone.ewe("14");
    let lamb = phone
        .note(Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(Sex::Ewe), alive: true })
        .as_lamb();
    for event in [
        Event::AllBorn { lamb },
        Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) },
        Event::Sucked { lamb },
        Event::AfterbirthPassed { ewe },
    ] {
        phone.note(event);
    }
    (phone, ewe, lamb)
}

#[test]
fn a_ewe_in_june_is_scored_and_treated_and_her_lambing_is_folded_away() {
    let (mut phone, ewe, _) = in_march();
    let open = open_actions(&phone.page_of(Screen::Ewe(ewe)));
    assert!(open.iter().any(|label| label.starts_with("Looked")), "{open:?}");
    phone.later(98 * 24 * 60).open(Screen::Ewe(ewe));
    let page = phone.page();
    assert_eq!(open_actions(&page), ["Condition", "Medicine", "Foster a lamb on", "Note"]);
    let thumb: Vec<String> = page.thumb.iter().flat_map(|block| block.texts()).collect();
    assert_eq!(thumb, ["She is not right"], "no lambing is near");
    // It is still there for who needs it, and in the thumb once it may be.
    phone.press("Lambing");
    assert_eq!(phone.screen, Screen::LambingEwe(ewe));
    phone.later(60 * 24 * 60).open(Screen::Ewe(ewe));
    assert!(phone.page().thumb.iter().any(|block| block.texts().contains(&"Lambing".to_owned())));
}

#[test]
fn a_lamb_of_fourteen_weeks_shows_its_growth_first_then_what_fits_its_age() {
    let (mut phone, _, lamb) = in_march();
    let place = |phone: &Phone, key: &str| {
        phone.page_of(Screen::Lamb(lamb)).blocks.iter().position(|block| block.key == key)
    };
    assert_eq!(place(&phone, "weights"), None, "not in its first days");
    phone.later(14 * 24 * 60);
    assert!(texts(&phone.page_of(Screen::Lamb(lamb))).iter().any(|text| text.starts_with("Weighed once")));
    phone.later(84 * 24 * 60);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(28.0) });
    let weights = place(&phone, "weights").expect("its growth");
    assert!(weights < place(&phone, "fits").expect("what fits"));
    assert!(weights <= 1, "on top");
    let open = open_actions(&phone.page_of(Screen::Lamb(lamb)));
    assert_eq!(open, ["Weigh", "Weaned", "Tag", "Medicine"]);
    phone.open(Screen::Lamb(lamb)).says_nowhere("First milk");
}

#[test]
fn where_a_ewe_is_overdue_nothing_says_that_nothing_is_due() {
    let mut phone = Phone::at("2026-10-01 09:00");
    let ewe = phone.ewe("14");
    let group = phone.note(Event::GroupFormed { name: "Field".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(17 * 24 * 60);
    phone.note(Event::RamOut { group });
    phone.later(160 * 24 * 60);
    let mut overdue = 0;
    for screen in phone.screens() {
        let said = texts(&phone.page_of(screen));
        let nothing = |text: &&String| {
            let text = text.to_lowercase();
            text.contains("nothing due") || text.contains("nothing is due")
        };
        let calm = said.iter().find(nothing);
        assert!(calm.is_none(), "{screen:?} says {calm:?}");
        overdue += usize::from(said.iter().any(|text| text.to_lowercase().contains("overdue")));
    }
    assert!(overdue >= 3, "the Watch, the season and the flock tell of her: {overdue}");
    phone.open(Screen::Ewe(ewe));
    assert!(phone.page().thumb.iter().any(|block| block.texts().contains(&"Lambing".to_owned())));
}

#[test]
fn the_backup_reminder_stands_on_no_screen_on_which_hands_are_at_an_animal() {
    let (mut phone, ewe, lamb) = in_march();
    phone.says.unsent = Some(yeanling_pages::phone::Unsent { births: 40, days: 9 });
    let reminds = |phone: &Phone, screen| {
        phone.view(|view| yeanling_pages::standing(view, screen)).iter().any(|block| block.key == "unsent")
    };
    assert!(reminds(&phone, Screen::Farm));
    for screen in [
        Screen::Lambing,
        Screen::LambingUnknown,
        Screen::LambingEwe(ewe),
        Screen::LambingLamb(lamb),
        Screen::ColdLamb(Some(lamb)),
        Screen::BottleRound,
        Screen::Night,
        Screen::NotRight,
        Screen::IllEwe(ewe),
        Screen::IllLamb(lamb),
    ] {
        assert!(!reminds(&phone, screen), "{screen:?}");
    }
}

#[test]
fn of_an_afterbirth_that_nobody_looked_for_it_is_asked_how_she_is_before_a_vet_is_called() {
    let mut phone = Phone::at("2027-03-01 08:00");
    let ewe = phone.ewe("14");
    let lamb = phone.lamb(ewe);
    phone.note(Event::AllBorn { lamb });
    phone.note(Event::Sucked { lamb });
    for hours in [7, 13, 19, 25, 48] {
        let mut phone = phone.clone();
        phone.later(hours * 60);
        for screen in [Screen::Watch, Screen::Ewe(ewe)] {
            for block in phone.page_of(screen).all() {
                let Kind::Row(row) = &block.kind else { continue };
                let said = format!("{} {}", row.name, row.text.plain());
                if !said.contains("Afterbirth") {
                    continue;
                }
                let asks = said.find("Bright and eating?");
                let calls = said.find("call your vet");
                assert!(calls.is_none() || asks < calls && asks.is_some(), "{hours} h: {said}");
                let red = matches!(
                    row.look,
                    yeanling_pages::block::RowLook::Alone(
                        yeanling_pages::State::Late | yeanling_pages::State::Danger
                    )
                );
                assert!(!red, "{hours} h on {screen:?}: {said}");
            }
        }
        let due = phone.view(|view| {
            view.duties
                .iter()
                .any(|duty| duty.subject() == Animal::Ewe(ewe) && duty.state(view.now) > State::Coming)
        });
        assert!(due, "{hours} h");
    }
}

#[test]
fn on_a_wide_screen_the_flock_stands_beside_each_animal_and_every_page_keeps_the_laws() {
    let mut phone = after(0);
    let tiles = |page: &Page| page.beside.iter().map(|block| block.inside().len()).sum::<usize>();
    assert!(phone.screens().into_iter().all(|screen| tiles(&phone.page_of(screen)) == 0), "not on a phone");
    phone.wide = true;
    let ewe = *phone.flock.ewes.keys().next().expect("a ewe");
    let page = phone.page_of(Screen::Ewe(ewe));
    let here = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Tile(tile) if tile.here => Some(tile.does.clone()),
        _ => None,
    });
    assert_eq!(here.collect::<Vec<_>>(), [Action::Go(Screen::Ewe(ewe))], "whose page it is is marked");
    for screen in phone.screens() {
        phone.open(screen);
        let page = phone.page();
        let of_flock = matches!(screen, Screen::Flock | Screen::Ewe(_) | Screen::Lamb(_));
        assert_eq!(tiles(&page) > 0, of_flock, "{screen:?}");
        let wrong = crate::laws::broken(&phone, screen, &page);
        assert_eq!(wrong, Vec::<String>::new(), "{screen:?}");
    }
    // A larger flock is a list beside the animal, and its own screen has the one list.
    for tag in 100..170 {
        phone.ewe(&tag.to_string());
    }
    assert!(!phone.page_of(Screen::Ewe(ewe)).beside.is_empty());
    assert!(phone.page_of(Screen::Flock).beside.is_empty());
    let wrong = crate::laws::broken(&phone, Screen::Ewe(ewe), &phone.page_of(Screen::Ewe(ewe)));
    assert_eq!(wrong, Vec::<String>::new());
}
