//! Ids as types: an animal's id is the id of the entry that brought it in.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(Uuid);

        impl $name {
            /// Returns the id that this UUID stands for.
            #[must_use]
            pub const fn from_uuid(uuid: Uuid) -> Self {
                Self(uuid)
            }

            /// Returns the UUID.
            #[must_use]
            pub const fn as_uuid(self) -> Uuid {
                self.0
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                self.0.fmt(f)
            }
        }

        impl std::str::FromStr for $name {
            type Err = uuid::Error;

            fn from_str(text: &str) -> Result<Self, uuid::Error> {
                text.parse().map(Self)
            }
        }
    };
}

id! {
    /// Names an entry in the book: a version 7 UUID, so that ids sort roughly by when they were made.
    EntryId
}
id! {
    /// Names the phone or computer that wrote an entry.
    DeviceId
}
id! {
    /// Names a ewe.
    EweId
}
id! {
    /// Names a lamb.
    LambId
}
id! {
    /// Names a pen.
    PenId
}
id! {
    /// Names a group of ewes that is put to the ram together.
    GroupId
}
id! {
    /// Names colostrum that was frozen at one time.
    BatchId
}

impl EntryId {
    /// Returns the ewe that this entry brought in.
    #[must_use]
    pub const fn as_ewe(self) -> EweId {
        EweId(self.0)
    }

    /// Returns the lamb that this entry brought in.
    #[must_use]
    pub const fn as_lamb(self) -> LambId {
        LambId(self.0)
    }

    /// Returns the pen that this entry set up.
    #[must_use]
    pub const fn as_pen(self) -> PenId {
        PenId(self.0)
    }

    /// Returns the group that this entry formed.
    #[must_use]
    pub const fn as_group(self) -> GroupId {
        GroupId(self.0)
    }

    /// Returns the colostrum that this entry put in the freezer.
    #[must_use]
    pub const fn as_batch(self) -> BatchId {
        BatchId(self.0)
    }
}

impl EweId {
    /// Returns the entry that brought this ewe in.
    #[must_use]
    pub const fn entry(self) -> EntryId {
        EntryId(self.0)
    }
}

impl LambId {
    /// Returns the entry that brought this lamb in.
    #[must_use]
    pub const fn entry(self) -> EntryId {
        EntryId(self.0)
    }
}

impl PenId {
    /// Returns the entry that set this pen up.
    #[must_use]
    pub const fn entry(self) -> EntryId {
        EntryId(self.0)
    }
}

impl GroupId {
    /// Returns the entry that formed this group.
    #[must_use]
    pub const fn entry(self) -> EntryId {
        EntryId(self.0)
    }
}

impl BatchId {
    /// Returns the entry that put this colostrum in the freezer.
    #[must_use]
    pub const fn entry(self) -> EntryId {
        EntryId(self.0)
    }
}
