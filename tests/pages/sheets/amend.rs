//! An earlier entry is changed in time and in content; what was not touched stays as it was.

use yeanling_core::book::{
    Animal, Belly, Cause, EntryId, Event, Item, LambingEase, Life, Milk, Sex, Treatment, VigorScale, Way,
};
use yeanling_core::units::{Amount, Condition, Mass, Temperature, TimeDelta, Volume};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Sheet};

use super::with_lamb;
use crate::phone::Phone;
use crate::reach::reached;

fn as_it_stands(phone: &Phone, entry: EntryId) -> Event {
    let line = phone.flock.lines.iter().find(|line| line.entry == entry);
    line.expect("it is in the book").event.clone()
}

/// A phone with a fact of each kind of which something beside the time can be changed.
fn with_all() -> (Phone, Vec<EntryId>) {
    let (mut phone, ewe, lamb) = with_lamb();
    let born = phone.flock.lambs[&lamb].born;
    let (animal, words) = (Animal::Ewe(ewe), || "one".to_owned());
    let mass = Mass::from_kilograms(4.037);
    let (item, amount) = (Item::ALL[0], Amount::from_units(3.0));
    let group = phone.note(Event::GroupFormed { name: words() });
    let in_group = group.as_group();
    let pen = phone.note(Event::PenMade { name: words(), size: None });
    phone.note(Event::JoinedGroup { ewe, group: in_group });
    let treatment = Treatment {
        product: words(),
        amount: None,
        route: None,
        reason: None,
        batch: None,
        by: None,
        day_only: false,
        meat_days: Some(7),
        milk_days: Some(5),
    };
    let facts = [
        Event::Tagged { animal, tag: words() },
        Event::BirthEase { lamb, ease: LambingEase::Alone },
        Event::Weighed { lamb, mass },
        Event::Fed { lamb, volume: Volume::from_milliliters(150.0), milk: Milk::Milk, way: Way::Bottle },
        Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 2 },
        Event::BellyFelt { lamb, belly: Belly::Full },
        Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(39.04) },
        Event::PenNamed { pen: pen.as_pen(), name: "four".to_owned() },
        Event::GroupNamed { group: in_group, name: "hill".to_owned() },
        Event::RamIn { group: in_group, ram: Some(words()), age: None },
        Event::CrayonChanged { group: in_group, color: words() },
        Event::CrayonMark { ewe, color: words() },
        Event::Conditioned { ewe, score: Condition::from_score(3.0) },
        Event::EweWeighed { ewe, mass: Mass::from_kilograms(70.0) },
        Event::FeedSet { group: in_group, mass: Mass::from_kilograms(0.5) },
        Event::StoreCounted { item, amount },
        Event::StoreIn { item, amount },
        Event::StoreUsed { item, amount },
        Event::StoreThrown { item, amount },
        Event::Remarked { animal, text: words() },
        Event::Life(Life::Marked { animal, mark: words() }),
        Event::Life(Life::Treated { animal, treatment: Box::new(treatment) }),
    ];
    let mut entries = vec![group, pen, lamb.entry(), ewe.entry()];
    for fact in facts {
        phone.later(1);
        entries.push(phone.note(fact));
    }
    let other = phone.ewe("8");
    let scanned = Event::Scanned { ewe: other, lambs: 1, days: Some(80) };
    entries.push(phone.note(scanned));
    let twin = phone
        .note_at(Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(Sex::Ewe), alive: true }, born);
    let animal = Animal::Lamb(twin.as_lamb());
    entries.push(phone.note(Event::Died { animal, cause: Cause::Cold }));
    entries.push(phone.note(Event::Life(Life::Examined { animal, finding: words() })));
    (phone, entries)
}

/// Types or chooses something else in the first of what is asked beside the time; says whether anything is.
fn disturb(phone: &mut Phone) -> bool {
    for block in reached(&phone.page()).into_iter().skip(1) {
        match &block.kind {
            Kind::Field(field) => {
                let text = match field.value.as_str() {
                    "70" => "60",
                    _ if field.label == "Temperature" => "38",
                    number if number.parse::<f64>().is_ok() => "2",
                    _ => "other",
                };
                phone.act(&Action::Type(block.key.clone(), text.to_owned()));
                return true;
            }
            Kind::Choices(choices) => {
                // The last of them: a scan of none tells no age, which another count keeps.
                let other =
                    choices.options.iter().enumerate().rfind(|(place, _)| choices.chosen != Some(*place));
                phone.act(&other.expect("more than one").1.does);
                return true;
            }
            _ => {}
        }
    }
    false
}

#[test]
fn what_is_not_changed_stays_as_it_was_to_the_last_digit() {
    let (mut phone, entries) = with_all();
    for entry in entries {
        let (was, at) = {
            let line = phone.flock.lines.iter().find(|line| line.entry == entry).expect("a line");
            (line.event.clone(), line.at)
        };
        phone.ask(Sheet::Amend(entry)).press("Save").is_closed();
        let line = phone.flock.lines.iter().find(|line| line.entry == entry).expect("a line");
        assert_eq!((&line.event, line.at), (&was, at));
    }
}

#[test]
fn what_is_changed_on_the_sheet_is_changed_in_the_fact() {
    let (phone, entries) = with_all();
    for entry in entries {
        // Each by itself: one that was changed may stand in the way of another.
        let mut phone = phone.clone();
        let was = as_it_stands(&phone, entry);
        phone.ask(Sheet::Amend(entry));
        assert!(disturb(&mut phone), "{was:?} can be changed");
        phone.press("Save").is_closed();
        assert_ne!(as_it_stands(&phone, entry), was);
    }
}

#[test]
fn a_fact_of_which_nothing_else_can_be_changed_asks_for_its_time_alone() {
    let (mut phone, _, lamb) = with_lamb();
    let sucked = phone.note(Event::Sucked { lamb });
    phone.later(30);
    phone.ask(Sheet::Amend(sucked));
    assert!(!disturb(&mut phone));
    phone.write("When", "2027-02-01T23:55").press("Save").is_closed();
}

#[test]
fn a_birth_in_the_future_and_a_suck_before_birth_are_refused_and_nothing_is_lost() {
    let (mut phone, _, lamb) = with_lamb();
    let sucked = phone.note(Event::Sucked { lamb });
    phone.later(3);
    phone.ask(Sheet::Amend(lamb.entry())).write("When", "2027-02-03T03:12").press("Save");
    phone.tells("is in the future").has_typed("When", "2027-02-03T03:12");
    phone.write("When", "2027-02-01T23:58").press("Save").tells("not born at 23:58");
    phone.write("When", "").press("Save").tells("Give the day and the time");
    phone.write("When", "2027-02-01T23:30").press("Save").is_closed();
    phone.ask(Sheet::Amend(sucked)).write("When", "2027-02-01T23:00").press("Save");
    phone.tells("before its birth at 23:30");
    phone.write("When", "2027-02-01T23:40").press("Save").is_closed();
    let line = phone.flock.lines.iter().find(|line| line.entry == sucked).expect("it stands");
    assert!(line.amended && yeanling_words::common::clock(line.at) == "23:40");
}

#[test]
fn what_is_wrong_is_said_at_its_field_and_notes_nothing() {
    let (mut phone, _, lamb) = with_lamb();
    let weighed = phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    let before = phone.book.len();
    phone.ask(Sheet::Amend(weighed)).write("Weight", "4..2").press("Save").wrong_at("Weight");
    phone.has_typed("Weight", "4..2").write("Weight", "8.8").press("lb").press("Save").is_closed();
    assert_eq!(phone.book.len(), before + 1);
    let Event::Weighed { mass, .. } = as_it_stands(&phone, weighed) else { panic!("a weight") };
    assert!((mass.as_pounds() - 8.8).abs() < 0.01);
}

#[test]
fn the_same_digits_in_the_other_unit_are_another_weight() {
    let (mut phone, _, lamb) = with_lamb();
    let weighed = phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.ask(Sheet::Amend(weighed)).press("lb").press("Save").is_closed();
    let Event::Weighed { mass, .. } = as_it_stands(&phone, weighed) else { panic!("a weight") };
    assert!((mass.as_pounds() - 4.0).abs() < 0.01);
}

#[test]
fn a_lamb_that_was_noted_alive_can_be_said_to_have_been_born_dead_and_back() {
    let (mut phone, _, lamb) = with_lamb();
    let dead = |phone: &Phone| !as_it_stands(phone, lamb.entry()).clone().eq(&alive(phone));
    fn alive(phone: &Phone) -> Event {
        let dam = phone.flock.ewes.keys().next().copied();
        Event::LambBorn { dam, beside: None, sex: Some(Sex::Ram), alive: true }
    }
    phone.ask(Sheet::Amend(lamb.entry())).press("Born dead").press("Born dead").press("Save").is_closed();
    assert!(!dead(&phone));
    phone.ask(Sheet::Amend(lamb.entry())).press("Born dead").press("Save").is_closed();
    assert!(dead(&phone));
    phone.ask(Sheet::Amend(lamb.entry())).press("Born dead").press("Save").is_closed();
    assert!(!dead(&phone));
}

#[test]
fn an_entry_that_is_gone_says_so() {
    let (mut phone, _, _) = with_lamb();
    let gone = phone.clone().note(Event::EweCame { tag: Some("8".to_owned()) });
    phone.ask(Sheet::Amend(gone)).tells(yeanling_words::frame::GONE);
    assert!(phone.pressables().is_empty());
}

#[test]
fn a_time_that_was_not_touched_stays_to_the_second() {
    let (mut phone, _, lamb) = with_lamb();
    let at = phone.now - TimeDelta::seconds(17);
    let remark = Event::Remarked { animal: Animal::Lamb(lamb), text: "one".to_owned() };
    let entry = phone.note_at(remark, at);
    phone.ask(Sheet::Amend(entry)).write("Note", "two").press("Save").is_closed();
    assert_eq!(phone.flock.lines.iter().find(|line| line.entry == entry).map(|line| line.at), Some(at));
}
