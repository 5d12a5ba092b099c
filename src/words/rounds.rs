//! The rounds through the flock, each with how far it has come.

use chrono::NaiveDate;

use super::common::short_date;

/// Shows the rounds and the medicine record.
pub const TITLE: &str = "Rounds and medicines";
/// Says what to do before ewes can be scored.
pub const NO_GROUP: &str = "Make a group in Season first";

/// Returns when the ewes of a group were scored last: "18 ewes · last scored 2 Mar".
pub fn scored(ewes: usize, last: Option<NaiveDate>) -> String {
    let ewes = counted(ewes, "ewe");
    match last {
        Some(day) => format!("{ewes} · last scored {}", short_date(day)),
        None => format!("{ewes} · not scored yet"),
    }
}

/// Returns when lambs were weighed last, apart from at birth: "24 lambs · last weighed 3 Mar".
pub fn weighed(lambs: usize, last: Option<NaiveDate>) -> String {
    let told = counted(lambs, "lamb");
    match last {
        _ if lambs == 0 => told,
        Some(day) => format!("{told} · last weighed {}", short_date(day)),
        None => format!("{told} · not weighed since birth"),
    }
}

/// Returns how many animals are in withdrawal.
pub fn withdrawal(animals: usize) -> String {
    if animals == 0 { "None in withdrawal".to_owned() } else { format!("{animals} in withdrawal") }
}

fn counted(count: usize, one: &str) -> String {
    format!("{count} {one}{}", if count == 1 { "" } else { "s" })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_round_says_how_far_it_has_come() {
        let day = NaiveDate::from_ymd_opt(2027, 3, 2);
        assert_eq!(scored(1, None), "1 ewe · not scored yet");
        assert!(scored(18, day).starts_with("18 ewes · last scored "));
        assert_eq!(weighed(0, day), "0 lambs");
        assert_eq!(weighed(2, None), "2 lambs · not weighed since birth");
        assert_eq!(withdrawal(3), "3 in withdrawal");
    }
}
