//! How pages speak: what no shepherd would say stands on none.

use std::collections::BTreeSet;

use yeanling_pages::Page;

use crate::reach::texts;

/// What reads as a riddle or as a translation, and what is said instead.
const UNSAID: [(&str, &str); 20] = [
    (" cannot be.", "say what is out of range, and what to enter"),
    (" is allowed.", "say “Enter A to B.”"),
    ("Allowed are", "say “Use …”"),
    ("is no day", "say “is not a date”"),
    ("is no range", "say “is not a range”"),
    (" is no book", "say “is not a Yeanling book”"),
    (" stand here", "say when it shows"),
    (" stands here", "say when it shows"),
    ("broken up", "a group ends"),
    ("taken down", "a pen is removed"),
    ("turned away", "a lamb is rejected"),
    ("Turned away", "a lamb is rejected"),
    ("withheld", "it is in withdrawal"),
    ("Withheld", "it is in withdrawal"),
    ("In print", "say “Published”"),
    ("in print", "say “published”"),
    ("lain on", "a lamb is overlain"),
    ("clean hand", "say “check inside”"),
    ("eck of the womb", "say “cervix”"),
    ("keeps the clock", "it watches the clock"),
];

/// Says what of a page no shepherd would say.
pub(crate) fn broken(page: &Page) -> Vec<String> {
    let said: BTreeSet<String> = texts(page).into_iter().collect();
    said.iter().flat_map(|text| unsaid(text).map(move |instead| format!("{instead}: {text:?}"))).collect()
}

fn unsaid(text: &str) -> impl Iterator<Item = &'static str> {
    let phrases = UNSAID.iter().filter(|(phrase, _)| text.contains(phrase)).map(|(_, instead)| *instead);
    phrases.chain(parted(text).then_some("no space between a number and its percent sign"))
}

/// Whether a number stands apart from its percent sign.
fn parted(text: &str) -> bool {
    text.match_indices(" %").any(|(at, _)| text[..at].ends_with(|c: char| c.is_ascii_digit()))
}

#[test]
fn what_no_shepherd_would_say_is_found() {
    let found = |text| unsaid(text).count();
    assert_eq!(found("4 kg cannot be. Between 0.5 and 12 kg"), 1);
    assert_eq!(found("12 % of body weight"), 1);
    assert_eq!(found("4 kg is out of range. Enter 0.5 to 12 kg."), 0);
    assert_eq!(found("Hay a day, % of body weight: 2.5%"), 0);
}
