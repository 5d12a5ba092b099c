//! The words of the trade, each in one sentence, as every screen uses them.

/// The page's name.
pub const TITLE: &str = "Glossary";

/// The letters under which the words are folded.
pub const LETTERS: [(char, char); 5] = [('A', 'B'), ('C', 'D'), ('E', 'M'), ('N', 'R'), ('S', 'Z')];

/// Returns what letters are called: "A to B".
pub fn letters(first: char, last: char) -> String {
    format!("{first} to {last}")
}

/// A word of the trade.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Term {
    /// The word, as it is written.
    pub word: &'static str,
    /// What it means, in one sentence.
    pub means: &'static str,
    /// How it is not said.
    pub not: &'static [&'static str],
}

const fn term(word: &'static str, means: &'static str, not: &'static [&'static str]) -> Term {
    Term { word, means, not }
}

/// Every word, by its letters.
pub const TERMS: [Term; 61] = [
    term(
        "Abortion",
        "Lambs lost before they could live, often from an infection that can harm people too.",
        &["slipped lamb"],
    ),
    term(
        "Afterbirth",
        "The membranes that come after the last lamb, mostly within hours; never pull them.",
        &["cleansing", "placenta"],
    ),
    term(
        "Alert time",
        "How long Yeanling waits before it tells you, set in Farm settings.",
        &["watch limit"],
    ),
    term("Antibody", "What colostrum carries into the lamb’s blood against disease.", &["anti-body"]),
    term("Assist", "To help a lamb out with a clean, gloved hand.", &["help her with a hand"]),
    term("Barren", "A ewe that was with the ram and carries no lamb.", &["a dry one"]),
    term("Birth weight", "The weight of a lamb in its first day.", &["weight of birth"]),
    term(
        "Body condition",
        "How much fat lies over the loin, felt by hand and scored 1 (thin) to 5 (fat).",
        &["fatness"],
    ),
    term("Bonding pen", "A small pen (jug) for a ewe and her lambs in their first days.", &["mothering pen"]),
    term("Bottle lamb", "A lamb fed by hand because no ewe feeds it, or not enough.", &["hand lamb"]),
    term("Bottle round", "Feeding all bottle lambs one after another from one mix.", &["milk round"]),
    term(
        "Brix",
        "A reading of how rich colostrum is, from a drop on a refractometer.",
        &["brix value of sugar"],
    ),
    term("C-section", "A birth through the flank, done by a vet.", &["Caesar"]),
    term(
        "Cervix",
        "The way out of the womb, which must open before a lamb can pass.",
        &["mouth of the womb"],
    ),
    term("Chill", "Wind, rain and cold air together, as one figure.", &["chill factor"]),
    term(
        "Colostrum",
        "A ewe’s milk of the first day, rich in antibody and energy.",
        &["beestings", "biestings"],
    ),
    term(
        "Colostrum deadline",
        "The age at which a lamb without colostrum is most urgent on your farm.",
        &["milk deadline"],
    ),
    term("Conception rate", "How many of 100 ewes settle in one cycle with the ram.", &["share that holds"]),
    term(
        "Crayon mark",
        "The color a ram’s harness (raddle) leaves on a ewe he has served.",
        &["raddle paint"],
    ),
    term(
        "Cull rules",
        "Your own numbers from which a ewe is listed as a cull candidate.",
        &["marks for culling"],
    ),
    term("Dam", "The mother of a lamb.", &["mother sheep"]),
    term("Dry matter", "What is left of a feed without its water.", &["dry substance"]),
    term("Electrolyte", "Salts and sugar in water for a lamb that scours.", &["electrolite"]),
    term("Ewe lamb", "A female lamb.", &["girl lamb"]),
    term("Failing", "A lamb too weak to rise or nurse by itself.", &["fading lamb"]),
    term("Foster", "To give a lamb to a ewe that is not its dam.", &["adopt"]),
    term(
        "Glucose",
        "Sugar injected by a vet, or someone a vet trained, into a cold lamb out of energy.",
        &["dextrose"],
    ),
    term("Group", "Ewes that run with the same ram at the same time (breeding group).", &["ram group"]),
    term("Hair sheep", "Breeds that shed, such as Katahdin, St Croix and Dorper.", &["hairy sheep"]),
    term("Iodine", "What navels are dipped in, in a strength made for that.", &["jodine"]),
    term("Joint ill", "Hot, swollen joints from germs that came in, often by the navel.", &["joint evil"]),
    term("Lambing", "The birth of a ewe’s lambs, from the first signs to the afterbirth.", &["parturition"]),
    term("Litter", "The lambs of one ewe from one lambing.", &["brood"]),
    term("Mastitis", "An inflamed udder: hot, hard, or blue and cold.", &["bad bag"]),
    term("Milk replacer", "Powder made for lambs, mixed with water.", &["calf powder"]),
    term("Navel", "Where the cord was; it is dipped at birth and again.", &["belly button"]),
    term("Overdue", "Past the last day on which her mating would have her lamb.", &["past her days"]),
    term("Overlain", "Crushed by a ewe that lay down on it.", &["lain on"]),
    term(
        "Pregnancy toxemia",
        "Late in pregnancy a ewe runs out of energy: dull, off feed, blind; also twin lamb disease.",
        &["pregnancy poisoning"],
    ),
    term(
        "Presentation",
        "How a lamb lies for birth: head and forefeet first is normal.",
        &["lie of the lamb"],
    ),
    term("Prolapse", "Vagina or womb hanging out behind the ewe.", &["bearing out"]),
    term("Ram lamb", "A male lamb that is not castrated.", &["boy lamb"]),
    term("Rejected", "A lamb its dam does not let nurse.", &["turned away"]),
    term("Ring", "A rubber band for tails or castration, where the law allows it.", &["rubber ringlet"]),
    term("Ringwomb", "A cervix that does not open although the ewe has strained long.", &["tight womb"]),
    term("Scan", "Counting unborn lambs by ultrasound.", &["scanning picture"]),
    term("Scours", "Loose, watery dung.", &["the runs"]),
    term("Singles", "Lambs born alone.", &["onlies"]),
    term("Solids", "Dry feed and hay that a bottle lamb eats beside milk.", &["hard feed"]),
    term(
        "Stomach tube",
        "A soft tube through the mouth, to feed a lamb that swallows but will not nurse.",
        &["gavage"],
    ),
    term("Tag", "The number in an animal’s ear.", &["ear mark number"]),
    term("Turn out", "To let a pair leave its bonding pen.", &["let go out"]),
    term("Udder", "What gives the milk: two halves, a teat each.", &["milk bag"]),
    term("Unconfirmed", "A figure we know of and have not yet checked against its source.", &["from memory"]),
    term("Vigor", "How lively a newborn is, scored before its first feed.", &["liveliness"]),
    term("Vulva", "The opening under her tail, slack and swollen before lambing.", &["shape under the tail"]),
    term("Water bag", "The skin of fluid that comes before the lamb.", &["waters’ bag"]),
    term(
        "Watery mouth",
        "Drooling, a swollen belly and a dull lamb in its first three days: no milk, call your vet.",
        &["slavers"],
    ),
    term("Weaning", "The end of milk.", &["taking off"]),
    term(
        "Withdrawal",
        "The days after a medicine in which meat or milk may not be used.",
        &["withheld time"],
    ),
    term("Yearling", "A sheep between one and two years old.", &["one-year sheep"]),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_word_stands_once_by_its_letters_with_one_sentence() {
        assert!(TERMS.is_sorted_by_key(|term| term.word.to_lowercase()));
        for Term { word, means, not } in &TERMS {
            assert!(means.ends_with('.') && means.matches(". ").count() == 0, "{word}: {means}");
            assert!(!not.is_empty(), "{word}");
            let first = word.chars().next().expect("a letter");
            let folds = LETTERS.iter().filter(|(from, to)| (*from..=*to).contains(&first)).count();
            assert_eq!(folds, 1, "{word}");
        }
    }
}
