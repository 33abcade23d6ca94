#include "core/check/testimony.h"

#include <algorithm>
#include <cmath>

#include "core/check/figure_pairs.h"

namespace lacewright {
namespace {

constexpr double kLeastHeld = 0.05;  // weight of rows for which the map does not hold
constexpr double kHeldBefore = 0.9;  // of one pair of rows thought to have been seen as well
constexpr double kSeenBefore = 1.0;

// Log odds of a pair of rows against no relation, when the map holds for some pairs only.
double mixed(double agreement, double holds) {
    return agreement > 30 ? agreement + std::log(holds)
                          : std::log(holds * std::exp(agreement) + 1 - holds);
}

double logistic(double x) {
    return 1 / (1 + std::exp(-x));
}

}  // namespace

Testimony::Testimony(const LetterGrid& grid, const Alphabet& alphabet, SymmetryMap map)
    : grid_(grid),
      alphabet_(alphabet),
      map_(map),
      bothEnds_(map.dy == 0 && isInvolution(map.region, map.mirror, map.dx, map.dy)) {
    Overlay all;
    for (int y = 0; y < grid.height(); ++y) {
        overlays_.push_back(overlayOf(y));
        all.add(overlays_.back(), 1);
    }
    const auto odds = oddsFrom(all, alphabet, map.mirror);
    for (int y = 0; y < grid.height(); ++y) {
        const bool tells = overlays_[static_cast<std::size_t>(y)].cells > 0;
        holds_.push_back(tells ? logistic(agreement(y, odds)) : 0);
    }
}

std::size_t Testimony::at(Alphabet::Letter image, Alphabet::Letter cell) const {
    return static_cast<std::size_t>(image) * static_cast<std::size_t>(alphabet_.size()) +
           static_cast<std::size_t>(cell);
}

int Testimony::originRow(int y) const {
    const SymmetryRegion& region = map_.region;
    if (y < region.bottom || y >= region.bottom + region.height) return -1;
    int there = y - region.bottom - map_.dy;
    if (region.wrapsUp) there = (there + region.height) % region.height;
    return there >= 0 ? region.bottom + there : -1;
}

// Rows without figures say nothing: that they are plain is no news.
Overlay Testimony::overlayOf(int y) const {
    Overlay overlay;
    bool here = false;
    bool there = false;
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace place = imageOf(map_, {x, y});
        if (!place.inside() || place == GridPlace{x, y}) continue;
        const auto cell = grid_.at(x, y);
        const auto image = grid_.at(place.x, place.y);
        if (cell < 0 || image < 0) continue;
        here = here || cell > 0;
        there = there || image > 0;
        overlay.put(alphabet_, map_.mirror, cell, image);
    }
    return here && there ? overlay : Overlay{};
}

// Log likelihood of a row's images, if the map holds, against no relation.
double Testimony::agreement(int y, const std::vector<float>& odds) const {
    double sum = 0;
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace place = imageOf(map_, {x, y});
        if (!place.inside() || place == GridPlace{x, y}) continue;
        const auto cell = grid_.at(x, y);
        const auto image = grid_.at(place.x, place.y);
        if (cell >= 0 && image >= 0) sum += odds[at(image, cell)];
    }
    return bothEnds_ ? sum / 2 : sum;
}

Testimony::View Testimony::viewOn(int y) const {
    const int from = originRow(y);
    Overlay others;
    double held = kHeldBefore * kSeenBefore;
    double seen = kSeenBefore;
    for (int other = 0; other < grid_.height(); ++other) {
        const auto& overlay = overlays_[static_cast<std::size_t>(other)];
        if (other == y || other == from || overlay.cells <= 0) continue;
        const double holds = holds_[static_cast<std::size_t>(other)];
        others.add(overlay, std::max(kLeastHeld, holds));
        held += holds;
        ++seen;
    }
    View view{oddsFrom(others, alphabet_, map_.mirror),
              std::clamp(held / seen, 0.02, 0.98),
              {},
              {},
              {},
              {}};
    bool twice = true;  // carried there and back
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace to = imageOf(map_, {x, y});
        const GridPlace back = originOf(map_, {x, y});
        if (map_.dy == 0) {
            view.to.push_back(to.x == x ? -1 : to.x);
            view.from.push_back(bothEnds_ || back.x == x ? -1 : back.x);
            continue;
        }
        view.images.push_back(to.inside() ? grid_.at(to.x, to.y) : Alphabet::kNone);
        view.origins.push_back(back.inside() ? grid_.at(back.x, back.y) : Alphabet::kNone);
        twice = twice && to == back;
    }
    if (twice) view.origins.clear();
    return view;
}

std::vector<Alphabet::Letter> Testimony::lettersOf(int y) const {
    std::vector<Alphabet::Letter> letters;
    letters.reserve(static_cast<std::size_t>(grid_.width()));
    for (int x = 0; x < grid_.width(); ++x) letters.push_back(grid_.at(x, y));
    return letters;
}

double Testimony::sumFromRow(const View& view, const std::vector<Alphabet::Letter>& others,
                             const std::vector<Alphabet::Letter>& letters) const {
    double sum = 0;
    for (std::size_t x = 0; x < others.size(); ++x) {
        if (letters[x] >= 0 && others[x] >= 0) sum += view.odds[at(others[x], letters[x])];
    }
    return sum;
}

// What two cells of one row say of one another; where either is the other's image, the mean.
double Testimony::pairOdds(const View& view, Alphabet::Letter image, Alphabet::Letter cell) const {
    const double there = view.odds[at(image, cell)];
    return bothEnds_ ? (there + view.odds[at(cell, image)]) / 2 : there;
}

// All that hangs on one cell of a row, if it holds `cell`.
double Testimony::cellWithinRow(const View& view, const std::vector<Alphabet::Letter>& letters,
                                std::size_t x, Alphabet::Letter cell) const {
    const auto letterAt = [&](int place) {
        return place < 0 ? Alphabet::kNone : letters[static_cast<std::size_t>(place)];
    };
    const auto image = letterAt(view.to[x]);
    const auto origin = letterAt(view.from[x]);
    return (image < 0 ? 0 : pairOdds(view, image, cell)) +
           (origin < 0 ? 0 : pairOdds(view, cell, origin));
}

double Testimony::sumWithinRow(const View& view,
                               const std::vector<Alphabet::Letter>& letters) const {
    double sum = 0;
    for (std::size_t x = 0; x < view.to.size(); ++x) {
        if (letters[x] >= 0) sum += cellWithinRow(view, letters, x, letters[x]);
    }
    return sum / 2;  // every pair hangs on two cells
}

void Testimony::addFromRow(const std::vector<Alphabet::Letter>& drawn,
                           const std::vector<Alphabet::Letter>& others, const View& view,
                           std::vector<float>& weights) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    const double sum = sumFromRow(view, others, drawn);
    // What a letter adds is the same wherever cell and image hold the same letters.
    std::vector<float> known(letters * letters * letters);
    std::vector<bool> isKnown(letters * letters);
    for (std::size_t x = 0; x < others.size(); ++x) {
        const auto there = others[x];
        const auto cell = drawn[x];
        if (there < 0 || cell < 0) continue;
        float* logs = &known[at(there, cell) * letters];
        if (!isKnown[at(there, cell)]) {
            isKnown[at(there, cell)] = true;
            for (std::size_t z = 0; z < letters; ++z) {
                const double other = sum - view.odds[at(there, cell)] +
                                     view.odds[at(there, static_cast<Alphabet::Letter>(z))];
                logs[z] = static_cast<float>(mixed(other, view.holds));
            }
        }
        for (std::size_t z = 0; z < letters; ++z) weights[x * letters + z] += logs[z];
    }
}

void Testimony::addWithinRow(const std::vector<Alphabet::Letter>& drawn, const View& view,
                             std::vector<float>& weights) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    const double sum = sumWithinRow(view, drawn);
    for (std::size_t x = 0; x < drawn.size(); ++x) {
        if (drawn[x] < 0 || (view.to[x] < 0 && view.from[x] < 0)) continue;
        const double rest = sum - cellWithinRow(view, drawn, x, drawn[x]);
        for (std::size_t z = 0; z < letters; ++z) {
            const double other =
                rest + cellWithinRow(view, drawn, x, static_cast<Alphabet::Letter>(z));
            weights[x * letters + z] += static_cast<float>(mixed(other, view.holds));
        }
    }
}

void Testimony::addTo(int y, const View& view, std::vector<float>& weights) const {
    const auto drawn = lettersOf(y);
    if (map_.dy == 0) return addWithinRow(drawn, view, weights);
    addFromRow(drawn, view.images, view, weights);
    addFromRow(drawn, view.origins, view, weights);
}

double Testimony::weightOf(const View& view, const std::vector<Alphabet::Letter>& letters) const {
    if (map_.dy == 0) return mixed(sumWithinRow(view, letters), view.holds);
    double weight = 0;
    for (const auto* others : {&view.images, &view.origins}) {
        if (!others->empty()) weight += mixed(sumFromRow(view, *others, letters), view.holds);
    }
    return weight;
}

}  // namespace lacewright
