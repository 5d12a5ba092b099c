//! A season before it happens: a month of lambing or a last day, what there is, and what follows, for two plans side by side.
//! One of them is taken as plans for a group. Next season comes from this one in the same way.

use chrono::TimeDelta;
use yeanling_core::book::{Event, GroupId, PlannedJob, Planning};
use yeanling_core::flock::Group;
use yeanling_core::seasons::{
    NextGroup, RAM_DAYS, SCAN_AFTER, WhatIf, Wish, WishedPlan, keeping, next_month, next_season, what_if,
};
use yeanling_core::units::Mass;
use yeanling_words::common::{read_field_day, short_date};
use yeanling_words::{frame, what_if as words};

use crate::block::{Choice, Choices, Field, FieldKind, Kind, Ledger, LedgerRow, NoticeKind, Row};
use crate::draft::{Draft, Fields, Noting};
use crate::feed::typed::Number;
use crate::page::{Blocks, Page, key_of, why};
use crate::view::View;
use crate::{Action, Button, Effect, Key, Reason, Screen, Text};

/// What only this screen does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Takes one of the two plans, by its place.
    Take(usize),
    /// Takes a group on to its next season.
    Next(GroupId),
}

const EWES: &str = "plan-ewes";
const PENS: &str = "plan-pens";
const PEOPLE: &str = "plan-people";
const HOUSING: &str = "plan-housing";
const FOR: &str = "plan-for";
/// Of each plan: by what it goes, the month, the day, how long the ram is in.
const BY: [&str; 2] = ["plan-by-a", "plan-by-b"];
const SECTION: [&str; 2] = ["plan-a", "plan-b"];
const MONTH: [&str; 2] = ["plan-month-a", "plan-month-b"];
const LAST: [&str; 2] = ["plan-last-a", "plan-last-b"];
const LONG: [&str; 2] = ["plan-ram-a", "plan-ram-b"];

/// So many days in the barn stand there until others are typed (ours: two months).
const USUAL_HOUSING: &str = "60";
/// April, until another month is chosen (ours).
const USUAL_MONTH: usize = 3;

/// By what a plan goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum By {
    None,
    Month,
    Last,
}

const BYS: [&[By]; 2] = [&[By::Month, By::Last], &[By::None, By::Month, By::Last]];

fn by(fields: &Fields, place: usize) -> By {
    let all = BYS[place];
    fields.pick(BY[place], all, all[0])
}

/// What there is, as it was typed.
struct Have {
    ewes: Number,
    pens: Number,
    people: Number,
    housing: Number,
}

impl Have {
    fn of(view: &View, fields: &Fields) -> Self {
        let count = |count: usize| if count > 0 { count.to_string() } else { String::new() };
        let ewes = view.flock.ewes.values().filter(|ewe| ewe.lives()).count();
        let pens = view.flock.pens.values().filter(|pen| pen.closed.is_none()).count();
        Self {
            ewes: Number::of(fields, EWES, &count(ewes)),
            pens: Number::of(fields, PENS, &count(pens)),
            people: Number::of(fields, PEOPLE, "1"),
            housing: Number::of(fields, HOUSING, USUAL_HOUSING),
        }
    }
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let have = Have::of(view, fields);
    let asked = have.ewes.field(Blocks::new(), words::EWES, "", "");
    let asked = have.pens.field(asked, words::PENS, "", "");
    let asked = have.people.field(asked, words::PEOPLE, "", "");
    let asked = have.housing.field(asked, words::HOUSING, words::DAYS, "");
    let plans = (0..2).fold(Blocks::new(), |blocks, place| {
        blocks.section(SECTION[place], words::PLANS[place], plan(fields, place))
    });
    let page = Page::new(words::TITLE).back(Screen::Season, frame::SEASON).under(words::UNDER);
    page.blocks(Blocks::new().then(next(view)).section("have", words::FARM, asked).then(plans).section(
        "comes-to",
        words::RESULT,
        result(view, fields, &have),
    ))
}

/// Asks what a plan goes by.
fn plan(fields: &Fields, place: usize) -> Blocks {
    let name = |by: &By| match by {
        By::None => words::NO_PLAN,
        By::Month => words::MONTH,
        By::Last => words::LAST,
    };
    let options = BYS[place].iter().map(name);
    let blocks = Blocks::new().choices(BY[place], choices(BY[place], words::BY, options, fields, 0));
    let blocks = match by(fields, place) {
        By::None => return blocks,
        By::Month => {
            let months = (1..=12).map(words::month);
            blocks.choices(MONTH[place], choices(MONTH[place], words::MONTH, months, fields, USUAL_MONTH))
        }
        By::Last => {
            let day = Field::new(words::LAST_DAY, FieldKind::Date, fields.text(LAST[place], ""));
            blocks.field(LAST[place], day.error(wrong_day(fields, place)))
        }
    };
    let long = RAM_DAYS.map(words::ram_days);
    let long = choices(LONG[place], words::RAM_DAYS, long.iter().map(String::as_str), fields, 0);
    blocks.choices(LONG[place], long)
}

fn choices<'a>(
    key: &'static str,
    label: &str,
    names: impl Iterator<Item = &'a str>,
    fields: &Fields,
    stood: usize,
) -> Choices {
    let option = |(place, name): (usize, &str)| Choice::new(name, Action::Choose(key.into(), place));
    let chosen = Some(fields.chosen(key).unwrap_or(stood));
    Choices::new(label, names.enumerate().map(option).collect(), chosen).labelled().snug()
}

/// What is wrong with the day that was typed.
fn wrong_day(fields: &Fields, place: usize) -> &'static str {
    let typed = fields.written(LAST[place]);
    if typed.is_some_and(|typed| read_field_day(&typed).is_none()) { words::NO_DAY } else { "" }
}

/// What a plan is to be, as far as it was typed.
fn wished(view: &View, fields: &Fields, have: &Have, place: usize) -> Option<WishedPlan> {
    let wish = match by(fields, place) {
        By::None => return None,
        By::Month => {
            let month = u32::try_from(fields.chosen(MONTH[place]).unwrap_or(USUAL_MONTH)).unwrap_or(0) + 1;
            Wish::LambsFrom(next_month(view.flock, month, view.now))
        }
        By::Last => Wish::AllBornBefore(read_field_day(&fields.written(LAST[place])?)?),
    };
    let whole = |number: &Number| u16::try_from(number.whole()?).ok();
    Some(WishedPlan {
        wish,
        ewes: have.ewes.whole()?,
        ram_days: fields.pick(LONG[place], &RAM_DAYS, RAM_DAYS[0]),
        housing_days: whole(&have.housing)?,
        bale: BALE,
        bag: BAG,
    })
}

/// A small bale, and a bag of grain: one size in either unit, so that a plan is one (common practice).
const BALE: Mass = Mass::from_kilograms(20.0);
const BAG: Mass = Mass::from_kilograms(25.0);

/// What the plans come to, each with the way to take it.
fn result(view: &View, fields: &Fields, have: &Have) -> Blocks {
    let mut made: Vec<(usize, WhatIf)> = Vec::new();
    let mut blocks = Blocks::new();
    for place in 0..2 {
        match wished(view, fields, have, place).map(|plan| what_if(view.flock, &plan, view.now)) {
            None => {}
            Some(Ok(of)) => made.push((place, of)),
            Some(Err(no)) => {
                let said = words::no_plan(&no, view.system());
                blocks = blocks.notice(format!("no-plan-{place}"), NoticeKind::Bad, said, []);
            }
        }
    }
    if made.is_empty() {
        return if blocks.is_empty() { blocks.small(words::TYPE_ALL) } else { blocks };
    }
    for (place, of) in &made {
        blocks = blocks.text(words::in_a_line(*place, of));
        for (number, caution) in words::cautions(of).into_iter().enumerate() {
            blocks = blocks.notice(format!("mind-{place}-{number}"), NoticeKind::Warn, caution, []);
        }
    }
    let plans: Vec<&WhatIf> = made.iter().map(|(_, of)| of).collect();
    let ledger = ledger(view, &made, &plans);
    let blocks = blocks.remark("", [why(words::RESULT, Reason::WhatIf)]).add("plans", Kind::Ledger(ledger));
    let blocks = meaning(view, have, &plans).into_iter().fold(blocks, Blocks::small);
    let free = free_groups(view);
    let blocks = if free.is_empty() {
        blocks
    } else {
        let names = free.iter().map(|group| group.name.as_str()).chain([words::NEW_GROUP]);
        blocks.choices(FOR, choices(FOR, words::FOR, names, fields, 0))
    };
    let take = |(number, (place, _)): (usize, &(usize, WhatIf))| {
        let does = Action::Does(crate::Does::WhatIf(Does::Take(*place)));
        let take = Button::new(format!("take-{place}"), words::take(*place), does);
        if number == 0 { take.filled() } else { take }
    };
    let buttons: Vec<Button> = made.iter().enumerate().map(take).collect();
    blocks.buttons(2, buttons)
}

/// Both plans side by side, or one alone.
fn ledger(view: &View, made: &[(usize, WhatIf)], plans: &[&WhatIf]) -> Ledger {
    let system = view.system();
    let row = |name: &str, value: &dyn Fn(&WhatIf) -> String| {
        let told = |place: usize| plans.get(place).map(|of| Text::strong(&value(of))).unwrap_or_default();
        LedgerRow { name: name.to_owned(), note: String::new(), value: told(0), other: told(1) }
    };
    let head = |place: usize| made.get(place).map(|(place, _)| words::PLANS[*place].to_owned());
    let heads = if plans.len() > 1 {
        (head(0).unwrap_or_default(), head(1).unwrap_or_default())
    } else {
        <(String, String)>::default()
    };
    let rows = vec![
        row(words::RAM_IN, &|of| short_date(of.ram_in)),
        row(words::RAM_OUT, &|of| short_date(of.ram_out)),
        row(words::FIRST, &|of| short_date(of.first)),
        row(words::LAST_LAMBS, &|of| short_date(of.last)),
        row(words::BUSIEST, &words::busiest),
        row(words::UP, &|of| of.nights_up.to_string()),
        row(words::NEED_PENS, &|of| of.pens.enough[1].to_string()),
        row(words::HAY, &|of| words::hay(&of.hay, system)),
        row(words::GRAIN, &|of| words::grain(of.grain.as_ref(), system)),
    ];
    Ledger { label: words::RESULT.to_owned(), heads, rows }
}

/// What the figures mean, a line each under them: beside two columns no words have room.
fn meaning(view: &View, have: &Have, plans: &[&WhatIf]) -> [String; 6] {
    let pens = have.pens.whole().unwrap_or(0);
    let people = have.people.whole().unwrap_or(0);
    let system = view.system();
    [
        words::half(plans),
        words::on_the_busiest(plans),
        words::shared(plans, people),
        words::pens(plans, pens),
        words::bales(plans, system),
        words::bags(plans, system),
    ]
}

/// The groups that stand and never had a ram: a plan can be for them.
fn free_groups<'a>(view: &View<'a>) -> Vec<&'a Group> {
    let groups = view.flock.groups.values();
    groups.filter(|group| group.parted.is_none() && group.ram_times().is_empty()).collect()
}

/// Next season from this one: a row a group.
fn next(view: &View) -> Blocks {
    let row = |one: &NextGroup| {
        let does = Action::Does(crate::Does::WhatIf(Does::Next(one.from)));
        let take = Button::new("take", words::TAKE, does).action(format!("{}: {}", words::TAKE, one.name));
        let row = Row::new(&one.name).text(words::next(one)).action(take);
        let changed = words::changed(one);
        let row = if changed.is_empty() { row } else { row.says(crate::State::Coming, changed) };
        (key_of("next", one.from.entry()), row)
    };
    let rows: Vec<(Key, Row)> = ahead(view).iter().map(row).collect();
    if rows.is_empty() {
        return Blocks::new();
    }
    Blocks::new().section(
        "next",
        words::NEXT,
        Blocks::new().small(words::NEXT_TEXT).rows("next-groups", rows),
    )
}

fn ahead(view: &View) -> Vec<NextGroup> {
    next_season(view.flock, &keeping(view.flock, view.now), &view.lambing_forecasts, view.now)
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Take(place) => take(place, view, draft),
        Does::Next(from) => go_on(from, view, draft),
    }
}

/// Takes a plan for a group that has no ram yet, or for a new one.
fn take(place: usize, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let have = Have::of(view, &draft.fields);
    let wished = wished(view, &draft.fields, &have, place);
    let Some(Ok(of)) = wished.map(|plan| what_if(view.flock, &plan, view.now)) else { return Vec::new() };
    let free = free_groups(view);
    let chosen = draft.fields.chosen(FOR).unwrap_or(0);
    let (group, formed) = match free.get(chosen) {
        Some(group) => (group.id, None),
        None => {
            let name = free_name(view, words::group_name(of.first));
            let formed = view.noting(Event::GroupFormed { name });
            (formed.id.as_group(), Some(formed))
        }
    };
    let days = [
        (PlannedJob::RamIn, of.ram_in),
        (PlannedJob::RamOut, of.ram_out),
        (PlannedJob::Scan, of.ram_out + TimeDelta::days(SCAN_AFTER)),
    ];
    let planned = days.map(|(what, on)| planned(view, group, what, on));
    note(view, draft, formed.into_iter().chain(planned).collect(), group)
}

fn planned(view: &View, group: GroupId, what: PlannedJob, on: chrono::NaiveDate) -> Noting {
    view.noting(Event::Planning(Planning::Planned { what, group: Some(group), on: Some(on) }))
}

/// A name that no standing group has.
fn free_name(view: &View, name: String) -> String {
    let is_taken = |name: &str| {
        let mut standing = view.flock.groups.values().filter(|group| group.parted.is_none());
        standing.any(|group| group.name.eq_ignore_ascii_case(name))
    };
    let others = (2..100).map(|number| format!("{name} {number}"));
    std::iter::once(name.clone()).chain(others).find(|name| !is_taken(name)).unwrap_or(name)
}

/// Takes a group on to its next season: the same ewes but the culls, and who is new, in a new group with its days planned.
fn go_on(from: GroupId, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(next) = ahead(view).into_iter().find(|one| one.from == from) else { return Vec::new() };
    let name = free_name(view, next.name);
    let formed = view.noting(Event::GroupFormed { name });
    let group = formed.id.as_group();
    let mut notings = vec![formed];
    notings.extend(next.ewes.iter().map(|ewe| view.noting(Event::JoinedGroup { ewe: *ewe, group })));
    if !next.rams.is_empty() {
        notings.push(view.noting(Event::Planning(Planning::RamsMeant { group, rams: next.rams })));
    }
    notings.push(planned(view, group, PlannedJob::RamIn, next.ram_in));
    if let Some(out) = next.ram_out {
        notings.push(planned(view, group, PlannedJob::RamOut, out));
        notings.push(planned(view, group, PlannedJob::Scan, out + TimeDelta::days(SCAN_AFTER)));
    }
    let old = view.flock.groups.get(&from);
    if old.is_some_and(|old| old.parted.is_none() && old.rams_in().next().is_none()) {
        notings.push(view.noting(Event::GroupParted { group: from }));
    }
    note(view, draft, notings, group)
}

/// Notes it all or nothing, and leads to the group.
fn note(view: &View, draft: &mut Draft, notings: Vec<Noting>, group: GroupId) -> Vec<Effect> {
    let mut effects = draft.note(view, notings);
    if !effects.is_empty() {
        effects.push(Effect::Go(Screen::Group(group)));
    }
    effects
}
