//! No noun of the core stands twice: two lists with the same arms are one list, which stands in `terms`, beneath both.

use std::collections::BTreeSet;

use syn::visit::Visit;
use syn::{Fields, ItemEnum};

use super::{File, files, no_faults};

/// Lists that are alike by chance, each pair with why.
const BY_CHANCE: &[(&str, &str, &str)] =
    &[("DamsVaccinated", "Met", "yes, no and unknown answer two questions that have nothing in common")];

/// A list of plain arms, and where it stands.
struct List {
    file: String,
    name: String,
    arms: BTreeSet<String>,
}

/// Gathers the lists of one file. One whose arms hold something is more than its arms, and is passed over.
struct Lists<'a> {
    file: &'a str,
    found: Vec<List>,
}

impl<'ast> Visit<'ast> for Lists<'_> {
    fn visit_item_enum(&mut self, item: &'ast ItemEnum) {
        if item.variants.iter().all(|arm| matches!(arm.fields, Fields::Unit)) {
            let arms = item.variants.iter().map(|arm| arm.ident.to_string()).collect();
            self.found.push(List { file: self.file.to_owned(), name: item.ident.to_string(), arms });
        }
    }
}

#[track_caller]
fn lists(file: &File) -> Vec<List> {
    let mut lists = Lists { file: &file.name, found: Vec::new() };
    lists.visit_file(&syn::parse_file(&file.text).expect("the source is Rust"));
    lists.found
}

/// Returns the pairs of lists with the same arms.
fn twice(all: &[List]) -> Vec<(&List, &List)> {
    let after = |at: usize| all[at + 1..].iter();
    let pairs = all.iter().enumerate().flat_map(|(at, one)| after(at).map(move |other| (one, other)));
    pairs.filter(|(one, other)| one.arms == other.arms).collect()
}

fn by_chance(one: &List, other: &List) -> bool {
    let is = |a: &str, b: &str| one.name == a && other.name == b || one.name == b && other.name == a;
    BY_CHANCE.iter().any(|(a, b, _)| is(a, b))
}

#[test]
fn no_noun_of_the_core_stands_twice() {
    let all: Vec<List> = files("src/core", ".rs").iter().flat_map(lists).collect();
    assert!(all.len() > 50, "the lists were found");
    let (chance, faults): (Vec<_>, Vec<_>) =
        twice(&all).into_iter().partition(|(one, other)| by_chance(one, other));
    assert_eq!(chance.len(), BY_CHANCE.len(), "each is there");
    let told = |(one, other): &(&List, &List)| {
        format!("{}: {} is {} of {}", other.file, other.name, one.name, one.file)
    };
    no_faults(&faults.iter().map(told).collect::<Vec<_>>());
}

#[test]
fn a_noun_that_stands_twice_is_found() {
    let of = |texts: &[&str]| {
        let file = |text: &&str| File { name: "x.rs".to_owned(), text: (*text).to_owned() };
        let all: Vec<List> = texts.iter().map(file).flat_map(|file| lists(&file)).collect();
        twice(&all).len()
    };
    assert_eq!(of(&["enum Ring { Tail, Castration }", "pub enum Band { Castration, Tail }"]), 1);
    assert_eq!(of(&["enum Ring { Tail, Castration }", "enum Band { Castration, Tail, Ear }"]), 0);
    assert_eq!(of(&["enum Animal { Ewe(u8), Lamb(u8) }", "enum Whose { Ewe(u8), Lamb(u8) }"]), 0);
}
