//! What every quantity has in common: order, JSON as a plain number of its SI unit, and a gate against nonsense.

/// Gives a newtype over `f64` its order and its JSON form, refusing a number outside `$least..=$most` when read.
///
/// The span is what can be written in a book at all, far wider than any advice; advice has its own `Bounds`.
macro_rules! quantity {
    ($name:ident, $unit:literal, $least:literal, $most:literal) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_f64(self.0)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let number = f64::deserialize(deserializer)?;
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
