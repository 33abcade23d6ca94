#include "core/check/row_odds.h"

#include <algorithm>
#include <cmath>

#include "core/check/log_odds.h"

namespace lacewright {
namespace {

constexpr std::size_t kTries = 12;  // of the likeliest single changes, to find sets that differ

double rescale(std::vector<double>& layer) {
    const double largest = *std::max_element(layer.begin(), layer.end());
    if (largest <= 0) return 0;
    for (double& value : layer) value /= largest;
    return std::log(largest);
}

}  // namespace

RowOdds::RowOdds(std::vector<CellAlternatives> cells, int reach)
    : cells_(std::move(cells)),
      reach_(reach),
      sums_(layersOf(Combine::Sum)),
      bests_(layersOf(Combine::Best)) {}

bool RowOdds::within(int takes, int makes) const {
    return std::abs(takes) <= reach_ && std::abs(makes) <= reach_;
}

std::size_t RowOdds::slot(int takes, int makes) const {
    return static_cast<std::size_t>((takes + reach_) * (2 * reach_ + 1) + makes + reach_);
}

double RowOdds::valueAt(const Layer& layer, int takes, int makes) const {
    return within(takes, makes) ? layer[slot(takes, makes)] : 0;
}

RowOdds::Layer RowOdds::step(const Layer& layer, const CellAlternatives& cell,
                             Combine combine) const {
    Layer next = layer;
    for (int takes = -reach_; takes <= reach_; ++takes) {
        for (int makes = -reach_; makes <= reach_; ++makes) {
            const double here = layer[slot(takes, makes)];
            if (here <= 0) continue;
            for (const Alternative& other : cell.others) {
                if (!within(takes + other.takes, makes + other.makes)) continue;
                double& there = next[slot(takes + other.takes, makes + other.makes)];
                const double value = here * other.odds;
                there = combine == Combine::Sum ? there + value : std::max(there, value);
            }
        }
    }
    return next;
}

RowOdds::Layers RowOdds::layersOf(Combine combine) const {
    const std::size_t n = cells_.size();
    Layer start(slot(reach_, reach_) + 1, 0);
    start[slot(0, 0)] = 1;
    Layers layers{std::vector<Layer>(n + 1, start), std::vector<Layer>(n + 1, start),
                  std::vector<double>(n + 1, 0), std::vector<double>(n + 1, 0)};
    for (std::size_t i = 0; i < n; ++i) {
        layers.from[i + 1] = step(layers.from[i], cells_[i], combine);
        layers.fromScale[i + 1] = layers.fromScale[i] + rescale(layers.from[i + 1]);
        const std::size_t j = n - 1 - i;
        layers.to[j] = step(layers.to[j + 1], cells_[j], combine);
        layers.toScale[j] = layers.toScale[j + 1] + rescale(layers.to[j]);
    }
    return layers;
}

std::vector<RowOdds::Single> RowOdds::singles(int takes, int makes) const {
    std::vector<Single> found;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        for (const Alternative& other : cells_[i].others) {
            if (other.takes == takes && other.makes == makes) found.push_back({i, &other});
        }
    }
    return found;
}

// As if no change were likelier alone.
double RowOdds::logOfSets(int takes, int makes) const {
    return std::log(sums_.to[0][slot(takes, makes)]) + sums_.toScale[0];
}

double RowOdds::logSum(int takes, int makes) const {
    const double sets = logOfSets(takes, makes);
    double largest = sets;
    const auto alone = singles(takes, makes);
    for (const Single& single : alone)
        largest = std::max(largest, std::log(single.other->odds * single.other->alone));
    if (largest == kImpossible) return kImpossible;
    double sum = std::exp(sets - largest);
    for (const Single& single : alone)
        sum += single.other->odds * (single.other->alone - 1) * std::exp(-largest);
    return sum > 0 ? std::log(sum) + largest : kImpossible;
}

std::vector<double> RowOdds::shares(int takes, int makes) const {
    std::vector<double> shares;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        const Layer& before = sums_.from[i];
        const Layer& after = sums_.to[i + 1];
        double kept = 0;
        double changed = 0;
        for (int t = -reach_; t <= reach_; ++t) {
            for (int m = -reach_; m <= reach_; ++m) {
                const double here = before[slot(t, m)];
                if (here <= 0) continue;
                kept += here * valueAt(after, takes - t, makes - m);
                for (const Alternative& other : cells_[i].others) {
                    changed += here * other.odds *
                               valueAt(after, takes - t - other.takes, makes - m - other.makes);
                }
            }
        }
        shares.push_back(changed > 0 ? changed / (kept + changed) : 0);
    }
    const double all = logSum(takes, makes);
    if (all == kImpossible) return shares;
    const double sets = std::exp(logOfSets(takes, makes) - all);
    for (double& share : shares) share *= sets;
    for (const Single& single : singles(takes, makes))
        shares[single.cell] += single.other->odds * (single.other->alone - 1) * std::exp(-all);
    for (double& share : shares) share = std::clamp(share, 0.0, 1.0);
    return shares;
}

// Follows the best way through `layers` from a state to the start: downward through from[], upward
// through to[].
void RowOdds::traceBack(const std::vector<Layer>& layers, bool down, std::size_t i, int takes,
                        int makes, std::vector<LetterChange>& changes) const {
    const std::size_t end = down ? 0 : cells_.size();
    while (i != end) {
        const std::size_t cell = down ? i - 1 : i;
        i = down ? i - 1 : i + 1;
        double best = valueAt(layers[i], takes, makes);
        const Alternative* chosen = nullptr;
        for (const Alternative& other : cells_[cell].others) {
            const double value =
                other.odds * valueAt(layers[i], takes - other.takes, makes - other.makes);
            if (value <= best) continue;
            best = value;
            chosen = &other;
        }
        if (chosen == nullptr) continue;
        changes.push_back({cells_[cell].column, chosen->letter});
        takes -= chosen->takes;
        makes -= chosen->makes;
    }
}

std::vector<LetterRepair> RowOdds::best(int takes, int makes, std::size_t count) const {
    struct Forced {
        double logOdds;
        std::size_t cell;
        const Alternative* other;
        int takesBefore;
        int makesBefore;
    };
    std::vector<Forced> forced;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
        const double scale = bests_.fromScale[i] + bests_.toScale[i + 1];
        for (const Alternative& other : cells_[i].others) {
            Forced top{0, i, &other, 0, 0};
            for (int t = -reach_; t <= reach_; ++t) {
                for (int m = -reach_; m <= reach_; ++m) {
                    const double value =
                        bests_.from[i][slot(t, m)] * other.odds *
                        valueAt(bests_.to[i + 1], takes - t - other.takes, makes - m - other.makes);
                    if (value > top.logOdds) top = {value, i, &other, t, m};
                }
            }
            if (top.logOdds <= 0) continue;
            top.logOdds = std::log(top.logOdds) + scale;
            forced.push_back(top);
        }
    }
    std::stable_sort(forced.begin(), forced.end(),
                     [](const Forced& a, const Forced& b) { return a.logOdds > b.logOdds; });
    if (forced.size() > kTries * count) forced.resize(kTries * count);
    std::vector<LetterRepair> repairs;
    for (const Single& single : singles(takes, makes)) {
        const double odds = single.other->odds * single.other->alone;
        if (odds > 0)
            repairs.push_back(
                {{{cells_[single.cell].column, single.other->letter}}, std::log(odds)});
    }
    std::size_t sets = 0;
    for (const Forced& f : forced) {
        LetterRepair repair{{{cells_[f.cell].column, f.other->letter}}, f.logOdds};
        traceBack(bests_.from, true, f.cell, f.takesBefore, f.makesBefore, repair.changes);
        traceBack(bests_.to, false, f.cell + 1, takes - f.takesBefore - f.other->takes,
                  makes - f.makesBefore - f.other->makes, repair.changes);
        std::sort(repair.changes.begin(), repair.changes.end(),
                  [](const auto& a, const auto& b) { return a.column < b.column; });
        const bool known = std::any_of(repairs.begin(), repairs.end(),
                                       [&](const auto& r) { return r.changes == repair.changes; });
        if (!known) {
            repairs.push_back(std::move(repair));
            ++sets;
        }
        if (sets == count) break;
    }
    std::stable_sort(repairs.begin(), repairs.end(),
                     [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; });
    if (repairs.size() > count) repairs.resize(count);
    return repairs;
}

}  // namespace lacewright
