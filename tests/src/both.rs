//! Both ways of receiving: the same test with updates asked for and with updates delivered.
//!
//! [`both_ways`](crate::both_ways) makes two tests of each function; kitchens and scenes look here which way it is.

use std::cell::Cell;

thread_local! {
    static DELIVERED: Cell<bool> = const { Cell::new(false) };
}

/// Whether the running test has its updates delivered.
pub fn delivered() -> bool {
    DELIVERED.get()
}

/// Runs `test` on this thread in one of the two ways.
pub fn run(delivered: bool, test: fn()) {
    DELIVERED.set(delivered);
    test();
}

/// Two tests of each function: `asked_for::NAME` and `delivered::NAME`.
#[macro_export]
macro_rules! both_ways {
    ($($name:ident)*) => {
        mod asked_for {
            $(#[test] fn $name() { carvetime_tests::both::run(false, super::$name); })*
        }
        mod delivered {
            $(#[test] fn $name() { carvetime_tests::both::run(true, super::$name); })*
        }
    };
}
