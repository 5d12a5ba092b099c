//! Why a clock of labor speaks up when it does.

use yeanling_core::reckon::labor::SOURCES;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, Task};

use super::{Why, cited, general};
use crate::words::common::{clock, span};
use crate::words::{cautions, watch};

/// Returns why a duty of a ewe at lambing is due when it is: counted from when, and by which limits of the farm.
pub fn labor(duty: &Duty, now: Moment) -> Why {
    let (from, due, late) = (duty.since, duty.due, duty.late);
    let mut working = vec![
        format!("Counted from {}: {} ago", clock(from), span(now.since(from))),
        format!("Due {} after: {}", span(due.since(from)), clock(due)),
    ];
    if late > due {
        working.push(format!("Late {} after: {}", span(late.since(from)), clock(late)));
    }
    let mut caution = vec![cautions::HANDS.to_owned(), cautions::PEOPLE.to_owned()];
    caution.extend(general());
    Why {
        heading: watch::kind_title(duty.task.kind()).to_owned(),
        working,
        rule: rule(duty.task).to_owned(),
        sources: cited(SOURCES),
        others: others(duty.task),
        caution,
    }
}

fn rule(task: Task) -> &'static str {
    match task {
        Task::LongRestless => "Restless for 6 h without waters: examine her, or call the vet.",
        Task::HandCheck { .. } => "Waters or hard straining: a clean hand at 30 min, step in at 60.",
        Task::Progress => "What shows comes further within 30 min.",
        Task::NeckTight => "A tight neck of the womb is tried gently for 10 min at most, then the vet.",
        Task::PutRight { .. } => "A lamb that is not put right in 10 to 15 min is the vet’s.",
        Task::NextLamb { .. } => "The next lamb comes within 30 min; at 60 a clean hand checks.",
        Task::Afterbirth { .. } => "Asked for at 6 h, late at 12, the vet’s at 18. Never pull it.",
        Task::LetOut => "A single stays a day, twins two, triplets two to three.",
        Task::DipNavel
        | Task::DipNavelAgain
        | Task::GetUp
        | Task::FirstMilk { .. }
        | Task::Feed { .. }
        | Task::DayTotal { .. }
        | Task::Weigh { .. }
        | Task::ScoreVigor
        | Task::TakeTemperature
        | Task::CallVet
        | Task::Danger(_)
        | Task::Hollow { .. }
        | Task::Ring { .. }
        | Task::WeaningCheck { .. }
        | Task::Look => "A restless ewe makes progress at least hourly.",
    }
}

fn others(task: Task) -> Vec<String> {
    match task {
        Task::NeckTight => vec!["Cornell: 30 min. The shorter is kept.".to_owned()],
        Task::LetOut => vec!["Montana State: 24 to 72 h for all".to_owned()],
        Task::DipNavel
        | Task::DipNavelAgain
        | Task::GetUp
        | Task::FirstMilk { .. }
        | Task::Feed { .. }
        | Task::DayTotal { .. }
        | Task::Weigh { .. }
        | Task::ScoreVigor
        | Task::TakeTemperature
        | Task::CallVet
        | Task::Danger(_)
        | Task::Hollow { .. }
        | Task::Ring { .. }
        | Task::WeaningCheck { .. }
        | Task::Look
        | Task::LongRestless
        | Task::HandCheck { .. }
        | Task::Progress
        | Task::PutRight { .. }
        | Task::NextLamb { .. }
        | Task::Afterbirth { .. } => Vec::new(),
    }
}
