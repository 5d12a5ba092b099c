//! What is planned: where it is told, the sheets that plan it, and what is answered on its day.

use chrono::NaiveDate;
use yeanling_core::book::{Event, GroupId, PlannedJob, Planning};
use yeanling_core::flock::Plan;
use yeanling_words::common::read_field_day;
use yeanling_words::{frame, group as group_words, plan as words, rejections};

use crate::block::{Field, FieldKind, Row};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Does, Effect, Key, Sheet};

const DAY: &str = "plan-day";
/// What is planned for a group, each with the field of its day.
const OF_A_GROUP: [(PlannedJob, &str); 3] = [
    (PlannedJob::RamIn, "plan-ram-in"),
    (PlannedJob::RamOut, "plan-ram-out"),
    (PlannedJob::Scan, "plan-scan"),
];
/// And for the whole flock.
const OF_THE_FLOCK: [(PlannedJob, &str); 2] =
    [(PlannedJob::Shearing, "plan-shearing"), (PlannedJob::TurnOut, "plan-turn-out")];

const fn asked(group: Option<GroupId>) -> &'static [(PlannedJob, &'static str)] {
    match group {
        Some(_) => &OF_A_GROUP,
        None => &OF_THE_FLOCK,
    }
}

/// Returns what is planned for a group, or for all and the flock, and the way to plan more.
pub(crate) fn blocks(view: &View, group: Option<GroupId>) -> Blocks {
    let today = view.now.local().date();
    let of_it = |plan: &Plan| group.is_none() || plan.group == group;
    let row = |plan: Plan| {
        let name = if group.is_some() { words::job(plan.what).to_owned() } else { whose(view, plan.group) };
        let text = words::on(plan.on, today);
        let text = if group.is_some() { text } else { format!("{}: {text}", words::job(plan.what)) };
        (Key::from(format!("planned-{}", key(&plan))), Row::new(name).text(text))
    };
    let rows: Vec<(Key, Row)> = view.flock.planned().into_iter().filter(of_it).map(row).collect();
    let label = if group.is_some() { words::PLAN } else { words::PLAN_FLOCK };
    let plan = Button::new("plan", label, Action::Ask(Sheet::Plan(group)));
    Blocks::new().section("planned", words::PLANNED, Blocks::new().rows("all-planned", rows).button(plan))
}

/// What tells one plan from the others.
pub(crate) fn key(plan: &Plan) -> String {
    let what = match plan.what {
        PlannedJob::RamIn => "ram-in",
        PlannedJob::RamOut => "ram-out",
        PlannedJob::Scan => "scan",
        PlannedJob::Shearing => "shearing",
        PlannedJob::TurnOut => "turn-out",
    };
    plan.group.map_or_else(|| what.to_owned(), |group| format!("{what}-{group}"))
}

/// Whose plan it is.
pub(crate) fn whose(view: &View, group: Option<GroupId>) -> String {
    group
        .and_then(|group| view.flock.groups.get(&group))
        .map_or_else(|| words::WHOLE_FLOCK.to_owned(), |group| group.name.clone())
}

/// Returns the sheet on which days are planned.
pub(crate) fn sheet(view: &View, fields: &Fields, group: Option<GroupId>) -> SheetPage {
    let field = |blocks: Blocks, (what, key): &(PlannedJob, &'static str)| {
        let stood = stood(view, group, *what);
        let field = Field::new(words::job(*what), FieldKind::Date, fields.text(key, &stood));
        blocks.field(*key, field.error(fields.error(key)))
    };
    let blocks = asked(group).iter().fold(Blocks::new().small(words::PLAN_TEXT), field);
    let title = if group.is_some() { words::PLAN_ASK } else { words::PLAN_FLOCK_ASK };
    SheetPage::new(title, blocks.button(Button::new("save", frame::SAVE, Action::Save).filled()))
}

fn stood(view: &View, group: Option<GroupId>, what: PlannedJob) -> String {
    view.flock.plan_of(group, what).map(|plan| plan.on.to_string()).unwrap_or_default()
}

/// Saves the days that are other than they stood.
pub(crate) fn save(view: &View, draft: &mut Draft, group: Option<GroupId>) -> Vec<Effect> {
    draft.top_mut().all_right();
    let mut notings: Vec<Noting> = Vec::new();
    let mut keys: Vec<&'static str> = Vec::new();
    for (what, key) in asked(group) {
        let stood = stood(view, group, *what);
        let typed = draft.top().text(key, &stood);
        if typed.trim() == stood {
            continue;
        }
        let on = if typed.trim().is_empty() { None } else { read_field_day(&typed) };
        if on.is_none() && !typed.trim().is_empty() {
            return draft.say_wrong(*key, group_words::NO_DAY);
        }
        notings.push(view.noting(Event::Planning(Planning::Planned { what: *what, group, on })));
        keys.push(key);
    }
    if notings.is_empty() {
        let first = asked(group).first().map_or(DAY, |(_, key)| *key);
        return draft.say_wrong(first, words::NO_CHANGE);
    }
    match view.allow_each(&notings) {
        Ok(()) => {
            draft.close();
            vec![Effect::Note(notings)]
        }
        Err((place, rejection)) => {
            let said = rejections::rejection(&rejection, view.now, view.system());
            draft.say_wrong(keys.get(place).copied().unwrap_or(DAY), said)
        }
    }
}

/// Returns the sheet that asks for the day on which a planned thing was, or will be.
pub(crate) fn day_sheet(view: &View, fields: &Fields, what: PlannedJob, group: Option<GroupId>) -> SheetPage {
    let day = Field::new(group_words::DAY, FieldKind::Date, fields.text(DAY, &stood(view, group, what)));
    let blocks = Blocks::new().text(words::WHICH_DAY_TEXT).field(DAY, day.error(fields.error(DAY)));
    let save = Button::new("save", frame::SAVE, Action::Save).filled();
    SheetPage::new(words::WHICH_DAY, blocks.button(save)).whose(format!(
        "{}, {}",
        whose(view, group),
        words::job(what)
    ))
}

/// Saves that day.
pub(crate) fn save_day(
    view: &View,
    draft: &mut Draft,
    what: PlannedJob,
    group: Option<GroupId>,
) -> Vec<Effect> {
    let Some(day) = read_field_day(&draft.top().text(DAY, &stood(view, group, what))) else {
        return draft.say_wrong(DAY, group_words::NO_DAY);
    };
    draft.save(view, DAY, on_day(view, what, group, day))
}

/// What is noted when a planned thing is on a day: that it was, or that it is planned for then.
fn on_day(view: &View, what: PlannedJob, group: Option<GroupId>, day: NaiveDate) -> Vec<Noting> {
    if day > view.now.local().date() {
        return vec![view.noting(Event::Planning(Planning::Planned { what, group, on: Some(day) }))];
    }
    let at = view.on_day(day);
    happened(view, what, group).into_iter().map(|event| view.noting_at(event, at)).collect()
}

/// That it happened; of a ram that each one came who was meant.
fn happened(view: &View, what: PlannedJob, group: Option<GroupId>) -> Vec<Event> {
    match (what, group) {
        (PlannedJob::RamIn, Some(group)) => {
            let meant = view.flock.rams_meant(group);
            let ram_in = |ram: Option<String>| Event::RamIn { group, ram, age: None };
            let named: Vec<Event> = meant.iter().map(|ram| ram_in(Some(ram.clone()))).collect();
            if named.is_empty() { vec![ram_in(None)] } else { named }
        }
        (PlannedJob::RamOut, Some(group)) => vec![Event::RamOut { group }],
        (what, group) => vec![Event::Planning(Planning::Happened { what, group })],
    }
}

/// Returns the answers on the day of a plan: yes, and the two others.
pub(crate) fn answers(view: &View, plan: &Plan) -> (Button, [Button; 2]) {
    let Plan { what, group, .. } = *plan;
    let whose = whose(view, group);
    let named = |label: &str| format!("{label}: {whose}, {}", words::job(what));
    let yes = Button::new("done", words::YES, Action::Does(Does::PlanHappened(what, group)));
    let another = Button::new("another", words::ANOTHER_DAY, Action::Ask(Sheet::PlanDay(what, group)));
    let off = Event::Planning(Planning::Planned { what, group, on: None });
    let no = Button::new("no", words::NO, Action::Note(vec![off]));
    (
        yes.action(named(words::YES)),
        [another.small().named(named(words::ANOTHER_DAY)), no.small().named(named(words::NO))],
    )
}

/// It happened as it was planned.
pub(crate) fn does(what: PlannedJob, group: Option<GroupId>, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(plan) = view.flock.plan_of(group, what) else { return Vec::new() };
    let notings = on_day(view, what, group, plan.on.min(view.now.local().date()));
    draft.note(view, notings)
}
