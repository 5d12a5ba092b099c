//! What can be noted about a ewe: first what fits her and the season, four at most; all the rest is folded.

use yeanling_core::book::{Animal, Event, EweId, Past};
use yeanling_core::flock::{EARLIEST_BIRTH, Ewe, Labor, Saw};
use yeanling_core::terms::EweStage;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{may_be_well, stage_of};
use yeanling_words::{ewe as words, illness, labor, life, past, season};

use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Screen, Sheet};

/// So many at most are offered first.
const MOST: usize = 4;
/// Her lambing is no longer far when her first day is this near (ours).
const NEAR: TimeDelta = TimeDelta::days(30);

/// Where she is in her year, as far as it says what is done with her.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Season {
    /// She lambs, or may soon; or nobody knows.
    Lambing,
    /// She has lambed in these days.
    JustLambed,
    /// She rears lambs.
    Rearing,
    /// The ram is with her.
    WithRam,
    /// In lamb, and not near.
    InLamb,
    /// Dry.
    Dry,
}

/// Returns what fits the day, then all the rest, folded.
pub(super) fn blocks(view: &View, ewe: &Ewe) -> Blocks {
    let mut rest = all(view, ewe);
    let mut first = Vec::new();
    if ewe.lives() {
        let passed = has_passed(view, ewe);
        for key in keys(season_of(view, ewe)).iter().filter(|key| !passed || **key != "afterbirth") {
            if first.len() < MOST
                && let Some(at) = rest.iter().position(|button| button.key == *key)
            {
                first.push(rest.remove(at));
            }
        }
    }
    let first = if first.is_empty() { Blocks::new() } else { Blocks::new().buttons(2, first) };
    let rest = Blocks::new().fold("all-notes", words::ALL_NOTES, Blocks::new().buttons(2, rest));
    Blocks::new().section("note", words::NOTE, first.then(rest))
}

/// Returns what stands under the thumb: that she is not right, and her lambing while one may come.
pub(super) fn thumb(view: &View, ewe: &Ewe) -> Blocks {
    let ill = Action::Go(Screen::IllEwe(ewe.id));
    let ill = Button::new("not-right", illness::ewe::NOT_RIGHT, ill).big();
    let blocks = Blocks::new().button(ill);
    if may_lamb(view, ewe) { blocks.button(lambing(view, ewe).big().filled()) } else { blocks }
}

/// The way to her lambing, or on with it.
fn lambing(view: &View, ewe: &Ewe) -> Button {
    let label = if ewe.labor.is_some() || goes_on(view, ewe) { words::LAMBING_ON } else { words::LAMBING };
    Button::new("lambing", label, Action::Go(Screen::LambingEwe(ewe.id)))
}

fn goes_on(view: &View, ewe: &Ewe) -> bool {
    view.flock.litters_of(ewe.id).first().is_some_and(|litter| litter.goes_on(view.now))
}

/// Says whether the afterbirth of her last litter was noted.
fn has_passed(view: &View, ewe: &Ewe) -> bool {
    let litters = view.flock.litters_of(ewe.id);
    let last = litters.first().map(|litter| litter.began);
    last.is_some_and(|began| ewe.seen.iter().any(|seen| seen.at >= began && seen.what == Saw::Afterbirth))
}

/// Says whether a lambing of hers may come: not within the shortest term after her last, nor while her first day is far.
fn may_lamb(view: &View, ewe: &Ewe) -> bool {
    let last = view.flock.litters_of(ewe.id).first().map(|litter| litter.latest);
    let has_lambed = last.is_some_and(|last| view.now.since(last) < TimeDelta::days(EARLIEST_BIRTH));
    let awaited = view.lambing_forecasts.of(ewe.id).and_then(|one| one.lambing_forecast.as_ref().ok());
    let far = awaited.is_some_and(|forecast| forecast.first > (view.now + NEAR).local().date());
    ewe.labor.is_some() || goes_on(view, ewe) || !(has_lambed || far)
}

fn season_of(view: &View, ewe: &Ewe) -> Season {
    let with_ram = view.flock.group_of(ewe.id).is_some_and(|group| {
        group.ram_times().last().is_some_and(|(_, out)| out.is_none_or(|out| out > view.now))
    });
    let awaited = view.lambing_forecasts.of(ewe.id).is_some();
    match stage_of(view.flock, ewe, view.now) {
        EweStage::AfterLambing => Season::JustLambed,
        EweStage::Labor => Season::Lambing,
        _ if ewe.labor.as_ref().is_some_and(Labor::runs) => Season::Lambing,
        EweStage::Milking if !with_ram => Season::Rearing,
        _ if with_ram => Season::WithRam,
        _ if awaited && may_lamb(view, ewe) => Season::Lambing,
        _ if awaited => Season::InLamb,
        _ if may_lamb(view, ewe) && view.flock.litters_of(ewe.id).is_empty() => Season::Lambing,
        _ => Season::Dry,
    }
}

/// The keys of what is done in a season, what is done most first; of what cannot be done the next takes the place.
const fn keys(season: Season) -> &'static [&'static str] {
    match season {
        Season::Lambing => &["looked", "out-of-pen", "into-pen", "vet-called", "condition"],
        Season::JustLambed => &["afterbirth", "udder", "looked", "out-of-pen", "into-pen", "take-on"],
        Season::Rearing => &["condition", "treat", "take-on", "remark"],
        Season::WithRam => &["mark", "condition", "treat", "scan"],
        Season::InLamb => &["scan", "condition", "treat", "into-pen"],
        Season::Dry => &["condition", "weigh", "treat", "leave"],
    }
}

/// Says whether nothing speaks against it that she is a ram who was taken for a ewe.
fn may_be_a_ram(view: &View, ewe: &Ewe) -> bool {
    ewe.was.is_none()
        && ewe.stays.is_empty()
        && view.flock.litters_of(ewe.id).is_empty()
        && ewe.labor.is_none()
}

/// Returns all that can be noted about her: while she lives, else what is still known of her.
fn all(view: &View, ewe: &Ewe) -> Vec<Button> {
    let (id, animal) = (ewe.id, Animal::Ewe(ewe.id));
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let mut all = if ewe.lives() { while_she_lives(view, ewe) } else { Vec::new() };
    all.extend([
        asks("describe", life::DESCRIBE, Sheet::Describe(id)),
        asks("tag", words::TAG, Sheet::Tag(animal)),
        asks("remark", words::REMARK, Sheet::Remark(animal)),
        asks("same", words::SAME, Sheet::SameEwe(id)),
        match ewe.died {
            Some(_) => asks("examined", life::EXAMINED, Sheet::Examined(animal)),
            None => asks("died", words::DIED, Sheet::Death(animal)),
        },
    ]);
    all
}

fn while_she_lives(view: &View, ewe: &Ewe) -> Vec<Button> {
    let id: EweId = ewe.id;
    let animal = Animal::Ewe(id);
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let notes =
        |key: &'static str, label: &str, event: Event| Button::new(key, label, Action::Note(vec![event]));
    let well = may_be_well(view.duties.iter(), animal, view.now);
    let mut all = vec![asks("into-pen", words::INTO_PEN, Sheet::WhichPen(animal))];
    if view.flock.pen_of(animal).is_some() {
        all.push(notes("out-of-pen", words::OUT_OF_PEN, Event::LetOut { animal }));
    }
    all.extend([
        notes("afterbirth", words::AFTERBIRTH, Event::AfterbirthPassed { ewe: id }),
        notes("looked", labor::looked(well), Event::LookedAt { animal }),
        notes("vet-called", words::VET, Event::VetCalled { animal }),
        asks("udder", illness::udder::TITLE, Sheet::Udder(id)),
        asks("take-on", life::TAKE_ON, Sheet::TakeOn(id)),
        asks("condition", season::CONDITION, Sheet::Condition(id)),
        asks("weigh", season::WEIGH, Sheet::EweWeight(id)),
        asks("scan", season::SCAN, Sheet::Scan(id)),
        asks("mark", season::MARK, Sheet::Mark(id)),
        asks("treat", life::TREAT, Sheet::Treat(vec![animal])),
        asks("paint", life::MARK, Sheet::Paint(animal)),
        asks("leave", life::LEAVE, Sheet::Leave(animal)),
    ]);
    if !may_lamb(view, ewe) {
        all.push(lambing(view, ewe));
    }
    if may_be_a_ram(view, ewe) {
        all.push(notes("is-ram", past::IS_RAM, Event::Past(Past::IsRam { animal: id })));
    }
    all
}
