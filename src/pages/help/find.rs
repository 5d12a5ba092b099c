//! The finder of Help: topics by their names first, then by other words for them, then by what they say; and words of the
//! trade with what they mean.

use yeanling_core::reckon::illness::Ailment;
use yeanling_core::sort_small::SortSmall;
use yeanling_words::help::glossary::{TERMS, TITLE as GLOSSARY, Term};
use yeanling_words::help::illness::{More, more};
use yeanling_words::help::{self as words, Topic};
use yeanling_words::illness::RowWords;

use super::{calculators, doors, illness, read, row, topic};
use crate::block::{Block, Field, FieldKind, Row};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key};

/// Under which key it is kept what is looked for.
pub(super) const FIND: &str = "help-find";
/// So many words of the trade are shown at most; the glossary has them all.
const MOST_TERMS: usize = 5;
/// Small words that say nothing of what is looked for.
const SMALL: [&str; 18] = [
    "a", "an", "the", "to", "do", "i", "is", "it", "of", "how", "when", "what", "in", "my", "for", "on",
    "and", "does",
];

/// Returns the field.
pub(super) fn field(fields: &Fields) -> Field {
    Field::new(words::FIND, FieldKind::Search, fields.text(FIND, "")).hint(words::FIND_HINT)
}

/// Returns what is looked for; nothing while nothing is typed.
pub(super) fn sought(fields: &Fields) -> Option<String> {
    fields.written(FIND)
}

/// Returns all that is found, the nearest first.
pub(super) fn found(view: &View, sought: &str) -> Blocks {
    let wanted = wanted(sought);
    let within = |text: &str| wanted.iter().all(|word| text.contains(word.as_str()));
    let topics = Topic::ALL.into_iter().filter_map(|topic| Some((rank(view, topic, within)?, row(topic))));
    let ailments = Ailment::all().filter_map(|one| Some((rank_of(one, within)?, illness::row(one))));
    let mut all: Vec<(u8, (Key, Row))> = topics.chain(ailments).collect();
    all.sort_small_by_key(|(rank, _)| *rank);
    let rows = all.into_iter().map(|(_, row)| row);
    let figures = within(words::CALCULATORS_FOUND_BY).then(calculators);
    let rows: Vec<(Key, Row)> = rows.chain(figures).collect();
    let terms = TERMS.iter().filter(|term| within(&lower(&format!("{} {}", term.word, term.means))));
    let terms: Vec<String> = terms.take(MOST_TERMS).map(line).collect();
    let doors = doors::found(within);
    if rows.is_empty() && terms.is_empty() && doors.is_empty() {
        let all = Button::new("all-topics", words::ALL_TOPICS, Action::Type(FIND.into(), String::new()));
        return Blocks::new().empty(words::NOT_FOUND, [all]);
    }
    let terms = if terms.is_empty() { Blocks::new() } else { read(terms) };
    let doors = Blocks::new().rows("found-screens", doors);
    Blocks::new()
        .rows("found", rows)
        .section("doors", words::doors::TITLE, doors)
        .section("terms", GLOSSARY, terms)
}

/// Returns a word of the trade with what it means.
pub(super) fn line(term: &Term) -> String {
    format!("*{}*: {}", term.word, term.means)
}

/// What is looked for, word by word; small words count only where there are no others.
fn wanted(sought: &str) -> Vec<String> {
    let all: Vec<String> = lower(sought).split(|c: char| !c.is_alphanumeric()).map(str::to_owned).collect();
    let all: Vec<String> = all.into_iter().filter(|word| !word.is_empty()).collect();
    let large: Vec<String> = all.iter().filter(|word| !SMALL.contains(&word.as_str())).cloned().collect();
    if large.is_empty() { all } else { large }
}

fn lower(text: &str) -> String {
    text.to_lowercase().replace('\u{a0}', " ")
}

/// How near a topic is: by its name 0, by other words for it 1, by what it says 2; nothing when it is not found.
fn rank(view: &View, topic: Topic, within: impl Fn(&str) -> bool) -> Option<u8> {
    let title = lower(topic.title());
    if within(&title) {
        return Some(0);
    }
    if within(&lower(&format!("{title} {} {}", topic.found_by(), topic.about()))) {
        return Some(1);
    }
    let mut said = title;
    for block in topic::inside(view, topic) {
        gather(&block, &mut said);
    }
    within(&lower(&said)).then_some(2)
}

/// How near an illness is: by its name 0, by whose it is, its signs and other words for it 1, by what its page says 2.
fn rank_of(ailment: Ailment, within: impl Fn(&str) -> bool) -> Option<u8> {
    let RowWords { name, may_be, tells, until, never } = illness::row_words(ailment);
    let More { call, also, published, differ, found_by } = more(ailment);
    if within(&lower(name)) {
        return Some(0);
    }
    let known =
        [&[name, illness::whose(ailment), also, found_by], may_be, &illness::signs(ailment)[..]].concat();
    let known = lower(&known.join(" "));
    if within(&known) {
        return Some(1);
    }
    let said = [&[known.as_str(), tells, call], until, never, published, differ].concat();
    within(&lower(&said.join(" "))).then_some(2)
}

fn gather(block: &Block, to: &mut String) {
    for text in block.texts() {
        to.push(' ');
        to.push_str(&text);
    }
    block.inside().into_iter().for_each(|inside| gather(inside, to));
}
