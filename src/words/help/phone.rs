//! How the book gets off this phone and onto another.

/// The page about backing up.
pub const BACK_UP: &str = "Back up";
/// The page about a new phone.
pub const NEW_PHONE: &str = "A new phone";
/// Heads the move.
pub const MOVE: &str = "You have both phones";
/// Heads what is left without the old one.
pub const LOST: &str = "The old phone is lost or broken";

/// How to back up, in order.
pub const BACK_UP_STEPS: [&str; 4] = [
    "Open *Farm*, then *Share & back up*.",
    "Tap *Share the book* and send it to yourself: mail, chat or a cloud folder. No such button? Tap *Save as a file*, then copy the file to another device.",
    "A file on this phone alone is no backup: it is lost with the phone.",
    "Do it after each busy night, and once a week in lambing.",
];

/// What to know of a backup.
pub const BACK_UP_NOTES: [&str; 3] = [
    "A backup is the whole book in one file, since the first day. Keep the newest; older ones do no harm.",
    "To get it back, open *Share & back up*, tap *Open a book file*, then *Add*. You see what it adds before anything changes.",
    "Nothing is ever overwritten: adding the same file twice adds nothing.",
];

/// How to move, in order.
pub const MOVE_STEPS: [&str; 5] = [
    "On the old phone: back up, and send the file to the new one.",
    "On the new phone: open the same web address, and put it on the home screen.",
    "Open it from the new icon, with a network. Wait until Share & back up says “ready to work offline”.",
    "There, tap *Open a book file*, pick the file, then *Add*.",
    "Compare the number of ewes and lambs in *Flock*. Only then erase the old phone’s book, under *Farm*.",
];

/// What is left without the old phone.
pub const LOST_STEPS: [&str; 3] = [
    "Find your last backup: mail, chat, cloud folder, or another phone that had the book.",
    "Add it on the new phone, as above.",
    "What was noted after that backup is gone. Two phones that share often lose little.",
];

/// Who says so.
pub const SOURCE: &str = "How often: ours.";
