#include "core/verdict/written_mends.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/check/mend.h"

namespace lacewright {
namespace {

constexpr std::size_t kMostMoved = 8;  // stitches named in one mend of a row

// One mended chart beside the straight one.
class MendedRows {
 public:
    MendedRows(const WrittenPattern& pattern, const StraightChart& straight)
        : pattern_(pattern), straight_(straight) {}

    std::optional<Mend> told(const Mend& mend) const {
        const Result<Chart> mended = applyMend(straight_.chart, mend);
        if (!mended) return std::nullopt;
        std::vector<std::string> changes;
        Mend told;
        for (int row = 0; row < mended->height(); ++row) {
            if (mended->row(row) == straight_.chart.row(row)) continue;
            const RowChange change = changeIn(*mended, row);
            if (!isClear(change)) return std::nullopt;
            changes.push_back(inWords(change, *mended, row));
            addRedrawn(change, *mended, row, told.redrawn);
            told.reworked.push_back({writtenRow(row).number, idsOf(*mended, row, change.after)});
        }
        if (changes.empty()) return std::nullopt;  // another cast-on is no matter of the rows
        told.label = join(changes, "; ");
        return told;
    }

 private:
    // What one row becomes: stitches that go and come at one place of the row as worked.
    struct RowChange {
        std::vector<int> before, after;  // columns of the stitches as worked
        std::size_t begin = 0;           // of those, where the rows part
        std::vector<int> gone, come;
    };

    // A change that moves more stitches than a reader compares at a glance is no mend in words.
    static bool isClear(const RowChange& change) {
        return change.gone.size() == change.come.size() ||
               std::max(change.gone.size(), change.come.size()) <= kMostMoved;
    }

    std::string wordsOf(const Chart& chart, int row, const std::vector<int>& columns) const {
        std::vector<std::string> words;
        for (const int column : columns) {
            const Stitch& stitch = (*chart.stitches)[chart.row(row).at(column)];
            const SideWording& side =
                writtenRow(row).side == Side::Wrong ? stitch.wrongSide : stitch.rightSide;
            words.push_back(side.abbreviation.empty() ? stitch.id : side.abbreviation);
        }
        return join(words, ", ");
    }

    static std::vector<std::string> idsOf(const Chart& chart, int row,
                                          const std::vector<int>& columns) {
        std::vector<std::string> ids;
        for (const int column : columns)
            ids.push_back((*chart.stitches)[chart.row(row).at(column)].id);
        return ids;
    }

    // The repeats with what stands between them, counted from the right: repeats are odd.
    std::size_t partOf(int column) const {
        std::size_t part = 0;
        for (const Repeat& repeat : straight_.chart.repeats) {
            if (column >= repeat.right) ++part;
            if (column > repeat.left) ++part;
        }
        return part;
    }

    // "the repeat", or which of several
    std::string repeatInWords(std::size_t index) const {
        const auto& repeats = straight_.chart.repeats;
        return repeats.size() == 1 ? "the repeat" : "repeat " + repeats[index].name;
    }

    // "stitch 3 of the repeat"
    std::string placeInWords(const std::vector<int>& worked, std::size_t at) const {
        const std::size_t here = partOf(worked[at]);
        const auto number =
            1 + std::count_if(worked.begin(), worked.begin() + static_cast<std::ptrdiff_t>(at),
                              [&](int column) { return partOf(column) == here; });
        std::string words = "stitch " + std::to_string(number);
        if (straight_.chart.repeats.empty()) return words;
        if (here % 2 == 1) return words + " of " + repeatInWords(here / 2);
        const bool first = partOf(worked.front()) == here;
        const bool leftwards = worked.front() < worked.back();
        // Before the repeat that is worked next or after the one worked last, where there is one.
        const bool hasNext = leftwards ? here / 2 < straight_.chart.repeats.size() : here > 0;
        const bool hasLast = leftwards ? here > 0 : here / 2 < straight_.chart.repeats.size();
        const bool before = first ? hasNext : !hasLast;
        const std::size_t beside = here / 2 - (leftwards != before ? 1 : 0);
        return words + (before ? " before " : " after ") + repeatInWords(beside);
    }

    RowChange changeIn(const Chart& mended, int row) const {
        const Side side = writtenRow(row).side;
        RowChange change{
            workedColumns(straight_.chart, row, side), workedColumns(mended, row, side), 0, {}, {}};
        const auto& before = change.before;
        const auto& after = change.after;
        const auto same = [&](std::size_t a, std::size_t b) {
            return straight_.chart.row(row).at(before[a]) == mended.row(row).at(after[b]);
        };
        const std::size_t shorter = std::min(before.size(), after.size());
        std::size_t begin = 0;
        while (begin < shorter && same(begin, begin)) ++begin;
        std::size_t end = 0;
        while (end < shorter - begin && same(before.size() - 1 - end, after.size() - 1 - end))
            ++end;
        const auto middle = [&](const std::vector<int>& columns) {
            return std::vector<int>(columns.begin() + static_cast<std::ptrdiff_t>(begin),
                                    columns.end() - static_cast<std::ptrdiff_t>(end));
        };
        change.begin = begin;
        change.gone = middle(before);
        change.come = middle(after);
        return change;
    }

    std::string inWords(const RowChange& change, const Chart& mended, int row) const {
        const auto& [before, after, begin, gone, come] = change;
        const std::string place =
            gone.empty() ? placeInWords(after, begin) : placeInWords(before, begin);
        const std::string where = writtenRow(row).label + ": ";
        if (gone.empty()) return where + "put in " + wordsOf(mended, row, come) + " as " + place;
        if (come.empty())
            return where + "leave out " + wordsOf(straight_.chart, row, gone) + ", " + place;
        std::vector<std::string> parts;
        for (const auto& [first, end] : partsThatDiffer(change, mended, row)) {
            const auto part = [first = first, end = end](const std::vector<int>& columns) {
                return std::vector<int>(
                    columns.begin() + static_cast<std::ptrdiff_t>(first),
                    columns.begin() + static_cast<std::ptrdiff_t>(std::min(end, columns.size())));
            };
            parts.push_back(wordsOf(mended, row, part(come)) + " instead of " +
                            wordsOf(straight_.chart, row, part(gone)) + ", " +
                            placeInWords(before, begin + first));
        }
        return where + "work " + join(parts, " and ");
    }

    // From and to, among the stitches that come: where as many go, what stays the same between them
    // is not told.
    std::vector<std::pair<std::size_t, std::size_t>> partsThatDiffer(const RowChange& change,
                                                                     const Chart& mended,
                                                                     int row) const {
        if (change.gone.size() != change.come.size())
            return {{0, std::max(change.gone.size(), change.come.size())}};
        std::vector<std::pair<std::size_t, std::size_t>> parts;
        for (std::size_t i = 0; i < change.come.size(); ++i) {
            if (straight_.chart.row(row).at(change.gone[i]) == mended.row(row).at(change.come[i]))
                continue;
            if (parts.empty() || parts.back().second != i) parts.push_back({i, i});
            parts.back().second = i + 1;
        }
        return parts;
    }

    // The stitches that come and were not there already, by their places in the row as worked.
    void addRedrawn(const RowChange& change, const Chart& mended, int row,
                    std::vector<RedrawnCell>& cells) const {
        for (std::size_t i = 0; i < change.come.size(); ++i) {
            const StitchIndex stitch = mended.row(row).at(change.come[i]);
            const bool kept = change.gone.size() == change.come.size() &&
                              straight_.chart.row(row).at(change.gone[i]) == stitch;
            if (kept) continue;
            cells.push_back({writtenRow(row).number, static_cast<int>(change.begin + i) + 1,
                             (*mended.stitches)[stitch].id});
        }
    }

    const WrittenRow& writtenRow(int rowIndex) const {
        return pattern_.rows[straight_.written[static_cast<std::size_t>(rowIndex)]];
    }

    const WrittenPattern& pattern_;
    const StraightChart& straight_;
};

}  // namespace

std::optional<Mend> mendInWords(const WrittenPattern& pattern, const StraightChart& straight,
                                const Mend& mend) {
    return MendedRows(pattern, straight).told(mend);
}

}  // namespace lacewright
