//! What a file mentions: every path in it, in `use` or inline, from the top of its crate.
//!
//! A name that stands alone is no path; what it means was said where it was brought in. What a macro is given is read as
//! far as it is made of paths.

use proc_macro2::{TokenStream, TokenTree};
use syn::visit::{self, Visit};
use syn::{File, ItemMod, ItemUse, Macro, Path, UseTree};

/// Returns the paths in a file, each from the top: `crate::…` or the name of another crate.
///
/// `module` is where the file stands in its crate, such as `["watch", "newborn"]` for `watch/newborn/mod.rs`.
#[track_caller]
pub(super) fn paths(source: &str, module: &[String]) -> Vec<String> {
    let file: File = syn::parse_file(source).expect("the source is Rust");
    let mut seen = Seen { here: module.to_vec(), found: Vec::new() };
    seen.visit_file(&file);
    seen.found
}

struct Seen {
    /// The module that is read, from the top of its crate.
    here: Vec<String>,
    found: Vec<String>,
}

impl Seen {
    /// Takes a path in, from the top of its crate; `self` and `super` are followed.
    fn take(&mut self, path: &str) {
        let mut here = self.here.clone();
        let mut parts = path.split("::").peekable();
        let mut inside = false;
        while let Some(part) = parts.next_if(|part| matches!(*part, "self" | "super")) {
            inside = true;
            if part == "super" {
                here.pop();
            }
        }
        let rest: Vec<&str> = parts.collect();
        let full = if inside {
            std::iter::once("crate").chain(here.iter().map(String::as_str)).chain(rest).collect::<Vec<_>>()
        } else {
            rest
        };
        if full.len() > 1 {
            self.found.push(full.join("::"));
        }
    }

    fn tree(&mut self, before: &str, tree: &UseTree) {
        let with = |name: &str| if before.is_empty() { name.to_owned() } else { format!("{before}::{name}") };
        match tree {
            UseTree::Path(path) => self.tree(&with(&path.ident.to_string()), &path.tree),
            UseTree::Name(name) if name.ident == "self" => self.take(before),
            UseTree::Name(name) => self.take(&with(&name.ident.to_string())),
            UseTree::Rename(name) => self.take(&with(&name.ident.to_string())),
            UseTree::Glob(_) => self.take(&with("*")),
            UseTree::Group(group) => group.items.iter().for_each(|item| self.tree(before, item)),
        }
    }

    /// Reads what a macro is given: names with `::` between them.
    fn tokens(&mut self, tokens: TokenStream) {
        let mut path = String::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(name) if colons == 2 => {
                    path += &format!("::{name}");
                    colons = 0;
                }
                TokenTree::Ident(name) => {
                    self.take(&std::mem::replace(&mut path, name.to_string()));
                    colons = 0;
                }
                TokenTree::Punct(sign) if sign.as_char() == ':' => colons += 1,
                TokenTree::Group(group) => {
                    self.take(&std::mem::take(&mut path));
                    self.tokens(group.stream());
                }
                TokenTree::Punct(_) | TokenTree::Literal(_) => {
                    self.take(&std::mem::take(&mut path));
                    colons = 0;
                }
            }
        }
        self.take(&path);
    }
}

impl<'a> Visit<'a> for Seen {
    fn visit_item_mod(&mut self, module: &'a ItemMod) {
        self.here.push(module.ident.to_string());
        visit::visit_item_mod(self, module);
        self.here.pop();
    }

    fn visit_item_use(&mut self, item: &'a ItemUse) {
        self.tree("", &item.tree);
    }

    fn visit_path(&mut self, path: &'a Path) {
        let names: Vec<String> = path.segments.iter().map(|part| part.ident.to_string()).collect();
        self.take(&names.join("::"));
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, called: &'a Macro) {
        self.visit_path(&called.path);
        self.tokens(called.tokens.clone());
    }
}

#[cfg(test)]
mod tests {
    use super::paths;

    #[track_caller]
    fn check(source: &str, expected: &[&str]) {
        let module = ["watch".to_owned(), "x".to_owned()];
        assert_eq!(paths(source, &module), expected, "{source}");
    }

    #[test]
    fn a_use_is_laid_out_and_followed_to_the_top() {
        check("use a::{b, c::{self, d as e}};", &["a::b", "a::c", "a::c::d"]);
        check("use super::y::Z;", &["crate::watch::y::Z"]);
        check("mod inside { use super::super::y; }", &["crate::watch::y"]);
        check("use crate::*;", &["crate::*"]);
    }

    #[test]
    fn what_stands_inline_and_in_a_macro_is_found() {
        check("fn f(x: &a::B<c::D>) -> E { g::h(x) }", &["a::B", "c::D", "g::h"]);
        check("fn f() { println!(\"{}\", a::b(1, c::D)); }", &["a::b", "c::D"]);
    }

    #[test]
    fn comments_and_texts_mention_nothing() {
        check("// use a::b;\nconst X: &str = \"a::b\";", &[]);
    }
}
