//! The ten-point score: five signs of 0, 1 or 2 points, four without an oximeter, the scale always beside the score.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::book::{Animal, Event, LambId, VigorScale};
use yeanling_core::reckon::ten_point::{Points, Scale, Score, Sign, Signs, score};

use super::whose::whose;
use super::why_text;
use crate::farm::use_farm;
use crate::parts::{Button, Choice, Choices, Remark, Sheet, Weight, WhyButton};
use crate::words::{lamb as words, why};

/// What was seen of a sign: its points, or that there is no oximeter.
const NO_OXIMETER: u8 = 9;

/// Scores vigor by ten points.
#[component]
pub(crate) fn TenPointSheet(
    /// Which lamb.
    lamb: LambId,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let farm = use_farm();
    let seen = RwSignal::new([None::<u8>; Sign::ALL.len()]);
    let scored = Memo::new(move |_| seen.with(of));
    let save = move || {
        if let Some(Score { points, scale, .. }) = scored.get_untracked() {
            let scale = match scale {
                Scale::TenPoint => VigorScale::TenPoint,
                Scale::EightPointAdapted => VigorScale::EightPoint,
            };
            if farm.tap(Event::VigorScored { lamb, scale, score: points }).is_some() {
                on_close.run(());
            }
        }
    };
    let signs: Vec<AnyView> = Sign::ALL
        .into_iter()
        .enumerate()
        .map(|(place, sign)| {
            let (name, looks) = why::sign(sign);
            let mut options: Vec<Choice<u8>> =
                (0_u8..).zip(looks).map(|(points, look)| Choice::new(points, look)).collect();
            if sign == Sign::Breathing {
                options.push(Choice::new(NO_OXIMETER, words::NO_OXIMETER));
            }
            let chosen = Signal::derive(move || seen.with(|seen| seen.get(place).copied().flatten()));
            let choose = move |points: u8| {
                seen.update(|seen| {
                    if let Some(sign) = seen.get_mut(place) {
                        *sign = Some(points);
                    }
                });
            };
            view! { <Choices label=name labelled=true options=options chosen=chosen on_choose=choose /> }
                .into_any()
        })
        .collect();
    view! {
        <Sheet title=words::VIGOR_ASK whose=whose(Animal::Lamb(lamb)) on_close=on_close>
            <p>{words::TEN_POINT_SCALE}</p>
            {signs}
            {live(move || match scored.get() {
                None => view! { <Remark text=words::TEN_POINT_LEFT /> }.into_any(),
                Some(score) => {
                    let text = format!("*{}*", why::points(&score));
                    view! { <Remark text=text><WhyButton why=why_text(why::ten_point(&score)) /></Remark> }.into_any()
                }
            })}
            <Button
                label=words::SAVE_SCORE
                on_press=save
                weight=Weight::Filled
                disabled=Signal::derive(move || scored.with(Option::is_none))
            />
        </Sheet>
    }
}

/// Returns the score once every sign was seen.
fn of(seen: &[Option<u8>; Sign::ALL.len()]) -> Option<Score> {
    let [pulse, breathing, gums, nose, rump] = *seen;
    let points = |seen: u8| match seen {
        0 => Points::Zero,
        1 => Points::One,
        _ => Points::Two,
    };
    let breathing = breathing?;
    Some(score(&Signs {
        pulse: points(pulse?),
        breathing: (breathing != NO_OXIMETER).then(|| points(breathing)),
        gums: points(gums?),
        nose: points(nose?),
        rump: points(rump?),
    }))
}
