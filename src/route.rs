//! The ways to a screen: going there, and going there in place of where we are.

pub use yeanling_pages::Screen;

use crate::browser::navigation;

/// Going to a screen.
pub(crate) trait Way {
    /// Goes there; the phone's back button leads back.
    fn go(self);

    /// Goes there in place of where we are.
    fn replace(self);
}

impl Way for Screen {
    fn go(self) {
        navigation::go(&self.hash());
    }

    fn replace(self) {
        navigation::replace(&self.hash());
    }
}
