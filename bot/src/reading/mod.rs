//! Reading what people type: plan sentences, times, readings, moves. Word tables come from `locales/*/lexicon.ftl`.

mod wish;

pub use wish::Wish;
