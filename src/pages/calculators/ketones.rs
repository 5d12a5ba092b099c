//! What a reading of a ewe's ketones means, and how far sources differ.

use yeanling_core::reckon::illness::{Ailment, ewe, ketones};
use yeanling_core::units::Ketones;
use yeanling_words::illness::KETONES as LABEL;
use yeanling_words::{calculators as said, dry as words, errors};

use super::typed::{field, good, read};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Reason, Screen, Text};

/// The reading as typed.
const KETONES: &str = "calculators-ketones";

/// Returns the ketones of a ewe.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let reading = read(fields, KETONES, view.system(), |text, system| {
        let reading =
            Ketones::parse(text).map_err(|wrong| errors::typed(&wrong, errors::Field::Ketones, system))?;
        Ketones::ON_A_METER.check(reading).map_err(|wrong| words::not_ketones(&wrong))
    });
    let blocks = Blocks::new().field(KETONES, field(fields, KETONES, LABEL, &reading, "mmol/L"));
    let means = good(&reading).and_then(|reading| Some((reading, ketones::band(reading).ok()?)));
    let blocks = match means {
        Some((reading, band)) => {
            blocks.remark(Text::strong(&words::band(band)), [Reason::Ketones(reading).button(view)])
        }
        None => blocks.small(words::TYPE_KETONES),
    };
    let toxemia = Screen::Ailment(Ailment::Ewe(ewe::Row::Toxemia));
    blocks.text(words::GO_BY_HER).button(Button::new("toxemia", said::READ_MORE, Action::Go(toxemia)))
}
