//! Rows in their places: while a hand is at work the list keeps its order, and a button that was pressed becomes a tick
//! where it stands.
//!
//! A press is aimed at what was seen, and with wet gloves one goes from row to row. So nothing makes room for what was
//! done: what is not asked for any more leaves its room, and all goes where it belongs once the offer to undo has ended.
//! Only an animal that comes into danger goes to the top at once, and reads as it is.

use std::collections::BTreeMap;

use yeanling_core::book::{Animal, EntryId, Event};
use yeanling_core::sort_small::Gather;
use yeanling_core::watch::State;

use yeanling_words::watch as words;

use super::acts::{Act, Does};
use super::order::in_order;
use super::shown::{Rooms, Shown};

/// What a press noted, and as which entry.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Pressed {
    pub(super) entry: EntryId,
    pub(super) event: Event,
}

/// Returns the rows as they should stand, given how they stood before and what of `pressed` still counts.
///
/// Of those that come newly one in danger stands first, any other behind all of its kind.
pub(super) fn in_place(before: &[Shown], fresh: Vec<Shown>, pressed: &[Pressed]) -> Vec<Shown> {
    let was: BTreeMap<Animal, Option<State>> = before.iter().map(|one| (one.animal, one.state)).gathered();
    let into_danger = |one: &Shown| {
        one.state == Some(State::Danger) && was.get(&one.animal).copied().flatten() != Some(State::Danger)
    };
    let (mut rows, fresh): (Vec<Shown>, Vec<Shown>) = fresh.into_iter().partition(into_danger);
    let first: Vec<Animal> = rows.iter().map(|one| one.animal).collect();
    let before = before.iter().filter(|one| !first.contains(&one.animal));
    let stays = |was: &Shown, now: Option<Shown>| match now {
        Some(now) => stays_as(was, now, pressed),
        None => stays_done(was, pressed),
    };
    let seen: Vec<Animal> = was.keys().copied().collect();
    rows.extend(in_order(before, fresh, |one| one.animal, stays).into_iter().map(|mut one| {
        one.seat.newly |= !seen.contains(&one.animal);
        one.seat.leads &= !one.seat.newly;
        one
    }));
    rows
}

/// A row with more to do, in its place: it stands as it is, in the room that it took. What was done is told with its tick
/// beside it, until the hand lets go: a longer next job would move all that stands below.
fn stays_as(was: &Shown, mut now: Shown, pressed: &[Pressed]) -> Shown {
    now.stood = was.stood;
    now.seat.clone_from(&was.seat);
    let in_danger = now.state == Some(State::Danger);
    if !in_danger {
        now.kind.clone_from(&was.kind);
    }
    if now.ribbon.is_none() {
        now.ribbon.clone_from(&was.ribbon);
    }
    if now.why.is_none() {
        now.why.clone_from(&was.why);
    }
    // Volumes that are not wanted any more leave no gap; those that must not be given go at once.
    if now.facts.is_empty() && !now.held {
        now.facts.clone_from(&was.facts);
    }
    let fresh = (now.button.take(), std::mem::take(&mut now.others));
    if let Some(button) = &was.button {
        let mut offered = now.offers.clone();
        now.button = Some(slot(button, &mut offered, pressed));
        now.others = was.others.iter().map(|act| slot(act, &mut offered, pressed)).collect();
        // In danger nobody waits for the next step.
        if in_danger {
            let next = fresh.0.into_iter().chain(fresh.1).filter(|act| offered.iter().any(|one| one.is(act)));
            now.others.extend(next);
        }
    }
    let done = now.button.as_ref().is_some_and(|act| matches!(act.does, Does::Done(_)));
    if done && !in_danger {
        now.text.clone_from(&was.text);
    }
    now.rooms = rooms(was, &now);
    now
}

/// A row with nothing more to do, in its place.
fn stays_done(was: &Shown, pressed: &[Pressed]) -> Shown {
    let empty = |act: &Act| slot(act, &mut Vec::new(), pressed);
    let now = Shown {
        state: None,
        text: words::NOTHING.to_owned(),
        step: String::new(),
        says: String::new(),
        button: was.button.as_ref().map(empty),
        others: was.others.iter().map(empty).collect(),
        offers: Vec::new(),
        // No volume stands beside an animal that nothing more is known of.
        facts: Vec::new(),
        ..was.clone()
    };
    Shown { rooms: rooms(was, &now), ..now }
}

/// Returns the texts whose room is kept: those that stood there when the hand began.
fn rooms(was: &Shown, now: &Shown) -> Rooms {
    let room = |kept: &str, was: &str, now: &str| {
        let text = if kept.is_empty() && was != now { was } else { kept };
        text.to_owned()
    };
    Rooms {
        text: room(&was.rooms.text, &was.text, &now.text),
        step: room(&was.rooms.step, &was.step, &now.step),
        says: room(&was.rooms.says, &was.says, &now.says),
    }
}

/// Returns what stands in the place of a button, and takes it from what is offered.
fn slot(was: &Act, offered: &mut Vec<Act>, pressed: &[Pressed]) -> Act {
    let meant = Act { does: was.does.meant().clone(), ..was.clone() };
    // What was pressed may be asked for again at once, as a look is: not before the hand has let go.
    let again = offered.iter().position(|act| act.is(&meant)).map(|at| offered.remove(at)).is_some();
    let Act { key, label, does: meant } = meant;
    let was_pressed = |one: &Pressed| matches!(&meant, Does::Notes(event) if *event == one.event);
    let does = if pressed.iter().any(was_pressed) {
        Does::Done(Box::new(meant))
    } else if again {
        meant
    } else if matches!(meant, Does::Asks(_)) {
        // What is asked for on a sheet is not asked for any more once it was noted there.
        Does::Done(Box::new(meant))
    } else {
        Does::Over(Box::new(meant))
    };
    Act { key, label, does }
}

#[cfg(test)]
mod tests {
    use yeanling_core::book::LambId;

    use super::super::order::{Count, count};
    use super::super::seat::Seat;
    use super::*;
    use crate::{Screen, Sheet};

    fn lamb(name: &str) -> LambId {
        let number = name.bytes().fold(0, |sum, byte| sum * 256 + u32::from(byte));
        LambId::from_uuid(uuid::Uuid::from_u128((0x019c_0000_0000_7000_8000 << 48) + u128::from(number)))
    }

    fn entry(name: &str) -> EntryId {
        lamb(name).entry()
    }

    fn notes(label: &str, event: Event) -> Act {
        Act::new(label, label, Does::Notes(event))
    }

    fn dipped(name: &str) -> Act {
        notes("Dipped", Event::NavelDipped { lamb: lamb(name) })
    }

    fn up(name: &str) -> Act {
        notes("Up", Event::Stood { lamb: lamb(name) })
    }

    fn sucked(name: &str) -> Act {
        notes("Nursed", Event::Sucked { lamb: lamb(name) })
    }

    fn weigh(name: &str) -> Act {
        Act::new("weigh", "Weigh", Does::Asks(Sheet::Weight(lamb(name))))
    }

    fn feed() -> Act {
        Act::new("feed", "Feed 195 ml", Does::Leads(Screen::Watch))
    }

    /// A row in a state, with what is to be done as its text and its buttons.
    fn row(name: &str, state: Option<State>, acts: Vec<Act>) -> Shown {
        let text: Vec<&str> = acts.iter().map(|act| act.label.as_str()).collect();
        let mut acts = acts.clone().into_iter();
        let seat = Seat {
            family: Animal::Lamb(lamb(name)),
            title: String::new(),
            aside: String::new(),
            to: None,
            place: None,
            wants_ewe: false,
            alike: None,
            leads: false,
            newly: false,
        };
        let offers: Vec<Act> = acts.clone().collect();
        Shown {
            animal: Animal::Lamb(lamb(name)),
            state,
            stood: state,
            name: name.to_owned(),
            kind: String::new(),
            text: text.join(" · "),
            step: String::new(),
            says: format!("{state:?}"),
            rooms: Rooms::default(),
            soft: false,
            held: false,
            to: Screen::Watch,
            button: acts.next(),
            others: acts.collect(),
            offers,
            ribbon: None,
            facts: Vec::new(),
            why: None,
            seat,
        }
    }

    fn pressed(name: &str, act: Act) -> Pressed {
        match act.does {
            Does::Notes(event) => Pressed { entry: entry(name), event },
            other => panic!("{other:?} notes nothing"),
        }
    }

    /// Tells the rows: each with the state in whose place it stands, and its buttons; a tick is `✓`, an empty place `_`.
    fn told(rows: &[Shown]) -> Vec<String> {
        let act = |act: &Act| match act.does {
            Does::Done(_) => format!("✓{}", act.label),
            Does::Over(_) => "_".to_owned(),
            Does::Notes(_) | Does::Asks(_) | Does::Leads(_) => act.label.clone(),
        };
        let row = |one: &Shown| {
            let acts: Vec<String> = one.button.iter().chain(&one.others).map(act).collect();
            let stood = one.stood.map_or("well".to_owned(), |state| format!("{state:?}").to_lowercase());
            format!("{} {stood}: {}", one.name, acts.join(", "))
        };
        rows.iter().map(row).collect()
    }

    const NOW: Option<State> = Some(State::Now);
    const LATE: Option<State> = Some(State::Late);
    const COMING: Option<State> = Some(State::Coming);
    const DANGER: Option<State> = Some(State::Danger);

    fn three() -> Vec<Shown> {
        ["7a", "8a", "9a"].map(|name| row(name, NOW, vec![dipped(name), up(name)])).into()
    }

    #[test]
    fn rows_pressed_one_after_another_keep_their_places_and_become_ticks() {
        let before = three();
        let fresh = vec![before[1].clone(), before[2].clone(), row("7a", COMING, vec![up("7a")])];
        let one = in_place(&before, fresh, &[pressed("7a", dipped("7a"))]);
        assert_eq!(told(&one), ["7a now: ✓Dipped, Up", "8a now: Dipped, Up", "9a now: Dipped, Up"]);
        assert_eq!(one[0].state, COMING, "it reads as it is");
        assert_eq!(one[0].text, "Dipped · Up", "what was done is told beside its tick");
        let fresh = vec![
            row("8a", NOW, vec![dipped("8a"), up("8a")]),
            row("7a", COMING, vec![up("7a")]),
            row("9a", COMING, vec![up("9a")]),
        ];
        let both = [pressed("7a", dipped("7a")), pressed("9a", dipped("9a"))];
        let two = in_place(&one, fresh, &both);
        assert_eq!(told(&two), ["7a now: ✓Dipped, Up", "8a now: Dipped, Up", "9a now: ✓Dipped, Up"]);
        assert_eq!(two[0], one[0], "what was ticked before stays what it was");
    }

    #[test]
    fn several_buttons_of_one_row_become_ticks() {
        let before = [row("7a", NOW, vec![dipped("7a"), up("7a"), sucked("7a"), feed()])];
        let ticks = [pressed("7a", dipped("7a")), pressed("7a", sucked("7a"))];
        let one = in_place(&before, vec![row("7a", NOW, vec![up("7a"), sucked("7a"), feed()])], &ticks[..1]);
        assert_eq!(told(&one), ["7a now: ✓Dipped, Up, Nursed, Feed 195 ml"]);
        // Who sucked is not offered a bottle: its place stays empty, and no volume stands in it.
        let two = in_place(&one, vec![row("7a", COMING, vec![up("7a")])], &ticks);
        assert_eq!(told(&two), ["7a now: ✓Dipped, Up, ✓Nursed, _"]);
        assert_eq!(two[0].text, "Dipped · Up · Nursed · Feed 195 ml", "nothing makes room");
    }

    #[test]
    fn what_was_taken_back_is_a_button_again_in_its_place() {
        let before = three();
        let fresh = vec![before[0].clone(), before[2].clone(), row("8a", COMING, vec![up("8a")])];
        let ticked = in_place(&before, fresh, &[pressed("8a", dipped("8a"))]);
        let back = in_place(&ticked, three(), &[]);
        assert_eq!(told(&back), told(&before));
        assert_eq!(back[1].state, NOW);
        // Also of a row that had nothing more to do.
        let before = [row("7a", NOW, vec![dipped("7a")]), row("8a", NOW, vec![dipped("8a")])];
        let gone = in_place(&before, vec![before[1].clone()], &[pressed("7a", dipped("7a"))]);
        let back = in_place(&gone, before.to_vec(), &[]);
        assert_eq!(told(&back), told(&before));
    }

    #[test]
    fn a_row_whose_last_duty_was_done_stays_with_its_tick() {
        let before = [row("7a", NOW, vec![dipped("7a"), up("7a")]), row("8a", NOW, vec![dipped("8a")])];
        let rows = in_place(&before, vec![before[1].clone()], &[pressed("7a", dipped("7a"))]);
        assert_eq!(told(&rows), ["7a now: ✓Dipped, _", "8a now: Dipped"]);
        assert_eq!((rows[0].state, rows[0].text.as_str()), (None, words::NOTHING));
        assert_eq!((rows[0].rooms.text.as_str(), rows[0].rooms.says.as_str()), ("Dipped · Up", "Some(Now)"));
        // What comes after keeps it so.
        assert_eq!(in_place(&rows, vec![before[1].clone()], &[pressed("7a", dipped("7a"))]), rows);
    }

    #[test]
    fn what_is_asked_for_again_at_once_is_a_tick_all_the_same() {
        let look = || notes("All well", Event::Sucked { lamb: lamb("7a") });
        let before = [row("7a", NOW, vec![look()])];
        let rows = in_place(&before, vec![row("7a", COMING, vec![look()])], &[pressed("7a", look())]);
        assert_eq!(told(&rows), ["7a now: ✓All well"]);
    }

    #[test]
    fn what_was_noted_on_a_sheet_is_a_tick_too() {
        let before = [row("7a", NOW, vec![weigh("7a"), up("7a")])];
        let rows = in_place(&before, vec![row("7a", COMING, vec![up("7a")])], &[]);
        assert_eq!(told(&rows), ["7a now: ✓Weigh, Up"]);
        let back = in_place(&rows, before.to_vec(), &[]);
        assert_eq!(told(&back), ["7a now: Weigh, Up"]);
    }

    #[test]
    fn what_is_put_off_stays_where_it_is_with_its_buttons_in_their_order() {
        let before = [row("7a", LATE, vec![dipped("7a"), up("7a")]), row("8a", NOW, vec![dipped("8a")])];
        let fresh = vec![before[1].clone(), row("7a", COMING, vec![up("7a"), dipped("7a")])];
        assert_eq!(told(&in_place(&before, fresh, &[])), ["7a late: Dipped, Up", "8a now: Dipped"]);
    }

    #[test]
    fn who_comes_into_danger_goes_first_and_reads_as_it_is() {
        let before = three();
        let danger = row(
            "9a",
            DANGER,
            vec![notes("Vet called", Event::VetCalled { animal: Animal::Lamb(lamb("9a")) }), up("9a")],
        );
        let fresh = vec![danger.clone(), before[1].clone(), row("7a", COMING, vec![up("7a")])];
        let rows = in_place(&before, fresh, &[pressed("7a", dipped("7a"))]);
        assert_eq!(told(&rows), ["9a danger: Vet called, Up", "7a now: ✓Dipped, Up", "8a now: Dipped, Up"]);
        assert_eq!(rows[0], danger);
        // One that was not here before, too; and who was in danger already keeps its place.
        let new = row("6a", DANGER, vec![up("6a")]);
        let fresh = vec![danger.clone(), new, before[1].clone(), row("7a", COMING, vec![up("7a")])];
        let again = in_place(&rows, fresh, &[pressed("7a", dipped("7a"))]);
        let names: Vec<&str> = again.iter().map(|one| one.name.as_str()).collect();
        assert_eq!(names, ["6a", "9a", "7a", "8a"]);
    }

    #[test]
    fn in_danger_the_next_step_is_there_at_once() {
        let call = || notes("Vet called", Event::VetCalled { animal: Animal::Lamb(lamb("7a")) });
        let said = || Act {
            key: "said".to_owned(),
            label: "Vet said".to_owned(),
            does: Does::Asks(Sheet::Vet(Animal::Lamb(lamb("7a")))),
        };
        let before = [row("7a", DANGER, vec![call(), up("7a")])];
        let fresh = vec![row("7a", DANGER, vec![said(), up("7a")])];
        let rows = in_place(&before, fresh, &[pressed("7a", call())]);
        assert_eq!(told(&rows), ["7a danger: ✓Vet called, Up, Vet said"]);
        // Less urgent, it comes into the place of the tick once the offer has ended.
        let before = [row("7a", LATE, vec![call(), up("7a")])];
        let rows = in_place(&before, vec![row("7a", NOW, vec![said(), up("7a")])], &[pressed("7a", call())]);
        assert_eq!(told(&rows), ["7a late: ✓Vet called, Up"]);
    }

    #[test]
    fn what_comes_newly_stands_behind_those_that_are_there() {
        let before = three();
        let fresh = [vec![row("6a", LATE, vec![up("6a")])], three()].concat();
        let names: Vec<String> = in_place(&before, fresh, &[]).into_iter().map(|one| one.name).collect();
        assert_eq!(names, ["7a", "8a", "9a", "6a"]);
    }

    #[test]
    fn a_row_in_its_place_stays_in_its_pen() {
        let mut before = three();
        before[0].seat.place = Some("Pen 1".to_owned());
        let fresh = three();
        assert_eq!(in_place(&before, fresh, &[])[0].seat.place.as_deref(), Some("Pen 1"));
    }

    #[test]
    fn the_counts_under_the_name_keep_their_room() {
        let before = [row("7a", LATE, vec![dipped("7a")]), row("8a", NOW, vec![dipped("8a")])];
        assert_eq!(count(&before, State::Late), Count::Some(1));
        assert_eq!(count(&before, State::Coming), Count::None);
        let ticks = [pressed("7a", dipped("7a"))];
        let rows = in_place(&before, vec![before[1].clone(), row("7a", COMING, vec![up("7a")])], &ticks);
        assert_eq!(count(&rows, State::Late), Count::Room(1));
        assert_eq!(count(&rows, State::Now), Count::Some(1));
        assert_eq!(count(&rows, State::Coming), Count::None, "what is to come can wait");
    }
}
