//! How safe is what was noted, as the panic hook must know it: when the app breaks, no signal can be asked any more.

use std::cell::Cell;

use super::persistence::Kept;

/// How safe what was noted is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Safety {
    /// All of it is on the disk.
    #[default]
    Saved,
    /// The last of it is on its way to the disk, and goes on without the app.
    OnItsWay,
    /// It lies in local storage alone, which the browser writes out seconds later.
    LocalOnly,
    /// It is in this page's memory alone, and goes with the page.
    MemoryOnly,
}

thread_local! {
    static SAFETY: Cell<Safety> = const { Cell::new(Safety::Saved) };
    static UNDER_WAY: Cell<usize> = const { Cell::new(0) };
}

/// Returns how safe what was noted is now.
#[must_use]
pub fn safety() -> Safety {
    SAFETY.get()
}

/// Entries begin to be kept: whether local storage took them, and whether IndexedDB is open to them.
pub(super) fn begins(local: bool, open: bool) {
    UNDER_WAY.set(UNDER_WAY.get() + 1);
    SAFETY.set(match (open, local) {
        (true, _) => Safety::OnItsWay,
        (false, true) => Safety::LocalOnly,
        (false, false) => Safety::MemoryOnly,
    });
}

/// Entries are kept as well as they will be; passes that on.
pub(super) fn ended(kept: Kept) -> Kept {
    let left = UNDER_WAY.get().saturating_sub(1);
    UNDER_WAY.set(left);
    match &kept {
        Kept::Safe if left == 0 => SAFETY.set(Safety::Saved),
        // While it opens, what was said at the beginning holds; and others are still on their way.
        Kept::Safe | Kept::Waiting => {}
        Kept::LocalOnly(_) => SAFETY.set(Safety::LocalOnly),
        Kept::MemoryOnly(_) => SAFETY.set(Safety::MemoryOnly),
    }
    kept
}

/// IndexedDB was opened, or failed to.
pub(super) fn opened(open: bool, local: bool) {
    if open && UNDER_WAY.get() == 0 {
        SAFETY.set(Safety::Saved);
    } else if !open {
        SAFETY.set(if local { Safety::LocalOnly } else { Safety::MemoryOnly });
    }
}
