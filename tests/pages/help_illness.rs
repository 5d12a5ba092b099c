//! Illness in Help: a page for each row of the tables, found by what is seen and in the words people use, and true to them.

use std::collections::BTreeMap;

use yeanling_core::reckon::illness::{Ailment, Finding, Urgency, ewe, lamb};
use yeanling_core::terms::{EweSign, EweStage, Gate, LambSign};
use yeanling_core::units::{Ketones, Temperature, TimeDelta};
use yeanling_pages::{Action, Screen};
use yeanling_words::help::illness::more;
use yeanling_words::help::{self as words, Topic};
use yeanling_words::illness::{HELPS, UNREAD};

use crate::phone::Phone;
use crate::reach::texts;

fn help() -> Phone {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Help);
    phone
}

/// Returns the illnesses that can be opened on the page, in order.
fn offered(phone: &Phone) -> Vec<Ailment> {
    let ailment = |does: &Action| match does {
        Action::Go(Screen::Ailment(ailment)) => Some(*ailment),
        _ => None,
    };
    phone.pressables().iter().filter_map(|one| ailment(&one.does)).collect()
}

#[test]
fn every_row_of_the_tables_has_a_page_two_taps_from_help() {
    let mut all = Vec::new();
    for topic in [Topic::SickEwe, Topic::SickLamb] {
        let mut phone = help();
        phone.press(topic.title());
        all.extend(offered(&phone));
    }
    assert_eq!(all, Ailment::all().collect::<Vec<_>>());
}

#[test]
fn each_page_says_how_it_looks_what_to_do_and_who_says_so_and_that_no_vet_has_read_it() {
    let phone = help();
    for ailment in Ailment::all() {
        let page = phone.page_of(Screen::Ailment(ailment));
        let told: Vec<String> = texts(&page).into_iter().map(|text| text.replace('\u{a0}', " ")).collect();
        let has = |heading: &str| told.iter().any(|text| text == heading);
        for heading in
            [words::illness::LOOKS, words::illness::UNTIL, words::illness::MAY_BE, words::illness::TELLS]
        {
            assert!(has(heading), "{ailment:?} has no {heading:?}");
        }
        let sources = ailment.sources().iter().map(yeanling_words::why::source_line);
        for line in sources.chain([HELPS.to_owned(), UNREAD.to_owned()]) {
            assert!(told.contains(&line), "{ailment:?} does not say {line:?}");
        }
    }
}

/// Says what is found in place of an illness by what is typed.
fn misses(typed: &str, ailment: Ailment) -> Option<String> {
    let mut phone = help();
    phone.write(words::FIND, typed);
    let found = offered(&phone);
    (found.first() != Some(&ailment)).then(|| format!("{typed:?} finds {found:?}"))
}

#[test]
fn an_illness_is_found_in_the_words_people_use() {
    use ewe::Row as E;
    use lamb::Row as L;
    let ewes = [
        ("twin lamb disease", E::Toxemia),
        ("ketosis", E::Toxemia),
        ("milk fever", E::LowCalcium),
        ("cast", E::Cast),
        ("upside down", E::Cast),
        ("circling", E::Listeria),
        ("grass staggers", E::LowMagnesium),
        ("ringwomb", E::CervixTight),
        ("retained afterbirth", E::AfterbirthKept),
        ("blue bag", E::UdderCold),
        ("mastitis", E::UdderHot),
        ("foot rot", E::Lame),
        ("limping ewe", E::Lame),
        ("broke into feed", E::Grain),
        ("abortion", E::Aborted),
        ("bottle jaw", E::Worms),
    ];
    let lambs = [
        ("watery mouth", L::WateryMouth),
        ("drool lamb", L::WateryMouth),
        ("rattle belly", L::WateryMouth),
        ("diarrhea", L::Scour),
        ("joint ill", L::Joint),
        ("entropion", L::Eye),
        ("sore mouth", L::Orf),
        ("lockjaw", L::Tetanus),
        ("white muscle", L::WhiteMuscle),
        ("sudden death overnight", L::FoundDead),
        ("broken leg", L::Leg),
        ("convulsions", L::Fits),
    ];
    let ewes = ewes.into_iter().filter_map(|(typed, row)| misses(typed, Ailment::Ewe(row)));
    let lambs = lambs.into_iter().filter_map(|(typed, row)| misses(typed, Ailment::Lamb(row)));
    let wrong: Vec<String> = ewes.chain(lambs).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn from_a_page_the_way_back_leads_to_the_list_it_was_opened_from() {
    let mut phone = help();
    phone.press(Topic::SickLamb.title()).press("Orf");
    let back = phone.page().back;
    assert_eq!(back, Some((Screen::Topic(Topic::SickLamb), Topic::SickLamb.title().to_owned())));
    let mut found = help();
    found.write(words::FIND, "orf").press("Orf");
    assert_eq!(found.page().back.map(|(screen, _)| screen), Some(Screen::Help));
}

/// The mildest and the worst that the table says of a row, by its level: look again 0, today 1, now 2.
type Levels<Row> = BTreeMap<Row, (u8, u8)>;

const fn level(urgency: Urgency) -> u8 {
    match urgency {
        Urgency::Watch(_) => 0,
        Urgency::Today => 1,
        Urgency::Now => 2,
    }
}

fn hold<Row: Ord + Copy>(levels: &mut Levels<Row>, rows: &[Finding<Row>]) {
    for found in rows {
        let (least, most) = (level(found.urgency), level(found.urgency).max(level(found.no_better)));
        let held = levels.entry(found.row).or_insert((least, most));
        *held = (held.0.min(least), held.1.max(most));
    }
}

/// What the table of a ewe that stands says of each row, over every two signs.
fn of_ewes() -> Levels<ewe::Row> {
    use EweStage as S;
    let mut levels = Levels::new();
    let well = ewe::Case {
        standing: Gate::Good,
        eating: Gate::Good,
        nothing_out: Gate::Good,
        ..ewe::Case::default()
    };
    let fever = Some(Temperature::from_celsius(41.0));
    let mut others = vec![
        well.clone(),
        ewe::Case { eating: Gate::Bad, ..well.clone() },
        ewe::Case { highest: fever, lowest: fever, ..well.clone() },
        ewe::Case { others_aborted: 2, ..well.clone() },
        ewe::Case { ketones: Some(Ketones::from_millimoles(4.0)), ..well.clone() },
    ];
    others.extend(
        [8, 13].map(|hours| ewe::Case { since_last_lamb: Some(TimeDelta::hours(hours)), ..well.clone() }),
    );
    for (place, one) in EweSign::ALL.into_iter().enumerate() {
        for other in &EweSign::ALL[place..] {
            for stage in [S::LateInLamb, S::Labor, S::AfterLambing, S::Milking, S::Other, S::Unknown] {
                for case in &others {
                    let case = ewe::Case { stage, signs: vec![one, *other], ..case.clone() };
                    hold(&mut levels, &ewe::decide(&case).rows);
                }
            }
        }
    }
    levels
}

/// What the table of a lamb says of each row, over every two signs.
fn of_lambs() -> Levels<lamb::Row> {
    let mut levels = Levels::new();
    let good =
        lamb::Case { head_up: Gate::Good, swallows: Gate::Good, warm: Gate::Good, ..lamb::Case::default() };
    let mut others = vec![
        good.clone(),
        lamb::Case { swallows: Gate::Bad, ..good.clone() },
        lamb::Case { warm: Gate::Bad, ..good.clone() },
        lamb::Case { warm: Gate::Bad, swallows: Gate::Bad, ..good.clone() },
        lamb::Case { on_bottle: true, ..good.clone() },
        lamb::Case { hard_birth: true, ..good.clone() },
    ];
    others.extend(
        [40.3, 41.0].map(|celsius| lamb::Case {
            temperature: Some(Temperature::from_celsius(celsius)),
            ..good.clone()
        }),
    );
    others.extend([1, 3, 8].map(|seconds| lamb::Case { tent_seconds: Some(seconds), ..good.clone() }));
    let ages = [2, 26, 80, 24 * 8, 24 * 20, 24 * 40].map(|hours| Some(TimeDelta::hours(hours)));
    for (place, one) in LambSign::ALL.into_iter().enumerate() {
        for other in &LambSign::ALL[place..] {
            for age in ages.into_iter().chain([None]) {
                for case in &others {
                    let case = lamb::Case { age, signs: vec![one, *other], ..case.clone() };
                    hold(&mut levels, &lamb::decide(&case).rows);
                }
            }
        }
    }
    [0, 1].into_iter().for_each(|dead| hold(&mut levels, &lamb::found_dead(dead).rows));
    levels
}

/// Returns the level that a text says first, and the worst that it says.
fn said(call: &str) -> Option<(u8, u8)> {
    let call = call.to_lowercase();
    let phrases = [("look again", 0), ("your vet today", 1), ("your vet now", 2)];
    let first = phrases.into_iter().filter_map(|(phrase, level)| Some((call.find(phrase)?, level))).min()?.1;
    let word = |word: &str| call.split(|c: char| !c.is_alphanumeric()).any(|one| one == word);
    let worst = if word("now") { 2 } else { u8::from(word("today")) };
    Some((first, worst))
}

#[test]
fn when_to_call_is_told_as_the_tables_decide_it_the_mildest_first() {
    let (ewes, lambs) = (of_ewes(), of_lambs());
    let mut wrong = Vec::new();
    for ailment in Ailment::all() {
        let levels = match ailment {
            Ailment::Ewe(row) => ewes.get(&row),
            Ailment::Lamb(row) => lambs.get(&row),
        };
        // A row that only a down ewe has is now.
        let levels = *levels.unwrap_or(&(2, 2));
        let call = more(ailment).call;
        if said(call) != Some(levels) {
            wrong.push(format!("{ailment:?} is {levels:?}, and Help says {:?}: {call:?}", said(call)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_text_that_says_another_urgency_than_the_table_is_found() {
    assert_eq!(said("Call your vet today. Fever: now."), Some((1, 2)));
    assert_eq!(said("Look again in an hour. Not up: call your vet now."), Some((0, 2)));
    assert_eq!(said("Call your vet now."), Some((2, 2)));
    assert_eq!(said("Keep her still."), None);
}

#[test]
fn each_row_is_led_to_by_a_sign_or_says_how_it_looks() {
    for ailment in Ailment::all() {
        let led = match ailment {
            Ailment::Ewe(row) => row.leads().count(),
            Ailment::Lamb(row) => row.leads().count(),
        };
        assert!(led > 0 || !more(ailment).also.is_empty(), "{ailment:?}");
    }
}

/// What no step may tell a shepherd to do: it is the vet's, or hurts.
const NEVER_TOLD: [&str; 13] = [
    "cut", "lance", "stab", "puncture", "trocar", "enema", "pull", "force", "inject", "drench", "stitch",
    "flush", "trim",
];

/// Returns why a step must not be told: it does what is never done, or names an amount to give.
fn must_not_be_told(step: &str) -> Option<String> {
    let plain = step.to_lowercase().replace('\u{a0}', " ");
    let words: Vec<&str> = plain
        .split(|sign: char| !sign.is_alphanumeric() && sign != '/')
        .filter(|word| !word.is_empty())
        .collect();
    let told = NEVER_TOLD.into_iter().find(|never| words.iter().any(|word| word.starts_with(never)));
    let amount = words.windows(2).find(|pair| {
        let is_number = pair[0].chars().all(|sign| sign.is_ascii_digit());
        let is_unit =
            ["ml", "cc", "l", "g", "mg", "iu", "oz", "ml/kg", "mg/kg", "drops", "tablets"].contains(&pair[1]);
        is_number && is_unit
    });
    told.map(str::to_owned).or_else(|| amount.map(|pair| pair.join(" ")))
}

#[test]
fn no_step_of_an_illness_does_what_is_never_done_or_names_a_dose() {
    assert_eq!(must_not_be_told("Stab it high on the left.").as_deref(), Some("stab"));
    assert_eq!(must_not_be_told("Give 20\u{a0}ml into the vein.").as_deref(), Some("20 ml"));
    for ailment in Ailment::all() {
        let row = match ailment {
            Ailment::Ewe(row) => yeanling_words::illness::ewe::row(row),
            Ailment::Lamb(row) => yeanling_words::illness::lamb::row(row),
        };
        for step in row.until.iter().chain([&row.tells]) {
            assert_eq!(must_not_be_told(step), None, "{ailment:?}: {step:?}");
        }
        for never in row.never {
            assert!(never.starts_with("Never ") || never.starts_with("No"), "{ailment:?}: {never:?}");
        }
    }
    for step in yeanling_words::illness::lamb::BREATHE.into_iter().chain(yeanling_words::illness::DOWN) {
        assert_eq!(must_not_be_told(step), None, "{step:?}");
    }
}
