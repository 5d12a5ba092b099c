//! The Farm tab: the farm's choices, its book, and the program itself.

use yeanling_words::common::day_and_clock;
use yeanling_words::help::Topic;
use yeanling_words::{erase, farm as words, share, spreadsheet};

use crate::block::{Row, State};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Request, Screen, Text};

/// Returns the screen.
pub(crate) fn page(view: &View) -> Page {
    let erase = Row::new(erase::TITLE).text(erase::ABOUT).to(Screen::Erase);
    let new_phone =
        Row::new(Topic::NewPhone.title()).text(Topic::NewPhone.about()).to(Screen::Topic(Topic::NewPhone));
    let tables = Row::new(spreadsheet::SCREEN).text(spreadsheet::ABOUT).to(Screen::Tables);
    let rows = [
        ("settings", settings(view)),
        ("share", share(view)),
        ("new-phone", new_phone),
        ("tables", tables),
        ("erase", erase),
    ];
    let try_it = Button::new("look-round", words::LOOK_ROUND, Action::Phone(Request::LookRound));
    let try_it = if view.sample { Blocks::new() } else { Blocks::new().text(words::TRY_SUB).button(try_it) };
    Page::new(yeanling_words::frame::FARM).blocks(
        Blocks::new().rows("ways", rows).section("try", words::TRY, try_it).section(
            "about",
            words::ABOUT,
            Blocks::new()
                .text(words::version(env!("CARGO_PKG_VERSION")))
                .small(words::PROMISE)
                .small(words::LICENSE),
        ),
    )
}

fn settings(view: &View) -> Row {
    let told = words::settings(view.settings());
    Row::new(words::SETTINGS).text(Text::typed(&told)).to(Screen::Settings)
}

/// The way to the backup, with how long ago there was one.
fn share(view: &View) -> Row {
    let row = Row::new(share::TITLE).to(Screen::Share);
    if view.own_book.is_empty() {
        return row.text(words::SHARE_SUB);
    }
    match (view.phone.sent, view.phone.saved_here) {
        (Some(at), _) => row.text(words::backed_up(&day_and_clock(at, view.now))),
        (None, Some(_)) => row.says(State::Now, words::ONLY_HERE),
        (None, None) => row.says(State::Now, words::NO_BACKUP),
    }
}
