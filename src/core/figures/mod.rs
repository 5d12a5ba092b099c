//! The season in numbers, worked out from the flock: nobody notes a season, it is seen in the births.

mod ahead;
mod grown;
mod matings;
mod outlooks;
mod overdue;
mod rams;
mod record;
mod season;
mod standing;
mod this_week;
mod witnesses;
mod year;

pub use ahead::{Ahead, ahead, curves, group_dates};
pub use grown::{ClassGain, Grown, NoAdjusted, by_dam_age, by_litter, grown};
pub use matings::put_to_ram;
pub use outlooks::{Awaited, Outlooks, awaited, outlooks};
pub use overdue::{Overdue, overdue};
pub use rams::{Served, served, settled};
pub use record::{KeepMark, REARED_AT, Record, marked, marks, record};
pub use season::{APART, Season, seasons};
pub use standing::standing;
pub use this_week::{Asked, this_week};
pub use year::{Alive, Loss, Year, year};
