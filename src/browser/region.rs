//! The region that the phone is set to, as far as it decides the first units.

use super::window;

/// Says whether the phone is set to the United States, where lambs are weighed in pounds: its first language says so.
#[must_use]
pub fn is_us() -> bool {
    let language = window().navigator().language().unwrap_or_default();
    language.split(['-', '_']).skip(1).any(|part| part.eq_ignore_ascii_case("us"))
}
