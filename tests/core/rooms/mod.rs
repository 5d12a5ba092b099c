//! House rules, kept by reading the source: who may use whom, and how every file looks.
//!
//! A rule is a line of a table. To see that the tables bite, each kind of rule is also tried on a file made up to
//! break it.

mod facts;
mod look;
mod nouns;
mod paths;
mod who;

use std::fs;
use std::path::{Path, PathBuf};

/// The top of the tree.
fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// A file of the tree: where it lies, with `/` between the parts, and what it says.
struct File {
    name: String,
    text: String,
}

impl File {
    fn is_there(name: &str) -> bool {
        top().join(name).is_file()
    }

    #[track_caller]
    fn read(name: &str) -> Self {
        let text = fs::read_to_string(top().join(name)).unwrap_or_else(|error| panic!("{name}: {error}"));
        Self { name: name.to_owned(), text }
    }
}

/// Returns the files under a folder whose name ends so, by name; none if there is no such folder.
fn files(folder: &str, ending: &str) -> Vec<File> {
    let mut found = Vec::new();
    let Ok(inside) = fs::read_dir(top().join(folder)) else { return found };
    for one in inside {
        let one = one.expect("a folder can be read");
        let name = format!("{folder}/{}", one.file_name().to_string_lossy());
        if one.path().is_dir() {
            found.extend(files(&name, ending));
        } else if name.ends_with(ending) {
            found.push(File::read(&name));
        }
    }
    found.sort_by(|one, other| one.name.cmp(&other.name));
    found
}

/// Fails with all faults at once, one a line.
#[track_caller]
fn no_faults(faults: &[String]) {
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
