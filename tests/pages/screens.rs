//! The screens that the browser's tests walk are those that there are: their list is written from [`Screen`] itself.

use std::fs;
use std::path::Path;

use yeanling_core::reckon::illness::Ailment;
use yeanling_pages::Screen;

use crate::phone::Phone;
use crate::reach::texts;

/// The pages of the illnesses are drawn alike, and each is judged without a browser: it sees the longest of a ewe's and the
/// longest of a lamb's.
fn longest(of: fn(&Ailment) -> bool) -> Option<Screen> {
    let phone = Phone::at("2027-02-01 23:55");
    let length = |screen: &Screen| texts(&phone.page_of(*screen)).iter().map(String::len).sum::<usize>();
    Ailment::all().filter(of).map(Screen::Ailment).max_by_key(length)
}

#[test]
fn the_list_of_screens_for_the_browser_is_whole() {
    let longest =
        [longest(|one| matches!(one, Ailment::Ewe(_))), longest(|one| matches!(one, Ailment::Lamb(_)))];
    let shown = |screen: &Screen| !matches!(screen, Screen::Ailment(_)) || longest.contains(&Some(*screen));
    let hashes: Vec<String> = Screen::alone()
        .iter()
        .filter(|screen| shown(screen))
        .map(|screen| format!("  \"{}\"", screen.hash()))
        .collect();
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
