//! One group: its ram, its ewes with their days, and many ewes put in at once.

use std::collections::BTreeSet;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use chrono::NaiveTime;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{EntryId, Event, EweId, GroupId};
use yeanling_core::figures::Outlooks;
use yeanling_core::flock::{Flock, GroupStay, Line};
use yeanling_core::units::{Moment, TagList, parse_tags};

use super::dates::dates;
use crate::farm::{Farm, use_farm};
use crate::parts::{
    Button, Buttons, Empty, Field, FieldKind, LinkButton, Notice, NoticeKind, Page, Row, RowState, Rows,
    Said, Section, Sheet, SmallButton, Title, Weight,
};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::common::{field_time, read_field_day};
use crate::words::{ahead, animals, frame, group as words, race, refusals};

/// Which sheet lies open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Add,
    RamIn,
    RamOut,
}

/// One group.
#[component]
pub(crate) fn GroupScreen(
    /// Which.
    id: GroupId,
) -> impl IntoView {
    let farm = use_farm();
    let open = RwSignal::new(Open::Nothing);
    let group = Memo::new(move |_| farm.with(|ground| ground.flock.groups.get(&id).cloned()));
    let there = Memo::new(move |_| group.with(Option::is_some));
    let parted =
        Memo::new(move |_| group.with(|group| group.as_ref().is_some_and(|group| group.parted.is_some())));
    let ram = Memo::new(move |_| {
        group.with(|group| group.as_ref().is_some_and(|group| group.rams_in().next().is_some()))
    });
    let name = Signal::derive(move || {
        group.with(|group| group.as_ref().map(|group| group.name.clone()).unwrap_or_default())
    });
    let sub = Signal::derive(move || {
        let today = farm.now().local().date();
        group.with(|group| group.as_ref().map(|group| words::stands(group, today)).unwrap_or_default())
    });
    let part = move || {
        farm.tap(Event::GroupParted { group: id });
    };
    view! {
        <Page>
            <Top back=(Screen::Season, ahead::TITLE.to_owned()) />
            {live(move || {
                if !there.get() {
                    return view! { <Title text=frame::GONE /><Standing /><Empty text=frame::GONE /> }.into_any();
                }
                view! {
                    <Title text=name>
                        <Said text=sub />
                    </Title>
                    <Standing />
                    {live(move || {
                        if parted.get() {
                            return view! { <Notice kind=NoticeKind::Calm><p>{words::PARTED}</p></Notice> }.into_any();
                        }
                        view! {
                            <Buttons columns=2>
                                <Button
                                    label=words::ADD
                                    on_press=move || open.set(Open::Add)
                                    weight=Weight::Filled
                                />
                                {live(move || {
                                    let (label, sheet) =
                                        if ram.get() { (words::RAM_OUT, Open::RamOut) } else { (words::RAM_IN, Open::RamIn) };
                                    view! { <Button label=label on_press=move || open.set(sheet) /> }.into_any()
                                })}
                            </Buttons>
                            <LinkButton href=Screen::Race(id).hash() label=race::LINK />
                        }
                            .into_any()
                    })}
                    {live(move || (!parted.get()).then(|| view! { <CameLate id=id /> }).into_any())}
                    {dates(vec![id])}
                    <Ewes id=id />
                    {live(move || (!parted.get()).then(|| view! { <Button label=words::PART on_press=part weight=Weight::Quiet /> }).into_any())}
                    {live(move || match open.get() {
                        Open::Nothing => ().into_any(),
                        Open::Add => view! { <AddSheet id=id on_close=move || open.set(Open::Nothing) /> }.into_any(),
                        Open::RamIn => ram_sheet(id, true, Callback::new(move |()| open.set(Open::Nothing))),
                        Open::RamOut => ram_sheet(id, false, Callback::new(move |()| open.set(Open::Nothing))),
                    })}
                }
                    .into_any()
            })}
        </Page>
    }
}

/// Says that ewes stand in the group only since after the ram came, which counts from then, and offers to mend it.
#[component]
fn CameLate(id: GroupId) -> impl IntoView {
    let farm = use_farm();
    let late = Memo::new(move |_| {
        farm.with(|ground| {
            let group = ground.flock.groups.get(&id)?;
            let (came, _) = *group.ram_times().last()?;
            let late =
                |stay: &&GroupStay| stay.left.is_none() && stay.joined.local().date() > came.local().date();
            let stays: Vec<GroupStay> = group.members.iter().filter(late).copied().collect();
            let since = stays.iter().map(|stay| stay.joined).min()?;
            Some((came, since, stays))
        })
    });
    let mend = move || {
        let Some((came, _, stays)) = late.get_untracked() else { return };
        farm.tap_all(farm.peek(|ground| moved(&ground.flock, &stays, came)));
    };
    live(move || {
        late.get()
            .map(|(came, since, stays)| {
                let (came, since) = (came.local().date(), since.local().date());
                view! {
                    <Notice kind=NoticeKind::Warn>
                        <p>{words::came_late(stays.len(), since, came)}</p>
                        <SmallButton
                            label=words::with_him_from(came)
                            name=words::with_him_from(came)
                            on_press=mend
                        />
                    </Notice>
                }
            })
            .into_any()
    })
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

/// A ewe as she stands in her group.
type EweRow = (EweId, String, String);

/// Its ewes, each with her days.
#[component]
fn Ewes(id: GroupId) -> impl IntoView {
    let farm = use_farm();
    let rows = Memo::new(move |_| farm.with_outlooks(|ground, outlooks| ewes(&ground.flock, id, outlooks)));
    let none = Memo::new(move |_| rows.with(Vec::is_empty));
    let out = move |ewe: EweId| {
        farm.tap(Event::LeftGroup { ewe, group: id });
    };
    view! {
        <Section title=words::EWES>
            {live(move || none.get().then(|| view! { <p>{words::NO_EWES}</p> }).into_any())}
            <Rows>
                {each(
                    move || rows.get(),
                    |(id, name, text)| format!("{id} {name} {text}"),
                    move |(ewe, name, text)| {
                        let named = format!("{}, {name}", words::OUT);
                        let action = move || view! {
                            <SmallButton label=words::OUT name=named.clone() on_press=move || out(ewe) />
                        };
                        view! {
                            <Row
                                name=name
                                text=text
                                state=Signal::stored(RowState::Coming)
                                href=Screen::Ewe(ewe).hash()
                                action=action
                            />
                        }
                        .into_any()
                    },
                )}
            </Rows>
        </Section>
    }
}

fn ewes(flock: &Flock, id: GroupId, outlooks: &Outlooks) -> Vec<EweRow> {
    let Some(group) = flock.groups.get(&id) else { return Vec::new() };
    let days = |ewe: EweId| {
        if let Some(one) = outlooks.of(ewe) {
            return Some(match &one.outlook {
                Ok(outlook) => ahead::days(outlook),
                Err(why) => ahead::no_outlook(why),
            });
        }
        let windows = flock.windows_of(ewe);
        let litter = windows.iter().rev().find_map(|window| flock.litter_of_window(window))?;
        Some(ahead::has_lambed(litter.began.local().date(), litter.lambs.len()))
    };
    let mut rows: Vec<EweRow> =
        group.ewes().map(|ewe| (ewe, animals::ewe_of(flock, ewe), days(ewe).unwrap_or_default())).collect();
    // By length first, so that 2 comes before 10.
    rows.arrange_by(|one, other| (one.1.len(), &one.1).cmp(&(other.1.len(), &other.1)));
    rows
}

/// The morning of a day, or now when that is today: nothing can be noted that has not come yet.
fn on_day(farm: Farm, typed: &str) -> Option<Moment> {
    let now = farm.peek_now();
    let day = read_field_day(typed)?;
    let morning = farm.at_local(day.and_time(NaiveTime::from_hms_opt(8, 0, 0)?));
    Some(if day == now.local().date() { now } else { morning })
}

fn day_of(moment: Moment) -> String {
    field_time(moment).chars().take(10).collect()
}

/// Notes when the ram went in or came out.
fn ram_sheet(group: GroupId, goes_in: bool, on_close: Callback<()>) -> AnyView {
    let farm = use_farm();
    let day = RwSignal::new(day_of(farm.peek_now()));
    let ram = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let save = move || {
        let Some(at) = on_day(farm, &day.get_untracked()) else { return error.set(words::NO_DAY.to_owned()) };
        let ram = Some(ram.get_untracked().trim().to_owned()).filter(|ram| !ram.is_empty());
        let event = if goes_in { Event::RamIn { group, ram, age: None } } else { Event::RamOut { group } };
        match farm.note_at(event, at) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                error.set(refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system())));
            }
        }
    };
    let title = if goes_in { words::RAM_IN_ASK } else { words::RAM_OUT_ASK };
    view! {
        <Sheet title=title on_close=on_close>
            <Field label=words::DAY value=day kind=FieldKind::Date error=error />
            {goes_in.then(|| view! { <Field label=words::RAM value=ram /> }.into_any())}
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
    .into_any()
}

/// What a typed list of tags comes to in this flock.
#[derive(Clone, Debug, Default, PartialEq)]
struct Listed {
    known: Vec<EweId>,
    fresh: Vec<String>,
    list: TagList,
}

fn listed(flock: &Flock, text: &str) -> Listed {
    let list = parse_tags(text);
    let (mut known, mut fresh) = (Vec::new(), Vec::new());
    for tag in &list.tags {
        let same = |ewe: &&yeanling_core::flock::Ewe| {
            ewe.lives() && ewe.tag.as_ref().is_some_and(|there| there.eq_ignore_ascii_case(tag))
        };
        match flock.ewes.values().find(same) {
            Some(ewe) => known.push(ewe.id),
            None => fresh.push(tag.clone()),
        }
    }
    Listed { known, fresh, list }
}

/// Puts many ewes in at once: a list is typed, what it comes to is shown, and one press does it all or nothing.
#[component]
fn AddSheet(id: GroupId, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let text = RwSignal::new(String::new());
    let since = farm.peek(|ground| {
        let ram = ground.flock.groups.get(&id).and_then(|group| group.ram_times().last().copied());
        ram.map(|(came, _)| came)
    });
    let day = RwSignal::new(day_of(since.unwrap_or_else(|| farm.peek_now())));
    let error = RwSignal::new(String::new());
    let shown = Memo::new(move |_| farm.with(|ground| listed(&ground.flock, &text.get())));
    let lines = move || {
        shown.with(|shown| {
            words::preview(shown.known.len(), &shown.fresh, &shown.list.repeated, &shown.list.unread)
        })
    };
    let count = Memo::new(move |_| shown.with(|shown| shown.known.len() + shown.fresh.len()));
    let save = move || {
        error.set(String::new());
        // The ram's own instant, where his day was left as it stood: else the morning of that day.
        let at = match since.filter(|since| day_of(*since) == day.get_untracked()) {
            Some(since) => Some(since),
            None => on_day(farm, &day.get_untracked()),
        };
        let Some(at) = at else { return error.set(words::NO_DAY.to_owned()) };
        let Listed { known, fresh, .. } = shown.get_untracked();
        match farm.join_group(id, &known, &fresh, at) {
            Ok(()) => on_close.run(()),
            Err((who, refusal)) => {
                let said = refusals::refusal(&refusal, farm.peek_now(), untrack(|| farm.system()));
                let who = who.map(|who| farm.peek(|ground| animals::ewe_of(&ground.flock, who)));
                error.set(who.map_or_else(|| said.clone(), |who| format!("{who}: {said}")));
            }
        }
    };
    view! {
        <Sheet title=words::ADD_ASK on_close=on_close>
            <Field label=words::TAGS value=text kind=FieldKind::Long hint=words::TAGS_HINT error=error />
            {live(move || {
                lines().into_iter().map(|line| view! { <p><Said text=line /></p> }.into_any()).collect_view().into_any()
            })}
            <Field label=words::SINCE value=day kind=FieldKind::Date />
            {live(move || (count.get() > 0).then(|| view! {
                <Button label=words::put_in(count.get()) on_press=save weight=Weight::Filled />
            }).into_any())}
        </Sheet>
    }
}
