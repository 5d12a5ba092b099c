//! The next feed: how much, why, given against wanted; by bottle with one tap, by tube under its safety list.
//!
//! A tube is never one tap away on the Watch; on the Lamb it lies folded under its safety list.

use yeanling_core::book::{Event, Milk, Way};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::bottle::Day;
use yeanling_core::reckon::colostrum::ColostrumTarget;
use yeanling_core::reckon::{bottle, colostrum, feeds};
use yeanling_core::units::{System, TimeDelta, Volume};
use yeanling_core::watch::{BeforeMilk, Duty, LambTask, Task, may_be_tubed, next_milk};
use yeanling_words::common::{clock, volume, volume_number};
use yeanling_words::why::headings;
use yeanling_words::{bottle_round, errors, lamb as words, watch};

use crate::block::{Card, Fact, Figure, Kind, Progress};
use crate::milk::{before, comes_first, half, tube, volume_unit};
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Reason, Screen, Sheet};

/// How much at the next feed, with its reasons; no volume while the weight is not known.
#[derive(Default)]
struct Plan {
    title: &'static str,
    volume: Option<Volume>,
    note: String,
    why: Option<Button>,
    facts: Vec<Fact>,
    facts_why: Option<Button>,
    progress: Option<Progress>,
    newborn: bool,
}

/// Returns the next feed by bottle with one tap, or by tube once its safety list is read.
pub(super) fn blocks(view: &View, lamb: &Lamb) -> Blocks {
    let (plan, system) = (plan(view, lamb), view.system());
    let milk = next_milk(view.flock, lamb, view.now, view.settings());
    let before = before(view, lamb);
    // What comes first is told of a lamb of any age, also of one that its dam feeds.
    if let Some(first) = before.and_then(BeforeMilk::before_nursing) {
        return waits(lamb, first, milk, system).then(to_round(lamb));
    }
    let other = Action::Ask(Sheet::Feed(lamb.id, plan.volume, milk));
    let other = Button::new("other-feed", words::OTHER_FEED, other);
    if !lamb.on_bottle() && lamb.age(view.now) >= TimeDelta::hours(48) {
        return Blocks::new().buttons(2, [other]);
    }
    let by_tube = match plan.volume.filter(|_| plan.newborn) {
        Some(next) => tubed(view, lamb, next, milk),
        None => Blocks::new(),
    };
    let card = card(view, lamb, plan, milk, other.small());
    Blocks::new().add("feeding", Kind::Card(card)).then(to_round(lamb)).then(by_tube)
}

fn card(view: &View, lamb: &Lamb, plan: Plan, milk: Milk, other: Button) -> Card {
    let system = view.system();
    let Plan { title, volume: next, note, why, facts, facts_why, progress, .. } = plan;
    let head = Blocks::new().remark(title, []).into();
    let lead = next.map(|next| Blocks::new().add("next-feed", Kind::Figure(figure(next, system))));
    let action = next.map(|next| {
        if let Some(first) = before(view, lamb) {
            return comes_first(lamb.id, first).action("");
        }
        let fed = words::fed(&volume_number(next, system));
        let feed = Event::Fed { lamb: lamb.id, volume: next, milk, way: Way::Bottle };
        Button::new("fed", fed, Action::Note(vec![feed])).action("").filled()
    });
    let mut inside = Blocks::new().remark(note, why).facts(facts);
    if let Some(progress) = progress {
        inside = inside.add("given", Kind::Progress(progress));
    }
    let inside = half(view, lamb, milk).into_iter().fold(inside, |inside, said| inside.remark(said, []));
    let inside = inside.remark("", facts_why.into_iter().chain([other])).into();
    Card { head, lead: lead.unwrap_or_default().into(), action, inside }
}

fn figure(next: Volume, system: System) -> Figure {
    let other = match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    };
    let (value, unit) = (volume_number(next, system), volume_unit(system).to_owned());
    Figure { value, unit, also: volume(next, other), ..Figure::default() }
}

fn tubed(view: &View, lamb: &Lamb, next: Volume, milk: Milk) -> Blocks {
    let system = view.system();
    let feed = Event::Fed { lamb: lamb.id, volume: next, milk, way: Way::Tube };
    let tubed = words::tubed(&volume(next, system));
    let caution = Blocks::new().caution(tube().iter().copied());
    let inside = if may_be_tubed(lamb, view.now) {
        caution.button(Button::new("tubed", tubed, Action::Note(vec![feed])))
    } else {
        let ask = Action::Ask(Sheet::Feed(lamb.id, None, milk));
        caution.text(words::TUBE_FIRST).button(Button::new("tube-ask", words::OTHER_FEED, ask))
    };
    Blocks::new().fold("by-tube", words::BY_TUBE, inside)
}

/// What stands there while something comes before milk: what and why, and the way to it; no volume, so that none is given.
/// What it had all the same can be noted.
fn waits(lamb: &Lamb, before: BeforeMilk, milk: Milk, system: System) -> Blocks {
    let had = Action::Ask(Sheet::Feed(lamb.id, None, milk));
    let had = Button::new("already-fed", words::ALREADY_FED, had).small();
    let head = if matches!(before, BeforeMilk::Hold(_)) { words::HOLD } else { words::BEFORE_MILK };
    let inside = Blocks::new()
        .remark(head, [])
        .caution(words::first(before, system))
        .button(comes_first(lamb.id, before))
        .then(crate::illness::milk_allowed(lamb).into_iter().fold(Blocks::new(), Blocks::button))
        .remark("", [had]);
    Blocks::new().card("held", inside)
}

fn to_round(lamb: &Lamb) -> Blocks {
    let link = Button::new("bottle-round", bottle_round::LINK, Action::Go(Screen::BottleRound));
    if lamb.on_bottle() { Blocks::new().button(link) } else { Blocks::new() }
}

fn plan(view: &View, lamb: &Lamb) -> Plan {
    let age = lamb.age(view.now);
    if age < TimeDelta::hours(24) {
        let title = if lamb.hand_fed() { words::NEXT_FEED_HAND } else { words::NEXT_FEED };
        let settings = view.settings();
        let target = |weight| colostrum::target(weight, settings.day_rule, settings.housing).ok();
        return match lamb.birth_weight().and_then(target) {
            Some(target) => newborn(view, lamb, title, &target),
            None => Plan { title, note: words::NO_WEIGHT.to_owned(), ..Plan::default() },
        };
    }
    let weight = lamb.last_weight(view.now).map(|weight| weight.mass);
    let title = words::BOTTLE_FEED;
    match bottle::day(age, weight, view.settings().bottle_table) {
        Ok(day) => of_day(view, lamb, title, &day),
        Err(error) => Plan { title, note: errors::no_row(&error, view.system()), ..Plan::default() },
    }
}

/// The next feed of a newborn, against what it wants in its first day.
fn newborn(view: &View, lamb: &Lamb, title: &'static str, target: &ColostrumTarget) -> Plan {
    let system = view.system();
    let given = lamb.given_first_day(view.now);
    let last = lamb.feeds.last().map(|feed| feed.at.since(lamb.born));
    let next = feeds::next(target, given, last, lamb.age(view.now));
    let by = |wanted: Volume, hours: i64| {
        let at = clock((view.here)(lamb.born + TimeDelta::hours(hours)));
        Fact::new(watch::of(&volume_number(given, system), &volume(wanted, system)), watch::by(&at))
    };
    let of_day = Reason::Milk(*target);
    let (why_next, note) = match &next {
        Some(next) => {
            (why(headings::NEXT_FEED, Reason::NextFeed(Box::new((*next, *target)))), due(view, lamb))
        }
        None => (why(headings::COLOSTRUM, of_day.clone()), words::ENOUGH.to_owned()),
    };
    let progress = || Progress {
        share: given.as_milliliters() / target.by_24h.as_milliliters(),
        text: words::given(&volume(given, system), &volume(target.by_24h, system)).into(),
    };
    let why_day = why(headings::COLOSTRUM, of_day);
    Plan {
        title,
        volume: next.map(|next| next.volume.offered(system)),
        note,
        why: Some(why_next),
        facts: vec![by(target.by_6h, 6), by(target.by_18h, 18), by(target.by_24h, 24)],
        facts_why: Some(Button {
            key: "why-day".into(),
            name: words::why_day(headings::COLOSTRUM),
            label: words::WHY_DAY.to_owned(),
            ..why_day
        }),
        progress: lamb.hand_fed().then(progress),
        newborn: true,
    }
}

/// The next feed of a lamb on the bottle, as its day has it.
fn of_day(view: &View, lamb: &Lamb, title: &'static str, day: &Day) -> Plan {
    let system = view.system();
    let given = lamb.given(view.now - TimeDelta::hours(24), view.now);
    Plan {
        title,
        volume: Some(day.per_feed.offered(system)),
        note: due(view, lamb),
        why: Some(why(headings::BOTTLE, Reason::Bottle(Box::new(*day)))),
        facts: vec![
            Fact::new(crate::Text::strong(&day.feeds.to_string()), words::FEEDS_A_DAY),
            Fact::new(volume(day.day_total, system), words::IN_A_DAY),
            Fact::new(volume(given, system), words::GIVEN_IN_A_DAY),
        ],
        ..Plan::default()
    }
}

/// Returns when the next feed is due, or that it is late; nothing for a lamb that was never fed by hand.
fn due(view: &View, lamb: &Lamb) -> String {
    let is = |duty: &&Duty| matches!(duty.task, Task::Lamb(id, LambTask::Feed { .. }) if id == lamb.id);
    let feed = view.duties.iter().find(is);
    feed.map(|duty| watch::when(duty, view.now)).unwrap_or_default()
}
