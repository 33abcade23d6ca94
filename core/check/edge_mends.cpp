#include "core/check/edge_mends.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>

#include "core/base/text.h"
#include "core/check/companions.h"
#include "core/check/mend.h"
#include "core/check/mend_words.h"
#include "core/check/sentences.h"
#include "core/check/survey.h"

namespace lacewright {
namespace {

constexpr int kFarthestMove = 8;             // columns
constexpr std::int64_t kCellsRead = 400000;  // over all moves that are worked out

// A stitch inside the edge that has lost companions outside.
struct Widow {
    int column = 1;
    int lost = 0;   // companions outside
    int other = 1;  // column of the last of them
};

class EdgeMender {
 public:
    EdgeMender(const Chart& chart, const Finding& finding, int row)
        : chart_(chart), finding_(finding), row_(row) {}

    EdgeMends mends() {
        EdgeMends mends;
        if (!findWidows()) return mends;
        const bool decreaseStays = stitchAt(widows_.begin()->first).net() < 0;
        for (const bool leanRight : {decreaseStays, !decreaseStays}) {
            auto mend = substituted(leanRight);
            if (mend && std::none_of(mends.substitutions.begin(), mends.substitutions.end(),
                                     [&](const Mend& m) { return m.steps == mend->steps; }))
                mends.substitutions.push_back(std::move(*mend));
        }
        const std::int64_t cells = std::int64_t{chart_.width} * chart_.height();
        const auto farthest = std::clamp<std::int64_t>(kCellsRead / (2 * cells), 1, kFarthestMove);
        for (int by = 1; by <= farthest; ++by) {
            for (const int move : {by, -by}) {
                if (auto mend = moved(move)) mends.moves.push_back(std::move(*mend));
            }
        }
        return mends;
    }

 private:
    const Stitch& stitchAt(int column) const {
        return (*chart_.stitches)[chart_.row(row_).at(column)];
    }
    const Size* firstSize() const {
        return finding_.sizes.empty() ? nullptr : chart_.findSize(finding_.sizes.front());
    }

    bool findWidows() {
        const Size* size = firstSize();
        if (size == nullptr) return false;
        const Reach reach = size->on(row_);
        const Path across{{1, chart_.width, Segment::Part::Plain, -1}};
        std::map<Edge, int> seen;
        for (const auto& pair : companionsOn(chart_.row(row_), across, *chart_.stitches).pairs) {
            for (const auto& [inside, outside] : {std::pair(pair.increase, pair.decrease),
                                                  std::pair(pair.decrease, pair.increase)}) {
                const bool named = std::find(finding_.columns.begin(), finding_.columns.end(),
                                             inside) != finding_.columns.end();
                if (!named || inside < reach.start || inside > reach.end) continue;
                if (outside >= reach.start && outside <= reach.end) continue;
                edge_ = outside < reach.start ? Edge::Start : Edge::End;
                ++seen[edge_];
                Widow& widow = widows_[inside];
                widow = {inside, widow.lost + 1, outside};
            }
        }
        return seen.size() == 1;
    }

    // What the stitch becomes with so many companions fewer.
    std::optional<StitchIndex> remaining(const Widow& widow, bool leanRight) const {
        const Stitch& drawn = stitchAt(widow.column);
        if (drawn.span != 1) return std::nullopt;
        const int net = drawn.net() + (drawn.net() < 0 ? widow.lost : -widow.lost);
        switch (net) {
            case 0:
                return ground();
            case 1:
                return chart_.stitches->find("yo");
            case 2:
                return chart_.stitches->find("yo2");
            case -1:
                return chart_.stitches->find(leanRight ? "k2tog" : "ssk");
            case -2:
                return chart_.stitches->find(leanRight ? "k3tog" : "sssk");
            case -3:
                return chart_.stitches->find(leanRight ? "k4tog" : "sk3p");
            default:
                return std::nullopt;
        }
    }

    // The plain stitch this row holds most.
    std::optional<StitchIndex> ground() const {
        std::map<StitchIndex, int> plain;
        for (const StitchIndex index : chart_.row(row_).cells()) {
            if (index == kCovered) continue;
            const Stitch& stitch = (*chart_.stitches)[index];
            if (stitch.span == 1 && stitch.takes == 1 && stitch.makes == 1) ++plain[index];
        }
        if (plain.empty()) return chart_.stitches->find("k");
        return std::max_element(plain.begin(), plain.end(),
                                [](const auto& a, const auto& b) { return a.second < b.second; })
            ->first;
    }

    std::string sizeWords() const {
        return (finding_.sizes.size() == 1 ? "size " : "sizes ") + listing(finding_.sizes);
    }

    std::optional<Mend> substituted(bool leanRight) const {
        Mend mend;
        std::vector<std::string> parts;
        for (const auto& [column, widow] : widows_) {
            const auto index = remaining(widow, leanRight);
            if (!index) return std::nullopt;
            const Stitch& rather = (*chart_.stitches)[*index];
            for (const std::string& name : finding_.sizes)
                mend.steps.emplace_back(
                    SubstituteForSize{name, {row_, column, edge_, rather.id, {}}});
            parts.push_back(stitchInWords(rather) + " instead of " +
                            stitchInWords(stitchAt(column)) + " in " +
                            placeInWords(chart_, row_, column));
        }
        mend.label = "For " + sizeWords() + " work " + listing(parts);
        mend.reason = "Column " + std::to_string(widows_.begin()->second.other) +
                      ", where its companion is, lies outside";
        return mend;
    }

    // The edge moved by so many columns to the left.
    std::optional<Mend> moved(int by) const {
        Mend mend;
        const bool start = edge_ == Edge::Start;
        int column = 0;
        for (const std::string& name : finding_.sizes) {
            const Size* size = chart_.findSize(name);
            // An edge that is shaped from row to row is not moved as a whole.
            if (size == nullptr || !size->changes.empty()) return std::nullopt;
            column = (start ? size->reach.start : size->reach.end) + by;
            if (column < 1 || column > chart_.width) return std::nullopt;
            if (start ? column > size->reach.end : column < size->reach.start) return std::nullopt;
            mend.steps.emplace_back(MoveEdge{name, edge_, column});
        }
        const Result<Chart> after = applyMend(chart_, mend);
        if (!after) return std::nullopt;
        std::vector<std::string> counts;
        for (const std::string& name : finding_.sizes) {
            const Size* size = after->findSize(name);
            const SizeSurvey survey(*after, *size);
            const std::int64_t takes =
                formsOf(*after, 0, survey.size, survey.paths.path(0), survey.times)
                    .takes.constant();
            counts.push_back(stitchCount(takes) +
                             (finding_.sizes.size() > 1 ? " (" + name + ")" : ""));
            if (size->stitches && *size->stitches != takes)
                mend.steps.emplace_back(ChangeExpected{name, static_cast<int>(takes)});
        }
        mend.label = std::string(start ? "Begin " : "End ") + sizeWords() + " at column " +
                     std::to_string(column) + ", " + counted(std::abs(by), "column", "columns") +
                     " further " + (by > 0 ? "left" : "right");
        mend.reason = "It parts no companions there and gives " + listing(counts);
        return mend;
    }

    const Chart& chart_;
    const Finding& finding_;
    int row_;
    Edge edge_ = Edge::Start;
    std::map<int, Widow> widows_;
};

}  // namespace

EdgeMends edgeMendsFor(const Chart& chart, const Finding& finding) {
    const auto row = chart.indexOfRowNumber(finding.row);
    if (!row || finding.sizes.empty()) return {};
    return EdgeMender(chart, finding, *row).mends();
}

}  // namespace lacewright
