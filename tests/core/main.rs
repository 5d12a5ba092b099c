//! The core by its public face.
