#include "core/check/beliefs.h"

#include <algorithm>
#include <cmath>

#include "core/check/gap_habit.h"

namespace lacewright {
namespace {

constexpr double kRowsOfKind = 6;         // cells' worth of trust in the rows of the same kind
constexpr double kUsualCells = 4;         // of that kind, thought to have been seen as well
constexpr double kLeastFigures = 0.004;   // a plain row may still hold a figure
constexpr double kPlainEdge = 1.5;        // log odds against figures in an edge column without any
constexpr float kTestimonyWeight = 0.5F;  // witnesses repeat each other
constexpr float kNeighbourWeight = 0.34F;
constexpr int kMostRows = 400;     // looked at around one: the search grows with their square
constexpr double kUsualPairs = 2;  // pairs of the usual kind thought to have been seen as well

// The rows around one that are few enough, and hold few enough figures, for the search of
// symmetries.
std::pair<int, int> windowAround(const Chart& chart, const Alphabet& alphabet, int centre) {
    const auto figuresIn = [&](int row) {
        const auto& cells = chart.row(row).cells();
        return static_cast<int>(std::count_if(cells.begin(), cells.end(), [&](StitchIndex index) {
            const auto letter = alphabet.letterIn(row, index);
            return letter > Alphabet::kGround && letter != alphabet.noStitch;
        }));
    };
    int first = centre;
    int last = centre;
    int figures = figuresIn(centre);
    bool below = true;
    bool above = true;
    while ((below || above) && last - first < kMostRows) {
        if ((below = below && first > 0)) {
            const int more = figuresIn(first - 1);
            if ((below = figures + more <= kMaxFigures)) {
                --first;
                figures += more;
            }
        }
        if ((above = above && last + 1 < chart.height())) {
            const int more = figuresIn(last + 1);
            if ((above = figures + more <= kMaxFigures)) {
                ++last;
                figures += more;
            }
        }
    }
    return {first, last};
}

LetterGrid gridAround(const Chart& chart, const Alphabet& alphabet, int centre) {
    const auto [first, last] = windowAround(chart, alphabet, centre);
    return LetterGrid(chart, alphabet, first, last);
}

}  // namespace

Beliefs::Beliefs(const Chart& chart, const Alphabet& alphabet, int centreRow)
    : alphabet_(alphabet),
      chartHeight_(chart.height()),
      everyRowDrawn_(chart.uncharted == Uncharted::None),
      grid_(gridAround(chart, alphabet, centreRow)),
      figuresInRow_(static_cast<std::size_t>(grid_.height()), 0),
      figuresInColumn_(static_cast<std::size_t>(grid_.width()), 0),
      knownInRow_(figuresInRow_.size(), 0) {
    for (int y = 0; y < grid_.height(); ++y) {
        for (int x = 0; x < grid_.width(); ++x) {
            if (grid_.at(x, y) >= 0) ++knownInRow_[static_cast<std::size_t>(y)];
            if (!grid_.isFigure(x, y)) continue;
            ++figuresInRow_[static_cast<std::size_t>(y)];
            ++figuresInColumn_[static_cast<std::size_t>(x)];
        }
    }
    countNeighbours();
    for (const SymmetryMap& map : symmetriesOf(grid_, alphabet, regionsOf(chart, grid_)))
        testimonies_.emplace_back(grid_, alphabet_, map);
}

bool Beliefs::covers(int row) const {
    const int margin = grid_.height() / 4;
    return (row >= grid_.firstRow() + margin || grid_.firstRow() == 0) &&
           (row <= grid_.lastRow() - margin || grid_.lastRow() == chartHeight_ - 1) &&
           grid_.holds(row);
}

RowBeliefs Beliefs::of(int row) const {
    RowBeliefs beliefs;
    beliefs.letters = alphabet_.size();
    const int y = row - grid_.firstRow();
    beliefs.apart = habits(y, Habits::OfOthers);
    beliefs.asRow = habits(y, Habits::OfAll);
    beliefs.asGap = gapOdds(grid_, alphabet_.noStitch, y);
    beliefs.all.assign(beliefs.apart.size(), 0.0F);
    std::vector<Alphabet::Letter> drawn;
    drawn.reserve(static_cast<std::size_t>(grid_.width()));
    for (int x = 0; x < grid_.width(); ++x) drawn.push_back(grid_.at(x, y));
    for (const Testimony& testimony : testimonies_) {
        beliefs.views.push_back(testimony.viewOn(y));
        testimony.addTo(y, beliefs.views.back(), beliefs.all);
        const double agreed = testimony.weightOf(beliefs.views.back(), drawn);
        beliefs.inPlace += std::max(0.0, kTestimonyWeight * agreed);
    }
    for (std::size_t i = 0; i < beliefs.all.size(); ++i)
        beliefs.all[i] = kTestimonyWeight * beliefs.all[i] + beliefs.apart[i];
    addNeighbours(y, beliefs.all);
    return beliefs;
}

// How likely a figure is at all: the row's own plainness and that of rows of the same kind (every
// second one when all rows are drawn).
std::vector<float> Beliefs::habits(int y, Habits of) const {
    const int letters = alphabet_.size();
    std::vector<float> weights(static_cast<std::size_t>(grid_.width() * letters), 0.0F);
    const bool others = of == Habits::OfOthers;
    double kindFigures = 0;
    double kindCells = 0;
    for (int other = 0; other < grid_.height(); ++other) {
        if (other == y || (everyRowDrawn_ && (other - y) % 2 != 0)) continue;
        kindFigures += figuresInRow_[static_cast<std::size_t>(other)];
        kindCells += knownInRow_[static_cast<std::size_t>(other)];
    }
    const double usual = 1 - alphabet_.shares[0];
    const double kind = (kindFigures + kUsualCells * usual) / (kindCells + kUsualCells);
    for (int x = 0; x < grid_.width(); ++x) {
        const int self = grid_.isFigure(x, y) ? 1 : 0;
        const double inRow = figuresInRow_[static_cast<std::size_t>(y)] - (others ? self : 0);
        double share = (inRow + kRowsOfKind * kind) /
                       (knownInRow_[static_cast<std::size_t>(y)] - (others ? 1 : 0) + kRowsOfKind);
        share = std::clamp(share, kLeastFigures, 0.9);
        const bool edge = x < 1 || x + 1 >= grid_.width();
        const bool plainColumn = figuresInColumn_[static_cast<std::size_t>(x)] - self == 0;
        for (int letter = 0; letter < letters; ++letter) {
            double log = letter == 0
                             ? std::log(1 - share)
                             : std::log(share * alphabet_.shareWithout(
                                                    static_cast<Alphabet::Letter>(letter),
                                                    others ? grid_.at(x, y) : Alphabet::kNone));
            if (letter > 0 && edge && plainColumn) log -= kPlainEdge;
            weights[static_cast<std::size_t>(x * letters + letter)] = static_cast<float>(log);
        }
    }
    return weights;
}

void Beliefs::countNeighbours() {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    pairs_.assign(kReach * letters * letters, 0);
    for (int y = 0; y < grid_.height(); ++y) {
        for (int distance = 1; distance <= kReach; ++distance) {
            for (int x = 0; x + distance < grid_.width(); ++x) {
                const auto right = grid_.at(x, y);
                const auto left = grid_.at(x + distance, y);
                if (right < 0 || left < 0 || (right == 0 && left == 0)) continue;
                ++pairs_[(static_cast<std::size_t>(distance - 1) * letters +
                          static_cast<std::size_t>(right)) *
                             letters +
                         static_cast<std::size_t>(left)];
            }
        }
    }
    pairOdds_.assign((2 * kReach + 1) * letters * letters, 0);
    for (int offset = -kReach; offset <= kReach; ++offset) {
        for (std::size_t i = 0; offset != 0 && i < letters * letters; ++i) {
            pairOdds_[static_cast<std::size_t>(offset + kReach) * letters * letters + i] =
                besideOdds(i / letters, i % letters, offset, 0);
        }
    }
}

double Beliefs::besideOdds(std::size_t letter, std::size_t beside, int offset, int leftOut) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    const auto table = static_cast<std::size_t>(std::abs(offset) - 1) * letters;
    const auto seen = [&](std::size_t other) {
        return offset < 0 ? pairs_[(table + other) * letters + beside]
                          : pairs_[(table + beside) * letters + other];
    };
    double all = -leftOut;
    for (std::size_t other = 0; other < letters; ++other) all += seen(other);
    const double plain = alphabet_.shares[0];
    const double usual = letter == 0 ? plain : (1 - plain) * alphabet_.shares[letter];
    const double count = seen(letter) - leftOut;
    return std::log((std::max(count, 0.0) + kUsualPairs * usual) /
                    (std::max(all, 0.0) + kUsualPairs) / usual);
}

// A plain cell beside says little: plain pairs are not counted.
void Beliefs::addNeighbours(int y, std::vector<float>& weights) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    for (int x = 0; x < grid_.width(); ++x) {
        const auto self = grid_.at(x, y);
        if (self < 0) continue;
        const auto own = static_cast<std::size_t>(static_cast<unsigned char>(self));
        for (int offset = -kReach; offset <= kReach; ++offset) {
            const int other = x + offset;
            if (offset == 0 || other < 0 || other >= grid_.width() || !grid_.isFigure(other, y))
                continue;
            const auto beside =
                static_cast<std::size_t>(static_cast<unsigned char>(grid_.at(other, y)));
            for (std::size_t letter = 0; letter < letters; ++letter) {
                const double odds = letter == own ? besideOdds(letter, beside, -offset, 1)
                                                  : pairOdds(letter, beside, -offset);
                weights[static_cast<std::size_t>(x) * letters + letter] +=
                    kNeighbourWeight * static_cast<float>(odds);
            }
        }
    }
}

double Beliefs::weightOf(const RowBeliefs& beliefs, const std::vector<Alphabet::Letter>& letters,
                         std::size_t most) const {
    const auto count = static_cast<std::size_t>(beliefs.letters);
    const auto at = [&](int x) {
        return static_cast<std::size_t>(letters[static_cast<std::size_t>(x)]);
    };
    const auto known = [&](int x) { return letters[static_cast<std::size_t>(x)] >= 0; };
    double weight = 0;
    for (int x = 0; x < grid_.width(); ++x) {
        // Cells that take no part are as likely as the ground.
        weight += beliefs.asRow[static_cast<std::size_t>(x) * count + (known(x) ? at(x) : 0)];
        for (int offset = 1; offset <= kReach && x + offset < grid_.width(); ++offset) {
            if (!known(x) || !known(x + offset)) continue;
            if (at(x) > 0) {
                weight += kNeighbourWeight * pairOdds(at(x + offset), at(x), offset);
            } else if (at(x + offset) > 0) {
                weight += kNeighbourWeight * pairOdds(at(x), at(x + offset), -offset);
            }
        }
    }
    for (std::size_t x = 0; x < beliefs.asGap.size(); ++x) {
        if (letters[x] == alphabet_.noStitch) weight += beliefs.asGap[x];
    }
    for (std::size_t i = 0; i < std::min(most, testimonies_.size()); ++i)
        weight += kTestimonyWeight * testimonies_[i].weightOf(beliefs.views[i], letters);
    return weight;
}

std::vector<Beliefs::Witness> Beliefs::witnesses(int row, int column,
                                                 Alphabet::Letter letter) const {
    std::vector<Witness> found;
    const GridPlace self{column - 1, row - grid_.firstRow()};
    for (const Testimony& testimony : testimonies_) {
        const SymmetryMap& map = testimony.map();
        for (const GridPlace& place : {imageOf(map, self), originOf(map, self)}) {
            if (!place.inside() || place == self) continue;
            const auto there = grid_.at(place.x, place.y);
            if (there < 0) continue;
            const auto seen =
                map.mirror ? alphabet_.mirrors[static_cast<std::size_t>(there)] : there;
            if (seen == letter) found.push_back({place, map.mirror});
        }
    }
    return found;
}

}  // namespace lacewright
