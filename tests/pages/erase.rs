//! Erasing the book: the backup stands first, it is asked twice, and what fails is said.

use yeanling_pages::{Action, Heard, Request, Screen};
use yeanling_words::{erase as words, share};

use crate::phone::Phone;

#[test]
fn a_book_is_erased_only_after_two_questions_and_the_backup_stands_before_both() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::Erase).says(words::NOTHING);
    phone.ewe("7");
    phone.open(Screen::Farm).press(words::TITLE).says("1 ewe, 0 lambs and 1 entry are on this phone.");
    let labels: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    assert_eq!(labels, [share::GO_SEND, words::ERASE]);
    phone.press(words::ERASE).says("This cannot be undone.");
    let labels: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    assert_eq!(labels, [words::KEEP, words::ERASE_ALL]);
    phone.press(words::KEEP).press(words::ERASE);
    // Whoever comes back later is asked anew.
    phone.open(Screen::Farm).open(Screen::Erase).has_no_button(words::ERASE_ALL);
    assert_eq!(phone.asked, []);
    phone.press(words::ERASE).press(words::ERASE_ALL);
    assert_eq!(phone.asked, [Request::EraseBook]);
    phone.act(&Action::Heard(Heard::NotErased("no".to_owned())));
    phone.says("Not erased: the browser says “no”.");
}
