//! She is not right, it is not right: from two taps to the answer, its duty, and the card for the call.

use yeanling_core::book::{Animal, Care, Event, EweId, Illness, LambId, Milk, VetSaid, Way};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign, Onset};
use yeanling_core::units::{Mass, Moment, TimeDelta, Volume};
use yeanling_core::watch::{BeforeMilk, LambTask, State, Task, hold_milk};
use yeanling_pages::Screen;

use crate::phone::Phone;
use crate::reach::texts;

fn seen(ewe: EweId, signs: &[EweSign]) -> Event {
    Event::Illness(Illness::EweSeen {
        ewe,
        stage: EweStage::Milking,
        standing: Gate::Good,
        eating: Gate::Good,
        nothing_out: Gate::Good,
        signs: signs.to_vec(),
        onset: None,
    })
}

fn lamb_seen(lamb: LambId, signs: &[LambSign]) -> Event {
    let good = Gate::Good;
    Event::Illness(Illness::LambSeen {
        lamb,
        head_up: good,
        swallows: good,
        warm: good,
        signs: signs.to_vec(),
    })
}

/// Ewe 15, scanned with twins ten days before she is due.
fn fifteen() -> (Phone, EweId) {
    let mut phone = Phone::at("2027-02-01 03:12");
    let ewe = phone.ewe("15");
    let scanned = phone.view(|view| view.now) - TimeDelta::days(57);
    phone.note_at(Event::Scanned { ewe, lambs: 2, days: Some(80) }, scanned);
    (phone, ewe)
}

#[test]
fn a_ewe_that_is_down_is_the_vets_now_within_four_taps_from_the_watch() {
    let (mut phone, _) = fifteen();
    phone.open(Screen::Watch).press("Not right").press("15").press("Wobbly").press("What now?");
    phone.says("Stage: Last six weeks before lambing");
    phone.says("Call your vet now").says("Low calcium").says("Never drench: nothing by mouth.");
    phone.says("This helps you decide; it does not replace your vet.");
    phone.open(Screen::Watch).says("May be low calcium").says("Call your vet now");
    let danger = phone.view(|view| view.duties.first().map(|duty| duty.state(view.now)));
    assert_eq!(danger, Some(State::Danger));
}

#[test]
fn the_card_for_the_call_says_who_her_stage_her_scan_since_when_and_what_was_seen() {
    let (mut phone, ewe) = fifteen();
    let seen = Illness::EweSeen {
        ewe,
        stage: EweStage::LateInLamb,
        standing: Gate::Bad,
        eating: Gate::Bad,
        nothing_out: Gate::Good,
        signs: vec![EweSign::CudAtNose],
        onset: Some(Onset::Hours),
    };
    phone.note(Event::Illness(seen));
    phone.open(Screen::IllEwe(ewe)).says("For the call").says("Read this out to your vet.");
    phone
        .says("Last six weeks before lambing")
        .says("Scanned: twins")
        .says("not standing, not eating, cud at her nose");
    phone.says("On her chest, straw on both sides.").says("nothing by mouth");
}

#[test]
fn a_lamb_with_a_wet_chin_is_offered_no_milk_anywhere_until_the_vet_allows_it() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let dam = phone.ewe("7");
    let lamb = phone.lamb(dam);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    let fed = |lamb| Event::Fed {
        lamb,
        volume: Volume::from_milliliters(150.0),
        milk: Milk::DamColostrum,
        way: Way::Bottle,
    };
    phone.later(22 * 60).note(fed(lamb));
    phone.later(4 * 60);
    let offered = |phone: &Phone| -> Vec<String> {
        let mut all = Vec::new();
        for screen in [Screen::Watch, Screen::Lamb(lamb), Screen::BottleRound, Screen::Night] {
            let mut other = phone.clone();
            other.open(screen);
            all.extend(
                other.pressables().into_iter().filter(|one| one.name.starts_with("Fed")).map(|one| one.name),
            );
        }
        all
    };
    assert!(!offered(&phone).is_empty(), "its bottle is due");
    phone.note(lamb_seen(lamb, &[LambSign::WetChin]));
    assert_eq!(offered(&phone), Vec::<String>::new());
    phone.open(Screen::BottleRound).says("No milk yet: belly tight or chin wet").has_no_button("Feed");
    phone.open(Screen::Lamb(lamb)).says("until your vet allows it");
    // Neither time nor a full belly nor a call ends it.
    let belly = yeanling_core::book::Belly::Full;
    phone.note(Event::BellyFelt { lamb, belly });
    phone.note(Event::VetCalled { animal: Animal::Lamb(lamb) });
    phone.later(600);
    assert_eq!(offered(&phone), Vec::<String>::new());
    phone.open(Screen::Lamb(lamb)).press("Vet allows milk again");
    assert!(!offered(&phone).is_empty());
}

#[test]
fn a_full_belly_is_not_fed_while_belly_or_chin_holds_milk_back() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let dam = phone.ewe("7");
    let lamb = phone.lamb(dam);
    phone.later(26 * 60);
    let felt = |belly| Event::BellyFelt { lamb, belly };
    phone.note(lamb_seen(lamb, &[LambSign::TightBelly]));
    phone.later(1).note(felt(yeanling_core::book::Belly::Hollow));
    phone.later(1).note(felt(yeanling_core::book::Belly::Full));
    let hollow = |phone: &Phone| {
        phone.view(|view| {
            view.duties.iter().any(|duty| {
                matches!(duty.task, Task::Lamb(_, LambTask::Hollow { before: Some(BeforeMilk::Hold(_)) }))
            })
        })
    };
    assert!(hollow(&phone), "full says nothing of a tight belly");
}

#[test]
fn a_watched_ewe_that_is_no_better_is_the_vets_today_and_worse_is_now() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let ewe = phone.ewe("15");
    phone.note(seen(ewe, &[EweSign::Lame]));
    phone.open(Screen::IllEwe(ewe)).says("Look again at");
    phone.later(60 * 24).open(Screen::Watch).says("Look again: lame");
    let mut same = phone.clone();
    same.open(Screen::IllEwe(ewe)).press("No better").says("Call your vet today");
    let nobody = Event::Care(Care::VetSaid { animal: Animal::Ewe(ewe), said: VetSaid::NobodyReached });
    same.note(nobody);
    same.says("Call your vet now");
    phone.open(Screen::IllEwe(ewe)).press("Worse").says("Call your vet now");
    phone.press("Well again").says("What do you see?");
    phone.open(Screen::Watch).says_nowhere("Call your vet");
}

#[test]
fn good_news_is_asked_for_where_it_would_make_it_less_urgent() {
    let (mut phone, ewe) = fifteen();
    let apart = Illness::EweSeen {
        ewe,
        stage: EweStage::LateInLamb,
        standing: Gate::Good,
        eating: Gate::Good,
        nothing_out: Gate::Good,
        signs: vec![EweSign::KeepsApart],
        onset: Some(Onset::Days),
    };
    phone.note(Event::Illness(apart));
    phone.open(Screen::IllEwe(ewe)).says("Call your vet now");
    phone.press("Sees: follows a hand").says("Call your vet today");
}

#[test]
fn what_was_not_checked_is_asked_on_top_and_due_in_ten_minutes() {
    let (mut phone, ewe) = fifteen();
    phone.open(Screen::IllEwe(ewe)).press("Lame").press("What now?").says("Check now").says("Standing?");
    phone.later(10).open(Screen::Watch).says("check now what was not checked");
}

#[test]
fn a_lamb_that_does_not_breathe_is_hands_first_in_three_lines() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let dam = phone.ewe("7");
    let lamb = phone.lamb(dam);
    phone.open(Screen::IllLamb(lamb)).press("Not breathing");
    phone.says("Clear its mouth and nose").says("Rub it hard").says("A straw in its nostril");
}

#[test]
fn a_cold_lamb_goes_on_in_cold_lamb_with_what_was_answered() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let dam = phone.ewe("7");
    let lamb = phone.lamb(dam);
    phone.later(60 * 4);
    let cold = Illness::LambSeen {
        lamb,
        head_up: Gate::Good,
        swallows: Gate::Good,
        warm: Gate::Bad,
        signs: Vec::new(),
    };
    phone.note(Event::Illness(cold));
    assert!(phone.view(|view| view.flock.lamb(lamb).and_then(hold_milk)).is_some());
    phone.open(Screen::IllLamb(lamb)).press("Cold lamb steps").says("How warm is it?");
}

#[test]
fn what_is_measured_stands_on_the_card() {
    let (mut phone, ewe) = fifteen();
    phone.note(seen(ewe, &[EweSign::UdderHot]));
    phone
        .open(Screen::IllEwe(ewe))
        .press("Measured")
        .write("Temperature", "40.6")
        .write("Ketones (BHB)", "1.4");
    phone.press("Save").says("Temperature: 40.6").says("Ketones (BHB): 1.4 mmol/L");
    phone.says("Call your vet now");
}

#[test]
fn the_whole_card_is_read_out() {
    let (mut phone, ewe) = fifteen();
    phone.note(seen(ewe, &[EweSign::GotAtGrain]));
    phone.open(Screen::IllEwe(ewe));
    let all = texts(&phone.page());
    for line in ["15", "Stage: ", "Scanned: twins", "Since: ", "Seen: got at grain", "Given: nothing noted"] {
        assert!(all.iter().any(|text| text.contains(line)), "{line} in {all:?}");
    }
}

#[test]
fn an_ill_animal_is_never_said_to_be_well_by_a_look() {
    let (mut phone, ewe) = fifteen();
    phone.note(seen(ewe, &[EweSign::Lame]));
    let now: Moment = phone.view(|view| view.now);
    phone.later(60 * 30).open(Screen::Watch);
    assert!(phone.view(|view| view.now) > now);
    phone.says("Look again: lame").has_no_button("All well");
}

/// Counts the taps from a screen to the answer.
#[track_caller]
fn taps(phone: &Phone, from: Screen, presses: &[&str]) {
    let mut phone = phone.clone();
    phone.open(from);
    assert!(presses.len() <= 4, "{presses:?}");
    for press in presses {
        phone.press(press);
    }
    phone.says("This helps you decide").has_no_button("What now?");
}

#[test]
fn an_answer_is_at_most_four_taps_from_the_watch_and_from_the_animal_at_any_age() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("15");
    let lamb = phone.lamb(ewe);
    for days in [0, 20, 120] {
        phone.later(days * 24 * 60);
        taps(&phone, Screen::Watch, &["Not right", "15", "Dull", "What now?"]);
        taps(&phone, Screen::Ewe(ewe), &["She is not right", "Dull", "What now?"]);
        taps(&phone, Screen::Watch, &["Not right", "15a", "Dull", "What now?"]);
        taps(&phone, Screen::Lamb(lamb), &["It is not right", "Dull", "What now?"]);
    }
}

#[test]
fn every_sign_stands_once_and_under_where_it_is_seen() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("15");
    let lamb = phone.lamb(ewe);
    let toggles = |screen| {
        let page = phone.page_of(screen);
        let toggle = |block: &std::sync::Arc<yeanling_pages::Block>| match &block.kind {
            yeanling_pages::block::Kind::Toggle(toggle) => Some(toggle.label.clone()),
            _ => None,
        };
        page.all().into_iter().filter_map(toggle).collect::<Vec<_>>()
    };
    let (of_ewe, of_lamb) = (toggles(Screen::IllEwe(ewe)), toggles(Screen::IllLamb(lamb)));
    assert_eq!(of_ewe.len(), EweSign::ALL.len());
    // Not breathing has a button of its own, above all.
    assert_eq!(of_lamb.len(), LambSign::ALL.len() - 1);
    for all in [of_ewe, of_lamb] {
        let once: std::collections::BTreeSet<&String> = all.iter().collect();
        assert_eq!(once.len(), all.len(), "{all:?}");
    }
}
