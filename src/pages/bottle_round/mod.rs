//! The bottle round: every bottle lamb with its volume and its times, one tick each, and one mix for all still to feed.

mod round;

use yeanling_core::book::Event;
use yeanling_core::flock::WEANED_BY;
use yeanling_core::reckon::mixing::{Mix, sample_to};
use yeanling_core::units::{Mass, System, Volume};
use yeanling_core::watch::BeforeMilk;
use yeanling_words::common::{feed_mass, volume, volume_as_given};
use yeanling_words::{animals, bottle_round as words, errors, watch, why as why_words};

use round::{OnRound, Round, round};

use crate::block::{Fact, Figure, Kind, Line, LineLook, Row, Shape};
use crate::draft::Draft;
use crate::milk::comes_first;
use crate::page::{Blocks, Page, key_of, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, Sheet, State, powder};

/// So many lambs are offered where none is on the bottle; an older one is opened from the flock.
const MOST_OFFERED: usize = 24;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let round = round(view.flock, &view.duties, view.now);
    let (to, name) = view.back(Screen::BottleRound);
    let page = Page::new(words::TITLE).back(to, name);
    let lambs = round.lambs();
    if lambs == 0 {
        return page.blocks(nobody(view));
    }
    let under = match round.to_feed.len() {
        0 => String::new(),
        to_feed => words::sub(to_feed, &round.when),
    };
    let rows = |key: &'static str, lambs: &[OnRound]| Blocks::new().rows(key, lambs.iter().map(row));
    let mut blocks = Blocks::new().section("to-feed", words::TO_FEED, rows("to-feed-rows", &round.to_feed));
    if round.to_feed.is_empty() && !round.fed.is_empty() {
        blocks = blocks.remark(words::ALL_FED, []);
    }
    let used = Mass::from_kilograms(round.used);
    page.under(under).thumb(all_fed(&round)).blocks(
        blocks
            .section("mix", words::MIX, mix(view, &round))
            .section("fed", words::FED, rows("fed-rows", &round.fed))
            .section("later", words::LATER, rows("later-rows", &round.later))
            .section("day", words::TODAY, day(view, &round))
            .then(powder::blocks(view, &draft.fields, &lambs.to_string(), used)),
    )
}

/// Nobody is on the bottle: the lambs that may be, each a tap from its first feed; without any, the way to the first.
fn nobody(view: &View) -> Blocks {
    let young = view.flock.born_after(view.now - WEANED_BY).rev();
    let young = young.filter(|lamb| lamb.lives() && lamb.weaned.is_none()).take(MOST_OFFERED);
    let lambs: Vec<Button> = young
        .map(|lamb| {
            let name = animals::lamb(view.flock, lamb);
            Button::new(key_of("to-bottle", lamb.id.entry()), name, Action::Go(Screen::Lamb(lamb.id)))
        })
        .collect();
    if lambs.is_empty() {
        let lambing = Button::new("lambing", watch::LAMBING, Action::Go(Screen::Lambing));
        return Blocks::new().empty(words::EMPTY, [lambing]);
    }
    Blocks::new().text(words::EMPTY).section("to-bottle", words::WHICH, Blocks::new().buttons(3, lambs))
}

/// The whole round with one tap, where each of several may be fed what is planned.
fn all_fed(round: &Round) -> Blocks {
    let feeds: Vec<Event> = round.to_feed.iter().filter_map(|one| one.feed.clone()).collect();
    if feeds.len() < 2 || feeds.len() < round.to_feed.len() {
        return Blocks::new();
    }
    let label = words::all_fed(feeds.len());
    Blocks::new().button(Button::new("all-fed", label, Action::Note(feeds)).big())
}

/// One lamb: what it gets with its tick, how its day stands, and another amount.
fn row(one: &OnRound) -> (Key, Row) {
    let named = |what: &str| format!("{what}, {}", one.name);
    let ask = || Action::Ask(Sheet::Feed(one.id, one.volume, one.milk));
    let action = match (one.fed, &one.feed) {
        (Some(entry), _) => {
            let undo = Action::Note(vec![Event::Deleted { entry }]);
            Some(Button::new("undo", words::UNDO, undo).action(named(words::UNDO)).quiet())
        }
        (None, Some(event)) => {
            let name = format!("{} {}, {}", words::TICK, one.amount, one.name);
            let due = matches!(one.state, State::Late | State::Now);
            let fed = Button::new("fed", words::TICK, Action::Note(vec![event.clone()]));
            Some(fed.action(name).filled_if(due))
        }
        (None, None) if one.says.is_empty() => None,
        // What comes first stands in the place of the feed.
        (None, None) if one.before.is_some() => one.before.map(|before| {
            let first = comes_first(one.id, before);
            let name = named(&first.label);
            first.action(name)
        }),
        (None, None) => Some(Button::new("open", words::OPEN, ask()).action(named(words::OPEN))),
    };
    let reason = one.why.clone().map(|(about, reason)| why(about, reason));
    let other = one.fed.is_none() && one.before.is_none_or(|before| before == BeforeMilk::Weigh);
    let other = other.then(|| Button::new("other", words::OTHER, ask()).small().named(named(words::OTHER)));
    let buttons: Vec<Button> = reason.into_iter().chain(other).collect();
    let some = !one.day.is_empty() || !buttons.is_empty();
    let inside = if some { Blocks::new().remark(&one.day, buttons) } else { Blocks::new() };
    let row = Row::new(&one.name)
        .kind(&one.kind)
        .text(&one.text)
        .says(one.state, &one.says)
        .to(Screen::Lamb(one.id))
        .action(action)
        .inside(inside);
    (key_of("lamb", one.id.entry()), row)
}

/// One mix for all still to feed, and the trap of a weak one.
fn mix(view: &View, round: &Round) -> Blocks {
    let system = view.system();
    let mut blocks = match &round.mix {
        Some((Ok(mix), lambs)) => mixed(mix, *lambs, system),
        Some((Err(wrong), _)) => Blocks::new().remark(errors::no_mix(wrong, system), []),
        None => Blocks::new(),
    };
    if round.unknown > 0 {
        blocks = blocks.remark(words::unknown(round.unknown), []);
    }
    if let Some(milk) = round.not_mixed {
        blocks = blocks.remark(words::not_mixed(milk, system), []);
    }
    blocks
}

fn mixed(mix: &Mix, lambs: usize, system: System) -> Blocks {
    let other = match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    };
    let answer = |key: &'static str, label: &str, told: String, also: String| {
        let (value, unit) = told.split_once(' ').unwrap_or((&told, ""));
        let figure = Figure { value: value.to_owned(), unit: unit.to_owned(), also, ..Figure::default() };
        Blocks::new()
            .add("", Kind::Line(Line::new(LineLook::AnswerLabel, label)))
            .add(key, Kind::Figure(figure))
    };
    let powder = answer(
        "mix-powder-figure",
        words::POWDER,
        feed_mass(mix.powder, system),
        feed_mass(mix.powder, other),
    );
    let water = answer(
        "mix-water-figure",
        words::WATER,
        volume_as_given(mix.water, system),
        volume_as_given(mix.water, other),
    );
    let answers =
        Blocks::new().group("mix-powder", Shape::Answer, powder).group("mix-water", Shape::Answer, water);
    let trap =
        sample_to(Volume::from_milliliters(1000.0), mix.rate).ok().map(|liter| words::trap(&liter, system));
    Blocks::new()
        .remark(words::mix_for(mix, lambs, system), [why(why_words::MIXING, Reason::Mixing(*mix))])
        .group("mix-answers", Shape::Answers, answers)
        .text(words::how(mix, system))
        .caution(trap)
        .small(words::LABEL_FIRST)
}

/// What all lambs past their first day take in a day, and when.
fn day(view: &View, round: &Round) -> Blocks {
    let Some((milk, powder, feeds)) = round.day else { return Blocks::new() };
    let system = view.system();
    let facts = [
        Fact::new(format!("*{}*", volume(milk, system)), words::DAY_MILK),
        Fact::new(format!("*{}*", feed_mass(powder, system)), words::DAY_POWDER),
        Fact::new(format!("*{feeds}*"), words::DAY_FEEDS),
    ];
    round.times.iter().fold(Blocks::new().facts(facts), Blocks::text)
}
