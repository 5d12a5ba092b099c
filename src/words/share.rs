//! Share & back up: sending the book and taking one in.

use yeanling_core::book::{FileError, MOST_BYTES, MOST_WRITTEN};

/// The screen's name.
pub const TITLE: &str = "Share & back up";
/// What the screen is for.
pub const SUB: &str = "A backup is the whole book in one file. Send it, or add the one from another phone.";
/// Heads the way out.
pub const SEND: &str = "Back up";
/// Shares the file.
pub const SHARE: &str = "Share the book";
/// Saves the file.
pub const SAVE: &str = "Save as a file";
/// Heads the way in.
pub const TAKE: &str = "Import";
/// Picks a file.
pub const OPEN: &str = "Open a book file";
/// Explains the way in.
pub const TAKE_SUB: &str = "You see what it would add before anything changes.";
/// Heads the preview.
pub const PREVIEW: &str = "This file would add";
/// Takes it in.
pub const MERGE: &str = "Add";
/// Takes it in although it is dated ahead of this phone.
pub const MERGE_ALL_THE_SAME: &str = "Add anyway";
/// Leaves it.
pub const LEAVE: &str = "Cancel";
/// Says where a file goes that is opened while the sample flock is looked round in.
pub const INTO_YOUR_OWN: &str =
    "This goes into your own book, not into the sample flock, and takes you back to it.";
/// Says that nothing is new in it.
pub const NOTHING_NEW: &str = "Everything in this file is in your book already.";
/// Heads the keeping.
pub const KEPT: &str = "How it is kept";
/// Offers lines that could not be read.
pub const SAVE_BROKEN: &str = "Save the unreadable entries";
/// Joins two records.
pub const SAME: &str = "Same ewe";
/// Keeps two records apart.
pub const NOT_SAME: &str = "Two ewes";

/// Returns how many of something: "1 ewe", "3 ewes".
pub fn count(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

/// Returns what became of it once it was taken in.
pub fn taken_in(entries: usize) -> String {
    format!("Done. {} added.", count(entries, "entry", "entries"))
}

/// Returns what a clash is.
pub fn clashes(clashes: usize) -> String {
    format!(
        "{} in it have the same ID as yours but different content: the file is damaged or was changed by hand. Yours stay; theirs are set aside.",
        count(clashes, "entry", "entries")
    )
}

/// Returns the question when both books have a ewe of one tag.
pub fn same_tag(tag: &str) -> String {
    format!("There are two records of a ewe *{tag}*. Are they the same ewe?")
}

/// Returns what is wrong with a file, and what to do. Nothing has changed.
pub fn file_error(error: &FileError) -> String {
    let (wrong, todo) = match error {
        FileError::Empty => ("The file is empty.".to_owned(), SEND_AGAIN),
        FileError::TooLarge { bytes, most } => (
            format!("The file has {}; a book can have {}.", megabytes(*bytes), megabytes(*most)),
            "Choose a book file; it is usually far smaller.",
        ),
        FileError::NotText => ("This is not a text file, so it is not a Yeanling book.".to_owned(), PICK),
        FileError::CutShort { line } => (format!("The file is cut off: it ends in line {line}."), SEND_AGAIN),
        FileError::NotJson { line, column } => {
            (format!("This is not a Yeanling book: line {line}, character {column} does not fit."), PICK)
        }
        FileError::OtherFormat { given: Some(given) } => {
            (format!("The file says it is “{given}”, not a Yeanling book."), PICK)
        }
        FileError::OtherFormat { given: None } => ("This is not a Yeanling book.".to_owned(), PICK),
        FileError::NewerVersion { given } => (
            format!(
                "The file is version {given}; this Yeanling reads up to version {}.",
                yeanling_core::book::VERSION
            ),
            "Open Yeanling once with a network so it can update, then try again.",
        ),
        FileError::Part { part } => {
            (format!("The part “{part}” of the file is missing or wrong."), SEND_AGAIN)
        }
        FileError::Count { said, found } => {
            (format!("The file says it has {said} entries and has {found}: it is damaged."), SEND_AGAIN)
        }
        FileError::Digest => (
            "The entries do not match the file’s check: it is damaged or was changed.".to_owned(),
            SEND_AGAIN,
        ),
        FileError::Entry { number, .. } => {
            (format!("Entry {number} of the file cannot be read."), SEND_AGAIN)
        }
        FileError::Repeated { number } => {
            (format!("Entry {number} is in the file twice, with different content."), SEND_AGAIN)
        }
    };
    format!("{wrong} Nothing was changed. {todo}")
}

const SEND_AGAIN: &str = "Ask for the file to be sent again.";
const PICK: &str = "Pick a file that was sent from Share & back up. Its name ends in .json.txt or .json.";

/// Returns what is wrong with a file that is too large to be read at all.
pub fn too_large(bytes: f64) -> String {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a file's size is whole and positive"
    )]
    file_error(&FileError::TooLarge { bytes: bytes as usize, most: MOST_BYTES })
}

fn megabytes(bytes: usize) -> String {
    let tenths = bytes / 100_000;
    format!("{}.{} MB", tenths / 10, tenths % 10)
}

/// What is sent.
pub const SEND_SUB: &str =
    "This sends the whole book. The other phone adds it to what it has; nothing is overwritten.";
/// Says that there is nothing to send.
pub const NOTHING_TO_SEND: &str = "Nothing noted yet, so nothing to send.";
/// Says why the sample flock stays here.
pub const MADE_UP: &str =
    "The sample flock is never sent, so it cannot end up in a real book. Go back to your own flock first.";
/// Says that it was given to the share sheet.
pub const SHARED: &str = "Shared.";
/// Says that it was saved as a file.
pub const SAVED_FILE: &str = "Saved on this phone, among its downloads.";
/// Says that one file of several was saved.
pub const SAVED_PART: &str = "Saved on this phone. Save the other files too.";
/// Says what to do when several files cannot be shared at once.
pub const SAVE_EACH: &str = "This phone cannot share several files at once. Save each, then send them all.";
/// Says that the book has left this phone.
pub const SAFE_ELSEWHERE: &str = "A copy is safe elsewhere";

/// Returns that a saved file is no copy as long as it is on this phone alone.
pub fn still_here(when: &str) -> String {
    format!(
        "Saved {when}, but only on this phone: a lost phone is a lost book. Send the file on or copy it to another device, then tap below."
    )
}

/// Returns the button that saves one file of several: "Save file 1 of 3".
pub fn save_part(number: usize, of: usize) -> String {
    format!("Save file {number} of {of}")
}

/// Returns that a book nears the size at which it goes as several files, or goes so already.
pub fn large(bytes: usize, files: usize) -> String {
    if files > 1 {
        format!(
            "The book has {}: it goes as {files} files, a season or more in each. Send all of them. On the other phone open one after another.",
            megabytes(bytes)
        )
    } else {
        format!(
            "The book has {}. At {} it will go as several files, a season or more in each.",
            megabytes(bytes),
            megabytes(MOST_WRITTEN)
        )
    }
}

/// Returns that entries of a file are dated ahead of this phone's clock, and what to make of it.
pub fn dated_ahead(entries: usize, latest: &str, now: &str) -> String {
    let are = if entries == 1 {
        format!("One entry in it is dated in the future: {latest}.")
    } else {
        format!("{entries} entries in it are dated in the future, up to {latest}.")
    };
    format!(
        "{are} This phone says {now}. If that is wrong, set this phone’s clock first. If it is right, the other phone’s clock was wrong, and so are the times it noted."
    )
}

/// While a file is read.
pub const READING: &str = "Reading the file…";
/// Heads the question about records of one tag.
pub const SAME_HEAD: &str = "One tag, two records";
/// Explains the question.
pub const SAME_SUB: &str = "Merging keeps everything noted under both. You can undo it.";

/// Returns the name and the size of the file that is sent.
pub fn file_is(name: &str, bytes: usize) -> String {
    let size = if bytes < 100_000 { format!("{} KB", bytes.div_ceil(1000)) } else { megabytes(bytes) };
    format!("{name}, {size}")
}

/// Returns that the file did not go out.
pub fn not_sent(said: &str) -> String {
    format!("Not sent: the browser says “{said}”. The book is unchanged. Try saving it as a file.")
}

/// Returns that the file could not be saved.
pub fn not_saved(said: &str) -> String {
    format!("Not saved: the browser says “{said}”. The book is unchanged.")
}

/// Returns that the picked file could not be read at all.
pub fn not_read(said: &str) -> String {
    format!("The file could not be read: the browser says “{said}”. Nothing was changed. {PICK}")
}

/// Returns what a file would add: "*2 ewes*, *3 lambs*, *41 entries*".
pub fn would_add(ewes: usize, lambs: usize, entries: usize) -> String {
    let part = |number: usize, one: &str, many: &str| {
        (number > 0).then(|| format!("*{}*", count(number, one, many)))
    };
    let parts = [part(ewes, "ewe", "ewes"), part(lambs, "lamb", "lambs"), part(entries, "entry", "entries")];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// Returns where a file comes from: "Written on another phone (…3f9c), 14 Mar 03:12."
pub fn from(here: bool, device: &str, when: &str) -> String {
    let start = device.char_indices().rev().nth(3).map_or(0, |(start, _)| start);
    let phone =
        if here { "this phone".to_owned() } else { format!("another phone (…{})", &device[start..]) };
    format!("Written on {phone}, {when}.")
}

/// Returns that some tags would stand twice.
pub fn would_ask(tags: &[String]) -> String {
    format!("Both books have a ewe {}. You will be asked if they are the same ewe.", tags.join(", "))
}

/// Returns a record of a ewe, to tell it from another: "since 12 Mar 03:12, 2 lambs".
pub fn record(came: &str, lambs: usize) -> String {
    format!("in the book since {came}, {}", count(lambs, "lamb", "lambs"))
}

/// Names the copy on this phone.
pub const ON_PHONE: &str = "This phone";
/// Names the work without a network.
pub const OFFLINE: &str = "Offline";
/// Names the browser's promise.
pub const PROMISE: &str = "Protected storage";
/// Names the last time it went to another place than this phone.
pub const SENT: &str = "Copy elsewhere";
/// Says that the only file of it is on this phone too.
pub const ONLY_HERE: &str = "not yet: only on this phone";
/// Names the room it takes.
pub const ROOM: &str = "Room";
/// Says that it was never sent.
pub const NEVER_SENT: &str = "not yet: a lost phone is a lost book";
/// While the browser is asked.
pub const ASKING: &str = "asking the browser…";
/// The browser keeps it for good.
pub const FOR_GOOD: &str = "the browser will not clear it";
/// The browser may clear it.
pub const UNTIL_ROOM: &str = "the browser may clear it if the phone runs out of room";
/// The browser does not say.
pub const NO_PROMISE: &str = "this browser does not say";
/// Asks the browser.
pub const KEEP_FOR_GOOD: &str = "Protect storage";
/// When the browser said no.
pub const SAID_NO: &str = "The browser said no for now. Add Yeanling to the home screen and try again later. Until then, back up often.";

/// Returns how many entries there are and how well they are kept.
pub fn entries_are(entries: usize, how: &str) -> String {
    format!("{}, {how}", count(entries, "entry", "entries"))
}

/// Returns about how much room is taken, of how much.
pub fn room(used: f64, most: f64) -> String {
    let megabytes = |bytes: f64| bytes / 1_000_000.0;
    format!(
        "about {:.1} MB, with the app, of {:.0} MB that the browser allows",
        megabytes(used),
        megabytes(most)
    )
}

/// Says for how long a book is on this phone alone, and how much of it: "No backup for 9 days: 12 new lambs".
pub fn unsent(births: usize, days: i64) -> String {
    let lambs = if births == 1 { "1 new lamb".to_owned() } else { format!("{births} new lambs") };
    format!("*No backup for {days} days*: {lambs}")
}

/// Leads to the screen that sends it.
pub const GO_SEND: &str = "Back up";

/// Offers the last saved file to a book that is empty, as a new phone's or a cleared one is.
pub const HAD_A_BOOK: &str = "Open a saved book";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_file_would_add_leaves_out_what_is_none() {
        assert_eq!(would_add(2, 1, 41), "*2 ewes*, *1 lamb*, *41 entries*");
        assert_eq!(would_add(0, 0, 1), "*1 entry*");
    }

    #[test]
    fn another_phone_is_told_by_the_end_of_its_id() {
        let device = "01935d5a-0000-7000-8000-00000000ab3f";
        assert_eq!(from(false, device, "03:12"), "Written on another phone (…ab3f), 03:12.");
        assert_eq!(from(true, "", "03:12"), "Written on this phone, 03:12.");
    }

    #[test]
    fn a_large_book_is_told_before_it_is_split_and_then() {
        let near = large(22_400_000, 1);
        assert!(near.contains("22.4 MB") && near.contains("30.0 MB"), "{near}");
        let split = large(64_000_000, 3);
        assert!(split.contains("3 files") && split.contains("Send all of them"), "{split}");
    }

    #[test]
    fn what_is_dated_ahead_is_told_with_both_clocks() {
        let one = dated_ahead(1, "14 Mar 2099 03:05", "1 Mar 2026 08:00");
        assert!(
            one.starts_with(
                "One entry in it is dated in the future: 14 Mar 2099 03:05. This phone says 1 Mar"
            )
        );
        let more = dated_ahead(12, "14 Mar 2099 03:05", "");
        assert!(more.starts_with("12 entries in it are dated in the future, up to 14 Mar 2099"), "{more}");
    }

    #[test]
    fn a_file_is_told_with_its_size() {
        assert_eq!(file_is("fold.json.txt", 1200), "fold.json.txt, 2 KB");
        assert_eq!(file_is("fold.json.txt", 3_240_000), "fold.json.txt, 3.2 MB");
    }
}
