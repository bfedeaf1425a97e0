//! Panel tables in spreadsheet files, invented and written here: Office Open XML (ECMA-376) and Open
//! Document (ISO/IEC 26300), with the odd cells that such files hold.

use std::io::{Cursor, Write as _};

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Home, Kind};
use quarterturn_mapping::{Form, ImportTo, Odd, TableError, guess, import, read_table};
use zip::write::SimpleFileOptions;

fn zipped(files: &[(&str, &str)]) -> Vec<u8> {
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for (name, text) in files {
        zip.start_file(*name, SimpleFileOptions::default()).unwrap();
        zip.write_all(text.as_bytes()).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

/// A workbook of one sheet with these rows of cells, each as its XML.
fn xlsx(rows: &str) -> Vec<u8> {
    let types = r#"<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>"#;
    let relations = r#"<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"#;
    let book = r#"<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Panel" sheetId="1" r:id="r1"/></sheets></workbook>"#;
    let sheets = r#"<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>"#;
    let styles = r#"<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>"#;
    let sheet = format!(
        r#"<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>{rows}</sheetData></worksheet>"#
    );
    zipped(&[
        ("[Content_Types].xml", types),
        ("_rels/.rels", relations),
        ("xl/workbook.xml", book),
        ("xl/_rels/workbook.xml.rels", sheets),
        ("xl/styles.xml", styles),
        ("xl/worksheets/sheet1.xml", &sheet),
    ])
}

fn text(at: &str, text: &str) -> String {
    format!(r#"<c r="{at}" t="inlineStr"><is><t>{text}</t></is></c>"#)
}

/// An Open Document sheet with these rows as XML.
fn ods(rows: &str) -> Vec<u8> {
    let content = format!(
        r#"<?xml version="1.0"?><office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.2"><office:body><office:spreadsheet><table:table table:name="Cuadro">{rows}</table:table></office:spreadsheet></office:body></office:document-content>"#
    );
    let manifest = r#"<?xml version="1.0"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/></manifest:manifest>"#;
    zipped(&[
        ("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
        ("META-INF/manifest.xml", manifest),
        ("content.xml", &content),
    ])
}

fn ods_row(cells: &[&str]) -> String {
    let cell = |text: &&str| match text.parse::<f64>() {
        Ok(number) => format!(
            r#"<table:table-cell office:value-type="float" office:value="{number}"><text:p>{text}</text:p></table:table-cell>"#
        ),
        Err(_) if text.is_empty() => "<table:table-cell/>".to_owned(),
        Err(_) => format!(
            r#"<table:table-cell office:value-type="string"><text:p>{text}</text:p></table:table-cell>"#
        ),
    };
    format!("<table:table-row>{}</table:table-row>", cells.iter().map(cell).collect::<String>())
}

#[test]
fn a_workbook_with_numbers_formulas_dates_and_errors_is_read_and_explained() {
    let rows = [
        format!(
            "<row r=\"2\">{}{}{}</row>",
            text("B2", "Circuit"),
            text("C2", "Description"),
            text("D2", "Amps")
        ),
        format!(
            "<row r=\"3\"><c r=\"B3\"><v>1</v></c>{}<c r=\"D3\"><v>20</v></c></row>",
            text("C3", "Kitchen &amp; hall")
        ),
        format!(
            "<row r=\"4\"><c r=\"B4\"><f>B3+2</f><v>3</v></c>{}<c r=\"D4\"><v>15</v></c></row>",
            text("C4", "Bath")
        ),
        format!("<row r=\"5\"><c r=\"B5\"><f>B4+2</f></c>{}</row>", text("C5", "Den")),
        format!("<row r=\"6\"><c r=\"B6\" s=\"1\"><v>45295</v></c>{}</row>", text("C6", "Dryer")),
        format!("<row r=\"7\"><c r=\"B7\" t=\"e\"><v>#REF!</v></c>{}</row>", text("C7", "Attic")),
        format!("<row r=\"8\">{}{}</row>", text("B8", "9,11"), text("C8", "Range")),
    ];
    let table = read_table(&xlsx(&rows.concat())).unwrap();
    assert_eq!((table.form, table.sheets[0].name.as_str()), (Form::Xlsx, "Panel"));
    let guess = guess(&table);
    assert_eq!(guess.heading, Some(1));
    let import =
        import(&Home::default(), &table, &guess, &ImportTo::default(), &Catalogue::english());
    let circuits: Vec<&str> = import.circuits.iter().map(|c| c.circuit.as_str()).collect();
    assert_eq!(circuits, ["1", "3", "9,11"]);
    let left: Vec<(usize, &str)> =
        import.left.iter().map(|told| (told.row, told.why.key)).collect();
    assert_eq!(left, [(5, "import-formula"), (6, "import-date"), (7, "import-error")]);
    assert!(import.components.iter().any(|c| c.name == "Breaker 1, Kitchen & hall"));
}

#[test]
fn an_open_document_sheet_in_spanish_is_read() {
    let rows = [
        ods_row(&["Circuito", "Descripci\u{f3}n", "Calibre", "Polos"]),
        ods_row(&["1", "Cocina", "16", "1"]),
        ods_row(&["2", "Horno", "25", "2"]),
        ods_row(&["3", "Reserva", "16", "1"]),
        r#"<table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>"#.to_owned(),
    ];
    let table = read_table(&ods(&rows.concat())).unwrap();
    assert_eq!(table.form, Form::Ods);
    let words = Catalogue::in_language("es");
    let import = import(&Home::default(), &table, &guess(&table), &ImportTo::default(), &words);
    let names: Vec<&str> = import
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker)
        .map(|c| c.name.as_str())
        .collect();
    assert_eq!(names, ["Disyuntor 1, Cocina", "Disyuntor 2, Horno", "Disyuntor 3, reserva"]);
    assert!(import.left.is_empty(), "{:?}", import.left);
}

#[test]
fn small_files_that_ask_for_much_memory_are_refused() {
    let far = r#"<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>"#;
    assert_eq!(read_table(&xlsx(far)).unwrap_err(), TableError::TooManyRows);
    let wide = r#"<row r="1"><c r="XFD1"><v>1</v></c></row>"#;
    assert_eq!(read_table(&xlsx(wide)).unwrap_err(), TableError::TooManyColumns);
    let many = r#"<table:table-row table:number-rows-repeated="1000000"><table:table-cell office:value-type="float" office:value="1" table:number-columns-repeated="16000"/></table:table-row>"#;
    assert_eq!(read_table(&ods(many)).unwrap_err(), TableError::UnpacksTooLarge);
    let bomb = xlsx(&" ".repeat(120 << 20));
    assert!(bomb.len() < 1 << 20);
    assert_eq!(read_table(&bomb).unwrap_err(), TableError::UnpacksTooLarge);
    assert_eq!(read_table(&xlsx("")).unwrap_err(), TableError::Empty);
    assert_eq!(read_table(&zipped(&[("a.txt", "hello")])).unwrap_err(), TableError::NoTable);
    let mut cut = xlsx(&format!("<row r=\"1\">{}</row>", text("A1", "x")));
    cut.truncate(cut.len() / 2);
    assert_eq!(read_table(&cut).unwrap_err(), TableError::Damaged);
}

#[test]
fn a_formula_that_failed_is_marked_in_its_cell() {
    let rows =
        format!("<row r=\"1\"><c r=\"A1\" t=\"e\"><v>#DIV/0!</v></c>{}</row>", text("B1", "x"));
    let table = read_table(&xlsx(&rows)).unwrap();
    assert_eq!(table.sheets[0].rows[0].cells[0].odd, Some(Odd::Error));
}
