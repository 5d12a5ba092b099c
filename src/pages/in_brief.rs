//! An animal as a row of a list and as a tile of a grid: what tells it from others, and how it is.
//!
//! A row says what a shepherd asks of it: breed, age, when due or when lambed, condition, withdrawal. A tile has room for a
//! word or two: of all that is so, what presses most.

use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

use yeanling_core::book::{Animal, EweId, LambId};
use yeanling_core::flock::{Ewe, Labor, Lamb, Litter, SIGNS_FOR};
use yeanling_core::reckon::season::ewe::NoForecast;
use yeanling_core::seasons::{APART, overdue};
use yeanling_core::sort_small::Gather;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{
    BeforeMilk, Duty, EweTask, Hold, LambTask, Product, State as Due, Task, withdrawal,
};
use yeanling_words::{
    animals, flock as flock_words, frame, in_brief as words, labor, lamb as lamb_words, life, watch,
};

use crate::block::{Row, State, Tile};
use crate::page::key_of;
use crate::view::View;
use crate::{Action, Key, Screen};

/// What weighs more than this is told when it is late, and does not shout (ours), as on the Watch.
const SOFT_OVER: u8 = 1;

/// How the animals of a flock are, as told in lists.
pub(crate) struct InBrief<'a> {
    view: &'a View<'a>,
    /// What presses most for each.
    due: BTreeMap<Animal, &'a Duty>,
    overdue: OnceCell<BTreeSet<EweId>>,
}

/// A word or two, and the mark beside them.
type Said = (String, Option<State>);

impl<'a> InBrief<'a> {
    /// Returns how all animals are now.
    pub(crate) fn of(view: &'a View<'a>) -> Self {
        let mut due: BTreeMap<Animal, &Duty> = BTreeMap::new();
        for duty in view.duties.iter().filter(|duty| duty.state(view.now) > Due::Coming) {
            let first = due.entry(duty.subject()).or_insert(duty);
            // As on the Watch: a danger, else what weighs most.
            let danger = first.state(view.now) == Due::Danger;
            if !danger && duty.task.weight() < first.task.weight() {
                *first = duty;
            }
        }
        Self { view, due, overdue: OnceCell::new() }
    }

    /// Returns a ewe as a row: "Ewe 101 · Dorper · 6 y · due 16 Mar · BCS 3 · withdrawal".
    pub(crate) fn ewe_row(&self, id: EweId) -> Option<(Key, Row)> {
        let ewe = self.view.flock.ewes.get(&id)?;
        let told = if ewe.lives() { self.ewe_living(ewe) } else { gone_ewe(ewe).into_iter().collect() };
        let row = Row::new(animals::ewe(ewe)).kind(told.join(" · ")).to(Screen::Ewe(id));
        Some((key_of("ewe", id.entry()), row))
    }

    /// Returns a ram as a row: "Ram R7 · Dorper · 4 y".
    pub(crate) fn ram_row(&self, id: EweId) -> Option<(Key, Row)> {
        let ram = self.view.flock.rams.get(&id)?;
        let today = self.view.now.local().date();
        let age = self.view.flock.ewe_born(ram.id).and_then(|born| words::ewe_age(born, today));
        let held = self.is_held(Animal::Ewe(ram.id)).then(|| words::WITHDRAWAL.to_owned());
        let told: Vec<String> = match gone_ewe(ram) {
            Some(gone) => vec![gone],
            None => [ram.breed.clone(), age, held].into_iter().flatten().collect(),
        };
        let row = Row::new(animals::ewe(ram)).kind(told.join(" · ")).to(Screen::Ewe(id));
        Some((key_of("ram", id.entry()), row))
    }

    fn ewe_living(&self, ewe: &Ewe) -> Vec<String> {
        let today = self.view.now.local().date();
        let age = self.view.flock.ewe_born(ewe.id).and_then(|born| words::ewe_age(born, today));
        let season = match self.lambed(ewe) {
            Some(litter) => {
                Some(words::lambed_on(litter.began.local().date(), self.alive(litter), litter.lambs.len()))
            }
            None => self.expected(ewe).map(|(said, _)| said),
        };
        let score = ewe.condition().map(|score| words::score(score.score));
        let held = self.is_held(Animal::Ewe(ewe.id)).then(|| words::WITHDRAWAL.to_owned());
        let breed = ewe.breed.clone();
        [breed, age, season, score, held].into_iter().flatten().collect()
    }

    /// Returns a ewe as a tile; what a press on it does is `does`. Of who is picked the number alone is read.
    pub(crate) fn ewe_tile(&self, ewe: &Ewe, name: String, does: Action) -> (Key, Tile) {
        let number = ewe.tag.clone().unwrap_or_else(|| name.clone());
        let (says, state, past) = match gone_ewe(ewe) {
            Some(gone) => (gone, None, true),
            None => self.ewe_now(ewe),
        };
        (key_of("tile", ewe.id.entry()), Tile { name, number, says, state, past, here: false, does })
    }

    /// What presses most, what was seen of her, that she has lambed, or when she is due; and whether that is past.
    fn ewe_now(&self, ewe: &Ewe) -> (String, Option<State>, bool) {
        if let Some(duty) = self.due.get(&Animal::Ewe(ewe.id)) {
            return (self.ewe_due(ewe, duty), Some(self.mark(duty)), false);
        }
        if let Some(sign) = self.seen(ewe) {
            return (sign, Some(State::Coming), false);
        }
        if let Some(litter) = self.lambed(ewe) {
            return (words::lambed(self.alive(litter), litter.lambs.len()), Some(State::Done), true);
        }
        let (says, state) = self.expected(ewe).unwrap_or_default();
        (says, state, false)
    }

    fn ewe_due(&self, ewe: &Ewe, duty: &Duty) -> String {
        match duty.task {
            Task::Ewe(_, EweTask::Ill { .. } | EweTask::IllLook { .. }) => words::NOT_RIGHT.to_owned(),
            Task::Ewe(_, EweTask::Afterbirth { .. }) => words::AFTERBIRTH.to_owned(),
            Task::Ewe(_, EweTask::LetOut) => words::TURN_OUT.to_owned(),
            Task::Ewe(_, EweTask::Udder { .. } | EweTask::Settled) => {
                watch::kind(duty.task.kind()).to_owned()
            }
            Task::Ewe(
                _,
                EweTask::Look
                | EweTask::LongRestless
                | EweTask::HandCheck { .. }
                | EweTask::Progress
                | EweTask::CervixClosed
                | EweTask::PutRight { .. }
                | EweTask::NextLamb { .. },
            )
            | Task::Lamb(..) => {
                let runs = ewe.labor.as_ref().and_then(Labor::further);
                let born = self.lambed(ewe).filter(|litter| litter.goes_on(self.view.now));
                let since = runs.or(born.map(|litter| litter.began));
                match since {
                    Some(since) => words::lambing(self.view.now.since(since)),
                    None => self.seen(ewe).unwrap_or_else(|| watch::kind(duty.task.kind()).to_owned()),
                }
            }
        }
    }

    /// The sign of her that was seen last, as long as it says something of tonight.
    fn seen(&self, ewe: &Ewe) -> Option<String> {
        let labor = ewe.labor.as_ref()?;
        if let Some(since) = labor.further() {
            return Some(words::lambing(self.view.now.since(since)));
        }
        let (_, sign) = labor.signs.last().filter(|(at, _)| self.view.now.since(*at) < SIGNS_FOR)?;
        Some(labor::sign(*sign).to_lowercase())
    }

    /// Her litter of this season.
    fn lambed(&self, ewe: &Ewe) -> Option<&'a Litter> {
        let litter = self.view.flock.litters_of(ewe.id).into_iter().next()?;
        (self.view.now.since(litter.began) <= APART).then_some(litter)
    }

    fn alive(&self, litter: &Litter) -> usize {
        let lambs = litter.lambs.iter().filter_map(|lamb| self.view.flock.lamb(*lamb));
        lambs.filter(|lamb| lamb.is_alive()).count()
    }

    /// When she is due, that she is overdue, or that she was scanned empty.
    fn expected(&self, ewe: &Ewe) -> Option<Said> {
        match self.view.lambing_forecasts.of(ewe.id).map(|awaited| &awaited.lambing_forecast) {
            Some(Ok(forecast)) => Some((words::due(forecast.likely), None)),
            Some(Err(NoForecast::ScannedEmpty { .. })) => Some((words::EMPTY.to_owned(), None)),
            Some(Err(NoForecast::Passed { .. })) | None => {
                let passed = self.overdue.get_or_init(|| {
                    let all = overdue(self.view.flock, &self.view.lambing_forecasts, self.view.now);
                    all.into_iter().map(|one| one.ewe).gathered()
                });
                passed.contains(&ewe.id).then(|| (words::OVERDUE.to_owned(), Some(State::Now)))
            }
            Some(Err(_)) => None,
        }
    }

    fn is_held(&self, animal: Animal) -> bool {
        let products: &[Product] = match animal {
            Animal::Ewe(_) => &[Product::Meat, Product::Milk],
            Animal::Lamb(_) => &[Product::Meat],
        };
        products.iter().any(|product| withdrawal(self.view.flock, animal, *product, self.view.now).is_some())
    }

    /// Returns a lamb as a row: "14a · ram lamb · 3.9 kg · born 2:14 · 1 of 2 alive · withdrawal".
    pub(crate) fn lamb_row(&self, id: LambId) -> (Key, Row) {
        let told =
            self.view.flock.lamb(id).map(|lamb| (animals::lamb(self.view.flock, lamb), self.lamb_told(lamb)));
        let (name, kind) = told.unwrap_or_else(|| (frame::NOT_HERE.to_owned(), String::new()));
        (key_of("lamb", id.entry()), Row::new(name).kind(kind).to(Screen::Lamb(id)))
    }

    fn lamb_told(&self, lamb: &Lamb) -> String {
        let flock = self.view.flock;
        let kind = animals::lamb_kind(lamb, flock.settings.system);
        let born = lamb_words::born(lamb, self.view.now);
        let litter = flock.litter_of(lamb.id).map(|litter| (self.alive(litter), litter.lambs.len()));
        let losses = litter.filter(|(alive, lambs)| lamb.lives() && alive < lambs);
        let losses = losses.map(|(alive, lambs)| words::of_alive(alive, lambs));
        let with = lamb.foster_dam().map(|ewe| life::with_ewe(&animals::ewe_of(flock, ewe)));
        let held = lamb.lives() && self.is_held(Animal::Lamb(lamb.id));
        let held = held.then(|| words::WITHDRAWAL.to_owned());
        let all: Vec<String> = [Some(kind), Some(born), losses, with, held].into_iter().flatten().collect();
        all.join(" · ")
    }

    /// Returns a lamb as a tile that leads to its screen.
    pub(crate) fn lamb_tile(&self, lamb: &Lamb) -> (Key, Tile) {
        let name = animals::lamb(self.view.flock, lamb);
        let (says, state, past) = match gone_lamb(lamb) {
            Some(gone) => (gone, None, true),
            None => self.lamb_now(lamb),
        };
        let does = Action::Go(Screen::Lamb(lamb.id));
        (
            key_of("tile", lamb.id.entry()),
            Tile { number: name.clone(), name, says, state, past, here: false, does },
        )
    }

    fn lamb_now(&self, lamb: &Lamb) -> (String, Option<State>, bool) {
        let now = self.view.now;
        if let Some(duty) = self.due.get(&Animal::Lamb(lamb.id)) {
            return (lamb_due(duty, now), Some(self.mark(duty)), false);
        }
        if lamb.on_bottle() {
            return (words::BOTTLE.to_owned(), Some(State::Coming), false);
        }
        let age = lamb.age(now);
        if age < TimeDelta::hours(24) && !lamb.sucked.is_empty() {
            return (words::SUCKED.to_owned(), Some(State::Done), false);
        }
        (words::lamb_age(age), None, false)
    }

    /// As on the Watch what no life hangs on is late without a red mark.
    fn mark(&self, duty: &Duty) -> State {
        match State::from(duty.state(self.view.now)) {
            State::Late if duty.task.weight() > SOFT_OVER => State::Now,
            state => state,
        }
    }
}

fn lamb_due(duty: &Duty, now: Moment) -> String {
    let Task::Lamb(_, task) = duty.task else { return watch::kind(duty.task.kind()).to_owned() };
    match task {
        LambTask::Danger(_) => words::DANGER.to_owned(),
        LambTask::CallVet => words::VET.to_owned(),
        LambTask::Ill { .. } | LambTask::IllLook { .. } => words::NOT_RIGHT.to_owned(),
        LambTask::FirstMilk { .. } => words::unfed(now.since(duty.since)),
        LambTask::Feed { .. }
        | LambTask::DayTotal { .. }
        | LambTask::Hollow { .. }
        | LambTask::DamDry { .. } => milk(task).to_owned(),
        LambTask::TakeTemperature => words::HOW_WARM.to_owned(),
        LambTask::DipNavel
        | LambTask::DipNavelAgain
        | LambTask::GetUp
        | LambTask::Weigh { .. }
        | LambTask::WeighAgain
        | LambTask::HardBirth
        | LambTask::ScoreVigor
        | LambTask::Look
        | LambTask::Ring { .. }
        | LambTask::WeaningCheck { .. } => watch::kind(task.kind()).to_owned(),
    }
}

/// What a lamb that wants milk is due: what comes first, or the feed.
const fn milk(task: LambTask) -> &'static str {
    match task.before_milk() {
        None | Some(BeforeMilk::Weigh) => words::FEED,
        Some(
            BeforeMilk::Hold(Hold::Belly { .. } | Hold::Mouth { .. }) | BeforeMilk::Ill | BeforeMilk::Look,
        ) => words::NOT_RIGHT,
        Some(BeforeMilk::Hold(_) | BeforeMilk::Temperature) => words::HOW_WARM,
        Some(BeforeMilk::Vet) => words::VET,
    }
}

/// Says how a ewe left, if she did.
fn gone_ewe(ewe: &Ewe) -> Option<String> {
    match (&ewe.died, &ewe.left) {
        (Some(_), _) => Some(words::DIED.to_owned()),
        (None, Some(left)) => Some(flock_words::gone(left.how).to_owned()),
        (None, None) => None,
    }
}

/// Says how a lamb left, if it did.
fn gone_lamb(lamb: &Lamb) -> Option<String> {
    match (&lamb.died, &lamb.left) {
        _ if !lamb.born_alive => Some(words::BORN_DEAD.to_owned()),
        (Some(_), _) => Some(words::DIED.to_owned()),
        (None, Some(left)) => Some(flock_words::gone(left.how).to_owned()),
        (None, None) => None,
    }
}
