//! Picking a ewe: the living ewes as large buttons, narrowed by what is typed; a new one is added on the spot.
//!
//! Those that have lambed this season stand apart from those that have not, so that the one looked for is soon found. On a
//! page a small flock stands at its places instead, as on Flock: who has lambed is dimmed where she always stood.

use yeanling_core::book::{Animal, Event, EweId, LambId, Life, PenId};
use yeanling_core::seasons::APART;
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_words::{animals, lambing as words, life};

use crate::block::{Buttons, Field, FieldKind};
use crate::draft::{Draft, Fields, Noting};
use crate::flock::grid;
use crate::in_brief::InBrief;
use crate::page::{Blocks, key_of};
use crate::view::View;
use crate::{Action, Button, Does, Effect, Key, Kind, Screen};

/// What is looked for on a sheet.
pub(crate) const FIND: &str = "ewe-find";
/// What is looked for on a page of its own; a sheet over it has another field.
pub(crate) const FIND_ON_PAGE: &str = "who-find";

/// So many ewes of a kind are shown; more are found by a digit of their tag.
const MOST: usize = 60;

/// Who can be picked.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Picker {
    /// Whether she is picked on a page, not on a sheet.
    pub(crate) on_page: bool,
    /// Whether "dam unknown" is offered.
    pub(crate) unknown: bool,
    /// Whether those that have lambed come first, as when lambs need a dam.
    pub(crate) lambed_first: bool,
    /// Who is not offered.
    pub(crate) without: Option<EweId>,
    /// Whether she is to rear a lamb: one that aborted this season is not offered.
    pub(crate) rears: bool,
    /// When lambs were born that need a ewe: those at work, and those that lambed about then, come first of all.
    pub(crate) born: Option<Moment>,
}

/// What was picked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Picked {
    /// A ewe.
    Ewe(EweId),
    /// A ewe nobody knows.
    Unknown,
    /// A ewe that is new to the book, by her tag.
    New(String),
}

/// What picking a ewe is for; [`Then::picked`] is what a press does.
#[derive(Clone, Debug, PartialEq)]
pub enum Then {
    /// She lambs: her lambing is gone to.
    Lambs,
    /// She is not right: what is seen of her is gone to.
    IsIll,
    /// She rears this lamb from now on.
    Rears(LambId),
    /// She goes into this pen.
    GoesInto(PenId),
    /// She is the dam of these lambs.
    IsDamOf(Vec<LambId>),
    /// She is one animal with this ewe, as which she is kept.
    IsAlso(EweId),
    /// Who she is is kept in the draft under this key, for [`kept`].
    IsKept(Key),
}

/// A ewe that is new to the book, and what follows.
#[derive(Clone, Debug, PartialEq)]
pub struct NewEwe {
    /// Her tag.
    pub tag: String,
    /// What she was picked for.
    pub then: Then,
}

/// A ewe's tag or name, and who she is.
type Named = (String, EweId);

/// Those that have not lambed this season, and those that have.
struct Ewes {
    likely: Vec<Named>,
    to_lamb: Vec<Named>,
    lambed: Vec<Named>,
    /// Whether a living ewe is called just what is typed, one that is not offered too.
    known: bool,
    /// Whether the one who is called just what is typed is not offered because she aborted.
    aborted: bool,
}

/// Lets a ewe be picked or added; `does` is what a press does with whom was picked, such as [`Then::picked`].
pub(crate) fn blocks(
    view: &View,
    fields: &Fields,
    picker: Picker,
    does: impl Fn(Picked) -> Action,
) -> Blocks {
    let key = if picker.on_page { FIND_ON_PAGE } else { FIND };
    let typed = fields.text(key, "");
    let tag = animals::tag_of(&typed).to_owned();
    let ewes = found(view, &tag.to_lowercase(), picker);
    let add = (!tag.is_empty() && !ewes.known).then(|| does(Picked::New(tag.clone())));
    let find = Field::new(words::FIND, FieldKind::Text, typed).hint(hint(&ewes, &tag));
    let find = match add.clone().or_else(|| only(&ewes).map(|ewe| does(Picked::Ewe(ewe)))) {
        Some(enter) => find.enter(enter),
        None => find,
    };
    let mut blocks = Blocks::new().field(key, find);
    if let Some(add) = add {
        blocks = blocks.button(Button::new("ewe-new", words::add(&tag), add).filled());
    }
    if picker.unknown {
        blocks = blocks.button(Button::new("ewe-unknown", words::UNKNOWN, does(Picked::Unknown)));
    }
    if picker.on_page && at_places(view) {
        return blocks.section("ewe-places", words::EWES, places(view, ewes, &does));
    }
    let mut kinds =
        [("ewes-to-lamb", words::EWES, ewes.to_lamb), ("ewes-lambed", words::HAVE_LAMBED, ewes.lambed)];
    if picker.lambed_first {
        kinds.reverse();
    }
    blocks = blocks.section("ewes-likely", words::LIKELIEST, buttons(ewes.likely, &does));
    for (key, title, ewes) in kinds {
        blocks = blocks.section(key, title, buttons(ewes, &does));
    }
    blocks
}

/// Says whether the flock is small enough for each ewe to have a place.
fn at_places(view: &View) -> bool {
    let living = view.flock.ewes.values().filter(|ewe| ewe.lives());
    grid::fits(living.map(|ewe| ewe.tag.as_deref().unwrap_or_default()))
}

/// Returns ewes at their places, each with a word on how she is.
fn places(view: &View, ewes: Ewes, does: &impl Fn(Picked) -> Action) -> Blocks {
    let mut all: Vec<Named> = ewes.likely.into_iter().chain(ewes.to_lamb).chain(ewes.lambed).collect();
    sort_by_name(&mut all);
    let brief = InBrief::of(view);
    let tiles = all.into_iter().filter_map(|(name, id)| {
        let ewe = view.flock.ewes.get(&id)?;
        Some(brief.ewe_tile(ewe, name, does(Picked::Ewe(id))))
    });
    Blocks::new().tiles("ewe-tiles", tiles)
}

/// By length first, so that 5 comes before 12 and both before 101; short enough for any tag.
fn sort_by_name(ewes: &mut [Named]) {
    ewes.sort_small_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
}

/// Returns ewes of a kind as buttons; nothing when there are none.
fn buttons(ewes: Vec<Named>, does: &impl Fn(Picked) -> Action) -> Blocks {
    if ewes.is_empty() {
        return Blocks::new();
    }
    let more = ewes.len().saturating_sub(MOST);
    let button = |(tag, ewe): Named| Button::new(key_of("ewe", ewe.entry()), tag, does(Picked::Ewe(ewe)));
    let inside = ewes.into_iter().take(MOST).map(button).fold(Blocks::new(), Blocks::button).into();
    let blocks = Blocks::new().add("", Kind::Buttons(Buttons { columns: 3, inside }));
    if more > 0 { blocks.small(words::and_more(more)) } else { blocks }
}

/// A ewe that lambed so long before or after lambs that are to be hers may well be their dam (ours).
const ABOUT_THEN: TimeDelta = TimeDelta::hours(48);

/// Says whether a ewe is likelier than others to be the dam of lambs born then: she is at work, or lambed about then.
fn is_likely(view: &View, ewe: EweId, born: Moment) -> bool {
    let began = view.flock.litters_of(ewe).into_iter().map(|litter| litter.began);
    let about = |began: Moment| began.since(born).abs() <= ABOUT_THEN;
    let at_work = view.flock.at_work.contains(&ewe) && view.now.since(born) <= ABOUT_THEN;
    at_work || began.into_iter().any(about)
}

/// Returns the living ewes with this in their tag.
fn found(view: &View, part: &str, Picker { without, rears, born, .. }: Picker) -> Ewes {
    let name = |ewe: &yeanling_core::flock::Ewe| ewe.tag.clone().unwrap_or_else(|| animals::ewe(ewe));
    let living = view.flock.ewes.values().filter(|ewe| ewe.lives());
    let mut ewes: Vec<Named> =
        living.map(|ewe| (name(ewe), ewe.id)).filter(|(tag, _)| tag.to_lowercase().contains(part)).collect();
    let known = ewes.iter().any(|(tag, _)| tag.to_lowercase() == part);
    let aborted =
        rears && ewes.iter().any(|(tag, ewe)| tag.to_lowercase() == part && has_aborted(view, *ewe));
    ewes.retain(|(_, ewe)| Some(*ewe) != without && !(rears && has_aborted(view, *ewe)));
    sort_by_name(&mut ewes);
    let has_lambed = |(_, ewe): &Named| {
        view.flock.litters_of(*ewe).first().is_some_and(|litter| view.now.since(litter.began) <= APART)
    };
    let is_likely = |(_, ewe): &Named| born.is_some_and(|born| is_likely(view, *ewe, born));
    let (likely, others): (Vec<Named>, Vec<Named>) = ewes.into_iter().partition(is_likely);
    let (lambed, to_lamb) = others.into_iter().partition(has_lambed);
    Ewes { likely, to_lamb, lambed, known, aborted }
}

/// Says whether a ewe aborted this season.
pub(crate) fn has_aborted(view: &View, ewe: EweId) -> bool {
    view.flock.ewe(ewe).is_some_and(|ewe| ewe.aborted(view.now).is_some())
}

/// Returns the ewe that is found, if that is one alone.
fn only(ewes: &Ewes) -> Option<EweId> {
    let mut all = ewes.likely.iter().chain(&ewes.to_lamb).chain(&ewes.lambed);
    all.next().filter(|_| all.next().is_none()).map(|(_, ewe)| *ewe)
}

const fn hint(ewes: &Ewes, tag: &str) -> &'static str {
    if !(ewes.likely.is_empty() && ewes.to_lamb.is_empty() && ewes.lambed.is_empty()) || tag.is_empty() {
        ""
    } else if ewes.aborted {
        life::SHE_ABORTED
    } else if ewes.known {
        words::HER_ALREADY
    } else {
        words::NONE_FOUND
    }
}

impl Then {
    /// Returns what a press does with whom was picked.
    pub(crate) fn picked(&self, picked: Picked) -> Action {
        match (picked, self) {
            (Picked::New(tag), then) => Action::Does(Does::NewEwe(NewEwe { tag, then: then.clone() })),
            (Picked::Ewe(ewe), Self::IsIll) => Action::Go(Screen::IllEwe(ewe)),
            (Picked::Ewe(ewe), Self::Lambs) => Action::Go(Screen::LambingEwe(ewe)),
            (Picked::Ewe(ewe), Self::IsKept(key)) => Action::Type(key.clone(), ewe.to_string()),
            (Picked::Ewe(ewe), Self::Rears(_) | Self::GoesInto(_) | Self::IsDamOf(_) | Self::IsAlso(_)) => {
                Action::Answer(self.facts(ewe))
            }
            (Picked::Unknown, Self::Lambs) => Action::Go(Screen::LambingUnknown),
            (
                Picked::Unknown,
                Self::IsIll
                | Self::Rears(_)
                | Self::GoesInto(_)
                | Self::IsDamOf(_)
                | Self::IsAlso(_)
                | Self::IsKept(_),
            ) => Action::Close,
        }
    }

    /// Returns what is noted of her.
    fn facts(&self, ewe: EweId) -> Vec<Event> {
        match self {
            Self::Rears(lamb) => vec![Event::Life(Life::Fostered { lamb: *lamb, dam: ewe })],
            Self::GoesInto(pen) => vec![Event::PutInPen { animal: Animal::Ewe(ewe), pen: *pen }],
            Self::IsDamOf(lambs) => {
                lambs.iter().map(|lamb| Event::DamGiven { lamb: *lamb, dam: ewe }).collect()
            }
            Self::IsAlso(keep) => {
                vec![Event::SameAnimal { keep: Animal::Ewe(*keep), also: Animal::Ewe(ewe) }]
            }
            Self::Lambs | Self::IsIll | Self::IsKept(_) => Vec::new(),
        }
    }
}

/// Notes that a ewe came and what she was picked for, in one piece, so that undo takes both back.
pub(crate) fn does(new: &NewEwe, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let came = view.noting(Event::EweCame { tag: Some(new.tag.clone()) });
    let ewe = came.id.as_ewe();
    let mut notings: Vec<Noting> = vec![came];
    notings.extend(new.then.facts(ewe).into_iter().map(|event| view.noting(event)));
    let mut effects = match &new.then {
        Then::Lambs | Then::IsIll | Then::IsKept(_) => draft.note(view, notings),
        Then::Rears(_) | Then::GoesInto(_) | Then::IsDamOf(_) | Then::IsAlso(_) => {
            return draft.answer(view, notings);
        }
    };
    if effects.is_empty() {
        return effects;
    }
    draft.top_mut().forget(FIND);
    draft.top_mut().forget(FIND_ON_PAGE);
    match &new.then {
        Then::Lambs => effects.push(Effect::Go(Screen::LambingEwe(ewe))),
        Then::IsIll => effects.push(Effect::Go(Screen::IllEwe(ewe))),
        Then::IsKept(key) => draft.top_mut().set(key.clone(), ewe.to_string()),
        Then::Rears(_) | Then::GoesInto(_) | Then::IsDamOf(_) | Then::IsAlso(_) => {}
    }
    effects
}

/// Returns the ewe that was picked and kept under a key.
pub(crate) fn kept(fields: &Fields, key: &str) -> Option<EweId> {
    fields.typed(key)?.parse().ok()
}
