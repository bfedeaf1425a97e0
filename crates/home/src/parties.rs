//! Whom to call, who answers for what, what is done now and then, and the papers.

use serde::{Deserialize, Serialize};

use crate::{Date, DeviceState, Medium};

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
    /// When they are there, in words, such as `weekdays 8 to 17`.
    #[serde(default)]
    pub hours: Option<String>,
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
    /// The owners' association.
    Association,
    /// The insurer of the building or of what is in it.
    Insurer,
    /// Whoever runs the alarm or the smart home, and keeps its account.
    Alarm,
}

/// Who answers for what, and how long.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Warranty {
    /// Stable id.
    pub id: String,
    /// What it is called.
    pub name: String,
    /// What kind it is, which tells who pays for what.
    #[serde(default)]
    pub kind: Option<WarrantyKind>,
    /// Id of the contact who gives it.
    #[serde(default)]
    pub contact: Option<String>,
    /// Ids of the components it covers; empty for those whose net is in `nets`.
    #[serde(default)]
    pub covers: Vec<String>,
    /// Media whose lines it covers.
    #[serde(default)]
    pub media: Vec<Medium>,
    /// The day it runs from. With neither days, months nor years its end is not known.
    pub from: Date,
    /// How many years; added to `months`.
    #[serde(default)]
    pub years: Option<u32>,
    /// How many days.
    #[serde(default)]
    pub days: Option<u32>,
    /// How many months.
    #[serde(default)]
    pub months: Option<u32>,
}

/// What kind of warranty it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum WarrantyKind {
    /// Whoever did the work makes it good.
    Workmanship,
    /// A maker's, for the part and the work of changing it.
    PartsAndLabor,
    /// A maker's, for the part alone: the work is on the owner.
    Parts,
    /// For what bears the house.
    Structural,
    /// A paid service plan; a visit may cost a fee.
    ServicePlan,
}

/// Something to do now and then.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// Stable id.
    pub id: String,
    /// What is done.
    pub name: String,
    /// Id of the job of the built-in list that it stands for; its own id counts as one, too.
    #[serde(default)]
    pub stands_for: Option<String>,
    /// Ids of the components it is done to.
    #[serde(default)]
    pub components: Vec<String>,
    /// How it is done; what the built-in list says without it.
    #[serde(default)]
    pub how: Option<String>,
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

/// A job that was done.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Done {
    /// Id of the job: one of the home's, or one of the built-in list.
    pub job: String,
    /// The day.
    pub on: Date,
    /// Who did it.
    #[serde(default)]
    pub by: Option<String>,
    /// Ids of the components it was done to; empty for all of the job's.
    #[serde(default)]
    pub components: Vec<String>,
    /// How they turned out.
    #[serde(default)]
    pub finding: Option<DeviceState>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// Something of the move-in list that is ticked off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MovedIn {
    /// Id of the item, as the move-in list gives it.
    pub item: String,
    /// The day.
    pub on: Date,
    /// Initials of who ticked it.
    pub by: String,
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
    /// True if it is for those who live here alone: it is left out of a copy and of what the next
    /// owner gets.
    #[serde(default)]
    pub private: bool,
}
