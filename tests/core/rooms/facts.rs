//! Facts are told apart by lists that the compiler keeps whole: a new one must never be misread or dropped in silence.

use super::{File, files, no_faults};

/// Rooms and files in which facts are read; each stands as the beginning of a path.
const READERS: &[&str] = &["src/core/", "src/words/", "src/pages/", "src/farm"];

/// Returns where a file tells facts apart by a list that leaves some out: a `matches!` of more than two, or a match on facts
/// with an arm for all others.
fn open_lists(file: &File) -> Vec<String> {
    let text = &without_comments(&file.text);
    let line_of = |at: usize| 1 + text[..at].matches('\n').count();
    let mut found = Vec::new();
    for (at, _) in text.match_indices("matches!(") {
        let inside = enclosed(&text[at + "matches!".len()..], '(', ')');
        if inside.matches("Event::").count() > 2 {
            found.push(format!("{}:{}: matches! of several facts", file.name, line_of(at)));
        }
    }
    for (at, _) in text.match_indices("match ") {
        let Some(open) = text[at..].find('{').filter(|open| !text[at..at + open].contains(['\n', ';']))
        else {
            continue;
        };
        let inside = enclosed(&text[at + open..], '{', '}');
        let arms = arms(inside);
        let of_facts = arms.iter().any(|arm| arm.contains("Event::") && !arm.contains("StorageEvent::"));
        if of_facts && arms.iter().any(|arm| arm == "_" || arm.starts_with("_ if ")) {
            found.push(format!("{}:{}: a match on facts with `_`", file.name, line_of(at)));
        }
    }
    found
}

/// Returns a text in which the lines that are comments are empty.
fn without_comments(text: &str) -> String {
    let lines = text.lines().map(|line| if line.trim_start().starts_with("//") { "" } else { line });
    lines.collect::<Vec<_>>().join("\n")
}

/// Returns what stands between the first bracket and its end, both left out.
fn enclosed(text: &str, open: char, close: char) -> &str {
    let mut depth = 0;
    for (at, c) in text.char_indices() {
        if c == open {
            depth += 1;
        } else if c == close {
            depth -= 1;
            if depth == 0 {
                return &text[1..at];
            }
        }
    }
    ""
}

/// Returns the patterns of a match: what stands before each `=>` at its own depth.
fn arms(inside: &str) -> Vec<String> {
    let (mut depth, mut from, mut arms) = (0, 0, Vec::new());
    let mut pattern = true;
    for (at, c) in inside.char_indices() {
        match c {
            '{' | '(' | '[' => depth += 1,
            '}' | ')' | ']' => {
                depth -= 1;
                // A block ends its arm, with or without a comma.
                if depth == 0 && !pattern && c == '}' {
                    (from, pattern) = (at + 1, true);
                }
            }
            ',' if depth == 0 => (from, pattern) = (at + 1, true),
            '=' if depth == 0 && pattern && inside[at..].starts_with("=>") => {
                arms.push(inside[from..at].trim().to_owned());
                pattern = false;
            }
            _ => {}
        }
    }
    arms
}

#[test]
fn facts_are_told_apart_by_whole_lists() {
    let all = files("src", ".rs");
    let readers = all.iter().filter(|file| READERS.iter().any(|room| file.name.starts_with(room)));
    no_faults(&readers.flat_map(open_lists).collect::<Vec<_>>());
}

#[test]
fn a_list_of_facts_with_a_gap_is_found() {
    let faults = |text: &str| open_lists(&File { name: "x.rs".to_owned(), text: text.to_owned() }).len();
    assert_eq!(faults("matches!(event, Event::Struck { .. } | Event::Restored { .. } | Event::Chose(_))"), 1);
    assert_eq!(faults("match event { Event::Fed { .. } => 1, _ => 0 }"), 1);
    assert_eq!(
        faults("match (self, event) { (A, Event::Fed { .. }) => { x() }\n// Nothing, else.\n_ => {} }"),
        1
    );
    assert_eq!(
        faults("match &event { Event::Fed { .. } => match way { Way::Tube => 1, _ => 2 }, other => 0 }"),
        0
    );
    assert_eq!(faults("matches!(line.event, Event::Fed { lamb, .. } if lamb == id)"), 0);
    assert_eq!(faults("matches!(event, Event::Life(Life::KeptAsEwe { .. }))"), 0);
    assert_eq!(faults("match number { 1 => Event::Stood { lamb }, _ => Event::Sucked { lamb } }"), 0);
}
