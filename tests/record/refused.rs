//! Texts that are no examination, and the one sentence that says why.

use plugwary::record::{LONGEST_TEXT, MOST_ANSWERS, MOST_EVENTS, MOST_SCENARIOS, RecordFault, read};

/// An examination with these answers.
fn answers(answers: &str) -> String {
    let sample = r#"{ "kind": "extension-lead", "market": "great-britain" }"#;
    format!(
        r#"{{ "format": "plugwary-examination", "version": 1, "sample": {sample}, "equipment": "eyes", "answers": [{answers}] }}"#
    )
}

/// An examination with this field before its others.
fn field(field: &str) -> String {
    answers("").replacen("{ \"format\"", &format!("{{ {field}, \"format\""), 1)
}

fn reading(of: &str, reading: &str) -> String {
    answers(&format!(r#"{{ "question": "core-resistance"{of}, "reading": {{ {reading} }} }}"#))
}

#[track_caller]
fn refuses(text: &str, sentence: &str) {
    let fault = read(text).expect_err("it is refused");
    assert_eq!(fault.to_string(), sentence, "{}", text.get(..300).unwrap_or(text));
    assert!(fault.hint().ends_with('.'), "{}", fault.hint());
}

#[test]
fn the_frame_of_these_tests_is_an_examination() {
    assert_eq!(read(&answers("")).map(|record| record.examination.answers.len()), Ok(0));
    assert!(read(&reading(r#", "of": "earth""#, r#""value": 0.1, "unit": "ohm""#)).is_ok());
    assert!(read(&field(r#""origin": "a fair""#)).is_ok());
}

#[test]
fn foreign_texts() {
    for text in [
        "",
        "hello",
        "[]",
        "\"plugwary-examination\"",
        "[\"plugwary-examination\", 1]",
        "{}",
        r#"{ "format": "another-format", "version": 1 }"#,
        r#"{ "format": ["plugwary-examination"], "version": 1 }"#,
    ] {
        refuses(text, "this is not a Plugwary examination");
    }
}

#[test]
fn newer_versions() {
    let version = |version| answers("").replace("\"version\": 1", &format!("\"version\": {version}"));
    refuses(&version("7"), "made by a newer edition (version 7); this one reads up to 1");
    refuses(&version("2"), "made by a newer edition (version 2); this one reads up to 1");
    let enormous = "99999999999999999999999";
    refuses(&version(enormous), &format!("made by a newer edition (version {enormous}); this one reads up to 1"));
    let with_new_fields = r#"{ "format": "plugwary-examination", "version": 2, "seal": [], "seal": {} }"#;
    refuses(with_new_fields, "made by a newer edition (version 2); this one reads up to 1");
}

#[test]
fn versions_that_never_were() {
    for version in ["0", "-1", "1.0", "1e0", "\"1\"", "[1]"] {
        let text = answers("").replace("\"version\": 1", &format!("\"version\": {version}"));
        refuses(&text, &format!("“version” must be a whole number from 1, got “{version}”"));
    }
    for none in
        [answers("").replace("\"version\": 1, ", ""), answers("").replace("\"version\": 1", "\"version\": null")]
    {
        refuses(&none, "“version” must be a whole number from 1, got nothing");
    }
}

#[test]
fn damaged_texts() {
    refuses("{", "the file is cut short");
    refuses("{\n  \"format\": oops", "the file is damaged at line 2, column 13");
    let text = answers("");
    let cut = text.get(..text.len() - 2).expect("the cut is in plain text");
    assert_eq!(read(cut), Err(RecordFault::CutShort));
    assert!(matches!(read(&(text.clone() + "}")), Err(RecordFault::Damaged { .. })));
    assert!(matches!(read(&format!("{text}{text}")), Err(RecordFault::Damaged { .. })));
    assert!(matches!(read(&field("\"origin\": \"\u{1}\"")), Err(RecordFault::Damaged { .. })));
    assert!(matches!(read(&field(r#""origin": "\ud800""#)), Err(RecordFault::Damaged { .. })));
}

#[test]
fn texts_of_another_form_are_refused_with_line_and_column() {
    refuses("{\"format\": 1, \"format\": 2}", "line 1, column 22: the field “format” stands twice");
    let mistyped = answers(r#"{ "question": "fuse-rating", "cant_tell": true }"#);
    let fault = read(&mistyped).expect_err("the field is unknown").to_string();
    assert!(fault.starts_with("line 1, column ") && fault.ends_with("there is no field “cant_tell”"), "{fault}");
    for (text, why) in [
        (field(r#""origin": "a", "origin": "b""#), "the field “origin” stands twice"),
        (answers(r#"{ "question": "fuse-rating", "one": "3", "one": "5" }"#), "the field “one” stands twice"),
        (answers(r#"{ "one": "3" }"#), "the field “question” is missing"),
        (answers(r#"{ "question": "fuse-rating", "one": 3 }"#), "another sort of value belongs there"),
        (answers("null"), "another sort of value belongs there"),
        (field(r#""example": "yes""#), "another sort of value belongs there"),
        (field(r#""photos": {}"#), "another sort of value belongs there"),
    ] {
        let fault = read(&text).expect_err("it is refused");
        assert!(matches!(fault, RecordFault::Form { .. }) && fault.to_string().ends_with(why), "{fault}");
    }
}

#[test]
fn a_file_larger_than_any_examination() {
    let enormous = " ".repeat(64 * 1024 * 1024 + 1);
    refuses(&enormous, "the file is larger than 64 MiB");
}

#[test]
fn lists_without_end() {
    let deep = format!("{{\"format\": {}", "[".repeat(100_000));
    refuses(&deep, "lists and objects stand more than 32 deep in each other");
    let just_allowed = format!("{{ \"format\": {}{} }}", "[".repeat(31), "]".repeat(31));
    refuses(&just_allowed, "this is not a Plugwary examination");
    let in_a_text = field(&format!("\"origin\": \"\\\"{}\"", "[{".repeat(100)));
    assert!(read(&in_a_text).is_ok());
}

#[test]
fn more_answers_or_photos_than_a_record_holds() {
    let many = |n| vec![r#"{ "question": "fuse-rating", "later": true }"#; n].join(",");
    refuses(&answers(&many(MOST_ANSWERS + 1)), "there are more than 2000 answers");
    refuses(&answers(&many(MOST_ANSWERS)), "answer 2: the question “fuse-rating” was answered before");
    let photo = r#"{ "sha256": "", "media_type": "", "width": 1, "height": 1, "question": "" }"#;
    refuses(&field(&format!("\"photos\": [{}]", vec![photo; 501].join(","))), "there are more than 500 photos");
}

#[test]
fn longer_texts_than_anybody_writes() {
    let (longest, longer) = ("é".repeat(LONGEST_TEXT), "é".repeat(LONGEST_TEXT + 1));
    assert!(read(&field(&format!("\"origin\": \"{longest}\""))).is_ok());
    refuses(&field(&format!("\"origin\": \"{longer}\"")), "“origin” has more than 4000 characters");
    let print = |text| answers(&format!(r#"{{ "question": "flex-print", "printed": "{text}" }}"#));
    assert!(read(&print(&longest)).is_ok());
    refuses(&print(&longer), "answer 1: “printed” has more than 4000 characters");
    let typed = format!(r#""value": 1, "unit": "ohm", "typed": "{longer}""#);
    refuses(&reading(r#", "of": "line""#, &typed), "answer 1: “typed” has more than 4000 characters");
}

#[test]
fn fields_that_say_what_they_cannot_say() {
    let with = |from: &str, to: &str| answers("").replace(from, to);
    refuses(&with("extension-lead", "kettle"), "“kind” must be extension-lead or cord-set, got “kettle”");
    refuses(&with("great-britain", "atlantis"), "“market” must be great-britain or northern-ireland, got “atlantis”");
    refuses(&with("eyes", "nose"), "“equipment” must be eyes, hand-tools or meters, got “nose”");
    refuses(&field(r#""id": "7""#), "“id” must be 32 lower-case hexadecimal digits, got “7”");
    for moment in ["yesterday", "2026-11-24", "2026-11-24T10:30:00", "2026-11-24 10:30:00Z", "2026-11-24T10:30:00+1"] {
        let takes = "a date and time such as 2026-11-24T10:30:00Z";
        refuses(&field(&format!("\"begun\": \"{moment}\"")), &format!("“begun” must be {takes}, got “{moment}”"));
    }
}

#[test]
fn answers_that_are_none() {
    let one = |answer: &str, sentence: &str| refuses(&answers(answer), &format!("answer 1: {sentence}"));
    one(r#"{ "question": "fuse", "one": "empty" }"#, "there is no question “fuse”");
    let question = "the question “fuse-in-the-holder”";
    one(r#"{ "question": "fuse-in-the-holder", "one": "maybe" }"#, &format!("{question} has no answer “maybe”"));
    one(r#"{ "question": "fuse-in-the-holder" }"#, &format!("{question} has nothing that answers it"));
    one(r#"{ "question": "fuse-in-the-holder", "one": null }"#, &format!("{question} has nothing that answers it"));
    one(r#"{ "question": "fuse-in-the-holder", "any": ["empty"] }"#, &format!("{question} takes “one”, got “any”"));
    one(r#"{ "question": "fuse-in-the-holder", "count": 1 }"#, &format!("{question} takes “one”, got “count”"));
    one(
        r#"{ "question": "fuse-in-the-holder", "of": "socket-1", "one": "empty" }"#,
        &format!("{question} is asked once, without “of”, got “socket-1”"),
    );
    one(
        r#"{ "question": "fuse-in-the-holder", "one": "empty", "refused": true }"#,
        "“one” and “refused” stand together; an answer has one of them",
    );
    one(r#"{ "question": "fuse-in-the-holder", "later": false }"#, "“later” must be true or left out, got “false”");
    one(r#"{ "question": "flex-print", "one": "H05VV-F" }"#, "the question “flex-print” takes “printed”, got “one”");
}

#[test]
fn an_answer_that_stands_twice() {
    let text = answers(r#"{ "question": "extras", "any": ["usb", "switch", "usb"] }"#);
    refuses(&text, "answer 1: the answer “usb” stands twice");
    let text = answers(r#"{ "question": "extras", "any": ["usb", "kettle"] }"#);
    refuses(&text, "answer 1: the question “extras” has no answer “kettle”");
}

#[test]
fn the_place_of_an_answer_is_counted_from_one() {
    let third = r#"{ "question": "fuse-rating", "one": "3" }, { "question": "flex-print", "nothing": true }, { "question": "fuse", "one": "empty" }"#;
    refuses(&answers(third), "answer 3: there is no question “fuse”");
}

#[test]
fn counts_out_of_bounds() {
    for count in ["0", "21", "-1", "4.0", "4e0", "1e400", "\"4\""] {
        let text = answers(&format!(r#"{{ "question": "socket-count", "count": {count} }}"#));
        let sentence = "answer 1: the question “socket-count” takes a whole number from 1 to 20, got";
        refuses(&text, &format!("{sentence} “{count}”"));
    }
    for count in [1, 20] {
        assert!(read(&answers(&format!(r#"{{ "question": "socket-count", "count": {count} }}"#))).is_ok());
    }
}

#[test]
fn targets_that_a_question_is_not_asked_of() {
    for of in ["socket-1", "package", "Earth", "", "earth "] {
        let text = reading(&format!(", \"of\": \"{of}\""), r#""value": 1, "unit": "ohm""#);
        refuses(&text, &format!("answer 1: the question “core-resistance” is asked of each core, got “{of}”"));
    }
    for of in ["", r#", "of": "socket-1""#, r#", "of": "earth""#] {
        let text = answers(&format!(r#"{{ "question": "rating"{of}, "printed": "13A" }}"#));
        let sentence = read(&text).expect_err("no place is named").to_string();
        assert!(
            sentence.contains("the question “rating” is asked of each place that states a rating, got"),
            "{sentence}"
        );
    }
    let fault = read(&reading("", r#""value": 1, "unit": "ohm""#)).expect_err("no core is named");
    assert_eq!(fault.to_string(), "answer 1: the question “core-resistance” is asked of each core, got nothing");
    assert_eq!(fault.hint(), "There may stand: line, neutral, earth.");
}

#[test]
fn readings_that_are_none() {
    let one = |inside: &str, sentence: &str| {
        refuses(&reading(r#", "of": "earth""#, inside), &format!("answer 1: {sentence}"));
    };
    let one_of = "the reading of “core-resistance” needs one of “value”, “above”, “below” and “open”";
    one(r#""unit": "ohm""#, one_of);
    one(r#""unit": "ohm", "value": 1, "above": 1"#, one_of);
    one(r#""unit": "ohm", "value": 1, "open": true"#, one_of);
    one(r#""unit": "ohm", "open": false"#, "“open” must be true or left out, got “false”");
    let takes = "must be a finite number, zero or more, got";
    one(r#""unit": "ohm", "value": 1e400"#, &format!("“value” {takes} “1e400”"));
    one(r#""unit": "ohm", "value": -1e400"#, &format!("“value” {takes} “-1e400”"));
    one(r#""unit": "ohm", "value": -0.01"#, &format!("“value” {takes} “-0.01”"));
    one(r#""unit": "ohm", "above": "OL""#, &format!("“above” {takes} “\"OL\"”"));
    one(r#""unit": "ohm", "below": [0.01]"#, &format!("“below” {takes} “[0.01]”"));
    let takes = "must be a number that a display can show, got";
    one(r#""unit": "ohm", "value": 1e-400"#, &format!("“value” {takes} “1e-400”"));
    for step in ["0", "-0.1", "1e-400", "1e400", "\"fine\""] {
        let sentence = format!("“step” must be a finite number above zero, got “{step}”");
        one(&format!(r#""unit": "ohm", "value": 1, "step": {step}"#), &sentence);
    }
    let measures = "the question “core-resistance” measures a resistance, got the unit";
    one(r#""unit": "metre", "value": 1"#, &format!("{measures} “metre”"));
    one(r#""unit": "Ω", "value": 1"#, &format!("{measures} “Ω”"));
    let read_with = "the question “core-resistance” is not read with";
    one(r#""unit": "ohm", "value": 1, "instrument": "scale""#, &format!("{read_with} “scale”"));
    one(r#""unit": "ohm", "value": 1, "instrument": "nose""#, &format!("{read_with} “nose”"));
}

#[test]
fn a_length_of_nothing_or_less() {
    for value in ["0", "-0.5"] {
        let text =
            answers(&format!(r#"{{ "question": "flex-length", "reading": {{ "value": {value}, "unit": "metre" }} }}"#));
        refuses(&text, &format!("answer 1: “value” must be a finite number above zero, got “{value}”"));
    }
}

#[test]
fn a_number_without_its_unit() {
    let fault = read(&reading(r#", "of": "earth""#, r#""value": 0.1"#)).expect_err("no unit");
    assert!(fault.to_string().ends_with("the field “unit” is missing"), "{fault}");
}

#[test]
fn photos_that_are_none() {
    let sha256 = "0".repeat(64);
    let photo = |from: &str, to: &str| {
        let photo = format!(
            r#"{{ "sha256": "{sha256}", "media_type": "image/jpeg", "width": 4, "height": 3, "question": "fuse-rating" }}"#
        );
        field(&format!("\"photos\": [{}]", photo.replacen(from, to, 1)))
    };
    assert!(read(&photo("", "")).is_ok());
    let digits = "photo 1: “sha256” must be 64 lower-case hexadecimal digits, got";
    refuses(&photo(&sha256, "00"), &format!("{digits} “00”"));
    refuses(&photo(&sha256, &"A".repeat(64)), &format!("{digits} “{}…”", "A".repeat(40)));
    let media = "photo 1: “media_type” must be image/jpeg or image/webp, got “image/svg+xml”";
    refuses(&photo("image/jpeg", "image/svg+xml"), media);
    refuses(&photo("fuse-rating", "fuse"), "photo 1: there is no question “fuse”");
    let nothing = "photo 1: “question” must be a question where “origin” is left out, got nothing";
    refuses(&photo(r#", "question": "fuse-rating""#, ""), nothing);
    assert!(read(&photo(r#""question": "fuse-rating""#, r#""origin": true"#)).is_ok());
    let left_out = "must be left out where a photo belongs to the origin, got";
    refuses(
        &photo("\"question\"", r#""origin": true, "question""#),
        &format!("photo 1: “question” {left_out} “fuse-rating”"),
    );
    refuses(
        &photo(r#""question": "fuse-rating""#, r#""origin": true, "of": "earth""#),
        &format!("photo 1: “of” {left_out} “earth”"),
    );
    refuses(
        &photo("\"question\"", r#""origin": false, "question""#),
        "photo 1: “origin” must be true or left out, got “false”",
    );
    let once = "photo 1: the question “fuse-rating” is asked once, without “of”, got “earth”";
    refuses(&photo("\"question\"", "\"of\": \"earth\", \"question\""), once);
}

#[test]
fn custody_that_is_none() {
    let entry = |entry: &str| field(&format!("\"custody\": [{{ {entry} }}]"));
    let one = |inside: &str, sentence: &str| refuses(&entry(inside), &format!("custody entry 1: {sentence}"));
    assert!(read(&entry(r#""done": "Bought it""#)).is_ok());
    one(r#""when": "today""#, "“when” must be a date and time such as 2026-11-24T10:30:00Z, got “today”");
    one(&format!("\"done\": \"{}\"", "x".repeat(LONGEST_TEXT + 1)), "“done” has more than 4000 characters");
    one(r#""number": 1"#, "“link” must be there where there is a “number”, got nothing");
    let link = "0".repeat(64);
    one(&format!("\"link\": \"{link}\""), "“number” must be there where there is a “link”, got nothing");
    one(&format!("\"number\": 0, \"link\": \"{link}\""), "“number” must be a whole number from 1, got “0”");
    one(r#""number": 1, "link": "ab""#, "“link” must be 64 lower-case hexadecimal digits, got “ab”");
    let fault = read(&entry(r#""signed": "me""#)).expect_err("there is no such field").to_string();
    assert!(fault.ends_with("there is no field “signed”"), "{fault}");
    let fault = read(&field(r#""acquired": { "vendor": "me" }"#)).expect_err("there is no such field").to_string();
    assert!(fault.ends_with("there is no field “vendor”"), "{fault}");
    refuses(
        &field(r#""acquired": { "when": "2026-11-20" }"#),
        "“when” must be a date and time such as 2026-11-24T10:30:00Z, got “2026-11-20”",
    );
    let longer = "é".repeat(LONGEST_TEXT + 1);
    for name in ["place", "seller", "price", "order", "listing", "parcel"] {
        let text = field(&format!("\"acquired\": {{ \"{name}\": \"{longer}\" }}"));
        refuses(&text, &format!("“{name}” has more than 4000 characters"));
    }
    refuses(
        &field(&format!("\"custody\": [{}]", vec!["{}"; 501].join(","))),
        "there are more than 500 custody entries",
    );
}

#[test]
fn a_sentence_is_short_and_has_nothing_that_a_terminal_obeys() {
    let long = "x".repeat(1_000_000);
    let hostile = "\\u001b[2J\\u202e\\n";
    for text in [
        answers(&format!(r#"{{ "question": "{hostile}{long}", "one": "empty" }}"#)),
        answers(&format!(r#"{{ "question": "fuse-rating", "{hostile}{long}": 1 }}"#)),
        field(&format!("\"example\": \"{hostile}{long}\"")),
        field(&format!("\"id\": \"{hostile}{long}\"")),
    ] {
        let sentence = read(&text).expect_err("it is refused").to_string();
        assert!(sentence.len() < 400, "{sentence}");
        assert!(!sentence.contains(['\u{1b}', '\u{202e}', '\n']), "{sentence:?}");
    }
}

#[test]
fn a_hint_lists_what_is_allowed() {
    let text = answers(r#"{ "question": "fuse-in-the-holder", "one": "maybe" }"#);
    let hint = read(&text).expect_err("it is refused").hint().into_owned();
    assert!(hint.starts_with("There may stand: ") && hint.contains("empty"), "{hint}");
    let text = reading(r#", "of": "earth""#, r#""value": 1, "unit": "volt""#);
    let hint = read(&text).expect_err("it is refused").hint().into_owned();
    assert!(hint.contains("milliohm") && hint.contains("megohm") && !hint.contains("volt"), "{hint}");
}

/// An examination with one scenario, of these fields.
fn scenario(fields: &str) -> String {
    field(&format!(r#""scenarios": [{{ {fields} }}]"#))
}

#[test]
fn scenarios_that_are_none() {
    assert!(read(&scenario(r#""injury": "fatal""#)).is_ok());
    let one = |fields: &str, sentence: &str| refuses(&scenario(fields), &format!("scenario 1: {sentence}"));
    let takes = "first-aid, hospital-visit, hospital-stay or fatal";
    one(r#""injury": "a scratch""#, &format!("“injury” must be {takes}, got “a scratch”"));
    one(r#""injury": "fatal", "injury_guess": false"#, "“injury_guess” must be true or left out, got “false”");
    one(r#""injury": "fatal", "of": ["fuse-too-blue"]"#, "there is no check “fuse-too-blue”");
    one(r#""injury": "fatal", "of": ["fuse-missing", "fuse-missing"]"#, "the check “fuse-missing” stands twice");
    let longer = "é".repeat(LONGEST_TEXT + 1);
    one(&format!(r#""injury": "fatal", "title": "{longer}""#), "“title” has more than 4000 characters");
    one(&format!(r#""injury": "fatal", "injury_reason": "{longer}""#), "“injury_reason” has more than 4000 characters");
    let fault = read(&scenario(r#""title": "no injury""#)).expect_err("it has no injury").to_string();
    assert!(fault.ends_with("the field “injury” is missing"), "{fault}");
}

#[test]
fn events_that_are_none() {
    let event =
        |event: &str| scenario(&format!(r#""injury": "fatal", "events": [{{ "probability": 1 }}, {{ {event} }}]"#));
    assert!(read(&event(r#""probability": 0.001"#)).is_ok());
    let one = |text: &str, sentence: &str| refuses(&event(text), &format!("scenario 1, event 2: {sentence}"));
    for chance in ["0", "-0.1", "1.001", "1e999", "1e-999", "\"1\"", "null"] {
        let got = format!("“{chance}”");
        one(
            &format!(r#""probability": {chance}"#),
            &format!("“probability” must be a number above 0 and no more than 1, got {got}"),
        );
    }
    one(r#""probability": 1, "guess": false"#, "“guess” must be true or left out, got “false”");
    let longer = "é".repeat(LONGEST_TEXT + 1);
    one(&format!(r#""probability": 1, "happens": "{longer}""#), "“happens” has more than 4000 characters");
    one(&format!(r#""probability": 1, "reason": "{longer}""#), "“reason” has more than 4000 characters");
}

#[test]
fn more_scenarios_or_events_than_a_record_holds() {
    let many = |n: usize| field(&format!("\"scenarios\": [{}]", vec![r#"{ "injury": "fatal" }"#; n].join(",")));
    assert!(read(&many(MOST_SCENARIOS)).is_ok());
    refuses(&many(MOST_SCENARIOS + 1), "there are more than 50 scenarios");
    refuses(&many(100_000), "there are more than 50 scenarios");
    let events = |n: usize| {
        let events = vec![r#"{ "probability": 1 }"#; n].join(",");
        scenario(&format!(r#""injury": "fatal", "events": [{events}]"#))
    };
    assert!(read(&events(MOST_EVENTS)).is_ok());
    refuses(&events(MOST_EVENTS + 1), "scenario 1: there are more than 20 events");
}
