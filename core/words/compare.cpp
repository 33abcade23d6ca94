#include "core/words/compare.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"
#include "core/words/between_rows.h"
#include "core/words/held_row.h"
#include "core/words/named_repeats.h"
#include "core/words/rows_once.h"
#include "core/words/size_scope.h"
#include "core/words/worked_order.h"

namespace lacewright {
namespace {

Error refusal(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
}

class Comparer {
 public:
    Comparer(const Chart& chart, const WrittenPattern& pattern)
        : chart_(chart), given_(pattern), words_(chart, Terms::Us) {}

    Result<Comparison> run(const std::string& name) {
        if (const auto problem = chooseSizes(name)) return *problem;
        for (std::size_t i = 0; i < std::max<std::size_t>(1, sizes_.size()); ++i) compareSize(i);
        Comparison comparison;
        for (auto& [number, difference] : differences_)
            comparison.differences.push_back(std::move(difference));
        return comparison;
    }

 private:
    struct Chosen {
        const Size* size;
        std::size_t written;  // index among the text's sizes
    };

    std::optional<Error> chooseSizes(const std::string& name) {
        if (chart_.sizes.empty()) {
            if (auto problem = tooManyOpenRepeats(chart_)) return problem;
        }
        const auto& listed = given_.sizes;
        if (chart_.sizes.empty() && listed.size() > 1) {
            const auto found = std::find(listed.begin(), listed.end(), name);
            if (found == listed.end())
                return refusal("The chart has no sizes and the text lists " + listing(listed) +
                               "; say which of these the chart shows.");
            wholeWidth_ = static_cast<std::size_t>(found - listed.begin());
            return {};
        }
        if (!name.empty() && chart_.findSize(name) == nullptr)
            return refusal("The chart has no size \"" + name + "\".");
        for (std::size_t i = 0; i < chart_.sizes.size(); ++i) {
            const Size& size = chart_.sizes[i];
            if (!name.empty() && size.name != name) continue;
            for (const Repeat& repeat : chart_.repeats) {
                if (!size.times.contains(repeat.name))
                    return refusal("Size " + size.name + " does not say how often repeat " +
                                   repeat.name + " is worked.");
            }
            const auto found = std::find(listed.begin(), listed.end(), size.name);
            std::size_t written = static_cast<std::size_t>(found - listed.begin());
            if (found == listed.end()) {
                // Lists without names are in the chart's order; one text may serve every size.
                const bool unnamed = listed.size() == chart_.sizes.size() && listed[0] == "1";
                if (!unnamed && listed.size() > 1)
                    return refusal("The text has no size \"" + size.name + "\"; its sizes are " +
                                   listing(listed) + ".");
                written = unnamed ? i : 0;
            }
            sizes_.push_back({&size, written});
        }
        return {};
    }

    void compareSize(std::size_t index) {
        size_ = sizes_.empty() ? nullptr : sizes_[index].size;
        written_ = sizes_.empty() ? wholeWidth_ : sizes_[index].written;
        const WrittenPattern once = asChartRepeats(rowsOfSize(given_, written_), chart_, written_);
        proof_ = proveWritten(once, written_);
        pattern_ = inWorkingOrder(once, proof_);
        if (!once.again.empty()) proof_ = proveWritten(pattern_, written_);
        numberAsCharted();
        const bool between = chart_.uncharted != Uncharted::None && saysRowsBetween();
        std::map<int, bool> charted;
        for (int row = 0; row < chart_.height(); ++row) {
            const int number = chart_.rowNumber(row);
            charted[number] = true;
            compareRow(
                number, chart_.sideOf(row), row,
                [&](const OpenTimes& open) {
                    return chartedStitches(chart_, row, size_, open, words_);
                },
                [&](const OpenTimes& open) { return looksBelow(row, open); });
            if (!between) continue;
            charted[number + 1] = true;
            compareBetween(row);
        }
        for (const WrittenRow& row : pattern_.rows) {
            if (!charted.contains(row.number))
                note(row.number, row.side, {}, {RowContrast::NotInChart, false, {}, {}});
        }
    }

    // A text that begins with a set-up row, or above row 1 and so would end beyond the chart, or
    // one that leaves numbers out and has as many rows as the chart, counts as the chart does.
    void numberAsCharted() {
        if (pattern_.rows.empty()) return;
        const int first = chart_.rowNumber(0);
        const int last =
            chart_.rowNumber(chart_.height() - 1) + (chart_.uncharted == Uncharted::None ? 0 : 1);
        const int offset = pattern_.rows.front().number - first;
        const int end = pattern_.rows.back().number;
        const bool leavesOut =
            end - pattern_.rows.front().number >= static_cast<int>(pattern_.rows.size());
        if (leavesOut && chart_.uncharted == Uncharted::None &&
            pattern_.rows.size() == static_cast<std::size_t>(chart_.height())) {
            for (std::size_t i = 0; i < pattern_.rows.size(); ++i)
                pattern_.rows[i].number = chart_.rowNumber(static_cast<int>(i));
            return;
        }
        if (offset == 0 || end - offset > last || (offset > 0 && end <= last)) return;
        for (WrittenRow& row : pattern_.rows) row.number -= offset;
    }

    // A text of rows 1, 3, 5 leaves the rows between unsaid.
    bool saysRowsBetween() const {
        return std::any_of(pattern_.rows.begin(), pattern_.rows.end(),
                           [](const WrittenRow& row) { return row.number % 2 == 0; });
    }

    // On the needle before a charted row.
    std::vector<LoopLook> looksBelow(int row, const OpenTimes& open) const {
        if (row == 0) return {};
        std::vector<LoopLook> below = looksOf(chart_, row - 1, size_, open);
        return chart_.uncharted == Uncharted::None ? below : looksAbove(chart_, std::move(below));
    }

    // The row after a charted one that its rule speaks of.
    void compareBetween(int row) {
        compareRow(
            chart_.rowNumber(row) + 1, sideBetween(chart_, row), row,
            [&](const OpenTimes& open) {
                return std::optional(chartedBetween(chart_, row, size_, open));
            },
            [&](const OpenTimes& open) { return looksOf(chart_, row, size_, open); });
    }

    // How often the repeats can be worked: where the chart has one cast-on and one repeat, once.
    std::optional<int> onlyTimes() const {
        if (size_ != nullptr || !chart_.castOn || chart_.castOn->multiple != 0 ||
            chart_.castOn->plus <= 0 || chart_.repeats.size() != 1)
            return {};
        std::int64_t fixed = 0;
        std::int64_t each = 0;
        for (const WorkedStretch& stretch : workedStretches(chart_, 0, nullptr)) {
            for (const StitchIndex stitch : stretch.stitches)
                (stretch.open ? each : fixed) += (*chart_.stitches)[stitch].takes;
        }
        const std::int64_t rest = chart_.castOn->plus - fixed;
        if (each <= 0 || rest < 0 || rest % each != 0) return {};
        return static_cast<int>(rest / each);
    }

    std::vector<OpenTimes> timesToTry(int rowIndex) const {
        if (size_ != nullptr) return {OpenTimes()};
        if (const auto only = onlyTimes()) return {OpenTimes{{}, *only}};
        return triedTimes(chart_, rowIndex);
    }

    // The charted row or the one above it, whichever `works` gives.
    template <typename Works, typename Below>
    void compareRow(int number, Side side, int rowIndex, const Works& works, const Below& below) {
        const WrittenRow* row = pattern_.findRow(number);
        for (const OpenTimes& open : timesToTry(rowIndex)) {
            auto charted = works(open).value_or(std::vector<ChartedStitch>());
            HeldRow held{RowContrast::Stitches, false, {}, {}};
            if (row == nullptr) {
                held.contrast = RowContrast::NotInText;
            } else if (row->side != side) {
                held.contrast = RowContrast::Side;
            } else {
                held = heldAgainst({pattern_, proof_, written_}, *row, std::move(charted),
                                   below(open), namedTimes(chart_, pattern_, open));
            }
            if (held.same) continue;
            note(number, side, size_ != nullptr ? "" : timesWorked(rowIndex, open), held);
            return;
        }
    }

    // "once", "A twice and B once"
    std::string timesWorked(int rowIndex, const OpenTimes& open) const {
        const auto often = [](int times) { return timesText({times}, Numerals::Digits); };
        const std::vector<int> repeats = openRepeats(chart_, rowIndex);
        if (repeats.size() < 2) return often(open.of(repeats.empty() ? 0 : repeats.front()));
        const std::vector<std::string> names = repeatNames(chart_);
        std::vector<std::string> all;
        for (const int repeat : repeats)
            all.push_back(names[static_cast<std::size_t>(repeat)] + " " + often(open.of(repeat)));
        return listing(all);
    }

    void note(int number, Side side, std::string repeatsWorked, const HeldRow& held) {
        const auto [found, fresh] = differences_.try_emplace(number);
        RowDifference& difference = found->second;
        if (size_ != nullptr) difference.sizes.push_back(size_->name);
        if (!fresh) return;
        difference.number = number;
        difference.contrast = held.contrast;
        difference.repeatsWorked = std::move(repeatsWorked);
        difference.stitches = contrasted(held, side);
    }

    const Chart& chart_;
    const WrittenPattern& given_;
    WrittenPattern pattern_;  // as given, in working order
    StitchWords words_;
    std::vector<Chosen> sizes_;
    std::size_t wholeWidth_ = 0;  // size of the text that is held against the whole width
    const Size* size_ = nullptr;
    std::size_t written_ = 0;
    WrittenProof proof_;
    std::map<int, RowDifference> differences_;
};

}  // namespace

std::size_t RowDifference::firstDifference() const {
    const auto found = std::find_if(stitches.begin(), stitches.end(), [](const auto& stitch) {
        return stitch.kind != AlignedStep::Kind::Same;
    });
    return static_cast<std::size_t>(found - stitches.begin());
}

std::vector<ContrastedStitch> RowDifference::changes() const {
    std::vector<ContrastedStitch> changes;
    for (const ContrastedStitch& stitch : stitches) {
        // What differs in every pass of a repeat is one change of its cell or word.
        if (stitch.kind != AlignedStep::Kind::Same &&
            std::find(changes.begin(), changes.end(), stitch) == changes.end())
            changes.push_back(stitch);
    }
    return changes;
}

Result<Comparison> compareRows(const Chart& chart, const WrittenPattern& pattern,
                               const std::string& size) {
    if (!pattern.pieces.empty())
        return refusal(
            "The text holds several pieces, each with a cast-on of its own; a chart is compared "
            "with one.");
    return Comparer(chart, pattern).run(size);
}

}  // namespace lacewright
