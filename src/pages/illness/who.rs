//! Who is not right: the lambs of these weeks and the ewes, one tap each.

use yeanling_core::units::TimeDelta;
use yeanling_words::{animals, illness as words};

use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::sheets::ewe_picker::{self, Picker, Then};
use crate::sheets::picks_a_ewe;
use crate::view::View;
use crate::{Action, Button, Screen};

/// Lambs so young are listed; an older one is opened from the flock (ours).
const LISTED: TimeDelta = TimeDelta::days(21);
/// So many at most are listed.
const MOST: usize = 40;

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let (to, name) = view.back(Screen::NotRight);
    let young = view.flock.born_after(view.now - LISTED).rev().filter(|lamb| lamb.lives()).take(MOST);
    let lambs = young.map(|lamb| {
        let goes = Action::Go(Screen::IllLamb(lamb.id));
        Button::new(key_of("ill-lamb", lamb.id.entry()), animals::lamb(view.flock, lamb), goes)
    });
    let lambs: Vec<Button> = lambs.collect();
    let lambs = if lambs.is_empty() { Blocks::new() } else { Blocks::new().buttons(3, lambs) };
    let ewes =
        ewe_picker::blocks(view, &draft.fields, Picker { on_page: true, ..Picker::default() }, |picked| {
            Then::IsIll.picked(picked)
        });
    let ewes = if picks_a_ewe(draft) { Blocks::new() } else { ewes };
    Page::new(words::WHO)
        .back(to, name)
        .blocks(Blocks::new().section("ill-lambs", words::LAMBS, lambs).then(ewes))
}
