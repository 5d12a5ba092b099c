//! What the season asks for this week, under what presses tonight: each with the one tap that does it.

use chrono::NaiveDate;
use yeanling_core::book::Event;
use yeanling_core::flock::{Group, Plan};
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{
    BeforeSeason, SeasonJob, before_season, kit_asked, overdue, plans_near, this_week, without_booster,
};
use yeanling_core::units::{Mass, Moment, TimeDelta};
use yeanling_words::{
    animals, group as group_words, kit as kit_words, plan as plan_words, season_forecast, vet as vet_words,
    watch as words,
};

use crate::block::{Row, State};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key, Screen, SettingsPart, Sheet};

/// Nearer than this the first lamb is told as near (ours).
const NEAR: TimeDelta = TimeDelta::days(7);

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
    let week = |asked: SeasonJob| {
        let group = view.flock.groups.get(&asked.group);
        let left = group.and_then(|group| left_out(view, group, &asked.dated.what));
        Week {
            group: group.map(|group| group.name.clone()).unwrap_or_default(),
            text: left.unwrap_or_else(|| season_forecast::what(&asked.dated.what, view.system())),
            says: season_forecast::when(&asked.dated, today),
            late: asked.is_late(today),
            asked: Asked::Season(asked),
            done: false,
        }
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

/// Returns how many of a group are still without the booster that others of it have had.
fn left_out(view: &View, group: &Group, what: &DateTask) -> Option<String> {
    let DateTask::Booster { from, .. } = *what else { return None };
    let left = without_booster(view.flock, group, from).len();
    (left < group.ewes().count() && left > 0).then(|| season_forecast::without_booster(left))
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
    // A day that is near moves on with every night without a lamb: told as one it would come and go.
    let first_lamb = |first: NaiveDate| {
        let near = first.signed_duration_since(today) <= NEAR;
        if near { vet_words::WITHIN_A_WEEK.to_owned() } else { season_forecast::away(first, today) }
    };
    let vet = vet(view).map(|asked| {
        let row = Row::new(vet_words::TITLE)
            .text(vet_words::still_open(asked.open.len()))
            .says(State::Coming, asked.first.map_or_else(|| vet_words::ANY_DAY.to_owned(), first_lamb))
            .to(Screen::SettingsOf(SettingsPart::Vet));
        (Key::Borrowed("before-season"), row)
    });
    let rows = past.into_iter().chain(vet).chain(kit(view)).chain(week.iter().map(|one| row(view, one)));
    Blocks::new().section("this-week", words::THIS_WEEK, Blocks::new().rows("this-week-rows", rows))
}

/// Asks for the kit, weeks before the first lamb.
fn kit(view: &View) -> Option<(Key, Row)> {
    let asked = kit_asked(view.flock, &view.lambing_forecasts, view.now)?;
    let row = Row::new(kit_words::TITLE)
        .text(kit_words::ASKED)
        .says(State::Coming, kit_words::first_lamb(asked.first, view.now.local().date()))
        .to(Screen::Supplies);
    Some((Key::Borrowed("kit"), row))
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
    let put_off = matches!(dated.what, DateTask::Feed { .. }) && !one.done;
    let put_off = put_off.then(|| {
        let name = format!("{}: {}, {}", plan_words::PUT_OFF, one.group, one.text);
        Button::new("put-off", plan_words::PUT_OFF, Action::Ask(Sheet::FeedLater(group))).small().named(name)
    });
    let stays = (dated.what == DateTask::RamOut && !one.done).then(|| {
        let name = format!("{}: {}", plan_words::HE_STAYS, one.group);
        Button::new("ram-stays", plan_words::HE_STAYS, Action::Ask(Sheet::RamStays(group)))
            .small()
            .named(name)
    });
    let action = does(asked).map(|(label, action)| {
        let name = format!("{label}: {}, {}", one.group, one.text);
        let button = Button::new("done", label, action).action(name);
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
    let row = row.to(to).action(action).others(stays.into_iter().chain(put_off));
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

/// What is done about it with one tap, where one is enough; of the booster is asked which it was.
fn does(asked: &SeasonJob) -> Option<(&'static str, Action)> {
    let group = asked.group;
    let notes = |event: Event| Action::Note(vec![event]);
    match asked.dated.what {
        DateTask::RamOut => Some((words::RAM_IS_OUT, notes(Event::RamOut { group }))),
        DateTask::Booster { .. } => Some((words::GIVEN, Action::Ask(Sheet::Boost(group)))),
        DateTask::Feed { each } => Some((words::FED_SO, notes(Event::FeedSet { group, mass: each }))),
        DateTask::FeedUntil => {
            Some((words::STOPPED, notes(Event::FeedSet { group, mass: Mass::from_kilograms(0.0) })))
        }
        DateTask::CrayonChange { .. } => Some((group_words::CHANGED, Action::Ask(Sheet::Crayon(group)))),
        DateTask::ScoreBeforeRam
        | DateTask::ScoreAtRam
        | DateTask::ScoreAtMid
        | DateTask::ScoreLate
        | DateTask::WatchFrom
        | DateTask::WatchUntil => None,
    }
}
