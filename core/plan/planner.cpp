#include "core/plan/planner.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "core/chart/edit_steps.h"
#include "core/plan/gauge.h"

namespace lacewright {
namespace {

constexpr double kMostCm = 10'000;

std::optional<Error> problemWith(const Chart& chart, const PlanRequest& request) {
    const auto isGauge = [](double gauge) { return gauge > 0 && gauge <= kMaxGauge; };
    if (!isGauge(request.gauge.stitches) || !isGauge(request.gauge.rows)) {
        return outOfRange("Planning sizes needs a gauge above 0 and of at most " +
                          std::to_string(kMaxGauge) + " stitches and rows over 10 cm.");
    }
    if (chart.height() == 0 || chart.width > kMostPlannedColumns) {
        return refusal("Sizes can be planned for charts of up to " +
                       std::to_string(kMostPlannedColumns) + " columns.");
    }
    if (request.multiple < 1 || request.multiple > kMaxWidth || request.remainder < 0 ||
        request.remainder >= request.multiple) {
        return outOfRange("The stitches can be a multiple of 1 to " + std::to_string(kMaxWidth) +
                          ", plus less than that.");
    }
    if (request.edgeStitches < 0 || request.edgeStitches > kMaxWidth ||
        !(request.toleranceCm >= 0 && request.toleranceCm <= kMostCm)) {
        return outOfRange("Edge stitches and tolerance must not be below 0 or too large.");
    }
    if (request.sizes.empty() || request.sizes.size() > static_cast<std::size_t>(kMaxSizes)) {
        return outOfRange("From 1 to " + std::to_string(kMaxSizes) + " sizes can be planned.");
    }
    if (request.pieces < 1 || request.pieces > kMaxPieces) {
        return outOfRange("From 1 to " + std::to_string(kMaxPieces) +
                          " pieces can go round a body.");
    }
    for (const auto& [repeat, times] : request.held) {
        if (chart.findRepeat(repeat) == nullptr)
            return notFound("The chart has no repeat " + repeat + ".");
        if (times < 0 || times > kMaxTimes) {
            return outOfRange("Repeat " + repeat + " can be worked 0 to " +
                              std::to_string(kMaxTimes) + " times.");
        }
    }
    std::set<std::string> names;
    for (const WantedWidth& size : request.sizes) {
        if (size.name.empty() || !names.insert(size.name).second)
            return refusal("Every size needs a name of its own.");
        if (!(size.cm > 0 && size.cm <= kMostCm))
            return outOfRange("Size " + size.name + ": a width must be above 0 and at most 100 m.");
        if (size.body && !(*size.body > 0 && *size.body <= kMaxBody))
            return outOfRange("Size " + size.name + ": a body must be above 0 and at most 100 m.");
    }
    return std::nullopt;
}

// Whole micrometres, so that equal lengths compare as equal.
std::int64_t exact(double cm) {
    return std::llround(cm * 1e4);
}

// The most times at which no repeat is worked more often than a chart may say; 0 when nothing
// depends on it.
int mostTimes(const RepeatShares& shares) {
    int each = 0;
    for (const RepeatShare& share : shares) each = std::max(each, share.each);
    return each == 0 ? 0 : kMaxTimes / each;
}

class SizePlanner {
 public:
    SizePlanner(const Chart& chart, const PlanRequest& request, const RepeatShares& shares,
                const std::vector<EdgePair>& pairs, const WantedWidth& wanted)
        : chart_(chart),
          request_(request),
          shares_(shares),
          wanted_(wanted),
          present_(chart.findSize(wanted.name)),
          mostTimes_(mostTimes(shares)) {
        for (const EdgePair& pair : pairs) addChoices(pair);
    }

    std::optional<PlannedSize> plan() {
        if (choices_.empty()) return std::nullopt;
        PlannedSize planned;
        planned.wanted = wanted_;
        planned.chosen = best([&](const EdgeChoice& c) {
            return std::tuple(isNarrow(c), !c.fits, c.parted, beyondTolerance(c));
        });
        const EdgeChoice& chosen = planned.chosen;
        const EdgeChoice nearest = best([](const EdgeChoice& c) {
            return std::tuple(exact(std::abs(c.differenceCm)), !c.fits, c.parted);
        });
        if (exact(std::abs(nearest.differenceCm)) < exact(std::abs(chosen.differenceCm)))
            planned.nearer = nearest;
        const EdgeChoice centred = best([&](const EdgeChoice& c) {
            return std::tuple(isNarrow(c), !c.fits, c.parted, std::int64_t{c.offCentre});
        });
        if (centred.fits == chosen.fits && centred.parted == chosen.parted &&
            centred.offCentre < chosen.offCentre)
            planned.centred = centred;
        return planned;
    }

 private:
    // Less than half as wide as wanted: no size of that name, however well its rows fit.
    bool isNarrow(const EdgeChoice& choice) const {
        return exact(2 * choice.cm) < exact(wanted_.cm);
    }

    std::int64_t beyondTolerance(const EdgeChoice& choice) const {
        return std::max<std::int64_t>(
            0, exact(std::abs(choice.differenceCm)) - exact(request_.toleranceCm));
    }

    void add(const EdgePair& pair, std::int64_t times) {
        const std::int64_t stitches = pair.once + times * pair.each;
        const std::int64_t all = stitches + 2 * std::int64_t{request_.edgeStitches};
        if (stitches < 1 || all > kMaxNeedle) return;
        EdgeChoice choice;
        choice.reach = pair.reach;
        choice.times = static_cast<int>(times);
        choice.stitches = static_cast<int>(stitches);
        choice.cm = lengthOf(static_cast<int>(all), request_.gauge.stitches);
        choice.differenceCm = choice.cm - wanted_.cm;
        choice.fits = pair.fits(choice.times);
        choice.parted = pair.parted;
        choice.offCentre = pair.offCentre;
        choices_.push_back(choice);
    }

    bool meetsMultiple(const EdgePair& pair, std::int64_t times) const {
        const std::int64_t all =
            pair.once + times * pair.each + 2 * std::int64_t{request_.edgeStitches};
        return all % request_.multiple == request_.remainder;
    }

    // All times whose width lies within the tolerance, the nearest below and above it, and the one
    // at which alone the rows fit.
    void addChoices(const EdgePair& pair) {
        if (mostTimes_ == 0 || pair.each <= 0) {
            const int times = mostTimes_ == 0 ? 0 : 1;
            if (meetsMultiple(pair, times)) add(pair, times);
            return;
        }
        const double perStitch = 10 / request_.gauge.stitches;
        const double wanted = wanted_.cm / perStitch - 2 * request_.edgeStitches;
        const auto each = static_cast<double>(pair.each);
        const double middle = (wanted - static_cast<double>(pair.once)) / each;
        const double reach = request_.toleranceCm / perStitch / each;
        const auto clamped = [this](double times) {
            return std::clamp<std::int64_t>(static_cast<std::int64_t>(times), 1, mostTimes_);
        };
        std::int64_t low = clamped(std::floor(middle - reach));
        std::int64_t high = clamped(std::ceil(middle + reach));
        for (int step = 0; step < request_.multiple && low > 1 && !meetsMultiple(pair, low); ++step)
            --low;
        for (int step = 0;
             step < request_.multiple && high < mostTimes_ && !meetsMultiple(pair, high); ++step)
            ++high;
        for (std::int64_t times = low; times <= high; ++times) {
            if (meetsMultiple(pair, times)) add(pair, times);
        }
        const bool alone =
            !pair.fitsAlways && pair.fitsAt && *pair.fitsAt >= 1 && *pair.fitsAt <= mostTimes_;
        if (alone && (*pair.fitsAt < low || *pair.fitsAt > high) &&
            meetsMultiple(pair, *pair.fitsAt))
            add(pair, *pair.fitsAt);
    }

    // The least by `key`, then as planSizes says. Mirror pictures are looked for only among those
    // that are alike by key.
    template <class Key>
    EdgeChoice best(Key key) const {
        std::vector<EdgeChoice> alike;
        for (const EdgeChoice& choice : choices_) {
            if (!alike.empty() && key(alike.front()) < key(choice)) continue;
            if (!alike.empty() && key(choice) < key(alike.front())) alike.clear();
            alike.push_back(choice);
        }
        for (EdgeChoice& choice : alike)
            choice.mirrored = isMirrored(chart_, choice.reach, passesAt(shares_, choice.times));
        const auto rest = [this](const EdgeChoice& c) {
            const bool moves = present_ != nullptr && present_->reach != c.reach;
            return std::tuple(!c.mirrored, c.offCentre, exact(std::abs(c.differenceCm)), c.stitches,
                              moves, c.reach.start, c.reach.end);
        };
        return *std::min_element(
            alike.begin(), alike.end(),
            [&](const EdgeChoice& a, const EdgeChoice& b) { return rest(a) < rest(b); });
    }

    const Chart& chart_;
    const PlanRequest& request_;
    const RepeatShares& shares_;
    const WantedWidth& wanted_;
    const Size* present_;  // null when the chart has no size of that name
    int mostTimes_;        // 0: every repeat is held
    std::vector<EdgeChoice> choices_;
};

}  // namespace

Result<Plan> planSizes(const Chart& chart, const PlanRequest& request) {
    if (const auto problem = problemWith(chart, request)) return *problem;
    const RepeatShares shares = repeatShares(chart, request.held);
    const std::vector<EdgePair> pairs = edgePairs(chart, shares);
    Plan plan{request.gauge, request.edgeStitches, request.pieces, shares, {}};
    for (const WantedWidth& wanted : request.sizes) {
        auto planned = SizePlanner(chart, request, shares, pairs, wanted).plan();
        if (!planned) {
            return refusal("Size " + wanted.name +
                           ": no columns of this chart give the multiple wanted.");
        }
        plan.sizes.push_back(std::move(*planned));
    }
    return plan;
}

}  // namespace lacewright
