//! What every quantity has in common: order, JSON as a plain number of its SI unit, and a gate against nonsense.
//!
//! The number is written and read by the standard library, which gives back every number exactly as it was written;
//! what serde_json brings for that weighs as much as a calculation and its screen.
//!
//! A quantity is written and read by the standard library (`units/quantity.rs`): serde_json alone gives back about
//! eight numbers in nine as they were written, and an entry would clash with itself; its `float_roundtrip` would cure
//! that for the weight of a screen.

use serde::{Deserialize, Deserializer, Serialize, Serializer, de, ser};
use serde_json::value::RawValue;

/// Writes a number in the fewest digits that read back as the same number.
pub(super) fn write<S: Serializer>(number: f64, serializer: S) -> Result<S::Ok, S::Error> {
    RawValue::from_string(format!("{number:?}")).map_err(ser::Error::custom)?.serialize(serializer)
}

/// Reads a number of JSON.
pub(super) fn read<'de, D: Deserializer<'de>>(deserializer: D) -> Result<f64, D::Error> {
    Box::<RawValue>::deserialize(deserializer)?.get().parse().map_err(de::Error::custom)
}

/// Gives a newtype over `f64` its order and its JSON form, refusing a number outside `$least..=$most` when read.
///
/// The span is what can be written in a book at all, far wider than any advice; advice has its own `Bounds`.
macro_rules! quantity {
    ($name:ident, $unit:literal, $least:literal, $most:literal) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                super::quantity::write(self.0, serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let number = super::quantity::read(deserializer)?;
                if (f64::from($least)..=f64::from($most)).contains(&number) {
                    Ok(Self(number))
                } else {
                    Err(serde::de::Error::custom(format_args!(
                        "{number} {} is not between {} and {} {}",
                        $unit, $least, $most, $unit
                    )))
                }
            }
        }
    };
}

pub(super) use quantity;
