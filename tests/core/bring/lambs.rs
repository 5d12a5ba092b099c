//! A lamb a row, as farms keep them: mixed case, dates of all kinds, codes, twins of whom one stands in no table.

use yeanling_core::book::{Cause, Sex};
use yeanling_core::bring::RowTrouble;
use yeanling_core::flock::Reared;
use yeanling_core::spreadsheet::{Code, CodeOf, Meaning, NoDate, TableKind};
use yeanling_core::units::{Mass, System};

use super::{Farm, day, ewe, is_taken_for, lamb, left_out};

const MESSY: &str = "\u{feff}Lambs of 2025,,,,,,,,,\r\n,,,,,,,,,\r\n\
Lamb Tag,EWE,Sire,DOB,sex,Type of Birth,Birth Wt (lb),WW (lb),Weaned,Notes\r\n\
201,31,R7,14-Mar-2025,F,Twin,8.4,52,12-Jun-2025,\r\n\
202,31,R7,14-Mar-2025,m,TWIN,8 lb 2 oz,,,small\r\n\
,,,,,,,,,\r\n\
203,34,r7,3/20/2025,W,S,\"9,5\",60,6/12/2025,\r\n";

#[test]
fn a_messy_sheet_of_lambs_comes_in_whole() {
    is_taken_for(MESSY, TableKind::Lambs);
    let mut farm = Farm::new();
    let brought = farm.takes(MESSY);
    assert_eq!(left_out(&brought), []);
    assert_eq!(brought.counts(), [2, 1, 3, 5]);
    assert_eq!(brought.parents, ["31", "R7", "34"]);
    let flock = farm.flock();
    let (first, second, third) = (lamb(&flock, "201"), lamb(&flock, "202"), lamb(&flock, "203"));
    assert_eq!((first.sex, second.sex, third.sex), (Some(Sex::Ewe), Some(Sex::Ram), Some(Sex::Ram)));
    assert_eq!((first.is_wether(), third.is_wether()), (false, true));
    assert_eq!(first.litter, second.litter);
    assert_eq!([first, second, third].map(|lamb| flock.born_as(lamb)), [2, 2, 1]);
    assert_eq!([first, third].map(|lamb| day(lamb.born)), ["2025-03-14", "2025-03-20"]);
    let pounds = |lamb: &yeanling_core::flock::Lamb| {
        lamb.birth_weight().map(|mass| (mass.as_pounds() * 100.0).round())
    };
    assert_eq!([first, second, third].map(pounds), [Some(840.0), Some(812.0), Some(950.0)]);
    assert_eq!(first.weaned.map(day).as_deref(), Some("2025-06-12"));
    assert_eq!(third.dam, Some(ewe(&flock, "34").id));
    let ram = flock.ram_called("R7").expect("a ram");
    assert_eq!((flock.rams.len(), flock.sired_by(ram.id).len()), (1, 3));
}

#[test]
fn a_head_of_two_meanings_is_read_by_what_stands_under_it() {
    let twins = "Ear tag,Dam,Date of birth,Sex,Type,Birth wt (lb)\n501,E12,14-Mar-2025,F,Twin,8.4\n503,E15,17-Mar-2025,W,S,10.2\n";
    is_taken_for(twins, TableKind::Lambs);
    let mut farm = Farm::new();
    assert_eq!(left_out(&farm.takes(twins)), []);
    let flock = farm.flock();
    assert_eq!(["501", "503"].map(|tag| flock.born_as(lamb(&flock, tag))), [2, 1]);
    is_taken_for("Tag,Type,Born\n14,Ewe,2020\nR7,Ram,2021\n", TableKind::Ewes);
}

#[test]
fn a_twin_whose_sibling_is_in_no_table_is_a_twin_and_one_reared_alone_is_said_so() {
    let mut farm = Farm::new();
    farm.takes("tag,dam,born,born as,reared as\n1,31,2025-03-14,2,1\n2,32,2025-03-15,Tr,bottle\n");
    let flock = farm.flock();
    let reared = |tag| flock.reared(lamb(&flock, tag), farm.now);
    assert_eq!((flock.born_as(lamb(&flock, "1")), flock.born_as(lamb(&flock, "2"))), (2, 3));
    assert_eq!((reared("1"), reared("2")), (Some(Reared::ByEwe(1)), Some(Reared::ByHand)));
}

#[test]
fn a_date_of_two_ways_is_judged_over_the_whole_table_and_asked_where_nothing_tells() {
    let mut farm = Farm::new();
    let judged = "tag,dam,born\n1,31,3/4/2025\n2,32,25/4/2025\n";
    let brought = farm.takes(judged);
    assert_eq!(left_out(&brought), []);
    assert_eq!(day(lamb(&farm.flock(), "1").born), "2025-04-03");
    let mut farm = Farm::new();
    let open = "tag,dam,born\n1,31,3/4/2025\n2,32,5/4/2025\n";
    let asked = farm.would(open, |_, _| {});
    let why =
        |text: &str| RowTrouble::Date { of: Meaning::Born, text: text.to_owned(), why: NoDate::TwoWays };
    assert_eq!(left_out(&asked), [(2, why("3/4/2025")), (3, why("5/4/2025"))]);
    farm.takes_so(open, |_, setup| setup.order = Some(yeanling_core::book::DayOrder::MonthFirst));
    assert_eq!(day(lamb(&farm.flock(), "1").born), "2025-03-04");
}

#[test]
fn a_code_that_is_not_known_is_asked_and_read_as_it_was_said() {
    let text = "tag,dam,born,sex\n1,31,2025-03-14,H\n2,31,2025-03-14,M\n3,32,2025-03-15,H\n";
    let mut farm = Farm::new();
    let asked = farm.would(text, |_, _| {});
    assert_eq!(asked.codes.into_iter().collect::<Vec<_>>(), [((CodeOf::Sex, "h".to_owned()), 2)]);
    assert_eq!(asked.left_out.len(), 2, "nothing of a row is dropped in silence");
    let brought =
        farm.takes_so(text, |_, setup| _ = setup.codes.insert((CodeOf::Sex, "h".to_owned()), Code::Ewe));
    assert_eq!(left_out(&brought), []);
    assert_eq!(lamb(&farm.flock(), "3").sex, Some(Sex::Ewe));
}

#[test]
fn a_weight_without_a_unit_is_open_and_one_that_tells_it_is_not() {
    let mut farm = Farm::new();
    let open = farm.would("tag,dam,born,birth weight\n1,31,2025-03-14,8.5\n", |_, _| {});
    assert!(open.unit_open);
    for text in [
        "tag,dam,born,birth weight (lb)\n1,31,2025-03-14,8.5\n",
        "tag,dam,born,birth weight lbs\n1,31,2025-03-14,8.5\n",
        "tag,dam,born,birth weight\n1,31,2025-03-14,8.5 lb\n",
    ] {
        let mut farm = Farm::new();
        assert!(!farm.takes(text).unit_open, "{text}");
        let weight = lamb(&farm.flock(), "1").birth_weight().map(Mass::as_pounds);
        assert_eq!(weight.map(|pounds| (pounds * 10.0).round()), Some(85.0), "{text}");
    }
    farm.takes_so("tag,dam,born,birth weight\n1,31,2025-03-14,8.5\n", |_, setup| setup.unit = System::Us);
    let kilograms = lamb(&farm.flock(), "1").birth_weight().map(Mass::as_kilograms);
    assert_eq!(kilograms.map(|kilograms| (kilograms * 100.0).round()), Some(386.0));
}

#[test]
fn several_weights_stand_in_one_row_each_by_its_head() {
    let text = "tag,dam,born,bw kg,60 day weight kg,wt 2025-07-01,weight,weighed\n\
                1,31,2025-03-14,4.1,21,30,33.5,2025-08-01\n";
    let mut farm = Farm::new();
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), []);
    let flock = farm.flock();
    let weights: Vec<(String, f64)> =
        lamb(&flock, "1").weights.iter().map(|weight| (day(weight.at), weight.mass.as_kilograms())).collect();
    let at = |day: &str, kilograms: f64| (day.to_owned(), kilograms);
    assert_eq!(
        weights,
        [at("2025-03-14", 4.1), at("2025-05-13", 21.0), at("2025-07-01", 30.0), at("2025-08-01", 33.5)]
    );
}

#[test]
fn what_became_of_a_lamb_comes_in_and_one_both_sold_and_dead_keeps_both() {
    let text = "tag,dam,born,status,died,cause,sold,to\n\
                1,31,2025-03-14,dead,2025-03-16,coyote,,\n\
                2,32,2025-03-14,SOLD,,,2025-09-01,Miller\n\
                3,33,2025-03-14,dead,,white muscle,,\n\
                4,34,2025-03-14,,2025-10-01,,2025-09-01,\n\
                5,35,2025-03-14,stillborn,,,,\n\
                6,36,2025-03-14,alive,,,,\n";
    let mut farm = Farm::new();
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), []);
    let flock = farm.flock();
    let died = |tag| lamb(&flock, tag).died.map(|death| (day(death.at), death.cause));
    let left = |tag| lamb(&flock, tag).left.as_ref().map(|left| (day(left.at), left.to.clone()));
    assert_eq!(died("1"), Some(("2025-03-16".to_owned(), Cause::Predator)));
    assert_eq!(left("2"), Some(("2025-09-01".to_owned(), Some("Miller".to_owned()))));
    // No day is known: the last that the row tells, and a note of it; the cause in its own words.
    assert_eq!(died("3"), Some(("2025-03-14".to_owned(), Cause::Unknown)));
    let said: Vec<String> = flock.lines.iter().map(|line| format!("{:?}", line.event)).collect();
    assert!(said.iter().any(|line| line.contains("white muscle")));
    assert!(said.iter().any(|line| line.contains("Day not known")));
    assert_eq!((died("4").is_some(), left("4").is_some()), (true, true));
    assert!(!lamb(&flock, "5").born_alive);
    assert!(lamb(&flock, "6").lives());
}

#[test]
fn a_ewe_lamb_whose_tag_a_ewe_wears_is_that_ewe_and_a_number_of_another_year_is_a_name() {
    let mut farm = Farm::new();
    farm.takes("ewe tag,year born\n31,2019\n50,2024\n");
    let text = "lamb tag,dam,born,sex\n50,31,2024-03-14,F\n7,31,2024-03-14,M\n7,31,2025-03-14,M\n";
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), []);
    assert_eq!(brought.as_names, ["7"]);
    let flock = farm.flock();
    assert_eq!((flock.ewes.len(), flock.lambs.len()), (2, 3));
    let kept = ewe(&flock, "50");
    let was = kept.was.and_then(|was| flock.lamb(was)).expect("she was a lamb");
    assert_eq!((was.dam, day(was.born)), (Some(ewe(&flock, "31").id), "2024-03-14".to_owned()));
    assert!(flock.lambs.values().any(|lamb| lamb.tag.is_none() && lamb.worn == ["7"]));
}

#[test]
fn what_cannot_be_read_is_named_line_by_line() {
    let text = "tag,dam,born,birth weight kg\n1,31,,4\n,,2025-03-14,4\n3,31,2025-03-14,heavy\n4,31,2027-03-14,4\n5,31,2025,4\n5,31,soon,\n6,31,2025-03-14,4\n6,31,2025-03-15,4\n";
    let mut farm = Farm::new();
    let brought = farm.would(text, |_, _| {});
    assert_eq!(
        left_out(&brought),
        [
            (2, RowTrouble::NoDay(Meaning::Born)),
            (3, RowTrouble::NoTag),
            (4, RowTrouble::Number { of: Meaning::BirthWeight, text: "heavy".to_owned() }),
            (5, RowTrouble::Ahead("2027-03-14".to_owned())),
            (6, RowTrouble::NoDay(Meaning::Born)),
            (7, RowTrouble::Date { of: Meaning::Born, text: "soon".to_owned(), why: NoDate::Unknown }),
            (9, RowTrouble::Again("6".to_owned())),
        ]
    );
}

#[test]
fn a_dead_lamb_of_a_table_is_dead_and_no_column_that_tells_it_is_left_out() {
    let text =
        "Ear tag,Dam,Date of birth,Sex,Alive\n501,E12,14-Mar-2025,F,alive\n503,E15,17-Mar-2025,M,dead\n";
    is_taken_for(text, TableKind::Lambs);
    let mut farm = Farm::new();
    assert_eq!(left_out(&farm.takes(text)), []);
    let flock = farm.flock();
    assert!(lamb(&flock, "501").lives() && !lamb(&flock, "503").lives());
}

/// A table tells no milk, no udder and no hour of birth. A lamb that may still be in its first day is asked about, for nobody
/// knows whether it has fed, and a dam within three days about her afterbirth, as of any lambing; all older are no work of
/// this night.
#[test]
fn lambs_of_a_table_past_their_first_days_call_nobody_to_the_barn() {
    let tasks = |born: &str, due: bool| -> Vec<String> {
        let mut farm = Farm::new();
        farm.takes(&format!("Ear tag,Dam,Date of birth,Sex\n1,E1,{born},F\n"));
        let flock = farm.flock();
        let duties = yeanling_core::watch::duties(&flock, farm.now, &flock.settings);
        let told = duties.iter().filter(|duty| !due || duty.due <= farm.now);
        told.map(|duty| format!("{:?}", duty.task)).collect()
    };
    for young in ["1-Mar-2026", "28-Feb-2026"] {
        let all = tasks(young, false);
        assert!(all.iter().any(|task| task.contains("FirstMilk")), "{young}: {all:?}");
    }
    let dam = tasks("26-Feb-2026", true);
    assert!(dam.len() == 1 && dam[0].contains("Afterbirth"), "{dam:?}");
    for past in ["25-Feb-2026", "10-Feb-2026", "10-Nov-2025", "10-Mar-2025", "10-Mar-2019"] {
        assert_eq!(tasks(past, true), [""; 0], "{past}");
    }
}
