//! Ketones, fluids, a finger in the mouth, the udder.

use yeanling_core::reckon::illness::by_hand::{ByHand, warmth};
use yeanling_core::reckon::illness::fluids::{Dry, NoFluids, deficit, fluids, tent};
use yeanling_core::reckon::illness::ketones::{Band, band, in_the_laboratory};
use yeanling_core::reckon::illness::udder::{Udder, illness, udder};
use yeanling_core::reckon::illness::{Urgency, ewe};
use yeanling_core::terms::{Mouth, Suck, UdderHalf};
use yeanling_core::units::Ketones;

use crate::handbook::{kg, same_ml};

#[test]
fn nine_kilograms_and_nine_percent_is_081_liters() {
    // Source: infovets.
    same_ml(deficit(kg(9.0), 9), 810.0);
}

#[test]
fn five_kilograms_and_six_percent_need_565_milliliters_a_day() {
    // Source: infovets and dvm360, worked.
    let five = fluids(kg(5.0), 6, true).expect("it may be given");
    same_ml(five.deficit, 300.0);
    same_ml(five.upkeep, 265.0);
    same_ml(five.day, 565.0);
    same_ml(five.at_once, 250.0);
}

#[test]
fn over_8_percent_needs_a_vein_and_a_shut_mouth_takes_nothing() {
    // Source: dvm360; University of Wisconsin.
    assert_eq!(fluids(kg(5.0), 9, true), Err(NoFluids::NeedsAVein { percent: 9 }));
    assert_eq!(fluids(kg(5.0), 6, false), Err(NoFluids::NothingByMouth));
    assert!(fluids(kg(0.1), 6, true).is_err());
}

#[test]
fn a_skin_tent_is_read_by_the_strictest() {
    // Source: University of Wisconsin, 2 to 6 s is 8%, over 6 s over 10%; infovets allows five times as long.
    assert_eq!(
        [1, 2, 5, 6, 16].map(tent),
        [None, Some(Urgency::Today), Some(Urgency::Today), Some(Urgency::Now), Some(Urgency::Now)]
    );
}

#[test]
fn ketones_have_three_bands() {
    // Source: Ratanapob 2019; 3.0 by memory.
    let of = |millimoles: f64| band(Ketones::from_millimoles(millimoles));
    assert_eq!(of(0.7), Ok(Band::Low));
    assert_eq!(of(0.8), Ok(Band::Ketotic));
    assert_eq!(of(2.9), Ok(Band::Ketotic));
    assert_eq!(of(3.0), Ok(Band::Clinical));
    assert!(of(8.1).is_err());
}

#[test]
fn a_finger_in_the_mouth_takes_the_worse_of_two_answers() {
    // Source: infovets; ours.
    assert_eq!(warmth(Mouth::Cold, Suck::Strong), ByHand::AsCold);
    assert_eq!(warmth(Mouth::Cool, Suck::Strong), ByHand::LetItSuck);
    assert_eq!(warmth(Mouth::Cool, Suck::None), ByHand::AsCold);
    assert_eq!(warmth(Mouth::Warm, Suck::Strong), ByHand::WarmAndSucks);
    assert_eq!(warmth(Mouth::Warm, Suck::Weak), ByHand::Unproven);
}

#[test]
fn an_udder_leads_on() {
    // Source: common practice; ours.
    assert_eq!(udder(UdderHalf::Milks, UdderHalf::Milks), Udder::Milks);
    assert_eq!(udder(UdderHalf::Milks, UdderHalf::Dry), Udder::OneHalf);
    assert_eq!(udder(UdderHalf::HardOrHot, UdderHalf::Dry), Udder::NoMilk);
    assert_eq!(illness(UdderHalf::HardOrHot), Some((ewe::Row::UdderHot, Urgency::Today)));
}

#[test]
fn how_dry_a_lamb_looks_is_read_by_the_strictest_and_never_milder_than_its_fold() {
    // Source: infovets, eyes slightly sunken 6 to 8%, a gap 9 to 10%; University of Wisconsin, 2 to 6 s 8%.
    assert_eq!(Dry::ALL.map(Dry::percent), [5, 6, 8, 9]);
    assert!(Dry::ALL.windows(2).all(|pair| pair[0].urgency() <= pair[1].urgency()));
    assert_eq!(tent(2), Some(Dry::FoldStands.urgency()));
    assert_eq!(tent(6), Some(Dry::Deep.urgency()));
    assert_eq!(
        fluids(kg(5.0), Dry::Deep.percent(), true),
        Err(NoFluids::NeedsAVein { percent: Dry::Deep.percent() })
    );
}

#[test]
fn a_meter_that_reads_51_percent_high_shows_151_for_1() {
    // Source: SciELO, ewes.
    let read = in_the_laboratory(Ketones::from_millimoles(1.51)).as_millimoles();
    assert!((read - 1.0).abs() < 1e-9, "{read}");
}
