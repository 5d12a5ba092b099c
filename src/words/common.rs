//! Quantities and times as people read them, in the farm's own units.

use yeanling_core::units::{Length, Mass, Rain, Speed, System, Temperature, TimeDelta, Volume};

pub use super::time::{
    clock, clock_figures, date, day_and_clock, field_time, long_date, read_field_clock, read_field_day,
    read_field_time, short_date, time_of_day,
};

/// Returns what a person typed, to stand in a line in which asterisks make words strong: one of theirs is printed, and means
/// nothing.
pub fn typed(text: &str) -> String {
    text.replace('*', "∗")
}

/// Returns a text that begins with a capital letter.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Returns a mass such as "3.9 kg", "4.25 kg" or "8.6 lb".
pub fn mass(mass: Mass, system: System) -> String {
    match system {
        System::Metric => format!("{} kg", one_or_two_places(mass.as_kilograms())),
        System::Us => format!("{} lb", tenths(mass.as_pounds())),
    }
}

/// Returns a number with one decimal place; what rounds to nothing has no sign: "0.0".
fn tenths(number: f64) -> String {
    let text = format!("{number:.1}");
    if text == "-0.0" { "0.0".to_owned() } else { text }
}

/// Returns a volume for a weight, such as "50 ml/kg" or "0.75 fl oz/lb (50 ml/kg)"; rounded down to a twentieth.
pub fn per_weight(milliliters_a_kilogram: f64, system: System) -> String {
    let metric = format!("{} ml/kg", whole(milliliters_a_kilogram));
    match system {
        System::Metric => metric,
        System::Us => {
            let of_a_pound = milliliters_a_kilogram * Mass::from_pounds(1.0).as_kilograms();
            let ounces = Volume::from_milliliters(of_a_pound).as_fluid_ounces();
            format!("{} fl oz/lb ({metric})", number((ounces * 20.0).floor() / 20.0, 2))
        }
    }
}

/// Returns a strength of milk powder, such as "200 g/L" or "26.7 oz/gal (200 g/L)".
pub fn strength(grams_a_liter: f64, system: System) -> String {
    /// Liters in a US liquid gallon: 231 cubic inches.
    const LITERS_IN_A_GALLON: f64 = 3.785_411_784;
    let metric = format!("{} g/L", number(grams_a_liter, 1));
    match system {
        System::Metric => metric,
        System::Us => {
            let of_a_gallon = Mass::from_kilograms(grams_a_liter / 1000.0 * LITERS_IN_A_GALLON);
            format!("{} oz/gal ({metric})", number(of_a_gallon.as_pounds() * 16.0, 1))
        }
    }
}

/// Returns a volume such as "195 ml" or "6.6 fl oz"; milliliters to the nearest 5 above 20, else to the nearest 1.
pub fn volume(volume: Volume, system: System) -> String {
    match system {
        System::Metric => {
            let exact = volume.as_milliliters();
            let read = if exact > 20.0 { volume.to_nearest_five().as_milliliters() } else { exact };
            format!("{} ml", whole(read))
        }
        System::Us => format!("{} fl oz", tenths(volume.as_fluid_ounces())),
    }
}

/// Returns a volume without its unit, for a figure beside one that has it: "195", "6.6".
pub fn volume_number(milk: Volume, system: System) -> String {
    let text = volume(milk, system);
    text.split(' ').next().unwrap_or_default().to_owned()
}

/// Returns the unit behind [`volume_number`].
pub const fn volume_unit(system: System) -> &'static str {
    match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    }
}

/// Returns the unit of an animal's weight.
pub const fn mass_unit(system: System) -> &'static str {
    match system {
        System::Metric => "kg",
        System::Us => "lb",
    }
}

/// Returns the unit of a temperature.
pub const fn temperature_unit(system: System) -> &'static str {
    match system {
        System::Metric => "°C",
        System::Us => "°F",
    }
}

/// Returns a volume in the farm's units with the other in brackets: "195 ml (6.6 fl oz)".
pub fn volume_both(milk: Volume, system: System) -> String {
    let (first, second) = match system {
        System::Metric => (System::Metric, System::Us),
        System::Us => (System::Us, System::Metric),
    };
    format!("{} ({})", volume(milk, first), volume(milk, second))
}

/// Returns the most that may be given, rounded down so that what is read is never too much: "230 ml", "7.9 fl oz".
pub fn volume_at_most(volume: Volume, system: System) -> String {
    format!("{} {}", volume_at_most_number(volume, system), volume_unit(system))
}

/// Returns the same without its unit, for a figure beside one that has it: "230", "7.9".
pub fn volume_at_most_number(volume: Volume, system: System) -> String {
    let down = |number: f64| (number + 1e-6).floor();
    match system {
        System::Metric => {
            let exact = volume.as_milliliters();
            whole(if exact > 20.0 { down(exact / 5.0) * 5.0 } else { down(exact) })
        }
        System::Us => format!("{:.1}", down(volume.as_fluid_ounces() * 10.0) / 10.0),
    }
}

/// Returns a volume as it was given, not rounded to what a bottle shows: "241 ml", "8.15 fl oz".
pub fn volume_as_given(volume: Volume, system: System) -> String {
    match system {
        System::Metric => format!("{} ml", number(volume.as_milliliters(), 1)),
        System::Us => format!("{} fl oz", number(volume.as_fluid_ounces(), 2)),
    }
}

/// Returns a temperature such as "38.5 °C" or "101.3 °F".
pub fn temperature(temperature: Temperature, system: System) -> String {
    match system {
        System::Metric => format!("{} °C", tenths(temperature.as_celsius())),
        System::Us => format!("{} °F", tenths(temperature.as_fahrenheit())),
    }
}

/// Returns a temperature as a figure: its number and its unit.
pub fn temperature_parts(temperature: Temperature, system: System) -> (String, &'static str) {
    match system {
        System::Metric => (tenths(temperature.as_celsius()), "°C"),
        System::Us => (tenths(temperature.as_fahrenheit()), "°F"),
    }
}

/// Returns a small mass of feed or powder: "250 g" or "8.8 oz"; from a pound on in pounds, "1.3 lb".
pub fn feed_mass(mass: Mass, system: System) -> String {
    match system {
        System::Metric => format!("{} g", whole(mass.as_kilograms() * 1000.0)),
        System::Us if mass.as_pounds() < 1.0 => format!("{} oz", number(mass.as_pounds() * 16.0, 1)),
        System::Us => format!("{} lb", number(mass.as_pounds(), 1)),
    }
}

/// Returns a length such as "1.5 m" or "5 ft".
pub fn length(length: Length, system: System) -> String {
    match system {
        System::Metric => format!("{} m", number(length.as_meters(), 2)),
        System::Us => format!("{} ft", number(length.as_feet(), 1)),
    }
}

/// Returns a temperature in the farm's units with the other in brackets: "38.5 °C (101.3 °F)".
pub fn temperature_both(read: Temperature, system: System) -> String {
    let other = match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    };
    format!("{} ({})", temperature(read, system), temperature(read, other))
}

/// Returns a wind such as "4 m/s" or "9 mph".
pub fn wind(wind: Speed, system: System) -> String {
    match system {
        System::Metric => format!("{} m/s", number(wind.as_meters_per_second(), 1)),
        System::Us => format!("{} mph", number(wind.as_miles_per_hour(), 1)),
    }
}

/// Returns rain such as "10 mm" or "0.39 in".
pub fn rain(rain: Rain, system: System) -> String {
    match system {
        System::Metric => format!("{} mm", number(rain.as_millimeters(), 1)),
        System::Us => format!("{} in", number(rain.as_inches(), 2)),
    }
}

/// Returns a length of time such as "36 min", "1 h 24 min" or "2 days 3 h"; under a minute it is "now".
///
/// It never looks like a clock time. Whether it lies ahead or behind is for the sentence around it to say.
pub fn span(span: TimeDelta) -> String {
    let span = span.abs();
    let (days, hours, minutes) = (span.num_days(), span.num_hours() % 24, span.num_minutes() % 60);
    let day_word = if days == 1 { "day" } else { "days" };
    match (days, hours, minutes) {
        (0, 0, 0) => "now".to_owned(),
        (0, 0, minutes) => format!("{minutes} min"),
        (0, hours, 0) => format!("{hours} h"),
        (0, hours, minutes) => format!("{hours} h {minutes} min"),
        (days, 0, _) => format!("{days} {day_word}"),
        (days, hours, _) => format!("{days} {day_word} {hours} h"),
    }
}

/// Returns a limit that the farm sets in minutes: "45 min", "6 h 30 min".
pub fn minutes(minutes: u16) -> String {
    span(TimeDelta::minutes(i64::from(minutes)))
}

/// Returns a stay that the farm sets in hours: "20 h", "1 day 12 h".
pub fn hours(hours: u16) -> String {
    span(TimeDelta::hours(i64::from(hours)))
}

/// Returns a number with at most this many decimal places and no zeros at its end: "0.5", "12", "8.15".
pub fn number(number: f64, places: usize) -> String {
    let text = format!("{number:.places$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

fn one_or_two_places(kilograms: f64) -> String {
    let text = number(kilograms, 2);
    if text.contains('.') { text } else { format!("{kilograms:.1}") }
}

fn whole(milliliters: f64) -> String {
    number(milliliters, 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ml(milliliters: f64) -> Volume {
        Volume::from_milliliters(milliliters)
    }

    #[track_caller]
    fn check(got: String, expected: &str) {
        assert_eq!(got, expected);
    }

    #[test]
    fn a_mass_is_read_in_the_farms_units() {
        check(mass(Mass::from_kilograms(3.9), System::Metric), "3.9 kg");
        check(mass(Mass::from_kilograms(3.9), System::Us), "8.6 lb");
        check(mass(Mass::from_kilograms(4.0), System::Metric), "4.0 kg");
        check(mass(Mass::from_kilograms(4.25), System::Metric), "4.25 kg");
    }

    #[test]
    fn a_volume_is_rounded_as_a_bottle_is_read() {
        check(volume(ml(195.0), System::Metric), "195 ml");
        check(volume(ml(193.5), System::Metric), "195 ml");
        check(volume(ml(18.4), System::Metric), "18 ml");
        check(volume(ml(0.0), System::Metric), "0 ml");
        check(volume(ml(1000.0), System::Metric), "1000 ml");
        check(volume(ml(195.0), System::Us), "6.6 fl oz");
        check(volume_both(ml(195.0), System::Metric), "195 ml (6.6 fl oz)");
        check(volume_both(ml(195.0), System::Us), "6.6 fl oz (195 ml)");
    }

    #[test]
    fn what_a_button_offers_is_what_it_notes_and_what_is_read_of_it() {
        use yeanling_core::reckon::{cold_lamb, colostrum};
        let weight = |grams: u32| Mass::from_kilograms(f64::from(grams) / 1000.0);
        for grams in (500..12_000).step_by(7) {
            let wanted = cold_lamb::feed(weight(grams)).expect("in bounds");
            for system in [System::Metric, System::Us] {
                let offered = wanted.offered(system);
                let label = volume(offered, system);
                check(
                    volume_as_given(offered, system).replace(' ', ""),
                    &label.replace(".0 ", " ").replace(' ', ""),
                );
                assert_eq!(Volume::parse(&label, system), Ok(offered), "{label} typed is {label} pressed");
                let off = (wanted.as_milliliters() - offered.as_milliliters()).abs();
                let (furthest, more) = match system {
                    System::Metric => (2.5 + 1e-6, 2.5 + 1e-6),
                    System::Us => (2.96, 0.12),
                };
                assert!(off <= furthest, "{label} of {wanted:?}");
                assert!(offered.as_milliliters() <= wanted.as_milliliters() + more, "{label} of {wanted:?}");
                assert_eq!(offered.offered(system), offered, "{label} is offered as it is");
                // Warmed or not, the first feed of a lamb is one number.
                let first = colostrum::target(
                    weight(grams),
                    yeanling_core::settings::DayRule::Ahdb200,
                    yeanling_core::settings::Housing::Outdoors,
                );
                if let Ok(first) = first {
                    check(volume(first.next_feed.offered(system), system), &label);
                }
            }
        }
    }

    #[test]
    fn nothing_has_no_sign() {
        check(temperature(Temperature::from_celsius(-0.04), System::Metric), "0.0 °C");
        check(temperature(Temperature::from_celsius(-17.8), System::Us), "0.0 °F");
        check(temperature(Temperature::from_celsius(-0.06), System::Metric), "-0.1 °C");
    }

    #[test]
    fn a_rate_is_told_in_the_farms_units_and_never_more() {
        check(per_weight(50.0, System::Metric), "50 ml/kg");
        check(per_weight(50.0, System::Us), "0.75 fl oz/lb (50 ml/kg)");
        check(per_weight(200.0, System::Us), "3.05 fl oz/lb (200 ml/kg)");
        check(strength(200.0, System::Metric), "200 g/L");
        check(strength(200.0, System::Us), "26.7 oz/gal (200 g/L)");
        check(feed_mass(Mass::from_kilograms(0.6), System::Us), "1.3 lb");
        check(feed_mass(Mass::from_kilograms(0.25), System::Us), "8.8 oz");
    }

    #[test]
    fn the_most_is_never_rounded_up() {
        check(volume_at_most(ml(234.0), System::Metric), "230 ml");
        check(volume_at_most(ml(60.0 * 4.1), System::Metric), "245 ml");
        check(volume_at_most(ml(240.0), System::Metric), "240 ml");
        check(volume_at_most(ml(234.0), System::Us), "7.9 fl oz");
        check(volume_as_given(ml(241.0), System::Metric), "241 ml");
    }

    #[test]
    fn a_temperature_is_read_in_the_farms_units() {
        check(temperature(Temperature::from_celsius(38.5), System::Metric), "38.5 °C");
        check(temperature(Temperature::from_celsius(38.5), System::Us), "101.3 °F");
    }

    #[test]
    fn a_span_never_looks_like_a_clock() {
        check(span(TimeDelta::seconds(59)), "now");
        check(span(TimeDelta::minutes(36)), "36 min");
        check(span(TimeDelta::minutes(84)), "1 h 24 min");
        check(span(TimeDelta::hours(2)), "2 h");
        check(span(TimeDelta::hours(24)), "1 day");
        check(span(TimeDelta::hours(51)), "2 days 3 h");
        check(span(TimeDelta::minutes(-36)), "36 min");
    }
}
