//! The page needs the network once; later versions come in without getting in the way.

use crate::visit::{Paper, Screen, built_page, journey, journey_in};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;
use thirtyfour::extensions::query::ElementQueryable;
use thirtyfour::prelude::*;
use tokio::time::sleep;
use xtask::offline::list_files;

#[test]
fn works_without_a_network_once_loaded() {
    journey("without-network", async |visit| {
        visit.open("").await?;
        assert_eq!(visit.browser.title().await?, "Gramwright");
        visit.wait_until_kept().await?;
        visit.screenshot("desktop").await?;

        visit.cut_network().await?;
        visit.open("").await?;
        assert_eq!(visit.browser.title().await?, "Gramwright");
        let sizes = visit
            .browser
            .execute_async(SIZES_OF_DATA, Vec::new())
            .await?;
        let sizes: Vec<u64> = sizes.convert()?;
        assert!(sizes.iter().all(|size| *size > 100_000), "{sizes:?}");

        visit.look_with(Screen::Phone).await?;
        visit.screenshot("phone").await?;
        let pdf = visit.print(Paper::Letter).await?;
        assert!(pdf.has_text(), "the page can be printed");
        Ok(())
    });
}

/// Fetches both data files and gives their sizes in bytes.
const SIZES_OF_DATA: &str = r#"
const done = arguments[arguments.length - 1];
const size = async (name) => (await (await fetch("data/" + name)).arrayBuffer()).byteLength;
Promise.all(["sr28.foods.bin", "sr28.provenance.bin"].map(size)).then(done, (error) => done([0, String(error)]));
"#;

#[test]
fn an_untouched_page_takes_in_a_newer_version_by_itself() {
    let newer = newer_version("by-itself");
    journey_in(&built_page(), "newer-by-itself", async |visit| {
        visit.open("").await?;
        visit.wait_until_kept().await?;
        visit.serve_instead(&newer);
        visit.open("").await?;
        wait_for_title(&visit.browser, "Newer").await
    });
    fs::remove_dir_all(newer).expect("its own folder");
}

#[test]
fn a_page_in_use_asks_before_it_takes_in_a_newer_version() {
    let newer = newer_version("asked");
    journey_in(&built_page(), "newer-asked", async |visit| {
        visit.open("").await?;
        visit.wait_until_kept().await?;
        visit.browser.find(By::Css("body")).await?.click().await?;
        visit.serve_instead(&newer);
        visit.browser.execute(LOOK_FOR_NEWER, Vec::new()).await?;

        let button = visit
            .browser
            .query(By::Css("#newer-version:not([hidden]) button"))
            .first()
            .await?;
        assert_eq!(visit.browser.title().await?, "Gramwright");
        button.click().await?;
        wait_for_title(&visit.browser, "Newer").await
    });
    fs::remove_dir_all(newer).expect("its own folder");
}

/// What browsers do by themselves at every load, and after a day.
const LOOK_FOR_NEWER: &str =
    "navigator.serviceWorker.getRegistration().then((registration) => registration.update())";

async fn wait_for_title(browser: &WebDriver, title: &str) -> WebDriverResult<()> {
    for _ in 0..100 {
        if browser.title().await? == title {
            return Ok(());
        }
        sleep(Duration::from_millis(100)).await;
    }
    panic!("the title is still {}", browser.title().await?);
}

/// A copy of the built page with another title, listed for the service worker as the build does it.
fn newer_version(name: &str) -> PathBuf {
    let folder = std::env::temp_dir().join(format!("gramwright-{}-{name}", std::process::id()));
    copy(&built_page(), &folder);
    let index = folder.join("index.html");
    let text = fs::read_to_string(&index).expect("the built page");
    let text = text.replace("<title>Gramwright", "<title>Newer");
    fs::write(index, text).expect("a file of its own");
    let worker = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web/shell/worker.js");
    fs::copy(worker, folder.join("worker.js")).expect("the worker");
    list_files(&folder).expect("a list");
    folder
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder of its own");
    for entry in fs::read_dir(from).expect("a folder") {
        let path = entry.expect("an entry").path();
        let target = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            copy(&path, &target);
        } else {
            fs::copy(&path, target).expect("a copy");
        }
    }
}
