#include "core/words/chart_plan.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "core/base/text.h"
#include "core/words/rows_on_grid.h"
#include "core/words/worked_order.h"

namespace lacewright {

namespace {

constexpr std::int64_t kDrawnRepeats = 2;  // where rows are drawn in full instead of with a box
constexpr std::size_t kMostMultiples = 12;
constexpr const char* kOtherWays =
    "The rows work their named repeats in another order, or more than once on a row, which one "
    "chart cannot show.";

Error refused(const std::string& sentence) {
    return {ErrorCode::Refused, sentence, {}};
}

bool onlyOddNumbers(const std::vector<WrittenRow>& rows) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].number != 2 * static_cast<int>(i) + 1) return false;
    }
    return rows.size() > 1;
}

}  // namespace

std::string chartText(std::string text) {
    if (text.size() > kMaxTextLength) text.resize(kMaxTextLength);
    if (isUtf8(text)) return text;
    for (char& c : text) {
        if (static_cast<unsigned char>(c) >= 0x80) c = '?';
    }
    return text;
}

std::size_t ChartPlan::edgeLength() const {
    std::size_t sum = 0;
    for (const BoxRow& row : cut.rows) sum += row.edges().size();
    return sum;
}

RowsDrawer::WrittenOut RowsDrawer::writtenOut(const WrittenPattern& pattern, std::size_t size) {
    WrittenOut out{inWorkingOrder(pattern, proveWritten(pattern, size)), Uncharted::None, {}};
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

RowsDrawer::RowsDrawer(const WrittenPattern& pattern, std::size_t size, std::int64_t leastTimes,
                       std::vector<int> times)
    : out_(writtenOut(pattern, size)),
      size_(size),
      leastTimes_(leastTimes),
      times_(std::move(times)) {}

Result<ChartPlan> RowsDrawer::plan() {
    if (out_.pattern.rows.empty()) return refused("There are no rows to draw.");
    if (!times_.empty()) return withNamedBoxes();
    const WrittenProof proof = proveWritten(out_.pattern, size_);
    const bool fixed = proof.castOn && proof.castOn->multiple == 0;
    if (fixed) {
        if (auto plan = withFoundBox(proof)) return std::move(*plan);
    }
    Result<std::optional<CutRows>> cut = cutRows(out_.pattern, proof, size_);
    if (!cut) return cut.error();
    if (!*cut) return out_.pattern.counts.empty() ? inFull(proof) : refused(kOtherWays);
    return planned(std::move(**cut), proof);
}

Result<ChartFromRows> RowsDrawer::draw(ChartPlan plan) const {
    Result<Chart> chart = rowsOnGrid(plan.cut.rows);
    if (!chart) return chart.error();
    chart->name = chartText(out_.pattern.title);
    chart->source = chartText(out_.pattern.source);
    chart->worked = out_.pattern.worked;
    chart->firstSide = out_.pattern.rows.front().side;
    chart->uncharted = out_.uncharted;
    chart->castOn = plan.castOn;
    for (std::size_t i = 0; i < chart->repeats.size() && i < plan.names.size(); ++i)
        chart->repeats[i].name = plan.names[i];
    setRowRepeat(*chart);
    return ChartFromRows{std::move(*chart), plan.knittable, out_.remarks};
}

ChartPlan RowsDrawer::planned(CutRows cut, const WrittenProof& proof) const {
    ChartPlan plan{std::move(cut), proof.knittable, proof.castOn, {}, {}};
    lineUpBoxes(plan.cut.rows);
    for (const Variable count : plan.cut.counts) {
        const auto shift = static_cast<int>(plan.cut.shiftOf(count));
        plan.names.push_back(isNamedCount(count) ? proof.nameOf(count) : "A");
        if (plan.castOn) plan.castOn->plus += stitchesForEach(count, *plan.castOn) * shift;
    }
    return plan;
}

// By how much the cast-on grows with the count of a box.
int RowsDrawer::stitchesForEach(Variable count, const CastOn& castOn) const {
    if (!isNamedCount(count)) return castOn.multiple;
    const auto index = countIndex(count);
    const auto& written = out_.pattern.castOn;
    return written && index < written->forEach.size() ? written->forEach[index] : 0;
}

// The rows of a size that says how often it works the named counts.
Result<ChartPlan> RowsDrawer::withNamedBoxes() {
    WrittenPattern free = out_.pattern;
    free.castOn.reset();
    const WrittenProof proof = proveWritten(free, size_);
    if (!proof.knittable) return refused(kOtherWays);
    Result<std::optional<CutRows>> cut = cutRows(free, proof, size_);
    if (!cut) return cut.error();
    if (!*cut) return refused(kOtherWays);
    ChartPlan plan = planned(std::move(**cut), proof);
    plan.castOn.reset();
    if (out_.pattern.castOn) plan.castOn = out_.pattern.castOn->of(size_);
    for (const Variable count : plan.cut.counts) {
        if (!isNamedCount(count)) return refused(kOtherWays);
        plan.times.push_back(times_[countIndex(count)] - plan.cut.shiftOf(count));
    }
    return plan;
}

void RowsDrawer::setRowRepeat(Chart& chart) const {
    if (!out_.pattern.repeatFrom) return;
    const auto& rows = out_.pattern.rows;
    const auto first = std::find_if(rows.begin(), rows.end(), [&](const WrittenRow& row) {
        return row.number == *out_.pattern.repeatFrom;
    });
    if (first == rows.end()) return;
    chart.rowRepeat =
        RowRepeat{static_cast<int>(first - rows.begin()), static_cast<int>(rows.size()) - 1, 0, {}};
}

// Multiples that the starred repeats of a pattern with a fixed count suggest, smallest first.
std::vector<std::int64_t> RowsDrawer::multiples(std::int64_t count,
                                                const WrittenProof& proof) const {
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

// The rows of a fixed count are drawn with a box when they hold for other counts as well, or have
// no more faults there.
std::optional<ChartPlan> RowsDrawer::withFoundBox(const WrittenProof& fixed) {
    const std::int64_t count = fixed.castOn->plus;
    for (const std::int64_t multiple : multiples(count, fixed)) {
        WrittenPattern free = out_.pattern;
        free.castOn = WrittenCastOn{
            Figure(static_cast<int>(multiple)), Figure(static_cast<int>(count % multiple)), {}};
        const WrittenProof proof = proveWritten(free, size_);
        if (proof.faulty.size() > fixed.faulty.size()) continue;
        Result<std::optional<CutRows>> cut = cutRows(free, proof, size_);
        if (!cut || !*cut || (*cut)->counts.empty()) continue;
        const std::int64_t times = count / multiple - (*cut)->shiftOf(kBoxCount);
        if (times < leastTimes_) continue;
        ChartPlan plan = planned(std::move(**cut), proof);
        plan.castOn = CastOn{0, static_cast<int>(count), {}};
        plan.times = {times};
        return plan;
    }
    return {};
}

// Without a box, for a small number of repeats.
Result<ChartPlan> RowsDrawer::inFull(const WrittenProof& proof) {
    std::int64_t repeats = kDrawnRepeats;
    for (const WrittenRowProof& row : proof.rows) {
        for (const auto& [variable, least] : row.fit.raised) repeats = std::max(repeats, least);
    }
    const AffineForm first =
        proof.castOn ? AffineForm::of(0, proof.castOn->multiple) + AffineForm(proof.castOn->plus)
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
    ChartPlan plan = planned(std::move(**cut), full);
    plan.knittable = proof.knittable;
    return plan;
}

}  // namespace lacewright
