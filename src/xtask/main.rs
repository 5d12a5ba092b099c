//! Build chores.
fn main() {}
