//! Every figure names where it was printed.

use yeanling_core::reckon::{all_sources, season};
use yeanling_core::source::HowKnown;

#[test]
fn every_source_can_be_cited() {
    // Source: ours.
    let season =
        season::all_sources().into_iter().map(|(subject, sources)| (format!("{subject:?}"), sources));
    let all = all_sources().into_iter().map(|(subject, sources)| (format!("{subject:?}"), sources));
    for (subject, sources) in all.chain(season) {
        for source in sources {
            let named = match source.known {
                HowKnown::Seen => !source.authors.is_empty() || !source.place.is_empty(),
                HowKnown::Memory => !source.authors.is_empty() || !source.title.is_empty(),
                HowKnown::CommonPractice | HowKnown::Ours => {
                    source.authors.is_empty() && !source.title.is_empty()
                }
            };
            assert!(named, "{subject}: {source:?}");
        }
    }
}

#[test]
fn the_study_that_disagrees_is_shown() {
    // Source: Hernández-Castellano et al. 2015, Journal of Dairy Science 98:204.
    let all: Vec<_> = all_sources().into_iter().flat_map(|(_, sources)| sources).collect();
    assert!(all.iter().any(|source| source.authors.starts_with("Hernández-Castellano")));
}
