//! Who was put to the ram for a season, by every ewe's days with a ram: held against a count that looks at all of them.

use std::collections::BTreeSet;

use chrono::Days;
use proptest::prelude::*;
use yeanling_core::book::{Event, EweId};
use yeanling_core::flock::{EARLIEST_BIRTH, Flock, Group, LATEST_BIRTH};
use yeanling_core::reckon::season::mating::OPEN_DAYS;
use yeanling_core::seasons::{Season, put_to_ram, record, seasons};
use yeanling_core::units::{Moment, TimeDelta};

use crate::book::arbitrary::config;
use crate::scribe::{Scribe, at};

/// Looks at each ewe's days with a ram, whatever her group's are.
fn by_counting(flock: &Flock, season: &Season) -> BTreeSet<EweId> {
    let day = |at: Moment| at.local().date();
    let later = |at: Moment, days: i64| day(at) + Days::new(days.unsigned_abs());
    let windows = flock.groups.values().flat_map(Group::windows);
    let of_season = windows.filter(|window| {
        let last = match window.ram_out {
            Some(out) => later(out, LATEST_BIRTH),
            None => later(window.ram_in, OPEN_DAYS - 1 + LATEST_BIRTH),
        };
        // A mating that brought her lambs before is used up, unless it brought her some in this season too.
        let came = |began: &Moment| {
            day(*began) >= later(window.ram_in, EARLIEST_BIRTH)
                && window.ram_out.is_none_or(|out| day(*began) <= later(out, LATEST_BIRTH))
        };
        let litters = flock.litters_of(window.ewe).into_iter().map(|litter| litter.began);
        let brought: Vec<Moment> = litters.filter(came).collect();
        later(window.ram_in, EARLIEST_BIRTH) <= day(season.last)
            && last >= day(season.first)
            && (brought.iter().all(|began| *began >= season.first)
                || brought.iter().any(|began| (season.first..=season.last).contains(began)))
    });
    of_season.map(|window| window.ewe).collect()
}

proptest! {
    #![proptest_config(config(300))]

    #[test]
    fn the_ewes_put_to_the_ram_are_those_whose_days_can_have_brought_the_season(
        groups in prop::collection::vec((0..900_i64, 0..90_i64, prop::option::of(0..500_i64), 0..3_usize, any::<bool>()), 1..8),
        births in prop::collection::vec((0..5_usize, 130..1400_i64), 1..12),
    ) {
        let mut scribe = Scribe::new(1);
        let day = |days: i64| at(0) - TimeDelta::days(2000) + TimeDelta::days(days);
        let ewes: Vec<EweId> = (0..5).map(|tag| scribe.ewe(day(-1), &tag.to_string())).collect();
        for (formed, ram_in, ram_out, first, parted) in groups {
            let group = scribe.note(day(formed), Event::GroupFormed { name: "Field".to_owned() }).as_group();
            for (late, ewe) in ewes[first..first + 3].iter().enumerate() {
                let late = i64::try_from(late).expect("few") * 9;
                scribe.note(day(formed + late), Event::JoinedGroup { ewe: *ewe, group });
            }
            scribe.note(day(formed + ram_in), Event::RamIn { group, ram: None, age: None });
            if let Some(days) = ram_out {
                scribe.note(day(formed + ram_in + days), Event::RamOut { group });
            }
            if parted {
                scribe.note(day(formed + ram_in + 600), Event::GroupParted { group });
            }
        }
        for (dam, days) in births {
            scribe.note(day(days), Event::LambBorn { dam: Some(ewes[dam]), beside: None, sex: None, alive: true });
        }
        let flock = scribe.flock();
        let now = day(3000);
        for season in seasons(&flock) {
            prop_assert_eq!(put_to_ram(&flock, &season), by_counting(&flock, &season));
        }
        for ewe in ewes {
            let lambed = |season: &Season| {
                flock.litters_of(ewe).iter().any(|litter| (season.first..=season.last).contains(&litter.began))
            };
            let all = seasons(&flock);
            let barren = all.iter().filter(|season| !lambed(season) && by_counting(&flock, season).contains(&ewe));
            let known = record(&flock, ewe, now).expect("she is here");
            prop_assert_eq!(known.barren, u32::try_from(barren.count()).expect("few"), "every ram is long out");
        }
    }
}
