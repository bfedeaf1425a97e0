//! What can be typed, close to how it is typed.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand};
use quarterturn_home::Date;
use quarterturn_papers::Paper;

/// What to close, open, reset or look at in a house when something goes wrong, worked out from a
/// map of its systems.
#[derive(Debug, Parser)]
#[command(name = "quarterturn", version, args_conflicts_with_subcommands = true)]
pub(crate) struct Arguments {
    /// Folder of the home to open, or its home.ron. Without it: the last home, or the built-in one
    #[arg(value_name = "HOME")]
    pub(crate) home: Option<PathBuf>,
    /// Language to speak, such as es; the home's own without it
    #[arg(long, value_name = "TAG", global = true)]
    pub(crate) language: Option<String>,
    #[command(subcommand)]
    pub(crate) command: Option<Command>,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// List the troubles it knows, with their ids
    Troubles {
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Answer a trouble at a spot
    Answer(AnswerArguments),
    /// Write the papers: fridge-door sheet, panel directory, valve list, tags, handover pack, phone page
    Papers(PapersArguments),
    /// Tell what is due in a home; write it as a calendar, and its contacts as cards
    Upkeep(UpkeepArguments),
    /// Tell what the map of a home lacks or gets wrong
    Check {
        /// Folder of the home, or its home.ron
        #[arg(value_name = "HOME")]
        home: PathBuf,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
}

#[derive(Debug, Args)]
pub(crate) struct AnswerArguments {
    /// Folder of the home, or its home.ron
    #[arg(value_name = "HOME")]
    pub(crate) home: PathBuf,
    /// What is wrong; `quarterturn troubles` lists the ids
    #[arg(long, value_name = "TROUBLE")]
    pub(crate) trouble: String,
    /// Where: a component, a connection a..b, or a space. Not needed for gas, CO alarm and fire
    #[arg(long, value_name = "SPOT")]
    pub(crate) at: Option<String>,
    /// The space where you stand
    #[arg(long, value_name = "SPACE")]
    pub(crate) from: Option<String>,
    /// A device that does not turn, hold or open; may be given several times
    #[arg(long, value_name = "ID")]
    pub(crate) failed: Vec<String>,
    /// What was seen, such as kitchen-outlet=dead; may be given several times. States: live, dead,
    /// drains, backs-up, wet, dry, on, off, tripped
    #[arg(long, value_name = "ID=STATE")]
    pub(crate) seen: Vec<String>,
    /// The day, such as 2026-05-02; the machine's own without it
    #[arg(long, value_name = "DAY")]
    pub(crate) today: Option<Date>,
    /// Write JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
pub(crate) struct UpkeepArguments {
    /// Folder of the home, or its home.ron
    #[arg(value_name = "HOME")]
    pub(crate) home: PathBuf,
    /// The day, such as 2026-05-02; the machine's own without it
    #[arg(long, value_name = "DAY")]
    pub(crate) today: Option<Date>,
    /// Write what is due into this calendar file (RFC 5545)
    #[arg(long, value_name = "FILE")]
    pub(crate) ics: Option<PathBuf>,
    /// Write the contacts into this file of cards (RFC 6350)
    #[arg(long, value_name = "FILE")]
    pub(crate) cards: Option<PathBuf>,
    /// Write JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Debug, Args)]
pub(crate) struct PapersArguments {
    /// Folder of the home, or its home.ron
    #[arg(value_name = "HOME")]
    pub(crate) home: PathBuf,
    /// Folder to write into; it is made if it is not there
    #[arg(long, value_name = "DIR")]
    pub(crate) to: PathBuf,
    /// Size of the paper: a4 or letter; by the home's units without it
    #[arg(long, value_name = "SIZE", value_parser = paper)]
    pub(crate) paper: Option<Paper>,
    /// The day to print, such as 2026-05-02; the machine's own without it
    #[arg(long, value_name = "DAY")]
    pub(crate) today: Option<Date>,
}

fn paper(word: &str) -> Result<Paper, String> {
    let known: Vec<&str> = Paper::ALL.iter().map(|(_, word)| *word).collect();
    Paper::from_word(word).ok_or_else(|| format!("there is: {}", known.join(", ")))
}
