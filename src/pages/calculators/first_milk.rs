//! How much colostrum, from a weight alone, while it is typed.

use yeanling_core::reckon::colostrum::{self, COLD_EXTRA, Caution as Warning, ColostrumTarget};
use yeanling_core::reckon::feeds;
use yeanling_core::settings::{DayRule, Housing};
use yeanling_core::units::{Mass, System, TimeDelta, Volume};
use yeanling_words::{calculators as words, lamb, settings};

use super::answer::{answer, figure, head, in_both};
use super::{
    BIRTH_WEIGHT, BOTH_WEIGHTS, Does as Only, HOUSING, HOUSINGS, choices, housing, weight_field, weight_unit,
};
use crate::block::Shape;
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::weight::{self, Weighed};
use crate::{Action, Does, Reason};

/// The rule, while it is another than the farm's.
const RULE: &str = "figures-rule";
const RULES: [DayRule; 3] = [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent];

/// Returns first milk by weight.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let unit = weight_unit(view, fields);
    let weighed = Weighed::at_birth(&fields.text(BIRTH_WEIGHT, ""), unit);
    let asked = weight::was_asked(fields, BIRTH_WEIGHT, unit);
    let (weight, error) = match &weighed {
        Weighed::Good(weight) => (Some(*weight), String::new()),
        Weighed::Ask(typed, _) => (asked.then_some(*typed), String::new()),
        Weighed::Nothing => (None, String::new()),
        Weighed::Wrong(wrong) => (None, wrong.clone()),
    };
    let rule = fields.pick(RULE, &RULES, view.settings().day_rule);
    let target = weight.and_then(|weight| colostrum::target(weight, rule, housing(view, fields)).ok());
    let mut blocks =
        Blocks::new().field(BIRTH_WEIGHT, weight_field(view, fields, BIRTH_WEIGHT, lamb::WEIGHT, error));
    if let Weighed::Ask(typed, meant) = weighed
        && !asked
    {
        let does = |weight| Action::Does(Does::Figures(Only::Meant(weight)));
        blocks = blocks.then(weight::ask_pounds(typed, meant, does));
    }
    if weighed == Weighed::Nothing {
        blocks = blocks.small(words::TYPE_WEIGHT);
    }
    if let Some(target) = target {
        blocks = blocks.then(volumes(&target, view.system()));
    }
    let lives = housing(view, fields);
    let housings = choices(HOUSING, words::HOUSING, HOUSINGS.into_iter().enumerate(), |one: Housing| {
        (one == lives, settings::housing(one).to_owned(), "")
    });
    let rules = choices(RULE, words::RULE, RULES.into_iter().enumerate(), |one| {
        let (who, figure) = words::rule(one);
        (one == rule, who.to_owned(), figure)
    });
    blocks.choices(HOUSING, housings.labelled()).section(
        "rule",
        words::RULE,
        Blocks::new().choices(RULE, rules).small(words::RULE_SUB),
    )
}

/// This is the weight that was meant: as it was typed, or in pounds.
pub(super) fn meant(weight: Mass, system: System, fields: &mut Fields) {
    let unit = weight::unit(fields, BOTH_WEIGHTS, system);
    let typed = Weighed::at_birth(&fields.text(BIRTH_WEIGHT, ""), unit);
    if !matches!(typed, Weighed::Ask(typed, _) if typed == weight) {
        weight::choose_unit(fields, BOTH_WEIGHTS, System::Us);
        fields.set(BIRTH_WEIGHT, weight::as_typed(weight, System::Us));
    }
    let unit = weight::unit(fields, BOTH_WEIGHTS, system);
    weight::keep_asked(fields, BIRTH_WEIGHT, unit);
}

/// Returns every volume, each with its reasons.
fn volumes(target: &ColostrumTarget, system: System) -> Blocks {
    let next = feeds::next(target, Volume::ZERO, None, TimeDelta::zero());
    let of_next = || next.map(|next| Reason::NextFeed(Box::new((next, *target))));
    let of_want = |label, key: &'static str, milk| {
        answer(key, label, in_both(milk, system), Some(Reason::Milk(*target)))
    };
    let count = feeds::count(target.by_24h, target.next_feed).map(|count| {
        answer("feeds", words::FEEDS, figure(count.to_string(), "", words::FEEDS_ALSO), of_next())
    });
    let others = Blocks::new()
        .then([
            of_want(words::BY_6, "by-6", target.by_6h),
            of_want(words::BY_18, "by-18", target.by_18h),
            of_want(words::BY_24, "by-24", target.by_24h),
        ])
        .then(count);
    let feed =
        answer("feed", words::A_FEED, head(in_both(target.next_feed.offered(system), system)), of_next());
    let blocks = Blocks::new().then([feed]).group("answers", Shape::Answers, others);
    let blocks = match target.caution() {
        Some(Warning::HalfTheGuidance) => blocks.caution([words::HALF]),
        None => blocks,
    };
    blocks.text(said_of_cold(target, system))
}

/// Returns what cold weather adds, over all who say so.
fn said_of_cold(target: &ColostrumTarget, system: System) -> String {
    let least = COLD_EXTRA.iter().map(|extra| extra.low_percent).min().unwrap_or_default();
    let most = COLD_EXTRA.iter().map(|extra| extra.high_percent).max().unwrap_or_default();
    let more = |percent: u8| {
        Volume::from_milliliters(target.by_24h.as_milliliters() * (1.0 + f64::from(percent) / 100.0))
    };
    words::cold(least, most, more(least), more(most), system)
}
