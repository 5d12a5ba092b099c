//! What the season asks for this week, under what presses tonight: each with the one tap that does it.

use yeanling_core::book::Event;
use yeanling_core::flock::Plan;
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{BeforeSeason, SeasonJob, before_season, overdue, plans_near, this_week};
use yeanling_core::units::{Mass, Moment};
use yeanling_words::{animals, plan as plan_words, season_forecast, vet as vet_words, watch as words};

use crate::block::{Row, State};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key, Screen, SettingsPart, Sheet};

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Asked {
    /// A date of a group.
    Season(SeasonJob),
    /// Whether something planned happened.
    Plan(Plan),
}

/// One thing asked for, as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Week {
    pub(super) asked: Asked,
    group: String,
    text: String,
    says: String,
    late: bool,
    /// Whether it was done just now, and its tick stands in its place.
    done: bool,
}

impl Week {
    /// Returns the same once it was done.
    pub(super) fn done(&self) -> Self {
        Self { done: true, ..self.clone() }
    }
}

/// Returns what the season asks for.
pub(super) fn week(view: &View, now: Moment) -> Vec<Week> {
    let today = now.local().date();
    let week = |asked: SeasonJob| Week {
        asked: Asked::Season(asked),
        group: view.flock.groups.get(&asked.group).map(|group| group.name.clone()).unwrap_or_default(),
        text: season_forecast::what(&asked.dated.what, view.system()),
        says: season_forecast::away(asked.dated.date, today),
        late: asked.dated.date < today,
        done: false,
    };
    let plan = |plan: Plan| Week {
        asked: Asked::Plan(plan),
        group: crate::season::whose(view, plan.group),
        text: plan_words::planned_for(plan.what, plan.on),
        says: if plan.on > today {
            season_forecast::away(plan.on, today)
        } else {
            plan_words::HAPPENED_ASK.to_owned()
        },
        late: plan.on < today,
        done: false,
    };
    let plans = plans_near(view.flock, now).into_iter().map(plan);
    plans.chain(this_week(view.flock, now).into_iter().map(week)).collect()
}

/// Returns the part of the page; nothing while nothing is asked for.
pub(super) fn section(view: &View, week: &[Week]) -> Blocks {
    let past = past(view);
    let past = (past > 0).then(|| {
        let row = Row::new(animals::ewes(past))
            .text(season_forecast::OVERDUE_TEXT)
            .says(State::Now, season_forecast::OVERDUE_SAYS)
            .to(Screen::Season);
        (Key::Borrowed("overdue"), row)
    });
    let today = view.now.local().date();
    let away = |first| season_forecast::away(first, today);
    let vet = vet(view).map(|asked| {
        let row = Row::new(vet_words::TITLE)
            .text(vet_words::still_open(asked.open.len()))
            .says(
                State::Coming,
                asked
                    .first
                    .filter(|first| *first >= today)
                    .map_or_else(|| vet_words::ANY_DAY.to_owned(), away),
            )
            .to(Screen::SettingsOf(SettingsPart::Farm));
        (Key::Borrowed("before-season"), row)
    });
    let rows = past.into_iter().chain(vet).chain(week.iter().map(|one| row(view, one)));
    Blocks::new().section("this-week", words::THIS_WEEK, Blocks::new().rows("this-week-rows", rows))
}

/// Returns what is still to be agreed with the vet before the first lamb.
pub(super) fn vet(view: &View) -> Option<BeforeSeason> {
    before_season(view.flock, &view.lambing_forecasts, view.now)
}

/// Returns how many ewes are past their days.
pub(super) fn past(view: &View) -> usize {
    overdue(view.flock, &view.lambing_forecasts, view.now).len()
}

fn row(view: &View, one: &Week) -> (Key, Row) {
    let state = if one.late { State::Now } else { State::Coming };
    let row = Row::new(&one.group).text(&one.text).says(state, &one.says);
    match &one.asked {
        Asked::Season(asked) => season_row(one, asked, row),
        Asked::Plan(plan) => plan_row(view, one, plan, row),
    }
}

/// A plan: on its day it is answered, before it is told.
fn plan_row(view: &View, one: &Week, plan: &Plan, row: Row) -> (Key, Row) {
    let key = Key::from(format!("plan-{}", crate::season::plan_key(plan)));
    let row = row.to(plan.group.map_or(Screen::Season, Screen::Group));
    if plan.on > view.now.local().date() {
        return (key, row);
    }
    let (yes, others) = crate::season::answers(view, plan);
    let row = if one.done { row.action(yes.ticked()) } else { row.action(yes).others(others) };
    (key, row)
}

fn season_row(one: &Week, asked: &SeasonJob, row: Row) -> (Key, Row) {
    let SeasonJob { group, dated } = *asked;
    let stays = (dated.what == DateTask::RamOut && !one.done).then(|| {
        let name = format!("{}: {}", plan_words::HE_STAYS, one.group);
        Button::new("ram-stays", plan_words::HE_STAYS, Action::Ask(Sheet::RamStays(group)))
            .small()
            .named(name)
    });
    let action = does(asked).map(|(label, event)| {
        let name = format!("{label}: {}, {}", one.group, one.text);
        let button = Button::new("done", label, Action::Note(vec![event])).action(name);
        if one.done { button.ticked() } else { button }
    });
    let to = match dated.what {
        DateTask::ScoreBeforeRam | DateTask::ScoreAtRam | DateTask::ScoreAtMid | DateTask::ScoreLate => {
            Screen::ScoreEwes(group)
        }
        DateTask::RamOut
        | DateTask::Booster { .. }
        | DateTask::Feed { .. }
        | DateTask::FeedUntil
        | DateTask::CrayonChange { .. }
        | DateTask::WatchFrom
        | DateTask::WatchUntil => Screen::Group(group),
    };
    let row = row.to(to).action(action).others(stays);
    (format!("week-{group}-{}", key(dated.what)).into(), row)
}

/// What tells one thing asked of a group from the others.
fn key(what: DateTask) -> String {
    match what {
        DateTask::ScoreBeforeRam => "score-before-ram".to_owned(),
        DateTask::ScoreAtRam => "score-at-ram".to_owned(),
        DateTask::CrayonChange { .. } => "crayon".to_owned(),
        DateTask::RamOut => "ram-out".to_owned(),
        DateTask::ScoreAtMid => "score-at-mid".to_owned(),
        DateTask::ScoreLate => "score-late".to_owned(),
        DateTask::Booster { .. } => "booster".to_owned(),
        DateTask::Feed { .. } => "feed".to_owned(),
        DateTask::FeedUntil => "feed-until".to_owned(),
        DateTask::WatchFrom => "watch-from".to_owned(),
        DateTask::WatchUntil => "watch-until".to_owned(),
    }
}

/// What one tap notes of it, where one is enough.
fn does(asked: &SeasonJob) -> Option<(&'static str, Event)> {
    let group = asked.group;
    match asked.dated.what {
        DateTask::RamOut => Some((words::RAM_IS_OUT, Event::RamOut { group })),
        DateTask::Booster { .. } => Some((words::GIVEN, Event::BoosterGiven { group })),
        DateTask::Feed { each } => Some((words::FED_SO, Event::FeedSet { group, mass: each })),
        DateTask::FeedUntil => {
            Some((words::STOPPED, Event::FeedSet { group, mass: Mass::from_kilograms(0.0) }))
        }
        DateTask::ScoreBeforeRam
        | DateTask::ScoreAtRam
        | DateTask::CrayonChange { .. }
        | DateTask::ScoreAtMid
        | DateTask::ScoreLate
        | DateTask::WatchFrom
        | DateTask::WatchUntil => None,
    }
}
