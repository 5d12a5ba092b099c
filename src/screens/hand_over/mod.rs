//! Sending the book, taking one in, and how it is kept.

mod kept;
mod send;
mod take;
mod twice;

use crate::signals::prelude::*;

use crate::parts::{Page, Title};
use crate::pieces::{Standing, Top};
use crate::words::hand_over as words;

/// Hands the book from phone to phone.
#[component]
pub(crate) fn HandOver() -> impl IntoView {
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE>{words::SUB}</Title>
            <Standing />
            <send::Send />
            <take::Take />
            <twice::Twice />
            <kept::HowKept />
        </Page>
    }
}
