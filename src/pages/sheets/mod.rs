//! The sheets that lie over a page: each asks for one thing, or tells why.
//!
//! A sheet of the Watch stands beside its rows, not in one: rows move, and what moves in a page is closed.

mod amend;
mod describe;
mod ewe_in_field;
pub(crate) mod ewe_picker;
mod feed;
mod few_words;
mod foster;
mod later;
mod leave;
mod measures;
mod parts;
mod pen;
mod seen;
mod ten_point;
mod treat;
mod vet;
mod vigor;
mod weight;

use yeanling_core::book::{Animal, EntryId, EweId, GroupId, Item, LambId, Milk, PenId, PlannedJob};
use yeanling_core::units::Volume;
use yeanling_core::watch::Duty;

pub(crate) use foster::is_alone;
pub(crate) use parts::whose;
pub(crate) use seen::found_born;

use few_words::Of;
pub(crate) use treat::{Does as TreatDoes, does as does_treat};

use crate::draft::Draft;
use crate::page::SheetPage;
use crate::view::View;
use crate::{
    Effect, Reason, ewe, group, illness, lamb, lambing, medicines, pens, season, stores, weighing, why,
};

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
    /// What it ate of solid feed.
    Solids(LambId),
    /// Which ewe is its dam, where it was given to the wrong one.
    Dam(LambId),
    // Of a ewe.
    /// Her condition score.
    Condition(EweId),
    /// What she weighs.
    EweWeight(EweId),
    /// What the scan saw.
    Scan(EweId),
    /// A mark of the ram's crayon.
    Mark(EweId),
    /// How both halves of her udder are.
    Udder(EweId),
    /// What is known of her from before.
    Describe(EweId),
    /// Which lamb she takes on.
    TakeOn(EweId),
    /// Which other record is the same ewe.
    SameEwe(EweId),
    // Of any animal.
    /// Until when a duty is put off.
    Later(Box<Duty>),
    /// What the vet said.
    Vet(Animal),
    /// What is measured of an animal that is not right.
    Measures(Animal),
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
    /// Who was treated.
    Who,
    /// A medicine given to one or many.
    Treat(Vec<Animal>),
    /// The booster of a group's ewes.
    Boost(GroupId),
    // Of anything else.
    /// An earlier entry, to be changed.
    Amend(EntryId),
    /// Who goes into a pen.
    PutIn(PenId),
    /// How much of a thing is there.
    Count(Item),
    /// How much of each thing of the kit is there.
    CountAll,
    /// Colostrum that was frozen.
    Freeze,
    /// A new pen.
    NewPen,
    /// Another name for a pen.
    PenName(PenId),
    /// A new group.
    NewGroup,
    /// Many ewes for a group.
    AddEwes(GroupId),
    /// Until when the next step of a group's extra feed waits.
    FeedLater(GroupId),
    /// Crayon marks of many of a group.
    Marks(GroupId),
    /// Which crayon is on the ram.
    Crayon(GroupId),
    /// When the ram went in.
    RamIn(GroupId),
    /// When he came out.
    RamOut(GroupId),
    /// That the ram stays, and until when.
    RamStays(GroupId),
    /// What is planned for a group, or for the flock.
    Plan(Option<GroupId>),
    /// On which day a planned thing was, or will be.
    PlanDay(PlannedJob, Option<GroupId>),
    /// Whether all lambs that are old enough are weaned.
    WeanAll,
    // Of a lambing.
    /// What shows of the lamb.
    Part(EweId),
    /// What a clean hand found.
    Hand(EweId),
    /// Whether that was all, when a scan saw more than this litter.
    IsThatAll(LambId),
    /// Which ewe is the dam of this litter.
    GiveDam(LambId),
}

/// Says whether a sheet lies open on which a ewe is picked: the page under it lets none be picked meanwhile, since two pickers
/// would be one to the draft and to the phone.
pub(crate) fn picks_a_ewe(draft: &Draft) -> bool {
    let of_a_lamb = |sheet: &Sheet| matches!(sheet, Sheet::Foster(_) | Sheet::Dam(_) | Sheet::GiveDam(_));
    let of_others = |sheet: &Sheet| matches!(sheet, Sheet::SameEwe(_) | Sheet::PutIn(_));
    draft.sheets.iter().any(|open| of_a_lamb(&open.sheet) || of_others(&open.sheet))
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
                Sheet::CountAll => stores::count_all_sheet(view, &open.fields),
                Sheet::Freeze => stores::freeze_sheet(view, &open.fields),
                Sheet::Solids(_) => lamb::solids_sheet(view, &open.fields),
                Sheet::Dam(id) => lamb::dam_sheet(view, &open.fields, *id),
                Sheet::SameEwe(id) => ewe::same_sheet(view, &open.fields, *id),
                Sheet::Part(ewe) => lambing::part_sheet(*ewe),
                Sheet::Hand(ewe) => lambing::hand_sheet(*ewe),
                Sheet::IsThatAll(lamb) => lambing::is_that_all_sheet(view, *lamb),
                Sheet::GiveDam(lamb) => lambing::give_dam_sheet(view, &open.fields, *lamb),
                Sheet::NewPen => pens::new_sheet(view, &open.fields),
                Sheet::PenName(_) => pens::name_sheet(&open.fields),
                Sheet::NewGroup => season::group_sheet(&open.fields),
                Sheet::AddEwes(id) => group::add_sheet(view, &open.fields, *id),
                Sheet::RamIn(id) => group::ram_sheet(view, &open.fields, *id, true),
                Sheet::FeedLater(group) => later::feed(view, *group),
                Sheet::Marks(id) => group::marks_sheet(view, &open.fields, *id),
                Sheet::Crayon(id) => group::crayon_sheet(view, *id),
                Sheet::RamStays(_) => group::stays_sheet(&open.fields),
                Sheet::Plan(group) => season::plan_sheet(view, &open.fields, *group),
                Sheet::PlanDay(what, group) => season::day_sheet(view, &open.fields, *what, *group),
                Sheet::WeanAll => weighing::wean_sheet(view),
                Sheet::RamOut(id) => group::ram_sheet(view, &open.fields, *id, false),
                Sheet::Weight(lamb) => weight::sheet(view, &open.fields, *lamb),
                Sheet::Vigor(lamb) => vigor::sheet(view, &open.fields, *lamb),
                Sheet::TenPoint(lamb) => ten_point::sheet(view, &open.fields, *lamb),
                Sheet::Belly(lamb) => seen::belly(view, *lamb),
                Sheet::Mouth(lamb) => seen::mouth(view, &open.fields, *lamb),
                Sheet::Feed(lamb, volume, milk) => feed::sheet(view, &open.fields, (*lamb, *volume, *milk)),
                Sheet::Found(lamb) => seen::found(view, *lamb),
                Sheet::Foster(lamb) => foster::foster(view, &open.fields, *lamb),
                Sheet::Castrate(lamb) => seen::castrate(view, *lamb),
                Sheet::Condition(ewe) => ewe_in_field::condition(view, &open.fields, *ewe),
                Sheet::EweWeight(ewe) => ewe_in_field::ewe_weight(view, &open.fields, *ewe),
                Sheet::Scan(ewe) => ewe_in_field::scan(view, &open.fields, *ewe),
                Sheet::Mark(ewe) => ewe_in_field::mark(view, &open.fields, *ewe),
                Sheet::Udder(ewe) => illness::udder_sheet(view, &open.fields, *ewe),
                Sheet::Describe(ewe) => describe::sheet(view, &open.fields, *ewe),
                Sheet::TakeOn(ewe) => foster::take_on(view, &open.fields, *ewe),
                Sheet::Later(duty) => later::sheet(view, duty),
                Sheet::Vet(animal) => vet::sheet(view, &open.fields, *animal),
                Sheet::Measures(animal) => measures::sheet(view, &open.fields, *animal),
                Sheet::Examined(animal) => few_words::sheet(view, &open.fields, Of::Finding, *animal),
                Sheet::Paint(animal) => few_words::sheet(view, &open.fields, Of::Paint, *animal),
                Sheet::Remark(animal) => few_words::sheet(view, &open.fields, Of::Remark, *animal),
                Sheet::Tag(animal) => few_words::sheet(view, &open.fields, Of::Tag, *animal),
                Sheet::Death(animal) => seen::death(view, *animal),
                Sheet::Leave(animal) => leave::sheet(view, &open.fields, *animal),
                Sheet::WhichPen(animal) => pen::which(view, *animal),
                Sheet::Amend(entry) => amend::sheet(view, &open.fields, *entry),
                Sheet::PutIn(pen) => pen::put_in(view, &open.fields, *pen),
                Sheet::Who => medicines::who_sheet(view),
                Sheet::Treat(of) => treat::sheet(view, &open.fields, of),
                Sheet::Boost(group) => treat::boost(view, &open.fields, *group),
            };
            SheetPage { opened: open.number, ..page }
        })
        .collect();
    if let (Some(top), Some(rejection)) = (pages.last_mut(), &draft.refused) {
        top.refused = Some(yeanling_words::rejections::rejection(rejection, view.now, view.system()));
    }
    pages
}

/// Saves what was typed on the uppermost sheet.
pub(crate) fn save(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(sheet) = draft.sheets.last().map(|open| open.sheet.clone()) else { return Vec::new() };
    match sheet {
        Sheet::Count(item) => stores::save_count(view, draft, item),
        Sheet::CountAll => stores::save_count_all(view, draft),
        Sheet::Freeze => stores::save_frozen(view, draft),
        Sheet::Solids(id) => lamb::save_solids(view, draft, id),
        Sheet::Dam(id) => lamb::save_dam(view, draft, id),
        Sheet::NewPen => pens::save_new(view, draft),
        Sheet::PenName(pen) => pens::save_name(view, draft, pen),
        Sheet::NewGroup => season::save_group(view, draft),
        Sheet::AddEwes(id) => group::save_ewes(view, draft, id),
        Sheet::Marks(id) => group::save_marks(view, draft, id),
        Sheet::RamIn(id) => group::save_ram(view, draft, id, true),
        Sheet::RamOut(id) => group::save_ram(view, draft, id, false),
        Sheet::RamStays(id) => group::save_stays(view, draft, id),
        Sheet::Plan(group) => season::save_plan(view, draft, group),
        Sheet::PlanDay(what, group) => season::save_day(view, draft, what, group),
        Sheet::Weight(lamb) => weight::save(view, draft, lamb),
        Sheet::Vigor(lamb) | Sheet::TenPoint(lamb) => ten_point::save(view, draft, lamb),
        Sheet::Feed(lamb, volume, milk) => feed::save_typed(view, draft, (lamb, volume, milk)),
        Sheet::Condition(ewe) => ewe_in_field::save_condition(view, draft, ewe),
        Sheet::EweWeight(ewe) => ewe_in_field::save_ewe_weight(view, draft, ewe),
        Sheet::Scan(ewe) => ewe_in_field::save_scan(view, draft, ewe),
        Sheet::Mark(ewe) => ewe_in_field::save_mark(view, draft, ewe),
        Sheet::Describe(ewe) => describe::save(view, draft, ewe),
        Sheet::Vet(animal) => vet::save(view, draft, animal),
        Sheet::Measures(animal) => measures::save(view, draft, animal),
        Sheet::Examined(animal) => few_words::save(view, draft, Of::Finding, animal),
        Sheet::Paint(animal) => few_words::save(view, draft, Of::Paint, animal),
        Sheet::Remark(animal) => few_words::save(view, draft, Of::Remark, animal),
        Sheet::Tag(animal) => few_words::save(view, draft, Of::Tag, animal),
        Sheet::Leave(animal) => leave::save(view, draft, animal),
        Sheet::Amend(entry) => amend::save(view, draft, entry),
        Sheet::Treat(of) => treat::save(view, draft, &of),
        Sheet::Boost(group) => treat::save_boost(view, draft, group),
        // Nothing is typed on these: a press answers.
        Sheet::Why(_)
        | Sheet::WeanAll
        | Sheet::Belly(_)
        | Sheet::Mouth(_)
        | Sheet::Found(_)
        | Sheet::Foster(_)
        | Sheet::Castrate(_)
        | Sheet::TakeOn(_)
        | Sheet::Udder(_)
        | Sheet::Later(_)
        | Sheet::FeedLater(_)
        | Sheet::Crayon(_)
        | Sheet::Death(_)
        | Sheet::WhichPen(_)
        | Sheet::PutIn(_)
        | Sheet::Who
        | Sheet::SameEwe(_)
        | Sheet::Part(_)
        | Sheet::Hand(_)
        | Sheet::IsThatAll(_)
        | Sheet::GiveDam(_) => Vec::new(),
    }
}
