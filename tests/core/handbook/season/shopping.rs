//! What to have on hand before the first lamb.

use yeanling_core::reckon::powder as until_weaning;
use yeanling_core::reckon::season::shopping::{HELPED, KIT, PROLAPSED, Per, Rate, freeze, kit, need, powder};
use yeanling_core::settings::PowderRule;
use yeanling_core::terms::{Item, Measure};

use super::near;
use crate::handbook::ml;

#[test]
fn one_ewe_in_twenty_is_helped() {
    // Source: Cornell, 5 %.
    near(HELPED, 0.05, 0.0);
}

#[test]
fn one_ewe_in_eighty_has_a_prolapse() {
    // Source: NADIS, about 1 %; the more of 1 to 1.25 kept.
    near(PROLAPSED, 0.0125, 0.0);
}

#[test]
fn a_need_is_a_quarter_more_in_whole_cases_and_one_spare() {
    // Source: ours, ⌈ewes × rate × 1.25⌉ × units + 1.
    let of = |per, units, ewes| {
        need(Rate { item: Item::Gloves, per, units }, ewes, 1.5 * f64::from(ewes)).expect("in bounds")
    };
    let helped = of(Per::Ewe(0.05), 4.0, 60);
    assert_eq!((helped.cases, helped.have), (4, 17));
    assert_eq!(of(Per::Ewe(0.05), 1.0, 1).have, 2);
    assert_eq!(of(Per::Ewe(0.05), 1.0, 16).cases, 1);
    assert_eq!(of(Per::Ewe(0.05), 1.0, 17).cases, 2);
    assert_eq!(of(Per::Lamb(1.0), 2.0, 60).have, 113 * 2 + 1);
    assert_eq!(of(Per::House, 2.0, 600).have, 3);
    assert_eq!(of(Per::Ewe(0.0), 2.0, 600).have, 1);
}

#[test]
fn the_whole_kit_is_there() {
    // Source: ours.
    let all = kit(60, 100.0).expect("ewes");
    assert_eq!(all.len(), KIT.len());
    for (need, rate) in all.iter().zip(KIT) {
        assert_eq!(need.rate, *rate);
        assert!(need.have >= 2, "{need:?}");
    }
    let larger = kit(120, 200.0).expect("ewes");
    assert!(all.iter().zip(&larger).all(|(few, many)| few.have <= many.have));
}

#[test]
fn gloves_and_tags_are_two_pieces_and_what_is_poured_is_none() {
    // Source: ours.
    for need in kit(60, 100.0).expect("ewes") {
        let pieces = match need.rate.item {
            Item::Gloves | Item::Tags => Some(2 * need.have),
            item if item.measure() == Measure::Pieces => Some(need.have),
            _ => None,
        };
        assert_eq!(need.pieces(), pieces, "{need:?}");
    }
}

#[test]
fn colostrum_is_frozen_for_a_share_and_one_to_spare() {
    // Source: ours.
    let frozen = freeze(96.0, 0.05, ml(800.0)).expect("in bounds");
    assert_eq!((frozen.lambs, frozen.total), (6, ml(5600.0)));
    assert_eq!(freeze(96.0, 0.0, ml(800.0)).expect("in bounds").total, ml(800.0));
    assert!(freeze(96.0, 5.0, ml(800.0)).is_err());
    assert!(freeze(96.0, 0.05, ml(2001.0)).is_err());
    assert!(freeze(-1.0, 0.05, ml(800.0)).is_err());
}

#[test]
fn powder_goes_by_the_farms_rule() {
    // Source: New Zealand guidance, NDSU and Irish Farmers Journal, 7, 6.8 to 9.1 and 13 kg a lamb; the share is ours.
    for rule in until_weaning::RULES {
        let bought = powder(96.0, 0.05, rule).expect("in bounds");
        let (least, most) = until_weaning::for_one_lamb(rule);
        assert_eq!(bought.lambs, 6);
        near(bought.total.0.as_kilograms(), 6.0 * least.as_kilograms(), 1e-9);
        near(bought.total.1.as_kilograms(), 6.0 * most.as_kilograms(), 1e-9);
    }
    assert!(powder(96.0, 1.5, PowderRule::Ndsu).is_err());
}

#[test]
fn figures_that_are_none_are_refused() {
    // Source: ours.
    let of = |per, units, ewes, lambs| need(Rate { item: Item::Teats, per, units }, ewes, lambs);
    assert!(of(Per::Ewe(1.5), 1.0, 60, 90.0).is_err());
    assert!(of(Per::Lamb(-0.1), 1.0, 60, 90.0).is_err());
    assert!(of(Per::House, -1.0, 60, 90.0).is_err());
    assert!(of(Per::House, 1.0, 0, 0.0).is_err());
    assert!(of(Per::House, 1.0, 60, 241.0).is_err());
}
