//! The way to what has no tab.

use crate::parts::live;
use crate::signals::prelude::*;

use crate::farm::use_farm;
use crate::parts::{Button, Page, Row, RowState, Rows, Section, Title};
use crate::pieces::{Standing, Top};
use crate::route::Screen;
use crate::words::{ahead, bottle_round, feed, kit, medicines, more as words, night, weighing, year};

/// What has no tab: its name, what is there, and where.
type Way = (&'static str, &'static str, Screen);

const WAYS: [Way; 10] = [
    (night::TITLE, night::SUB, Screen::Night),
    (ahead::TITLE, ahead::SUB, Screen::Season),
    (bottle_round::TITLE, bottle_round::SUB, Screen::BottleRound),
    (kit::TITLE, kit::SUB, Screen::Stores),
    (feed::TITLE, feed::SUB, Screen::Feed),
    (weighing::TITLE, weighing::SUB, Screen::Weighing),
    (medicines::TITLE, medicines::SUB, Screen::Medicines),
    (year::TITLE, year::SUB, Screen::Year),
    (words::PRACTICE, words::PRACTICE_SUB, Screen::Practice),
    (words::HELP, words::HELP_SUB, Screen::Help),
];

fn way((name, text, screen): Way) -> AnyView {
    view! { <Row name=name text=text state=Signal::stored(RowState::Coming) href=screen.hash() /> }.into_any()
}

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
            <Rows>{WAYS.map(way).into_iter().collect_view()}            </Rows>
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
