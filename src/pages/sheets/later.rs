//! The sheet in which a duty is put off for a while: to its red limit and no further.

use chrono::Days;
use yeanling_core::book::{Event, GroupId, Planning};
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{Duty, may_wait_until};
use yeanling_words::common::{clock, short_date, span};
use yeanling_words::{plan, watch as words};

use super::parts::whose;
use crate::Action;
use crate::block::{Choice, Choices};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

/// For how many minutes a duty can be put off, as far as its limit allows.
const WAITS: [i64; 4] = [10, 15, 30, 60];

/// Returns the sheet.
pub(super) fn sheet(view: &View, duty: &Duty) -> SheetPage {
    let (animal, kind, now) = (duty.subject(), duty.task.kind(), view.now);
    let most = may_wait_until(view.flock, animal, kind, now).unwrap_or(now);
    let until = WAITS.map(|minutes| now + TimeDelta::minutes(minutes));
    let options: Vec<Choice> = until
        .into_iter()
        .filter(|until| *until <= most)
        .map(|until| {
            let event = Event::PutOff { animal, duty: kind, until };
            Choice::new(clock(until), Action::Answer(vec![event])).note(span(until.since(now)))
        })
        .collect();
    let lead = words::later_until(&clock(most), options.is_empty());
    let choices = Choices::new(words::LATER_ASK, options, None);
    SheetPage::new(words::LATER_ASK, Blocks::new().text(lead).choices("later-until", choices))
        .whose(whose(view, animal))
}

/// For how many days a step of extra feed can be put off.
const FEED_WAITS: [u8; 3] = [1, 3, 7];

/// Returns the sheet that puts the next step of a group's extra feed off.
pub(super) fn feed(view: &View, group: GroupId) -> SheetPage {
    let today = view.now.local().date();
    let option = |days: u8| {
        let until = today.checked_add_days(Days::new(days.into())).unwrap_or(today);
        let event = Event::Planning(Planning::FeedPutOff { group, until });
        Choice::new(plan::put_off_days(days), Action::Answer(vec![event])).note(short_date(until))
    };
    let choices = Choices::new(plan::PUT_OFF_ASK, FEED_WAITS.map(option).to_vec(), None);
    let name = view.flock.groups.get(&group).map(|group| group.name.clone()).unwrap_or_default();
    SheetPage::new(plan::PUT_OFF_ASK, Blocks::new().text(plan::PUT_OFF_TEXT).choices("feed-later", choices))
        .whose(name)
}
