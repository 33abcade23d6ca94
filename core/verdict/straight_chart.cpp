#include "core/verdict/straight_chart.h"

#include <algorithm>
#include <set>

#include "core/count/path.h"
#include "core/words/chart_from_rows.h"
#include "core/words/marker_places.h"

namespace lacewright {
namespace {

using Cells = std::vector<StitchIndex>;

constexpr std::size_t kMostMultiples = 12;

bool isGap(const Chart& chart, StitchIndex index) {
    return index != kCovered && (*chart.stitches)[index].kind == StitchKind::NoStitch;
}

// The rows as one flow, in which nothing is worked again by name.
WrittenPattern oncePattern(const WrittenPattern& pattern, std::size_t size) {
    WrittenPattern once = pattern;
    once.again.clear();
    settleMarkers(once);
    const bool fixed = once.castOn && once.castOn->of(size).multiple == 0;
    if (!fixed) return once;
    const int count = once.castOn->of(size).plus;
    const WrittenProof proof = proveWritten(once, size);
    std::set<std::int64_t> multiples;
    for (const WrittenRowProof& row : proof.rows) {
        for (const OwnCount& own : row.counted.own) {
            if (own.starred && own.takes > 1 && own.takes < count) multiples.insert(own.takes);
        }
    }
    WrittenPattern best = once;
    std::size_t least = proof.faulty.size();
    std::size_t tried = 0;
    for (const std::int64_t multiple : multiples) {
        if (++tried > kMostMultiples) break;
        const int each = static_cast<int>(multiple);
        WrittenPattern free = once;
        free.castOn = WrittenCastOn{Figure(each), Figure(count % each), {}};
        const std::size_t faults = proveWritten(free, size).faulty.size();
        if (faults > least) continue;
        least = faults;
        best = std::move(free);
    }
    return best;
}

bool worksWhateverItFinds(const WrittenRow& row, const WrittenRowProof& proof, const Row& drawn) {
    return proof.verdict == RowVerdict::Fits && !drawn.traits().hasShaping &&
           std::any_of(row.elements.begin(), row.elements.end(), [](const Element& element) {
               const auto* stretch = std::get_if<Stretch>(&element.what);
               return stretch != nullptr && !stretch->starred;
           });
}

// A row cut at its repeat, its gaps left out. Without a repeat all of it comes after.
struct CutCells {
    Cells before, box, after;
};

CutCells cutAt(const Chart& chart, int rowIndex) {
    CutCells cut;
    const Path path = pathOn(chart, rowIndex, nullptr);
    const bool hasBox = std::any_of(path.begin(), path.end(), [](auto& s) { return s.isBox(); });
    bool passed = !hasBox;
    for (const Segment& segment : path) {
        Cells& cells = segment.isBox() ? cut.box : passed ? cut.after : cut.before;
        for (int column = segment.first; column <= segment.last; ++column) {
            const StitchIndex cell = chart.row(rowIndex).at(column);
            if (!isGap(chart, cell)) cells.push_back(cell);
        }
        passed = passed || segment.isBox();
    }
    return cut;
}

Chart relaid(const Chart& drawn, const std::vector<int>& kept) {
    std::vector<CutCells> cuts;
    std::size_t before = 0, box = 0, after = 0;
    for (const int row : kept) {
        cuts.push_back(cutAt(drawn, row));
        before = std::max(before, cuts.back().before.size());
        box = std::max(box, cuts.back().box.size());
        after = std::max(after, cuts.back().after.size());
    }
    const StitchIndex gap = drawn.stitches->find("no-stitch").value();
    std::vector<RowPtr> rows;
    for (const CutCells& cut : cuts) {
        Cells cells(before - cut.before.size(), gap);
        cells.insert(cells.end(), cut.before.begin(), cut.before.end());
        cells.insert(cells.end(), cut.box.begin(), cut.box.end());
        cells.insert(cells.end(), box - cut.box.size(), gap);
        cells.insert(cells.end(), cut.after.begin(), cut.after.end());
        cells.insert(cells.end(), after - cut.after.size(), gap);
        rows.push_back(makeRow(std::move(cells), *drawn.stitches));
    }
    Chart chart;
    chart.stitches = drawn.stitches;
    chart.worked = drawn.worked;
    chart.uncharted = Uncharted::AsTheyPresent;
    chart.width = static_cast<int>(before + box + after);
    chart.rows = RowList(rows);
    chart.castOn = drawn.castOn;
    if (box > 0) {
        const int first = static_cast<int>(before) + 1;
        chart.repeats.push_back(
            {"A", first, first + static_cast<int>(box) - 1, 0, chart.height() - 1, {}, {}});
    }
    return chart;
}

}  // namespace

std::vector<int> workedColumns(const Chart& chart, int rowIndex, Side side) {
    std::vector<int> columns;
    for (int column = 1; column <= chart.width; ++column) {
        const StitchIndex cell = chart.row(rowIndex).at(column);
        if (cell != kCovered && !isGap(chart, cell)) columns.push_back(column);
    }
    if (side == Side::Wrong) std::reverse(columns.begin(), columns.end());
    return columns;
}

std::optional<StraightChart> straightChart(const WrittenPattern& pattern, std::size_t size) {
    const WrittenPattern once = oncePattern(pattern, size);
    const auto drawn = chartFromRows(once, size);
    if (!drawn || drawn->chart.repeats.size() > 1) return std::nullopt;
    const WrittenProof proof = proveWritten(once, size);
    if (static_cast<std::size_t>(drawn->chart.height()) != once.rows.size()) return std::nullopt;
    StraightChart straight;
    std::vector<int> kept;
    for (std::size_t i = 0; i < once.rows.size(); ++i) {
        const int row = static_cast<int>(i);
        if (worksWhateverItFinds(once.rows[i], proof.rows[i], drawn->chart.row(row))) continue;
        kept.push_back(row);
        straight.written.push_back(i);
    }
    if (kept.empty()) return std::nullopt;
    straight.chart = relaid(drawn->chart, kept);
    const auto isFirst = [&](std::size_t i) {
        return once.repeatFrom && once.rows[i].number >= *once.repeatFrom;
    };
    const auto first = std::find_if(straight.written.begin(), straight.written.end(), isFirst);
    if (first != straight.written.end()) {
        straight.chart.rowRepeat = RowRepeat{
            static_cast<int>(first - straight.written.begin()), straight.chart.height() - 1, 0, {}};
    }
    return straight;
}

}  // namespace lacewright
