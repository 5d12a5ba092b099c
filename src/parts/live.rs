//! A piece of view that follows its signals: one machine for all of them, so that each costs few bytes.

use crate::signals::prelude::*;

/// Returns a view that is made anew whenever a signal it reads changes.
///
/// A bare closure in a view would be compiled once for each place it stands; this one is compiled once for all.
pub fn live(view: impl Fn() -> AnyView + Send + 'static) -> AnyView {
    boxed(Box::new(view))
}

fn boxed(view: Box<dyn Fn() -> AnyView + Send>) -> AnyView {
    (move || view()).into_any()
}
