//! The files of SR28 that are read, their fields in order, and what becomes of each.
//!
//! Source: U.S. Department of Agriculture, Agricultural Research Service, "Composition of Foods
//! Raw, Processed, Prepared: USDA National Nutrient Database for Standard Reference, Release 28,
//! Documentation and User Guide", September 2015, section "File Formats".

/// One file of the release.
pub(super) struct SourceFile {
    /// File name.
    pub name: &'static str,
    /// Rows that the release has, where its documentation states the number.
    pub rows: Option<usize>,
    /// Which fields together name a row.
    pub key: &'static [usize],
    /// The fields in order.
    pub fields: &'static [Field],
}

/// One field of a file.
pub(super) struct Field {
    /// The release's name of the field.
    pub name: &'static str,
    /// What it must hold.
    pub kind: Kind,
    /// The column of our table that it becomes; `None` where it is left out.
    pub column: Option<&'static str>,
}

/// What a field must hold.
#[derive(Clone, Copy)]
pub(super) enum Kind {
    /// Text between tildes, perhaps empty.
    Text,
    /// A whole number between tildes.
    TextNumber,
    /// Text between tildes that is the key of a row in another file.
    Key(&'static SourceFile),
    /// The same, or empty.
    KeyOrNone(&'static SourceFile),
    /// A decimal number, or empty.
    Number,
    /// A decimal number that must be there.
    Value,
    /// Left out and not looked at.
    Any,
}

const fn keep(name: &'static str, kind: Kind, column: &'static str) -> Field {
    let column = Some(column);
    Field { name, kind, column }
}

const fn leave(name: &'static str, kind: Kind) -> Field {
    let column = None;
    Field { name, kind, column }
}

use Kind::{Any, Key, KeyOrNone, Number, Text, TextNumber, Value};

pub(super) static FD_GROUP: SourceFile = SourceFile {
    name: "FD_GROUP.txt",
    rows: None,
    key: &[0],
    fields: &[
        keep("FdGrp_Cd", TextNumber, "code"),
        keep("FdGrp_Desc", Text, "name"),
    ],
};

pub(super) static FOOD_DES: SourceFile = SourceFile {
    name: "FOOD_DES.txt",
    rows: Some(8_789),
    key: &[0],
    fields: &[
        keep("NDB_No", TextNumber, "number"),
        keep("FdGrp_Cd", Key(&FD_GROUP), "group"),
        keep("Long_Desc", Text, "description"),
        leave("Shrt_Desc", Text),
        keep("ComName", Text, "common_names"),
        keep("ManufacName", Text, "manufacturer"),
        leave("Survey", Text),
        keep("Ref_desc", Text, "refuse_description"),
        keep("Refuse", Number, "refuse_percent"),
        keep("SciName", Text, "scientific_name"),
        keep("N_Factor", Number, "nitrogen_factor"),
        keep("Pro_Factor", Number, "protein_factor"),
        keep("Fat_Factor", Number, "fat_factor"),
        keep("CHO_Factor", Number, "carbohydrate_factor"),
    ],
};

pub(super) static NUTR_DEF: SourceFile = SourceFile {
    name: "NUTR_DEF.txt",
    rows: None,
    key: &[0],
    fields: &[
        keep("Nutr_No", TextNumber, "number"),
        keep("Units", Text, "unit"),
        keep("Tagname", Text, "tagname"),
        keep("NutrDesc", Text, "name"),
        keep("Num_Dec", TextNumber, "decimals"),
        keep("SR_Order", TextNumber, "order"),
    ],
};

pub(super) static SRC_CD: SourceFile = SourceFile {
    name: "SRC_CD.txt",
    rows: None,
    key: &[0],
    fields: &[
        keep("Src_Cd", Text, "code"),
        keep("SrcCd_Desc", Text, "description"),
    ],
};

pub(super) static DERIV_CD: SourceFile = SourceFile {
    name: "DERIV_CD.txt",
    rows: None,
    key: &[0],
    fields: &[
        keep("Deriv_Cd", Text, "code"),
        keep("Deriv_Desc", Text, "description"),
    ],
};

pub(super) static WEIGHT: SourceFile = SourceFile {
    name: "WEIGHT.txt",
    rows: Some(15_438),
    key: &[0, 1],
    fields: &[
        keep("NDB_No", Key(&FOOD_DES), "food"),
        keep("Seq", Value, "seq"),
        keep("Amount", Value, "amount"),
        keep("Msre_Desc", Text, "measure"),
        keep("Gm_Wgt", Value, "grams"),
        keep("Num_Data_Pts", Number, "data_points"),
        keep("Std_Dev", Number, "standard_deviation"),
    ],
};

pub(super) static FOOTNOTE: SourceFile = SourceFile {
    name: "FOOTNOTE.txt",
    rows: None,
    key: &[0, 1, 3],
    fields: &[
        keep("NDB_No", Key(&FOOD_DES), "food"),
        keep("Footnt_No", TextNumber, "seq"),
        keep("Footnt_Typ", Text, "subject"),
        keep("Nutr_No", KeyOrNone(&NUTR_DEF), "nutrient"),
        keep("Footnt_Txt", Text, "text"),
    ],
};

pub(super) static NUT_DATA: SourceFile = SourceFile {
    name: "NUT_DATA.txt",
    rows: Some(679_045),
    key: &[0, 1],
    fields: &[
        keep("NDB_No", Key(&FOOD_DES), "food"),
        leave("Nutr_No", Key(&NUTR_DEF)),
        keep("Nutr_Val", Value, "value"),
        keep("Num_Data_Pts", Value, "data_points"),
        keep("Std_Error", Number, "standard_error"),
        keep("Src_Cd", Key(&SRC_CD), "source"),
        keep("Deriv_Cd", KeyOrNone(&DERIV_CD), "derivation"),
        leave("Ref_NDB_No", Text),
        leave("Add_Nutr_Mark", Text),
        leave("Num_Studies", Number),
        leave("Min", Number),
        leave("Max", Number),
        leave("DF", Number),
        leave("Low_EB", Number),
        leave("Up_EB", Number),
        leave("Stat_cmt", Text),
        leave("AddMod_Date", Any),
        leave("CC", Any),
    ],
};
