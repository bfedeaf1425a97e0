//! The words for where a thing is.

use std::collections::BTreeSet;

use quarterturn_home::side_of_house;

use crate::catalogue::fill;
use crate::context::Context;

impl Context<'_> {
    /// Where a component is, as a sentence.
    pub(crate) fn where_sentence(&self, place: usize) -> String {
        let space = self.space_of(place).and_then(|id| self.home.space(id));
        let Some(space) = space else { return self.catalogue.text("where-unknown") };
        let level = space.level.as_deref().and_then(|id| self.home.level(id));
        let level = level.filter(|_| self.home.levels.len() > 1);
        let mut fills = vec![fill("space", &space.name)];
        fills.extend(level.map(|level| fill("level", &level.name)));
        let side = self.side_of_house(place, &space.name);
        fills.extend(side.as_ref().map(|side| fill("side", side)));
        let key = match (level.is_some(), side.is_some()) {
            (true, true) => "where-space-level-side",
            (true, false) => "where-space-level",
            (false, true) => "where-space-side",
            (false, false) => "where-space",
        };
        self.catalogue.fill(key, &fills)
    }

    /// On which side of the house something outdoors stands, where the name of its space does not say so
    /// already.
    fn side_of_house(&self, place: usize, space: &str) -> Option<String> {
        let standing = &self.home.components[self.standing_in(place)];
        let point = fill("point", side_of_house(self.home, standing)?.word());
        let name = self.catalogue.fill("compass-point", std::slice::from_ref(&point));
        let words = |text: &str| -> BTreeSet<String> {
            let words = text.split(|c: char| !c.is_alphanumeric());
            words.map(str::to_lowercase).filter(|word| !word.is_empty()).collect()
        };
        let is_said = words(&name).is_subset(&words(space));
        (!is_said).then(|| self.catalogue.fill("side-of-house", &[point]))
    }
}
