//! Grown animals and weights: who comes in, who is here already, whose weight it is.

use yeanling_core::book::BirthDay;
use yeanling_core::bring::RowTrouble;
use yeanling_core::spreadsheet::{Meaning, TableKind};

use super::{Farm, day, ewe, is_taken_for, lamb, left_out};

#[test]
fn each_row_of_ewes_brings_one_with_what_it_says_of_her() {
    let mut farm = Farm::new();
    let brought =
        farm.takes("Ear tag,DOB,Breed,Dam,Notes\n14,2022,Chéviot,9,hard on one side\n9,14.3.2019,,,\n");
    assert_eq!(left_out(&brought), []);
    assert_eq!(brought.parents, Vec::<String>::new(), "a dam with a row of her own");
    let flock = farm.flock();
    let (young, old) = (ewe(&flock, "14"), ewe(&flock, "9"));
    assert_eq!((young.born, young.breed.as_deref()), (Some(BirthDay::Year(2022)), Some("Chéviot")));
    assert_eq!(young.dam, Some(old.id));
    assert_eq!(old.born.map(BirthDay::year), Some(2019));
    assert_eq!(flock.ewe_years(old.id, farm.now), Some(6));
}

#[test]
fn a_ewe_of_the_last_century_comes_in_with_her_end() {
    let mut farm = Farm::new();
    let brought = farm.takes("ewe,born,died\n5,1991,12-Feb-2000\n");
    assert_eq!(left_out(&brought), []);
    let flock = farm.flock();
    assert_eq!(ewe(&flock, "5").died.map(|death| day(death.at)).as_deref(), Some("2000-02-12"));
}

#[test]
fn rams_are_no_ewes_by_their_kind_their_sex_or_their_table() {
    for text in ["kind,tag\newe,1\nram,R7\n", "tag,sex\n1,F\nR7,Ram\n", "Ram tag,breed\nR7,Dorper\n"] {
        let mut farm = Farm::new();
        farm.takes(text);
        let flock = farm.flock();
        assert_eq!(flock.rams.len(), 1, "{text}");
        assert!(flock.ewes.values().all(|ewe| ewe.tag.as_deref() == Some("1")), "{text}");
    }
}

#[test]
fn who_is_here_already_is_not_brought_again() {
    let mut farm = Farm::new();
    farm.takes("ewe\n14\n15\n");
    let brought = farm.would("ewe\n14\n16\n16\n", |_, _| {});
    let here = RowTrouble::Here("14".to_owned());
    assert_eq!(left_out(&brought), [(2, here), (4, RowTrouble::Again("16".to_owned()))]);
    // With other ids than the book's, and with the book's own.
    let own = format!("ewe,yeanling id\n14,{}\n", ewe(&farm.flock(), "14").id);
    let brought = farm.would(&own, |_, _| {});
    assert_eq!((left_out(&brought), brought.known, brought.facts.len()), (vec![], 1, 0));
}

#[test]
fn weights_go_to_whoever_of_that_name_was_here_then() {
    let mut farm = Farm::new();
    farm.takes("lamb tag,dam,born,status,sold\n7,31,2024-03-14,sold,2024-09-01\n7,31,2025-03-14,,\n");
    let text = "tag,date,weight (kg)\n7,2024-06-01,25\n7,2025-06-01,26\n31,2025-06-01,71\n8,2025-06-01,20\n";
    is_taken_for(text, TableKind::Weights);
    let brought = farm.takes(text);
    assert_eq!(left_out(&brought), [(5, RowTrouble::Unknown("8".to_owned()))]);
    let flock = farm.flock();
    let weights: Vec<(String, f64)> =
        flock.lambs.values().map(|lamb| (day(lamb.born), lamb.weights[0].mass.as_kilograms())).collect();
    assert!(weights.contains(&("2024-03-14".to_owned(), 25.0)), "{weights:?}");
    assert!(weights.contains(&("2025-03-14".to_owned(), 26.0)), "{weights:?}");
    assert_eq!(ewe(&flock, "31").weights.len(), 1);
}

#[test]
fn a_wide_table_of_weights_takes_each_day_from_its_head() {
    let mut farm = Farm::new();
    farm.takes("lamb tag,dam,born\n7,31,2025-03-14\n8,31,2025-03-14\n");
    let text = "Lamb;12-May-2025;1-Jul-2025\n7;18,5;31\n8;17;\n";
    is_taken_for(text, TableKind::Weights);
    let brought = farm.takes(text);
    assert_eq!((left_out(&brought), brought.counts()[3], brought.unit_open), (vec![], 3, true));
    let flock = farm.flock();
    let days: Vec<String> = lamb(&flock, "7").weights.iter().map(|weight| day(weight.at)).collect();
    assert_eq!(days, ["2025-05-12", "2025-07-01"]);
    let brought = farm.would("tag,weight\n7,20\n", |_, _| {});
    assert_eq!(left_out(&brought), [(2, RowTrouble::NoDay(Meaning::WeighedOn))]);
}
