//! Extra feed by group: what each gets against the table's own rows, and what is bought against what is fed.

use proptest::prelude::*;
use yeanling_core::reckon::season::budget::becomes;
use yeanling_core::reckon::season::feed_groups::{Feed, FeedGroup, NoCard, USUAL_FEED, card};
use yeanling_core::units::{Condition, Mass};

use super::near;

const fn kg(kilograms: f64) -> Mass {
    Mass::from_kilograms(kilograms)
}

fn grain(bag: f64) -> Feed {
    Feed { energy: USUAL_FEED.0, dry_matter: USUAL_FEED.1, bag: kg(bag) }
}

#[test]
fn each_group_gets_what_its_row_asks_over_the_first_fifteen_weeks() {
    // Source: NRC 1985, 70 kg: 2.8, 3.8 and 4.4 Mcal; NRC 2007: 4.95 to 4.37 for three to two; grain of 2.64 Mcal as fed.
    let all = FeedGroup::ALL.map(|group| (group, 1));
    let card = card(kg(70.0), &all, grain(25.0), 42).expect("a card");
    let hand =
        [1.0, 1.6, 4.4 * 4.95 / 4.37 - 2.8, 2.2, 1.6].map(|mcal: f64| (mcal / 2.64 * 100.0).ceil() / 100.0);
    for (portion, by_hand) in card.portions.iter().zip(hand) {
        near(portion.each.as_kilograms(), by_hand, 1e-9);
    }
    // Twins: 100, 100, 200, 200 … 600, 600 g, then 610 g for the other 30 days.
    near(
        card.portions[1].total.as_kilograms(),
        2.0 * (0.1 + 0.2 + 0.3 + 0.4 + 0.5 + 0.6) + 30.0 * 0.61,
        1e-9,
    );
}

#[test]
fn a_ewe_is_fed_by_her_scan_and_her_last_score() {
    let score = |quarters| Some(Condition::from_quarters(quarters));
    assert_eq!(FeedGroup::of(Some(1), score(10)), FeedGroup::Single, "2.5 is not thin");
    assert_eq!(FeedGroup::of(Some(1), score(9)), FeedGroup::Thin);
    assert_eq!(FeedGroup::of(None, score(9)), FeedGroup::Thin);
    assert_eq!(FeedGroup::of(Some(4), None), FeedGroup::Triplets);
}

#[test]
fn what_cannot_be_is_refused() {
    let twins = [(FeedGroup::Twins, 4)];
    assert!(matches!(card(kg(40.0), &twins, grain(25.0), 42), Err(NoCard::Outside(_))));
    assert!(matches!(card(kg(70.0), &[], grain(25.0), 42), Err(NoCard::Refused(_))));
    assert!(matches!(card(kg(70.0), &twins, grain(1.0), 42), Err(NoCard::Refused(_))));
    assert!(matches!(card(kg(70.0), &twins, grain(25.0), 0), Err(NoCard::Refused(_))));
}

#[test]
fn hay_as_fed_is_what_is_eaten_and_what_is_wasted_and_its_dry_matter_is_of_what_is_eaten() {
    // Source: ours, 2.8 kg offered at 10% waste and 88% dry matter.
    let of = becomes(kg(2.8), 0.88, 0.1).expect("in bounds");
    near(of.eaten.as_kilograms(), 2.52, 1e-12);
    near(of.wasted.as_kilograms(), 0.28, 1e-12);
    near(of.dry_matter.as_kilograms(), 2.2176, 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 256, ..ProptestConfig::default() })]

    #[test]
    fn the_feed_bought_covers_the_feed_given_within_one_bag(
        counts in prop::array::uniform5(0..200_u32), weight in 50.0..90.0_f64, bag in 5.0..60.0_f64, days in 1..200_u16,
    ) {
        // Source: ours; the troughs of the card are added up day by day and group by group.
        let ewes: Vec<(FeedGroup, u32)> = FeedGroup::ALL.into_iter().zip(counts).collect();
        prop_assume!(counts.iter().sum::<u32>() > 0);
        let card = card(kg(weight), &ewes, grain(bag), days).expect("a card");
        let given: f64 = (0..i64::from(days))
            .flat_map(|day| card.portions.iter().map(move |portion| portion.trough(day).as_kilograms()))
            .sum();
        prop_assert!((given - card.given.as_kilograms()).abs() < 1e-6 * given.max(1.0));
        let bought = f64::from(card.bags) * bag;
        prop_assert!(bought > given - 1e-6 && bought - given < bag + 1e-6, "{bought} bought, {given} given");
        let each = |group| card.portions.iter().find(|one| one.group == group).map(|one| one.each.as_kilograms());
        if let (Some(one), Some(two)) = (each(FeedGroup::Single), each(FeedGroup::Twins)) {
            prop_assert!(one <= two);
        }
        if let (Some(two), Some(three)) = (each(FeedGroup::Twins), each(FeedGroup::Triplets)) {
            prop_assert!(two <= three);
        }
    }
}
