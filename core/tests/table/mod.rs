//! Reads a table of `tests/tables`: a header row, quoted fields, numbers where asked for.
#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

/// A table with its header.
pub struct Table {
    header: Vec<String>,
    rows: Vec<Vec<String>>,
}

/// One row of a table.
pub struct Row<'a> {
    header: &'a [String],
    cells: &'a [String],
}

impl Table {
    /// The table of that file name.
    pub fn read(name: &str) -> Self {
        let path = format!("{}/../tests/tables/{name}", env!("CARGO_MANIFEST_DIR"));
        let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{path}: {e}"));
        let mut lines = text.lines().filter(|l| !l.trim().is_empty()).map(fields);
        Self { header: lines.next().unwrap(), rows: lines.collect() }
    }

    /// Its rows.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row { header: &self.header, cells })
    }
}

impl Row<'_> {
    /// The cell of that column.
    pub fn text(&self, column: &str) -> &str {
        let place = self.header.iter().position(|h| h == column).unwrap_or_else(|| panic!("no column {column}"));
        &self.cells[place]
    }

    /// The number in that column.
    pub fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or_else(|_| panic!("{column}: {:?} is no number", self.text(column)))
    }
}

fn fields(line: &str) -> Vec<String> {
    let (mut cells, mut cell, mut quoted) = (Vec::new(), String::new(), false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(std::mem::take(&mut cell)),
            c => cell.push(c),
        }
    }
    cells.push(cell);
    cells
}
