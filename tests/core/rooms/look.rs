//! How every file looks.

use super::{File, files, no_faults};

/// The most lines of a file; 400 is the aim.
const MOST_LINES: usize = 500;

/// The most lines of DEVELOPERS.md, so that whoever comes reads all of it.
const MOST_LINES_OF_THE_HOUSE: usize = 150;

/// British spellings, as the beginnings of words; and the American words that begin so too.
const BRITISH: &[(&str, &[&str])] = &[
    ("aeroplane", &[]),
    ("ageing", &[]),
    ("anaemi", &[]),
    ("apologis", &[]),
    ("behaviour", &[]),
    ("centimetre", &[]),
    ("centre", &[]),
    ("colour", &[]),
    ("diarrhoea", &[]),
    ("favour", &[]),
    ("fibre", &[]),
    ("foetus", &[]),
    ("grey", &[]),
    ("haemo", &[]),
    ("honour", &[]),
    ("humour", &[]),
    ("kilometre", &[]),
    ("labour", &[]),
    ("licence", &[]),
    ("litre", &[]),
    ("metre", &[]),
    ("millilitre", &[]),
    ("mould", &[]),
    ("neighbour", &[]),
    ("odour", &[]),
    ("oedema", &[]),
    ("oestr", &[]),
    ("organis", &["organism"]),
    ("paediatric", &[]),
    ("plough", &[]),
    ("practis", &[]),
    ("programme", &["programmed", "programmer"]),
    ("recognis", &[]),
    ("rumour", &[]),
    ("sulphur", &[]),
    ("tumour", &[]),
    ("vapour", &[]),
    ("vigour", &[]),
    ("whilst", &[]),
];

/// A line that must name a British spelling, such as the title of a source, ends so.
const AS_PRINTED: &str = "// as printed";

fn of_all_rust() -> Vec<File> {
    ["src", "tests"].into_iter().flat_map(|folder| files(folder, ".rs")).collect()
}

#[test]
fn every_file_says_in_its_first_line_what_it_is() {
    let all = of_all_rust();
    assert!(all.len() > 50, "the tree was found");
    let silent = all.iter().filter(|file| !file.text.starts_with("//! "));
    no_faults(&silent.map(|file| file.name.clone()).collect::<Vec<_>>());
}

#[test]
fn no_file_is_too_long_to_read() {
    let all = of_all_rust().into_iter().chain(files("style", ".css"));
    let long =
        all.map(|file| (file.text.lines().count(), file.name)).filter(|(lines, _)| *lines > MOST_LINES);
    no_faults(&long.map(|(lines, name)| format!("{name}: {lines} lines")).collect::<Vec<_>>());
}

#[test]
fn the_house_is_told_in_few_lines() {
    let lines = File::read("DEVELOPERS.md").text.lines().count();
    assert!(lines <= MOST_LINES_OF_THE_HOUSE, "DEVELOPERS.md has {lines} lines");
}

/// Returns the lines of a file that carry a style of their own.
fn styled(file: &File) -> Vec<String> {
    let lines = file.text.lines().enumerate();
    lines
        .filter(|(_, line)| {
            ["style=\"", "style='", " style=format!", " style=move"].iter().any(|sign| line.contains(sign))
        })
        .map(|(number, line)| format!("{}:{}: {}", file.name, number + 1, line.trim()))
        .collect()
}

#[test]
fn no_element_carries_a_style_of_its_own() {
    let mut all = files("src", ".rs");
    // The build chores look for the same thing in the page, and so must name it.
    all.retain(|file| !file.name.starts_with("src/xtask/"));
    all.push(File::read("index.html"));
    no_faults(&all.iter().flat_map(styled).collect::<Vec<_>>());
    let file = |text: &str| File { name: "x.rs".to_owned(), text: text.to_owned() };
    assert_eq!(styled(&file("<p style=\"color:red\">")).len(), 1);
    assert_eq!(styled(&file("<p class=\"style\" style:--at=x>")).len(), 0);
}

#[test]
fn every_sheet_is_linked_and_every_link_has_its_sheet() {
    let page = File::read("index.html").text;
    let mut linked: Vec<&str> = page
        .lines()
        .filter(|line| line.contains("data-trunk") && line.contains("rel=\"css\""))
        .filter_map(|line| line.split_once("href=\"")?.1.split_once('"').map(|(name, _)| name))
        .collect();
    assert_eq!(linked.first(), Some(&"style/layers.css"), "the order of the layers comes first");
    linked.sort_unstable();
    let sheets = files("style", ".css");
    let sheets: Vec<&str> = sheets.iter().map(|file| file.name.as_str()).collect();
    assert_eq!(linked, sheets);
}

/// Returns CSS without its comments.
fn bare(css: &str) -> String {
    let mut out = String::new();
    let mut rest = css;
    while let Some((before, after)) = rest.split_once("/*") {
        out.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    out + rest
}

/// Returns what is wrong with the layer of a sheet.
fn layer(file: &File, layers: &[&str]) -> Option<String> {
    let css = bare(&file.text);
    let mut css = css.trim();
    // A face belongs to no layer.
    while css.starts_with("@font-face") {
        css = css.split_once('}').map_or("", |(_, after)| after.trim_start());
    }
    let name = css.strip_prefix("@layer ").and_then(|rest| rest.split_once('{')).map(|(name, _)| name.trim());
    let place = file.name.strip_prefix("style/").unwrap_or(&file.name);
    let own = place.split_once('/').map_or(place.trim_end_matches(".css"), |(folder, _)| folder);
    if css.matches("@layer").count() != 1 {
        Some(format!("{}: one @layer, no more", file.name))
    } else if name != Some(own) || !layers.contains(&own) {
        Some(format!("{}: starts with @layer {name:?}, not {own:?}", file.name))
    } else {
        let (mut depth, mut closed) = (0, 0);
        for (index, c) in css.char_indices() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                _ => continue,
            }
            if depth == 0 {
                closed = index + 1;
                break;
            }
        }
        (closed != css.len()).then(|| format!("{}: something stands outside its layer", file.name))
    }
}

#[test]
fn every_sheet_is_one_layer_named_by_its_place() {
    let order = bare(&File::read("style/layers.css").text);
    let order = order.trim().strip_prefix("@layer ").expect("the layers").trim_end_matches(';').to_owned();
    let layers: Vec<&str> = order.split(", ").collect();
    let sheets = files("style", ".css");
    let sheets = sheets.iter().filter(|file| file.name != "style/layers.css");
    no_faults(&sheets.filter_map(|file| layer(file, &layers)).collect::<Vec<_>>());
    let wrong =
        |text: &str| layer(&File { name: "style/parts/x.css".to_owned(), text: text.to_owned() }, &layers);
    assert_eq!(wrong("@font-face { src: x; }\n@layer parts { .x {} }"), None);
    assert_eq!(wrong("/* x */\n@layer parts {\n  .x { color: red; }\n}\n"), None);
    for css in [
        ".x {}",
        "@layer screens { .x {} }",
        "@layer parts { .x {} } .y {}",
        "@layer parts { .x {} } @layer parts {}",
        ".y {} @layer parts { .x {} }",
    ] {
        assert!(wrong(css).is_some(), "{css}");
    }
}

/// Returns the British spellings in a file.
fn british(file: &File) -> Vec<String> {
    let mut found = Vec::new();
    for (number, line) in file.text.lines().enumerate().filter(|(_, line)| !line.ends_with(AS_PRINTED)) {
        for word in line.split(|c: char| !c.is_alphabetic()).map(str::to_lowercase) {
            let is_british = |(start, but): &&(&str, &[&str])| {
                word.starts_with(start) && !but.iter().any(|but| word.starts_with(but))
            };
            if BRITISH.iter().any(|entry| is_british(&entry)) {
                found.push(format!("{}:{}: {word}", file.name, number + 1));
            }
        }
    }
    found
}

#[test]
fn what_people_read_is_spelled_in_american() {
    let rooms = ["src/words", "src/pages", "src/draw"];
    let all = rooms.into_iter().flat_map(|room| files(room, ".rs")).chain([File::read("index.html")]);
    no_faults(&all.flat_map(|file| british(&file)).collect::<Vec<_>>());
    let file = |text: &str| File { name: "x.rs".to_owned(), text: text.to_owned() };
    assert_eq!(british(&file("\"Labour, 2 Litres\"")), ["x.rs:1: labour", "x.rs:1: litres"]);
    assert_eq!(british(&file("\"Journal of Labour\" // as printed\norganism")), Vec::<String>::new());
}

#[test]
fn every_calculation_is_checked_against_where_it_was_printed() {
    let found: Vec<String> = files("tests/core/handbook", ".rs").into_iter().map(|file| file.name).collect();
    for folder in ["", "season/"] {
        let room = File::read(&format!("src/core/reckon/{folder}mod.rs")).text;
        let names: Vec<&str> =
            room.lines().filter_map(|line| line.strip_prefix("pub mod ")?.strip_suffix(';')).collect();
        assert!(names.len() > 5, "{names:?}");
        let places = names.iter().map(|name| format!("tests/core/handbook/{folder}{name}"));
        let missing = places.filter(|place| {
            !found.iter().any(|name| *name == format!("{place}.rs") || *name == format!("{place}/mod.rs"))
        });
        no_faults(&missing.collect::<Vec<_>>());
    }
}
