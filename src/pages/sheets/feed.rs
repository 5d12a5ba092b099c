//! The sheet in which a feed by hand is noted, with whatever volume, milk and way it had.

use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::units::Volume;
use yeanling_core::watch::hold_milk;
use yeanling_words::{errors, lamb as words};

use super::parts::{save_button, whose};
use crate::Effect;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::milk::{milk, milks, tube, typed_volume, volume_unit, way, ways};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

const VOLUME: &str = "fed-volume";
const WAY: &str = "fed-way";
const MILK: &str = "fed-milk";

/// What stands there at first: whom it is about, the volume that lies ready, the milk.
type Ready = (LambId, Option<Volume>, Milk);

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, ready: Ready) -> SheetPage {
    let (lamb, _, stood) = ready;
    let system = view.system();
    let hold = view.flock.lamb(lamb).and_then(hold_milk);
    let volume = Field::new(words::VOLUME, FieldKind::Decimal, volume(view, fields, ready))
        .error(fields.error(VOLUME))
        .unit(volume_unit(system));
    let mut blocks = Blocks::new();
    if let Some(hold) = hold {
        blocks = blocks.caution(words::hold(hold, system));
    }
    blocks = blocks
        .field(VOLUME, volume)
        .choices(WAY, ways(fields, WAY, Way::Bottle))
        .choices(MILK, milks(fields, MILK, stood));
    if way(fields, WAY, Way::Bottle) == Way::Tube {
        blocks = blocks.caution(tube().iter().copied());
    }
    SheetPage::new(words::FEED_ASK, blocks.button(save_button())).whose(whose(view, Animal::Lamb(lamb)))
}

/// Returns the volume as it is typed, or lies ready. A volume that lies ready asks to be given: none does while the lamb must
/// not have any.
fn volume(view: &View, fields: &Fields, (lamb, ready, _): Ready) -> String {
    let held = view.flock.lamb(lamb).and_then(hold_milk).is_some();
    let ready = ready.filter(|_| !held).map(|volume| typed_volume(volume, view.system()));
    fields.text(VOLUME, &ready.unwrap_or_default())
}

/// Saves what was typed.
pub(super) fn save(view: &View, draft: &mut Draft, ready: Ready) -> Vec<Effect> {
    let (fields, system) = (draft.top(), view.system());
    let (lamb, _, stood) = ready;
    let volume = match Volume::parse(&volume(view, fields, ready), system) {
        Ok(volume) => volume,
        Err(wrong) => return draft.say_wrong(VOLUME, errors::typed(&wrong, errors::Field::Volume, system)),
    };
    let (milk, way) = (milk(fields, MILK, stood), way(fields, WAY, Way::Bottle));
    draft.save(view, VOLUME, vec![view.noting(Event::Fed { lamb, volume, milk, way })])
}
