//! The short words by which tables tell a sex, a litter, a fate: what is commonly written is known, the rest is asked.

use crate::book::Departure;

/// What a code is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CodeOf {
    /// What kind of animal stands in a row.
    Kind,
    /// Its sex.
    Sex,
    /// Of how many it was born, or reared.
    Litter,
    /// Whether it was born alive.
    Alive,
    /// What became of it.
    Status,
}

/// What a code can mean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Code {
    /// A ewe, or a ewe lamb.
    Ewe,
    /// A ram, or a ram lamb.
    Ram,
    /// A wether.
    Wether,
    /// A lamb of either sex.
    Lamb,
    /// One of so many.
    Of(u8),
    /// Reared by hand.
    ByHand,
    /// Alive, or here.
    Alive,
    /// Dead.
    Dead,
    /// Gone in this way.
    Gone(Departure),
    /// It says nothing.
    NotKnown,
}

impl CodeOf {
    /// Returns what a code of this kind can mean, in the order in which it is asked.
    #[must_use]
    pub const fn meanings(self) -> &'static [Code] {
        match self {
            Self::Kind => &[Code::Ewe, Code::Ram, Code::Lamb],
            Self::Sex => &[Code::Ewe, Code::Ram, Code::Wether, Code::NotKnown],
            Self::Litter => {
                &[Code::Of(1), Code::Of(2), Code::Of(3), Code::Of(4), Code::ByHand, Code::NotKnown]
            }
            Self::Alive => &[Code::Alive, Code::Dead, Code::NotKnown],
            Self::Status => &[
                Code::Alive,
                Code::Dead,
                Code::Gone(Departure::Sold),
                Code::Gone(Departure::Slaughtered),
                Code::Gone(Departure::Given),
                Code::Gone(Departure::Missing),
                Code::NotKnown,
            ],
        }
    }

    /// Returns what a code commonly means; nothing where it has to be asked.
    #[must_use]
    pub fn known(self, text: &str) -> Option<Code> {
        let small = text.trim().trim_start_matches('\'').to_lowercase();
        let of = |list: &[(Code, &[&str])]| {
            list.iter().find(|(_, words)| words.contains(&small.as_str())).map(|(code, _)| *code)
        };
        if NOTHING.contains(&small.as_str()) {
            return Some(Code::NotKnown);
        }
        match self {
            Self::Kind => of(&[
                (Code::Ewe, &["ewe", "e", "ewes"]),
                (Code::Ram, &["ram", "r", "rams", "buck", "tup"]),
                (Code::Lamb, &["lamb", "l", "lambs", "ewe lamb", "ram lamb", "wether", "wether lamb"]),
            ]),
            Self::Sex => of(&[
                (Code::Ewe, &["f", "female", "e", "ewe", "ewe lamb", "girl", "fem"]),
                (Code::Ram, &["m", "male", "r", "ram", "ram lamb", "buck", "tup", "boy", "intact"]),
                (Code::Wether, &["w", "wether", "wether lamb", "weather", "wedder", "castrate", "castrated"]),
                (Code::NotKnown, &["lamb", "x"]),
            ]),
            Self::Litter => of(&[
                (Code::Of(1), &["1", "s", "single", "singleton", "sgl", "one"]),
                (Code::Of(2), &["2", "t", "tw", "twn", "twin", "twins", "two"]),
                (Code::Of(3), &["3", "tr", "trp", "trip", "triplet", "triplets", "three"]),
                (Code::Of(4), &["4", "q", "quad", "quads", "quadruplet", "four"]),
                (Code::Of(5), &["5", "quint", "quintuplet", "one of 5"]),
                (Code::Of(6), &["6", "one of 6"]),
                (
                    Code::ByHand,
                    &["0", "bottle", "orphan", "pet", "cade", "by hand", "hand", "bummer", "poddy"],
                ),
            ]),
            Self::Alive => of(&[
                (Code::Alive, &["yes", "y", "alive", "live", "a", "l", "1", "true", "living"]),
                (
                    Code::Dead,
                    &["no", "n", "dead", "d", "0", "false", "stillborn", "sb", "still born", "born dead"],
                ),
            ]),
            Self::Status => of(&[
                (
                    Code::Alive,
                    &[
                        "alive", "live", "living", "active", "here", "a", "current", "kept", "keep",
                        "in flock", "yes",
                    ],
                ),
                (
                    Code::Dead,
                    &[
                        "dead",
                        "died",
                        "d",
                        "deceased",
                        "lost",
                        "loss",
                        "stillborn",
                        "put down",
                        "euthanized",
                        "no",
                    ],
                ),
                (Code::Gone(Departure::Sold), &["sold", "s", "sale"]),
                (
                    Code::Gone(Departure::Slaughtered),
                    &["slaughtered", "slaughter", "butchered", "processed", "harvested", "meat", "freezer"],
                ),
                (Code::Gone(Departure::Given), &["given away", "given", "gifted", "gift"]),
                (Code::Gone(Departure::Missing), &["missing", "stolen"]),
            ]),
        }
    }
}

/// Cells that say nothing.
const NOTHING: [&str; 9] = ["", "-", "?", "n/a", "na", "none", "unknown", "not known", "--"];

/// Says whether a cell says nothing.
#[must_use]
pub fn says_nothing(text: &str) -> bool {
    NOTHING.contains(&text.trim().to_lowercase().as_str())
}
