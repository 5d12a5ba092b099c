//! Which milk a lamb is fed, and how.

use yeanling_core::book::{LambId, Milk, Way};
use yeanling_core::flock::Lamb;
use yeanling_core::units::{System, Volume};
use yeanling_core::watch::{BeforeMilk, DrawFrom, Hold, before_milk, dams_milk};
use yeanling_words::common::number;
use yeanling_words::{cautions, lamb as words, noted, watch};

use crate::block::{Choice, Choices};
use crate::draft::Fields;
use crate::view::View;
use crate::{Action, Button, Screen, Sheet};

/// Returns what comes before milk for a lamb; nothing when it may be fed.
pub(crate) fn before(view: &View, lamb: &Lamb) -> Option<BeforeMilk> {
    before_milk(lamb, view.now, view.settings())
}

/// Returns where what comes before milk is done; nothing where it is the scale.
pub(crate) const fn leads(lamb: LambId, before: BeforeMilk) -> Option<Screen> {
    match before {
        BeforeMilk::Hold(Hold::Belly { .. } | Hold::Mouth { .. }) | BeforeMilk::Ill | BeforeMilk::Look => {
            Some(Screen::IllLamb(lamb))
        }
        BeforeMilk::Hold(_) | BeforeMilk::Vet | BeforeMilk::Temperature => Some(Screen::ColdLamb(Some(lamb))),
        BeforeMilk::Weigh => None,
    }
}

/// Returns the button that leads to what comes before milk.
pub(crate) fn comes_first(lamb: LambId, before: BeforeMilk) -> Button {
    let does = leads(lamb, before).map_or(Action::Ask(Sheet::Weight(lamb)), Action::Go);
    Button::new("before-milk", watch::before_done(before), does)
}

/// Returns which half of its dam a lamb's colostrum is drawn from, or that it is not; nothing where nothing speaks against
/// either.
pub(crate) fn half(view: &View, lamb: &Lamb, milk: Milk) -> Option<&'static str> {
    view.flock.ewe(lamb.dam?).filter(|dam| dam.lives())?;
    match dams_milk(view.flock, lamb, view.now)? {
        DrawFrom::Left if milk == Milk::DamColostrum => Some(words::LEFT_HALF),
        DrawFrom::Right if milk == Milk::DamColostrum => Some(words::RIGHT_HALF),
        DrawFrom::Neither if milk == Milk::DamColostrum || milk == Milk::EweColostrum => {
            Some(words::NEITHER_HALF)
        }
        DrawFrom::Either | DrawFrom::Left | DrawFrom::Right | DrawFrom::Neither => None,
    }
}

/// The ways of feeding by hand.
pub(crate) const WAYS: [(Way, &str); 2] = [(Way::Bottle, words::BOTTLE), (Way::Tube, words::TUBE)];

/// Returns the way that was chosen; `stood` before one was.
pub(crate) fn way(fields: &Fields, key: &str, stood: Way) -> Way {
    fields.pick(key, &WAYS.map(|(way, _)| way), stood)
}

/// Returns the choice between bottle and tube.
pub(crate) fn ways(fields: &Fields, key: &'static str, stood: Way) -> Choices {
    let chosen = way(fields, key, stood);
    let option =
        |(place, (_, name)): (usize, &(Way, &str))| Choice::new(*name, Action::Choose(key.into(), place));
    let place = WAYS.iter().position(|(way, _)| *way == chosen);
    Choices::new(words::WAY, WAYS.iter().enumerate().map(option).collect(), place)
}

/// Returns the milk that was chosen; `stood` before one was.
pub(crate) fn milk(fields: &Fields, key: &str, stood: Milk) -> Milk {
    fields.pick(key, &noted::MILKS, stood)
}

/// Returns the choice among kinds of milk.
pub(crate) fn milks(fields: &Fields, key: &'static str, stood: Milk) -> Choices {
    let chosen = milk(fields, key, stood);
    let option =
        |(place, milk): (usize, &Milk)| Choice::new(noted::milk(*milk), Action::Choose(key.into(), place));
    let place = noted::MILKS.iter().position(|milk| *milk == chosen);
    Choices::new(words::MILK, noted::MILKS.iter().enumerate().map(option).collect(), place)
        .stacked()
        .labelled()
}

/// Returns the safety list of the tube.
pub(crate) const fn tube() -> &'static [&'static str] {
    cautions::TUBE
}

/// Returns a volume as it would be typed.
pub(crate) fn typed_volume(volume: Volume, system: System) -> String {
    match system {
        System::Metric => number(volume.as_milliliters(), 1),
        System::Us => number(volume.as_fluid_ounces(), 2),
    }
}

/// Returns the sign of the unit in which a volume is typed.
pub(crate) const fn volume_unit(system: System) -> &'static str {
    match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    }
}
