//! A feed by hand.

use yeanling_core::book::{Event, Illness, Milk, Way};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System, Temperature, TimeDelta, Volume};
use yeanling_core::watch::hold_milk;
use yeanling_pages::{Action, Screen, Sheet};

use super::with_lamb;

fn ml(volume: f64) -> Volume {
    Volume::from_milliliters(volume)
}

#[test]
fn a_feed_is_noted_with_its_milk_and_way() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.ask(Sheet::Feed(lamb, None, Milk::EweColostrum));
    phone.press("Save").tells("Nothing typed yet");
    phone.write("Volume", "150").tells_not("swallow");
    phone.note(Event::SwallowTried { lamb, able: true });
    phone.press("Tube").tells("swallow").press("Save").is_closed();
    let fed = Event::Fed { lamb, volume: ml(150.0), milk: Milk::EweColostrum, way: Way::Tube };
    phone.has_noted(&fed);
}

#[test]
fn a_volume_that_lies_ready_is_taken_with_one_press() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.ask(Sheet::Feed(lamb, Some(ml(195.0)), Milk::EweColostrum)).has_typed("Volume", "195");
    phone.press("Save").is_closed();
    let fed = Event::Fed { lamb, volume: ml(195.0), milk: Milk::EweColostrum, way: Way::Bottle };
    phone.has_noted(&fed);
}

#[test]
fn no_volume_lies_ready_for_a_lamb_that_must_not_have_milk() {
    let (mut phone, _, lamb) = with_lamb();
    phone.later(400);
    let cold = phone.now - TimeDelta::minutes(1);
    phone.note_at(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) }, cold);
    phone.ask(Sheet::Feed(lamb, Some(ml(195.0)), Milk::EweColostrum)).has_typed("Volume", "");
    let hold = hold_milk(&phone.flock.lambs[&lamb]).expect("no milk yet");
    for line in yeanling_words::lamb::hold(hold, System::Metric) {
        phone.tells(&line.replace('*', ""));
    }
}

#[test]
fn too_much_is_refused_at_the_field_and_stays_there() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    let before = phone.book.len();
    phone.ask(Sheet::Feed(lamb, None, Milk::Milk)).write("Volume", "2000").press("Save");
    phone.has_typed("Volume", "2000").wrong_at("Volume");
    assert_eq!(phone.book.len(), before);
}

#[test]
fn a_farm_in_ounces_types_ounces() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.ask(Sheet::Feed(lamb, Some(Volume::from_fluid_ounces(6.6)), Milk::Milk));
    phone.tells("fl oz").has_typed("Volume", "6.6").press("Save").is_closed();
}

#[test]
fn a_part_of_the_feed_that_lies_ready_is_noted_with_one_press() {
    for (press, took) in [("¼", 50.0), ("½", 100.0), ("¾", 145.0), ("All", 195.0)] {
        let (mut phone, _, lamb) = with_lamb();
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
        phone.ask(Sheet::Feed(lamb, Some(ml(195.0)), Milk::EweColostrum)).press(press).is_closed();
        phone.has_noted(&Event::Fed { lamb, volume: ml(took), milk: Milk::EweColostrum, way: Way::Bottle });
    }
    // The keys begin another amount.
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.ask(Sheet::Feed(lamb, Some(ml(195.0)), Milk::EweColostrum)).keys("80").has_typed("Volume", "80");
}

#[test]
fn no_part_of_a_feed_is_offered_while_milk_must_wait() {
    let (mut phone, _, lamb) = with_lamb();
    phone.later(400);
    phone.note(Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) });
    phone.ask(Sheet::Feed(lamb, Some(ml(195.0)), Milk::EweColostrum)).has_no_button("½");
}

#[test]
fn what_a_lamb_had_all_the_same_is_a_record_and_no_offer() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.later(150).open(Screen::Lamb(lamb)).says("Before any milk").has_button("Temperature");
    phone.has_no_button("Fed").has_no_button("Nursed");
    phone.press("Already fed").tells("already had").press("Temperature");
    assert_eq!(phone.screen, Screen::ColdLamb(Some(lamb)));
    // By the bottle.
    let mut fed = phone.clone();
    fed.open(Screen::Lamb(lamb))
        .press("Already fed")
        .write("Volume", "120")
        .press("Save the record")
        .is_closed();
    let bottle = Event::Fed { lamb, volume: ml(120.0), milk: Milk::DamColostrum, way: Way::Bottle };
    fed.has_noted(&bottle);
    // From the ewe.
    phone.open(Screen::Lamb(lamb)).press("Already fed").press("Nursed").press("Save the record").is_closed();
    phone.has_noted(&Event::Sucked { lamb });
    phone.says_nowhere("Before any milk");
}

#[test]
fn of_one_half_of_an_udder_it_is_said_which_and_of_none_other_colostrum_lies_ready() {
    use yeanling_core::terms::UdderHalf::{Dry, HardOrHot, Milks};
    let (mut phone, ewe, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    let checked = |left, right| Event::Illness(Illness::UdderChecked { ewe, left, right });
    phone.note(checked(Milks, HardOrHot));
    phone.open(Screen::Lamb(lamb)).tells("Draw it from her left half").press("Other feed");
    phone.tells("Draw it from her left half").tells("its dam");
    phone.act(&Action::Close);
    phone.later(1).note(checked(Dry, HardOrHot));
    phone.open(Screen::Lamb(lamb)).tells("Use other colostrum").press("Other feed");
    phone.tells("Use other colostrum").tells("another ewe");
}
