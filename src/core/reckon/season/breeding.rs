//! Whether ewes are mated in their season: sheep breed as days grow shorter, and the nearer to the equator the less so.
//!
//! Out of season many ewes are not in heat at all, and how many hold is printed from under 20 to 72 of 100 matings. No
//! figure is guessed there: the share that holds is left wide open, and that is said.

use crate::reckon::cited::{ours, seen};
pub use crate::settings::Latitude;
use crate::source::Source;
use crate::units::NaiveDate;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "Burke",
        "Dorper, Katahdin and St Croix in Arkansas: most lambed to rams of December, fewest to those of April and May",
        Some(2005),
        "Sheep & Goat Research Journal 20",
    ),
    seen(
        "Wildeus",
        "St Croix: over 90% lambed to matings of October and December at 35° N, under 20% to those of April and June; at 17° N all were in heat all year",
        None,
        "Virginia State University",
    ),
    seen(
        "Tropical and Subtropical Agroecosystems",
        "Dorper and Katahdin in spring: 68 and 72% lambed to March and April, 39 and 30% to May and June",
        None,
        "Universidad Autónoma de Yucatán",
    ),
    ours(
        "North of 30° N ewes are in season from August to January, south of 30° S from February to July, between all year",
    ),
    ours("Out of season the share that holds is a Beta(2, 2): anything from 9 to 91 in 100"),
];

/// Whether ewes are mated in their season.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum BreedingSeason {
    /// In season.
    #[default]
    Within,
    /// Out of season.
    Outside,
}

/// Returns whether ewes are in season when a ram comes to them on this day.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::breeding::{BreedingSeason, Latitude, season_of};
/// let may = NaiveDate::from_ymd_opt(2027, 5, 1).unwrap();
/// assert_eq!(season_of(may, Latitude::North), BreedingSeason::Outside);
/// assert_eq!(season_of(may, Latitude::South), BreedingSeason::Within);
/// ```
#[must_use]
pub fn season_of(ram_in: NaiveDate, latitude: Latitude) -> BreedingSeason {
    let spring_in_the_north = (2..=7).contains(&chrono::Datelike::month(&ram_in));
    let outside = match latitude {
        Latitude::North => spring_in_the_north,
        Latitude::South => !spring_in_the_north,
        Latitude::Tropics => false,
    };
    if outside { BreedingSeason::Outside } else { BreedingSeason::Within }
}
