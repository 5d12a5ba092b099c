//! The first copy of the book: IndexedDB with strict durability. An entry is saved when its transaction has completed.

use indexed_db_futures::database::Database;
use indexed_db_futures::prelude::{Build as _, BuildPrimitive as _, QuerySource as _};
use indexed_db_futures::transaction::{TransactionDurability, TransactionMode, TransactionOptions};
use yeanling_core::book::Entry;

use super::local::Held;

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

/// Opens the store, making it on first use.
///
/// # Errors
/// The browser refuses, as some private windows do.
pub async fn open() -> Result<Base, BaseError> {
    let database = Database::open(NAME)
        .with_version(VERSION)
        .with_on_upgrade_needed(|_, database| {
            database.create_object_store(STORE).build()?;
            Ok(())
        })
        .await?;
    Ok(Base(database))
}

impl Base {
    /// Returns all entries held here.
    ///
    /// # Errors
    /// The browser cannot read the store.
    pub async fn load(&self) -> Result<Held, BaseError> {
        let transaction = self.0.transaction(STORE).with_mode(TransactionMode::Readonly).build()?;
        let lines = transaction.object_store(STORE)?.get_all::<String>().primitive()?.await?;
        let mut held = Held::default();
        for line in lines {
            let line = line?;
            match serde_json::from_str::<Entry>(&line) {
                Ok(entry) => held.entries.push(entry),
                Err(_) => held.broken.push(line),
            }
        }
        Ok(held)
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
