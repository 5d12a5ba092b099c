//! Charts: labels at even steps with their unit, a mark where each group starts, bars named by both their ends.

use yeanling_core::book::{Animal, Cause, Event};
use yeanling_core::units::Mass;
use yeanling_pages::Screen;
use yeanling_pages::block::Kind;
use yeanling_pages::chart::{Chart, ChartTick};
use yeanling_words::year;

use crate::phone::Phone;
use crate::speech;

fn charts(page: &yeanling_pages::Page) -> Vec<Chart> {
    let chart = |block: &std::sync::Arc<yeanling_pages::Block>| match &block.kind {
        Kind::Chart(chart) => Some(chart.clone()),
        _ => None,
    };
    page.all().into_iter().filter_map(chart).collect()
}

/// Says whether labels are at even steps.
fn is_even(labels: &[ChartTick]) -> bool {
    let steps: Vec<f64> = labels.windows(2).map(|pair| pair[1].0 - pair[0].0).collect();
    steps.iter().all(|step| *step > 0.0 && (step - steps[0]).abs() < 1e-6)
}

/// Says what of a chart is uneven or without its unit.
fn broken(chart: &Chart) -> Vec<String> {
    let mut wrong = Vec::new();
    if !is_even(&chart.up) || !is_even(&chart.across) {
        wrong.push(format!("labels at uneven steps: {:?}, {:?}", chart.up, chart.across));
    }
    let numbers: Option<Vec<f64>> =
        chart.up.iter().map(|(_, text)| text.trim_end_matches('%').parse().ok()).collect();
    let even = numbers
        .is_some_and(|numbers| is_even(&numbers.iter().map(|one| (*one, String::new())).collect::<Vec<_>>()));
    if !even {
        wrong.push(format!("no even numbers at the side: {:?}", chart.up));
    }
    if chart.unit.is_empty() && !chart.up.iter().all(|(_, text)| text.ends_with('%')) {
        wrong.push("no unit at the side".to_owned());
    }
    wrong
}

#[test]
fn every_chart_has_even_steps_and_its_unit() {
    let mut seen = 0;
    let mut phones = speech::phones();
    phones.push(crate::year::two_seasons());
    for phone in phones {
        for screen in phone.screens() {
            for chart in charts(&phone.page_of(screen)) {
                seen += 1;
                let wrong = broken(&chart);
                assert!(wrong.is_empty(), "{screen:?}: {}\n{chart:#?}", wrong.join("\n"));
            }
        }
    }
    assert!(seen > 8, "only {seen} charts");
}

#[test]
fn an_uneven_chart_is_found() {
    let ticks = |places: &[(f64, &str)]| places.iter().map(|(at, text)| (*at, (*text).to_owned())).collect();
    let good = Chart {
        unit: "kg".to_owned(),
        up: ticks(&[(0.0, "0"), (0.5, "10"), (1.0, "20")]),
        ..Chart::default()
    };
    assert!(broken(&good).is_empty());
    assert_eq!(broken(&Chart { unit: String::new(), ..good.clone() }).len(), 1);
    assert_eq!(broken(&Chart { up: ticks(&[(0.0, "0"), (0.5, "5"), (1.0, "20")]), ..good.clone() }).len(), 1);
    assert_eq!(broken(&Chart { across: ticks(&[(0.0, "a"), (0.2, "b"), (1.0, "c")]), ..good }).len(), 1);
}

#[test]
fn two_groups_have_two_starts_and_the_pens_are_one_sentence() {
    let mut phone = Phone::at("2026-10-01 08:00");
    for (group, tag, ram_in) in [("Lower field", "1", "2026-10-01 08:00"), ("Hill", "2", "2026-10-20 08:00")]
    {
        phone.now = crate::year::moment(ram_in);
        let formed = phone.note(Event::GroupFormed { name: group.to_owned() }).as_group();
        let ewe = phone.ewe(tag);
        phone.note(Event::JoinedGroup { ewe, group: formed });
        phone.note(Event::RamIn { group: formed, ram: None, age: None });
    }
    phone.now = crate::year::moment("2026-12-20 08:00");
    phone.open(Screen::Season);
    let chart = charts(&phone.page()).into_iter().find(|chart| chart.unit == "lambings").expect("a chart");
    let names: Vec<&str> = chart.starts.iter().map(|start| start.name.as_str()).collect();
    // The first lambs are possible 142 days after the ram came.
    assert_eq!(names, ["Lower field from 20 Feb", "Hill from 11 Mar"]);
    assert!(chart.starts[0].at < chart.starts[1].at && chart.starts[0].at >= 0.0);
    phone.says("Have ").says("None is set up.").says_nowhere("Births a night");
}

#[test]
fn the_sentence_of_the_pens_says_what_their_chart_draws() {
    let mut phone = Phone::at("2026-10-01 08:00");
    let group = phone.note(Event::GroupFormed { name: "All".to_owned() }).as_group();
    for tag in 1..=24 {
        let ewe = phone.ewe(&tag.to_string());
        phone.note(Event::JoinedGroup { ewe, group });
    }
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(34 * 24 * 60).note(Event::RamOut { group });
    let day = |text: &str| {
        chrono::NaiveDate::parse_from_str(&format!("{} 2027", text.trim()), "%d %b %Y").expect(text)
    };
    for later in [60, 40, 15, 10] {
        phone.later(later * 24 * 60).open(Screen::Season);
        let page = phone.page();
        let chart = charts(&page).into_iter().find(|chart| chart.unit == "pens").expect("a chart");
        let (place, label) = chart.up.last().expect("a step").clone();
        let top = label.parse::<f64>().expect("a number") / place;
        let enough: Vec<f64> =
            chart.lines[0].places.iter().map(|(_, height)| (height * top).round()).collect();
        let most = enough.iter().copied().fold(0.0, f64::max);
        let at_most = || enough.iter().enumerate().filter(|(_, pens)| **pens >= most).map(|(night, _)| night);
        let nights = at_most().max().expect("one") - at_most().min().expect("one");
        let says =
            page.all().into_iter().flat_map(|block| block.texts()).find(|text| text.starts_with("Have "));
        let says = says.expect("the sentence").replace('\u{a0}', " ");
        assert!(says.starts_with(&format!("Have {most} pens ")), "{says:?}, and the chart has {most}");
        let said = says.split(['.', ',']).next().expect("a part");
        let span = match said.split_once(" from ").and_then(|(_, days)| days.split_once(" to ")) {
            Some((first, last)) => (day(last) - day(first)).num_days(),
            None => 0,
        };
        assert_eq!(usize::try_from(span).ok(), Some(nights), "{says:?}");
    }
}

/// A season of this many lambs lost on their second day.
fn with_losses(lost: u32) -> Phone {
    let mut phone = Phone::at("2027-03-01 04:00");
    let ewe = phone.ewe("7");
    for number in 0..lost {
        let born = phone.now;
        let lamb = phone.lamb(ewe);
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
        let died = born + yeanling_core::units::TimeDelta::hours(30);
        phone.now = died;
        phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Cold });
        phone.later(60 * (1 + i64::from(number % 2)));
    }
    phone.open(Screen::Summary);
    phone
}

#[test]
fn losses_are_drawn_from_five_on_and_each_bar_has_both_ends() {
    let drawn = |phone: &Phone| {
        let all = charts(&phone.page());
        all.into_iter().find(|chart| chart.across.iter().any(|(_, text)| text == "28 d"))
    };
    assert!(drawn(&with_losses(4)).is_none());
    with_losses(4).says(year::LOSSES).says("24 to 48 hours");
    let chart = drawn(&with_losses(5)).expect("a chart of losses");
    assert_eq!(chart.across.len(), chart.bars.len() + 1);
    for (bar, ends) in chart.bars.iter().zip(chart.across.windows(2)) {
        assert!((bar.from - ends[0].0).abs() < 1e-9 && (bar.to - ends[1].0).abs() < 1e-9);
    }
}
