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
    for (const BoxRow& row : cut.rows) sum += row.before.size() + row.after.size();
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

RowsDrawer::RowsDrawer(const WrittenPattern& pattern, std::size_t size, std::int64_t leastTimes)
    : out_(writtenOut(pattern, size)), size_(size), leastTimes_(leastTimes) {}

Result<ChartPlan> RowsDrawer::plan() {
    if (out_.pattern.rows.empty()) return refused("There are no rows to draw.");
    const WrittenProof proof = proveWritten(out_.pattern, size_);
    const bool fixed = proof.castOn && proof.castOn->multiple == 0;
    if (fixed && proof.knittable) {
        if (auto plan = withFoundBox(proof)) return std::move(*plan);
    }
    Result<std::optional<CutRows>> cut = cutRows(out_.pattern, proof, size_);
    if (!cut) return cut.error();
    if (!*cut) return inFull(proof);
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
    setRowRepeat(*chart);
    return ChartFromRows{std::move(*chart), plan.knittable, out_.remarks};
}

ChartPlan RowsDrawer::planned(CutRows cut, const WrittenProof& proof) {
    ChartPlan plan{std::move(cut), proof.knittable, proof.castOn, {}};
    lineUpBoxes(plan.cut.rows);
    if (plan.castOn) plan.castOn->plus += plan.castOn->multiple * static_cast<int>(plan.cut.shift);
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

// The rows of a fixed count are drawn with a box when they hold for other counts as well.
std::optional<ChartPlan> RowsDrawer::withFoundBox(const WrittenProof& fixed) {
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
        ChartPlan plan = planned(std::move(**cut), proof);
        plan.castOn = CastOn{0, static_cast<int>(count), {}};
        plan.times = times;
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
