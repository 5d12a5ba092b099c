//! How the phone's region writes: its clock, its dates, its units, as the browser's own formats have them.

use js_sys::{Array, Date, Intl, Object, Reflect};
use wasm_bindgen::JsValue;
use yeanling_core::units::System;
use yeanling_pages::phone::{Dates, Hours, Region, Way};

use super::window;

/// Returns how this phone's region writes; what the browser does not say is as the app writes by itself.
#[must_use]
pub fn region() -> Region {
    let usual = Region::default();
    // The first format that a browser makes is slow, so one answers both.
    let format = format(&["day", "month", "hour"]);
    let (hours, dates) = (format.as_ref().and_then(hours), format.as_ref().and_then(dates));
    Region {
        units: if is_us() { System::Us } else { usual.units },
        way: Way {
            hours: hours.unwrap_or(usual.way.hours),
            dates: dates.unwrap_or(usual.way.dates),
            ..usual.way
        },
    }
}

/// Says whether the phone is set to the United States, where lambs are weighed in pounds: its first language says so.
#[must_use]
pub fn is_us() -> bool {
    let language = window().navigator().language().unwrap_or_default();
    language.split(['-', '_']).skip(1).any(|part| part.eq_ignore_ascii_case("us"))
}

/// Returns the region's format of these parts of a time.
fn format(parts: &[&str]) -> Option<Intl::DateTimeFormat> {
    let options = Object::new();
    for part in parts {
        Reflect::set(&options, &JsValue::from_str(part), &JsValue::from_str("numeric")).ok()?;
    }
    Some(Intl::DateTimeFormat::new(&Array::new(), &options))
}

fn hours(format: &Intl::DateTimeFormat) -> Option<Hours> {
    let options = format.resolved_options();
    let twelve = Reflect::get(&options, &JsValue::from_str("hour12")).ok()?.as_bool()?;
    Some(if twelve { Hours::Twelve } else { Hours::TwentyFour })
}

/// Whichever of month and day comes first; what is between them are signs.
fn dates(format: &Intl::DateTimeFormat) -> Option<Dates> {
    let parts = format.format_to_parts(&Date::new_0());
    let names =
        parts.iter().filter_map(|part| Reflect::get(&part, &JsValue::from_str("type")).ok()?.as_string());
    names.into_iter().find_map(|name| match name.as_str() {
        "day" => Some(Dates::DayFirst),
        "month" => Some(Dates::MonthFirst),
        _ => None,
    })
}
