#include "core/words/chart_from_rows.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "core/base/text.h"
#include "core/words/cut_rows.h"
#include "core/words/rows_on_grid.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostDrawnRows = kMaxRows;
constexpr std::int64_t kDrawnRepeats = 2;  // where rows are drawn in full instead of with a box
constexpr std::size_t kMostMultiples = 12;

Error refused(const std::string& sentence) {
    return {ErrorCode::Refused, sentence, {}};
}

// Rows as they are worked one after the other, those worked again included, with the sides that a
// chart gives them.
struct WrittenOut {
    WrittenPattern pattern;
    Uncharted uncharted = Uncharted::None;
    std::vector<std::string> remarks;
};

// A text as a chart may hold it: bytes that are no UTF-8 become question marks.
std::string chartText(std::string text) {
    if (text.size() > kMaxTextLength) text.resize(kMaxTextLength);
    if (isUtf8(text)) return text;
    for (char& c : text) {
        if (static_cast<unsigned char>(c) >= 0x80) c = '?';
    }
    return text;
}

bool onlyOddNumbers(const std::vector<WrittenRow>& rows) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].number != 2 * static_cast<int>(i) + 1) return false;
    }
    return rows.size() > 1;
}

void append(WrittenOut& out, const WrittenPattern& pattern, int first, int last) {
    for (const WrittenRow& row : pattern.rows) {
        if (row.number < first || row.number > last) continue;
        if (out.pattern.rows.size() >= kMostDrawnRows) return;
        out.pattern.rows.push_back(row);
    }
}

WrittenOut writtenOut(const WrittenPattern& pattern, std::size_t size) {
    WrittenOut out{pattern, Uncharted::None, {}};
    out.pattern.rows.clear();
    out.pattern.again.clear();
    std::size_t again = 0;
    for (const WrittenRow& row : pattern.rows) {
        append(out, pattern, row.number, row.number);
        for (; again < pattern.again.size() && pattern.again[again].after <= row.number; ++again) {
            const RowsAgain& rows = pattern.again[again];
            for (int pass = 0; pass < rows.times.of(size); ++pass)
                append(out, pattern, rows.first, rows.last);
        }
    }
    auto& rows = out.pattern.rows;
    if (pattern.again.empty() && onlyOddNumbers(rows)) out.uncharted = Uncharted::AsTheyPresent;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int charted = out.uncharted == Uncharted::None ? static_cast<int>(i) + 1
                                                             : 2 * static_cast<int>(i) + 1;
        if (pattern.again.empty() && rows[i].number != charted && out.remarks.empty()) {
            out.remarks.push_back("Row " + std::to_string(rows[i].number) + " of the text is row " +
                                  std::to_string(charted) + " of the chart.");
        }
        if (pattern.worked == Worked::InTheRound) {
            rows[i].side = Side::Right;
        } else if (i > 0) {
            const bool turn = out.uncharted == Uncharted::None;
            const Side other = rows[i - 1].side == Side::Right ? Side::Wrong : Side::Right;
            const Side side = turn ? other : rows[i - 1].side;
            if (side != rows[i].side) {
                out.remarks.push_back("Row " + std::to_string(rows[i].number) + " is drawn as a " +
                                      (side == Side::Right ? "right" : "wrong") +
                                      "-side row, since the work is turned after every row.");
            }
            rows[i].side = side;
        }
    }
    return out;
}

struct Drawn {
    ChartFromRows result;
    std::optional<std::int64_t> times;  // of the box, where the count is fixed
    std::int64_t count = 0;             // the fixed count
};

class Drawer {
 public:
    Drawer(const WrittenPattern& pattern, std::size_t size, std::int64_t leastTimes)
        : out_(writtenOut(pattern, size)), size_(size), leastTimes_(leastTimes) {}

    Result<Drawn> run() {
        if (out_.pattern.rows.empty()) return refused("There are no rows to draw.");
        const WrittenProof proof = proveWritten(out_.pattern, size_);
        const bool fixed = proof.castOn && proof.castOn->multiple == 0;
        if (fixed && proof.knittable) {
            if (auto drawn = withFoundBox(proof)) return std::move(*drawn);
        }
        Result<std::optional<CutRows>> cut = cutRows(out_.pattern, proof, size_);
        if (!cut) return cut.error();
        if (!*cut) return inFull(proof);
        return drawn(std::move(**cut), proof);
    }

 private:
    Result<Drawn> drawn(CutRows cut, const WrittenProof& proof) {
        lineUpBoxes(cut.rows);
        Result<Chart> chart = rowsOnGrid(cut.rows);
        if (!chart) return chart.error();
        chart->name = chartText(out_.pattern.title);
        chart->source = chartText(out_.pattern.source);
        chart->worked = out_.pattern.worked;
        chart->firstSide = out_.pattern.rows.front().side;
        chart->uncharted = out_.uncharted;
        if (proof.castOn) {
            chart->castOn = *proof.castOn;
            chart->castOn->plus += chart->castOn->multiple * static_cast<int>(cut.shift);
        }
        setRowRepeat(*chart);
        Drawn result;
        result.result = {std::move(*chart), proof.knittable, out_.remarks};
        return result;
    }

    void setRowRepeat(Chart& chart) const {
        if (!out_.pattern.repeatFrom) return;
        const auto& rows = out_.pattern.rows;
        const auto first = std::find_if(rows.begin(), rows.end(), [&](const WrittenRow& row) {
            return row.number == *out_.pattern.repeatFrom;
        });
        if (first == rows.end()) return;
        chart.rowRepeat = RowRepeat{
            static_cast<int>(first - rows.begin()), static_cast<int>(rows.size()) - 1, 0, {}};
    }

    // Multiples that the starred repeats of a pattern with a fixed count suggest, smallest first.
    std::vector<std::int64_t> multiples(std::int64_t count, const WrittenProof& proof) const {
        std::set<std::int64_t> found;
        std::int64_t common = 1;
        for (const WrittenRowProof& row : proof.rows) {
            for (const OwnCount& own : row.counted.own) {
                if (!own.starred || own.takes <= 0 || own.takes > count) continue;
                found.insert(own.takes);
                common = std::min(count + 1, std::lcm(common, own.takes));
            }
        }
        if (found.empty()) return {};
        if (common <= count) found.insert(common);
        std::vector<std::int64_t> all(found.begin(), found.end());
        if (all.size() > kMostMultiples) all.resize(kMostMultiples);
        return all;
    }

    // The rows of a fixed count are drawn with a box when they hold for other counts as well.
    std::optional<Result<Drawn>> withFoundBox(const WrittenProof& fixed) {
        const std::int64_t count = fixed.castOn->plus;
        for (const std::int64_t multiple : multiples(count, fixed)) {
            WrittenPattern free = out_.pattern;
            free.castOn = WrittenCastOn{
                Figure(static_cast<int>(multiple)), Figure(static_cast<int>(count % multiple)), {}};
            const WrittenProof proof = proveWritten(free, size_);
            if (!proof.knittable) continue;
            Result<std::optional<CutRows>> cut = cutRows(free, proof, size_);
            if (!cut || !*cut || !(*cut)->box) continue;
            const std::int64_t times = count / multiple - (*cut)->shift;
            if (times < leastTimes_) continue;
            Result<Drawn> result = drawn(std::move(**cut), proof);
            if (!result) continue;
            result->result.chart.castOn = CastOn{0, static_cast<int>(count), {}};
            result->times = times;
            result->count = count;
            return result;
        }
        return {};
    }

    // Without a box, for a small number of repeats.
    Result<Drawn> inFull(const WrittenProof& proof) {
        std::int64_t repeats = kDrawnRepeats;
        for (const WrittenRowProof& row : proof.rows) {
            for (const auto& [variable, least] : row.fit.raised) repeats = std::max(repeats, least);
        }
        const AffineForm first = proof.castOn ? AffineForm::of(0, proof.castOn->multiple) +
                                                    AffineForm(proof.castOn->plus)
                                              : proof.rows.front().counted.forms.takes;
        const std::int64_t count = first.at([&](Variable) { return repeats; });
        if (count > kMaxWidth || (proof.castOn && proof.castOn->multiple == 0)) {
            return refused(
                "The rows repeat themselves in more than one place, each as often as "
                "there is room, which one chart cannot show.");
        }
        out_.pattern.castOn = WrittenCastOn{Figure(0), Figure(static_cast<int>(count)), {}};
        out_.remarks.push_back(
            "The rows repeat themselves in several places at once; the chart "
            "shows them in full for " +
            std::to_string(count) + " stitches.");
        const WrittenProof full = proveWritten(out_.pattern, size_);
        Result<std::optional<CutRows>> cut = cutRows(out_.pattern, full, size_);
        if (!cut) return cut.error();
        if (!*cut) return refused("The rows repeat themselves in too many ways for one chart.");
        Result<Drawn> result = drawn(std::move(**cut), full);
        if (result) result->result.knittable = proof.knittable;
        return result;
    }

    WrittenOut out_;
    std::size_t size_;
    std::int64_t leastTimes_;
};

bool sameDrawing(const Chart& a, const Chart& b) {
    Chart other = b;
    other.castOn = a.castOn;
    return a == other;
}

}  // namespace

Result<ChartFromRows> chartFromRows(const WrittenPattern& pattern,
                                    std::optional<std::size_t> size) {
    if (size || pattern.sizeCount() == 1) {
        Result<Drawn> drawn = Drawer(pattern, size.value_or(0), 2).run();
        if (!drawn) return drawn.error();
        return std::move(drawn->result);
    }
    std::optional<Drawn> all;
    std::vector<Size> sizes;
    for (std::size_t i = 0; i < pattern.sizeCount(); ++i) {
        Result<Drawn> drawn = Drawer(pattern, i, 1).run();
        if (!drawn) return drawn.error();
        const Chart& chart = drawn->result.chart;
        Size one;
        one.name = i < pattern.sizes.size() ? pattern.sizes[i] : std::to_string(i + 1);
        one.reach = {1, chart.width};
        if (drawn->times) one.times["A"] = static_cast<int>(*drawn->times);
        if (chart.castOn && chart.castOn->multiple == 0) one.stitches = chart.castOn->plus;
        sizes.push_back(std::move(one));
        if (!all) {
            all = std::move(*drawn);
        } else if (!sameDrawing(all->result.chart, chart)) {
            return refused("Size " + sizes.back().name + " differs from size " +
                           sizes.front().name +
                           " in more than how often the repeat is worked: draw one size at a "
                           "time.");
        } else {
            all->result.knittable = all->result.knittable && drawn->result.knittable;
        }
    }
    if (sizes.size() > static_cast<std::size_t>(kMaxSizes))
        return refused("The sizes are too many.");
    if (all->result.chart.castOn && all->result.chart.castOn->multiple == 0) {
        Chart& chart = all->result.chart;
        chart.castOn.reset();
        chart.points = {{"A", 1, {}}};
        if (chart.width > 1) chart.points.push_back({"B", chart.width, {}});
        chart.sizes = std::move(sizes);
    }
    return std::move(all->result);
}

}  // namespace lacewright
