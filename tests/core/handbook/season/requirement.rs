//! What a ewe needs a day.

use yeanling_core::reckon::season::dates::Crop;
use yeanling_core::reckon::season::requirement::{Energy, FeedStage, Row, RowFrom, late_2007, need, rows};
use yeanling_core::source::HowKnown;

use super::near;
use crate::handbook::kg;

/// One column of the table: how it is read from a row, in the unit that is printed.
type Column = (&'static str, fn(&Row) -> f64);

const COLUMNS: [Column; 6] = [
    ("DM kg", |row| row.dry_matter.as_kilograms()),
    ("TDN kg", |row| row.tdn.as_kilograms()),
    ("ME Mcal", |row| row.energy.as_megacalories()),
    ("CP g", |row| row.protein.as_kilograms() * 1000.0),
    ("Ca g", |row| row.calcium.as_kilograms() * 1000.0),
    ("P g", |row| row.phosphorus.as_kilograms() * 1000.0),
];

/// Reads every cell of a time of year back: each line is a column, for ewes of 50, 60, 70, 80 and 90 kg.
#[track_caller]
fn check(stage: FeedStage, known: HowKnown, printed: [&str; 6]) {
    assert_eq!(stage.known(), known);
    let printed: Vec<Vec<f64>> = printed
        .iter()
        .map(|line| line.split(" / ").map(|cell| cell.parse().expect("a number")).collect())
        .collect();
    for (place, weight) in [50.0, 60.0, 70.0, 80.0, 90.0].into_iter().enumerate() {
        let found = need(stage, kg(weight)).expect("in the table");
        assert_eq!((found.how, found.known), (RowFrom::Printed, known));
        assert_eq!(found.row, rows(stage)[place]);
        near(found.row.weight.as_kilograms(), weight, 0.0);
        for ((name, read), column) in COLUMNS.into_iter().zip(&printed) {
            assert!((read(&found.row) - column[place]).abs() < 1e-9, "{stage:?}, {weight} kg, {name}");
        }
    }
}

#[test]
fn every_cell_of_maintenance_is_the_printed_one() {
    // Source: NRC 1985, Table 1, maintenance.
    check(
        FeedStage::Maintenance,
        HowKnown::Seen,
        [
            "1.0 / 1.1 / 1.2 / 1.3 / 1.4",
            ".55 / .61 / .66 / .72 / .78",
            "2.0 / 2.2 / 2.4 / 2.6 / 2.8",
            "95 / 104 / 113 / 122 / 131",
            "2.0 / 2.3 / 2.5 / 2.7 / 2.9",
            "1.8 / 2.1 / 2.4 / 2.8 / 3.1",
        ],
    );
}

#[test]
fn every_cell_of_the_first_15_weeks_is_the_printed_one() {
    // Source: NRC 1985, Table 1, the first 15 weeks.
    check(
        FeedStage::FirstFifteenWeeks,
        HowKnown::Seen,
        [
            "1.2 / 1.3 / 1.4 / 1.5 / 1.6",
            ".67 / .72 / .77 / .82 / .87",
            "2.4 / 2.6 / 2.8 / 3.0 / 3.2",
            "112 / 121 / 130 / 139 / 148",
            "2.9 / 3.2 / 3.5 / 3.8 / 4.1",
            "2.1 / 2.5 / 2.9 / 3.3 / 3.6",
        ],
    );
}

#[test]
fn every_cell_of_the_last_4_weeks_is_as_recalled() {
    // Source: memory (NRC 1985, Table 1, last 4 weeks, 130 to 150 %).
    check(
        FeedStage::LastFourWeeks(Crop::Usual),
        HowKnown::Memory,
        [
            "1.6 / 1.7 / 1.8 / 1.9 / 2.0",
            ".94 / 1.00 / 1.06 / 1.12 / 1.18",
            "3.4 / 3.6 / 3.8 / 4.0 / 4.2",
            "175 / 184 / 193 / 202 / 212",
            "5.9 / 6.0 / 6.2 / 6.3 / 6.4",
            "4.8 / 5.2 / 5.6 / 6.1 / 6.5",
        ],
    );
}

#[test]
fn every_cell_of_the_last_4_weeks_of_a_prolific_ewe_is_as_recalled() {
    // Source: memory (NRC 1985, Table 1, last 4 weeks, 180 to 225 %).
    check(
        FeedStage::LastFourWeeks(Crop::Prolific),
        HowKnown::Memory,
        [
            "1.7 / 1.8 / 1.9 / 2.0 / 2.1",
            "1.10 / 1.17 / 1.24 / 1.30 / 1.37",
            "4.0 / 4.2 / 4.4 / 4.7 / 5.0",
            "196 / 205 / 214 / 223 / 232",
            "6.2 / 6.9 / 7.6 / 8.3 / 8.9",
            "3.4 / 4.0 / 4.5 / 5.1 / 5.7",
        ],
    );
}

#[test]
fn every_cell_of_milking_one_is_as_recalled() {
    // Source: memory (NRC 1985, Table 1, first 6 to 8 weeks milking one).
    check(
        FeedStage::MilkingOne,
        HowKnown::Memory,
        [
            "2.1 / 2.3 / 2.5 / 2.6 / 2.7",
            "1.36 / 1.50 / 1.63 / 1.69 / 1.75",
            "4.9 / 5.4 / 5.9 / 6.1 / 6.3",
            "304 / 319 / 334 / 344 / 353",
            "8.9 / 9.1 / 9.3 / 9.5 / 9.6",
            "6.1 / 6.6 / 7.0 / 7.4 / 7.8",
        ],
    );
}

#[test]
fn every_cell_of_milking_two_is_as_recalled() {
    // Source: memory (NRC 1985, Table 1, first 6 to 8 weeks milking two).
    check(
        FeedStage::MilkingTwo,
        HowKnown::Memory,
        [
            "2.4 / 2.6 / 2.8 / 3.0 / 3.2",
            "1.56 / 1.69 / 1.82 / 1.95 / 2.08",
            "5.6 / 6.1 / 6.6 / 7.0 / 7.5",
            "389 / 405 / 420 / 435 / 450",
            "10.5 / 10.7 / 11.0 / 11.2 / 11.4",
            "7.3 / 7.7 / 8.1 / 8.6 / 9.0",
        ],
    );
}

#[test]
fn energy_and_tdn_of_the_table_agree() {
    // Source: NRC 1985, 1 kg TDN = 4.4 Mcal DE, ME = 0.82 DE; the table is rounded to a tenth.
    near(Energy::of_tdn(kg(1.0)).as_megacalories(), 3.608, 1e-9);
    for stage in FeedStage::ALL {
        for row in rows(stage) {
            let of_tdn = Energy::of_tdn(row.tdn).as_megacalories();
            near(row.energy.as_megacalories(), of_tdn, 0.1);
        }
    }
}

#[test]
fn late_in_pregnancy_energy_goes_by_lambs() {
    // Source: NRC 2007 in a veterinary chapter: 3.45, 4.37 and 4.95 Mcal for 70 kg.
    let all = [0, 1, 2, 3, 5].map(|lambs| late_2007(lambs).map(Energy::as_megacalories));
    assert_eq!(all, [None, Some(3.45), Some(4.37), Some(4.95), Some(4.95)]);
}

#[test]
fn between_two_printed_weights_the_line_is_named() {
    // Source: ours, a straight line.
    let found = need(FeedStage::Maintenance, kg(75.0)).expect("in the table");
    assert_eq!(found.how, RowFrom::Between { lighter: kg(70.0), heavier: kg(80.0) });
    near(found.row.dry_matter.as_kilograms(), 1.25, 1e-9);
    near(found.row.tdn.as_kilograms(), 0.69, 1e-9);
    near(found.row.energy.as_megacalories(), 2.5, 1e-9);
    near(found.row.protein.as_kilograms(), 0.1175, 1e-9);
    near(found.row.calcium.as_kilograms(), 0.002_6, 1e-9);
    near(found.row.phosphorus.as_kilograms(), 0.002_6, 1e-9);
    near(found.row.weight.as_kilograms(), 75.0, 0.0);
}

#[test]
fn outside_of_the_table_the_nearest_row_is_named_and_nothing_drawn() {
    // Source: NRC 1985, Table 1, 50 to 90 kg.
    for (weight, nearest) in [(49.9, 50.0), (0.0, 50.0), (90.1, 90.0), (120.0, 90.0), (f64::NAN, 50.0)] {
        let error = need(FeedStage::Maintenance, kg(weight)).expect_err("outside");
        assert_eq!((error.least, error.most, error.nearest), (kg(50.0), kg(90.0), kg(nearest)));
    }
}

#[test]
fn a_megacalorie_is_4184_kilojoules() {
    // Source: the thermochemical calorie, 4.184 J.
    near(Energy::from_megajoules(41.84).as_megacalories(), 10.0, 1e-12);
    near(Energy::from_megacalories(2.4).as_megajoules(), 10.041_6, 1e-9);
}
