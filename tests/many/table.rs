//! The tables, read back by a small reader of RFC 4180 that shares nothing with the writer.

use plugwary::collection::{Table, csv};
use plugwary::domain::examination::Answer;
use plugwary::domain::question::Target;

use crate::{Shelf, case, cases, question, record};

/// Cells by row.
fn read(text: &str) -> Vec<Vec<String>> {
    let (mut rows, mut row, mut cell, mut quoted) = (Vec::new(), Vec::new(), String::new(), false);
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '"' if quoted && letters.peek() == Some(&'"') => cell.extend(letters.next()),
            '"' => quoted = !quoted,
            ',' if !quoted => row.push(std::mem::take(&mut cell)),
            '\r' if !quoted && letters.peek() == Some(&'\n') => {
                letters.next();
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            letter => {
                assert!(quoted || !matches!(letter, '\r' | '\n'), "a bare line end in {text}");
                cell.push(letter);
            }
        }
    }
    assert!(!quoted && row.is_empty() && cell.is_empty(), "the last row has an end");
    rows
}

#[track_caller]
fn cell<'a>(rows: &'a [Vec<String>], row: usize, column: &str) -> &'a str {
    let at = rows.first().and_then(|heads| heads.iter().position(|head| head == column));
    rows.get(row).zip(at).and_then(|(row, at)| row.get(at)).expect("the row has this column")
}

#[test]
fn every_row_has_every_column_and_there_is_one_for_each_thing() {
    let shelf = Shelf::of(cases().into_values());
    let seen = shelf.seen();
    let is_reading = |answer: &Answer| matches!(answer, Answer::Reading(_));
    let readings =
        seen.iter().flat_map(|seen| &seen.record.examination.answers).filter(|a| is_reading(&a.answer)).count();
    let findings: usize = seen.iter().map(|seen| seen.assessment.findings.len()).sum();
    for (table, wanted) in [(Table::Samples, seen.len()), (Table::Readings, readings), (Table::Findings, findings)] {
        let rows = read(&csv(table, &seen));
        assert_eq!(rows.len(), wanted + 1, "{table:?}");
        assert!(wanted > 10 && rows.iter().all(|row| row.len() == rows[0].len()), "{table:?}");
    }
}

#[test]
fn a_reading_stands_with_its_unit_its_doubt_its_outcome_and_its_limit() {
    let mut record = record(7, "lead", &[]);
    let from = case("sound-lead-meters");
    let id = "pin-to-edge";
    let answer = from.examination.answer(question(id), Target::Sample).expect("the case has this reading").clone();
    record.examination = from.examination.clone();
    let shelf = Shelf::of([record]);
    let rows = read(&csv(Table::Readings, &shelf.seen()));
    let row = rows.iter().position(|row| row.contains(&id.to_owned())).expect("the reading has a row");
    let Answer::Reading(reading) = answer else { unreachable!("{answer:?}") };
    let plugwary::domain::reading::Shown::Value(value) = reading.shown else { unreachable!("{reading:?}") };
    let number: f64 = cell(&rows, row, "value").parse().expect("a number with a decimal point");
    assert!((number - value.in_unit(reading.unit).expect("in its unit")).abs() < 1e-9);
    assert_eq!(cell(&rows, row, "unit"), "millimetre");
    assert_eq!(cell(&rows, row, "shown"), "value");
    // ± 0.02 mm and a step of 0.01 mm: √(0.02²/3 + 0.01²/12) mm.
    let u: f64 = cell(&rows, row, "standard_uncertainty").parse().expect("a number");
    assert!((u - 0.011_902).abs() < 1e-5 || cell(&rows, row, "instrument") != "digital-calliper", "{u}");
    assert!(cell(&rows, row, "outcomes").contains("pin-near-edge: conforms"), "{rows:?}");
    assert!(cell(&rows, row, "limits").contains("pin-near-edge: at least 9.5 millimetre"), "{rows:?}");
}

#[test]
fn what_somebody_typed_is_neither_a_formula_nor_lost() {
    let mut record = record(1, "=cmd|' /C calc'!A0", &[]);
    "<b>stall</b>, \"cheap\"\r\n\u{202e}left".clone_into(&mut record.origin);
    "-1+1".clone_into(&mut record.examination.sample.number);
    let shelf = Shelf::of([record]);
    let rows = read(&csv(Table::Samples, &shelf.seen()));
    assert_eq!(cell(&rows, 1, "title"), "'=cmd|' /C calc'!A0");
    assert_eq!(cell(&rows, 1, "number"), "'-1+1");
    assert_eq!(cell(&rows, 1, "seller"), "<b>stall</b>, \"cheap\"\r\n\u{202e}left");
    assert_eq!(cell(&rows, 1, "verdict"), "not-decided");
}

#[test]
fn no_cell_of_any_table_begins_like_a_formula_but_a_number() {
    let shelf = Shelf::of(cases().into_values());
    for table in [Table::Samples, Table::Readings, Table::Findings] {
        for cell in read(&csv(table, &shelf.seen())).into_iter().flatten() {
            let is_safe = !cell.starts_with(['=', '+', '-', '@', '\t', '\r']) || cell.parse::<f64>().is_ok();
            assert!(is_safe, "{cell}");
        }
    }
}
