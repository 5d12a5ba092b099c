//! Rings, tags and vaccine. Wherever a law stands behind a line, it says when it was read, and "check local rules".

use yeanling_core::reckon::marking::{READ_IN, RingState, TagRule, Vaccine, Window};
use yeanling_core::settings::DamsVaccinated;
use yeanling_core::terms::Ring;

use super::common::span;
use super::settings::ring_rule;

/// Says that the farm uses no rings.
pub const NO_RINGS: &str = "Rings: none on this farm. Farm settings has the choice.";
/// Every rule about tags.
pub const TAGS: [TagRule; 3] = [TagRule::GreatBritainHoused, TagRule::GreatBritainOutdoors, TagRule::Usa];

/// Returns when a ring was put on.
pub fn ringed_at(kind: Ring, when: &str) -> String {
    format!("{}: on since {when}.", ring(kind))
}

/// Returns the button that notes a ring.
pub const fn ringed(kind: Ring) -> &'static str {
    match kind {
        Ring::Tail => "Tail ringed",
        Ring::Castration => "Castration ring on",
    }
}

/// Returns the days of this lamb's first vaccine.
pub fn vaccine_days(first: &str, last: &str) -> String {
    format!("Its first: {first} to {last}.")
}

/// Returns the window of a ring, with whose limit it is.
pub fn window(window: &Window) -> String {
    let what = ring(window.ring);
    let until = span(window.before);
    let rule = ring_rule(window.rule).0;
    let line = format!("{what}: after 24 h of age, before {until} ({rule}).");
    if window.law { format!("{line} {}", local_rules()) } else { line }
}

/// Returns the window of a ring, and where the lamb stands in it.
pub fn stands(of: &Window, state: RingState) -> String {
    format!("{} *{}*", window(of), ring_state(state))
}

/// Returns that a ring is banned, where a book has chosen it all the same.
pub fn banned(kind: Ring) -> String {
    format!("{}: *not allowed*. Germany bans it (TierSchG §6(2)). {}", ring(kind), local_rules())
}

/// Returns the laws about rings that are no limit of age, or no choice in Farm settings, each with the year it was read.
pub fn laws() -> Vec<String> {
    [
        "Germany: castration with rings is banned (TierSchG §6(2)). A tail may be docked only where indispensable, by a competent person (§6(1) 3).",
        "Wales: castration rings only in the first 7 days. Northern Ireland: tail rings only in the first 7 days.",
        "England, Scotland, Northern Ireland: the tail left must cover the vulva, or the anus of a ram lamb.",
        "Scotland: we found no age limit for rings. Ask your vet.",
        "United Kingdom: a consultation on pain relief, and no ring in the first 24 h, closed on 9 Mar 2026. The law may \
         have changed since.",
    ]
    .map(|law| format!("{law} {}", local_rules()))
    .to_vec()
}

/// What goes with every ring, whatever the law.
pub const RING_CARE: [&str; 2] = [
    "Do not ring a tail too short: it must cover the vulva, or the anus of a ram lamb.",
    "Ask your vet first about pain relief and tetanus cover. Rigid legs or a shut jaw days later: call now.",
];

/// Returns where a lamb stands.
pub fn ring_state(state: RingState) -> String {
    match state {
        RingState::TooYoung(left) => format!("Not in the first 24 h. Wait {}.", span(left)),
        RingState::Open(left) => format!("Rings allowed now. {} left.", span(left)),
        RingState::Past => "Too late for a ring. Ask your vet.".to_owned(),
    }
}

/// Returns what a ring is for.
pub const fn ring(ring: Ring) -> &'static str {
    match ring {
        Ring::Tail => "Tail ring",
        Ring::Castration => "Castration ring",
    }
}

/// Says when the laws were read, and that local rules win.
pub fn local_rules() -> String {
    format!("As read in {READ_IN}: check local rules.")
}

/// Returns by when a lamb is tagged.
pub fn tag(rule: TagRule) -> String {
    let by = match rule {
        TagRule::GreatBritainHoused => "Great Britain, housed: tag by 6 months, or before it leaves.",
        TagRule::GreatBritainOutdoors => "Great Britain, outdoors: tag by 9 months, or before it leaves.",
        TagRule::Usa => "USA: tag before it leaves the farm.",
    };
    format!("{by} {}", local_rules())
}

/// Returns when the clostridial vaccine is due; never a dose.
pub fn vaccine(vaccine: &Vaccine) -> String {
    let dam = match vaccine.dam {
        DamsVaccinated::Yes => "Dam vaccinated",
        DamsVaccinated::No => "Dam not vaccinated",
        DamsVaccinated::Unknown => "Dam’s vaccine not known (treated as none)",
    };
    let ((first, last), (again, latest)) = (vaccine.first, vaccine.second_after);
    format!(
        "{dam}: first at {} to {} weeks, second {} to {} weeks later. The label wins.",
        first.num_weeks(),
        last.num_weeks(),
        again.num_weeks(),
        latest.num_weeks()
    )
}

/// Returns when the clostridial vaccine is due, with the days of this lamb's first.
pub fn vaccine_of(due: &Vaccine, days: &str) -> String {
    format!("{} {days}", vaccine(due))
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::marking;
    use yeanling_core::settings::{RingRule, Rings};
    use yeanling_core::units::TimeDelta;

    fn told(rule: RingRule) -> String {
        let rings = Rings { rule, tails: true, ram_lambs: true };
        window(&marking::ring(rings, Ring::Tail).expect("rings are chosen"))
    }

    #[test]
    fn a_law_says_when_it_was_read() {
        assert_eq!(
            told(RingRule::EnglandWales),
            "Tail ring: after 24 h of age, before 7 days (England and Wales). As read in 2026: check local rules."
        );
        let own = "Tail ring: after 24 h of age, before 10 days (the farm’s own, 10 days).";
        assert_eq!(told(RingRule::Own { days: 10 }), own);
    }

    #[test]
    fn every_law_says_the_year_it_was_read_and_that_local_rules_come_first() {
        for law in laws().into_iter().chain([banned(Ring::Castration)]).chain(TAGS.map(tag)) {
            assert!(law.ends_with("As read in 2026: check local rules."), "{law}");
        }
        let laws = laws().join(" ");
        for said in [
            "castration with rings is banned",
            "indispensable",
            "competent person",
            "Wales",
            "Northern Ireland",
            "Scotland",
        ] {
            assert!(laws.contains(said), "{said}");
        }
    }

    #[test]
    fn no_text_offers_a_ring_that_is_banned() {
        // Source: German Animal Welfare Act (TierSchG) §6(2).
        let both = Rings { rule: RingRule::Germany, tails: true, ram_lambs: true };
        assert!(marking::ring(both, Ring::Castration).is_none());
        assert!(ring_rule(RingRule::Germany).1.contains("castration rings banned"));
        assert!(super::super::settings::rings(both).ends_with("castration rings are banned there"));
        assert!(!super::super::settings::rings(Rings { ram_lambs: false, ..both }).contains("banned"));
    }

    #[test]
    fn a_state_says_what_is_left() {
        let day = TimeDelta::days(1);
        assert_eq!(ring_state(RingState::TooYoung(TimeDelta::hours(3))), "Not in the first 24 h. Wait 3 h.");
        assert_eq!(ring_state(RingState::Open(day)), "Rings allowed now. 1 day left.");
        assert_eq!(ring_state(RingState::Past), "Too late for a ring. Ask your vet.");
    }

    #[test]
    fn tags_and_vaccine_are_told_without_a_dose() {
        let usa = "USA: tag before it leaves the farm. As read in 2026: check local rules.";
        assert_eq!(tag(TagRule::Usa), usa);
        let says = |dam| vaccine(&marking::vaccine(dam));
        assert_eq!(
            says(DamsVaccinated::Yes),
            "Dam vaccinated: first at 6 to 8 weeks, second 3 to 4 weeks later. The label wins."
        );
        let unknown = "Dam’s vaccine not known (treated as none): first at 3 to 4 weeks, \
                       second 3 to 4 weeks later. The label wins.";
        assert_eq!(says(DamsVaccinated::Unknown), unknown);
    }
}
