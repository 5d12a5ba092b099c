//! Picking a ewe: the living ewes as large buttons, narrowed by what is typed; a new one is added on the spot.
//!
//! Those that have lambed this season stand apart from those that have not, so that the one looked for is soon found.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Event, EweId};
use yeanling_core::figures::APART;

use crate::farm::use_farm;
use crate::parts::{Button, Buttons, Field, FieldKind, Section, Weight};
use crate::words::{animals, lambing as words};

/// So many ewes of a kind are shown; more are found by a digit of their tag.
const MOST: usize = 60;

/// What was picked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Picked {
    /// A ewe.
    Ewe(EweId),
    /// A ewe nobody knows.
    Unknown,
}

/// A ewe's tag or name, and who she is.
type Named = (String, EweId);

/// Those that have not lambed this season, and those that have.
#[derive(Clone, Debug, Default, PartialEq)]
struct Ewes {
    to_lamb: Vec<Named>,
    lambed: Vec<Named>,
    /// Whether a living ewe is called just what is typed, one that is not offered too.
    known: bool,
}

impl Ewes {
    fn all(&self) -> impl Iterator<Item = &Named> {
        self.to_lamb.iter().chain(&self.lambed)
    }
}

/// Lets a ewe be picked or added.
#[component]
pub(crate) fn EwePicker(
    /// Whether "dam unknown" is offered.
    #[prop(optional)]
    unknown: bool,
    /// Whether those that have lambed come first, as when lambs need a dam.
    #[prop(optional)]
    lambed_first: bool,
    /// Who is not offered.
    #[prop(default = None)]
    without: Option<EweId>,
    /// Called with what was picked.
    #[prop(into)]
    on_pick: Callback<(Picked,)>,
) -> impl IntoView {
    let farm = use_farm();
    let typed = RwSignal::new(String::new());
    let ewes = Memo::new(move |_| {
        let part = typed.with(|typed| animals::tag_of(typed).to_lowercase());
        let now = farm.now();
        farm.with(|ground| {
            let mut ewes: Vec<Named> = ground
                .flock
                .ewes
                .values()
                .filter(|ewe| ewe.lives())
                .map(|ewe| (ewe.tag.clone().unwrap_or_else(|| animals::ewe(ewe)), ewe.id))
                .filter(|(tag, _)| tag.to_lowercase().contains(&part))
                .collect();
            let known = ewes.iter().any(|(tag, _)| tag.to_lowercase() == part);
            ewes.retain(|(_, ewe)| Some(*ewe) != without);
            // By length first, so that 5 comes before 12 and both before 101; short enough for any tag.
            ewes.arrange_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
            let has_lambed = |(_, ewe): &Named| {
                ground.flock.litters_of(*ewe).first().is_some_and(|litter| now.since(litter.began) <= APART)
            };
            let (lambed, to_lamb) = ewes.into_iter().partition(has_lambed);
            Ewes { to_lamb, lambed, known }
        })
    });
    let tag = Memo::new(move |_| typed.with(|typed| animals::tag_of(typed).to_owned()));
    let is_new = Memo::new(move |_| !tag.with(String::is_empty) && ewes.with(|ewes| !ewes.known));
    let add = move || {
        let tag = tag.get_untracked();
        if let Some(entry) = farm.tap(Event::EweCame { tag: Some(tag) }) {
            on_pick.run((Picked::Ewe(entry.as_ewe()),));
        }
    };
    let enter = move || {
        if is_new.get_untracked() {
            add();
        } else if let [(_, ewe)] = ewes.with_untracked(|ewes| ewes.all().cloned().collect::<Vec<_>>())[..] {
            on_pick.run((Picked::Ewe(ewe),));
        }
    };
    let hint = Signal::derive(move || {
        let (none, known) = ewes.with(|ewes| (ewes.all().next().is_none(), ewes.known));
        if !none || tag.with(String::is_empty) {
            String::new()
        } else if known {
            words::HER_ALREADY.to_owned()
        } else {
            words::NONE_FOUND.to_owned()
        }
    });
    let of = move |part: fn(&Ewes) -> &Vec<Named>| Memo::new(move |_| ewes.with(|ewes| part(ewes).clone()));
    let (to_lamb, lambed) = (of(|ewes| &ewes.to_lamb), of(|ewes| &ewes.lambed));
    let mut kinds = [(words::EWES, to_lamb), (words::HAVE_LAMBED, lambed)];
    if lambed_first {
        kinds.reverse();
    }
    view! {
        <Field label=words::FIND value=typed kind=FieldKind::Text hint=hint on_enter=enter />
        {live(move || is_new.get().then(|| {
                view! { <Button label=words::add(&tag.get()) on_press=add weight=Weight::Filled /> }
            }).into_any())}
        {unknown.then(|| {
            view! { <Button label=words::UNKNOWN on_press=move || on_pick.run((Picked::Unknown,)) /> }
        })}
        {kinds.map(|(title, ewes)| buttons(title, ewes, on_pick)).into_iter().collect_view()}
    }
}

/// Shows ewes of a kind under their heading; nothing when there are none.
fn buttons(title: &'static str, ewes: Memo<Vec<Named>>, on_pick: Callback<(Picked,)>) -> AnyView {
    let some = Memo::new(move |_| ewes.with(|ewes| !ewes.is_empty()));
    let more = Memo::new(move |_| ewes.with(|ewes| ewes.len().saturating_sub(MOST)));
    let first = move || ewes.with(|ewes| ewes.iter().take(MOST).cloned().collect());
    let key = |(tag, ewe): &Named| format!("{ewe} {tag}");
    let button = move |(tag, ewe): Named| {
        view! { <Button label=tag on_press=move || on_pick.run((Picked::Ewe(ewe),)) /> }.into_any()
    };
    live(move || {
        some.get()
            .then(|| {
                view! {
                    <Section title=title>
                        <Buttons>{each(first, key, button)}</Buttons>
                        {live(move || (more.get() > 0).then(|| view! {
                            <p class="small-print">{words::and_more(more.get())}</p>
                        }).into_any())}
                    </Section>
                }
            })
            .into_any()
    })
}
