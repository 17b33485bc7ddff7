//! End-to-end runs, published tables, fault and crash runs, load.
