//! What the skin takes from the air round it: convection and radiation in, evaporation out.
//!
//! Owns the surface law and wet-bulb physics. Knows nothing of what lies below the skin. Start at [`Skin::flux`].
//! A wet skin stays near the wet-bulb temperature: in a hot oven that hardly matters, in a low smoker it is the stall.

/// Stefan–Boltzmann constant, W/(m² K⁴).
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;

/// Psychrometric constant of air at sea level, Pa/K: about 66 (from memory; ASHRAE Fundamentals, Psychrometrics).
const PSYCHROMETRIC: f64 = 66.0;

/// The skin and the air at it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Skin {
    /// Convective coefficient, W/(m² K).
    pub convection: f64,
    /// Emissivity towards walls at the temperature of the air; 0: no radiation beyond `convection`.
    pub emissivity: f64,
    /// How freely water leaves: 0 a dry crust, 1 an open water surface.
    pub wetness: f64,
    /// Vapour pressure in the air, Pa.
    pub vapor: f64,
}

impl Skin {
    /// Convection alone.
    pub fn dry(convection: f64) -> Self {
        Self { convection, emissivity: 0.0, wetness: 0.0, vapor: 0.0 }
    }

    /// Heat into the meat, W/m², with the skin at `skin` °C and the air at `air` °C, and its slope in the skin's temperature.
    pub fn flux(&self, skin: f64, air: f64) -> (f64, f64) {
        let (mut heat, mut slope) = (self.convection * (air - skin), -self.convection);
        if self.emissivity > 0.0 {
            let (hot, cold) = (air + 273.15, skin + 273.15);
            heat += self.emissivity * STEFAN_BOLTZMANN * (hot.powi(4) - cold.powi(4));
            slope -= 4.0 * self.emissivity * STEFAN_BOLTZMANN * cold.powi(3);
        }
        if self.wetness > 0.0 {
            let (pressure, rise) = saturation(skin);
            if pressure > self.vapor {
                let coefficient = self.wetness * self.convection / PSYCHROMETRIC;
                heat -= coefficient * (pressure - self.vapor);
                slope -= coefficient * rise;
            }
        }
        (heat, slope)
    }
}

/// Saturation pressure of water, Pa, and its slope, Pa/K. Magnus form, [`crate::source::MAGNUS`] (from memory;
/// within 0.4 % up to 50 °C, 2 % at 100 °C). Above the boiling point it is continued straight: a skin hotter than that is dry.
pub fn saturation(celsius: f64) -> (f64, f64) {
    const BOILING: f64 = 100.0;
    let at = celsius.clamp(-40.0, BOILING);
    let pressure = 610.94 * (17.625 * at / (at + 243.04)).exp();
    let slope = pressure * 17.625 * 243.04 / (at + 243.04).powi(2);
    (pressure + slope * (celsius - at), slope)
}

/// The temperature, °C, at which a wet surface neither warms nor cools in air at `air` °C with `vapor` Pa of water in it.
pub fn wet_bulb(air: f64, vapor: f64) -> f64 {
    let wet = Skin { convection: 1.0, emissivity: 0.0, wetness: 1.0, vapor };
    let (mut low, mut high) = (-40.0, air);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if wet.flux(middle, air).0 > 0.0 { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}
