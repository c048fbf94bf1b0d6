//! What is written is read back the same, alone and inside a page.

use plugwary::record::{embed, from_file, judged_line, read, write};
use plugwary::report::page;
use proptest::prelude::*;

use crate::generated;

proptest! {
    #[test]
    fn what_is_written_is_read_back_the_same(record in generated::record()) {
        prop_assert_eq!(read(&write(&record)), Ok(record));
    }

    #[test]
    fn a_record_is_written_in_one_way(record in generated::record()) {
        let written = write(&record);
        let again = read(&written).expect("what is written is read");
        prop_assert_eq!(write(&again), written);
    }

    #[test]
    fn white_space_means_nothing(record in generated::record()) {
        let written = write(&record);
        let compact: Box<serde_json::value::RawValue> = serde_json::from_str(&written).expect("what is written is JSON");
        let one_line: String = compact.get().lines().map(str::trim_start).collect();
        prop_assert!(!one_line.contains('\n'));
        prop_assert_eq!(read(&one_line), Ok(record));
    }

    #[test]
    fn embedded_json_is_the_same_json_with_nothing_that_markup_is_made_of(record in generated::record()) {
        let embedded = embed(&write(&record));
        let is_inert = !embedded.contains(['<', '>', '&', '\u{2028}', '\u{2029}']);
        prop_assert!(is_inert);
        prop_assert_eq!(read(&embedded), Ok(record));
    }

    #[test]
    fn no_text_makes_reading_panic(text in any::<String>(), record in generated::record(), cut in 0_usize..4000) {
        prop_assert!(read(&text).is_err());
        let written = write(&record);
        let kept: String = written.chars().take(cut).collect();
        prop_assert_eq!(read(&kept).is_ok(), kept == written);
        prop_assert!(from_file(&text).is_err());
    }
}

proptest! {
    // A page takes long to make.
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_page_to_show_is_taken_back_whole(record in generated::record()) {
        let carried = from_file(&page(&record, &[])).expect("the page is taken back");
        prop_assert_eq!(judged_line(&carried.record), judged_line(&record));
        prop_assert_eq!(carried.record, record);
    }
}
