//! Reads a table that some spreadsheet wrote: commas, semicolons or tabs, quoted or not, in UTF-8, UTF-16 or the old
//! Windows-1252.

/// The most bytes of a table; more is no list of ewes.
pub const MOST_BYTES: usize = 4 * 1024 * 1024;

/// The most rows of a table, its heads not counted.
pub const MOST_ROWS: usize = 5000;

/// A table: its heads and its rows, each as long as the heads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// What stood between two cells.
    pub separator: char,
    /// The cells of the first line.
    pub heads: Vec<String>,
    /// The cells of the others; lines with nothing in them are left out.
    pub rows: Vec<Vec<String>>,
}

/// Why a table cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SheetError {
    /// There is nothing in it but, perhaps, its heads.
    #[error("no rows")]
    Empty,
    /// It has more bytes than `MOST_BYTES`.
    #[error("{given} bytes are more than {MOST_BYTES}")]
    TooLarge {
        /// How many there are.
        given: usize,
    },
    /// It has more rows than `MOST_ROWS`.
    #[error("{given} rows are more than {MOST_ROWS}")]
    TooManyRows {
        /// How many there are.
        given: usize,
    },
    /// It is no text, but a spreadsheet's own file or a picture.
    #[error("no text")]
    NoText,
    /// A quoted cell does not end.
    #[error("the quote in line {line} does not end")]
    OpenQuote {
        /// In which line it begins, from 1.
        line: usize,
    },
}

/// What Windows-1252 has where Latin-1 has control characters, from 0x80 to 0x9f; `\u{fffd}` where it has nothing.
const WINDOWS: [char; 32] = [
    '€', '\u{fffd}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{fffd}', 'Ž', '\u{fffd}',
    '\u{fffd}', '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{fffd}', 'ž', 'Ÿ',
];

/// Returns the text of a file: UTF-16 by its mark, else UTF-8 where it is that, else Windows-1252.
///
/// # Errors
/// It is too large, or holds a zero byte, which no text does.
pub fn decode(bytes: &[u8]) -> Result<String, SheetError> {
    if bytes.len() > MOST_BYTES {
        return Err(SheetError::TooLarge { given: bytes.len() });
    }
    let pairs = |bytes: &[u8], unit: fn([u8; 2]) -> u16| {
        let units: Vec<u16> = bytes.chunks_exact(2).map(|pair| unit([pair[0], pair[1]])).collect();
        String::from_utf16_lossy(&units)
    };
    let text = match bytes {
        [0xff, 0xfe, rest @ ..] => pairs(rest, u16::from_le_bytes),
        [0xfe, 0xff, rest @ ..] => pairs(rest, u16::from_be_bytes),
        _ => match str::from_utf8(bytes) {
            Ok(text) => text.trim_start_matches('\u{feff}').to_owned(),
            Err(_) => bytes.iter().map(|byte| from_windows(*byte)).collect(),
        },
    };
    if text.contains('\0') { Err(SheetError::NoText) } else { Ok(text) }
}

fn from_windows(byte: u8) -> char {
    match byte {
        0x80..=0x9f => WINDOWS[usize::from(byte - 0x80)],
        _ => char::from(byte),
    }
}

/// Reads a table. What stands between its cells is the one of comma, semicolon and tab that its first line has most of.
///
/// # Errors
/// There are no rows, too many, or a quote that does not end.
///
/// ```
/// use yeanling_core::spreadsheet::read;
/// let sheet = read("tag;born\r\n\"12;3\";2022\r\n").unwrap();
/// assert_eq!((sheet.separator, sheet.rows[0][0].as_str()), (';', "12;3"));
/// ```
pub fn read(text: &str) -> Result<Sheet, SheetError> {
    let separator = separator(text);
    let mut lines = cells(text, separator)?.into_iter();
    let heads: Vec<String> = lines.next().unwrap_or_default();
    let rows: Vec<Vec<String>> = lines
        .filter(|row| row.iter().any(|cell| !cell.is_empty()))
        .map(|mut row| {
            row.resize(heads.len(), String::new());
            row
        })
        .collect();
    match rows.len() {
        0 => Err(SheetError::Empty),
        given if given > MOST_ROWS => Err(SheetError::TooManyRows { given }),
        _ => Ok(Sheet { separator, heads, rows }),
    }
}

fn separator(text: &str) -> char {
    let mut quoted = false;
    let mut count = [(',', 0_usize), (';', 0), ('\t', 0)];
    for letter in text.chars() {
        match letter {
            '"' => quoted = !quoted,
            '\n' | '\r' if !quoted => break,
            _ if !quoted => {
                if let Some((_, count)) = count.iter_mut().find(|(separator, _)| *separator == letter) {
                    *count += 1;
                }
            }
            _ => {}
        }
    }
    count.into_iter().rev().max_by_key(|(_, count)| *count).map_or(',', |(separator, _)| separator)
}

/// The cells of every line, without the spaces around them; inside quotes everything counts.
fn cells(text: &str, separator: char) -> Result<Vec<Vec<String>>, SheetError> {
    let (mut lines, mut line, mut cell) = (Vec::new(), Vec::new(), String::new());
    let (mut quoted, mut was_quoted, mut began, mut number) = (false, false, 1, 1);
    let mut letters = text.chars().peekable();
    let finish = |cell: &mut String, was_quoted: &mut bool| {
        let done = if *was_quoted { std::mem::take(cell) } else { std::mem::take(cell).trim().to_owned() };
        *was_quoted = false;
        done
    };
    while let Some(letter) = letters.next() {
        if letter == '\n' {
            number += 1;
        }
        match letter {
            '"' if quoted && letters.peek() == Some(&'"') => {
                letters.next();
                cell.push('"');
            }
            '"' if quoted => quoted = false,
            _ if quoted => cell.push(letter),
            '"' if cell.trim().is_empty() && !was_quoted => {
                cell.clear();
                (quoted, was_quoted, began) = (true, true, number);
            }
            '\r' if letters.peek() == Some(&'\n') => {}
            '\n' | '\r' => {
                line.push(finish(&mut cell, &mut was_quoted));
                lines.push(std::mem::take(&mut line));
            }
            _ if letter == separator => line.push(finish(&mut cell, &mut was_quoted)),
            // Spaces behind a quoted cell are no part of it.
            ' ' if was_quoted => {}
            _ => cell.push(letter),
        }
    }
    if quoted {
        return Err(SheetError::OpenQuote { line: began });
    }
    if !cell.is_empty() || was_quoted || !line.is_empty() {
        line.push(finish(&mut cell, &mut was_quoted));
        lines.push(line);
    }
    Ok(lines)
}
