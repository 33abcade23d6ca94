#include "core/verdict/straight_chart.h"

#include <algorithm>
#include <compare>
#include <map>

#include "core/count/path.h"
#include "core/words/chart_from_rows.h"
#include "core/words/marker_places.h"
#include "core/words/size_scope.h"

namespace lacewright {
namespace {

using Cells = std::vector<StitchIndex>;

constexpr std::size_t kMostMultiples = 12;  // tried
constexpr int kMostOff = 2;                 // loops by which a starred repeat may be wrong

bool isGap(const Chart& chart, StitchIndex index) {
    return index != kCovered && (*chart.stitches)[index].kind == StitchKind::NoStitch;
}

// A starred repeat of a row, and what the row takes outside it.
struct Starred {
    std::int64_t takes = 0;
    std::int64_t makes = 0;
    std::int64_t outside = 0;
    bool faulty = false;
};

std::vector<Starred> starredIn(const WrittenProof& proof) {
    std::vector<Starred> all;
    for (const WrittenRowProof& row : proof.rows) {
        for (const OwnCount& own : row.counted.own) {
            if (!own.starred) continue;
            all.push_back({own.takes, own.makes, row.counted.forms.takes.constant(),
                           row.verdict != RowVerdict::Fits});
        }
    }
    return all;
}

// What a repeat may be meant to take: what a row says, and a little more or less where that row
// does not fit. First those that the cast-on is made of, as most rows say; then those that leave a
// faulty row with as many loops as it takes, and those that are the least off.
std::vector<int> multiplesOf(int count, const std::vector<Starred>& all) {
    struct Rank {
        int rows = 0;
        int balanced = 0;
        int off = -kMostOff;  // negative, so that more is better
        auto operator<=>(const Rank&) const = default;
    };
    std::map<int, Rank> ranks;
    for (const Starred& starred : all) {
        const int most = starred.faulty ? kMostOff : 0;
        for (int off = -most; off <= most; ++off) {
            const std::int64_t each = starred.takes + off;
            if (each < 2 || each >= count || (count - starred.outside) % each != 0) continue;
            Rank& rank = ranks[static_cast<int>(each)];
            if (off == 0) ++rank.rows;
            if (each == starred.makes) ++rank.balanced;
            rank.off = std::max(rank.off, -std::abs(off));
        }
    }
    std::vector<int> multiples;
    for (const auto& [each, rank] : ranks) multiples.push_back(each);
    std::stable_sort(multiples.begin(), multiples.end(),
                     [&](int a, int b) { return std::pair(ranks[a], a) > std::pair(ranks[b], b); });
    if (multiples.size() > kMostMultiples) multiples.resize(kMostMultiples);
    return multiples;
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
    std::optional<WrittenPattern> best;
    std::size_t least = proof.faulty.size();
    for (const int each : multiplesOf(count, starredIn(proof))) {
        WrittenPattern free = once;
        free.castOn = WrittenCastOn{Figure(each), Figure(count % each), {}};
        const std::size_t faults = proveWritten(free, size).faulty.size();
        if (best ? faults >= least : faults > least) continue;
        least = faults;
        best = std::move(free);
    }
    return best ? std::move(*best) : once;
}

bool worksWhateverItFinds(const WrittenRow& row, const WrittenRowProof& proof, const Row& drawn) {
    return proof.verdict == RowVerdict::Fits && !drawn.traits().hasShaping &&
           std::any_of(row.elements.begin(), row.elements.end(), [](const Element& element) {
               const auto* stretch = std::get_if<Stretch>(&element.what);
               return stretch != nullptr && !stretch->starred;
           });
}

// A row cut at its repeats, its gaps left out: from the right what stands outside and what within
// them by turns. A row without repeats is all behind the last.
using Strips = std::vector<Cells>;

Strips stripsOf(const Chart& chart, int rowIndex) {
    Strips strips(2 * chart.repeats.size() + 1);
    const Path path = pathOn(chart, rowIndex, nullptr);
    const bool hasBox = std::any_of(path.begin(), path.end(), [](auto& s) { return s.isBox(); });
    std::size_t at = hasBox ? 0 : strips.size() - 1;
    for (const Segment& segment : path) {
        if (segment.isBox()) at = 2 * static_cast<std::size_t>(segment.repeat) + 1;
        for (int column = segment.first; column <= segment.last; ++column) {
            const StitchIndex cell = chart.row(rowIndex).at(column);
            if (!isGap(chart, cell)) strips[at].push_back(cell);
        }
        if (segment.isBox()) ++at;
    }
    return strips;
}

// `room`: places of each part for stitches that a row may lack, in the widest row as well.
Chart relaid(const Chart& drawn, const std::vector<int>& kept, int room) {
    std::vector<Strips> rowStrips;
    std::vector<std::size_t> widths(2 * drawn.repeats.size() + 1, 0);
    for (const int row : kept) {
        const Strips& strips = rowStrips.emplace_back(stripsOf(drawn, row));
        for (std::size_t i = 0; i < widths.size(); ++i)
            widths[i] = std::max(widths[i], strips[i].size());
    }
    for (std::size_t& width : widths) width += width > 0 ? static_cast<std::size_t>(room) : 0;
    const StitchIndex gap = drawn.stitches->find("no-stitch").value();
    std::vector<RowPtr> rows;
    for (const Strips& strips : rowStrips) {
        Cells cells;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const std::size_t gaps = widths[i] - strips[i].size();
            if (i == 0) cells.insert(cells.end(), gaps, gap);  // the edge hangs over at the right
            cells.insert(cells.end(), strips[i].begin(), strips[i].end());
            if (i > 0) cells.insert(cells.end(), gaps, gap);
        }
        rows.push_back(makeRow(std::move(cells), *drawn.stitches));
    }
    Chart chart;
    chart.stitches = drawn.stitches;
    chart.worked = drawn.worked;
    chart.uncharted = Uncharted::AsTheyPresent;
    chart.rows = RowList(rows);
    chart.castOn = drawn.castOn;
    chart.width = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const int first = chart.width + 1;
        chart.width += static_cast<int>(widths[i]);
        if (i % 2 == 1 && widths[i] > 0)
            chart.repeats.push_back(
                {drawn.repeats[i / 2].name, first, chart.width, 0, chart.height() - 1, {}, {}});
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

std::optional<StraightChart> straightChart(const WrittenPattern& pattern, std::size_t size,
                                           std::optional<int> room) {
    if (!pattern.pieces.empty() || differsInRows(pattern)) return std::nullopt;
    const WrittenPattern once = oncePattern(pattern, size);
    const auto drawn = chartFromRows(once, size);
    if (!drawn) return std::nullopt;
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
    straight.chart = relaid(drawn->chart, kept, room.value_or(proof.knittable ? 0 : 1));
    if (straight.chart.width < 1) return std::nullopt;  // rows without any stitch
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
