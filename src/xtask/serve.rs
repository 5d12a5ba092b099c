//! `cargo xtask serve`: the finished app at a local address, as a static host would serve it.
//!
//! It obeys the `_headers` file of the build, so that what is tried here is what a host gives.
use crate::{build, say::say};
use anyhow::{Context, Result, anyhow, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use tiny_http::{Header, Method, Request, Response, Server};

/// Builds unless told not to, then serves until stopped.
pub(crate) fn serve(words: &[&str]) -> Result<()> {
    let (mut port, mut quick, mut no_build) = (8080, false, false);
    let mut words = words.iter();
    while let Some(word) = words.next() {
        match *word {
            "--port" => {
                port = words.next().and_then(|port| port.parse().ok()).context("--port wants a number")?;
            }
            "--quick" => quick = true,
            "--no-build" => no_build = true,
            _ => bail!("`{word}` is not known here; known: --port NUMBER --quick --no-build"),
        }
    }
    let folder = if no_build { build::folder(quick) } else { build::build(quick)? };
    listen(Site { folder }, port)
}

/// Serves `site` at `port` of this machine only, on a few threads.
fn listen(site: Site, port: u16) -> Result<()> {
    if !site.folder.join("index.html").is_file() {
        bail!("nothing is built in {}; run `cargo xtask build`", site.folder.display());
    }
    let server = Server::http(("127.0.0.1", port)).map_err(|error| anyhow!("port {port}: {error}"))?;
    say(&format!("http://127.0.0.1:{port}/"));
    let (server, site) = (Arc::new(server), Arc::new(site));
    let threads: Vec<_> = (0..4)
        .map(|_| {
            let (server, site) = (Arc::clone(&server), Arc::clone(&site));
            thread::spawn(move || {
                while let Ok(request) = server.recv() {
                    site.reply(request);
                }
            })
        })
        .collect();
    threads.into_iter().for_each(|thread| thread.join().unwrap_or_default());
    Ok(())
}

/// A folder with a finished app.
struct Site {
    folder: PathBuf,
}

impl Site {
    fn reply(&self, request: Request) {
        let path = request.url().split(['?', '#']).next().unwrap_or("/").to_owned();
        // A browser that went away is no trouble of ours.
        if !matches!(request.method(), Method::Get | Method::Head) {
            request.respond(Response::from_string("only GET and HEAD\n").with_status_code(405)).ok();
            return;
        }
        let (status, content, kind) =
            match self.file(&path).and_then(|file| Some((fs::read(&file).ok()?, kind(&file)))) {
                Some((content, kind)) => (200, content, kind),
                None => (404, b"not here\n".to_vec(), "text/plain; charset=utf-8"),
            };
        let mut response = Response::from_data(content).with_status_code(status);
        response.add_header(header("Content-Type", kind));
        // Read anew each time, so that a build while serving is served whole.
        let rules = fs::read_to_string(self.folder.join("_headers")).unwrap_or_default();
        for (name, value) in matching(&rules, &path) {
            if status == 200 || !name.eq_ignore_ascii_case("content-type") {
                response.add_header(header(name, value));
            }
        }
        request.respond(response).ok();
    }

    /// Returns the file of an address, never one outside the folder and never the rules themselves.
    fn file(&self, path: &str) -> Option<PathBuf> {
        let name = if path == "/" { "index.html" } else { path.strip_prefix('/')? };
        let plain =
            name.split('/').all(|part| !matches!(part, "" | "." | "..")) && !name.contains(['\\', '%']);
        let file = self.folder.join(name);
        (plain && name != "_headers" && file.is_file()).then_some(file)
    }
}

/// Returns the headers of every rule whose pattern matches `path`; a pattern may end in `*`.
fn matching<'a>(rules: &'a str, path: &str) -> Vec<(&'a str, &'a str)> {
    let mut applies = false;
    let mut found = Vec::new();
    for line in rules.lines().filter(|line| !line.trim().is_empty()) {
        if line.starts_with(char::is_whitespace) {
            found.extend(
                line.split_once(':').filter(|_| applies).map(|(name, value)| (name.trim(), value.trim())),
            );
        } else {
            applies = line.strip_suffix('*').map_or(line == path, |start| path.starts_with(start));
        }
    }
    found
}

/// Returns the media type by the file's ending.
fn kind(file: &Path) -> &'static str {
    match file.extension().and_then(|end| end.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "woff2" => "font/woff2",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

fn header(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).unwrap_or_else(|()| panic!("the header `{name}: {value}` is not ASCII"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rules_apply_by_exact_address_or_by_its_beginning() {
        let rules = "/*\n  A: 1\n/app.js\n  B: 2: 3\n";
        assert_eq!(matching(rules, "/app.js"), [("A", "1"), ("B", "2: 3")]);
        assert_eq!(matching(rules, "/app.js.map"), [("A", "1")]);
    }

    #[test]
    fn no_address_leads_out_of_the_folder() {
        let site = Site { folder: PathBuf::from(env!("CARGO_MANIFEST_DIR")) };
        assert!(site.file("/main.rs").is_some());
        for path in ["/../core/lib.rs", "/./main.rs", "//main.rs", "/%2e%2e/core/lib.rs", "main.rs", ""] {
            assert!(site.file(path).is_none(), "{path}");
        }
    }
}
