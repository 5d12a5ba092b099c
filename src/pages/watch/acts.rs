//! What can be pressed for what is due: the one press that does it, and, where there is one, another answer to the same.

use yeanling_core::book::{Awaited, Care, Event, EweId};
use yeanling_core::units::System;
use yeanling_core::watch::{BeforeMilk, Completion, Duty, EweTask, LambTask, Task};
use yeanling_words::{danger, illness, labor, watch as words};

use super::lamb::lamb_to;
use crate::{Action, Button, Screen, Sheet};

/// A button of a row.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Act {
    /// What tells it from those beside it.
    pub(super) key: String,
    pub(super) label: String,
    pub(super) does: Does,
}

/// What a tap does.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Does {
    /// Notes this.
    Notes(Event),
    /// Asks for what must be chosen first, on a sheet.
    Asks(Sheet),
    /// Leads to where something must be read first.
    Leads(Screen),
    /// Nothing: this was done, and a tick stands in its place.
    Done(Box<Self>),
    /// Nothing: this is not asked for any more, and its place stays empty.
    Over(Box<Self>),
}

impl Act {
    pub(super) fn new(key: impl Into<String>, label: impl Into<String>, does: Does) -> Self {
        Self { key: key.into(), label: label.into(), does }
    }

    /// Says whether another button says and does the same.
    pub(super) fn is(&self, other: &Self) -> bool {
        (&self.label, &self.does) == (&other.label, &other.does)
    }

    /// Returns its button: it notes with one tap, asks on a sheet, or leads to where something must be read first. What was
    /// done is a tick.
    pub(crate) fn button(&self, whose: &str) -> Button {
        let does = match self.does.meant() {
            Does::Notes(event) => Action::Note(vec![event.clone()]),
            Does::Asks(sheet) => Action::Ask(sheet.clone()),
            Does::Leads(to) => return self.kept(Button::new(self.key.clone(), &self.label, Action::Go(*to))),
            Does::Done(_) | Does::Over(_) => Action::Close,
        };
        let name = format!("{}, {whose}", self.label);
        self.kept(Button::new(self.key.clone(), &self.label, does).action(name))
    }

    fn kept(&self, button: Button) -> Button {
        match self.does {
            Does::Done(_) => button.ticked(),
            Does::Over(_) => button.emptied(),
            Does::Notes(_) | Does::Asks(_) | Does::Leads(_) => button,
        }
    }
}

impl Does {
    /// Returns what it did before it was done or over.
    pub(super) fn meant(&self) -> &Self {
        match self {
            Self::Done(meant) | Self::Over(meant) => meant,
            Self::Notes(_) | Self::Asks(_) | Self::Leads(_) => self,
        }
    }
}

/// Returns the press that does what is due; a look says that all is well only where it may be.
pub(crate) fn act(duty: &Duty, may_be_well: bool, system: System) -> Act {
    let key = duty.task.kind().to_string();
    let does = match (&duty.completion, duty.task) {
        (Completion::Note(event), _) => Does::Notes(event.clone()),
        (Completion::Open, task) if waits_for_word(duty) => {
            return Act::new(key, danger::SAID, Does::Asks(Sheet::Vet(task.subject())));
        }
        (Completion::Open, Task::Lamb(lamb, LambTask::Weigh { .. } | LambTask::WeighAgain)) => {
            Does::Asks(Sheet::Weight(lamb))
        }
        (Completion::Open, Task::Lamb(lamb, task)) if task.before_milk() == Some(BeforeMilk::Weigh) => {
            Does::Asks(Sheet::Weight(lamb))
        }
        (Completion::Open, Task::Lamb(lamb, LambTask::ScoreVigor)) => Does::Asks(Sheet::Vigor(lamb)),
        (Completion::Open, task) => Does::Leads(leads_to(task)),
    };
    let called = matches!(&does, Does::Notes(Event::VetCalled { .. }));
    let looks = matches!(duty.task, Task::Ewe(_, EweTask::Look));
    let label = if called {
        danger::CALLED.to_owned()
    } else if looks && !may_be_well {
        danger::LOOKED.to_owned()
    } else {
        words::done(duty.task, system)
    };
    Act::new(key, label, does)
}

/// Says whether the vet was called about a duty that is the vet's, so that the next thing to note is what the vet said.
const fn waits_for_word(duty: &Duty) -> bool {
    let vets = matches!(
        duty.task,
        Task::Lamb(_, LambTask::Danger(_) | LambTask::CallVet)
            | Task::Lamb(_, LambTask::Ill { .. })
            | Task::Ewe(_, EweTask::CervixClosed | EweTask::PutRight { .. } | EweTask::Ill { .. })
    );
    vets && duty.vet.is_some()
}

/// Returns the other answers to what is due for a ewe.
pub(crate) fn answers(ewe: EweId, task: EweTask) -> Vec<Act> {
    let note = |key: &str, label: &str, care: Care| Act::new(key, label, Does::Notes(Event::Care(care)));
    match task {
        EweTask::PutRight { .. } => vec![note("was-put-right", danger::PUT_RIGHT, Care::PutRight { ewe })],
        EweTask::Afterbirth { .. } => [("hangs", Awaited::Hanging), ("not-seen", Awaited::NotSeenBright)]
            .map(|(key, seen)| note(key, labor::awaited(seen), Care::AfterbirthAwaited { ewe, seen }))
            .into(),
        EweTask::Udder { .. } => {
            vec![Act::new("by-half", illness::udder::BY_HALF, Does::Asks(Sheet::Udder(ewe)))]
        }
        EweTask::Settled => vec![Act::new("not-right", illness::TITLE, Does::Leads(Screen::IllEwe(ewe)))],
        // The vet's button stands first, the way to what to do beside it.
        EweTask::Ill { .. } => vec![Act::new("ill-steps", illness::STEPS, Does::Leads(Screen::IllEwe(ewe)))],
        EweTask::Look
        | EweTask::LongRestless
        | EweTask::HandCheck { .. }
        | EweTask::Progress
        | EweTask::CervixClosed
        | EweTask::NextLamb { .. }
        | EweTask::LetOut
        | EweTask::IllLook { .. } => Vec::new(),
    }
}

/// Where what is to be done leads.
pub(super) const fn leads_to(task: Task) -> Screen {
    match task {
        Task::Ewe(ewe, task) => ewe_to(ewe, task),
        Task::Lamb(lamb, task) => lamb_to(lamb, task),
    }
}

const fn ewe_to(ewe: EweId, task: EweTask) -> Screen {
    match task {
        EweTask::LetOut => Screen::Pens,
        EweTask::Afterbirth { .. } | EweTask::Udder { .. } | EweTask::Settled => Screen::Ewe(ewe),
        EweTask::Ill { .. } | EweTask::IllLook { .. } => Screen::IllEwe(ewe),
        EweTask::Look
        | EweTask::LongRestless
        | EweTask::HandCheck { .. }
        | EweTask::Progress
        | EweTask::CervixClosed
        | EweTask::PutRight { .. }
        | EweTask::NextLamb { .. } => Screen::LambingEwe(ewe),
    }
}
