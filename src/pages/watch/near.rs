//! Who may lamb tonight, by the signs that were noted and by her days: each with the likeliest sign one tap away.

use std::collections::BTreeMap;

use yeanling_core::book::{Animal, Event, EweId, Sign};
use yeanling_core::flock::{Flock, Labor, SIGNS_FOR};
use yeanling_core::sort_small::{Gather, SortSmall};
use yeanling_core::units::Moment;
use yeanling_words::common::clock;
use yeanling_words::{animals, labor, season_forecast, watch as words};

use super::seat::place;
use crate::block::{Row, State};
use crate::page::{Blocks, key_of};
use crate::view::View;
use crate::{Action, Button, Screen};

/// A ewe that is near, by signs or by her days.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Near {
    pub(super) ewe: EweId,
    pub(super) name: String,
    pub(super) text: String,
    pub(super) place: Option<String>,
    /// Whether a sign of her was noted.
    pub(super) signs: bool,
    /// Whether a sign was noted just now, and its tick stands in its place.
    pub(super) done: bool,
}

impl Near {
    /// Returns the same once her sign was noted.
    pub(super) fn done(&self) -> Self {
        Self { done: true, ..self.clone() }
    }
}

/// A ewe is told of when this much speaks for the next 24 hours (ours).
const LIKELY_FROM: f64 = 0.03;
/// So many at most stand under tonight; the others stand in the season (ours).
const MOST_NEAR: usize = 10;

/// Returns the ewes that may lamb tonight: those with signs of whom no mating is known first, the latest sign first;
/// then by the chance of the next 24 hours, for which signs weigh more than dates.
pub(super) fn near(view: &View) -> Vec<Near> {
    let (flock, now) = (view.flock, view.now);
    let mut signs: BTreeMap<EweId, (Moment, String)> =
        flock.at_work.iter().filter_map(|id| Some((*id, signs_of(flock, *id, now)?))).gathered();
    let mut near: Vec<(f64, Near)> = Vec::new();
    for awaited in &view.lambing_forecasts.awaited {
        let Ok(lambing_forecast) = &awaited.lambing_forecast else { continue };
        let Some(ewe) = flock.ewe(awaited.ewe) else { continue };
        // Her labor has begun: she stands above, by the clock.
        if ewe.labor.as_ref().is_some_and(Labor::runs) {
            continue;
        }
        let sign = signs.remove(&ewe.id).map(|(_, text)| text);
        if sign.is_some() || lambing_forecast.within_24h >= LIKELY_FROM {
            let signs = sign.is_some();
            let text = sign
                .into_iter()
                .chain([season_forecast::within(lambing_forecast)])
                .collect::<Vec<_>>()
                .join(" · ");
            let place = place(flock, Animal::Ewe(ewe.id));
            near.push((
                lambing_forecast.within_24h,
                Near { ewe: ewe.id, name: animals::ewe(ewe), text, place, signs, done: false },
            ));
        }
    }
    near.sort_small_by(|(a, one), (b, other)| b.total_cmp(a).then(one.ewe.cmp(&other.ewe)));
    let mut known_by_signs: Vec<(Moment, Near)> = signs
        .into_iter()
        .filter_map(|(id, (last, text))| {
            let ewe = flock.ewe(id)?;
            let place = place(flock, Animal::Ewe(id));
            Some((last, Near { ewe: id, name: animals::ewe(ewe), text, place, signs: true, done: false }))
        })
        .collect();
    known_by_signs.sort_small_by_key(|(last, near)| (std::cmp::Reverse(*last), near.ewe));
    let first = known_by_signs.into_iter().map(|(_, near)| near);
    first.chain(near.into_iter().map(|(_, near)| near)).take(MOST_NEAR).collect()
}

/// Returns her latest sign and all of them in words; nothing once her labor runs or the last is old.
fn signs_of(flock: &Flock, id: EweId, now: Moment) -> Option<(Moment, String)> {
    let labor = flock.ewe(id)?.labor.as_ref().filter(|labor| !labor.runs())?;
    let (last, _) = labor.signs.last().filter(|(at, _)| now.since(*at) < SIGNS_FOR)?;
    let told =
        labor.signs.iter().map(|(at, sign)| format!("{} {}", labor::sign(*sign).to_lowercase(), clock(*at)));
    Some((*last, told.collect::<Vec<_>>().join(", ")))
}

/// Returns the part of the page; nothing while nobody is near. Of who shows no sign yet the likeliest is one tap away: that
/// she is restless starts her clock.
pub(super) fn section(near: &[Near]) -> Blocks {
    let row = |near: &Near| {
        let restless = Action::Note(vec![Event::SignSeen { ewe: near.ewe, sign: Sign::Restless }]);
        let label = labor::sign(Sign::Restless);
        let name = format!("{label}, {}", near.name);
        let button = (!near.signs).then(|| Button::new("restless", label, restless).action(name));
        let button = button.map(|button| if near.done { button.ticked() } else { button });
        let row = Row::new(&near.name)
            .kind(near.place.clone().unwrap_or_default())
            .text(&near.text)
            .says(State::Coming, "")
            .to(Screen::LambingEwe(near.ewe))
            .action(button);
        (key_of("near", near.ewe.entry()), row)
    };
    let rows = Blocks::new().rows("tonight-rows", near.iter().map(row));
    Blocks::new().section("tonight", words::TONIGHT, rows)
}
