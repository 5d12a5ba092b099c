//! The sheet in which a feed by hand is noted, with whatever volume, milk and way it had.

use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::units::Volume;
use yeanling_core::watch::BeforeMilk;
use yeanling_words::{common, errors, lamb as words, noted};

use super::parts::{save_button, whose};
use crate::block::{Choice, Choices};
use crate::draft::{Draft, Fields};
use crate::milk::{WAYS, before, comes_first, half, milk, milks, tube, typed_volume, way, ways};
use crate::on_keys::{OnKeys, What};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const VOLUME: &str = "fed-volume";
const WAY: &str = "fed-way";
const MILK: &str = "fed-milk";

/// What stands there at first: whom it is about, the volume that lies ready, the milk.
type Ready = (LambId, Option<Volume>, Milk);

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, ready: Ready) -> SheetPage {
    let (lamb, _, stood) = ready;
    let system = view.system();
    let first = first(view, lamb);
    let mut blocks = Blocks::new();
    if let Some(first) = first {
        blocks = blocks
            .caution(words::first(first, system))
            .button(comes_first(lamb, first).filled())
            .text(words::RECORD);
    }
    let mut choices = ways(fields, WAY, Way::Bottle);
    if first.is_some() {
        let place = choices.options.len();
        choices.options.push(Choice::new(words::NURSED, Action::Choose(WAY.into(), place)));
        choices.chosen = fields.chosen(WAY).or(choices.chosen);
    }
    blocks = blocks.choices(WAY, choices);
    if nursed(fields, first) {
        return SheetPage::new(words::FEED_ASK, blocks.button(save(first)))
            .whose(whose(view, Animal::Lamb(lamb)));
    }
    if way(fields, WAY, Way::Bottle) == Way::Tube {
        blocks = blocks.caution(tube().iter().copied());
    }
    let types = VOLUME.into();
    let value = volume(view, fields, ready);
    let on_keys =
        OnKeys { what: What::Volume, types, label: words::VOLUME, value, system, anew: is_ready(fields) };
    let from = view.flock.lamb(lamb).and_then(|lamb| half(view, lamb, milk(fields, MILK, stood)));
    let milk = fold_of_milk(fields, stood);
    blocks = from
        .into_iter()
        .fold(blocks, Blocks::text)
        .then(parts(view, fields, ready))
        .then(on_keys.pad(None, None, Blocks::new().wrong(fields.error(VOLUME))))
        .then(milk)
        .button(save(first));
    SheetPage::new(words::FEED_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// What comes before milk: then the sheet is a record of what it had all the same. The scale alone makes it none.
fn first(view: &View, lamb: LambId) -> Option<BeforeMilk> {
    view.flock.lamb(lamb).and_then(|lamb| before(view, lamb)).and_then(BeforeMilk::before_nursing)
}

/// Says whether it is recorded that it sucked from a ewe.
fn nursed(fields: &Fields, first: Option<BeforeMilk>) -> bool {
    first.is_some() && fields.chosen(WAY).is_some_and(|place| place >= WAYS.len())
}

/// Saves a feed; a record of one that should have waited is never what is done next.
fn save(first: Option<BeforeMilk>) -> Button {
    match first {
        Some(_) => Button::new("save", words::SAVE_RECORD, Action::Save),
        None => save_button(),
    }
}

/// Whether the volume that lies ready still stands: the first key begins another.
fn is_ready(fields: &Fields) -> bool {
    fields.typed(VOLUME).is_none()
}

/// Which milk it was, folded away: it is the one that is next most often.
fn fold_of_milk(fields: &Fields, stood: Milk) -> Blocks {
    let label = words::which_milk(noted::milk(milk(fields, MILK, stood)));
    Blocks::new().fold("fed-milk-fold", label, Blocks::new().choices(MILK, milks(fields, MILK, stood)))
}

/// How much it took of the volume that lies ready, a press each; nothing while something comes before milk.
fn parts(view: &View, fields: &Fields, ready: Ready) -> Blocks {
    let (lamb, planned, stood) = ready;
    let system = view.system();
    let Some(planned) = planned.filter(|_| first(view, lamb).is_none()) else { return Blocks::new() };
    let (milk, way) = (milk(fields, MILK, stood), way(fields, WAY, Way::Bottle));
    let part = |quarters: u8| {
        let took = Volume::from_milliliters(planned.as_milliliters() * f64::from(quarters) / 4.0);
        let took = if quarters == 4 { planned } else { took.offered(system) };
        let fed = Event::Fed { lamb, volume: took, milk, way };
        Choice::new(words::part(quarters), Action::Answer(vec![fed])).note(common::volume(took, system))
    };
    Blocks::new()
        .choices("fed-parts", Choices::new(words::PARTS, (1..=4).map(part).collect(), None).labelled())
}

/// Returns the volume as it is typed, or lies ready. A volume that lies ready asks to be given: none does while
/// something comes before milk.
fn volume(view: &View, fields: &Fields, (lamb, ready, _): Ready) -> String {
    let ready =
        ready.filter(|_| first(view, lamb).is_none()).map(|volume| typed_volume(volume, view.system()));
    fields.text(VOLUME, &ready.unwrap_or_default())
}

/// Saves what was typed.
pub(super) fn save_typed(view: &View, draft: &mut Draft, ready: Ready) -> Vec<Effect> {
    let (fields, system) = (draft.top(), view.system());
    let (lamb, _, stood) = ready;
    if nursed(fields, first(view, lamb)) {
        return draft.save(view, WAY, vec![view.noting(Event::Sucked { lamb })]);
    }
    let volume = match Volume::parse(&volume(view, fields, ready), system) {
        Ok(volume) => volume,
        Err(wrong) => return draft.say_wrong(VOLUME, errors::typed(&wrong, errors::Field::Volume, system)),
    };
    let (milk, way) = (milk(fields, MILK, stood), way(fields, WAY, Way::Bottle));
    draft.save(view, VOLUME, vec![view.noting(Event::Fed { lamb, volume, milk, way })])
}
