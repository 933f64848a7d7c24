//! The columns of the table.

macro_rules! columns {
    ($($(#[$doc:meta])* $name:ident = $words:literal),+ $(,)?) => {
        /// A column of the table.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Column {
            $($(#[$doc])* $name),+
        }

        impl Column {
            /// All of them in their order.
            pub const ALL: &'static [Self] = &[$(Self::$name),+];

            /// The name in the table's first row.
            pub fn name(self) -> &'static str {
                match self {
                    $(Self::$name => $words),+
                }
            }
        }
    };
}

columns! {
    /// The recipe's name inside the book.
    Recipe = "recipe",
    /// Title as printed.
    Title = "title",
    /// Number of servings of the batch.
    Servings = "servings",
    /// Words for one serving.
    ServingWords = "serving words",
    /// By what the size of a serving is stated: weight, volume or count.
    ServingBy = "serving by",
    /// Size of a serving: grams, millilitres or pieces.
    ServingSize = "serving size",
    /// Size of the batch: millilitres or pieces.
    BatchSize = "batch size",
    /// Measured weight of the finished batch, grams.
    FinishedWeight = "finished weight, g",
    /// As what the beans are served.
    Beans = "beans as",
    /// Directions.
    Method = "directions",
    /// The line's number, from 1.
    Line = "line",
    /// The line as typed.
    Ingredient = "ingredient",
    /// The food that is meant.
    Food = "food",
    /// Another recipe that is meant.
    OtherRecipe = "other recipe",
    /// Weight of the line's edible portion, grams.
    Weight = "weight, g",
    /// Whether a stated weight is as purchased or edible portion.
    Basis = "weight basis",
    /// The food that stands for the line once it is cooked.
    CookedFood = "cooked food",
    /// Measured weight after cooking, grams.
    CookedWeight = "cooked weight, g",
    /// What drains, rinses or fries away.
    Treatment = "treatment",
    /// The component of a stated credit.
    CreditComponent = "credit toward",
    /// Amount of a stated credit in one serving, in the component's unit.
    CreditAmount = "credit amount",
    /// Marks of a stated credit, set apart by semicolons.
    CreditMarks = "credit marks",
    /// Reason of a stated credit.
    CreditReason = "credit reason",
    /// The line for which a credit was stated, where it has changed since.
    CreditStatedFor = "credit stated for",
}
