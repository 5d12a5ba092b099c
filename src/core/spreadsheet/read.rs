//! Reads a table that some spreadsheet wrote: commas, semicolons or tabs, quoted or not, in UTF-8, UTF-16 or the old
//! Windows-1252.

/// The most bytes of a table; more is no list of animals.
pub const MOST_BYTES: usize = 8 * 1024 * 1024;

/// The most rows of a table, its heads not counted.
pub const MOST_ROWS: usize = 20_000;

/// A table: its heads and its rows, each as long as the heads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// What stood between two cells.
    pub separator: char,
    /// The cells of the line that names the columns.
    pub heads: Vec<String>,
    /// The cells of the lines behind it; those with nothing in them are left out.
    pub rows: Vec<Vec<String>>,
    /// In which line of the file each row stands, from 1.
    pub lines: Vec<usize>,
    /// What stood above the heads: a title, perhaps.
    pub above: Vec<String>,
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

/// Reads a table. What stands between its cells is told by a line `sep=;`, else it is the one of comma, semicolon and tab
/// that parts most lines alike. The heads are the line among the first that names most columns, else the first line.
///
/// # Errors
/// There are no rows, too many, or a quote that does not end.
///
/// ```
/// use yeanling_core::spreadsheet::read;
/// let sheet = read("My flock;\r\ntag;born\r\n\"12;3\";2022\r\n").unwrap();
/// assert_eq!((sheet.separator, sheet.heads[0].as_str(), sheet.rows[0][0].as_str()), (';', "tag", "12;3"));
/// assert_eq!((sheet.lines[0], sheet.above), (3, vec!["My flock".to_owned()]));
/// ```
pub fn read(text: &str) -> Result<Sheet, SheetError> {
    let (separator, text, skipped) = match told(text) {
        Some((separator, rest)) => (separator, rest, 1),
        None => (separator(text), text, 0),
    };
    of_lines(separator, cells(text, separator)?, skipped)
}

/// Makes a table of lines that are parted into cells; so many lines stood before them.
///
/// # Errors
/// There are no rows, or too many.
pub fn of_lines(separator: char, lines: Vec<Vec<String>>, skipped: usize) -> Result<Sheet, SheetError> {
    let head = head_among(&lines);
    let mut lines = (skipped + 1..).zip(lines);
    let above: Vec<Vec<String>> = lines.by_ref().take(head).map(|(_, cells)| cells).collect();
    let above = above.concat().into_iter().filter(|cell| !cell.is_empty()).collect();
    let mut heads: Vec<String> = lines.next().map(|(_, cells)| cells).unwrap_or_default();
    let full = lines.filter(|(_, row)| row.iter().any(|cell| !cell.is_empty()));
    let (lines, mut rows): (Vec<usize>, Vec<Vec<String>>) = full.unzip();
    // What stands beside the heads has a column too.
    let wide =
        rows.iter().map(|row| row.iter().rposition(|cell| !cell.is_empty()).map_or(0, |last| last + 1));
    heads.resize(heads.len().max(wide.max().unwrap_or(0)), String::new());
    for row in &mut rows {
        row.resize(heads.len(), String::new());
    }
    match rows.len() {
        0 => Err(SheetError::Empty),
        given if given > MOST_ROWS => Err(SheetError::TooManyRows { given }),
        _ => Ok(Sheet { separator, heads, rows, lines, above }),
    }
}

/// So many lines may stand above the heads, and tell what parts the cells.
const FIRST: usize = 25;

/// Returns which of the first lines names most columns; the first with anything in it where that is named too, or where no
/// other names two at least. The last line is no line of heads: nothing stands under it.
fn head_among(lines: &[Vec<String>]) -> usize {
    let full = |cells: &Vec<String>| cells.iter().any(|cell| !cell.is_empty());
    let last = lines.iter().rposition(full).unwrap_or(0);
    let first = lines.iter().position(full).unwrap_or(0);
    let named = |cells: &Vec<String>| super::meaning::heads_among(cells);
    let later = lines.iter().enumerate().take(last.min(FIRST)).skip(first + 1);
    let most = later.map(|(at, cells)| (named(cells), std::cmp::Reverse(at))).max();
    let here = lines.get(first).map_or(0, named);
    match most {
        Some((count, std::cmp::Reverse(at))) if count >= here + 2 => at,
        Some(_) | None => first,
    }
}

/// What a first line `sep=;` tells, and the text behind it.
fn told(text: &str) -> Option<(char, &str)> {
    let (first, rest) = text.split_once('\n')?;
    let first = first.trim().trim_matches('"');
    let told = first.get(..4).filter(|word| word.eq_ignore_ascii_case("sep=")).map(|_| &first[4..])?;
    let mut letters = told.chars();
    let separator = letters.next().unwrap_or('\t');
    letters.next().is_none().then_some((separator, rest))
}

/// What parts most of the first lines into the same number of cells; of equals, what parts them into more.
fn separator(text: &str) -> char {
    let mut lines: Vec<[usize; 3]> = vec![[0; 3]];
    let mut quoted = false;
    for letter in text.chars() {
        match letter {
            '"' => quoted = !quoted,
            '\n' if !quoted => {
                if lines.len() == FIRST {
                    break;
                }
                lines.push([0; 3]);
            }
            _ if quoted => {}
            _ => {
                let place = [',', ';', '\t'].into_iter().position(|separator| separator == letter);
                if let (Some(place), Some(line)) = (place, lines.last_mut()) {
                    line[place] += 1;
                }
            }
        }
    }
    let alike = |place: usize| {
        let counts = || lines.iter().map(|line| line[place]).filter(|count| *count > 0);
        let same = counts().map(|count| (counts().filter(|other| *other == count).count(), count)).max();
        same.unwrap_or_default()
    };
    // A comma may be a decimal one, so of equals it is the last.
    let most = [(',', 0), ('\t', 2), (';', 1)].map(|(separator, place)| (alike(place), separator));
    most.into_iter()
        .filter(|((lines, _), _)| *lines > 0)
        .max_by_key(|(alike, _)| *alike)
        .map_or(',', |(_, one)| one)
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
