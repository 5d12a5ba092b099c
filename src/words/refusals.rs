//! Why something was not noted, and what to do instead. Nothing is lost: what was typed stays where it was.

use yeanling_core::units::{Moment, System};
use yeanling_core::watch::Refusal;

use super::common::{day_and_clock, volume_as_given};
use super::errors;

/// Returns why something was not noted.
pub(crate) fn refusal(refusal: &Refusal, now: Moment, system: System) -> String {
    let when = |moment: Moment| day_and_clock(moment, now);
    match refusal {
        Refusal::InFuture { at, now } => {
            format!("{} has not come yet: it is {}. Give a time that has passed.", when(*at), when(*now))
        }
        Refusal::BeforeBirth { at, born } => {
            format!("{} is before its birth at {}. Give a time after that.", when(*at), when(*born))
        }
        Refusal::BornAfter { born, seen } => {
            format!(
                "It was seen alive at {}, so it was not born at {}. Give an earlier time.",
                when(*seen),
                when(*born)
            )
        }
        Refusal::AfterDeath { at, died } => {
            format!("It died at {}, so this cannot be at {}.", when(*died), when(*at))
        }
        Refusal::NoSuchAnimal => {
            "This animal is not in the book any more. Its entry may have been struck.".to_owned()
        }
        Refusal::NoSuchEntry => "This entry is not in the book.".to_owned(),
        Refusal::Weight(error) => errors::weight(error, system),
        Refusal::Feed(error) => errors::refusal(error, system),
        Refusal::TooSoon { last, together } => format!(
            "It was fed at {}. With this that is {} within an hour: too much for one stomach. Wait, or change the earlier entry.",
            when(*last),
            volume_as_given(*together, system)
        ),
        Refusal::NoText => "Nothing is written yet. Write a few letters or digits.".to_owned(),
        Refusal::LongText { given, most } => format!("{given} characters are too many. At most {most} fit."),
        Refusal::Score { given, least, most } => {
            format!("{given} is not on this scale. It runs from {least} to {most}.")
        }
        Refusal::Temperature(error) => errors::lamb_temperature(error),
        Refusal::PenSide(error) => errors::pen_side(error, system),
        Refusal::TooYoungToRing { from } => {
            format!("No ring in the first 24 hours. From {} on; check your local rules.", when(*from))
        }
        Refusal::NoSuchPen => "There is no such pen, or it was taken down.".to_owned(),
        Refusal::PenInUse => "Someone is in this pen. Let them out first.".to_owned(),
        Refusal::NoSuchDuty => "Nothing of that kind is due any more.".to_owned(),
        Refusal::PutOffTooLong { until, most } => {
            format!("{} is too late. This can wait until {} and no longer.", when(*until), when(*most))
        }
        Refusal::NotOneAnimal => "These two cannot be one animal.".to_owned(),
        Refusal::Limit(error) => errors::limit(error),
        Refusal::PowderRate(error) => errors::powder_rate(error),
        Refusal::Rings(error) => errors::ring_days(error),
    }
}
