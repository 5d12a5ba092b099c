//! How warm it is, what its birth weight means, and when rings, tags and vaccine come.

use yeanling_core::book::{Event, Ring, Sex};
use yeanling_core::flock::{IN_COLOSTRUM_AFTER, Lamb};
use yeanling_core::reckon::birth_weight::{Against, OwnMean, against};
use yeanling_core::reckon::body_temperature;
use yeanling_core::reckon::cold_lamb::decide;
use yeanling_core::reckon::marking::{ring, ring_state, vaccine};
use yeanling_core::settings::{DamsVaccinated, RingRule};
use yeanling_core::units::{Mass, Moment, System};
use yeanling_core::watch::{ColdSpell, cold_spell};
use yeanling_words::common::{date, day_and_clock, mass, temperature_both};
use yeanling_words::why::headings;
use yeanling_words::{cold_lamb, lamb as words, life, marking as marks, settings as settings_words, watch};

use crate::birth_weight;
use crate::block::NoticeKind;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Reason, Screen};

/// Returns the last reading with its band, when the next is due, and the way to the cold lamb.
pub(super) fn warmth(view: &View, lamb: &Lamb) -> Blocks {
    let cold = Action::Go(Screen::ColdLamb(Some(lamb.id)));
    let to_cold = |label| Button::new("cold-lamb", label, cold);
    match last_reading(lamb, view.now, view.system()) {
        None => Blocks::new().remark(words::NO_TEMPERATURE, []).button(to_cold(words::COLD)),
        Some((text, None)) => Blocks::new().remark(text, []).button(to_cold(words::COLD)),
        Some((text, Some(again))) => {
            Blocks::new().remark(text, []).remark(again, []).button(to_cold(words::COLD_NOW))
        }
    }
}

/// Returns the last reading in words, and when the next is due while it is cold.
fn last_reading(lamb: &Lamb, now: Moment, system: System) -> Option<(String, Option<String>)> {
    let last = lamb.temperatures.last()?;
    let band = body_temperature::band(last.temperature).ok().map(cold_lamb::band).unwrap_or_default();
    let age = lamb.age(last.at);
    let told = temperature_both(last.temperature, system);
    let text = words::last_reading(&told, band, &day_and_clock(last.at, now), &watch::age(age));
    let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
    let branch = spell.map_or(age, |spell| spell.age(lamb));
    let wait =
        decide(last.temperature, Some(branch), lamb.swallows()).ok().and_then(|answer| answer.look_again);
    Some((text, wait.map(|wait| words::again_at(&day_and_clock(last.at + wait, now)))))
}

/// Returns what its birth weight means for its litter and its flock; red is told in words.
pub(super) fn birth_weight(view: &View, lamb: &Lamb) -> Blocks {
    let Some(weight) = lamb.birth_weight() else { return Blocks::new() };
    let judged = weighed(view, lamb, weight).zip(birth_weight::verdict(view, lamb, weight));
    let Some((against, (verdict, _))) = judged else { return Blocks::new() };
    let text = words::at_birth(&mass(weight, view.system()), &verdict);
    let red = against.red;
    let why = why(headings::BIRTH_WEIGHT, Reason::BirthWeight(against));
    let blocks = Blocks::new().remark(text, [why]);
    if red { blocks.notice("light", NoticeKind::Bad, words::IN_DANGER, []) } else { blocks }
}

/// Returns a birth weight against its litter and its flock.
fn weighed(view: &View, lamb: &Lamb, weight: Mass) -> Option<Against> {
    let (flock, settings) = (view.flock, view.settings());
    let litter = flock.litter_of(lamb.id)?;
    let size = birth_weight::counted(view, lamb).lambs;
    let own = flock.birth_mean(size).map(|own| OwnMean { mean: own.mean, lambs: own.lambs });
    let counted = u8::try_from(size).unwrap_or(u8::MAX);
    let mean = flock.litter_mean(litter);
    against(weight, counted, mean, own, settings.breed_means).ok()
}

/// Returns tags and vaccine folded away, and the rings with the farm's limits.
pub(super) fn marking(view: &View, lamb: &Lamb) -> Blocks {
    let rings = Ring::ALL.map(|kind| ring_line(view, lamb, kind));
    Blocks::new()
        .fold("marking", words::MARKING, tags_and_vaccine(view, lamb))
        .then(rings.into_iter().flatten())
}

/// Returns one ring: that it is on, that it is banned, or its window and whether it can still be noted.
fn ring_line(view: &View, lamb: &Lamb, kind: Ring) -> Blocks {
    let (none, rings) = (Blocks::new(), view.settings().rings);
    if let Some((at, _)) = lamb.rings.iter().find(|(_, ring)| *ring == kind) {
        return none.remark(marks::ringed_at(kind, &day_and_clock(*at, view.now)), []);
    }
    if kind == Ring::Castration && lamb.sex != Some(Sex::Ram) {
        return none;
    }
    if kind == Ring::Castration && settings_words::is_banned(rings) {
        return none.remark(marks::banned(kind), []);
    }
    let Some(window) = ring(rings, kind) else { return none };
    let state = ring_state(&window, lamb.age(view.now));
    let ringed = Action::Note(vec![Event::Ringed { lamb: lamb.id, ring: kind }]);
    let key = match kind {
        Ring::Tail => "ring-tail",
        Ring::Castration => "ring-castration",
    };
    none.remark(marks::stands(&window, state), [why(marks::ring(kind), Reason::Ring(window, state))])
        .button(Button::new(key, marks::ringed(kind), ringed))
}

/// The rules about tags that may be this farm's, and when the first vaccine is due.
fn tags_and_vaccine(view: &View, lamb: &Lamb) -> Blocks {
    let settings = view.settings();
    let boosted = view.flock.dam_boosted(lamb);
    let is_in_time = |at: Moment| lamb.born.since(at) >= IN_COLOSTRUM_AFTER;
    let own = boosted.filter(|at| is_in_time(*at)).map(|_| DamsVaccinated::Yes);
    let due = vaccine(own.unwrap_or(settings.dams_vaccinated));
    let (first, last) = due.first;
    let days = marks::vaccine_days(&date(lamb.born + first), &date(lamb.born + last));
    let none = (settings.rings.rule == RingRule::NoRings).then(|| marks::NO_RINGS.to_owned());
    let dam = boosted.map(|at| life::dam_boosted(at, lamb.born));
    let lines = none
        .into_iter()
        .chain(dam)
        .chain(marks::TAGS.map(marks::tag))
        .chain([marks::vaccine_of(&due, &days)]);
    lines
        .fold(Blocks::new(), |blocks, line| blocks.remark(line, []))
        .remark("", [why(headings::VACCINE, Reason::Vaccine(due))])
}
