//! `cargo xtask stamp DIR`: the last step of a build, called by Trunk.
//!
//! It makes the names of files follow their content, joins the style sheets, leaves no inline script for the content
//! policy to forbid, writes the policy, and tells the worker which files to keep.
//!
//! One style sheet, no pictures for the worker: the stamp step joins the sheets; the manifest's pictures are fetched
//! by the phone when it puts the app on its home screen.
use crate::{ledger, squeeze, worker};
use anyhow::{Context, Result, bail, ensure};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// What the page may load and do. It stands in a meta tag too, for hosts that know no `_headers` file.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    font-src 'self'; img-src 'self' data: blob:; media-src 'self' data: blob:; connect-src 'self'; \
    manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'";

/// Stamps the folder that was named, or the one that Trunk is about to publish.
pub(crate) fn command(words: &[&str]) -> Result<()> {
    match (words, std::env::var_os("TRUNK_STAGING_DIR")) {
        ([folder], _) => stamp(Path::new(folder)),
        ([], Some(folder)) => stamp(Path::new(&folder)),
        _ => bail!("give one folder: cargo xtask stamp DIR"),
    }
}

/// Stamps the app in `folder`; doing it twice changes nothing.
pub(crate) fn stamp(folder: &Path) -> Result<()> {
    let index = folder.join("index.html");
    let mut page = fs::read_to_string(&index).with_context(|| format!("no {}", index.display()))?;
    for name in files(folder)?.iter().filter(|name| name.ends_with(".wasm")) {
        ledger::take(&folder.join(name))?;
    }
    page = name_by_content(folder, &page)?;
    page = join_sheets(folder, &page)?;
    page = move_scripts_out(folder, &page)?;
    page = with_policy(&page)?;
    check(&page)?;
    fs::write(&index, &page)?;
    fs::write(folder.join("_headers"), headers(folder)?)?;
    worker::stamp(folder)
}

/// Returns every file below `folder` as a path with forward slashes, sorted; squeezed copies are no files of their own.
pub(crate) fn files(folder: &Path) -> Result<Vec<String>> {
    let mut found = Vec::new();
    let mut folders = vec![folder.to_path_buf()];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(&next).with_context(|| format!("no folder {}", next.display()))? {
            let path: PathBuf = entry?.path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let name = path.strip_prefix(folder)?.to_str().context("a file name is not UTF-8")?;
            found.push(name.replace('\\', "/"));
        }
    }
    found.retain(|name| !squeeze::is_copy(name));
    found.sort();
    Ok(found)
}

/// Returns the first 16 hexadecimal digits of the content's SHA-256.
pub(crate) fn digest(content: &[u8]) -> String {
    Sha256::digest(content).iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}

/// Returns whether a file's name carries its digest, so that hosts and browsers may keep it for ever.
fn is_named_by_content(name: &str) -> bool {
    let stem = name.split('.').next().unwrap_or_default();
    let digest = stem.trim_end_matches("_bg").rsplit('-').next().unwrap_or_default();
    digest.len() == 16 && digest.bytes().all(|byte| byte.is_ascii_hexdigit()) && !name.contains('/')
}

/// Renames what Trunk hashed, so that the digest is that of the file itself, and returns the page with new names.
///
/// Trunk names the loader by the wasm before its bindings are made: the same name may come with another content.
fn name_by_content(folder: &Path, page: &str) -> Result<String> {
    let mut page = page.to_owned();
    for name in files(folder)?.iter().filter(|name| is_named_by_content(name)) {
        let (stem, end) = name.split_once('.').context("a hashed file has an ending")?;
        let content = fs::read(folder.join(name))?;
        let tail = if stem.ends_with("_bg") { "_bg" } else { "" };
        let plain = stem.trim_end_matches("_bg").rsplit_once('-').map_or(stem, |(plain, _)| plain);
        let renamed = format!("{plain}-{}{tail}.{end}", digest(&content));
        if renamed != *name {
            ensure!(page.contains(name.as_str()), "index.html does not load {name}");
            fs::rename(folder.join(name), folder.join(&renamed))?;
            page = page.replace(name.as_str(), &renamed);
        }
    }
    Ok(page)
}

/// Joins the style sheets in the page's order and returns the page that loads the one: together they compress to half.
fn join_sheets(folder: &Path, page: &str) -> Result<String> {
    let (link, end) = ("<link rel=\"stylesheet\" href=\"./", "\"/>");
    let mut parts = page.split(link);
    let mut before = parts.next().unwrap_or_default().to_owned();
    let (mut names, mut after) = (Vec::new(), String::new());
    for part in parts {
        let (name, rest) = part.split_once(end).context("a style sheet's link is not as Trunk writes it")?;
        names.push(name);
        after.push_str(rest.trim_start());
    }
    if names.len() < 2 {
        return Ok(page.to_owned());
    }
    let mut joined = String::new();
    for name in names {
        let sheet = fs::read_to_string(folder.join(name)).with_context(|| format!("no {name}"))?;
        joined.push_str(&without_comments(&sheet).with_context(|| format!("{name}: a comment has no end"))?);
        fs::remove_file(folder.join(name))?;
    }
    let name = format!("style-{}.css", digest(joined.as_bytes()));
    fs::write(folder.join(&name), joined)?;
    before.push_str(&format!("{link}{name}{end}\n{after}"));
    Ok(before)
}

/// Returns a style sheet without its comments and the spaces that begin its lines: a quarter of what is sent of it. None if
/// a comment has no end. A line of a text in quotes would lose its spaces too; no sheet has one.
fn without_comments(sheet: &str) -> Option<String> {
    let mut plain = String::with_capacity(sheet.len());
    let mut rest = sheet;
    while let Some((before, comment)) = rest.split_once("/*") {
        plain.push_str(before);
        rest = comment.split_once("*/")?.1;
    }
    plain.push_str(rest);
    let lines = plain.lines().map(str::trim).filter(|line| !line.is_empty());
    Some(lines.flat_map(|line| [line, "\n"]).collect())
}

/// Writes each inline script into a file of its own and returns the page that loads the files instead.
fn move_scripts_out(folder: &Path, page: &str) -> Result<String> {
    let mut moved = String::new();
    let mut rest = page;
    while let Some((before, script)) = rest.split_once("<script") {
        let (attributes, body) = script.split_once('>').context("a script tag has no end")?;
        let (body, after) = body.split_once("</script>").context("a script has no end")?;
        moved.push_str(before);
        if attributes.contains("src=") {
            ensure!(body.trim().is_empty(), "index.html has a script with both a source and a body");
            moved.push_str(&format!("<script{attributes}></script>"));
        } else {
            let body = body.trim();
            let name = format!("start-{}.js", digest(body.as_bytes()));
            fs::write(folder.join(&name), body)?;
            moved.push_str(&format!("<script{attributes} src=\"./{name}\"></script>"));
        }
        rest = after;
    }
    moved.push_str(rest);
    Ok(moved)
}

/// Returns the page with the policy first in its head, so that it covers everything that follows.
fn with_policy(page: &str) -> Result<String> {
    let tag = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\">");
    if page.contains(&tag) {
        return Ok(page.to_owned());
    }
    let (before, after) = page.split_once("<head>").context("index.html has no plain <head>")?;
    Ok(format!("{before}<head>\n{tag}{after}"))
}

/// Refuses a page that the policy would break.
fn check(page: &str) -> Result<()> {
    for part in page.split("<script").skip(1) {
        let (attributes, body) = part.split_once('>').context("a script tag has no end")?;
        ensure!(
            attributes.contains("src=") && body.starts_with("</script>"),
            "index.html has an inline script"
        );
    }
    let page = page.to_ascii_lowercase();
    ensure!(!page.contains("<style"), "index.html has an inline style sheet; put it into style/");
    ensure!(!page.contains("javascript:"), "index.html has a script in an address");
    // What is called `style` or begins with `on` and is given a value, as in `onclick = "…"`.
    let given = page.split('=').map(|before| before.trim_end().rsplit([' ', '\n', '\t', '"', '\'']).next());
    for name in given.flatten() {
        ensure!(
            name != "style" && !name.starts_with("on"),
            "index.html has `{name}=`, which the policy forbids"
        );
    }
    Ok(())
}

/// Returns the text of the `_headers` file, in the form that static hosts read.
///
/// A host joins the values of all rules that match, so each header is set by one rule only.
fn headers(folder: &Path) -> Result<String> {
    let mut text = format!(
        "/*\n  Content-Security-Policy: {POLICY}; frame-ancestors 'none'\n  \
        X-Content-Type-Options: nosniff\n  Referrer-Policy: no-referrer\n"
    );
    let mut names: BTreeSet<String> = files(folder)?.into_iter().collect();
    names.remove("_headers");
    names.extend([String::new(), worker::NAME.to_owned()]);
    for name in &names {
        let keep = if is_named_by_content(name) { "public, max-age=31536000, immutable" } else { "no-cache" };
        text.push_str(&format!("/{name}\n  Cache-Control: {keep}\n"));
        match name.rsplit('.').next() {
            Some("wasm") => text.push_str("  Content-Type: application/wasm\n"),
            Some("webmanifest") => text.push_str("  Content-Type: application/manifest+json\n"),
            _ => {}
        }
    }
    Ok(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_style_sheet_is_sent_without_its_comments() {
        let sheet = "/* Ink. */\n@layer base {\n  a {\n    color: red; /* alarm */\n  }\n}\n";
        assert_eq!(without_comments(sheet).as_deref(), Some("@layer base {\na {\ncolor: red;\n}\n}\n"));
        assert_eq!(without_comments("a { } /* and no"), None);
    }

    const PAGE: &str =
        "<html><head><title>T</title><script type=\"module\">go()</script></head><body></body></html>";

    /// A folder with a small build in it, gone when the test ends.
    struct Build(PathBuf);

    impl Build {
        fn new(test: &str, page: &str) -> Self {
            let folder = std::env::temp_dir().join(format!("yeanling-{test}-{}", std::process::id()));
            fs::create_dir_all(folder.join("fonts")).expect("a folder");
            let build = Self(folder);
            build.write("index.html", page);
            build.write("fonts/LICENSE.txt", "free");
            build.write("fonts/letters.woff2", "letters");
            build
        }

        fn write(&self, name: &str, text: &str) {
            fs::write(self.0.join(name), text).expect("a file");
        }

        fn read(&self, name: &str) -> String {
            fs::read_to_string(self.0.join(name)).expect("a text")
        }
    }

    impl Drop for Build {
        fn drop(&mut self) {
            fs::remove_dir_all(&self.0).ok();
        }
    }

    #[test]
    fn a_stamped_page_has_its_script_in_a_file_and_the_policy_first() {
        let build = Build::new("page", PAGE);
        stamp(&build.0).expect("stamped");
        let name = format!("start-{}.js", digest(b"go()"));
        assert_eq!(build.read(&name), "go()");
        let page = build.read("index.html");
        assert!(page.contains(&format!("<script type=\"module\" src=\"./{name}\"></script>")), "{page}");
        assert!(
            page.split("<head>").nth(1).is_some_and(|head| head.trim().starts_with("<meta http-equiv")),
            "{page}"
        );
    }

    #[test]
    fn the_style_sheets_become_one_in_the_order_of_the_page() {
        let sheet = |name: &str| format!("<link rel=\"stylesheet\" href=\"./{name}.css\"/>\n");
        let links = format!("{}{}<script", sheet("b"), sheet("a"));
        let build = Build::new("sheets", &PAGE.replacen("<script", &links, 1));
        build.write("a.css", "@layer a { }\n");
        build.write("b.css", "@layer b, a;\n");
        stamp(&build.0).expect("stamped");
        let joined = "@layer b, a;\n@layer a { }\n";
        let name = format!("style-{}.css", digest(joined.as_bytes()));
        assert_eq!(build.read(&name), joined);
        let page = build.read("index.html");
        assert_eq!(page.matches("stylesheet").count(), 1, "{page}");
        assert!(page.contains(&format!("href=\"./{name}\"/>\n<script")), "{page}");
        assert!(!files(&build.0).expect("files").contains(&"a.css".to_owned()), "nothing is left over");
    }

    #[test]
    fn stamping_twice_changes_nothing() {
        let build = Build::new("twice", PAGE);
        let all = || files(&build.0).expect("files").iter().map(|name| build.read(name)).collect::<Vec<_>>();
        stamp(&build.0).expect("stamped");
        let once = all();
        stamp(&build.0).expect("stamped again");
        assert_eq!(once, all());
    }

    #[test]
    fn names_follow_content_even_if_the_build_named_a_file_by_something_else() {
        let page = PAGE.replace("go()", "import \"./app-0123456789abcdef.js\"");
        let build = Build::new("names", &page);
        build.write("app-0123456789abcdef.js", "app");
        stamp(&build.0).expect("stamped");
        assert_eq!(build.read(&format!("app-{}.js", digest(b"app"))), "app");
        let headers = build.read("_headers");
        assert!(
            headers.contains(&format!("/app-{}.js\n  Cache-Control: public, max-age", digest(b"app"))),
            "{headers}"
        );
        assert!(headers.contains("/worker.js\n  Cache-Control: no-cache"), "{headers}");
    }

    #[test]
    fn the_worker_keeps_what_a_visit_loads_and_changes_with_any_file() {
        let build = Build::new("worker", PAGE);
        stamp(&build.0).expect("stamped");
        let first = build.read(worker::NAME);
        assert!(first.contains("[\"./fonts/letters.woff2\",\"./\",\"./start-"), "{first}");
        build.write("fonts/letters.woff2", "other letters");
        stamp(&build.0).expect("stamped");
        assert_ne!(first, build.read(worker::NAME));
    }

    /// Returns the directives of the policy that stands between `before` and `after` in `text`.
    fn directives<'a>(text: &'a str, before: &str, after: &str) -> Vec<&'a str> {
        let policy =
            text.split_once(before).and_then(|(_, rest)| rest.split_once(after)).map(|(policy, _)| policy);
        policy.expect("a policy").split(';').map(str::trim).collect()
    }

    #[test]
    fn the_page_and_the_headers_hold_one_policy_and_it_is_this() {
        let build = Build::new("policy", PAGE);
        stamp(&build.0).expect("stamped");
        let everywhere = [
            "default-src 'none'",
            "script-src 'self' 'wasm-unsafe-eval'",
            "style-src 'self'",
            "font-src 'self'",
            "img-src 'self' data: blob:",
            "media-src 'self' data: blob:",
            "connect-src 'self'",
            "manifest-src 'self'",
            "worker-src 'self'",
            "base-uri 'none'",
            "form-action 'self'",
        ];
        let page = build.read("index.html");
        assert_eq!(directives(&page, "http-equiv=\"Content-Security-Policy\" content=\"", "\">"), everywhere);
        // A page cannot say who may frame it; only the host can.
        let headers = build.read("_headers");
        let by_the_host = [&everywhere[..], &["frame-ancestors 'none'"]].concat();
        assert_eq!(directives(&headers, "/*\n  Content-Security-Policy: ", "\n"), by_the_host);
        assert_eq!(
            headers.matches("Content-Security-Policy").count(),
            1,
            "two policies would both hold: {headers}"
        );
    }

    #[test]
    fn a_page_that_the_policy_would_break_is_refused() {
        let spoiled = [
            "<p style=\"color:red\">",
            "<p STYLE='color:red'>",
            "<style>p{}</style>",
            "<p onclick=\"go()\">",
            "<img src=x onerror=go()>",
            "<body\nonload = go()>",
            "<a href=\"javascript:go()\">",
        ];
        for spoiled in spoiled {
            let build = Build::new("refused", &PAGE.replace("<body>", &format!("<body>{spoiled}")));
            assert!(stamp(&build.0).is_err(), "{spoiled}");
        }
    }
}
