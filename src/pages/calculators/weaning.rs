//! Whether a lamb can be weaned, from its age, its weights and what it eats, by any of the rules.

use yeanling_core::reckon::weaning::{self, RULES};
use yeanling_core::units::{Mass, TimeDelta};
use yeanling_words::{calculators as words, errors, settings, weaning as said};

use super::bottle::{days_field, read_days, read_weight};
use super::typed::{Read, good, wrong};
use super::{BIRTH_WEIGHT, TODAY, choices, weight_field, weight_unit};
use crate::block::Check;
use crate::draft::Fields;
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Kind, Reason, Text};

/// The rule, while it is another than the farm's.
const RULE: &str = "figures-weaning-rule";
/// Whether it eats solids; nobody knows at first.
const EATS: &str = "figures-eats";
const EATEN: [(Option<bool>, &str); 3] =
    [(Some(true), said::EATS), (Some(false), said::EATS_NOT), (None, said::EATS_UNKNOWN)];

/// Returns weaning by a rule.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let unit = weight_unit(view, fields);
    let weight = |key, within: fn(Mass) -> Result<Mass, _>| -> Read<Mass> {
        let read = read_weight(fields, key, unit)?;
        read.map(within).transpose().map_err(|wrong| errors::weight(&wrong, unit))
    };
    let born = weight(BIRTH_WEIGHT, |weight| Mass::AT_BIRTH.check(weight));
    let today = weight(TODAY, |weight| weaning::WEIGHT.check(weight));
    let days = read_days(fields);
    let (eats, _) = fields.pick(EATS, &EATEN, EATEN[2]);
    let rule = fields.pick(RULE, &RULES, view.settings().weaning_rule);
    let answer = good(&days).filter(|_| born.is_ok() && today.is_ok()).and_then(|days| {
        let age = TimeDelta::days(i64::from(days));
        let lamb = weaning::Lamb { age, weight: good(&today), birth_weight: good(&born), eats_solids: eats };
        weaning::wean(lamb, rule).ok()
    });
    let eaten = choices(EATS, said::EATS_ASK, EATEN.into_iter().enumerate(), |(one, name)| {
        (one == eats, name.to_owned(), "")
    });
    let rules = choices(RULE, said::RULE, RULES.into_iter().enumerate(), |one| {
        let (name, note) = settings::weaning_rule(one);
        (one == rule, name.to_owned(), note)
    });
    let mut blocks = Blocks::new()
        .field(super::DAYS, days_field(fields, wrong(&days)))
        .field(BIRTH_WEIGHT, weight_field(view, fields, BIRTH_WEIGHT, words::BIRTH_WEIGHT, wrong(&born)))
        .field(TODAY, weight_field(view, fields, TODAY, words::TODAY, wrong(&today)))
        .choices(EATS, eaten.labelled());
    if days == Ok(None) {
        blocks = blocks.small(said::TYPE_DAYS);
    }
    if let Some(answer) = answer {
        let checks = said::checks(&answer, view.system()).into_iter();
        let checks = checks.map(|(met, text)| Check { met, text: text.into() }).collect();
        let reason = Reason::Of(words::WEANING, Box::new(Reason::Weaning(Box::new(answer.clone()))));
        blocks = blocks
            .remark(Text::strong(&said::verdict(&answer)), [why(words::WEANING, reason)])
            .add("", Kind::Checks(checks));
    }
    blocks.choices(RULE, rules.labelled().stacked())
}
