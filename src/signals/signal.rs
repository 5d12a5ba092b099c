//! A value to be read and followed, wherever it comes from: what a part takes for what it shows.

use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::{GetValue, StoredValue, untrack};

use super::{Memo, RwSignal, Value, known};

/// A value to be read and followed. Cheap to copy.
pub struct Signal<T> {
    read: Reader,
    of: PhantomData<fn() -> T>,
}

type Read = Arc<dyn Fn() -> Value + Send + Sync>;
type Reader = StoredValue<Read>;

impl<T: Send + Sync + 'static> Signal<T> {
    /// Returns a signal that works its value out at every reading.
    pub fn derive(work_out: impl Fn() -> T + Send + Sync + 'static) -> Self {
        Self::reading(Arc::new(move || Arc::new(work_out())))
    }

    /// Returns a signal that never changes.
    pub fn stored(value: T) -> Self {
        Self { read: always(Arc::new(value)), of: PhantomData }
    }

    fn reading(read: Read) -> Self {
        Self { read: keep(read), of: PhantomData }
    }
}

impl<T: 'static> Signal<T> {
    /// Reads the value and follows it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&follow(self.read)))
    }

    /// Reads the value without following it.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&peek(self.read)))
    }
}

impl<T: Clone + 'static> Signal<T> {
    /// Returns the value and follows it.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// Returns the value without following it.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

fn keep(read: Read) -> Reader {
    StoredValue::new(read)
}

fn always(value: Value) -> Reader {
    keep(Arc::new(move || Arc::clone(&value)))
}

fn follow(read: Reader) -> Value {
    (read.get_value())()
}

fn peek(read: Reader) -> Value {
    untrack(|| follow(read))
}

impl<T: Send + Sync + 'static> From<T> for Signal<T> {
    fn from(value: T) -> Self {
        Self::stored(value)
    }
}

impl From<&str> for Signal<String> {
    fn from(value: &str) -> Self {
        Self::stored(value.to_owned())
    }
}

impl<T: Send + Sync + 'static> From<RwSignal<T>> for Signal<T> {
    fn from(signal: RwSignal<T>) -> Self {
        Self::reading(Arc::new(move || signal.value()))
    }
}

impl<T: Send + Sync + 'static> From<Memo<T>> for Signal<T> {
    fn from(memo: Memo<T>) -> Self {
        Self::reading(Arc::new(move || memo.value()))
    }
}

impl<T: Default + Send + Sync + 'static> Default for Signal<T> {
    fn default() -> Self {
        Self::stored(T::default())
    }
}
