//! What Help adds to each row of a lamb that is not right.

use yeanling_core::reckon::illness::lamb::Row;

use super::More;

/// Returns what Help adds to a row.
pub(super) const fn more(row: Row) -> More {
    match row {
        Row::MayBeNotifiable => More {
            call: "Call your vet now, before anything moves.",
            found_by: "many dying outbreak blisters notifiable report reportable",
            ..More::NONE
        },
        Row::NotBreathing => More {
            call: "Hands first. Then call your vet now.",
            found_by: "resuscitate resuscitation revive born limp straw breathe",
            ..More::NONE
        },
        Row::NoSwallow => More {
            call: "Call your vet now, whatever its temperature.",
            found_by: "no suck reflex will not suck cannot swallow floppy head down",
            ..More::NONE
        },
        Row::ColdYoung => More {
            call: "Hands first: dry it and warm it. Look again in 20 minutes. It does not swallow, or gains less than 0.5 °C (0.9 °F) in two looks: call your vet now.",
            found_by: "hypothermia chilled wet cold newborn",
            ..More::NONE
        },
        Row::ColdOlder => More {
            call: "Call your vet now, before any heat.",
            published: &[
                "Wrapped lambs of 35 °C (95 °F) gained 0.21 °C (0.38 °F) a minute; under a lamp 0.22 °C (0.40 °F). (19 lambs)",
            ],
            found_by: "hypothermia starved cold lamb glucose",
            ..More::NONE
        },
        Row::Hungry => More {
            call: "Look again an hour after it was fed. Hungry again: call your vet today.",
            found_by: "starving starved hollow hunched bleating no milk",
            ..More::NONE
        },
        Row::WateryMouth => More {
            call: "Look again in an hour if it is bright, sucks and its chin is dry; or if it is under 6 hours old and only its chin is wet. If not: call your vet now.",
            published: &["7 to 83% die, by source."],
            differ: &[
                "Electrolyte: 50 ml/kg (¾ fl oz/lb) every 3 to 6 hours (NADIS); or 10 ml (⅓ fl oz) every hour (Ronas Voe). Give what your vet says.",
            ],
            found_by: "rattle belly drool drooling dribbling wet chin slobbers swollen belly",
            ..More::NONE
        },
        Row::Bloat => More {
            call: "Look again in an hour only while it is bright and sucks. If not: call your vet now.",
            published: &["It comes about half an hour after a feed. (NZAgbiz)"],
            differ: &["Yogurt by tube (Rural News 2023), or your vet at once (Levin Vets). We say your vet."],
            found_by: "abomasal bloat blown tight belly bottle lamb milk replacer",
            ..More::NONE
        },
        Row::NoDung => More {
            call: "Look again in 6 hours in its first day. None after a day: call your vet today. No anus, or a tight belly: now.",
            found_by: "constipated constipation meconium no poop atresia anus plugged pasted",
            ..More::NONE
        },
        Row::Hot => More {
            call: "Out of the heat, and read it again in half an hour. Up to 40.5 °C (104.9 °F), bright and sucking: call your vet today. Else: now.",
            also: "Its temperature is over 40 °C (104 °F).",
            found_by: "fever overheated heat stroke high temperature hot",
            ..More::NONE
        },
        Row::Dysentery => More {
            call: "Call your vet now.",
            found_by: "clostridium clostridial bloody scours sudden death unvaccinated",
            ..More::NONE
        },
        Row::Coccidia => More {
            call: "Call your vet today. Blood, dull, or not sucking: now.",
            found_by: "coccidiosis cocci nematodirus black scours straining worms",
            ..More::NONE
        },
        Row::Scour => More {
            call: "Look again in 6 hours, but only if: four days or older, bright, sucks, and a skin fold drops back within 2 seconds. Younger, dull, or drier: call your vet today. Very dry, or not sucking: now.",
            differ: &[
                "A skin fold that stands 2 to 6 seconds is 8% dry (University of Wisconsin, calves); 5 to 10 seconds is 6 to 8% (infovets). We take the strictest.",
            ],
            found_by: "scours scouring diarrhea crypto rotavirus e coli yellow dung dry dehydrated",
            ..More::NONE
        },
        Row::Joint => More {
            call: "Call your vet today. Not sucking: now.",
            differ: &["Germs come in by the throat (NADIS) or by the navel (FarmHealth Online)."],
            found_by: "swollen knee hot joint arthritis lame limping",
            ..More::NONE
        },
        Row::Navel => More {
            call: "Call your vet today. Dull, not sucking, or fever: now.",
            found_by: "umbilical infected hernia belly swelling",
            ..More::NONE
        },
        Row::Eye => More {
            call: "Look again in 12 hours while the eye is clear. Cloudy, or you are not sure: call your vet today.",
            found_by: "entropion inturned eyelid weeping eye pinkeye blind",
            ..More::NONE
        },
        Row::Chest => More {
            call: "Call your vet today. Mouth open, not sucking, or over 40 °C (104 °F): now.",
            found_by: "pneumonia cough coughing breathing fast panting",
            ..More::NONE
        },
        Row::WhiteMuscle => More {
            call: "Call your vet today. Down or not sucking: now.",
            found_by: "stiff lamb disease selenium vitamin e muscle",
            ..More::NONE
        },
        Row::Wobbly => More {
            call: "Call your vet today. Down or not sucking: now.",
            found_by: "swayback copper deficiency hind legs border disease hairy shaker spine",
            ..More::NONE
        },
        Row::Tetanus => More {
            call: "Call your vet now.",
            found_by: "lockjaw rigid stiff ring band castration docking",
            ..More::NONE
        },
        Row::Fits => More {
            call: "Call your vet now.",
            published: &["Of 20 lambs with meningitis one lived. (Scott 1994)"],
            found_by: "seizure seizures convulsions meningitis head back pulpy kidney low sugar",
            ..More::NONE
        },
        Row::Orf => More {
            call: "Look again in 24 hours. Not feeding: call your vet today.",
            found_by: "sore mouth scabby mouth contagious ecthyma scabs lips",
            ..More::NONE
        },
        Row::Leg => More {
            call: "Call your vet today. Open, in the thigh, or not sucking: now.",
            found_by: "broken leg fracture splint dangling limp stepped on",
            ..More::NONE
        },
        Row::FoundDead => More {
            call: "Call your vet today. A second one: now.",
            also: "A well-grown lamb, dead with no warning.",
            found_by: "sudden death dead overnight necropsy post mortem",
            ..More::NONE
        },
        Row::BowelOut => More {
            call: "Call your vet now.",
            found_by: "umbilical hernia guts intestines cord",
            ..More::NONE
        },
        Row::MilkInLung => More {
            call: "Call your vet now.",
            found_by: "aspiration inhaled milk nose cleft palate choking",
            ..More::NONE
        },
        Row::HardBirth => More {
            call: "Look again in an hour. No better: call your vet now.",
            found_by: "hard pull assisted big lamb swollen head slow after birth",
            ..More::NONE
        },
        Row::Wound => More {
            call: "Call your vet today. Deep, or dull: now.",
            found_by: "bite dog fox crow maggots flystrike trodden stepped on burn lamp cut",
            ..More::NONE
        },
        Row::Dull => More {
            call: "Under three days old: look again in an hour; no better, call your vet now. Older: today. Cannot stand: now.",
            found_by: "weak quiet sleepy poorly sick floppy not right",
            ..More::NONE
        },
    }
}
