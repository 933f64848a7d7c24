//! Tables of SR28 and of the rules, and the compact asset made from them.
//!
//! | module | what it does | feature |
//! |---|---|---|
//! | [`mod@format`] | encodes and decodes the two asset files | |
//! | [`kitchen`] | the texts of the tables of kitchen knowledge | |
//! | [`rules`] | the texts of the tables of rules | |
//! | `import` | makes the tables from the text files of the release | `import` |
//! | `tables` | names, columns and reading of the committed tables | `import` |
//! | `asset` | makes the asset files from the committed tables | `import` |

#[cfg(feature = "import")]
pub mod asset;
pub mod format;
#[cfg(feature = "import")]
pub mod import;
pub mod kitchen;
pub mod rules;
#[cfg(feature = "import")]
pub mod tables;
