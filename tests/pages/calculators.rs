//! Calculators: each calculation while it is typed, what is wrong with what was typed, and that nothing is noted.

use yeanling_core::book::Event;
use yeanling_core::settings::{Choice, DayRule};
use yeanling_core::units::{Mass, System};
use yeanling_pages::block::{Kind, LineLook};
use yeanling_pages::{Action, Screen};

use crate::phone::Phone;
use crate::reach::{fields, texts};

fn figures() -> Phone {
    let mut phone = Phone::at("2026-02-25 08:00");
    phone.open(Screen::Calculators);
    phone
}

/// Returns the figure under a name, with what stands beside it.
fn answer(phone: &Phone, label: &str) -> Option<String> {
    let page = phone.page();
    page.all().into_iter().find_map(|block| {
        let Kind::Group(group) = &block.kind else { return None };
        let named = |block: &yeanling_pages::Block| {
            matches!(&block.kind, Kind::Line(line) if line.look == LineLook::AnswerLabel && line.text.plain().replace('\u{a0}', " ") == label)
        };
        group.inside.first().filter(|first| named(first))?;
        group.inside.iter().find_map(|inside| match &inside.kind {
            Kind::Figure(it) => Some(format!("{} {} ({})", it.value, it.unit, it.also)),
            _ => None,
        })
    })
}

#[track_caller]
fn check(phone: &Phone, label: &str, expected: &str) {
    assert_eq!(answer(phone, label).as_deref(), Some(expected), "{label}");
}

/// Returns what stands in the field of this label.
fn stands(phone: &Phone, label: &str) -> String {
    let field = fields(&phone.page()).into_iter().find(|(_, field)| field.label == label);
    field.map(|(_, field)| field.value).expect("the field")
}

#[test]
fn first_milk_stands_there_once_a_weight_is_typed() {
    let mut phone = figures();
    phone.says("Enter the birth weight to see the volumes.");
    phone.write("Weight", "4");
    // 50, 100, 150 and 200 ml/kg: newborn figures, section 1 (AHDB).
    check(&phone, "A feed", "200 ml (6.8 fl oz)");
    check(&phone, "Together by 24 h", "800 ml (27.1 fl oz)");
    check(&phone, "Feeds in 24 h", "4  (if all is fed by hand)");
    phone.says_nowhere("Type the birth weight");
    phone.press("why? A feed");
    assert_eq!(phone.page().sheets.last().map(|sheet| sheet.title.clone()).as_deref(), Some("A feed"));
    assert!(phone.book.is_empty(), "nothing typed here is noted");
}

#[test]
fn a_rule_chosen_here_is_for_this_sum_alone_and_half_the_guidance_is_warned_of() {
    let mut phone = figures();
    phone.write("Weight", "4").press("10%");
    check(&phone, "Together by 24 h", "400 ml (13.5 fl oz)");
    phone.says("10% is half the guidance");
    assert_eq!(phone.flock.settings.day_rule, DayRule::Ahdb200);
    // The farm's own rule holds where nothing was chosen.
    let mut other = figures();
    other.note(Event::Chose(Choice::DayRule(DayRule::TenPercent)));
    other.write("Weight", "4");
    check(&other, "Together by 24 h", "400 ml (13.5 fl oz)");
}

#[test]
fn a_weight_that_may_be_in_pounds_is_asked_about_and_either_answer_holds() {
    let mut phone = figures();
    phone.write("Weight", "9").says("9.0\u{a0}kg is very heavy for a newborn. Did you mean 9.0\u{a0}lb?");
    assert_eq!(answer(&phone, "A feed"), None, "no volume before it is answered");
    let mut kept = phone.clone();
    kept.press("No, 9.0 kg");
    check(&kept, "Together by 24 h", "1800 ml (60.9 fl oz)");
    assert_eq!(stands(&kept, "Weight"), "9");
    // Other digits are asked about anew.
    kept.write("Weight", "8.5").says("Did you mean");
    phone.press("Yes, 9.0 lb");
    assert_eq!(stands(&phone, "Weight"), "9");
    check(&phone, "A feed", "205 ml (6.9 fl oz)");
    phone.says_nowhere("Did you mean");
}

#[test]
fn the_window_is_told_by_hours_or_by_the_time_of_birth() {
    let mut phone = figures();
    phone.press("Time left").says("Enter its age");
    phone.write("Age in hours", "1 h 20");
    check(&phone, "Time left for colostrum", "22 h 40 min  (left of 24 h)");
    phone.says("Still on target");
    phone.write("Age in hours", "soon").says("“soon” is not an age. Type it like 1.5 or 1 h 20.");
    assert_eq!(stands(&phone, "Age in hours"), "soon");
    phone.write("Age in hours", "30");
    check(&phone, "Time left for colostrum", "Closed  (at 24 h)");
    phone.press("By time of birth").write("Born at", "23:00").says("9 h old");
    check(&phone, "Time left for colostrum", "15 h  (left of 24 h)");
    phone.later(60);
    check(&phone, "Time left for colostrum", "14 h  (left of 24 h)");
}

#[test]
fn a_bottle_lamb_at_its_cap_reads_as_one_volume_and_a_birth_weight_is_not_its_weight_today() {
    let mut phone = figures();
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.write("Weight", "6.8").press("Bottle");
    assert_eq!(stands(&phone, "Weight today"), "");
    phone.write("Age in days", "9").says("No weight, so no cap for the day");
    phone.write("Weight today", "6.8");
    let whole = |label| answer(&phone, label).expect("the answer");
    let number = |text: String| text.split_once(" (").map(|(number, _)| number.to_owned());
    assert_eq!(number(whole("In the day")), number(whole("Never over, in a day")));
    phone.says_nowhere("No weight, so no cap").says("The table says more than this lamb may have");
    phone.write("Age in days", "ten").says("“ten” is not a number of days. Type it like 10.");
}

#[test]
fn powder_until_weaning_is_planned_and_held_against_what_is_in_store() {
    let mut phone = figures();
    phone.press("Bottle").write("Lambs", "3");
    assert!(answer(&phone, "Still needed").is_some_and(|wanted| wanted.contains("kg")));
    phone.write("Powder in store", "500").says("Enough");
    phone.write("Powder in store", "1").says("Short of");
    phone.write("Lambs", "some").says("“some” is not a number of lambs. Type it like 3.");
    // What was typed stays while another figure is looked at.
    phone.press("Time left").press("Bottle");
    assert_eq!(stands(&phone, "Lambs"), "some");
}

#[test]
fn weaning_is_told_by_any_rule_and_what_is_unknown_is_not_met() {
    let mut phone = figures();
    phone.press("Weaning").says("Enter its age in days");
    phone.write("Age in days", "42").write("Weight today", "16").press("Yes").says("Not enough known yet");
    phone.says("Not known: 2.5 times its birth weight (not known)");
    phone.write("Birth weight", "4").says("Ready to wean");
    phone.press("Not yet").says_nowhere("Ready to wean");
    // By another rule its weight does not count.
    let other = phone.pressables().into_iter().find(|one| one.label.starts_with("the four-week rule"));
    phone.act(&other.expect("the rule").does);
    phone.says("Not yet, by the four-week rule").says_nowhere("times its birth weight, which");
    phone.write("Weight today", "8.5").press("Yes").says("Ready to wean, by the four-week rule");
    phone.write("Weight today", "160").says("160");
    assert_eq!(stands(&phone, "Weight today"), "160");
}

#[test]
fn a_bag_is_good_or_poor_its_feed_is_counted_and_its_age_held_against_each_source() {
    let mut phone = figures();
    phone.press("Colostrum quality").write("Brix", "265");
    phone.says("265% is out of range. Enter 0% to 40%. Did you mean 26.5?");
    phone.write("Brix", "26.5").says("good ewe colostrum");
    phone.write("Brix", "24").says("The mark of 22 is for cows only");
    phone.write("This feed", "250").says("Enter the antibody in a liter");
    phone.write("Antibody in it", "50");
    check(&phone, "Antibody in this feed", "12.5 g (42% of the 30 g wanted in 24 h)");
    phone.press("why? Colostrum, antibody").says("good at 20 g/L or more");
    phone.act(&Action::Close);
    phone.write("Antibody in it", "5000").says("5000 g/L is out of range.");
    phone.write("Put in on", "2025-05-25").says("Good for").says("By 6 months").says("By 2 years");
    phone.press("Fridge").says("Too old for the fridge").says_nowhere("By 6 months");
    phone.write("Put in on", "2026-03-05").says("That day is in the future.");
    phone.write("Water for thawing", "50").says("Hotter than the strictest source allows. Add cold water.");
    phone.write("Antibody (IgG) in the lamb’s serum", "12").says("suggests that too little got through");
    phone.says_nowhere("Taken early");
    phone.press("before 24 h").says("Taken early");
}

#[test]
fn the_weather_is_judged_outdoors_by_the_limit_and_under_a_roof_by_the_air_alone() {
    let mut phone = figures();
    phone.press("Chill").press("outdoors").says("Enter all three");
    phone.write("Air", "5").write("Wind", "-2").says("-2 m/s is out of range.");
    phone.write("Wind", "60").says("Did you mean 60 km/h?");
    phone.write("Wind", "18 km/h").write("Rain in the day", "10");
    // Nixon-Smith 1972 at 5 °C, 5 m/s, 10 mm: 1270.9 kJ/m²/h.
    check(&phone, "Chill index, outdoors", "1271 kJ/m²/h ()");
    phone.says("High risk for lambs: 1271 kJ/m²/h is over the limit (Agriculture Victoria, 1000).");
    phone.press("under a roof").says("For outdoors only.").says("a wet lamb can chill under a roof too");
    phone.write("Air", "141").says("141");
    assert_eq!(stands(&phone, "Air"), "141");
}

#[test]
fn a_farm_in_fahrenheit_miles_and_inches_gets_the_same_index() {
    let mut phone = figures();
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.press("Chill").press("outdoors");
    phone.write("Air", "41").write("Wind", "11.2").write("Rain in the day", "0.39");
    // The same air, wind and rain as 5 °C, 5 m/s and 10 mm, but for what the rounding leaves.
    let index = answer(&phone, "Chill index, outdoors").expect("the index");
    assert!(index.starts_with("126") || index.starts_with("127"), "{index}");
    phone.write("Rain in the day", "-1").says("of rain a day is out of range.");
    assert_eq!(stands(&phone, "Rain in the day"), "-1");
    phone.write("Air", "141").tells("141.0 °F is out of range.");
    assert_eq!(stands(&phone, "Air"), "141");
}

#[test]
fn the_lambs_at_most_risk_stand_there_the_worst_first() {
    let mut phone = Phone::at("2026-02-25 08:00");
    let dam = phone.ewe("12");
    let [light, heavy] = [phone.lamb(dam), phone.lamb(dam)];
    phone.note(Event::Weighed { lamb: light, mass: Mass::from_kilograms(2.7) });
    phone.note(Event::Weighed { lamb: heavy, mass: Mass::from_kilograms(4.2) });
    phone.open(Screen::Calculators).press("Chill");
    phone.says("It is under a day old. It is under 3.0\u{a0}kg. It is from a big litter.");
    let all = texts(&phone.page());
    let place = |name: &str| all.iter().position(|text| text == name).expect("a row");
    assert!(place("12a") < place("12b"));
    phone.later(8 * 24 * 60).says_nowhere("In your book");
}

#[test]
fn what_a_scouring_lamb_drinks_is_told_once_it_may_swallow_and_is_not_too_dry() {
    let mut phone = figures();
    phone.press("Scours").write("Weight today", "5").press("6%").says("Call your vet today");
    phone.says("Enter its weight, how dry it is and the answer above to see the fluids.");
    assert_eq!(answer(&phone, "In 24 h, at least"), None, "nobody said that it swallows");
    phone.press("Yes, all of it");
    // infovets and dvm360, worked: 300 and 265 ml, 565 ml in 24 h; never over 50 ml/kg at once.
    check(&phone, "In 24 h, at least", "565 ml (19.1 fl oz)");
    check(&phone, "Lost so far", "300 ml (10.1 fl oz)");
    check(&phone, "A day’s upkeep", "265 ml (9.0 fl oz)");
    phone.says("every 3 to 6 hours").says("milk goes on");
    assert!(answer(&phone, "Each time, at most").is_some_and(|most| most.starts_with("250 ml")));
    phone.press("why? Lost so far").says("300 ml");
    phone.act(&Action::Close);
    let mut cannot = phone.clone();
    cannot.press("No, or not sure").says("Nothing by mouth").says("Call your vet now");
    assert_eq!(answer(&cannot, "In 24 h, at least"), None);
    phone.press("over 8%").says("needs fluids into a vein");
    assert_eq!(answer(&phone, "In 24 h, at least"), None);
    assert!(phone.book.is_empty(), "nothing typed here is noted");
}

#[test]
fn a_lamb_that_may_not_drink_is_told_without_a_weight() {
    let mut phone = figures();
    phone.press("Scours").press("over 8%").says("needs fluids into a vein");
    phone.press("up to 5%").press("No, or not sure").says("Nothing by mouth");
    phone.press("Yes, all of it").says("Enter its weight");
}

#[test]
fn ketones_are_told_in_three_bands_with_how_far_sources_differ() {
    let mut phone = figures();
    phone.press("Ketones").says("Enter a reading");
    phone.write("Ketones (BHB)", "0.7").says("Under 0.8 mmol/L: low.");
    phone.says("A low reading cancels no sign.");
    phone.write("Ketones (BHB)", "0.9").says("ketotic");
    phone.press("why? Ketones");
    phone.says("Another meter (Ratanapob 2019), from 1 mmol/L: not yet ketotic");
    phone.says("the laboratory would read 0.6 mmol/L");
    phone.act(&Action::Close);
    phone.write("Ketones (BHB)", "3").says("call your vet now");
    phone.write("Ketones (BHB)", "30").says("30 mmol/L is out of range. Enter 0 mmol/L to 8 mmol/L.");
}
