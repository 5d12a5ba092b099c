//! The season in numbers, worked out from the flock: nobody notes a season, it is seen in the births.

mod season;
mod year;

pub use season::{Season, seasons};
pub use year::{Alive, Loss, Year, year};
