//! What a table of ewes would bring, and what it leaves out and why.

use std::collections::BTreeSet;

use yeanling_core::book::{BirthDay, DayOrder, NoBirthDay};
use yeanling_core::spreadsheet::{Column, NoRow, Preview, RowTrouble, columns, preview, read};

fn of(text: &str, here: &[&str]) -> Preview {
    let sheet = read(text).expect("a table");
    let here: BTreeSet<String> = here.iter().map(|tag| (*tag).to_owned()).collect();
    preview(&sheet, &columns(&sheet), &here, None)
}

#[test]
fn columns_are_told_by_their_heads_in_any_order() {
    let found = |text: &str| columns(&read(text).expect("a table")).map(|(_, place)| place);
    assert_eq!(found("Breed,Date_of_Birth,Ear tag,Notes\n,,1,\n"), [Some(2), Some(1), Some(0), Some(3)]);
    assert_eq!(found("id;TAG;DOB\n;1;\n"), [Some(1), Some(2), None, None]);
    assert_eq!(found("weight,color\n1,2\n"), [None; 4]);
}

#[test]
fn each_row_brings_a_ewe_with_what_it_says_of_her() {
    let got = of("tag;born;breed;remark\n14;2022;Chéviot;hard on one side\n '=1+1;14.3.2023;;\n", &[]);
    assert_eq!(got.left_out, []);
    let [first, second] = &got.ewes[..] else { panic!("two ewes") };
    assert_eq!((first.tag.as_str(), first.born), ("14", Some(BirthDay::Year(2022))));
    assert_eq!(
        (first.breed.as_deref(), first.remark.as_deref()),
        (Some("Chéviot"), Some("hard on one side"))
    );
    let day = BirthDay::parse("2023-03-14").expect("a day");
    assert_eq!((second.tag.as_str(), second.born, &second.breed), ("=1+1", Some(day), &None));
}

#[test]
fn what_brings_no_ewe_is_said_row_by_row() {
    let long = "x".repeat(25);
    let text = format!("tag,born\n,2022\n14,2022\nA7,2020\na7,2021\n21,3/4/2022\n22,soon\n{long},\n23,\n");
    let got = of(&text, &["14"]);
    let tags: Vec<&str> = got.ewes.iter().map(|ewe| ewe.tag.as_str()).collect();
    assert_eq!(tags, ["A7", "23"]);
    let left = |row, tag: &str, why| NoRow { row, tag: (!tag.is_empty()).then(|| tag.to_owned()), why };
    assert_eq!(
        got.left_out,
        [
            left(1, "", RowTrouble::NoTag),
            left(2, "14", RowTrouble::Here("14".to_owned())),
            left(4, "a7", RowTrouble::Again("a7".to_owned())),
            left(5, "21", RowTrouble::Born(NoBirthDay::TwoWays("3/4/2022".to_owned()))),
            left(6, "22", RowTrouble::Born(NoBirthDay::Unknown("soon".to_owned()))),
            left(7, &long, RowTrouble::LongTag { given: 25, most: 24 }),
        ]
    );
}

#[test]
fn a_date_of_two_ways_is_read_once_the_order_is_known() {
    let sheet = read("tag,born\n1,3/4/2022\n2,14/3/2022\n").expect("a table");
    let with = |order| preview(&sheet, &columns(&sheet), &BTreeSet::new(), order);
    assert_eq!(with(None).two_ways(), Some("3/4/2022"));
    for (order, first) in [(DayOrder::DayFirst, "2022-04-03"), (DayOrder::MonthFirst, "2022-03-04")] {
        let got = with(Some(order));
        let born: Vec<_> = got.ewes.iter().map(|ewe| ewe.born).collect();
        // What can be read one way only stays so.
        assert_eq!(born, [first, "2022-03-14"].map(|day| BirthDay::parse(day).ok()), "{order:?}");
        assert_eq!((got.left_out.len(), got.two_ways()), (0, None));
    }
}

#[test]
fn a_table_without_a_column_of_tags_brings_nobody() {
    let got = of("weight,color\n61,white\n", &[]);
    assert_eq!(got.ewes, []);
    assert_eq!(got.left_out, [NoRow { row: 1, tag: None, why: RowTrouble::NoTag }]);
    // Unless someone says which column it is.
    let sheet = read("weight,color\n61,white\n").expect("a table");
    let got = preview(&sheet, &[(Column::Tag, Some(1))], &BTreeSet::new(), None);
    assert_eq!(got.ewes.len(), 1);
}
