//! The rounds through the flock and the medicine record, each with how far it has come.

use chrono::NaiveDate;
use yeanling_core::flock::{Group, Lamb};
use yeanling_core::units::TimeDelta;
use yeanling_words::{medicines, rounds as words, score_ewes, tagging as tag_words, weighing};

use crate::block::{Row, State};
use crate::everyone::Which;
use crate::page::Blocks;
use crate::view::View;
use crate::{Key, Screen, Text, tagging};

/// Returns the ways to the rounds, folded away: who comes to the flock mostly looks for an animal.
pub(super) fn blocks(view: &View) -> Blocks {
    let groups = view.flock.groups.values().filter(|group| group.parted.is_none());
    let mut rows: Vec<(Key, Row)> = groups.map(|group| score(view, group)).collect();
    if rows.is_empty() {
        rows.push(("score".into(), Row::new(score_ewes::TITLE).text(words::NO_GROUP).to(Screen::Season)));
    }
    rows.push(("weigh".into(), weigh(view)));
    let (tagged, of) = tagging::tagged(view);
    let tags = Row::new(tag_words::TITLE).text(tag_words::done(true, tagged, of)).to(Screen::TagLambs);
    rows.push(("tag".into(), tags));
    rows.push(("medicines".into(), medicines(view)));
    let rows = Blocks::new().rows("round-rows", rows);
    // Beside the list there is room for them.
    if *view.wide {
        return Blocks::new().section("rounds", words::TITLE, rows);
    }
    Blocks::new().fold("rounds", words::TITLE, rows)
}

fn score(view: &View, group: &Group) -> (Key, Row) {
    let scores = group.ewes().filter_map(|ewe| view.flock.ewe(ewe)?.condition());
    let last = scores.map(|score| score.at.local().date()).max();
    let row = Row::new(score_ewes::TITLE)
        .kind(Text::typed(&group.name))
        .text(words::scored(group.ewes().count(), last))
        .to(Screen::ScoreEwes(group.id));
    (format!("score-{}", group.id).into(), row)
}

fn weigh(view: &View) -> Row {
    // A weight of the first day was noted in the pen, not on a round.
    let weighed = |lamb: &Lamb| -> Option<NaiveDate> {
        let last = lamb.weights.last()?;
        (last.at.since(lamb.born) >= TimeDelta::days(1)).then(|| last.at.local().date())
    };
    let last = view.flock.lambs.values().filter(|lamb| lamb.lives()).filter_map(weighed).max();
    let (.., lambs) = view.everyone.living;
    Row::new(weighing::TITLE).text(words::weighed(lambs, last)).to(Screen::WeighLambs)
}

fn medicines(view: &View) -> Row {
    let found = view.everyone.browse(view.flock, Which::Withdrawal, view.now);
    let held = found.ewes.len() + found.lambs.len();
    let row = Row::new(medicines::TITLE).to(Screen::Medicines);
    if held == 0 { row.text(words::withdrawal(held)) } else { row.says(State::Now, words::withdrawal(held)) }
}
