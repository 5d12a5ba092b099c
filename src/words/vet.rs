//! Calling the vet: the buttons that dial, the farm's choice of whom, and what is agreed before the season.

use yeanling_core::seasons::ToAgree;
use yeanling_core::settings::VetAgreed;

/// Heads the vet's numbers.
pub const TITLE: &str = "Your vet";
/// What is in its part of Farm settings.
pub const ABOUT: &str = "Numbers to call, and what to agree before lambing";
/// Calls the only number.
pub const CALL: &str = "Call vet";
/// Calls the number of the day.
pub const CALL_DAY: &str = "Call vet, day";
/// Calls the number of the night.
pub const CALL_NIGHT: &str = "Call vet, night";
/// Calls the second number for the night.
pub const CALL_SECOND: &str = "Call vet, second";
/// Leads to where the number is given.
pub const ADD: &str = "Add your vet’s number";
/// Heads the numbers.
pub const NUMBERS: &str = "Numbers to call";
/// Labels the number.
pub const NUMBER: &str = "Vet’s phone number";
/// Labels the number for the night.
pub const NIGHT_NUMBER: &str = "Night and weekend number";
/// Labels the second number for the night.
pub const SECOND_NUMBER: &str = "Second night number";
/// Explains all.
pub const SUB: &str =
    "A button dials it wherever Yeanling says to call. It is kept in the book, for every phone.";
/// Saves a number.
pub const SAVE: &str = "Save number";
/// Says what is wrong with a number.
pub const NOT_A_NUMBER: &str = "This is not a phone number. Enter digits, such as +1 555 010 0199.";

/// Returns what was chosen about a number.
pub fn noted(number: &str, whose: &str) -> String {
    if number.is_empty() { format!("{whose} removed") } else { format!("{whose}: {number}") }
}

/// Heads what is agreed with the vet before the first lamb.
pub const BEFORE: &str = "Before lambing, with your vet";
/// Notes that it was agreed.
pub const AGREED: &str = "Agreed";
/// Says that it was not.
pub const NOT_YET: &str = "not yet";
/// Says that both numbers stand.
pub const BOTH_GIVEN: &str = "both given";

/// Returns one thing to agree.
pub const fn to_agree(what: ToAgree) -> &'static str {
    match what {
        ToAgree::Agreed(VetAgreed::Trained) => "Training",
        ToAgree::Agreed(VetAgreed::Glucose) => "Glucose",
        ToAgree::NightNumbers => "Two night numbers",
        ToAgree::Agreed(VetAgreed::Killing) => "When one must be killed",
    }
}

/// Returns what is meant by it.
pub const fn about(what: ToAgree) -> &'static str {
    match what {
        ToAgree::Agreed(VetAgreed::Trained) => "Your vet shows you the tube and glucose for a cold lamb.",
        ToAgree::Agreed(VetAgreed::Glucose) => {
            "Prescribed and on the shelf, the amounts written down by your vet."
        }
        ToAgree::NightNumbers => {
            "Whom you call at night, and whom when nobody answers. Both are buttons then."
        }
        ToAgree::Agreed(VetAgreed::Killing) => "What the law allows here, who does it, and with what.",
    }
}

/// Returns when it was agreed.
pub fn agreed_on(date: &str) -> String {
    format!("agreed {date}")
}

/// Says that nothing tells when the first lamb comes.
pub const ANY_DAY: &str = "may lamb any day";
/// Says that the first lamb is near.
pub const WITHIN_A_WEEK: &str = "first lamb within a week";

/// Returns how much is still open.
pub fn still_open(open: usize) -> String {
    format!("Agree before lambing: {open} of {} open", ToAgree::ALL.len())
}

/// Returns what was agreed, as it was noted.
pub fn noted_agreed(what: VetAgreed) -> String {
    format!("Agreed with the vet: {}", to_agree(ToAgree::Agreed(what)).to_lowercase())
}
