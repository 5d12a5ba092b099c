//! The hand on the Watch: what it asked for on a sheet, and which buttons it pressed while the rows stand still.

use yeanling_core::book::Animal;

use super::place::Pressed;
use super::shown::{Act, Asked, Does};
use crate::farm::Farm;
use crate::signals::prelude::*;

/// What the hand is at. Cheap to copy.
#[derive(Clone, Copy, Debug)]
pub(super) struct Hand {
    farm: Farm,
    /// What is asked on a sheet.
    pub(super) asked: RwSignal<Option<Asked>>,
    /// Read with the ground that each press changes, so nobody follows it.
    pressed: RwSignal<Vec<Pressed>>,
}

impl Hand {
    /// Returns a hand that has pressed nothing; what it presses counts as long as the rows stand still.
    pub(super) fn new(farm: Farm) -> Self {
        let pressed = RwSignal::new(Vec::new());
        Effect::new(move |_| {
            if !farm.holds_still() {
                pressed.set(Vec::new());
            }
        });
        Self { farm, asked: RwSignal::new(None), pressed }
    }

    /// Does what a button says.
    pub(super) fn press(self, animal: Animal, act: &Act) {
        match &act.does {
            Does::Notes(event) => {
                if let Some(entry) = self.farm.tap(event.clone()) {
                    let pressed = Pressed { animal, act: act.clone(), entry };
                    self.pressed.update(|all| all.push(pressed));
                }
            }
            Does::Asks(what) => self.asked.set(Some(what.clone())),
            Does::Leads(_) | Does::Done(_) | Does::Over(_) => {}
        }
    }

    /// Returns what it pressed, without what was taken back.
    pub(super) fn pressed(self) -> Vec<Pressed> {
        let mut pressed = self.pressed.get_untracked();
        self.farm.peek(|ground| {
            pressed.retain(|one| {
                let mut lines = ground.flock.lines_of(one.animal).rev();
                lines.find(|line| line.entry == one.entry).is_some_and(|line| !line.struck)
            });
        });
        pressed
    }
}
