//! Units of mass and volume with their exact sizes, and units of count.

use super::{Amount, Grams, Millilitres};
use crate::exact::rounding::guarded;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Units of mass.
///
/// The avoirdupois pound is 0.453 592 37 kg exactly and the ounce its
/// sixteenth (NIST Handbook 44, Appendix C; NIST SP 811, Appendix B).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum MassUnit {
    /// 0.001 g.
    Milligram,
    /// The gram.
    Gram,
    /// 28.349523125 g.
    Ounce,
    /// 453.59237 g.
    Pound,
    /// 1000 g.
    Kilogram,
}

impl MassUnit {
    /// All units of mass, smallest first.
    pub const ALL: [Self; 5] = [
        Self::Milligram,
        Self::Gram,
        Self::Ounce,
        Self::Pound,
        Self::Kilogram,
    ];

    /// Size in billionths of a gram, a whole number for every unit.
    const fn nanograms(self) -> u64 {
        match self {
            Self::Milligram => 1_000_000,
            Self::Gram => 1_000_000_000,
            Self::Ounce => 28_349_523_125,
            Self::Pound => 453_592_370_000,
            Self::Kilogram => 1_000_000_000_000,
        }
    }

    /// Exact size.
    pub fn grams(self) -> Grams {
        Grams::new(Decimal::from_i128_with_scale(self.nanograms().into(), 9).normalize())
    }

    /// How many of `smaller` make one of this, exactly.
    pub fn ratio_to(self, smaller: Self) -> Option<Amount> {
        Amount::fraction(self.nanograms().into(), smaller.nanograms().into())
    }

    /// The mass of so many of this unit.
    pub fn of(self, number: Decimal) -> Grams {
        self.grams() * number
    }

    /// How many of this unit a mass is, without the noise of the division.
    pub fn number_in(self, mass: Grams) -> Decimal {
        guarded(mass.grams() / self.grams().grams())
    }

    /// The usual symbol.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Milligram => "mg",
            Self::Gram => "g",
            Self::Ounce => "oz",
            Self::Pound => "lb",
            Self::Kilogram => "kg",
        }
    }
}

/// Units of volume; the US customary ones are liquid measure.
///
/// The US gallon is 231 cubic inches, 3785.411784 mL exactly; a quart is its
/// quarter, a pint half a quart, a cup half a pint, a fluid ounce the eighth of
/// a cup, a tablespoon half a fluid ounce and a teaspoon a third of that (NIST
/// Handbook 44, Appendix C). These are kitchen measures: the 240 mL cup of
/// label serving sizes (21 CFR 101.9(b)(5)(viii)) is not used to weigh food.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum VolumeUnit {
    /// The millilitre.
    Millilitre,
    /// 4.92892159375 mL.
    Teaspoon,
    /// 14.78676478125 mL.
    Tablespoon,
    /// 29.5735295625 mL.
    FluidOunce,
    /// 100 mL.
    Decilitre,
    /// 236.5882365 mL.
    Cup,
    /// 473.176473 mL.
    Pint,
    /// 946.352946 mL.
    Quart,
    /// 1000 mL.
    Litre,
    /// 3785.411784 mL.
    Gallon,
}

impl VolumeUnit {
    /// All units of volume, smallest first.
    pub const ALL: [Self; 10] = [
        Self::Millilitre,
        Self::Teaspoon,
        Self::Tablespoon,
        Self::FluidOunce,
        Self::Decilitre,
        Self::Cup,
        Self::Pint,
        Self::Quart,
        Self::Litre,
        Self::Gallon,
    ];

    /// Size in hundred-billionths of a millilitre, a whole number for every
    /// unit.
    const fn parts(self) -> u64 {
        const TEASPOON: u64 = 492_892_159_375;
        match self {
            Self::Millilitre => 100_000_000_000,
            Self::Teaspoon => TEASPOON,
            Self::Tablespoon => 3 * TEASPOON,
            Self::FluidOunce => 6 * TEASPOON,
            Self::Decilitre => 10_000_000_000_000,
            Self::Cup => 48 * TEASPOON,
            Self::Pint => 96 * TEASPOON,
            Self::Quart => 192 * TEASPOON,
            Self::Litre => 100_000_000_000_000,
            Self::Gallon => 768 * TEASPOON,
        }
    }

    /// Exact size.
    pub fn millilitres(self) -> Millilitres {
        Millilitres::new(Decimal::from_i128_with_scale(self.parts().into(), 11).normalize())
    }

    /// How many of `smaller` make one of this, exactly.
    pub fn ratio_to(self, smaller: Self) -> Option<Amount> {
        Amount::fraction(self.parts().into(), smaller.parts().into())
    }

    /// The volume of so many of this unit.
    pub fn of(self, number: Decimal) -> Millilitres {
        self.millilitres() * number
    }

    /// How many of this unit a volume is, without the noise of the division.
    pub fn number_in(self, volume: Millilitres) -> Decimal {
        guarded(volume.millilitres() / self.millilitres().millilitres())
    }

    /// The usual symbol.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millilitre => "mL",
            Self::Teaspoon => "tsp",
            Self::Tablespoon => "tbsp",
            Self::FluidOunce => "fl oz",
            Self::Decilitre => "dL",
            Self::Cup => "cup",
            Self::Pint => "pint",
            Self::Quart => "quart",
            Self::Litre => "L",
            Self::Gallon => "gallon",
        }
    }
}

/// Sizes by which foods are counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Size {
    /// Miniature.
    Mini,
    /// Extra small.
    ExtraSmall,
    /// Small.
    Small,
    /// Medium.
    Medium,
    /// Large.
    Large,
    /// Extra large.
    ExtraLarge,
    /// Jumbo.
    Jumbo,
}

impl Size {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Mini => "mini",
            Self::ExtraSmall => "extra small",
            Self::Small => "small",
            Self::Medium => "medium",
            Self::Large => "large",
            Self::ExtraLarge => "extra large",
            Self::Jumbo => "jumbo",
        }
    }
}

/// What is counted: of what size, in which pieces or containers.
///
/// All empty means the food itself: "2 onions".
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct CountUnit {
    /// Size, if one is said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub size: Option<Size>,
    /// Piece or container in the singular: "clove", "slice", "can".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub noun: Option<String>,
    /// Trade number of a can: "10", "2 1/2".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub can_number: Option<String>,
}

/// A unit of any kind.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", content = "unit", rename_all = "camelCase")]
pub enum Unit {
    /// A mass.
    Mass(MassUnit),
    /// A volume.
    Volume(VolumeUnit),
    /// A count.
    Count(CountUnit),
}

impl Unit {
    /// The food itself, counted.
    pub fn pieces() -> Self {
        Self::Count(CountUnit::default())
    }

    /// One of these pieces or containers.
    pub fn counted(noun: &str) -> Self {
        Self::Count(CountUnit {
            noun: Some(noun.to_owned()),
            ..CountUnit::default()
        })
    }

    /// The piece or container that is counted, in the singular.
    pub fn noun(&self) -> Option<&str> {
        match self {
            Self::Count(unit) => unit.noun.as_deref(),
            _ => None,
        }
    }

    /// How many of `smaller` make one of this, where both are of one kind.
    /// Counts compare only with the very same count.
    pub fn ratio_to(&self, smaller: &Self) -> Option<Amount> {
        match (self, smaller) {
            (Self::Mass(unit), Self::Mass(smaller)) => unit.ratio_to(*smaller),
            (Self::Volume(unit), Self::Volume(smaller)) => unit.ratio_to(*smaller),
            (Self::Count(unit), Self::Count(smaller)) => (unit == smaller).then_some(Amount::ONE),
            _ => None,
        }
    }
}

impl fmt::Display for CountUnit {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let number = self
            .can_number
            .as_ref()
            .map(|number| format!("No. {number}"));
        let words = [
            self.size.map(Size::word),
            number.as_deref(),
            self.noun.as_deref(),
        ];
        let mut between = "";
        for word in words.into_iter().flatten() {
            write!(out, "{between}{word}")?;
            between = " ";
        }
        Ok(())
    }
}

impl fmt::Display for Unit {
    /// Symbol or words in the singular; empty for the food itself.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Mass(unit) => out.write_str(unit.symbol()),
            Self::Volume(unit) => out.write_str(unit.symbol()),
            Self::Count(unit) => unit.fmt(out),
        }
    }
}
