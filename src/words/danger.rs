//! What the Watch says of an animal in danger, and of the vet: the sign and the step first, in few words.

use yeanling_core::book::{GlucoseBy, Mouth, Suck, VetSaid};
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::{Called, LambDanger, LambStep};

use super::common::{clock, temperature};

/// Heads what is in danger.
pub const TITLE: &str = "Danger";
/// Leads to the steps for a cold lamb.
pub const STEPS: &str = "Cold lamb steps";
/// Notes a call to the vet.
pub const CALLED: &str = "Vet called";
/// Opens what the vet said.
pub const SAID: &str = "What the vet said";
/// Asks what the vet said.
pub const SAID_ASK: &str = "What did the vet say?";
/// Labels what was advised or planned.
pub const SAID_LABEL: &str = "In your own words, if you like";
/// Asks when to look again.
pub const LOOK_AGAIN: &str = "Look again in";
/// Someone looked, after a call to the vet or beside what else is due.
pub const LOOKED: &str = "Looked";
/// A lamb was put right.
pub const PUT_RIGHT: &str = "Put right";

/// Returns how many are in danger.
pub fn count(count: usize) -> String {
    format!("{count} in danger")
}

/// Returns the sign: "35.0 °C, no swallow".
pub fn sign(danger: &LambDanger, system: System) -> String {
    let cold = danger.cold.map(|read| match read {
        Some(read) => format!("*{}*", temperature(read, system)),
        None => "*Cold mouth*".to_owned(),
    });
    let swallow = danger.no_swallow.then(|| if cold.is_some() { "no swallow" } else { "*Does not swallow*" });
    let alone = cold.is_none() && swallow.is_none();
    let failing = danger.failing.then_some(if alone { "*Scored failing*" } else { "failing" });
    cold.into_iter()
        .chain(swallow.map(str::to_owned))
        .chain(failing.map(str::to_owned))
        .collect::<Vec<_>>()
        .join(", ")
}

/// Returns the next step, short.
pub const fn step(step: LambStep, no_swallow: bool) -> &'static str {
    match step {
        LambStep::WarmNow if no_swallow => "*dry and warm it now*, nothing by mouth",
        LambStep::WarmNow => "*dry and warm it now*, no milk",
        LambStep::GlucoseFirst => "*glucose first*, no milk, no heat yet",
        LambStep::GlucoseGiven => "glucose given: *warm it now*, no milk",
        LambStep::NothingByMouth => "*nothing by mouth*",
        LambStep::CheckNow => "*clear airway, dry, warm*; then temperature and swallow",
    }
}

/// Returns sign and step as one line.
pub fn headline(danger: &LambDanger, system: System) -> String {
    format!("{}: {}", sign(danger, system), step(danger.step, danger.no_swallow))
}

/// Returns what a danger's task says as its sign and its next step, the step as a sentence of its own.
pub fn sign_and_step(task: &str) -> (String, String) {
    let (sign, step) = task.split_once(": ").unwrap_or((task, ""));
    let at = step.find(char::is_alphabetic).unwrap_or(0);
    let mut letters = step[at..].chars();
    let first = letters.next().map(|letter| letter.to_uppercase().to_string()).unwrap_or_default();
    (sign.to_owned(), format!("{}{first}{}", &step[..at], letters.as_str()))
}

/// Returns the sign and the step with what is known of the vet behind them.
pub fn then(task: &str, called: &str) -> String {
    format!("{task} · {called}")
}

/// Returns what is known of the vet: "vet called 06:41, look again 07:01".
pub fn called(called: &Called) -> String {
    let (at, again) = (clock(called.at), clock(called.look_again));
    let words = |words: &Option<String>| words.as_ref().map(|words| format!(": {words}")).unwrap_or_default();
    match &called.said {
        None => format!("vet called {at}, look again {again}"),
        Some(VetSaid::Coming) => format!("vet is coming, {at}; look again {again}"),
        Some(VetSaid::Advised { what, .. }) => format!("vet advised {at}{}; look again {again}", words(what)),
        Some(VetSaid::NobodyReached) => format!("nobody reached {at}: *call again*"),
        Some(VetSaid::Saw { plan, .. }) => format!("vet was here {at}{}; look again {again}", words(plan)),
    }
}

/// Returns what came of a call, as a choice and a line.
pub const fn said(said: &VetSaid) -> &'static str {
    match said {
        VetSaid::Coming => "Vet is coming",
        VetSaid::Advised { .. } => "Advised by phone",
        VetSaid::NobodyReached => "Nobody reached",
        VetSaid::Saw { .. } => "Vet was here, left a plan",
    }
}

/// Returns a line of the timeline.
pub fn said_line(of: &VetSaid) -> String {
    match of {
        VetSaid::Coming | VetSaid::NobodyReached => said(of).to_owned(),
        VetSaid::Advised { what: words, look_again } | VetSaid::Saw { plan: words, look_again } => {
            let words = words.as_ref().map(|words| format!(": {words}")).unwrap_or_default();
            format!("{}{words}; look again {}", said(of), clock(*look_again))
        }
    }
}

/// Returns what the vet said and when: "Vet is coming 03:12".
pub fn said_at(of: &VetSaid, at: Moment) -> String {
    format!("{} {}", said_line(of), clock(at))
}

/// Returns what is wrong with the time of the vet's next look, and what is allowed.
pub fn look_refused(given: &str, most: &str) -> String {
    format!("{given} is out of range. Look again later than now, by {most} at the latest.")
}

/// Asks for a finger in the mouth.
pub const MOUTH: &str = "No thermometer";
/// Heads it.
pub const MOUTH_ASK: &str = "Finger in its mouth";
/// Asks how warm.
pub const HOW_WARM: &str = "Mouth and tongue";
/// Asks how it sucks.
pub const HOW_SUCKS: &str = "It sucks";
/// Says what a finger is worth.
pub const MOUTH_NOTE: &str = "Warm your own hand first. A cold mouth counts as under 37 °C (98.6 °F). A warm one proves nothing: never tube \
     without a thermometer.";

/// Returns how warm a mouth felt.
pub const fn mouth(mouth: Mouth) -> &'static str {
    match mouth {
        Mouth::Cold => "Cold",
        Mouth::Cool => "Cool",
        Mouth::Warm => "Warm",
    }
}

/// Returns how it sucked.
pub const fn suck(suck: Suck) -> &'static str {
    match suck {
        Suck::Strong => "Strongly",
        Suck::Weak => "Weakly",
        Suck::None => "Not at all",
    }
}

/// Returns a line of the timeline.
pub fn mouth_line(warm: Mouth, sucks: Suck) -> String {
    format!("Finger in its mouth: *{}*, sucks {}", mouth(warm).to_lowercase(), suck(sucks).to_lowercase())
}

/// Returns the button that notes glucose.
pub const fn glucose(by: GlucoseBy) -> &'static str {
    match by {
        GlucoseBy::Vet => "Glucose given by vet",
        GlucoseBy::Trained => "Glucose given, vet-trained",
    }
}

/// Returns that glucose was given.
pub fn glucose_at(by: GlucoseBy, at: Moment) -> String {
    format!("{} {}", glucose(by), clock(at))
}

/// Opens the question when it was born.
pub const FOUND: &str = "Found already born";

/// Returns the same, ticked once it was answered.
pub fn found(is_noted: bool) -> String {
    if is_noted { format!("{FOUND} ✓") } else { FOUND.to_owned() }
}

/// Labels when a lamb was born.
pub const BORN: &str = "When it was born";
/// It was born just now.
pub const BORN_NOW: &str = "Just now";

/// Asks it.
pub const FOUND_ASK: &str = "When was it born?";
/// Says what is done with it.
pub const FOUND_NOTE: &str =
    "Its clocks go by the oldest it can be. What needs a young lamb goes by the youngest.";

/// How long ago a lamb that was found was born, at the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// Within the hour.
    Hour,
    /// Still wet, its cord raw: within five hours.
    Wet,
    /// One to six hours.
    SixHours,
    /// Six to twelve.
    TwelveHours,
    /// Nobody knows.
    Unknown,
}

impl Found {
    /// Every answer, in the order in which it is asked.
    pub const ALL: [Self; 5] = [Self::Hour, Self::Wet, Self::SixHours, Self::TwelveHours, Self::Unknown];

    /// Returns the hours that it can be old at the most.
    pub const fn hours(self) -> i64 {
        match self {
            Self::Hour => 1,
            Self::Wet => 5,
            Self::SixHours => 6,
            Self::TwelveHours => 12,
            Self::Unknown => 24,
        }
    }

    /// Returns it in a word or two.
    pub const fn short(self) -> &'static str {
        match self {
            Self::Hour => "Under 1 h",
            Self::Wet => "Wet, under 5 h",
            Self::SixHours => "1–6 h",
            Self::TwelveHours => "6–12 h",
            Self::Unknown => "Not known",
        }
    }

    /// Returns it in words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Hour => "Within the hour",
            Self::Wet => "Still wet with birth slime, cord raw and wet: under 5 h",
            Self::SixHours => "1–6 h ago",
            Self::TwelveHours => "6–12 h ago",
            Self::Unknown => "Not known",
        }
    }
}

/// Returns a line of the timeline.
pub const FOUND_LINE: &str = "Found already born";
