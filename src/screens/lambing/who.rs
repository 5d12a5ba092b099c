//! Who is lambing: picked, added on the spot, or not known yet.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::EweId;
use yeanling_core::flock::{Litter, SIGNS_FOR, Saw, Seen};
use yeanling_core::units::Moment;

use crate::farm::{Ground, use_farm};
use crate::parts::{Buttons, LinkButton, Page, Said, Section, Title};
use crate::pieces::{EwePicker, Picked, Standing, Top};
use crate::route::{Screen, Way};
use crate::words::common::day_and_clock;
use crate::words::{animals, cautions, frame, labor, lambing as words};

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
        farm.with(|ground| at_work(ground, now))
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
                                .map(|(label, screen)| view! { <LinkButton href=screen.hash() label=label /> })
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

/// Those whose litter is being born, then those of whom something was seen, and what was seen last.
fn at_work(ground: &Ground, now: Moment) -> Vec<(String, Screen)> {
    let flock = &ground.flock;
    let born: Vec<&Litter> = flock.litters.values().filter(|litter| litter.goes_on(now)).collect();
    let seen = |ewe: &EweId| {
        let ewe = flock.ewe(*ewe)?;
        ewe.labor.as_ref()?;
        let of_labor = |seen: &&Seen| !matches!(seen.what, Saw::Look | Saw::NotLambing | Saw::Afterbirth);
        let last = ewe.seen.iter().rev().find(of_labor)?;
        let has_begun = born.iter().any(|litter| litter.dam == Some(ewe.id));
        (!has_begun && now.since(last.at) < SIGNS_FOR).then_some((last.at, ewe.id, last.what))
    };
    let mut seen: Vec<(Moment, EweId, Saw)> = flock.at_work.iter().filter_map(seen).collect();
    seen.arrange_by_key(|(at, ewe, _)| (*at, *ewe));
    let seen = seen.into_iter().map(|(at, ewe, what)| {
        let name = animals::ewe_of(flock, ewe);
        (format!("{name} · {} {}", labor::saw(what), day_and_clock(at, now)), Screen::LambingEwe(ewe))
    });
    let born = born.iter().map(|litter| {
        let name = match litter.dam {
            Some(dam) => animals::ewe_of(flock, dam),
            None => animals::lamb_of(flock, litter.id),
        };
        (name, Screen::LambingLamb(litter.id))
    });
    born.chain(seen).collect()
}
