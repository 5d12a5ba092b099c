//! The core.
