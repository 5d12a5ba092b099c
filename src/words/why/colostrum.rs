//! Why this much colostrum.

use yeanling_core::reckon::colostrum::{
    COLD_EXTRA, Caution, ColostrumTarget, FIRST_SIX_HOURS, ONE_FEED, SOURCES, day_figure,
    eighteen_hour_figure, others,
};
use yeanling_core::settings::{DayRule, Housing};
use yeanling_core::units::{System, Volume};

use super::{Why, cited, converted, headings, milk, rate, source_line, times, told, with_tube};

/// Returns why a lamb wants this much colostrum.
pub fn colostrum(target: &ColostrumTarget, system: System) -> Why {
    let mut working: Vec<String> = converted(target.weight, system).into_iter().collect();
    working.push(format!("One feed: {}", times(ONE_FEED, target.weight, system)));
    working.push(format!(
        "By 6 h: {}",
        edge(target.by_6h, times(FIRST_SIX_HOURS, target.weight, system), target, system)
    ));
    let eighteen = times(eighteen_hour_figure(target.housing), target.weight, system);
    working.push(format!("By 18 h: {}", edge(target.by_18h, eighteen, target, system)));
    working.push(format!("By 24 h: {}", times(day_figure(target.rule), target.weight, system)));
    if target.by_24h > target.rule_24h {
        working.push(format!(
            "The day’s total is raised to that of the first 18 h: {}",
            milk(target.by_24h, system)
        ));
    }

    let mut caution = Vec::new();
    match target.caution() {
        Some(Caution::HalfTheGuidance) => caution.push(
            "Your farm uses the 10% minimum. That is half the guidance, and a cold lamb needs more."
                .to_owned(),
        ),
        None => {}
    }
    caution.extend(with_tube());
    Why {
        heading: headings::COLOSTRUM.to_owned(),
        working,
        rule: rule(target),
        sources: cited(SOURCES),
        others: said_by_others(target, system),
        caution,
    }
}

/// Returns the working of an edge, or that the floor holds it down.
fn edge(wanted: Volume, working: String, target: &ColostrumTarget, system: System) -> String {
    match target.rule {
        DayRule::Ahdb200 | DayRule::Ruma210 => working,
        DayRule::TenPercent => format!("{}, raised to the daily minimum", milk(wanted, system)),
    }
}

fn rule(target: &ColostrumTarget) -> String {
    let who = match target.rule {
        DayRule::Ahdb200 => "AHDB",
        DayRule::Ruma210 => "the lower end of RUMA",
        DayRule::TenPercent => "10% of body weight, the popular minimum",
    };
    let housing = match target.housing {
        Housing::Housed => "housed",
        Housing::Outdoors => "outdoors",
    };
    let figure = rate(day_figure(target.rule));
    format!("Your farm's rule is {figure} in 24 h ({who}), {housing}; {} is one feed.", rate(ONE_FEED))
}

fn said_by_others(target: &ColostrumTarget, system: System) -> Vec<String> {
    let mut lines: Vec<String> = others(target)
        .into_iter()
        .map(|(source, low, high, hours)| {
            let volume = if low < high {
                format!("{} to {}", told(low, system), told(high, system))
            } else {
                told(low, system)
            };
            format!("{}: {volume} in {hours} h", source_line(&source))
        })
        .collect();
    for extra in COLD_EXTRA {
        let (low, high) = (extra.low_percent, extra.high_percent);
        let more = |percent: u8| {
            let milliliters = target.by_24h.as_milliliters() * (1.0 + f64::from(percent) / 100.0);
            told(Volume::from_milliliters(milliliters), system)
        };
        lines.push(format!(
            "{}: in cold, wet or wind {low} to {high}% more, {} to {} in 24 h",
            source_line(&extra.source),
            more(low),
            more(high),
        ));
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::colostrum::target;
    use yeanling_core::units::Mass;

    #[track_caller]
    fn check(rule: DayRule, housing: Housing, system: System, working: &[&str]) -> Why {
        let target = target(Mass::from_kilograms(3.9), rule, housing).expect("in bounds");
        let why = colostrum(&target, system);
        assert_eq!(why.working, working);
        why
    }

    #[test]
    fn the_working_fills_in_the_weight() {
        let why = check(
            DayRule::Ahdb200,
            Housing::Outdoors,
            System::Metric,
            &[
                "One feed: 50 ml/kg × 3.9 kg = 195 ml",
                "By 6 h: 100 ml/kg × 3.9 kg = 390 ml",
                "By 18 h: 210 ml/kg × 3.9 kg = 819 ml, about 820 ml",
                "By 24 h: 200 ml/kg × 3.9 kg = 780 ml",
                "The day’s total is raised to that of the first 18 h: 819 ml, about 820 ml",
            ],
        );
        assert!(why.others.contains(&"RUMA, Colostrum campaign: 820 ml to 1130 ml in 24 h".to_owned()));
        assert!(why.caution.iter().any(|line| line.contains("call your vet")));
    }

    #[test]
    fn a_farm_in_pounds_sees_both() {
        check(
            DayRule::Ahdb200,
            Housing::Housed,
            System::Us,
            &[
                "8.6 lb = 3.9 kg",
                "One feed: 50 ml/kg × 3.9 kg = 195 ml (6.6 fl oz)",
                "By 6 h: 100 ml/kg × 3.9 kg = 390 ml (13.2 fl oz)",
                "By 18 h: 180 ml/kg × 3.9 kg = 702 ml, about 700 ml (23.7 fl oz)",
                "By 24 h: 200 ml/kg × 3.9 kg = 780 ml (26.4 fl oz)",
            ],
        );
    }

    #[test]
    fn the_floor_says_that_it_is_half_the_guidance() {
        let why = check(
            DayRule::TenPercent,
            Housing::Housed,
            System::Metric,
            &[
                "One feed: 50 ml/kg × 3.9 kg = 195 ml",
                "By 6 h: 390 ml, raised to the daily minimum",
                "By 18 h: 390 ml, raised to the daily minimum",
                "By 24 h: 100 ml/kg × 3.9 kg = 390 ml",
            ],
        );
        assert!(why.caution.iter().any(|line| line.contains("half the guidance")));
    }
}
