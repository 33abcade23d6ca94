#include "tests/core/words/reading.h"

// Traps of written rows. Expected counts follow from the definitions of the stitches (Craft Yarn
// Council abbreviations) unless said otherwise.
namespace lacewright {
namespace {

struct Line {
    const char* text;
    const char* forms;  // takes / makes
};

class RowText : public testing::TestWithParam<Line> {};

TEST_P(RowText, CountsAsAKnitterWould) {
    EXPECT_EQ(formsOfRow(GetParam().text), GetParam().forms);
}

INSTANTIATE_TEST_SUITE_P(
    Stitches, RowText,
    testing::Values(
        Line{"k3, p2", "5 / 5"}, Line{"k 3, p 2.", "5 / 5"}, Line{"K3, P2, Yo, K2TOG", "7 / 7"},
        Line{"k three, p two", "5 / 5"}, Line{"knit three, purl two", "5 / 5"},
        Line{"3 k, 2 p", "5 / 5"}, Line{"2 plain, 1 purl", "3 / 3"},
        Line{"k3 sts, p2 sts", "5 / 5"}, Line{"k next 3 sts, p the next st", "4 / 4"},
        Line{"k2 p2", "4 / 4"}, Line{"k1-p1-k1", "3 / 3"}, Line{"k. 2, p. 1.", "3 / 3"},
        Line{"k2tog, k 2 tog, k2 tog, k2-tog", "8 / 4"},
        Line{"k2 together, knit 2 together", "4 / 2"},
        Line{"k2tog tbl, k2togtbl, p2tog tbl", "6 / 3"}, Line{"k next 2 sts tog", "2 / 1"},
        Line{"2 tog", "2 / 1"}, Line{"k1 tbl, p1tbl, k tbl", "3 / 3"},
        Line{"sl 1, k1, psso", "2 / 1"}, Line{"sl1, k2tog, psso", "3 / 1"},
        Line{"sl 1 - k2tog - psso", "3 / 1"}, Line{"sl2, k1, p2sso", "3 / 1"},
        Line{"sl 1, k2, pass sl st over both", "3 / 2"}, Line{"sl3, k2tog, p3sso", "5 / 1"},
        Line{"sl 1, k1, pass the slipped stitch over", "2 / 1"},
        Line{"skp, skpo, ssk, s2kp2, sk2p, cdd", "15 / 6"},
        Line{"sl 1 wyif, sl 1 wyib, sl 2 purlwise", "4 / 4"},
        Line{"yo, yrn, yon, yfrn, wl fwd", "0 / 5"}, Line{"yo twice, k1", "1 / 3"},
        Line{"yo 3 times", "0 / 3"}, Line{"yo2, k1", "1 / 3"}, Line{"m1l, m1r, m1p, m1", "0 / 4"},
        Line{"kfb, k1f&b, pfb", "3 / 6"}, Line{"inc in next st", "1 / 2"},
        Line{"bo 3, k5", "8 / 5"}, Line{"cast off 3, bind off 2", "5 / 0"},
        Line{"c6f, c4b, 2/1 rc, 1/1 LPC", "15 / 15"}, Line{"mb, pm, sm, k1, w&t, turn", "2 / 2"},
        Line{"drop 2, k1", "3 / 1"}));

INSTANTIATE_TEST_SUITE_P(
    Groups, RowText,
    testing::Values(Line{"[k2tog, yo] 3 times", "6 / 6"}, Line{"(k2tog, yo) twice", "4 / 4"},
                    Line{"(k2tog, yo) x 3, (k1) x3", "9 / 9"},
                    Line{"(k2tog, yo) \xC3\x97 3", "6 / 6"},
                    Line{"{k1, [yo, k2tog] 2 times} three times", "15 / 15"},
                    Line{"[[[k1, yo] twice, p1] 2 times, k1] 2 times", "14 / 22"},
                    Line{"(k1, yo, k1) in next st", "1 / 3"}, Line{"(k1, p1) in same st", "1 / 2"},
                    Line{"(k1, yo, k1, yo, k1) all into the next stitch", "1 / 5"},
                    Line{"(k3tog, yo, k3tog) in next 3 sts", "3 / 3"},
                    Line{"(k1, yo, k1) in each of next 3 sts", "3 / 9"},
                    Line{"([k1, yo] 3 times, k1) in next st", "1 / 7"},
                    Line{"rep (k1, yo) 3 times", "3 / 6"}, Line{"k1, yo, k1 in next st", "1 / 3"},
                    Line{"k1, p1 in next st", "1 / 2"}));

INSTANTIATE_TEST_SUITE_P(
    Stretches, RowText,
    testing::Values(
        Line{"k to end", "n / n"}, Line{"knit.", "n / n"}, Line{"Purl", "n / n"},
        Line{"k all", "n / n"}, Line{"p across", "n / n"}, Line{"knit every stitch", "n / n"},
        Line{"purl back", "n / n"}, Line{"sl 1, knit", "n + 1 / n + 1"},
        Line{"k2, p to last 2 sts, k2", "n + 4 / n + 4"}, Line{"p to last st, k1", "n + 1 / n + 1"},
        Line{"k until 3 sts remain, k2tog, k1", "n + 3 / n + 2"}, Line{"bind off all sts", "n / 0"},
        Line{"k1, p1 rib", "n / n"}, Line{"work in k2, p2 rib to last st, k1", "n + 1 / n + 1"},
        Line{"work in pattern to end", "n / n"}, Line{"asis to end", "n / n"},
        Line{"k3, work 5 sts in moss st, k3", "11 / 11"},
        Line{"k the knits and p the purls", "n / n"}, Line{"[yo, k2tog] to end", "2n / 2n"},
        Line{"(k1, p1) to last 3 sts, k3", "2n + 3 / 2n + 3"}));

INSTANTIATE_TEST_SUITE_P(
    Stars, RowText,
    testing::Values(
        Line{"k1, *yo, k2tog; rep from * to end", "2n + 1 / 2n + 1"},
        Line{"k1, * yo, k2tog, rep from * to last st, k1", "2n + 2 / 2n + 2"},
        Line{"k1, *yo, k2tog; repeat from * to last 3 stitches; k3.", "2n + 4 / 2n + 4"},
        Line{"*yo, k2tog; rep from * across", "2n / 2n"},
        Line{"*yo, k2tog; rep from * around.", "2n / 2n"},
        Line{"*yo, k2tog; rep from * to end of row", "2n / 2n"},
        Line{"*yo, k2tog, rep from * until 1 st remains, k1", "2n + 1 / 2n + 1"},
        Line{"*k2, p2*; rep from * to * to end", "4n / 4n"},
        Line{"*k2, p2; rep between * *", "4n / 4n"},
        Line{"*k2, p2*, rep between *s to last 2 sts, k2", "4n + 2 / 4n + 2"},
        Line{"k2, *yo, k2tog*, k2", "2n + 4 / 2n + 4"}, Line{"*yo, k2tog* 3 times, k1", "7 / 7"},
        Line{"*k2, p2; rep from * 3 more times", "16 / 16"},
        Line{"*k2, p2; rep from * three times more", "16 / 16"},
        Line{"*k2, p2; rep from * once more", "8 / 8"},
        Line{"*k2, p2; rep from * 3 times in all", "12 / 12"},
        Line{"*k2, p2; rep from * across, end k2", "4n + 2 / 4n + 2"},
        Line{"*k2, p2; rep from * to end, ending k1", "4n + 1 / 4n + 1"},
        Line{"*k2, p3; rep from * to end, ending last rep p1 instead of p3", "5n + 3 / 5n + 3"},
        Line{"*k2, yo, k2tog; rep from *, ending k2 instead of k2tog", "4n + 4 / 4n + 5"},
        Line{"*k2, **yo, k2tog; rep from ** 2 more times, k1; rep from * to end", "9n / 9n"},
        Line{"*k2, # yo, k2tog; rep from # once more; rep from * to end", "6n / 6n"},
        Line{"*k2, ** yo, k2tog; rep from * to end, ending last rep at **", "4n + 2 / 4n + 2"},
        Line{"k1, p1, rep to end", "2n / 2n"}, Line{"(yo, k2tog), rep to end", "2n / 2n"},
        Line{"k1, *yo, k2tog*, k3, rep from * to * once more", "8 / 8"},
        Line{"*k1, yo, k2tog. Rep from * to last 2 sts, k2.", "3n + 2 / 3n + 2"}));

INSTANTIATE_TEST_SUITE_P(
    Print, RowText,
    testing::Values(Line{"k1,\xC2\xA0*yo, k2tog; rep from\xC2\xA0* to end", "2n + 1 / 2n + 1"},
                    Line{"k1\xE2\x80\x93p1, \xE2\x80\x9Ck2\xE2\x80\x9D", "4 / 4"},
                    Line{"\xE2\x88\x97yo, k2tog; rep from \xE2\x88\x97 to end", "2n / 2n"},
                    Line{"sl1\xE2\x80\x94k1\xE2\x80\x94psso", "2 / 1"}));

TEST(RowWording, OlderBooksMakeOneWithAnOver) {
    EXPECT_EQ(formsOfRow("k2, m1, n, o, k1", Wording::Older), "5 / 6");
    const ReadRows older = readWritten("Row 1: m1, k1", {Wording::Older});
    EXPECT_EQ(std::get<Working>(older.pattern.rows[0].elements[0].what).rightId, "yo");
    const ReadRows modern = readWritten("Row 1: m1, k1");
    EXPECT_EQ(std::get<Working>(modern.pattern.rows[0].elements[0].what).rightId, "m1");
    EXPECT_EQ(errorsOf("Wording: older\nRow 1: n, o, k1"), "");
}

TEST(RowStitches, StandForTheCatalogueOnBothSides) {
    const ReadRows read = readWritten("Row 1: p1, k2tog, k1 tbl, sl 1 wyif, p2tog tbl");
    std::vector<std::string> right;
    std::vector<std::string> wrong;
    for (const Element& element : read.pattern.rows[0].elements) {
        right.push_back(std::get<Working>(element.what).rightId);
        wrong.push_back(std::get<Working>(element.what).wrongId);
    }
    EXPECT_EQ(right, (std::vector<std::string>{"p", "k2tog", "ktbl", "slwyf", "p2togtbl"}));
    EXPECT_EQ(wrong, (std::vector<std::string>{"k", "p2tog", "ptbl", "slwyb", "k2togtbl"}));
}

}  // namespace
}  // namespace lacewright
