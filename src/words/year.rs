//! The season in figures.

use chrono::{Datelike, NaiveDate};
use yeanling_core::book::Cause;
use yeanling_core::reckon::flock_figures::{Counts, Share, ShareOf};
use yeanling_core::reckon::losses::Span;
use yeanling_core::reckon::survival::Bin;
use yeanling_core::seasons::{Against, Alive, Loss, LostAt, Rate, Season};
use yeanling_core::units::{Mass, System};

use super::common::{date, mass, number, short_date};
use super::noted::cause;

/// The screen's name.
pub const TITLE: &str = "Season summary";
/// Returns what there is of a season, where its summary is offered: "2027: 24 born, 22 alive".
pub fn born_and_alive(year: i32, born: usize, alive: usize) -> String {
    format!("{year}: {born} born, {alive} alive")
}

/// Says what to do first.
pub const EMPTY: &str = "No lambs yet. The season’s figures show after the first birth.";
/// Prints the summary.
pub const PRINT: &str = "Print the summary";
/// Chooses the season.
pub const SEASON: &str = "Season";
/// Chooses the season beside it.
pub const AGAINST: &str = "Compare with";
/// Beside it stands nothing.
pub const ALONE: &str = "none";
/// Heads the figures.
pub const FLOCK: &str = "The flock";
/// Heads what was lost.
pub const LOSSES: &str = "Losses by age";
/// Says that nothing was lost.
pub const NO_LOSSES: &str = "None lost so far.";
/// Heads the births.
pub const BY_DAY: &str = "Lambs born, by day";
/// Heads birth weight and survival.
pub const SURVIVAL: &str = "Birth weight and survival to 4 weeks";
/// Names the bars of survival.
pub const LIVED: &str = "lived";
/// Names the spreads of survival.
pub const SPREAD: &str = "range, 95 times in 100";
/// Says what is not known.
pub const NOT_PUT: &str = "Ewes put to the ram are not recorded, so there are no rates per ewe.";
/// Says of how many ewes that lambed it is not known that they were put to the ram; nothing where of none.
pub fn others(ewes: u32) -> String {
    match ewes {
        0 => String::new(),
        1 => "*1* ewe lambed without a ram on record: rates per ewe leave her out.".to_owned(),
        ewes => {
            format!("*{ewes}* ewes lambed without a ram on record: rates per ewe leave them out.")
        }
    }
}

/// Ewes that lambed.
pub const LAMBED: &str = "Ewes that lambed";
/// Lambs born.
pub const BORN: &str = "Lambs born";
/// Litters by size.
pub const LITTERS: &str = "Litters";
/// Their sizes.
pub const LITTERS_NOTE: &str = "singles · twins · triplets and more";
/// Ewes lambing of those put to the ram.
pub const FERTILITY: &str = "Lambed";
/// Lambs born for each ewe that lambed.
pub const PROLIFICACY: &str = "Born per ewe lambed";
/// Lambs born for each ewe put to the ram.
pub const LAMBING: &str = "Lambing rate";
/// Dead at birth.
pub const STILLBIRTH: &str = "Dead at birth";
/// Alive at a day.
pub const AT_A_DAY: &str = "Alive at one day";
/// Alive at a week.
pub const AT_A_WEEK: &str = "Alive at one week";
/// Died before weaning.
pub const LOSS: &str = "Died before weaning";
/// Lambs weaned.
pub const WEANED: &str = "Weaned";
/// Weight weaned for each ewe.
pub const WEANED_A_EWE: &str = "Weaned weight per ewe";
/// Mean birth weight.
pub const BIRTH_WEIGHT: &str = "Mean birth weight";

/// Returns the same of a season that goes on: "25 Feb to 4 Mar 2026, so far: 12 ewes still to lamb".
pub fn so_far(season: &Season, to_lamb: usize) -> String {
    let ewes = if to_lamb == 1 { "1 ewe".to_owned() } else { format!("{to_lamb} ewes") };
    format!("{}, *so far*: {ewes} still to lamb", self::season(season))
}

/// Heads the figures of a season that goes on: "2027 so far".
pub fn year_so_far(year: i32) -> String {
    format!("{year} so far")
}

/// Returns when a season was: "25 Feb to 4 Apr 2026".
pub fn season(season: &Season) -> String {
    let (first, last) = (season.first.local().date(), season.last.local().date());
    match (first == last, first.year() == last.year()) {
        (true, _) => date(season.last),
        (false, true) => format!("{} to {}", short_date(first), date(season.last)),
        (false, false) => format!("{} to {}", date(season.first), date(season.last)),
    }
}

/// Returns what a share is one of: "6 of 3 ewes that lambed".
pub fn of(share: Share) -> String {
    let of = match share.denominator {
        ShareOf::PutToRam => "put to the ram",
        ShareOf::Lambed => "ewes that lambed",
        ShareOf::Born => "born",
        ShareOf::BornAlive => "born alive",
    };
    // More than all of them are no part of them.
    let from = if share.count > share.of { "from" } else { "of" };
    format!("{} {from} {} {of}", share.count, share.of)
}

/// Returns a figure in bold.
pub fn bold(figure: &str) -> String {
    format!("*{figure}*")
}

/// Returns how many there are.
pub fn count(count: u32) -> String {
    format!("*{count}*")
}

/// Returns how many litters there are of one, two, and three and more lambs.
pub fn litters([one, two, more]: [u32; 3]) -> String {
    format!("*{one} · {two} · {more}*")
}

/// Returns a share in whole percent: of a flock no tenth of one says anything.
pub fn percent(share: Share) -> String {
    format!("*{}%*", number(share.percent(), 0))
}

/// Returns how many there are for each one, to a hundredth.
pub fn each(share: Share) -> String {
    format!("*{:.2}*", share.each())
}

/// Returns how many of the born were alive and dead.
pub fn born(alive: u32, dead: u32) -> String {
    format!("{alive} alive, {dead} dead")
}

/// Returns that litters without a dam count as one ewe each; nothing when there are none.
pub fn without_dam(litters: u32) -> String {
    match litters {
        0 => String::new(),
        1 => "with 1 litter, dam not known".to_owned(),
        litters => format!("with {litters} litters, dams not known"),
    }
}

/// Returns how many of those old enough were alive, in percent; nothing while none is old enough.
pub fn alive(alive: Alive) -> (String, String) {
    if alive.of == 0 {
        return ("–".to_owned(), "none is that old yet".to_owned());
    }
    let percent = f64::from(alive.count) / f64::from(alive.of) * 100.0;
    (
        format!("*{}%*", number(percent, 0)),
        format!("{} of {} born alive long enough ago", alive.count, alive.of),
    )
}

/// Returns of how many of the weaned the weight is: "19 of 20 weaned were weighed, per ewe put to the ram".
pub fn weaned_weighed(counts: &Counts) -> String {
    format!("{} of {} weaned were weighed", counts.weaned_weighed, counts.weaned)
}

/// Returns a mean of weights and of how many.
pub fn mean(of: (Mass, u32), system: System) -> (String, String) {
    (format!("*{}*", mass(of.0, system)), format!("of {} weighed", of.1))
}

/// Returns a span of age.
pub const fn span(span: Span) -> &'static str {
    match span {
        Span::AtBirth => "Born dead",
        Span::FirstDay => "First 24 hours",
        Span::SecondDay => "24 to 48 hours",
        Span::FirstWeek => "2 to 7 days",
        Span::FourWeeks => "7 to 28 days",
        Span::ToWeaning => "28 days to weaning",
    }
}

/// The ends of the spans of age after birth, in their order, for under the bars.
pub const AGES: [&str; 6] = ["0", "24 h", "48 h", "7 d", "28 d", "wean"];
/// Counts lambs at the side of a chart.
pub const LAMBS: &str = "lambs";

/// Heads what ailed.
pub const AILED: &str = "Illness";
/// Says what is counted.
pub const AILED_NOTE: &str = "Each animal once for each illness, by what it most likely was. Lambs of those born alive, ewes of those that lambed.";
/// Heads the seasons before.
pub const BEFORE: &str = "before";
/// Says that there is nothing to compare with.
pub const NO_SEASON_BEFORE: &str = "No earlier season in this book to compare with.";

/// Returns a count out of a total: "3 of 20".
pub fn rate(rate: Rate) -> String {
    format!("*{}* of {}", rate.count, rate.of)
}

/// Returns what a span's lambs died of, and how many did in the seasons before: "cold 2 (before 5), not known 1 (before 0)".
pub fn causes(lost: &LostAt, compared: bool) -> String {
    let told = |(of, all): &(Cause, Against)| match compared {
        true => format!("{} {} (before {})", cause(*of), all.season.count, all.past.count),
        false => format!("{} {}", cause(*of), all.season.count),
    };
    lost.causes.iter().map(told).collect::<Vec<_>>().join(", ")
}

/// Returns an illness with whose it is.
pub fn ailed(name: &str, ewes: bool) -> String {
    format!("{name}, {}", if ewes { "ewes" } else { "lambs" })
}

/// Returns at which ages lambs were first seen with it: "2 to 7 days 1, 7 to 28 days 2".
pub fn ages(ages: &[(Span, u32)]) -> String {
    let told = |(of, count): &(Span, u32)| format!("{} {count}", span(*of).to_lowercase());
    ages.iter().map(told).collect::<Vec<_>>().join(", ")
}

/// Says that too few were born to compare.
pub fn too_few_to_compare((here, before): (u32, u32), least: usize) -> String {
    format!("Too few to compare: {here} lambs this season, {before} before. Each side needs {least}.")
}

/// Says which ages stand out from the seasons before beyond chance.
pub fn stands_out(more: Vec<Span>, fewer: Vec<Span>) -> String {
    let list =
        |spans: &[Span]| spans.iter().map(|of| span(*of).to_lowercase()).collect::<Vec<_>>().join(", ");
    match (more.is_empty(), fewer.is_empty()) {
        (true, true) => "No age differs from earlier seasons by more than chance.".to_owned(),
        (false, true) => format!("*More than chance above earlier seasons*: {}.", list(&more)),
        (true, false) => format!("More than chance below earlier seasons: {}.", list(&fewer)),
        (false, false) => {
            format!("*More than chance above earlier seasons*: {}. Below: {}.", list(&more), list(&fewer))
        }
    }
}

/// Tells the chart of losses in words.
pub fn losses_label(losses: &[Loss]) -> String {
    let told = |loss: &Loss| format!("{}: {}", span(loss.span), loss.lambs);
    format!("Lambs lost. {}.", losses.iter().map(told).collect::<Vec<_>>().join(", "))
}

/// Tells the chart of births in words.
pub fn by_day_label(days: &[(NaiveDate, u32)]) -> String {
    let births: u32 = days.iter().map(|(_, births)| births).sum();
    let most = days.iter().rev().max_by_key(|(_, births)| *births);
    let most =
        most.map(|(day, births)| format!(" Most on {}: {births}.", short_date(*day))).unwrap_or_default();
    format!("{births} lambs on {} days.{most}", days.len())
}

/// Says how many lambs are still missing for the chart of survival.
pub fn too_few(lambs: usize, least: usize) -> String {
    format!("Needs {least} lambs weighed at birth and four weeks old or more. So far {lambs}.")
}

/// The scale of survival.
pub const PERCENTS: [(f64, &str); 3] = [(0.0, "0%"), (0.5, "50%"), (1.0, "100%")];

/// Tells the bars of survival in words: "3 to 3.5 kg: 9 of 10, 3.5 to 4 kg: 10 of 10."
pub fn bins(bins: &[Bin], system: System) -> String {
    let bin = |bin: &Bin| {
        format!("{} to {}: {} of {}", mass(bin.from, system), mass(bin.to, system), bin.lived, bin.lambs)
    };
    format!("{}.", bins.iter().map(bin).collect::<Vec<_>>().join(", "))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_share_says_what_it_is_one_of() {
        let share = Share { count: 385, of: 200, denominator: ShareOf::PutToRam };
        assert_eq!((percent(share).as_str(), of(share).as_str()), ("*192%*", "385 from 200 put to the ram"));
        assert_eq!(each(share), "*1.93*");
    }

    #[test]
    fn lambs_too_young_to_tell_are_not_told() {
        assert_eq!(alive(Alive::default()).0, "–");
        assert_eq!(alive(Alive { count: 7, of: 8 }).0, "*88%*");
    }
}
