//! She is not right, it is not right: what is asked first, what is seen, and then what it may be and what to do.
//!
//! Nothing is guessed from what was not pressed. The answer stands until someone says that the animal is well again; what
//! is seen later is added to it.

mod answer;
mod ask;
mod card;
mod ewe;
mod lamb;
mod place;
mod udder;
mod who;

pub(crate) use ewe::page as ewe_page;
pub(crate) use lamb::{milk_allowed, page as lamb_page};
pub(crate) use udder::{follows as udder_follows, sheet as udder_sheet};
pub(crate) use who::page as who_page;

use yeanling_core::book::{EweId, LambId};
use yeanling_core::terms::UdderHalf;

use crate::Effect;
use crate::draft::Draft;
use crate::view::View;

/// What only these screens know.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Notes what is seen of this ewe.
    Ewe(EweId),
    /// Notes what is seen of this lamb.
    Lamb(LambId),
    /// Notes how both halves of this ewe's udder are, the left first.
    Udder(EweId, UdderHalf, UdderHalf),
}

/// Does what only these screens know.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Ewe(id) => ewe::see(view, draft, id),
        Does::Lamb(id) => lamb::see(view, draft, id),
        Does::Udder(ewe, left, right) => udder::check(view, draft, ewe, (left, right)),
    }
}
