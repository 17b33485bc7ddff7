//! A dose of salt place by place, measured so that the places add up to the whole.

use super::Arg;
use carvetime_core::salt::{Dose, Salt, Share};

/// The spoons of one place. The first takes what rounding leaves over: there is most of it, and nobody sees it there.
pub fn share(dose: &Dose, share: &Share, salt: &Salt) -> Arg {
    let first = dose.shares.first().is_some_and(|first| first.place == share.place && first.count == 1);
    if !first {
        return Arg::Spoons(salt.volume_of(share.each));
    }
    let others = dose.shares.iter().skip(1).map(|other| (other.count, salt.volume_of(other.each))).collect();
    Arg::SpoonsLeft { total: salt.volume_of(dose.total), others }
}
