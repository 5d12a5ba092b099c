//! The words of the frame: tabs, keeping, updates, the sample flock, and small words that many screens share.

use yeanling_core::units::Moment;

use super::common::clock;

/// The program.
pub const NAME: &str = "Yeanling";
/// The home.
pub const WATCH: &str = "Watch";
/// All animals.
pub const FLOCK: &str = "Flock";
/// What lies ahead, and what was.
pub const SEASON: &str = super::season_forecast::TITLE;
/// What can be read, and what can be worked out.
pub const HELP: &str = super::help::TITLE;
/// The farm's choices and its book.
pub const FARM: &str = "Farm";
/// Goes back home.
pub const BACK: &str = "Watch";
/// Saves what was typed.
pub const SAVE: &str = "Save";
/// Lets go of what was read.
pub const OK: &str = "OK";
/// Changes something noted.
pub const CHANGE: &str = "change";
/// Takes something noted back.
pub const UNDO: &str = "undo";
/// Brings something struck back.
pub const RESTORE: &str = "restore";
/// Heads what was noted.
pub const NOTED: &str = "Noted";
/// Says that the entry was changed.
pub const AMENDED: &str = "changed";
/// Heads a page about what is not in the book.
pub const NOT_HERE: &str = "Not in the book";
/// Says why what is looked for is not in the book.
pub const GONE: &str = "This is not in the book. It may have been undone, or be on another phone.";
/// Says that the address leads nowhere.
pub const LOST: &str = "There is nothing at this address.";
/// Says that the flock is made up.
pub const MADE_UP: &str = "*Sample flock.* Nothing here is kept.";
/// Leaves the sample flock.
pub const LEAVE_MADE_UP: &str = "Back to my flock";
/// Offers an update.
pub const UPDATE: &str = "A new version is ready.";
/// Takes the update.
pub const TAKE_UPDATE: &str = "Use it now";
/// While it is being written.
pub const SAVING: &str = "saving…";
/// While the book opens.
pub const OPENING: &str = "opening…";
/// When nothing was written yet in this visit.
pub const SAVED: &str = "saved";
/// When it is not on the disk.
pub const NOT_SAFE: &str = "NOT SAVED";
/// Once all is kept for work without a network.
pub const WORKS_OFFLINE: &str = "ready to work offline";
/// Before that.
pub const NOT_YET_OFFLINE: &str = "getting ready to work offline";
/// On a host that cannot keep it.
pub const NO_OFFLINE: &str = "needs a network here";

/// Returns when the last entry was saved.
pub fn saved_at(at: Moment) -> String {
    format!("saved {}", clock(at))
}

/// Returns the standing warning while the book is kept less well than it should be.
pub fn poorly(memory_only: bool, said: Option<&str>) -> String {
    let how = if memory_only {
        "This phone will not keep the book: it is lost when this page closes. Save it as a file now."
    } else {
        "The book is kept less safely than it should be: if the phone dies, the last seconds may be lost. Save it as a \
         file before you rely on it."
    };
    match said {
        Some(said) => format!("{how} (The browser says: {said})"),
        None => format!("{how} Another tab may be holding on to the book: close all other tabs of Yeanling."),
    }
}

/// Returns that some lines could not be read.
pub fn broken(lines: usize) -> String {
    format!(
        "{} of the book could not be read. {} left untouched, and everything else works. You can save {} in Share & back up.",
        if lines == 1 { "One line".to_owned() } else { format!("{lines} lines") },
        if lines == 1 { "It is" } else { "They are" },
        if lines == 1 { "it" } else { "them" },
    )
}

/// Returns that entries came from a newer version.
pub fn unread(entries: usize) -> String {
    format!(
        "{} written by a newer version: kept whole and passed on, not shown here.",
        if entries == 1 { "One entry was".to_owned() } else { format!("{entries} entries were") }
    )
}

/// Says that the app broke when all was on the disk.
pub const BROKE_SAVED: &str = "Something in Yeanling broke. What you noted is saved. Look for your last tap: if it is missing, note it again. ";
/// Says that the app broke while the last entry was on its way to the disk.
pub const BROKE_ON_ITS_WAY: &str = "Something in Yeanling broke while your last tap was being saved. Look for your last tap once it is open again: \
     if it is missing, note it again. ";
/// Says that the app broke while entries were in local storage alone.
pub const BROKE_LOCAL_ONLY: &str = "Something in Yeanling broke. What you noted is in the browser but may not be on the disk yet: do not close the \
     browser, only open Yeanling again. Look for your last tap. ";
/// Says that the app broke while entries were in memory alone.
pub const BROKE_MEMORY_ONLY: &str = "Something in Yeanling broke. This phone does not keep the book: what you noted is lost once this page closes \
     or opens again. Write down what you still see first. ";
/// Opens it again.
pub const RELOAD: &str = "Open it again";

/// Says that something was taken back.
pub fn taken_back(said: &str) -> String {
    format!("Undone: {said}")
}

/// Says that something was changed.
pub fn changed(said: &str) -> String {
    format!("Changed: {said}")
}

/// Says what was noted, and with how many others: "14: put into group Early · and 59 more".
pub fn and_others(said: String, others: usize) -> String {
    if others == 0 { said } else { format!("{said} · and {others} more") }
}
