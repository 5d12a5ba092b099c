//! Who is not right: the lambs of these weeks and the ewes, one tap each.

use yeanling_core::flock::Lamb;
use yeanling_core::units::TimeDelta;
use yeanling_words::{animals, illness as words};

use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::sheets::ewe_picker::{self, Picker, Then};
use crate::sheets::picks_a_ewe;
use crate::view::View;
use crate::{Action, Button, Screen};

/// Lambs so young stand first (ours).
const LISTED: TimeDelta = TimeDelta::days(21);
/// An older one is a ewe or a ram by now (ours).
const A_YEAR: TimeDelta = TimeDelta::days(365);
/// So many at most are listed.
const MOST: usize = 40;
/// And so many of those that are older; any is found in the flock too.
const MOST_OLDER: usize = 120;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let (to, name) = view.back(Screen::NotRight);
    let button = |lamb: &Lamb| {
        let goes = Action::Go(Screen::IllLamb(lamb.id));
        Button::new(key_of("ill-lamb", lamb.id.entry()), animals::lamb(view.flock, lamb), goes)
    };
    let lambs = view.flock.born_after(view.now - A_YEAR).rev().filter(|lamb| lamb.lives());
    let (young, older): (Vec<&Lamb>, Vec<&Lamb>) = lambs.partition(|lamb| lamb.age(view.now) <= LISTED);
    let buttons = |lambs: Vec<&Lamb>, most: usize| {
        let buttons: Vec<Button> = lambs.into_iter().take(most).map(button).collect();
        if buttons.is_empty() { Blocks::new() } else { Blocks::new().buttons(3, buttons) }
    };
    // Where no lamb is so young, those that are there stand open.
    let older = buttons(older, MOST_OLDER);
    let lambs = match (buttons(young, MOST), older.is_empty()) {
        (young, true) => young,
        (young, false) if young.is_empty() => older,
        (young, false) => young.fold("ill-older", words::OLDER_LAMBS, older),
    };
    let ewes =
        ewe_picker::blocks(view, &draft.fields, Picker { on_page: true, ..Picker::default() }, |picked| {
            Then::IsIll.picked(picked)
        });
    let ewes = if picks_a_ewe(draft) { Blocks::new() } else { ewes };
    Page::new(words::WHO)
        .back(to, name)
        .blocks(Blocks::new().section("ill-lambs", words::LAMBS, lambs).then(ewes))
}
