//! Putting things in order, compiled once for all that is put in order.
//!
//! The standard library's sort is compiled anew for every type and every key, over fifty here: a phone would load a
//! twentieth more. Here it sorts places, and things are then moved to theirs. A map or set that is collected is sorted
//! first; gathered, it is not.

use std::cmp::Ordering;

/// Things that can be put in order. What is equal keeps its order.
pub trait SortSmall<T> {
    /// Puts them in order by comparing two at a time.
    ///
    /// ```
    /// use yeanling_core::sort_small::SortSmall;
    /// let mut weights = [4.1, 3.2, 5.0];
    /// weights.sort_small_by(f64::total_cmp);
    /// assert_eq!(weights, [3.2, 4.1, 5.0]);
    /// ```
    fn sort_small_by(&mut self, compare: impl FnMut(&T, &T) -> Ordering);

    /// Puts them in order by a key of each; the key is worked out at every comparison.
    ///
    /// ```
    /// use yeanling_core::sort_small::SortSmall;
    /// let mut tags = ["112", "7", "41", "5"];
    /// tags.sort_small_by_key(|tag| tag.len());
    /// assert_eq!(tags, ["7", "5", "41", "112"]);
    /// ```
    fn sort_small_by_key<K: Ord>(&mut self, mut key: impl FnMut(&T) -> K) {
        self.sort_small_by(|one, other| key(one).cmp(&key(other)));
    }

    /// Puts them in their own order.
    fn sort_small(&mut self)
    where
        T: Ord,
    {
        self.sort_small_by(T::cmp);
    }
}

/// Things that can be gathered into a map or a set, one after the other.
pub trait Gather: Iterator + Sized {
    /// Returns what holds them all; the last of the same key stays.
    ///
    /// ```
    /// use std::collections::BTreeSet;
    /// use yeanling_core::sort_small::Gather;
    /// let tags: BTreeSet<u32> = [41, 7, 41].into_iter().gathered();
    /// assert_eq!(tags, BTreeSet::from([7, 41]));
    /// ```
    fn gathered<C: Default + Extend<Self::Item>>(self) -> C {
        let mut all = C::default();
        all.extend(self);
        all
    }
}

impl<I: Iterator> Gather for I {}

impl<T> SortSmall<T> for [T] {
    fn sort_small_by(&mut self, mut compare: impl FnMut(&T, &T) -> Ordering) {
        let mut places = in_order(self.len(), &mut |one, other| compare(&self[one], &self[other]));
        for place in 0..self.len() {
            // What belonged here may have been swapped away by now; it then lies where that swap put it.
            let mut from = places[place];
            while from < place {
                from = places[from];
            }
            places[place] = from;
            self.swap(place, from);
        }
    }
}

/// Returns for each place in order where that thing is now.
fn in_order(length: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..length).collect();
    places.sort_by(|one, other| compare(*one, *other));
    places
}
