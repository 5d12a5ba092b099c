//! What a scouring lamb drinks beside its milk, from its weight today and how dry it is; nothing while it may not swallow.

use yeanling_core::reckon::illness::fluids::{self, Dry, Fluids, NoFluids};
use yeanling_core::units::{Mass, System};
use yeanling_words::common::volume_at_most_number;
use yeanling_words::common::volume_unit;
use yeanling_words::{calculators as said, dry as words, errors};

use super::answer::{answer, figure, head, in_both, other};
use super::bottle::read_weight;
use super::typed::{good, wrong};
use super::{TODAY, choices, weight_field, weight_unit};
use crate::block::{Choice, Choices, Shape};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Reason, Screen};

/// How dry it is, once that was said.
const DRY: &str = "calculators-dry";
/// Whether it may be given by mouth, once that was said.
const BY_MOUTH: &str = "calculators-by-mouth";

/// Returns the fluids of a scouring lamb.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let weight = read_weight(fields, TODAY, weight_unit(view, fields)).and_then(|weight| {
        let within = |weight| Mass::ON_THE_BOTTLE.check(weight);
        weight.map(within).transpose().map_err(|error| errors::weight(&error, view.system()))
    });
    let dry = fields.chosen(DRY).and_then(|place| Dry::ALL.get(place)).copied();
    let by_mouth = fields.chosen(BY_MOUTH).map(|place| place == 0);
    let dries = choices(DRY, words::HOW_DRY, Dry::ALL.into_iter().enumerate(), |one| {
        let (name, note) = words::dry(one);
        (Some(one) == dry, name.to_owned(), note)
    });
    let options = [words::YES, words::NO].into_iter().enumerate();
    let options =
        options.map(|(place, name)| Choice::new(name, Action::Choose(BY_MOUTH.into(), place))).collect();
    let asked = Choices::new(words::ALL_FOUR, options, fields.chosen(BY_MOUTH));
    let blocks = Blocks::new()
        .field(TODAY, weight_field(view, fields, TODAY, said::TODAY, wrong(&weight)))
        .choices(DRY, dries.labelled().stacked())
        .text(words::BY_MOUTH)
        .choices(BY_MOUTH, asked.labelled());
    let blocks = match dry {
        Some(dry) => blocks.lead(words::urgency(dry)),
        None => blocks,
    };
    let told = match (dry, by_mouth, good(&weight)) {
        (Some(dry), by_mouth, weight) if by_mouth == Some(false) || dry == Dry::Deep || weight.is_some() => {
            drinks(view, dry, by_mouth, weight)
        }
        _ => Blocks::new().small(words::TYPE),
    };
    let read = Screen::Ailment(words::SCOURS);
    blocks.then(told).button(Button::new("scours", said::READ_MORE, Action::Go(read)))
}

/// Returns what it drinks, or why nothing.
fn drinks(view: &View, dry: Dry, by_mouth: Option<bool>, weight: Option<Mass>) -> Blocks {
    let system = view.system();
    if by_mouth == Some(false) {
        return Blocks::new().caution([words::no_fluids(&NoFluids::NothingByMouth, system)]);
    }
    if dry == Dry::Deep {
        return Blocks::new()
            .caution([words::no_fluids(&NoFluids::NeedsAVein { percent: dry.percent() }, system)]);
    }
    let (Some(by_mouth), Some(weight)) = (by_mouth, weight) else {
        return Blocks::new().small(words::TYPE);
    };
    match fluids::fluids(weight, dry.percent(), by_mouth) {
        Ok(fluids) => volumes(fluids, system),
        Err(error) => Blocks::new().caution([words::no_fluids(&error, system)]),
    }
}

fn volumes(fluids: Fluids, system: System) -> Blocks {
    let why = || Some(Reason::Fluids(fluids));
    let most = figure(
        volume_at_most_number(fluids.at_once, system),
        volume_unit(system),
        words::at_once_also(fluids.at_once, other(system)),
    );
    let others = Blocks::new().then([
        answer("lost", words::LOST, in_both(fluids.deficit, system), why()),
        answer("upkeep", words::UPKEEP, in_both(fluids.upkeep, system), why()),
        answer("at-once", words::AT_ONCE, most, why()),
    ]);
    Blocks::new()
        .then([answer("day", words::DAY, head(in_both(fluids.day, system)), why())])
        .text(words::how_often())
        .group("answers", Shape::Answers, others)
        .text(words::BESIDE)
}
