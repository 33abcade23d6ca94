#include "core/words/marker_places.h"

#include <algorithm>
#include <utility>

#include "core/words/pieces.h"
#include "core/words/row_loops.h"

namespace lacewright {

namespace {

constexpr int kMostPasses = 1000;                // of rows that a sentence repeats
constexpr std::size_t kMostWrittenOut = 20'000;  // elements of one row

bool goesToLandmark(const Elements& elements) {
    return std::any_of(elements.begin(), elements.end(), [](const Element& element) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        const auto* group = std::get_if<Group>(&element.what);
        return (stretch && (stretch->to != Landmark::None || goesToLandmark(stretch->body))) ||
               (group && goesToLandmark(group->body));
    });
}

// Repeats whose parts go to landmarks are written out part by part, since each may be of another
// length. `inAll`: which of the two readings of "rep from * 3 times" is taken.
void writeOut(Elements& elements, bool inAll, std::size_t& written) {
    Elements out;
    for (Element& element : elements) {
        auto* group = std::get_if<Group>(&element.what);
        if (group == nullptr || !goesToLandmark(group->body)) {
            out.push_back(std::move(element));
            continue;
        }
        writeOut(group->body, inAll, written);
        const Figure& times = inAll && group->orTimes ? *group->orTimes : group->times;
        const auto count = static_cast<std::size_t>(std::max(0, times.of(0)));
        const bool alike = std::all_of(times.bySize.begin(), times.bySize.end(),
                                       [&](int n) { return n == times.of(0); });
        if (!alike || (written += count * elementCount(group->body)) > kMostWrittenOut) {
            out.push_back(std::move(element));
            continue;
        }
        for (std::size_t i = 0; i < count; ++i)
            out.insert(out.end(), group->body.begin(), group->body.end());
    }
    elements = std::move(out);
}

Side sideAfter(const WrittenPattern& pattern, Side side) {
    const bool turned = pattern.worked == Worked::Flat && side == Side::Right;
    return turned ? Side::Wrong : Side::Right;
}

void putTimes(Elements& elements, const std::vector<LandmarkTimes>& found) {
    for (Element& element : elements) {
        if (auto* group = std::get_if<Group>(&element.what)) {
            putTimes(group->body, found);
        } else if (auto* choice = std::get_if<Choice>(&element.what)) {
            for (Reading& reading : choice->readings) putTimes(reading.elements, found);
        } else if (auto* stretch = std::get_if<Stretch>(&element.what)) {
            putTimes(stretch->body, found);
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

// The row as it is worked from landmark to landmark, every repeat among them written out.
WrittenRow writtenOut(const WrittenRow& row, Side side,
                      const std::vector<LandmarkFollower>& needles) {
    for (const bool inAll : {false, true}) {
        WrittenRow out = row;
        std::size_t written = 0;
        writeOut(out.elements, inAll, written);
        std::vector<LandmarkTimes> found(needles.size());
        std::size_t followed = 0;
        for (; followed < needles.size(); ++followed) {
            LandmarkFollower needle = needles[followed];
            if (!needle.work(out, side, found[followed])) break;
        }
        if (followed < needles.size()) continue;
        // Those that go on to the end become groups, which are written out in their turn.
        const auto repeats = [](const Element& element) {
            const auto* stretch = std::get_if<Stretch>(&element.what);
            return stretch != nullptr && goesToLandmark(stretch->body);
        };
        if (std::none_of(out.elements.begin(), out.elements.end(), repeats)) return out;
        for (LandmarkTimes& ofSize : found) {
            std::erase_if(ofSize, [](const auto& at) { return !goesToLandmark(at.first->body); });
        }
        putTimes(out.elements, found);
        writeOut(out.elements, inAll, written);
        return out;
    }
    // A row that does not fit is counted as it usually would be read.
    WrittenRow out = row;
    std::size_t written = 0;
    writeOut(out.elements, false, written);
    return out;
}

// All rows in working order, for every size at once.
class Follow {
 public:
    explicit Follow(WrittenPattern& pattern) : pattern_(pattern), found_(pattern.sizeCount()) {
        for (std::size_t size = 0; size < found_.size(); ++size)
            needles_.emplace_back(pattern, size);
    }

    std::vector<LandmarkTimes> run() {
        std::size_t again = 0;
        for (WrittenRow& row : pattern_.rows) {
            side_ = row.side;
            if (goesToLandmark(row.elements)) row = writtenOut(row, side_, needles_);
            for (std::size_t size = 0; size < needles_.size(); ++size) {
                if (row.isFor(size)) needles_[size].work(row, side_, found_[size]);
            }
            for (; again < pattern_.again.size() && pattern_.again[again].after <= row.number;
                 ++again)
                workAgain(pattern_.again[again]);
        }
        return std::move(found_);
    }

 private:
    void workAgain(const RowsAgain& again) {
        const Side start = side_;
        for (std::size_t size = 0; size < needles_.size(); ++size) {
            side_ = start;
            workAgain(again, size);
        }
    }

    void workAgain(const RowsAgain& again, std::size_t size) {
        LandmarkFollower& needle = needles_[size];
        const int passes = again.until ? kMostPasses : again.times.of(size);
        for (int pass = 0; pass < std::min(passes, kMostPasses); ++pass) {
            if (again.until && needle.loops() == again.until->of(size)) return;
            for (const WrittenRow& row : pattern_.rows) {
                if (row.number < again.first || row.number > again.last || !row.isFor(size))
                    continue;
                side_ = sideAfter(pattern_, side_);
                if (needle.work(row, side_, found_[size])) continue;
                found_[size].clear();  // what holds for the first pass need not hold for this one
                return;
            }
        }
    }

    WrittenPattern& pattern_;
    std::vector<LandmarkFollower> needles_;  // by size
    std::vector<LandmarkTimes> found_;
    Side side_ = Side::Right;
};

}  // namespace

bool goesToLandmark(const WrittenPattern& pattern) {
    return std::any_of(pattern.rows.begin(), pattern.rows.end(),
                       [](const WrittenRow& row) { return goesToLandmark(row.elements); });
}

bool placesItsMarkers(const WrittenPattern& pattern) {
    if (pattern.marksElsewhere) return false;
    return std::any_of(pattern.rows.begin(), pattern.rows.end(), [](const WrittenRow& row) {
        return goesToLandmark(row.elements) || slipsMarkers(row.elements);
    });
}

WrittenRow settledRow(WrittenRow row, Side side, LandmarkFollower& needle) {
    std::vector<LandmarkTimes> found(1);
    needle.work(row, side, found.front());
    putTimes(row.elements, found);
    return row;
}

WrittenPattern unsettled(WrittenPattern pattern) {
    for (WrittenRow& row : pattern.rows) {
        if (!row.unsettled.empty()) row.elements = std::exchange(row.unsettled, {});
    }
    return pattern;
}

void settleMarkers(WrittenPattern& pattern) {
    if (!pattern.pieces.empty()) {
        auto row = pattern.rows.begin();
        for (WrittenPattern& piece : piecesOf(pattern)) {
            settleMarkers(piece);
            row = std::move(piece.rows.begin(), piece.rows.end(), row);
        }
        return;
    }
    if (!pattern.castOn || !goesToLandmark(pattern)) return;
    for (WrittenRow& row : pattern.rows) {
        if (row.unsettled.empty() && goesToLandmark(row.elements)) row.unsettled = row.elements;
    }
    const std::vector<LandmarkTimes> found = Follow(pattern).run();
    for (WrittenRow& row : pattern.rows) putTimes(row.elements, found);
}

}  // namespace lacewright
