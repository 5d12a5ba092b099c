//! Tables written, and tables read.

mod ewes;
mod read;
mod written;
