//! Which screen stands at which address: read from and written as what follows the `#`.
//!
//! An address that ever led somewhere goes on leading there: it may stand in a bookmark, in an alarm of the phone's calendar,
//! or in an app that was installed long ago.

mod ailment;

use yeanling_words::help::Topic;

use super::Screen;
use crate::SettingsPart;

/// The address of each topic, under that of Help.
const TOPICS: [(Topic, &str); 25] = [
    (Topic::Vet, "vet"),
    (Topic::Cold, "cold-lamb"),
    (Topic::Tube, "tube"),
    (Topic::TooLate, "too-late"),
    (Topic::SickEwe, "sick-ewe"),
    (Topic::SickLamb, "sick-lamb"),
    (Topic::Labor, "labor"),
    (Topic::Presentation, "presentation"),
    (Topic::FirstDay, "first-day"),
    (Topic::Fed, "fed"),
    (Topic::Vigor, "vigor"),
    (Topic::Quality, "colostrum-quality"),
    (Topic::Bottle, "bottle"),
    (Topic::Weaning, "weaning"),
    (Topic::Temperature, "temperature"),
    (Topic::Chill, "chill"),
    (Topic::Rings, "rings"),
    (Topic::Hygiene, "clean-hands"),
    (Topic::People, "people"),
    (Topic::BackUp, "back-up"),
    (Topic::NewPhone, "new-phone"),
    (Topic::Install, "install"),
    (Topic::Limits, "limits"),
    (Topic::Glossary, "glossary"),
    (Topic::Sources, "sources"),
];

/// The address of each part, under that of Farm settings.
const PARTS: [(SettingsPart, &str); 6] = [
    (SettingsPart::Farm, "farm"),
    (SettingsPart::Vet, "vet"),
    (SettingsPart::AlertTimes, "alert-times"),
    (SettingsPart::Feeding, "feeding"),
    (SettingsPart::Care, "care"),
    (SettingsPart::Display, "display"),
];

/// Returns what stands at an address of a list.
fn at<T: Copy>(of: &[(T, &str)], address: &str) -> Option<T> {
    of.iter().find(|(_, one)| *one == address).map(|(one, _)| *one)
}

/// Returns the address of something of a list.
fn address_of<T: PartialEq>(of: &[(T, &'static str)], sought: T) -> &'static str {
    of.iter().find(|(one, _)| *one == sought).map_or("", |(_, address)| address)
}

impl Screen {
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
            ["not-right"] => Self::NotRight,
            ["not-right", "ewe", id] => id.parse().map_or(Self::Lost, Self::IllEwe),
            ["not-right", "lamb", id] => id.parse().map_or(Self::Lost, Self::IllLamb),
            ["lamb", id] => id.parse().map_or(Self::Lost, Self::Lamb),
            ["ewe", id] => id.parse().map_or(Self::Lost, Self::Ewe),
            ["flock"] => Self::Flock,
            ["pens"] => Self::Pens,
            ["pen", id] => id.parse().map_or(Self::Lost, Self::Pen),
            ["bottle-round"] => Self::BottleRound,
            ["cold-lamb"] => Self::ColdLamb(None),
            ["cold-lamb", id] => id.parse().map_or(Self::Lost, |id| Self::ColdLamb(Some(id))),
            ["calculators" | "figures"] => Self::Calculators,
            ["share" | "hand-over"] => Self::Share,
            ["import-export"] => Self::Tables,
            ["help"] => Self::Help,
            ["help", "ewe", address] => ailment::of_ewe(address).map_or(Self::Lost, Self::Ailment),
            ["help", "lamb", address] => ailment::of_lamb(address).map_or(Self::Lost, Self::Ailment),
            ["help", topic] => at(&TOPICS, topic).map_or(Self::Lost, Self::Topic),
            ["settings" | "practice"] => Self::Settings,
            ["settings", part] => at(&PARTS, part).map_or(Self::Lost, Self::SettingsOf),
            ["farm" | "more"] => Self::Farm,
            ["season"] => Self::Season,
            ["plan"] => Self::Plan,
            ["group", id] => id.parse().map_or(Self::Lost, Self::Group),
            ["score-ewes" | "race", id] => id.parse().map_or(Self::Lost, Self::ScoreEwes),
            ["supplies" | "stores"] => Self::Supplies,
            ["medicines"] => Self::Medicines,
            ["weigh-lambs" | "weighing"] => Self::WeighLambs,
            ["tag-lambs"] => Self::TagLambs,
            ["feed"] => Self::Feed,
            ["summary" | "year"] => Self::Summary,
            ["keep"] => Self::Keep,
            ["night"] => Self::Night,
            ["setup"] => Self::Setup,
            ["erase"] => Self::Erase,
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
            Self::NotRight => "#/not-right".to_owned(),
            Self::IllEwe(id) => format!("#/not-right/ewe/{id}"),
            Self::IllLamb(id) => format!("#/not-right/lamb/{id}"),
            Self::Flock => "#/flock".to_owned(),
            Self::Pens => "#/pens".to_owned(),
            Self::Pen(id) => format!("#/pen/{id}"),
            Self::BottleRound => "#/bottle-round".to_owned(),
            Self::ColdLamb(None) => "#/cold-lamb".to_owned(),
            Self::ColdLamb(Some(id)) => format!("#/cold-lamb/{id}"),
            Self::Calculators => "#/calculators".to_owned(),
            Self::Share => "#/share".to_owned(),
            Self::Tables => "#/import-export".to_owned(),
            Self::Help => "#/help".to_owned(),
            Self::Topic(topic) => format!("#/help/{}", address_of(&TOPICS, topic)),
            Self::Ailment(ailment) => ailment::hash(ailment),
            Self::Settings => "#/settings".to_owned(),
            Self::SettingsOf(part) => format!("#/settings/{}", address_of(&PARTS, part)),
            Self::Farm => "#/farm".to_owned(),
            Self::Season => "#/season".to_owned(),
            Self::Plan => "#/plan".to_owned(),
            Self::Group(id) => format!("#/group/{id}"),
            Self::ScoreEwes(id) => format!("#/score-ewes/{id}"),
            Self::Supplies => "#/supplies".to_owned(),
            Self::Medicines => "#/medicines".to_owned(),
            Self::WeighLambs => "#/weigh-lambs".to_owned(),
            Self::TagLambs => "#/tag-lambs".to_owned(),
            Self::Feed => "#/feed".to_owned(),
            Self::Summary => "#/summary".to_owned(),
            Self::Keep => "#/keep".to_owned(),
            Self::Night => "#/night".to_owned(),
            Self::Setup => "#/setup".to_owned(),
            Self::Erase => "#/erase".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use yeanling_core::book::{EweId, GroupId, LambId, PenId};

    use super::*;

    #[test]
    fn every_address_leads_back_to_its_screen() {
        let id = uuid::Uuid::from_u128(0x0193_5d5a_0000_7000_8000_0000_0000_0001);
        let (ewe, lamb) = (EweId::from_uuid(id), LambId::from_uuid(id));
        let (pen, group) = (PenId::from_uuid(id), GroupId::from_uuid(id));
        let of =
            [Screen::of_ewe(ewe).to_vec(), Screen::of_lamb(lamb).to_vec(), Screen::of_group(group).to_vec()];
        let all = Screen::alone().into_iter().chain(of.concat()).chain([Screen::Pen(pen)]);
        for screen in all {
            assert_eq!(Screen::from_hash(&screen.hash()), screen);
        }
    }

    #[test]
    fn an_address_that_names_nothing_is_lost() {
        for hash in [
            "#/lamb",
            "#/lamb/14a",
            "#/nowhere",
            "#/ewe/../lamb",
            "#/lamb/x/y",
            "#/help/nothing",
            "#/settings/x",
        ] {
            assert_eq!(Screen::from_hash(hash), Screen::Lost, "{hash}");
        }
    }

    #[test]
    fn an_address_of_an_earlier_version_leads_to_the_same_screen() {
        let group = GroupId::from_uuid(uuid::Uuid::from_u128(0x0193_5d5a_0000_7000_8000_0000_0000_0001));
        for (earlier, screen) in [
            ("#/more".to_owned(), Screen::Farm),
            ("#/figures".to_owned(), Screen::Calculators),
            ("#/hand-over".to_owned(), Screen::Share),
            ("#/practice".to_owned(), Screen::Settings),
            ("#/stores".to_owned(), Screen::Supplies),
            ("#/weighing".to_owned(), Screen::WeighLambs),
            ("#/year".to_owned(), Screen::Summary),
            (format!("#/race/{group}"), Screen::ScoreEwes(group)),
        ] {
            assert_eq!(Screen::from_hash(&earlier), screen);
        }
    }

    #[test]
    fn every_screen_is_found_under_a_tab_and_each_tab_under_itself() {
        for screen in Screen::alone() {
            let tab = screen.tab().expect("a tab");
            assert_eq!(tab.tab(), Some(tab));
            assert!(Screen::TABS.iter().any(|(one, _)| *one == tab), "{screen:?}");
        }
    }
}
