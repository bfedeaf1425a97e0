//! Whom to call.

use quarterturn_home::{Contact, Home, Kind, Role};

use crate::Call;
use crate::catalogue::fill;
use crate::context::Context;

/// The contact for a role: the one that says so, else the owner of what that role looks after.
pub(crate) fn contact_for(home: &Home, role: Role) -> Option<&Contact> {
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

impl Context<'_> {
    pub(crate) fn role_name(&self, role: Role) -> String {
        self.catalogue.text(match role {
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
        })
    }

    /// An entry of the call list. Without a contact it says what to fill in.
    pub(crate) fn call(&self, contact: Option<&Contact>, role: Role, why: &str) -> Call {
        let why = self.catalogue.text(why);
        match contact {
            Some(contact) => Call {
                contact: Some(contact.id.clone()),
                name: contact.name.clone(),
                phone: contact.phone.clone(),
                why,
            },
            None => Call {
                contact: None,
                name: self.role_name(role),
                phone: None,
                why: self.catalogue.fill("why-add-contact", &[fill("why", &why)]),
            },
        }
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
