//! The way to what has no tab.

use crate::parts::live;
use crate::signals::prelude::*;

use crate::farm::use_farm;
use crate::parts::{Button, Page, Row, RowState, Rows, Section, Title};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::{ahead, feed, kit, medicines, more as words, night, weighing, year};

/// Leads to the night, the year, the farm's choices, the help and the made-up flock.
#[component]
pub(crate) fn More() -> impl IntoView {
    let farm = use_farm();
    let look_round = move || {
        farm.look_round();
        Screen::Watch.go();
    };
    view! {
        <Page>
            <Top />
            <Title text=words::TITLE />
            <Standing />
            <Rows>
                <Row
                    name=night::TITLE
                    text=night::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Night.hash()
                />
                <Row
                    name=ahead::TITLE
                    text=ahead::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Season.hash()
                />
                <Row
                    name=kit::TITLE
                    text=kit::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Stores.hash()
                />
                <Row
                    name=feed::TITLE
                    text=feed::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Feed.hash()
                />
                <Row
                    name=weighing::TITLE
                    text=weighing::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Weighing.hash()
                />
                <Row
                    name=medicines::TITLE
                    text=medicines::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Medicines.hash()
                />
                <Row
                    name=year::TITLE
                    text=year::SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Year.hash()
                />
                <Row
                    name=words::PRACTICE
                    text=words::PRACTICE_SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Practice.hash()
                />
                <Row
                    name=words::HELP
                    text=words::HELP_SUB
                    state=Signal::stored(RowState::Coming)
                    href=Screen::Help.hash()
                />
            </Rows>
            {live(move || (!farm.is_made_up()).then(|| view! {
                    <Section title=words::TRY>
                        <p>{words::TRY_SUB}</p>
                        <Button label=words::LOOK_ROUND on_press=look_round />
                    </Section>
                }).into_any())}
            <Section title=words::ABOUT>
                <p>{words::version(env!("CARGO_PKG_VERSION"))}</p>
                <p class="small-print">{words::PROMISE}</p>
                <p class="small-print">{words::LICENSE}</p>
            </Section>
        </Page>
    }
}
