//! The farm's choices about milk and cold: weaning, powder, the freezer, the chill limit; each by its source's name.

use yeanling_core::reckon::{powder, weaning};
use yeanling_core::settings::{ChillLimit, Choice, FarmSettings, FreezerLife, USUAL_POWDER_RATE};
use yeanling_core::units::Strength;
use yeanling_words::{errors, settings as words};

use super::rule;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect};

const RATE: &str = "practice-rate";

const LIVES: [FreezerLife; 3] = [FreezerLife::SixMonths, FreezerLife::OneYear, FreezerLife::TwoYears];
const LIMITS: [ChillLimit; 2] = [ChillLimit::Victoria1000, ChillLimit::Murdoch1100];

/// Returns the choices about milk.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let of = view.settings();
    let weaning = weaning::RULES.map(|rule| (Choice::WeaningRule(rule), words::weaning_rule(rule)));
    let powders = powder::RULES.map(|rule| (Choice::PowderRule(rule), words::powder_rule(rule)));
    let lives = LIVES.map(|life| (Choice::FreezerLife(life), words::freezer_life(life)));
    rule("weaning", words::WEANING, weaning, &Choice::WeaningRule(of.weaning_rule))
        .then(rate(view, fields))
        .then(rule("powder", words::POWDER, powders, &Choice::PowderRule(of.powder_rule)))
        .then(rule("freezer", words::FREEZER, lives, &Choice::FreezerLife(of.freezer_life)))
}

/// Returns over which chill index lambs are at risk.
pub(super) fn chill(of: &FarmSettings) -> Blocks {
    let limits = LIMITS.map(|limit| (Choice::ChillLimit(limit), words::chill_limit(limit)));
    rule("chill", words::CHILL, limits, &Choice::ChillLimit(of.chill_limit))
}

/// The strength on the powder's label; what is wrong stays as it was typed.
fn rate(view: &View, fields: &Fields) -> Blocks {
    let known = words::rate_number(view.settings().powder_rate);
    let typed = fields.text(RATE, &known);
    let is_changed = typed.trim() != known;
    let field = Field::new(words::POWDER_RATE_LABEL, FieldKind::Decimal, typed)
        .hint(words::powder_rate_hint(USUAL_POWDER_RATE, view.system()))
        .error(fields.error(RATE))
        .unit(words::RATE_UNIT);
    let save = Action::Does(Does::FarmSettings(super::Does::SaveRate));
    let inside = Blocks::new().field(RATE, field);
    let inside = if is_changed { inside.button(Button::new("save", words::SAVE_RATE, save)) } else { inside };
    Blocks::new().section("strength", words::POWDER_RATE, inside)
}

/// Saves the strength.
pub(super) fn save_rate(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(typed) = draft.fields.typed(RATE) else { return Vec::new() };
    let rate = Strength::parse(typed)
        .map_err(|wrong| errors::typed(&wrong, errors::Field::PowderRate, view.system()))
        .and_then(|rate| Strength::ON_A_LABEL.check(rate).map_err(|wrong| errors::powder_rate(&wrong)));
    match rate {
        Err(wrong) => draft.say_wrong(RATE, wrong),
        Ok(rate) => super::choose(view, draft, Choice::PowderRate(rate), &[RATE.into()]),
    }
}
