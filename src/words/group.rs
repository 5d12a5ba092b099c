//! A group: its ram, its ewes, and the list of tags that puts more of them in.

use chrono::NaiveDate;
use yeanling_core::flock::{Group, Staying};
use yeanling_core::reckon::season::mating::Mating;
use yeanling_core::units::Unread;

use super::common::short_date;
use super::{animals, plan};

/// The group was broken up.
pub const PARTED: &str = "This group has ended. Its record stays.";
/// Puts the ram in.
pub const RAM_IN: &str = "Ram in";
/// Asks when he went in.
pub const RAM_IN_ASK: &str = "When did the ram go in?";
/// Takes the ram out.
pub const RAM_OUT: &str = "Ram out";
/// Asks when he came out.
pub const RAM_OUT_ASK: &str = "When did the ram come out?";
/// Labels the day.
pub const DAY: &str = "Day";
/// Says what a day ahead is.
pub const DAY_AHEAD: &str = "A day ahead is kept as a plan.";
/// No day was given.
pub const NO_DAY: &str = "That is not a date. Enter year, month, day.";
/// Labels the ram's name.
pub const RAM: &str = "The ram’s name or tag, if you like";
/// Offers the rams of the book.
pub const OF_BOOK: &str = "A ram of your book";
/// Adds ewes.
pub const ADD: &str = "Add ewes";
/// Asks for their tags.
pub const ADD_ASK: &str = "Which ewes?";
/// Labels the list.
pub const TAGS: &str = "Tags: a list or ranges";
/// Shows how it is typed.
pub const TAGS_HINT: &str = "Such as 101–140, 7, 9";
/// Since when they are in.
pub const SINCE: &str = "In the group since";
/// Picks ewes that are in the book.
pub const PICK: &str = "Or tap them";
/// Notes crayon marks of the group.
pub const MARKS: &str = "Crayon marks";
/// A color that is not offered.
pub const OTHER_COLOR: &str = "Another color";
/// The crayon was changed, as it is answered.
pub const CHANGED: &str = "Changed";
/// Notes that the crayon was changed.
pub const CRAYON_CHANGED: &str = "Crayon changed";
/// Asks for the crayon.
pub const CRAYON: &str = "Which crayon is on the ram now?";
/// Why the color is changed.
pub const CRAYON_TEXT: &str =
    "A darker color each time shows over the one before. Common practice, no source.";
/// The usual colors, the light ones first.
pub const COLORS: [&str; 6] = ["yellow", "orange", "green", "red", "blue", "purple"];
/// Asks on which day marks were seen.
pub const SEEN_ON: &str = "Seen on";
/// This day.
pub const TODAY: &str = "Today";
/// Any other day.
pub const OTHER_DAY: &str = "Other day";

/// Returns a ewe's last mark under her number: "red 3 Oct".
pub fn marked(color: &str, on: NaiveDate) -> String {
    format!("{color} {}", short_date(on))
}

/// Returns the button that notes the marks.
pub fn mark(ewes: usize) -> String {
    if ewes == 0 { "Tap the marked ewes".to_owned() } else { format!("Mark {}", animals::ewes(ewes)) }
}

/// Breaks the group up.
pub const PART: &str = "End group";
/// Heads its ewes.
pub const EWES: &str = "Its ewes";
/// Says that there are none.
pub const NO_EWES: &str = "No ewes yet.";
/// Takes a ewe out.
pub const OUT: &str = "Take out";

/// Says that ewes count only from after the ram came: "33 ewes are in the group only since 28 Nov, …".
pub fn came_late(ewes: usize, since: NaiveDate, ram_in: NaiveDate) -> String {
    let who = format!("{} {}", animals::ewes(ewes), if ewes == 1 { "is" } else { "are" });
    format!(
        "{who} in the group since {}, the ram since {}. Dates count from the later day.",
        short_date(since),
        short_date(ram_in)
    )
}

/// Says that they were there from the first.
pub fn with_him_from(ram_in: NaiveDate) -> String {
    format!("They were with the ram from {}", short_date(ram_in))
}

/// Returns how a group stands: "24 ewes · ram in since 1 Oct, counted as in until 21 Nov"; `planned` is the day for which
/// a ram is.
pub fn stands(group: &Group, planned: Option<NaiveDate>, today: NaiveDate) -> String {
    let ewes = animals::ewes(group.ewes().count());
    let ram = match group.ram_times().last() {
        None => planned.map_or_else(
            || "no ram yet".to_owned(),
            |planned| format!("no ram yet, planned for {}", short_date(planned)),
        ),
        Some((came, None)) if group.staying().is_some_and(|staying| staying != Staying::Unsaid) => {
            let stays = plan::stays(group.staying().unwrap_or_default());
            format!("ram in since {}, {stays}", short_date(came.local().date()))
        }
        Some((came, None)) => {
            let day = came.local().date();
            let until = Mating::new(day, None).map(|mating| mating.ram_out());
            let counted = until.map(|until| {
                let until_when = short_date(until);
                if today > until {
                    format!(", counted only to {until_when}: note when he came out")
                } else {
                    format!(", counted to {until_when}")
                }
            });
            format!("ram in since {}{}", short_date(day), counted.unwrap_or_default())
        }
        Some((came, Some(out))) => {
            format!("ram in {} to {}", short_date(came.local().date()), short_date(out.local().date()))
        }
    };
    format!("{ewes} · {ram}")
}

/// Returns what a typed list would do, a line each: known, new, repeated, unread.
pub fn preview(
    known: usize,
    fresh: &[String],
    repeated: &[String],
    unread: &[(String, Unread)],
) -> Vec<String> {
    let mut lines = Vec::new();
    if known > 0 {
        lines.push(format!("*{known}* of your ewes"));
    }
    if !fresh.is_empty() {
        // A slip of the finger shows first, not behind the dots: what is unlike most.
        let (mut odd, mut tags): (Vec<String>, Vec<String>) =
            fresh.iter().cloned().partition(|tag| tag.contains(char::is_alphabetic));
        if odd.len() > tags.len() {
            std::mem::swap(&mut odd, &mut tags);
        }
        lines.push(format!("*{}* new: {}", fresh.len(), few(&[odd, tags].concat())));
    }
    if !repeated.is_empty() {
        lines.push(format!("Typed twice, counted once: {}", few(repeated)));
    }
    lines.extend(unread.iter().take(5).map(|(bit, why)| {
        let why = match why {
            Unread::Backwards => "ends before it starts",
            Unread::TooMany => "is more than 2000 tags",
            Unread::NoRange => "is not a range",
        };
        format!("“{bit}” {why}: *left out*")
    }));
    lines
}

fn few(tags: &[String]) -> String {
    const SHOWN: usize = 6;
    let mut shown = tags.iter().take(SHOWN).cloned().collect::<Vec<_>>().join(", ");
    if tags.len() > SHOWN {
        shown += ", …";
    }
    shown
}

/// Returns the button that puts them in.
pub fn put_in(ewes: usize) -> String {
    format!("Put {} in", animals::ewes(ewes))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_of_tags_says_what_becomes_of_each() {
        let tags = |range: std::ops::Range<u8>| range.map(|tag| tag.to_string()).collect::<Vec<_>>();
        let lines = preview(3, &tags(1..9), &tags(4..5), &[("9-3".to_owned(), Unread::Backwards)]);
        assert_eq!(
            lines,
            [
                "*3* of your ewes",
                "*8* new: 1, 2, 3, 4, 5, 6, …",
                "Typed twice, counted once: 4",
                "“9-3” ends before it starts: *left out*",
            ]
        );
    }
}
