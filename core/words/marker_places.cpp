#include "core/words/marker_places.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr int kMostPasses = 1000;  // of rows that a sentence repeats

bool goesToLandmark(const Elements& elements) {
    return std::any_of(elements.begin(), elements.end(), [](const Element& element) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        const auto* group = std::get_if<Group>(&element.what);
        return (stretch && stretch->to != Landmark::None) || (group && goesToLandmark(group->body));
    });
}

Side sideAfter(const WrittenPattern& pattern, Side side) {
    const bool turned = pattern.worked == Worked::Flat && side == Side::Right;
    return turned ? Side::Wrong : Side::Right;
}

// All rows of one size in working order.
class Follow {
 public:
    Follow(const WrittenPattern& pattern, std::size_t size)
        : pattern_(pattern), size_(size), needle_(pattern, size) {}

    LandmarkTimes run() {
        std::size_t again = 0;
        for (const WrittenRow& row : pattern_.rows) {
            side_ = row.side;
            if (!needle_.work(row, side_, found_)) break;
            for (; again < pattern_.again.size() && pattern_.again[again].after <= row.number;
                 ++again)
                workAgain(pattern_.again[again]);
        }
        return std::move(found_);
    }

 private:
    void workAgain(const RowsAgain& again) {
        const int passes = again.until ? kMostPasses : again.times.of(size_);
        for (int pass = 0; pass < std::min(passes, kMostPasses); ++pass) {
            if (again.until && needle_.loops() == again.until->of(size_)) return;
            for (const WrittenRow& row : pattern_.rows) {
                if (row.number < again.first || row.number > again.last) continue;
                side_ = sideAfter(pattern_, side_);
                if (needle_.work(row, side_, found_)) continue;
                found_.clear();  // what holds for the first pass need not hold for this one
                return;
            }
        }
    }

    const WrittenPattern& pattern_;
    std::size_t size_;
    LandmarkFollower needle_;
    LandmarkTimes found_;
    Side side_ = Side::Right;
};

void putTimes(Elements& elements, const std::vector<LandmarkTimes>& found) {
    for (Element& element : elements) {
        if (auto* group = std::get_if<Group>(&element.what)) {
            putTimes(group->body, found);
        } else if (auto* choice = std::get_if<Choice>(&element.what)) {
            for (Reading& reading : choice->readings) putTimes(reading.elements, found);
        } else if (auto* stretch = std::get_if<Stretch>(&element.what)) {
            Figure times;
            times.bySize.clear();
            for (const LandmarkTimes& ofSize : found) {
                const auto at = ofSize.find(stretch);
                if (at != ofSize.end() && at->second >= 0) times.bySize.push_back(at->second);
            }
            if (times.bySize.size() != found.size()) continue;
            Group settled{std::move(stretch->body), std::move(times), {}};
            element.what = std::move(settled);
        }
    }
}

}  // namespace

bool goesToLandmark(const WrittenPattern& pattern) {
    return std::any_of(pattern.rows.begin(), pattern.rows.end(),
                       [](const WrittenRow& row) { return goesToLandmark(row.elements); });
}

WrittenRow settledRow(WrittenRow row, Side side, LandmarkFollower& needle) {
    std::vector<LandmarkTimes> found(1);
    if (needle.work(row, side, found.front())) putTimes(row.elements, found);
    return row;
}

void settleMarkers(WrittenPattern& pattern) {
    if (!pattern.castOn || !goesToLandmark(pattern)) return;
    std::vector<LandmarkTimes> found;
    for (std::size_t size = 0; size < pattern.sizeCount(); ++size)
        found.push_back(Follow(pattern, size).run());
    for (WrittenRow& row : pattern.rows) putTimes(row.elements, found);
}

}  // namespace lacewright
