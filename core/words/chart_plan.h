#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/chart_from_rows.h"
#include "core/words/cut_rows.h"

namespace lacewright {

// The rows of one size cut at their boxes, ready to be drawn.
struct ChartPlan {
    CutRows cut;
    bool knittable = true;
    std::optional<CastOn> castOn;
    std::vector<std::string> names;   // of the boxes, from the right
    std::vector<std::int64_t> times;  // of each box where the count is fixed; empty elsewhere

    std::size_t edgeLength() const;  // stitches outside the boxes, all rows together
};

// Draws one size of a text.
class RowsDrawer {
 public:
    // `leastTimes`: a fixed cast-on has a box where that is worked so often at least. `times`: how
    // often the size works the pattern's named counts, where it says so.
    // Requires: size < pattern.sizeCount().
    RowsDrawer(const WrittenPattern& pattern, std::size_t size, std::int64_t leastTimes,
               std::vector<int> times = {});

    // The rows as they are drawn, those worked again written out.
    const WrittenPattern& pattern() const { return out_.pattern; }
    // Refuses a text without rows, and rows that cannot be counted or shown as one chart.
    Result<ChartPlan> plan();
    // Refuses what is too large for a chart. Requires: `plan` is this drawer's.
    Result<ChartFromRows> draw(ChartPlan plan) const;

 private:
    // Rows as they are worked one after the other, those worked again included, with the sides
    // that a chart gives them.
    struct WrittenOut {
        WrittenPattern pattern;
        Uncharted uncharted = Uncharted::None;
        std::vector<std::string> remarks;
    };
    static WrittenOut writtenOut(const WrittenPattern& pattern, std::size_t size);
    ChartPlan planned(CutRows cut, const WrittenProof& proof) const;
    void setRowRepeat(Chart& chart) const;
    std::vector<std::int64_t> multiples(std::int64_t count, const WrittenProof& proof) const;
    int stitchesForEach(Variable count, const CastOn& castOn) const;
    Result<ChartPlan> withNamedBoxes();
    std::optional<ChartPlan> withFoundBox(const WrittenProof& fixed);
    Result<ChartPlan> inFull(const WrittenProof& proof);

    WrittenOut out_;
    std::size_t size_;
    std::int64_t leastTimes_;
    std::vector<int> times_;
};

// A text as a chart may hold it: bytes that are no UTF-8 become question marks.
std::string chartText(std::string text);

}  // namespace lacewright
