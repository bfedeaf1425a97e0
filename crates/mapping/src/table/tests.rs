use super::*;
use proptest::prelude::*;
use quarterturn_guidance::Catalogue;

fn texts(table: &Table) -> Vec<Vec<&str>> {
    table.sheets[0].rows.iter().map(|r| r.cells.iter().map(|c| c.text.as_str()).collect()).collect()
}

#[test]
fn separators_quotes_and_codings_are_told_by_the_content() {
    let wanted = vec![vec!["Circuit", "Ba\u{f1}o, arriba"], vec!["9,11", "x"]];
    let utf8 = "Circuit;\"Ba\u{f1}o, arriba\"\r\n\"9,11\";x\r\n";
    let form = |separator, encoding| Form::Text { separator, encoding };
    let is = |bytes: &[u8], expected: Form| {
        let table = read_table(bytes).unwrap();
        assert_eq!((table.form, texts(&table)), (expected, wanted.clone()));
    };
    is(utf8.as_bytes(), form(';', Encoding::Utf8));
    is(format!("\u{feff}{utf8}").as_bytes(), form(';', Encoding::Utf8));
    is(utf8.replace(';', "\t").as_bytes(), form('\t', Encoding::Utf8));
    is(format!("sep=;\r\n{utf8}").as_bytes(), form(';', Encoding::Utf8));
    let little: Vec<u8> = utf8.encode_utf16().flat_map(u16::to_le_bytes).collect();
    is(&little, form(';', Encoding::Utf16));
    is(&[&[0xff, 0xfe], little.as_slice()].concat(), form(';', Encoding::Utf16));
    let big: Vec<u8> = utf8.encode_utf16().flat_map(u16::to_be_bytes).collect();
    is(&[&[0xfe, 0xff], big.as_slice()].concat(), form(';', Encoding::Utf16));
    let western: Vec<u8> = utf8.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    is(&western, form(';', Encoding::Western));
}

#[test]
fn rows_keep_their_line_even_where_a_cell_spans_several() {
    let table = read_text("a,b\n\"one\ntwo\",c\nd,e\n").unwrap();
    let numbers: Vec<usize> = table.sheets[0].rows.iter().map(|r| r.number).collect();
    assert_eq!(numbers, [1, 2, 4]);
    for ends in ["\r\n", "\r"] {
        let table = read_text(&"a,b\nc,d\n\ne,f\n".replace('\n', ends)).unwrap();
        let numbers: Vec<usize> = table.sheets[0].rows.iter().map(|r| r.number).collect();
        assert_eq!(numbers, [1, 2, 4], "{ends:?}");
    }
    assert_eq!(texts(&table)[1], ["one two", "c"]);
    // A lone inch sign does not swallow the rest.
    let table = read_text("1,TV 55\" wall\n2,Hall\n3,Bath\n").unwrap();
    assert_eq!(texts(&table).len(), 3);
}

#[test]
fn what_is_no_table_says_what_to_do() {
    let cases: Vec<(Vec<u8>, TableError)> = vec![
        (Vec::new(), TableError::Empty),
        (b" \r\n ,,, \n".to_vec(), TableError::Empty),
        (b"%PDF-1.7 a".to_vec(), TableError::NoTable),
        (vec![0xd0, 0xcf, 0x11, 0xe0, 1, 2], TableError::OldOrLocked),
        (b"PK\x03\x04 broken".to_vec(), TableError::Damaged),
        (vec![7, 0, 9, 200, 0, 0, 0, 1], TableError::NoTable),
        (vec![b'x'; MOST_BYTES + 1], TableError::TooLarge),
        ("1,a\n".repeat(100_000).into_bytes(), TableError::TooManyRows),
        (",".repeat(300).into_bytes(), TableError::TooManyColumns),
    ];
    for (bytes, error) in cases {
        assert_eq!(read_table(&bytes).unwrap_err(), error);
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for said in [error.cause(), error.remedy()] {
                let text = said.text(&words);
                assert!(text.len() > 20 && !text.contains(['[', '{']), "{text}");
            }
        }
    }
}

#[test]
fn a_huge_cell_is_cut_and_marked() {
    let table = read_text(&format!("1,{}\n2,Hall\n", "x".repeat(100_000))).unwrap();
    let cell = &table.sheets[0].rows[0].cells[1];
    assert_eq!((cell.text.len(), cell.odd), (MOST_LETTERS, Some(Odd::TooLong)));
}

proptest! {
    #[test]
    fn any_bytes_give_a_table_or_a_reason(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        if let Ok(table) = read_table(&bytes) {
            prop_assert!(table.sheets.iter().any(|s| !s.rows.is_empty()));
        }
    }

    #[test]
    fn what_the_library_writes_is_read_back(rows in proptest::collection::vec(
        proptest::collection::vec("[a-z0-9,;\"\n ]{0,12}", 3), 2..20)) {
        let mut writer = csv::Writer::from_writer(Vec::new());
        for row in &rows { writer.write_record(row).unwrap(); }
        let bytes = writer.into_inner().unwrap();
        let Ok(text) = String::from_utf8(bytes) else { panic!() };
        let mut expected: Vec<Vec<String>> = rows.iter().map(|row| {
            row.iter().map(|c| c.replace(['\n'], " ").trim().to_owned()).collect()
        }).collect();
        match text_table_as(&text, ',') {
            Ok(table) => {
                let mut found: Vec<Vec<String>> = table.sheets[0].rows.iter()
                    .map(|r| r.cells.iter().map(|c| c.text.clone()).collect()).collect();
                expected.retain(|r| r.iter().any(|c| !c.is_empty()));
                found.retain(|r| r.iter().any(|c| !c.is_empty()));
                prop_assert_eq!(found, expected);
            }
            Err(error) => {
                prop_assert_eq!(error, TableError::Empty);
                prop_assert!(expected.iter().flatten().all(String::is_empty));
            }
        }
    }
}

/// The table of a text whose separator is told in its first line.
fn text_table_as(text: &str, separator: char) -> Result<Table, TableError> {
    read_text(&format!("sep={separator}\n{text}"))
}
