//! Sending the book, taking one in, and how it is kept.

mod ewes_in;
mod kept;
mod pick;
mod send;
mod spreadsheet;
mod take;
mod twice;

use crate::signals::prelude::*;

use crate::farm::use_farm;
use crate::parts::{Page, Title, live};
use crate::pieces::{Standing, Top};
use crate::words::hand_over as words;

/// Hands the book from phone to phone.
#[component]
pub(crate) fn HandOver() -> impl IntoView {
    let farm = use_farm();
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>{words::SUB}</Title>
            <Standing />
            <send::Send />
            <take::Take />
            <twice::Twice />
            {live(move || (!farm.is_made_up()).then(|| view! { <spreadsheet::Spreadsheet /> }).into_any())}
            {live(move || (!farm.is_made_up()).then(|| view! { <ewes_in::EwesIn /> }).into_any())}
            <kept::HowKept />
        </Page>
    }
}
