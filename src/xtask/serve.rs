//! `cargo xtask serve`: the finished app at a local address, as a static host would serve it.
//!
//! It obeys the `_headers` file of the build, so that what is tried here is what a host gives.
//!
//! No router crate, a worker of our own, a server of our own in xtask: each is a page of code against a third of the
//! app's size, a folder of packages, or a pool that stalled.
use crate::squeeze::COPIES;
use crate::{build, say::say};
use anyhow::{Context, Result, bail};
use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use std::time::Duration;

/// How long a connection may stay silent.
const PATIENCE: Duration = Duration::from_secs(30);

/// How many bytes of a request are read.
const LONGEST_REQUEST: u64 = 64 * 1024;

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

/// Serves `site` at `port` of this machine only, a thread a connection.
///
/// Browsers open connections in bursts and leave some silent, which makes a server with a pool of threads stall.
fn listen(site: Site, port: u16) -> Result<()> {
    if !site.folder.join("index.html").is_file() {
        bail!("nothing is built in {}; run `cargo xtask build`", site.folder.display());
    }
    let listener = TcpListener::bind(("127.0.0.1", port)).with_context(|| format!("port {port}"))?;
    say(&format!("http://127.0.0.1:{port}/"));
    let site = Arc::new(site);
    for connection in listener.incoming().flatten() {
        let site = Arc::clone(&site);
        // A browser that went away is no trouble of ours.
        thread::spawn(move || site.reply(connection).ok());
    }
    Ok(())
}

/// What is said to a request, before the rules of the `_headers` file.
struct Reply {
    status: &'static str,
    kind: &'static str,
    /// How the content is squeezed; nothing where it is as it is.
    coding: Option<&'static str>,
    content: Vec<u8>,
}

/// A folder with a finished app.
struct Site {
    folder: PathBuf,
}

impl Site {
    /// Answers the one request that a connection may bring, then closes it.
    fn reply(&self, connection: TcpStream) -> io::Result<()> {
        connection.set_read_timeout(Some(PATIENCE))?;
        let mut lines = BufReader::new(&connection).take(LONGEST_REQUEST).lines();
        let request = lines.next().transpose()?.unwrap_or_default();
        let mut accepts = String::new();
        while let Some(line) = lines.next().transpose()?.filter(|line| !line.is_empty()) {
            if let Some((name, value)) = line.split_once(':')
                && name.eq_ignore_ascii_case("accept-encoding")
            {
                value.clone_into(&mut accepts);
            }
        }

        let mut words = request.split(' ');
        let (method, address) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
        let path = address.split(['?', '#']).next().unwrap_or_default();
        let reply = self.find(method, path, &accepts);
        let mut head = format!("HTTP/1.1 {}\r\nConnection: close\r\n", reply.status);
        head.push_str(&format!(
            "Content-Length: {}\r\nContent-Type: {}\r\n",
            reply.content.len(),
            reply.kind
        ));
        if let Some(coding) = reply.coding {
            head.push_str(&format!("Content-Encoding: {coding}\r\n"));
        }
        head.push_str("Vary: Accept-Encoding\r\n");
        // Read anew each time, so that a build while serving is served whole.
        let rules = fs::read_to_string(self.folder.join("_headers")).unwrap_or_default();
        for (name, value) in matching(&rules, path) {
            if !name.eq_ignore_ascii_case("content-type") {
                head.push_str(&format!("{name}: {value}\r\n"));
            }
        }
        (&connection).write_all(format!("{head}\r\n").as_bytes())?;
        if method != "HEAD" {
            (&connection).write_all(&reply.content)?;
        }
        connection.shutdown(Shutdown::Write)
    }

    /// Returns what is said to a request; a squeezed copy of the file, where there is one that the browser takes.
    fn find(&self, method: &str, path: &str, accepts: &str) -> Reply {
        let plain = "text/plain; charset=utf-8";
        if !matches!(method, "GET" | "HEAD") {
            return Reply {
                status: "405 Method Not Allowed",
                kind: plain,
                coding: None,
                content: b"GET and HEAD only\n".to_vec(),
            };
        }
        let found = self.file(path).and_then(|file| {
            let (coding, content) =
                self.copy(&file, accepts).or_else(|| Some((None, fs::read(&file).ok()?)))?;
            Some(Reply { status: "200 OK", kind: kind(&file), coding, content })
        });
        let nothing =
            || Reply { status: "404 Not Found", kind: plain, coding: None, content: b"not here\n".to_vec() };
        found.unwrap_or_else(nothing)
    }

    /// Returns the smallest copy of a file that the browser takes, with the name of its coding.
    fn copy(&self, file: &Path, accepts: &str) -> Option<(Option<&'static str>, Vec<u8>)> {
        COPIES.into_iter().filter(|(_, coding)| takes(accepts, coding)).find_map(|(end, coding)| {
            let mut name = file.as_os_str().to_owned();
            name.push(end);
            Some((Some(coding), fs::read(PathBuf::from(name)).ok()?))
        })
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

/// Says whether a browser that accepts these codings takes this one; a weight of nothing means that it does not (RFC 9110).
fn takes(accepts: &str, coding: &str) -> bool {
    accepts.split(',').any(|one| {
        let (name, weight) = one.split_once(';').unwrap_or((one, ""));
        let refused = weight.trim().strip_prefix("q=").is_some_and(|weight| weight.parse() == Ok(0.0));
        name.trim().eq_ignore_ascii_case(coding) && !refused
    })
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
    fn a_browser_gets_the_smallest_copy_that_it_takes() {
        let folder = std::env::temp_dir().join(format!("yeanling-serve-{}", std::process::id()));
        fs::create_dir_all(&folder).expect("a folder");
        for (name, content) in [("app.wasm", "plain"), ("app.wasm.br", "brotli"), ("app.wasm.gz", "gzip")] {
            fs::write(folder.join(name), content).expect("a file");
        }
        let site = Site { folder: folder.clone() };
        let sent = |accepts: &str| {
            let Reply { kind, coding, content, .. } = site.find("GET", "/app.wasm", accepts);
            (kind, coding, String::from_utf8(content).expect("text"))
        };
        let all = ["gzip, deflate, br", "gzip", "", "br;q=0, gzip;q=0.5", "identity"].map(sent);
        fs::remove_dir_all(&folder).expect("it goes");
        let wasm = "application/wasm";
        let told = |coding, content: &str| (wasm, coding, content.to_owned());
        assert_eq!(
            all,
            [
                told(Some("br"), "brotli"),
                told(Some("gzip"), "gzip"),
                told(None, "plain"),
                told(Some("gzip"), "gzip"),
                told(None, "plain")
            ]
        );
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
