//! When a ewe may lamb: her first, likely and last day on a ribbon, the chance of tonight, and why.

use crate::signals::prelude::*;
use chrono::NaiveDate;
use yeanling_core::book::EweId;
use yeanling_core::figures::awaited;
use yeanling_core::reckon::season::ewe::Outlook;

use crate::farm::use_farm;
use crate::parts::{Remark, Ribbon, RibbonKind, Section, Stretch, Tick, WhyButton, live};
use crate::pieces::why_text;
use crate::words::common::short_date;
use crate::words::{ahead as words, why};

/// Shows when she may lamb; nothing when no lambing of hers is awaited.
pub(super) fn due(id: EweId) -> AnyView {
    let farm = use_farm();
    let seen = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| awaited(&ground.flock, id, now))
    });
    live(move || match seen.get() {
        None => ().into_any(),
        Some(Err(why)) => {
            view! { <Section title=words::HERS><p>{words::no_outlook(&why)}</p></Section> }.into_any()
        }
        Some(Ok(outlook)) => told(&outlook),
    })
}

fn told(outlook: &Outlook) -> AnyView {
    let because = why_text(why::outlook(outlook));
    let (within, days) = (words::within(outlook), words::days(outlook));
    let ribbon = ribbon(outlook);
    view! {
        <Section title=words::HERS>
            <Remark text=within>
                <WhyButton why=because />
            </Remark>
            {ribbon}
            <p>{days}</p>
        </Section>
    }
    .into_any()
}

/// From today to her last day: plain up to the first, full about the likely one.
fn ribbon(outlook: &Outlook) -> AnyView {
    let days = |date: NaiveDate| {
        f64::from(i32::try_from(date.signed_duration_since(outlook.today).num_days()).unwrap_or(0))
    };
    let whole = days(outlook.last) + 1.0;
    let at = |date: NaiveDate| (days(date) / whole).clamp(0.0, 1.0);
    let (first, likely, last) = (at(outlook.first), at(outlook.likely), 1.0);
    // Two days about the likely one.
    let near = (2.0 / whole).min(0.5);
    let stretch = |from: f64, to: f64, kind| Stretch { from, to: to.max(from), kind, label: String::new() };
    let (from, to) = ((likely - near).max(first), (likely + near).min(last));
    let stretches = vec![
        stretch(0.0, first, RibbonKind::Plain),
        stretch(first, from, RibbonKind::Fair),
        stretch(from, to, RibbonKind::Best),
        stretch(to, last, RibbonKind::Fair),
    ];
    let ticks = vec![
        Tick::new(first, short_date(outlook.first)).rank(2),
        Tick::new(likely, short_date(outlook.likely)).rank(1),
        Tick::new(last, short_date(outlook.last)).rank(0),
    ];
    let label = words::days(outlook);
    view! { <Ribbon label=label stretches=stretches ticks=ticks now=Some(0.0) /> }.into_any()
}
