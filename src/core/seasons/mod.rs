//! The season in numbers, worked out from the flock: nobody notes a season, it is seen in the births.

mod against_past;
mod before_season;
mod by_ram;
mod ewe_weight;
mod grown;
mod keeping;
mod lambing_forecasts;
mod matings;
mod next_season;
mod overdue;
mod rams;
mod record;
mod replacements;
mod season;
mod season_forecast;
mod sires;
mod standing;
mod this_week;
mod what_if;
mod witnesses;
mod year;
mod young_ewes;

pub use against_past::{Against, AgainstPast, Ailed, LostAt, Rate, against_past};
pub use before_season::{BeforeSeason, KitAsked, ToAgree, agreed, before_season, is_agreed, kit_asked};
pub use by_ram::{OfRam, RamFigure, by_ram};
pub use ewe_weight::{EweWeight, Whose as WhoseWeight, ewe_weight};
pub use grown::{ClassGain, Grown, NoAdjusted, ages_weighed, by_dam_age, by_litter, grown, usual_age};
pub use keeping::{Kept, SeasonOf, gravity, keeping, minds_anything};
pub use lambing_forecasts::{Awaited, LambingForecasts, awaited, lambing_forecasts};
pub use matings::put_to_ram;
pub use next_season::{NextGroup, next_season};
pub use overdue::{Overdue, overdue};
pub use rams::{Served, served, settled};
pub use record::{KeepMark, REARED_AT, Record, marked, marks, record};
pub use replacements::{Kin, Replacement, replacements};
pub use season::{APART, Season, seasons};
pub use season_forecast::{SeasonForecast, curves, group_dates, season_forecast};
pub use sires::{KinToRam, Sire, kept_of, near_kin, sire_of};
pub use standing::standing;
pub use this_week::{SeasonJob, plans_near, this_week, without_booster};
pub use what_if::{
    HAY_SHARE, NoWhatIf, Plan as WishedPlan, RAM_DAYS, SCAN_AFTER, UP_FROM, WhatIf, Wish, next_month,
    ram_in_for, what_if,
};
pub use year::{Alive, Loss, Year, year};
pub use young_ewes::{YoungEwe, young_ewes};
