//! The app's own screens, as the finder of Help knows them: by their names and by the words people use.

use yeanling_words::help::doors as words;
use yeanling_words::{
    bottle_round, cold_lamb, erase, feed, frame, illness, keep, kit, medicines, night, pens, settings, setup,
    share, spreadsheet, tagging, watch, weighing, what_if, year,
};

use crate::block::Row;
use crate::{Key, Screen, SettingsPart};

/// Every screen that is about nothing else, with its name and the words by which it is looked for.
const DOORS: [(Screen, &str, &str); 23] = [
    (Screen::Watch, frame::WATCH, words::WATCH),
    (Screen::Lambing, watch::LAMBING, words::LAMBING),
    (Screen::NotRight, illness::TITLE, words::NOT_RIGHT),
    (Screen::Flock, frame::FLOCK, words::FLOCK),
    (Screen::Pens, pens::TITLE, words::PENS),
    (Screen::BottleRound, bottle_round::TITLE, words::BOTTLE),
    (Screen::ColdLamb(None), cold_lamb::TITLE, words::COLD),
    (Screen::Share, share::TITLE, words::SHARE),
    (Screen::Tables, spreadsheet::SCREEN, words::TABLES),
    (Screen::Settings, settings::TITLE, words::SETTINGS),
    (Screen::Farm, frame::FARM, words::FARM),
    (Screen::Season, frame::SEASON, words::SEASON),
    (Screen::Plan, what_if::TITLE, words::PLAN),
    (Screen::Supplies, kit::TITLE, words::SUPPLIES),
    (Screen::Medicines, medicines::TITLE, words::MEDICINES),
    (Screen::WeighLambs, weighing::TITLE, words::WEIGH),
    (Screen::TagLambs, tagging::TITLE, words::TAG),
    (Screen::Feed, feed::TITLE, words::FEED),
    (Screen::Summary, year::TITLE, words::SUMMARY),
    (Screen::Keep, keep::TITLE, words::KEEP),
    (Screen::Night, night::TITLE, words::NIGHT),
    (Screen::Setup, setup::TITLE, words::SETUP),
    (Screen::Erase, erase::TITLE, words::ERASE),
];

/// Returns the screens that are found.
pub(super) fn found(within: impl Fn(&str) -> bool) -> Vec<(Key, Row)> {
    let doors = DOORS.iter().filter(|(_, name, by)| within(&format!("{name} {by}").to_lowercase()));
    let doors = doors.map(|(screen, name, _)| (*name, String::new(), *screen));
    let parts = SettingsPart::ALL.into_iter();
    let parts = parts.filter(|part| within(&format!("{} {}", part.title(), part.about()).to_lowercase()));
    let parts = parts.map(|part| (part.title(), part.about().to_owned(), Screen::SettingsOf(part)));
    doors
        .chain(parts)
        .enumerate()
        .map(|(place, (name, about, screen))| {
            (format!("door-{place}").into(), Row::new(name).text(about).to(screen))
        })
        .collect()
}
