//! Nothing is sent anywhere: every journey fails when its page asks anything but its own server.
//! Here is shown that it does.

use crate::visit::{built_page, journey_in};
use std::fs;
use xtask::server::Server;

#[test]
#[should_panic(expected = "asked elsewhere")]
fn a_page_that_asks_another_server_is_found_out() {
    let other = Server::start(&built_page(), 0).expect("a free port");
    let folder = std::env::temp_dir().join(format!("gramwright-{}-asks", std::process::id()));
    let page = format!(
        "<!doctype html><html lang=en data-started><title>Asks</title><link rel=icon href=data:,>\
         <div id=content><img alt=Asked src='http://127.0.0.1:{}/icon.svg'></div>",
        other.port()
    );
    fs::create_dir_all(&folder).expect("a folder of its own");
    fs::write(folder.join("index.html"), page).expect("a file of its own");
    journey_in(&folder, "asks-elsewhere", async |visit| {
        visit.open("").await
    });
}
