//! Why something was not noted, and what to do instead. Nothing is lost: what was typed stays where it was.

use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{EweRejection, GroupRejection, Rejection, StoreRejection};

use super::common::{date, day_and_clock, long_date, number, per_weight, temperature, volume_as_given};
use super::{errors, life, season, stores};

/// Returns why something was not noted.
pub fn rejection(rejection: &Rejection, now: Moment, system: System) -> String {
    let when = |moment: Moment| day_and_clock(moment, now);
    match rejection {
        Rejection::InFuture { at, now } => {
            format!("{} is in the future: it is {} now. Enter a time that has passed.", when(*at), when(*now))
        }
        Rejection::SheIsLambing => {
            "She is lambing: a lamb shows, something was felt, or she is being assisted. If that was a slip, undo that entry first.".to_owned()
        }
        Rejection::LookAgain { given, most, .. } => super::danger::look_refused(&when(*given), &when(*most)),
        Rejection::BeforeBirth { at, born } => {
            format!("{} is before its birth at {}. Enter a later time.", when(*at), when(*born))
        }
        Rejection::BornAfter { born, seen } => {
            format!(
                "It was seen alive at {}, so it was not born at {}. Enter an earlier time.",
                when(*seen),
                when(*born)
            )
        }
        Rejection::AfterDeath { at, died } => {
            format!("It died at {}, so this cannot be at {}.", when(*died), when(*at))
        }
        Rejection::NoSuchAnimal => {
            "This animal is not in the book any more. Its entry may have been deleted.".to_owned()
        }
        Rejection::NoSuchEntry => "This entry is not in the book.".to_owned(),
        Rejection::Weight(error) => errors::weight(error, system),
        Rejection::Feed(error) => errors::rejection(error, system),
        Rejection::TooSoon { last, together } => format!(
            "It was fed at {}. With this that is {} within an hour: too much for one stomach, which \
             holds one feed, {}. Wait, or change the earlier entry.",
            when(*last),
            volume_as_given(*together, system),
            per_weight(50.0, system)
        ),
        Rejection::NotAPhoneNumber => super::vet::NOT_A_NUMBER.to_owned(),
        Rejection::NoText => "Nothing typed yet. Enter a few letters or digits.".to_owned(),
        Rejection::LongText { given, most } => format!("{given} characters are too many. At most {most} fit."),
        Rejection::Score { given, least, most } => {
            format!("{given} is out of range. Enter {least} to {most}.")
        }
        Rejection::Temperature(error) => errors::lamb_temperature(error),
        Rejection::EweTemperature(error) => {
            let told = |warm| temperature(warm, system);
            let (least, most) = (told(error.allowed.least), told(error.allowed.most));
            format!("{} is out of range for a ewe. Enter {least} to {most}.", told(error.given))
        }
        Rejection::Ketones(error) => {
            let told = super::illness::ketones;
            let (least, most) = (told(error.allowed.least), told(error.allowed.most));
            format!("{} is out of range. Enter {least} to {most}.", told(error.given))
        }
        Rejection::PerMinute { given, least, most } => {
            format!("{given} a minute is out of range. Enter {least} to {most}.")
        }
        Rejection::NothingHeld => "Neither belly nor chin holds milk back.".to_owned(),
        Rejection::PenSide(error) => errors::pen_side(error, system),
        Rejection::TooYoungToRing { from } => {
            format!(
                "No ring in the first 24 hours. It may go on from {}. Check your local rules.",
                when(*from)
            )
        }
        Rejection::NoSuchPen => "There is no such pen, or it was removed.".to_owned(),
        Rejection::PenInUse => "Someone is in this pen. Let them out first.".to_owned(),
        Rejection::Group(rejection) => group(rejection, when),
        Rejection::Ewe(rejection) => ewe(rejection),
        Rejection::Life(rejection) => life::rejection(rejection, now, system),
        Rejection::Store(rejection) => store(rejection, when, system),
        Rejection::NoSuchDuty => "This is not due any more.".to_owned(),
        Rejection::PutOffTooLong { until, most } => {
            format!("{} is too late. This can wait until {} at most.", when(*until), when(*most))
        }
        Rejection::NotOneAnimal => "These two cannot be one animal.".to_owned(),
        Rejection::Limit(error) => errors::limit(error),
        Rejection::PowderRate(error) => errors::powder_rate(error),
        Rejection::Rings(error) => errors::ring_days(error),
    }
}

fn group(rejection: &GroupRejection, when: impl Fn(Moment) -> String) -> String {
    match rejection {
        GroupRejection::NoSuchGroup => "There is no such group, or it has ended.".to_owned(),
        GroupRejection::InAGroup { name, since } => format!(
            "She has been in {name} since {}. First take her out of it, or take the ram out.",
            when(*since)
        ),
        GroupRejection::NotInGroup => "She is not in this group at that time.".to_owned(),
        GroupRejection::OutBeforeIn { ram_in, ram_out } => format!(
            "The ram went in at {} and came out at {}. Change one of the two.",
            when(*ram_in),
            when(*ram_out)
        ),
        GroupRejection::NoRamIn => "No ram is in with this group. First note when he went in.".to_owned(),
        GroupRejection::UsedLater { at, later } => {
            format!("A ewe joined this group at {}, so it did not end at {}.", when(*later), when(*at))
        }
        GroupRejection::NotAhead { day, today, most } => format!(
            "{} cannot be planned. Enter {} to {}.",
            long_date(*day),
            long_date(*today),
            long_date(*most)
        ),
    }
}

fn ewe(rejection: &EweRejection) -> String {
    match rejection {
        EweRejection::TooManyLambs { given, most } => {
            format!("{given} lambs is out of range. Enter 0 to {most}.")
        }
        EweRejection::ScanAge { given, least, most } => {
            format!("{given} days is out of range. Enter {least} to {most} days.")
        }
        EweRejection::AgeOfNone => "She scanned empty, so leave the lambs’ age blank.".to_owned(),
        EweRejection::ScanTooEarly { ram_in, days, least } => format!(
            "The ram went in on {}, {days} days before. A scan shows lambs at {least} days or later, so this one says nothing yet.",
            date(*ram_in)
        ),
        EweRejection::Condition(error) => {
            let (least, most) = (season::score(error.allowed.least), season::score(error.allowed.most));
            let given = number(error.given.as_score(), 3);
            format!("Condition {given} is out of range. Enter {least} to {most}.")
        }
        EweRejection::NotAQuarter { given } => {
            format!(
                "{} is between quarters. Enter quarters, such as 2.25 or 2.5.",
                number(given.as_score(), 3)
            )
        }
    }
}

fn store(rejection: &StoreRejection, when: impl Fn(Moment) -> String, system: System) -> String {
    match rejection {
        StoreRejection::Amount { item, out } => {
            let told = |amount| stores::amount(*item, amount, system);
            format!(
                "{} of {} is out of range. Enter {} to {}.",
                told(out.given),
                stores::item(*item),
                told(out.allowed.least),
                told(out.allowed.most)
            )
        }
        StoreRejection::NotWhole { item, given } => format!(
            "{} is not a whole number of {}.",
            stores::amount(*item, *given, system),
            stores::item(*item)
        ),
        StoreRejection::NotThatMuch { item, given, there } => format!(
            "There is {} of {}, not {}. Count it, or first note what you bought.",
            stores::amount(*item, *there, system),
            stores::item(*item),
            stores::amount(*item, *given, system)
        ),
        StoreRejection::NoSuchBatch => "This colostrum is not in the freezer list.".to_owned(),
        StoreRejection::NotThatManyBags { given, there } => {
            format!("There is {} left of this, not {given}.", stores::bags(*there))
        }
        StoreRejection::BeforeFrozen { at, frozen } => {
            format!("It was frozen at {}, so it was not thawed at {}.", when(*frozen), when(*at))
        }
        StoreRejection::Bags { given, least, most } => {
            format!("{given} bags is out of range. Enter {least} to {most} at once.")
        }
        StoreRejection::Bag(error) => format!(
            "{} is out of range for a bag. Enter {} to {}.",
            volume_as_given(error.given, system),
            volume_as_given(error.allowed.least, system),
            volume_as_given(error.allowed.most, system)
        ),
        StoreRejection::Brix(error) => errors::brix(error),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::book::Item;
    use yeanling_core::reckon::{mixing, powder};
    use yeanling_core::settings::PowderRule;
    use yeanling_core::units::{Amount, BoundFor, Bounds, Condition, Mass, TimeDelta, Volume};

    fn now() -> Moment {
        "2026-11-20T18:00:00.000-05:00".parse().expect("a moment")
    }

    #[track_caller]
    fn check(refused: impl Into<Rejection>, expected: &str) {
        assert_eq!(rejection(&refused.into(), now(), System::Metric), expected);
    }

    #[test]
    fn a_group_says_what_stands_in_the_way() {
        let since = now() - TimeDelta::hours(2);
        check(
            GroupRejection::InAGroup { name: "Texel".to_owned(), since },
            "She has been in Texel since 16:00. First take her out of it, or take the ram out.",
        );
        check(
            GroupRejection::OutBeforeIn { ram_in: since, ram_out: since - TimeDelta::hours(1) },
            "The ram went in at 16:00 and came out at 15:00. Change one of the two.",
        );
    }

    #[test]
    fn a_scan_too_early_says_from_when_on_it_tells() {
        let ram_in = "2026-10-31T12:00:00.000-05:00".parse().expect("a moment");
        let said =
            rejection(&EweRejection::ScanTooEarly { ram_in, days: 20, least: 30 }.into(), now(), System::Us);
        assert!(said.contains("20 days before") && said.contains("at 30 days or later"), "{said}");
    }

    #[test]
    fn a_store_says_what_there_is() {
        let of = Amount::from_units;
        check(
            StoreRejection::NotThatMuch { item: Item::Hay, given: of(300.0), there: of(120.0) },
            "There is 120 kg of hay, not 300 kg. Count it, or first note what you bought.",
        );
        check(StoreRejection::NotThatManyBags { given: 3, there: 1 }, "There is 1 bag left of this, not 3.");
    }

    /// What is out of range says what was given, the least and the most.
    #[track_caller]
    fn all_three(said: &str, three: [&str; 3]) {
        for one in three {
            assert!(said.contains(one), "{one} is not in: {said}");
        }
    }

    #[test]
    fn every_number_out_of_range_is_told_with_what_is_allowed() {
        let told = |refused: Rejection| rejection(&refused, now(), System::Metric);
        let of = Amount::from_units;
        let bounds = |least, most| Bounds { least: of(least), most: of(most), why: BoundFor::InStore };
        let out = bounds(0.5, 900.0).check(of(2000.0)).expect_err("out of bounds");
        all_three(
            &told(StoreRejection::Amount { item: Item::Hay, out }.into()),
            ["2000 kg", "0.5 kg", "900 kg"],
        );
        let out = Condition::OF_A_EWE.check(Condition::from_score(6.0)).expect_err("out of bounds");
        all_three(&told(EweRejection::Condition(out).into()), ["6", "1", "5"]);
        all_three(&told(EweRejection::TooManyLambs { given: 9, most: 6 }.into()), ["9 lambs", "0", "6"]);
        all_three(
            &told(EweRejection::ScanAge { given: 7, least: 30, most: 110 }.into()),
            ["7 days", "30", "110"],
        );
        all_three(&told(StoreRejection::Bags { given: 0, least: 1, most: 50 }.into()), ["0 bags", "1", "50"]);
        let out = Volume::FROZEN_BAG.check(Volume::from_milliliters(3.0)).expect_err("out of bounds");
        all_three(&told(StoreRejection::Bag(out).into()), ["3 ml", "10 ml", "2000 ml"]);
        all_three(&told(Rejection::Score { given: 12, least: 0, most: 10 }), ["12", "0", "10"]);
        let out = mixing::sample_to(Volume::ZERO, mixing::MIX).expect_err("nothing");
        all_three(&errors::no_mix(&out, System::Metric), ["0 ml", "1 ml", "100000 ml"]);
        let out =
            powder::plan(3, PowderRule::Ndsu, Mass::from_kilograms(-1.0)).expect_err("less than nothing");
        all_three(&errors::no_plan(&out, System::Metric), ["-1.0 kg", "0", "10000.0 kg"]);
    }
}
