//! What a birth weight means for the litter it is of, also while that litter may still grow, and by whose figures.

use yeanling_core::flock::{Counted, Lamb};
use yeanling_core::reckon::birth_weight::{Band, OWN_FROM, band};
use yeanling_core::units::Mass;
use yeanling_words::common::mass;
use yeanling_words::{animals, lambing as words, why};

use crate::view::View;

/// Returns how many lambs the litter of a lamb counts as.
pub(crate) fn counted(view: &View, lamb: &Lamb) -> Counted {
    let litter = view.flock.litter_of(lamb.id);
    litter.map_or(Counted { lambs: 1, may_grow: false }, |litter| view.flock.counted(litter, view.now))
}

/// Returns the verdict on a birth weight in words, with the band it lies in; nothing for one that no lamb can have. While one
/// more lamb may come, both verdicts are told where they differ.
pub(crate) fn verdict(view: &View, lamb: &Lamb, weight: Mass) -> Option<(String, Band)> {
    let Counted { lambs, may_grow } = counted(view, lamb);
    let of = |lambs: usize| band(weight, u8::try_from(lambs).unwrap_or(u8::MAX)).ok();
    let now = of(lambs)?;
    let told =
        |band: &Band, lambs: usize| words::verdict(why::verdict(band.verdict), &animals::litter(lambs));
    let if_more = of(lambs + 1).filter(|more| may_grow && more.verdict != now.verdict);
    let if_more = if_more.map(|more| told(&more, lambs + 1));
    let hair = view.settings().keeps_hair_sheep();
    // Its own flock tells more of a hair lamb than any wool breed, once enough of its kind were weighed.
    let own = view.flock.birth_mean(lambs).filter(|own| hair && own.lambs >= OWN_FROM);
    let own = own.map(|own| mass(own.mean, view.system()));
    Some((words::judged(told(&now, lambs), if_more, hair, own.as_deref()), now))
}
