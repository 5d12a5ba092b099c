//! Around lambing: the clocks in the farm's limits, and how a lamb lies, drawn.

use crate::farm::use_farm;
use crate::parts::{Caution, Drawing, Said, live};
use crate::signals::prelude::*;
use crate::words::cautions;
use crate::words::help::lambing as words;

/// Returns by when to look, to put in a hand, and to call.
pub(super) fn clocks() -> AnyView {
    let farm = use_farm();
    let lines = move || {
        let practice = farm.practice();
        let line = |line: String| view! { <li><Said text=line /></li> }.into_any();
        words::clocks(&practice.labor, &practice.stay).into_iter().map(line).collect_view().into_any()
    };
    view! {
        <ul class="reading">{live(lines)}</ul>
        <p class="small-print">{words::CLOCKS_SUB}</p>
    }
    .into_any()
}

/// Returns how a lamb can lie, and what to do.
pub(super) fn lies() -> AnyView {
    let lie = |(drawing, text): (String, String)| {
        view! {
            <li class="drawn-line">
                <Drawing href=drawing />
                <span><Said text=text /></span>
            </li>
        }
        .into_any()
    };
    view! {
        <Caution lines=vec![cautions::HANDS.to_owned()] />
        <ul class="reading">{words::lies().into_iter().map(lie).collect_view()}</ul>
        <p class="small-print">{words::LIES_SUB}</p>
    }
    .into_any()
}
