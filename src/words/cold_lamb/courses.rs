//! The two courses for a lamb under 37 °C, in full: by its age when the cold spell began, and by nothing that comes after.

/// Heads both.
pub const TITLE: &str = "Under 37 °C (98.6 °F), or a cold mouth";

/// Says which course is whose; it is fixed when the cold spell begins.
pub const WHICH: [&str; 3] = [
    "Go by its age *when it got cold*. That does not change later: do not take a warming lamb out of the box when it turns 5 h old.",
    "Wet with birth fluid *and* a raw, wet cord: treat it as up to 5 h old.",
    "Age not known: treat it as over 5 h old.",
];

/// Heads the first course.
pub const YOUNG_TITLE: &str = "Up to 5 h old";
/// What to do with a lamb of up to five hours.
pub const YOUNG: [&str; 6] = [
    "*Dry it and warm it now*, swallowing or not. Only feeding waits.",
    "Warm air of at most 40 °C (104 °F), or a lamp it cannot touch.",
    "No glucose. No milk and no colostrum below 37 °C (98.6 °F).",
    "Does not swallow: nothing by mouth, and call your vet while it warms.",
    "At 37 °C (98.6 °F), head up and swallowing: feed it, then back to its ewe.",
    LOOKS,
];

/// Heads the second course.
pub const OLDER_TITLE: &str = "Over 5 h old, or age not known";
/// What to do with a lamb that was older than five hours when it got cold, or of which nobody knows.
pub const OLDER: [&str; 8] = [
    "*No lamp, box or bath yet.* Out of the wind; dry it, wrap it with its nose free; off the floor, in a room of 20 to 25 °C \
     (68 to 77 °F). That is shelter, not heat.",
    "*Phone your vet*, then whoever your vet has trained.",
    "*Head up and swallows*: glucose by mouth, not milk, a little at a time: the kind and amount your vet told you. Then \
     warm it at once.",
    "*Does not swallow*: nothing by mouth. Someone your vet has trained gives glucose into the belly. Then warm it at once.",
    "*No glucose within 30 min*: your vet decides by phone, to warm it or to put it down humanely.",
    "*Nobody reached*: cold kills it; warming without sugar can bring fits and death. Neither is safe. Warm it slowly and \
     look every 10 min. Fits: stop the heat; humane killing by someone competent.",
    "*At 37 °C (98.6 °F)*: swallows, feed it. Does not swallow, vet now.",
    LOOKS,
];

/// When a lamb that is warmed is looked at, and what is too slow.
pub const LOOKS: &str = "Take its temperature at 20, 40 and 60 min. Two looks with less than 0.5 °C (0.9 °F) gained: call your vet.";

/// Who says so.
pub const SOURCE: &str = "Eales et al. 1982 and 1984, Henderson 1996 and 1997, US extension. That wrapped lambs in a warm room warm about as fast as under a lamp: 19 lambs. Our own choice: what to do when nobody is reached, and the looks. Settle glucose, its amounts \
     and two night numbers with your vet before lambing.";

/// Heads how a temperature is taken.
pub const THERMOMETER: &str = "How to take its temperature";
/// How a temperature is taken in the rectum.
pub const THERMOMETER_STEPS: [&str; 6] = [
    "A digital thermometer that reads down to 32 °C (90 °F), or lower. Clean it, wet the tip with gel or soapy water.",
    "Hold the lamb on your lap or between your knees, head away from you. Lift the tail.",
    "Turn it in gently and straight, 2 to 3 cm (about 1 in), never with force. Lean it against the wall of the gut: inside \
     dung it reads too low.",
    "Hold it there until it beeps, and hold on to it. Read it twice if it surprises you.",
    "It does not go in, or there is blood: stop. Look under the tail. No opening there: call your vet now.",
    "Wipe it, disinfect it, wash your hands. No thermometer: a finger in its mouth. Cold there: take it as under 37 °C \
     (98.6 °F). Warm there proves nothing.",
];
/// Who says so.
pub const THERMOMETER_SOURCE: &str = "Common practice, no source.";

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn says(course: &[&str], told: &[&str]) {
        let text = course.join(" ");
        for one in told {
            assert!(text.contains(one), "{one} is not in: {text}");
        }
    }

    #[test]
    fn a_young_lamb_is_warmed_at_once_whether_it_swallows_or_not() {
        // Source: Henderson 1996; US extension; Eales et al. 1984 for the air of 40 °C.
        assert_eq!(YOUNG[0], "*Dry it and warm it now*, swallowing or not. Only feeding waits.");
        says(&YOUNG, &["No glucose", "nothing by mouth", "40 °C (104 °F)", "At 37 °C (98.6 °F)"]);
    }

    #[test]
    fn an_older_lamb_is_sheltered_first_and_never_left_without_an_answer() {
        // Source: Henderson 1996, Eales et al. 1982; nobody reached: ours.
        let place = |what: &str| OLDER.iter().position(|line| line.contains(what)).expect("it is told");
        let order = [
            "That is shelter, not heat",
            "Phone your vet",
            "glucose by mouth",
            "gives glucose into the belly",
        ]
        .map(place);
        assert!(order.is_sorted(), "{order:?}");
        assert!(place("your vet decides by phone") < place("Nobody reached"));
        for line in OLDER.iter().filter(|line| line.contains("warm it at once")) {
            assert!(line.contains("glucose"), "warmth before glucose: {line}");
        }
        says(
            &OLDER,
            &[
                "nose free",
                "off the floor",
                "20 to 25 °C",
                "not milk",
                "your vet told you",
                "Neither is safe",
                "every 10 min",
                "stop the heat",
            ],
        );
    }

    #[test]
    fn the_course_is_fixed_when_it_gets_cold() {
        says(
            &WHICH,
            &[
                "when it got cold",
                "do not take a warming lamb out of the box",
                "raw, wet cord",
                "treat it as over 5 h",
            ],
        );
        for course in [YOUNG.as_slice(), OLDER.as_slice()] {
            says(course, &["20, 40 and 60 min", "Two looks with less than 0.5 °C (0.9 °F) gained"]);
        }
    }

    #[test]
    fn no_course_holds_a_dose() {
        for line in YOUNG.iter().chain(&OLDER).chain(&THERMOMETER_STEPS) {
            assert!(!line.contains("ml") && !line.contains('%') && !line.contains("mg"), "{line}");
        }
    }
}
