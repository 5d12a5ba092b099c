//! A busy hour on the Watch: fifteen animals with something due, who stands first, and what each line offers.

use yeanling_core::book::{Animal, Care, Event, EweId, Illness, LambId, Life, Milk, VigorScale, Way};
use yeanling_core::terms::UdderHalf;
use yeanling_core::units::{Mass, Moment, Temperature, TimeDelta, Volume};
use yeanling_pages::block::{Family, Kind, Row, RowLook};
use yeanling_pages::{Screen, State, Stays};

use crate::phone::Phone;

/// A night at its busiest: a cold lamb, triplets found, ewes after lambing, ewes at work, bottle lambs.
struct Night {
    phone: Phone,
    cold: LambId,
    taken: LambId,
}

fn noted(phone: &mut Phone, minutes_ago: i64, event: Event) -> yeanling_core::book::EntryId {
    let at: Moment = phone.now - TimeDelta::minutes(minutes_ago);
    phone.note_at(event, at)
}

fn born(phone: &mut Phone, dam: Option<EweId>, minutes_ago: i64, kilograms: f64) -> LambId {
    let lamb =
        noted(phone, minutes_ago, Event::LambBorn { dam, beside: None, sex: None, alive: true }).as_lamb();
    noted(phone, minutes_ago - 1, Event::Weighed { lamb, mass: Mass::from_kilograms(kilograms) });
    lamb
}

fn ewes(phone: &mut Phone, tags: &[&str]) -> Vec<EweId> {
    let came = phone.now - TimeDelta::days(100);
    tags.iter()
        .map(|tag| phone.note_at(Event::EweCame { tag: Some((*tag).to_owned()) }, came).as_ewe())
        .collect()
}

fn night() -> Night {
    let mut phone = Phone::at("2027-03-02 06:41");
    let [three, seven, twelve, twenty, thirty, forty] =
        ewes(&mut phone, &["3", "7", "12", "20", "30", "40"])[..]
    else {
        panic!("six ewes")
    };
    let pen = noted(&mut phone, 600, Event::PenMade { name: "4".to_owned(), size: None }).as_pen();
    // Triplets, unfed.
    let triplets = [110, 104, 98].map(|ago| born(&mut phone, Some(three), ago, 3.6));
    noted(&mut phone, 90, Event::AllBorn { lamb: triplets[0] });
    noted(&mut phone, 90, Event::PutInPen { pen, animal: Animal::Ewe(three) });
    noted(&mut phone, 80, Event::Stood { lamb: triplets[1] });
    noted(&mut phone, 70, Event::Sucked { lamb: triplets[1] });
    // Twins, one of them cold; its sister waits for her navel.
    let cold = born(&mut phone, Some(seven), 391, 2.8);
    let sister = born(&mut phone, Some(seven), 380, 3.1);
    noted(&mut phone, 375, Event::AllBorn { lamb: cold });
    noted(&mut phone, 360, Event::Sucked { lamb: sister });
    noted(&mut phone, 340, Event::Sucked { lamb: cold });
    noted(
        &mut phone,
        9,
        Event::TemperatureTaken { lamb: cold, temperature: Temperature::from_celsius(35.0) },
    );
    noted(&mut phone, 8, Event::SwallowTried { lamb: cold, able: false });
    // Three that lambed in the evening.
    for ewe in [twelve, twenty, thirty] {
        let lamb = born(&mut phone, Some(ewe), 430, 4.0);
        for event in [Event::NavelDipped { lamb }, Event::Stood { lamb }, Event::Sucked { lamb }] {
            noted(&mut phone, 400, event);
        }
        noted(&mut phone, 60, Event::NavelDipped { lamb });
        noted(&mut phone, 395, Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 1 });
        noted(&mut phone, 395, Event::AllBorn { lamb });
        let (left, right) = (UdderHalf::Milks, UdderHalf::Milks);
        noted(&mut phone, 394, Event::Illness(Illness::UdderChecked { ewe, left, right }));
        noted(&mut phone, 393, Event::Care(Care::Settled { ewe }));
    }
    // One of them takes on a lamb of the triplets.
    let taken = triplets[2];
    noted(&mut phone, 60, Event::Life(Life::Fostered { lamb: taken, dam: twelve }));
    // On the bottle.
    let bottle = born(&mut phone, None, 5 * 24 * 60, 3.4);
    let fed = |ml| Event::Fed {
        lamb: bottle,
        volume: Volume::from_milliliters(ml),
        milk: Milk::Replacer,
        way: Way::Bottle,
    };
    noted(&mut phone, 400, fed(200.0));
    // At work.
    noted(&mut phone, 62, Event::WaterBagSeen { ewe: forty });
    Night { phone, cold, taken }
}

fn rows(phone: &Phone) -> Vec<Row> {
    let page = phone.page_of(Screen::Watch);
    let rows = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Row(row) if row.look != RowLook::Paper => Some(row.clone()),
        _ => None,
    });
    rows.collect()
}

fn families(phone: &Phone) -> Vec<Family> {
    let page = phone.page_of(Screen::Watch);
    let all = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Family(family) => Some(family.clone()),
        _ => None,
    });
    all.collect()
}

fn lines(family: &Family) -> Vec<String> {
    let names = family.lines.iter().filter_map(|line| match &line.kind {
        Kind::Row(row) => Some(row.name.clone()),
        _ => None,
    });
    names.collect()
}

#[track_caller]
fn family(phone: &Phone, title: &str) -> Family {
    let all = families(phone);
    let found = all.iter().find(|family| family.title == title);
    found
        .unwrap_or_else(|| {
            panic!("no {title:?} among {:?}", all.iter().map(|one| &one.title).collect::<Vec<_>>())
        })
        .clone()
}

#[track_caller]
fn row(phone: &Phone, name: &str) -> Row {
    rows(phone).into_iter().find(|row| row.name == name).unwrap_or_else(|| panic!("no row of {name}"))
}

#[test]
fn the_cold_lamb_is_one_solid_card_first_with_its_sign_and_its_step() {
    let Night { phone, .. } = night();
    let first = &rows(&phone)[0];
    assert_eq!((first.name.as_str(), first.look, first.state), ("7a", RowLook::Solid, State::Danger));
    assert_eq!(first.text.plain(), "35.0 °C, no swallow");
    assert!(first.step.plain().starts_with("Glucose first, no milk, no heat yet"), "{}", first.step.plain());
    assert!(first.others.len() <= 1, "one further button at most");
}

#[test]
fn a_family_is_one_card_that_says_whose_it_is_and_where() {
    let Night { phone, .. } = night();
    let three = family(&phone, "Ewe 3 · Pen 4");
    assert!(lines(&three).len() > 1);
    assert_eq!(three.aside.plain(), "twins", "one of the three is with another ewe");
    assert_eq!(three.to.map(|to| matches!(to, Screen::Ewe(_))), Some(true));
}

#[test]
fn the_headline_is_the_need_and_never_the_time_that_is_left() {
    let Night { phone, .. } = night();
    let unfed = row(&phone, "3a");
    let says = unfed.says.plain().replace('\u{a0}', " ");
    assert!(says.starts_with("1 h 50 min unfed") && says.contains("late: "), "{says}");
    phone.says_nowhere("left for");
}

#[test]
fn who_rears_a_fostered_lamb_stands_on_its_card() {
    let Night { phone, taken, .. } = night();
    let name = phone.name(Animal::Lamb(taken));
    let row = row(&phone, &name);
    let with = row.kind.plain();
    let on_card =
        families(&phone).iter().any(|one| one.title.starts_with("Ewe 12") && lines(one).contains(&name));
    assert!(on_card || with.contains("with Ewe 12"), "{with}");
}

#[test]
fn ewes_of_whom_the_same_is_asked_share_a_card_and_all_passed_is_one_tap() {
    let Night { mut phone, .. } = night();
    phone.open(Screen::Watch);
    let all = family(&phone, "2 ewes: Afterbirth passed? Never pull it");
    assert_eq!(lines(&all), ["Ewe 20", "Ewe 30"]);
    phone.press("All passed, all of these ewes");
    let ticks =
        |phone: &Phone, name: &str| row(phone, name).action.is_some_and(|one| one.stays == Stays::Tick);
    assert!(ticks(&phone, "Ewe 20") && ticks(&phone, "Ewe 30"));
    phone.later(1);
    assert!(rows(&phone).iter().all(|row| row.name != "Ewe 20" && row.name != "Ewe 30"));
}

#[test]
fn a_missed_navel_is_late_in_words_and_does_not_shout() {
    let mut phone = Phone::at("2027-03-02 06:41");
    let ewe = ewes(&mut phone, &["7"])[0];
    let lamb = born(&mut phone, Some(ewe), 50, 4.0);
    noted(&mut phone, 30, Event::Sucked { lamb });
    noted(&mut phone, 40, Event::AllBorn { lamb });
    let (left, right) = (UdderHalf::Milks, UdderHalf::Milks);
    noted(&mut phone, 25, Event::Illness(Illness::UdderChecked { ewe, left, right }));
    let row = row(&phone, "7a");
    assert_eq!(row.state, State::Late);
    assert!(row.says.plain().starts_with("late"), "{}", row.says.plain());
    assert_eq!(row.look, RowLook::Alone(State::Now), "its ground is that of what is due now");
}

#[test]
fn volumes_stand_only_while_milk_is_wanted() {
    let mut phone = Phone::at("2027-03-02 06:41");
    let ewe = ewes(&mut phone, &["7"])[0];
    let lamb = born(&mut phone, Some(ewe), 80, 4.0);
    noted(&mut phone, 70, Event::AllBorn { lamb });
    phone.open(Screen::Watch).says("next feed");
    phone.note(Event::Sucked { lamb });
    phone.says_nowhere("next feed");
}

#[test]
fn the_page_of_a_lamb_in_danger_comforts_nobody() {
    let Night { mut phone, cold, .. } = night();
    phone.open(Screen::Lamb(cold)).says("35.0 °C").says_nowhere("left");
    let figures = |phone: &Phone| {
        let page = phone.page();
        page.all().into_iter().filter(|block| matches!(block.kind, Kind::Figure(_))).count()
    };
    assert_eq!(figures(&phone), 0);
}

#[test]
fn a_lamb_that_no_ewe_rears_is_one_tap_from_the_ewes() {
    let mut phone = Phone::at("2027-03-02 06:41");
    let lamb = born(&mut phone, None, 80, 4.0);
    phone.open(Screen::Watch).says("No ewe rears it");
    let name = phone.name(Animal::Lamb(lamb));
    phone.press(&format!("Foster, {name}"));
    assert_eq!(phone.draft().sheets.len(), 1);
}
