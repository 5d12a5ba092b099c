//! The screens that the browser's tests walk are those that there are: their list is written from [`Screen`] itself.

use std::fs;
use std::path::Path;

use yeanling_pages::Screen;

#[test]
fn the_list_of_screens_for_the_browser_is_whole() {
    let hashes: Vec<String> =
        Screen::alone().iter().map(|screen| format!("  \"{}\"", screen.hash())).collect();
    let expected = format!("[\n{}\n]\n", hashes.join(",\n"));
    let place = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/browser/screens.json");
    let found = fs::read_to_string(&place).unwrap_or_default();
    if std::env::var_os("YEANLING_WRITE").is_some() {
        fs::write(&place, &expected).expect("the list can be written");
    }
    assert!(
        found == expected,
        "tests/browser/screens.json is not what `Screen` says: run once with YEANLING_WRITE=1"
    );
}
