//! What is wrong with a limit of the farm's own.

use yeanling_core::practice::{Limit, LimitError};

/// Returns what is wrong with a limit of the farm's own.
pub fn limit(error: &LimitError) -> String {
    let LimitError { limit, given, least, most } = error;
    let (name, why) = match limit {
        Limit::Up => ("Up on its feet", "A lamb should be up within its first two hours."),
        Limit::Help => ("Help it to suck", "A lamb that has not sucked by 3 h has waited too long."),
        Limit::Red => ("Late for first milk", "It comes after help, and no later than 4 h."),
        Limit::LastCall => ("The last call for first milk", "It comes after red, and no later than 12 h."),
        Limit::NavelAgain => ("Dipping the navel again", "The second dip is on the first day."),
        Limit::Look => ("The look", "A restless ewe is looked at often."),
        Limit::Restless => ("Restless", "Twelve hours without waters is too long."),
        Limit::HandCheck => ("The hand check", "Half an hour is usual."),
        Limit::StepIn => ("Stepping in", "It comes after the hand check, and no later than 2 h."),
        Limit::Progress => ("Progress", "What shows comes further within an hour at most."),
        Limit::Neck => ("The tight neck", "No longer than half an hour, then the vet."),
        Limit::PutRight => ("Putting right", "No longer than half an hour, then the vet."),
        Limit::NextLamb => ("The next lamb", "It is looked for within the hour."),
        Limit::NextCheck => ("The next check", "It comes after the look, and no later than 2 h."),
        Limit::AfterbirthAsk => ("Asking for the afterbirth", "Within the first 12 h."),
        Limit::AfterbirthLate => ("Afterbirth late", "It comes after asking, and no later than 18 h."),
        Limit::AfterbirthVet => ("Afterbirth: vet", "It comes after late, and no later than 24 h."),
        Limit::StaySingle => ("The stay of a single", "Longer than ten days is no bonding pen."),
        Limit::StayTwins => ("The stay of twins", "Longer than ten days is no bonding pen."),
        Limit::StayMore => ("The stay of triplets", "Longer than ten days is no bonding pen."),
    };
    let unit = match limit {
        Limit::StaySingle | Limit::StayTwins | Limit::StayMore => "hours",
        Limit::Up
        | Limit::Help
        | Limit::Red
        | Limit::LastCall
        | Limit::NavelAgain
        | Limit::Look
        | Limit::Restless
        | Limit::HandCheck
        | Limit::StepIn
        | Limit::Progress
        | Limit::Neck
        | Limit::PutRight
        | Limit::NextLamb
        | Limit::NextCheck
        | Limit::AfterbirthAsk
        | Limit::AfterbirthLate
        | Limit::AfterbirthVet => "minutes",
    };
    format!("{name} cannot be {given} {unit}. Between {least} and {most} is allowed. {why}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::practice::Limits;

    #[test]
    fn a_wrong_limit_says_which_and_why() {
        let wrong = Limits { last_call_minutes: 900, ..Limits::default() };
        assert_eq!(
            limit(&wrong.checked().expect_err("too late")),
            "The last call for first milk cannot be 900 minutes. Between 121 and 720 is allowed. It comes after red, and no later than 12 h.",
        );
    }
}
