#include <gtest/gtest.h>

#include "tests/core/file/chart_sample.h"

// Every sentence with which a chart file is refused, word for word.
namespace lacewright {
namespace {

struct Refused {
    const char* name;  // of the test
    std::string text;
    std::string error;  // place and sentence
};

class ChartRefusal : public testing::TestWithParam<Refused> {};

TEST_P(ChartRefusal, SaysWhereWhatWasFoundAndWhatWasExpected) {
    const Result<Chart> chart = readChart(GetParam().text, "c");
    ASSERT_FALSE(chart) << GetParam().text;
    EXPECT_EQ(chart.error().text(), GetParam().error);
}

// A test for a file with these members before its two rows of three columns.
Refused with(const char* name, std::string_view members, std::string error) {
    return {name, fileWith(std::string(members) + R"(, "width": 3, "rows": ["k*3", "p*3"])"),
            std::move(error)};
}

std::string nameOf(const testing::TestParamInfo<Refused>& info) {
    return info.param.name;
}

INSTANTIATE_TEST_SUITE_P(
    Syntax, ChartRefusal,
    testing::Values(
        Refused{"Empty", "",
                "c:1:1: This is not well-formed JSON (value): unexpected end of input; expected "
                "'[', '{', or a "
                "literal."},
        Refused{"MissingComma", "{\"é\": 1\n  \"b\": 2}",
                "c:2:5: This is not well-formed JSON (object): unexpected string literal; expected "
                "'}'."},
        Refused{"CountsCharactersNotBytes", "{\"é\": x}",
                "c:1:7: This is not well-formed JSON (value): invalid literal."},
        Refused{
            "TrailingText", "{} {}",
            "c:1:4: This is not well-formed JSON (value): unexpected '{'; expected end of input."},
        Refused{"RawLineBreak", "{\"a\": \"b\n\"}",
                "c:1:9: This is not well-formed JSON (value): invalid string: control character "
                "U+000A (LF) must be "
                "escaped to \\u000A or \\n."},
        Refused{"LoneSurrogate", R"({"a": "\ud800"})",
                "c:1:14: This is not well-formed JSON (value): invalid string: surrogate "
                "U+D800..U+DBFF must be "
                "followed by U+DC00..U+DFFF."},
        Refused{"NotANumber", "{\"a\": NaN}",
                "c:1:7: This is not well-formed JSON (value): invalid literal."},
        Refused{"NotUtf8", "{\n\"a\": \"\xFC\"}",
                "c:2:7: Found the byte 0xfc; expected text in UTF-8."},
        Refused{"TooLargeNumber", "{\"a\":\n1e999}", "c:2:5: The number 1e999 is too large."},
        Refused{"TwiceTheSameMember", "{\"a\": 1,\n\"a\": 2}",
                "c:2:3: The member \"a\" stands twice; expected it once."},
        Refused{"TwiceWithinASize", fileWith("\"sizes\": [{}, {\"times\": {\"A\": 1, \"A\": 2}}]"),
                "c:1: /sizes/1/times: The member \"A\" stands twice; expected it once."}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Head, ChartRefusal,
    testing::Values(
        Refused{"NoObject", "[]", "c:1: Found a list; expected an object."},
        Refused{"NoFormat", "{}",
                "c:1: The member \"format\" is missing; expected \"lacewright-chart\"."},
        Refused{"OtherFormat", "{\"format\":\n\"picture\"}",
                "c:2: /format: Found \"picture\"; expected \"lacewright-chart\"."},
        Refused{
            "NoVersion", R"({"format": "lacewright-chart"})",
            "c:1: The member \"version\" is missing; expected the version of the chart format, 1."},
        Refused{"VersionOfAnotherKind", R"({"format": "lacewright-chart", "version": "1"})",
                "c:1: /version: Found \"1\"; expected the version of the chart format, 1."},
        Refused{"VersionZero", R"({"format": "lacewright-chart", "version": 0})",
                "c:1: /version: Found 0; expected the version of the chart format, 1."},
        Refused{"NewerVersion", R"({"format": "lacewright-chart", "version": 2, "rows": 5})",
                "c:1: /version: The chart is of version 2; this program reads version 1."},
        with("NameNoText", R"("name": 5)", "c:1: /name: Found 5; expected a text."),
        with("Worked", R"("worked": "sideways")",
             "c:1: /worked: Found \"sideways\"; expected one of \"flat\", \"in the round\"."),
        with("FirstSide", R"("firstSide": null)",
             "c:1: /firstSide: Found null; expected one of \"right\", \"wrong\"."),
        with("FirstSideInTheRound", R"("worked": "in the round", "firstSide": "wrong")",
             "c:1: /firstSide: Found \"wrong\"; expected \"right\", the only side that faces when "
             "working in the "
             "round."),
        with("Uncharted", R"("uncharted": "rib")",
             "c:1: /uncharted: Found \"rib\"; expected one of \"none\", \"as they present\", "
             "\"purl\", \"knit\"."),
        with("CastOnEmpty", R"("castOn": {})",
             "c:1: /castOn: Found neither of \"stitches\" and \"multiple\"; expected one of them."),
        with("CastOnBoth", R"("castOn": {"stitches": 1, "multiple": 2})",
             "c:1: /castOn: Found both of \"stitches\" and \"multiple\"; expected one of them."),
        with("CastOnNumber", R"("castOn": 40)", "c:1: /castOn: Found 40; expected an object."),
        with("CastOnFraction", R"("castOn": {"stitches": 40.0})",
             "c:1: /castOn/stitches: Found 40.0; expected a number of stitches from 0 to "
             "100000000."),
        with("CastOnMultiple", R"("castOn": {"multiple": 0})",
             "c:1: /castOn/multiple: Found 0; expected a multiple from 1 to 100000000."),
        with("Gauge", R"("gauge": {"rows": 0})",
             "c:1: /gauge/rows: Found 0; expected a number above 0 and at most 1000."),
        with("GaugeText", R"("gauge": {"stitches": "22"})",
             "c:1: /gauge/stitches: Found \"22\"; expected a number above 0 and at most 1000.")),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Rows, ChartRefusal,
    testing::Values(
        Refused{"None", fileWith("\"width\": 3"),
                "c:1: The member \"rows\" is missing; expected a list of row texts."},
        Refused{"Empty", fileWith("\"rows\": []"),
                "c:1: /rows: Found no row; expected at least one."},
        Refused{"NoList", fileWith("\"rows\": \"k\""), "c:1: /rows: Found \"k\"; expected a list."},
        Refused{"NoText", fileWith("\"rows\": [\n\"k\",\n[\"k\"]]"),
                "c:3: /rows/1: Found a list; expected a text of stitch ids."},
        Refused{"NoColumn", fileWith(R"("rows": [" "])"),
                "c:1: /rows/0: Row 1 has no column; expected 1 to 4000."},
        Refused{"Width", fileWith(R"("width": 0, "rows": ["k"])"),
                "c:1: /width: Found 0; expected a number of columns from 1 to 4000."},
        Refused{"DifferFromTheWidth", fileWith("\"width\": 3, \"rows\": [\"k*3\",\n\"k*2 p*2\"]"),
                "c:2: /rows/1: Row 2 has 4 columns; expected 3, the width of the chart."},
        Refused{"DifferFromTheFirst", fileWith(R"("rows": ["k*3", "k"])"),
                "c:1: /rows/1: Row 2 has 1 column; expected 3, as in row 1."},
        Refused{"AreCalledByTheirNumber", fileWith(R"("uncharted": "purl", "rows": ["k*3", "k"])"),
                "c:1: /rows/1: Row 3 has 1 column; expected 3, as in row 1."},
        Refused{"UnknownMayBeWide", fileWith(R"("width": 4, "rows": ["c4over k"])"),
                "c:1: /rows/0: Row 1 has 2 columns; expected 4, the width of the chart (\"c4over\" "
                "is defined nowhere "
                "and counts as one column)."},
        Refused{
            "RunTooLong", fileWith(R"("width": 4, "rows": ["k*99999999999999999999"])"),
            "c:1: /rows/0: Row 1 has more than 4000 columns; expected 4, the width of the chart."},
        Refused{"RunOfNone", fileWith(R"("width": 4, "rows": ["k*4 p*0"])"),
                "c:1: /rows/0: Found \"p*0\"; expected a whole number from 1 after the *."},
        Refused{"RunOfNothing", fileWith(R"("width": 4, "rows": ["k* p"])"),
                "c:1: /rows/0: Found \"k*\"; expected a whole number from 1 after the *."},
        Refused{"RunOfText", fileWith(R"("width": 4, "rows": ["k*2x p"])"),
                "c:1: /rows/0: Found \"k*2x\"; expected a whole number from 1 after the *."},
        Refused{"BadId", fileWith(R"("width": 2, "rows": ["k \"p\""])"),
                "c:1: /rows/0: Found \"\\\"p\\\"\"; expected a stitch id of 1 to 64 bytes without "
                "blanks, quotes and "
                "*."}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Stitches, ChartRefusal,
    testing::Values(
        with("NoId", R"("stitches": [{"takes": 1, "makes": 1}])",
             "c:1: /stitches/0: The member \"id\" is missing; expected a text."),
        with("EmptyId", R"("stitches": [{"id": ""}])",
             "c:1: /stitches/0/id: Found an empty text; expected at least one character."),
        with("BadId", R"("stitches": [{"id": "a b", "takes": 1, "makes": 1}])",
             "c:1: /stitches/0/id: Found \"a b\"; expected a stitch id of 1 to 64 bytes without "
             "blanks, quotes and *."),
        with(
            "TwiceTheSameId",
            R"("stitches": [{"id": "a", "takes": 1, "makes": 1}, {"id": "a", "takes": 1, "makes": 1}])",
            "c:1: /stitches/1: A second stitch has the id \"a\"; expected ids that differ."),
        with("NoTakes", R"("stitches": [{"id": "a", "makes": 1}])",
             "c:1: /stitches/0: The member \"takes\" is missing; expected a number of loops."),
        with("Makes", R"("stitches": [{"id": "a", "takes": 1, "makes": 61}])",
             "c:1: /stitches/0/makes: Found 61; expected a number of loops from 0 to 60."),
        with("Span", R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "span": 0}])",
             "c:1: /stitches/0/span: Found 0; expected a number of cells from 1 to 60."),
        with("Lean", R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "lean": "up"}])",
             "c:1: /stitches/0/lean: Found \"up\"; expected one of \"none\", \"right\", \"left\", "
             "\"centred\"."),
        with("Kind", R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "kind": "unknown"}])",
             "c:1: /stitches/0/kind: Found \"unknown\"; expected one of \"plain\", \"yarn over\", "
             "\"increase\", "
             "\"decrease\", \"gather\", \"cross\", \"slip\", \"texture\", \"bind off\", \"cast "
             "on\", \"no stitch\"."),
        with("Wording", R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "right": "a"}])",
             "c:1: /stitches/0/right: Found \"a\"; expected an object."),
        with("Shaded", R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "shaded": 1}])",
             "c:1: /stitches/0/shaded: Found 1; expected true or false."),
        with(
            "GlyphPlace",
            R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "glyph": [{"at": [1], "tail": "z"}]}])",
            "c:1: /stitches/0/glyph/0/at: Found 1 item; expected two numbers, x and y."),
        with(
            "GlyphCoordinate",
            R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "glyph": [{"at": [1, 9999], "tail": "z"}]}])",
            "c:1: /stitches/0/glyph/0/at/1: Found 9999; expected a place in cell units from -20 to "
            "1220."),
        with(
            "GlyphTail",
            R"("stitches": [{"id": "a", "takes": 1, "makes": 1, "glyph": [{"at": [1, 1], "tail": "z\"/><a"}]}])",
            "c:1: /stitches/0/glyph/0/tail: Found \"z\\\"/><a\"; expected SVG path data of the "
            "commands l h v c q a z "
            "and plain numbers.")),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Layout, ChartRefusal,
    testing::Values(
        with("RepeatNoList", R"("repeats": {})",
             "c:1: /repeats: Found an object; expected a list."),
        with("RepeatNoName", R"("repeats": [{"right": 1, "left": 2}])",
             "c:1: /repeats/0: The member \"name\" is missing; expected a text."),
        with("RepeatNoEdge", R"("repeats": [{"name": "A", "right": 1}])",
             "c:1: /repeats/0: The member \"left\" is missing; expected a column."),
        with("RepeatBeyondTheChart", R"("repeats": [{"name": "A", "right": 1, "left": 4}])",
             "c:1: /repeats/0/left: Found 4; expected a column from 1 to 3."),
        with("RepeatBeforeTheChart", R"("repeats": [{"name": "A", "right": 0, "left": 3}])",
             "c:1: /repeats/0/right: Found 0; expected a column from 1 to 3."),
        with("RepeatTurnedRound", R"("repeats": [{"name": "A", "right": 3, "left": 2}])",
             "c:1: /repeats/0/right: The right edge is in column 3 and the left edge in column 2; "
             "expected the right "
             "one not beyond the left one."),
        with(
            "RepeatTwice",
            R"("repeats": [{"name": "A", "right": 1, "left": 1}, {"name": "A", "right": 2, "left": 2}])",
            "c:1: /repeats/1/name: A second repeat is called \"A\"; expected names that differ."),
        with("RepeatRow", R"("repeats": [{"name": "A", "right": 1, "left": 1, "lastRow": 3}])",
             "c:1: /repeats/0/lastRow: Found 3; expected the number of a drawn row from 1 to 2."),
        with("RowsTurnedRound",
             R"("repeats": [{"name": "A", "right": 1, "left": 1, "firstRow": 2, "lastRow": 1}])",
             "c:1: /repeats/0/lastRow: The first row is 2 and the last row 1; expected the last "
             "not below the first."),
        with("UnchartedRow", R"("uncharted": "knit", "rowRepeat": {"firstRow": 1, "lastRow": 2})",
             "c:1: /rowRepeat/lastRow: Found 2; expected the number of a drawn row, an odd one "
             "from 1 to 3."),
        with("RowRepeatRow", R"("rowRepeat": {"firstRow": 1})",
             "c:1: /rowRepeat: The member \"lastRow\" is missing; expected the number of a drawn "
             "row."),
        with("RowRepeatText", R"("rowRepeat": {"firstRow": "1", "lastRow": 2})",
             "c:1: /rowRepeat/firstRow: Found \"1\"; expected the number of a drawn row from 1 to "
             "2."),
        with("RowRepeatGrows", R"("rowRepeat": {"firstRow": 1, "lastRow": 2, "grows": 1.5})",
             "c:1: /rowRepeat/grows: Found 1.5; expected a number of stitches from -100000000 to "
             "100000000."),
        with(
            "JogBeyondTheChart",
            R"("repeats": [{"name": "A", "right": 2, "left": 3, "jogs": [{"row": 1, "left": 1}]}])",
            "c:1: /repeats/0/jogs/0: The jog moves the repeat to the columns 2 to 4; expected "
            "columns from right to "
            "left within 1 to 3."),
        with(
            "JogTwice",
            R"("repeats": [{"name": "A", "right": 2, "left": 3, "jogs": [{"row": 1, "right": 1}, {"row": 1}]}])",
            "c:1: /repeats/0/jogs/1/row: A second jog is on row 1; expected one a row."),
        with("PointColumn", R"("points": [{"name": "P", "column": 4}])",
             "c:1: /points/0/column: Found 4; expected a column from 1 to 3."),
        with("PointTwice", R"("points": [{"name": "P", "column": 1}, {"name": "P", "column": 2}])",
             "c:1: /points/1/name: A second point is called \"P\"; expected names that differ.")),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Sizes, ChartRefusal,
    testing::Values(
        with("StartBeyondTheChart", R"("sizes": [{"name": "M", "start": 4}])",
             "c:1: /sizes/0/start: Found 4; expected a column from 1 to 3."),
        with("NoSuchPoint", R"("sizes": [{"name": "M", "end": "Q"}])",
             "c:1: /sizes/0/end: Found \"Q\"; expected a column or the name of a point."),
        with("TurnedRound", R"("sizes": [{"name": "M", "start": 3, "end": 1}])",
             "c:1: /sizes/0/start: The start is in column 3 and the end in column 1; expected the "
             "start not beyond the "
             "end."),
        with("Twice", R"("sizes": [{"name": "M"}, {"name": "M"}])",
             "c:1: /sizes/1/name: A second size is called \"M\"; expected names that differ."),
        with("TimesNegative", R"("sizes": [{"name": "M", "times": {"A/B~": -1}}])",
             "c:1: /sizes/0/times/A~1B~0: Found -1; expected a number of times from 0 to 100000."),
        with("TimesNoObject", R"("sizes": [{"name": "M", "times": [6]}])",
             "c:1: /sizes/0/times: Found a list; expected an object with a number for each of at "
             "most 64 repeats."),
        with("Stitches", R"("sizes": [{"name": "M", "stitches": true}])",
             "c:1: /sizes/0/stitches: Found true; expected a number of stitches from 0 to "
             "100000000."),
        with("ChangeWithoutEnd",
             R"("sizes": [{"name": "M", "changes": [{"firstRow": 1, "lastRow": 1, "start": 1}]}])",
             "c:1: /sizes/0/changes/0: The member \"end\" is missing; expected a column or the "
             "name of a point."),
        with(
            "ChangesOverlap",
            R"("sizes": [{"name": "M", "changes": [{"firstRow": 2, "lastRow": 2, "start": 1, "end": 2},
                {"firstRow": 1, "lastRow": 2, "start": 1, "end": 3}]}])",
            "c:2: /sizes/0/changes/1: Two changes of this size share a row; expected changes on "
            "rows of their own."),
        with(
            "SubstitutionEdge",
            R"("sizes": [{"name": "M", "substitutions": [{"row": 1, "column": 1, "edge": "left", "stitch": "k"}]}])",
            "c:1: /sizes/0/substitutions/0/edge: Found \"left\"; expected one of \"start\", "
            "\"end\"."),
        with("SubstitutionStitch",
             R"("sizes": [{"name": "M", "substitutions": [{"row": 1, "column": 1}]}])",
             "c:1: /sizes/0/substitutions/0: The member \"stitch\" is missing; expected a stitch "
             "id."),
        with(
            "SubstitutionId",
            R"("sizes": [{"name": "M", "substitutions": [{"row": 1, "column": 1, "stitch": "k*2"}]}])",
            "c:1: /sizes/0/substitutions/0/stitch: Found \"k*2\"; expected a stitch id of 1 to 64 "
            "bytes without "
            "blanks, quotes and *.")),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Grading, ChartRefusal,
    testing::Values(
        with("Number", R"("grading": 2)", "c:1: /grading: Found 2; expected an object."),
        with("Rising", R"("grading": {"rising": "yes"})",
             "c:1: /grading/rising: Found \"yes\"; expected true or false."),
        with("Pieces", R"("grading": {"pieces": 0})",
             "c:1: /grading/pieces: Found 0; expected a number of pieces from 1 to 100."),
        with("Ease", R"("grading": {"leastEase": -1000.5})",
             "c:1: /grading/leastEase: Found -1000.5; expected a number from -1000 to 1000."),
        with("EaseTurnedRound", R"("grading": {"leastEase": 6, "mostEase": 5.5})",
             "c:1: /grading/leastEase: Found 6; expected a least ease of not more than the most, "
             "5.5."),
        with("ShoulderRow", R"("grading": {"shoulders": [{"row": 3, "right": 1, "left": 2}]})",
             "c:1: /grading/shoulders/0/row: Found 3; expected the number of a drawn row from 1 to "
             "2."),
        with("ShoulderTurnedRound",
             R"("grading": {"shoulders": [{"row": 1, "right": 3, "left": 2}]})",
             "c:1: /grading/shoulders/0/right: The right edge is in column 3 and the left edge in "
             "column 2; expected the right one not beyond the left one."),
        with("Body", R"("sizes": [{"name": "M", "body": -86}])",
             "c:1: /sizes/0/body: Found -86; expected a number above 0 and at most 10000."),
        with("SizeShoulder", R"("sizes": [{"name": "M", "shoulder": "12"}])",
             "c:1: /sizes/0/shoulder: Found \"12\"; expected a number of stitches from 0 to "
             "100000000.")),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Contradictions, ChartRefusal,
    testing::Values(
        with(
            "JogOutsideItsRepeat",
            R"("repeats": [{"name": "A", "right": 1, "left": 2, "firstRow": 2, "jogs": [{"row": 1, "left": 1}]}])",
            "c: Repeat A jogs on a row it does not cover."),
        with(
            "SubstitutionOfAnotherWidth",
            R"("sizes": [{"name": "M", "substitutions": [{"row": 1, "column": 1, "stitch": "c11r"}]}])",
            "c: Size M replaces the stitch in row 1, column 1, by one of another width.")),
    nameOf);

TEST(ChartRefusalPlace, IsALineWithoutAFileName) {
    EXPECT_EQ(readChart("{\n\"format\": 1}").error().place, "line 2, /format");
    EXPECT_EQ(readChart("{\n]").error().place, "line 2, column 1");
}

TEST(ChartRefusalCode, TellsWhatKindOfFault) {
    const auto codeOf = [](std::string_view members) {
        return readChart(fileWith(std::string(members) + R"(, "rows": ["k"])")).error().code;
    };
    EXPECT_EQ(readChart("{").error().code, ErrorCode::Malformed);
    EXPECT_EQ(readChart(R"({"format": "lacewright-chart", "version": 9})").error().code,
              ErrorCode::Unsupported);
    EXPECT_EQ(codeOf(R"("width": 4001)"), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(R"("width": "4001")"), ErrorCode::Malformed);
}

}  // namespace
}  // namespace lacewright
