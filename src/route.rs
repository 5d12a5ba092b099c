//! The ways to a screen: going there, going there in place of where we are, and its whole address.

pub use yeanling_pages::Screen;

use crate::browser::place;

/// Going to a screen.
pub(crate) trait Way {
    /// Goes there; the phone's back button leads back.
    fn go(self);

    /// Goes there in place of where we are.
    fn replace(self);

    /// Returns the whole address, for those who come from outside.
    fn address(self) -> String;
}

impl Way for Screen {
    fn go(self) {
        place::go(&self.hash());
    }

    fn replace(self) {
        place::replace(&self.hash());
    }

    fn address(self) -> String {
        place::whole(&self.hash())
    }
}
