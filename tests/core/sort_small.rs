//! Things are put in order as the standard library does it, and what is equal keeps its order.

use proptest::prelude::*;
use yeanling_core::sort_small::SortSmall;

use crate::book::arbitrary::config;

proptest! {
    #![proptest_config(config(500))]

    #[test]
    fn the_order_is_that_of_the_standard_library(keys in prop::collection::vec(0..12_u8, 0..60)) {
        // Source: Rust's standard library, whose `sort_by_key` is stable; each thing knows where it stood.
        let things: Vec<(u8, usize)> = keys.into_iter().enumerate().map(|(stood, key)| (key, stood)).collect();
        let (mut ours, mut sorted) = (things.clone(), things);
        ours.sort_small_by_key(|(key, _)| *key);
        sorted.sort_by_key(|(key, _)| *key);
        prop_assert_eq!(&ours, &sorted);
        ours.sort_small_by(|one, other| other.cmp(one));
        sorted.sort_by(|one, other| other.cmp(one));
        prop_assert_eq!(&ours, &sorted);
        ours.sort_small();
        sorted.sort();
        prop_assert_eq!(ours, sorted);
    }
}
