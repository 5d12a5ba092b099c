//! What is wrong with a limit of the farm's own.

use yeanling_core::settings::{Limit, LimitError};

/// Returns what is wrong with a limit of the farm's own.
pub fn limit(error: &LimitError) -> String {
    let LimitError { limit, given, least, most } = error;
    let (name, why) = match limit {
        Limit::Up => ("Up on its feet", "A lamb should be up within its first two hours."),
        Limit::Help => ("Help it nurse", "A lamb that has not nursed by 3 h has waited too long."),
        Limit::Red => ("Colostrum late", "It comes after help, at 4 h at the latest."),
        Limit::LastCall => ("Colostrum deadline", "It comes after late, at 12 h at the latest."),
        Limit::NavelAgain => ("Dipping the navel again", "The second dip is on the first day."),
        Limit::Look => ("The look", "A restless ewe is looked at often."),
        Limit::Restless => ("Restless", "Twelve hours without waters is too long."),
        Limit::HandCheck => ("Internal check", "Half an hour is usual."),
        Limit::StepIn => ("Assisting", "It comes after the internal check, at 2 h at the latest."),
        Limit::Progress => ("Progress", "What shows must come further within an hour."),
        Limit::Neck => ("Cervix not open", "Half an hour at most, then the vet."),
        Limit::PutRight => ("Correcting the lamb", "Half an hour at most, then the vet."),
        Limit::NextLamb => ("The next lamb", "Look for it within the hour."),
        Limit::NextCheck => ("The next check", "It comes after the look, at 2 h at the latest."),
        Limit::AfterbirthAsk => ("Asking for the afterbirth", "Within the first 12 h."),
        Limit::AfterbirthLate => ("Afterbirth late", "It comes after asking, at 18 h at the latest."),
        Limit::AfterbirthVet => ("Afterbirth: vet", "It comes after late, at 24 h at the latest."),
        Limit::StaySingle => ("The stay of a single", "A bonding pen is for ten days at most."),
        Limit::StayTwins => ("The stay of twins", "A bonding pen is for ten days at most."),
        Limit::StayMore => ("The stay of triplets", "A bonding pen is for ten days at most."),
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
    format!("{name}: {given} {unit} is out of range. Enter {least} to {most}. {why}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::settings::Limits;

    #[test]
    fn a_wrong_limit_says_which_and_why() {
        let wrong = Limits { last_call_minutes: 900, ..Limits::default() };
        assert_eq!(
            limit(&wrong.checked().expect_err("too late")),
            "Colostrum deadline: 900 minutes is out of range. Enter 121 to 720. It comes after late, at 12 h at the latest.",
        );
    }
}
