//! Calling the vet: the buttons that dial, and the farm's choice of whom.

/// Heads the vet's numbers.
pub const TITLE: &str = "Your vet";
/// Calls the only number.
pub const CALL: &str = "Call vet";
/// Calls the number of the day.
pub const CALL_DAY: &str = "Call vet, day";
/// Calls the number of the night.
pub const CALL_NIGHT: &str = "Call vet, night";
/// Leads to where the number is given.
pub const ADD: &str = "Add your vet’s number";
/// Labels the number.
pub const NUMBER: &str = "Vet’s phone number";
/// Labels the number for the night.
pub const NIGHT_NUMBER: &str = "Night and weekend number";
/// Explains both.
pub const SUB: &str =
    "A button dials it wherever Yeanling says to call. It is kept in the book, for every phone.";
/// Saves a number.
pub const SAVE: &str = "Save number";
/// Says what is wrong with a number.
pub const NOT_A_NUMBER: &str = "This is not a phone number. Enter digits, such as +1 555 010 0199.";

/// Returns what was chosen about a number.
pub fn noted(number: &str, night: bool) -> String {
    let whose = if night { "Vet’s night number" } else { "Vet’s number" };
    if number.is_empty() { format!("{whose} removed") } else { format!("{whose}: {number}") }
}
