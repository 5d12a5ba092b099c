//! Picking a ewe: every living ewe as a large button, narrowed by what is typed; a new one is added on the spot.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Event, EweId};

use crate::farm::use_farm;
use crate::parts::{Button, Buttons, Field, FieldKind, Section, Weight};
use crate::words::{animals, lambing as words};

/// What was picked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Picked {
    /// A ewe.
    Ewe(EweId),
    /// A ewe nobody knows.
    Unknown,
}

/// Lets a ewe be picked or added.
#[component]
pub(crate) fn EwePicker(
    /// Whether "dam unknown" is offered.
    unknown: bool,
    /// Called with what was picked.
    #[prop(into)]
    on_pick: Callback<(Picked,)>,
) -> impl IntoView {
    let farm = use_farm();
    let typed = RwSignal::new(String::new());
    let ewes = Memo::new(move |_| {
        let part = typed.with(|typed| typed.trim().to_lowercase());
        farm.with(|ground| {
            let mut ewes: Vec<(String, EweId)> = ground
                .flock
                .ewes
                .values()
                .filter(|ewe| ewe.lives())
                .map(|ewe| (ewe.tag.clone().unwrap_or_else(|| animals::ewe(ewe)), ewe.id))
                .filter(|(tag, _)| tag.to_lowercase().contains(&part))
                .collect();
            // By length first, so that 5 comes before 12 and both before 101; short enough for any tag.
            ewes.arrange_by(|(a, _), (b, _)| (a.len(), a).cmp(&(b.len(), b)));
            ewes
        })
    });
    let tag = Memo::new(move |_| typed.with(|typed| typed.trim().to_owned()));
    let is_new = Memo::new(move |_| {
        tag.with(|tag| {
            !tag.is_empty() && !ewes.with(|ewes| ewes.iter().any(|(here, _)| here.eq_ignore_ascii_case(tag)))
        })
    });
    let add = move || {
        let tag = tag.get_untracked();
        if let Some(entry) = farm.tap(Event::EweCame { tag: Some(tag) }) {
            on_pick.run((Picked::Ewe(entry.as_ewe()),));
        }
    };
    let enter = move || {
        if is_new.get_untracked() {
            add();
        } else if let [(_, ewe)] = ewes.get_untracked().as_slice() {
            on_pick.run((Picked::Ewe(*ewe),));
        }
    };
    let some = Memo::new(move |_| !ewes.with(Vec::is_empty));
    let hint = Signal::derive(move || {
        if ewes.with(Vec::is_empty) && !tag.with(String::is_empty) {
            words::NONE_FOUND.to_owned()
        } else {
            String::new()
        }
    });
    view! {
        <Field label=words::FIND value=typed kind=FieldKind::Text hint=hint on_enter=enter />
        {live(move || is_new.get().then(|| {
                view! { <Button label=words::add(&tag.get()) on_press=add weight=Weight::Filled /> }
            }).into_any())}
        {unknown.then(|| {
            view! { <Button label=words::UNKNOWN on_press=move || on_pick.run((Picked::Unknown,)) /> }
        })}
        {live(move || some.get().then(|| view! {
                <Section title=words::EWES>
                    <Buttons>
                        {each(
                            move || ewes.get(),
                            |(tag, ewe)| format!("{ewe} {tag}"),
                            move |(tag, ewe)| {
                                view! { <Button label=tag on_press=move || on_pick.run((Picked::Ewe(ewe),)) /> }
                                    .into_any()
                            },
                        )}
                    </Buttons>
                </Section>
            }).into_any())}
    }
}
