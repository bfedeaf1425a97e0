//! The thread that makes a paper, saves it, or opens it.

use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, PoisonError};

use egui::{ColorImage, TextureHandle, TextureOptions};
use quarterturn_folder::{Folder, FolderError, write_whole};
use quarterturn_guidance::{Catalogue, count, fill};
use quarterturn_home::{Date, Home, Log};
use quarterturn_papers::{
    CannotPrint, LogLine, Order, PackExtras, Paper, calendar, cards, lay_out_watched, phone_page,
};

use super::Item;
use crate::app::App;

/// Width of the pages that are shown, in pixels.
const WIDTH: u32 = 1100;
/// Most pages that are shown; all are in the file.
const MOST_PAGES: usize = 60;

/// What papers are made from, so that a thread can have it.
pub(crate) struct Ordered {
    home: Arc<Home>,
    log: Log,
    language: &'static str,
    paper: Paper,
    today: Date,
    folder: Option<PathBuf>,
}

impl Ordered {
    /// What the window shows now; `None` if the day is unknown.
    pub(crate) fn of(app: &App) -> Option<Self> {
        let home = Arc::clone(app.history.home());
        Some(Self {
            paper: app.papers.paper.unwrap_or_else(|| Paper::of_home(&home)),
            home,
            log: app.log.clone(),
            language: app.words.language(),
            today: app.today?,
            folder: app.opening.folder.clone(),
        })
    }

    /// The plans and photos that the home names, as far as they can be read.
    fn pictures(&self) -> BTreeMap<String, Vec<u8>> {
        let plans = self.home.levels.iter().filter_map(|level| level.plan.as_ref());
        let photos = self.home.components.iter().filter_map(|c| c.photo.as_deref());
        let folder = self.folder.as_deref().and_then(|path| Folder::at(path).ok());
        let read = |path: &str| match &folder {
            Some(folder) => folder.read_inside(path).ok(),
            None => crate::builtin::picture(path).map(<[u8]>::to_vec),
        };
        plans
            .map(|plan| plan.picture.as_str())
            .chain(photos)
            .filter_map(|path| Some((path.to_owned(), read(path)?)))
            .collect()
    }

    /// The bytes of a paper, and its pages as pictures.
    fn make(&self, item: Item, watch: &Watch) -> Result<(Vec<u8>, Vec<ColorImage>), String> {
        let words = Catalogue::in_language(self.language);
        let title = words.text(item.key());
        let failed = |why: String| {
            words.fill("paper-cli-failed", &[fill("title", &title), fill("why", &why)])
        };
        watch.tell(words.fill("window-papers-making", &[fill("title", &title)]))?;
        match item {
            Item::Calendar => {
                return Ok((calendar(&self.home, self.today, &words).into_bytes(), Vec::new()));
            }
            Item::Cards => return Ok((cards(&self.home, &words).into_bytes(), Vec::new())),
            Item::Phone | Item::Sheet(_) => {}
        }
        let pictures = self.pictures();
        let Item::Sheet(sheet) = item else {
            let mut progress = |done: usize, all: usize| {
                let fills =
                    [fill("title", &title), count("n", number(done)), count("of", number(all))];
                match watch.tell(words.fill("window-papers-part", &fills)) {
                    Ok(()) => ControlFlow::Continue(()),
                    Err(_) => ControlFlow::Break(()),
                }
            };
            let page = phone_page(&self.home, &pictures, self.today, &mut progress);
            return page
                .map(|page| (page.html.into_bytes(), Vec::new()))
                .map_err(|error| failed(error.to_string()));
        };
        let mut extras = PackExtras::of_home(&self.home, self.today, &words);
        extras.log = LogLine::of_log(&self.log, &words);
        let order = Order {
            home: &self.home,
            pictures: &pictures,
            paper: self.paper,
            words: &words,
            today: self.today,
            extras: &extras,
        };
        let mut at_stage = |_| match watch.stops() {
            true => ControlFlow::Break(()),
            false => ControlFlow::Continue(()),
        };
        let printed =
            lay_out_watched(sheet, &order, &mut at_stage).map_err(|error| match error {
                CannotPrint::Nothing => words.fill("paper-cli-nothing", &[fill("title", &title)]),
                error => failed(error.to_string()),
            })?;
        let bytes = printed.pdf().map_err(|error| failed(error.to_string()))?;
        let mut pages = Vec::new();
        let all = printed.page_count();
        for page in 0..all.min(MOST_PAGES) {
            let fills = [fill("title", &title), count("n", number(page)), count("of", number(all))];
            watch.tell(words.fill("window-papers-part", &fills))?;
            let Some(picture) = printed.picture(page, WIDTH) else { continue };
            let side = |pixels: u32| usize::try_from(pixels).unwrap_or(1);
            let size = [side(picture.width), side(picture.height)];
            pages.push(ColorImage::from_rgba_premultiplied(size, &picture.rgba));
        }
        Ok((bytes, pages))
    }
}

/// A paper that was made.
pub(crate) struct Made {
    /// The file.
    pub(crate) bytes: Arc<Vec<u8>>,
    /// The pages to be shown.
    pub(crate) pages: Vec<TextureHandle>,
}

impl std::fmt::Debug for Made {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Made").field("pages", &self.pages.len()).finish_non_exhaustive()
    }
}

impl std::fmt::Debug for Making {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Making").finish_non_exhaustive()
    }
}

/// What the thread came to.
pub(crate) enum News {
    /// A paper.
    Made(Made),
    /// Something to be told; `None` if it was called off.
    Said(Option<String>),
    /// A path was chosen.
    Chosen(String),
}

enum Outcome {
    Made(Vec<u8>, Vec<ColorImage>),
    Said(Option<String>),
    Chosen(String),
}

/// What is watched from both sides.
#[derive(Clone)]
struct Watch {
    stop: Arc<AtomicBool>,
    stage: Arc<Mutex<String>>,
    ctx: egui::Context,
}

impl Watch {
    fn stops(&self) -> bool {
        self.stop.load(Ordering::Relaxed)
    }

    /// Tells how far it is; an empty error if it was called off.
    fn tell(&self, stage: String) -> Result<(), String> {
        if self.stops() {
            return Err(String::new());
        }
        *self.stage.lock().unwrap_or_else(PoisonError::into_inner) = stage;
        self.ctx.request_repaint();
        Ok(())
    }
}

/// A thread at work.
pub(crate) struct Making {
    outcome: Receiver<Outcome>,
    watch: Watch,
}

impl Making {
    fn start(ctx: &egui::Context, work: impl FnOnce(&Watch) -> Outcome + Send + 'static) -> Self {
        let (send, outcome): (Sender<Outcome>, _) = channel();
        let watch = Watch { stop: Arc::default(), stage: Arc::default(), ctx: ctx.clone() };
        let own = watch.clone();
        std::thread::spawn(move || {
            let outcome = work(&own);
            // Nobody waits any more if it was called off.
            if send.send(outcome).is_ok() {
                own.ctx.request_repaint();
            }
        });
        Self { outcome, watch }
    }

    /// Makes a paper to be shown.
    pub(crate) fn make(ctx: &egui::Context, order: Ordered, item: Item) -> Self {
        Self::start(ctx, move |watch| match order.make(item, watch) {
            Ok((bytes, pages)) => Outcome::Made(bytes, pages),
            Err(said) => Outcome::Said(Some(said).filter(|said| !said.is_empty())),
        })
    }

    /// Makes everything and saves it in a folder. What a home has nothing for is passed over.
    pub(crate) fn save_all(
        ctx: &egui::Context,
        order: Ordered,
        items: &'static [Item],
        folder: PathBuf,
    ) -> Self {
        Self::start(ctx, move |watch| {
            let words = Catalogue::in_language(order.language);
            if let Err(error) = make_folder(&folder) {
                return Outcome::Said(Some(unsaved(&words, &error)));
            }
            let mut told = Vec::new();
            for &item in items {
                match order.make(item, watch) {
                    Ok((bytes, _)) => {
                        let file = folder.join(item.file_name());
                        if let Err(error) = write_whole(&file, &bytes) {
                            return Outcome::Said(Some(unsaved(&words, &error)));
                        }
                    }
                    Err(said) if said.is_empty() => return Outcome::Said(None),
                    Err(said) => told.push(said),
                }
            }
            told.insert(0, saved(&words, &folder));
            Outcome::Said(Some(told.join("\n")))
        })
    }

    /// Saves a paper, whole or not at all.
    pub(crate) fn save(
        ctx: &egui::Context,
        words: &Catalogue,
        path: PathBuf,
        bytes: Arc<Vec<u8>>,
    ) -> Self {
        let language = words.language();
        Self::start(ctx, move |_| {
            let words = Catalogue::in_language(language);
            Outcome::Said(Some(match write_whole(&path, &bytes) {
                Ok(()) => saved(&words, &path),
                Err(error) => unsaved(&words, &error),
            }))
        })
    }

    /// Opens a paper in the system's viewer, from where it is printed.
    pub(crate) fn view(
        ctx: &egui::Context,
        words: &Catalogue,
        name: &str,
        bytes: Arc<Vec<u8>>,
    ) -> Self {
        let language = words.language();
        let file = std::env::temp_dir().join("quarterturn").join(name);
        Self::start(ctx, move |_| {
            let words = Catalogue::in_language(language);
            let made = file.parent().map_or(Ok(()), make_folder);
            if let Err(error) = made.and_then(|()| write_whole(&file, &bytes)) {
                return Outcome::Said(Some(error.told(&words)));
            }
            Outcome::Said(Some(match open::that_detached(&file) {
                Ok(()) => words.text("window-papers-viewed"),
                Err(error) => {
                    let fills = [
                        fill("path", &file.display().to_string()),
                        fill("why", &error.to_string()),
                    ];
                    words.fill("window-papers-not-viewed", &fills)
                }
            }))
        })
    }

    /// Lets the system's file window choose where to save.
    pub(crate) fn choose(ctx: &egui::Context, name: String) -> Self {
        Self::start(ctx, move |_| match rfd::FileDialog::new().set_file_name(name).save_file() {
            Some(path) => Outcome::Chosen(path.display().to_string()),
            None => Outcome::Said(None),
        })
    }

    /// How far it is.
    pub(crate) fn stage(&self, words: &Catalogue) -> String {
        let stage = self.watch.stage.lock().unwrap_or_else(PoisonError::into_inner).clone();
        if stage.is_empty() { words.text("window-papers-waiting") } else { stage }
    }

    /// Calls it off.
    pub(crate) fn stop(&self) {
        self.watch.stop.store(true, Ordering::Relaxed);
    }

    /// What it came to, once it has.
    pub(crate) fn news(&self, ctx: &egui::Context) -> Option<News> {
        Some(match self.outcome.try_recv().ok()? {
            Outcome::Made(bytes, pages) => News::Made(Made {
                bytes: Arc::new(bytes),
                pages: pages
                    .into_iter()
                    .enumerate()
                    .map(|(n, page)| {
                        ctx.load_texture(format!("page-{n}"), page, TextureOptions::LINEAR)
                    })
                    .collect(),
            }),
            Outcome::Said(said) => News::Said(said),
            Outcome::Chosen(path) => News::Chosen(path),
        })
    }
}

fn saved(words: &Catalogue, path: &Path) -> String {
    words.fill("window-papers-saved", &[fill("path", &path.display().to_string())])
}

fn make_folder(folder: &Path) -> Result<(), FolderError> {
    std::fs::create_dir_all(folder).map_err(|error| FolderError::writing(folder, error))
}

fn unsaved(words: &Catalogue, error: &FolderError) -> String {
    words.fill("window-papers-unsaved", &[fill("problem", &error.problem(words))])
}

fn number(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::INFINITY, f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What saving comes to.
    fn said(language: &str, path: PathBuf) -> String {
        let ctx = egui::Context::default();
        let words = Catalogue::in_language(language);
        let making = Making::save(&ctx, &words, path, Arc::new(b"%PDF".to_vec()));
        let outcome = making.outcome.recv().unwrap();
        let Outcome::Said(Some(said)) = outcome else { panic!("nothing was said") };
        said
    }

    #[test]
    fn a_paper_is_saved_whole_or_the_text_says_where_not_and_what_to_do() {
        for language in ["en", "es"] {
            let words = Catalogue::in_language(language);
            let place = tempfile::tempdir().unwrap();
            let file = place.path().join("panel.pdf");
            assert_eq!(said(language, file.clone()), saved(&words, &file));
            assert_eq!(std::fs::read(&file).unwrap(), b"%PDF");

            let folder = place.path().join("no-such-folder");
            let told = said(language, folder.join("panel.pdf"));
            let error = FolderError::Gone { folder: folder.clone() };
            assert!(told.starts_with(&error.problem(&words)), "{told}");
            assert!(told.len() > error.problem(&words).len() + 10, "{told}");
            assert!(!folder.exists());
        }
    }
}
