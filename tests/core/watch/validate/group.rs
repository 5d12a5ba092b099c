//! A ewe is in one group at a time, and a ram goes out after he came in.

use yeanling_core::book::{Animal, EntryId, Event, EweId, GroupId, Planning};
use yeanling_core::units::{Mass, Moment, OutOfBounds, TimeDelta};
use yeanling_core::watch::{GroupRejection, Rejection, validate};

use super::amended;
use crate::flock::groups::day;
use crate::scribe::{MS, Scribe, kg};

/// A ewe in one of two groups since day 0; the ram came in on day 10. It is now day 100.
struct Field {
    scribe: Scribe,
    ewe: EweId,
    join: EntryId,
    texel: GroupId,
    suffolk: GroupId,
    ram: EntryId,
}

impl Field {
    fn new() -> Self {
        let mut scribe = Scribe::new(1);
        let ewe = scribe.ewe(day(-9), "101");
        let (texel, suffolk) = (scribe.group(day(-9), "Texel"), scribe.group(day(-9), "Suffolk"));
        let join = scribe.note(day(0), Event::JoinedGroup { ewe, group: texel });
        let ram = scribe.ram_in(day(10), texel);
        Self { scribe, ewe, join, texel, suffolk, ram }
    }

    fn try_at(&self, event: &Event, at: Moment) -> Result<(), Rejection> {
        validate(&self.scribe.flock(), &self.scribe.book, event, at, day(100))
    }

    #[track_caller]
    fn ok(&self, event: &Event, at: Moment) {
        assert_eq!(self.try_at(event, at), Ok(()), "{event:?}");
    }

    #[track_caller]
    fn check(&self, event: &Event, at: Moment, expected: &Rejection) {
        assert_eq!(self.try_at(event, at).as_ref(), Err(expected), "{event:?}");
    }

    fn joins(&self, group: GroupId) -> Event {
        Event::JoinedGroup { ewe: self.ewe, group }
    }
}

fn in_a_group(name: &str, since: Moment) -> Rejection {
    GroupRejection::InAGroup { name: name.to_owned(), since }.into()
}

#[test]
fn a_ewe_is_not_in_two_groups_over_the_same_days() {
    let mut field = Field::new();
    let texel = in_a_group("Texel", day(0));
    field.check(&field.joins(field.suffolk), day(20), &texel);
    field.check(&field.joins(field.texel), day(20), &texel);
    field.check(&field.joins(field.suffolk), day(-3), &texel);
    let out = field.scribe.note(day(27), Event::RamOut { group: field.texel });
    field.check(&field.joins(field.suffolk), day(27) - MS, &texel);
    field.ok(&field.joins(field.suffolk), day(27));
    field.scribe.strike(day(28), out);
    field.scribe.note(day(30), Event::LeftGroup { ewe: field.ewe, group: field.texel });
    field.check(&field.joins(field.suffolk), day(30) - MS, &texel);
    field.ok(&field.joins(field.suffolk), day(30));
    field.ok(&field.joins(field.texel), day(30));
}

#[test]
fn a_stay_that_comes_later_stands_in_the_way_of_one_without_an_end() {
    let mut field = Field::new();
    let (ewe, texel, suffolk) = (field.ewe, field.texel, field.suffolk);
    field.scribe.note(day(12), Event::LeftGroup { ewe, group: texel });
    field.scribe.note(day(40), Event::JoinedGroup { ewe, group: suffolk });
    field.check(&field.joins(texel), day(20), &in_a_group("Suffolk", day(40)));
    field.scribe.note(day(35), Event::RamOut { group: texel });
    field.ok(&field.joins(texel), day(20));
}

#[test]
fn a_joining_is_moved_without_standing_in_its_own_way() {
    let mut field = Field::new();
    let joins = field.joins(field.texel);
    field.ok(&amended(field.join, joins.clone(), day(5)), day(50));
    field.ok(&amended(field.join, field.joins(field.suffolk), day(5)), day(50));
    field.scribe.note(day(27), Event::RamOut { group: field.texel });
    let second = field.scribe.note(day(40), field.joins(field.suffolk));
    field.ok(&amended(second, field.joins(field.suffolk), day(30)), day(50));
    field.check(&amended(second, field.joins(field.suffolk), day(20)), day(50), &in_a_group("Texel", day(0)));
}

#[test]
fn only_who_is_in_a_group_can_leave_it() {
    let mut field = Field::new();
    let (ewe, texel, suffolk) = (field.ewe, field.texel, field.suffolk);
    let leaves = |group| Event::LeftGroup { ewe, group };
    let not = GroupRejection::NotInGroup.into();
    field.ok(&leaves(texel), day(0));
    field.check(&leaves(texel), day(0) - MS, &not);
    field.check(&leaves(suffolk), day(20), &not);
    let left = field.scribe.note(day(30), leaves(texel));
    field.check(&leaves(texel), day(31), &not);
    field.ok(&amended(left, leaves(texel), day(33)), day(50));
}

#[test]
fn a_ram_goes_out_after_he_came_in() {
    let mut field = Field::new();
    let (texel, suffolk) = (field.texel, field.suffolk);
    let out = Event::RamOut { group: texel };
    let before = |ram_in, ram_out| Rejection::from(GroupRejection::OutBeforeIn { ram_in, ram_out });
    field.check(&out, day(5), &before(day(10), day(5)));
    field.check(&out, day(10), &before(day(10), day(10)));
    field.ok(&out, day(10) + MS);
    field.check(&Event::RamOut { group: suffolk }, day(20), &GroupRejection::NoRamIn.into());
    let gone = field.scribe.note(day(27), out.clone());
    field.check(&out, day(30), &GroupRejection::NoRamIn.into());
    field.ok(&amended(gone, out.clone(), day(44)), day(50));
    field.check(&amended(gone, out, day(9)), day(50), &before(day(10), day(9)));
    let came = Event::RamIn { group: texel, ram: None, age: None };
    field.ok(&amended(field.ram, came.clone(), day(26)), day(50));
    field.check(&amended(field.ram, came, day(28)), day(50), &before(day(28), day(27)));
}

#[test]
fn a_group_broken_up_takes_no_one_and_is_broken_up_once_after_all_who_came() {
    let mut field = Field::new();
    let group = field.texel;
    let parted = Event::GroupParted { group };
    let none = GroupRejection::NoSuchGroup.into();
    let (at, later) = (day(9), day(10));
    field.check(&parted, at, &GroupRejection::UsedLater { at, later }.into());
    field.ok(&parted, later);
    let entry = field.scribe.note(day(50), parted.clone());
    let other = field.scribe.ewe(day(20), "102");
    let joins = Event::JoinedGroup { ewe: other, group };
    let ram = Event::RamIn { group, ram: None, age: None };
    for event in [&joins, &ram, &parted] {
        field.check(event, day(50), &none);
    }
    field.ok(&joins, day(50) - MS);
    field.ok(&amended(entry, parted, day(60)), day(70));
    field.ok(&Event::GroupNamed { group, name: "Old Texel".to_owned() }, day(60));
}

#[test]
fn what_is_not_in_the_book_is_in_no_group() {
    let field = Field::new();
    let mut elsewhere = Scribe::new(2);
    let (ewe, group) = (elsewhere.ewe(day(0), "9"), elsewhere.group(day(0), "?"));
    field.check(&Event::JoinedGroup { ewe, group: field.texel }, day(20), &Rejection::NoSuchAnimal);
    for event in [
        Event::JoinedGroup { ewe: field.ewe, group },
        Event::LeftGroup { ewe: field.ewe, group },
        Event::GroupNamed { group, name: "x".to_owned() },
        Event::GroupParted { group },
        Event::RamIn { group, ram: None, age: None },
        Event::RamOut { group },
        Event::CrayonChanged { group, color: "red".to_owned() },
        Event::FeedSet { group, mass: kg(0.1) },
        Event::BoosterGiven { group },
    ] {
        field.check(&event, day(20), &GroupRejection::NoSuchGroup.into());
    }
}

#[test]
fn the_dead_join_nothing() {
    let mut field = Field::new();
    field.scribe.note(day(20), Event::LeftGroup { ewe: field.ewe, group: field.texel });
    field.scribe.died(day(30), Animal::Ewe(field.ewe));
    let (at, died) = (day(30) + MS, day(30));
    field.check(&field.joins(field.suffolk), at, &Rejection::AfterDeath { at, died });
    field.ok(&field.joins(field.suffolk), died);
}

#[test]
fn names_and_colors_say_something() {
    let field = Field::new();
    let (ewe, group) = (field.ewe, field.texel);
    let long = "x".repeat(25);
    for (text, rejection) in
        [(" ", Rejection::NoText), (long.as_str(), Rejection::LongText { given: 25, most: 24 })]
    {
        let text = || text.to_owned();
        for event in [
            Event::GroupFormed { name: text() },
            Event::GroupNamed { group, name: text() },
            Event::CrayonChanged { group, color: text() },
            Event::CrayonMark { ewe, color: text() },
            Event::RamIn { group, ram: Some(text()), age: None },
        ] {
            field.check(&event, day(20), &rejection);
        }
    }
}

#[test]
fn a_step_of_feed_waits_for_a_day_to_come_and_two_weeks_at_most() {
    let field = Field::new();
    let until = |days: i64| {
        let until = day(days).local().date();
        (until, Event::Planning(Planning::FeedPutOff { group: field.texel, until }))
    };
    let (today, most) = (day(20).local().date(), day(34).local().date());
    for days in [20, 35] {
        let (given, event) = until(days);
        field.check(&event, day(20), &GroupRejection::NotAhead { day: given, today, most }.into());
    }
    field.ok(&until(21).1, day(20));
    field.ok(&until(34).1, day(20));
}

#[test]
fn an_extra_feed_is_no_more_than_a_ewe_eats() {
    let field = Field::new();
    let set = |kilograms| Event::FeedSet { group: field.texel, mass: kg(kilograms) };
    field.ok(&set(0.0), day(20));
    field.ok(&set(3.0), day(20));
    let out = OutOfBounds { given: kg(3.1), allowed: Mass::EXTRA_FEED };
    field.check(&set(3.1), day(20), &Rejection::Weight(out));
    let late = day(100) + TimeDelta::hours(1);
    field.check(&set(0.1), late, &Rejection::InFuture { at: late, now: day(100) });
}
