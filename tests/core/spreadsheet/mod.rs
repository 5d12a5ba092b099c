//! Tables written, and tables read.

mod read;
mod written;
