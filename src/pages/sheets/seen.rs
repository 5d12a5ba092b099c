//! The sheets that one press answers: how full a belly is, a finger in the mouth, when a lamb that was found was born, how it
//! was castrated, of what an animal died.

use yeanling_core::book::{Animal, Belly, Care, Castration, Event, LambId, Life, Mouth, Suck};
use yeanling_core::units::TimeDelta;
use yeanling_words::danger::{self, Found};
use yeanling_words::{lamb as words, life, noted};

use super::parts::{answers, whose};
use crate::block::{Choice, Choices};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Does, Effect};

/// Both answers about a belly.
pub(super) const BELLIES: [(Belly, &str); 2] = [(Belly::Full, words::FULL), (Belly::Hollow, words::HOLLOW)];

const MOUTH: &str = "mouth-warm";
const MOUTHS: [Mouth; 3] = [Mouth::Cold, Mouth::Cool, Mouth::Warm];
const SUCK: &str = "mouth-sucks";
const SUCKS: [Suck; 3] = [Suck::Strong, Suck::Weak, Suck::None];

/// Returns the sheet on which a belly is felt.
pub(super) fn belly(view: &View, lamb: LambId) -> SheetPage {
    let options = BELLIES.map(|(belly, name)| (name, Event::BellyFelt { lamb, belly }));
    let blocks = Blocks::new().choices("belly-felt", answers(words::BELLY_ASK, options)).text(words::SIGNS);
    SheetPage::new(words::BELLY_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// Returns the sheet for a finger in a lamb's mouth: it closes once both was told.
pub(super) fn mouth(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let mouth = fields.chosen(MOUTH).and_then(|place| MOUTHS.get(place).copied());
    let suck = fields.chosen(SUCK).and_then(|place| SUCKS.get(place).copied());
    let tell = |mouth: Option<Mouth>, suck: Option<Suck>, else_keep: (&'static str, usize)| {
        let both = mouth.zip(suck).map(|(mouth, suck)| Event::Care(Care::MouthFelt { lamb, mouth, suck }));
        both.map_or_else(
            || Action::Choose(else_keep.0.into(), else_keep.1),
            |told| Action::Answer(vec![told]),
        )
    };
    let mouths = MOUTHS
        .iter()
        .enumerate()
        .map(|(place, one)| Choice::new(danger::mouth(*one), tell(Some(*one), suck, (MOUTH, place))));
    let sucks = SUCKS
        .iter()
        .enumerate()
        .map(|(place, one)| Choice::new(danger::suck(*one), tell(mouth, Some(*one), (SUCK, place))));
    let warm = Choices::new(danger::HOW_WARM, mouths.collect(), fields.chosen(MOUTH)).labelled();
    let sucks = Choices::new(danger::HOW_SUCKS, sucks.collect(), fields.chosen(SUCK)).labelled();
    let blocks = Blocks::new().caution([danger::MOUTH_NOTE]).choices(MOUTH, warm).choices(SUCK, sucks);
    SheetPage::new(danger::MOUTH_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// Returns the sheet that asks how old a lamb that was found can be at the most.
pub(super) fn found(view: &View, lamb: LambId) -> SheetPage {
    let option = |found: Found| Choice::new(found.words(), Action::Does(Does::FoundBorn(lamb, found)));
    let choices = Choices::new(danger::FOUND_ASK, Found::ALL.map(option).to_vec(), None).stacked();
    let blocks = Blocks::new().choices("found-when", choices).remark(danger::FOUND_NOTE, []);
    SheetPage::new(danger::FOUND_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// Notes that a lamb was found already born when its birth was noted, and that it can be so old at the most.
pub(crate) fn found_born(lamb: LambId, found: Found, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let of_birth = view.flock.lines.iter().find(|line| line.entry == lamb.entry());
    let (Some(line), Some(known)) = (of_birth, view.flock.lamb(lamb)) else {
        draft.close();
        return Vec::new();
    };
    let seen = known.found.unwrap_or(line.at);
    let born = seen - TimeDelta::hours(found.hours());
    let event = Box::new(line.event.clone());
    let amended = view.noting(Event::Amended { entry: lamb.entry(), event, at: born });
    let was_found = view.noting_at(Event::Care(Care::FoundBorn { lamb }), seen);
    draft.answer(view, vec![amended, was_found])
}

/// Returns the sheet that asks how a ram lamb was castrated.
pub(super) fn castrate(view: &View, lamb: LambId) -> SheetPage {
    let way = |way| (life::castration(way), Event::Life(Life::Castrated { lamb, way }));
    let ways = [Castration::Cut, Castration::Clamped].map(way);
    let blocks = Blocks::new()
        .caution([life::CASTRATE_CAUTION])
        .choices("castrated-how", answers(life::CASTRATE_ASK, ways));
    SheetPage::new(life::CASTRATE_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// Returns the sheet that asks of what an animal died.
pub(super) fn death(view: &View, animal: Animal) -> SheetPage {
    let causes = noted::CAUSES.map(|cause| (noted::cause(cause), Event::Died { animal, cause }));
    let blocks = Blocks::new().choices("death-cause", answers(words::DIED_ASK, causes).stacked());
    SheetPage::new(words::DIED_ASK, blocks).whose(whose(view, animal))
}
