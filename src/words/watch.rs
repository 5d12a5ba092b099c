//! What the Watch says of each duty.

use yeanling_core::book::{DutyKind, VigorScale};
use yeanling_core::flock::Scored;
use yeanling_core::reckon::labor::Needs;
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Duty, State, Task, Trouble, needs};

use super::common::{clock, day_and_clock, span, volume};
use super::{danger, labor};

/// Starts a lambing.
pub const LAMBING: &str = "Lambing";
/// Heads what the season asks for.
pub const THIS_WEEK: &str = "This week";
/// The ram was taken out.
pub const RAM_IS_OUT: &str = "He is out";
/// The booster was given.
pub const GIVEN: &str = "Given";
/// She gets so much from now on.
pub const FED_SO: &str = "Fed so";
/// The extra feed was stopped.
pub const STOPPED: &str = "Stopped";
/// Heads what is late.
pub const LATE: &str = "Late";
/// Heads what is due.
pub const NOW: &str = "Now";
/// Heads what comes.
pub const COMING: &str = "Coming";
/// Heads newborns that want nothing.
pub const WELL: &str = "First day, nothing due";
/// Says what to do first.
pub const EMPTY: &str = "Nothing to watch yet. Yeanling keeps the clocks of a lambing: the ewe, each lamb’s first milk, what is due next. When a ewe starts, tap *Lambing*.";
/// Says that nothing is due.
pub const QUIET: &str = "Nothing is due. Ewes at work, newborns and bottle lambs show here.";
/// Offers the made-up flock.
pub const LOOK_ROUND: &str = "Look round a made-up flock";

/// Returns what is to be done, short, for a row.
pub fn task(task: Task, system: System) -> String {
    match task {
        Task::DipNavel => "Dip the navel".to_owned(),
        Task::DipNavelAgain => "Dip the navel again".to_owned(),
        Task::GetUp => "Not seen up".to_owned(),
        Task::FirstMilk { hold: true, .. } => "Not seen to suck, but *no milk yet*".to_owned(),
        Task::FirstMilk { last_call: false, hold: false, check: false } => "Not seen to suck".to_owned(),
        Task::FirstMilk { last_call: false, hold: false, check: true } => {
            "Not seen to suck: *its temperature first*, then feed it".to_owned()
        }
        Task::FirstMilk { last_call: true, hold: false, .. } => {
            "No first milk yet: *last call*. Feed it or call your vet".to_owned()
        }
        Task::Feed { hold: true, .. } => "Milk is due, but *no milk yet*".to_owned(),
        Task::Feed { volume: Some(next), weigh: true, .. } => {
            format!("Weigh it, then feed. *{}* goes by an old weight", volume(next, system))
        }
        Task::Feed { volume: Some(next), .. } => format!("Feed *{}*", volume(next, system)),
        Task::Feed { volume: None, .. } => "Feed: weigh it for the volume".to_owned(),
        Task::DayTotal { hold: true, .. } => "First day’s milk is short, but *no milk yet*".to_owned(),
        Task::DayTotal { given, want, .. } => {
            format!("First day’s milk: *{}* of {}", volume(given, system), volume(want, system))
        }
        Task::Weigh { for_feeds: false } => "Weigh it".to_owned(),
        Task::Weigh { for_feeds: true } => "Weigh it: its feeds go by an old weight".to_owned(),
        Task::ScoreVigor => "Score its vigor".to_owned(),
        Task::TakeTemperature => "Take its temperature again".to_owned(),
        Task::CallVet => "*Call your vet*".to_owned(),
        Task::Danger(danger) => danger::headline(&danger, system),
        Task::Hollow { hold: true, .. } => "Belly hollow, but *no milk yet*".to_owned(),
        Task::Hollow { check: true, .. } => "Belly hollow: *its temperature first*, then feed it".to_owned(),
        Task::Hollow { .. } => "Belly hollow: *feed it*, and see why".to_owned(),
        Task::Look => "Look again".to_owned(),
        Task::LongRestless => "Restless too long: *examine her or call your vet*".to_owned(),
        Task::HandCheck { step_in: false } => "If nothing shows: *clean hand check*".to_owned(),
        Task::HandCheck { step_in: true } => "Still nothing shows: *step in, or call your vet*".to_owned(),
        Task::Progress => "Come no further: *clean hand check*".to_owned(),
        Task::NeckTight => "Neck of the womb tight: *call your vet*".to_owned(),
        Task::PutRight { trouble: Trouble::Lies(lie) } => match needs(lie) {
            Needs::Vet => format!("{}: *call your vet*", labor::lie(lie)),
            Needs::Help | Needs::Nothing => format!("{}: put right, or *call your vet*", labor::lie(lie)),
        },
        Task::PutRight { trouble: Trouble::Shows(part) } => {
            format!("{}: *put right now*, or call your vet", labor::part(part))
        }
        Task::PutRight { trouble: Trouble::Helped } => {
            "Being helped: born soon, or *call your vet*".to_owned()
        }
        Task::NextLamb { check: false } => "Another lamb?".to_owned(),
        Task::NextLamb { check: true } => "Another lamb? *Clean hand check*".to_owned(),
        Task::Afterbirth { vet: false, hanging: true } => {
            "Afterbirth hangs: *never pull it*. Passed?".to_owned()
        }
        Task::Afterbirth { vet: true, hanging: true } => {
            "Afterbirth still hangs: *call your vet*. Never pull it".to_owned()
        }
        Task::Afterbirth { vet: false, hanging: false } => "Afterbirth passed? Never pull it".to_owned(),
        Task::Afterbirth { vet: true, hanging: false } => {
            "Afterbirth not seen: *call your vet*. Never pull it".to_owned()
        }
        Task::Ring { tail, castration, too_late } => ring(tail, castration, too_late).to_owned(),
        Task::LetOut => "May go out of the pen".to_owned(),
        Task::WeaningCheck { ready: true } => "Can be weaned".to_owned(),
        Task::WeaningCheck { ready: false } => "Ready to wean? Weigh it, note its solids".to_owned(),
    }
}

/// Returns the word on the button that discharges it.
pub fn done(task: Task, system: System) -> String {
    match task {
        Task::DipNavel => "Dipped".to_owned(),
        Task::DipNavelAgain => "Dipped again".to_owned(),
        Task::GetUp => "Up".to_owned(),
        Task::FirstMilk { hold: true, .. }
        | Task::Feed { hold: true, .. }
        | Task::DayTotal { hold: true, .. }
        | Task::Hollow { hold: true, .. }
        | Task::Danger(_) => danger::STEPS.to_owned(),
        Task::FirstMilk { check: true, .. } | Task::Hollow { check: true, .. } => "Temperature".to_owned(),
        Task::FirstMilk { .. } => "Sucked".to_owned(),
        Task::Feed { volume: Some(next), .. } => format!("Fed {}", volume(next, system)),
        Task::Feed { volume: None, .. } | Task::DayTotal { .. } => "Feed".to_owned(),
        Task::Weigh { .. } => "Weigh".to_owned(),
        Task::ScoreVigor => "Score".to_owned(),
        Task::TakeTemperature => "Temperature".to_owned(),
        Task::CallVet => "Vet called".to_owned(),
        Task::Hollow { .. } => "Feed".to_owned(),
        Task::Look => "All well".to_owned(),
        Task::LongRestless | Task::HandCheck { .. } | Task::Progress => "See to her".to_owned(),
        Task::NeckTight | Task::PutRight { .. } => "Vet called".to_owned(),
        Task::NextLamb { .. } => "All born".to_owned(),
        Task::Afterbirth { .. } => "Passed".to_owned(),
        Task::Ring { too_late: true, .. } => "Vet called".to_owned(),
        Task::Ring { tail: true, castration: true, .. } => "Rings".to_owned(),
        Task::Ring { .. } => "Ringed".to_owned(),
        Task::LetOut => "Out".to_owned(),
        Task::WeaningCheck { ready: true } => "Weaned".to_owned(),
        Task::WeaningCheck { ready: false } => "Check".to_owned(),
    }
}

const fn ring(tail: bool, castration: bool, too_late: bool) -> &'static str {
    match (too_late, tail, castration) {
        (true, _, _) => "Too late for a ring: *ask your vet*. Check local rules",
        (false, true, true) => "Tail and castration rings, if you ring. Check local rules",
        (false, false, true) => "Castration ring, if you ring. Check local rules",
        (false, _, false) => "Tail ring, if you ring. Check local rules",
    }
}

/// Returns the heading over why an ewe's duty is due.
pub const fn kind_title(kind: DutyKind) -> &'static str {
    match kind {
        DutyKind::LongRestless => "Restless too long",
        DutyKind::HandCheck => "Clean hand check",
        DutyKind::Progress => "No progress",
        DutyKind::NeckTight => "Neck of the womb tight",
        DutyKind::PutRight => "Putting the lamb right",
        DutyKind::NextLamb => "The next lamb",
        DutyKind::Afterbirth => "The afterbirth",
        DutyKind::LetOut => "Out of the pen",
        DutyKind::DipNavel
        | DutyKind::DipNavelAgain
        | DutyKind::GetUp
        | DutyKind::FirstMilk
        | DutyKind::Feed
        | DutyKind::DayTotal
        | DutyKind::Weigh
        | DutyKind::ScoreVigor
        | DutyKind::TakeTemperature
        | DutyKind::CallVet
        | DutyKind::Failing
        | DutyKind::Hollow
        | DutyKind::Ring
        | DutyKind::WeaningCheck
        | DutyKind::Look => "A look",
    }
}

/// Returns what a duty is called when it is put off.
pub const fn kind(kind: DutyKind) -> &'static str {
    match kind {
        DutyKind::DipNavel => "navel",
        DutyKind::DipNavelAgain => "navel again",
        DutyKind::GetUp => "up",
        DutyKind::FirstMilk => "first milk",
        DutyKind::Feed => "feed",
        DutyKind::DayTotal => "first day’s milk",
        DutyKind::Weigh => "weigh",
        DutyKind::ScoreVigor => "vigor",
        DutyKind::TakeTemperature => "temperature",
        DutyKind::CallVet => "vet",
        DutyKind::Failing => "failing",
        DutyKind::Hollow => "hollow belly",
        DutyKind::Ring => "ring",
        DutyKind::WeaningCheck => "weaning",
        DutyKind::Look => "look",
        DutyKind::LongRestless => "restless long",
        DutyKind::HandCheck => "hand check",
        DutyKind::Progress => "progress",
        DutyKind::NeckTight => "neck tight",
        DutyKind::PutRight => "put right",
        DutyKind::NextLamb => "next lamb",
        DutyKind::Afterbirth => "afterbirth",
        DutyKind::LetOut => "out of the pen",
    }
}

/// Returns how urgent it is: "due in 12 min", "due now", "24 min late".
pub fn when(duty: &Duty, now: Moment) -> String {
    match duty.state(now) {
        State::Coming if duty.comes().since(now) < TimeDelta::hours(3) => {
            format!("in {}", span(duty.comes().since(now)))
        }
        State::Coming => format!("at {}", day_and_clock(duty.comes(), now)),
        State::Now if matches!(duty.task, Task::FirstMilk { .. }) => "help it now".to_owned(),
        State::Now => format!("due {}", day_and_clock(duty.due, now)),
        State::Late => format!("*late*: was due {}", day_and_clock(duty.due, now)),
        State::Danger => format!("since {}", day_and_clock(duty.since, now)),
    }
}

/// Returns an age: "1 h 24 min old".
pub fn age(age: TimeDelta) -> String {
    if age < TimeDelta::minutes(1) { "just born".to_owned() } else { format!("{} old", span(age)) }
}

/// Says that nothing is due or coming.
pub const NOTHING: &str = "Nothing due";

/// Returns how many are late.
pub fn late(count: usize) -> String {
    format!("{count} late")
}

/// Returns how many are due.
pub fn now(count: usize) -> String {
    format!("{count} now")
}

/// Returns how many are coming.
pub fn coming(count: usize) -> String {
    format!("{count} coming")
}

/// Returns what stands behind the time left: "left for first milk · 1 h 24 min old".
pub fn left(age: &str) -> String {
    format!("left for first milk · {age}")
}

/// Returns what stands behind the time left when a newborn was seen to suck: "left for first milk · sucked 05:27".
pub fn left_sucked(sucked: Moment) -> String {
    format!("left for first milk · sucked {}", clock(sucked))
}

/// Returns what stands behind the time left when a newborn was fed by hand last: "left for first milk · fed 05:27".
pub fn left_fed(fed: Moment) -> String {
    format!("left for first milk · fed {}", clock(fed))
}

/// Returns what stands behind its age when a newborn has had nothing and should have: "without milk · 22 h 58 min left".
pub fn no_milk(left: &str) -> String {
    format!("without milk · {left} left for it")
}

/// Leads to feeding by hand.
pub const FEED_IT: &str = "Feed it";
/// Leads to the pens.
pub const PENS: &str = "Pens";
/// Names the choice of order.
pub const ORDER: &str = "Order";
/// By what presses.
pub const BY_URGENCY: &str = "By urgency";
/// By pen and barn.
pub const BY_PLACE: &str = "By place";
/// Those in no pen.
pub const BARN: &str = "Barn";
/// Heads the ewes that are near.
pub const TONIGHT: &str = "May lamb tonight";
/// A round with the bottle.
pub const ROUND: &str = "Bottle round";
/// Puts a duty off.
pub const LATER: &str = "later…";
/// Asks until when.
pub const LATER_ASK: &str = "Until when can it wait?";

/// Returns the button that leads to feeding: "Feed 195 ml".
pub fn feed_it(volume: &str) -> String {
    format!("Feed {volume}")
}

/// Returns whom a round serves: "3 lambs, from 03:40".
pub fn round(lambs: usize, due: &str) -> String {
    format!("*{lambs} lambs*, from {due}")
}

/// Returns how long a duty may wait at most.
pub fn later_until(most: &str, none: bool) -> String {
    if none {
        format!("It cannot wait: its limit is {most}.")
    } else {
        format!("At most until {most}. It stays on the Watch and comes back by itself.")
    }
}

/// Returns a vigor score with its scale, so that a high number is never taken for a good one.
pub fn vigor(scored: &Scored) -> String {
    let score = scored.score;
    match (scored.scale, score) {
        (VigorScale::FourGrade, 1) => "grade 1, lively".to_owned(),
        (VigorScale::FourGrade, 4..) => format!("grade {score}, *failing*"),
        (VigorScale::FourGrade, _) => format!("grade {score} (1 best)"),
        (VigorScale::TenPoint, _) => format!("{score} of 10 points"),
        (VigorScale::EightPoint, _) => format!("{score} of 8 points (adapted)"),
    }
}

/// Labels the volume of one feed.
pub const A_FEED: &str = "next feed";

/// Labels the instant by which a volume is wanted.
pub fn by(at: &str) -> String {
    format!("in all by {at}")
}

/// Returns what was given against what is wanted: "190 of 390 ml".
pub fn of(given: &str, wanted: &str) -> String {
    format!("*{given}* of {wanted}")
}

/// Returns how a newborn with nothing due is doing.
pub fn well(lamb: &yeanling_core::flock::Lamb, now: Moment) -> String {
    match (lamb.sucked.last(), lamb.feeds.last()) {
        (Some(sucked), _) => format!("Sucked {}", day_and_clock(*sucked, now)),
        (None, Some(feed)) => format!("Fed {}", day_and_clock(feed.at, now)),
        (None, None) => String::new(),
    }
}

/// Tells the ribbon of a duty in words.
pub fn ribbon(since: &str, due: &str, says: &str) -> String {
    format!("Counted from {since}, due {due}: {}.", says.replace('*', ""))
}
