//! Buttons side by side only where all of them can be read: a language with longer words gets more rows.

use crate::engine::Key;

/// Letters that can be read on each button of a row of one, two, three, and more; the apps cut what is longer. The platform
/// tells no numbers: these are for a narrow phone held upright.
pub const READABLE: [usize; 4] = [34, 17, 11, 7];

/// The rows, those with a label too long for its neighbours divided evenly.
pub(super) fn fitted(rows: &[Vec<Key>]) -> impl Iterator<Item = &[Key]> {
    rows.iter().flat_map(|row| {
        let abreast = (1..=row.len()).rev().find(|count| fits(row, *count)).unwrap_or(1);
        row.chunks(row.len().div_ceil(row.len().div_ceil(abreast).max(1)).max(1))
    })
}

/// Whether the buttons can be read with that many abreast.
fn fits(row: &[Key], count: usize) -> bool {
    let readable = READABLE.get(count - 1).or(READABLE.last()).copied().unwrap_or_default();
    row.iter().all(|key| key.label.chars().count() <= readable)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shape(labels: &[&str]) -> Vec<usize> {
        let row = labels.iter().map(|label| Key { label: (*label).to_owned(), data: String::new() }).collect();
        fitted(&[row]).map(<[Key]>::len).collect()
    }

    #[test]
    fn a_row_is_divided_where_a_label_could_not_be_read() {
        assert_eq!(shape(&["Done", "Later", "Skip"]), [3]);
        assert_eq!(shape(&["Congelada", "Fresca", "Medio congelada"]), [2, 1]);
        assert_eq!(shape(&["Congelada", "Fresca o descongelada", "A medias"]), [1, 1, 1]);
        assert_eq!(shape(&["Share the jobs", "Why these times?"]), [2]);
        assert_eq!(shape(&["Aufgaben verteilen", "Warum diese Zeiten?"]), [1, 1]);
        assert_eq!(shape(&["15 min", "30 min", "1 hour", "1½ hours"]), [2, 2]);
        assert_eq!(shape(&["x".repeat(50).as_str()]), [1]);
    }
}
