//! A text is taken apart once a turn, however many readers ask for it.
//!
//! Start at [`once`]. Outside of it, and of more texts than it keeps, everything is taken apart anew: the outcome is the same.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::told::Told;
use std::cell::{OnceCell, RefCell};
use std::rc::Rc;

/// Texts that [`once`] remembers: beyond that it is a long log, and each line is read once anyway.
const MANY: usize = 64;

/// A text as it was given, the words it is read by, and what came of it so far.
struct Taken {
    text: String,
    lexicon: &'static Lexicon,
    sentence: OnceCell<Sentence>,
    told: OnceCell<Rc<Told>>,
}

thread_local! {
    /// What [`once`] has taken apart so far; `None` outside of it.
    static TAKEN: RefCell<Option<Vec<Rc<Taken>>>> = const { RefCell::new(None) };
}

/// Within `work` a text is taken apart once, however many readers ask for it. Nothing of it is kept afterwards.
pub fn once<T>(work: impl FnOnce() -> T) -> T {
    /// Puts back what was there before, also after a panic.
    struct Before(Option<Vec<Rc<Taken>>>);
    impl Drop for Before {
        fn drop(&mut self) {
            TAKEN.set(self.0.take());
        }
    }
    let _before = Before(TAKEN.replace(Some(Vec::new())));
    work()
}

/// The sentence of `text`, or `new`.
pub(super) fn sentence(text: &str, lexicon: &'static Lexicon, new: impl FnOnce() -> Sentence) -> Sentence {
    match taken(text, lexicon) {
        Some(taken) => taken.sentence.get_or_init(new).clone(),
        None => new(),
    }
}

/// The words of `text`, or `new`.
pub(super) fn told(text: &str, lexicon: &'static Lexicon, new: impl FnOnce() -> Told) -> Rc<Told> {
    match taken(text, lexicon) {
        Some(taken) => Rc::clone(taken.told.get_or_init(|| Rc::new(new()))),
        None => Rc::new(new()),
    }
}

/// The place kept for that text, if there is one.
fn taken(text: &str, lexicon: &'static Lexicon) -> Option<Rc<Taken>> {
    TAKEN.with_borrow_mut(|taken| {
        let taken = taken.as_mut()?;
        let same = |taken: &&Rc<Taken>| taken.text == text && std::ptr::eq(taken.lexicon, lexicon);
        if let Some(known) = taken.iter().find(same) {
            return Some(Rc::clone(known));
        }
        let new = || {
            let (text, sentence, told) = (text.to_owned(), OnceCell::new(), OnceCell::new());
            Rc::new(Taken { text, lexicon, sentence, told })
        };
        (taken.len() < MANY).then(|| {
            let new = new();
            taken.push(Rc::clone(&new));
            new
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_taken_apart_once_by_each_lexicon_and_nothing_is_kept() {
        let kept = || TAKEN.with_borrow(|taken| taken.as_ref().map(Vec::len));
        let read = |tag| {
            let lexicon = Lexicon::of(tag);
            Sentence::read("the bird is in", lexicon);
            Told::of("the bird is in", lexicon)
        };
        once(|| {
            assert!(Rc::ptr_eq(&read("en"), &read("en")));
            assert!(!Rc::ptr_eq(&read("en"), &read("de")));
            assert_eq!(kept(), Some(2));
            once(|| read("en"));
            assert_eq!(kept(), Some(2));
        });
        let _ = std::panic::catch_unwind(|| once(|| std::panic::resume_unwind(Box::new(read("en").words().len()))));
        assert_eq!(kept(), None);
    }
}
