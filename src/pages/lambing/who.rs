//! Who is lambing: picked, added on the spot, or not known yet.

use yeanling_core::book::EweId;
use yeanling_core::flock::{Litter, SIGNS_FOR, Saw, Seen};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Moment;
use yeanling_words::{animals, frame, lambing as words};

use super::{Does, only, people};
use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::sheets::ewe_picker::{self, Picked, Picker, Then};
use crate::sheets::picks_a_ewe;
use crate::view::View;
use crate::{Action, Button, Screen};

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let at_work = at_work(view);
    let mut blocks = Blocks::new();
    if !at_work.is_empty() {
        blocks = blocks.section("at-work", words::AT_WORK, Blocks::new().buttons(2, at_work));
    }
    if view.flock.ewes.is_empty() {
        blocks = blocks.lead(words::NO_EWES);
    }
    let picker = Picker { on_page: true, unknown: true, ..Picker::default() };
    let ewes = ewe_picker::blocks(view, &draft.fields, picker, |picked| match picked {
        // Answers of the picker, so they are buttons, also where they only lead on.
        Picked::Ewe(ewe) => only(Does::Lambs(Screen::LambingEwe(ewe))),
        Picked::Unknown => only(Does::Lambs(Screen::LambingUnknown)),
        Picked::New(_) => Then::Lambs.picked(picked),
    });
    let ewes = if picks_a_ewe(draft) { Blocks::new() } else { ewes };
    let page = Page::new(words::WHO).back(Screen::Watch, frame::BACK);
    page.blocks(blocks.then(ewes).then(people()))
}

/// Those whose litter is being born, then those of whom something was seen, and what was seen last.
fn at_work(view: &View) -> Vec<Button> {
    let (flock, now) = (view.flock, view.now);
    let born: Vec<&Litter> = flock.litters.values().filter(|litter| litter.goes_on(now)).collect();
    let seen = |ewe: &EweId| {
        let ewe = flock.ewe(*ewe)?;
        ewe.labor.as_ref()?;
        let of_labor = |seen: &&Seen| !matches!(seen.what, Saw::Look | Saw::NotLambing | Saw::Afterbirth);
        let last = ewe.seen.iter().rev().find(of_labor)?;
        let has_begun = born.iter().any(|litter| litter.dam == Some(ewe.id));
        (!has_begun && now.since(last.at) < SIGNS_FOR).then_some((last.at, ewe.id, last.what))
    };
    let mut seen: Vec<(Moment, EweId, Saw)> = flock.at_work.iter().filter_map(seen).collect();
    seen.sort_small_by_key(|(at, ewe, _)| (*at, *ewe));
    let seen = seen.into_iter().map(|(at, ewe, what)| {
        let label = words::at_work(&animals::ewe_of(flock, ewe), what, at, now);
        Button::new(key_of("seen", ewe.entry()), label, Action::Go(Screen::LambingEwe(ewe)))
    });
    let born = born.iter().map(|litter| {
        let name = match litter.dam {
            Some(dam) => animals::ewe_of(flock, dam),
            None => animals::lamb_of(flock, litter.id),
        };
        Button::new(key_of("born", litter.id.entry()), name, Action::Go(Screen::LambingLamb(litter.id)))
    });
    born.chain(seen).collect()
}
