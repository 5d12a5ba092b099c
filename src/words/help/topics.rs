//! What there is to read, a page each: its name, what it answers, and the words by which people look for it.

/// One page to read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Topic {
    /// When to call the vet.
    Vet,
    /// What to do with a cold lamb, by its temperature and age.
    Cold,
    /// How to feed by tube, and when not to.
    Tube,
    /// Until when colostrum works.
    TooLate,
    /// What a ewe that is not right may have.
    SickEwe,
    /// What a lamb that is not right may have.
    SickLamb,
    /// By when to look, to check inside and to call.
    Labor,
    /// How a lamb lies, and what to do.
    Presentation,
    /// A newborn's first day.
    FirstDay,
    /// How a fed lamb is told from a hungry one.
    Fed,
    /// Both scales of vigor.
    Vigor,
    /// How good colostrum is, and how it keeps.
    Quality,
    /// How much a bottle lamb gets.
    Bottle,
    /// When a bottle lamb is weaned.
    Weaning,
    /// How to take a temperature.
    Temperature,
    /// What weather chills a lamb.
    Chill,
    /// Rings, tags and vaccine.
    Rings,
    /// Clean hands.
    Hygiene,
    /// Who keeps away from lambing.
    People,
    /// How to back up.
    BackUp,
    /// How to move to a new phone.
    NewPhone,
    /// How to put the app on a phone.
    Install,
    /// What the app does not do.
    Limits,
    /// The words of the trade.
    Glossary,
    /// Every source.
    Sources,
}

/// All topics as Help lists them: what cannot wait first.
pub const SHELVES: [(&str, &[Topic]); 7] = [
    ("Right now", &[Topic::Vet, Topic::Cold, Topic::Tube, Topic::TooLate]),
    ("Illness", &[Topic::SickEwe, Topic::SickLamb]),
    ("Lambing", &[Topic::Labor, Topic::Presentation, Topic::FirstDay, Topic::Fed, Topic::Vigor]),
    ("Feeding", &[Topic::Quality, Topic::Bottle, Topic::Weaning]),
    ("Care", &[Topic::Temperature, Topic::Chill, Topic::Rings, Topic::Hygiene, Topic::People]),
    ("This phone", &[Topic::BackUp, Topic::NewPhone, Topic::Install, Topic::Limits]),
    ("Look it up", &[Topic::Glossary, Topic::Sources]),
];

impl Topic {
    /// Every topic.
    pub const ALL: [Self; 25] = [
        Self::Vet,
        Self::Cold,
        Self::Tube,
        Self::TooLate,
        Self::SickEwe,
        Self::SickLamb,
        Self::Labor,
        Self::Presentation,
        Self::FirstDay,
        Self::Fed,
        Self::Vigor,
        Self::Quality,
        Self::Bottle,
        Self::Weaning,
        Self::Temperature,
        Self::Chill,
        Self::Rings,
        Self::Hygiene,
        Self::People,
        Self::BackUp,
        Self::NewPhone,
        Self::Install,
        Self::Limits,
        Self::Glossary,
        Self::Sources,
    ];

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Vet => super::VET,
            Self::Cold => super::COLD,
            Self::Tube => super::tube::TITLE,
            Self::TooLate => super::too_late::TITLE,
            Self::SickEwe => super::illness::EWE,
            Self::SickLamb => super::illness::LAMB,
            Self::Labor => super::lambing::CLOCKS,
            Self::Presentation => super::lambing::LIES,
            Self::FirstDay => super::FIRST_DAY,
            Self::Fed => super::FED,
            Self::Vigor => super::VIGOR,
            Self::Quality => super::milk::BAG,
            Self::Bottle => super::milk::BOTTLE,
            Self::Weaning => super::milk::WEANING,
            Self::Temperature => crate::cold_lamb::courses::THERMOMETER,
            Self::Chill => super::milk::WEATHER,
            Self::Rings => super::RINGS,
            Self::Hygiene => super::HYGIENE,
            Self::People => super::PEOPLE,
            Self::BackUp => super::phone::BACK_UP,
            Self::NewPhone => super::phone::NEW_PHONE,
            Self::Install => super::INSTALL,
            Self::Limits => super::LIMITS,
            Self::Glossary => super::glossary::TITLE,
            Self::Sources => super::SOURCES,
        }
    }

    /// Returns what it answers, in a few words.
    #[must_use]
    pub const fn about(self) -> &'static str {
        match self {
            Self::Vet => "The ewe, the lamb, and how long to wait",
            Self::Cold => "By temperature and age: what comes first",
            Self::Tube => "When not to, then step by step",
            Self::TooLate => "Hour by hour, as published",
            Self::SickEwe => "Down, off feed, something out, udder, lame",
            Self::SickLamb => "Dull, scours, wet chin, belly, joint, eye",
            Self::Labor => "When to look, check inside, assist, call",
            Self::Presentation => "Drawn, and what each one needs",
            Self::FirstDay => "Eight steps from birth to 24 h",
            Self::Fed => "A full belly from a hollow one",
            Self::Vigor => "Four grades or ten points",
            Self::Quality => "Brix, freezing, thawing, substitutes",
            Self::Bottle => "How much, how often, how to mix",
            Self::Weaning => "Age, weight and solid feed",
            Self::Temperature => "With a thermometer, under the tail",
            Self::Chill => "Wind, rain and cold: who is at risk",
            Self::Rings => "From when, until when, and the law",
            Self::Hygiene => "What people can catch, and how not to",
            Self::People => "Pregnant, or weak immunity",
            Self::BackUp => "Keep a copy off this phone",
            Self::NewPhone => "Move the book over, lost phone too",
            Self::Install => "iPhone and Android home screen",
            Self::Limits => "No alarm while closed, no doses",
            Self::Glossary => "Every word of the trade in a sentence",
            Self::Sources => "Who printed each figure",
        }
    }

    /// Returns other words by which people look for it, in small letters.
    #[must_use]
    pub const fn found_by(self) -> &'static str {
        match self {
            Self::Vet => "veterinarian doctor emergency phone call help prolapse bleeding",
            Self::Cold => "hypothermia chilled freezing warm warming box lamp glucose weak limp",
            Self::Tube => "tubing tube feed feeding stomach stomach tube syringe how to",
            Self::TooLate => "colostrum late too late window closes deadline time hours first milk 2 6 12 24",
            Self::SickEwe => {
                "sick ill illness disease down staggers not eating off feed normal temperature pulse breaths"
            }
            Self::SickLamb => "sick ill illness disease dull scours swollen",
            Self::Labor => "labor straining stuck waters bag restless time long afterbirth next lamb",
            Self::Presentation => {
                "malpresentation breech backward head back leg back twins tangled stuck pull"
            }
            Self::FirstDay => "newborn birth navel dip iodine checklist",
            Self::Fed => "hungry hollow belly full nursing nursed starving",
            Self::Vigor => "weak score apgar lively standing",
            Self::Quality => "colostrum freeze frozen thaw refractometer powder goat cow bank bag",
            Self::Bottle => "pet orphan bummer milk powder replacer mix feeding table",
            Self::Weaning => "wean solid feed creep off milk",
            Self::Temperature => "thermometer fever rectal temp",
            Self::Chill => "weather wind rain cold wet outdoors shelter",
            Self::Rings => {
                "castrate castration dock docking tail ring band tag ear vaccine clostridial tetanus"
            }
            Self::Hygiene => "orf scours salmonella disease catch gloves wash zoonosis",
            Self::People => "pregnant woman baby unborn risk abortion",
            Self::BackUp => "backup backing save share export file copy",
            Self::NewPhone => "move transfer change switch replace old phone lost broken another",
            Self::Install => "home screen app icon offline download",
            Self::Limits => "alarm wake rings limits doses",
            Self::Glossary => "word words term meaning what is definition dictionary",
            Self::Sources => "source reference study paper who says evidence",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_topic_is_listed_once_and_says_something_of_its_own() {
        let mut listed: Vec<Topic> = SHELVES.iter().flat_map(|(_, topics)| *topics).copied().collect();
        assert_eq!(listed.first(), Some(&Topic::Vet));
        listed.sort_unstable();
        assert_eq!(listed, Topic::ALL.to_vec());
        let mut abouts: Vec<&str> = Topic::ALL.iter().map(|topic| topic.about()).collect();
        abouts.sort_unstable();
        abouts.dedup();
        assert_eq!(abouts.len(), Topic::ALL.len());
    }
}
