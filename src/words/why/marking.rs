//! Why a ring may go on, and when the vaccine is due.

use yeanling_core::reckon::marking::{RingState, SOURCES, Vaccine, Window};

use super::{Why, cited, general, headings};
use crate::marking::{RING_CARE, laws, local_rules, ring, ring_state, vaccine as dates, window as limits};

/// Returns why a ring may or may not go on.
pub fn marking(window: &Window, state: RingState) -> Why {
    let mut caution = vec![local_rules()];
    caution.extend(RING_CARE.map(str::to_owned));
    caution.extend(general());
    Why {
        heading: ring(window.ring).to_owned(),
        working: vec![limits(window), ring_state(state)],
        rule: "Never in the first 24 h: colostrum comes first.".to_owned(),
        sources: cited(SOURCES),
        others: std::iter::once(
            "England and Wales 7 days. Germany: tails 8 days. New South Wales and New Zealand 6 months."
                .to_owned(),
        )
        .chain(laws())
        .collect(),
        caution,
    }
}

/// Returns why the vaccine is due then.
pub fn vaccine(vaccine: &Vaccine) -> Why {
    let mut caution = vec!["The label wins. No dose is given here: ask your vet.".to_owned()];
    caution.extend(general());
    Why {
        heading: headings::VACCINE.to_owned(),
        working: vec![dates(vaccine)],
        rule: "A lamb of a vaccinated dam has hers for its first weeks.".to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::marking as reckon;
    use yeanling_core::settings::{DamsVaccinated, RingRule, Rings};
    use yeanling_core::terms::Ring;
    use yeanling_core::units::TimeDelta;

    #[test]
    fn a_ring_says_check_local_rules() {
        let rings = Rings { rule: RingRule::Germany, tails: true, ram_lambs: false };
        let window = reckon::ring(rings, Ring::Tail).expect("chosen");
        let why = marking(&window, reckon::ring_state(&window, TimeDelta::days(7)));
        assert_eq!(why.working[1], "Rings allowed now. 1 day left.");
        assert!(why.caution[0].contains("check local rules"));
        assert!(why.caution.iter().any(|line| line.contains("pain relief and tetanus cover")));
        assert!(why.caution.iter().any(|line| line.contains("must cover the vulva")));
    }

    #[test]
    fn the_vaccine_has_dates_and_no_dose() {
        let why = vaccine(&reckon::vaccine(DamsVaccinated::No));
        assert!(why.working[0].starts_with("Dam not vaccinated: first at 3 to 4 weeks"));
        assert!(!why.working[0].contains("ml"));
    }
}
