//! What happens in a night, step by step: what was seen or done, by whom, and how long after the step before.
//!
//! Animals go by their place (the first ewe, the second lamb), so that a night from which steps are taken is still one.

use yeanling_core::book::{Awaited, Belly, Cause, Found, GlucoseBy, Mouth, Part, Presentation, Sign, Suck};

use yeanling_core::terms::{Change, EweSign, Gate, LambSign, UdderHalf};

use super::chance::Chance;

/// One step of a night.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Step {
    /// How long after the step before, in seconds.
    pub(super) wait: i64,
    /// Whether the second phone is at hand.
    pub(super) second: bool,
    /// How many minutes ago it happened, as it is noted.
    pub(super) ago: i64,
    pub(super) what: What,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum What {
    Ewe(usize, OfEwe),
    Lamb(usize, OfLamb),
    /// One of the duties that one tap discharges is tapped.
    Press(usize),
    /// One of the duties is put off, by so many quarters of what the gate lets through.
    PutOff(usize, i64),
    /// So many entries back, one is taken back, or brought back, or moved by so many minutes.
    Strike(usize),
    Restore(usize),
    Move(usize, i64),
    /// The phone's clock jumps by so many minutes.
    Jump(i64),
    /// The phone's clock is set to another offset from UTC.
    Offset(i16),
    /// From here on the two phones are apart, until they meet.
    Part,
    Meet,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum OfEwe {
    Sign(Sign),
    Bag,
    Straining,
    Shows(Part),
    Check(Found),
    Help,
    PutRight,
    VetCalled,
    Said(Said),
    Looked,
    NotLambing,
    Afterbirth,
    Awaited(Awaited),
    Scanned(u8),
    Born {
        alive: bool,
    },
    /// What is seen of one that is not right, and what is asked first.
    NotRight(EweSign, [Gate; 3]),
    Changed(Change),
    /// How the left and the right half of her udder are.
    Udder(UdderHalf, UdderHalf),
    Settled,
    Died(Cause),
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum OfLamb {
    FoundBorn,
    HardBirth,
    Stood,
    Sucked,
    Dipped,
    /// In grams.
    Weighed(u32),
    /// In milliliters.
    Fed(u32, bool),
    Vigor(u8),
    Belly(Belly),
    /// In tenths of a degree.
    Temperature(u32),
    Swallow(bool),
    Mouth(Mouth, Suck),
    Warmed,
    Glucose(GlucoseBy),
    VetCalled,
    Said(Said),
    Looked,
    AllBorn,
    FosteredTo(usize),
    DamIs(usize),
    Accepted(bool),
    Weaned,
    NotRight(LambSign, [Gate; 3]),
    Changed(Change),
    MilkAllowed,
    Died(Cause),
}

/// What came of a call, the next look in so many minutes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Said {
    Coming,
    Nobody,
    Advised(i64),
    Saw(i64),
}

/// What a night is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum About {
    Labor,
    Cold,
    Bottle,
    Barn,
}

const PARTS: [Part; 6] =
    [Part::FeetAndNose, Part::ForeFeet, Part::OneFoot, Part::Head, Part::HindFeet, Part::Tail];
const LIES: [Presentation; 8] = [
    Presentation::Normal,
    Presentation::Normal,
    Presentation::OneLegBack,
    Presentation::HeadBack,
    Presentation::HindFeetFirst,
    Presentation::TailFirst,
    Presentation::Crosswise,
    Presentation::TooBig,
];

/// Returns the night of this seed.
pub(super) fn night(about: About, seed: u64) -> Vec<Step> {
    let chance = &mut Chance::new(seed.wrapping_mul(4) + about as u64);
    let mut steps = Vec::new();
    let plain = |what| Step { wait: 0, second: false, ago: 0, what };
    match about {
        About::Labor => {
            if chance.one_in(4) {
                steps.push(plain(What::Ewe(0, OfEwe::Scanned(u8::try_from(chance.below(4)).unwrap_or(0)))));
            }
            if chance.one_in(2) {
                steps.push(plain(What::Ewe(0, OfEwe::Born { alive: !chance.one_in(6) })));
            }
        }
        About::Cold | About::Bottle => {
            steps.push(plain(What::Ewe(0, OfEwe::Born { alive: true })));
            if chance.one_in(5) {
                let ago = i64::from(chance.between(1, 8)) * 60;
                steps[0].ago = ago;
                steps.push(plain(What::Lamb(0, OfLamb::FoundBorn)));
            }
            if about == About::Bottle || chance.one_in(2) {
                let wait = i64::from(chance.between(1, 30)) * 60;
                steps.push(Step { wait, ..plain(What::Lamb(0, OfLamb::Weighed(grams(chance)))) });
            }
        }
        About::Barn => {
            for ewe in 0..chance.between(1, 2) {
                let ewe = usize::try_from(ewe).unwrap_or(0);
                steps.push(plain(What::Ewe(ewe, OfEwe::Born { alive: true })));
            }
            if chance.one_in(2) {
                steps.push(plain(What::Part));
            }
        }
    }
    for _ in 0..chance.between(3, 8) {
        let wait = wait(about, chance);
        let second = about == About::Barn && chance.one_in(3);
        let ago = if chance.one_in(16) { i64::from(chance.between(1, 90)) } else { 0 };
        steps.push(Step { wait, second, ago, what: what(about, chance) });
    }
    steps
}

fn wait(about: About, chance: &mut Chance) -> i64 {
    let minutes = match (about, chance.below(20)) {
        // Two facts of one instant: what was read and tried together.
        (About::Cold, 0) => return 0,
        (_, 0..=2) => return i64::from(chance.between(1, 50)),
        (About::Bottle, 3..=6) | (_, 3..=10) => chance.between(1, 30),
        (About::Bottle, 7..=15) => chance.between(60, 500),
        (_, 11..=16) => chance.between(20, 130),
        (About::Bottle, _) => chance.between(600, 3_000),
        (_, 17..=18) => chance.between(130, 700),
        _ => chance.between(700, 5_000),
    };
    i64::from(minutes) * 60
}

fn grams(chance: &mut Chance) -> u32 {
    chance.between(12, 65) * 100
}

fn what(about: About, chance: &mut Chance) -> What {
    if chance.one_in(6) {
        return What::Press(place(chance, 4));
    }
    if chance.one_in(11) {
        return What::PutOff(place(chance, 4), i64::from(chance.between(1, 4)));
    }
    if chance.one_in(24) {
        let back = place(chance, 4);
        return match chance.below(3) {
            0 => What::Strike(back),
            1 => What::Restore(back),
            _ => What::Move(back, i64::from(chance.between(0, 180)) - 90),
        };
    }
    let many = about == About::Barn;
    if many && chance.one_in(6) {
        return match chance.below(5) {
            0 => What::Jump(i64::from(chance.between(0, 360)) - 180),
            1 => What::Offset(chance.of(&[-300, -240, 0, 60])),
            2 | 3 => What::Part,
            _ => What::Meet,
        };
    }
    let ewe = if many { place(chance, 2) } else { 0 };
    let lamb = place(chance, if about == About::Labor || many { 3 } else { 1 });
    let of_ewe = match about {
        About::Labor => !chance.one_in(6),
        About::Cold | About::Bottle => chance.one_in(12),
        About::Barn => chance.one_in(2),
    };
    if of_ewe {
        What::Ewe(ewe, of_ewe_now(chance))
    } else if about == About::Bottle && !chance.one_in(4) {
        What::Lamb(lamb, milk(chance))
    } else {
        What::Lamb(lamb, care(chance, many))
    }
}

fn place(chance: &mut Chance, among: u32) -> usize {
    usize::try_from(chance.below(among)).unwrap_or(0)
}

fn said(chance: &mut Chance) -> Said {
    let minutes = i64::from(chance.between(5, 240));
    match chance.below(5) {
        0 => Said::Coming,
        1 => Said::Nobody,
        2 => Said::Advised(minutes),
        _ => Said::Saw(minutes),
    }
}

fn of_ewe_now(chance: &mut Chance) -> OfEwe {
    match chance.below(48) {
        44..=46 => OfEwe::Udder(half(chance), half(chance)),
        47 => OfEwe::Settled,
        40..=42 => OfEwe::NotRight(chance.of(&EweSign::ALL), gates(chance)),
        43 => OfEwe::Changed(change(chance)),
        0..=3 => OfEwe::Sign(Sign::Restless),
        4 => OfEwe::Sign(chance.of(&[Sign::Apart, Sign::UdderTight, Sign::Slack, Sign::Discharge])),
        5..=7 => OfEwe::Bag,
        8..=10 => OfEwe::Straining,
        11..=15 => OfEwe::Shows(chance.of(&PARTS)),
        16..=18 => OfEwe::Check(Found::Lamb(chance.of(&LIES))),
        19..=20 => OfEwe::Check(Found::CervixClosed),
        21 => OfEwe::Check(Found::NothingYet),
        22 => OfEwe::Check(Found::Empty),
        23 => OfEwe::Help,
        24 => OfEwe::PutRight,
        25..=26 => OfEwe::VetCalled,
        27..=28 => OfEwe::Said(said(chance)),
        29..=31 => OfEwe::Looked,
        32 => OfEwe::NotLambing,
        33 => OfEwe::Afterbirth,
        34 => OfEwe::Awaited(chance.of(&[Awaited::Hanging, Awaited::NotSeenBright])),
        35..=38 => OfEwe::Born { alive: !chance.one_in(5) },
        _ if chance.one_in(3) => OfEwe::Died(Cause::Unknown),
        _ => OfEwe::Sign(Sign::Restless),
    }
}

fn half(chance: &mut Chance) -> UdderHalf {
    let milks = UdderHalf::Milks;
    chance.of(&[milks, milks, UdderHalf::Dry, UdderHalf::Dry, UdderHalf::HardOrHot, UdderHalf::ColdOrBlue])
}

/// The signs of a lamb, those that hold milk back more often.
const LAMB_SIGNS: [LambSign; 16] = [
    LambSign::WetChin,
    LambSign::WetChin,
    LambSign::TightBelly,
    LambSign::TightBelly,
    LambSign::Dull,
    LambSign::Lively,
    LambSign::WateryScour,
    LambSign::BloodInDung,
    LambSign::HotJoint,
    LambSign::LidIn,
    LambSign::CoughsOften,
    LambSign::FitsHeadBack,
    LambSign::RigidJawShut,
    LambSign::Hunched,
    LambSign::NoDung,
    LambSign::Wound,
];

fn gates(chance: &mut Chance) -> [Gate; 3] {
    let all = [Gate::NotChecked, Gate::NotChecked, Gate::Good, Gate::Bad, Gate::CannotCheck];
    [chance.of(&all), chance.of(&all), chance.of(&all)]
}

fn change(chance: &mut Chance) -> Change {
    chance.of(&[Change::Better, Change::Same, Change::Worse, Change::Worse, Change::Well])
}

fn milk(chance: &mut Chance) -> OfLamb {
    match chance.below(18) {
        16 => OfLamb::NotRight(chance.of(&LAMB_SIGNS), gates(chance)),
        17 => OfLamb::MilkAllowed,
        0..=8 => OfLamb::Fed(chance.between(2, 60) * 5, chance.one_in(4)),
        9..=11 => OfLamb::Weighed(grams(chance)),
        12 => OfLamb::Sucked,
        13 => OfLamb::Belly(chance.of(&[Belly::Hollow, Belly::Full])),
        14 => OfLamb::Temperature(chance.between(375, 398)),
        _ => OfLamb::Swallow(true),
    }
}

fn care(chance: &mut Chance, many: bool) -> OfLamb {
    match chance.below(52) {
        50..=51 => OfLamb::HardBirth,
        44..=47 => OfLamb::NotRight(chance.of(&LAMB_SIGNS), gates(chance)),
        48 => OfLamb::Changed(change(chance)),
        49 => OfLamb::MilkAllowed,
        0..=7 => OfLamb::Temperature(chance.between(345, 408)),
        8 => OfLamb::Temperature(chance.of(&[369, 370, 389, 390, 400, 401])),
        9..=13 => OfLamb::Swallow(!chance.one_in(3)),
        14..=15 => OfLamb::Vigor(u8::try_from(chance.between(1, 4)).unwrap_or(1)),
        16..=18 => OfLamb::Mouth(
            chance.of(&[Mouth::Cold, Mouth::Cool, Mouth::Warm]),
            chance.of(&[Suck::Strong, Suck::Weak, Suck::None]),
        ),
        19..=20 => OfLamb::Belly(chance.of(&[Belly::Hollow, Belly::Hollow, Belly::Full])),
        21..=23 => OfLamb::VetCalled,
        24..=25 => OfLamb::Said(said(chance)),
        26..=27 => OfLamb::Looked,
        28..=30 => OfLamb::Fed(chance.between(2, 60) * 5, chance.one_in(3)),
        31..=32 => OfLamb::Weighed(grams(chance)),
        33 => OfLamb::Sucked,
        34 => OfLamb::Stood,
        35 => OfLamb::Warmed,
        36 => OfLamb::Glucose(chance.of(&[GlucoseBy::Vet, GlucoseBy::Trained])),
        37 => OfLamb::Dipped,
        38 => OfLamb::AllBorn,
        39 if many => OfLamb::FosteredTo(place(chance, 2)),
        40 if many => OfLamb::DamIs(place(chance, 2)),
        41 => OfLamb::Accepted(chance.one_in(2)),
        42 if chance.one_in(2) => OfLamb::Weaned,
        43 if chance.one_in(2) => OfLamb::Died(Cause::Cold),
        _ => OfLamb::Temperature(chance.between(345, 408)),
    }
}
