//! Signals, memos and callbacks as Leptos has them, on one machine for every type of value.
//!
//! Leptos compiles its graph anew for each type that stands in a `Memo`, a `Signal` or an `RwSignal`: over ninety
//! here, each a few kilobytes, a third of what a phone would load. The types of this room have Leptos' names and
//! ways, but what they keep is a [`Value`], its type forgotten; for each type only a cast and the closure remain.
//! Everything else says `use crate::signals::prelude::*`, and reads as any Leptos code does.

mod after_paint;
mod callback;
mod memo;
mod rw_signal;
mod signal;

use std::any::Any;
use std::fmt;
use std::sync::{Arc, Mutex};

use leptos::tachys::reactive_graph::ReactiveFunction;

pub use after_paint::after_paint;
pub use callback::Callback;
pub use memo::Memo;
pub use rw_signal::RwSignal;
pub use signal::Signal;

/// What Leptos offers, with this room's types in the place of its own.
pub mod prelude {
    pub use super::{Callback, Memo, RwSignal, Signal};
    pub use leptos::prelude::*;
}

/// A value whose type is known only to the closure that reads it.
type Value = Arc<dyn Any + Send + Sync>;

/// Returns the value as what it was put in as.
fn known<T: 'static>(value: &Value) -> &T {
    value.downcast_ref().expect("a signal gives out what was put in")
}

/// What the three have in common: each is a small handle, and stands in a view, or for an attribute, as it is.
macro_rules! handles {
    ($($name:ident where $($bound:ident)|+;)+) => {$(
        impl<T> Clone for $name<T> {
            fn clone(&self) -> Self {
                *self
            }
        }

        impl<T> Copy for $name<T> {}

        impl<T> fmt::Debug for $name<T> {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(stringify!($name))
            }
        }

        impl<T: $($bound +)+ 'static> ReactiveFunction for $name<T> {
            type Output = T;

            fn invoke(&mut self) -> T {
                self.get()
            }

            fn into_shared(self) -> Arc<Mutex<dyn FnMut() -> T + Send>> {
                Arc::new(Mutex::new(move || self.get()))
            }
        }
    )+};
}

handles! {
    RwSignal where Clone | Send | Sync;
    Memo where Clone;
    Signal where Clone;
}
