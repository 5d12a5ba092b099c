//! When lambs are lost.

use yeanling_core::reckon::losses::Span;
use yeanling_core::units::TimeDelta;

#[test]
fn a_span_holds_its_beginning_and_not_its_end() {
    // Source: common practice; the edges are ours.
    let of = |minutes| Span::of(TimeDelta::minutes(minutes));
    let (hour, day) = (60, 24 * 60);
    assert_eq!([-1, 0, day - 1].map(of), [Span::FirstDay; 3]);
    assert_eq!([day, 2 * day - 1].map(of), [Span::SecondDay; 2]);
    assert_eq!([2 * day, 7 * day - 1].map(of), [Span::FirstWeek; 2]);
    assert_eq!([7 * day, 28 * day - hour].map(of), [Span::FourWeeks; 2]);
    assert_eq!([28 * day, 200 * day].map(of), [Span::ToWeaning; 2]);
    assert!(Span::ALL.is_sorted());
}
