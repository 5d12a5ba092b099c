//! The season by ram, each figure with how many it is of; no ram is ranked by what may be chance.

use yeanling_core::seasons::{OfRam, Season, by_ram, grown, usual_age};
use yeanling_words::rams as words;

use crate::block::Row;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Key, Reason, State};

/// Returns the part of the screen; nothing where no ram of the season is known.
pub(super) fn blocks(view: &View, season: &Season) -> Blocks {
    let to = usual_age(view.flock, season, view.now);
    let grown = grown(view.flock, season, to, view.now);
    let rams = by_ram(view.flock, season, &grown, view.now);
    if rams.is_empty() {
        return Blocks::new();
    }
    let compared = rams.len() > 1;
    let row = |(place, of): (usize, &OfRam)| -> (Key, Row) {
        let row = Row::new(words::sire(view.flock, &of.sire))
            .kind(words::ewes(of))
            .text(words::lambs(of, view.system()));
        let row = if compared { row.says(State::Coming, words::apart(of)) } else { row };
        (format!("ram-{place}").into(), row)
    };
    let text = if compared { words::NO_ORDER } else { "" };
    let inside = Blocks::new()
        .remark(text, [why(words::BY_RAM, Reason::Rams)])
        .rows("rams", rams.iter().enumerate().map(row));
    Blocks::new().section("by-ram", words::BY_RAM, inside)
}
