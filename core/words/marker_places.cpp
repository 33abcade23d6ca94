#include "core/words/marker_places.h"

#include <map>

namespace lacewright {

namespace {

constexpr std::int64_t kMostLoops = 100'000;  // of a row that is followed

// How often each stretch to a marker is worked in the sizes followed so far; negative when that
// differs within one row.
using TimesFound = std::map<const Stretch*, std::vector<int>>;

struct Loops {
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

// Of elements without open stretches; nothing when there is one among them.
std::optional<Loops> loopsOf(const Elements& elements, std::size_t size) {
    Loops sum;
    const auto add = [&sum](const Loops& more, std::int64_t times) {
        sum.takes += more.takes * times;
        sum.makes += more.makes * times;
    };
    for (const Element& element : elements) {
        if (const auto* work = std::get_if<Working>(&element.what)) {
            add({work->takes, work->makes}, work->count.of(size));
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            const auto body = loopsOf(group->body, size);
            if (!body) return {};
            add(*body, group->times.of(size));
        } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            const auto body = loopsOf(one->body, size);
            if (!body) return {};
            add({one->takes, body->makes}, 1);
        } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
            const auto body = loopsOf(choice->readings.front().elements, size);
            if (!body) return {};
            add(*body, 1);
        } else if (std::holds_alternative<Stretch>(element.what)) {
            return {};
        }
        if (sum.takes > kMostLoops || sum.makes > kMostLoops) return {};
    }
    return sum;
}

// One row worked from the left needle to the right one, markers and all.
class MarkedRow {
 public:
    // `markers`: how many loops lie before each, ascending.
    MarkedRow(std::int64_t loops, std::vector<std::int64_t> markers, bool round, std::size_t size,
              TimesFound& found)
        : loops_(loops), left_(std::move(markers)), round_(round), size_(size), found_(found) {}

    // False when the row cannot be followed.
    bool work(const WrittenRow& row) {
        walk(row.elements, true);
        if (taken_ != loops_) failed_ = true;
        passMarkers(loops_);
        return !failed_;
    }

    std::int64_t made() const { return made_; }
    // From the start of the row as it was worked.
    std::vector<std::int64_t> markers() const { return right_; }

 private:
    void walk(const Elements& elements, bool wholeRow) {
        for (std::size_t i = 0; i < elements.size() && !failed_; ++i) {
            const Element& element = elements[i];
            if (const auto* work = std::get_if<Working>(&element.what)) {
                for (int k = work->count.of(size_); k > 0 && !failed_; --k)
                    stitch(work->takes, work->makes);
            } else if (const auto* group = std::get_if<Group>(&element.what)) {
                repeat(group->body, group->times.of(size_));
            } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
                const auto body = loopsOf(one->body, size_);
                if (!body) return fail();
                stitch(one->takes, body->makes);
            } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
                walk(choice->readings.front().elements, false);
            } else if (const auto* aside = std::get_if<Aside>(&element.what)) {
                mark(aside->term);
            } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
                std::optional<Loops> rest;
                if (wholeRow) {
                    rest = loopsOf(
                        {elements.begin() + static_cast<std::ptrdiff_t>(i) + 1, elements.end()},
                        size_);
                }
                open(*stretch, rest);
            }
        }
    }

    void fail() { failed_ = true; }

    void repeat(const Elements& body, std::int64_t times) {
        if (times > kMostLoops) return fail();
        for (; times > 0 && !failed_; --times) {
            const std::int64_t before = worked_;
            walk(body, false);
            if (worked_ == before) return;
        }
    }

    void stitch(std::int64_t takes, std::int64_t makes) {
        if (++worked_ > kMostLoops || taken_ + takes > loops_ || made_ + makes > kMostLoops)
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
        if (term == "pm") {
            right_.push_back(made_);
        } else if (term == "sm" && here) {
            right_.push_back(made_);
            ++next_;
        } else if (term == "rm" && here) {
            ++next_;
        }
    }

    void open(const Stretch& stretch, const std::optional<Loops>& rest) {
        const auto body = loopsOf(stretch.body, size_);
        const auto last = loopsOf(stretch.lastTime, size_);
        if (!body || !last || body->takes < 1) return fail();
        std::int64_t room = loops_ - taken_;
        if (stretch.toMarker) {
            if (next_ == left_.size() && !round_) return fail();
            const std::int64_t at = next_ < left_.size() ? left_[next_] : loops_;
            room = at - taken_ - stretch.beforeMarker.of(size_);
        } else if (stretch.leaves) {
            room -= stretch.leaves->of(size_);
        } else if (rest) {
            room -= rest->takes;
        } else {
            return fail();
        }
        room -= last->takes;
        const bool whole = room >= 0 && room % body->takes == 0;
        if (!whole && !(stretch.breaksAnywhere && room >= 0 && body->takes == body->makes))
            return fail();
        if (stretch.toMarker && !stretch.breaksAnywhere) {
            std::vector<int>& times = found_[&stretch];
            const auto now = static_cast<int>(room / body->takes);
            times.resize(size_, -1);
            if (times.size() == size_) {
                times.push_back(now);
            } else if (times[size_] != now) {
                times[size_] = -1;
            }
        }
        if (stretch.breaksAnywhere) {
            for (; room > 0 && !failed_; --room) stitch(1, 1);
        } else {
            repeat(stretch.body, room / body->takes);
        }
        walk(stretch.lastTime, false);
    }

    std::int64_t loops_;
    std::vector<std::int64_t> left_;
    bool round_;
    std::size_t size_;
    TimesFound& found_;
    std::size_t next_ = 0;  // marker on the left needle
    std::vector<std::int64_t> right_;
    std::int64_t taken_ = 0;
    std::int64_t made_ = 0;
    std::int64_t worked_ = 0;
    bool failed_ = false;
};

void followMarkers(const WrittenPattern& pattern, std::size_t size, TimesFound& found) {
    if (pattern.castOn->multiple.of(size) != 0) return;
    const bool round = pattern.worked == Worked::InTheRound;
    std::int64_t loops = pattern.castOn->plus.of(size);
    std::vector<std::int64_t> markers;
    Side side = Side::Right;
    for (const WrittenRow& row : pattern.rows) {
        if (row.side != side) {
            for (std::int64_t& marker : markers) marker = loops - marker;
            std::reverse(markers.begin(), markers.end());
            side = row.side;
        }
        TimesFound ofRow = found;
        MarkedRow marked(loops, markers, round, size, ofRow);
        if (!marked.work(row)) return;
        found = std::move(ofRow);
        loops = marked.made();
        markers = marked.markers();
        const bool again = std::any_of(pattern.again.begin(), pattern.again.end(),
                                       [&](const RowsAgain& a) { return a.after == row.number; });
        if (again) return;
    }
}

void putTimes(Elements& elements, const TimesFound& found, std::size_t sizes) {
    for (Element& element : elements) {
        if (auto* group = std::get_if<Group>(&element.what)) {
            putTimes(group->body, found, sizes);
        } else if (auto* choice = std::get_if<Choice>(&element.what)) {
            for (Reading& reading : choice->readings) putTimes(reading.elements, found, sizes);
        } else if (auto* stretch = std::get_if<Stretch>(&element.what)) {
            const auto at = found.find(stretch);
            if (at == found.end() || at->second.size() != sizes) continue;
            if (std::any_of(at->second.begin(), at->second.end(), [](int n) { return n < 0; }))
                continue;
            Figure times;
            times.bySize = at->second;
            Group settled{std::move(stretch->body), std::move(times), {}};
            element.what = std::move(settled);
        }
    }
}

bool goesToMarker(const Elements& elements) {
    return std::any_of(elements.begin(), elements.end(), [](const Element& element) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        const auto* group = std::get_if<Group>(&element.what);
        return (stretch && stretch->toMarker) || (group && goesToMarker(group->body));
    });
}

}  // namespace

void settleMarkers(WrittenPattern& pattern) {
    if (!pattern.castOn) return;
    if (std::none_of(pattern.rows.begin(), pattern.rows.end(),
                     [](const WrittenRow& row) { return goesToMarker(row.elements); }))
        return;
    TimesFound found;
    for (std::size_t size = 0; size < pattern.sizeCount(); ++size)
        followMarkers(pattern, size, found);
    for (WrittenRow& row : pattern.rows) putTimes(row.elements, found, pattern.sizeCount());
}

}  // namespace lacewright
