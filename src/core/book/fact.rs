//! Reads a fact from its JSON: what serde_json would do, in a third of the bytes.
//!
//! Read straight from the text, each of a fact's many forms is compiled with the whole parser in it. Here an object is
//! first parted into its fields, once for all forms, and only their values are left to serde_json.
//!
//! A fact is read by `book/fact.rs`, which parts its object first: serde_json's own way costs three times the bytes.

use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, Error as _, IntoDeserializer, MapAccess, VariantAccess,
    Visitor,
};
use serde::{Deserialize, forward_to_deserialize_any};
use serde_json::{Error, value::RawValue};

/// Reads a `T` from a whole JSON value.
///
/// # Errors
/// The text is not JSON, or not of that form.
pub(super) fn from_json<'de, T: Deserialize<'de>>(json: &'de str) -> Result<T, Error> {
    T::deserialize(Json { text: json, room: DEEPEST })
}

/// How deep objects may stand in each other, so that no file can exhaust the stack; as in serde_json.
const DEEPEST: u8 = 127;

/// The text of one JSON value.
#[derive(Clone, Copy)]
struct Json<'de> {
    text: &'de str,
    room: u8,
}

impl<'de> Json<'de> {
    fn whole<T: Deserialize<'de>>(self) -> Result<T, Error> {
        serde_json::from_str(self.text)
    }
}

/// Gives a value to serde_json as it is.
macro_rules! leave_to_serde_json {
    ($($method:ident)+) => {$(
        fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Error> {
            serde_json::Deserializer::from_str(self.text).$method(visitor)
        }
    )+};
}

impl<'de> Deserializer<'de> for Json<'de> {
    type Error = Error;

    leave_to_serde_json! { deserialize_any deserialize_bool deserialize_u8 deserialize_u16 deserialize_str deserialize_string }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Error> {
        if self.text == "null" { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        name: &'static str,
        visitor: V,
    ) -> Result<V::Value, Error> {
        serde_json::Deserializer::from_str(self.text).deserialize_newtype_struct(name, visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Error> {
        visitor.visit_map(Fields::of(self)?)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Error> {
        visitor.visit_enum(self)
    }

    forward_to_deserialize_any! {
        i8 i16 i32 i64 i128 u32 u64 u128 f32 f64 char bytes byte_buf unit unit_struct seq tuple
        tuple_struct map identifier ignored_any
    }
}

/// A variant is its name alone, or an object whose one field has its name.
impl<'de> EnumAccess<'de> for Json<'de> {
    type Error = Error;
    type Variant = Content<'de>;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Result<(V::Value, Content<'de>), Error> {
        let (name, content) = variant(self)?;
        Ok((seed.deserialize(name.into_deserializer())?, content))
    }
}

fn variant(json: Json<'_>) -> Result<(String, Content<'_>), Error> {
    if !json.text.starts_with('{') {
        return Ok((json.whole()?, Content(None)));
    }
    let mut fields = Fields::of(json)?;
    match (fields.next(), fields.rest.is_empty()) {
        (Some(name), true) => Ok((name, Content(Some(fields.value)))),
        (None | Some(_), _) => Err(Error::custom("expected one fact")),
    }
}

/// What a variant holds, if anything.
struct Content<'de>(Option<Json<'de>>);

impl<'de> Content<'de> {
    fn json(self) -> Result<Json<'de>, Error> {
        self.0.ok_or_else(|| Error::custom("expected the fact's content"))
    }
}

impl<'de> VariantAccess<'de> for Content<'de> {
    type Error = Error;

    fn unit_variant(self) -> Result<(), Error> {
        self.0.map_or(Ok(()), Json::whole)
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Error> {
        seed.deserialize(self.json()?)
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Error> {
        self.json()?.deserialize_any(visitor)
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Error> {
        visitor.visit_map(Fields::of(self.json()?)?)
    }
}

/// The fields of an object that are still to be read, the last first, and the value of the one that was read last.
struct Fields<'de> {
    rest: Vec<(String, &'de str)>,
    value: Json<'de>,
}

impl<'de> Fields<'de> {
    fn of(json: Json<'de>) -> Result<Self, Error> {
        let room = json.room.checked_sub(1).ok_or_else(|| Error::custom("too deep"))?;
        let Parted(mut rest) = json.whole()?;
        rest.reverse();
        Ok(Self { rest, value: Json { text: "", room } })
    }

    fn next(&mut self) -> Option<String> {
        let (name, value) = self.rest.pop()?;
        self.value.text = value;
        Some(name)
    }
}

impl<'de> MapAccess<'de> for Fields<'de> {
    type Error = Error;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Error> {
        match self.next() {
            Some(name) => seed.deserialize(name.into_deserializer()).map(Some),
            None => Ok(None),
        }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Error> {
        seed.deserialize(self.value)
    }
}

/// An object parted into its fields, in their order; the same name twice stays twice.
struct Parted<'de>(Vec<(String, &'de str)>);

impl<'de> Deserialize<'de> for Parted<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Parts;

        impl<'de> Visitor<'de> for Parts {
            type Value = Parted<'de>;

            fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str("an object")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Parted<'de>, A::Error> {
                let mut parts = Vec::new();
                while let Some((name, value)) = map.next_entry::<String, &'de RawValue>()? {
                    parts.push((name, value.get()));
                }
                Ok(Parted(parts))
            }
        }

        deserializer.deserialize_map(Parts)
    }
}
