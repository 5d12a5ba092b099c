//! What feeds give a ewe, against what she needs.

use yeanling_core::reckon::season::bounds::Figure;
use yeanling_core::reckon::season::minerals::{Copper, Selenium};
use yeanling_core::reckon::season::ration::{Feed, Nutrient, check};
use yeanling_core::reckon::season::requirement::{Energy, FeedStage, Need, need};

use super::near;
use crate::handbook::kg;

fn hay(fed: f64) -> Feed {
    Feed {
        fed: kg(fed),
        dry_matter: 0.88,
        energy: Energy::from_megacalories(2.0),
        protein: 0.10,
        calcium: 0.005,
        copper_ppm: Some(6.0),
        selenium_ppm: Some(0.05),
    }
}

fn seventy() -> Need {
    need(FeedStage::Maintenance, kg(70.0)).expect("in the table")
}

#[test]
fn totals_are_the_sums_of_the_feeds() {
    // Source: NRC 1985, Table 1, maintenance of 70 kg: 1.2 kg, 2.4 Mcal, 113 g, 2.5 g; sums by hand.
    let grain = Feed {
        fed: kg(0.2),
        energy: Energy::from_megacalories(3.0),
        protein: 0.12,
        calcium: 0.0005,
        ..hay(0.0)
    };
    let checked = check(&[hay(1.2), grain], seventy()).expect("a ration");
    let given = checked.held.map(|held| held.given);
    for (given, by_hand) in given.into_iter().zip([1.232, 2.64, 0.126_72, 0.005_368]) {
        near(given, by_hand, 1e-9);
    }
    for (held, printed) in checked.held.into_iter().zip([1.2, 2.4, 0.113, 0.0025]) {
        near(held.needed, printed, 1e-9);
    }
    assert_eq!((checked.limiting, checked.leaves), (None, false));
    assert_eq!((checked.minerals.copper, checked.minerals.selenium), (Copper::Safe, Selenium::Within));
}

#[test]
fn the_shortest_is_named() {
    // Source: ours; the row is NRC 1985's.
    let of = |feed: Feed| check(&[feed], seventy()).expect("a ration").limiting;
    assert_eq!(of(Feed { protein: 0.04, ..hay(1.4) }), Some(Nutrient::Protein));
    assert_eq!(of(Feed { energy: Energy::from_megacalories(1.2), ..hay(1.4) }), Some(Nutrient::Energy));
    assert_eq!(of(Feed { calcium: 0.0005, ..hay(1.4) }), Some(Nutrient::Calcium));
    let rich = Feed { energy: Energy::from_megacalories(3.5), protein: 0.3, calcium: 0.02, ..hay(1.0) };
    assert_eq!(of(rich), Some(Nutrient::DryMatter));
    assert_eq!(of(hay(1.4)), None);
}

#[test]
fn more_than_she_eats_is_told() {
    // Source: ours, 110 % of the table's dry matter.
    let leaves = |fed| check(&[Feed { dry_matter: 1.0, ..hay(fed) }], seventy()).expect("a ration").leaves;
    assert!(!leaves(1.31) && leaves(1.33));
}

#[test]
fn no_feeds_and_six_are_refused() {
    // Source: ours, one to five.
    assert_eq!(check(&[], seventy()).expect_err("none").allowed.figure, Figure::Feeds);
    assert!(check(&[hay(0.2); 5], seventy()).is_ok());
    assert_eq!(check(&[hay(0.2); 6], seventy()).expect_err("six").allowed.figure, Figure::Feeds);
}

#[test]
fn a_feed_that_cannot_be_is_refused_by_what_is_wrong() {
    // Source: ours.
    for (feed, figure) in [
        (hay(20.0), Figure::FedInADay),
        (Feed { dry_matter: 0.0, ..hay(1.0) }, Figure::Share),
        (Feed { dry_matter: 88.0, ..hay(1.0) }, Figure::Share),
        (Feed { protein: 10.0, ..hay(1.0) }, Figure::Share),
        (Feed { calcium: -0.1, ..hay(1.0) }, Figure::Share),
        (Feed { energy: Energy::from_megacalories(11.0), ..hay(1.0) }, Figure::EnergyOfFeed),
        (Feed { copper_ppm: Some(-1.0), ..hay(1.0) }, Figure::CopperInFeed),
        (Feed { selenium_ppm: Some(120.0), ..hay(1.0) }, Figure::SeleniumInFeed),
    ] {
        assert_eq!(check(&[feed], seventy()).expect_err("no feed").allowed.figure, figure);
    }
}
