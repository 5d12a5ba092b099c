//! Sound and shaking. A phone gives a page a voice only from a tap: that tap arms it, and it can ring from then on.

use std::cell::RefCell;

use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::{AudioContext, AudioContextState, OscillatorType};

use super::{reach, window};

/// How loud each step of a ring is, full being 1; it stays at the last (ours).
const LOUDNESS: [f32; 5] = [0.06, 0.12, 0.25, 0.5, 1.0];

/// How many beats a step lasts, a beat being a second (ours).
const BEATS_A_STEP: usize = 6;

/// How loud the test is: what one hears after a quarter of a minute (ours).
const TEST_LOUDNESS: f32 = 0.25;

/// The two tones of a beat, in hertz: where small loudspeakers are loud and old ears still good (ours).
const TONES: [f32; 2] = [880.0, 1175.0];

/// How long the phone shakes at each beat, in milliseconds.
const SHAKES_FOR: f64 = 500.0;

/// The voice that a tap gave.
struct Voice {
    context: AudioContext,
    /// How many beats it has rung; none while it is quiet.
    beats: Option<usize>,
    /// Kept, since the browser calls it.
    _changed: Closure<dyn Fn()>,
}

thread_local! {
    static VOICE: RefCell<Option<Voice>> = const { RefCell::new(None) };
}

/// Makes the voice and plays a test; only ever in a tap. `told` hears whether it sounds, now and when that changes.
///
/// # Errors
/// This browser has no sound.
pub fn arm(told: impl Fn(bool) + 'static) -> Result<(), JsValue> {
    arm_inner(Box::new(told))
}

fn arm_inner(told: Box<dyn Fn(bool)>) -> Result<(), JsValue> {
    disarm();
    if let Some(session) = reach::get(&window().navigator(), "audioSession") {
        // Where it can be said, an alarm sounds even if the phone is set to be silent.
        let _ = Reflect::set(&session, &JsValue::from_str("type"), &JsValue::from_str("playback"));
    }
    let context = AudioContext::new()?;
    let heard = context.clone();
    let changed = Closure::<dyn Fn()>::new(move || told(heard.state() == AudioContextState::Running));
    context.set_onstatechange(Some(changed.as_ref().unchecked_ref()));
    tones(&context, TEST_LOUDNESS)?;
    VOICE.set(Some(Voice { context, beats: None, _changed: changed }));
    waken();
    Ok(())
}

/// Asks the phone to let the voice sound again, as after a call or a pocket.
pub fn waken() {
    VOICE.with_borrow(|voice| {
        if let Some(voice) = voice {
            let _ = voice.context.resume();
        }
    });
}

/// Begins to ring, if it does not ring already; [`beat`] goes on with it.
pub fn ring() {
    let begins = VOICE.with_borrow_mut(|voice| {
        let voice = voice.as_mut().filter(|voice| voice.beats.is_none())?;
        voice.beats = Some(0);
        Some(())
    });
    if begins.is_some() {
        beat();
    }
}

/// Rings once more while it rings, louder step by step; the phone shakes where it can. To be called every second.
pub fn beat() {
    VOICE.with_borrow_mut(|voice| {
        let Some(Voice { context, beats: Some(beats), .. }) = voice else { return };
        let step = (*beats / BEATS_A_STEP).min(LOUDNESS.len() - 1);
        *beats += 1;
        // A beat that fails is followed by the next; the screen shows the same in words.
        let _ = tones(context, LOUDNESS[step]);
        reach::call(&window().navigator(), "vibrate", &[JsValue::from_f64(SHAKES_FOR)]);
    });
}

/// Ends the ring; the voice stays armed.
pub fn quiet() {
    let rang = VOICE.with_borrow_mut(|voice| voice.as_mut()?.beats.take());
    if rang.is_some() {
        reach::call(&window().navigator(), "vibrate", &[JsValue::from_f64(0.0)]);
    }
}

/// Gives the voice back to the phone.
pub fn disarm() {
    quiet();
    if let Some(voice) = VOICE.take() {
        voice.context.set_onstatechange(None);
        let _ = voice.context.close();
    }
}

fn tones(context: &AudioContext, loudness: f32) -> Result<(), JsValue> {
    let mut at = context.current_time();
    for hertz in TONES {
        let gain = context.create_gain()?;
        gain.gain().set_value(loudness);
        gain.connect_with_audio_node(&context.destination())?;
        let tone = context.create_oscillator()?;
        tone.set_type(OscillatorType::Square);
        tone.frequency().set_value(hertz);
        tone.connect_with_audio_node(&gain)?;
        tone.start_with_when(at)?;
        tone.stop_with_when(at + 0.2)?;
        at += 0.25;
    }
    Ok(())
}
