//! The browser's driver: a process of its own on a free port, ended with the journey.

use super::hands::{BLINK, PATIENCE};
use std::env;
use std::fs;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{self, Child, Command, Stdio};
use std::sync::Arc;
use thirtyfour::extensions::query::ElementPollerWithTimeout;
use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, LoggingPrefsLogLevel};

/// How a browser without a window runs as root, in a small machine, and asks nobody anything.
const BROWSER_OPTIONS: [&str; 10] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-background-networking",
    "--disable-component-update",
    "--no-first-run",
    "--no-default-browser-check",
    "--lang=en-US",
    // Nothing but this machine can be reached.
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1",
];

/// The folder for saved files, in the profile's.
const DOWNLOADS: &str = "downloads";

/// A running driver with an empty browser profile.
#[derive(Debug)]
pub struct Driver {
    process: Child,
    port: u16,
    profile: PathBuf,
}

impl Driver {
    /// Starts a driver.
    ///
    /// # Panics
    /// When there is no `chromedriver`, or it does not tell its port.
    pub fn start(name: &str) -> Self {
        let mut process = Command::new("chromedriver")
            .arg("--port=0")
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("chromedriver, which `cargo xtask test` installs");
        let output = process.stdout.take().expect("it was piped");
        let port = BufReader::new(output)
            .lines()
            .map_while(Result::ok)
            .find_map(|line| {
                let told = line.split_once("started successfully on port ")?.1;
                told.trim_end_matches('.').parse().ok()
            })
            .expect("chromedriver tells its port");
        let profile = env::temp_dir().join(format!("gramwright-{}-{name}", process::id()));
        fs::create_dir_all(profile.join(DOWNLOADS)).expect("a folder of its own");
        Self {
            process,
            port,
            profile,
        }
    }

    /// Opens a browser that has never seen the page.
    pub async fn open_browser(&self) -> WebDriverResult<WebDriver> {
        let mut capabilities = DesiredCapabilities::chrome();
        for option in BROWSER_OPTIONS {
            capabilities.add_arg(option)?;
        }
        capabilities.add_arg(&format!("--user-data-dir={}", self.profile.display()))?;
        capabilities.add_arg(&format!("--log-net-log={}", self.net_log().display()))?;
        let prefs = serde_json::json!({ "download.default_directory": self.downloads() });
        capabilities.add_experimental_option("prefs", prefs)?;
        capabilities.set_browser_log_level(LoggingPrefsLogLevel::All)?;
        let poller = ElementPollerWithTimeout::new(PATIENCE, BLINK);
        WebDriver::builder(format!("http://localhost:{}", self.port), capabilities)
            .poller(Arc::new(poller))
            .connect()
            .await
    }

    /// The browser's log of what it asked for; complete once the browser has ended.
    pub fn net_log(&self) -> PathBuf {
        self.profile.join("net-log.json")
    }

    /// Where the browser saves files.
    pub fn downloads(&self) -> PathBuf {
        self.profile.join(DOWNLOADS)
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // Both may be gone already; there is nothing more to do about them then.
        drop(self.process.kill());
        drop(self.process.wait());
        drop(fs::remove_dir_all(&self.profile));
    }
}
