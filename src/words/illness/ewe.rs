//! A ewe that is not right: the signs as buttons, and each row of the table in words.

use yeanling_core::reckon::illness::ewe::{Check, Lead, Row};
use yeanling_core::terms::{EweSign, EweStage};

use super::RowWords;

/// Opens it.
pub const NOT_RIGHT: &str = "She is not right";

/// Returns what is asked first, with the answer that is good.
pub const fn check(check: Check) -> &'static str {
    match check {
        Check::Standing => "Standing?",
        Check::Eating => "Eating?",
        Check::NothingOut => "No bleeding, nothing out?",
    }
}

/// Returns what is to be checked now, short.
pub const fn check_now(check: Check) -> &'static str {
    match check {
        Check::Standing => "whether she stands",
        Check::Eating => "whether she eats",
        Check::NothingOut => "under her tail",
    }
}

/// Returns what leads to a row.
pub const fn lead(lead: Lead) -> &'static str {
    match lead {
        Lead::Sign(seen) => sign(seen),
        Lead::Not(Check::Standing) => "Not standing",
        Lead::Not(Check::Eating) => "Not eating",
        Lead::Not(Check::NothingOut) => "Bleeding or something out",
    }
}

/// Returns where she is in her year.
pub const fn stage(stage: EweStage) -> &'static str {
    match stage {
        EweStage::LateInLamb => "Last six weeks before lambing",
        EweStage::Labor => "In labor",
        EweStage::AfterLambing => "Lambed in the last three days",
        EweStage::Milking => "Milking",
        EweStage::Other => "Neither close to lambing nor milking",
        EweStage::Unknown => "Stage not known",
    }
}

/// Returns a sign, as its button says it.
pub const fn sign(sign: EweSign) -> &'static str {
    match sign {
        EweSign::OnBack => "On her back",
        EweSign::Wobbly => "Wobbly",
        EweSign::CudAtNose => "Cud at her nose",
        EweSign::KeepsApart => "Off by herself",
        EweSign::Dull => "Dull",
        EweSign::Blind => "Blind",
        EweSign::PressesHead => "Presses her head",
        EweSign::MuzzleTremor => "Muzzle trembles",
        EweSign::SweetBreath => "Sweet breath",
        EweSign::FaceOneSided => "Face droops one side",
        EweSign::Drools => "Drools",
        EweSign::Circles => "Walks in circles",
        EweSign::StarGazing => "Head drawn back",
        EweSign::Fits => "Fits",
        EweSign::Stiff => "Stiff",
        EweSign::Twitches => "Twitches",
        EweSign::SmoothOut => "Round, smooth, red, out",
        EweSign::StrainsWithIt => "Strains, swells, no urine",
        EweSign::RawOut => "Raw, knobbed, out; unsure",
        EweSign::BowelOut => "Bowel out, or a tear",
        EweSign::CervixTight => "Cervix tight in labor",
        EweSign::AfterbirthHangs => "Afterbirth hangs",
        EweSign::FoulDischarge => "Foul discharge",
        EweSign::Bleeds => "Bleeding, or clots",
        EweSign::UdderCold => "Udder cold or blue",
        EweSign::UdderHot => "Udder hot and hard",
        EweSign::UdderFirm => "Udder firm, no milk",
        EweSign::NoMilk => "No milk, drawn twice",
        EweSign::Lame => "Lame",
        EweSign::NoWeightOnLeg => "No weight on the leg",
        EweSign::Coughs => "Coughs",
        EweSign::FastBreath => "Breathes fast",
        EweSign::MouthOpen => "Breathes mouth open",
        EweSign::LeftFlankDrum => "Left flank like a drum",
        EweSign::GotAtGrain => "Got at grain",
        EweSign::Scours => "Scours",
        EweSign::YellowOrDarkUrine => "Yellow gums, dark urine",
        EweSign::PaleEyelids => "Pale eyelids",
        EweSign::SwollenJaw => "Swelling under the jaw",
        EweSign::Aborted => "Aborted",
        EweSign::ManyIll => "Many lame, blisters, deaths",
        EweSign::SecondMealRefused => "Refused a second meal",
        EweSign::Bright => "Bright",
        EweSign::Sees => "Sees: follows a hand",
        EweSign::WentBack => "Went back by itself",
    }
}

/// Returns a row in words.
pub const fn row(row: Row) -> RowWords {
    match row {
        Row::MayBeNotifiable => RowWords {
            name: "May be a disease that must be reported",
            may_be: &["Foot-and-mouth disease, bluetongue, or another that the law lists"],
            tells: "Many lame at once, blisters, swollen faces, lambs dying.",
            until: &["Keep every animal, person and vehicle where it is until your vet has been."],
            never: &["Never move an animal off the farm."],
        },
        Row::Cast => RowWords {
            name: "Cast",
            may_be: &["Cast on her back; look for what else ails her"],
            tells: "She walks off steady once she has stood a while.",
            until: &["Roll her over and hold her up until she is steady."],
            never: &[],
        },
        Row::LowCalcium => RowWords {
            name: "Low calcium",
            may_be: &["Low calcium (milk fever)", "Toxemia", "Both at once"],
            tells: "Alert at first; an older ewe; within a day of a move, new feed or hard weather.",
            until: &[
                "Prop her on her chest.",
                "Calcium under the skin only if your vet left it for her. No answer in half an hour: call again.",
            ],
            never: &["Never wait for a meter.", "Never drench: nothing by mouth."],
        },
        Row::Toxemia => RowWords {
            name: "Toxemia",
            may_be: &["Toxemia (twin lamb disease)", "Low calcium", "Listeria", "Brain disease", "Copper"],
            tells: "Twins or more, fat or thin, sweet breath, over days. Cloudy eyes: pink eye.",
            until: &[
                "Pen her with tasty feed and water.",
                "Propylene glycol by its label if she swallows well.",
            ],
            never: &["Never starve her.", "Never drive her."],
        },
        Row::Listeria => RowWords {
            name: "Listeria",
            may_be: &["Listeria (circling disease); people can catch it"],
            tells: "One ear and lip droop, food in the cheek; two to three weeks after bad silage.",
            until: &["Stop the silage.", "Wear gloves."],
            never: &[],
        },
        Row::Brain => RowWords {
            name: "Brain disease",
            may_be: &["Lack of vitamin B1", "Low magnesium, if milking", "Toxemia, if close to lambing"],
            tells: "Head drawn back, fits, blind with bright eyes.",
            until: &["Deep bed, dim and quiet."],
            never: &["Nothing by mouth."],
        },
        Row::LowMagnesium => RowWords {
            name: "Low magnesium",
            may_be: &["Low magnesium (grass staggers)", "Low calcium", "Tetanus"],
            tells: "Two to eight weeks after lambing, lush grass.",
            until: &["Keep her quiet.", "Move the flock to hay."],
            never: &["Never chase her."],
        },
        Row::VaginaOut => RowWords {
            name: "Prolapse of the vagina",
            may_be: &["The vagina is out; it may hold the bladder"],
            tells: "Round, smooth, red, 8–20 cm (3–8 in) across.",
            until: &[
                "Wet, warm towel over it. Keep her standing.",
                "Gone back by itself: look every two hours, and be at her lambing.",
            ],
            never: &["Never hang her up.", "Never force it back."],
        },
        Row::WombOut => RowWords {
            name: "The womb is out",
            may_be: &["The womb is out; not sure what it is: take it as this"],
            tells: "Solid, raw, knobbed, fist to football.",
            until: &["Keep it warm, wet and clean, and keep her still."],
            never: &["Never pull the afterbirth off it."],
        },
        Row::BowelOut => RowWords {
            name: "Bowel out, or a tear",
            may_be: &["The bowel is out; usually she is put down"],
            tells: "Loops of gut, or a tear.",
            until: &["Cover it with a clean wet cloth."],
            never: &["Never push it back."],
        },
        Row::CervixTight => RowWords {
            name: "Cervix not open (ringwomb)",
            may_be: &["True ringwomb: one or two fingers go in, a C-section", "Not yet open, or another lie"],
            tells: "After the bag, or half an hour of straining. In first stage a tight cervix is normal.",
            until: &["Check inside with a clean, gloved hand, ten minutes at most."],
            never: &["Never force it.", "No oxytocin or calcium by your own guess."],
        },
        Row::AfterbirthKept => RowWords {
            name: "Afterbirth kept",
            may_be: &["Retained afterbirth"],
            tells: "Thin wet strings hang; most ewes stay well for days.",
            until: &["Take her temperature.", "Bright and eating: look again every six hours."],
            never: &["Never pull it."],
        },
        Row::WombInfected => RowWords {
            name: "Womb infected",
            may_be: &["Infection of the womb", "A dead lamb inside"],
            tells: "Foul smell. Odorless red-brown is normal after lambing.",
            until: &["Feed her lambs.", "Take her temperature."],
            never: &["Never flush it out."],
        },
        Row::UdderCold => RowWords {
            name: "Gangrene of the udder",
            may_be: &["Gangrenous mastitis"],
            tells: "Cold or blue udder, often lame behind.",
            until: &["House her.", "Feed her lambs."],
            never: &["Never cut the teat."],
        },
        Row::UdderHot => RowWords {
            name: "Mastitis",
            may_be: &["Acute mastitis"],
            tells: "Hot, hard, mostly one half.",
            until: &["Strip it into a cup, never onto bedding.", "Feed her lambs."],
            never: &[],
        },
        Row::UdderFirm => RowWords {
            name: "Firm udder, no milk",
            may_be: &["Maedi (OPP, hard bag)", "Underfed", "Milk not let down"],
            tells: "Both halves firm, not hot.",
            until: &["Other colostrum or milk for her lambs at once.", "Draw both teats again in an hour."],
            never: &["No oxytocin by your own guess."],
        },
        Row::NoMilk => RowWords {
            name: "No milk",
            may_be: &["Early or thin", "Milk not let down", "Maedi (OPP, hard bag)", "Mastitis"],
            tells: "Hot: mastitis. Both halves firm: maedi, or not let down. Flat: early or thin.",
            until: &[
                "Other colostrum or milk for her lambs at once.",
                "Feel both halves: hot, firm or flat?",
            ],
            never: &["No oxytocin by your own guess."],
        },
        Row::Lame => RowWords {
            name: "Lame",
            may_be: &["The udder, if milking: look there first", "Scald", "Footrot", "Abscess"],
            tells: "Look at the udder first, then between the claws.",
            until: &["Catch her within three days; clean, dry ground."],
            never: &["Never trim a lame foot: it heals slower."],
        },
        Row::Chest => RowWords {
            name: "Pneumonia",
            may_be: &["Pneumonia", "A drench that went down wrong", "Maedi (OPP)", "Lungworm"],
            tells: "Cough, fast breath away from heat; fever.",
            until: &["Fresh air and rest."],
            never: &["Never drench her."],
        },
        Row::Bloat => RowWords {
            name: "Bloat",
            may_be: &["Gas or froth in the rumen", "Low calcium, if she is down"],
            tells: "Left flank like a drum. It can kill within the hour.",
            until: &["Keep her standing, head up, off feed."],
            never: &["Never stab her side."],
        },
        Row::Grain => RowWords {
            name: "Too much grain",
            may_be: &["Acidosis, a day or more after eating"],
            tells: "Cool, dry, scours, staggers. When she ate decides: tell your vet, also while she is bright.",
            until: &["Off the grain; hay and water."],
            never: &[],
        },
        Row::Copper => RowWords {
            name: "Copper poisoning",
            may_be: &["Copper poisoning; cattle feed"],
            tells: "Yellow gums, dark urine.",
            until: &["Take the feed away and keep its bag."],
            never: &[],
        },
        Row::Aborted => RowWords {
            name: "Aborted",
            may_be: &["Enzootic abortion", "Toxoplasmosis", "Campylobacter", "Salmonella", "Q fever"],
            tells: "People can catch all of these. A laboratory tells them apart.",
            until: &[
                "Gloves. Set her apart now, for three weeks or more.",
                "Lamb and afterbirth into a bag, cold, not frozen, to your vet or the lab.",
            ],
            never: &["Never foster a lamb onto her.", "Never let anyone pregnant near."],
        },
        Row::HurtByBirth => RowWords {
            name: "Hurt by the birth",
            may_be: &["A nerve hurt at birth", "Bleeding inside, if her gums are white"],
            tells: "Down after lambing; look at her gums.",
            until: &["Prop her on her chest, straw on both sides."],
            never: &[],
        },
        Row::Bleeding => RowWords {
            name: "Bleeding",
            may_be: &["A torn vessel", "A torn womb"],
            tells: "Blood runs, or clots come.",
            until: &["Keep her still. Press a clean cloth where you can see it come from."],
            never: &[],
        },
        Row::Worms => RowWords {
            name: "Worms or fluke",
            may_be: &["Worms", "Fluke"],
            tells: "Pale eyelids, a soft swelling under the jaw.",
            until: &["House and feed her."],
            never: &[],
        },
        Row::Dull => RowWords {
            name: "Dull or off feed",
            may_be: &["Anything early"],
            tells: "Nothing else was noted.",
            until: &["Take her temperature. Feel the udder and the belly. Look under her tail."],
            never: &[],
        },
    }
}
