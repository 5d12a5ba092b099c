//! Which ewe to keep: every ewe with her years and what the farm minds of her, and the ewe lambs that may follow.

use yeanling_core::book::{Animal, Cause, Event, EweId, Illness, LambingEase, Sex};
use yeanling_core::flock::Flock;
use yeanling_core::seasons::{KeepMark, Kept, Kin, gravity, keeping, replacements};
use yeanling_core::settings::{Choice, CullRules, CullSigns};
use yeanling_core::terms::{EweSign, EweStage, Gate};
use yeanling_core::units::{Condition, Moment, TimeDelta};

use super::days;
use crate::scribe::{Scribe, at, kg};

fn ill(scribe: &mut Scribe, at: Moment, ewe: EweId, sign: EweSign) {
    let signs = vec![sign];
    let [standing, eating, nothing_out] = [Gate::Good; 3];
    let ill =
        Illness::EweSeen { ewe, stage: EweStage::Other, standing, eating, nothing_out, signs, onset: None };
    scribe.note(at, Event::Illness(ill));
}

fn of(flock: &Flock, ewe: EweId, now: Moment) -> Kept {
    keeping(flock, now).into_iter().find(|one| one.ewe == ewe).expect("she lives")
}

#[test]
fn who_meets_most_and_the_gravest_rules_comes_first_with_her_reasons() {
    let mut scribe = Scribe::new(1);
    let ewes: Vec<EweId> = (1..=5).map(|tag| scribe.ewe(at(-600), &tag.to_string())).collect();
    for (place, ewe) in ewes.iter().enumerate() {
        let lamb = scribe.born(at(i64::try_from(place).expect("few") * 60), Some(*ewe));
        scribe.note(days(60), Event::Weighed { lamb, mass: kg([20.0, 20.0, 20.0, 20.0, 8.0][place]) });
        if place == 1 {
            scribe.note(days(1), Event::BirthEase { lamb, ease: LambingEase::HardByHand });
        }
    }
    ill(&mut scribe, days(10), ewes[0], EweSign::UdderHot);
    // The same udder a week on is the same season.
    ill(&mut scribe, days(17), ewes[0], EweSign::UdderHot);
    ill(&mut scribe, days(20), ewes[2], EweSign::Lame);
    ill(&mut scribe, days(24), ewes[2], EweSign::Lame);
    ill(&mut scribe, days(50), ewes[2], EweSign::Lame);
    let score = Condition::from_quarters(6);
    scribe.note(days(61), Event::Conditioned { ewe: ewes[4], score });
    let now = days(70);
    let flock = scribe.flock();
    assert!(keeping(&flock, now).iter().all(|one| one.marks.is_empty()), "all rules are off at first");
    assert_eq!((of(&flock, ewes[0], now).udder, of(&flock, ewes[2], now).lame), (1, 2));

    let rules = CullRules { hard_births: Some(1), ..CullRules::default() };
    let signs =
        CullSigns { udder: Some(1), lame: Some(3), thin: Some(8), light: Some(80), ..CullSigns::default() };
    scribe.note(days(70), Event::Chose(Choice::CullRules(rules)));
    scribe.note(days(70), Event::Chose(Choice::CullSigns(signs)));
    let kept = keeping(&scribe.flock(), now);
    let told: Vec<(EweId, usize)> = kept.iter().map(|one| (one.ewe, one.marks.len())).collect();
    // Two light marks before one grave, one grave before one of less weight; lame twice is not three times.
    assert_eq!(told[..3], [(ewes[4], 2), (ewes[0], 1), (ewes[1], 1)]);
    assert_eq!(kept[0].marks, [KeepMark::Thin(score), KeepMark::Light(kg(8.0))]);
    assert!(told[3..].iter().all(|(_, marks)| *marks == 0));
    assert!(gravity(KeepMark::Udder(1)) > gravity(KeepMark::HardBirths(1)));
}

#[test]
fn a_ewe_says_what_she_weaned_of_how_many_and_this_season_beside_the_last() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-600), "7");
    let year = TimeDelta::days(365);
    let first = [scribe.born(at(0), Some(ewe)), scribe.born(at(10), Some(ewe))];
    scribe.note(days(56), Event::Weighed { lamb: first[0], mass: kg(20.0) });
    for lamb in first {
        scribe.note(days(56), Event::Weaned { lamb });
    }
    let second = scribe.born(at(0) + year, Some(ewe));
    scribe.weighed(at(60) + year, second, 4.0);
    scribe.note(days(30) + year, Event::Died { animal: Animal::Lamb(second), cause: Cause::Predator });
    let now = days(60) + year;
    let kept = of(&scribe.flock(), ewe, now);
    assert_eq!((kept.record.reared, kept.record.weighed, kept.seasons), (2, 1, 2));
    assert_eq!(kept.weaned_a_season, Some((kg(10.0), 1)));
    assert_eq!(kept.lost_of, [(Some(Cause::Predator), 1)]);
    let [Some(latest), Some(before)] = kept.latest else { panic!("two seasons") };
    assert_eq!((latest.born, latest.at_her, latest.weaned), (1, 0, None));
    assert_eq!((before.born, before.at_her, before.weaned), (2, 2, Some((kg(20.0), 1))));
}

#[test]
fn who_lambed_three_weeks_after_the_first_of_her_group_was_late_and_who_did_not_missed_it() {
    let mut scribe = Scribe::new(1);
    let ewes: Vec<EweId> = (1..=4).map(|tag| scribe.ewe(at(-600), &tag.to_string())).collect();
    let group = scribe.group(at(-590), "Top");
    for ewe in &ewes {
        scribe.note(at(-580), Event::JoinedGroup { ewe: *ewe, group });
    }
    scribe.ram_in(at(-570), group);
    scribe.note(days(50), Event::RamOut { group });
    for (ewe, day) in ewes.iter().zip([147, 167, 168]) {
        scribe.born(days(day), Some(*ewe));
    }
    let flock = scribe.flock();
    let late: Vec<u32> = ewes.iter().map(|ewe| of(&flock, *ewe, days(240)).late).collect();
    assert_eq!(late, [0, 0, 1, 0]);
    let missed = of(&flock, ewes[3], days(240));
    assert!(missed.latest[0].expect("a season").missed && missed.put_to_ram);
    assert_eq!(missed.record.barren, 1);
}

#[test]
fn a_grown_ewe_without_a_lambing_is_one_of_whom_the_years_before_are_not_known() {
    let mut scribe = Scribe::new(1);
    let born = yeanling_core::book::BirthDay::Year(2018);
    let ewe = scribe.ewe(at(-600), "1");
    scribe.note(
        at(-500),
        Event::Life(yeanling_core::book::Life::Described { ewe, born: Some(born), breed: None }),
    );
    assert!(of(&scribe.flock(), ewe, days(1)).no_lambing_noted());
    scribe.born(days(2), Some(ewe));
    assert!(!of(&scribe.flock(), ewe, days(3)).no_lambing_noted());
}

#[test]
fn ewe_lambs_of_the_best_dams_come_first_and_their_sire_is_named() {
    let mut scribe = Scribe::new(1);
    let (good, bad) = (scribe.ewe(at(-600), "1"), scribe.ewe(at(-600), "2"));
    let group = scribe.group(at(-590), "Top");
    for ewe in [good, bad] {
        scribe.note(at(-580), Event::JoinedGroup { ewe, group });
    }
    scribe.note(at(-570), Event::RamIn { group, ram: Some("Boss".to_owned()), age: None });
    scribe.note(days(50), Event::RamOut { group });
    let ewe_lamb = |scribe: &mut Scribe, dam, day, sex| {
        scribe
            .note(days(day), Event::LambBorn { dam: Some(dam), beside: None, sex: Some(sex), alive: true })
            .as_lamb()
    };
    let of_bad = ewe_lamb(&mut scribe, bad, 147, Sex::Ewe);
    let of_good = ewe_lamb(&mut scribe, good, 148, Sex::Ewe);
    ewe_lamb(&mut scribe, good, 148, Sex::Ram);
    scribe.note(days(147), Event::BirthEase { lamb: of_bad, ease: LambingEase::HardByHand });
    let rules = CullRules { hard_births: Some(1), ..CullRules::default() };
    scribe.note(days(150), Event::Chose(Choice::CullRules(rules)));
    let (flock, now) = (scribe.flock(), days(200));
    let all = replacements(&flock, &keeping(&flock, now), now);
    assert_eq!(all.iter().map(|one| one.lamb).collect::<Vec<_>>(), [of_good, of_bad]);
    assert_eq!(all[0].kin, [("Boss".to_owned(), Kin::Sire)]);
    assert_eq!((all[0].born, all[1].born), (2, 1));
    // Another ram now: she is no kin of his.
    scribe.note(days(201), Event::RamIn { group, ram: Some("New".to_owned()), age: None });
    let (flock, now) = (scribe.flock(), days(202));
    assert!(replacements(&flock, &keeping(&flock, now), now).iter().all(|one| one.kin.is_empty()));
}
