//! The first copy of the book: IndexedDB with strict durability. An entry is saved when its transaction has completed.

use std::collections::BTreeSet;

use indexed_db_futures::database::Database;
use indexed_db_futures::error::{DomException, Error, OpenDbError};
use indexed_db_futures::internals::SystemRepr as _;
use indexed_db_futures::prelude::{Build as _, BuildPrimitive as _, QuerySource as _};
use indexed_db_futures::transaction::{TransactionDurability, TransactionMode, TransactionOptions};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use yeanling_core::book::Entry;

use super::local_storage::{self, Broken, Held};

const NAME: &str = "yeanling";
const STORE: &str = "entries";
const VERSION: u8 = 1;

/// The open store.
#[derive(Debug)]
pub struct Base(Database);

/// What the browser said when it failed.
#[derive(Clone, Debug)]
pub struct BaseError(pub String);

impl<E: std::error::Error> From<E> for BaseError {
    fn from(error: E) -> Self {
        Self(error.to_string())
    }
}

/// Opens the store, making it on first use. It waits as long as another tab holds on to an older version of it.
///
/// # Errors
/// The browser refuses, as some private windows do.
pub async fn open() -> Result<Base, BaseError> {
    let ours = Database::open(NAME)
        .with_version(VERSION)
        .with_on_upgrade_needed(|_, database| {
            database.create_object_store(STORE).build()?;
            Ok(())
        })
        .await;
    let database = match ours {
        // A later Yeanling was here, and this one is back: entries never change, so its store is read as it is.
        Err(error) if is_of_a_later_version(&error) => Database::open(NAME).await?,
        other => other?,
    };
    give_way(&database);
    Ok(Base(database))
}

fn is_of_a_later_version(error: &OpenDbError) -> bool {
    let OpenDbError::Base(Error::DomException(error)) = error else { return false };
    let DomException::Other(error) = error else { return false };
    error.name() == "VersionError"
}

/// Closes the store when another tab wants to change its version, so that a newer Yeanling never waits for this one.
fn give_way(database: &Database) {
    let held = database.clone();
    let listener = Closure::<dyn Fn()>::new(move || held.as_sys().close());
    let _ = database
        .as_sys()
        .add_event_listener_with_callback("versionchange", listener.as_ref().unchecked_ref());
    listener.forget();
}

impl Base {
    /// Returns all entries held here.
    ///
    /// # Errors
    /// The browser cannot read the store.
    pub async fn load(&self) -> Result<Held, BaseError> {
        let transaction = self.0.transaction(STORE).with_mode(TransactionMode::Readonly).build()?;
        let store = transaction.object_store(STORE)?;
        let (keys, lines) = (store.get_all_keys::<JsValue>().primitive()?, store.get_all().primitive()?);
        let (keys, lines) = (keys.await?, lines.await?);
        let mut held = Held::default();
        for (key, line) in keys.zip(lines) {
            let (key, line) = (text(&key?), text(&line?));
            match local_storage::read(&key, &line) {
                Some(entry) => held.entries.push(entry),
                None => held.broken.push(Broken { key, line }),
            }
        }
        Ok(held)
    }

    /// Returns those of the ids under which a whole entry lies here now.
    ///
    /// # Errors
    /// The browser cannot read the store.
    pub async fn whole(&self, ids: Vec<String>) -> Result<BTreeSet<String>, BaseError> {
        let transaction = self.0.transaction(STORE).with_mode(TransactionMode::Readonly).build()?;
        let store = transaction.object_store(STORE)?;
        let mut asked = Vec::with_capacity(ids.len());
        for id in ids {
            let line = store.get::<JsValue, String, String>(id.clone()).primitive()?;
            asked.push((id, line));
        }
        let mut whole = BTreeSet::new();
        for (id, line) in asked {
            if line.await?.is_some_and(|line| local_storage::read(&id, &text(&line)).is_some()) {
                whole.insert(id);
            }
        }
        Ok(whole)
    }

    /// Lets all entries go in one transaction; on return they are gone from the disk.
    ///
    /// # Errors
    /// The browser cannot write.
    pub async fn clear(&self) -> Result<(), BaseError> {
        let strict = TransactionOptions::new().with_durability(TransactionDurability::Strict);
        let transaction =
            self.0.transaction(STORE).with_mode(TransactionMode::Readwrite).with_options(strict).build()?;
        transaction.object_store(STORE)?.clear()?.await?;
        transaction.commit().await?;
        Ok(())
    }

    /// Keeps entries in one transaction, all or none; on return they are on the disk.
    ///
    /// # Errors
    /// The browser cannot write: its disk may be full.
    pub async fn save(&self, entries: &[Entry]) -> Result<(), BaseError> {
        let strict = TransactionOptions::new().with_durability(TransactionDurability::Strict);
        let transaction =
            self.0.transaction(STORE).with_mode(TransactionMode::Readwrite).with_options(strict).build()?;
        let store = transaction.object_store(STORE)?;
        for entry in entries {
            let line = serde_json::to_string(entry)?;
            store.put(line).with_key(entry.id.to_string()).without_key_type().build()?;
        }
        transaction.commit().await?;
        Ok(())
    }
}

/// Returns what is stored as text; what is no text was not put there by Yeanling, and is shown as far as it goes.
fn text(stored: &JsValue) -> String {
    let shown = || js_sys::JSON::stringify(stored).ok().map_or_else(|| format!("{stored:?}"), String::from);
    stored.as_string().unwrap_or_else(shown)
}
