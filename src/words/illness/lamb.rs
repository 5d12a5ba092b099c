//! A lamb that is not right: the signs as buttons, and each row of the table in words.

use yeanling_core::reckon::illness::lamb::{Check, Lead, Row};
use yeanling_core::terms::LambSign;

use super::RowWords;

/// Opens it.
pub const NOT_RIGHT: &str = "It is not right";
/// Opens what is done for a lamb that does not breathe.
pub const NOT_BREATHING: &str = "Not breathing";
/// What hands do for a lamb that does not breathe, before any question.
pub const BREATHE: [&str; 3] = ["Clear its mouth and nose", "Rub it hard", "A straw in its nostril"];

/// Returns what is asked first, with the answer that is good.
pub const fn check(check: Check) -> &'static str {
    match check {
        Check::HeadUp => "Head up?",
        Check::Swallows => "Swallows, sucks?",
        Check::Warm => "Warm?",
    }
}

/// Returns what is to be checked now, short.
pub const fn check_now(check: Check) -> &'static str {
    match check {
        Check::HeadUp => "whether its head is up",
        Check::Swallows => "whether it swallows and sucks",
        Check::Warm => "whether it is warm",
    }
}

/// Returns what leads to a row.
pub const fn lead(lead: Lead) -> &'static str {
    match lead {
        Lead::Sign(seen) => sign(seen),
        Lead::Not(Check::HeadUp) => "Head down",
        Lead::Not(Check::Swallows) => "No suck or swallow",
        Lead::Not(Check::Warm) => "Cold",
    }
}

/// Returns a sign, as its button says it.
pub const fn sign(sign: LambSign) -> &'static str {
    match sign {
        LambSign::NotBreathing => "Not breathing",
        LambSign::Dull => "Dull",
        LambSign::Hunched => "Hunched",
        LambSign::HollowBelly => "Hollow",
        LambSign::WetChin => "Chin wet again",
        LambSign::TightBelly => "Belly tight",
        LambSign::Rattles => "Rattles",
        LambSign::NoDung => "No dung",
        LambSign::NoAnus => "No anus",
        LambSign::WateryScour => "Watery scour",
        LambSign::BloodInDung => "Blood in the dung",
        LambSign::DarkStraining => "Dark dung, strains",
        LambSign::EyesSunken => "Eyes sunken a little",
        LambSign::EyesDeep => "Eyes deep, a gap",
        LambSign::CannotStand => "Cannot stand",
        LambSign::HotJoint => "Hot or swollen joint",
        LambSign::Limps => "Limps",
        LambSign::LegDangles => "Leg dangles",
        LambSign::OpenOrThigh => "Break open, or thigh",
        LambSign::ThickNavel => "Navel thick, wet",
        LambSign::BowelAtNavel => "Bowel at the navel",
        LambSign::LidIn => "Eye wet, lid turned in",
        LambSign::CloudyEye => "Eye cloudy",
        LambSign::CoughsOften => "Coughs",
        LambSign::BreathesFast => "Breathes fast",
        LambSign::BreathesByMouth => "Breathes mouth open",
        LambSign::StiffLegs => "Stiff",
        LambSign::WobblyBehind => "Wobbly behind",
        LambSign::ShakingHairy => "Shaking, hairy at birth",
        LambSign::RigidJawShut => "Rigid, jaw shut",
        LambSign::FitsHeadBack => "Fits, head back",
        LambSign::ScabsOnLips => "Scabs on the lips",
        LambSign::MilkFromNose => "Milk from the nose",
        LambSign::Wound => "Wound, bite, burn",
        LambSign::DeepWound => "Wound is deep",
        LambSign::MoreDying => "More lambs dying",
        LambSign::Lively => "Bright",
        LambSign::EyeClear => "Eye clear",
        LambSign::ChinDry => "Chin stays dry",
    }
}

/// Returns a row in words.
pub const fn row(row: Row) -> RowWords {
    match row {
        Row::MayBeNotifiable => RowWords {
            name: "May be a disease that must be reported",
            may_be: &["Lamb dysentery, or a disease that the law lists"],
            tells: "Several lambs die, or have blisters.",
            until: &[
                "Keep animals, people and vehicles where they are.",
                "Keep a fresh dead lamb cool for the lab.",
            ],
            never: &["Never move an animal off the farm."],
        },
        Row::NotBreathing => RowWords {
            name: "Not breathing",
            may_be: &["A hard birth"],
            tells: "A heartbeat behind the elbow: go on.",
            until: &["Clear its mouth and nose. Rub it hard. A straw in its nostril."],
            never: &["Nothing by mouth until it breathes and swallows."],
        },
        Row::NoSwallow => RowWords {
            name: "No suck, no swallow",
            may_be: &["Chilled or starved, low sugar", "Infection of the blood or brain"],
            tells: "Its temperature tells most.",
            until: &["Dry it, rub it, keep it out of the wind."],
            never: &["Nothing by mouth: it would run into the lungs."],
        },
        Row::ColdYoung => RowWords {
            name: "Cold, up to five hours old",
            may_be: &["Chilled: wet and out in the wind"],
            tells: "It was wet, and had no time to starve.",
            until: &[
                "Dry it and warm it now.",
                "Feed it at 37 °C (98.6 °F) or more, and only if it swallows.",
            ],
            never: &["No milk under 37 °C (98.6 °F)."],
        },
        Row::ColdOlder => RowWords {
            name: "Cold, over five hours old",
            may_be: &["Starved: out of sugar", "Infection"],
            tells: "Age unknown counts as over five hours.",
            until: &["Out of the wind, dry, wrapped, nose free. Glucose before heat: see Cold lamb."],
            never: &["No milk under 37 °C (98.6 °F).", "No heat before it has had glucose."],
        },
        Row::Hungry => RowWords {
            name: "Hungry",
            may_be: &["No milk from the ewe", "Rejected"],
            tells: "Check the ewe: draw both teats.",
            until: &["Warm and swallowing: feed it, one feed at most."],
            never: &["No milk while it is cool or does not swallow."],
        },
        Row::WateryMouth => RowWords {
            name: "Watery mouth",
            may_be: &["Watery mouth", "Infection of the blood"],
            tells: "One to two days old; its belly feels full but it is not fed.",
            until: &["Dry it and shelter it.", "Electrolyte only on your vet’s word."],
            never: &["No milk.", "No enema unless your vet asks for one."],
        },
        Row::Bloat => RowWords {
            name: "Bloat of the fourth stomach",
            may_be: &["Abomasal bloat"],
            tells: "On the bottle, two to four weeks, soon after a feed.",
            until: &["Stop milk."],
            never: &["Never tube it.", "Never stab it."],
        },
        Row::NoDung => RowWords {
            name: "No dung",
            may_be: &["No anus: surgery only", "Watery mouth", "Tail pasted over"],
            tells: "Normal is black at first, then a yellow paste.",
            until: &["Look under the tail and wash it."],
            never: &[],
        },
        Row::Hot => RowWords {
            name: "Too hot",
            may_be: &["Overheated under lamp, box or sun", "Infection"],
            tells: "Overheated, it falls within half an hour in the shade.",
            until: &["Out of the box, the lamp or the sun. Take its temperature again in half an hour."],
            never: &[],
        },
        Row::Dysentery => RowWords {
            name: "Lamb dysentery",
            may_be: &["Lamb dysentery; ewe not vaccinated"],
            tells: "Most are under a week old; sudden, in pain.",
            until: &["Keep a fresh dead one cool for the lab."],
            never: &[],
        },
        Row::Coccidia => RowWords {
            name: "Coccidia or worms",
            may_be: &["Coccidia, three to eight weeks", "Nematodirus, four to twelve weeks"],
            tells: "A dung test tells.",
            until: &["Move them to clean, dry ground.", "Save dung for a test."],
            never: &[],
        },
        Row::Scour => RowWords {
            name: "Scour",
            may_be: &["E. coli, under ten days", "Rotavirus", "Cryptosporidia, often bright", "Salmonella"],
            tells: "Color names none. People can catch the last two.",
            until: &["Milk goes on; electrolyte apart from it.", "Set it apart. Wash hands; no children."],
            never: &[],
        },
        Row::Joint => RowWords {
            name: "Joint ill",
            may_be: &["Joint ill"],
            tells: "Five days or older, a hot joint. Early it can be cured.",
            until: &["Pen it with the ewe."],
            never: &[],
        },
        Row::Navel => RowWords {
            name: "Navel ill",
            may_be: &["Navel ill", "Hernia"],
            tells: "Thick, wet, painful; a hernia goes back.",
            until: &["Wear gloves."],
            never: &[],
        },
        Row::Eye => RowWords {
            name: "Eyelid turned in",
            may_be: &["Turned-in eyelid", "Pink eye, later"],
            tells: "Look at both eyes.",
            until: &["Roll the lid out, often."],
            never: &[],
        },
        Row::Chest => RowWords {
            name: "Pneumonia",
            may_be: &["Pneumonia", "Milk in the lung"],
            tells: "Fast breath away from heat; a cough after feeding is milk in the lung.",
            until: &["Fresh air. A slow teat."],
            never: &[],
        },
        Row::WhiteMuscle => RowWords {
            name: "White muscle disease",
            may_be: &["White muscle disease", "Joint ill", "Tetanus"],
            tells: "Stiff but bright, three to eight weeks.",
            until: &["Rest."],
            never: &["No selenium unless your vet says so."],
        },
        Row::Wobbly => RowWords {
            name: "Wobbly",
            may_be: &["Swayback", "Abscess of the spine", "Border disease, if shaking and hairy at birth"],
            tells: "From birth, or later.",
            until: &["Keep it off ewes in lamb."],
            never: &["No copper unless your vet says so."],
        },
        Row::Tetanus => RowWords {
            name: "Tetanus",
            may_be: &["Tetanus; nearly all die"],
            tells: "Four days to three weeks after a ring or a wound.",
            until: &["Dark and quiet."],
            never: &["Nothing by mouth."],
        },
        Row::Fits => RowWords {
            name: "Fits",
            may_be: &["Low sugar, up to three days", "Meningitis, two to four weeks", "Pulpy kidney"],
            tells: "Its age tells most.",
            until: &["Soft bed, quiet."],
            never: &["Nothing by mouth."],
        },
        Row::Orf => RowWords {
            name: "Orf",
            may_be: &["Orf; people can catch it"],
            tells: "Scabs on lips, and on the ewe’s teats.",
            until: &["Gloves. Its own bottle. Check the ewe’s teats."],
            never: &[],
        },
        Row::Leg => RowWords {
            name: "Leg",
            may_be: &["A break", "Scald", "Joint ill"],
            tells: "A break dangles or grates.",
            until: &["Keep it still. A soft splint."],
            never: &[],
        },
        Row::FoundDead => RowWords {
            name: "Found dead",
            may_be: &[
                "Dysentery, under three weeks",
                "Pneumonia, two to four weeks",
                "Pulpy kidney, from six weeks",
            ],
            tells: "A laboratory tells, within a day.",
            until: &["Gloves. Keep it cool, not frozen, and take it to the lab within a day."],
            never: &[],
        },
        Row::BowelOut => RowWords {
            name: "Bowel at the navel",
            may_be: &["Bowel through the navel"],
            tells: "Loops at the cord.",
            until: &["Clean wet cloth over it. Keep it warm."],
            never: &["Never push it back.", "Nothing by mouth."],
        },
        Row::MilkInLung => RowWords {
            name: "Milk in the lung",
            may_be: &["Milk in the lung", "Cleft palate"],
            tells: "Look into its mouth.",
            until: &["Stop feeding by mouth."],
            never: &["Nothing by mouth."],
        },
        Row::HardBirth => RowWords {
            name: "After a hard birth",
            may_be: &["Acid blood", "Low sugar", "Cold"],
            tells: "Well at first, dull again within hours.",
            until: &["Take its temperature. See whether it sucks."],
            never: &[],
        },
        Row::Wound => RowWords {
            name: "Wound",
            may_be: &["Trodden on, bitten, maggots, burned by a lamp"],
            tells: "Look under the wool.",
            until: &["Clean it. Shade. Set it apart with the ewe."],
            never: &[],
        },
        Row::Dull => RowWords {
            name: "Dull",
            may_be: &["Hungry, cold or sick"],
            tells: "Nothing else was noted.",
            until: &["Take its temperature. Feel its belly. Draw the ewe’s teats."],
            never: &[],
        },
    }
}
