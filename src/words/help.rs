//! What can be read with no network: a newborn's first day, when to call the vet, how the program is used.

pub mod doors;
pub mod glossary;
pub mod illness;
pub mod lambing;
pub mod milk;
pub mod phone;
pub mod too_late;
mod topics;
pub mod tube;

pub use topics::{SHELVES, Topic};

use yeanling_core::reckon::colostrum::{FIRST_SIX_HOURS, ONE_FEED, day_figure};
use yeanling_core::reckon::ten_point::Sign;
use yeanling_core::reckon::vigor::FourGrade;
use yeanling_core::settings::{FarmSettings, LaborLimits};

use super::common::{minutes, per_weight};
use super::settings::day_rule;
use super::{cold_lamb, why};

/// The screen's name.
pub const TITLE: &str = "Help";
/// What the screen is for.
pub const SUB: &str = "Everything here can be read with no network.";
/// Names the finder.
pub const FIND: &str = "Find in Help";
/// Helps with the finder.
pub const FIND_HINT: &str = "One word or two, such as tube, backup, cold lamb";
/// Says that nothing was found.
pub const NOT_FOUND: &str = "Nothing found. Try one word, such as tube or vet.";
/// Goes back to all topics.
pub const ALL_TOPICS: &str = "All topics";
/// The words by which people look for the calculators, in small letters.
pub const CALCULATORS_FOUND_BY: &str = "calculators calculator calculate colostrum time left bottle weaning quality brix chill weather how much volume ml fluids scours dehydration dehydrated electrolyte ketones bhb";
/// Heads the first day.
pub const FIRST_DAY: &str = "A newborn’s first day";
/// Heads the signs of a fed lamb.
pub const FED: &str = "Has it fed?";
/// Heads the table of the cold lamb.
pub const COLD: &str = "A cold lamb";
/// Leads to the aid.
pub const OPEN_COLD: &str = "Cold lamb: step by step";
/// Explains the table.
pub const COLD_SUB: &str = "By temperature, age, and whether it holds its head up and swallows. Irish Farmers Journal, Henderson 1996 and 1997, Eales et al. 1982 and 1984, UK hypothermia sheet.";
/// Heads the scales of vigor.
pub const VIGOR: &str = "Vigor";
/// Heads the four grades.
pub const FOUR_GRADES: &str = "Four grades at five minutes, 1 is best";
/// Heads the ten points.
pub const TEN_POINTS: &str = "Ten points, 10 is best";
/// Explains the scales.
pub const VIGOR_SUB: &str = "The two run against each other: always name the scale. Without an ear oximeter the points are out of 8, adapted, and have no bands.";

/// Returns a grade of vigor and what it means.
pub fn grade(grade: FourGrade) -> String {
    format!("*Grade {}:* {}", grade.number(), why::vigor_meaning(grade))
}

/// Returns a sign of the ten points and what each point of it stands for.
pub fn sign(sign: Sign) -> String {
    let (name, [zero, one, two]) = why::sign(sign);
    format!("*{name}:* 0 {zero} · 1 {one} · 2 {two}")
}

/// Heads the rings.
pub const RINGS: &str = "Rings, tags, vaccine";
/// Explains them.
pub const RINGS_SUB: &str = "Never a ring in the first 24 h: colostrum comes first. Choose your rule in Farm settings. Nothing asks for a ring until your farm has chosen one, hair sheep or wool. No dose is given here; the label wins.";

/// Returns the name of a row of the table.
pub fn row(heading: &str, able: bool) -> String {
    if able {
        format!("{heading}: head up, swallows")
    } else {
        format!("{heading}: does not hold its head up and swallow")
    }
}

/// Heads the safety list of the tube.
pub const TUBE: &str = "Before you tube";
/// Heads the calls to the vet.
pub const VET: &str = "When to call the vet";
/// Heads who keeps away.
pub const PEOPLE: &str = crate::cautions::PEOPLE_TITLE;
/// Heads how people stay well.
pub const HYGIENE: &str = "Clean hands";
/// Heads how it is put on a phone.
pub const INSTALL: &str = "Put it on a phone";
/// Heads what the program does not do.
pub const LIMITS: &str = "What it does not do";
/// Heads the sources.
pub const SOURCES: &str = "Every source";

/// A step or a sign, and who says so.
pub type Sourced = (String, &'static str);

/// Returns a newborn's first day in eight steps, with the farm's own figures.
pub fn first_day(settings: &FarmSettings) -> Vec<Sourced> {
    let limits = &settings.limits;
    let per_kilogram =
        |figure: yeanling_core::reckon::PerKilogram| per_weight(figure.as_milliliters(), settings.system);
    vec![
        (
            "*Breathing?* Clear its nose and mouth. Then let the ewe lick it dry.".to_owned(),
            "common practice, no source",
        ),
        (
            format!(
                "*Dip the navel* at once in iodine made for it, and again {} later.",
                minutes(limits.navel_again_minutes)
            ),
            "Sheep Veterinary Society; the time is your farm’s",
        ),
        (
            "*Score its vigor* at five minutes, before any tube feed.".to_owned(),
            "levy-board breeding scheme with SRUC",
        ),
        (
            format!("*Up* within {}. If not, dry it, warm it, look again.", minutes(limits.up_minutes)),
            "Veterinary newsletter 2017; the limit is your farm’s",
        ),
        (
            format!(
                "*Colostrum* at once. Published: within 2 h. Help it nurse if you have not seen it by {}; at {} it is \
                 late.",
                minutes(limits.help_minutes),
                minutes(limits.red_minutes)
            ),
            "RUMA, SRUC, Vet Times 2018; the limits are your farm’s",
        ),
        (
            format!("*Weigh it.* By hand it gets {} a feed, and never more at once.", per_kilogram(ONE_FEED)),
            "AHDB; Vet Times 2018",
        ),
        (
            format!(
                "*By 6 h* {} together; *by 24 h* {}, in 4 or 5 feeds. {} is the colostrum deadline.",
                per_kilogram(FIRST_SIX_HOURS),
                per_kilogram(day_figure(settings.day_rule)),
                minutes(limits.last_call_minutes)
            ),
            day_source(settings),
        ),
        (
            "*Look again* after each round: belly full, warm, with its dam. Go on until it feeds by itself."
                .to_owned(),
            "common practice, no source",
        ),
    ]
}

fn day_source(settings: &FarmSettings) -> &'static str {
    use yeanling_core::settings::DayRule;
    match settings.day_rule {
        DayRule::Ahdb200 => "Bond 2020; AHDB; Irish Farmers Journal",
        DayRule::Ruma210 => "Bond 2020; RUMA; Irish Farmers Journal",
        DayRule::TenPercent => "Bond 2020; hobby press, half the guidance; Irish Farmers Journal",
    }
}

/// Says by which rule the steps are told.
pub fn by_rule(settings: &FarmSettings) -> String {
    format!("By your farm’s rule: {}. Change it in Farm settings.", day_rule(settings.day_rule).0)
}

/// The signs that a lamb has fed.
pub const FED_SIGNS: &[&str] = &[
    "It is lively and warm.",
    "Its mouth is warm, and it sucks a finger.",
    "Both flanks in front of the hip feel full and resist. Hollow means hungry.",
    "It stretches when it gets up, then lies quiet. A hunched, bleating lamb is not fed.",
];
/// Who says so.
pub const FED_SOURCE: &str = "Common practice, no source.";

/// Returns when to call the vet about a ewe, in the farm's limits.
pub fn vet_ewe(limits: &LaborLimits) -> Vec<String> {
    vec![
        format!(
            "*Water bag or hard straining* for {} and nothing comes: check inside (clean, gloved hand). After {}, or if you cannot correct it: call.",
            minutes(limits.hand_check_minutes),
            minutes(limits.step_in_minutes)
        ),
        format!("*The cervix does not open* (ringwomb) after {} of gentle trying.", minutes(limits.neck_minutes)),
        format!(
            "*A lamb lies wrong* and is not put right in {}. Crosswise, too big or deformed: at once.",
            minutes(limits.put_right_minutes)
        ),
        format!(
            "*The next lamb* has not come {} after the one before, and she strains.",
            minutes(limits.next_check_minutes)
        ),
        format!(
            "*The afterbirth* hangs at {}. Not seen by {}, and she is not bright: call too. With fever, or off her feed: at \
             once. Never pull it.",
            minutes(limits.afterbirth_late_minutes),
            minutes(limits.afterbirth_vet_minutes)
        ),
        "*Prolapse*: vagina or womb hanging out. Keep it warm, wet and clean. Never force it back, never hang her up. \
         One that goes back by itself: today; torn, not going back, or she strains: now."
            .to_owned(),
        "*Heavy bleeding*, or clots. Keep her still.".to_owned(),
        "*Down, dull, wobbly*, or will not eat. Nothing by mouth.".to_owned(),
        "*Blind, or pressing her head* against things, late in pregnancy.".to_owned(),
        "*Spasms*, twitching, stiff legs or fits. Keep her quiet, never chase her.".to_owned(),
        "*Udder blue or cold* (mastitis). Or hot and hard, and she is off her feed.".to_owned(),
        "*A second abortion*, or a ewe that aborts and is ill. Keep every ewe that aborts apart at once; see *Clean \
         hands*."
            .to_owned(),
    ]
}

/// Returns when to call the vet about a lamb.
pub fn vet_lamb(settings: &FarmSettings) -> Vec<String> {
    vec![
        "*Colder than 37 °C (98.6 °F)*, and over 5 h old when it got cold or of unknown age: call before you warm \
         it."
        .to_owned(),
        "*Warmed and not warming*: two looks with less than 0.5 °C (0.9 °F) gained.".to_owned(),
        "*It cannot hold its head up or does not swallow*, at any temperature. Nothing by mouth.".to_owned(),
        cold_lamb::FEVER.to_owned(),
        "*Dull, drooling, or a swollen belly* (watery mouth): no milk, by bottle or by tube.".to_owned(),
        "*It labors to breathe*, or does not come round.".to_owned(),
        "*A navel or a joint* that is hot and swollen (joint ill).".to_owned(),
        format!(
            "*No colostrum* by the colostrum deadline ({}), and you cannot get it in.",
            minutes(settings.limits.last_call_minutes)
        ),
    ]
}

/// Names the ewe's list.
pub const EWE: &str = "The ewe";
/// Names the lamb's list.
pub const LAMB: &str = "The lamb";
/// Who says so.
pub const VET_SOURCE: &str = "Times are your farm’s limits. Labor: Anexa, Maryland, NADIS, MSD Vet Manual. Ewes: NADIS, WikiVet, MSD Vet \
     Manual. Lambs: UK hypothermia sheet, Eales et al. 1982 and 1984, AHDB. The rest is common practice or our own \
     choice. If in doubt, call earlier.";

/// How it is put on a phone.
pub const INSTALL_STEPS: &[&str] = &[
    "*iPhone or iPad:* open it in Safari, tap Share, then Add to Home Screen.",
    "*Android:* open it in Chrome, tap the menu, then Install app or Add to Home screen.",
    "Open it once from the new icon *with a network*. Wait for “ready to work offline” in Share & back up.",
    "Then start noting. On an iPhone the icon has a book of its own: what was noted in the browser before is not in it. \
     Send it over with Share & back up.",
];

/// What the program does not do.
pub const LIMITS_LIST: &[&str] = &[
    "It does not wake you. While it is closed or the phone sleeps, nothing rings: set the phone’s own alarm.",
    "It does not send anything by itself. Two phones meet when you hand a file over.",
    "It does not find out what ails an animal, and it gives no doses.",
    "It does not know your law: tags, rings and medicine follow local rules.",
    "It has no copy elsewhere. Send the book now and then: a lost phone is a lost book.",
];

/// Returns the heading of one subject's sources with their number.
pub fn sources_of(subject: &str, count: usize) -> String {
    format!("{subject} · {count}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::settings::DayRule;

    #[test]
    fn the_first_day_is_eight_steps_told_by_the_farms_own_figures() {
        let settings = FarmSettings { day_rule: DayRule::Ruma210, ..FarmSettings::default() };
        let steps = first_day(&settings);
        assert_eq!(steps.len(), 8);
        assert!(steps.iter().any(|(step, _)| step.contains("*by 24 h* 210 ml/kg")));
        assert!(steps.iter().any(|(step, _)| step.contains("seen it by 1 h")));
        assert!(steps.iter().all(|(_, source)| !source.is_empty()));
    }

    /// Finds each sign in one line of a list; both lists stand on "When to call the vet".
    #[track_caller]
    fn tells(lines: &[String], signs: &[&str]) {
        for sign in signs {
            let found = lines.iter().filter(|line| line.to_lowercase().contains(sign)).count();
            assert!(found > 0, "{sign} is not told: {lines:?}");
        }
    }

    #[test]
    fn every_red_sign_of_a_ewe_is_told() {
        // Source: NADIS, WikiVet, MSD Vet Manual, Merck: call now. Afterbirth off feed or with fever, Greece 7,660 ewes.
        tells(
            &vet_ewe(&LaborLimits::default()),
            &[
                "down",
                "blind",
                "pressing her head",
                "spasms",
                "womb hanging out",
                "not going back",
                "ringwomb",
                "not put right in 10 min",
                "crosswise",
                "heavy bleeding",
                "udder blue or cold",
                "second abortion",
                "never pull",
            ],
        );
    }

    #[test]
    fn every_red_sign_of_a_lamb_is_told_and_a_fever_is_read_twice() {
        // Source: UK hypothermia sheet, Eales et al. 1982 and 1984, AHDB; the second reading is ours.
        tells(
            &vet_lamb(&FarmSettings::default()),
            &[
                "colder than 37 °c (98.6 °f)",
                "less than 0.5 °c (0.9 °f) gained",
                "does not swallow",
                "out of the box, from the lamp, out of the sun",
                "again in 30 min",
                "bright and sucking: vet today",
                "drooling",
                "labors to breathe",
                "navel",
                "colostrum deadline (6 h)",
            ],
        );
    }
}
