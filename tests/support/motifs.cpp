#include "tests/support/motifs.h"

#include <algorithm>
#include <stdexcept>

#include "core/base/text.h"

namespace lacewright::test {
namespace {

StitchIndex stitchCalled(std::string_view id) {
    const auto found = builtInStitches()->find(id);
    if (!found) throw std::invalid_argument("no stitch " + std::string(id));
    return *found;
}

std::vector<StitchIndex> cellsFromTheRight(const std::string& text) {
    std::vector<StitchIndex> cells;
    for (const std::string_view word : splitWords(text)) {
        const auto star = word.find('*');
        const auto times =
            star == std::string_view::npos
                ? 1
                : static_cast<std::size_t>(std::stoi(std::string(word.substr(0, star))));
        const auto id = star == std::string_view::npos ? word : word.substr(star + 1);
        cells.insert(cells.end(), times, stitchCalled(id));
    }
    return cells;
}

Chart closedChart(const std::string& name, int edge,
                  const std::vector<std::vector<StitchIndex>>& rows) {
    Chart chart;
    chart.name = name;
    chart.width = static_cast<int>(rows.front().size());
    std::vector<RowPtr> built;
    for (const auto& cells : rows) built.push_back(makeRow(cells, *chart.stitches));
    chart.rows = RowList(built);
    const int last = chart.height() - 1;
    chart.repeats.push_back({"A", edge + 1, chart.width - edge, 0, last, {}, {}});
    chart.rowRepeat = RowRepeat{0, last, 0};
    chart.castOn =
        CastOn{static_cast<int>(chart.row(0).tally(edge + 1, chart.width - edge).takes), 2 * edge};
    return chart;
}

int below(std::mt19937& random, int end) {
    return static_cast<int>(random() % static_cast<unsigned>(end));
}

using Cells = std::vector<StitchIndex>;

// A yarn over and its decrease somewhere in the plain cells from..to (ends excluded).
void placePair(Cells& cells, int from, int to, std::mt19937& random) {
    std::vector<std::size_t> plain;
    for (int x = from; x < to; ++x) {
        if (cells[static_cast<std::size_t>(x)] == stitchCalled("k"))
            plain.push_back(static_cast<std::size_t>(x));
    }
    if (plain.size() < 2) return;
    std::shuffle(plain.begin(), plain.end(), random);
    cells[plain[0]] = stitchCalled("yo");
    cells[plain[1]] = stitchCalled(random() % 2 == 0 ? "k2tog" : "ssk");
}

StitchIndex mirrorOf(StitchIndex index) {
    const StitchCatalogue& stitches = *builtInStitches();
    const auto mirror = stitches.find(stitches[index].mirror);
    return mirror.value_or(index);
}

// The right half copied to the left one; the middle column, if any, stays.
void mirrorRightHalf(Cells& cells) {
    for (std::size_t x = 0; x < cells.size() / 2; ++x)
        cells[cells.size() - 1 - x] = mirrorOf(cells[x]);
}

Cells scatteredRow(int width, int pairs, std::mt19937& random) {
    Cells cells(static_cast<std::size_t>(width), stitchCalled("k"));
    for (int i = 0; i < pairs; ++i) placePair(cells, 0, width, random);
    return cells;
}

// Lines of yarn overs that move one column in every pattern row, the decrease beside.
class Diagonals {
 public:
    Diagonals(int width, std::mt19937& random) : width_(width) {
        const int lines = 1 + below(random, 3);
        for (int i = 0; i < lines; ++i) {
            lines_.push_back({below(random, width), random() % 2 == 0 ? 1 : -1});
        }
    }
    Cells row(int patternRow) const {
        Cells cells(static_cast<std::size_t>(width_), stitchCalled("k"));
        for (const Line& line : lines_) {
            const int x = line.start + line.step * patternRow;
            const std::size_t yarnOver = wrap(x);
            const std::size_t decrease = wrap(x + line.step);
            if (cells[yarnOver] != stitchCalled("k") || cells[decrease] != stitchCalled("k"))
                continue;
            cells[yarnOver] = stitchCalled("yo");
            cells[decrease] = stitchCalled(line.step > 0 ? "k2tog" : "ssk");
        }
        return cells;
    }

 private:
    struct Line {
        int start;
        int step;
    };
    std::size_t wrap(int x) const {
        return static_cast<std::size_t>(((x % width_) + width_) % width_);
    }
    int width_;
    std::vector<Line> lines_;
};

std::vector<Cells> patternRows(Symmetry symmetry, int width, int rows, std::mt19937& random) {
    const bool mirrored = symmetry == Symmetry::Mirror || symmetry == Symmetry::MirrorAndDiagonals;
    const bool lines = symmetry == Symmetry::Diagonals || symmetry == Symmetry::MirrorAndDiagonals;
    const Diagonals diagonals(mirrored ? width / 2 : width, random);
    const int tile = width / 3;
    std::vector<Cells> result;
    for (int row = 0; row < rows; ++row) {
        Cells cells;
        if (lines) {
            cells = diagonals.row(row);
        } else if (symmetry == Symmetry::Translation) {
            cells = scatteredRow(tile, 1 + below(random, 2), random);
            cells.insert(cells.end(), cells.begin(), cells.begin() + tile);
            cells.insert(cells.end(), cells.begin(), cells.begin() + tile);
        } else {
            cells = scatteredRow(mirrored ? width / 2 : width, 1 + below(random, mirrored ? 2 : 4),
                                 random);
        }
        if (mirrored) {
            const bool middle = width % 2 == 1;
            cells.resize(static_cast<std::size_t>(width), stitchCalled("k"));
            mirrorRightHalf(cells);
            const auto centre = static_cast<std::size_t>(width / 2);
            if (middle && random() % 3 == 0 && cells[centre - 1] == stitchCalled("k")) {
                cells[centre] = stitchCalled("s2kp");
                cells[centre - 1] = cells[centre + 1] = stitchCalled("yo");
            }
        }
        result.push_back(std::move(cells));
    }
    return result;
}

}  // namespace

Chart motif(const std::string& name, int edge, const std::vector<std::string>& rows) {
    std::vector<Cells> cells;
    for (const std::string& row : rows) cells.push_back(cellsFromTheRight(row));
    return closedChart(name, edge, cells);
}

std::vector<Chart> handbookMotifs() {
    std::vector<Chart> charts;
    const std::string lambert = ", Miss Lambert, My Knitting Book, 1843, London";
    const std::string shawlPlain = "2*p 6*k 2*p";
    charts.push_back(
        motif("Chevron" + lambert, 0,
              {"8*k", "k2tog 3*k yo 3*k", "8*k", "k2tog 3*k yo 3*k", "8*k", "k2tog 3*k yo 3*k"}));
    charts.push_back(
        motif("Vandyke" + lambert, 0, {"10*k", "10*k", "10*k", "yo 2*k k2tog p k2tog 2*k yo k"}));
    charts.push_back(motif("Diamond" + lambert, 0,
                           {"yo k yo k2tog 3*k k2tog", "8*k", "yo 3*k yo k2tog k k2tog", "8*k",
                            "yo 5*k yo sk2p", "8*k", "k2tog 3*k k2tog yo k yo", "8*k",
                            "k2tog k k2tog yo 3*k yo", "8*k", "yo 3*k yo k2tog k k2tog"}));
    charts.push_back(motif(
        "Shell" + lambert, 0,
        {"4*k2tog yo k yo k yo k yo k yo k yo k yo k yo k 4*k2tog p", "25*k", "25*k", "25*k"}));
    charts.push_back(motif("Diagonal check bag" + lambert, 0,
                           {"p yo skp 4*k p", "p 6*k p", "p k yo skp 3*k p", "p 6*k p",
                            "p 2*k yo skp 2*k p", "p 6*k p", "p 3*k yo skp k p", "p 6*k p"}));
    charts.push_back(
        motif("Hem stitch bag" + lambert, 0,
              {"2*k yo k2tog k yo k2tog p yo skp 3*p", "k2tog yo k k2tog yo 2*k 2*p yo skp 2*p",
               "2*k yo k2tog k yo k2tog 3*p yo skp p", "k2tog yo k k2tog yo 2*k 4*p yo skp",
               "2*k yo k2tog k yo k2tog 6*p", "k2tog yo k k2tog yo 2*k p yo skp 3*p",
               "2*k yo k2tog k yo k2tog 2*p yo skp 2*p", "k2tog yo k k2tog yo 2*k 3*p yo skp p",
               "2*k yo k2tog k yo k2tog 4*p yo skp", "k2tog yo k k2tog yo 2*k 6*p"}));
    charts.push_back(
        motif("Stripe bag" + lambert, 0, {"yo 3*p yo sk2p", "3*p 3*k", "3*p 3*k", "3*p 3*k"}));
    charts.push_back(
        motif("Shetland shawl" + lambert, 2,
              {"2*k yo k yo k sk2p k 2*k", shawlPlain, "2*k yo 3*k yo sk2p 2*k", shawlPlain,
               "2*k k sk2p k yo k yo 2*k", shawlPlain, "2*k sk2p yo 3*k yo 2*k", shawlPlain}));
    charts.push_back(
        motif("Fig. 386, Th. de Dillmont, Encyclopedia of Needlework, 1886, Mulhouse", 0,
              {"4*p", "4*p", "yo k2tog 2*k", "4*p", "k yo k2tog k", "4*p", "2*k yo k2tog", "4*p",
               "4*p", "4*k", "4*k", "p2tog yo p2tog yo", "4*k", "4*k"}));
    charts.push_back(
        motif("Peacock's tail, Isabella Beeton, Beeton's Book of Needlework, 1870, London", 2,
              {"2*k 2*k yo k yo k yo k yo k yo k yo 2*k 2*k", "2*p 2*k 11*p 2*k 2*p",
               "2*k k2tog 11*k k2tog 2*no-stitch 2*k", "2*p k2tog 9*k k2tog 4*no-stitch 2*p",
               "2*k k2tog 7*k k2tog 6*no-stitch 2*k"}));
    return charts;
}

const char* nameOf(Symmetry symmetry) {
    switch (symmetry) {
        case Symmetry::None:
            return "no symmetry";
        case Symmetry::Mirror:
            return "mirror";
        case Symmetry::Diagonals:
            return "diagonals";
        case Symmetry::MirrorAndDiagonals:
            return "mirror and diagonals";
        case Symmetry::Translation:
            return "three copies";
    }
    return "";
}

Chart randomMotif(Symmetry symmetry, std::mt19937& random) {
    int width = 10 + below(random, 11);
    if (symmetry == Symmetry::Translation) width = 3 * (5 + below(random, 4));
    const auto pattern = patternRows(symmetry, width, 4 + below(random, 5), random);
    std::vector<Cells> rows;
    const Cells edge(2, stitchCalled("k"));
    for (const Cells& cells : pattern) {
        Cells row = edge;
        row.insert(row.end(), cells.begin(), cells.end());
        row.insert(row.end(), edge.begin(), edge.end());
        rows.push_back(row);
        rows.emplace_back(row.size(), stitchCalled("k"));
    }
    return closedChart(nameOf(symmetry), 2, rows);
}

}  // namespace lacewright::test
