//! The last of a release build: beside each large file a copy squeezed with Brotli and one with gzip, for hosts that send
//! such copies to browsers that take them.
//!
//! They are made after the stamp, so that the worker's list and the digests know only the files themselves.

use std::fs;
use std::io::Write;
use std::path::Path;

use anyhow::Result;
use brotli::enc::BrotliEncoderParams;
use flate2::Compression;
use flate2::write::GzEncoder;

use crate::stamp::files;

/// The endings of squeezed copies, the smaller first, each with its name in `Accept-Encoding`.
pub(crate) const COPIES: [(&str, &str); 2] = [(".br", "br"), (".gz", "gzip")];

/// Files of fewer bytes go in one packet or two as they are (ours).
const LARGE: usize = 1400;

/// What is squeezed already.
const SQUEEZED: [&str; 2] = [".png", ".woff2"];

/// Says whether a file is a squeezed copy of another.
pub(crate) fn is_copy(name: &str) -> bool {
    COPIES.iter().any(|(end, _)| name.ends_with(end))
}

/// Leaves the squeezed copies of all large files of a folder beside them, where they are smaller.
pub(crate) fn squeeze(folder: &Path) -> Result<()> {
    for name in files(folder)? {
        let content = fs::read(folder.join(&name))?;
        if content.len() < LARGE || SQUEEZED.iter().any(|end| name.ends_with(end)) {
            continue;
        }
        for (end, copy) in [(".br", brotli(&content)?), (".gz", gzip(&content)?)] {
            if copy.len() < content.len() {
                fs::write(folder.join(format!("{name}{end}")), copy)?;
            }
        }
    }
    Ok(())
}

/// Returns a content squeezed with Brotli, as tightly as it goes.
pub(crate) fn brotli(content: &[u8]) -> Result<Vec<u8>> {
    let settings = BrotliEncoderParams { quality: 11, lgwin: 22, ..BrotliEncoderParams::default() };
    let mut squeezed = Vec::new();
    brotli::BrotliCompress(&mut &*content, &mut squeezed, &settings)?;
    Ok(squeezed)
}

/// Returns a content squeezed with gzip, as tightly as it goes.
pub(crate) fn gzip(content: &[u8]) -> Result<Vec<u8>> {
    let mut squeezed = GzEncoder::new(Vec::new(), Compression::best());
    squeezed.write_all(content)?;
    Ok(squeezed.finish()?)
}

#[cfg(test)]
mod tests {
    use std::io::Read;

    use super::*;

    #[test]
    fn large_files_have_copies_that_give_them_back_and_nothing_else_has() {
        let folder = std::env::temp_dir().join(format!("yeanling-squeeze-{}", std::process::id()));
        fs::create_dir_all(&folder).expect("a folder");
        let large = "all work and no sleep\n".repeat(500).into_bytes();
        for (name, content) in [("app.js", &large[..]), ("small.js", b"1"), ("picture.png", &large[..])] {
            fs::write(folder.join(name), content).expect("a file");
        }
        squeeze(&folder).expect("it is squeezed");
        squeeze(&folder).expect("and once more: copies have no copies");
        let mut names: Vec<String> = fs::read_dir(&folder)
            .expect("the folder")
            .map(|entry| entry.expect("a file").file_name().into_string().expect("a name"))
            .collect();
        names.sort();
        let read = |name: &str| fs::read(folder.join(name)).expect("a copy");
        let (mut of_brotli, mut of_gzip) = (Vec::new(), Vec::new());
        brotli::BrotliDecompress(&mut &*read("app.js.br"), &mut of_brotli).expect("Brotli");
        flate2::read::GzDecoder::new(&*read("app.js.gz")).read_to_end(&mut of_gzip).expect("gzip");
        fs::remove_dir_all(&folder).expect("it goes");
        assert_eq!(names, ["app.js", "app.js.br", "app.js.gz", "picture.png", "small.js"]);
        assert_eq!((of_brotli, of_gzip), (large.clone(), large));
    }
}
