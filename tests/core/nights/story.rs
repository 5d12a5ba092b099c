//! A night told in words, for whoever reads that a law was broken.

use yeanling_core::book::{Animal, Care, Event, EweId, LambId, Way};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;
use yeanling_core::watch::Duty;

/// The lines of a story; nothing is written unless it is asked for.
#[derive(Default)]
pub(super) struct Story {
    lines: Option<Vec<String>>,
}

type Names<'a> = (&'a [EweId], &'a [LambId]);

impl Story {
    pub(super) fn written() -> Self {
        Self { lines: Some(Vec::new()) }
    }

    pub(super) fn told(self) -> String {
        self.lines.unwrap_or_default().join("\n")
    }

    pub(super) fn tell(&mut self, now: Moment, line: &str) {
        if let Some(lines) = &mut self.lines {
            lines.push(format!("{}: {line}", clock(now)));
        }
    }

    pub(super) fn noted(&mut self, names: Names<'_>, now: Moment, at: Moment, event: &Event) {
        if self.lines.is_some() {
            let ago = now.since(at).num_minutes();
            let ago = if ago == 0 { String::new() } else { format!(", {ago} min ago") };
            self.tell(now, &format!("noted: {}{ago}", words(names, event)));
        }
    }

    /// Tells the most urgent duties of the animal that an event is about; of all, where it is about none.
    pub(super) fn watch(
        &mut self,
        flock: &Flock,
        names: Names<'_>,
        now: Moment,
        duties: &[Duty],
        event: &Event,
    ) {
        if self.lines.is_none() {
            return;
        }
        let about: Vec<Animal> = event.animals().map(|animal| flock.canonical(animal)).collect();
        let of = |duty: &&Duty| about.is_empty() || about.contains(&duty.subject());
        let said: Vec<String> = duties.iter().filter(of).take(3).map(|duty| asks(names, now, duty)).collect();
        let said = if said.is_empty() { "nothing".to_owned() } else { said.join("; ") };
        self.tell(now, &format!("watch: {said}"));
    }
}

/// The day of the night and the wall clock, such as `0 03:10`.
pub(super) fn clock(at: Moment) -> String {
    let local = at.local();
    format!("{} {}", local.format("%d"), local.format("%H:%M:%S")).trim_end_matches(":00").to_owned()
}

/// One duty: how urgent, for whom, what, and the instants that it has.
pub(super) fn asks(names: Names<'_>, now: Moment, duty: &Duty) -> String {
    let late = duty.danger.map_or_else(|| clock(duty.late), |danger| format!("in danger {}", clock(danger)));
    let put_off = duty.put_off.map_or_else(String::new, |until| format!(", put off to {}", clock(until)));
    let what = format!("{:?}", duty.state(now)).to_lowercase();
    let task = duty.task.kind().to_string().replace('-', " ");
    format!(
        "{what}, {task} of {} (due {}, late {late}{put_off})",
        name(names, duty.subject()),
        clock(duty.due)
    )
}

fn name(names: Names<'_>, animal: Animal) -> String {
    let place = |place: Option<usize>| place.map_or_else(|| "?".to_owned(), |place| (place + 1).to_string());
    match animal {
        Animal::Ewe(ewe) => format!("ewe {}", place(names.0.iter().position(|other| *other == ewe))),
        Animal::Lamb(lamb) => format!("lamb {}", place(names.1.iter().position(|other| *other == lamb))),
    }
}

/// One fact.
pub(super) fn words(names: Names<'_>, event: &Event) -> String {
    let who = event.animals().next().map_or_else(String::new, |animal| name(names, animal));
    let what = match event {
        Event::LambBorn { alive: true, .. } => "a lamb born".to_owned(),
        Event::LambBorn { alive: false, .. } => "a lamb born dead".to_owned(),
        Event::SignSeen { sign, .. } => format!("{sign:?}").to_lowercase(),
        Event::WaterBagSeen { .. } => "water bag".to_owned(),
        Event::StrainingSeen { .. } => "straining".to_owned(),
        Event::PartShowing { part, .. } => format!("shows {part:?}"),
        Event::HandChecked { found, .. } => format!("a hand found {found:?}"),
        Event::HelpBegun { .. } => "help begun".to_owned(),
        Event::VetCalled { .. } => "vet called".to_owned(),
        Event::LookedAt { .. } => "looked at".to_owned(),
        Event::NotLambing { .. } => "not lambing".to_owned(),
        Event::AfterbirthPassed { .. } => "afterbirth passed".to_owned(),
        Event::Scanned { lambs, .. } => format!("scanned with {lambs}"),
        Event::TemperatureTaken { temperature, .. } => format!("{:.1} °C", temperature.as_celsius()),
        Event::SwallowTried { able: true, .. } => "head up, swallows".to_owned(),
        Event::SwallowTried { able: false, .. } => "does not swallow".to_owned(),
        Event::VigorScored { score, .. } => format!("vigor grade {score}"),
        Event::BellyFelt { belly, .. } => format!("belly {belly:?}").to_lowercase(),
        Event::Weighed { mass, .. } => format!("{:.1} kg", mass.as_kilograms()),
        Event::Fed { volume, way, .. } => {
            let way = if *way == Way::Tube { "tube" } else { "bottle" };
            format!("fed {:.0} ml by {way}", volume.as_milliliters())
        }
        Event::Sucked { .. } => "sucked".to_owned(),
        Event::Stood { .. } => "stood".to_owned(),
        Event::NavelDipped { .. } => "navel dipped".to_owned(),
        Event::Warmed { .. } => "warming begun".to_owned(),
        Event::AllBorn { .. } => "all born".to_owned(),
        Event::Died { .. } => "died".to_owned(),
        Event::PutOff { duty, until, .. } => format!("put off {duty} to {}", clock(*until)),
        Event::Care(Care::VetSaid { said, .. }) => format!("the vet: {said:?}"),
        Event::Care(Care::MouthFelt { mouth, suck, .. }) => format!("mouth {mouth:?}, suck {suck:?}"),
        Event::Care(Care::PutRight { .. }) => "put right".to_owned(),
        Event::Care(Care::GlucoseGiven { .. }) => "glucose given".to_owned(),
        Event::Care(Care::FoundBorn { .. }) => "found already born".to_owned(),
        Event::Care(Care::AfterbirthAwaited { seen, .. }) => format!("afterbirth {seen:?}"),
        Event::Deleted { .. } => "an entry taken back".to_owned(),
        Event::Restored { .. } => "an entry brought back".to_owned(),
        Event::Amended { event, at, .. } => format!("changed to {} at {}", words(names, event), clock(*at)),
        other => format!("{other:?}"),
    };
    if who.is_empty() { what } else { format!("{who}: {what}") }
}
