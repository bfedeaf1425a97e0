//! Which job looks after which component, so that nothing is asked for twice.
//!
//! A job of the home's own stands for one of the built-in list if it says so (`stands_for`), if it has
//! its id, or if it comes again and is done to nothing but the kinds that only that one is for. It
//! takes its components out of the built-in job; what is left stays there.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Home, Job};
use quarterturn_network::{Places, sprinkler_controls};

use crate::part::{is_ours, is_workable};
use crate::table::{Template, Which, templates};

/// A job, and the components that it looks after.
pub(crate) enum Share<'a> {
    /// A job of the home's own, with the one of the built-in list that it stands for.
    Own(&'a Job, Option<&'static Template>, Vec<&'a Component>),
    /// A job of the built-in list.
    Map(&'static Template, Vec<&'a Component>),
}

/// All jobs with their components: the home's own in the order of the file, then the built-in ones
/// in theirs. Cost: O(jobs × components).
pub(crate) fn shares(home: &Home) -> Vec<Share<'_>> {
    let places = Places::of_home(home);
    let sprinklers = sprinkler_controls(home, &places);
    let fits = |template: &Template, component: &Component| {
        let controls =
            places.of(&component.id).is_some_and(|place| sprinklers.get(place) == Some(&true));
        is_for(home, template, component) && !controls
    };
    let mut all = Vec::new();
    let mut taken: BTreeSet<(&str, &str)> = BTreeSet::new();
    for job in &home.jobs {
        let template = stands_for(home, job);
        let named: Vec<&Component> =
            job.components.iter().filter_map(|id| home.component(id)).collect();
        let parts = match template {
            // It names none: it is done to all that the built-in one is for.
            Some(template) if job.components.is_empty() => home
                .components
                .iter()
                .filter(|c| fits(template, c) && !taken.contains(&(&template.id, c.id.as_str())))
                .collect(),
            _ => named,
        };
        if let Some(template) = template {
            taken.extend(parts.iter().map(|c| (template.id.as_str(), c.id.as_str())));
        }
        all.push(Share::Own(job, template, parts));
    }
    for template in templates() {
        let left: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| fits(template, c) && !taken.contains(&(&template.id, c.id.as_str())))
            .collect();
        if !left.is_empty() {
            all.push(Share::Map(template, left));
        }
    }
    all
}

fn stands_for(home: &Home, job: &Job) -> Option<&'static Template> {
    let named = job.stands_for.as_deref().unwrap_or(&job.id);
    if let Some(template) = templates().iter().find(|template| template.id == named) {
        return Some(template);
    }
    if job.stands_for.is_some() || job.every_months.is_none() || job.components.is_empty() {
        return None;
    }
    templates().iter().find(|template| {
        let is_its_kind = |id: &String| {
            home.component(id).is_some_and(|component| template.kinds.contains(&component.kind))
        };
        template.only && job.components.iter().all(is_its_kind)
    })
}

fn is_for(home: &Home, template: &Template, component: &Component) -> bool {
    if !template.kinds.contains(&component.kind) || !is_ours(home, component) {
        return false;
    }
    match template.which {
        None => true,
        Some(Which::Workable) => is_workable(home, component),
        Some(Which::ArcFault) => component.arc_fault,
        Some(Which::Tank) => component.volume_l.is_some_and(|litres| litres > 0.0),
        Some(Which::Tankless) => component.volume_l.is_none_or(|litres| litres <= 0.0),
        Some(Which::Duct) => component.duct.is_some(),
        Some(Which::Fed) => {
            home.connections.iter().any(|link| link.from == component.id || link.to == component.id)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn home(jobs: &str) -> Home {
        let text = format!(
            r#"Home(format: 1, name: "h", components: [
                (id: "a", kind: Gfci, name: "A"), (id: "b", kind: Gfci, name: "B"),
                (id: "v", kind: IsolatingValve, name: "V"),
                (id: "curb", kind: IsolatingValve, name: "Curb", operable_by: Utility),
                (id: "theirs", kind: IsolatingValve, name: "T", owner: "n"),
                (id: "well", kind: Well, name: "Well"),
            ], contacts: [(id: "n", name: "N", role: Neighbor)], jobs: [{jobs}])"#
        );
        quarterturn_home::open("home.ron", &text).home.unwrap()
    }

    fn told(jobs: &str) -> Vec<(String, Vec<String>)> {
        let home = home(jobs);
        let ids = |parts: Vec<&Component>| parts.iter().map(|c| c.id.clone()).collect();
        shares(&home)
            .into_iter()
            .map(|share| match share {
                Share::Own(job, template, parts) => {
                    let stands = template.map_or("-", |t| t.id.as_str());
                    (format!("{}={stands}", job.id), ids(parts))
                }
                Share::Map(template, parts) => (template.id.clone(), ids(parts)),
            })
            .collect()
    }

    fn share(id: &str, parts: &[&str]) -> (String, Vec<String>) {
        (id.to_owned(), parts.iter().map(|p| (*p).to_owned()).collect())
    }

    #[test]
    fn the_map_gives_rise_to_what_the_household_may_do() {
        assert_eq!(told(""), [share("exercise", &["v"]), share("gfci-test", &["a", "b"])]);
    }

    #[test]
    fn an_own_job_takes_its_components_out_of_the_built_in_one() {
        let rest = share("exercise", &["v"]);
        // By its id, by what it says it stands for, by its kinds.
        for own in [
            r#"(id: "gfci-test", name: "j", components: ["a"])"#,
            r#"(id: "j", name: "j", stands_for: "gfci-test", components: ["a"])"#,
            r#"(id: "j", name: "j", every_months: 1, components: ["a"])"#,
        ] {
            let id = if own.contains("\"j\", name") && !own.contains("(id: \"gfci") {
                "j"
            } else {
                "gfci-test"
            };
            assert_eq!(
                told(own),
                [
                    share(&format!("{id}=gfci-test"), &["a"]),
                    rest.clone(),
                    share("gfci-test", &["b"])
                ]
            );
        }
        // Without components it is for all of them.
        let all = r#"(id: "gfci-test", name: "j")"#;
        assert_eq!(told(all), [share("gfci-test=gfci-test", &["a", "b"]), rest.clone()]);
    }

    #[test]
    fn a_job_that_is_something_else_takes_nothing() {
        let both = [share("exercise", &["v"]), share("gfci-test", &["a", "b"])];
        for own in [
            // Not one that comes again.
            r#"(id: "j", name: "j", components: ["a"])"#,
            // Of two kinds.
            r#"(id: "j", name: "j", every_months: 1, components: ["a", "v"])"#,
            // It says that it stands for something that is not in the list.
            r#"(id: "j", name: "j", stands_for: "x", every_months: 1, components: ["a"])"#,
        ] {
            assert_eq!(told(own)[1..], both, "{own}");
        }
    }

    #[test]
    fn two_jobs_for_all_do_not_share_a_component() {
        let twice =
            r#"(id: "gfci-test", name: "j"), (id: "j", name: "j", stands_for: "gfci-test")"#;
        assert_eq!(
            told(twice),
            [
                share("gfci-test=gfci-test", &["a", "b"]),
                share("j=gfci-test", &[]),
                share("exercise", &["v"]),
            ]
        );
    }
}
