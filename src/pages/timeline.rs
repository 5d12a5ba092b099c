//! What was noted about an animal, a pen, a group, the stores or the farm, newest first; each line can be changed, taken back, and brought back.

use yeanling_core::book::{Animal, Event, GroupId, PenId};
use yeanling_core::flock::Line;
use yeanling_words::common::day_and_clock;
use yeanling_words::{frame, noted};

use crate::block::Noted;
use crate::page::{Blocks, key_of};
use crate::view::View;
use crate::{Action, Button, Kind, Sheet};

/// Returns the timeline of an animal as a part of a page; nothing when nothing was noted.
pub(crate) fn of_animal(view: &View, animal: Animal) -> Blocks {
    section(view.flock.lines_of(animal).rev().map(|line| noted(view, line)).collect())
}

/// Returns the timeline of a pen as a part of a page; nothing when nothing was noted.
pub(crate) fn of_pen(view: &View, pen: PenId) -> Blocks {
    section(view.flock.lines_of_pen(pen).rev().map(|line| noted(view, line)).collect())
}

/// Returns what was noted of a group as a whole, folded; what was noted of its ewes stands with them.
pub(crate) fn of_group(view: &View, group: GroupId) -> Blocks {
    let of_all = |line: &&Line| line.event.animals().next().is_none();
    folded(view.flock.lines_of_group(group).rev().filter(of_all).map(|line| noted(view, line)).collect())
}

/// Returns what was noted of supplies and the freezer, folded.
pub(crate) fn of_stores(view: &View) -> Blocks {
    folded(view.flock.lines_of_stores().rev().map(|line| noted(view, line)).collect())
}

/// Returns what the farm has chosen, folded.
pub(crate) fn of_choices(view: &View) -> Blocks {
    let choices = view.flock.lines.iter().rev().filter(|line| matches!(line.event, Event::Chose(_)));
    folded(choices.map(|line| noted(view, line)).collect())
}

fn section(lines: Vec<Noted>) -> Blocks {
    if lines.is_empty() {
        return Blocks::new();
    }
    Blocks::new().section("noted", frame::NOTED, Blocks::new().add("timeline", Kind::Timeline(lines)))
}

/// What is seldom looked at: it is there to be put right.
fn folded(lines: Vec<Noted>) -> Blocks {
    if lines.is_empty() {
        return Blocks::new();
    }
    Blocks::new().fold("noted", frame::NOTED, Blocks::new().add("timeline", Kind::Timeline(lines)))
}

/// Returns a line as it is shown, with what can be done about it.
pub(crate) fn noted(view: &View, line: &Line) -> Noted {
    let text = noted::line(&line.event, view.flock, view.system());
    Noted {
        key: key_of("noted", line.entry),
        time: day_and_clock(line.at, view.now),
        buttons: buttons(line, &text.replace('*', "")),
        text: text.into(),
        note: if line.amended { frame::AMENDED.to_owned() } else { String::new() },
        struck: line.struck,
    }
}

fn buttons(line: &Line, text: &str) -> Vec<Button> {
    let entry = line.entry;
    let button = |key: &'static str, label: &str, does: Action| {
        Button::new(key, label, does).small().named(format!("{label}: {text}"))
    };
    if line.struck {
        return vec![button("restore", frame::RESTORE, Action::Note(vec![Event::Restored { entry }]))];
    }
    // What a newer version noted cannot be changed here.
    let readable = !matches!(line.event, Event::Unread(_));
    let change = readable.then(|| button("change", frame::CHANGE, Action::Ask(Sheet::Amend(entry))));
    let undo = button("undo", frame::UNDO, Action::Note(vec![Event::Deleted { entry }]));
    change.into_iter().chain([undo]).collect()
}
