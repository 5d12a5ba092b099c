//! A value that can be set, and is followed by who reads it.

use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::{Get, GetUntracked, Set, Write};

use super::{Value, known};

/// A value that can be set. Cheap to copy.
pub struct RwSignal<T> {
    cell: leptos::prelude::RwSignal<Value>,
    of: PhantomData<fn() -> T>,
}

impl<T: Send + Sync + 'static> RwSignal<T> {
    /// Returns a signal with its first value.
    pub fn new(value: T) -> Self {
        Self { cell: keep(Arc::new(value)), of: PhantomData }
    }

    /// Reads the value and follows it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&self.value()))
    }

    /// Reads the value without following it.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(known(&peek(self.cell)))
    }

    /// Puts another value in its place, and tells who follows it.
    pub fn set(self, value: T) {
        set(self.cell, Arc::new(value));
    }

    /// Changes the value where it is, and tells who follows it.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        let mut value = self.cell.write();
        let value = Arc::get_mut(&mut value).and_then(|value| value.downcast_mut());
        change(value.expect("a signal is not changed while it is read"));
    }

    /// Returns the value without following it, or nothing once what it was made for is gone.
    pub fn try_get_untracked(self) -> Option<T>
    where
        T: Clone,
    {
        self.cell.try_get_untracked().map(|value| T::clone(known(&value)))
    }

    pub(super) fn value(self) -> Value {
        follow(self.cell)
    }
}

impl<T: Clone + Send + Sync + 'static> RwSignal<T> {
    /// Returns the value and follows it.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// Returns the value without following it.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

fn keep(value: Value) -> leptos::prelude::RwSignal<Value> {
    leptos::prelude::RwSignal::new(value)
}

fn follow(cell: leptos::prelude::RwSignal<Value>) -> Value {
    cell.get()
}

fn peek(cell: leptos::prelude::RwSignal<Value>) -> Value {
    cell.get_untracked()
}

fn set(cell: leptos::prelude::RwSignal<Value>, value: Value) {
    cell.set(value);
}
