//! What the page shows without scripts, and what it prints: the numbers, and the first acts of each
//! trouble.

use std::collections::BTreeMap;

use quarterturn_guidance::{Answer, Catalogue, Group, Signal, Spot, Trouble, fill};
use quarterturn_home::Home;

use super::branches::Asked;
use super::dial;
use super::escape::html;
use super::table::{emergency_phone, place_to_tell};

/// The first acts of every trouble, in every language.
#[derive(Debug)]
pub(super) struct FirstActs<'a> {
    home: &'a Home,
    catalogues: &'a [Catalogue],
    troubles: BTreeMap<Trouble, OfTrouble>,
}

/// The first acts of a trouble.
#[derive(Debug, Default)]
struct OfTrouble {
    /// The answer where the spot is not known, in each language.
    anywhere: Vec<Answer>,
    /// For each first act, in the order in which they came, the spots that it is for.
    acts: Vec<(Act, Vec<Spot>)>,
}

/// What a first act says, in each language.
#[derive(Debug, PartialEq, Eq)]
struct Act {
    texts: Vec<String>,
}

impl<'a> FirstActs<'a> {
    pub(super) fn new(home: &'a Home, catalogues: &'a [Catalogue]) -> Self {
        Self { home, catalogues, troubles: BTreeMap::new() }
    }

    /// Takes in a trouble at a spot.
    pub(super) fn take(&mut self, asked: &Asked) {
        let Some(node) = asked.nodes.first() else { return };
        let of = self.troubles.entry(asked.trouble).or_default();
        if asked.spot == Spot::Home {
            of.anywhere.clone_from(&node.answers);
            return;
        }
        let texts: Vec<String> =
            node.answers.iter().filter_map(|a| Some(a.steps.first()?.text.clone())).collect();
        let act = Act { texts };
        match of.acts.iter_mut().find(|(known, _)| *known == act) {
            Some((_, spots)) => spots.push(asked.spot.clone()),
            None => of.acts.push((act, vec![asked.spot.clone()])),
        }
    }

    /// All of it in one language, as HTML.
    pub(super) fn to_html(&self, language: usize) -> String {
        let Some(words) = self.catalogues.get(language) else { return String::new() };
        let mut page = String::new();
        page.push_str(&format!(
            "<h1>{}</h1>\n<p class=\"soft\">{}</p>\n",
            html(&words.fill("phone-title", &[fill("home", &self.home.name)])),
            html(&words.text("phone-plain-hint")),
        ));
        page.push_str(&self.numbers(words));
        for group in Group::ALL {
            let asked: Vec<_> = group
                .troubles()
                .into_iter()
                .filter_map(|trouble| Some((trouble, self.troubles.get(&trouble)?)))
                .collect();
            if asked.is_empty() {
                continue;
            }
            page.push_str(&format!("<h2>{}</h2>\n", html(&words.text(heading(group)))));
            for (trouble, of) in asked {
                page.push_str(&self.trouble(language, words, trouble, of));
            }
        }
        page
    }

    /// The numbers to call.
    fn numbers(&self, words: &Catalogue) -> String {
        let mut list = format!(
            "<h2>{}</h2>\n<p class=\"where-i-am\">{} <b class=\"address\">{}</b></p>\n<ul class=\"numbers\">\n",
            html(&words.text("phone-call")),
            html(&words.text("phone-read-out")),
            html(place_to_tell(self.home)),
        );
        let emergency = emergency_phone(self.home);
        match emergency {
            Some(phone) => {
                let said = words.text("role-emergency");
                list.push_str(&number(&said, phone, None));
            }
            None => list
                .push_str(&format!("<li>{}</li>\n", html(&words.text("phone-emergency-missing")))),
        }
        for contact in &self.home.contacts {
            match contact.phone.as_deref() {
                Some(phone) if Some(phone) != emergency => {
                    list.push_str(&number(&contact.name, phone, contact.hours.as_deref()));
                }
                _ => {}
            }
        }
        list.push_str("</ul>\n");
        list
    }

    fn trouble(
        &self,
        language: usize,
        words: &Catalogue,
        trouble: Trouble,
        of: &OfTrouble,
    ) -> String {
        let title = html(&words.text(&format!("trouble-{}", trouble.id())));
        let mut card = format!("<section class=\"act\">\n<h3>{title}</h3>\n");
        if let Some(answer) = of.anywhere.get(language) {
            for caution in answer.cautions.iter().filter(|c| c.signal <= Signal::Warning) {
                let (class, key) = match caution.signal {
                    Signal::Danger => ("danger", "phone-signal-danger"),
                    _ => ("warning", "phone-signal-warning"),
                };
                card.push_str(&format!(
                    "<p class=\"signal {class}\"><strong>{ALERT}{}</strong> <span>{}</span></p>\n",
                    html(&words.text(key)),
                    html(&caution.text),
                ));
            }
            card.push_str("<ol>\n");
            for step in &answer.steps {
                card.push_str(&format!("<li>{}</li>\n", html(&step.text)));
            }
            card.push_str("</ol>\n");
        }
        if !of.acts.is_empty() {
            card.push_str(&format!(
                "<details>\n<summary>{}</summary>\n<dl>\n",
                html(&words.text("phone-first-by-place")),
            ));
            for (act, spots) in &of.acts {
                let names: Vec<String> = spots.iter().map(|spot| self.name(words, spot)).collect();
                let text = act.texts.get(language).map_or("", String::as_str);
                card.push_str(&format!(
                    "<dt>{}</dt><dd>{}</dd>\n",
                    html(&words.list(&names)),
                    html(text),
                ));
            }
            card.push_str("</dl>\n</details>\n");
        }
        card.push_str("</section>\n");
        card
    }

    fn name(&self, words: &Catalogue, spot: &Spot) -> String {
        match spot {
            Spot::Component(id) => self.home.component(id).map_or(id, |c| &c.name).clone(),
            Spot::Space(id) => {
                let space = self.home.space(id).map_or(id, |s| &s.name);
                words.fill("phone-anywhere", &[fill("space", space)])
            }
            Spot::Connection(..) | Spot::Home => String::new(),
        }
    }
}

/// The safety alert sign of ANSI Z535, which stands beside the signal words of what can injure.
const ALERT: &str = "<svg class=\"sign\" aria-hidden=\"true\" viewBox=\"0 0 100 100\"><use href=\"#sign-alert\"></use></svg>";
/// The key of the words over a group of troubles.
fn heading(group: Group) -> &'static str {
    match group {
        Group::Life => "phone-group-life",
        Group::Water => "phone-group-water",
        Group::Drains => "phone-group-drains",
        Group::Power => "phone-group-power",
        Group::Cooling => "phone-group-cooling",
        Group::Control => "phone-group-control",
    }
}

fn number(name: &str, phone: &str, hours: Option<&str>) -> String {
    let shown = html(phone);
    let shown = match dial::tel(phone) {
        Some(tel) => format!("<a href=\"{}\">{shown}</a>", html(&tel)),
        None => format!("<b>{shown}</b>"),
    };
    let hours = hours.map(|hours| format!("<br><i class=\"soft\">{}</i>", html(hours)));
    format!("<li>{shown} <span>{}{}</span></li>\n", html(name), hours.unwrap_or_default())
}
