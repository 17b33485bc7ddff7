//! What to do about an oven that is not as hot as its dial says: set it that much lower or higher. A difference of temperatures is no
//! temperature: 25 °F apart are 14 °C apart.

use super::Asker;
use super::answer::Answer;
use super::read::NotUnderstood;
use crate::reading::{OffDial, Scale, Side};
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Temperature, TemperatureInterval, celsius, fahrenheit, hotter_by, in_celsius};
use carvetime_core::roast::{Cooker, Heat};

/// The answer, with the dial's figure where what the bird is roasted at is known.
pub(super) fn answer(told: &OffDial, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let side = Arg::Choice(told.side.name());
    let answer = Answer::new("oven-temp");
    let by = told.by.filter(|_| told.side != Side::Unsaid).map(|by| apart(by, asker.ground.metric));
    let main = match by {
        None => Text::new("ask-off-dial").with("side", side),
        Some(by) => match dial(told, by, asker) {
            Some((setting, dial)) => Text::new("ask-off-dial-at")
                .with("setting", Arg::Temperature(setting))
                .with("dial", Arg::Temperature(dial))
                .with("side", side)
                .with("by", Arg::Degrees(by)),
            None => Text::new("ask-off-dial-by").with("side", side).with("by", Arg::Degrees(by)),
        },
    };
    // Who tells both figures has one.
    let answer = answer.say(main).say_if(told.figures.is_none(), || Text::new("ask-off-dial-thermometer"));
    let kelvin = |by: TemperatureInterval| by.get::<uom::si::temperature_interval::degree_celsius>();
    Ok(match by {
        Some(by) => answer.value("apart", kelvin(by), "°C"),
        None => answer,
    })
}

/// So many degrees apart, in the asker's scale where none was written.
fn apart((value, scale): (f64, Option<Scale>), metric: bool) -> TemperatureInterval {
    hotter_by(degrees(value, scale, metric), degrees(0.0, scale, metric))
}

fn degrees(value: f64, scale: Option<Scale>, metric: bool) -> Temperature {
    let usual = if metric { Scale::Celsius } else { Scale::Fahrenheit };
    match scale.unwrap_or(usual) {
        Scale::Celsius => celsius(value),
        Scale::Fahrenheit => fahrenheit(value),
    }
}

/// What the bird is roasted at, else what the dial was meant for, and what the dial has to stand at for it. `None`: neither is known, or no
/// dial goes there.
fn dial(told: &OffDial, by: TemperatureInterval, asker: &Asker) -> Option<(Temperature, Temperature)> {
    let set = told.figures.map(|figures| degrees(figures.dial, figures.scale, asker.ground.metric));
    let meant = set.map(|setting| Heat { cooker: Cooker::Oven, setting });
    let heat = asker.heat.or(meant).filter(|heat| heat.cooker != Cooker::Smoker)?;
    let by = by.get::<uom::si::temperature_interval::degree_celsius>();
    let by = if told.side == Side::Cold { by } else { -by };
    let dial = celsius(in_celsius(heat.setting) + by);
    heat.cooker.settings().holds(dial).then_some((heat.setting, dial))
}
