//! The sheets that lie over a page: each asks for one thing, or tells why.

pub(crate) mod ewe_picker;

use yeanling_core::book::{Animal, EntryId, EweId, Item, LambId, Milk, PenId};
use yeanling_core::units::Volume;
use yeanling_core::watch::Duty;

use crate::draft::Draft;
use crate::page::SheetPage;
use crate::view::View;
use crate::{Effect, Reason, stores, why};

/// Which sheet.
#[derive(Clone, Debug, PartialEq)]
pub enum Sheet {
    /// Why a figure is what it is.
    Why(Box<Reason>),
    // Of a lamb.
    /// What it weighs.
    Weight(LambId),
    /// How lively it is, in four grades.
    Vigor(LambId),
    /// The same in ten points.
    TenPoint(LambId),
    /// How full its belly is.
    Belly(LambId),
    /// A finger in its mouth.
    Mouth(LambId),
    /// A feed by hand: the volume that lies ready, and which milk.
    Feed(LambId, Option<Volume>, Milk),
    /// How long ago a lamb that was found can have been born.
    Found(LambId),
    /// Who rears it from now on.
    Foster(LambId),
    /// How it was castrated.
    Castrate(LambId),
    // Of a ewe.
    /// Her condition score.
    Condition(EweId),
    /// What she weighs.
    EweWeight(EweId),
    /// What the scan saw.
    Scan(EweId),
    /// A mark of the ram's crayon.
    Mark(EweId),
    /// What is known of her from before.
    Describe(EweId),
    /// Which lamb she takes on.
    TakeOn(EweId),
    // Of any animal.
    /// Until when a duty is put off.
    Later(Box<Duty>),
    /// What the vet said.
    Vet(Animal),
    /// What was found when it was examined.
    Examined(Animal),
    /// A paint mark.
    Paint(Animal),
    /// A remark.
    Remark(Animal),
    /// A tag.
    Tag(Animal),
    /// That it died, and of what.
    Death(Animal),
    /// How it left.
    Leave(Animal),
    /// Which pen it goes into.
    WhichPen(Animal),
    /// A medicine given to one or many.
    Treat(Vec<Animal>),
    // Of anything else.
    /// An earlier entry, to be changed.
    Amend(EntryId),
    /// Who goes into a pen.
    PutIn(PenId),
    /// How much of a thing is there.
    Count(Item),
    /// Colostrum that was frozen.
    Freeze,
}

/// Returns the sheets that lie open, the uppermost last.
pub(crate) fn pages(view: &View, draft: &Draft) -> Vec<SheetPage> {
    let mut pages: Vec<SheetPage> = draft
        .sheets
        .iter()
        .map(|open| {
            let page = match &open.sheet {
                Sheet::Why(reason) => why::sheet(reason, view),
                Sheet::Count(item) => stores::count_sheet(view, &open.fields, *item),
                Sheet::Freeze => stores::freeze_sheet(view, &open.fields),
                Sheet::Weight(_)
                | Sheet::Vigor(_)
                | Sheet::TenPoint(_)
                | Sheet::Belly(_)
                | Sheet::Mouth(_)
                | Sheet::Feed(..)
                | Sheet::Found(_)
                | Sheet::Foster(_)
                | Sheet::Castrate(_)
                | Sheet::Condition(_)
                | Sheet::EweWeight(_)
                | Sheet::Scan(_)
                | Sheet::Mark(_)
                | Sheet::Describe(_)
                | Sheet::TakeOn(_)
                | Sheet::Later(_)
                | Sheet::Vet(_)
                | Sheet::Examined(_)
                | Sheet::Paint(_)
                | Sheet::Remark(_)
                | Sheet::Tag(_)
                | Sheet::Death(_)
                | Sheet::Leave(_)
                | Sheet::WhichPen(_)
                | Sheet::Treat(_)
                | Sheet::Amend(_)
                | Sheet::PutIn(_) => SheetPage::default(),
            };
            SheetPage { opened: open.number, ..page }
        })
        .collect();
    if let (Some(top), Some(refusal)) = (pages.last_mut(), &draft.refused) {
        top.refused = Some(yeanling_words::refusals::refusal(refusal, view.now, view.system()));
    }
    pages
}

/// Saves what was typed on the uppermost sheet.
pub(crate) fn save(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(sheet) = draft.sheets.last().map(|open| open.sheet.clone()) else { return Vec::new() };
    match sheet {
        Sheet::Count(item) => stores::save_count(view, draft, item),
        Sheet::Freeze => stores::save_frozen(view, draft),
        Sheet::Weight(_)
        | Sheet::Vigor(_)
        | Sheet::TenPoint(_)
        | Sheet::Belly(_)
        | Sheet::Mouth(_)
        | Sheet::Feed(..)
        | Sheet::Found(_)
        | Sheet::Foster(_)
        | Sheet::Castrate(_)
        | Sheet::Condition(_)
        | Sheet::EweWeight(_)
        | Sheet::Scan(_)
        | Sheet::Mark(_)
        | Sheet::Describe(_)
        | Sheet::TakeOn(_)
        | Sheet::Later(_)
        | Sheet::Vet(_)
        | Sheet::Examined(_)
        | Sheet::Paint(_)
        | Sheet::Remark(_)
        | Sheet::Tag(_)
        | Sheet::Death(_)
        | Sheet::Leave(_)
        | Sheet::WhichPen(_)
        | Sheet::Treat(_)
        | Sheet::Amend(_)
        | Sheet::PutIn(_)
        // Nothing is typed on these.
        | Sheet::Why(_) => Vec::new(),
    }
}
