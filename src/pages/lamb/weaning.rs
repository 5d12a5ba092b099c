//! Whether a bottle lamb can be weaned: the verdict by the farm's rule, each condition, and what decides it; and the sheet
//! that notes what it ate of solid feed.

use yeanling_core::book::{Event, LambId};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::weaning::Verdict;
use yeanling_core::units::{Mass, TimeDelta};
use yeanling_core::watch::may_be_weaned;
use yeanling_words::why::headings;
use yeanling_words::{errors, frame, weaning as words};

use crate::block::{Check, Field, FieldKind, Kind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage, why};
use crate::view::View;
use crate::{Action, Button, Effect, Reason, Sheet, Text};

/// It is shown a week before the earliest age of any rule (ours), or once solids were noted.
pub(super) const SHOWN_FROM: TimeDelta = TimeDelta::days(21);

/// Returns the section; nothing for a lamb that is not on the bottle or too young to ask.
pub(super) fn blocks(view: &View, lamb: &Lamb) -> Blocks {
    let too_young = lamb.age(view.now) < SHOWN_FROM && lamb.solids.is_empty();
    if too_young || !lamb.on_bottle() {
        return Blocks::new();
    }
    let system = view.system();
    let (ready, said) = match may_be_weaned(lamb, view.now, view.settings().weaning_rule) {
        Ok(answer) => {
            let check = |(met, text): (Option<bool>, String)| Check { met, text: text.into() };
            let checks = words::checks(&answer, system).into_iter().map(check).collect();
            let ready = answer.verdict == Verdict::Ready;
            let verdict = Text::strong(&words::verdict(&answer));
            let why = why(headings::WEANING, Reason::Weaning(Box::new(answer)));
            (ready, Blocks::new().remark(verdict, [why]).add("conditions", Kind::Checks(checks)))
        }
        Err(wrong) => (false, Blocks::new().remark(Text::strong(&errors::weight(&wrong, system)), [])),
    };
    let weaned = Action::Note(vec![Event::Weaned { lamb: lamb.id }]);
    let buttons = [
        Button::new("solids", words::SOLIDS, Action::Ask(Sheet::Solids(lamb.id))),
        Button::new("weigh", words::WEIGH, Action::Ask(Sheet::Weight(lamb.id))),
        Button::new("weaned", words::WEANED, weaned).filled_if(ready),
    ];
    Blocks::new().section("weaning", words::TITLE, said.buttons(3, buttons))
}

const SOLIDS: &str = "solids";

/// Returns the sheet that notes what a lamb ate of solid feed in a day.
pub(crate) fn solids_sheet(view: &View, fields: &Fields) -> SheetPage {
    let field = Field::new(words::SOLIDS_LABEL, FieldKind::Decimal, fields.text(SOLIDS, ""))
        .hint(words::solids_hint(view.system()))
        .error(fields.error(SOLIDS))
        .unit(words::solids_unit(view.system()));
    let save = Button::new("save", frame::SAVE, Action::Save).filled();
    SheetPage::new(words::SOLIDS_ASK, Blocks::new().field(SOLIDS, field).button(save))
}

/// Saves what was typed.
pub(crate) fn save_solids(view: &View, draft: &mut Draft, lamb: LambId) -> Vec<Effect> {
    let system = view.system();
    let typed = words::with_unit(&draft.top().text(SOLIDS, ""), system);
    match Mass::parse(&typed, system) {
        Ok(mass) => draft.save(view, SOLIDS, vec![view.noting(Event::SolidsEaten { lamb, mass })]),
        Err(wrong) => draft.say_wrong(SOLIDS, errors::typed(&wrong, errors::Field::Feed, system)),
    }
}
