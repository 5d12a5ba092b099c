//! Share & back up: the book from phone to phone by files, ewes from a table, tables for a spreadsheet, and how the book is kept.

use std::time::Instant;

use uuid::Uuid;
use yeanling_core::book::{DeviceId, Event};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, TimeDelta};
use yeanling_pages::block::Kind;
use yeanling_pages::phone::{FileTrouble, Promised, Saving};
use yeanling_pages::{Action, Heard, Request, Screen};

use crate::phone::Phone;
use crate::reach::texts;

fn phone(number: u128) -> Phone {
    let mut phone = Phone::at("2026-03-01 08:00");
    phone.device = DeviceId::from_uuid(Uuid::from_u128(number));
    phone.open(Screen::Share);
    phone
}

/// A phone on which the tables are open.
fn at_tables() -> Phone {
    let mut phone = phone(1);
    phone.open(Screen::Tables);
    phone
}

/// Returns the book of a phone as it would be sent, in one file.
fn file(phone: &Phone) -> Vec<u8> {
    let book = phone.outgoing().expect("a book");
    assert_eq!(book.files.len(), 1);
    book.files[0].1.clone().into_bytes()
}

fn tags(phone: &Phone) -> Vec<String> {
    let mut tags: Vec<String> = phone.flock.ewes.values().filter_map(|ewe| ewe.tag.clone()).collect();
    tags.sort();
    tags
}

#[track_caller]
fn offers(phone: &Phone, name: &str) -> bool {
    phone.pressables().iter().any(|one| one.name == name)
}

const OPEN: &str = "Open a book file";
const TABLE: &str = "Open a table";

#[test]
fn two_phones_come_together_by_files_both_ways() {
    let (mut first, mut second) = (phone(1), phone(2));
    let dam = first.ewe("14");
    first.lamb(dam);
    second.ewe("31");
    second
        .pick(OPEN, &file(&first))
        .says("1 ewe, 1 lamb, 2 entries")
        .says("Written on another phone (…0001), 08:00.");
    assert_eq!(tags(&second), ["31"], "nothing changes before it is added");
    second.press("Add").says("Done. 2 entries added.");
    first.pick(OPEN, &file(&second)).says("1 ewe, 1 entry");
    first.press("Add");
    assert_eq!(first.flock.ewes, second.flock.ewes);
    assert_eq!(first.flock.lambs, second.flock.lambs);
    // The same file again adds nothing, and there is nothing to add.
    first.pick(OPEN, &file(&second)).says("Everything in this file is in your book already.");
    assert!(!offers(&first, "Add"));
    first.press("Cancel").says_nowhere("Everything in this file");
}

#[test]
fn a_preview_ends_when_the_screen_is_left() {
    let (mut first, second) = (phone(1), {
        let mut other = phone(2);
        other.ewe("31");
        other
    });
    first.pick(OPEN, &file(&second)).says("This file would add");
    first.open(Screen::Farm).open(Screen::Share).says_nowhere("This file would add");
    assert!(tags(&first).is_empty());
}

#[test]
fn a_file_that_is_no_whole_book_is_refused_in_words_and_changes_nothing() {
    let mut phone = phone(1);
    phone.ewe("14");
    let whole = String::from_utf8(file(&phone)).expect("text");
    let before = phone.book.len();
    let ahead = whole.replacen("\"version\":1", "\"version\":2", 1);
    let sealed = whole.replacen("sha256-", "sha256-0", 1);
    let counted = whole.replacen("\"count\":1", "\"count\":99", 1);
    let cases: [(&[u8], &str); 9] = [
        (b"", "The file is empty"),
        (&whole.as_bytes()[..whole.len() - 40], "cut off"),
        (b"dear diary, it snowed", "not a Yeanling book"),
        (br#"{"format":"shopping-list","version":1}"#, "“shopping-list”"),
        (&[0xff, 0xfe, 0x00, 0x80], "not a text file"),
        (b"[1, 2, 3]", "This is not a Yeanling book."),
        (ahead.as_bytes(), "version 2"),
        (sealed.as_bytes(), "damaged or was changed"),
        (counted.as_bytes(), "says it has 99 entries"),
    ];
    for (bytes, said) in cases {
        phone.pick(OPEN, bytes).says(said).says("Nothing was changed").says_nowhere("This file would add");
    }
    assert_eq!(phone.book.len(), before);
    phone.pick(OPEN, whole.as_bytes()).says("Everything in this file is in your book already.");
}

#[test]
fn a_file_that_cannot_be_read_says_so_and_one_not_chosen_says_nothing() {
    let mut phone = phone(1);
    let told = |file| Action::Heard(Heard::File("book-file".into(), file));
    phone.act(&told(Err(FileTrouble::TooLarge(50_000_000.0))));
    phone.says("50.0 MB").says("Nothing was changed");
    phone.act(&told(Err(FileTrouble::Failed("a*b".to_owned()))));
    phone.says("the browser says “a*b”");
    phone.press(OPEN).says("Reading the file");
    phone.act(&told(Ok(None)));
    phone.says_nowhere("Reading").says_nowhere("Nothing was changed");
}

#[test]
fn a_file_handed_to_the_app_is_asked_for_when_the_screen_opens() {
    let mut other = phone(2);
    other.ewe("31");
    let mut phone = phone(1);
    let Some(Request::ReadHandedIn(key)) = phone.asked.first().cloned() else { panic!("{:?}", phone.asked) };
    assert!(phone.asked.contains(&Request::LookAtRoom));
    phone.act(&Action::Heard(Heard::File(key, Ok(Some(file(&other).into())))));
    phone.says("This file would add");
    phone.press("Add");
    assert_eq!(tags(&phone), ["31"]);
}

#[test]
fn what_a_file_dates_ahead_of_this_phone_is_told_before_it_is_added() {
    let mut ahead = phone(2);
    ahead.now = ahead.now + TimeDelta::days(400);
    ahead.ewe("77");
    let mut phone = phone(1);
    phone.pick(OPEN, &file(&ahead)).says("One entry in it is dated in the future: 5 Apr 2027");
    assert!(!offers(&phone, "Add"));
    phone.press("Add anyway").says("Done. 1 entry added.");
}

#[test]
fn a_ewe_of_both_phones_is_one_ewe_once_someone_says_so() {
    let (mut first, mut second) = (phone(1), phone(2));
    for phone in [&mut first, &mut second] {
        let dam = phone.ewe("a23");
        phone.lamb(dam);
    }
    first.pick(OPEN, &file(&second)).says("Both books have a ewe a23.");
    first.press("Add");
    first
        .says("There are two records of a ewe a23. Are they the same ewe?")
        .says("in the book since 08:00, 1 lamb");
    // "Two ewes" holds until the screen is left; the question comes back as long as it is not answered.
    first.press("Two ewes").says_nowhere("Are they the same ewe?");
    first.open(Screen::Farm).open(Screen::Share).says("Are they the same ewe?");
    first.press("Same ewe").says_nowhere("Are they the same ewe?");
    assert_eq!(tags(&first), ["a23"]);
    assert!(first.undo());
    first.says("Are they the same ewe?");
}

#[test]
fn a_file_that_was_changed_by_hand_is_refused() {
    let mut other = phone(2);
    other.ewe("7");
    other.note(Event::Chose(Choice::FarmName("Fold".to_owned())));
    let text = String::from_utf8(file(&other)).expect("text");
    assert!(text.contains("farm-name"));
    let mut phone = phone(1);
    // What was changed by hand is known by its digest.
    phone.pick(OPEN, text.replace("farm-name", "sheared-by").as_bytes()).says("damaged or was changed");
}

#[test]
fn nothing_of_the_sample_flock_goes_out_and_a_file_goes_into_the_own_book() {
    let mut other = phone(2);
    other.ewe("31");
    let mut phone = phone(1);
    phone.ewe("1");
    phone.sample = true;
    phone.open(Screen::Tables).says("The sample flock stays out of tables.").says_nowhere("To a spreadsheet");
    assert!(!offers(&phone, "Animals") && !offers(&phone, "Print the ewes"));
    phone.open(Screen::Share).says("The sample flock is never sent");
    assert!(!offers(&phone, "Save as a file"));
    phone.pick(OPEN, &file(&other)).says("This goes into your own book, not into the sample flock");
    phone.press("Add");
    assert!(!phone.sample);
}

#[test]
fn a_book_is_shared_where_the_phone_can_and_saved_where_it_cannot() {
    let mut phone = phone(1);
    phone.says("Nothing noted yet, so nothing to send.");
    phone.ewe("14");
    assert!(!offers(&phone, "Share the book"));
    phone.says.can_share = true;
    phone.press("Share the book");
    assert_eq!(phone.asked.last(), Some(&Request::ShareBook));
    phone.act(&Action::Heard(Heard::Shared(None)));
    phone.says("Shared.");
    phone.act(&Action::Heard(Heard::Shared(Some(FileTrouble::Failed("no".to_owned())))));
    phone.says("Not sent: the browser says “no”.").says_nowhere("Shared.");
    phone.act(&Action::Heard(Heard::Shared(Some(FileTrouble::CannotShare))));
    assert_eq!(phone.asked.last(), Some(&Request::SaveBook(Some(0))), "one file is saved instead");
    phone.act(&Action::Heard(Heard::Saved(vec![0], None)));
    phone.says("Saved on this phone, among its downloads.");
    assert!(matches!(phone.asked.last(), Some(Request::SavedHere(_))));
    phone.says.saved_here = Some(phone.now);
    phone.says("Saved 08:00, but only on this phone").says("not yet: only on this phone");
    phone.press("A copy is safe elsewhere");
    assert_eq!(phone.asked.last(), Some(&Request::SafeElsewhere(phone.now)));
}

#[test]
fn how_the_book_is_kept_is_said_plainly_and_the_browser_can_be_asked_for_more() {
    let mut phone = phone(1);
    phone.ewe("14");
    phone.says.saving = Saving::Saved(None);
    phone.says.room = Some((2_000_000.0, 500_000_000.0));
    phone.says("1 entry, ").says("asking the browser").says("about 2.0 MB, with the app, of 500 MB");
    assert!(!offers(&phone, "Protect storage"));
    phone.says.promised = Some(Promised::UntilRoomIsShort);
    phone.press("Protect storage");
    assert_eq!(phone.asked.last(), Some(&Request::AskForGood));
    phone.act(&Action::Heard(Heard::Promised(Promised::UntilRoomIsShort)));
    phone.says("The browser said no for now.");
    assert!(!offers(&phone, "Protect storage"));
    phone.says.promised = Some(Promised::ForGood);
    phone.says("the browser will not clear it");
    phone.says.broken = vec!["?".to_owned()];
    phone.press("Save the unreadable entries");
    assert_eq!(phone.asked.last(), Some(&Request::SaveUnreadLines));
}

#[test]
fn tables_go_to_the_phone_and_an_empty_one_says_so() {
    let mut phone = at_tables();
    phone.press("Weights").says("None in the book yet.");
    let dam = phone.ewe("=14");
    let lamb = phone.lamb(dam);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.2) });
    phone.press("Weights");
    let Some(Request::GiveTable(key, name, text)) = phone.asked.last().cloned() else { panic!("no table") };
    assert_eq!(name, "yeanling-weights-2026-03-01.csv");
    assert!(text.contains("weight (kg)") && text.contains("'=14") && text.contains("4.20"), "{text}");
    phone.act(&Action::Heard(Heard::Given(key.clone(), None)));
    phone.says("Handed to your phone.");
    phone.act(&Action::Heard(Heard::Given(key, Some(FileTrouble::Failed("full".to_owned())))));
    phone.says("Not saved: the browser says “full”.");
}

#[test]
fn animals_stand_by_their_tags_and_the_ewes_go_to_paper_in_a_line_each() {
    let mut phone = at_tables();
    phone.says_nowhere("Print the ewes");
    let ten = phone.ewe("101");
    phone.ewe("9");
    phone.lamb(ten);
    phone.press("Animals");
    let Some(Request::GiveTable(_, _, text)) = phone.asked.last().cloned() else { panic!("no table") };
    let names: Vec<Vec<&str>> =
        text.lines().skip(1).map(|line| line.split(',').skip(1).take(3).collect()).collect();
    assert_eq!(names, [["ewe", "9", ""], ["ewe", "101", ""], ["lamb", "101a", "101"]]);
    let page = phone.page();
    let table = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::PaperTable(table) => Some(table.clone()),
        _ => None,
    });
    let table = table.expect("what is printed");
    assert_eq!(table.head, "2 ewes · 1 Mar 2026");
    assert!(table.rows.iter().all(|row| row.len() == table.heads.len()));
    let cells =
        |row: usize| [table.rows[row][0].as_str(), table.rows[row][3].as_str(), table.rows[row][6].as_str()];
    assert_eq!((cells(0), cells(1)), (["9", "", ""], ["101", "lambed 1 Mar", "1"]));
    phone.press("Print the ewes");
    assert_eq!(phone.asked.last(), Some(&Request::Print));
}

#[test]
fn ewes_come_from_a_table_seen_first_and_are_taken_back_as_one() {
    let mut phone = at_tables();
    phone.ewe("3");
    let table =
        "Ear tag;Year;Breed;Notes\r\n1;2019;Cheviot;\r\n2;2020;;lame\r\n3;2020;;\r\n;2020;;\r\n1;;;\r\n";
    phone.pick(TABLE, table.as_bytes()).says("Line 2: Ewe 1");
    phone
        .says("Line 4, 3: tag 3 is on another live animal.")
        .says("Line 5: it does not say which animal.")
        .says("Line 6, 1: 1 is in an earlier row too.");
    assert_eq!(tags(&phone), ["3"], "nothing changes before they are added");
    phone.press("Add 2 ewes, without 3 rows").says("2 ewes added.");
    assert_eq!(tags(&phone), ["1", "2", "3"]);
    let ewe = phone.flock.ewes.values().find(|ewe| ewe.tag.as_deref() == Some("1")).expect("a ewe");
    assert_eq!(ewe.breed.as_deref(), Some("Cheviot"));
    assert!(phone.undo());
    assert_eq!(tags(&phone), ["3"]);
    phone.says_nowhere("added.");
}

/// A farm's own list of lambs: a title above it, dates with the month's name, mixed case, an empty line, pounds.
const LAMBS: &str = "Lambs of 2025\n\nLamb tag,EWE,DOB,sex,Birth type,Birth wt\n\
                     201,31,14-Mar-2025,F,Twin,8.4\n202,31,14-Mar-2025,m,TWIN,8.1\n\n203,34,20-Mar-2025,H,Single,9.5\n";

#[test]
fn a_messy_list_of_lambs_is_put_right_by_taps_taken_back_and_read_so_again() {
    let mut phone = at_tables();
    phone.pick(TABLE, LAMBS.as_bytes()).says("Ewe lamb born of Ewe 31, 14 Mar 2025");
    phone.says("Line 7, 203: “H” is not known. Say above what it means.");
    phone.says("Dams or sires not in your book: 31.").says("The weights without a unit are in");
    phone.press("Pounds").says("201 3.81\u{a0}kg");
    // Of the code that is asked, this is a female.
    phone.press("Ewe").says_nowhere("is not known").says("Dams or sires not in your book: 31, 34.");
    phone.press("Add 2 ewes, 3 lambs, 3 weights").says("added.");
    assert_eq!((phone.flock.ewes.len(), phone.flock.lambs.len()), (2, 3));
    phone.press("Take this import back").says_nowhere("added.");
    assert_eq!((phone.flock.ewes.len(), phone.flock.lambs.len()), (0, 0));
    // The next file with these heads is read as this one was, its unit and its code too.
    phone.pick(TABLE, LAMBS.as_bytes()).says("Read as the last table with these columns.");
    phone.says_nowhere("is not known");
    phone.press("Add 2 ewes, 3 lambs, 3 weights");
    let weights = phone.flock.lambs.values().filter_map(|lamb| lamb.birth_weight());
    let pounds: Vec<f64> = weights.map(|mass| (mass.as_pounds() * 10.0).round() / 10.0).collect();
    assert_eq!(pounds, [8.4, 8.1, 9.5]);
}

#[test]
fn a_column_that_is_read_wrong_is_put_right() {
    let mut phone = at_tables();
    phone.pick(TABLE, b"sheep,color\n70,white\n71,brown\n").says("Leave out");
    phone.press("Change color").press("Breed").says("Breed");
    phone.press("Add 2 ewes");
    let breeds: Vec<_> = phone.flock.ewes.values().map(|ewe| ewe.breed.clone()).collect();
    assert_eq!(breeds, [Some("white".to_owned()), Some("brown".to_owned())]);
    // A column without a head has a name all the same.
    phone.pick(TABLE, b"tag,\n80,x\n").says("column B");
}

#[test]
fn which_way_dates_go_is_asked_where_nothing_in_the_table_tells() {
    let mut phone = at_tables();
    phone.pick(TABLE, b"ewe,born\n70,12/03/2021\n71,3/4/2022\n");
    phone.says("Line 2, 70: “12/03/2021” can be read day first or month first. Choose above.");
    phone.press("The day").says_nowhere("Choose above");
    phone.press("The month").says("12/03/2021 is 3 Dec 2021").says_nowhere("Choose above");
    phone.press("Cancel").says_nowhere("Columns");
    phone.pick(TABLE, b"ewe,born\n70,12/03/2021\n71,25/4/2022\n").says_nowhere("Choose above");
    assert!(!offers(&phone, "The month"));
}

#[test]
fn what_the_gate_refuses_is_named_by_its_line_and_the_rest_can_be_added() {
    let mut phone = at_tables();
    phone.pick(TABLE, b"tag,dam,born,birth weight kg\n1,31,2025-03-14,4\n2,31,2025-03-14,41\n");
    phone.says("Line 3, 2: ").says("Add 1 ewe, 1 lamb, 1 weight, without 1 row");
    phone.pick(TABLE, b"tag,born\n90,2020\n91,1950\n92,soon\n");
    phone.says("Line 4, 92: “soon” under “Born” is not a date.");
}

#[test]
fn a_file_that_is_no_table_is_told() {
    let mut phone = at_tables();
    let rows = "7\n".repeat(100_000);
    phone.pick(TABLE, format!("tag\n{rows}").as_bytes());
    phone.says("100000 rows are too many. At most 20000 at once");
    phone.pick(TABLE, b"").says("This file has no rows.");
    phone.pick(TABLE, &[0x00, 0x01, 0x02, 0x00]).says("This is not a CSV file.");
}

#[test]
fn a_table_of_five_thousand_ewes_is_added_while_someone_waits() {
    let mut phone = at_tables();
    let rows: String = (0..5000).map(|row| format!("{row},2020,Cheviot,quiet\n")).collect();
    phone.pick(TABLE, format!("tag,born,breed,remark\n{rows}").as_bytes()).says("Line 2: Ewe 0");
    let began = Instant::now();
    phone.press("Add 5000 ewes");
    let took = began.elapsed();
    assert_eq!(phone.flock.ewes.len(), 5000);
    // Without the compiler's help it is some twenty times slower than on a phone.
    assert!(took.as_secs() < 60, "{took:?}");
    let all = texts(&phone.page());
    assert!(all.iter().any(|text| text == "5000 ewes added."));
}
