//! Season summary: the figures of a season with what each is a share of, another season beside it, losses, births, gains, marks.

use yeanling_core::book::{Animal, Cause, Event, Illness, LambId, Sex};
use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::{Mass, Moment, TimeDelta};
use yeanling_pages::block::{Kind, LedgerRow};
use yeanling_pages::{Action, Request, Screen};
use yeanling_words::{cull_rules, weighing, year as words};

use crate::phone::Phone;

const HOUR: TimeDelta = TimeDelta::hours(1);

pub(crate) fn moment(local: &str) -> Moment {
    let local = chrono::NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").expect("a time");
    Moment::from_local(local, -300)
}

/// Litters of twins, four on each day: of every fourth litter a lamb dies on its second day. Returns the first lambs.
fn season(phone: &mut Phone, from: &str, litters: i32, weaned: bool) -> Vec<LambId> {
    let from = moment(from);
    let twins = |litter: i32, phone: &mut Phone| {
        let born = from + TimeDelta::days((litter / 4).into()) + TimeDelta::minutes(litter.into());
        let tag = Some(format!("{}-{}", from.local().date().format("%Y"), litter + 1));
        let dam = phone.note_at(Event::EweCame { tag }, born - TimeDelta::days(1)).as_ewe();
        let lambs = [Sex::Ewe, Sex::Ram].map(|sex| {
            let birth = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(sex), alive: true };
            phone.note_at(birth, born).as_lamb()
        });
        for (lamb, kilograms) in lambs.into_iter().zip([3.0, 4.0]) {
            let mass = Mass::from_kilograms(kilograms + f64::from(litter % 2) / 2.0);
            phone.note_at(Event::Weighed { lamb, mass }, born + HOUR);
        }
        if litter % 4 == 0 {
            let death = Event::Died { animal: Animal::Lamb(lambs[1]), cause: Cause::Cold };
            phone.note_at(death, born + HOUR * 30);
        }
        if weaned {
            let at = born + TimeDelta::days(56);
            phone.note_at(Event::Weighed { lamb: lambs[0], mass: Mass::from_kilograms(20.0) }, at);
            phone.note_at(Event::Weaned { lamb: lambs[0] }, at);
        }
        lambs[0]
    };
    (0..litters).map(|litter| twins(litter, phone)).collect()
}

pub(crate) fn two_seasons() -> Phone {
    let mut phone = Phone::at("2026-04-20 09:00");
    season(&mut phone, "2025-03-01 04:00", 20, true);
    season(&mut phone, "2026-03-01 04:00", 10, false);
    phone.open(Screen::Summary);
    phone
}

#[track_caller]
fn figure(phone: &Phone, table: &str, name: &str) -> LedgerRow {
    let page = phone.page();
    let rows = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Ledger(ledger) if ledger.label == table => Some(ledger.rows.clone()),
        _ => None,
    });
    let rows = rows.unwrap_or_else(|| panic!("no table {table:?}"));
    rows.into_iter().find(|row| row.name == name).unwrap_or_else(|| panic!("no figure {name:?}"))
}

/// A figure of the flock, with its note.
#[track_caller]
fn check(phone: &Phone, name: &str, value: &str, note: &str) {
    let row = figure(phone, words::FLOCK, name);
    assert_eq!((row.value.plain().as_str(), row.note.as_str()), (value, note), "{name}");
}

/// Presses this choice of these choices.
#[track_caller]
pub(crate) fn choose(phone: &mut Phone, label: &str, option: &str) {
    let page = phone.page();
    let does = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Choices(it) if it.label == label => {
            it.options.iter().find(|one| one.label == option).map(|one| one.does.clone())
        }
        _ => None,
    });
    phone.act(&does.unwrap_or_else(|| panic!("no {option:?} of {label:?}")));
}

#[test]
fn before_the_first_birth_it_says_what_will_stand_there() {
    let mut phone = Phone::at("2026-04-20 09:00");
    phone.open(Screen::Summary).says(words::EMPTY).says_nowhere(words::PRINT);
}

#[test]
fn each_figure_stands_with_what_it_is_a_share_of() {
    let phone = two_seasons();
    phone.says("1 Mar to 3 Mar 2026").says(words::NOT_PUT);
    // Ten litters of twins: 2.00 a ewe; three of twenty lost on their second day.
    check(&phone, words::LAMBED, "10", "");
    check(&phone, words::BORN, "20", "20 alive, 0 dead");
    check(&phone, words::LITTERS, "0 · 10 · 0", words::LITTERS_NOTE);
    check(&phone, words::PROLIFICACY, "2.00", "20 from 10 ewes that lambed");
    check(&phone, words::AT_A_DAY, "100%", "20 of 20 born alive long enough ago");
    check(&phone, words::AT_A_WEEK, "85%", "17 of 20 born alive long enough ago");
    check(&phone, words::LOSS, "15%", "3 of 20 born alive");
    let lost = figure(&phone, words::LOSSES, "24 to 48 hours");
    // Held against the twenty litters of the year before, of which five lambs were lost.
    assert_eq!((lost.value.plain().as_str(), lost.note.as_str()), ("3 of 20", "cold 3 (before 5)"));
    assert_eq!(lost.other.plain(), "5 of 40");
    phone.says("Too few to compare: 20 lambs this season, 40 before. Each side needs 30.");
    phone.says("20 lambs on 3 days. Most on 1 Mar: 8.").says("Needs 30 lambs weighed at birth");
}

#[test]
fn another_season_stands_beside_it_and_never_the_same_one() {
    let mut phone = two_seasons();
    assert!(figure(&phone, words::FLOCK, words::LAMBED).other.is_empty());
    choose(&mut phone, words::AGAINST, "2025");
    assert_eq!(figure(&phone, words::FLOCK, words::LAMBED).other.plain(), "20");
    choose(&mut phone, words::SEASON, "2025");
    let weaned = figure(&phone, words::FLOCK, words::WEANED);
    assert_eq!((weaned.value.plain(), weaned.other.is_empty()), ("20".to_owned(), true));
    // From thirty lambs on survival is drawn.
    phone.says("3.0 kg to 3.5 kg: 10 of 10").says_nowhere("Needs 30 lambs weighed at birth");
}

#[test]
fn losses_stand_against_the_seasons_before_and_the_first_says_that_there_is_none() {
    let mut phone = two_seasons();
    choose(&mut phone, words::SEASON, "2025");
    phone.says(words::NO_SEASON_BEFORE);
    let lost = figure(&phone, words::LOSSES, "24 to 48 hours");
    assert_eq!((lost.value.plain().as_str(), lost.note.as_str()), ("5 of 40", "cold 5"));
    assert!(lost.other.is_empty());
    let mut phone = Phone::at("2026-06-20 09:00");
    season(&mut phone, "2025-03-01 04:00", 20, true);
    let lambs = season(&mut phone, "2026-03-01 04:00", 20, false);
    phone.open(Screen::Summary).says("No age differs from earlier seasons by more than chance.");
    for lamb in lambs {
        let death = Event::Died { animal: Animal::Lamb(lamb), cause: Cause::Infection };
        phone.note_at(death, moment("2026-03-08 04:00"));
    }
    phone.says("More than chance above earlier seasons");
}

#[test]
fn illness_stands_beside_the_losses_with_its_ages() {
    let mut phone = two_seasons();
    phone.says_nowhere(words::AILED_NOTE);
    let lamb = *phone.flock.lambs.keys().next_back().expect("a lamb");
    let good = yeanling_core::terms::Gate::Good;
    let signs = vec![yeanling_core::terms::LambSign::HotJoint];
    let seen = Illness::LambSeen { lamb, head_up: good, swallows: good, warm: good, signs };
    phone.note_at(Event::Illness(seen), moment("2026-03-12 09:00"));
    let row = figure(&phone, words::AILED, "Joint ill, lambs");
    assert_eq!((row.value.plain().as_str(), row.note.as_str()), ("1 of 20", "7 to 28 days 1"));
    assert_eq!(row.other.plain(), "0 of 40");
}

#[test]
fn it_is_asked_why() {
    let mut phone = two_seasons();
    phone.press(&format!("why? {}", words::FLOCK)).says("Merck").says("3 of 20 born alive = 15%");
}

#[test]
fn a_death_struck_leaves_the_figures_and_comes_back_with_them() {
    let mut phone = Phone::at("2026-04-20 09:00");
    let lambs = season(&mut phone, "2026-03-01 04:00", 2, false);
    phone.open(Screen::Summary);
    check(&phone, words::LOSS, "25%", "1 of 4 born alive");
    phone.note(Event::Died { animal: Animal::Lamb(lambs[0]), cause: Cause::Unknown });
    check(&phone, words::LOSS, "50%", "2 of 4 born alive");
    assert!(phone.undo());
    check(&phone, words::LOSS, "25%", "1 of 4 born alive");
}

#[test]
fn gains_are_told_by_litter_and_by_the_age_of_the_dam() {
    let mut phone = two_seasons();
    phone.says_nowhere(weighing::BY_LITTER);
    choose(&mut phone, words::SEASON, "2025");
    let single = figure(&phone, weighing::BY_LITTER, "born twin, reared single");
    let twins = figure(&phone, weighing::BY_LITTER, "born twin, reared twin");
    assert_eq!((single.note.as_str(), twins.note.as_str()), ("5 lambs", "15 lambs"));
}

#[test]
fn of_half_noted_groups_it_is_said_how_many_ewes_no_rate_counts_and_none_passes_100_percent() {
    let mut phone = two_seasons();
    let group =
        phone.note_at(Event::GroupFormed { name: "Top".to_owned() }, moment("2025-09-20 09:00")).as_group();
    let ewe = phone.flock.ewes.values().find(|ewe| ewe.tag.as_deref() == Some("2026-3")).expect("a ewe").id;
    phone.note_at(Event::JoinedGroup { ewe, group }, moment("2025-09-20 09:01"));
    phone.note_at(Event::RamIn { group, ram: None, age: None }, moment("2025-10-01 09:00"));
    phone.note_at(Event::RamOut { group }, moment("2025-11-10 09:00"));
    phone.open(Screen::Summary).says("9 ewes lambed without a ram on record");
    check(&phone, words::FERTILITY, "100%", "1 of 1 put to the ram");
    check(&phone, words::LAMBING, "200%", "2 from 1 put to the ram");
    check(&phone, words::LAMBED, "10", "");
}

#[test]
fn what_counts_as_lost_is_told_alike_where_it_stands() {
    let mut phone = two_seasons();
    let lost = "Lost: born alive and dead before weaning.";
    phone.press(&format!("why? {}", words::FLOCK)).says(lost);
    let ewe = *phone.flock.ewes.keys().next().expect("a ewe");
    phone.open(Screen::Ewe(ewe)).press(&format!("why? {}", cull_rules::RECORD)).says(lost);
}

#[test]
fn ewes_that_meet_a_mark_of_the_farms_are_shown_again() {
    let mut phone = two_seasons();
    phone.says(cull_rules::NO_MARKS);
    let marks =
        |lost| Event::Chose(Choice::CullRules(CullRules { lost: Some(lost), ..CullRules::default() }));
    phone.note(marks(2));
    phone.says(cull_rules::NONE).says_nowhere(cull_rules::NO_MARKS);
    phone.note(marks(1));
    phone.says("Ewe 2026-1").says("1 lamb lost").says_nowhere("Ewe 2026-2");
}

#[test]
fn the_year_is_printed() {
    let mut phone = two_seasons();
    phone.press(words::PRINT);
    assert_eq!(phone.asked, [Request::Print]);
    assert!(
        phone
            .pressables()
            .iter()
            .any(|one| one.does == Action::Go(Screen::SettingsOf(yeanling_pages::SettingsPart::Care)))
    );
}

#[test]
fn the_weight_weaned_says_how_many_were_weighed() {
    let mut phone = Phone::at("2026-04-20 09:00");
    let ewes = ["1", "2"].map(|tag| {
        phone.note_at(Event::EweCame { tag: Some(tag.to_owned()) }, moment("2025-09-01 08:00")).as_ewe()
    });
    let formed = phone.note_at(Event::GroupFormed { name: "Top".to_owned() }, moment("2025-09-02 08:00"));
    let group = formed.as_group();
    for ewe in ewes {
        phone.note_at(Event::JoinedGroup { ewe, group }, moment("2025-09-03 08:00"));
    }
    phone.note_at(Event::RamIn { group, ram: None, age: None }, moment("2025-09-10 08:00"));
    phone.note_at(Event::RamOut { group }, moment("2025-10-10 08:00"));
    let lambs = [0, 1].map(|minute| {
        let born = moment("2026-02-10 04:00") + TimeDelta::minutes(minute);
        let birth = Event::LambBorn { dam: Some(ewes[0]), beside: None, sex: Some(Sex::Ewe), alive: true };
        phone.note_at(birth, born).as_lamb()
    });
    let weaning = moment("2026-04-12 09:00");
    phone.note_at(Event::Weighed { lamb: lambs[0], mass: Mass::from_kilograms(20.0) }, weaning);
    for lamb in lambs {
        phone.note_at(Event::Weaned { lamb }, weaning);
    }
    phone.open(Screen::Summary);
    check(&phone, words::WEANED_A_EWE, "10.0\u{a0}kg", "1 of 2 weaned were weighed");
}
