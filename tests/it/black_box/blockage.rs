//! Blocked drains: every single blockage is tried against what was seen.

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::Value;

use super::ask::{Asked, Case, answer, hold, texts};
use super::dice::Dice;
use super::draw::Site;
use super::house::House;

/// Heights closer than this are level.
const LEVEL_M: f64 = 1e-6;

#[test]
fn drains_and_what_comes_out_of_them() {
    hold("drains", 260, draw, check);
}

fn draw(dice: Dice) -> Option<Case> {
    let mut site = Site::with_drains(dice);
    let house = site.house.clone();
    let piped: Vec<String> =
        house.parts.iter().map(|part| part.id.clone()).filter(|id| runs_on(&house, id)).collect();
    let openings: Vec<String> =
        piped.iter().filter(|id| is_opening(house.part(id).kind)).cloned().collect();
    let caps: Vec<String> = house
        .parts
        .iter()
        .filter(|part| part.kind == "Cleanout")
        .map(|part| part.id.clone())
        .collect();
    let dice = &mut site.dice;
    let trouble = dice.of(&["drain-backs-up", "sewage-rising"]);
    let at = match dice.below(10) {
        0 => dice.of(&piped),
        1 => {
            let line = dice.of(&house.lines);
            let stub = house.part(&line.to).kind == "Cleanout" && !runs_on(&house, &line.to);
            if stub {
                return None;
            }
            format!("{}..{}", line.from, line.to)
        }
        2 => {
            let rooms: Vec<String> = house.rooms.iter().map(|room| room.id.clone()).collect();
            dice.of(&rooms)
        }
        _ => dice.of(&openings),
    };
    let mut asked = Asked { trouble, at, failed: Vec::new(), seen: Vec::new() };
    while dice.chance(45) {
        let state = dice.of(&["drains", "drains", "backs-up", "off"]);
        let id = dice.of(&openings);
        if id != asked.at && !asked.seen.iter().any(|(seen, _)| *seen == id) {
            asked.seen.push((id, state));
        }
    }
    if !caps.is_empty() && dice.chance(25) {
        asked.failed.push(dice.of(&caps));
    }
    Some(Case { house, asked })
}

/// One piece of drain, by the ids of its upper and its lower end.
type Piece<'a> = (&'a str, &'a str);

/// The drains of a sketch. What leads to a cleanout from which nothing leads on is its stub: it is an
/// opening at the side of the drain, and fills from there.
fn pieces(house: &House) -> Vec<Piece<'_>> {
    house
        .lines
        .iter()
        .filter(|line| line.carries == "Waste")
        .map(|line| {
            let stub = house.part(&line.to).kind == "Cleanout" && !runs_on(house, &line.to);
            if stub {
                (line.to.as_str(), line.from.as_str())
            } else {
                (line.from.as_str(), line.to.as_str())
            }
        })
        .collect()
}

fn runs_on(house: &House, id: &str) -> bool {
    house.lines.iter().any(|line| line.carries == "Waste" && line.from == id)
}

fn is_opening(kind: &str) -> bool {
    uses_water(kind) || matches!(kind, "FloorDrain" | "Standpipe")
}

fn uses_water(kind: &str) -> bool {
    matches!(
        kind,
        "Sink" | "Basin" | "Bath" | "Shower" | "Toilet" | "WashingMachine" | "Dishwasher"
    )
}

/// Height of a rim or cap, if the file tells.
fn height_m(house: &House, id: &str) -> Option<f64> {
    let part = house.part(id);
    let floor =
        part.room.as_deref().and_then(|room| house.floor_m(house.room(room)?)).unwrap_or(0.0);
    part.at.map(|(_, _, above)| floor + above)
}

/// A drain with one piece of it blocked.
struct Blocked<'a> {
    case: &'a Case,
    pieces: Vec<Piece<'a>>,
    at: usize,
}

impl<'a> Blocked<'a> {
    /// True if water from here gets to the sewer.
    ///
    /// Reading: where the map ends without an outfall it is taken that the drain goes on.
    fn drains(&self, id: &str) -> bool {
        let mut reached: BTreeSet<&str> = BTreeSet::from([id]);
        loop {
            let more: BTreeSet<&str> = (0..self.pieces.len())
                .filter(|&piece| piece != self.at && reached.contains(self.pieces[piece].0))
                .map(|piece| self.pieces[piece].1)
                .filter(|id| !reached.contains(id))
                .collect();
            if more.is_empty() {
                break;
            }
            reached.extend(more);
        }
        reached.iter().any(|id| {
            let kind = self.case.house.part(id).kind;
            matches!(kind, "SewerMain" | "SepticTank")
                || !self.pieces.iter().any(|piece| piece.0 == *id)
        })
    }

    /// Ids of what fills: all that drains into the blockage and cannot drain past it. With `own`, what
    /// the house runs above a flap is trapped there too; without, a flap keeps everything out.
    fn pool(&self, own: bool) -> BTreeSet<&'a str> {
        self.filled(&|flap| own && self.is_used_above(flap, true))
    }

    /// Ids of what fills if anything that can run does.
    fn all_above(&self) -> BTreeSet<&'a str> {
        self.filled(&|flap| self.is_used_above(flap, false))
    }

    fn filled(&self, behind: &dyn Fn(&str) -> bool) -> BTreeSet<&'a str> {
        let mut pool: BTreeSet<&str> = BTreeSet::from([self.pieces[self.at].0]);
        loop {
            let more: BTreeSet<&str> = self
                .pieces
                .iter()
                .filter(|(_, lower)| pool.contains(lower))
                .filter(|(_, lower)| !self.is_flap(lower) || behind(lower))
                .filter(|(upper, _)| !pool.contains(upper) && !self.drains(upper))
                .map(|(upper, _)| *upper)
                .collect();
            if more.is_empty() {
                return pool;
            }
            pool.extend(more);
        }
    }

    fn is_flap(&self, id: &str) -> bool {
        matches!(
            self.case.house.part(id).kind,
            "BackwaterValve" | "CheckValve" | "EjectorPit" | "SumpPit"
        )
    }

    /// True if something may run water into this; with `but_off`, what was seen off does not.
    fn is_used_above(&self, id: &str, but_off: bool) -> bool {
        let mut above: BTreeSet<&str> = BTreeSet::from([id]);
        loop {
            let more: BTreeSet<&str> = self
                .pieces
                .iter()
                .filter(|piece| above.contains(piece.1))
                .map(|piece| piece.0)
                .collect();
            let before = above.len();
            above.extend(more);
            if above.len() == before {
                break;
            }
        }
        above.iter().any(|id| {
            let last = self.case.asked.seen.iter().rev().find(|(seen, _)| seen == id);
            uses_water(self.case.house.part(id).kind)
                && (!but_off || last.is_none_or(|(_, state)| *state != "off"))
        })
    }

    /// The lowest rim that it comes out of, and all that are level with it.
    fn lowest(&self) -> Option<(f64, BTreeSet<&'a str>)> {
        self.lowest_of(&self.pool(true))
    }

    fn lowest_of(&self, pool: &BTreeSet<&'a str>) -> Option<(f64, BTreeSet<&'a str>)> {
        let house = &self.case.house;
        let rims: Vec<(f64, &str)> = pool
            .iter()
            .copied()
            .filter(|id| is_opening(house.part(id).kind))
            .map(|id| (height_m(house, id).unwrap(), id))
            .collect();
        let lowest = rims.iter().map(|(height, _)| *height).min_by(f64::total_cmp)?;
        Some((
            lowest,
            rims.into_iter().filter(|(h, _)| h - lowest < LEVEL_M).map(|(_, id)| id).collect(),
        ))
    }

    /// The caps that let it out lower than it would come out in the house, and that can be opened.
    ///
    /// Reading: by then the house's own water is stopped, so that a flap keeps what lies above it dry,
    /// unless something there backs up already. A cap indoors is no relief.
    fn relieving(&self, backs_up: &[&str]) -> BTreeSet<&'a str> {
        let house = &self.case.house;
        let mut pool = self.pool(false);
        if !backs_up.iter().all(|id| pool.contains(id)) {
            pool = self.all_above();
        }
        let Some((lowest, _)) = self.lowest_of(&pool) else { return BTreeSet::new() };
        let outdoors = |id: &&str| match house.part(id).room.as_deref() {
            Some(room) => house.room(room).unwrap().outdoors,
            None => true,
        };
        pool.into_iter()
            .filter(|id| house.part(id).kind == "Cleanout" && opens(self.case, id))
            .filter(outdoors)
            .filter(|id| height_m(house, id).is_some_and(|height| height < lowest - LEVEL_M))
            .collect()
    }
}

/// True if nothing is known to keep a cap shut.
fn opens(case: &Case, id: &str) -> bool {
    !case.asked.failed.iter().any(|failed| failed == id) && case.house.part(id).state != "Seized"
}

/// What backs up for certain: the spot, unless it is a room, and what was seen to.
fn backing_up(case: &Case) -> Vec<&str> {
    let Case { house, asked } = case;
    // Reading: what stands in a pipe stands in its upper end.
    let upper = asked.at.split_once("..").map_or(asked.at.as_str(), |(upper, _)| upper);
    let spot = house.room(&asked.at).is_none().then_some(upper);
    let seen =
        asked.seen.iter().filter(|(_, state)| *state == "backs-up").map(|(id, _)| id.as_str());
    spot.into_iter().chain(seen).collect()
}

/// The pieces of which one alone explains what was seen, by number.
fn explaining(case: &Case, clear: bool) -> Option<Vec<usize>> {
    let Case { house, asked } = case;
    let pieces = pieces(house);
    let backs_up = backing_up(case);
    let mut one_of: Vec<&str> = Vec::new();
    if house.room(&asked.at).is_some() {
        // Reading: somewhere in a room is at one of its openings or cleanouts, at least.
        one_of = house
            .parts
            .iter()
            .filter(|part| {
                part.room.as_ref() == Some(&asked.at)
                    && (is_opening(part.kind) || part.kind == "Cleanout")
            })
            .map(|part| part.id.as_str())
            .filter(|id| pieces.iter().any(|piece| piece.0 == *id))
            .collect();
    }
    let drains: Vec<&str> = asked
        .seen
        .iter()
        .filter(|(_, state)| *state == "drains")
        .map(|(id, _)| id.as_str())
        .collect();
    if backs_up.is_empty() && one_of.is_empty() {
        return None;
    }
    let explains = |&at: &usize| {
        let blocked = Blocked { case, pieces: pieces.clone(), at };
        backs_up.iter().all(|id| !blocked.drains(id))
            && (one_of.is_empty() || one_of.iter().any(|id| !blocked.drains(id)))
            && (!clear || drains.iter().all(|id| blocked.drains(id)))
    };
    Some((0..pieces.len()).filter(explains).collect())
}

fn check(case: &Case, folder: &Path) -> Result<(), String> {
    let answer = answer(case, folder)?;
    let relief = &answer["relief"];
    let Some(mut suspected) = explaining(case, true) else {
        return if relief.is_null() {
            Ok(())
        } else {
            Err(format!("relief without a drain: {relief}"))
        };
    };
    if suspected.is_empty() {
        // Reading: what backs up is believed before what drains.
        suspected = explaining(case, false).unwrap();
        if suspected.is_empty() {
            return Ok(());
        }
    }
    let pieces = pieces(&case.house);
    let told: Vec<(String, String)> = relief["blocked_between"]
        .as_array()
        .unwrap()
        .iter()
        .map(|pair| (pair[0].as_str().unwrap().to_owned(), pair[1].as_str().unwrap().to_owned()))
        .collect();
    let expected: BTreeSet<Piece<'_>> = suspected.iter().map(|&piece| pieces[piece]).collect();
    if told.len() != suspected.len()
        || told.iter().map(|(a, b)| (a.as_str(), b.as_str())).collect::<BTreeSet<_>>() != expected
    {
        return Err(format!("blocked between: {told:?}, it is {expected:?}"));
    }
    let blockages: Vec<Blocked<'_>> =
        suspected.iter().map(|&at| Blocked { case, pieces: pieces.clone(), at }).collect();
    let emerges: BTreeSet<String> = texts(&relief["emerges_at"]).into_iter().collect();
    let lowest: BTreeSet<&str> =
        blockages.iter().filter_map(Blocked::lowest).flat_map(|(_, ids)| ids).collect();
    if emerges.iter().map(String::as_str).collect::<BTreeSet<_>>() != lowest {
        return Err(format!("emerges at: {emerges:?}, it is {lowest:?}"));
    }
    check_cap(case, relief, &blockages)?;
    check_rod(case, relief, &blockages)
}

fn check_cap(case: &Case, relief: &Value, blockages: &[Blocked<'_>]) -> Result<(), String> {
    let backs_up = backing_up(case);
    let relieving: Vec<BTreeSet<&str>> = blockages.iter().map(|b| b.relieving(&backs_up)).collect();
    let all: BTreeSet<&str> = relieving.iter().flatten().copied().collect();
    let Some(open) = relief["open"].as_str() else {
        return if all.is_empty() { Ok(()) } else { Err(format!("no cap: {all:?} would do")) };
    };
    if !all.contains(open) {
        return Err(format!("wrong cap: {open}, {all:?} would do"));
    }
    // Reading: what the owner may open comes before what only others may.
    let who = |id: &str| case.house.part(id).operable_by;
    if !who(open).is_empty() && all.iter().any(|id| who(id).is_empty()) {
        return Err(format!("not ours to open: {open}, {all:?} would do"));
    }
    let helped = |id: &str| -> BTreeSet<usize> {
        (0..relieving.len()).filter(|&blockage| relieving[blockage].contains(id)).collect()
    };
    let better = all.iter().find(|id| {
        who(id).is_empty()
            && helped(id).is_superset(&helped(open))
            && helped(id).len() > helped(open).len()
    });
    better.map_or(Ok(()), |id| {
        Err(format!("better cap: {id} helps wherever {open} does, and elsewhere"))
    })
}

fn check_rod(case: &Case, relief: &Value, blockages: &[Blocked<'_>]) -> Result<(), String> {
    // With the flow, from above the blockage, and through no flap: what is stuck right below a flap can
    // only be reached through it.
    let above = |blocked: &Blocked<'_>| -> BTreeSet<String> {
        let upper = blocked.pieces[blocked.at].0;
        let mut reach: BTreeSet<&str> = BTreeSet::from([upper]);
        loop {
            let more: BTreeSet<&str> = blocked
                .pieces
                .iter()
                .filter(|(upper, lower)| reach.contains(lower) && !reach.contains(upper))
                .filter(|(_, lower)| !blocked.is_flap(lower))
                .map(|(upper, _)| *upper)
                .collect();
            if more.is_empty() {
                break;
            }
            reach.extend(more);
        }
        let cleanout = |id: &&&str| case.house.part(id).kind == "Cleanout" && opens(case, id);
        reach.iter().filter(cleanout).map(|id| (*id).to_owned()).collect()
    };
    let from_above: BTreeSet<String> = blockages.iter().flat_map(above).collect();
    match relief["rod_from"].as_str() {
        Some(rod) if case.house.part(rod).kind != "Cleanout" => {
            Err(format!("rod: {rod} is no cleanout"))
        }
        Some(rod) if !opens(case, rod) => Err(format!("rod: {rod} does not open")),
        // All pipes together are shorter than a cable here, unless the lengths say otherwise.
        Some(rod) if !from_above.is_empty() && !from_above.contains(rod) => {
            Err(format!("rod: {rod} lies above no blockage, {from_above:?} do"))
        }
        None if !from_above.is_empty() => Err(format!("no rod: {from_above:?} would do")),
        _ => Ok(()),
    }
}
