//! Which screen stands at which address: a closed type, read from and written as what follows the `#`.

use yeanling_core::book::{Animal, EweId, GroupId, LambId, PenId};
use yeanling_core::flock::Flock;
use yeanling_words::{ahead, bottle_round, frame, medicines, night, pens, race, weighing, year};

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
    Figures,
    /// Send the book, take one in.
    HandOver,
    /// Decision aids, cautions, sources.
    Help,
    /// The farm's choices.
    Practice,
    /// The way to what has no tab.
    More,
    /// The season ahead.
    Season,
    /// One group of ewes.
    Group(GroupId),
    /// One group, ewe after ewe.
    Race(GroupId),
    /// What is on the shelf and in the freezer.
    Stores,
    /// The medicine record.
    Medicines,
    /// Lamb after lamb over the scales.
    Weighing,
    /// Hay, ration and water.
    Feed,
    /// The season in figures.
    Year,
    /// The dark clock with the alarm.
    Night,
    /// An address that names no screen.
    Lost,
}

impl Screen {
    /// The screens that are about no one animal, group or pen.
    pub const ALONE: [Self; 19] = [
        Self::Watch,
        Self::Lambing,
        Self::LambingUnknown,
        Self::Flock,
        Self::Pens,
        Self::BottleRound,
        Self::ColdLamb(None),
        Self::Figures,
        Self::HandOver,
        Self::Help,
        Self::Practice,
        Self::More,
        Self::Season,
        Self::Stores,
        Self::Medicines,
        Self::Weighing,
        Self::Feed,
        Self::Year,
        Self::Night,
    ];

    /// Returns every screen that there is for a flock.
    #[must_use]
    pub fn all(flock: &Flock) -> Vec<Self> {
        let mut all = Self::ALONE.to_vec();
        all.extend(flock.ewes.keys().flat_map(|ewe| Self::of_ewe(*ewe)));
        all.extend(flock.lambs.keys().flat_map(|lamb| Self::of_lamb(*lamb)));
        all.extend(flock.groups.keys().flat_map(|group| Self::of_group(*group)));
        all.extend(flock.pens.keys().map(|pen| Self::Pen(*pen)));
        // A screen that is not named here would be left out of every law in silence.
        debug_assert!(all.iter().all(|screen| screen.is_listed()));
        all
    }

    const fn of_ewe(ewe: EweId) -> [Self; 2] {
        [Self::Ewe(ewe), Self::LambingEwe(ewe)]
    }

    const fn of_lamb(lamb: LambId) -> [Self; 3] {
        [Self::Lamb(lamb), Self::LambingLamb(lamb), Self::ColdLamb(Some(lamb))]
    }

    const fn of_group(group: GroupId) -> [Self; 2] {
        [Self::Group(group), Self::Race(group)]
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
            | Self::Figures
            | Self::HandOver
            | Self::Help
            | Self::Practice
            | Self::More
            | Self::Season
            | Self::Stores
            | Self::Medicines
            | Self::Weighing
            | Self::Feed
            | Self::Year
            | Self::Night
            | Self::Ewe(_)
            | Self::LambingEwe(_)
            | Self::Lamb(_)
            | Self::LambingLamb(_)
            | Self::Group(_)
            | Self::Race(_)
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
            Self::Figures => Some(frame::FIGURES),
            Self::Pens => Some(pens::TITLE),
            Self::BottleRound => Some(bottle_round::TITLE),
            Self::Season => Some(ahead::TITLE),
            Self::Group(_) => Some(race::GROUP),
            Self::Medicines => Some(medicines::TITLE),
            Self::Weighing => Some(weighing::TITLE),
            Self::Year => Some(year::TITLE),
            Self::Race(_) => Some(race::TITLE),
            Self::Pen(_) => Some(pens::PEN),
            Self::Night => Some(night::TITLE),
            Self::More => Some(frame::MORE),
            Self::Lambing
            | Self::LambingEwe(_)
            | Self::LambingUnknown
            | Self::LambingLamb(_)
            | Self::Lamb(_)
            | Self::Ewe(_)
            | Self::ColdLamb(_)
            | Self::HandOver
            | Self::Help
            | Self::Practice
            | Self::Stores
            | Self::Feed
            | Self::Lost => None,
        }
    }

    /// Says whether it is about one animal, group or pen: the way back leads to its row in the list it was opened from.
    #[must_use]
    pub const fn is_of_one(self) -> bool {
        matches!(self, Self::Ewe(_) | Self::Lamb(_) | Self::Group(_) | Self::Pen(_))
    }

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
            | Self::Pen(_) => Some(Self::Watch),
            Self::Flock | Self::Ewe(_) | Self::Lamb(_) | Self::ColdLamb(Some(_)) => Some(Self::Flock),
            Self::Figures | Self::ColdLamb(None) => Some(Self::Figures),
            Self::HandOver => Some(Self::HandOver),
            Self::More
            | Self::Help
            | Self::Practice
            | Self::Night
            | Self::Season
            | Self::Group(_)
            | Self::Race(_)
            | Self::Stores
            | Self::Medicines
            | Self::Weighing
            | Self::Feed
            | Self::Year => Some(Self::More),
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

    /// Returns the screen at this address, with or without the `#`.
    #[must_use]
    pub fn from_hash(hash: &str) -> Self {
        let path = hash.trim_start_matches('#').trim_matches('/');
        let parts: Vec<&str> = path.split('/').collect();
        match parts.as_slice() {
            ["" | "watch"] => Self::Watch,
            ["lambing"] => Self::Lambing,
            ["lambing", "unknown"] => Self::LambingUnknown,
            ["lambing", "ewe", id] => id.parse().map_or(Self::Lost, Self::LambingEwe),
            ["lambing", "lamb", id] => id.parse().map_or(Self::Lost, Self::LambingLamb),
            ["lamb", id] => id.parse().map_or(Self::Lost, Self::Lamb),
            ["ewe", id] => id.parse().map_or(Self::Lost, Self::Ewe),
            ["flock"] => Self::Flock,
            ["pens"] => Self::Pens,
            ["pen", id] => id.parse().map_or(Self::Lost, Self::Pen),
            ["bottle-round"] => Self::BottleRound,
            ["cold-lamb"] => Self::ColdLamb(None),
            ["cold-lamb", id] => id.parse().map_or(Self::Lost, |id| Self::ColdLamb(Some(id))),
            ["figures"] => Self::Figures,
            ["hand-over"] => Self::HandOver,
            ["help"] => Self::Help,
            ["practice"] => Self::Practice,
            ["more"] => Self::More,
            ["season"] => Self::Season,
            ["group", id] => id.parse().map_or(Self::Lost, Self::Group),
            ["race", id] => id.parse().map_or(Self::Lost, Self::Race),
            ["stores"] => Self::Stores,
            ["medicines"] => Self::Medicines,
            ["weighing"] => Self::Weighing,
            ["feed"] => Self::Feed,
            ["year"] => Self::Year,
            ["night"] => Self::Night,
            _ => Self::Lost,
        }
    }

    /// Returns the address of this screen, with the `#`.
    #[must_use]
    pub fn hash(self) -> String {
        match self {
            Self::Watch | Self::Lost => "#/".to_owned(),
            Self::Lambing => "#/lambing".to_owned(),
            Self::LambingEwe(id) => format!("#/lambing/ewe/{id}"),
            Self::LambingUnknown => "#/lambing/unknown".to_owned(),
            Self::LambingLamb(id) => format!("#/lambing/lamb/{id}"),
            Self::Lamb(id) => format!("#/lamb/{id}"),
            Self::Ewe(id) => format!("#/ewe/{id}"),
            Self::Flock => "#/flock".to_owned(),
            Self::Pens => "#/pens".to_owned(),
            Self::Pen(id) => format!("#/pen/{id}"),
            Self::BottleRound => "#/bottle-round".to_owned(),
            Self::ColdLamb(None) => "#/cold-lamb".to_owned(),
            Self::ColdLamb(Some(id)) => format!("#/cold-lamb/{id}"),
            Self::Figures => "#/figures".to_owned(),
            Self::HandOver => "#/hand-over".to_owned(),
            Self::Help => "#/help".to_owned(),
            Self::Practice => "#/practice".to_owned(),
            Self::More => "#/more".to_owned(),
            Self::Season => "#/season".to_owned(),
            Self::Group(id) => format!("#/group/{id}"),
            Self::Race(id) => format!("#/race/{id}"),
            Self::Stores => "#/stores".to_owned(),
            Self::Medicines => "#/medicines".to_owned(),
            Self::Weighing => "#/weighing".to_owned(),
            Self::Feed => "#/feed".to_owned(),
            Self::Year => "#/year".to_owned(),
            Self::Night => "#/night".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_address_leads_back_to_its_screen() {
        let id = uuid::Uuid::from_u128(0x0193_5d5a_0000_7000_8000_0000_0000_0001);
        let (ewe, lamb) = (EweId::from_uuid(id), LambId::from_uuid(id));
        let (pen, group) = (PenId::from_uuid(id), GroupId::from_uuid(id));
        let of =
            [Screen::of_ewe(ewe).to_vec(), Screen::of_lamb(lamb).to_vec(), Screen::of_group(group).to_vec()];
        let all = Screen::ALONE.into_iter().chain(of.concat()).chain([Screen::Pen(pen)]);
        for screen in all {
            assert_eq!(Screen::from_hash(&screen.hash()), screen);
        }
    }

    #[test]
    fn an_address_that_names_nothing_is_lost() {
        for hash in ["#/lamb", "#/lamb/14a", "#/nowhere", "#/ewe/../lamb", "#/lamb/x/y"] {
            assert_eq!(Screen::from_hash(hash), Screen::Lost, "{hash}");
        }
    }
}
