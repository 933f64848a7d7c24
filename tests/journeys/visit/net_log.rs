//! What the browser asked for, from its own log of the network: also what service workers asked.

use serde_json::Value;
use std::fs;
use std::path::Path;

/// A request of a page or of its worker. What a person typed and what the browser asks for on its
/// own behalf has no initiator, and is none of the page's doing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Request {
    /// The address asked.
    pub url: String,
    /// The origin of the page that asked.
    pub initiator: String,
}

/// The initiator of what no page asked for.
const NOBODY: &str = "not an origin";

/// Reads the log of a browser that has ended.
///
/// # Panics
/// When the log is not complete.
pub fn requests(log: &Path) -> Vec<Request> {
    let text = fs::read_to_string(log).expect("the browser's log of the network");
    let log: Value = serde_json::from_str(&text).expect("a complete log of the network");
    let begins = &log["constants"]["logEventTypes"]["URL_REQUEST_START_JOB"];
    assert!(begins.is_number(), "the log names its events otherwise now");
    let events = log["events"].as_array().expect("a list of events");
    events
        .iter()
        .filter(|event| event["type"] == *begins)
        .filter_map(|event| request(&event["params"]))
        .collect()
}

fn request(what: &Value) -> Option<Request> {
    let initiator = what["initiator"].as_str()?;
    let url = what["url"].as_str()?;
    (initiator != NOBODY).then(|| Request {
        url: url.to_owned(),
        initiator: initiator.to_owned(),
    })
}
