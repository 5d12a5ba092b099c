//! Chance that can be had again: the same seed gives the same night, on every machine.

/// A row of numbers that look thrown (`SplitMix64`).
pub(crate) struct Chance(u64);

impl Chance {
    pub(crate) const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A number from 0 to under `bound`.
    pub(crate) fn below(&mut self, bound: u32) -> u32 {
        u32::try_from((u64::from(bound) * (self.next() >> 32)) >> 32).unwrap_or(0)
    }

    /// A number from `least` to `most`, both among them.
    pub(crate) fn between(&mut self, least: u32, most: u32) -> u32 {
        least + self.below(most - least + 1)
    }

    /// Says yes once in so many times.
    pub(crate) fn one_in(&mut self, times: u32) -> bool {
        self.below(times) == 0
    }

    /// One of several.
    pub(crate) fn of<T: Copy>(&mut self, several: &[T]) -> T {
        several[usize::try_from(self.below(u32::try_from(several.len()).unwrap_or(1))).unwrap_or(0)]
    }
}
