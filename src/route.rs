//! Which screen stands at which address: a closed type, read from and written as what follows the `#`.

use yeanling_core::book::{Animal, EweId, GroupId, LambId, PenId};

use crate::browser::place;

/// A screen, with what it is about.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
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
    /// Goes there; the phone's back button leads back.
    pub(crate) fn go(self) {
        place::go(&self.hash());
    }

    /// Goes there in place of where we are.
    pub(crate) fn replace(self) {
        place::replace(&self.hash());
    }

    /// Returns the screen of an animal.
    #[must_use]
    pub const fn of(animal: Animal) -> Self {
        match animal {
            Animal::Ewe(id) => Self::Ewe(id),
            Animal::Lamb(id) => Self::Lamb(id),
        }
    }

    /// Returns the whole address, for those who come from outside.
    #[must_use]
    pub(crate) fn address(self) -> String {
        place::whole(&self.hash())
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
        let (ewe, lamb, pen) = (EweId::from_uuid(id), LambId::from_uuid(id), PenId::from_uuid(id));
        for screen in [
            Screen::Watch,
            Screen::Lambing,
            Screen::LambingEwe(ewe),
            Screen::LambingUnknown,
            Screen::LambingLamb(lamb),
            Screen::Lamb(lamb),
            Screen::Ewe(ewe),
            Screen::Flock,
            Screen::Pens,
            Screen::Pen(pen),
            Screen::BottleRound,
            Screen::ColdLamb(None),
            Screen::ColdLamb(Some(lamb)),
            Screen::Figures,
            Screen::HandOver,
            Screen::Help,
            Screen::Practice,
            Screen::More,
            Screen::Season,
            Screen::Group(GroupId::from_uuid(id)),
            Screen::Race(GroupId::from_uuid(id)),
            Screen::Stores,
            Screen::Medicines,
            Screen::Weighing,
            Screen::Feed,
            Screen::Year,
            Screen::Night,
        ] {
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
