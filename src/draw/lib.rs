//! How a page looks: plain functions from blocks to elements, and one patcher that makes what stands in the browser be what
//! they say, touching only what differs.
//!
//! Nothing here knows a browser. [`Patcher`] works on whatever [`Dom`] it is given: the browser's own, or a tree in a test.

mod frame;
mod kinds;
mod node;
mod page;
mod patch;

pub use frame::{Frame, frame};
pub use node::{Element, Node, On, el};
pub use page::{Around, page};
pub use patch::{Dom, HEARS, Patcher};
