//! Back in without doubles: nothing that anybody saw is lost, and nothing comes twice.

use std::collections::BTreeMap;

use plugwary::archive::{ArchiveFault, Fate, Tally, many_since, take};
use plugwary::domain::examination::Answer;
use plugwary::domain::question::Target;
use plugwary::record::Record;
use plugwary::words::archive::taken_back;

use crate::{question, record};

type Device = BTreeMap<String, Record>;

/// What becomes of a record, and the device after it.
fn taken(device: &mut Device, incoming: &Record) -> Fate {
    let taken = take(incoming, |id| device.get(id).cloned());
    if taken.is_kept() {
        device.insert(taken.record.id.clone(), taken.record);
    }
    taken.fate
}

fn device(records: &[Record]) -> Device {
    records.iter().map(|record| (record.id.clone(), record.clone())).collect()
}

const FUSE: (&str, Answer) = ("fuse-in-the-holder", Answer::One("empty"));
const PATTERN: (&str, Answer) = ("plug-pattern", Answer::One("uk-three-pin"));

fn at(minute: u8, answers: &[(&str, Answer)]) -> Record {
    let mut record = record(1, "lead", answers);
    record.changed = format!("2026-11-24T10:{minute:02}:00.000Z");
    record
}

#[test]
fn a_sample_that_was_not_here_is_new_and_then_the_same() {
    let mut device = Device::new();
    assert_eq!(taken(&mut device, &at(1, &[FUSE])), Fate::New);
    assert_eq!(taken(&mut device, &at(1, &[FUSE])), Fate::Same);
    assert_eq!(device.len(), 1);
}

#[test]
fn an_earlier_state_of_which_nothing_is_missing_here_is_left_out() {
    let mut device = device(&[at(5, &[FUSE, PATTERN])]);
    assert_eq!(taken(&mut device, &at(1, &[FUSE])), Fate::Less);
    assert_eq!(taken(&mut device, &at(5, &[FUSE])), Fate::Less);
    assert_eq!(device, self::device(&[at(5, &[FUSE, PATTERN])]));
}

#[test]
fn a_later_state_that_says_all_that_ours_says_takes_its_place() {
    let mut device = device(&[at(1, &[FUSE])]);
    assert_eq!(taken(&mut device, &at(5, &[FUSE, PATTERN])), Fate::More);
    assert_eq!(device, self::device(&[at(5, &[FUSE, PATTERN])]));
}

#[test]
fn an_answer_that_may_have_been_taken_back_keeps_both() {
    // Theirs is later and says less, ours is later and says less: either may have been mended.
    for (ours, theirs) in [(at(1, &[FUSE, PATTERN]), at(5, &[FUSE])), (at(5, &[FUSE]), at(1, &[FUSE, PATTERN]))] {
        let mut device = device(std::slice::from_ref(&ours));
        assert_eq!(taken(&mut device, &theirs), Fate::Beside);
        assert_eq!(device.len(), 2);
        assert_eq!(device.get(&ours.id), Some(&ours));
    }
}

#[test]
fn states_that_went_apart_are_both_kept_and_taking_them_again_brings_no_double() {
    let (ours, theirs) = (at(1, &[FUSE]), at(5, &[PATTERN]));
    let mut device = device(std::slice::from_ref(&ours));
    assert_eq!(taken(&mut device, &theirs), Fate::Beside);
    let after = device.clone();
    assert_eq!(taken(&mut device, &theirs), Fate::Same);
    assert_eq!(device, after);
    let beside = device.values().find(|record| record.id != ours.id).expect("theirs is kept");
    assert_eq!(beside.examination, theirs.examination);
    assert!(beside.id.len() == 32 && beside.id.bytes().all(|byte| byte.is_ascii_hexdigit()));
}

#[test]
fn the_one_beside_may_go_on_and_is_still_not_overwritten() {
    let (ours, theirs) = (at(1, &[FUSE]), at(5, &[PATTERN]));
    let mut device = device(std::slice::from_ref(&ours));
    taken(&mut device, &theirs);
    let beside = device.values_mut().find(|record| record.id != ours.id).expect("theirs is kept");
    beside.examination.record(question("fuse-in-the-holder"), Target::Sample, Answer::One("unmarked"));
    "2026-11-24T11:00:00.000Z".clone_into(&mut beside.changed);
    assert_eq!(taken(&mut device, &theirs), Fate::Less);
    assert_eq!(device.len(), 2);
}

#[test]
fn without_a_clock_nothing_is_left_out_or_replaced() {
    for (ours, theirs) in [([FUSE, PATTERN].as_slice(), [FUSE].as_slice()), (&[FUSE], &[FUSE, PATTERN])] {
        let mut theirs = at(5, theirs);
        theirs.changed.clear();
        assert_eq!(taken(&mut device(&[at(1, ours)]), &theirs), Fate::Beside);
    }
}

/// Ours is of 10:01 UTC: 10:05 in a zone an hour ahead is earlier, 11:05 there is later.
#[test]
fn clocks_of_two_zones_are_told_apart() {
    let theirs = |answers: &[(&str, Answer)], clock: &str| {
        let mut theirs = at(5, answers);
        clock.clone_into(&mut theirs.changed);
        theirs
    };
    let (earlier, later) = ("2026-11-24T10:05:00+01:00", "2026-11-24T11:05:00+01:00");
    let more = || device(&[at(1, &[FUSE, PATTERN])]);
    let less = || device(&[at(1, &[FUSE])]);
    assert_eq!(taken(&mut more(), &theirs(&[FUSE], earlier)), Fate::Less);
    assert_eq!(taken(&mut more(), &theirs(&[FUSE], later)), Fate::Beside);
    assert_eq!(taken(&mut less(), &theirs(&[FUSE, PATTERN], later)), Fate::More);
    assert_eq!(taken(&mut less(), &theirs(&[FUSE, PATTERN], earlier)), Fate::Beside);
}

#[test]
fn another_name_origin_or_mark_counts_as_something_said() {
    let change: [fn(&mut Record); 4] = [
        |record| "parcel".clone_into(&mut record.origin),
        |record| "grey".clone_into(&mut record.examination.sample.title),
        |record| record.is_known_good = true,
        |record| record.begun = String::new(),
    ];
    for change in change {
        let mut theirs = at(5, &[FUSE]);
        change(&mut theirs);
        assert_eq!(taken(&mut device(&[at(1, &[FUSE])]), &theirs), Fate::Beside);
    }
    let mut theirs = at(5, &[FUSE]);
    "2026-12".clone_into(&mut theirs.edition);
    assert_eq!(taken(&mut device(&[at(1, &[FUSE])]), &theirs), Fate::Less);
}

#[test]
fn nothing_that_either_said_is_lost_in_any_order() {
    let states = [
        at(1, &[]),
        at(2, &[FUSE]),
        at(3, &[FUSE, PATTERN]),
        at(4, &[PATTERN]),
        at(2, &[("fuse-in-the-holder", Answer::One("unmarked"))]),
    ];
    for first in &states {
        for second in &states {
            for third in &states {
                let mut device = Device::new();
                for state in [first, second, third] {
                    taken(&mut device, state);
                    let said =
                        |answered| device.values().any(|record: &Record| record.examination.answers.contains(answered));
                    assert!(state.examination.answers.iter().all(said));
                }
                let after = device.clone();
                for state in [first, second, third] {
                    taken(&mut device, state);
                }
                assert_eq!(device.len(), after.len(), "taking all again brings a double");
            }
        }
    }
}

#[test]
fn everything_is_counted_and_told() {
    let mut tally = Tally::default();
    let mut device = device(&[at(1, &[FUSE])]);
    for incoming in [at(1, &[FUSE]), at(5, &[FUSE, PATTERN]), at(2, &[FUSE]), at(9, &[])] {
        let fate = take(&incoming, |id| device.get(id).cloned());
        tally.count(&Ok(fate));
        taken(&mut device, &incoming);
    }
    tally.count(&Err(ArchiveFault::Empty));
    assert_eq!(tally, Tally { same: 1, more: 1, less: 1, beside: 1, unread: 1, ..Tally::default() });
    let lines = taken_back(&Tally { new: 1, photos: 2, photos_lost: 1, others: 3, ..tally });
    assert_eq!(lines.len(), 9);
    assert!(lines.iter().all(|line| line.ends_with('.')));
    assert!(taken_back(&Tally::default()).is_empty());
}

#[test]
fn samples_changed_since_the_last_archive_are_told_once_they_are_many() {
    let records: Vec<Record> = (1..=6).map(|minute| at(minute, &[FUSE])).collect();
    let since = |minute: u8| many_since(&records, Some(&format!("2026-11-24T11:{minute:02}:00+01:00")));
    assert_eq!(many_since(&records, None), Some(6));
    assert_eq!(since(1), Some(5));
    assert_eq!(since(2), None);
    assert_eq!(many_since(&records[..4], None), None);
    let mut example = records.clone();
    example[0].is_example = true;
    assert_eq!(many_since(&example, None), Some(5));
}
