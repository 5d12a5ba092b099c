//! From September to September with two rams who stay: what is asked, what is told, and that the second year is no riddle.

use yeanling_core::book::{Event, EweId, GroupId, LambId, Life, Sex};
use yeanling_core::seasons::{keeping, put_to_ram, seasons};
use yeanling_pages::Screen;

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

/// Twelve ewes of a group with a ram who stays.
fn group(phone: &mut Phone, name: &str, tags: &str, ram: &str) -> GroupId {
    phone.open(Screen::Season).press("Form a group").write("Name", name).press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", tags).press("Put 12 ewes in");
    phone.press("Ram in").write("The ram’s name or tag, if you like", ram).press("Save");
    phone.press("He stays").press("He stays");
    group
}

fn ewes(phone: &Phone, group: GroupId) -> Vec<EweId> {
    phone.flock.groups[&group].ewes().collect()
}

fn lambs(phone: &mut Phone, ewe: EweId, sexes: &[Sex]) -> Vec<LambId> {
    let born = |sex: &Sex| Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(*sex), alive: true };
    sexes.iter().map(|sex| phone.note(born(sex)).as_lamb()).collect()
}

/// How many of a season's ewes were put to the ram, and how many lambed.
fn latest(phone: &Phone) -> (usize, usize) {
    let all = seasons(&phone.flock);
    let season = all.first().expect("a season");
    let dams: std::collections::BTreeSet<EweId> =
        season.lambs.iter().filter_map(|lamb| phone.flock.lamb(*lamb)?.dam).collect();
    (put_to_ram(&phone.flock, season).len(), dams.len())
}

#[test]
fn from_september_to_september_with_two_rams_who_stay() {
    let mut phone = Phone::at("2026-09-07 08:00");
    let groups = [group(&mut phone, "Hill", "1-12", "Flint"), group(&mut phone, "Brook", "21-32", "Boss")];
    phone.open(Screen::Season).says("24 put to the ram · none has lambed");
    // Through the autumn nobody asks for a ram to come out, and no day of his makes a ewe overdue.
    for _ in 0..20 {
        phone.later(7 * DAY).open(Screen::Watch).has_no_button("He is out");
        phone.open(Screen::Season).says_nowhere("Overdue");
    }
    // From the end of January ewes lamb, two or three a week of each group, some with twins.
    let mut ewe_lambs: Vec<LambId> = Vec::new();
    let all: Vec<EweId> = groups.iter().flat_map(|group| ewes(&phone, *group)).collect();
    for (place, ewe) in all.iter().enumerate() {
        phone.later(if place == 0 { 5 * DAY } else { 2 * DAY });
        let sexes: &[Sex] = if place % 3 == 0 { &[Sex::Ewe] } else { &[Sex::Ewe, Sex::Ram] };
        ewe_lambs.extend(lambs(&mut phone, *ewe, sexes).first());
    }
    assert_eq!(latest(&phone), (24, 24));
    phone.open(Screen::Season).says("24 have lambed");
    // Nobody went without lambs, and no rule can say so while he is in.
    assert!(keeping(&phone.flock, phone.now).iter().all(|one| one.record.barren == 0));
    // In summer the first ewe lambs are five months old, and their fathers are in.
    phone.later(100 * DAY).open(Screen::Season).says("Ewe lambs, keep apart from the ram");
    phone.says("may come into heat from");
    // Two of them are kept and join a group of their own; the rams stay where they are.
    let kept: Vec<EweId> = ewe_lambs[..2]
        .iter()
        .map(|lamb| phone.note(Event::Life(Life::KeptAsEwe { lamb: *lamb })).as_ewe())
        .collect();
    assert!(kept.iter().all(|ewe| phone.flock.ewe(*ewe).is_some_and(|ewe| ewe.stays.is_empty())));
    // In September the rams were in for a year: the ewes are not late, nor counted twice, and one of them lambs again.
    let september = chrono::NaiveDate::from_ymd_opt(2027, 9, 7).expect("a day");
    let days = (september - phone.now.local().date()).num_days();
    phone.later(days.max(1) * DAY).open(Screen::Watch).has_no_button("He is out");
    lambs(&mut phone, all[0], &[Sex::Ram]);
    phone.open(Screen::Ewe(all[0])).says_nowhere("Another ram");
    assert!(keeping(&phone.flock, phone.now).iter().all(|one| one.record.barren == 0));
    let (put, lambed) = latest(&phone);
    assert!(lambed == 1 && put <= 24, "{lambed} of {put}");
    // The year stays as it was, and a new group takes ewes of both without a refusal.
    let year: Vec<(usize, usize)> = seasons(&phone.flock)
        .iter()
        .map(|season| (season.lambs.len(), put_to_ram(&phone.flock, season).len()))
        .collect();
    assert_eq!(year.last(), Some(&(40, 24)), "{year:?}");
    phone.open(Screen::Plan).says_nowhere(yeanling_words::what_if::NEXT);
    phone.open(Screen::Season).press("Form a group").write("Name", "Young").press("Save");
    phone.press("Add ewes").write("Tags: a list or ranges", "2, 3, 22").press("Put 3 ewes in").says("3 ewes");
    for group in groups {
        phone.open(Screen::Group(group)).says("he stays until each ewe has lambed");
    }
}
