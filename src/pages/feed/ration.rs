//! A ration of up to five feeds against the table.

use yeanling_core::reckon::season::dates::Crop;
use yeanling_core::reckon::season::ration::{self, Checked, Held};
use yeanling_core::reckon::season::requirement::{FeedStage, need};
use yeanling_core::units::System;
use yeanling_words::common::number;
use yeanling_words::feed as words;

use super::typed::{Number, Weight};
use crate::block::{Choice, Choices, Kind, Ledger, LedgerRow};
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Text};

/// Her time of the year.
const STAGE: &str = "ration-stage";
/// How many feeds.
const MANY: &str = "ration-feeds";
/// The most feeds of a ration.
const MOST_FEEDS: usize = 5;

/// One feed of a ration as it is typed.
struct TypedFeed {
    place: usize,
    fed: Weight,
    dry_matter: Number,
    energy: Number,
    protein: Number,
    calcium: Number,
    copper: Number,
    selenium: Number,
}

/// Returns the part of the screen.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let system = view.system();
    let stage = fields.pick(STAGE, &FeedStage::ALL, FeedStage::LastFourWeeks(Crop::Usual));
    let weight = super::ewe_weight(view, fields, "ration-ewe");
    let many = fields.chosen(MANY).unwrap_or(1);
    let feeds: Vec<TypedFeed> = (0..many).map(|place| TypedFeed::of(fields, place, system)).collect();
    let typed: Option<Vec<ration::Feed>> = feeds.iter().map(|feed| feed.read(system)).collect();
    let answer = match (weight.is, typed) {
        (Some(weight), Some(typed)) => match need(stage, weight) {
            Ok(need) => match ration::check(&typed, need) {
                Ok(checked) => held(&checked, system),
                Err(error) => Blocks::new().failed(words::refused(&error, system)),
            },
            Err(error) => Blocks::new().failed(words::outside(&error, system)),
        },
        _ => Blocks::new().small(words::TYPE_RATION),
    };
    let blocks = Blocks::new().small(words::ANALYSIS).choices(STAGE, stages(stage));
    let blocks = weight.field(blocks, words::EWE_WEIGHT).small(super::whose_weight(view));
    feeds
        .into_iter()
        .fold(blocks, |blocks, feed| feed.section(blocks, system))
        .buttons(2, more_or_less(many))
        .then(answer)
        .caution(words::CAUTION)
}

fn stages(stage: FeedStage) -> Choices {
    let options = FeedStage::ALL.iter().enumerate();
    let options =
        options.map(|(place, one)| Choice::new(words::stage(*one), Action::Choose(STAGE.into(), place)));
    let chosen = FeedStage::ALL.iter().position(|one| *one == stage);
    Choices::new(words::STAGE, options.collect(), chosen).snug().labelled()
}

fn more_or_less(many: usize) -> impl Iterator<Item = Button> {
    let of = |many| Action::Choose(MANY.into(), many);
    let more = (many < MOST_FEEDS).then(|| Button::new("another", words::ANOTHER, of(many + 1)));
    let less = (many > 1).then(|| Button::new("one-less", words::ONE_LESS, of(many - 1)).quiet());
    more.into_iter().chain(less)
}

impl TypedFeed {
    fn of(fields: &Fields, place: usize, system: System) -> Self {
        let key = |noun: &str| Key::from(format!("ration-{place}-{noun}"));
        let typed = |noun| Number::of(fields, key(noun), "");
        Self {
            place,
            fed: Weight::of(fields, key("fed"), 0.0, system),
            dry_matter: typed("dry-matter"),
            energy: typed("energy"),
            protein: typed("protein"),
            calcium: typed("calcium"),
            copper: typed("copper"),
            selenium: typed("selenium"),
        }
    }

    /// Returns the feed once all but copper and selenium are typed.
    fn read(&self, system: System) -> Option<ration::Feed> {
        Some(ration::Feed {
            fed: self.fed.is?,
            dry_matter: self.dry_matter.is? / 100.0,
            energy: words::energy(self.energy.is?, system),
            protein: self.protein.is? / 100.0,
            calcium: self.calcium.is? / 100.0,
            copper_ppm: self.copper.is,
            selenium_ppm: self.selenium.is,
        })
    }

    fn section(self, blocks: Blocks, system: System) -> Blocks {
        let inside = self.fed.field(Blocks::new(), words::FED);
        let inside = self.dry_matter.field(inside, words::DRY_MATTER, "%", "");
        let inside = self.energy.field(inside, words::ENERGY, words::energy_unit(system), "");
        let inside = self.protein.field(inside, words::PROTEIN, "%", "");
        let inside = self.calcium.field(inside, words::CALCIUM, "%", "");
        let inside = self.copper.field(inside, words::COPPER, "ppm", "");
        let inside = self.selenium.field(inside, words::SELENIUM, "ppm", "");
        blocks.section(format!("ration-{}", self.place), words::feed(self.place), inside)
    }
}

/// What a ration comes to.
fn held(checked: &Checked, system: System) -> Blocks {
    let row = |held: Held| LedgerRow {
        name: words::nutrient(held.nutrient).to_owned(),
        note: words::held(held, system),
        value: Text::strong(&format!("{}%", number(held.share() * 100.0, 0))),
        other: Text::default(),
    };
    let rows = checked.held.into_iter().map(row).collect();
    let ledger = Ledger { label: words::HELD.to_owned(), heads: <(String, String)>::default(), rows };
    let inside = Blocks::new()
        .remark(words::limiting(checked), [why(words::HELD, Reason::Ration)])
        .add("against", Kind::Ledger(ledger));
    let inside = inside.text(words::eaten(checked, system));
    let inside = if checked.leaves { inside.text(words::LEAVES) } else { inside };
    let minerals = words::minerals(&checked.minerals).into_iter();
    let inside = minerals.fold(inside, |inside, text| inside.remark(text, []));
    Blocks::new().section("ration-held", words::HELD, inside)
}
