//! Sources of the heat model.

use super::{Source, Standing};

sources! {
    /// Density, specific heat and conductivity of food's components.
    CHOI_OKOS = "choi-okos", "ASHRAE", "Handbook, Refrigeration: Thermal Properties of Foods (after Choi and Okos 1986)", "2006", "Tables 1 and 2", Seen;
    /// Conductivity of turkey, heat-transfer coefficient of a home oven, baking times.
    TURKEY_OVEN = "turkey-oven", "Journal of Food Science", "Modeling Heat Transfer During Oven Roasting of Unstuffed Turkeys (Chang, Carpenter and Toledo)", "1998", "abstract", Seen;
    /// Share of ice below the freezing point.
    ICE_SHARE = "ice-share", "ASHRAE", "Handbook, Refrigeration: Thermal Properties of Foods (after Tchigeov 1979)", "2006", "eq. 5", FromMemory;
    /// Saturation pressure of water.
    MAGNUS = "magnus", "Journal of Applied Meteorology", "Improved Magnus Form Approximation of Saturation Vapor Pressure (Alduchov and Eskridge)", "1996", "eq. 21", FromMemory;
}
