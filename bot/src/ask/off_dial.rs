//! What to do about an oven that is not as hot as its dial says: set it that much lower or higher. A difference of temperatures is no
//! temperature: 25 °F apart are 14 °C apart.

use super::Asker;
use super::answer::Answer;
use super::read::NotUnderstood;
use crate::reading::{OffDial, Scale, Side};
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Temperature, TemperatureInterval, celsius, fahrenheit, hotter_by, in_celsius};
use carvetime_core::roast::Cooker;

/// The answer, with the dial's figure where what the bird is roasted at is known.
pub(super) fn answer(told: &OffDial, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let side = Arg::Choice(told.side.name());
    let answer = Answer::new("oven-temp");
    let by = told.by.filter(|_| told.side != Side::Unsaid).map(|by| apart(by, asker.ground.metric));
    let main = match by {
        None => Text::new("ask-off-dial").with("side", side),
        Some(by) => match dial(told.side, by, asker) {
            Some((setting, dial)) => Text::new("ask-off-dial-at")
                .with("setting", Arg::Temperature(setting))
                .with("dial", Arg::Temperature(dial))
                .with("side", side)
                .with("by", Arg::Degrees(by)),
            None => Text::new("ask-off-dial-by").with("side", side).with("by", Arg::Degrees(by)),
        },
    };
    let answer = answer.say(main).say(Text::new("ask-off-dial-thermometer"));
    let kelvin = |by: TemperatureInterval| by.get::<uom::si::temperature_interval::degree_celsius>();
    Ok(match by {
        Some(by) => answer.value("apart", kelvin(by), "°C"),
        None => answer,
    })
}

/// So many degrees apart, in the asker's scale where none was written.
fn apart((value, scale): (f64, Option<Scale>), metric: bool) -> TemperatureInterval {
    let usual = if metric { Scale::Celsius } else { Scale::Fahrenheit };
    match scale.unwrap_or(usual) {
        Scale::Celsius => hotter_by(celsius(value), celsius(0.0)),
        Scale::Fahrenheit => hotter_by(fahrenheit(value), fahrenheit(0.0)),
    }
}

/// What the bird is roasted at, and what the dial has to stand at for it. `None`: nothing is planned, or no dial goes there.
fn dial(side: Side, by: TemperatureInterval, asker: &Asker) -> Option<(Temperature, Temperature)> {
    let heat = asker.heat.filter(|heat| heat.cooker != Cooker::Smoker)?;
    let by = by.get::<uom::si::temperature_interval::degree_celsius>();
    let by = if side == Side::Cold { by } else { -by };
    let dial = celsius(in_celsius(heat.setting) + by);
    heat.cooker.settings().holds(dial).then_some((heat.setting, dial))
}
