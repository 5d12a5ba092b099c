//! The way to what has no tab.

use yeanling_words::{ahead, bottle_round, feed, kit, medicines, more as words, night, weighing, year};

use crate::block::Row;
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Request, Screen};

/// What has no tab: its key, its name, what is there, and where.
const WAYS: [(&str, &str, &str, Screen); 10] = [
    ("night", night::TITLE, night::SUB, Screen::Night),
    ("season", ahead::TITLE, ahead::SUB, Screen::Season),
    ("bottle-round", bottle_round::TITLE, bottle_round::SUB, Screen::BottleRound),
    ("stores", kit::TITLE, kit::SUB, Screen::Stores),
    ("feed", feed::TITLE, feed::SUB, Screen::Feed),
    ("weighing", weighing::TITLE, weighing::SUB, Screen::Weighing),
    ("medicines", medicines::TITLE, medicines::SUB, Screen::Medicines),
    ("year", year::TITLE, year::SUB, Screen::Year),
    ("practice", words::PRACTICE, words::PRACTICE_SUB, Screen::Practice),
    ("help", words::HELP, words::HELP_SUB, Screen::Help),
];

/// Returns the screen: the night, the year, the farm's choices, the help and the made-up flock.
pub(crate) fn page(view: &View) -> Page {
    let ways = WAYS.map(|(key, name, text, screen)| (key, Row::new(name).text(text).to(screen)));
    let look_round = Button::new("look-round", words::LOOK_ROUND, Action::Phone(Request::LookRound));
    let try_it =
        if view.made_up { Blocks::new() } else { Blocks::new().text(words::TRY_SUB).button(look_round) };
    Page::new(words::TITLE).blocks(
        Blocks::new().rows("ways", ways).section("try", words::TRY, try_it).section(
            "about",
            words::ABOUT,
            Blocks::new()
                .text(words::version(env!("CARGO_PKG_VERSION")))
                .small(words::PROMISE)
                .small(words::LICENSE),
        ),
    )
}
