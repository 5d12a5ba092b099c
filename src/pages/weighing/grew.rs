//! How the lambs of the latest season grew to an age, side by side with their like: who lags stands first.

use yeanling_core::reckon::adjusted_weight::ToAge;
use yeanling_core::seasons::{Grown, Season, ages_weighed, grown, seasons, usual_age};
use yeanling_words::{animals, flock, weighing as words};

use crate::block::{Choice, Choices, Row};
use crate::draft::Fields;
use crate::page::{Blocks, key_of, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, State};

/// How many lambs stand under how they grew at first, and how many more with each press.
const ROWS: usize = 40;
/// How many more were asked for.
const MORE: &str = "weighing-more";
/// To which age they are set side by side, by its place among all.
const AGE: &str = "weighing-age";

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let season = seasons(view.flock).into_iter().next();
    let weighed =
        season.as_ref().map(|season| ages_weighed(view.flock, season, view.now)).unwrap_or_default();
    let chosen = fields.chosen(AGE).and_then(|place| weighed.get(place)).map(|(to, _)| *to);
    let usual = |season: &Season| usual_age(view.flock, season, view.now);
    let to = chosen.unwrap_or_else(|| season.as_ref().map_or(ToAge::Day60, usual));
    let all = season.map(|season| grown(view.flock, &season, to, view.now)).unwrap_or_default();
    let text = if all.is_empty() { words::NONE_GROWN } else { words::ALIKE };
    let inside = Blocks::new().remark(text, [why(words::GROWN, Reason::Grown)]);
    let inside =
        if all.is_empty() { inside } else { inside.then(ages(&weighed, to)).text(words::in_order(to)) };
    let most = ROWS * (1 + fields.chosen(MORE).unwrap_or(0));
    let inside = inside.rows("grown", all.iter().take(most).map(|one| row(view, one)));
    let inside = match all.len().saturating_sub(most) {
        0 => inside,
        left => {
            inside.button(Button::new("more", flock::more(left), Action::Choose(MORE.into(), most / ROWS)))
        }
    };
    Blocks::new().section("how-they-grew", words::GROWN, inside)
}

/// The ages to choose from; nothing where only one was weighed for.
fn ages(weighed: &[(ToAge, usize)], to: ToAge) -> Blocks {
    if weighed.len() < 2 {
        return Blocks::new();
    }
    let option = |(place, (to, lambs)): (usize, &(ToAge, usize))| {
        Choice::new(words::age(*to, *lambs), Action::Choose(AGE.into(), place))
    };
    let chosen = weighed.iter().position(|(age, _)| *age == to);
    let options = weighed.iter().enumerate().map(option).collect();
    Blocks::new().choices(AGE, Choices::new(words::TO_AGE, options, chosen).labelled())
}

fn row(view: &View, one: &Grown) -> (Key, Row) {
    let alike = words::alike(&one.adjusted, view.system());
    let (state, says) =
        if one.lags { (State::Now, format!("{} · {alike}", words::LAGS)) } else { (State::Coming, alike) };
    let row = Row::new(animals::lamb_of(view.flock, one.lamb))
        .kind(words::born_and_reared(one.born, one.reared))
        .text(words::grew(one, view.system()))
        .says(state, says)
        .to(Screen::Lamb(one.lamb));
    (key_of("grew", one.lamb.entry()), row)
}
