//! She is not right: one ewe, what is seen of her, and the answer.

use yeanling_core::book::{Animal, Event, EweId, Illness};
use yeanling_core::flock::Ewe;
use yeanling_core::reckon::illness::ewe::{self as table, Case, Check, Row};
use yeanling_core::terms::{EweSign, EweStage, Gate, Onset};
use yeanling_core::watch::{Course, ewe_case, ewe_illness, stage_of};
use yeanling_words::illness::{self as words, ewe as of_ewe};
use yeanling_words::{animals, frame};

use super::answer::{self, Told};
use super::ask::{self, answered, forget, gate, key, more_key, pressed};
use super::{Does, card, place};
use crate::block::{Choice, Choices};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::watch::spread_notice;
use crate::{Action, Button, Effect, Screen};

const GATES: [(&str, Check); 3] =
    [("standing", Check::Standing), ("eating", Check::Eating), ("nothing-out", Check::NothingOut)];
const ONSET: &str = "onset";
const ONSETS: [Onset; 2] = [Onset::Hours, Onset::Days];
const STAGE: &str = "stage";
const STAGES: [EweStage; 5] =
    [EweStage::LateInLamb, EweStage::Labor, EweStage::AfterLambing, EweStage::Milking, EweStage::Other];

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft, id: EweId) -> Page {
    let back = Screen::Ewe(id);
    let Some(ewe) = view.flock.ewe(id) else {
        return Page::new(frame::NOT_HERE).back(Screen::NotRight, words::TITLE).blocks(Blocks::new().gone());
    };
    let name = animals::ewe(ewe);
    let page = Page::new(of_ewe::NOT_RIGHT).back(back, name.clone()).under(name);
    if !ewe.lives() {
        let another = Button::new("another", words::WHO, Action::Go(Screen::NotRight));
        return page.blocks(Blocks::new().empty(words::GONE, [another]));
    }
    let asked_more = draft.fields.chosen(&more_key(Animal::Ewe(ewe.id))) == Some(1);
    match ewe_illness(view.flock, ewe, view.now).filter(|_| !asked_more) {
        Some(course) => page.blocks(spread_notice(view, Animal::Ewe(ewe.id)).then(told(view, ewe, &course))),
        None => page.blocks(asked(view, &draft.fields, ewe)).thumb(see_button(ewe.id)),
    }
}

fn see_button(id: EweId) -> Blocks {
    let see = Action::Does(crate::Does::Illness(Does::Ewe(id)));
    Blocks::new().button(Button::new("ill-see", words::ANSWER, see).big().filled())
}

/// What is asked first, and what is seen.
fn asked(view: &View, fields: &Fields, ewe: &Ewe) -> Blocks {
    let animal = Animal::Ewe(ewe.id);
    let gates = GATES.iter().fold(Blocks::new(), |blocks, (what, check)| {
        blocks.then(gate(fields, what, of_ewe::check(*check), (animal, Gate::NotChecked)))
    });
    let bad = EweSign::ALL.into_iter().filter(|sign| !sign.is_good_news());
    let good = EweSign::ALL.into_iter().filter(|sign| sign.is_good_news());
    let onset_key = key(ONSET, animal);
    let option = |(place, onset): (usize, &Onset)| {
        Choice::new(words::onset(*onset), Action::Choose(onset_key.clone(), place))
    };
    let options = ONSETS.iter().enumerate().map(option).collect();
    let onset = Choices::new(words::ONSET, options, fields.chosen(&onset_key)).labelled();
    let mut blocks = Blocks::new()
        .section("ill-first", words::FIRST, gates)
        .section(
            "ill-seen",
            words::SEEN,
            Blocks::new().remark(words::SEEN_HINT, []).then(ask::by_place(
                fields,
                animal,
                bad,
                place::of_ewe,
                of_ewe::sign,
            )),
        )
        .choices(onset_key.clone(), onset);
    if stage_of(view.flock, ewe, view.now) == EweStage::Unknown {
        let stage_key = key(STAGE, animal);
        let option = |(place, stage): (usize, &EweStage)| {
            Choice::new(of_ewe::stage(*stage), Action::Choose(stage_key.clone(), place))
        };
        let options = STAGES.iter().enumerate().map(option).collect();
        let stages = Choices::new(words::STAGE, options, fields.chosen(&stage_key)).labelled().stacked();
        blocks = blocks.choices(stage_key.clone(), stages);
    }
    blocks
        .section("ill-good", words::GOOD, ask::signs(fields, animal, good, of_ewe::sign))
        .small(words::HELPS)
}

/// Notes what is seen.
pub(super) fn see(view: &View, draft: &mut Draft, id: EweId) -> Vec<Effect> {
    let animal = Animal::Ewe(id);
    let fields = &draft.fields;
    let [standing, eating, nothing_out] =
        GATES.map(|(what, _)| answered(fields, what, (animal, Gate::NotChecked)));
    let onset = fields.chosen(&key(ONSET, animal)).and_then(|place| ONSETS.get(place).copied());
    let known = view.flock.ewe(id).map_or(EweStage::Unknown, |ewe| stage_of(view.flock, ewe, view.now));
    let stage = fields.pick(&key(STAGE, animal), &STAGES, known);
    let signs = pressed(fields, animal, &EweSign::ALL);
    let seen = Illness::EweSeen { ewe: id, stage, standing, eating, nothing_out, signs, onset };
    let mut effects = draft.note(view, vec![view.noting(Event::Illness(seen))]);
    if !effects.is_empty() {
        // The answer is read from its top.
        effects.push(Effect::Show("title".into()));
        let gates = ["standing", "eating", "nothing-out", ONSET, STAGE];
        forget(&mut draft.fields, animal, &gates, &EweSign::ALL);
    }
    effects
}

/// One thing said of her alone.
fn said(ewe: &Ewe, stage: EweStage, change: impl FnOnce(&mut [Gate; 3], &mut Vec<EweSign>)) -> Event {
    let (mut gates, mut signs) = ([Gate::NotChecked; 3], Vec::new());
    change(&mut gates, &mut signs);
    let [standing, eating, nothing_out] = gates;
    Event::Illness(Illness::EweSeen { ewe: ewe.id, stage, standing, eating, nothing_out, signs, onset: None })
}

fn told(view: &View, ewe: &Ewe, course: &Course<Row, Check>) -> Blocks {
    let case = ewe_case(view.flock, ewe, view.now, None);
    let checks = course.answer.check_now.iter().map(|check| {
        let place = GATES.iter().position(|(_, gate)| gate == check).unwrap_or(0);
        let events = [Gate::Good, Gate::Bad, Gate::CannotCheck]
            .map(|gate| said(ewe, case.stage, |gates, _| gates[place] = gate));
        (of_ewe::check(*check), events)
    });
    let seen = seen(&case);
    answer::blocks(Told {
        animal: Animal::Ewe(ewe.id),
        urgency: course.urgency,
        no_better: course.answer.no_better,
        look_again: course.look_again(),
        called: course.called.as_ref(),
        rows: course.answer.rows.iter().map(|found| of_ewe::row(found.row)).collect(),
        hands: None,
        nothing_by_mouth: course.answer.nothing_by_mouth,
        down: case.standing.is_bad(),
        rears: !view.flock.lambs_at_foot(ewe.id).is_empty(),
        checks: checks.collect(),
        good: good(ewe, &case),
        card: card::of_ewe(view, ewe, case.stage, &seen),
        ways: Vec::new(),
    })
}

/// What is bad of her, in words.
fn seen(case: &Case) -> Vec<&'static str> {
    let gates = [
        (case.standing, "not standing"),
        (case.eating, "not eating"),
        (case.nothing_out, "bleeding or something out"),
    ];
    let bad = gates.into_iter().filter(|(gate, _)| gate.is_bad()).map(|(_, bad)| bad);
    bad.chain(case.signs.iter().map(|sign| of_ewe::sign(*sign))).collect()
}

/// Good news that would make it less urgent, were it so.
fn good(ewe: &Ewe, case: &Case) -> Vec<(&'static str, Event)> {
    let now = table::decide(case).urgency;
    let lowers = |sign: &EweSign| {
        let mut with = case.clone();
        with.signs.push(*sign);
        table::decide(&with).urgency < now
    };
    let all = EweSign::ALL.into_iter().filter(|sign| sign.is_good_news() && !case.signs.contains(sign));
    let event = |sign: EweSign| said(ewe, case.stage, |_, signs| signs.push(sign));
    all.filter(lowers).map(|sign| (of_ewe::sign(sign), event(sign))).collect()
}
