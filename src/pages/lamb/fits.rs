//! A lamb past its first week: how it grows first, then what fits its age, four at most; all the rest is folded.

use yeanling_core::book::{Animal, Event, Sex};
use yeanling_core::flock::Lamb;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{BeforeMilk, KEPT_FROM};
use yeanling_words::common::{day_and_clock, mass};
use yeanling_words::{ewe as ewe_words, growth, lamb as words, life, weaning as weaning_words};

use super::{Does, care, charts, feeding, look, weaning};
use crate::milk::before;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Sheet};

/// From this age on what fits it stands first (ours); before it all that is seen of a newborn does.
pub(super) const FROM: TimeDelta = TimeDelta::days(7);
/// From this age on its growth stands on top.
const GROWS_FROM: TimeDelta = TimeDelta::days(14);
/// A lamb so young still finds another ewe (ours).
const FOSTERED_UNTIL: TimeDelta = TimeDelta::days(21);
/// From this age on it may be sold: eight weeks, the age at which it is weighed and often weaned.
const SOLD_FROM: TimeDelta = TimeDelta::days(56);
/// So many at most are offered first.
const MOST: usize = 4;

/// Returns how it grows, from two weeks on; without a second weight, how it was weighed last.
pub(super) fn growth(view: &View, lamb: &Lamb) -> Blocks {
    if lamb.age(view.now) < GROWS_FROM {
        return Blocks::new();
    }
    let drawn = charts::weights(view, lamb);
    if !drawn.is_empty() {
        return drawn;
    }
    let said = lamb.weights.last().map_or_else(
        || growth::NOT_WEIGHED.to_owned(),
        |last| growth::weighed(&mass(last.mass, view.system()), &day_and_clock(last.at, view.now)),
    );
    Blocks::new().section("weights", growth::TITLE, Blocks::new().text(said))
}

/// Says whether its growth stands on top, and not below.
pub(super) fn growth_is_first(view: &View, lamb: &Lamb) -> bool {
    lamb.lives() && lamb.age(view.now) >= GROWS_FROM
}

/// Returns what fits its age, its feeds and its weaning, then all the rest, folded.
pub(super) fn blocks(view: &View, lamb: &Lamb) -> Blocks {
    let fed = lamb.on_bottle() || before(view, lamb).and_then(BeforeMilk::before_nursing).is_some();
    let (feeds, other) = if fed {
        (feeding::blocks(view, lamb), Blocks::new())
    } else {
        (Blocks::new(), feeding::blocks(view, lamb))
    };
    let first = first(view, lamb);
    let rest = other
        .section("look", words::LOOK, look::looks(view, lamb, &first))
        .section("temperature", words::TEMPERATURE, care::warmth(view, lamb))
        .then(care::birth_weight(view, lamb))
        .then(care::marking(view, lamb))
        .then(look::life(view, lamb, &first));
    feeds
        .then(weaning::blocks(view, lamb))
        .section("fits", words::FITS, Blocks::new().buttons(2, first))
        .fold("all-notes", ewe_words::ALL_NOTES, rest)
}

/// What is done with a lamb of its age, what is done most first.
fn first(view: &View, lamb: &Lamb) -> Vec<Button> {
    let (id, animal, age) = (lamb.id, Animal::Lamb(lamb.id), lamb.age(view.now));
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let weaned = Action::Note(vec![Event::Weaned { lamb: id }]);
    let weaned = Button::new("fits-weaned", weaning_words::WEANED, weaned);
    let keep = Action::Does(crate::Does::Lamb(Does::Keep(id)));
    let all = [
        (true, asks("fits-weigh", words::WEIGH, Sheet::Weight(id))),
        (lamb.to_be_weaned_from_ewe() && age >= weaning::SHOWN_FROM, weaned),
        (lamb.tag.is_none(), asks("fits-tag", words::TAG, Sheet::Tag(animal))),
        (age < FOSTERED_UNTIL, asks("fits-foster", life::FOSTER, Sheet::Foster(id))),
        (true, asks("fits-treat", life::TREAT, Sheet::Treat(vec![animal]))),
        (lamb.sex == Some(Sex::Ewe) && age >= KEPT_FROM, Button::new("fits-keep", life::KEEP, keep)),
        (age >= SOLD_FROM, asks("fits-leave", life::LEAVE, Sheet::Leave(animal))),
        (true, asks("fits-remark", words::REMARK, Sheet::Remark(animal))),
    ];
    all.into_iter().filter_map(|(fits, button)| fits.then_some(button)).take(MOST).collect()
}
