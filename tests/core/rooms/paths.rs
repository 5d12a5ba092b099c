//! What a file mentions: every path in it, in `use` or inline, from the top of its crate.
//!
//! No parser of Rust: comments and texts are blanked, then `a::b::{c, d::e}` is read wherever it stands. A name that
//! stands alone is no path; what it means was said where it was brought in.

/// Returns the paths in a file, each from the top: `crate::…` or the name of another crate.
///
/// `module` is where the file stands in its crate, such as `["watch", "newborn"]` for `watch/newborn/mod.rs`.
pub(super) fn paths(source: &str, module: &[String]) -> Vec<String> {
    let tokens = tokens(&blank(source));
    let mut here: Vec<String> = module.to_vec();
    // How deep in braces each inline module began.
    let mut inline: Vec<usize> = Vec::new();
    let mut depth = 0;
    let mut found = Vec::new();
    let mut index = 0;
    while index < tokens.len() {
        let token = tokens[index].as_str();
        match token {
            "{" => depth += 1,
            "}" => {
                depth -= 1;
                if inline.last() == Some(&depth) {
                    inline.pop();
                    here.pop();
                }
            }
            "mod" if tokens.get(index + 2).is_some_and(|token| token == "{") => {
                here.push(tokens[index + 1].clone());
                inline.push(depth);
                depth += 1;
                index += 2;
            }
            // Not `impl Trait + use<>`, which brings nothing in.
            "use" if tokens.get(index + 1).is_some_and(|token| token != "<") => {
                let mut ends = Vec::new();
                index = tree(&tokens, index + 1, "", &mut ends);
                found.extend(ends.iter().filter_map(|path| from_top(path, &here)));
                continue;
            }
            _ if is_name(token) => {
                let (path, after) = chain(&tokens, index);
                if path.contains("::") {
                    found.extend(from_top(&path, &here));
                }
                index = after;
                continue;
            }
            _ => {}
        }
        index += 1;
    }
    found
}

/// Reads `a::b::c` and returns it with where it ends.
fn chain(tokens: &[String], mut index: usize) -> (String, usize) {
    let mut path = tokens[index].clone();
    index += 1;
    while tokens.get(index).is_some_and(|token| token == "::")
        && tokens.get(index + 1).is_some_and(|token| is_name(token))
    {
        path = format!("{path}::{}", tokens[index + 1]);
        index += 2;
    }
    (path, index)
}

/// Reads what stands in a `use`, from after the `use`, and returns where it ends.
fn tree(tokens: &[String], mut index: usize, before: &str, ends: &mut Vec<String>) -> usize {
    let mut path = before.to_owned();
    while let Some(token) = tokens.get(index) {
        index += 1;
        match token.as_str() {
            "::" => {}
            "{" => {
                while tokens.get(index).is_some_and(|token| token != "}" && token != ";") {
                    index = tree(tokens, index, &path, ends);
                    if tokens.get(index).is_some_and(|token| token == ",") {
                        index += 1;
                    }
                }
                return index + 1;
            }
            "as" => index += 1,
            ";" | "," | "}" => {
                index -= 1;
                break;
            }
            name => path = if path.is_empty() { name.to_owned() } else { format!("{path}::{name}") },
        }
    }
    ends.push(path);
    index
}

/// Returns a path from the top of its crate; none for one that begins with a type or a name brought in elsewhere.
fn from_top(path: &str, here: &[String]) -> Option<String> {
    let mut parts: Vec<&str> = path.split("::").collect();
    let mut from: Vec<&str> = match parts[0] {
        "crate" => Vec::new(),
        "self" | "super" => here.iter().map(String::as_str).collect(),
        first => {
            return first.starts_with(|c: char| c.is_ascii_lowercase() || c == '_').then(|| path.to_owned());
        }
    };
    let mut rest = parts.split_off(usize::from(parts[0] != "super"));
    while rest.first() == Some(&"super") {
        from.pop();
        rest.remove(0);
    }
    let whole: Vec<&str> = std::iter::once("crate").chain(from).chain(rest).collect();
    Some(whole.join("::"))
}

fn is_name(token: &str) -> bool {
    token.starts_with(|c: char| c.is_alphabetic() || c == '_')
}

/// Returns names, `::` and single marks.
fn tokens(source: &str) -> Vec<String> {
    let mut tokens: Vec<String> = Vec::new();
    let mut rest = source;
    while let Some(first) = rest.chars().next() {
        let length = if first.is_alphanumeric() || first == '_' {
            rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len())
        } else if rest.starts_with("::") {
            2
        } else {
            first.len_utf8()
        };
        let (token, after) = rest.split_at(length);
        if !first.is_whitespace() {
            tokens.push(token.to_owned());
        }
        rest = after;
    }
    tokens
}

/// Returns source with nothing in place of its comments and texts.
pub(super) fn blank(source: &str) -> String {
    let mut out = String::with_capacity(source.len());
    let mut rest = source;
    while let Some(first) = rest.chars().next() {
        let skip = match first {
            '/' if rest.starts_with("//") => rest.find('\n').unwrap_or(rest.len()),
            '/' if rest.starts_with("/*") => rest.find("*/").map_or(rest.len(), |end| end + 2),
            'r' if !out.ends_with(is_part_of_a_name) => raw_text(rest),
            '"' => text(rest),
            '\'' => character(rest),
            _ => 0,
        };
        if skip > 0 {
            out.push(' ');
            rest = &rest[skip..];
        } else {
            out.push(first);
            rest = &rest[first.len_utf8()..];
        }
    }
    out
}

fn is_part_of_a_name(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// How long the text is that begins here.
fn text(rest: &str) -> usize {
    let mut escaped = false;
    for (index, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return index + 1,
            _ => {}
        }
    }
    rest.len()
}

/// How long the raw text is that begins here; 0 if none does.
fn raw_text(rest: &str) -> usize {
    let hashes = rest[1..].chars().take_while(|c| *c == '#').count();
    if !rest[1 + hashes..].starts_with('"') {
        return 0;
    }
    let close = format!("\"{}", "#".repeat(hashes));
    let from = hashes + 2;
    rest[from..].find(&close).map_or(rest.len(), |end| from + end + close.len())
}

/// How long the character is that begins here; 0 for a lifetime.
fn character(rest: &str) -> usize {
    let mut inside = rest[1..].char_indices();
    match inside.next() {
        Some((_, '\\')) => rest[3..].find('\'').map_or(0, |end| 3 + end + 1),
        Some(_) => match inside.next() {
            Some((end, '\'')) => 1 + end + 1,
            Some(_) | None => 0,
        },
        None => 0,
    }
}

#[track_caller]
fn check(source: &str, module: &str, expected: &[&str]) {
    let module: Vec<String> = module.split("::").filter(|part| !part.is_empty()).map(str::to_owned).collect();
    assert_eq!(paths(source, &module), expected, "{source}");
}

#[test]
fn a_path_is_found_wherever_it_stands() {
    check("use crate::a::B;", "", &["crate::a::B"]);
    check("let x = crate::a::b(1);", "", &["crate::a::b"]);
    check(
        "fn f(x: &web_sys::Window) -> std::time::Instant {}",
        "",
        &["web_sys::Window", "std::time::Instant"],
    );
    check("use leptos::prelude::*;", "", &["leptos::prelude::*"]);
    check("pub(crate) use a::b as c; d::e::<f::G>()", "", &["a::b", "d::e", "f::G"]);
    check("Type::new(); alone; x.y", "", &[]);
    check("fn f() -> impl View + use<> { a::b(); }", "", &["a::b"]);
}

#[test]
fn the_branches_of_a_use_are_paths_of_their_own() {
    check(
        "use crate::{a::{self, B, c::D as E}, f};",
        "",
        &["crate::a::self", "crate::a::B", "crate::a::c::D", "crate::f"],
    );
    check("use a::{\n    b,\n    c,\n};\nuse d;", "", &["a::b", "a::c", "d"]);
}

#[test]
fn a_path_is_told_from_the_top() {
    check(
        "use super::x; use self::y; use super::super::z::W;",
        "a::b",
        &["crate::a::x", "crate::a::b::y", "crate::z::W"],
    );
    check(
        "mod tests { use super::x; use super::super::y; } use super::z;",
        "a::b",
        &["crate::a::b::x", "crate::a::y", "crate::a::z"],
    );
    check("mod tests { fn f() { if x {} } use super::*; } super::z()", "a", &["crate::a::*", "crate::z"]);
}

#[test]
fn comments_and_texts_mention_nothing() {
    check("// use crate::a::B;\n/* crate::c::d */ x::y", "", &["x::y"]);
    check(r####""crate::a::b" r#"crate::"c"::d"# '"' '\'' '\u{1f}' "\"e::f" x::y"####, "", &["x::y"]);
    check("fn f<'a>(x: &'a g::H, y: &'a str) { z::w('a') }", "", &["g::H", "z::w"]);
}
