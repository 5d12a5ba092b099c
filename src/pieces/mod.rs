//! What several screens show of a sheep: its ribbon, its timeline, the sheets in which something is noted.
//!
//! Between parts, which know no sheep, and screens, which know no other screen.

mod amend;
mod duty_ribbon;
mod ewe_picker;
mod ewe_sheets;
mod feed_sheet;
mod lamb_row;
mod life_sheets;
mod milk_ribbon;
mod pen_sheets;
mod powder;
mod small_sheets;
mod standing;
mod ten_point_sheet;
mod timeline;
mod top;
mod vet_sheet;
mod weight_field;
mod whose;
mod withheld;

pub(crate) use amend::AmendSheet;
pub(crate) use duty_ribbon::DutyRibbon;
pub(crate) use ewe_picker::{EwePicker, Picked};
pub(crate) use ewe_sheets::{ConditionSheet, EweWeightSheet, MarkSheet, ScanSheet};
pub(crate) use feed_sheet::{FeedSheet, tube};
pub(crate) use lamb_row::LambRow;
pub(crate) use life_sheets::{
    CastrateSheet, DescribeSheet, FosterSheet, LeaveSheet, TakeOnSheet, TreatSheet,
};
pub(crate) use milk_ribbon::milk_ribbon;
pub(crate) use pen_sheets::{PutInSheet, WhichPenSheet};
pub(crate) use powder::PowderToWeaning;
pub(crate) use small_sheets::{
    BellySheet, DeathSheet, ExaminedSheet, PaintSheet, RemarkSheet, TagSheet, VigorSheet,
};
pub(crate) use standing::Standing;
pub(crate) use ten_point_sheet::TenPointSheet;
pub(crate) use timeline::{AnimalTimeline, PenTimeline};
pub(crate) use top::{CameFrom, Top};
pub(crate) use vet_sheet::{FoundSheet, MouthSheet, VetSheet};
pub(crate) use weight_field::{AskPounds, Weighed, WeightField, WeightSheet, asks_once};
pub(crate) use withheld::{Withheld, told_withheld};

use crate::parts::WhyText;
use crate::words::why::Why;

/// Returns the reasons of a figure in the form that the sheet takes.
pub(crate) fn why_text(why: Why) -> WhyText {
    let Why { heading, working, rule, sources, others, caution } = why;
    WhyText { heading, working, rule, sources, others, caution }
}

/// Returns the shape of a duty's state.
pub(crate) const fn row_state(state: yeanling_core::watch::State) -> crate::parts::RowState {
    use crate::parts::RowState;
    use yeanling_core::watch::State;
    match state {
        State::Danger => RowState::Danger,
        State::Late => RowState::Late,
        State::Now => RowState::Now,
        State::Coming => RowState::Coming,
    }
}
