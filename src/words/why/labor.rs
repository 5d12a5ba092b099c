//! Why a clock of labor speaks up when it does.

use yeanling_core::book::Presentation;
use yeanling_core::reckon::illness::udder;
use yeanling_core::reckon::labor::{Needs, SOURCES, needs};
use yeanling_core::settings::FarmSettings;
use yeanling_core::source::Source;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, EweTask, Task, Trouble};

use super::{Why, cited, general};
use crate::common::{clock, hours, minutes, span};
use crate::{cautions, watch};

/// A clock that runs for a ewe at lambing, or until she leaves her pen: what it asks for, and its instants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LaborClock {
    /// What it asks for.
    pub task: EweTask,
    /// What it is counted from.
    pub since: Moment,
    /// When that should be done.
    pub due: Moment,
    /// From when it is late.
    pub late: Moment,
}

impl LaborClock {
    /// Returns the clock behind a duty; none of a lamb's, which has reasons of its own.
    pub const fn of(duty: &Duty) -> Option<Self> {
        match duty.task {
            Task::Ewe(_, task) => Some(Self { task, since: duty.since, due: duty.due, late: duty.late }),
            Task::Lamb(..) => None,
        }
    }
}

/// Returns why a duty of a ewe at lambing is due when it is: counted from when, and by which limits of the farm.
pub fn labor(of: LaborClock, settings: &FarmSettings, now: Moment) -> Why {
    let LaborClock { task, since: from, due, late } = of;
    let mut working = vec![format!("Counted from {}: {} ago", clock(from), span(now.since(from)))];
    // What was already due or late before this was found is no less so for it.
    working.push(if due < from {
        format!("Due before this was found: {}", clock(due))
    } else {
        format!("Due {} after: {}", span(due.since(from)), clock(due))
    });
    if late > due && late < from {
        working.push(format!("Late before this was found: {}", clock(late)));
    } else if late > due {
        working.push(format!("Late {} after: {}", span(late.since(from)), clock(late)));
    }
    let mut caution = vec![cautions::HANDS.to_owned(), cautions::PEOPLE.to_owned()];
    caution.extend(general());
    Why {
        heading: watch::why_title(task).to_owned(),
        working,
        rule: rule(task, settings),
        sources: cited(sources(task)),
        others: others(task),
        caution,
    }
}

/// Where the rule comes from.
const fn sources(task: EweTask) -> &'static [Source] {
    if matches!(task, EweTask::Udder { .. } | EweTask::Settled) { udder::SOURCES } else { SOURCES }
}

/// Returns how it lies, where a hand found out.
const fn lies(trouble: Trouble) -> Option<Presentation> {
    match trouble {
        Trouble::Lies(lie) => Some(lie),
        Trouble::Shows(_) | Trouble::Helped => None,
    }
}

/// Returns the rule in the farm's own limits.
fn rule(task: EweTask, settings: &FarmSettings) -> String {
    let (labor, stay) = (&settings.labor, &settings.stay);
    match task {
        EweTask::LongRestless => {
            format!(
                "Restless for {} and no lamb: examine her, or call your vet.",
                minutes(labor.restless_minutes)
            )
        }
        EweTask::HandCheck { .. } => format!(
            "Waters or hard straining and nothing shows: check inside at {}, assist at {}.",
            minutes(labor.hand_check_minutes),
            minutes(labor.step_in_minutes)
        ),
        EweTask::Progress => {
            format!(
                "What shows must come further within {}. If not, check inside.",
                minutes(labor.progress_minutes)
            )
        }
        EweTask::CervixClosed => format!(
            "Cervix not open (ringwomb): try gently for {} at most, then the vet.",
            minutes(labor.neck_minutes)
        ),
        EweTask::PutRight { trouble } => match lies(trouble).map(needs) {
            Some(Needs::Vet) => "Crosswise, too big or deformed: call the vet at once.".to_owned(),
            Some(Needs::Help | Needs::Nothing) | None => {
                format!("A lamb not corrected within {}: call the vet.", minutes(labor.put_right_minutes))
            }
        },
        EweTask::NextLamb { .. } => format!(
            "Look for the next lamb at {}; check inside at {}.",
            minutes(labor.next_lamb_minutes),
            minutes(labor.next_check_minutes)
        ),
        EweTask::Afterbirth { .. } => format!(
            "Afterbirth: asked at {}, late at {}, vet at {}. Never pull it.",
            minutes(labor.afterbirth_ask_minutes),
            minutes(labor.afterbirth_late_minutes),
            minutes(labor.afterbirth_vet_minutes)
        ),
        EweTask::Udder { again: false } => {
            "Both teats are drawn when the first lamb nurses; nobody saw one nurse: two hours after the birth, six at the latest."
                .to_owned()
        }
        EweTask::Udder { again: true } => "A half that gave no milk is drawn once more; the Watch says when.".to_owned(),
        EweTask::Settled => {
            "Up, eating and drinking, with feed and water before her: asked with the udder check.".to_owned()
        }
        EweTask::LetOut => format!(
            "A single stays {}, twins {}, triplets and more {}.",
            hours(stay.single_hours),
            hours(stay.twins_hours),
            hours(stay.more_hours)
        ),
        EweTask::Look => format!("Check her every {}.", minutes(labor.look_minutes)),
        EweTask::Ill { now: true, .. } => {
            "What was seen is the vet’s now, until she is well again or your vet saw her.".to_owned()
        }
        EweTask::Ill { now: false, .. } => {
            "What was seen is the vet’s within the day. No vet reached: now.".to_owned()
        }
        EweTask::IllLook { .. } => {
            "Looked at again by what was seen. No better: the vet today. Worse: now.".to_owned()
        }
    }
}

/// Returns what is published, which is not always what the farm has set.
fn others(task: EweTask) -> Vec<String> {
    let printed: &[&str] = match task {
        EweTask::LongRestless => &["Published: over 6 h (North Canterbury Vets)."],
        EweTask::HandCheck { .. } => &[
            "Published: internal check at 30 min (extension guides; unconfirmed).",
            "Published: assist at 60 min (Maryland, Anexa, CHB Vets).",
        ],
        EweTask::CervixClosed => &["Published: 10 min (NADIS), 30 min (Cornell)."],
        EweTask::PutRight { .. } => &["Published: 10 to 15 min."],
        EweTask::NextLamb { .. } => &["Published: within 30 min, a check at 60 min (Anexa)."],
        EweTask::Afterbirth { .. } => &["Published: 6, 12 and 18 h (MSD Vet Manual)."],
        EweTask::LetOut => &[
            "Published: a single 1 day, twins 2, triplets 2 to 3 (equipment firm).",
            "Published: 24 to 72 h for all (Montana State).",
        ],
        EweTask::Udder { .. } => &[
            "Published: of lambs on an udder with lumps 40% were lost, hard 30%, normal 12% (Massey 2019, felt before mating).",
        ],
        EweTask::Progress
        | EweTask::Look
        | EweTask::Settled
        | EweTask::Ill { .. }
        | EweTask::IllLook { .. } => &[],
    };
    printed.iter().map(|line| (*line).to_owned()).collect()
}
