//! Who of a group is near kin to a ram: told before he goes in, and as long as he is.

use yeanling_core::flock::Group;
use yeanling_core::seasons::near_kin;
use yeanling_words::rams as words;

use crate::block::NoticeKind;
use crate::page::Blocks;
use crate::view::View;

/// Returns the warning for a ram of this name; nothing without near kin.
pub(super) fn of(view: &View, group: &Group, ram: &str) -> Blocks {
    let kin = near_kin(view.flock, ram, group.ewes());
    if kin.is_empty() {
        return Blocks::new();
    }
    Blocks::new().notice("near-kin", NoticeKind::Warn, words::near_kin(view.flock, ram.trim(), &kin), [])
}

/// Returns the warning for the first ram that is in and has near kin there.
pub(super) fn of_rams_in(view: &View, group: &Group) -> Blocks {
    let named = group.rams_in().filter_map(|ram| ram.label.as_deref());
    named.map(|ram| of(view, group, ram)).find(|blocks| !blocks.is_empty()).unwrap_or_default()
}
