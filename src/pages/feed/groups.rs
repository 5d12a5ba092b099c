//! Extra feed by group: who is in which, what each gets a day step by step, the card for the feed store, and the bags.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::book::Item;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::reckon::season::feed_groups::{
    DAYS_BEFORE_FIRST, Feed, FeedGroup, FeedingCard, Portion, TWO_FEEDS_OVER, USUAL_FEED, card,
};
use yeanling_core::seasons::group_dates;
use yeanling_core::units::{Mass, System};
use yeanling_words::common::{date, number, short_date};
use yeanling_words::{feed as words, feed_groups as group_words};

use super::typed::{Number, Weight};
use crate::block::{Field, FieldKind, Kind, PaperTable, Row};
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Request, State};

const FROM: &str = "groups-from";

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let system = view.system();
    let counted = counted(view);
    let counts: Vec<(FeedGroup, Number)> = FeedGroup::ALL
        .into_iter()
        .enumerate()
        .map(|(place, group)| {
            let ewes = counted.iter().filter(|one| **one == group).count();
            (group, Number::of(fields, Key::from(format!("groups-ewes-{place}")), &ewes.to_string()))
        })
        .collect();
    let season = season(view.flock, view.now.local().date());
    let stood =
        season.map(|(first, _)| (first - TimeDelta::days(DAYS_BEFORE_FIRST)).to_string()).unwrap_or_default();
    let from_text = fields.text(FROM, &stood);
    let from: Option<NaiveDate> = from_text.trim().parse().ok();
    let long = season.zip(from).map(|((_, last), from)| (last - from).num_days().max(1).to_string());
    let days = Number::of(fields, "groups-days", &long.unwrap_or_default());
    let weight = super::ewe_weight(view, fields, "groups-ewe");
    let bag = Weight::of(fields, "groups-bag", group_words::bag_kilograms(system), system);
    let energy = Number::of(fields, "groups-energy", &group_words::energy_shown(USUAL_FEED.0, system));
    let dry = Number::of(fields, "groups-dry", &number(USUAL_FEED.1 * 100.0, 0));

    let ewes: Vec<(FeedGroup, u32)> =
        counts.iter().map(|(group, ewes)| (*group, ewes.whole().unwrap_or(0))).collect();
    let answer = match (weight.is, bag.is, energy.is, dry.is, days.whole(), from) {
        (Some(weight), Some(bag), Some(energy), Some(dry), Some(days), Some(from)) => {
            let feed = Feed { energy: words::energy(energy, system), dry_matter: dry / 100.0, bag };
            match card(weight, &ewes, feed, u16::try_from(days).unwrap_or(u16::MAX)) {
                Ok(card) => told(view, &card, from),
                Err(error) => Blocks::new().failed(group_words::no_card(&error, system)),
            }
        }
        _ => Blocks::new().small(group_words::TYPE_GROUPS),
    };
    let start =
        Field::new(group_words::FEED_FROM, FieldKind::Date, from_text).hint(group_words::FEED_FROM_HINT);
    let blocks = counts.iter().fold(Blocks::new().small(group_words::GROUPS_SUB), |blocks, (group, ewes)| {
        ewes.field(blocks, group_words::feed_group(*group), "", group_words::feed_group_hint(*group))
    });
    let blocks = blocks.field(FROM, start);
    let blocks = days.field(blocks, words::DAYS, words::DAYS_UNIT, "");
    let blocks = weight.field(blocks, words::EWE_WEIGHT).small(super::whose_weight(view));
    let blocks = energy.field(blocks, words::ENERGY, words::energy_unit(system), group_words::GRAIN_HINT);
    let blocks = dry.field(blocks, words::DRY_MATTER, "%", "");
    bag.field(blocks, group_words::BAG).then(answer).caution(words::CAUTION)
}

/// The group of each ewe of whom a lambing is awaited.
fn counted(view: &View) -> Vec<FeedGroup> {
    let awaited = view.lambing_forecasts.awaited.iter();
    awaited
        .map(|one| {
            let score = view.flock.ewe(one.ewe).and_then(yeanling_core::flock::Ewe::condition);
            FeedGroup::of(one.lambs, score.map(|scored| scored.score))
        })
        .collect()
}

/// The first and the last day on which a ewe of the groups that stand may lamb.
fn season(flock: &Flock, today: NaiveDate) -> Option<(NaiveDate, NaiveDate)> {
    let standing = flock.groups.values().filter(|group| group.parted.is_none());
    let days: Vec<(NaiveDate, NaiveDate)> = standing
        .filter_map(|group| {
            let dates = group_dates(flock, group);
            let of = |is: fn(&DateTask) -> bool| dates.iter().find(|one| is(&one.what)).map(|one| one.date);
            let first = of(|what| matches!(what, DateTask::WatchFrom))?;
            Some((first, of(|what| matches!(what, DateTask::WatchUntil))?))
        })
        .filter(|(_, last)| *last >= today)
        .collect();
    Some((days.iter().map(|(first, _)| *first).min()?, days.iter().map(|(_, last)| *last).max()?))
}

/// What each group gets, and what to buy.
fn told(view: &View, card: &FeedingCard, from: NaiveDate) -> Blocks {
    let system = view.system();
    let row = |portion: &Portion| {
        let each = group_words::each(portion, system);
        let steps = Blocks::new().small(group_words::steps(portion, from, system));
        let two = portion.each.as_kilograms() > TWO_FEEDS_OVER;
        let row = Row::new(group_words::feed_group(portion.group))
            .kind(group_words::ewes(portion.ewes))
            .text(each)
            .says(State::Coming, if two { group_words::TWO_FEEDS } else { "" })
            .inside(steps);
        (
            Key::from(format!(
                "portion-{}",
                group_words::feed_group(portion.group).to_lowercase().replace(' ', "-")
            )),
            row,
        )
    };
    let rows: Vec<_> = card.portions.iter().map(row).collect();
    let there = view.flock.stores.level(Item::Grain).map(|there| Mass::from_kilograms(there.as_units()));
    let print = Button::new("print", group_words::PRINT_CARD, Action::Phone(Request::Print));
    let inside = Blocks::new()
        .remark(group_words::bags(card, there, system), [why(group_words::GROUPS, Reason::FeedGroups)])
        .rows("portions", rows)
        .button(print);
    Blocks::new()
        .section("feed-groups", group_words::GROUPS, inside)
        .add("feeding-card", Kind::PaperTable(paper(view, card, from, system)))
}

/// The card for the feed store: each day on which anything changes, what one ewe gets, and the trough of each group.
fn paper(view: &View, card: &FeedingCard, from: NaiveDate, system: System) -> PaperTable {
    let mut days: Vec<i64> =
        card.portions.iter().flat_map(|portion| portion.steps.all()).map(|(day, _)| day).collect();
    days.sort_unstable();
    days.dedup();
    days.retain(|day| *day < i64::from(card.days));
    let heads = std::iter::once(group_words::FROM_DAY.to_owned());
    let heads = heads.chain(card.portions.iter().map(group_words::portion_head)).collect();
    let row = |day: &i64| {
        let cells = card.portions.iter().map(|portion| group_words::cell(portion, *day, system));
        std::iter::once(short_date(from + TimeDelta::days(*day))).chain(cells).collect()
    };
    PaperTable {
        head: group_words::card_head(&view.settings().farm_name, &date(view.now)),
        heads,
        rows: days.iter().map(row).collect(),
        on_screen: false,
    }
}
