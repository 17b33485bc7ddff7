//! Stable names for the variants of an enum: what the store, the scripts and the locales call them.

/// Gives a field-less enum `ALL`, `name` and `from_name`.
macro_rules! names {
    ($type:ty { $($variant:ident => $name:literal),+ $(,)? }) => {
        impl $type {
            /// All variants, in the order of their names' table.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The stable name: used in stored data, scripts and locale keys, never shown raw.
            pub fn name(self) -> &'static str {
                match self {
                    $(Self::$variant => $name),+
                }
            }

            /// The variant of that name.
            pub fn from_name(name: &str) -> Option<Self> {
                match name {
                    $($name => Some(Self::$variant),)+
                    _ => None,
                }
            }
        }
    };
}
