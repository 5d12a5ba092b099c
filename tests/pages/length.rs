//! How long what stands on a page may be, by what a phone of 320 px bears: a button is one line, a sentence two to three.

use yeanling_pages::block::{Block, ChoicesShape, Kind, LineLook, ListLook, Shape};
use yeanling_pages::{Button, Page};

/// What may be so many letters long at most. At 320 px a line of text holds some 38 letters, a wide button 26.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Most {
    /// The words of a button: one line, seldom two words more.
    Button = 26,
    /// What is chosen beside others or stays down: two lines of half the width.
    Beside = 30,
    /// A name of a page, a part or a sheet, or what is asked: two short lines of bold type.
    Name = 44,
    /// What is under each other to be chosen, and what is folded: two lines.
    Line = 60,
    /// One sentence: two lines, seldom three.
    Sentence = 84,
}

/// So many commas make a list of a sentence.
const LISTED: usize = 4;

/// Says what of a page is too long.
pub(crate) fn broken(page: &Page) -> Vec<String> {
    let mut wrong = Vec::new();
    wrong.extend(over(Most::Name, &page.title));
    for sheet in &page.sheets {
        wrong.extend(over(Most::Name, &sheet.title));
    }
    let sheets = page.sheets.iter().flat_map(|sheet| &sheet.blocks);
    for block in page.blocks.iter().chain(&page.thumb).chain(sheets) {
        walk(block, &mut wrong);
    }
    wrong
}

fn walk(block: &Block, wrong: &mut Vec<String>) {
    // A source is cited as it was published.
    if matches!(&block.kind, Kind::Fold(fold) if fold.sources) {
        return;
    }
    wrong.extend(block.buttons().into_iter().flat_map(button));
    wrong.extend(own(block));
    for inside in block.inside() {
        walk(inside, wrong);
    }
}

/// A button's own words. One that names an animal is its row, and what was seen of it stands behind a dot.
fn button(button: &Button) -> Vec<String> {
    let label = button.label.split(" · ").next().unwrap_or_default();
    let mut wrong = over(Most::Button, &with_short_tags(label));
    // What opens is told by its chevron.
    wrong.extend(label.ends_with('…').then(|| format!("a button that ends in dots: {label:?}")));
    wrong
}

/// A tag is anybody's word: however long it was typed, it counts as one of twelve letters.
fn with_short_tags(label: &str) -> String {
    let is_tag = |word: &str| word.chars().any(|letter| letter.is_ascii_digit());
    let short = |word: &str| if is_tag(word) { word.chars().take(12).collect() } else { word.to_owned() };
    label.split(' ').map(short).collect::<Vec<String>>().join(" ")
}

fn own(block: &Block) -> Vec<String> {
    match &block.kind {
        Kind::Section(it) => over(Most::Name, &it.title),
        Kind::Heading(it) => over(Most::Name, &it.text),
        Kind::Fold(it) => over(Most::Line, &it.label.plain()),
        Kind::Field(it) => {
            let hint = sentences(&it.hint);
            over(Most::Name, &it.label).into_iter().chain(hint).collect()
        }
        Kind::Choices(it) => {
            let most = if it.shape == ChoicesShape::Even { Most::Beside } else { Most::Line };
            let option = |one: &yeanling_pages::block::Choice| {
                over(most, &with_short_tags(&one.label))
                    .into_iter()
                    .chain(sentences(&one.note))
                    .collect::<Vec<_>>()
            };
            over(Most::Name, &it.label).into_iter().chain(it.options.iter().flat_map(option)).collect()
        }
        Kind::Toggle(it) => over(Most::Beside, &it.label),
        Kind::DrawnButton(it) => over(Most::Button, &it.label),
        Kind::FilePick(it) => over(Most::Button, &it.label),
        Kind::List(it) if cites(it.look) => Vec::new(),
        // What was typed and what was found are anybody's words.
        Kind::Timeline(_) | Kind::PaperCard(_) => Vec::new(),
        Kind::Line(it) if it.look == LineLook::Small && block_cites(&it.text.plain()) => Vec::new(),
        Kind::Group(it) if it.shape == Shape::Night => Vec::new(),
        Kind::Chart(_) | Kind::Ribbon(_) => Vec::new(),
        _ => {
            let buttons: Vec<&String> =
                block.buttons().into_iter().flat_map(|one| [&one.label, &one.name]).collect();
            let texts = block.texts().into_iter().filter(|text| !buttons.contains(&text));
            texts.flat_map(|text| sentences(&text)).collect()
        }
    }
}

/// Whether a list cites, or works out a figure.
const fn cites(look: ListLook) -> bool {
    matches!(look, ListLook::Sources | ListLook::Others | ListLook::Working)
}

/// Whether small print names who says so.
fn block_cites(text: &str) -> bool {
    ["Eales", "Henderson", "Irish Farmers", "North Canterbury", "NADIS", "Hernández"]
        .iter()
        .any(|who| text.contains(who))
}

fn over(most: Most, text: &str) -> Vec<String> {
    let long = text.chars().count();
    let over = long > most as usize;
    over.then(|| format!("{long} letters are more than {} ({most:?}): {text:?}", most as usize))
        .into_iter()
        .collect()
}

/// Says which sentences of a text are too long.
fn sentences(text: &str) -> Vec<String> {
    // What is listed is read one by one.
    let items = |part: &'_ str| if part.matches(", ").count() >= LISTED { ", " } else { "\n" };
    let parts = parts(text).into_iter().flat_map(|part| part.split(items(part)));
    parts.flat_map(|part| over(Most::Sentence, part)).collect()
}

/// Returns the parts of a text between which a reader breathes.
fn parts(text: &str) -> Vec<&str> {
    let mut parts = Vec::new();
    let mut rest = text;
    let ends = [". ", ": ", "; ", "? ", "! ", " · "];
    while let Some((at, end)) = ends.iter().filter_map(|end| Some((rest.find(end)?, end.len()))).min() {
        parts.push(&rest[..at]);
        rest = &rest[at + end..];
    }
    parts.push(rest);
    parts
}

#[test]
fn what_is_too_long_is_found() {
    assert!(over(Most::Button, "Hand the alarms to my calendar").len() == 1);
    assert!(over(Most::Button, "Alarms to my calendar").is_empty());
    assert_eq!(parts("Dry it. Warm it: 40 °C at most · now").len(), 4);
    assert!(sentences(&"word ".repeat(20)).len() == 1);
}

#[test]
fn every_page_and_sheet_is_short_enough() {
    let mut wrong = std::collections::BTreeSet::new();
    for phone in crate::speech::phones() {
        for page in crate::speech::pages(&phone) {
            wrong.extend(broken(&page));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.into_iter().collect::<Vec<_>>().join("\n"));
}
