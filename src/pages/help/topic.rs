//! One topic of Help, on a page of its own, told by the farm's own choices.

use yeanling_core::reckon::{all_sources, season};
use yeanling_core::settings::FarmSettings;
use yeanling_core::source::Source;
use yeanling_words::cold_lamb::courses;
use yeanling_words::help::glossary::Term;
use yeanling_words::help::{self as words, Topic, glossary, lambing, milk, phone, too_late, tube};
use yeanling_words::{cautions, frame, share, why};

use super::{care, find, fold, illness, read, steps};
use crate::block::{Item, ListLook};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Screen, vet};

/// Returns the page of a topic.
pub(crate) fn page(view: &View, topic: Topic) -> Page {
    Page::new(topic.title()).under(topic.about()).back(Screen::Help, frame::HELP).blocks(inside(view, topic))
}

/// Returns what a topic says.
pub(super) fn inside(view: &View, topic: Topic) -> Blocks {
    let settings = view.settings();
    match topic {
        Topic::Vet => call(view),
        Topic::Cold => care::cold(settings.system),
        Topic::Tube => by_tube(settings),
        Topic::TooLate => too_late(settings),
        Topic::SickEwe => illness::of_the_ewe(settings.system),
        Topic::SickLamb => illness::of_the_lamb(),
        Topic::Labor => read(lambing::clocks(&settings.labor, &settings.stay)).small(lambing::CLOCKS_SUB),
        Topic::Presentation => presentation(),
        Topic::FirstDay => first_day(settings),
        Topic::Fed => read(words::FED_SIGNS.iter().copied()).small(words::FED_SOURCE),
        Topic::Vigor => care::vigor(&settings.limits),
        Topic::Quality => read(milk::bag(settings)),
        Topic::Bottle => read(milk::bottle(settings)),
        Topic::Weaning => read(milk::weaning()),
        Topic::Temperature => read(courses::THERMOMETER_STEPS).small(courses::THERMOMETER_SOURCE),
        Topic::Chill => read(milk::weather(settings)),
        Topic::Rings => care::rings(),
        Topic::Hygiene => read(cautions::HYGIENE.iter().copied()).small(cautions::HYGIENE_SOURCE),
        Topic::People => Blocks::new().caution([cautions::PEOPLE]),
        Topic::BackUp => back_up(),
        Topic::NewPhone => new_phone(),
        Topic::Install => steps(words::INSTALL_STEPS.iter().copied()),
        Topic::Limits => read(words::LIMITS_LIST.iter().copied()),
        Topic::Glossary => words_of_the_trade(),
        Topic::Sources => sources(),
    }
}

/// When to call the vet, about a ewe and about a lamb, with the call itself above.
fn call(view: &View) -> Blocks {
    let settings = view.settings();
    vet::blocks(view)
        .section("ewe", words::EWE, read(words::vet_ewe(&settings.labor)))
        .section("lamb", words::LAMB, read(words::vet_lamb(settings)))
        .small(words::VET_SOURCE)
}

/// What must not be done, what must hold, how much, and how.
fn by_tube(settings: &FarmSettings) -> Blocks {
    Blocks::new()
        .caution(tube::NEVER)
        .section("first", tube::FIRST, read(tube::ONLY_IF))
        .section("how-much", tube::HOW_MUCH, read(tube::most(settings.system)))
        .section("how", tube::STEPS_TITLE, steps(tube::STEPS))
        .small(tube::SOURCE)
}

/// Until when colostrum works, and what to do with a lamb that has had none.
fn too_late(settings: &FarmSettings) -> Blocks {
    let open = Button::new("calculators", too_late::OPEN, Action::Go(Screen::Calculators));
    read(too_late::HOURS)
        .section("first", too_late::FIRST, steps(too_late::STEPS))
        .section("own", too_late::OWN, Blocks::new().text(too_late::own(&settings.limits)).button(open))
        .small(too_late::SOURCE)
}

/// How a lamb can lie, drawn, and what to do.
fn presentation() -> Blocks {
    let lie = |(drawing, text): (String, String)| Item { drawing, ..Item::new(text) };
    Blocks::new()
        .caution([cautions::HANDS])
        .list(ListLook::Reading, lambing::lies().into_iter().map(lie))
        .small(lambing::LIES_SUB)
}

/// A newborn's first day, step by step, each with who says so.
fn first_day(settings: &FarmSettings) -> Blocks {
    let steps = words::first_day(settings).into_iter();
    let steps = steps.map(|(step, source)| Item::new(step).note(source));
    Blocks::new().list(ListLook::Ranked, steps).small(words::by_rule(settings))
}

fn back_up() -> Blocks {
    let open = Button::new("share", share::TITLE, Action::Go(Screen::Share)).filled();
    steps(phone::BACK_UP_STEPS).button(open).then(read(phone::BACK_UP_NOTES)).small(phone::SOURCE)
}

fn new_phone() -> Blocks {
    let open = Button::new("share", share::TITLE, Action::Go(Screen::Share)).filled();
    Blocks::new().section("move", phone::MOVE, steps(phone::MOVE_STEPS)).button(open).section(
        "lost",
        phone::LOST,
        steps(phone::LOST_STEPS),
    )
}

/// Every word of the trade, folded under its letters: sixty at once would be a long way down.
fn words_of_the_trade() -> Blocks {
    let begins = |term: &&Term| term.word.chars().next().unwrap_or('A').to_ascii_uppercase();
    glossary::LETTERS.into_iter().fold(Blocks::new(), |blocks, (first, last)| {
        let terms = glossary::TERMS.iter().filter(|term| (first..=last).contains(&begins(term)));
        let key = format!("letters-{first}").to_lowercase();
        fold(blocks, key, glossary::letters(first, last), read(terms.map(find::line)))
    })
}

/// Every source, folded under its subject.
fn sources() -> Blocks {
    let of_lambs = all_sources().into_iter().map(|(subject, sources)| (why::subject(subject), sources));
    let of_season =
        season::all_sources().into_iter().map(|(subject, sources)| (why::season_subject(subject), sources));
    let subject = |blocks: Blocks, (place, (subject, sources)): (usize, (&str, &[Source]))| {
        let lines = read(sources.iter().map(why::source_line));
        fold(blocks, format!("source-{place}"), words::sources_of(subject, sources.len()), lines)
    };
    of_lambs.chain(of_season).enumerate().fold(Blocks::new(), subject)
}
