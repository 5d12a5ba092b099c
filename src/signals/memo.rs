//! A value that is worked out from others, and changes only when it comes out different.

use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::{With, WithUntracked};

use super::{Value, known};

/// A value worked out from others. Cheap to copy.
pub struct Memo<T> {
    memo: leptos::prelude::Memo<Kept>,
    of: PhantomData<fn() -> T>,
}

/// A value with the way to tell it from another of its type.
struct Kept {
    value: Value,
    same: fn(&Value, &Value) -> bool,
}

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        (self.same)(&self.value, &other.value)
    }
}

impl<T: PartialEq + Send + Sync + 'static> Memo<T> {
    /// Returns a value that is worked out anew when what it reads has changed; it is given what came out before.
    pub fn new(work_out: impl Fn(Option<&T>) -> T + Send + Sync + 'static) -> Self {
        let work_out = move |before: Option<&Value>| Arc::new(work_out(before.map(known))) as Value;
        let memo = keep(Box::new(work_out), |one, other| known::<T>(one) == known::<T>(other));
        Self { memo, of: PhantomData }
    }
}

impl<T: 'static> Memo<T> {
    /// Reads the value and follows it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&self.value()))
    }

    /// Reads the value without following it.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&peek(self.memo)))
    }

    pub(super) fn value(self) -> Value {
        follow(self.memo)
    }

    /// Returns the value as it is kept, and follows it.
    pub fn shared(self) -> Arc<T>
    where
        T: Send + Sync,
    {
        self.value().downcast().unwrap_or_else(|_| unreachable!("a memo gives out what was put in"))
    }
}

impl<T: Clone + 'static> Memo<T> {
    /// Returns the value and follows it.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// Returns the value without following it.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

type WorkOut = Box<dyn Fn(Option<&Value>) -> Value + Send + Sync>;

fn keep(work_out: WorkOut, same: fn(&Value, &Value) -> bool) -> leptos::prelude::Memo<Kept> {
    leptos::prelude::Memo::new(move |before: Option<&Kept>| {
        let value = work_out(before.map(|before| &before.value));
        Kept { value, same }
    })
}

fn follow(memo: leptos::prelude::Memo<Kept>) -> Value {
    memo.with(|kept| Arc::clone(&kept.value))
}

fn peek(memo: leptos::prelude::Memo<Kept>) -> Value {
    memo.with_untracked(|kept| Arc::clone(&kept.value))
}
