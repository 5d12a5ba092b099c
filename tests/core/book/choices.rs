//! The farm's choices that came after the first: every form stays readable. The lines are never edited; more may come.

use serde_json::Value;
use yeanling_core::book::Event;
use yeanling_core::settings::{
    BreedMeans, BreedType, ChillLimit, Choice, Clock, CullRules, CullSigns, DamsVaccinated, FarmSettings,
    FreezerLife, Latitude, PowderRule, RingRule, Rings, USUAL_POWDER_RATE, VetAgreed, VigorInUse,
    WeaningRule,
};
use yeanling_core::units::Strength;

use super::schema::{does_not_fit, fits, objects, schema, with_event};

/// What is written of each choice.
/// Returns every line.
pub(super) fn forms() -> impl Iterator<Item = &'static str> {
    LINES.iter().copied()
}

const LINES: &[&str] = &[
    r#"{"chose":{"freezer-life":"six-months"}}"#,
    r#"{"chose":{"freezer-life":"one-year"}}"#,
    r#"{"chose":{"freezer-life":"two-years"}}"#,
    r#"{"chose":{"powder-rate":150.0}}"#,
    r#"{"chose":{"powder-rule":"new-zealand"}}"#,
    r#"{"chose":{"powder-rule":"ndsu"}}"#,
    r#"{"chose":{"powder-rule":"farmers-journal"}}"#,
    r#"{"chose":{"weaning-rule":"feed-maker"}}"#,
    r#"{"chose":{"weaning-rule":"teagasc"}}"#,
    r#"{"chose":{"weaning-rule":"four-weeks"}}"#,
    r#"{"chose":{"breed-means":"no-breed"}}"#,
    r#"{"chose":{"breed-means":"katahdin"}}"#,
    r#"{"chose":{"breed-means":"st-croix"}}"#,
    r#"{"chose":{"breed-means":"dorper"}}"#,
    r#"{"chose":{"vigor":"four-grade"}}"#,
    r#"{"chose":{"vigor":"ten-point"}}"#,
    r#"{"chose":{"chill-limit":"victoria1000"}}"#,
    r#"{"chose":{"chill-limit":"murdoch1100"}}"#,
    r#"{"chose":{"rings":{"rule":"no-rings","tails":false,"ram-lambs":false}}}"#,
    r#"{"chose":{"rings":{"rule":"england-wales","tails":true,"ram-lambs":true}}}"#,
    r#"{"chose":{"rings":{"rule":"germany","tails":true,"ram-lambs":false}}}"#,
    r#"{"chose":{"rings":{"rule":"new-south-wales","tails":false,"ram-lambs":true}}}"#,
    r#"{"chose":{"rings":{"rule":"new-zealand","tails":true,"ram-lambs":true}}}"#,
    r#"{"chose":{"rings":{"rule":{"own":{"days":10}},"tails":true,"ram-lambs":false}}}"#,
    r#"{"chose":{"dams-vaccinated":"unknown"}}"#,
    r#"{"chose":{"dams-vaccinated":"yes"}}"#,
    r#"{"chose":{"dams-vaccinated":"no"}}"#,
    r#"{"chose":{"breed-type":"any"}}"#,
    r#"{"chose":{"breed-type":"hair"}}"#,
    r#"{"chose":{"breed-type":"finn"}}"#,
    r#"{"chose":{"breed-type":"prolific"}}"#,
    r#"{"chose":{"breed-type":"suffolk"}}"#,
    r#"{"chose":{"breed-type":"meat"}}"#,
    r#"{"chose":{"breed-type":"fine-wool"}}"#,
    r#"{"chose":{"keep-marks":{}}}"#,
    r#"{"chose":{"keep-marks":{"hard-births":1,"lost":2,"turned-away":3,"barren":1,"years":7}}}"#,
    r#"{"chose":{"vet-phone":"+1 (555) 010-0199"}}"#,
    r#"{"chose":{"vet-phone":""}}"#,
    r#"{"chose":{"vet-night-phone":"555 0100"}}"#,
    r#"{"chose":{"clock":"phone"}}"#,
    r#"{"chose":{"clock":"twelve"}}"#,
    r#"{"chose":{"clock":"twenty-four"}}"#,
    r#"{"chose":{"vet-second-phone":"555 0101"}}"#,
    r#"{"chose":{"vet-agreed":"trained"}}"#,
    r#"{"chose":{"vet-agreed":"glucose"}}"#,
    r#"{"chose":{"vet-agreed":"killing"}}"#,
    r#"{"chose":{"latitude":"north"}}"#,
    r#"{"chose":{"latitude":"south"}}"#,
    r#"{"chose":{"latitude":"tropics"}}"#,
    r#"{"chose":{"cull-signs":{}}}"#,
    r#"{"chose":{"cull-signs":{"udder":1,"lame":2,"prolapse":1,"late":2,"thin":8,"light":80}}}"#,
];

/// The choices that the lines stand for, in their order.
fn choices() -> Vec<Choice> {
    let rings = |rule, tails, ram_lambs| Choice::Rings(Rings { rule, tails, ram_lambs });
    vec![
        Choice::FreezerLife(FreezerLife::SixMonths),
        Choice::FreezerLife(FreezerLife::OneYear),
        Choice::FreezerLife(FreezerLife::TwoYears),
        Choice::PowderRate(Strength::from_grams_per_liter(150.0)),
        Choice::PowderRule(PowderRule::NewZealand),
        Choice::PowderRule(PowderRule::Ndsu),
        Choice::PowderRule(PowderRule::FarmersJournal),
        Choice::WeaningRule(WeaningRule::FeedMaker),
        Choice::WeaningRule(WeaningRule::Teagasc),
        Choice::WeaningRule(WeaningRule::FourWeeks),
        Choice::BreedMeans(BreedMeans::NoBreed),
        Choice::BreedMeans(BreedMeans::Katahdin),
        Choice::BreedMeans(BreedMeans::StCroix),
        Choice::BreedMeans(BreedMeans::Dorper),
        Choice::Vigor(VigorInUse::FourGrade),
        Choice::Vigor(VigorInUse::TenPoint),
        Choice::ChillLimit(ChillLimit::Victoria1000),
        Choice::ChillLimit(ChillLimit::Murdoch1100),
        rings(RingRule::NoRings, false, false),
        rings(RingRule::EnglandWales, true, true),
        rings(RingRule::Germany, true, false),
        rings(RingRule::NewSouthWales, false, true),
        rings(RingRule::NewZealand, true, true),
        rings(RingRule::Own { days: 10 }, true, false),
        Choice::DamsVaccinated(DamsVaccinated::Unknown),
        Choice::DamsVaccinated(DamsVaccinated::Yes),
        Choice::DamsVaccinated(DamsVaccinated::No),
        Choice::BreedType(BreedType::Any),
        Choice::BreedType(BreedType::Hair),
        Choice::BreedType(BreedType::Finn),
        Choice::BreedType(BreedType::Prolific),
        Choice::BreedType(BreedType::Suffolk),
        Choice::BreedType(BreedType::Meat),
        Choice::BreedType(BreedType::FineWool),
        Choice::CullRules(CullRules::default()),
        Choice::CullRules(CullRules {
            hard_births: Some(1),
            lost: Some(2),
            turned_away: Some(3),
            barren: Some(1),
            years: Some(7),
        }),
        Choice::VetPhone("+1 (555) 010-0199".to_owned()),
        Choice::VetPhone(String::new()),
        Choice::VetNightPhone("555 0100".to_owned()),
        Choice::Clock(Clock::Phone),
        Choice::Clock(Clock::Twelve),
        Choice::Clock(Clock::TwentyFour),
        Choice::VetSecondPhone("555 0101".to_owned()),
        Choice::VetAgreed(VetAgreed::Trained),
        Choice::VetAgreed(VetAgreed::Glucose),
        Choice::VetAgreed(VetAgreed::Killing),
        Choice::Latitude(Latitude::North),
        Choice::Latitude(Latitude::South),
        Choice::Latitude(Latitude::Tropics),
        Choice::CullSigns(CullSigns::default()),
        Choice::CullSigns(CullSigns {
            udder: Some(1),
            lame: Some(2),
            prolapse: Some(1),
            late: Some(2),
            thin: Some(8),
            light: Some(80),
        }),
    ]
}

#[test]
fn every_choice_is_read_and_written_as_it_was() {
    let choices = choices();
    assert_eq!(choices.len(), LINES.len());
    for (line, choice) in LINES.iter().zip(choices) {
        let fact = Event::Chose(choice);
        assert_eq!(serde_json::from_str::<Event>(line).ok().as_ref(), Some(&fact), "{line}");
        assert_eq!(serde_json::to_string(&fact).ok().as_deref(), Some(*line));
    }
}

#[test]
fn every_choice_fits_the_schema_and_no_part_of_it_may_be_missing() {
    for line in LINES {
        fits(schema(), &with_event(line));
        let whole: Value = serde_json::from_str(line).expect("an event");
        for place in objects(&whole, String::new()) {
            let Some(Value::Object(parts)) = whole.pointer(&place) else { continue };
            // A farm need not mind every mark.
            if ["/chose/keep-marks", "/chose/cull-signs"].contains(&place.as_str()) {
                continue;
            }
            for name in parts.keys() {
                let mut less = whole.clone();
                let parts = less.pointer_mut(&place).and_then(Value::as_object_mut);
                parts.expect("it is there").remove(name);
                does_not_fit(schema(), &with_event(&less.to_string()));
                assert!(serde_json::from_value::<Event>(less.clone()).is_err(), "{less}");
            }
        }
    }
}

#[test]
fn a_choice_that_is_none_does_not_fit_and_is_not_read() {
    for (line, from, to) in [
        (LINES[0], "six-months", "ten-years"),
        (LINES[3], "150.0", "-1"),
        (LINES[3], "150.0", "1000.1"),
        (LINES[3], "150.0", "\"150\""),
        (LINES[23], "10", "-1"),
        (LINES[23], "10", "65536"),
        (LINES[23], "own", "other"),
        (LINES[19], "true", "1"),
        (LINES[24], "unknown", "perhaps"),
    ] {
        let wrong = line.replacen(from, to, 1);
        assert_ne!(wrong, line, "{from} is in the line");
        does_not_fit(schema(), &with_event(&wrong));
        assert!(serde_json::from_str::<Event>(&wrong).is_err(), "{wrong}");
    }
}

#[test]
fn each_choice_is_taken_over_and_nothing_else_is() {
    for choice in choices() {
        let mut settings = FarmSettings::default();
        settings.choose(&choice);
        let mut expected = FarmSettings::default();
        match choice {
            Choice::FreezerLife(life) => expected.freezer_life = life,
            Choice::PowderRate(rate) => expected.powder_rate = rate,
            Choice::PowderRule(rule) => expected.powder_rule = rule,
            Choice::WeaningRule(rule) => expected.weaning_rule = rule,
            Choice::BreedMeans(means) => expected.breed_means = means,
            Choice::Vigor(scale) => expected.vigor = scale,
            Choice::ChillLimit(limit) => expected.chill_limit = limit,
            Choice::Rings(rings) => expected.rings = rings,
            Choice::DamsVaccinated(vaccinated) => expected.dams_vaccinated = vaccinated,
            Choice::BreedType(breed) => expected.breed_type = breed,
            Choice::CullRules(marks) => expected.cull_rules = marks,
            Choice::CullSigns(signs) => expected.cull_signs = signs,
            Choice::Latitude(latitude) => expected.latitude = latitude,
            Choice::VetPhone(number) => expected.vet_phones.day = number,
            Choice::VetNightPhone(number) => expected.vet_phones.night = number,
            Choice::VetSecondPhone(number) => expected.vet_phones.second = number,
            // It stands in the flock, with its time.
            Choice::VetAgreed(_) => {}
            Choice::Clock(clock) => expected.clock = clock,
            Choice::FarmName(_)
            | Choice::System(_)
            | Choice::DayRule(_)
            | Choice::Housing(_)
            | Choice::BottleTable(_)
            | Choice::Limits(_)
            | Choice::LaborLimits(_)
            | Choice::PenStay(_) => panic!("a choice of the first lines"),
        }
        assert_eq!(settings, expected);
    }
}

#[test]
fn what_a_file_brings_out_of_bounds_changes_nothing() {
    let mut settings = FarmSettings::default();
    assert_eq!(settings.powder_rate, USUAL_POWDER_RATE);
    for grams in [0.0, 99.0, 301.0] {
        settings.choose(&Choice::PowderRate(Strength::from_grams_per_liter(grams)));
    }
    for days in [0, 1, 182] {
        settings.choose(&Choice::Rings(Rings { rule: RingRule::Own { days }, tails: true, ram_lambs: true }));
    }
    for from in [0, 31] {
        settings.choose(&Choice::CullRules(CullRules { lost: Some(from), ..CullRules::default() }));
        settings.choose(&Choice::CullSigns(CullSigns { lame: Some(from), ..CullSigns::default() }));
    }
    for (thin, light) in [(Some(3), None), (Some(17), None), (None, Some(9)), (None, Some(101))] {
        settings.choose(&Choice::CullSigns(CullSigns { thin, light, ..CullSigns::default() }));
    }
    for number in ["the vet", "12", "+", "1234567890123456", "555 0100 <b>", " "] {
        settings.choose(&Choice::VetPhone(number.to_owned()));
    }
    assert_eq!(settings, FarmSettings::default());
}
