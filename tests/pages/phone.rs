//! A phone without a browser: a book, a clock, a screen, what is typed. It presses what a person would, by its words.

use std::cell::Cell;
use std::collections::BTreeMap;
use std::sync::Arc;
use std::time::Duration;

use uuid::Uuid;
use yeanling_core::book::{self, Animal, Book, DeviceId, Entry, EntryId, Event, EweId, LambId};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::seasons::lambing_forecasts;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{self, Rejection};
use yeanling_pages::block::Kind;
use yeanling_pages::everyone::Everyone;
use yeanling_pages::phone::{Outgoing, Phone as Says, Region};
use yeanling_pages::{
    Action, Block, Draft, Effect, Heard, KeyPress, Lazy, Noting, Page, Request, Screen, View, act, enter,
    leave, page,
};

use crate::reach::{Pressable, fields, fields_and_keys, pressables, reached, texts};

/// How long the offer to undo stays.
const UNDO_FOR: TimeDelta = TimeDelta::seconds(8);

thread_local! {
    // Far from those of the made-up flock, which count from nothing too.
    static IDS: Cell<u128> = const { Cell::new(1 << 40) };
}

/// A phone without a browser.
#[derive(Clone)]
pub(crate) struct Phone {
    pub(crate) book: Book,
    pub(crate) flock: Flock,
    pub(crate) now: Moment,
    pub(crate) screen: Screen,
    /// What this phone says of itself.
    pub(crate) says: Says,
    pub(crate) sample: bool,
    /// Whether its screen has room for a list beside an animal.
    pub(crate) wide: bool,
    /// Its id.
    pub(crate) device: DeviceId,
    /// How its region writes.
    pub(crate) region: Region,
    /// What was asked of the phone, in order.
    pub(crate) asked: Vec<Request>,
    from: (Screen, &'static str),
    drafts: BTreeMap<Screen, Draft>,
    /// What comes after a while, on which screen.
    waits: Vec<(Moment, Screen, Action)>,
    /// What takes back what was noted by the last press.
    undoes: Vec<Event>,
    /// Until when the offer to undo it stands.
    still_until: Option<Moment>,
}

fn new_id() -> EntryId {
    IDS.with(|ids| {
        ids.set(ids.get() + 1);
        // Not among those of the made-up flock, or an entry would be taken for one that is there.

        EntryId::from_uuid(Uuid::from_u128((0x0002_0000_0000_7000_8000 << 48) + ids.get()))
    })
}

/// Returns the device of every phone of these tests.
pub(crate) fn device() -> DeviceId {
    DeviceId::from_uuid(Uuid::from_u128(1))
}

impl Phone {
    /// Returns a phone with an empty book at a local time such as "2027-02-01 23:55", five hours behind UTC.
    #[track_caller]
    pub(crate) fn at(local: &str) -> Self {
        let local = chrono::NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").expect("a time");
        Self::with(Book::default(), Moment::from_local(local, -300))
    }

    /// Returns a phone with a book.
    pub(crate) fn with(book: Book, now: Moment) -> Self {
        Self {
            flock: fold(&book),
            book,
            now,
            screen: Screen::Watch,
            says: Says::default(),
            sample: false,
            wide: false,
            device: device(),
            region: Region::default(),
            asked: Vec::new(),
            from: (Screen::Watch, yeanling_words::frame::WATCH),
            drafts: BTreeMap::new(),
            waits: Vec::new(),
            undoes: Vec::new(),
            still_until: None,
        }
    }

    /// Notes a fact that happens now; it must pass the gate.
    #[track_caller]
    pub(crate) fn note(&mut self, event: Event) -> EntryId {
        self.note_at(event, self.now)
    }

    /// Notes a fact that happened at `at`; it must pass the gate.
    #[track_caller]
    pub(crate) fn note_at(&mut self, event: Event, at: Moment) -> EntryId {
        let id = new_id();
        self.take(vec![Noting { id, event, at }]).unwrap_or_else(|refused| panic!("refused: {refused}"));
        id
    }

    /// Notes a fact that happened at `at` if it may be noted, and returns its entry.
    pub(crate) fn try_note_at(&mut self, event: Event, at: Moment) -> Option<EntryId> {
        let id = new_id();
        self.take(vec![Noting { id, event, at }]).ok().map(|()| id)
    }

    /// A ewe comes.
    #[track_caller]
    pub(crate) fn ewe(&mut self, tag: &str) -> EweId {
        self.note(Event::EweCame { tag: Some(tag.to_owned()) }).as_ewe()
    }

    /// A living lamb of hers is born, of which nothing else is known.
    #[track_caller]
    pub(crate) fn lamb(&mut self, dam: EweId) -> LambId {
        self.note(Event::LambBorn { dam: Some(dam), beside: None, sex: None, alive: true }).as_lamb()
    }

    /// Some time passes; what was to come in it comes.
    pub(crate) fn later(&mut self, minutes: i64) -> &mut Self {
        self.rest(Duration::from_secs(u64::try_from(minutes * 60).unwrap_or(0)))
    }

    /// A while passes; what was to come in it comes.
    pub(crate) fn rest(&mut self, wait: Duration) -> &mut Self {
        let until = self.now + TimeDelta::from_std(wait).expect("a while");
        loop {
            self.waits.sort_by_key(|(at, ..)| *at);
            let Some(first) = self.waits.first().filter(|(at, ..)| *at <= until) else { break };
            let (at, screen, action) = first.clone();
            self.waits.remove(0);
            self.now = self.now.max(at);
            self.act_on(screen, &action);
        }
        self.now = until;
        self
    }

    /// The app is closed as by a crash: no screen is left, and what was to come after a while does not.
    pub(crate) fn closed(&mut self) -> &mut Self {
        self.drafts.clear();
        self.waits.clear();
        self.screen = Screen::Lost;
        self
    }

    /// Goes to a screen.
    pub(crate) fn open(&mut self, screen: Screen) -> &mut Self {
        if screen != self.screen {
            let here = self.screen;
            let mut draft = self.draft();
            let effects = self.view(|view| leave(here, view, &mut draft));
            self.drafts.insert(here, draft);
            self.run(here, effects);
            if let Some(name) = here.way_back() {
                self.from = (here, name);
            }
            self.screen = screen;
            let mut draft = self.draft();
            let effects = self.view(|view| enter(screen, view, &mut draft));
            self.drafts.insert(screen, draft);
            self.run(screen, effects);
        }
        self
    }

    /// Returns the book as it goes out; none while nothing is noted in it.
    pub(crate) fn outgoing(&self) -> Option<Outgoing> {
        let files = book::split(&self.book, self.now, self.device);
        let named = files.into_iter().enumerate().map(|(place, file)| (format!("book-{place}"), file.text));
        let up_to = self.book.next_noted(self.now);
        (!self.book.is_empty()).then(|| Outgoing { files: named.collect(), up_to })
    }

    /// Picks a file in the field of this label: the phone gives its bytes.
    #[track_caller]
    pub(crate) fn pick(&mut self, label: &str, bytes: &[u8]) -> &mut Self {
        self.press(label);
        let Some(Request::ReadFile(key)) = self.asked.pop() else { panic!("{label:?} reads no file") };
        self.act(&Action::Heard(Heard::File(key, Ok(Some(bytes.into())))));
        self
    }

    /// Returns what is on this screen but not in the book.
    pub(crate) fn draft(&self) -> Draft {
        self.drafts.get(&self.screen).cloned().unwrap_or_default()
    }

    /// Reads all that a page is made from.
    pub(crate) fn view<T>(&self, read: impl FnOnce(&View) -> T) -> T {
        let duties = || Arc::new(watch::duties(&self.flock, self.now, &self.flock.settings));
        let lambing_forecasts = || Arc::new(lambing_forecasts(&self.flock, self.now));
        let everyone = || Arc::new(Everyone::of(&self.flock));
        let says = || Arc::new(self.says.clone());
        let outgoing = || Arc::new(self.outgoing());
        let wide = || Arc::new(self.wide);
        let still = || Arc::new(self.still_until.is_some_and(|until| self.now < until));
        read(&View {
            book: &self.book,
            flock: &self.flock,
            own_book: &self.book,
            own_flock: &self.flock,
            now: self.now,
            drawn: self.now,
            here: |at| at,
            at_local: |local| Moment::from_local(local, -300),
            new_id,
            device: self.device,
            region: self.region,
            from: self.from,
            sample: self.sample,
            duties: Lazy::new(&duties),
            lambing_forecasts: Lazy::new(&lambing_forecasts),
            everyone: Lazy::new(&everyone),
            still: Lazy::new(&still),
            wide: Lazy::new(&wide),
            phone: Lazy::new(&says),
            outgoing: Lazy::new(&outgoing),
        })
    }

    /// Returns the page of the screen.
    #[track_caller]
    pub(crate) fn page(&self) -> Page {
        self.page_of(self.screen)
    }

    /// Returns the page of a screen.
    #[track_caller]
    pub(crate) fn page_of(&self, screen: Screen) -> Page {
        let draft = self.drafts.get(&screen).cloned().unwrap_or_default();
        self.view(|view| page(screen, view, &draft))
    }

    /// Returns every screen that there is for this book and is made as a page.
    pub(crate) fn screens(&self) -> Vec<Screen> {
        Screen::all(&self.flock)
    }

    /// Returns all that can be pressed: on the uppermost sheet, or on the page if none lies over it.
    pub(crate) fn pressables(&self) -> Vec<Pressable> {
        pressables(&self.page())
    }

    /// Presses what says so, by its whole name or by its label.
    #[track_caller]
    pub(crate) fn press(&mut self, name: &str) -> &mut Self {
        let all = self.pressables();
        let found =
            all.iter().find(|one| one.name == name).or_else(|| all.iter().find(|one| one.label == name));
        let Some(found) = found else {
            let names: Vec<&str> = all.iter().map(|one| one.name.as_str()).collect();
            panic!("nothing says {name:?} on {:?}; there is {names:?}", self.screen);
        };
        let does = found.does.clone();
        self.act(&does);
        self
    }

    /// Presses the keys of the number pad; `<` takes the last sign back.
    #[track_caller]
    pub(crate) fn keys(&mut self, keys: &str) -> &mut Self {
        for key in keys.chars() {
            let pad = |block: &Arc<Block>| match &block.kind {
                Kind::Keypad(pad) => Some(pad.presses(key_press(key))),
                _ => None,
            };
            let page = self.page();
            let does = reached(&page).iter().find_map(pad);
            self.act(&does.unwrap_or_else(|| panic!("no keys on {:?}", self.screen)));
        }
        self
    }

    /// Types into the field of this label.
    #[track_caller]
    pub(crate) fn write(&mut self, label: &str, text: &str) -> &mut Self {
        let fields = fields_and_keys(&self.page());
        let Some((key, _)) = fields.iter().find(|(_, field)| field.label == label) else {
            let labels: Vec<&str> = fields.iter().map(|(_, field)| field.label.as_str()).collect();
            panic!("no field {label:?} on {:?}; there is {labels:?}", self.screen);
        };
        self.act(&Action::Type(key.clone(), text.to_owned()));
        self
    }

    /// Leaves the field of this label, as with a tap elsewhere.
    #[track_caller]
    pub(crate) fn leave_field(&mut self, label: &str) -> &mut Self {
        let fields = fields(&self.page());
        let field =
            fields.iter().find(|(_, field)| field.label == label).map(|(_, field)| field.left.clone());
        if let Some(left) = field.expect("the field") {
            self.act(&left);
        }
        self
    }

    /// Does what a press does.
    pub(crate) fn act(&mut self, action: &Action) {
        self.act_on(self.screen, action);
    }

    fn act_on(&mut self, screen: Screen, action: &Action) {
        let mut draft = self.drafts.get(&screen).cloned().unwrap_or_default();
        let effects = self.view(|view| act(action, screen, view, &mut draft));
        self.drafts.insert(screen, draft);
        self.run(screen, effects);
    }

    fn run(&mut self, screen: Screen, effects: Vec<Effect>) {
        for effect in effects {
            match effect {
                Effect::Note(notings) => self.take(notings).expect("a page asks the gate before it notes"),
                Effect::LetLastGo => {
                    self.undoes.clear();
                    self.still_until = None;
                }
                Effect::Go(to) | Effect::Replace(to) => _ = self.open(to),
                Effect::Show(_) => {}
                Effect::There(to, action) => self.act_on(to, &action),
                Effect::After(wait, action) => {
                    self.waits.push((self.now + TimeDelta::from_std(wait).expect("a while"), screen, action));
                }
                Effect::Phone(request) => {
                    self.keep(&request);
                    self.asked.push(request);
                }
            }
        }
    }

    /// Keeps what a phone keeps beside the book.
    fn keep(&mut self, request: &Request) {
        if let Request::KeepColdLamb(kept) = request {
            self.says.cold_lamb.clone_from(kept);
        }
        if let Request::KeepTables(kept) = request {
            self.says.tables.clone_from(kept);
        }
        if let Request::KeepDigits(lamb, digits) = request {
            match digits {
                Some(digits) => _ = self.says.half_typed.insert(*lamb, digits.clone()),
                None => _ = self.says.half_typed.remove(lamb),
            }
        }
        if let Request::TakeIn(incoming) = request {
            self.book.union(incoming.file.entries.iter().cloned());
            self.flock = fold(&self.book);
            self.sample = false;
        }
    }

    /// Takes back what was noted by the last press.
    pub(crate) fn undo(&mut self) -> bool {
        let undoes = std::mem::take(&mut self.undoes);
        let noting = |event| Noting { id: new_id(), event, at: self.now };
        let undone: Vec<Noting> = undoes.into_iter().map(noting).collect();
        let is_undone = !undone.is_empty() && self.take(undone).is_ok();
        self.undoes.clear();
        is_undone
    }

    /// Returns what takes facts back that were noted together: of one that corrects another, what stood before.
    fn undo_of(&self, notings: &[Noting]) -> Vec<Event> {
        let strike = |noting: &Noting| Event::Deleted { entry: noting.id };
        let [one] = notings else { return notings.iter().map(strike).collect() };
        if let Event::Deleted { entry } = one.event {
            return vec![Event::Restored { entry }];
        }
        if let Event::Amended { entry, .. } = one.event {
            let line = self.flock.lines.iter().find(|line| line.entry == entry);
            let before =
                line.map(|line| Event::Amended { entry, event: Box::new(line.event.clone()), at: line.at });
            return before.into_iter().collect();
        }
        if one.event.corrects().is_some() { Vec::new() } else { vec![strike(one)] }
    }

    fn take(&mut self, notings: Vec<Noting>) -> Result<(), Rejection> {
        self.view(|view| view.validate(&notings))?;
        self.undoes = self.undo_of(&notings);
        self.still_until = Some(self.now + UNDO_FOR);
        let mut noted = self.book.next_noted(self.now);
        // As the farm does: a table brings thousands, which are folded once.
        let many = notings.len() > 200;
        for Noting { id, event, at } in notings {
            noted = noted.max(self.book.next_noted_of(&event, self.now));
            let entry = Entry { id, device: self.device, noted, at, event };
            noted = noted + TimeDelta::milliseconds(1);
            assert!(self.book.entry(id).is_none(), "what is noted is new to the book");
            let learned = !many && self.flock.apply(&entry);
            self.book.add(entry);
            if !learned && !many {
                self.flock = fold(&self.book);
            }
        }
        if many {
            self.flock = fold(&self.book);
        }
        assert_eq!(self.flock, fold(&self.book), "what the flock learned is what the book says");
        Ok(())
    }

    /// Asserts that the page says this somewhere.
    #[track_caller]
    pub(crate) fn says(&self, text: &str) -> &Self {
        let all = texts(&self.page());
        assert!(
            all.iter().any(|one| one.contains(text)),
            "{text:?} does not stand on {:?}:\n{}",
            self.screen,
            all.join("\n")
        );
        self
    }

    /// Asserts that the page says this nowhere.
    #[track_caller]
    pub(crate) fn says_nowhere(&self, text: &str) -> &Self {
        let all = texts(&self.page());
        assert!(!all.iter().any(|one| one.contains(text)), "{text:?} stands on {:?}", self.screen);
        self
    }

    /// Asserts that the page's steps, or some of its other lists, begin with these lines.
    #[track_caller]
    pub(crate) fn says_in_order(&self, lines: &[&str]) -> &Self {
        let list = |block: &Arc<Block>| match &block.kind {
            Kind::List(list) => Some(list.items.iter().map(|item| item.text.plain()).collect::<Vec<_>>()),
            _ => None,
        };
        let lists: Vec<Vec<String>> = self.page().all().into_iter().filter_map(list).collect();
        let is_it =
            |list: &Vec<String>| list.iter().zip(lines).filter(|(a, b)| a == *b).count() == lines.len();
        assert!(lists.iter().any(is_it), "{lines:?} stand in no list of {:?}:\n{lists:#?}", self.screen);
        self
    }

    /// Asserts that something to press begins with these words.
    #[track_caller]
    pub(crate) fn has_button(&self, begins: &str) -> &Self {
        let all = self.pressables();
        assert!(
            all.iter().any(|one| one.label.starts_with(begins)),
            "nothing to press begins with {begins:?} on {:?}: {:?}",
            self.screen,
            all.iter().map(|one| one.label.as_str()).collect::<Vec<_>>()
        );
        self
    }

    /// Asserts that nothing to press begins with these words.
    #[track_caller]
    pub(crate) fn has_no_button(&self, begins: &str) -> &Self {
        let all = self.pressables();
        let found = all.iter().find(|one| one.label.starts_with(begins));
        assert!(found.is_none(), "{found:?} can be pressed on {:?}", self.screen);
        self
    }

    /// Returns the name of an animal as people say it.
    pub(crate) fn name(&self, animal: Animal) -> String {
        yeanling_words::animals::animal(&self.flock, animal)
    }
}

/// Returns the key of the number pad that has this sign.
pub(crate) const fn key_press(sign: char) -> KeyPress {
    match sign {
        '<' => KeyPress::Backspace,
        '.' => KeyPress::Point,
        'l' => KeyPress::Larger,
        digit => KeyPress::Digit(digit),
    }
}
