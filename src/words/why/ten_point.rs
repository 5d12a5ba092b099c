//! What a ten-point score comes to.

use yeanling_core::reckon::ten_point::{Band, SOURCES, Scale, Score, Sign};

use super::{Why, cited, general};

/// Returns what a score comes to, with its scale's name.
pub fn ten_point(score: &Score) -> Why {
    let mut caution =
        vec!["Do not mix it up with the four grades, which run the other way: 1 is best there.".to_owned()];
    if score.band == Some(Band::Weak) {
        caution.push("If it labors to breathe or does not come round, call your vet.".to_owned());
    }
    caution.extend(general());
    Why {
        heading: points(score),
        working: vec![match score.band {
            Some(band) => format!("{}: {}", points(score), self::band(band)),
            None => "No bands are published for eight points".to_owned(),
        }],
        rule: "Five signs of 0, 1 or 2 points. Without an ear oximeter breathing is left out: adapted. \
               After the first hour a score says little."
            .to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution,
    }
}

/// Returns a score with its scale: "7 of 10 points, 10 is best", "5 of 8 points, adapted, 8 is best".
pub fn points(score: &Score) -> String {
    let most = score.scale.most();
    match score.scale {
        Scale::TenPoint => format!("{} of {most} points, {most} is best", score.points),
        Scale::EightPointAdapted => format!("{} of {most} points, adapted, {most} is best", score.points),
    }
}

/// Returns a band in a word; recalled, not checked.
pub(super) const fn band(band: Band) -> &'static str {
    match band {
        Band::Weak => "weak (unconfirmed)",
        Band::Middling => "middling (unconfirmed)",
        Band::Strong => "strong (unconfirmed)",
    }
}

/// Returns a sign's name, and what 0, 1 and 2 points look like.
pub const fn sign(sign: Sign) -> (&'static str, [&'static str; 3]) {
    match sign {
        Sign::Pulse => ("Pulse a minute", ["under 100", "100 to 175", "over 175"]),
        Sign::Breathing => ("Oxygen at the ear", ["under 45%", "45 to 65%", "over 65%"]),
        Sign::Gums => ("Gums", ["blue", "pale", "pink"]),
        Sign::Nose => ("Nose touched", ["nothing", "slight", "shakes its head"]),
        Sign::Rump => ("Rump touched", ["nothing", "moves", "tries to rise"]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::ten_point::from_points;

    #[test]
    fn points_never_travel_without_their_scale() {
        let of = |points, scale| ten_point(&from_points(points, scale).expect("on the scale"));
        let ten = of(7, Scale::TenPoint);
        assert_eq!(ten.heading, "7 of 10 points, 10 is best");
        assert_eq!(ten.working, ["7 of 10 points, 10 is best: strong (unconfirmed)"]);
        let eight = of(5, Scale::EightPointAdapted);
        assert_eq!(eight.heading, "5 of 8 points, adapted, 8 is best");
        assert!(eight.working[0].starts_with("No bands"));
    }

    #[test]
    fn every_sign_has_three_looks() {
        for one in Sign::ALL {
            let (name, looks) = sign(one);
            assert!(!name.is_empty() && looks.iter().all(|look| !look.is_empty()));
        }
    }
}
