//! A number and a mass as they are typed, read while they are: what is wrong stands at the field.

use yeanling_core::units::{Mass, System, TypedError, parse_number};
use yeanling_words::common::number;
use yeanling_words::errors;

use crate::block::{Field, FieldKind};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::{Key, weight};

/// A number that was typed.
pub(crate) struct Number {
    key: Key,
    text: String,
    wrong: String,
    /// The number; nothing typed, or something wrong, is none.
    pub(crate) is: Option<f64>,
}

impl Number {
    /// Reads what was typed under a key, or what stood there.
    pub(crate) fn of(fields: &Fields, key: impl Into<Key>, stood: &str) -> Self {
        let key = key.into();
        let text = fields.text(&key, stood);
        let (is, wrong) = read(parse_number(&text), errors::Field::Pieces, System::Metric);
        Self { key, text, wrong, is }
    }

    /// Returns the number as a whole count.
    pub(crate) fn whole(&self) -> Option<u32> {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "rounded and within")]
        self.is.map(|is| if (0.0..=1e9).contains(&is) { is.round() as u32 } else { 0 })
    }

    /// Adds its field.
    pub(crate) fn field(&self, blocks: Blocks, label: &str, unit: &str, hint: &str) -> Blocks {
        let field =
            Field::new(label, FieldKind::Decimal, &self.text).error(&self.wrong).unit(unit).hint(hint);
        blocks.field(self.key.clone(), field)
    }
}

/// A mass that was typed, in the unit beside it.
pub(crate) struct Weight {
    key: Key,
    field: Field,
    /// The mass; nothing typed, or something wrong, is none.
    pub(crate) is: Option<Mass>,
}

impl Weight {
    /// Reads what was typed under a key, or what stood there: so many kilograms, and none if that is nought.
    pub(crate) fn of(fields: &Fields, key: impl Into<Key>, kilograms: f64, system: System) -> Self {
        let key = key.into();
        let shown = match system {
            System::Metric => kilograms,
            System::Us => Mass::from_kilograms(kilograms).as_pounds(),
        };
        let stood = if kilograms > 0.0 { number(shown, 0) } else { String::new() };
        let (text, unit) = (fields.text(&key, &stood), weight::unit(fields, &key, system));
        let (is, wrong) = read(Mass::parse(&text, unit), errors::Field::Mass, unit);
        let units = weight::units(fields, &key, system);
        Self { key, field: Field::new("", FieldKind::Decimal, text).error(wrong).units(units), is }
    }

    /// Adds its field.
    pub(crate) fn field(self, blocks: Blocks, label: &str) -> Blocks {
        blocks.field(self.key, Field { label: label.to_owned(), ..self.field })
    }
}

/// What was read and what is wrong; nothing typed is neither.
fn read<T>(read: Result<T, TypedError>, field: errors::Field, unit: System) -> (Option<T>, String) {
    match read {
        Ok(is) => (Some(is), String::new()),
        Err(TypedError::Empty) => (None, String::new()),
        Err(wrong) => (None, errors::typed(&wrong, field, unit)),
    }
}
