//! One group: its ram, its ewes with their days, and many ewes put in at once.

mod add;
mod kin;
mod marks;
mod ram;

use std::collections::BTreeSet;

use yeanling_core::book::{EntryId, Event, EweId, GroupId};
use yeanling_core::flock::{Flock, Group, GroupStay, Line, Staying};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Moment;
use yeanling_words::common::{field_time, read_field_day};
use yeanling_words::{animals, frame, group as words, plan, score_ewes, season_forecast};

pub(crate) use add::{save as save_ewes, sheet as add_sheet};
pub(crate) use marks::{crayon_sheet, save as save_marks, sheet as marks_sheet};
pub(crate) use ram::{save as save_ram, save_stays, sheet as ram_sheet, stays_sheet};

use crate::block::{Kind, Notice, NoticeKind, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page, key_of};
use crate::view::View;
use crate::{Action, Button, Key, Screen, Sheet, season, timeline};

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft, id: GroupId) -> Page {
    let Some(group) = view.flock.groups.get(&id) else {
        let gone = Page::new(frame::NOT_HERE).back(Screen::Season, season_forecast::TITLE);
        return gone.blocks(Blocks::new().gone());
    };
    let stands = group.parted.is_none();
    let blocks = if stands {
        kin::of_rams_in(view, group)
            .then(chores(group))
            .then(came_late(view.flock, group))
            .then(season::plans(view, Some(id)))
    } else {
        Blocks::new().notice("parted", NoticeKind::Calm, words::PARTED, [])
    };
    let blocks =
        blocks.then(season::dates(view, draft, &[group])).section("ewes", words::EWES, ewes(view, group));
    let part = Button::new("part", words::PART, Action::Note(vec![Event::GroupParted { group: id }])).quiet();
    Page::new(&group.name)
        .back(Screen::Season, season_forecast::TITLE)
        .under(words::stands(group, season::ram_planned(view, id), view.now.local().date()))
        .blocks(if stands { blocks.button(part) } else { blocks }.then(timeline::of_group(view, id)))
}

/// Ewes put in, the ram in and out, and the way to go through them.
fn chores(group: &Group) -> Blocks {
    let ram = if group.rams_in().next().is_some() {
        Button::new("ram-out", words::RAM_OUT, Action::Ask(Sheet::RamOut(group.id)))
    } else {
        Button::new("ram-in", words::RAM_IN, Action::Ask(Sheet::RamIn(group.id)))
    };
    let add = Button::new("add", words::ADD, Action::Ask(Sheet::AddEwes(group.id))).filled();
    let score_ewes = Button::new("race", score_ewes::LINK, Action::Go(Screen::ScoreEwes(group.id)));
    let stays = group.staying().is_some_and(|staying| staying == Staying::Unsaid);
    let stays =
        stays.then(|| Button::new("ram-stays", plan::HE_STAYS, Action::Ask(Sheet::RamStays(group.id))));
    let met = group.rams_in().next().is_some() && group.ewes().next().is_some();
    let marks = met.then(|| Button::new("marks", words::MARKS, Action::Ask(Sheet::Marks(group.id))));
    Blocks::new().buttons(2, [add, ram].into_iter().chain(stays).chain(marks)).button(score_ewes)
}

/// Says that ewes stand in the group only since after the ram came, which counts from then, and offers to mend it.
fn came_late(flock: &Flock, group: &Group) -> Blocks {
    let Some((came, _)) = group.ram_times().last().copied() else { return Blocks::new() };
    let late = |stay: &&GroupStay| stay.left.is_none() && stay.joined.local().date() > came.local().date();
    let stays: Vec<GroupStay> = group.members.iter().filter(late).copied().collect();
    let Some(since) = stays.iter().map(|stay| stay.joined).min() else { return Blocks::new() };
    let (day, since) = (came.local().date(), since.local().date());
    let mend = Action::Note(moved(flock, &stays, came));
    let inside = Blocks::new()
        .text(words::came_late(stays.len(), since, day))
        .button(Button::new("with-him", words::with_him_from(day), mend).small());
    let notice = Notice { kind: NoticeKind::Warn, inside: inside.into(), buttons: Vec::new() };
    Blocks::new().add("came-late", Kind::Notice(notice))
}

/// What moves stays to an earlier instant; who came into the book only since is moved too.
fn moved(flock: &Flock, stays: &[GroupStay], to: Moment) -> Vec<Event> {
    let mut entries: BTreeSet<EntryId> = BTreeSet::new();
    for stay in stays {
        entries.insert(stay.entry);
        entries.extend(flock.ewe(stay.ewe).filter(|ewe| ewe.came > to).map(|ewe| ewe.id.entry()));
    }
    let of_them = |line: &&Line| !line.struck && entries.contains(&line.entry);
    let lines = flock.lines.iter().filter(of_them);
    lines
        .filter(|line| matches!(line.event, Event::EweCame { .. } | Event::JoinedGroup { .. }))
        .map(|line| Event::Amended { entry: line.entry, event: Box::new(line.event.clone()), at: to })
        .collect()
}

/// Its ewes, each with her days.
fn ewes(view: &View, group: &Group) -> Blocks {
    let mut ewes: Vec<(EweId, String)> =
        group.ewes().map(|ewe| (ewe, animals::ewe_of(view.flock, ewe))).collect();
    if ewes.is_empty() {
        return Blocks::new().text(words::NO_EWES);
    }
    // By length first, so that 2 comes before 10.
    ewes.sort_small_by(|one, other| (one.1.len(), &one.1).cmp(&(other.1.len(), &other.1)));
    Blocks::new().rows("its-ewes", ewes.into_iter().map(|(ewe, name)| row(view, group.id, ewe, name)))
}

fn row(view: &View, group: GroupId, ewe: EweId, name: String) -> (Key, Row) {
    let out = Button::new("out", words::OUT, Action::Note(vec![Event::LeftGroup { ewe, group }]));
    let out = out.small().named(format!("{}, {name}", words::OUT));
    let row = Row::new(name).text(days(view, ewe).unwrap_or_default()).to(Screen::Ewe(ewe)).action(out);
    (key_of("ewe", ewe.entry()), row)
}

/// When she may lamb, or did.
fn days(view: &View, ewe: EweId) -> Option<String> {
    if let Some(one) = view.lambing_forecasts.of(ewe) {
        return Some(match &one.lambing_forecast {
            Ok(lambing_forecast) => season_forecast::days(lambing_forecast),
            Err(why) => season_forecast::no_outlook(why),
        });
    }
    let windows = view.flock.windows_of(ewe);
    let litter = windows.iter().rev().find_map(|window| view.flock.litter_of_window(window))?;
    Some(season_forecast::has_lambed(litter.began.local().date(), litter.lambs.len()))
}

/// The morning of a day, or now when that is today: nothing can be noted that has not come yet.
fn on_day(view: &View, typed: &str) -> Option<Moment> {
    read_field_day(typed).map(|day| view.on_day(day))
}

fn day_of(moment: Moment) -> String {
    field_time(moment).chars().take(10).collect()
}
