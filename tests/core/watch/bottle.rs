//! A lamb that lives from the hand: its next feed, and what its first day is short of.

use yeanling_core::book::{Animal, Event, LambId, Milk, VigorScale, Way};
use yeanling_core::settings::{BottleTable, Choice, DayRule};
use yeanling_core::units::{Moment, Temperature, TimeDelta, Volume};
use yeanling_core::watch::{BeforeMilk, Completion, Hold, LambTask, State, before_milk, hold_milk, validate};

use super::{all, check, day_total, feed, find, lamb_task, none, weigh};
use crate::scribe::{MS, Scribe, at, fed, hour, kg, ml};

/// A lamb of four kilograms, fed 200 ml of its dam's colostrum at half an hour.
fn on_the_bottle() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(25), lamb, 4.0);
    scribe.fed(at(30), lamb, 200.0);
    (scribe, lamb)
}

#[track_caller]
fn volume(scribe: &Scribe, now: Moment, expected: Option<Volume>) {
    assert_eq!(
        find(scribe, now, feed).map(|duty| lamb_task(&duty)),
        Some(LambTask::Feed { volume: expected, before: None })
    );
}

#[track_caller]
fn one_tap(scribe: &Scribe, now: Moment, expected: Event) {
    assert_eq!(find(scribe, now, feed).map(|duty| duty.completion), Some(Completion::Note(expected)));
}

#[track_caller]
fn read_first(scribe: &Scribe, now: Moment) {
    assert_eq!(find(scribe, now, feed).map(|duty| duty.completion), Some(Completion::Open));
}

#[test]
fn a_lamb_never_fed_has_no_feeding_hours() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(25), lamb, 4.0);
    none(&scribe, at(60), feed);
    none(&scribe, hour(21), day_total);
}

#[test]
fn the_feed_after_the_first_is_due_in_time_for_the_six_hours() {
    let (scribe, lamb) = on_the_bottle();
    check(&scribe, at(30), feed, at(360), at(420));
    volume(&scribe, at(30), Some(ml(200.0)));
    read_first(&scribe, at(30));
    one_tap(&scribe, at(90), fed(lamb, 200.0, Milk::DamColostrum, Way::Bottle));
}

#[test]
fn the_last_feed_of_the_day_is_what_is_missing() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.fed(hour(6), lamb, 200.0);
    scribe.fed(hour(12), lamb, 200.0);
    scribe.fed(hour(15), lamb, 90.0);
    volume(&scribe, hour(15), Some(ml(110.0)));
    scribe.fed(hour(18), lamb, 110.0);
    none(&scribe, hour(18), feed);
    none(&scribe, hour(24) - MS, feed);
    check(&scribe, hour(24), feed, hour(18) + TimeDelta::minutes(288), hour(19) + TimeDelta::minutes(288));
}

#[test]
fn without_a_weight_the_next_feed_is_four_hours_on_and_no_volume_is_said() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.fed(at(30), lamb, 100.0);
    check(&scribe, at(30), feed, at(270), at(330));
    volume(&scribe, at(30), None);
    read_first(&scribe, at(30));
    scribe.weighed(at(40), lamb, 4.0);
    // Half of what it wants was drunk: the other half is left, and the next comes in half the time.
    volume(&scribe, at(40), Some(ml(100.0)));
    volume(&scribe, at(90), Some(ml(200.0)));
}

#[test]
fn a_tube_is_never_one_tap() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.note(hour(6), fed(lamb, 200.0, Milk::DamColostrum, Way::Tube));
    volume(&scribe, hour(6), Some(ml(200.0)));
    read_first(&scribe, hour(6));
    read_first(&scribe, hour(30));
}

#[test]
fn no_feed_is_offered_that_the_guard_would_refuse() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.weighed(at(40), lamb, 3.0);
    // The day goes by the birth weight of 4 kg, the guard by the latest: 3 kg × 60 ml/kg = 180 ml.
    volume(&scribe, at(40), Some(ml(180.0)));
    read_first(&scribe, at(40));
    one_tap(&scribe, at(90), fed(lamb, 180.0, Milk::DamColostrum, Way::Bottle));
}

#[test]
fn a_lamb_seen_to_suck_is_its_dams_again() {
    let (mut scribe, lamb) = on_the_bottle();
    let sucked = scribe.sucked(at(200), lamb);
    none(&scribe, at(400), feed);
    none(&scribe, hour(21), day_total);
    scribe.strike(at(201), sucked);
    assert!(find(&scribe, at(400), feed).is_some());
    assert!(find(&scribe, hour(21), day_total).is_some());
    scribe.sucked(at(200), lamb);
    scribe.fed(at(300), lamb, 200.0);
    assert!(find(&scribe, at(400), feed).is_some(), "fed again");
    none(&scribe, hour(21), day_total);
}

#[test]
fn after_a_day_colostrum_gives_way_to_replacer() {
    let (mut scribe, lamb) = on_the_bottle();
    one_tap(&scribe, hour(24) - MS, fed(lamb, 200.0, Milk::DamColostrum, Way::Bottle));
    for milk in [Milk::DamColostrum, Milk::EweColostrum, Milk::OtherColostrum, Milk::PowderColostrum] {
        scribe.note(hour(23), fed(lamb, 50.0, milk, Way::Bottle));
        one_tap(&scribe, hour(24), fed(lamb, 125.0, Milk::Replacer, Way::Bottle));
    }
    scribe.note(hour(23), fed(lamb, 50.0, Milk::Milk, Way::Bottle));
    one_tap(&scribe, hour(24), fed(lamb, 125.0, Milk::Milk, Way::Bottle));
}

#[test]
fn an_older_lamb_is_fed_by_the_table_of_its_farm() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.note(hour(30), fed(lamb, 100.0, Milk::Replacer, Way::Bottle));
    check(&scribe, hour(30), feed, hour(30) + TimeDelta::minutes(288), hour(31) + TimeDelta::minutes(288));
    volume(&scribe, hour(30), Some(ml(125.0)));
    scribe.note(hour(30), Event::Chose(Choice::BottleTable(BottleTable::UsHandbook)));
    // 2½ US fluid ounces six times a day.
    check(&scribe, hour(30), feed, hour(34), hour(35));
    volume(&scribe, hour(30), Some(ml(75.0)));
}

#[test]
fn an_older_lamb_is_fed_by_its_last_weight_and_weighed_again_after_three_days() {
    // Ours: the last weight guards the stomach, three days unweighed in the first weeks put weighing first.
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(25), lamb, 2.0);
    scribe.fed(hour(25), lamb, 60.0);
    let four_days = at(25) + TimeDelta::days(4);
    // 2 kg × 200 ml/kg ÷ 5 feeds = 80 ml; an older weight stays until the next.
    let feeds = |scribe: &Scribe, now| match find(scribe, now, feed).map(|duty| lamb_task(&duty)) {
        Some(LambTask::Feed { volume, before }) => {
            (volume.map(Volume::as_milliliters), before == Some(BeforeMilk::Weigh))
        }
        other => panic!("{other:?}"),
    };
    assert_eq!(feeds(&scribe, hour(25)), (Some(20.0), false), "the rest of the first");
    assert_eq!(feeds(&scribe, hour(26)), (Some(80.0), false));
    assert_eq!(feeds(&scribe, four_days), (Some(80.0), true));
    assert_eq!(feeds(&scribe, four_days + MS), (Some(80.0), true), "the last weight guards its stomach");
    assert!(find(&scribe, four_days, weigh).is_some_and(|duty| duty.state(four_days) >= State::Now));
    let day_nine = hour(9 * 24);
    scribe.fed(day_nine, lamb, 150.0);
    // 2 kg × 200 ml/kg ÷ 4 feeds, and asked to be weighed before it is starved.
    assert_eq!(feeds(&scribe, day_nine + TimeDelta::hours(1)), (Some(100.0), true));
    scribe.weighed(day_nine, lamb, 3.0);
    assert_eq!(feeds(&scribe, day_nine + TimeDelta::hours(1)), (Some(150.0), false));
    none(&scribe, day_nine + TimeDelta::hours(1), weigh);
}

#[test]
fn a_lamb_older_than_the_table_has_no_feeding_hours() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.fed(hour(35 * 24 - 8), lamb, 800.0);
    assert!(find(&scribe, hour(35 * 24) - MS, feed).is_some());
    none(&scribe, hour(35 * 24), feed);
}

#[test]
fn what_the_first_day_is_short_of_is_asked_for_from_twenty_hours() {
    let (mut scribe, lamb) = on_the_bottle();
    check(&scribe, at(30), day_total, hour(20), hour(24));
    let total =
        |scribe: &Scribe, now| find(scribe, now, day_total).map(|duty| (lamb_task(&duty), duty.completion));
    let short = |given| {
        Some((LambTask::DayTotal { given: ml(given), target: ml(800.0), before: None }, Completion::Open))
    };
    assert_eq!(total(&scribe, hour(20)), short(200.0));
    scribe.fed(hour(21), lamb, 569.0);
    assert_eq!(total(&scribe, hour(21)), short(769.0));
    assert_eq!(total(&scribe, hour(26)), short(769.0));
    assert_eq!(total(&scribe, hour(26) + MS), None);
    scribe.fed(hour(22), lamb, 1.0);
    assert_eq!(total(&scribe, hour(22)), None, "30 ml are no shortfall");
}

#[test]
fn milk_after_the_first_day_does_not_count_for_it() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.fed(hour(24) + MS, lamb, 700.0);
    assert!(find(&scribe, hour(25), day_total).is_some());
    let mut in_time = on_the_bottle().0;
    in_time.fed(hour(24), lamb, 700.0);
    none(&in_time, hour(25), day_total);
}

#[test]
fn a_day_without_a_birth_weight_has_no_total() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.fed(at(30), lamb, 100.0);
    none(&scribe, hour(21), day_total);
}

/// Follows the watch by one tap alone for 36 days: every quarter of an hour on the first, then every hour.
#[track_caller]
fn follow(kilograms: f64, rule: DayRule, table: BottleTable) {
    let mut scribe = Scribe::new(1);
    scribe.note(at(0), Event::Chose(Choice::DayRule(rule)));
    scribe.note(at(0), Event::Chose(Choice::BottleTable(table)));
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(10), lamb, kilograms);
    scribe.fed(at(30), lamb, kilograms * 50.0);
    let mut taps = 0;
    for minutes in (45..25 * 60).step_by(15).chain((25 * 60..36 * 24 * 60).step_by(60)) {
        let now = at(minutes);
        // Weighed whenever that comes first, and growing as a lamb does.
        if find(&scribe, now, weigh).is_some_and(|duty| duty.state(now) >= State::Now) {
            let days = minutes / (24 * 60);
            let growth = f64::from(i32::try_from(days).expect("few days")) * 0.2;
            scribe.weighed(now, lamb, kilograms + growth);
        }
        let Some(duty) = find(&scribe, now, feed).filter(|duty| duty.state(now) >= State::Now) else {
            continue;
        };
        let Completion::Note(event) = duty.completion else {
            let LambTask::Feed { volume, .. } = lamb_task(&duty) else { panic!("{duty:?}") };
            // What is not one tap is given all the same, as much as a careful hand would.
            let half = volume.map_or(60.0, |volume| volume.as_milliliters() / 2.0);
            scribe.note(now, fed(lamb, half, Milk::Replacer, Way::Bottle));
            continue;
        };
        let flock = scribe.flock();
        assert_eq!(
            validate(&flock, &scribe.book, &event, now, now),
            Ok(()),
            "{kilograms} kg at {minutes} minutes"
        );
        scribe.note(now, event);
        taps += 1;
        if minutes > 24 * 60 {
            none(&scribe, now, day_total);
        }
    }
    assert!(taps > 90, "{taps} feeds of {kilograms} kg in 36 days");
    let flock = scribe.flock();
    let given = flock.lamb(lamb).expect("it is here").given_first_day(hour(24) - MS);
    let target = match rule {
        DayRule::Ahdb200 => 200.0,
        DayRule::Ruma210 => 210.0,
        DayRule::TenPercent => 100.0,
    };
    let short = kg(kilograms).as_kilograms() * target - given.as_milliliters();
    assert!((-30.0..=30.0).contains(&short), "{short} ml short at {kilograms} kg");
    // Past the table only the question of weaning is left.
    let left: Vec<LambTask> = all(&scribe, hour(36 * 24)).iter().map(lamb_task).collect();
    assert_eq!(left, [LambTask::WeaningCheck { ready: false }]);
}

#[test]
fn a_lamb_fed_by_one_tap_gets_its_day_and_is_never_refused() {
    for kilograms in [1.5, 2.0, 3.3, 5.7, 9.0] {
        for rule in [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent] {
            follow(kilograms, rule, BottleTable::VetSupplier);
        }
        follow(kilograms, DayRule::Ahdb200, BottleTable::UsHandbook);
    }
}

/// Fed at half an hour, then tried and read: what the next feed says, and whether one tap notes it.
#[track_caller]
fn milk_after(noted: &[(i64, Event)], hold: Option<Hold>) {
    let (mut scribe, lamb) = on_the_bottle();
    for (minute, event) in noted {
        scribe.note(at(*minute), with(event, lamb));
    }
    let now = at(300);
    assert_eq!(hold_milk(scribe.flock().lamb(lamb).expect("it is there")), hold);
    let duty = find(&scribe, now, feed).expect("it still has its hours");
    let LambTask::Feed { volume, before } = lamb_task(&duty) else { panic!("{duty:?}") };
    // Another reading may be due before it, which holds nothing back.
    let flock = scribe.flock();
    assert_eq!(before, before_milk(flock.lamb(lamb).expect("it is there"), now, &flock.settings));
    let again = |before: BeforeMilk| before == BeforeMilk::Temperature;
    let held = before.filter(|before| !again(*before));
    assert_eq!((volume.is_none(), held), (before.is_some(), hold.map(BeforeMilk::Hold)));
    assert_eq!(duty.completion == Completion::Open, before.is_some());
}

/// The same fact of another lamb.
fn with(event: &Event, lamb: LambId) -> Event {
    match event {
        Event::TemperatureTaken { temperature, .. } => {
            Event::TemperatureTaken { lamb, temperature: *temperature }
        }
        Event::SwallowTried { able, .. } => Event::SwallowTried { lamb, able: *able },
        Event::VigorScored { scale, score, .. } => Event::VigorScored { lamb, scale: *scale, score: *score },
        Event::Stood { .. } => Event::Stood { lamb },
        Event::VetCalled { .. } => Event::VetCalled { animal: Animal::Lamb(lamb) },
        Event::LookedAt { .. } => Event::LookedAt { animal: Animal::Lamb(lamb) },
        other => panic!("{other:?}"),
    }
}

#[test]
fn no_milk_is_one_tap_away_while_a_lamb_is_too_cold_or_does_not_swallow() {
    // Source: Henderson 1997 and the UK hypothermia sheet: nothing milk-based under 37 °C, none without a swallow.
    let any = on_the_bottle().1;
    let read =
        |celsius| Event::TemperatureTaken { lamb: any, temperature: Temperature::from_celsius(celsius) };
    let tried = |able| Event::SwallowTried { lamb: any, able };
    milk_after(&[], None);
    milk_after(
        &[(60, read(36.9))],
        Some(Hold::Cold { since: at(60), read: Some(Temperature::from_celsius(36.9)) }),
    );
    let untried = Hold::NotTried { since: at(90), read: Temperature::from_celsius(37.0) };
    milk_after(&[(60, read(36.9)), (90, read(37.0))], Some(untried));
    milk_after(&[(60, read(36.9)), (90, read(37.0)), (91, tried(true))], None);
    milk_after(&[(60, read(36.9)), (90, read(39.0))], None);
    milk_after(&[(60, tried(true)), (60, read(38.0))], None);
    milk_after(&[(60, tried(false)), (60, read(36.0))], Some(Hold::NoSwallow { since: at(60) }));
    milk_after(&[(60, tried(false)), (60, read(39.5))], Some(Hold::NoSwallow { since: at(60) }));
    milk_after(&[(60, tried(false)), (90, tried(true))], None);
    // A failing lamb is read and tried: a thermometer says nothing of swallowing, nor a swallow of warmth.
    let failing = |minute| (minute, Event::VigorScored { lamb: any, scale: VigorScale::FourGrade, score: 4 });
    milk_after(&[failing(60)], Some(Hold::Failing { since: at(60) }));
    milk_after(&[failing(60), (70, read(39.3))], Some(Hold::Failing { since: at(60) }));
    milk_after(&[failing(60), (70, read(38.0)), (70, tried(true))], None);
    milk_after(
        &[failing(60), (70, read(36.0))],
        Some(Hold::Cold { since: at(70), read: Some(Temperature::from_celsius(36.0)) }),
    );
    milk_after(&[failing(60), (70, tried(true))], Some(Hold::Failing { since: at(60) }));
    milk_after(&[(50, read(38.0)), failing(60)], Some(Hold::Failing { since: at(60) }));
    // Neither a call to the vet, nor that it was seen up or better at a look, ends what was not looked at.
    milk_after(
        &[failing(60), (70, Event::VetCalled { animal: Animal::Lamb(any) })],
        Some(Hold::Failing { since: at(60) }),
    );
    milk_after(
        &[failing(60), (70, Event::LookedAt { animal: Animal::Lamb(any) })],
        Some(Hold::Failing { since: at(60) }),
    );
    milk_after(&[failing(60), (70, Event::Stood { lamb: any })], Some(Hold::Failing { since: at(60) }));
    // That it was seen at the teat is no try of head and swallow.
    let (mut scribe, lamb) = on_the_bottle();
    scribe.note(at(60), Event::SwallowTried { lamb, able: false });
    scribe.note(at(90), Event::Sucked { lamb });
    let hold = Some(Hold::NoSwallow { since: at(60) });
    assert_eq!(hold_milk(scribe.flock().lamb(lamb).expect("it is there")), hold);
}
