//! The dates of a season.

use yeanling_core::reckon::season::dates::{Choices, Crop, DateTask, Dated, FeedFrom, dates};
use yeanling_core::reckon::season::feed_steps::Steps;
use yeanling_core::reckon::season::gestation::Gestation;
use yeanling_core::units::NaiveDate;

use super::{date, with_ram};
use crate::handbook::kg;

/// The season of a ram in from 2026-10-01 to 2026-11-20: earliest lambing 2027-02-20, last 2027-04-21.
fn season(choices: &Choices) -> Vec<Dated> {
    let mating = with_ram("2026-10-01", 51);
    dates(mating, mating.window(Gestation::default()), choices).expect("in bounds")
}

#[track_caller]
fn when(all: &[Dated], what: impl Fn(&DateTask) -> bool) -> Vec<NaiveDate> {
    all.iter().filter(|one| what(&one.what)).map(|one| one.date).collect()
}

#[test]
fn the_booster_is_due_28_days_before_the_earliest_lambing() {
    // Source: Maryland, NCSU, Missouri: −28 d, window −42 to −14; 2027-02-20 → 2027-01-23, 01-09 to 02-06.
    let all = season(&Choices::default());
    let booster = DateTask::Booster { from: date("2027-01-09"), until: date("2027-02-06") };
    assert_eq!(when(&all, |what| *what == booster), [date("2027-01-23")]);
}

#[test]
fn crayons_change_until_the_ram_is_out() {
    // Source: guides, 16 to 17 d, 14 to 15, or weekly.
    let changes = |crayon_days| {
        let all = season(&Choices { crayon_days, ..Choices::default() });
        when(&all, |what| matches!(what, DateTask::CrayonChange { .. }))
    };
    assert_eq!(changes(17), [date("2026-10-18"), date("2026-11-04")]);
    assert_eq!(changes(16), [date("2026-10-17"), date("2026-11-02"), date("2026-11-18")]);
    assert_eq!(changes(14).len(), 3);
    assert_eq!(changes(7).len(), 7);
    let numbers: Vec<DateTask> = season(&Choices::default()).iter().map(|one| one.what).collect();
    for number in 1..=3 {
        assert!(numbers.contains(&DateTask::CrayonChange { number }));
    }
}

#[test]
fn extra_feed_starts_by_the_crop() {
    // Source: feed mill, 3 to 4 weeks before at 130 to 175 %, 4 to 6 at 180 to 225 %.
    let (usual, prolific) = (FeedFrom::Mill(Crop::Usual), FeedFrom::Mill(Crop::Prolific));
    assert_eq!((usual.range(), prolific.range()), ((21, 28), (28, 42)));
    let start = |feed_from| {
        let all = season(&Choices { feed_from, ..Choices::default() });
        when(&all, |what| matches!(what, DateTask::Feed { .. }))[0]
    };
    assert_eq!(start(usual), date("2027-01-23"));
    assert_eq!(start(prolific), date("2027-01-09"));
    assert_eq!(
        [130, 175, 176, 225].map(Crop::of_percent),
        [Crop::Usual, Crop::Usual, Crop::Prolific, Crop::Prolific]
    );
}

#[test]
fn some_feed_from_eight_weeks_before_to_eight_weeks_after() {
    // Source: common practice.
    let all = season(&Choices { feed_from: FeedFrom::EightWeeks, ..Choices::default() });
    assert_eq!(when(&all, |what| matches!(what, DateTask::Feed { .. }))[0], date("2026-12-26"));
    assert_eq!(when(&all, |what| *what == DateTask::FeedUntil), [date("2027-06-16")]);
}

#[test]
fn each_step_of_the_feed_has_its_date() {
    // Source: ours, 100 g more every second day up to 600 g.
    let all = season(&Choices::default());
    let steps: Vec<(NaiveDate, f64)> = all
        .iter()
        .filter_map(|one| match one.what {
            DateTask::Feed { each } => Some((one.date, (each.as_kilograms() * 1000.0).round())),
            _ => None,
        })
        .collect();
    let expected = [
        ("01-23", 100.0),
        ("01-25", 200.0),
        ("01-27", 300.0),
        ("01-29", 400.0),
        ("01-31", 500.0),
        ("02-02", 600.0),
    ];
    assert_eq!(steps, expected.map(|(day, grams)| (date(&format!("2027-{day}")), grams)));
}

#[test]
fn the_nights_are_watched_from_the_first_to_the_last_day() {
    // Source: Sheep 201 and Montana, 142 d after ram in to 152 d after ram out.
    let all = season(&Choices::default());
    assert_eq!(when(&all, |what| *what == DateTask::WatchFrom), [date("2027-02-20")]);
    assert_eq!(when(&all, |what| *what == DateTask::WatchUntil), [date("2027-04-21")]);
    assert_eq!(when(&all, |what| *what == DateTask::RamOut), [date("2026-11-20")]);
}

#[test]
fn ewes_are_scored_four_times() {
    // Source: ours: 8 weeks before the ram, at ram in, 75 d after it, 6 weeks before lambing.
    let all = season(&Choices::default());
    for (what, day) in [
        (DateTask::ScoreBeforeRam, "2026-08-06"),
        (DateTask::ScoreAtRam, "2026-10-01"),
        (DateTask::ScoreAtMid, "2026-12-15"),
        (DateTask::ScoreLate, "2027-01-09"),
    ] {
        assert_eq!(when(&all, |one| *one == what), [date(day)]);
    }
}

#[test]
fn dates_come_in_order_and_move_with_the_earliest_lambing() {
    // Source: ours.
    let all = season(&Choices::default());
    assert!(all.windows(2).all(|two| two[0].date <= two[1].date));
    let mating = with_ram("2026-10-01", 51);
    let later =
        dates(mating, (date("2027-03-01"), date("2027-04-21")), &Choices::default()).expect("in bounds");
    assert_eq!(when(&later, |what| matches!(what, DateTask::Booster { .. })), [date("2027-02-01")]);
}

#[test]
fn a_choice_that_makes_no_sense_is_refused() {
    // Source: ours.
    let mating = with_ram("2026-10-01", 51);
    let window = mating.window(Gestation::default());
    for choices in [
        Choices { crayon_days: 0, ..Choices::default() },
        Choices { crayon_days: 18, ..Choices::default() },
        Choices { feed_from: FeedFrom::Own { days: 121 }, ..Choices::default() },
    ] {
        assert!(dates(mating, window, &choices).is_err(), "{choices:?}");
    }
    let steps = Steps::new(kg(0.05), 3, kg(0.2)).expect("in bounds");
    let own = Choices { feed_from: FeedFrom::Own { days: 10 }, steps, ..Choices::default() };
    assert_eq!(when(&season(&own), |what| matches!(what, DateTask::Feed { .. })).len(), 4);
}
