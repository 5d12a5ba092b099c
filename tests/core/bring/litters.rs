//! A litter a row: by numbers alone, or lamb by lamb beside each other. A year beside a lambing is no ewe's birth.

use yeanling_core::book::Sex;
use yeanling_core::bring::RowTrouble;
use yeanling_core::spreadsheet::{Meaning, TableKind};

use super::{Farm, day, ewe, is_taken_for, left_out};

#[test]
fn litters_by_their_numbers_bring_so_many_lambs_and_the_dead_among_them() {
    let text = "Ewe;Lambing date;Lambs born;Born dead;Ram\n31;14-Mar-2025;2;0;R7\n34;16-Mar-2025;3;1;R7\n35;17-Mar-2025;;1;\n";
    is_taken_for(text, TableKind::Litters);
    let mut farm = Farm::new();
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), []);
    let flock = farm.flock();
    let of = |tag: &str| {
        let litter = flock.litters_of(ewe(&flock, tag).id).into_iter().next().expect("a litter").clone();
        let alive = litter.lambs.iter().filter(|lamb| flock.lambs[lamb].born_alive).count();
        (day(litter.began), litter.lambs.len(), alive)
    };
    assert_eq!(of("31"), ("2025-03-14".to_owned(), 2, 2));
    assert_eq!(of("34"), ("2025-03-16".to_owned(), 3, 2));
    assert_eq!(of("35"), ("2025-03-17".to_owned(), 1, 0));
    assert_eq!(flock.rams.len(), 1);
}

#[test]
fn lambs_beside_each_other_come_one_by_one() {
    let text = "ewe,date,lamb 1 tag,lamb 1 sex,lamb 1 bw (lb),lamb 2 tag,lamb 2 sex,lamb 2 bw (lb)\n\
                31,2025-03-14,201,F,8.4,202,M,8.1\n34,2025-03-15,203,M,10.2,,,\n";
    is_taken_for(text, TableKind::Litters);
    let mut farm = Farm::new();
    let brought = farm.takes(text);
    assert_eq!((left_out(&brought), brought.counts()), (vec![], [2, 0, 3, 3]));
    let flock = farm.flock();
    assert_eq!(super::lamb(&flock, "201").litter, super::lamb(&flock, "202").litter);
    assert_eq!(super::lamb(&flock, "203").sex, Some(Sex::Ram));
}

#[test]
fn a_year_beside_a_lambing_is_no_birth_of_the_ewe() {
    let text = "ewe,year,lambing date,lambs born\n31,2025,2025-03-14,2\n31,2024,2024-03-10,1\n";
    is_taken_for(text, TableKind::Litters);
    let mut farm = Farm::new();
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), []);
    let flock = farm.flock();
    let her = ewe(&flock, "31");
    assert_eq!((her.born, flock.litters_of(her.id).len()), (None, 2));
    // A year alone is no day: the row says so.
    let brought = Farm::new().would("ewe,year,lambs born\n31,2025,2\n", |_, _| {});
    assert_eq!(left_out(&brought), [(2, RowTrouble::NoDay(Meaning::Born))]);
}
