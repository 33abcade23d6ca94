#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/check/balance_habit.h"
#include "core/check/beliefs.h"
#include "core/check/misfits.h"
#include "core/check/open_ends.h"
#include "core/check/row_case.h"
#include "core/check/row_mirror.h"

// Which cells make rows misfit, and what would mend them: the beliefs about each cell under the
// exact constraint of the counts, within rows (RowOdds) and from row to row (a chain over what each
// row makes, forward and backward), for the edges and for every repeat on its own.
namespace lacewright {

struct CellGuess {
    int row = 0;  // row index
    int column = 1;
    double weight = 0;
};

// Cells drawn anew, or one stitch put in or taken out, so that one or more rows fit; or another
// cast-on for the first one.
struct Repair {
    struct Cell {
        int row = 0;  // row index
        int column = 1;
        StitchIndex stitch = kCovered;
        bool operator==(const Cell&) const = default;
    };
    std::vector<Cell> cells;
    std::optional<RowShift> shift;      // of row cells[0].row; `cells` then names the one stitch
    std::optional<CastOn> castOn = {};  // `cells` is then empty; elsewhere it is not
    double logOdds = 0;
};

class CulpritSearch {
 public:
    // Requires: the chart outlives the search.
    explicit CulpritSearch(const Chart& chart);

    const Links& links() const { return links_; }
    const Alphabet& alphabet() const { return alphabet_; }

    // For a row that does not fit, or for the closing of the row repeat (`rowIndex` then is its
    // first row): cells of that row and of the row it is worked on, the likeliest first; weights
    // add up to 1. Empty when the row fits, or is too far out.
    // `following`: rows above whose misfit is thought to come of the same cause; their cells too.
    std::vector<CellGuess> suspects(int rowIndex, bool closing,
                                    const std::vector<int>& following = {});
    // Of a row that does not fit and the one above it, which does not fit either: log odds that
    // each is wrong in itself, against both being out for one reason in the lower one. 0: not
    // known.
    double logApart(int rowIndex);
    // Likeliest first; each makes the row fit as far as the counts of its neighbours go.
    std::vector<Repair> repairs(int rowIndex, bool closing);

    // Cells of rows that fit that may be wrong all the same, the likeliest first; the weight is in
    // log odds, up to a term that is the same for all cells. Another stitch counts the same there,
    // or the end of the chart leaves open what is counted; or the row would agree better with one
    // stitch put in or taken out where the cell is.
    struct OddCell {
        CellGuess cell;
        StitchIndex rather = kCovered;
        std::optional<RowShift> shift;
        // Log odds of the evidence alone that `rather` was meant, if it counts the same.
        double sure = 0;
    };
    // A cell that is likelier right than wrong may still be the likeliest to be wrong of all.
    static constexpr double kLeastOdd = -15.0;
    std::vector<OddCell> oddCells();
    // Null when this would be one neighbourhood more than can be worked out in the time.
    const Beliefs* beliefsAt(int rowIndex);

 private:
    // Probabilities of what a row was meant to take and make more, for one group.
    struct Moves {
        int reach = 0;
        std::vector<double> share;  // [(takes + reach) * (2 reach + 1) + makes + reach]
        double logOdds = 0;         // of all of them together, with what the run moves for them
    };
    RowCase* caseOf(int rowIndex);
    double logMove(int rowIndex, int group, const GroupMove& move);
    int excessIn(int rowIndex, int group) const;
    int excessOut(int rowIndex, int group) const;
    std::vector<int> groups() const;
    bool involved(int rowIndex) const;
    std::vector<int> runAround(int rowIndex) const;
    std::optional<Moves> movesOf(const std::vector<int>& run, int group, int rowIndex);
    // Adds the guesses; gives the log odds of all that may have come about.
    double accuse(int rowIndex, bool byWhatItMakes, std::vector<CellGuess>& guesses);
    double accuseAll(int rowIndex, bool closing, const std::vector<int>& following,
                     std::vector<CellGuess>& guesses);
    void addRepairs(int rowIndex, bool closing, std::vector<Repair>& repairs);
    // `first`: the row is the first of those that are worked again, and its takes count for that.
    template <class Judge>
    void judgeFirst(int rowIndex, bool first, const Judge& judge) {
        if (!first) return judge();
        closingAt_ = rowIndex;
        cases_.clear();
        judge();
        closingAt_.reset();
        cases_.clear();
    }
    // A row that may be out in several ways is judged as if it were out in one, then in the next.
    template <class Judge>
    void inEveryWay(int rowIndex, bool closing, const Judge& judge) {
        judge();
        Link& link = links_.rows[static_cast<std::size_t>(rowIndex)];
        if (closing || link.otherwise.empty()) return;
        for (Link::Excess& way : link.otherwise) {
            std::swap(link.excess, way);
            cases_.clear();
            judge();
            std::swap(link.excess, way);
        }
        cases_.clear();
    }
    void addRedraws(int rowIndex, bool byWhatItMakes, std::vector<Repair>& repairs);
    void addShifts(int rowIndex, std::vector<Repair>& repairs);
    void addCastOns(std::vector<Repair>& repairs) const;
    std::vector<OddCell> oddInRow(int rowIndex, const Beliefs& beliefs);
    OddCell oddCell(int rowIndex, int column, int group, bool selvedge, const Beliefs& beliefs,
                    const float* weights, const RowMirror& mirror) const;
    void addShifted(int rowIndex, double inPlace, std::vector<OddCell>& odd);
    std::optional<Repair> jointRepair(int rowIndex);
    // The rows that may be to blame, and whether by what they make or by what they take.
    std::vector<std::pair<int, bool>> rowsToBlame(int rowIndex, bool closing) const;

    const Chart& chart_;
    Alphabet alphabet_;
    Links links_;
    OpenEnds ends_;
    BalanceHabit balance_;
    std::optional<int> closingAt_;  // while the closing is judged: the row whose takes count for it
    std::vector<std::unique_ptr<Beliefs>> beliefs_;
    std::map<int, std::unique_ptr<RowCase>> cases_;
    int workForShifts_ = 80'000;  // left for rows that fit: columns squared
};

}  // namespace lacewright
