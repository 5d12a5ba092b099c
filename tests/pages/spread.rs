//! What goes round in the flock, on the Watch and above the answer of whoever has it.

use yeanling_core::book::{Event, Illness, LambId};
use yeanling_core::terms::{Gate, LambSign, Spread};
use yeanling_pages::Screen;

use crate::phone::Phone;

fn wet_chin(lamb: LambId) -> Event {
    let good = Gate::Good;
    Event::Illness(Illness::LambSeen {
        lamb,
        head_up: good,
        swallows: good,
        warm: good,
        signs: vec![LambSign::WetChin],
    })
}

/// Three lambs whose chins are wet at a day old.
fn three() -> (Phone, [LambId; 3]) {
    let mut phone = Phone::at("2027-02-01 03:12");
    let lambs = ["7", "8", "9"].map(|tag| {
        let dam = phone.ewe(tag);
        phone.lamb(dam)
    });
    phone.later(26 * 60);
    for lamb in lambs {
        phone.later(30).note(wet_chin(lamb));
    }
    phone.open(Screen::Watch);
    (phone, lambs)
}

#[test]
fn three_wet_chins_stand_on_the_watch_until_they_are_seen_to() {
    let (mut phone, lambs) = three();
    phone.says("In the flock").says("3 lambs in 5 days").says("Clean the pens");
    phone.open(Screen::IllLamb(lambs[0])).says("Wet chins: 3 lambs in 5 days.");
    phone.open(Screen::Watch).press("Seen to: Wet chins");
    let seen_to = |event: &Event| {
        matches!(event, Event::Illness(Illness::SpreadSeenTo { spread: Spread::WetChins, .. }))
    };
    assert!(phone.flock.lines.iter().any(|line| seen_to(&line.event)));
    phone.later(10).open(Screen::Watch).says_nowhere("In the flock");
    phone.open(Screen::Lamb(lambs[2])).says("Wet chins in the flock: seen to");
}

#[test]
fn what_goes_round_leads_to_its_page_in_help() {
    let (phone, _) = three();
    let goes = phone.pressables().into_iter().map(|one| one.does);
    let to = yeanling_core::reckon::illness::spread::rule(Spread::WetChins).about;
    assert!(goes.into_iter().any(|does| does == yeanling_pages::Action::Go(Screen::Ailment(to))));
}

#[test]
fn what_is_old_stands_there_no_more() {
    let (mut phone, _) = three();
    phone.later(6 * 24 * 60).open(Screen::Watch).says_nowhere("In the flock");
}
