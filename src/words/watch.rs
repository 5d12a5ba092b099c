//! What the Watch says of each duty.

use yeanling_core::book::DutyKind;
use yeanling_core::reckon::labor::{Needs, needs};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{BeforeMilk, Duty, EweTask, Hold, LambTask, State, Task, Trouble};

use super::common::{capital, day_and_clock, span, volume};
use super::{danger, illness, labor};

/// Starts a lambing.
pub const LAMBING: &str = "Lambing";
/// Heads what the season asks for.
pub const THIS_WEEK: &str = "This week";
/// The ram was taken out.
pub const RAM_IS_OUT: &str = "He is out";
/// The booster was given.
pub const GIVEN: &str = "Given";
/// She gets so much from now on.
pub const FED_SO: &str = "Feeding this now";
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
pub const EMPTY: &str = "Nothing to watch yet. When a ewe starts, tap *Lambing*: Yeanling watches the clock for her and her lambs. It works in the barn with no signal. What you note stays on this phone.";
/// Says that nothing is due.
pub const QUIET: &str = "Nothing is due. Ewes at work, newborns and bottle lambs show here.";
/// Offers the sample flock.
pub const SET_UP: &str = "Set up your farm";
/// Opens the sample flock.
pub const LOOK_ROUND: &str = "Try a sample flock";

/// Returns what is to be done, short, for a row.
pub fn task(task: Task, system: System) -> String {
    match task {
        Task::Ewe(_, task) => ewe_task(task),
        Task::Lamb(_, task) => lamb_task(task, system),
    }
}

fn ewe_task(task: EweTask) -> String {
    match task {
        EweTask::Look => "Look again".to_owned(),
        EweTask::LongRestless => "Restless too long: *examine her or call your vet*".to_owned(),
        EweTask::HandCheck { step_in: false } => "If nothing shows: *check inside*".to_owned(),
        EweTask::HandCheck { step_in: true } => "Still nothing shows: *assist, or call your vet*".to_owned(),
        EweTask::Progress => "No progress: *check inside*".to_owned(),
        EweTask::CervixClosed => "Cervix not open: *call your vet*".to_owned(),
        EweTask::PutRight { trouble: Trouble::Lies(lie) } => match needs(lie) {
            Needs::Vet => format!("{}: *call your vet*", labor::lie(lie)),
            Needs::Help | Needs::Nothing => format!("{}: put right, or *call your vet*", labor::lie(lie)),
        },
        EweTask::PutRight { trouble: Trouble::Shows(part) } => {
            format!("{}: *put right now*, or call your vet", labor::part(part))
        }
        EweTask::PutRight { trouble: Trouble::Helped } => {
            "Being helped: born soon, or *call your vet*".to_owned()
        }
        EweTask::NextLamb { check: false } => "Another lamb?".to_owned(),
        EweTask::NextLamb { check: true } => "Another lamb? *Check inside*".to_owned(),
        EweTask::Afterbirth { vet: false, hanging: true } => {
            "Afterbirth hangs: *never pull it*. Passed?".to_owned()
        }
        EweTask::Afterbirth { vet: true, hanging: true } => {
            "Afterbirth still hangs: *call your vet*. Never pull it".to_owned()
        }
        EweTask::Afterbirth { vet: false, hanging: false } => AFTERBIRTH.to_owned(),
        // Nobody said how she is: that is asked before a vet is called.
        EweTask::Afterbirth { vet: true, hanging: false } => AFTERBIRTH_VET.to_owned(),
        EweTask::Udder { again: false } => "Draw *both teats*: milk, warm, soft?".to_owned(),
        EweTask::Udder { again: true } => "No milk before: *draw the teats again*".to_owned(),
        EweTask::Settled => "Up, eating, drinking? Feed and water before her".to_owned(),
        EweTask::LetOut => "Ready to turn out".to_owned(),
        EweTask::Ill { now, row } => illness::ewe_task(now, row),
        EweTask::IllLook { check, row } => {
            illness::look_task(check, row.map(|row| illness::ewe::row(row).name), illness::ewe::NOT_RIGHT)
        }
    }
}

fn lamb_task(task: LambTask, system: System) -> String {
    match task {
        LambTask::DipNavel => "Dip the navel; look at both eyes".to_owned(),
        LambTask::DipNavelAgain => "Dip the navel again".to_owned(),
        LambTask::GetUp => "Not seen up".to_owned(),
        LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) } => {
            "No colostrum by its deadline: *its temperature first*, then feed it or call your vet".to_owned()
        }
        LambTask::FirstMilk { before: Some(before), .. } => waits("Not seen to nurse", before),
        LambTask::FirstMilk { last_call: false, before: None } => "Not seen to nurse".to_owned(),
        LambTask::FirstMilk { last_call: true, before: None } => {
            "No colostrum by its deadline: *feed it* or call your vet".to_owned()
        }
        LambTask::Feed { volume: Some(next), before: Some(BeforeMilk::Weigh) } => {
            format!("Weigh it, then feed. *{}* goes by an old weight", volume(next, system))
        }
        LambTask::Feed { before: Some(before), .. } => waits("Milk is due", before),
        LambTask::Feed { volume: Some(next), .. } => format!("Feed *{}*", volume(next, system)),
        LambTask::Feed { volume: None, .. } => "Feed: weigh it for the volume".to_owned(),
        LambTask::DayTotal { before: Some(before), .. } => waits("First day’s feeds are short", before),
        LambTask::DayTotal { given, target, .. } => {
            format!("First day’s feeds: *{}* of {}", volume(given, system), volume(target, system))
        }
        LambTask::Weigh { for_feeds: false } => "Weigh it".to_owned(),
        LambTask::Weigh { for_feeds: true } => "Weigh it: its feeds go by an old weight".to_owned(),
        LambTask::ScoreVigor => "Score its vigor".to_owned(),
        LambTask::TakeTemperature => "Take its temperature again".to_owned(),
        LambTask::CallVet => "*Call your vet*".to_owned(),
        LambTask::Danger(danger) => danger::headline(&danger, system),
        LambTask::Hollow { before: Some(before) } => waits("Belly hollow", before),
        LambTask::Hollow { before: None } => "Belly hollow: *feed it*, and see why".to_owned(),
        LambTask::DamDry { before: Some(before) } => waits("Its ewe has no milk", before),
        LambTask::DamDry { before: None } => "Its ewe has no milk: *feed it* other colostrum".to_owned(),
        LambTask::WeighAgain => "One half of the udder: *weigh it again*".to_owned(),
        LambTask::HardBirth => "Hard birth: bright, nursing, warm?".to_owned(),
        LambTask::Look => "Look again".to_owned(),
        LambTask::Ring { tail, castration, too_late } => ring(tail, castration, too_late).to_owned(),
        LambTask::Ill { now, row } => illness::lamb_task(now, row),
        LambTask::IllLook { check, row } => {
            illness::look_task(check, row.map(|row| illness::lamb::row(row).name), illness::lamb::NOT_RIGHT)
        }
        LambTask::WeaningCheck { ready: true } => "Can be weaned".to_owned(),
        LambTask::WeaningCheck { ready: false } => "Ready to wean? Weigh it, note its solids".to_owned(),
    }
}

/// Heads what is due for a ewe once she has lambed.
pub const AFTER_LAMBING: &str = "After lambing";

/// Returns a need for milk with what comes first.
fn waits(need: &str, before: BeforeMilk) -> String {
    match before {
        BeforeMilk::Hold(_) => format!("{need}, but *no milk yet*"),
        BeforeMilk::Ill | BeforeMilk::Vet => format!("{need}, but *your vet first*"),
        BeforeMilk::Look => format!("{need}: *look at it first*, then feed it"),
        BeforeMilk::Temperature => format!("{need}: *its temperature first*, then feed it"),
        BeforeMilk::Weigh => format!("{need}: *weigh it first*, then feed it"),
    }
}

/// Returns the same for a line of the Watch, where the time stands beside it: what comes first is said first.
pub fn job(task: Task, system: System) -> String {
    match task {
        Task::Lamb(_, LambTask::FirstMilk { last_call: false, before: Some(BeforeMilk::Temperature) }) => {
            "*Temperature first*".to_owned()
        }
        Task::Lamb(_, LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) }) => {
            "No colostrum: *temperature first*, or call your vet".to_owned()
        }
        Task::Lamb(_, LambTask::FirstMilk { last_call: true, before: None }) => {
            "No colostrum: *feed it* or call your vet".to_owned()
        }
        Task::Lamb(_, LambTask::FirstMilk { before: Some(BeforeMilk::Look), .. }) => {
            "Not seen to nurse: *look first*".to_owned()
        }
        Task::Ewe(_, EweTask::HandCheck { step_in: true }) => "*Assist, or call your vet*".to_owned(),
        Task::Lamb(_, LambTask::Hollow { before: Some(BeforeMilk::Temperature) }) => {
            "Belly hollow: *temperature first*".to_owned()
        }
        Task::Lamb(_, LambTask::DamDry { before: Some(BeforeMilk::Temperature) }) => {
            "Its ewe has no milk: *temperature first*".to_owned()
        }
        Task::Lamb(_, LambTask::Feed { before: Some(BeforeMilk::Temperature), .. }) => {
            "Milk is due: *temperature first*".to_owned()
        }
        Task::Lamb(..) | Task::Ewe(..) => self::task(task, system),
    }
}

/// Returns how much more is due for the same animal: "2 more"; nothing when nothing is.
pub fn more(more: usize) -> String {
    if more == 0 { String::new() } else { format!("{more} more") }
}

/// Returns how a job stands: of first milk how long it has been unfed; and what is later than the job.
pub fn need(job: &Duty, later: Option<&Duty>, now: Moment) -> String {
    let state = job.state(now);
    let unfed = matches!(job.task, Task::Lamb(_, LambTask::FirstMilk { .. })) && state > State::Coming;
    let need = match (state, unfed) {
        (State::Late, true) => format!("*late*: {} unfed", span(now.since(job.since))),
        (State::Now | State::Danger, true) => format!("{} unfed", span(now.since(job.since))),
        // In its first minute it is late by nothing yet.
        (State::Late, false) if now.since(job.late) < TimeDelta::minutes(1) => "*late*".to_owned(),
        // Lateness counts from the limit: what may be done for days is not late by them.
        (State::Late, false) => format!("*late* by {}", span(now.since(job.late))),
        (State::Danger | State::Now | State::Coming, _) => when(job, now),
    };
    match later {
        Some(later) => format!("{need} · *late*: {}", kind(later.task.kind())),
        None => need,
    }
}

/// Returns the word on the button that discharges it.
pub fn done(task: Task, system: System) -> String {
    match task {
        Task::Ewe(_, task) => ewe_done(task).to_owned(),
        Task::Lamb(_, task) => lamb_done(task, system),
    }
}

/// Says that a ewe that is restless is well.
pub const ALL_WELL: &str = "All well";

const fn ewe_done(task: EweTask) -> &'static str {
    match task {
        EweTask::Look => ALL_WELL,
        EweTask::LongRestless | EweTask::HandCheck { .. } | EweTask::Progress => "Open lambing",
        EweTask::CervixClosed | EweTask::PutRight { .. } => "Vet called",
        EweTask::NextLamb { .. } => "All born",
        EweTask::Afterbirth { .. } => "Passed",
        EweTask::Udder { .. } => illness::udder::BOTH_SHORT,
        EweTask::Settled => illness::udder::SETTLED,
        EweTask::LetOut => "Out",
        EweTask::Ill { .. } => "What to do",
        EweTask::IllLook { .. } => "Look",
    }
}

fn lamb_done(task: LambTask, system: System) -> String {
    if let Some(before) = task.before_milk() {
        return before_done(before).to_owned();
    }
    match task {
        LambTask::DipNavel => "Dipped".to_owned(),
        LambTask::DipNavelAgain => "Dipped again".to_owned(),
        LambTask::GetUp => "Up".to_owned(),
        LambTask::Danger(_) => danger::STEPS.to_owned(),
        LambTask::TakeTemperature => "Temperature".to_owned(),
        LambTask::FirstMilk { .. } => "Nursed".to_owned(),
        LambTask::Feed { volume: Some(next), .. } => format!("Fed {}", volume(next, system)),
        LambTask::Feed { volume: None, .. }
        | LambTask::DayTotal { .. }
        | LambTask::Hollow { .. }
        | LambTask::DamDry { .. } => "Feed".to_owned(),
        LambTask::Weigh { .. } | LambTask::WeighAgain => "Weigh".to_owned(),
        LambTask::HardBirth => "Bright".to_owned(),
        LambTask::ScoreVigor => "Score".to_owned(),
        LambTask::CallVet | LambTask::Ring { too_late: true, .. } => "Vet called".to_owned(),
        // After a call to the vet a look says that someone looked, and not that all is well.
        LambTask::Look => danger::LOOKED.to_owned(),
        LambTask::Ring { tail: true, castration: true, .. } => "Rings".to_owned(),
        LambTask::Ring { .. } => "Ringed".to_owned(),
        LambTask::Ill { .. } => "What to do".to_owned(),
        LambTask::IllLook { .. } => "Look".to_owned(),
        LambTask::WeaningCheck { ready: true } => "Weaned".to_owned(),
        LambTask::WeaningCheck { ready: false } => "Check".to_owned(),
    }
}

/// Returns the word on the button that leads to what comes before milk.
pub const fn before_done(before: BeforeMilk) -> &'static str {
    match before {
        BeforeMilk::Hold(Hold::Belly { .. } | Hold::Mouth { .. }) | BeforeMilk::Ill => illness::STEPS,
        BeforeMilk::Hold(_) | BeforeMilk::Vet => danger::STEPS,
        BeforeMilk::Look => "Look",
        BeforeMilk::Temperature => "Temperature",
        BeforeMilk::Weigh => "Weigh",
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

/// Returns the heading over why a ewe's task is due.
pub const fn why_title(task: EweTask) -> &'static str {
    match task {
        EweTask::Look => "A look",
        EweTask::LongRestless => "Restless too long",
        EweTask::HandCheck { .. } => "Internal check",
        EweTask::Progress => "No progress",
        EweTask::CervixClosed => "Cervix not open",
        EweTask::PutRight { .. } => "Putting the lamb right",
        EweTask::NextLamb { .. } => "The next lamb",
        EweTask::Afterbirth { .. } => "The afterbirth",
        EweTask::Udder { .. } => "The udder check",
        EweTask::Settled => "After lambing",
        EweTask::LetOut => "Out of the pen",
        EweTask::Ill { .. } => "The vet",
        EweTask::IllLook { .. } => "A look",
    }
}

/// Returns what a duty is called when it is put off.
pub const fn kind(kind: DutyKind) -> &'static str {
    match kind {
        DutyKind::DipNavel => "navel",
        DutyKind::DipNavelAgain => "navel again",
        DutyKind::GetUp => "up",
        DutyKind::FirstMilk => "colostrum",
        DutyKind::Feed => "feed",
        DutyKind::DayTotal => "first day’s feeds",
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
        DutyKind::HandCheck => "internal check",
        DutyKind::Progress => "progress",
        DutyKind::CervixClosed => "cervix not open",
        DutyKind::PutRight => "put right",
        DutyKind::NextLamb => "next lamb",
        DutyKind::Afterbirth => "afterbirth",
        DutyKind::LetOut => "out of the pen",
        DutyKind::Illness => "vet",
        DutyKind::IllnessLook => "look again",
        DutyKind::Udder => "udder",
        DutyKind::Settled => "after lambing",
        DutyKind::DamDry => "ewe has no milk",
        DutyKind::WeighAgain => "weigh again",
        DutyKind::HardBirth => "hard birth",
    }
}

/// Returns how urgent it is: "due in 12 min", "due now", "24 min late".
pub fn when(duty: &Duty, now: Moment) -> String {
    match duty.state(now) {
        State::Coming if duty.comes().since(now) < TimeDelta::hours(3) => {
            format!("in {}", span(duty.comes().since(now)))
        }
        State::Coming => format!("at {}", day_and_clock(duty.comes(), now)),
        State::Now if matches!(duty.task, Task::Lamb(_, LambTask::FirstMilk { .. })) => {
            "help it now".to_owned()
        }
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

/// Returns what stands behind its age when a newborn has had nothing and should have: "no milk yet · window closes in 22 h 58 min".
pub fn no_milk(left: &str) -> String {
    format!("no milk yet · window closes in {left}")
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
pub const LATER: &str = "Snooze";
/// Heads what is due for one animal, on its own page.
pub const DUE: &str = "Due now";
/// Heads a lamb that no ewe rears.
pub const NO_EWE: &str = "No ewe rears it";
/// Says so beside its name.
pub const NO_EWE_SOFT: &str = "no ewe";
/// Notes of several ewes that the afterbirth passed.
pub const ALL_PASSED: &str = "All passed";
/// The same for those who listen.
pub const ALL_PASSED_NAME: &str = "All passed, all of these ewes";
/// It was seen up.
pub const TICK_UP: &str = "up";
/// Its navel was dipped.
pub const TICK_DIPPED: &str = "dipped";
/// It was seen to suck.
pub const TICK_SUCKED: &str = "nursed";
/// It was fed by hand.
pub const TICK_FED: &str = "fed";

/// Returns what was done, a tick each: "✓ up ✓ dipped".
pub fn ticks<'a>(done: impl Iterator<Item = &'a str>) -> String {
    done.map(|word| format!("✓\u{a0}{word}")).collect::<Vec<_>>().join(" ")
}

/// Returns the head of a family's card: "Ewe 3 · Pen 4".
pub fn family(ewe: &str, pen: Option<&str>) -> String {
    pen.map_or_else(|| ewe.to_owned(), |pen| format!("{ewe} · {pen}"))
}

/// Returns whom a ewe rears that another bore: "rears 3c".
pub fn rears(lambs: &[String]) -> String {
    format!("rears {}", lambs.join(", "))
}

/// Returns how many of her own a ewe rears.
pub fn rears_own(lambs: usize) -> String {
    match lambs {
        0 => String::new(),
        1 => "single".to_owned(),
        2 => "twins".to_owned(),
        3 => "triplets".to_owned(),
        more => format!("{more} lambs"),
    }
}

/// Returns who rears a lamb of another: "with Ewe 12".
pub fn with_ewe(ewe: &str) -> String {
    format!("with {ewe}")
}

/// Heads the ewes of whom the same is asked.
pub fn afterbirths(vet: bool, ewes: usize) -> String {
    let asks = if vet { AFTERBIRTH_VET } else { AFTERBIRTH };
    format!("{ewes} ewes: {}", asks.replace('*', ""))
}

const AFTERBIRTH: &str = "Afterbirth passed? Never pull it";
const AFTERBIRTH_VET: &str = "Afterbirth not seen. Bright and eating? If not, *call your vet*. Never pull it";
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
        format!("Snooze to {most} at the latest. You will be reminded.")
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
        (Some(sucked), _) => format!("Nursed {}", day_and_clock(*sucked, now)),
        (None, Some(feed)) => format!("Fed {}", day_and_clock(feed.at, now)),
        (None, None) => String::new(),
    }
}

/// Tells the ribbon of a duty in words.
pub fn ribbon(since: &str, due: &str, says: &str) -> String {
    format!("Counted from {since}, due {due}. {}.", capital(&says.replace('*', "")))
}
