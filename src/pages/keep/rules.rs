//! The farm's cull rules where they are used: each off or from a number on, with its reason. A press notes it.

use yeanling_core::book::Event;
use yeanling_core::settings::{self, CullRules, CullSigns};
use yeanling_words::common::number;
use yeanling_words::keep as words;

use crate::Action;
use crate::block::{Choice, Choices};
use crate::page::Blocks;
use crate::view::View;

/// What is chosen of both lists.
type Both = (CullRules, CullSigns);

/// One rule: how it is read, how it is set, what is offered, and how a number of it is written.
struct Rule {
    read: fn(&Both) -> Option<u8>,
    set: fn(&mut Both, Option<u8>),
    offered: &'static [u8],
    write: fn(u8) -> String,
}

const COUNTS: &[u8] = &[1, 2, 3];

fn from(count: u8) -> String {
    format!("{count}+")
}

const RULES: [Rule; 11] = [
    Rule { read: |of| of.1.udder, set: |of, from| of.1.udder = from, offered: COUNTS, write: from },
    Rule { read: |of| of.1.prolapse, set: |of, from| of.1.prolapse = from, offered: COUNTS, write: from },
    Rule { read: |of| of.0.lost, set: |of, from| of.0.lost = from, offered: &[1, 2, 3, 4], write: from },
    Rule {
        read: |of| of.0.turned_away,
        set: |of, from| of.0.turned_away = from,
        offered: COUNTS,
        write: from,
    },
    Rule {
        read: |of| of.0.hard_births,
        set: |of, from| of.0.hard_births = from,
        offered: COUNTS,
        write: from,
    },
    Rule { read: |of| of.0.barren, set: |of, from| of.0.barren = from, offered: COUNTS, write: from },
    Rule { read: |of| of.1.lame, set: |of, from| of.1.lame = from, offered: &[2, 3, 4], write: from },
    Rule { read: |of| of.1.late, set: |of, from| of.1.late = from, offered: COUNTS, write: from },
    Rule { read: |of| of.0.years, set: |of, from| of.0.years = from, offered: &[6, 7, 8, 9], write: from },
    Rule {
        read: |of| of.1.thin,
        set: |of, from| of.1.thin = from,
        offered: &[6, 8, 10],
        write: |quarters| number(f64::from(quarters) / 4.0, 2),
    },
    Rule {
        read: |of| of.1.light,
        set: |of, from| of.1.light = from,
        offered: &[70, 80, 90],
        write: |percent| format!("{percent}%"),
    },
];

/// Returns the rules.
pub(super) fn blocks(view: &View) -> Blocks {
    let stands = (view.settings().cull_rules, view.settings().cull_signs);
    let rule = |blocks: Blocks, (place, (rule, told)): (usize, (&Rule, &words::Rule))| {
        let chosen = (rule.read)(&stands);
        let mut offered: Vec<Option<u8>> =
            std::iter::once(None).chain(rule.offered.iter().copied().map(Some)).collect();
        // A number that was set elsewhere stands too.
        if !offered.contains(&chosen) {
            offered.push(chosen);
        }
        let option = |from: &Option<u8>| {
            Choice::new(from.map_or(words::OFF.to_owned(), rule.write), choose(rule, stands, *from))
        };
        let options = offered.iter().map(option).collect();
        let down = offered.iter().position(|from| *from == chosen);
        blocks
            .choices(format!("rule-{place}"), Choices::new(told.name, options, down).labelled())
            .small(told.why)
    };
    let all = RULES.iter().zip(&words::RULE).enumerate();
    let inside = all.fold(Blocks::new().small(words::RULES_SUB), rule);
    Blocks::new().section("cull-rules", words::RULES, inside)
}

fn choose(rule: &Rule, stands: Both, from: Option<u8>) -> Action {
    let mut chosen = stands;
    (rule.set)(&mut chosen, from);
    let choice = if chosen.0 == stands.0 {
        settings::Choice::CullSigns(chosen.1)
    } else {
        settings::Choice::CullRules(chosen.0)
    };
    Action::Note(vec![Event::Chose(choice)])
}
