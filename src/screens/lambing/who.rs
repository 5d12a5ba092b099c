//! Who is lambing: picked, added on the spot, or not known yet.

use crate::parts::live;
use crate::signals::prelude::*;

use crate::farm::use_farm;
use crate::parts::{Buttons, LinkButton, Page, Said, Section, Title};
use crate::pieces::{EwePicker, Picked, Standing, Top};
use crate::route::Screen;
use crate::words::{animals, cautions, frame, lambing as words};

/// Asks who is lambing.
#[component]
pub(crate) fn Who() -> impl IntoView {
    let farm = use_farm();
    let pick = move |picked: Picked| match picked {
        Picked::Ewe(ewe) => Screen::LambingEwe(ewe).go(),
        Picked::Unknown => Screen::LambingUnknown.go(),
    };
    let at_work = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            ground
                .flock
                .litters
                .values()
                .filter(|litter| litter.goes_on(now))
                .map(|litter| {
                    let name = match litter.dam {
                        Some(dam) => animals::ewe_of(&ground.flock, dam),
                        None => animals::lamb_of(&ground.flock, litter.id),
                    };
                    (name, litter.id)
                })
                .collect::<Vec<_>>()
        })
    });
    view! {
        <Page>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            <Title text=words::WHO />
            <Standing />
            {live(move || {
                let at_work = at_work.get();
                (!at_work.is_empty()).then(|| view! {
                    <Section title=words::AT_WORK>
                        <Buttons columns=2>
                            {at_work
                                .into_iter()
                                .map(|(name, lamb)| {
                                    view! { <LinkButton href=Screen::LambingLamb(lamb).hash() label=name /> }
                                })
                                .collect_view()}
                        </Buttons>
                    </Section>
                })
            }.into_any())}
            {live(move || farm.with(|ground| ground.flock.ewes.is_empty())
                    .then(|| view! { <p class="lead"><Said text=words::NO_EWES /></p> }).into_any())}
            <EwePicker unknown=true on_pick=pick />
            <p class="small-print">{cautions::PEOPLE}</p>
        </Page>
    }
}
