//! The publications that more than one figure rests on, each written out once.

use crate::source::{HowKnown, Source};

/// Writes a source whose figure was read in it.
pub(super) const fn seen(
    authors: &'static str,
    title: &'static str,
    year: Option<u16>,
    place: &'static str,
) -> Source {
    Source { authors, title, year, place, known: HowKnown::Seen }
}

/// Writes a choice of our own; the title says what was chosen.
pub(super) const fn ours(title: &'static str) -> Source {
    Source { authors: "", title, year: None, place: "", known: HowKnown::Ours }
}

/// Writes a rule of the trade that nobody signs.
pub(super) const fn common(title: &'static str) -> Source {
    Source { authors: "", title, year: None, place: "", known: HowKnown::CommonPractice }
}

/// Writes a figure that was recalled.
pub(super) const fn memory(title: &'static str) -> Source {
    Source { authors: "", title, year: None, place: "", known: HowKnown::Memory }
}

pub(super) const AHDB: Source = seen("AHDB", "Watery mouth in lambs", None, "");
pub(super) const BOND: Source = seen("Bond", "", Some(2020), "Vet Record group");
pub(super) const MELLOR_MURRAY: Source = seen("Mellor & Murray", "", Some(1986), "Veterinary Record");
pub(super) const RUMA: Source = seen("RUMA", "Colostrum campaign", None, "");
pub(super) const VET_TIMES: Source = seen("Vet Times", "", Some(2018), "17 December");
pub(super) const IRISH_FARMERS: Source = seen("Irish Farmers Journal", "", None, "");
pub(super) const MERCHANT: Source = seen("Agricultural merchant", "Colostrum by weight", None, "");
pub(super) const VET_SUPPLIER: Source = seen("Vet supplier", "Feeding table, 20% dry matter mix", None, "");
pub(super) const HANRAHAN_KEADY: Source = seen("Hanrahan & Keady", "", Some(2013), "");
pub(super) const VET_NEWSLETTER: Source = seen("Veterinary newsletter", "", Some(2017), "");
pub(super) const UK_SHEET: Source = seen("UK hypothermia sheet", "", None, "");
pub(super) const HENDERSON: Source = seen("Henderson", "", Some(1996), "");
pub(super) const HENDERSON_97: Source = seen("Henderson", "", Some(1997), "");
pub(super) const EALES_82: Source = seen("Eales et al.", "", Some(1982), "Veterinary Record 110:121");
pub(super) const EALES_84: Source = seen("Eales et al.", "", Some(1984), "Veterinary Record 114:469");
pub(super) const WRAPPED: Source =
    seen("Trial of 19 lambs", "Wrapped lambs of 35 °C gained 0.21 °C a minute, under a lamp 0.22", None, "");
pub(super) const US_EXTENSION: Source = seen("US extension", "", None, "");
pub(super) const FEED_MAKER: Source =
    seen("Feed maker", "200 g made up to 1 liter, water below 45 °C", None, "");
