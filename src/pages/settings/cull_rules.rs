//! The farm's own marks for keeping or culling: a number each, or nothing. Each is noted when its field is left.

use yeanling_core::settings::{Choice, CullRules};
use yeanling_core::units::TypedError;
use yeanling_words::{cull_rules as words, errors};

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Does, Effect};

/// One mark: its key, what it is called, how it is read and how it is set.
struct Mark {
    key: &'static str,
    label: &'static str,
    read: fn(&CullRules) -> Option<u8>,
    set: fn(&mut CullRules, Option<u8>),
}

impl Mark {
    fn text(&self, fields: &Fields, marks: &CullRules) -> String {
        fields.text(self.key, &(self.read)(marks).map(|from| from.to_string()).unwrap_or_default())
    }
}

const MARKS: [Mark; 5] = [
    Mark {
        key: "mark-hard",
        label: words::HARD,
        read: |marks| marks.hard_births,
        set: |marks, from| marks.hard_births = from,
    },
    Mark {
        key: "mark-lost",
        label: words::LOST,
        read: |marks| marks.lost,
        set: |marks, from| marks.lost = from,
    },
    Mark {
        key: "mark-turned-away",
        label: words::TURNED_AWAY,
        read: |marks| marks.turned_away,
        set: |marks, from| marks.turned_away = from,
    },
    Mark {
        key: "mark-barren",
        label: words::BARREN,
        read: |marks| marks.barren,
        set: |marks, from| marks.barren = from,
    },
    Mark {
        key: "mark-years",
        label: words::YEARS,
        read: |marks| marks.years,
        set: |marks, from| marks.years = from,
    },
];

/// Returns the part of the page.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let marks = &view.settings().cull_rules;
    let field = |blocks: Blocks, (place, mark): (usize, &Mark)| {
        let leave = Action::Does(Does::FarmSettings(super::Does::LeaveMark(place)));
        let field = Field::new(mark.label, FieldKind::Whole, mark.text(fields, marks));
        blocks.field(mark.key, field.error(fields.error(mark.key)).left(leave))
    };
    let inside = MARKS.iter().enumerate().fold(Blocks::new().small(words::MARKS_SUB), field);
    Blocks::new().section("marks", words::MARKS, inside)
}

/// The field of a mark is left.
pub(super) fn leave(place: usize, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(mark) = MARKS.get(place) else { return Vec::new() };
    let stood = view.settings().cull_rules;
    let typed = mark.text(&draft.fields, &stood).trim().to_owned();
    let from = match typed.parse() {
        _ if typed.is_empty() => None,
        Ok(from) => Some(from),
        Err(_) => {
            let wrong = TypedError::NotANumber { given: typed };
            return draft.say_wrong(mark.key, errors::typed(&wrong, errors::Field::Pieces, view.system()));
        }
    };
    let mut marks = stood;
    (mark.set)(&mut marks, from);
    if marks == stood {
        draft.fields.forget(mark.key);
        return Vec::new();
    }
    super::save(view, draft, mark.key, Choice::CullRules(marks))
}

/// The screen is left: a mark that is none goes with it.
pub(super) fn left(fields: &mut Fields) {
    for mark in &MARKS {
        if !fields.error(mark.key).is_empty() {
            fields.forget(mark.key);
        }
    }
}
