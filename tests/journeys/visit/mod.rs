//! A visit to the page: its server, its browser, and what a journey can do with them.

mod driver;
mod hands;
mod keys;
mod net_log;
mod paper;

pub use hands::{BLINK, PATIENCE};
pub use paper::{Paper, Pdf};

use driver::Driver;
use std::env;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::path::{Path, PathBuf};
use thirtyfour::cdp::domains::network::EmulateNetworkConditions;
use thirtyfour::extensions::query::ElementQueryable;
use thirtyfour::prelude::*;
use tokio::runtime;
use xtask::server::Server;

/// The built page's folder, passed by `cargo xtask test`.
const PAGE: &str = "GRAMWRIGHT_PAGE";

/// The moment of a failed journey's last screenshot.
const FAILED: &str = "failed";

/// What the page is looked at with.
#[derive(Debug, Clone, Copy)]
pub enum Screen {
    /// An office desktop.
    Desktop,
    /// The same desktop with everything at twice its size: half as wide in CSS pixels.
    DesktopZoomed,
    /// A phone held upright.
    Phone,
}

impl Screen {
    /// Width and height in CSS pixels, how many of the device's make one of them, and whether it is
    /// a touch device.
    fn size(self) -> (u32, u32, f64, bool) {
        match self {
            Self::Desktop => (1280, 900, 1.0, false),
            Self::DesktopZoomed => (640, 450, 2.0, false),
            Self::Phone => (390, 844, 1.0, true),
        }
    }
}

/// The folder of the built page.
pub fn built_page() -> PathBuf {
    env::var_os(PAGE)
        .map(PathBuf::from)
        .unwrap_or_else(|| panic!("{PAGE} is not set: run the journeys with `cargo xtask test`"))
}

/// Walks a journey on the built page, on a desktop at first.
pub fn journey(name: &str, walk: impl AsyncFnOnce(&mut Visit) -> WebDriverResult<()>) {
    journey_in(&built_page(), name, walk);
}

/// Walks a journey on the page in `folder`.
///
/// Whatever happens, the browser and its driver are ended; a failed journey leaves a screenshot.
///
/// # Panics
/// When the journey fails, the browser's console shows an error at its end, or anything but the
/// page's server was asked for something.
pub fn journey_in(
    folder: &Path,
    name: &str,
    walk: impl AsyncFnOnce(&mut Visit) -> WebDriverResult<()>,
) {
    let runtime = runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .expect("a runtime");
    let driver = Driver::start(name);
    let mut visit = Visit {
        name: name.to_owned(),
        downloads: driver.downloads(),
        browser: runtime.block_on(driver.open_browser()).expect("a browser"),
        server: Server::start(folder, 0).expect("a served page"),
    };
    drop(fs::remove_file(visit.picture_file(FAILED, "png")));
    let outcome = catch_unwind(AssertUnwindSafe(|| {
        runtime.block_on(async {
            visit.look_with(Screen::Desktop).await?;
            walk(&mut visit).await?;
            visit.console_errors().await
        })
    }));
    if !matches!(&outcome, Ok(Ok(errors)) if errors.is_empty()) {
        // The failure itself is what matters; a browser that is gone cannot be photographed.
        drop(runtime.block_on(visit.screenshot(FAILED)));
    }
    let ended = runtime.block_on(visit.browser.quit());
    match outcome {
        Err(panic) => resume_unwind(panic),
        Ok(Err(error)) => panic!("{name}: {error}"),
        Ok(Ok(errors)) => assert!(errors.is_empty(), "{name}: in the console: {errors:#?}"),
    }
    ended.expect("the browser ends");
    let asked = net_log::requests(&driver.net_log());
    let address = visit.server.url();
    assert!(
        !asked.is_empty(),
        "{name}: the page asked for its own files"
    );
    let elsewhere = asked
        .iter()
        .filter(|asked| !asked.url.starts_with(&address));
    let elsewhere: Vec<_> = elsewhere.collect();
    assert!(
        elsewhere.is_empty(),
        "{name}: asked elsewhere: {elsewhere:#?}"
    );
}

/// A browser showing the page.
#[derive(Debug)]
pub struct Visit {
    /// The browser; see thirtyfour's documentation for all it can do.
    pub browser: WebDriver,
    downloads: PathBuf,
    name: String,
    server: Server,
}

impl Visit {
    /// Opens an address below the page's folder (`""` is the page itself) and waits for the program.
    ///
    /// # Errors
    /// When the program has not started after 20 seconds.
    pub async fn open(&self, address: &str) -> WebDriverResult<()> {
        self.browser.goto(self.server.url() + address).await?;
        self.wait_until_started().await
    }

    /// Goes to another view without loading the page again.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn go(&self, fragment: &str) -> WebDriverResult<()> {
        self.browser.goto(self.server.url() + fragment).await
    }

    /// Loads the page again where it is.
    ///
    /// # Errors
    /// As [`Self::open`].
    pub async fn reload(&self) -> WebDriverResult<()> {
        self.browser.refresh().await?;
        self.wait_until_started().await
    }

    async fn wait_until_started(&self) -> WebDriverResult<()> {
        self.browser
            .query(By::Css("html[data-started] #content"))
            .desc("what the program shows once its tables are open")
            .first()
            .await?;
        Ok(())
    }

    /// Waits until everything is kept for use without a network.
    ///
    /// # Errors
    /// When that is not so after 20 seconds.
    pub async fn wait_until_kept(&self) -> WebDriverResult<()> {
        self.browser
            .query(By::Css("html[data-offline=ready]"))
            .desc("the page's mark that it is kept for use without a network")
            .first()
            .await?;
        Ok(())
    }

    /// Cuts the network for good: the browser is offline, and the server is gone.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn cut_network(&mut self) -> WebDriverResult<()> {
        self.server.stop();
        self.browser
            .cdp()
            .send(EmulateNetworkConditions {
                offline: true,
                latency: 0,
                download_throughput: -1,
                upload_throughput: -1,
                connection_type: None,
            })
            .await?;
        Ok(())
    }

    /// Serves another folder at the same address from now on.
    ///
    /// # Panics
    /// When the server cannot start again on its port.
    pub fn serve_instead(&mut self, folder: &Path) {
        let port = self.server.port();
        self.server.stop();
        self.server = Server::start(folder, port).expect("the port it just left");
    }

    /// Gives the page a screen of another size.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn look_with(&self, screen: Screen) -> WebDriverResult<()> {
        let (width, height, scale, touch) = screen.size();
        self.browser
            .cdp()
            .emulation()
            .set_device_metrics_override(width, height, scale, touch)
            .await
    }

    /// Takes a screenshot into `target/screenshots/`, named after the journey and `moment`.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn screenshot(&self, moment: &str) -> WebDriverResult<()> {
        let path = self.picture_file(moment, "png");
        self.browser.screenshot(&path).await
    }

    /// Prints the page into `target/screenshots/`, and returns what was printed.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn print(&self, paper: Paper) -> WebDriverResult<Pdf> {
        self.print_pdf("printed", paper).await
    }

    /// Prints the page on both papers: every page has the paper's size, and there is text.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn see_it_printed(&self) -> WebDriverResult<()> {
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = self.print(paper).await?;
            assert!(
                pdf.pages().iter().all(|page| paper.has_size(*page)),
                "{paper:?}"
            );
            assert!(pdf.has_text(), "{paper:?}");
        }
        Ok(())
    }

    /// Prints the page into `target/screenshots/`, named after the journey, `moment` and the paper,
    /// and returns what was printed.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn print_pdf(&self, moment: &str, paper: Paper) -> WebDriverResult<Pdf> {
        let pdf = self.browser.print_page(paper.parameters()).await?;
        let path = self.picture_file(&format!("{moment}-{paper:?}"), "pdf");
        fs::write(&path, &pdf).expect("a file in target/screenshots");
        Ok(Pdf::new(path, &pdf))
    }

    /// The console's errors since this was last asked.
    ///
    /// # Errors
    /// When the browser does not tell.
    pub async fn console_errors(&self) -> WebDriverResult<Vec<String>> {
        let entries = self.browser.browser_log().await?;
        let errors = entries.into_iter().filter(|entry| entry.level == "SEVERE");
        Ok(errors.map(|entry| entry.message).collect())
    }

    fn picture_file(&self, moment: &str, extension: &str) -> PathBuf {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/screenshots");
        fs::create_dir_all(&folder).expect("a folder for screenshots");
        folder.join(format!("{}-{moment}.{extension}", self.name))
    }
}
