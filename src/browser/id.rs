//! Ids: one for this phone, kept; one for each entry, new.

use gloo_storage::{LocalStorage, Storage};
use uuid::{NoContext, Timestamp, Uuid};
use yeanling_core::book::{DeviceId, EntryId};
use yeanling_core::units::Moment;

use super::local_storage;

const DEVICE: &str = "yeanling/device";

/// Returns a new id for an entry that is written now.
#[must_use]
pub fn new_entry(now: Moment) -> EntryId {
    EntryId::from_uuid(version_7(now))
}

/// Returns this phone's id, made on first use and kept in local storage; without storage, one for this visit.
#[must_use]
pub fn device(now: Moment) -> DeviceId {
    if !local_storage::available() {
        return DeviceId::from_uuid(version_7(now));
    }
    LocalStorage::get(DEVICE).unwrap_or_else(|_| {
        let device = DeviceId::from_uuid(version_7(now));
        // A phone that cannot keep its id gets another next time: entries stay right, only "which phone" is lost.
        let _ = LocalStorage::set(DEVICE, device);
        device
    })
}

fn version_7(now: Moment) -> Uuid {
    let milliseconds = u64::try_from(now.as_unix_milliseconds()).unwrap_or_default();
    let below = u32::try_from(milliseconds % 1000).unwrap_or_default() * 1_000_000;
    Uuid::new_v7(Timestamp::from_unix(NoContext, milliseconds / 1000, below))
}
