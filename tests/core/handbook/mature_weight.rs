//! What a grown ewe weighs by the kind of sheep.

use yeanling_core::reckon::mature_weight::usual;
use yeanling_core::settings::BreedType;
use yeanling_core::units::Mass;

#[test]
fn hair_sheep_lie_within_what_is_printed_of_them_and_every_kind_within_the_feed_tables() {
    // Source: St Croix 100 to 120 lb (Virgin Islands); Katahdin 120 to 160 lb, Dorper 110 to 176 lb (Belize).
    let hair = usual(BreedType::Hair).as_pounds();
    assert!((120.0..=160.0).contains(&hair) && (110.0..=176.0).contains(&hair), "{hair}");
    for kind in BreedType::ALL {
        let weight = usual(kind);
        assert!((Mass::from_kilograms(50.0)..=Mass::from_kilograms(90.0)).contains(&weight), "{kind:?}");
    }
}
