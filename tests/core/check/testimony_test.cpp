#include "core/check/testimony.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/motifs.h"

namespace lacewright {
namespace {

using Letters = std::vector<Alphabet::Letter>;

// A chart as its symmetries see it.
struct Witnessed {
    explicit Witnessed(const Chart& chart)
        : alphabet(alphabetOf(chart)), grid(chart, alphabet, 0, chart.height() - 1) {
        for (SymmetryMap& map : symmetriesOf(grid, alphabet, regionsOf(chart, grid)))
            testimonies.emplace_back(grid, alphabet, std::move(map));
    }
    Letters row(int y) const {
        Letters letters;
        for (int x = 0; x < grid.width(); ++x) letters.push_back(grid.at(x, y));
        return letters;
    }
    Alphabet::Letter letter(const char* id) const {
        return alphabet.letterOf[builtInStitches()->find(id).value()];
    }
    const Testimony& of(bool mirror, int dx, int dy) const {
        return *std::find_if(testimonies.begin(), testimonies.end(), [&](const Testimony& t) {
            return t.map().mirror == mirror && t.map().dx == dx && t.map().dy == dy;
        });
    }
    Alphabet alphabet;
    LetterGrid grid;
    std::vector<Testimony> testimonies;
};

// Leaves that open row by row, mirrored about column 6.
std::vector<std::string> leaf(const std::string& fifth) {
    return {
        "k yo ssk 5*k k2tog yo k", "11*k", "2*k yo ssk 3*k k2tog yo 2*k", "11*k", fifth, "11*k"};
}
constexpr auto kFifth = "3*k yo ssk k k2tog yo 3*k";

TEST(Testimony, AMirrorSpeaksForTheLeanOfTheOtherSide) {
    // The left decrease of row 5 is drawn as a knit stitch.
    const Witnessed chart(test::motif("", 0, leaf("3*k yo ssk k k yo 3*k")));
    const Testimony& mirror = chart.of(true, 10, 0);
    std::vector<float> weights(11 * static_cast<std::size_t>(chart.alphabet.size()), 0.0F);
    const auto view = mirror.viewOn(4);
    mirror.addTo(4, view, weights);
    const auto at = [&](int x, const char* id) {
        return weights[static_cast<std::size_t>(x * chart.alphabet.size() + chart.letter(id))];
    };
    EXPECT_GT(at(6, "k2tog"), at(6, "k") + 1);
    EXPECT_GT(at(6, "k2tog"), at(6, "ssk") + 1);
    // The axis is its own image: nothing is said of it.
    EXPECT_EQ(at(5, "k2tog"), at(5, "k"));
}

TEST(Testimony, ARowDrawnRightWeighsMoreThanWithOneCellWrong) {
    const Witnessed chart(test::motif("", 0, leaf(kFifth)));
    const Testimony& mirror = chart.of(true, 10, 0);
    const auto view = mirror.viewOn(4);
    const Letters right = chart.row(4);
    for (std::size_t x = 0; x < right.size(); ++x) {
        if (x == 5) continue;
        Letters wrong = right;
        wrong[x] = right[x] == 0 ? chart.letter("yo") : Alphabet::kGround;
        EXPECT_LT(mirror.weightOf(view, wrong), mirror.weightOf(view, right)) << x;
    }
}

// What is added for one letter is what the whole row then weighs more.
TEST(Testimony, CellsAndRowsAreWeighedAlike) {
    for (const Chart& motif : test::handbookMotifs()) {
        const Witnessed chart(motif);
        const auto letters = static_cast<std::size_t>(chart.alphabet.size());
        for (const Testimony& testimony : chart.testimonies) {
            for (int y = 0; y < chart.grid.height(); ++y) {
                const auto view = testimony.viewOn(y);
                const Letters drawn = chart.row(y);
                std::vector<float> weights(drawn.size() * letters, 0.0F);
                testimony.addTo(y, view, weights);
                const double asDrawn = testimony.weightOf(view, drawn);
                for (std::size_t x = 0; x < drawn.size(); ++x) {
                    if (drawn[x] < 0) continue;
                    const float* cell = &weights[x * letters];
                    for (std::size_t z = 0; z < letters; ++z) {
                        Letters other = drawn;
                        other[x] = static_cast<Alphabet::Letter>(z);
                        EXPECT_NEAR(cell[z] - cell[drawn[x]],
                                    testimony.weightOf(view, other) - asDrawn, 0.001)
                            << motif.name << ", row " << y + 1 << ", column " << x + 1;
                    }
                }
            }
        }
    }
}

TEST(Testimony, ASymmetryThatTheOtherRowsBreakIsHardlyBelieved) {
    const Witnessed kept(test::motif("", 0, leaf(kFifth)));
    const double believed = kept.of(true, 10, 0).viewOn(4).holds;
    EXPECT_GT(believed, 0.8);
    // The mirror of row 5 is the same, but rows 1 and 3 do not keep it.
    const Chart broken =
        test::motif("", 0, {"k yo k ssk 7*k", "11*k", "2*k yo ssk 7*k", "11*k", kFifth, "11*k"});
    const Alphabet alphabet = alphabetOf(broken);
    const LetterGrid grid(broken, alphabet, 0, broken.height() - 1);
    SymmetryMap mirror{regionsOf(broken, grid).front(), true, 10, 0, 0};
    EXPECT_LT(Testimony(grid, alphabet, mirror).viewOn(4).holds, 0.6);
}

}  // namespace
}  // namespace lacewright
