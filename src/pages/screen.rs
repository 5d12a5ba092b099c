//! Which screens there are, where each is found, and what the way back to it is called.

mod address;

use yeanling_core::book::{Animal, EweId, GroupId, LambId, PenId};
use yeanling_core::flock::Flock;
use yeanling_core::reckon::illness::Ailment;
use yeanling_words::help::{self, Topic};
use yeanling_words::{
    bottle_round, calculators, frame, illness, keep, medicines, night, pens, score_ewes, settings, share,
    spreadsheet, weighing, year,
};

use crate::SettingsPart;

/// A screen, with what it is about.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Screen {
    /// What needs someone now.
    #[default]
    Watch,
    /// Who is lambing.
    Lambing,
    /// This ewe is lambing.
    LambingEwe(EweId),
    /// A ewe nobody knows yet is lambing; nothing is noted so far.
    LambingUnknown,
    /// The litter of this lamb is being born.
    LambingLamb(LambId),
    /// One lamb.
    Lamb(LambId),
    /// One ewe.
    Ewe(EweId),
    /// Who is not right.
    NotRight,
    /// This ewe is not right.
    IllEwe(EweId),
    /// This lamb is not right.
    IllLamb(LambId),
    /// All animals.
    Flock,
    /// Who is in which pen.
    Pens,
    /// One pen.
    Pen(PenId),
    /// Every bottle lamb at once.
    BottleRound,
    /// What to do with a cold lamb: this one, or one without a record.
    ColdLamb(Option<LambId>),
    /// Every calculation without any record.
    Calculators,
    /// Back up, share and import the book.
    Share,
    /// Tables in and out, and on paper.
    Tables,
    /// What can be read, and the way to the calculators.
    Help,
    /// One topic of it.
    Topic(Topic),
    /// One illness of a ewe or a lamb, to be read.
    Ailment(Ailment),
    /// The farm's choices, part by part.
    Settings,
    /// One part of them.
    SettingsOf(SettingsPart),
    /// The farm's choices and its book.
    Farm,
    /// The season ahead, and the way to those that were.
    Season,
    /// A season before it happens.
    Plan,
    /// One group of ewes.
    Group(GroupId),
    /// One group, scored ewe by ewe.
    ScoreEwes(GroupId),
    /// What is on hand and in the freezer.
    Supplies,
    /// The medicine record.
    Medicines,
    /// Lambs weighed one after another.
    WeighLambs,
    /// Lambs tagged or marked one after another.
    TagLambs,
    /// Hay, ration and water.
    Feed,
    /// The season in figures.
    Summary,
    /// Which ewe to keep.
    Keep,
    /// The dark clock with the alarm.
    Night,
    /// The first run.
    Setup,
    /// Erases this phone's book.
    Erase,
    /// An address that names no screen.
    Lost,
}

impl Screen {
    /// The screens that are about nothing else.
    const ALONE: [Self; 26] = [
        Self::Watch,
        Self::Lambing,
        Self::LambingUnknown,
        Self::NotRight,
        Self::Flock,
        Self::Pens,
        Self::BottleRound,
        Self::ColdLamb(None),
        Self::Calculators,
        Self::Share,
        Self::Tables,
        Self::Help,
        Self::Settings,
        Self::Farm,
        Self::Season,
        Self::Plan,
        Self::Supplies,
        Self::Medicines,
        Self::WeighLambs,
        Self::TagLambs,
        Self::Feed,
        Self::Summary,
        Self::Keep,
        Self::Night,
        Self::Setup,
        Self::Erase,
    ];

    /// Returns the screens that are about no one animal, group or pen.
    #[must_use]
    pub fn alone() -> Vec<Self> {
        let topics = Topic::ALL.map(Self::Topic);
        let parts = SettingsPart::ALL.map(Self::SettingsOf);
        Self::ALONE.into_iter().chain(topics).chain(Ailment::all().map(Self::Ailment)).chain(parts).collect()
    }

    /// Returns every screen that there is for a flock.
    #[must_use]
    pub fn all(flock: &Flock) -> Vec<Self> {
        let mut all = Self::alone();
        all.extend(flock.ewes.keys().flat_map(|ewe| Self::of_ewe(*ewe)));
        all.extend(flock.rams.keys().map(|ram| Self::Ewe(*ram)));
        all.extend(flock.lambs.keys().flat_map(|lamb| Self::of_lamb(*lamb)));
        all.extend(flock.groups.keys().flat_map(|group| Self::of_group(*group)));
        all.extend(flock.pens.keys().map(|pen| Self::Pen(*pen)));
        // A screen that is not named here would be left out of every law in silence.
        debug_assert!(all.iter().all(|screen| screen.is_listed()));
        all
    }

    const fn of_ewe(ewe: EweId) -> [Self; 3] {
        [Self::Ewe(ewe), Self::LambingEwe(ewe), Self::IllEwe(ewe)]
    }

    const fn of_lamb(lamb: LambId) -> [Self; 4] {
        [Self::Lamb(lamb), Self::LambingLamb(lamb), Self::ColdLamb(Some(lamb)), Self::IllLamb(lamb)]
    }

    const fn of_group(group: GroupId) -> [Self; 2] {
        [Self::Group(group), Self::ScoreEwes(group)]
    }

    /// Says whether a screen is in one of the lists above; the compiler asks for each new one here.
    const fn is_listed(self) -> bool {
        match self {
            Self::Watch
            | Self::Lambing
            | Self::LambingUnknown
            | Self::Flock
            | Self::Pens
            | Self::BottleRound
            | Self::ColdLamb(_)
            | Self::Calculators
            | Self::Share
            | Self::Tables
            | Self::Help
            | Self::Topic(_)
            | Self::Ailment(_)
            | Self::Settings
            | Self::SettingsOf(_)
            | Self::Farm
            | Self::Season
            | Self::Plan
            | Self::Supplies
            | Self::Medicines
            | Self::WeighLambs
            | Self::TagLambs
            | Self::Feed
            | Self::Summary
            | Self::Keep
            | Self::Night
            | Self::Setup
            | Self::Erase
            | Self::Ewe(_)
            | Self::LambingEwe(_)
            | Self::Lamb(_)
            | Self::LambingLamb(_)
            | Self::Group(_)
            | Self::ScoreEwes(_)
            | Self::NotRight
            | Self::IllEwe(_)
            | Self::IllLamb(_)
            | Self::Pen(_) => true,
            Self::Lost => false,
        }
    }

    /// Returns what the way back to a screen is called, if it is a list from which others are opened.
    #[must_use]
    pub const fn way_back(self) -> Option<&'static str> {
        match self {
            Self::Watch => Some(frame::WATCH),
            Self::Flock => Some(frame::FLOCK),
            Self::Season => Some(frame::SEASON),
            Self::Help => Some(frame::HELP),
            Self::Farm => Some(frame::FARM),
            Self::Calculators => Some(calculators::TITLE),
            Self::Share => Some(share::TITLE),
            Self::Tables => Some(spreadsheet::SCREEN),
            Self::Settings => Some(settings::TITLE),
            Self::Pens => Some(pens::TITLE),
            Self::BottleRound => Some(bottle_round::TITLE),
            Self::Group(_) => Some(score_ewes::GROUP),
            Self::Medicines => Some(medicines::TITLE),
            Self::WeighLambs => Some(weighing::TITLE),
            Self::Summary => Some(year::TITLE),
            Self::Keep => Some(keep::TITLE),
            Self::ScoreEwes(_) => Some(score_ewes::TITLE),
            Self::Pen(_) => Some(pens::PEN),
            Self::Night => Some(night::TITLE),
            Self::NotRight => Some(illness::TITLE),
            Self::Topic(Topic::SickEwe) => Some(help::illness::EWE),
            Self::Topic(Topic::SickLamb) => Some(help::illness::LAMB),
            Self::IllEwe(_)
            | Self::IllLamb(_)
            | Self::Lambing
            | Self::LambingEwe(_)
            | Self::LambingUnknown
            | Self::LambingLamb(_)
            | Self::Lamb(_)
            | Self::Ewe(_)
            | Self::ColdLamb(_)
            | Self::Topic(_)
            | Self::Ailment(_)
            | Self::SettingsOf(_)
            | Self::Setup
            | Self::Erase
            | Self::Supplies
            | Self::TagLambs
            | Self::Plan
            | Self::Feed
            | Self::Lost => None,
        }
    }

    /// Says whether hands are at an animal on it: what can wait, such as a backup, is not told there.
    #[must_use]
    pub const fn is_at_work(self) -> bool {
        matches!(
            self,
            Self::Lambing
                | Self::LambingEwe(_)
                | Self::LambingUnknown
                | Self::LambingLamb(_)
                | Self::ColdLamb(_)
                | Self::NotRight
                | Self::IllEwe(_)
                | Self::IllLamb(_)
                | Self::BottleRound
                | Self::Night
        )
    }

    /// Says whether it is about one animal, group, pen, topic or part: the way back leads to its row in the list it was opened from.
    #[must_use]
    pub const fn is_of_one(self) -> bool {
        matches!(
            self,
            Self::Ewe(_)
                | Self::Lamb(_)
                | Self::Group(_)
                | Self::Pen(_)
                | Self::Topic(_)
                | Self::Ailment(_)
                | Self::SettingsOf(_)
        )
    }

    /// The screens of the bar at the foot, each with its name.
    pub const TABS: [(Self, &str); 5] = [
        (Self::Watch, frame::WATCH),
        (Self::Flock, frame::FLOCK),
        (Self::Season, frame::SEASON),
        (Self::Help, frame::HELP),
        (Self::Farm, frame::FARM),
    ];

    /// Returns the screen of the bar at the foot under which this one is found.
    #[must_use]
    pub const fn tab(self) -> Option<Self> {
        match self {
            Self::Watch
            | Self::Lambing
            | Self::LambingEwe(_)
            | Self::LambingUnknown
            | Self::LambingLamb(_)
            | Self::BottleRound
            | Self::Pens
            | Self::Pen(_)
            | Self::NotRight
            | Self::IllEwe(_)
            | Self::IllLamb(_)
            | Self::Night => Some(Self::Watch),
            Self::Flock
            | Self::Ewe(_)
            | Self::Lamb(_)
            | Self::ColdLamb(Some(_))
            | Self::ScoreEwes(_)
            | Self::WeighLambs
            | Self::TagLambs
            | Self::Medicines => Some(Self::Flock),
            Self::Season
            | Self::Plan
            | Self::Group(_)
            | Self::Supplies
            | Self::Feed
            | Self::Summary
            | Self::Keep => Some(Self::Season),
            Self::Help | Self::Topic(_) | Self::Ailment(_) | Self::Calculators | Self::ColdLamb(None) => {
                Some(Self::Help)
            }
            Self::Farm
            | Self::Settings
            | Self::SettingsOf(_)
            | Self::Share
            | Self::Tables
            | Self::Setup
            | Self::Erase => Some(Self::Farm),
            Self::Lost => None,
        }
    }

    /// Returns the screen of an animal.
    #[must_use]
    pub const fn of(animal: Animal) -> Self {
        match animal {
            Animal::Ewe(id) => Self::Ewe(id),
            Animal::Lamb(id) => Self::Lamb(id),
        }
    }
}
