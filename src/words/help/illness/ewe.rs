//! What Help adds to each row of a ewe that is not right.

use yeanling_core::reckon::illness::ewe::Row;

use super::More;

/// Returns what Help adds to a row.
pub(super) const fn more(row: Row) -> More {
    match row {
        Row::MayBeNotifiable => More {
            call: "Call your vet now, before anything moves.",
            found_by: "notifiable report reportable outbreak foot and mouth bluetongue blisters many lame swollen faces",
            ..More::NONE
        },
        Row::Cast => More {
            call: "Hands first: roll her over. Look again in an hour. Not up and steady: call your vet now.",
            found_by: "upside down rolled stuck couped rigged on her back",
            ..More::NONE
        },
        Row::LowCalcium => More {
            call: "Call your vet now. It can kill in four to six hours.",
            published: &[
                "A ewe is up about 5 minutes after calcium into a vein; under the skin, after 30. (MSD manual 2022)",
                "Of ewes that farmers treated for low calcium, 61% died. Three that had it were first called listeria, toxemia and pneumonia. (Livestock 2012)",
            ],
            found_by: "milk fever hypocalcemia hypocalcaemia calcium down wobbly staggers",
            ..More::NONE
        },
        Row::Toxemia => More {
            call: "Call your vet today if she eats and sees. If not, or if she refuses the next feed, or with ketones of 3.0 mmol/L or more: now.",
            published: &[
                "About 70% die. (NADIS)",
                "Of 21 goats that were down, 19 died, and ketones did not tell which. (Lima 2016)",
            ],
            differ: &[
                "Ketotic from 0.8 mmol/L in the laboratory and 1.0 by meter (Ratanapob 2019); or from 0.8 in neck blood and 0.6 in ear blood (study of a meter, 2025). One meter read 51% high (SciELO). A low reading cancels no sign.",
            ],
            found_by: "pregnancy toxaemia twin lamb disease ketosis ketones bhb snowblind off feed late pregnancy",
            ..More::NONE
        },
        Row::Listeria => More {
            call: "Call your vet now. Over 70% die. (NADIS)",
            found_by: "listeriosis circling disease silage droopy ear face paralysis drool",
            ..More::NONE
        },
        Row::Brain => More {
            call: "Call your vet now.",
            found_by: "ccn polio thiamine vitamin b1 star gazing stargazing fits seizure blind",
            ..More::NONE
        },
        Row::LowMagnesium => More {
            call: "Call your vet now.",
            found_by: "grass staggers grass tetany hypomagnesemia magnesium spasms stiff twitching",
            ..More::NONE
        },
        Row::VaginaOut => More {
            call: "Call your vet today if it went back by itself. Out, swollen, or she strains or passes no urine: now.",
            found_by: "prolapse vaginal harness spoon bearing under her tail",
            ..More::NONE
        },
        Row::WombOut => More {
            call: "Call your vet now.",
            found_by: "prolapse uterus uterine prolapsed after lambing something out",
            ..More::NONE
        },
        Row::BowelOut => More {
            call: "Call your vet now.",
            found_by: "evisceration guts intestines tear rupture burst",
            ..More::NONE
        },
        Row::CervixTight => More {
            call: "Call your vet now.",
            differ: &[
                "Calcium opens it in half an hour (Farmers Weekly 1996); diet does not cause it (Lifestyle Block NZ 2020). Leave calcium to your vet.",
            ],
            found_by: "ringwomb not opening not dilating stuck two fingers",
            ..More::NONE
        },
        Row::AfterbirthKept => More {
            call: "Look again in 6 hours. Still there 12 hours after the last lamb, or nobody knows how long: call your vet today. Fever, off feed or dull: now.",
            published: &[
                "Signs of illness came in 4% of ewes before the fourth day, in 80% from then on. Half let go of it within 72 hours. (7,660 ewes, Greece)",
            ],
            differ: &["Kept is over 6 hours (Greece) or over 12 to 18 hours (MSD manual 2022)."],
            found_by: "retained afterbirth membranes hanging strings not cleaned",
            ..More::NONE
        },
        Row::WombInfected => More {
            call: "Call your vet today. Fever, dull or off feed: now.",
            found_by: "metritis smell stinks rotten lamb discharge infection uterus",
            ..More::NONE
        },
        Row::UdderCold => More {
            call: "Call your vet now.",
            published: &["25% die; about half when it is over 36 hours old. (NADIS, Poll Dorset breeders)"],
            found_by: "gangrenous mastitis blue bag black bag cold quarter",
            ..More::NONE
        },
        Row::UdderHot => More {
            call: "Call your vet today. Fever or off feed: now.",
            published: &["Fever with it is 40.6–41.7 °C (105–107 °F). (Raising Sheep)"],
            found_by: "mastitis bag lump hot hard quarter clots in milk",
            ..More::NONE
        },
        Row::UdderFirm => More {
            call: "Call your vet today.",
            found_by: "hard bag opp maedi visna no milk dry",
            ..More::NONE
        },
        Row::NoMilk => More {
            call: "Call your vet today.",
            found_by: "no milk dry udder empty bag let down hungry lambs oxytocin",
            ..More::NONE
        },
        Row::Lame => More {
            call: "Look again in 24 hours. No weight on the leg: call your vet today.",
            published: &[
                "Treated within 3 days and not trimmed, over 90% were well in 10 days; trimmed, 50%. (University of Warwick)",
            ],
            found_by: "limping limp foot hoof foot rot codd scald abscess trim",
            ..More::NONE
        },
        Row::Chest => More {
            call: "Call your vet today. Fever, dull, or breathing with her mouth open: now.",
            published: &["Fever with it is over 40.5 °C (104.9 °F). (NADIS)"],
            found_by: "cough coughing pneumonia panting breathing lungs drench wrong way",
            ..More::NONE
        },
        Row::Bloat => More {
            call: "Call your vet now. It can kill within the hour.",
            found_by: "blown bloated gas rumen swollen left side froth",
            ..More::NONE
        },
        Row::Grain => More {
            call: "Call your vet now, also while she is bright.",
            found_by: "acidosis overeating grain overload corn barley feed bin broke into",
            ..More::NONE
        },
        Row::Copper => More {
            call: "Call your vet now.",
            found_by: "copper toxicity jaundice yellow red urine cattle mineral",
            ..More::NONE
        },
        Row::Aborted => More {
            call: "Set her apart at once. Call your vet today, as soon as they open. She is ill, or another one aborted: now.",
            found_by: "abortion abort aborting slipped early dead lambs eae chlamydia toxo q fever campylobacter",
            ..More::NONE
        },
        Row::HurtByBirth => More {
            call: "Call your vet now.",
            also: "Down after lambing, and no other row fits better.",
            found_by: "paralyzed nerve cannot get up after lambing obturator internal bleeding",
            ..More::NONE
        },
        Row::Bleeding => More {
            call: "Hands first: keep her still. Then call your vet now.",
            found_by: "blood bleeding hemorrhage clots torn",
            ..More::NONE
        },
        Row::Worms => More {
            call: "Call your vet today.",
            found_by: "anemia pale bottle jaw barber pole liver fluke parasites wormy",
            ..More::NONE
        },
        Row::Dull => More {
            call: "Call your vet today. In the last six weeks before lambing, with fever, or refusing a second meal: now.",
            found_by: "not eating quiet poorly sick unwell off color",
            ..More::NONE
        },
    }
}
