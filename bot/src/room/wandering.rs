//! "The thermometer said 140 then 98 then 112", of one spot of the bird over the heat: the lowest counts until it is looked at again.

use super::{RoomKind, Sitting, jobs, readings};
use crate::reading::{self, Place};
use crate::words::{Arg, Text};
use carvetime_core::quantity::celsius;

/// `false`: nothing wanders, no bird is on, or it is said among people of nobody knows what.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(said) = reading::read_wandering(text, &sitting.ground()).filter(|_| readings::cooks(sitting)) else {
        return false;
    };
    let Some(who) = sitting.speaker() else { return false };
    let among = sitting.room.kind == RoomKind::Group && !addressed;
    let of_it = said.place.is_some() || said.measured;
    if among && !of_it && (!jobs::is_asked_for_readings(sitting) || readings::is_talk(sitting, text)) {
        return false;
    }
    let none = readings::of_air(0.0, Some(who), sitting.now);
    let mut reading = super::state::StoredReading { pit_c: None, ..none };
    let spot = match said.place {
        Some(Place::Thigh) => &mut reading.thigh_c,
        Some(Place::Wing) => &mut reading.wing_c,
        Some(Place::Stuffing) => &mut reading.stuffing_c,
        Some(Place::Breast | Place::Pit) | None => &mut reading.breast_c,
    };
    *spot = Some(said.lowest_c);
    let before = sitting.says.len();
    readings::note(sitting, who, &reading);
    if let Some(say) = sitting.says.get_mut(before) {
        let at = say.text.len().min(1);
        say.text.insert(at, Text::new("room-wandering").with("low", Arg::Temperature(celsius(said.lowest_c))));
    }
    true
}
