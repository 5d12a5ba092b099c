//! What a press leaves to the farm: facts to be noted, and what is asked of the phone.
//!
//! What one press notes of many animals is undone as one; a tick taken off or a change is told and can be brought
//! back.

use std::sync::Arc;

use leptos::task::spawn_local;
use yeanling_core::book::{Entry, Event};
use yeanling_core::calendar;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch;
use yeanling_pages::phone::FileTrouble;
use yeanling_pages::{Action, Heard, Noting, Request};

use super::{Farm, Last};
use crate::browser::id;
use crate::browser::{navigation, now};
use leptos::prelude::*;

/// The name of the file of lines that could not be read.
const BROKEN_FILE: &str = "yeanling-unread-lines.txt";

impl Farm {
    /// Notes facts that happen now as one press, and says whether they were noted.
    pub(super) fn note_events(self, events: Vec<Event>) -> bool {
        let at = now::now();
        self.note_together(
            events.into_iter().map(|event| Noting { id: id::new_entry(at), event, at }).collect(),
        )
    }

    /// Notes facts of one press, all of them or none, and says whether they were; each passes the gate where those before it
    /// were noted.
    pub fn note_together(self, notings: Vec<Noting>) -> bool {
        let now = now::now();
        let facts = notings.iter().map(|noting| (noting.id, &noting.event, noting.at));
        let allowed =
            self.peek(|records| watch::validate_all(&records.flock, &records.book, facts, self.device, now));
        if let Err((_, rejection)) = allowed {
            self.refused.set(Some(rejection));
            return false;
        }
        self.refused.set(None);
        let last = match &notings[..] {
            [one] => self.last_of(one.id, &one.event),
            many => Last::Noted(many.iter().map(|noting| noting.id).collect()),
        };
        let mut noted = self.peek(|records| records.book.next_noted(now));
        let mut entries = Vec::with_capacity(notings.len());
        for Noting { id, event, at } in notings {
            noted = noted.max(self.peek(|records| records.book.next_noted_of(&event, now)));
            entries.push(Entry { id, device: self.device, noted, at, event });
            noted = noted + TimeDelta::milliseconds(1);
        }
        self.take(entries, now, last);
        true
    }

    /// Does what is asked of the phone; what it answers later is told to `tell`.
    pub fn ask(self, request: Request, tell: impl Fn(Action) + Clone + 'static) {
        let told = move |heard: Heard| tell(Action::Heard(heard));
        match request {
            Request::Undo => self.undo(),
            Request::LookRound => self.look_round(),
            Request::StopLookingRound => self.stop_looking_round(),
            Request::TakeUpdate => self.take_update(),
            Request::ChooseLook(look) => self.choose_look(look),
            Request::Print => self.print(),
            Request::Arm => self.arm(),
            Request::Disarm => self.disarm(),
            Request::Answer => self.answer(),
            Request::LetMissedGo => self.let_missed_go(),
            Request::SaveBook(place) => self.save_book(place, told),
            Request::ShareBook => self.share_book(told),
            Request::SafeElsewhere(at) => self.keep_sent(at),
            Request::GiveTable(key, name, text) => spawn_local(async move {
                told(Heard::Given(key, self.give_table(&name, &text).await.err()));
            }),
            Request::GiveCalendar(key, name, mut alarms) => spawn_local(async move {
                for alarm in &mut alarms {
                    alarm.url = navigation::whole(&alarm.url);
                }
                let text = calendar::write(&alarms, now::now());
                told(Heard::Given(key, self.give_calendar(&name, &text).await.err()));
            }),
            Request::AskForGood => spawn_local(async move {
                let promised = self.ask_for_good().await;
                self.promise.set(Some(promised));
                told(Heard::Promised(promised));
            }),
            Request::LookAtRoom => spawn_local(async move {
                self.promise.set(Some(self.promised().await));
                self.room_left.set(self.room().await);
            }),
            Request::SavedHere(at) => self.keep_saved_here(at),
            Request::SaveUnreadLines => {
                let lines = untrack(|| self.broken());
                // Should the browser fail, the lines still lie where they were.
                let _ = self.save_file(BROKEN_FILE, &lines.join("\n"));
            }
            Request::ReadFile(key) => spawn_local(async move {
                let file = self.read_picked(&key).await;
                told(Heard::File(key, file.map(|bytes| bytes.map(Arc::from))));
            }),
            Request::ReadHandedIn(key) => spawn_local(async move {
                let file = self.handed_in().await;
                if file != Ok(None) {
                    told(Heard::File(key, file.map(|bytes| bytes.map(Arc::from))));
                }
            }),
            Request::TakeIn(incoming) => self.take_in(&incoming),
            Request::EraseBook => spawn_local(async move {
                match self.erase().await {
                    Ok(()) => navigation::start_anew(),
                    Err(said) => told(Heard::NotErased(said)),
                }
            }),
            Request::KeepTables(text) => self.keep_tables(&text),
            Request::KeepColdLamb(text) => self.keep_cold_lamb(&text),
            Request::KeepDigits(lamb, digits) => self.keep_digits(lamb, digits),
        }
    }

    fn save_book(self, place: Option<usize>, told: impl Fn(Heard)) {
        let outgoing = untrack(|| self.outgoing.get());
        let Some(book) = &*outgoing else { return };
        let (mut saved, mut trouble) = (Vec::new(), None);
        for (index, (name, text)) in book.files.iter().enumerate() {
            if place.is_none_or(|place| place == index) {
                match self.save_file(name, text) {
                    Ok(()) => saved.push(index),
                    Err(error) => trouble = Some(error),
                }
            }
        }
        if saved.len() == book.files.len() {
            self.keep_saved_here(book.up_to);
        }
        told(Heard::Saved(saved, trouble));
    }

    fn share_book(self, told: impl Fn(Heard) + 'static) {
        // It is ready before the tap: a share sheet opens only straight from one.
        let outgoing = untrack(|| self.outgoing.get());
        spawn_local(async move {
            let Some(book) = &*outgoing else { return };
            let trouble = self.share(&book.files).await.err();
            match &trouble {
                None => self.keep_sent(book.up_to),
                Some(
                    FileTrouble::CannotShare
                    | FileTrouble::Closed
                    | FileTrouble::TooLarge(_)
                    | FileTrouble::Failed(_),
                ) => {}
            }
            told(Heard::Shared(trouble));
        });
    }
}
