//! Alarms handed to the phone's own calendar, which rings in a pocket: all that lie ahead, one of them, or the dates of groups.

use yeanling_core::book::{Animal, GroupId};
use yeanling_core::calendar::Alarm;
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{Duty, Task};
use yeanling_words::{animals, night as words, season_forecast, share, watch};

use crate::block::{Aloud, Kind, Line, LineLook};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::phone::FileTrouble;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Key, Request, Screen, season};

/// What is handed over. It is put together at the press, so that a page need not.
#[derive(Clone, Debug, PartialEq)]
pub enum ToCalendar {
    /// Every alarm that lies ahead.
    All,
    /// The alarm of one duty.
    One(Task),
    /// The dates of these groups.
    Dates(Vec<GroupId>),
}

impl ToCalendar {
    const fn key(&self) -> Key {
        Key::Borrowed(match self {
            Self::All => "calendar-all",
            Self::One(..) => "calendar-one",
            Self::Dates(_) => "calendar-dates",
        })
    }

    fn button(&self) -> Button {
        let does = Action::Does(Does::ToCalendar(self.clone()));
        match self {
            Self::All => Button::new("to-calendar", words::ALL_TO_CALENDAR, does),
            Self::One(..) => Button::new("one-to-calendar", words::ONE_TO_CALENDAR, does).small(),
            Self::Dates(_) => Button::new("dates-to-calendar", season_forecast::TO_CALENDAR, does),
        }
    }

    /// Returns the name of the file and what lies in it; an alarm's address is the one within the app.
    fn file(&self, view: &View) -> (&'static str, Vec<Alarm>) {
        match self {
            Self::All => (words::FILE, alarms(view, |_| true)),
            Self::One(task) => (words::FILE, alarms(view, |duty| duty.task == *task)),
            Self::Dates(groups) => (season_forecast::FILE, season::alarms(view, groups)),
        }
    }
}

/// Returns the button, and what was said when it was pressed; of the sample flock nothing is handed over.
pub(crate) fn blocks(view: &View, draft: &Draft, what: &ToCalendar) -> Blocks {
    let blocks = match what {
        ToCalendar::One(..) if view.sample => Blocks::new(),
        ToCalendar::All | ToCalendar::Dates(_) if view.sample => Blocks::new().small(words::MADE_UP),
        ToCalendar::All | ToCalendar::One(..) | ToCalendar::Dates(_) => Blocks::new().button(what.button()),
    };
    let text = draft.said(&what.key()).into();
    let said = Line { look: LineLook::Small, text, aloud: Aloud::Politely, buttons: Vec::new() };
    blocks.add(what.key(), Kind::Line(said))
}

/// Hands it over.
pub(crate) fn does(what: &ToCalendar, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let (name, alarms) = what.file(view);
    let said = if alarms.is_empty() { words::NONE_AHEAD } else { "" };
    draft.say(what.key(), said);
    if alarms.is_empty() {
        return Vec::new();
    }
    vec![Effect::Phone(Request::GiveCalendar(what.key(), name.to_owned(), alarms))]
}

/// Says how it went.
pub(crate) fn given(key: &Key, trouble: Option<&FileTrouble>, draft: &mut Draft) {
    let said = match trouble {
        None => words::IN_CALENDAR.to_owned(),
        Some(FileTrouble::Failed(browser)) => share::not_saved(browser),
        Some(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => String::new(),
    };
    draft.say(key.clone(), said);
}

/// Says whether a key is that of something handed to the calendar.
pub(crate) fn is_ours(key: &str) -> bool {
    key.starts_with("calendar-")
}

/// Returns the alarms that lie ahead, by when they ring.
fn alarms(view: &View, wanted: impl Fn(&Duty) -> bool) -> Vec<Alarm> {
    let wanted = view.duties.iter().filter(|duty| wanted(duty));
    let mut found: Vec<Alarm> = wanted.filter_map(|duty| alarm(view, duty)).collect();
    found.sort_small_by_key(|alarm| alarm.at);
    found
}

/// The alarm of a duty: at the due instant, or at the late one once that has passed.
fn alarm(view: &View, duty: &Duty) -> Option<Alarm> {
    let at = [duty.comes(), duty.late].into_iter().find(|at| at.since(view.now) > TimeDelta::zero())?;
    let name = animals::animal(view.flock, duty.subject());
    let id = match duty.subject() {
        Animal::Ewe(id) => id.to_string(),
        Animal::Lamb(id) => id.to_string(),
    };
    Some(Alarm {
        uid: format!("{id}-{}@yeanling", duty.task.kind()),
        at,
        lead: TimeDelta::zero(),
        summary: words::line(&name, &watch::task(duty.task, view.system())),
        description: words::note(duty),
        url: Screen::of(duty.subject()).hash(),
    })
}
