//! Thermal properties of meat from what it is made of: Choi and Okos' relations, with ice below the freezing point.
//!
//! Owns the component polynomials and the mixing rules. Knows nothing of shapes, birds or cooks. Start at
//! [`Composition::conductivity`]. Temperatures are °C, properties SI.
//!
//! Source: [`crate::source::CHOI_OKOS`]; ice: [`crate::source::ICE_SHARE`].

/// Latent heat of fusion of water, J/kg (ASHRAE, same chapter: 333.6 kJ/kg).
const FUSION: f64 = 333_600.0;

/// A property of one component: `c0 + c1 T + c2 T²`, T in °C.
type Polynomial = [f64; 3];

/// Density kg/m³, specific heat kJ/(kg K), conductivity W/(m K).
struct Component {
    density: Polynomial,
    specific_heat: Polynomial,
    conductivity: Polynomial,
}

const WATER: Component = Component {
    density: [997.18, 0.003_143_9, -0.003_757_4],
    specific_heat: [4.1289, -9.0864e-5, 5.4731e-6],
    conductivity: [0.571_09, 0.001_762_5, -6.7036e-6],
};
const ICE: Component = Component {
    density: [916.89, -0.130_71, 0.0],
    specific_heat: [2.0623, 0.006_076_9, 0.0],
    conductivity: [2.2196, -0.006_248_9, 1.0154e-4],
};
const PROTEIN: Component = Component {
    density: [1329.9, -0.5184, 0.0],
    specific_heat: [2.0082, 0.001_208_9, -1.3129e-6],
    conductivity: [0.178_81, 0.001_195_8, -2.7178e-6],
};
const FAT: Component = Component {
    density: [925.59, -0.417_57, 0.0],
    specific_heat: [1.9842, 0.001_473_3, -4.8008e-6],
    conductivity: [0.180_71, -2.7604e-4, -1.7749e-7],
};
const CARBOHYDRATE: Component = Component {
    density: [1599.1, -0.310_46, 0.0],
    specific_heat: [1.5488, 0.001_962_5, -5.9399e-6],
    conductivity: [0.201_41, 0.001_387_4, -4.3312e-6],
};
const ASH: Component = Component {
    density: [2423.8, -0.280_63, 0.0],
    specific_heat: [1.0926, 0.001_889_6, -3.6817e-6],
    conductivity: [0.329_62, 0.001_401_1, -2.9069e-6],
};

/// Mass shares of what meat is made of. They are scaled to one, so grams in 100 g may be given as printed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Composition {
    /// Water.
    pub water: f64,
    /// Protein.
    pub protein: f64,
    /// Fat.
    pub fat: f64,
    /// Carbohydrate.
    pub carbohydrate: f64,
    /// Ash.
    pub ash: f64,
}

/// How the components lie to the flow of heat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layers {
    /// Side by side: the upper bound.
    Parallel,
    /// One behind the other: the lower bound.
    Series,
}

impl Composition {
    /// Turkey, whole, meat and skin, raw. USDA SR28 05165.
    pub const TURKEY: Self = Self { water: 72.69, protein: 21.64, fat: 5.64, carbohydrate: 0.13, ash: 0.98 };
    /// Turkey, light meat, raw. USDA SR28 05185.
    pub const TURKEY_LIGHT: Self = Self { water: 74.89, protein: 23.66, fat: 1.48, carbohydrate: 0.14, ash: 1.04 };
    /// Turkey, dark meat, raw. USDA SR28 05187.
    pub const TURKEY_DARK: Self = Self { water: 76.01, protein: 21.28, fat: 2.5, carbohydrate: 0.15, ash: 1.03 };
    /// Chicken, broilers or fryers, meat and skin, raw. USDA SR28 05006.
    pub const CHICKEN: Self = Self { water: 65.99, protein: 18.6, fat: 15.06, carbohydrate: 0.0, ash: 0.79 };

    /// Where ice first forms on cooling, °C: water's own 0 °C lowered by what is dissolved. From memory: poultry about -1.
    pub const FREEZING: f64 = -1.0;

    /// Share of the mass that is ice at `celsius`.
    ///
    /// # Source
    /// [`crate::source::ICE_SHARE`]: `1.105 x_w / (1 + 0.7138 / ln(Tf - T + 1))`.
    pub fn ice(&self, celsius: f64) -> f64 {
        if celsius >= Self::FREEZING {
            return 0.0;
        }
        let water = self.shares().water;
        (1.105 * water / (1.0 + 0.7138 / (Self::FREEZING - celsius + 1.0).ln())).min(water)
    }

    /// Density, kg/m³.
    pub fn density(&self, celsius: f64) -> f64 {
        1.0 / self.parts(celsius).iter().map(|(share, part)| share / at(part.density, celsius)).sum::<f64>()
    }

    /// Sensible specific heat, J/(kg K); the latent heat of melting is in [`Composition::enthalpy`] alone.
    pub fn specific_heat(&self, celsius: f64) -> f64 {
        1000.0 * self.parts(celsius).iter().map(|(share, part)| share * at(part.specific_heat, celsius)).sum::<f64>()
    }

    /// Thermal conductivity, W/(m K).
    pub fn conductivity(&self, celsius: f64, layers: Layers) -> f64 {
        let density = self.density(celsius);
        let volumes = self
            .parts(celsius)
            .map(|(share, part)| (share * density / at(part.density, celsius), at(part.conductivity, celsius)));
        match layers {
            Layers::Parallel => volumes.iter().map(|(volume, k)| volume * k).sum(),
            Layers::Series => 1.0 / volumes.iter().map(|(volume, k)| volume / k).sum::<f64>(),
        }
    }

    /// Thermal diffusivity, m²/s, above freezing.
    pub fn diffusivity(&self, celsius: f64, layers: Layers) -> f64 {
        self.conductivity(celsius, layers) / (self.density(celsius) * self.specific_heat(celsius))
    }

    /// Enthalpy above that of the meat just thawed, J/kg: negative while ice is left.
    pub fn enthalpy(&self, celsius: f64) -> f64 {
        let thawed = Self::FREEZING;
        let mean = self.specific_heat(0.5 * (celsius + thawed));
        mean * (celsius - thawed) - FUSION * self.ice(celsius)
    }

    fn shares(&self) -> Self {
        let whole = self.water + self.protein + self.fat + self.carbohydrate + self.ash;
        Self {
            water: self.water / whole,
            protein: self.protein / whole,
            fat: self.fat / whole,
            carbohydrate: self.carbohydrate / whole,
            ash: self.ash / whole,
        }
    }

    fn parts(&self, celsius: f64) -> [(f64, &'static Component); 6] {
        let shares = self.shares();
        let ice = self.ice(celsius);
        [
            (shares.water - ice, &WATER),
            (ice, &ICE),
            (shares.protein, &PROTEIN),
            (shares.fat, &FAT),
            (shares.carbohydrate, &CARBOHYDRATE),
            (shares.ash, &ASH),
        ]
    }
}

fn at(polynomial: Polynomial, celsius: f64) -> f64 {
    let [c0, c1, c2] = polynomial;
    c0 + celsius * (c1 + celsius * c2)
}

/// A component by the name the published tables use, for comparing with them: density, specific heat (kJ/(kg K)), conductivity.
pub fn component(name: &str, celsius: f64) -> Option<[f64; 3]> {
    let part = match name {
        "water" => WATER,
        "ice" => ICE,
        "protein" => PROTEIN,
        "fat" => FAT,
        "carbohydrate" => CARBOHYDRATE,
        "ash" => ASH,
        _ => return None,
    };
    Some([at(part.density, celsius), at(part.specific_heat, celsius), at(part.conductivity, celsius)])
}
