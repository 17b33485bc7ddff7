//! What is made of a text is made once a turn, however many readers ask for it.
//!
//! Start at [`once`]; a reader that others ask for the same goes through [`shared`]. Outside of [`once`], and of more texts than it keeps,
//! everything is made anew: the outcome is the same.

use std::any::{Any, TypeId};
use std::cell::RefCell;
use std::marker::PhantomData;
use std::rc::Rc;

/// Texts kept of each reader: beyond that it is a long log, and each line is read once anyway.
const MANY: usize = 64;

/// What one reader has made so far.
struct Shelf<R, K, V> {
    of: PhantomData<R>,
    made: Vec<Made<K, V>>,
}

/// A text as it was given, what it was read by besides, and what came of it.
struct Made<K, V> {
    text: Box<str>,
    by: K,
    what: Rc<V>,
}

/// A [`Shelf`] for each reader, by its name.
type Shelves = Vec<(TypeId, Box<dyn Any>)>;

thread_local! {
    /// A [`Shelf`] for each reader that was asked so far; `None` outside of [`once`].
    static SHELVES: RefCell<Option<Shelves>> = const { RefCell::new(None) };
}

/// Within `work` what is shared of a text is made once. Nothing of it is kept afterwards.
pub fn once<T>(work: impl FnOnce() -> T) -> T {
    /// Puts back what was there before, also after a panic.
    struct Before(Option<Shelves>);
    impl Drop for Before {
        fn drop(&mut self) {
            SHELVES.set(self.0.take());
        }
    }
    let _before = Before(SHELVES.replace(Some(Vec::new())));
    work()
}

/// What `reader` makes of `text` by `by`, shared with whoever asked it for the same before. A reader is a function, or what captures nothing:
/// what it makes hangs on these two alone.
pub(crate) fn shared<K, V, R>(text: &str, by: &K, reader: R) -> Rc<V>
where
    K: Clone + PartialEq + 'static,
    V: 'static,
    R: Fn(&str, &K) -> V + 'static,
{
    const { assert!(size_of::<R>() == 0, "a reader that captures something may make something else each time") };
    let known = on_shelf::<K, V, R, _>(|made| {
        let same = made.iter().find(|made| *made.text == *text && made.by == *by);
        same.map(|made| Rc::clone(&made.what))
    });
    known.flatten().unwrap_or_else(|| {
        // Made while nothing is borrowed: readers ask each other.
        let what = Rc::new(reader(text, by));
        on_shelf::<K, V, R, _>(|made| {
            if made.len() < MANY {
                made.push(Made { text: text.into(), by: by.clone(), what: Rc::clone(&what) });
            }
        });
        what
    })
}

/// `work` on what that reader has made so far; `None` outside of [`once`].
fn on_shelf<K: 'static, V: 'static, R: 'static, T>(work: impl FnOnce(&mut Vec<Made<K, V>>) -> T) -> Option<T> {
    SHELVES.with_borrow_mut(|shelves| {
        let shelves = shelves.as_mut()?;
        let name = TypeId::of::<Shelf<R, K, V>>();
        let at = shelves.iter().position(|(own, _)| *own == name).unwrap_or_else(|| {
            shelves.push((name, Box::new(Shelf::<R, K, V> { of: PhantomData, made: Vec::new() })));
            shelves.len() - 1
        });
        let shelf = shelves.get_mut(at)?.1.downcast_mut::<Shelf<R, K, V>>()?;
        Some(work(&mut shelf.made))
    })
}

#[cfg(test)]
mod tests {
    use super::super::lexicon::Lexicon;
    use super::super::sentence::Sentence;
    use super::super::told::Told;
    use super::*;
    use std::cell::Cell;

    thread_local! {
        static READ: Cell<usize> = const { Cell::new(0) };
    }

    fn length(text: &str, times: &usize) -> usize {
        READ.set(READ.get() + 1);
        text.len() * times
    }

    fn longer(text: &str, times: &usize) -> usize {
        length(text, times) + 1
    }

    #[test]
    fn a_text_is_read_once_by_each_reader_on_each_ground_and_nothing_is_kept() {
        let all = || [("bird", 1), ("bird", 2), ("oven", 1)].map(|(text, times)| *shared(text, &times, length));
        once(|| {
            assert_eq!((all(), all(), READ.get()), ([4, 8, 4], [4, 8, 4], 3));
            assert_eq!((*shared("bird", &1, longer), READ.get()), (5, 4), "another reader makes another thing of it");
            once(all);
            assert_eq!(READ.get(), 7, "a turn within a turn knows nothing of it");
            all();
            assert_eq!(READ.get(), 7);
        });
        let kept = || SHELVES.with_borrow(Option::is_some);
        let _ = std::panic::catch_unwind(|| once(|| std::panic::resume_unwind(Box::new(all()))));
        assert!(!kept());
        all();
        all();
        assert_eq!(READ.get(), 16);
    }

    #[test]
    fn of_more_texts_than_are_kept_the_last_are_read_anew() {
        READ.set(0);
        let texts: Vec<String> = (0..MANY + 10).map(|nth| nth.to_string()).collect();
        once(|| {
            (0..2).for_each(|_| texts.iter().for_each(|text| assert_eq!(*shared(text, &1, length), text.len())));
            assert_eq!(READ.get(), MANY + 20);
        });
    }

    #[test]
    fn a_text_is_taken_apart_once_by_each_lexicon() {
        let read = |tag| {
            let lexicon = Lexicon::of(tag);
            Sentence::read("the bird is in", lexicon);
            Told::of("the bird is in", lexicon)
        };
        once(|| {
            assert!(Rc::ptr_eq(&read("en"), &read("en")));
            assert!(!Rc::ptr_eq(&read("en"), &read("de")));
        });
        assert!(!Rc::ptr_eq(&read("en"), &read("en")));
    }
}
