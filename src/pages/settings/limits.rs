//! The farm's limits: read and saved in groups; what is wrong stays as it was typed.

use yeanling_core::settings::{
    self, FarmSettings as Chosen, LaborLimits, Limit, LimitError, Limits, PenStay,
};
use yeanling_words::{errors, settings as words};

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Key};

/// Limits that are read and saved together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Together {
    /// Of the newborn.
    Newborn,
    /// Around lambing.
    Labor,
    /// In the bonding pens.
    Stay,
}

impl Together {
    pub(super) const ALL: [Self; 3] = [Self::Newborn, Self::Labor, Self::Stay];

    const fn group(self) -> &'static Group {
        match self {
            Self::Newborn => &NEWBORN,
            Self::Labor => &LABOR,
            Self::Stay => &STAY,
        }
    }
}

/// What such a group shows, and what its figures make.
struct Group {
    /// The key of its part of the page.
    key: &'static str,
    /// Under which key it is kept what its button did last, and with which figures.
    said: &'static str,
    title: &'static str,
    sub: &'static str,
    unit: &'static str,
    save: &'static str,
    limits: &'static [Limit],
    /// Makes the choice of the figures, in the order of `limits`, or says which is wrong.
    make: fn(&[u16]) -> Result<settings::Choice, LimitError>,
}

/// In the order in which a lamb meets them.
const NEWBORN: Group = Group {
    key: "limits-newborn",
    said: "limits-newborn-said",
    title: words::LIMITS,
    sub: words::LIMITS_SUB,
    unit: words::MINUTES,
    save: words::SAVE_LIMITS,
    limits: &Limit::OF_A_NEWBORN,
    make: |figures| {
        let mut all = Limits::default();
        if let [up, help, red, last_call, navel_again] = figures {
            (all.up_minutes, all.help_minutes, all.red_minutes) = (*up, *help, *red);
            (all.last_call_minutes, all.navel_again_minutes) = (*last_call, *navel_again);
        }
        all.checked().map(settings::Choice::Limits)
    },
};

/// In the order of a night.
const LABOR: Group = Group {
    key: "limits-labor",
    said: "limits-labor-said",
    title: words::LABOR,
    sub: words::LABOR_SUB,
    unit: words::MINUTES,
    save: words::SAVE_LIMITS,
    limits: &Limit::OF_LABOR,
    make: |figures| {
        let mut all = LaborLimits::default();
        if let [look, restless, hand, step_in, progress, neck, put_right, next, check, ask, late, vet] =
            figures
        {
            (all.look_minutes, all.restless_minutes) = (*look, *restless);
            (all.hand_check_minutes, all.step_in_minutes) = (*hand, *step_in);
            (all.progress_minutes, all.neck_minutes, all.put_right_minutes) = (*progress, *neck, *put_right);
            (all.next_lamb_minutes, all.next_check_minutes) = (*next, *check);
            (all.afterbirth_ask_minutes, all.afterbirth_late_minutes) = (*ask, *late);
            all.afterbirth_vet_minutes = *vet;
        }
        all.checked().map(settings::Choice::LaborLimits)
    },
};

/// By how many lambs there are.
const STAY: Group = Group {
    key: "limits-stay",
    said: "limits-stay-said",
    title: words::STAY,
    sub: words::STAY_SUB,
    unit: words::HOURS,
    save: words::SAVE_STAY,
    limits: &Limit::OF_THE_STAY,
    make: |figures| {
        let mut all = PenStay::default();
        if let [single, twins, more] = figures {
            (all.single_hours, all.twins_hours, all.more_hours) = (*single, *twins, *more);
        }
        all.checked().map(settings::Choice::PenStay)
    },
};

fn figure(of: &Chosen, limit: Limit) -> u16 {
    match limit {
        Limit::Up => of.limits.up_minutes,
        Limit::Help => of.limits.help_minutes,
        Limit::Red => of.limits.red_minutes,
        Limit::LastCall => of.limits.last_call_minutes,
        Limit::NavelAgain => of.limits.navel_again_minutes,
        Limit::Look => of.labor.look_minutes,
        Limit::Restless => of.labor.restless_minutes,
        Limit::HandCheck => of.labor.hand_check_minutes,
        Limit::StepIn => of.labor.step_in_minutes,
        Limit::Progress => of.labor.progress_minutes,
        Limit::Neck => of.labor.neck_minutes,
        Limit::PutRight => of.labor.put_right_minutes,
        Limit::NextLamb => of.labor.next_lamb_minutes,
        Limit::NextCheck => of.labor.next_check_minutes,
        Limit::AfterbirthAsk => of.labor.afterbirth_ask_minutes,
        Limit::AfterbirthLate => of.labor.afterbirth_late_minutes,
        Limit::AfterbirthVet => of.labor.afterbirth_vet_minutes,
        Limit::StaySingle => of.stay.single_hours,
        Limit::StayTwins => of.stay.twins_hours,
        Limit::StayMore => of.stay.more_hours,
    }
}

fn usual(limit: Limit) -> u16 {
    figure(&Chosen::default(), limit)
}

fn key(limit: Limit) -> Key {
    format!("limit-{limit:?}").to_lowercase().into()
}

/// Returns what stands in the field of a limit: what was typed, or what holds.
fn text(fields: &Fields, settings: &Chosen, limit: Limit) -> String {
    fields.text(&key(limit), &figure(settings, limit).to_string())
}

/// Returns the figures of a group as one text.
fn figures(group: &Group, settings: &Chosen) -> String {
    listed(group.limits.iter().map(|limit| figure(settings, *limit)))
}

fn listed(figures: impl Iterator<Item = u16>) -> String {
    figures.map(|figure| figure.to_string()).collect::<Vec<_>>().join(" ")
}

/// Returns a group's part of the page.
pub(super) fn blocks(settings: &Chosen, fields: &Fields, together: Together) -> Blocks {
    let group = together.group();
    let field = |blocks: Blocks, limit: &Limit| {
        let (key, text) = (key(*limit), text(fields, settings, *limit));
        let hint = words::usual(text.trim().parse().ok(), usual(*limit), group.unit);
        let field = Field::new(words::limit(*limit), FieldKind::Whole, text);
        let field = field.hint(hint).error(fields.error(&key)).unit(group.unit);
        blocks.field(key, field)
    };
    let save = Action::Does(Does::FarmSettings(super::Does::SaveLimits(together)));
    let inside = group.limits.iter().fold(Blocks::new().small(group.sub), field);
    let inside = inside.button(Button::new("save", group.save, save)).status(said(group, settings, fields));
    Blocks::new().section(group.key, group.title, inside)
}

/// What is said of the last press, while the figures are as it left them.
const SAID: [&str; 2] = [words::SAVED, words::UNCHANGED];
const SAVED: usize = 0;
const UNCHANGED: usize = 1;

fn said(group: &Group, settings: &Chosen, fields: &Fields) -> &'static str {
    if fields.typed(group.said) == Some(&*figures(group, settings)) {
        fields.pick(group.said, &SAID, "")
    } else {
        ""
    }
}

fn say(group: &Group, fields: &mut Fields, said: usize, figures: String) {
    fields.set(group.said, figures);
    fields.choose(group.said, said);
}

/// Saves a group.
pub(super) fn save(together: Together, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let (group, settings) = (together.group(), view.settings());
    let mut read = Vec::with_capacity(group.limits.len());
    for limit in group.limits.iter().copied() {
        let typed = text(&draft.fields, settings, limit);
        draft.fields.right(&key(limit));
        match typed.trim().parse() {
            Ok(figure) => read.push(figure),
            Err(_) => draft.fields.wrong(key(limit), words::not_whole(typed.trim(), usual(limit))),
        }
    }
    if read.len() < group.limits.len() {
        return Vec::new();
    }
    let choice = match (group.make)(&read) {
        Ok(choice) => choice,
        Err(wrong) => return draft.say_wrong(key(wrong.limit), errors::limit(&wrong)),
    };
    let figures_now = listed(read.into_iter());
    if figures_now == figures(group, settings) {
        say(group, &mut draft.fields, UNCHANGED, figures_now);
        return Vec::new();
    }
    let keys: Vec<Key> = group.limits.iter().map(|limit| key(*limit)).collect();
    let effects = super::choose(view, draft, choice, &keys);
    if !effects.is_empty() {
        say(group, &mut draft.fields, SAVED, figures_now);
    }
    effects
}

/// Something was typed: what was said of the last press is about other figures.
pub(super) fn typed(typed: &Key, fields: &mut Fields) {
    for group in Together::ALL.map(Together::group) {
        if group.limits.iter().any(|limit| key(*limit) == *typed) {
            fields.forget(group.said);
        }
    }
}

/// The screen is left: what was said was read.
pub(super) fn left(fields: &mut Fields) {
    for group in Together::ALL.map(Together::group) {
        fields.forget(group.said);
    }
}
