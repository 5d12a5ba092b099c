//! What a part calls when something was done to it.

use std::any::Any;
use std::fmt;
use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::{GetValue, StoredValue};

/// Something to be called with an `In`. Cheap to copy.
pub struct Callback<In> {
    call: StoredValue<Call>,
    of: PhantomData<fn(In)>,
}

/// Takes what it is called with out of an `Option<In>`.
type Call = Arc<dyn Fn(&mut dyn Any) + Send + Sync>;

impl<In: 'static> Callback<In> {
    /// Returns a callback that does `act`.
    pub fn new(act: impl Fn(In) + Send + Sync + 'static) -> Self {
        let call = move |given: &mut dyn Any| {
            if let Some(given) = given.downcast_mut::<Option<In>>().and_then(Option::take) {
                act(given);
            }
        };
        Self { call: keep(Arc::new(call)), of: PhantomData }
    }

    /// Calls it.
    pub fn run(self, given: In) {
        call(self.call, &mut Some(given));
    }
}

fn keep(call: Call) -> StoredValue<Call> {
    StoredValue::new(call)
}

fn call(call: StoredValue<Call>, given: &mut dyn Any) {
    (call.get_value())(given);
}

impl<F: Fn() + Send + Sync + 'static> From<F> for Callback<()> {
    fn from(act: F) -> Self {
        Self::new(move |()| act())
    }
}

impl<A: 'static, F: Fn(A) + Send + Sync + 'static> From<F> for Callback<(A,)> {
    fn from(act: F) -> Self {
        Self::new(move |(a,)| act(a))
    }
}

impl<A: 'static, B: 'static, F: Fn(A, B) + Send + Sync + 'static> From<F> for Callback<(A, B)> {
    fn from(act: F) -> Self {
        Self::new(move |(a, b)| act(a, b))
    }
}

impl<In> Clone for Callback<In> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<In> Copy for Callback<In> {}

impl<In> fmt::Debug for Callback<In> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Callback")
    }
}
