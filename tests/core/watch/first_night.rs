//! What a first night on an empty book asks of the rules: the mouth stays shut on every screen at once, a lamb that was found
//! is as old as was said, the gravest that is due of a ewe is told, a lamb of another answers nothing of her own labor.

use yeanling_core::book::{Animal, Care, Event, Found, Illness, LambId, Life, Part, Presentation, Sign};
use yeanling_core::reckon::illness::lamb::{Lead, Row};
use yeanling_core::terms::{Change, Gate, LambSign, Mouth, Suck};
use yeanling_core::units::{Moment, Temperature, TimeDelta};
use yeanling_core::watch::{
    BeforeMilk, Duty, EweTask, LambStep, LambTask, State, Task, Trouble, before_milk, hold_milk, lamb_illness,
};

use super::all;
use crate::scribe::{Scribe, at, hour};

fn seen(lamb: LambId, [head_up, swallows, warm]: [Gate; 3], signs: &[LambSign]) -> Event {
    Event::Illness(Illness::LambSeen { lamb, head_up, swallows, warm, signs: signs.to_vec() })
}

const NOT: [Gate; 3] = [Gate::NotChecked; 3];

/// The rows of which the words say that nothing goes in by mouth, or no milk: `tests/pages/by_mouth.rs` reads the words.
fn shuts(row: Row) -> bool {
    matches!(
        row,
        Row::NotBreathing
            | Row::NoSwallow
            | Row::WateryMouth
            | Row::Bloat
            | Row::Tetanus
            | Row::Fits
            | Row::BowelOut
            | Row::MilkInLung
            | Row::ColdYoung
            | Row::ColdOlder
    )
}

#[test]
fn what_lets_nothing_in_by_mouth_holds_milk_at_any_age_until_good_news_of_that_very_sign() {
    let mut judged = 0;
    for row in Row::ALL {
        for lead in row.leads() {
            for age in [1, 26, 5 * 24, 15 * 24, 35 * 24] {
                let mut scribe = Scribe::new(1);
                let lamb = scribe.born(at(0), None);
                let (now, not) = (hour(age), Gate::NotChecked);
                let event = match lead {
                    Lead::Sign(sign) => seen(lamb, NOT, &[sign]),
                    Lead::Not(check) => {
                        use yeanling_core::reckon::illness::lamb::Check;
                        let gate = |one| if check == one { Gate::Bad } else { not };
                        seen(lamb, [gate(Check::HeadUp), gate(Check::Swallows), gate(Check::Warm)], &[])
                    }
                };
                scribe.note(now, event);
                let flock = scribe.flock();
                let of = flock.lamb(lamb).expect("a lamb");
                let told = lamb_illness(of, now).expect("an illness").answer;
                if !told.nothing_by_mouth && !told.rows.iter().any(|found| shuts(found.row)) {
                    continue;
                }
                judged += 1;
                let hold = hold_milk(of);
                assert!(
                    hold.is_some(),
                    "{row:?} by {lead:?} at {age} h: nothing by mouth, and milk is not held"
                );
                // Neither an hour nor another look at something else ends it.
                scribe.note(now + TimeDelta::minutes(60), seen(lamb, NOT, &[LambSign::Limps]));
                scribe.note(now + TimeDelta::minutes(61), Event::VetCalled { animal: Animal::Lamb(lamb) });
                let flock = scribe.flock();
                let of = flock.lamb(lamb).expect("a lamb");
                assert!(hold_milk(of).is_some(), "{row:?} by {lead:?} at {age} h: time ended it");
                let first = before_milk(of, now + TimeDelta::hours(3), &flock.settings);
                assert!(matches!(first, Some(BeforeMilk::Hold(_))), "{row:?} by {lead:?}: {first:?}");
            }
        }
    }
    assert!(judged > 40, "{judged}");
}

#[test]
fn a_chin_wet_from_birth_holds_milk_until_it_stays_dry_or_the_vet_allows_it() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    let held = |scribe: &Scribe| scribe.flock().lamb(lamb).and_then(hold_milk).is_some();
    scribe.note(at(30), seen(lamb, NOT, &[LambSign::WetChin]));
    // One of what is asked first is answered after it: that says nothing of the chin.
    scribe.note(at(31), seen(lamb, [Gate::NotChecked, Gate::NotChecked, Gate::Good], &[]));
    assert!(held(&scribe));
    let mut allowed = scribe.clone();
    allowed.note(at(40), Event::Illness(Illness::MilkAllowed { lamb }));
    assert!(!held(&allowed));
    let mut well = scribe.clone();
    let changed = |change| Event::Illness(Illness::Changed { animal: Animal::Lamb(lamb), change });
    well.note(at(40), changed(Change::Better));
    assert!(held(&well));
    well.note(at(41), changed(Change::Well));
    assert!(!held(&well));
    scribe.note(at(40), seen(lamb, NOT, &[LambSign::ChinDry]));
    assert!(!held(&scribe));
    scribe.note(at(60), seen(lamb, NOT, &[LambSign::WetChin]));
    assert!(held(&scribe), "wet once more");
    // From six hours on only the vet's word ends it.
    scribe.note(hour(7), seen(lamb, NOT, &[LambSign::WetChin]));
    scribe.note(hour(8), seen(lamb, NOT, &[LambSign::ChinDry]));
    assert!(held(&scribe));
}

/// A lamb that was found, and can be so old at the most then.
fn found(hours: i64) -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.note(hour(hours), Event::Care(Care::FoundBorn { lamb }));
    (scribe, lamb)
}

fn step(scribe: &Scribe, now: Moment) -> Option<LambStep> {
    all(scribe, now).into_iter().find_map(|duty| match duty.task {
        Task::Lamb(_, LambTask::Danger(danger)) => Some(danger.step),
        _ => None,
    })
}

fn read_cold(lamb: LambId) -> Event {
    Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(35.0) }
}

#[test]
fn a_lamb_found_under_five_hours_old_is_warmed_as_one_of_five() {
    let (mut scribe, lamb) = found(5);
    scribe.note(hour(5) + TimeDelta::minutes(12), read_cold(lamb));
    assert_eq!(step(&scribe, hour(5) + TimeDelta::minutes(12)), Some(LambStep::WarmNow));
    // Read at the very moment, and an hour after; later it was not seen cold when it was found.
    for (minutes, expected) in [(0, LambStep::WarmNow), (60, LambStep::WarmNow), (61, LambStep::GlucoseFirst)]
    {
        let (mut scribe, lamb) = found(5);
        let now = hour(5) + TimeDelta::minutes(minutes);
        scribe.note(now, read_cold(lamb));
        assert_eq!(step(&scribe, now), Some(expected), "{minutes} min after it was found");
    }
    // One to six hours is no under five; one whose birth was seen goes by its age.
    let (mut scribe, lamb) = found(6);
    scribe.note(hour(6), read_cold(lamb));
    assert_eq!(step(&scribe, hour(6)), Some(LambStep::GlucoseFirst));
    let mut seen_born = Scribe::new(1);
    let lamb = seen_born.born(at(0), None);
    seen_born.note(hour(5) + TimeDelta::minutes(1), read_cold(lamb));
    assert_eq!(step(&seen_born, hour(5) + TimeDelta::minutes(1)), Some(LambStep::GlucoseFirst));
}

#[test]
fn of_the_duties_of_a_ewe_at_work_the_gravest_that_is_due_is_told() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "7");
    scribe.note(at(0), Event::SignSeen { ewe, sign: Sign::Restless });
    scribe.note(at(50), Event::StrainingSeen { ewe });
    let leg = Found::Lamb(Presentation::OneLegBack);
    scribe.note(at(86), Event::HandChecked { ewe, found: leg });
    for minutes in 86..150 {
        let duties = all(&scribe, at(minutes));
        let first = duties.first().expect("a duty");
        let lies = matches!(
            first.task,
            Task::Ewe(_, EweTask::PutRight { trouble: Trouble::Lies(Presentation::OneLegBack) })
        );
        assert!(lies, "at {minutes} min: {:?}", first.task);
        assert!(first.due >= at(86), "due {:?}, found at 86 min", first.due);
        assert!(first.late >= at(86) && first.state(at(minutes)) > State::Coming);
    }
}

#[test]
fn over_labors_as_they_happen_nothing_lesser_is_told_of_a_ewe_than_what_is_due() {
    let mut judged = 0;
    let looks = |minutes: i64, what: i64, ewe| match what {
        0 => Event::SignSeen { ewe, sign: Sign::Restless },
        1 => Event::StrainingSeen { ewe },
        2 => Event::WaterBagSeen { ewe },
        3 => Event::PartShowing { ewe, part: Part::OneFoot },
        4 => Event::HandChecked { ewe, found: Found::CervixClosed },
        5 => Event::HandChecked { ewe, found: Found::Lamb(Presentation::OneLegBack) },
        6 => Event::LookedAt { animal: Animal::Ewe(ewe) },
        _ => Event::HandChecked {
            ewe,
            found: if minutes % 2 == 0 { Found::NothingYet } else { Found::CervixClosed },
        },
    };
    for story in 0..500_i64 {
        let mut scribe = Scribe::new(1);
        let ewe = scribe.ewe(at(-1), "7");
        let mut now = 0;
        let mut rest = story;
        for _ in 0..4 {
            scribe.note(at(now), looks(now, rest % 8, ewe));
            rest /= 8;
            now += 17 + (story * 7 + rest) % 41;
        }
        for minutes in (now - 20..now + 90).step_by(5) {
            let due: Vec<Duty> = all(&scribe, at(minutes))
                .into_iter()
                .filter(|duty| duty.state(at(minutes)) > State::Coming)
                .collect();
            let Some(told) = due.first() else { continue };
            judged += 1;
            let graver = due.iter().find(|duty| duty.task.weight() < told.task.weight());
            assert!(graver.is_none(), "story {story} at {minutes}: {:?} before {:?}", told.task, graver);
        }
    }
    assert!(judged > 1000, "{judged}");
}

#[test]
fn a_lamb_of_another_ewe_answers_nothing_of_her_own_labor() {
    let mut scribe = Scribe::new(1);
    let (own, other) = (scribe.ewe(at(0), "7"), scribe.ewe(at(0), "12"));
    scribe.born(at(0), Some(own));
    let lamb = scribe.born(at(5), Some(other));
    let of_her = |scribe: &Scribe, now| -> Vec<Duty> {
        all(scribe, now).into_iter().filter(|duty| duty.subject() == Animal::Ewe(own)).collect()
    };
    let before: Vec<Vec<Duty>> = (0..20).map(|hours| of_her(&scribe, hour(hours))).collect();
    scribe.note(at(6), Event::Life(Life::Fostered { lamb, dam: own }));
    let after: Vec<Vec<Duty>> = (0..20).map(|hours| of_her(&scribe, hour(hours))).collect();
    assert!(before.iter().any(|duties| !duties.is_empty()));
    assert_eq!(before[1..], after[1..]);
}

#[test]
fn nobody_said_that_all_were_born_so_it_is_asked_for_a_day() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "7");
    let lamb = scribe.born(at(0), Some(ewe));
    let asked = |scribe: &Scribe, now| {
        all(scribe, now).iter().any(|duty| matches!(duty.task, Task::Ewe(_, EweTask::NextLamb { .. })))
    };
    for hours in [1, 5, 7, 12, 23] {
        assert!(asked(&scribe, hour(hours)), "{hours} h after the birth nobody said that all are born");
    }
    assert!(!asked(&scribe, hour(24)));
    scribe.note(hour(7), Event::AllBorn { lamb });
    assert!(!asked(&scribe, hour(8)));
}

#[test]
fn a_newborn_whose_head_is_up_need_not_suck_yet() {
    let good = Gate::Good;
    let vet = |scribe: &Scribe, now| all(scribe, now).iter().any(|duty| duty.state(now) == State::Danger);
    for warm in [Gate::Good, Gate::Bad, Gate::NotChecked] {
        let mut scribe = Scribe::new(1);
        let lamb = scribe.born(at(0), None);
        scribe.note(at(1), Event::Care(Care::MouthFelt { lamb, mouth: Mouth::Cool, suck: Suck::None }));
        scribe.note(at(1), seen(lamb, [good, Gate::Bad, warm], &[]));
        let flock = scribe.flock();
        let of = flock.lamb(lamb).expect("a lamb");
        let urgency = lamb_illness(of, at(1)).expect("an illness").urgency;
        use yeanling_core::reckon::illness::Urgency;
        assert!(
            matches!(urgency, Urgency::Watch(after) if after <= TimeDelta::minutes(10)),
            "{warm:?}: {urgency:?}"
        );
        assert!(hold_milk(of).is_some(), "nothing goes in by mouth all the same");
        // Its head down, or half an hour old, it is the vet's now.
        let mut down = Scribe::new(1);
        let lamb = down.born(at(0), None);
        down.note(at(1), seen(lamb, [Gate::Bad, Gate::Bad, warm], &[]));
        assert!(vet(&down, at(1)));
        let mut old = Scribe::new(1);
        let lamb = old.born(at(0), None);
        old.note(at(30), seen(lamb, [good, Gate::Bad, warm], &[]));
        assert!(vet(&old, at(30)));
    }
}
