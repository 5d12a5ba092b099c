//! Why so much hay, and what a ration is held against.

use yeanling_core::reckon::mature_weight;
use yeanling_core::reckon::season::{budget, feed_groups, feed_steps, minerals, ration, requirement, water};

use super::{Why, cited};
use crate::feed as words;

/// Returns how hay is reckoned.
pub fn hay() -> Why {
    Why {
        heading: words::NEEDED.to_owned(),
        working: vec!["Ewes × weight × days × share of body weight; ÷ one bale, rounded up".to_owned()],
        rule: "Hay as fed, waste included: 5 to 15% from a rack, 25 to 45% on the ground.".to_owned(),
        sources: cited(budget::SOURCES),
        others: Vec::new(),
        caution: Vec::new(),
    }
}

/// Returns how extra feed by group is reckoned.
pub fn feed_groups() -> Why {
    let mut sources = cited(feed_groups::SOURCES);
    sources.extend(cited(feed_steps::SOURCES));
    sources.extend(cited(mature_weight::SOURCES));
    Why {
        heading: crate::feed_groups::GROUPS.to_owned(),
        working: vec![
            "The energy her row asks for, less that of the first 15 weeks from hay".to_owned(),
            "÷ the energy of the feed as fed; up to the next 10 g".to_owned(),
            "Every day of every ewe added up; ÷ one bag, rounded up".to_owned(),
        ],
        rule: "Steps of 100 g (3.5 oz) every second day. Less hay than she wants: more extra feed."
            .to_owned(),
        sources,
        others: Vec::new(),
        caution: words::CAUTION.map(str::to_owned).to_vec(),
    }
}

/// Returns what a ration is held against.
pub fn ration() -> Why {
    let mut sources = cited(requirement::SOURCES);
    sources.extend(cited(ration::SOURCES));
    sources.extend(cited(minerals::SOURCES));
    Why {
        heading: words::HELD.to_owned(),
        working: vec![
            "For each feed: amount × dry matter × content of the dry matter, added up".to_owned(),
            "Compared with the table’s row for her weight and stage".to_owned(),
        ],
        rule: "Short means under 97% of the row. She cannot eat more than 110% of its dry matter.".to_owned(),
        sources,
        others: Vec::new(),
        caution: words::CAUTION.map(str::to_owned).to_vec(),
    }
}

/// Returns where water and trough are from.
pub fn drink() -> Why {
    Why {
        heading: words::WATER.to_owned(),
        working: vec![
            "3 to 8 L (0.8 to 2 gal) a ewe a day; 0.4 to 0.5 m (16 to 20 in) of trough a ewe".to_owned(),
        ],
        rule: "More in milk and in hot weather. Frozen water is no water: check twice a day.".to_owned(),
        sources: cited(water::SOURCES),
        others: Vec::new(),
        caution: Vec::new(),
    }
}
