//! How the season's lambs grew by class, and the ewes that meet the farm's own marks.

use yeanling_core::book::EweId;
use yeanling_core::seasons::{
    ClassGain, KeepMark, Record, Season, by_dam_age, by_litter, grown, marked, usual_age,
};
use yeanling_core::settings::CullRules;
use yeanling_core::units::System;
use yeanling_words::{animals, cull_rules, settings, weighing as words, year};

use crate::block::{LedgerRow, Row};
use crate::page::{Blocks, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, SettingsPart, State};

/// The mean gains by litter and by the age of the dam.
pub(super) fn gains(view: &View, season: &Season) -> Blocks {
    let to = usual_age(view.flock, season, view.now);
    let (all, system) = (grown(view.flock, season, to, view.now), view.system());
    let litters = by_litter(&all).into_iter();
    let litters = litters.map(|(class, gained)| gain(&words::litter(class), gained, system));
    let dams = by_dam_age(&all).into_iter();
    let dams = dams.map(|(age, gained)| gain(words::dam_age(age), gained, system));
    let litters = super::ledger("gain-litter", words::BY_LITTER, litters.collect());
    let dams = super::ledger("gain-dam", words::BY_DAM, dams.collect());
    let litters = if litters.is_empty() {
        litters
    } else {
        litters.remark(words::gain_to(to), [why(words::GROWN, Reason::Grown)])
    };
    Blocks::new().section("by-litter", words::BY_LITTER, litters).section("by-dam", words::BY_DAM, dams)
}

fn gain(name: &str, gained: ClassGain, system: System) -> LedgerRow {
    super::row(name, year::bold(&words::gain(gained.grams_a_day, system)), words::lambs(gained))
}

/// The ewes that meet a mark of the farm.
pub(super) fn look_again(view: &View) -> Blocks {
    let shown = marked(view.flock, view.now);
    let inside = if view.settings().cull_rules == CullRules::default() {
        let set =
            Button::new("practice", settings::TITLE, Action::Go(Screen::SettingsOf(SettingsPart::Care)));
        Blocks::new().text(cull_rules::NO_MARKS).button(set)
    } else if shown.is_empty() {
        Blocks::new().text(cull_rules::NONE)
    } else {
        Blocks::new().rows("marked", shown.into_iter().map(|one| row(view, one)))
    };
    Blocks::new().section("look-again", cull_rules::LOOK_AGAIN, inside)
}

fn row(view: &View, (ewe, record, marks): (EweId, Record, Vec<KeepMark>)) -> (Key, Row) {
    let lines = cull_rules::record(&record, view.system());
    let row = Row::new(animals::ewe_of(view.flock, ewe))
        .text(lines.into_iter().next().unwrap_or_default())
        .says(State::Coming, cull_rules::marks(&marks, view.system()))
        .to(Screen::Ewe(ewe));
    (format!("marked-{ewe}").into(), row)
}
