//! The sheet in which a feed by hand is noted, with whatever volume, milk and way it had.

use yeanling_core::book::{Animal, Event, LambId, Milk, Way};
use yeanling_core::units::Volume;
use yeanling_core::watch::{BeforeMilk, may_be_tubed};
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
        return SheetPage::new(words::FEED_ASK, blocks.button(record()))
            .whose(whose(view, Animal::Lamb(lamb)));
    }
    if way(fields, WAY, Way::Bottle) == Way::Tube {
        blocks = blocks.caution(tube().iter().copied());
        let asked = Asked::of(view, fields, lamb);
        if first.is_none() && asked != Asked::Able {
            blocks = blocks.then(asked.blocks(fields, lamb));
            if asked != Asked::Record {
                return SheetPage::new(words::FEED_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)));
            }
        }
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
        .button(if records(view, fields, lamb) { record() } else { save_button() });
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

/// Saves a record of a feed that should have waited: never what is done next.
fn record() -> Button {
    Button::new("save", words::SAVE_RECORD, Action::Save)
}

/// Says whether what is saved is a record of what it had, and nothing to be given.
fn records(view: &View, fields: &Fields, lamb: LambId) -> bool {
    let by_tube = way(fields, WAY, Way::Bottle) == Way::Tube;
    first(view, lamb).is_some() || by_tube && Asked::of(view, fields, lamb) == Asked::Record
}

const HEAD: &str = "tube-head";
const SWALLOW: &str = "tube-swallow";
const UNCHECKED: &str = "tube-unchecked";

/// What is known, before a tube goes in, of its head and its swallow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Asked {
    /// It does both, as was just answered, or noted a short while ago.
    Able,
    /// It does not.
    Unable,
    /// Not both are answered.
    Open,
    /// It was given without asking, and is recorded so.
    Record,
}

impl Asked {
    fn of(view: &View, fields: &Fields, lamb: LambId) -> Self {
        let answers = [HEAD, SWALLOW].map(|key| fields.chosen(key));
        let noted = view.flock.lamb(lamb).is_some_and(|lamb| may_be_tubed(lamb, view.now));
        if answers.contains(&Some(1)) {
            Self::Unable
        } else if noted || answers == [Some(0); 2] {
            Self::Able
        } else if fields.chosen(UNCHECKED).is_some() {
            Self::Record
        } else {
            Self::Open
        }
    }

    /// Both questions, and the way to each answer.
    fn blocks(self, fields: &Fields, lamb: LambId) -> Blocks {
        if self == Self::Record {
            return Blocks::new().text(words::RECORD);
        }
        let asks = [(HEAD, words::TUBE_HEAD), (SWALLOW, words::TUBE_SWALLOW)];
        let blocks = asks.into_iter().fold(Blocks::new().text(words::TUBE_FIRST), |blocks, (key, label)| {
            let option = |(place, text): (usize, &str)| Choice::new(text, Action::Choose(key.into(), place));
            let options = [words::TUBE_YES, words::TUBE_NO].into_iter().enumerate().map(option).collect();
            blocks.choices(key, Choices::new(label, options, fields.chosen(key)).labelled())
        });
        if self == Self::Unable {
            let not = Action::Answer(vec![Event::SwallowTried { lamb, able: false }]);
            return blocks
                .caution([words::NO_TUBE])
                .button(Button::new("tube-not", words::NO_TUBE_NOTE, not).filled());
        }
        let had = Action::Choose(UNCHECKED.into(), 1);
        blocks.button(Button::new("tubed-unchecked", words::TUBED_UNCHECKED, had).small())
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
    // By the tube it is what is saved that tells of head and swallow, too.
    let by_tube = way(fields, WAY, Way::Bottle) == Way::Tube
        && !view.flock.lamb(lamb).is_some_and(|lamb| may_be_tubed(lamb, view.now));
    let planned = planned.filter(|_| first(view, lamb).is_none() && !by_tube);
    let Some(planned) = planned else { return Blocks::new() };
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
    let fed = view.noting(Event::Fed { lamb, volume, milk, way });
    if way == Way::Bottle || records(view, fields, lamb) {
        return draft.save(view, VOLUME, vec![fed]);
    }
    match Asked::of(view, fields, lamb) {
        Asked::Able if fields.chosen(HEAD).is_some() => {
            let tried = view.noting(Event::SwallowTried { lamb, able: true });
            draft.save(view, VOLUME, vec![tried, fed])
        }
        Asked::Able => draft.save(view, VOLUME, vec![fed]),
        Asked::Unable | Asked::Open | Asked::Record => draft.say_wrong(VOLUME, words::TUBE_FIRST.to_owned()),
    }
}
