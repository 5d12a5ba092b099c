//! Why a birth weight is called light, good or heavy.

use yeanling_core::reckon::birth_weight::{
    Against, Band, HAIR_BREEDS, HEAVY_OVER, MeanUsed, OWN_FROM, Reason, SOURCES, Verdict, litter_factor,
};
use yeanling_core::units::{Mass, System};

use super::{Why, cited, general, headings};
use crate::common::{mass, number};
use crate::settings::breed_means;

/// Returns why a birth weight comes to its verdict.
pub fn birth_weight(band: &Band, system: System) -> Why {
    let factor = number(litter_factor(band.litter_size) * 100.0, 0);
    let (least, most) = band.optimum;
    let mut working = vec![
        format!("Optimum: 4.5 to 5.5 kg × {factor}% = {}", range(least, most, system)),
        format!(
            "Very light under {}, good from {} to {}",
            mass(band.very_light_under, system),
            mass(band.good_from, system),
            mass(HEAVY_OVER, system)
        ),
        format!("{} is {}", mass(band.weight, system), verdict(band.verdict)),
    ];
    working.extend(band.reasons.iter().map(|reason| said(*reason).to_owned()));

    let mut caution = Vec::new();
    if band.reasons.contains(&Reason::HardBirth) {
        caution.push(
            "After a hard birth look for swelling and slow breathing. If it will not nurse, call your vet."
                .to_owned(),
        );
    }
    caution.extend(general());
    Why {
        heading: headings::BIRTH_WEIGHT.to_owned(),
        working,
        rule: "Lambs survive best near the optimum for their litter size: for a twin 93% of a single’s, for a triplet 78%. \
               Hair breeds are born lighter: your own flock’s means are a better guide."
            .to_owned(),
        sources: cited(SOURCES),
        others: hair_breeds(band.litter_size, system),
        caution,
    }
}

/// Returns why a birth weight comes to its verdict, against its litter and its flock as well.
pub fn against(against: &Against, system: System) -> Why {
    let mut why = birth_weight(&against.band, system);
    why.working
        .extend(against.litter_mean.map(|mean| format!("Its litter’s mean: {}", mass_of(mean, system))));
    why.working.push(used(against, system));
    if against.red {
        why.working.push("Help it feed, keep it warm, and look at it often.".to_owned());
        why.working.push(
            "Over 1 kg (2.2 lb) lighter than its littermates, in a light litter: under half survive"
                .to_owned(),
        );
    }
    why
}

fn mass_of(mean: Mass, system: System) -> String {
    mass(Mass::from_kilograms((mean.as_kilograms() * 100.0).round() / 100.0), system)
}

/// Says which mean was used; a breed's is recalled.
fn used(against: &Against, system: System) -> String {
    let mean = against.mean.map_or_else(String::new, |mean| mass_of(mean, system));
    match against.used {
        MeanUsed::Own { lambs } => {
            format!("Your flock’s mean for this litter size: {mean}, from {lambs} lambs")
        }
        MeanUsed::Breed { breed, lambs } => format!(
            "{} mean: {mean} (unconfirmed), until you have {OWN_FROM} lambs of this litter size; now {lambs}",
            breed_means(breed).0
        ),
        MeanUsed::Optimum { lambs } => {
            format!("No mean of your own yet: {lambs} of {OWN_FROM} lambs of this litter size")
        }
    }
}

/// Returns a verdict in a word or two.
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::VeryLight => "very light",
        Verdict::Light => "light",
        Verdict::Good => "good",
        Verdict::Heavy => "heavy",
    }
}

fn said(reason: Reason) -> &'static str {
    match reason {
        Reason::UnderThreeKilograms => "Under 3 kg: watch that it stays warm and feeds",
        Reason::UnderOptimum => "It is under the optimum of its litter size",
        Reason::InOptimum => "It is in the optimum of its litter size",
        Reason::OverOptimum => "It is over the optimum of its litter size",
        Reason::HardBirth => "Over 6 kg: a hard birth is likelier",
    }
}

fn range(least: Mass, most: Mass, system: System) -> String {
    if least < most {
        format!("{} to {}", mass(least, system), mass(most, system))
    } else {
        mass(least, system)
    }
}

/// Returns the recalled means of hair breeds for this litter size.
fn hair_breeds(litter_size: u8, system: System) -> Vec<String> {
    let place = usize::from(litter_size.clamp(1, 3)) - 1;
    HAIR_BREEDS
        .iter()
        .filter_map(|mean| {
            let (least, most) = mean.by_litter.get(place).copied().flatten()?;
            Some(format!("{} mean: about {} (unconfirmed)", mean.breed, range(least, most, system)))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::birth_weight::band;

    #[track_caller]
    fn check(kilograms: f64, litter_size: u8, working: &[&str]) -> Why {
        let band = band(Mass::from_kilograms(kilograms), litter_size).expect("in bounds");
        let why = birth_weight(&band, System::Metric);
        assert_eq!(why.working, working);
        why
    }

    #[test]
    fn the_working_says_where_the_weight_lies() {
        let why = check(
            3.9,
            2,
            &[
                "Optimum: 4.5 to 5.5 kg × 93% = 4.19 kg to 5.12 kg",
                "Very light under 2.79 kg, good from 3.69 kg to 6.0 kg",
                "3.9 kg is good",
                "It is under the optimum of its litter size",
            ],
        );
        assert_eq!(why.others, ["Katahdin mean: about 3.9 kg (unconfirmed)"]);
    }

    #[test]
    fn the_mean_that_was_used_is_said() {
        use yeanling_core::reckon::birth_weight::{OwnMean, against as reckon};
        use yeanling_core::settings::BreedMeans;
        let kg = Mass::from_kilograms;
        let says = |own, breed| {
            let answer = reckon(kg(2.8), 3, Some(kg(3.9)), own, breed).expect("in bounds");
            against(&answer, System::Metric).working
        };
        let own = says(Some(OwnMean { mean: kg(4.1), lambs: 18 }), BreedMeans::Katahdin);
        assert!(own.contains(&"Your flock’s mean for this litter size: 4.1 kg, from 18 lambs".to_owned()));
        assert!(own.last().is_some_and(|line| line.ends_with("under half survive")));
        let breed = says(None, BreedMeans::Katahdin);
        assert!(breed.last().is_some_and(|line| line.starts_with("Katahdin mean: 3.3 kg (unconfirmed")));
        let none = says(None, BreedMeans::NoBreed);
        assert!(none.last().is_some_and(|line| line.starts_with("No mean of your own yet: 0 of 15")));
    }

    #[test]
    fn a_heavy_lamb_is_looked_at_for_a_hard_birth() {
        let why = check(
            6.4,
            1,
            &[
                "Optimum: 4.5 to 5.5 kg × 100% = 4.5 kg to 5.5 kg",
                "Very light under 3.0 kg, good from 4.0 kg to 6.0 kg",
                "6.4 kg is heavy",
                "Over 6 kg: a hard birth is likelier",
                "It is over the optimum of its litter size",
            ],
        );
        assert!(why.caution.iter().any(|line| line.contains("hard birth")));
    }
}
