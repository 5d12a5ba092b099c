//! How pages speak: what no shepherd would say stands on none.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use yeanling_core::book::{Book, Event};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Moment, System};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Page, Text, sample};

use crate::phone::Phone;
use crate::reach::texts;

/// What reads as a riddle or as a translation, and what is said instead.
const UNSAID: [(&str, &str); 48] = [
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
    ("Sucked", "say “Nursed”"),
    (" sucked", "say “nursed”"),
    ("seen to suck", "say “seen to nurse”"),
    ("irst milk", "say “colostrum”"),
    ("irst day’s milk", "say “first day’s feeds”"),
    ("ast call", "say “colostrum deadline”"),
    ("See to ", "say what opens"),
    ("Go on with", "say “Resume”"),
    ("Same as", "say “Merge duplicate”"),
    ("am takes it", "say “ewe accepts it”"),
    ("Remark", "say “Note”"),
    ("Arm the", "say “Turn alarm on”"),
    ("Armed", "say “Alarm on”"),
    ("isarm", "say “Turn alarm off”"),
    ("Fed so", "say “Feeding this now”"),
    ("All true: tubed", "say “save”"),
    ("comes back by itself", "say “You will be reminded.”"),
    ("so many", "say how many"),
    ("Told by", "say “By”"),
    (" is told", "say what shows, or who says it"),
    (" are told", "say what shows, or who says it"),
    ("held against", "say “compared with”"),
    ("without milk", "say “no milk yet”"),
    ("past her days", "she is overdue"),
    ("from memory", "say “unconfirmed”"),
    ("ecalled", "say “unconfirmed”"),
    ("just begun", "say how much more time"),
    ("-0.0", "what is nothing has no sign"),
];

/// What is said where work can hurt, and to whom to turn: every box of cautions says some of it.
const CAUTIONS: [&str; 31] = [
    "never",
    "not before",
    "no milk",
    "no heat",
    "nothing by",
    "no doses",
    "no dose",
    "vet",
    "kill",
    "starve",
    "harm",
    "disease",
    "catch",
    "pregnant",
    "keep away",
    "keeps away",
    "withdrawal",
    "label",
    "rules",
    "law",
    "stop",
    "not sure",
    "do not",
    "caution",
    "does not replace",
    "underfeed",
    "overfeed",
    "before any milk",
    "half the guidance",
    "let no",
    "loses condition",
];

/// Says what of a page no shepherd would say.
pub(crate) fn broken(page: &Page) -> Vec<String> {
    let said: BTreeSet<String> = texts(page).into_iter().collect();
    let unsaid = said.iter().flat_map(|text| unsaid(text).map(move |instead| format!("{instead}: {text:?}")));
    unsaid.chain(no_cautions(page)).collect()
}

/// Says which boxes of cautions hold a line that warns of nothing.
fn no_cautions(page: &Page) -> Vec<String> {
    let line = |line: &Text| {
        let text = line.plain().to_lowercase();
        (!CAUTIONS.iter().any(|word| text.contains(word)))
            .then(|| format!("no caution, but in its box: {text:?}"))
    };
    let lines = page.all().into_iter().flat_map(|block| match &block.kind {
        Kind::Caution(lines) => lines.iter().filter_map(line).collect(),
        _ => Vec::new(),
    });
    lines.collect()
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

/// Returns phones on which much is said: an empty one, and a flock at night and a day later, in both units.
pub(crate) fn phones() -> Vec<Phone> {
    let begins = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut all = vec![Phone::with(Book::default(), begins)];
    for (system, hours) in [(System::Metric, 0), (System::Us, 0), (System::Metric, 30), (System::Us, 30)] {
        let mut phone = Phone::with(sample::book(begins, system), begins);
        phone.note(Event::Chose(Choice::System(system)));
        phone.later(hours * 60);
        all.push(phone);
    }
    all
}

/// Returns every page of a phone, and every one with a sheet over it.
pub(crate) fn pages(phone: &Phone) -> Vec<Page> {
    let sheet = |sheet: yeanling_pages::Sheet| {
        let mut asked = phone.clone();
        asked.act(&Action::Ask(sheet));
        asked.page()
    };
    let screens = phone.screens().into_iter().map(|screen| phone.page_of(screen));
    screens.chain(crate::sheets::every(phone).into_iter().map(sheet)).collect()
}

#[test]
fn every_page_and_sheet_speaks_as_a_shepherd_does() {
    let wrong: BTreeSet<String> = phones().iter().flat_map(pages).flat_map(|page| broken(&page)).collect();
    assert!(wrong.is_empty(), "{}", wrong.into_iter().collect::<Vec<_>>().join("\n"));
}

/// Returns what stands between quotes in the source of a file, but in its comments and its tests.
fn quoted(source: &str) -> Vec<String> {
    let source = source.split("#[cfg(test)]").next().unwrap_or_default();
    let lines = source.lines().filter(|line| !line.trim_start().starts_with("//"));
    let mut all = vec![String::new()];
    let (mut inside, mut escaped) = (false, false);
    for sign in lines.flat_map(|line| line.chars().chain(['\n'])) {
        match (inside, escaped, sign) {
            (_, false, '"') => {
                inside = !inside;
                all.push(String::new());
            }
            (true, false, '\\') => escaped = true,
            (true, _, sign) => {
                escaped = false;
                all.last_mut().expect("there is one").push(sign);
            }
            (false, ..) => {}
        }
    }
    all.retain(|text| !text.is_empty());
    all
}

#[test]
fn every_word_in_the_source_is_one_that_a_shepherd_would_say() {
    fn files(folder: &Path, to: &mut Vec<PathBuf>) {
        for one in fs::read_dir(folder).expect("a folder").map(|one| one.expect("an entry").path()) {
            if one.is_dir() { files(&one, to) } else { to.push(one) }
        }
    }
    let mut all = Vec::new();
    files(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../words"), &mut all);
    let (mut wrong, mut read) = (Vec::new(), 0);
    for file in all.iter().filter(|file| file.extension().is_some_and(|ending| ending == "rs")) {
        let texts = quoted(&fs::read_to_string(file).expect("a file"));
        read += texts.len();
        // What people look for is found in their words, and those are in small letters without an end.
        let says = |text: &&String| {
            text.len() > 6 && (text.contains(['.', '*', ':', ',']) || text.starts_with(char::is_uppercase))
        };
        let texts = texts.iter().filter(says);
        wrong.extend(texts.flat_map(|text| unsaid(text).map(move |instead| format!("{instead}: {text:?}"))));
    }
    assert!(read > 2_000, "only {read} texts were read");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
