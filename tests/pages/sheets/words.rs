//! A few words of an animal, how it left, of what it died.

use yeanling_core::book::{Animal, BirthDay, Castration, Cause, Departure, Event, Life};
use yeanling_pages::Sheet;

use super::with_lamb;

#[test]
fn a_tag_a_mark_a_remark_and_a_finding_are_noted_as_they_were_written() {
    let (mut phone, _, lamb) = with_lamb();
    let animal = Animal::Lamb(lamb);
    phone.ask(Sheet::Tag(animal)).tells("7a").write("Tag or mark", "  Clover ").press("Save").is_closed();
    phone.has_noted(&Event::Tagged { animal, tag: "Clover".to_owned() });
    phone.ask(Sheet::Paint(animal)).tells("Clover").write("Mark", "blue 7").press("Save").is_closed();
    phone.has_noted(&Event::Life(Life::Marked { animal, mark: "blue 7".to_owned() }));
    phone.ask(Sheet::Remark(animal)).write("Note", "White ear <b>left</b>").press("Save").is_closed();
    phone.has_noted(&Event::Remarked { animal, text: "White ear <b>left</b>".to_owned() });
    phone.ask(Sheet::Death(animal)).press("cold").is_closed();
    phone.has_noted(&Event::Died { animal, cause: Cause::Cold });
    let finding = yeanling_words::life::EXAMINED_LABEL;
    phone.ask(Sheet::Examined(animal)).write(finding, "An empty stomach").press("Save").is_closed();
    let found = Life::Examined { animal, finding: "An empty stomach".to_owned() };
    phone.has_noted(&Event::Life(found));
}

#[test]
fn nothing_written_is_refused_at_the_field() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Remark(Animal::Lamb(lamb))).press("Save");
    phone.tells("Nothing typed yet").wrong_at("Note");
    phone.write("Note", "x").tells_not("Nothing typed yet");
}

#[test]
fn a_death_is_taken_back_by_undo() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Death(Animal::Lamb(lamb))).press("not known").is_closed();
    assert!(phone.flock.lamb(lamb).is_some_and(|lamb| !lamb.lives()));
    assert!(phone.undo());
    assert!(phone.flock.lamb(lamb).is_some_and(yeanling_core::flock::Lamb::lives));
}

#[test]
fn how_it_left_must_be_chosen() {
    let (mut phone, ewe, _) = with_lamb();
    let animal = Animal::Ewe(ewe);
    phone.ask(Sheet::Leave(animal)).press("Save").tells("Tap how it left.");
    let sold = yeanling_words::life::departure(Departure::Sold);
    phone.press(sold).tells_not("Tap how it left.");
    phone.write("To whom or where, if you like", "the market").press("Save").is_closed();
    let to = Some("the market".to_owned());
    phone.has_noted(&Event::Life(Life::Went { animal, how: Departure::Sold, to }));
}

#[test]
fn what_is_known_of_a_ewe_stands_there_when_it_is_asked_again() {
    let (mut phone, ewe, _) = with_lamb();
    phone.ask(Sheet::Describe(ewe)).write("Year or day of birth", "last spring").press("Save");
    phone.wrong_at("Year or day of birth");
    phone.write("Year or day of birth", "2022").write("Breed", "Romney").press("Save").is_closed();
    let breed = Some("Romney".to_owned());
    phone.has_noted(&Event::Life(Life::Described { ewe, born: Some(BirthDay::Year(2022)), breed }));
    phone.ask(Sheet::Describe(ewe)).has_typed("Year or day of birth", "2022").has_typed("Breed", "Romney");
    phone.write("Year or day of birth", "").press("Save").is_closed();
    let breed = Some("Romney".to_owned());
    phone.has_noted(&Event::Life(Life::Described { ewe, born: None, breed }));
}

#[test]
fn how_a_ram_lamb_was_castrated_is_noted_beside_its_caution() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Castrate(lamb)).tells(yeanling_words::life::CASTRATE_CAUTION);
    phone.press(yeanling_words::life::castration(Castration::Cut)).is_closed();
    phone.has_noted(&Event::Life(Life::Castrated { lamb, way: Castration::Cut }));
}
