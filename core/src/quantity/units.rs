//! Units with their legal factors: uom's own are cut to seven digits.
//!
//! Factors: NIST SP 811, Guide for the Use of the International System of Units, 2008 edition, Appendix B, and NIST
//! Handbook 44, Appendix C; the pound is exact by the international agreement of 1959, the US gallon exactly 231 cubic inches.

/// Avoirdupois mass.
pub mod mass {
    unit! {
        system: uom::si;
        quantity: uom::si::mass;
        @pound: 0.453_592_37; "lb", "pound", "pounds";
        @ounce: 0.453_592_37 / 16.0; "oz", "ounce", "ounces";
    }
}
