//! Why the next feed is this much, then.

use yeanling_core::reckon::colostrum::{ColostrumTarget, ONE_FEED};
use yeanling_core::reckon::feeds::{Next, SOURCES};
use yeanling_core::units::{System, Volume};

use super::{Why, cited, converted, headings, milk, times, told, with_tube};
use crate::common::span;

/// Returns why the next feed of a lamb fed by hand is this much, and due then.
pub fn next_feed(next: &Next, target: &ColostrumTarget, system: System) -> Why {
    let mut working: Vec<String> = converted(target.weight, system).into_iter().collect();
    working.push(format!("One feed: {}", times(ONE_FEED, target.weight, system)));
    if next.volume < target.next_feed {
        working.push(format!("Only this much more is needed today: {}", milk(next.volume, system)));
    }
    let feeds = if next.feeds_left == 1 { "feed" } else { "feeds" };
    working.push(format!("{} {feeds} left of {} in 24 h", next.feeds_left, told(target.by_24h, system)));
    working.push(if next.due_age.is_zero() {
        "Due from birth: the first feed as soon as possible".to_owned()
    } else {
        format!("Due at {} of age", span(next.due_age))
    });
    Why {
        heading: headings::NEXT_FEED.to_owned(),
        working,
        rule: "Feeds are 2 to 6 h apart so that the volumes for 6, 18 and 24 h are met in time.".to_owned(),
        sources: cited(SOURCES),
        others: others(target, system),
        caution: with_tube(),
    }
}

fn others(target: &ColostrumTarget, system: System) -> Vec<String> {
    let share = |feeds: f64| told(Volume::from_milliliters(target.by_24h.as_milliliters() / feeds), system);
    vec![format!("Irish Farmers Journal, 4 to 5 feeds: {} to {} each", share(5.0), share(4.0))]
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::colostrum::target;
    use yeanling_core::reckon::feeds::next;
    use yeanling_core::settings::{DayRule, Housing};
    use yeanling_core::units::{Mass, TimeDelta};

    #[track_caller]
    fn check(given: f64, last: Option<i64>, working: &[&str]) {
        let target =
            target(Mass::from_kilograms(4.0), DayRule::Ruma210, Housing::Outdoors).expect("in bounds");
        let last = last.map(TimeDelta::minutes);
        let next = next(&target, Volume::from_milliliters(given), last, TimeDelta::hours(1)).expect("a feed");
        assert_eq!(next_feed(&next, &target, System::Metric).working, working);
    }

    #[test]
    fn the_working_says_how_much_how_many_and_when() {
        let one = "One feed: 50 ml/kg × 4.0 kg = 200 ml";
        let from_birth = "Due from birth: the first feed as soon as possible";
        check(0.0, None, &[one, "5 feeds left of 840 ml in 24 h", from_birth]);
        check(200.0, Some(0), &[one, "4 feeds left of 840 ml in 24 h", "Due at 4 h 30 min of age"]);
        let rest = "Only this much more is needed today: 40 ml";
        check(800.0, Some(810), &[one, rest, "1 feed left of 840 ml in 24 h", "Due at 18 h of age"]);
    }
}
