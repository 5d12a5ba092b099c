//! An address that names no screen.

use crate::signals::prelude::*;

use crate::parts::{Empty, LinkButton, Page, Title};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::frame;

/// Says so, and leads home.
#[component]
pub(crate) fn Lost() -> impl IntoView {
    view! {
        <Page>
            <Top back=(Screen::Watch, frame::BACK.to_owned()) />
            <Title text=frame::LOST />
            <Standing />
            <Empty
                text=frame::LOST
                action=move || view! { <LinkButton href=Screen::Watch.hash() label=frame::WATCH /> }
            />
        </Page>
    }
}
