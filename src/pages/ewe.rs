//! One ewe: what is due for her and what fits the day, her record, her litters, and all that was noted.

mod chart;
mod due;
mod fits;
mod kin;
mod ram;

use yeanling_core::book::{Animal, EweId};
use yeanling_core::flock::{Ewe, Lamb};
use yeanling_core::seasons::{kept_of, marks, record, sire_of};
use yeanling_words::common::{date, day_and_clock};
use yeanling_words::{animals, cull_rules, ewe as words, frame, life, pens, rams, season};

use crate::block::NoticeKind;
use crate::draft::Fields;
use crate::in_brief::InBrief;
use crate::page::{Blocks, Page, SheetPage, why};
use crate::sheets::ewe_picker::{self, Picker, Then};
use crate::view::View;
use crate::{Action, Button, Reason, Screen, due_now, timeline, withdrawal};

/// Returns the screen; who was found to be another is shown as that one.
pub(crate) fn page(view: &View, id: EweId) -> Page {
    let (to, name) = view.back(Screen::Ewe(id));
    if let Some(found) = view.flock.ram(id) {
        return ram::page(view, found).back(to, name);
    }
    let Some(ewe) = view.flock.ewe(id) else {
        return Page::new(frame::NOT_HERE).back(to, name).blocks(Blocks::new().gone());
    };
    let mut blocks = Blocks::new();
    if !ewe.lives() {
        let said = ewe.left.as_ref().map_or_else(|| words::DEAD.to_owned(), life::left);
        let then = ewe.left.as_ref().and_then(|left| ewe.weights.iter().rev().find(|one| one.at <= left.at));
        let gone = view.flock.gone(Animal::Ewe(ewe.id));
        let more = life::gone_more(&gone, then.map(|weight| weight.mass), view.system());
        blocks = blocks.notice("gone", NoticeKind::Calm, said, []).text(more);
    }
    if ewe.lives() {
        blocks = blocks.then(withdrawal::notice(view, Animal::Ewe(ewe.id)));
    }
    if ewe.lives() {
        blocks = blocks.then(due_now::blocks(view, Animal::Ewe(ewe.id)));
        blocks = blocks.then(crate::illness::udder_follows(view, ewe));
    }
    if let Some(odd) = odd_birth(view, ewe) {
        blocks = blocks.notice("odd", NoticeKind::Calm, odd, []);
    }
    if ewe.lives() {
        blocks = blocks.then(due::blocks(view, ewe.id));
    }
    blocks = blocks
        .then(fits::blocks(view, ewe))
        .then(kin::parents(view, Animal::Ewe(ewe.id)))
        .section("her-record", cull_rules::RECORD, her_record(view, ewe.id))
        .then(chart::of(view, ewe.id))
        .then(litters(view, ewe.id))
        .then(fostered_on(view, ewe.id));
    if let Some(lamb) = ewe.was {
        blocks = blocks.button(Button::new("was", life::WAS, Action::Go(Screen::Lamb(lamb))));
    }
    let blocks = blocks.then(timeline::of_animal(view, Animal::Ewe(ewe.id)));
    let page = Page::new(animals::ewe(ewe)).back(to, name).under(about(view, ewe)).blocks(blocks);
    if ewe.lives() { page.thumb(fits::thumb(view, ewe)) } else { page }
}

/// Returns what she is, where, and since when she is in the book.
fn about(view: &View, ewe: &Ewe) -> String {
    let born = view.flock.ewe_born(ewe.id).map(life::birth_day);
    let came = words::about(ewe.breed.clone(), born, words::came(&date(ewe.came)));
    let pen = view.flock.pen_of(Animal::Ewe(ewe.id));
    let pen = pen.and_then(|(pen, since)| Some((view.flock.pens.get(&pen)?, since)));
    match pen {
        Some((pen, since)) => words::in_pen(&pens::pen(pen), &day_and_clock(since, view.now), &came),
        None => came,
    }
}

/// Says that her latest lambing came at a time at which no ram of hers can have been its sire.
fn odd_birth(view: &View, ewe: &Ewe) -> Option<String> {
    let began = view.flock.litters_of(ewe.id).first()?.began;
    view.flock.odd_birth(ewe.id, began).map(|odd| season::odd_birth(&odd))
}

/// Returns her record over all her years; nothing before her first lambing.
fn her_record(view: &View, id: EweId) -> Blocks {
    let known = record(view.flock, id, view.now).filter(|known| known.litters > 0 || known.barren > 0);
    let Some(known) = known else { return Blocks::new() };
    let met = marks(&known, &view.settings().cull_rules)
        .into_iter()
        .map(|mark| cull_rules::meets(mark, view.system()));
    let lines = cull_rules::record(&known, view.system()).into_iter().chain(met);
    lines.fold(Blocks::new(), Blocks::text).remark("", [why(cull_rules::RECORD, Reason::Record)])
}

/// Returns her litters, the latest first.
fn litters(view: &View, id: EweId) -> Blocks {
    let litters = view.flock.litters_of(id);
    if litters.is_empty() {
        return Blocks::new().section("lambs", words::LAMBS, Blocks::new().text(words::NO_LAMBS));
    }
    let brief = InBrief::of(view);
    litters.into_iter().fold(Blocks::new(), |blocks, litter| {
        let title = words::litter(&day_and_clock(litter.began, view.now), litter.lambs.len());
        let lambs = litter.lambs.iter().map(|lamb| brief.lamb_row(*lamb));
        let key = format!("litter-{}", litter.id);
        let sire = sire_of(view.flock, litter).map(|sire| rams::sired_by(view.flock, &sire));
        let rows = Blocks::new().rows(format!("{key}-lambs"), lambs);
        let rows = sire.into_iter().fold(rows, Blocks::small);
        let kept = kept_of(view.flock, litter).into_iter().map(|(_, ewe)| {
            let name = words::kept(&animals::ewe_of(view.flock, ewe));
            Button::new(format!("kept-{ewe}"), name, Action::Go(Screen::Ewe(ewe))).small()
        });
        let rows = kept.fold(rows, Blocks::button);
        blocks.section(key, title, rows)
    })
}

/// Returns the lambs of others that she rears; nothing when there are none.
fn fostered_on(view: &View, id: EweId) -> Blocks {
    let of_others = |lamb: &&Lamb| lamb.dam != Some(id);
    let lambs = view.flock.lambs_at_foot(id).into_iter().filter(of_others);
    let brief = InBrief::of(view);
    let rows = Blocks::new().rows("fostered-lambs", lambs.map(|lamb| brief.lamb_row(lamb.id)));
    Blocks::new().section("fostered-on", life::FOSTERED_ON, rows)
}

/// Returns the sheet that asks which other record is this ewe.
pub(crate) fn same_sheet(view: &View, fields: &Fields, id: EweId) -> SheetPage {
    let picker = Picker { without: Some(id), ..Picker::default() };
    let blocks = ewe_picker::blocks(view, fields, picker, |picked| Then::IsAlso(id).picked(picked));
    SheetPage::new(words::SAME_ASK, blocks)
}
