//! What to look at, and what is noted of its life beyond the first days.

use yeanling_core::book::{Animal, Event, Sex};
use yeanling_core::flock::Lamb;
use yeanling_core::watch::{BeforeMilk, KEPT_FROM};
use yeanling_words::{danger, lamb as words, life, weaning};

use super::{Does, is_newborn};
use crate::milk::before;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Sheet};

/// Returns the buttons of what to look at, but for those `offered` above; what was seen is ticked.
pub(super) fn looks(view: &View, lamb: &Lamb, offered: &[Button]) -> Blocks {
    let (id, animal) = (lamb.id, Animal::Lamb(lamb.id));
    let told = |seen: bool, label: &str| if seen { words::seen(label) } else { label.to_owned() };
    let notes = |key: &'static str, seen: bool, label: &str, event: Event| {
        Button::new(key, told(seen, label), Action::Note(vec![event]))
    };
    let asks = |key: &'static str, seen: bool, label: &str, sheet: Sheet| {
        Button::new(key, told(seen, label), Action::Ask(sheet))
    };
    // While something comes before milk it is not offered as taken either: that stands above, with the record of what it had.
    let sucked = notes("sucked", !lamb.sucked.is_empty(), words::SUCKED, Event::Sucked { lamb: id })
        .off_if(before(view, lamb).and_then(BeforeMilk::before_nursing).is_some());
    let takes_it = lamb.accepted.last().is_some_and(|(_, accepts)| *accepts);
    let found = asks("found", lamb.found.is_some(), danger::FOUND, Sheet::Found(id));
    let all = [
        sucked,
        asks("belly", !lamb.belly.is_empty(), words::BELLY, Sheet::Belly(id)),
        asks("vigor", !lamb.vigor.is_empty(), words::VIGOR, Sheet::Vigor(id)),
        notes("up", !lamb.stood.is_empty(), words::UP, Event::Stood { lamb: id }),
        asks("weigh", !lamb.weights.is_empty(), words::WEIGH, Sheet::Weight(id)),
        notes("navel", !lamb.navel.is_empty(), words::NAVEL, Event::NavelDipped { lamb: id }),
        notes("accepted", takes_it, words::ACCEPTED, Event::Accepted { lamb: id, accepts: true }),
        notes(
            "turned-away",
            lamb.turned_away(),
            words::TURNED_AWAY,
            Event::Accepted { lamb: id, accepts: false },
        ),
        asks("tag", false, words::TAG, Sheet::Tag(animal)),
        asks("remark", false, words::REMARK, Sheet::Remark(animal)),
        asks("died", false, words::DIED, Sheet::Death(animal)),
        notes("vet-called", !lamb.vet.is_empty(), danger::CALLED, Event::VetCalled { animal }),
        asks("vet-said", false, danger::SAID, Sheet::Vet(animal)),
    ];
    let all = all.into_iter().chain(is_newborn(view, lamb).then_some(found));
    Blocks::new().buttons(3, all.filter(|one| is_new(one, offered)))
}

/// Returns what is noted of its life beyond the first days, folded away in them: what is pressed then stands above.
pub(super) fn register(view: &View, lamb: &Lamb) -> Blocks {
    Blocks::new().fold("register", life::LIFE, life(view, lamb, &[]))
}

/// Says whether what a button does is not offered already.
fn is_new(button: &Button, offered: &[Button]) -> bool {
    offered.iter().all(|other| other.does != button.does)
}

/// Returns what is noted of its life beyond the first days, but for what is `offered` above.
pub(super) fn life(view: &View, lamb: &Lamb, offered: &[Button]) -> Blocks {
    let (id, animal, age) = (lamb.id, Animal::Lamb(lamb.id), lamb.age(view.now));
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let mut all = vec![
        asks("foster", life::FOSTER, Sheet::Foster(id)),
        asks("treat", life::TREAT, Sheet::Treat(vec![animal])),
        asks("paint", life::MARK, Sheet::Paint(animal)),
        asks("leave", life::LEAVE, Sheet::Leave(animal)),
    ];
    if lamb.to_be_weaned_from_ewe() && age >= super::weaning::SHOWN_FROM {
        let weaned = Action::Note(vec![Event::Weaned { lamb: id }]);
        all.push(Button::new("weaned-from-ewe", weaning::WEANED, weaned));
    }
    if lamb.sex != Some(Sex::Ewe) {
        all.push(asks("castrate", life::CASTRATE, Sheet::Castrate(id)));
    }
    if lamb.sex != Some(Sex::Ram) && age >= KEPT_FROM {
        all.push(Button::new("keep", life::KEEP, Action::Does(crate::Does::Lamb(Does::Keep(id)))));
    }
    all.retain(|one| is_new(one, offered));
    Blocks::new().buttons(2, all)
}
