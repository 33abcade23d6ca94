#include "core/check/testimony.h"

#include <algorithm>
#include <cmath>

namespace lacewright {
namespace {

constexpr double kLeastHeld = 0.05;  // weight of rows for which the map does not hold
constexpr double kHeldBefore = 0.7;  // of one pair of rows thought to have been seen as well
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

void Testimony::Landing::add(const Landing& other, double times) {
    cells += times * other.cells;
    figures += times * other.figures;
    both += times * other.both;
    same += times * other.same;
}

Testimony::Testimony(const LetterGrid& grid, const Alphabet& alphabet, SymmetryMap map)
    : grid_(grid), alphabet_(alphabet), map_(map) {
    Landing all;
    for (int y = 0; y < grid.height(); ++y) {
        landings_.push_back(landingOf(y));
        all.add(landings_.back(), 1);
    }
    const auto odds = oddsFrom(all);
    for (int y = 0; y < grid.height(); ++y) {
        const bool tells = landings_[static_cast<std::size_t>(y)].cells > 0;
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
Testimony::Landing Testimony::landingOf(int y) const {
    Landing landing;
    bool here = false;
    bool there = false;
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace place = imageOf(map_, {x, y});
        if (!place.inside() || place == GridPlace{x, y}) continue;
        const auto cell = grid_.at(x, y);
        const auto image = grid_.at(place.x, place.y);
        if (cell < 0 || image < 0) continue;
        const bool a = cell > 0;
        const bool b = image > 0;
        here = here || a;
        there = there || b;
        ++landing.cells;
        landing.figures += (a ? 1 : 0) + (b ? 1 : 0);
        if (!a || !b) continue;
        ++landing.both;
        const auto like = map_.mirror ? alphabet_.mirrors[static_cast<std::size_t>(cell)] : cell;
        if (image == like) ++landing.same;
    }
    return here && there ? landing : Landing{};
}

std::vector<float> Testimony::oddsFrom(const Landing& landing) const {
    const double mixedHalf = (landing.figures - 2 * landing.both) / 2;
    const double onGround = landing.cells - landing.figures + landing.both;
    const double figures = landing.both + mixedHalf + 1;
    const double ground = onGround + mixedHalf + 1;
    const double groundShare = std::log(ground / (ground + figures));
    const double figureShare = std::log(figures / (ground + figures));
    const double others = std::max(1.0, alphabet_.size() - 2.0);
    const double groundGivesGround = std::log((onGround + 0.5) / ground) - groundShare;
    const double figureGivesGround = std::log((mixedHalf + 0.5) / figures) - groundShare;
    const double groundGivesFigure = std::log((mixedHalf + 0.5) / ground) - figureShare;
    const double givesLike = std::log((landing.same + 0.25) / figures) - figureShare;
    const double givesOther =
        std::log((landing.both - landing.same + 0.25) / figures / others) - figureShare;
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    std::vector<float> odds(letters * letters);
    for (std::size_t image = 0; image < letters; ++image) {
        const auto like = map_.mirror ? static_cast<std::size_t>(alphabet_.mirrors[image]) : image;
        const double share = image == 0 ? 0 : std::log(alphabet_.shares[image]);
        for (std::size_t cell = 0; cell < letters; ++cell) {
            double log = 0;
            if (image == 0) {
                log = cell == 0 ? groundGivesGround : figureGivesGround;
            } else if (cell == 0) {
                log = groundGivesFigure;
            } else {
                log = (cell == like ? givesLike : givesOther) - share;
            }
            odds[image * letters + cell] = static_cast<float>(log);
        }
    }
    return odds;
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
    return map_.mirror && map_.dy == 0 ? sum / 2 : sum;  // every pair seen from both ends
}

Testimony::View Testimony::viewOn(int y) const {
    const int from = originRow(y);
    Landing others;
    double held = kHeldBefore * kSeenBefore;
    double seen = kSeenBefore;
    for (int other = 0; other < grid_.height(); ++other) {
        const auto& landing = landings_[static_cast<std::size_t>(other)];
        if (other == y || other == from || landing.cells <= 0) continue;
        const double holds = holds_[static_cast<std::size_t>(other)];
        others.add(landing, std::max(kLeastHeld, holds));
        held += holds;
        ++seen;
    }
    View view{oddsFrom(others), std::clamp(held / seen, 0.02, 0.98), {}, {}, {}};
    bool twice = true;  // carried there and back: the same witness
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace to = imageOf(map_, {x, y});
        const GridPlace back = originOf(map_, {x, y});
        if (map_.dy == 0) {
            view.within.push_back(to.inside() && to.x != x ? to.x : -1);
            continue;
        }
        view.images.push_back(to.inside() ? grid_.at(to.x, to.y) : Alphabet::kNone);
        view.origins.push_back(back.inside() ? grid_.at(back.x, back.y) : Alphabet::kNone);
        twice = twice && to == back;
    }
    if (twice) view.origins.clear();
    return view;
}

void Testimony::addFromRow(int y, const std::vector<Alphabet::Letter>& others, const View& view,
                           std::vector<float>& weights) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    double sum = 0;
    for (int x = 0; x < static_cast<int>(others.size()); ++x) {
        const auto there = others[static_cast<std::size_t>(x)];
        const auto cell = grid_.at(x, y);
        if (cell >= 0 && there >= 0) sum += view.odds[at(there, cell)];
    }
    // What a letter adds is the same wherever cell and image hold the same letters.
    std::vector<float> known(letters * letters * letters);
    std::vector<bool> isKnown(letters * letters);
    for (int x = 0; x < static_cast<int>(others.size()); ++x) {
        const auto there = others[static_cast<std::size_t>(x)];
        const auto cell = grid_.at(x, y);
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
        float* weight = &weights[static_cast<std::size_t>(x) * letters];
        for (std::size_t z = 0; z < letters; ++z) weight[z] += logs[z];
    }
}

// Both ends of a pair lie in the row itself.
void Testimony::addWithinRow(int y, const View& view, std::vector<float>& weights) const {
    const auto letters = static_cast<std::size_t>(alphabet_.size());
    const double sum = agreement(y, view.odds);
    for (int x = 0; x < grid_.width(); ++x) {
        const GridPlace self{x, y};
        const auto cell = grid_.at(x, y);
        const GridPlace to = imageOf(map_, self);
        const GridPlace from = originOf(map_, self);
        const auto letterAt = [&](const GridPlace& place) {
            return !place.inside() || place == self ? Alphabet::kNone : grid_.at(place.x, place.y);
        };
        const auto image = letterAt(to);
        const auto origin = map_.mirror ? Alphabet::kNone : letterAt(from);
        if (cell < 0 || (image < 0 && origin < 0)) continue;
        const auto oddsOf = [&](Alphabet::Letter z) {
            return (image < 0 ? 0.0 : view.odds[at(image, z)]) +
                   (origin < 0 ? 0.0 : view.odds[at(z, origin)]);
        };
        const double rest = sum - oddsOf(cell);
        for (std::size_t z = 0; z < letters; ++z) {
            weights[static_cast<std::size_t>(x) * letters + z] += static_cast<float>(
                mixed(rest + oddsOf(static_cast<Alphabet::Letter>(z)), view.holds));
        }
    }
}

void Testimony::addTo(int y, const View& view, std::vector<float>& weights) const {
    if (map_.dy == 0) return addWithinRow(y, view, weights);
    addFromRow(y, view.images, view, weights);
    addFromRow(y, view.origins, view, weights);
}

double Testimony::weightOf(const View& view, const std::vector<Alphabet::Letter>& letters) const {
    double weight = 0;
    for (const auto* others : {&view.images, &view.origins}) {
        double sum = 0;
        for (std::size_t x = 0; x < others->size(); ++x) {
            if (letters[x] >= 0 && (*others)[x] >= 0)
                sum += view.odds[at((*others)[x], letters[x])];
        }
        if (!others->empty()) weight += mixed(sum, view.holds);
    }
    double sum = 0;
    for (std::size_t x = 0; x < view.within.size(); ++x) {
        if (view.within[x] < 0 || letters[x] < 0) continue;
        const auto there = letters[static_cast<std::size_t>(view.within[x])];
        if (there >= 0) sum += view.odds[at(there, letters[x])];
    }
    if (map_.mirror) sum /= 2;  // every pair seen from both ends
    if (!view.within.empty()) weight += mixed(sum, view.holds);
    return weight;
}

}  // namespace lacewright
