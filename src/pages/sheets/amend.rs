//! The sheet in which an earlier entry is changed, in time and in content. The first reading stays in the book.
//!
//! Each fact says once what of it can be changed; asking for it and reading what was typed are one and the same, so that
//! nothing typed is dropped in silence.

mod form;

use yeanling_core::book::{EntryId, Event, Life, Past, VigorScale};
use yeanling_core::flock::Line;
use yeanling_core::units::Moment;
use yeanling_words::common::{field_time, read_field_time};
use yeanling_words::{frame, lamb as words};

use form::Form;

use super::parts::save_button;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect, Sheet};

const TIME: &str = "amend-time";

fn line<'a>(view: &View<'a>, entry: EntryId) -> Option<&'a Line> {
    view.flock.lines.iter().find(|line| line.entry == entry)
}

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, entry: EntryId) -> SheetPage {
    let Some(line) = line(view, entry) else {
        return SheetPage::new(frame::NOT_HERE, Blocks::new().text(frame::GONE));
    };
    let time = fields.text(TIME, &field_time(line.at));
    let time = Field::new(words::WHEN, FieldKind::Moment, time).error(fields.error(TIME));
    let mut form = Form::new(view, fields);
    go_over(&mut line.event.clone(), &mut form);
    let blocks = Blocks::new().field(TIME, time).then(form.asks).then(its_dam(view, line));
    let blocks = blocks.button(save_button());
    SheetPage::new(words::CHANGE, blocks)
}

/// Of a birth: the way to its dam, which more than this entry may go along with.
fn its_dam(view: &View, line: &Line) -> Blocks {
    let lamb = line.entry.as_lamb();
    let Some(known) = view.flock.lamb(lamb).filter(|_| matches!(line.event, Event::LambBorn { .. })) else {
        return Blocks::new();
    };
    let (label, sheet) = match known.dam {
        Some(_) => (words::WRONG_EWE, Sheet::Dam(lamb)),
        None => (words::GIVE_DAM, Sheet::GiveDam(lamb)),
    };
    Blocks::new().button(Button::new("its-dam", label, Action::Ask(sheet)))
}

/// Saves what was changed.
pub(super) fn save(view: &View, draft: &mut Draft, entry: EntryId) -> Vec<Effect> {
    let Some(line) = line(view, entry) else {
        draft.close();
        return Vec::new();
    };
    draft.top_mut().all_right();
    let Some(at) = time(view, draft.top(), line.at) else { return draft.say_wrong(TIME, words::NO_TIME) };
    let mut event = line.event.clone();
    let mut form = Form::new(view, draft.top());
    go_over(&mut event, &mut form);
    if form.wrong.is_empty() {
        let amended = Event::Amended { entry, event: Box::new(event), at };
        return draft.save(view, TIME, vec![view.noting(amended)]);
    }
    for (key, said) in form.wrong {
        draft.top_mut().wrong(key, said);
    }
    Vec::new()
}

/// Returns when it was: what was not typed anew stays to the second.
fn time(view: &View, fields: &Fields, was: Moment) -> Option<Moment> {
    let stood = field_time(was);
    let typed = fields.text(TIME, &stood);
    if typed == stood {
        return Some(was);
    }
    read_field_time(&typed).map(|local| view.at_local_beside(local, was))
}

/// Goes over what can be changed about a fact beside its time.
fn go_over(event: &mut Event, form: &mut Form) {
    match event {
        Event::Weighed { mass, .. } | Event::EweWeighed { mass, .. } | Event::FeedSet { mass, .. } => {
            form.mass(mass);
        }
        Event::Fed { volume, milk, way, .. } => form.fed(volume, way, milk),
        Event::TemperatureTaken { temperature, .. } => form.temperature(temperature),
        Event::LambBorn { sex, alive, .. } => form.born(sex, alive),
        Event::BirthEase { ease, .. } => form.ease(ease),
        Event::VigorScored { scale: VigorScale::FourGrade, score, .. } => form.vigor(score),
        Event::BellyFelt { belly, .. } => form.belly(belly),
        Event::Died { cause, .. } => form.cause(cause),
        Event::Conditioned { score, .. } => form.condition(score),
        Event::Scanned { lambs, days, .. } => form.scan(lambs, days),
        Event::Life(Life::Treated { treatment, .. } | Life::Boosted { treatment, .. }) => {
            form.withdrawal(&mut treatment.meat_days, &mut treatment.milk_days);
        }
        Event::Life(Life::SoldFor { price, .. }) => form.price(price),
        Event::Life(Life::Culled { why, .. }) => form.culled(why),
        Event::StoreIn { item, amount }
        | Event::StoreUsed { item, amount }
        | Event::StoreThrown { item, amount }
        | Event::StoreCounted { item, amount } => form.stock(*item, amount),
        Event::Remarked { text, .. } | Event::Life(Life::Examined { finding: text, .. }) => {
            form.words(words::REMARK_LABEL, FieldKind::Long, text);
        }
        Event::Life(Life::Marked { mark: text, .. })
        | Event::Past(Past::Called { name: text, .. })
        | Event::Tagged { tag: text, .. }
        | Event::GroupFormed { name: text }
        | Event::GroupNamed { name: text, .. }
        | Event::CrayonChanged { color: text, .. }
        | Event::CrayonMark { color: text, .. }
        | Event::PenMade { name: text, .. }
        | Event::PenNamed { name: text, .. } => form.words(words::TAG_LABEL, FieldKind::Text, text),
        Event::EweCame { tag: text } | Event::RamIn { ram: text, .. } => form.words_or_none(text),
        // The time alone.
        Event::DamGiven { .. }
        | Event::VigorScored { scale: VigorScale::TenPoint | VigorScale::EightPoint, .. }
        | Event::SignSeen { .. }
        | Event::WaterBagSeen { .. }
        | Event::StrainingSeen { .. }
        | Event::PartShowing { .. }
        | Event::HandChecked { .. }
        | Event::HelpBegun { .. }
        | Event::VetCalled { .. }
        | Event::LookedAt { .. }
        | Event::NotLambing { .. }
        | Event::AfterbirthPassed { .. }
        | Event::Accepted { .. }
        | Event::SwallowTried { .. }
        | Event::Warmed { .. }
        | Event::SolidsEaten { .. }
        | Event::Weaned { .. }
        | Event::Ringed { .. }
        | Event::PenCleaned { .. }
        | Event::PenClosed { .. }
        | Event::PutInPen { .. }
        | Event::LetOut { .. }
        | Event::PutOff { .. }
        | Event::GroupParted { .. }
        | Event::JoinedGroup { .. }
        | Event::LeftGroup { .. }
        | Event::RamOut { .. }
        | Event::BoosterGiven { .. }
        | Event::ColostrumFrozen { .. }
        | Event::ColostrumThawed { .. }
        | Event::ColostrumThrown { .. }
        | Event::Stood { .. }
        | Event::Sucked { .. }
        | Event::NavelDipped { .. }
        | Event::AllBorn { .. }
        | Event::Life(
            Life::Fostered { .. }
            | Life::KeptAsEwe { .. }
            | Life::Described { .. }
            | Life::Castrated { .. }
            | Life::Went { .. },
        )
        | Event::Care(_)
        | Event::Illness(_)
        | Event::Planning(_)
        | Event::Past(
            Past::IsRam { .. }
            | Past::Sired { .. }
            | Past::DamOf { .. }
            | Past::BornAs { .. }
            | Past::RearedAs { .. }
            | Past::IsWether { .. },
        )
        | Event::Chose(_)
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Deleted { .. }
        | Event::Restored { .. }
        | Event::Unread(_) => {}
    }
}
