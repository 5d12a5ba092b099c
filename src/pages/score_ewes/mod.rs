//! Score ewes: one group gone through in the race or in the field, a tap or two for each, then how it stands.

mod stands;

use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::flock::{Ewe, Flock, Group};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::{Condition, Moment};
use yeanling_words::{animals, score_ewes as words, season};

use crate::block::{Choice, Choices, Heading, HeadingLook, Kind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Effect, Screen, Text};

/// What is noted of each ewe.
const WHAT: &str = "race-what";
/// Whose turn it is, by her place.
const AT: &str = "race-at";

/// What is noted of each ewe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Score,
    Scan,
    Mark,
}

const WHATS: [(What, &str); 3] =
    [(What::Score, season::CONDITION), (What::Scan, season::SCAN), (What::Mark, season::MARK)];

/// What only this screen knows how to do.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// Notes a fact of the ewe whose turn it is, and turns to the next.
    Note(Event),
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft, id: GroupId) -> Page {
    let (fields, group) = (&draft.fields, view.flock.groups.get(&id));
    let name = group.map(|group| Text::typed(&group.name)).unwrap_or_default();
    let ewes = group.map(|group| in_order(view.flock, group)).unwrap_or_default();
    let (what, _) = fields.pick(WHAT, &WHATS, WHATS[0]);
    let at = fields.chosen(AT).unwrap_or(0);
    let whats = WHATS.iter().enumerate();
    let whats = whats.map(|(place, (_, name))| Choice::new(*name, Action::Choose(WHAT.into(), place)));
    let whats = Choices::new(words::WHAT, whats.collect(), Some(fields.chosen(WHAT).unwrap_or(0)));
    let blocks = Blocks::new().choices(WHAT, whats);
    let blocks = match ewes.get(at) {
        Some(ewe) => blocks.card("turn", turn(view, group, ewe, what, (at, ewes.len()))),
        None if ewes.is_empty() => {
            let group = Button::new("group", words::GROUP, Action::Go(Screen::Group(id)));
            blocks.empty(words::NO_EWES, [group])
        }
        None => blocks.text(words::ALL_DONE).button(Button::new("again", words::AGAIN, turn_to(0))),
    };
    let blocks = match what {
        What::Score => blocks.then(stands::blocks(view, fields, &ewes)),
        What::Scan | What::Mark => blocks,
    };
    Page::new(words::TITLE).back(Screen::Group(id), words::GROUP).under(name).blocks(blocks)
}

/// The living ewes of a group by their tags: 2 before 10.
fn in_order<'a>(flock: &'a Flock, group: &Group) -> Vec<&'a Ewe> {
    let ewes = group.ewes().filter_map(|ewe| flock.ewe(ewe)).filter(|ewe| ewe.lives());
    let mut ewes: Vec<&Ewe> = ewes.collect();
    ewes.sort_small_by_key(|ewe| (ewe.tag.as_ref().map_or(0, String::len), ewe.tag.clone(), ewe.id));
    ewes
}

const fn turn_to(place: usize) -> Action {
    Action::Choose(crate::Key::Borrowed(AT), place)
}

/// The ewe whose turn it is: her name, what was noted of her last, and the taps.
fn turn(view: &View, group: Option<&Group>, ewe: &Ewe, what: What, (at, of): (usize, usize)) -> Blocks {
    let name = Heading { level: 2, look: HeadingLook::Turn, text: animals::ewe(ewe) };
    let skip = Button::new("skip", words::SKIP, turn_to(at + 1));
    let back = at.checked_sub(1).map(|at| Button::new("back", words::BACK, turn_to(at)).quiet());
    Blocks::new()
        .remark(words::place(at, of), [])
        .add("name", Kind::Heading(name))
        .text(last(ewe, what, view.now))
        .buttons(3, taps(ewe.id, group, what))
        .buttons(2, [skip].into_iter().chain(back))
}

fn last(ewe: &Ewe, what: What, now: Moment) -> String {
    match what {
        What::Score => ewe.condition().map(|last| words::last_score(last.score, last.at)),
        What::Scan => ewe.scans.last().map(|scan| words::last_scan(scan.lambs, scan.days, scan.at)),
        What::Mark => ewe.marks.last().map(|mark| words::last_mark(&mark.color, mark.at, now)),
    }
    .unwrap_or_default()
}

fn taps(ewe: EweId, group: Option<&Group>, what: What) -> Vec<Button> {
    let tap = |key: String, label: String, event: Event| {
        Button::new(key, label, Action::Does(crate::Does::ScoreEwes(Does::Note(event))))
    };
    match what {
        // Half scores, as a hand tells them apart at speed; quarters are noted on the ewe herself.
        What::Score => (2..=10_u8)
            .map(|halves| {
                let score = Condition::from_quarters(halves * 2);
                tap(format!("score-{halves}"), season::score(score), Event::Conditioned { ewe, score })
            })
            .collect(),
        What::Scan => (0_u8..)
            .zip(season::SCANNED)
            .map(|(lambs, label)| {
                tap(format!("scan-{lambs}"), label.to_owned(), Event::Scanned { ewe, lambs, days: None })
            })
            .collect(),
        What::Mark => {
            let known = group.and_then(Group::crayon);
            let label =
                known.map_or_else(|| words::MARKED.to_owned(), |color| format!("{} {color}", words::MARKED));
            let color = known.unwrap_or(words::A_MARK).to_owned();
            vec![tap("mark".to_owned(), label, Event::CrayonMark { ewe, color })]
        }
    }
}

/// Whoever comes back to a group that was gone through begins anew.
pub(crate) fn enter(view: &View, draft: &mut Draft, id: GroupId) {
    let ewes = view.flock.groups.get(&id).map_or(0, |group| in_order(view.flock, group).len());
    if draft.fields.chosen(AT).is_some_and(|at| at >= ewes) {
        draft.fields.forget(AT);
    }
}

/// Another thing to note begins with the first ewe.
pub(crate) fn typed(key: &str, fields: &mut Fields) {
    if key == WHAT {
        fields.forget(AT);
    }
}

/// Does what only this screen knows.
pub(crate) fn does(does: &Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Note(event) => {
            let effects = draft.note(view, vec![view.noting(event.clone())]);
            if !effects.is_empty() {
                let at = draft.fields.chosen(AT).unwrap_or(0);
                draft.fields.choose(AT, at + 1);
            }
            effects
        }
    }
}
