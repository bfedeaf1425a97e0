//! Whom to call, who answers for what, what is done now and then, and the papers.

use serde::{Deserialize, Serialize};

use crate::{Date, Medium};

/// Whom to call.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Contact {
    /// Stable id.
    pub id: String,
    /// Name, and for what.
    pub name: String,
    /// Telephone number.
    #[serde(default)]
    pub phone: Option<String>,
    /// What they are called for.
    #[serde(default)]
    pub role: Option<Role>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// What a contact is called for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Role {
    /// The water utility.
    WaterUtility,
    /// The sewer utility.
    SewerUtility,
    /// The electricity utility.
    ElectricityUtility,
    /// The gas utility.
    GasUtility,
    /// Police, fire and ambulance.
    Emergency,
    /// A plumber.
    Plumber,
    /// An electrician.
    Electrician,
    /// Heating and cooling.
    Cooling,
    /// The builder.
    Builder,
    /// The owner.
    Owner,
    /// The landlord or whoever manages the building.
    Manager,
    /// A neighbour.
    Neighbor,
}

/// Who answers for what, and how long.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Warranty {
    /// Stable id.
    pub id: String,
    /// What it is called.
    pub name: String,
    /// Id of the contact who gives it.
    #[serde(default)]
    pub contact: Option<String>,
    /// Ids of the components it covers; empty for those whose net is in `nets`.
    #[serde(default)]
    pub covers: Vec<String>,
    /// Media whose lines it covers.
    #[serde(default)]
    pub media: Vec<Medium>,
    /// First day.
    pub from: Date,
    /// How many days.
    #[serde(default)]
    pub days: Option<u32>,
    /// How many months.
    #[serde(default)]
    pub months: Option<u32>,
}

/// Something to do now and then.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// Stable id.
    pub id: String,
    /// What is done.
    pub name: String,
    /// Ids of the components it is done to.
    #[serde(default)]
    pub components: Vec<String>,
    /// How often, in months.
    #[serde(default)]
    pub every_months: Option<u32>,
    /// When it was last done.
    #[serde(default)]
    pub last_done: Option<Date>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// A paper or a picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Document {
    /// Stable id.
    pub id: String,
    /// What it is.
    pub name: String,
    /// Path, from the home's folder.
    #[serde(default)]
    pub file: Option<String>,
    /// Ids of the components it is about.
    #[serde(default)]
    pub components: Vec<String>,
}
