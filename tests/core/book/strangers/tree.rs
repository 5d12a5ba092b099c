//! JSON that a library would never write: any text as a value, the same name twice, anything in any place.

use std::collections::BTreeMap;

use proptest::prelude::*;
use proptest::sample::Index;
use serde_json::Value;
use serde_json::value::RawValue;

/// Words that have broken other programs: marks that turn the text round, script, formulas, ends of lines.
pub(super) const WORDS: &[&str] = &[
    "<script>alert(1)</script>",
    "</textarea><img src=x onerror=\"alert(1)\">",
    "\u{202e}23\u{202c} \u{2066}evil\u{2069} \u{202a}\u{202b}\u{202d}\u{2067}\u{2068}",
    "\u{202e}=1+1",
    "=HYPERLINK(\"https://example.org\",\"tag\")",
    "@SUM(A1:A9)",
    "\u{ff1d}1+1",
    "two\r\nlines\nBEGIN:VEVENT\r\nEND:VCALENDAR",
    "\u{0}nothing\u{0}",
    "\u{feff}marked",
    "",
    "'; DROP TABLE ewes; --",
    "\\\\ \\\" ${x} {{x}} %s",
    "🐑\u{200d}🐑\u{fe0f}\u{e0001}\u{fffd}",
    "é\u{301}\u{301}\u{301}\u{301}",
];

/// Values that have broken other readers, each as its JSON.
const VALUES: &[&str] = &[
    "null",
    "true",
    "[]",
    "{}",
    "[[[[[[[[]]]]]]]]",
    "{\"a\":{\"a\":{\"a\":{}}}}",
    "-0",
    "-1",
    "0.0",
    "4",
    "1e999",
    "-1e999",
    "1E+400",
    "1e-400",
    "0.1000000000000000055511151231257827021181583404541015625",
    "255",
    "256",
    "65536",
    "9007199254740993",
    "18446744073709551616",
    "123456789012345678901234567890123456789012345678901234567890",
    "\"NaN\"",
    "\"\\ud800\"",
    "\"\\udc11\\ud83d\"",
    "\"\\ud83d\\udc11\"",
    "\"\\u0000\\u202e\\/\"",
    "\"1900-01-01T00:00:00.000-18:00\"",
    "\"9999-12-31T00:00:00.000+18:00\"",
    "\"9999-12-31T23:59:59.999+23:59\"",
    "\"2026-02-25T23:59:60.999Z\"",
    "\"2026-02-25T03:12:00.0005-05:00\"",
    "\"2026-02-25t03:12:00z\"",
    "\"+12026-02-25T03:12:00.000Z\"",
    "\"019C0000-0000-7000-8000-000000000001\"",
    "\"urn:uuid:019c0000-0000-7000-8000-000000000001\"",
    "\"{019c0000-0000-7000-8000-000000000001}\"",
    "\"019c00000000700080000000000000ff\"",
    "\"00000000-0000-0000-0000-000000000000\"",
    "\"ffffffff-ffff-ffff-ffff-ffffffffffff\"",
];

/// JSON as it is written: what a value says is not looked into.
#[derive(Clone, Debug)]
pub(super) enum Tree {
    /// A value, as its JSON.
    Leaf(String),
    /// A list.
    List(Vec<Self>),
    /// Fields, each with its name as JSON; a name may come twice.
    Fields(Vec<(String, Self)>),
}

impl Tree {
    /// Reads JSON, number for number as it was written; what cannot be parted stays whole.
    pub(super) fn of(json: &str) -> Self {
        if let Ok(items) = serde_json::from_str::<Vec<&RawValue>>(json) {
            Self::List(items.into_iter().map(|item| Self::of(item.get())).collect())
        } else if let Ok(fields) = serde_json::from_str::<BTreeMap<String, &RawValue>>(json) {
            Self::Fields(fields.iter().map(|(name, value)| (quoted(name), Self::of(value.get()))).collect())
        } else {
            Self::Leaf(json.to_owned())
        }
    }

    pub(super) fn json(&self) -> String {
        match self {
            Self::Leaf(json) => json.clone(),
            Self::List(items) => {
                format!("[{}]", items.iter().map(Self::json).collect::<Vec<_>>().join(","))
            }
            Self::Fields(fields) => {
                let fields = fields.iter().map(|(name, value)| format!("{name}:{}", value.json()));
                format!("{{{}}}", fields.collect::<Vec<_>>().join(","))
            }
        }
    }

    /// Returns how many values there are in it, itself among them.
    fn len(&self) -> usize {
        1 + match self {
            Self::Leaf(_) => 0,
            Self::List(items) => items.iter().map(Self::len).sum(),
            Self::Fields(fields) => fields.iter().map(|(_, value)| value.len()).sum(),
        }
    }

    /// Returns one of the values in it, counted from itself on.
    fn at(&mut self, number: usize) -> Option<&mut Self> {
        let Some(mut number) = number.checked_sub(1) else { return Some(self) };
        let inside: Vec<&mut Self> = match self {
            Self::Leaf(_) => Vec::new(),
            Self::List(items) => items.iter_mut().collect(),
            Self::Fields(fields) => fields.iter_mut().map(|(_, value)| value).collect(),
        };
        for value in inside {
            let held = value.len();
            if number < held {
                return value.at(number);
            }
            number -= held;
        }
        None
    }

    /// Changes it in one place.
    pub(super) fn change(&mut self, change: &Change) {
        let length = self.len();
        let (place, other) = (change.place.index(length), change.other.index(length));
        let taken = self.at(other).map(|tree| tree.clone());
        let Some(tree) = self.at(place) else { return };
        match (&change.how, taken) {
            (How::Says(json), _) => *tree = Self::Leaf(json.clone()),
            (How::SaysAsElsewhere, Some(taken)) => *tree = taken,
            (How::Deeper(levels), _) => {
                *tree = Self::Leaf(format!("{}{}{}", "[".repeat(*levels), tree.json(), "]".repeat(*levels)));
            }
            (how, _) => tree.change_fields(how, change.other),
        }
    }

    fn change_fields(&mut self, how: &How, other: Index) {
        match self {
            Self::Leaf(_) => {}
            Self::List(items) if items.is_empty() => {}
            Self::List(items) => {
                let (one, last) = (other.index(items.len()), items.len() - 1);
                match how {
                    How::Gone => _ = items.remove(one),
                    How::Twice => items.push(items[one].clone()),
                    _ => items.swap(one, last),
                }
            }
            Self::Fields(fields) if fields.is_empty() => {}
            Self::Fields(fields) => {
                let (one, last) = (other.index(fields.len()), fields.len() - 1);
                match how {
                    How::Gone => _ = fields.remove(one),
                    How::Twice => fields.push(fields[one].clone()),
                    How::Named(name) => fields[one].0.clone_from(name),
                    _ => fields.swap(one, last),
                }
            }
        }
    }
}

/// What is done to a value, or to what it holds.
#[derive(Clone, Debug)]
enum How {
    Says(String),
    SaysAsElsewhere,
    Deeper(usize),
    Named(String),
    Gone,
    Twice,
    Swapped,
}

/// A change in one place.
#[derive(Clone, Debug)]
pub(super) struct Change {
    place: Index,
    other: Index,
    how: How,
}

fn quoted(text: &str) -> String {
    Value::from(text).to_string()
}

/// Words from the list, as JSON.
fn words() -> impl Strategy<Value = String> {
    prop::sample::select(WORDS).prop_map(quoted)
}

/// A value on its own, as JSON.
fn leaf() -> impl Strategy<Value = String> {
    prop_oneof![
        8 => prop::sample::select(VALUES).prop_map(str::to_owned),
        4 => words(),
        1 => any::<f64>().prop_map(|number| format!("{number:?}").replace("NaN", "1e309").replace("inf", "1e309")),
        1 => any::<i64>().prop_map(|number| number.to_string()),
        1 => any::<String>().prop_map(|text| quoted(&text)),
    ]
}

/// Any change.
pub(super) fn change() -> impl Strategy<Value = Change> {
    let how = prop_oneof![
        6 => leaf().prop_map(How::Says),
        2 => Just(How::SaysAsElsewhere),
        1 => prop_oneof![1..5_usize, 120..135_usize].prop_map(How::Deeper),
        1 => words().prop_map(How::Named),
        2 => Just(How::Gone),
        2 => Just(How::Twice),
        1 => Just(How::Swapped),
    ];
    (any::<Index>(), any::<Index>(), how).prop_map(|(place, other, how)| Change { place, other, how })
}

/// Any JSON, as it is written.
pub(super) fn tree() -> impl Strategy<Value = Tree> {
    let names = prop_oneof![words(), prop::sample::select(NAMES).prop_map(quoted)];
    leaf().prop_map(Tree::Leaf).prop_recursive(4, 24, 5, move |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..5).prop_map(Tree::List),
            prop::collection::vec((names.clone(), inner), 0..5).prop_map(Tree::Fields),
        ]
    })
}

/// Names that mean something in a book.
const NAMES: &[&str] = &[
    "format",
    "version",
    "made",
    "device",
    "count",
    "digest",
    "entries",
    "id",
    "noted",
    "at",
    "event",
    "ewe-came",
    "tag",
    "lamb-born",
    "alive",
    "dam",
    "weighed",
    "lamb",
    "kg",
    "fed",
    "ml",
    "amended",
    "entry",
    "struck",
    "chose",
    "limits",
    "put-off",
    "until",
    "same-animal",
    "keep",
    "also",
    "ewe",
];
