//! Whom to call.

use quarterturn_home::{Contact, Home, Kind, Role};

use crate::Call;
use crate::catalogue::{Catalogue, fill};
use crate::context::Context;

/// The contact for a role: the one that says so, else the owner of what that role looks after.
#[must_use]
pub fn contact_for(home: &Home, role: Role) -> Option<&Contact> {
    let by_role = home.contacts.iter().find(|contact| contact.role == Some(role));
    by_role.or_else(|| {
        let theirs = |kind: Kind| match role {
            Role::WaterUtility => matches!(kind, Kind::WaterMain | Kind::WaterMeter),
            Role::SewerUtility => kind == Kind::SewerMain,
            Role::ElectricityUtility => {
                matches!(kind, Kind::ElectricityService | Kind::ElectricityMeter)
            }
            Role::GasUtility => kind == Kind::GasMeter,
            _ => false,
        };
        home.components
            .iter()
            .filter(|component| theirs(component.kind))
            .find_map(|component| home.contact(component.owner.as_deref()?))
    })
}

/// What someone is called by what they are called for.
#[must_use]
pub fn role_name(words: &Catalogue, role: Role) -> String {
    words.text(match role {
        Role::WaterUtility => "role-water-utility",
        Role::SewerUtility => "role-sewer-utility",
        Role::ElectricityUtility => "role-electricity-utility",
        Role::GasUtility => "role-gas-utility",
        Role::Emergency => "role-emergency",
        Role::Plumber => "role-plumber",
        Role::Electrician => "role-electrician",
        Role::Cooling => "role-cooling",
        Role::Builder => "role-builder",
        Role::Owner => "role-owner",
        Role::Manager => "role-manager",
        Role::Neighbor => "role-neighbor",
        Role::Association => "role-association",
        Role::Insurer => "role-insurer",
        Role::Alarm => "role-alarm",
    })
}

/// An entry of the call list, with the reason in words and the hours. Without a contact it says what
/// to fill in.
pub(crate) fn call(words: &Catalogue, contact: Option<&Contact>, role: Role, why: &str) -> Call {
    match contact {
        Some(contact) => Call {
            contact: Some(contact.id.clone()),
            name: contact.name.clone(),
            phone: contact.phone.clone(),
            why: match &contact.hours {
                Some(hours) => words.fill("why-hours", &[fill("why", why), fill("hours", hours)]),
                None => why.to_owned(),
            },
        },
        None => Call {
            contact: None,
            name: role_name(words, role),
            phone: None,
            why: words.fill("why-add-contact", &[fill("why", why)]),
        },
    }
}

impl Context<'_> {
    pub(crate) fn role_name(&self, role: Role) -> String {
        role_name(self.catalogue, role)
    }

    /// An entry of the call list, for the reason with the key `why`.
    pub(crate) fn call(&self, contact: Option<&Contact>, role: Role, why: &str) -> Call {
        call(self.catalogue, contact, role, &self.catalogue.text(why))
    }

    /// The emergency number, or what to fill in for it. None is ever invented.
    pub(crate) fn emergency_call(&self) -> Call {
        let contact = contact_for(self.home, Role::Emergency);
        let phone =
            self.home.emergency_phone.clone().or_else(|| contact.and_then(|c| c.phone.clone()));
        let key = if phone.is_some() { "why-emergency" } else { "why-emergency-missing" };
        Call {
            contact: contact.map(|c| c.id.clone()),
            name: contact.map_or_else(|| self.role_name(Role::Emergency), |c| c.name.clone()),
            phone,
            why: self.catalogue.text(key),
        }
    }

    /// Ids that the spot stands for.
    pub(crate) fn spot_ids(&self) -> Vec<String> {
        match &self.question.at {
            crate::Spot::Component(id) | crate::Spot::Space(id) => vec![id.clone()],
            crate::Spot::Connection(from, to) => vec![from.clone(), to.clone()],
            crate::Spot::Home => Vec::new(),
        }
    }
}
