#include "core/words/marked_row.h"

#include <algorithm>
#include <optional>
#include <string>

#include "core/words/row_loops.h"

namespace lacewright {

namespace {

constexpr std::int64_t kClose = 3;               // stitches by which a marker is missed
constexpr std::int64_t kMostWorked = 1'000'000;  // stitches in all rows

// One row worked from the left needle to the right one, markers and all.
class MarkedRow {
 public:
    MarkedRow(const LoopsAndPlaces& before, bool round, std::size_t size, LandmarkTimes& found)
        : before_(before),
          loops_(before.loops),
          left_(before.markers),
          round_(round),
          size_(size),
          found_(found) {}

    // What is on the needle then; nothing when the row cannot be followed.
    std::optional<LoopsAndPlaces> work(const WrittenRow& row) {
        slipsUnsaid_ = !slipsMarkers(row.elements);
        passMarkers(before_.waiting - 1);
        taken_ = made_ = before_.waiting;
        walk(row.elements, true);
        const bool whole = taken_ == loops_;
        if (failed_ || (!whole && (!turned_ || round_))) return {};
        LoopsAndPlaces after;
        for (const std::int64_t turn : before_.turns) {
            if (turn >= taken_ || turn <= before_.waiting) after.turns.push_back(turn);
        }
        after.waiting = loops_ - taken_;
        if (!whole) after.turns.push_back(made_);
        passMarkers(taken_);
        for (; next_ < left_.size(); ++next_) right_.push_back(made_ + left_[next_] - taken_);
        after.loops = made_ + after.waiting;
        after.markers = std::move(right_);
        after.boundOff = std::move(boundOffNow_);
        return after;
    }

    std::int64_t worked() const { return worked_; }
    const std::string& trouble() const { return trouble_; }

 private:
    void walk(const Elements& elements, bool wholeRow) {
        for (std::size_t i = 0; i < elements.size() && !failed_; ++i) {
            const Element& element = elements[i];
            if (const auto* work = std::get_if<Working>(&element.what)) {
                for (int k = work->count.of(size_); k > 0 && !failed_; --k)
                    stitch(work->takes, work->makes);
                if (work->term == "bo") boundOffNow_.push_back(made_);
            } else if (const auto* group = std::get_if<Group>(&element.what)) {
                repeat(group->body, group->times.of(size_));
            } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
                const auto body = fixedLoops(one->body, size_);
                if (!body) return fail();
                stitch(one->takes, body->makes);
            } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
                walk(choice->readings.front().elements, false);
            } else if (const auto* aside = std::get_if<Aside>(&element.what)) {
                mark(aside->term);
            } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
                std::optional<FixedLoops> rest;
                if (wholeRow) {
                    rest = fixedLoops(
                        {elements.begin() + static_cast<std::ptrdiff_t>(i) + 1, elements.end()},
                        size_);
                }
                open(*stretch, rest);
            }
        }
    }

    void fail() { failed_ = true; }

    void repeat(const Elements& body, std::int64_t times) {
        if (times > kMostFollowed) return fail();
        for (; times > 0 && !failed_; --times) {
            const std::int64_t before = worked_;
            walk(body, false);
            if (worked_ == before) return;
        }
    }

    void stitch(std::int64_t takes, std::int64_t makes) {
        if ((turned_ && takes > 0) || ++worked_ > kMostFollowed || taken_ + takes > loops_ ||
            made_ + makes > kMostFollowed)
            return fail();
        passMarkers(taken_ + takes - 1);
        taken_ += takes;
        made_ += makes;
    }

    // Slips the markers that have at most `loops` before them.
    void passMarkers(std::int64_t loops) {
        while (next_ < left_.size() && left_[next_] <= loops) {
            right_.push_back(made_);
            ++next_;
        }
    }

    void mark(const std::string& term) {
        const bool here = next_ < left_.size() && left_[next_] == taken_;
        // Before or behind the stitches it may be any, "purl, slipping markers"; one that no row
        // has placed may lie anywhere but close to another.
        const bool ahead = next_ < left_.size() && taken_ > 0 && taken_ < loops_ &&
                           left_[next_] - taken_ <= kClose;
        if ((term == "sm" || term == "rm") && ahead && !here && trouble_.empty())
            trouble_ = "it slips a marker where none lies";
        if (term == "turn") {
            turned_ = true;
        } else if (term == "pm") {
            right_.push_back(made_);
        } else if (term == "sm" && here) {
            right_.push_back(made_);
            ++next_;
        } else if (term == "rm" && here) {
            ++next_;
        }
    }

    void open(const Stretch& stretch, const std::optional<FixedLoops>& rest) {
        const auto body = fixedLoops(stretch.body, size_);
        const auto last = fixedLoops(stretch.lastTime, size_);
        if (!last || (body && body->takes < 1)) return fail();
        std::optional<std::int64_t> end = loops_;
        if (stretch.to != Landmark::None) {
            // "K4, p to m" of a row that never says "sm": the marker behind the 4 is slipped.
            const bool more = next_ + 1 < left_.size();
            if (stretch.to == Landmark::Marker && slipsUnsaid_ && more && taken_ > 0)
                passMarkers(taken_);
            end = landmark(stretch);
        } else if (stretch.leaves) {
            *end -= stretch.leaves->of(size_);
        } else if (rest) {
            *end -= rest->takes;
        } else {
            end.reset();
        }
        if (!end && stretch.to == Landmark::Marker && trouble_.empty())
            trouble_ = "it goes on to a marker, and none lies ahead";
        if (!end) return fail();
        std::int64_t room = *end - taken_;
        room -= last->takes;
        if (!body) {
            found(stretch, repeatUpTo(stretch.body, taken_ + room));
            return walk(stretch.lastTime, false);
        }
        if (room < 0 && stretch.to != Landmark::None) found(stretch, 0);
        const bool whole = room >= 0 && room % body->takes == 0;
        if (!whole && !(stretch.breaksAnywhere && room >= 0 && body->takes == body->makes))
            return fail();
        if (stretch.to != Landmark::None && !stretch.breaksAnywhere) {
            found(stretch, static_cast<int>(room / body->takes));
        }
        if (stretch.breaksAnywhere) {
            for (; room > 0 && !failed_; --room) stitch(1, 1);
        } else {
            repeat(stretch.body, room / body->takes);
        }
        walk(stretch.lastTime, false);
    }

    void found(const Stretch& stretch, int times) {
        const auto [at, fresh] = found_.emplace(&stretch, times);
        if (!fresh && at->second != times) at->second = -1;
    }

    // A body that goes to landmarks itself, until so many loops are taken: how often.
    int repeatUpTo(const Elements& body, std::int64_t end) {
        int times = 0;
        while (taken_ < end && !failed_) {
            const std::int64_t before = taken_;
            walk(body, false);
            if (taken_ == before) fail();
            ++times;
        }
        if (taken_ != end) fail();
        return times;
    }

    // How many loops of the row lie before the landmark.
    std::optional<std::int64_t> landmark(const Stretch& stretch) const {
        std::optional<std::int64_t> place;
        if (stretch.to == Landmark::Marker) {
            if (next_ < left_.size()) {
                place = left_[next_];
            } else if (round_) {
                place = loops_;
            }
        } else if (stretch.to == Landmark::Centre) {
            const std::int64_t sides = loops_ - stretch.stitches.of(size_);
            if (sides % 2 == 0) place = sides / 2;
        } else if (stretch.to == Landmark::Made) {
            place = taken_ + stretch.stitches.of(size_) - (made_ - before_.waiting);
        } else {
            const bool turns = stretch.to == Landmark::Turned;
            const auto& places = turns ? before_.turns : before_.boundOff;
            for (const std::int64_t at : places) {
                const bool ahead = at >= taken_ && (!turns || at > before_.waiting);
                if (ahead && (!place || at < *place)) place = at;
            }
        }
        if (place) *place -= stretch.before.of(size_);
        return place;
    }

    const LoopsAndPlaces& before_;
    std::int64_t loops_;
    std::vector<std::int64_t> left_;
    bool round_;
    std::size_t size_;
    LandmarkTimes& found_;
    std::size_t next_ = 0;  // marker on the left needle
    std::vector<std::int64_t> right_;
    std::vector<std::int64_t> boundOffNow_;
    std::int64_t taken_ = 0;
    std::int64_t made_ = 0;
    std::int64_t worked_ = 0;
    bool slipsUnsaid_ = false;  // markers where they come
    bool turned_ = false;
    bool failed_ = false;
    std::string trouble_;
};

}  // namespace

LandmarkFollower::LandmarkFollower(const WrittenPattern& pattern, std::size_t size)
    : round_(pattern.worked == Worked::InTheRound),
      size_(size),
      lost_(pattern.castOn->of(size).multiple != 0 || !pattern.castOn->forEach.empty()) {
    now_.loops = pattern.castOn->of(size).plus;
}

bool LandmarkFollower::work(const WrittenRow& row, Side side, LandmarkTimes& found) {
    trouble_.clear();
    if (lost_) return false;
    if (side != side_) now_.turn();
    side_ = side;
    LandmarkTimes ofRow = found;
    MarkedRow marked(now_, round_, size_, ofRow);
    auto after = marked.work(row);
    if (!hasReadings(row.elements)) trouble_ = marked.trouble();
    lost_ = !after || worked_ > kMostWorked;
    // Where words can be read in one way only, the row itself is wrong and its landmarks hold.
    if (!lost_ || !hasReadings(row.elements)) found = std::move(ofRow);
    if (lost_) return false;
    worked_ += marked.worked() + 1;
    now_ = std::move(*after);
    return true;
}

void LoopsAndPlaces::turn() {
    for (auto* places : {&markers, &boundOff, &turns}) {
        for (std::int64_t& place : *places) place = loops - place;
        std::reverse(places->begin(), places->end());
    }
}

}  // namespace lacewright
