//! One ram: his parents, his groups, his lambs, and all that was noted; what is noted of ewes alone is not offered.

use yeanling_core::book::Animal;
use yeanling_core::flock::{Ewe, Group};
use yeanling_words::common::date;
use yeanling_words::{animals, ewe as ewe_words, life, past as words, season};

use super::kin;
use crate::block::{NoticeKind, Row};
use crate::in_brief::InBrief;
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::{Action, Button, Screen, Sheet, timeline, withdrawal};

/// So many of his lambs are listed, the youngest first.
const MOST_LAMBS: usize = 20;

/// Returns the screen.
pub(super) fn page(view: &View, ram: &Ewe) -> Page {
    let animal = Animal::Ewe(ram.id);
    let mut blocks = Blocks::new();
    if ram.lives() {
        blocks = blocks.then(withdrawal::notice(view, animal));
    } else {
        let said = ram.left.as_ref().map_or_else(|| words::DEAD.to_owned(), life::left);
        blocks = blocks.notice("gone", NoticeKind::Calm, said, []);
    }
    blocks = blocks
        .then(noting(ram))
        .then(kin::parents(view, animal))
        .then(groups(view, ram))
        .then(lambs(view, ram))
        .then(timeline::of_animal(view, animal));
    let born = view.flock.ewe_born(ram.id).map(life::birth_day);
    let about = ewe_words::about(ram.breed.clone(), born, ewe_words::came(&date(ram.came)));
    Page::new(animals::ewe(ram)).under(about).blocks(blocks)
}

/// What can be noted of him: all of it, since it is little.
fn noting(ram: &Ewe) -> Blocks {
    let animal = Animal::Ewe(ram.id);
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let living = [
        asks("treat", life::TREAT, Sheet::Treat(vec![animal])),
        asks("condition", season::CONDITION, Sheet::Condition(ram.id)),
        asks("weigh", season::WEIGH, Sheet::EweWeight(ram.id)),
        asks("remark", ewe_words::REMARK, Sheet::Remark(animal)),
    ];
    let first = living.into_iter().filter(|_| ram.lives());
    let leave = ram.lives().then(|| asks("leave", life::LEAVE, Sheet::Leave(animal)));
    let end = match ram.died {
        Some(_) => asks("examined", life::EXAMINED, Sheet::Examined(animal)),
        None => asks("died", ewe_words::DIED, Sheet::Death(animal)),
    };
    let rest = [
        asks("describe", life::DESCRIBE, Sheet::Describe(ram.id)),
        asks("tag", ewe_words::TAG, Sheet::Tag(animal)),
        asks("paint", life::MARK, Sheet::Paint(animal)),
    ];
    let rest = rest.into_iter().chain(leave).chain([end]);
    let folded = Blocks::new().fold("all-notes", ewe_words::ALL_NOTES, Blocks::new().buttons(2, rest));
    let first = if ram.lives() { Blocks::new().buttons(2, first) } else { Blocks::new() };
    Blocks::new().section("note", words::NOTE, first.then(folded))
}

/// The groups that he was in with, by his tag or name, the latest first.
fn groups(view: &View, ram: &Ewe) -> Blocks {
    let his = |group: &&Group| {
        let mut labels = group.rams.iter().filter_map(|stay| stay.label.as_deref());
        labels.any(|label| view.flock.ram_called(label).is_some_and(|one| one.id == ram.id))
    };
    let mut groups: Vec<&Group> = view.flock.groups.values().filter(his).collect();
    groups.reverse();
    let rows = groups.into_iter().map(|one| {
        let row = Row::new(one.name.clone()).kind(animals::ewes(one.members.len()));
        (key_of("group", one.id.entry()), row.to(Screen::Group(one.id)))
    });
    Blocks::new().section("groups", words::HIS_GROUPS, Blocks::new().rows("group-rows", rows))
}

/// The lambs that are said to be his, the youngest first.
fn lambs(view: &View, ram: &Ewe) -> Blocks {
    let lambs = view.flock.sired_by(ram.id);
    if lambs.is_empty() {
        return Blocks::new().section("lambs", words::OFFSPRING, Blocks::new().text(words::NO_OFFSPRING));
    }
    let brief = InBrief::of(view);
    let rows = lambs.iter().rev().take(MOST_LAMBS).map(|lamb| brief.lamb_row(lamb.id));
    let mut blocks = Blocks::new().text(words::lambs(lambs.len())).rows("lamb-rows", rows);
    if lambs.len() > MOST_LAMBS {
        blocks = blocks.text(words::more_lambs(lambs.len() - MOST_LAMBS));
    }
    Blocks::new().section("lambs", words::OFFSPRING, blocks)
}
