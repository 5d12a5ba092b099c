//! To paper, by the browser's own printing.

use super::window;

/// Asks the browser to print the page as it stands; one that cannot does nothing.
pub fn print() {
    // A phone without a printer refuses, and has said so itself.
    let _ = window().print();
}
