#include "core/words/unrolled_row.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/stitch/catalogue.h"

namespace lacewright {
namespace {

class Unroller {
 public:
    Unroller(Side side, std::size_t size, const CountedRow& counted,
             const AffineForm::Assignment& values)
        : side_(side), size_(size), counted_(counted), values_(values) {}

    std::optional<std::vector<UnrolledStitch>> run(const Elements& elements) {
        all(elements, stitches_);
        if (!fine_) return {};
        return std::move(stitches_);
    }

 private:
    using Stitches = std::vector<UnrolledStitch>;

    void all(const Elements& elements, Stitches& out) {
        for (const Element& element : elements) {
            if (fine_) one(element, out);
        }
    }

    void one(const Element& element, Stitches& out) {
        if (const auto* work = std::get_if<Working>(&element.what)) {
            working(*work, element.place, out);
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            Stitches body;
            all(group->body, body);
            repeat(body, timesOf(*group, element.place), out);
        } else if (const auto* into = std::get_if<IntoOne>(&element.what)) {
            intoOne(*into, element.place, out);
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            open(*stretch, out);
        } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
            all(taken(*choice, element.place).elements, out);
        }
    }

    void working(const Working& work, const Place& place, Stitches& out) {
        const std::string& id = side_ == Side::Right ? work.rightId : work.wrongId;
        Stitches once;
        const int yarnOvers = id == "yo2" ? 2 : id == "yo3" ? 3 : 0;
        if (yarnOvers > 0) {
            once.assign(static_cast<std::size_t>(yarnOvers), {workKey("yo", side_), 0, 1, place});
        } else {
            once.push_back(
                {id.empty() ? work.term : workKey(id, side_), work.takes, work.makes, place});
        }
        repeat(once, work.count.of(size_), out);
    }

    void intoOne(const IntoOne& into, const Place& place, Stitches& out) {
        Stitches body;
        all(into.body, body);
        UnrolledStitch stitch{"into " + std::to_string(into.takes) + ":", into.takes, 0, place};
        for (const UnrolledStitch& part : body) {
            stitch.key += ' ' + part.key;
            stitch.makes += part.makes;
        }
        out.push_back(std::move(stitch));
    }

    void open(const Stretch& stretch, Stitches& out) {
        if (next_ >= counted_.own.size()) {
            fine_ = false;
            return;
        }
        const std::int64_t times = values_(counted_.own[next_++].variable);
        Stitches body;
        all(stretch.body, body);
        if (stretch.breaksAnywhere && !body.empty()) {
            fine_ = fine_ && times >= 0 && fits(out, 1, times);
            for (std::int64_t i = 0; fine_ && i < times; ++i)
                out.push_back(body[static_cast<std::size_t>(i) % body.size()]);
        } else {
            repeat(body, times, out);
        }
        all(stretch.lastTime, out);
    }

    bool fits(const Stitches& out, std::size_t length, std::int64_t times) const {
        return times <= static_cast<std::int64_t>(kMostUnrolled) &&
               out.size() + length * static_cast<std::size_t>(times) <= kMostUnrolled;
    }

    void repeat(const Stitches& body, std::int64_t times, Stitches& out) {
        fine_ = fine_ && times >= 0 && fits(out, body.size(), times);
        for (std::int64_t i = 0; fine_ && i < times; ++i)
            out.insert(out.end(), body.begin(), body.end());
    }

    // The counting has noted which reading it took of every choice, by place and meaning.
    bool wasTaken(const Place& place, const std::string& meaning) const {
        return std::any_of(counted_.readings.begin(), counted_.readings.end(),
                           [&](const TakenReading& reading) {
                               return reading.place == place && reading.meaning == meaning;
                           });
    }

    std::int64_t timesOf(const Group& group, const Place& place) const {
        const std::int64_t usual = group.times.of(size_);
        if (!group.orTimes) return usual;
        const std::int64_t other = group.orTimes->of(size_);
        return wasTaken(place, std::to_string(other) + " times in all") ? other : usual;
    }

    const Reading& taken(const Choice& choice, const Place& place) const {
        for (const Reading& reading : choice.readings) {
            if (wasTaken(place, reading.meaning)) return reading;
        }
        return choice.readings.front();
    }

    Side side_;
    std::size_t size_;
    const CountedRow& counted_;
    const AffineForm::Assignment& values_;
    Stitches stitches_;
    std::size_t next_ = 0;  // of the row's own counts, which stand in working order
    bool fine_ = true;
};

using Keys = std::map<std::string, std::string, std::less<>>;

Keys keysOf(Side side) {
    Keys keys;
    std::map<std::string, std::string> firstWith;  // by abbreviation
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        const SideWording& wording = side == Side::Right ? stitch.rightSide : stitch.wrongSide;
        keys[stitch.id] = wording.abbreviation.empty()
                              ? stitch.id
                              : firstWith.emplace(wording.abbreviation, stitch.id).first->second;
    }
    return keys;
}

}  // namespace

std::string workKey(const std::string& id, Side side) {
    static const Keys right = keysOf(Side::Right);
    static const Keys wrong = keysOf(Side::Wrong);
    const Keys& keys = side == Side::Right ? right : wrong;
    const auto found = keys.find(id);
    return found == keys.end() ? id : found->second;
}

std::optional<std::vector<UnrolledStitch>> unrolledRow(const WrittenRow& row, std::size_t size,
                                                       const CountedRow& counted,
                                                       const AffineForm::Assignment& values) {
    if (!counted.uncountable.empty()) return {};
    return Unroller(row.side, size, counted, values).run(row.elements);
}

std::optional<std::vector<UnrolledStitch>> unrolledOver(const WrittenRow& row, std::size_t size,
                                                        const CountedRow& counted,
                                                        std::int64_t loops) {
    if (counted.own.size() > 1 || counted.wrongRest || !counted.demands.empty()) return {};
    std::int64_t open = 0;
    const std::int64_t rest = loops - counted.forms.takes.constant();
    if (counted.own.empty()) {
        if (rest != 0) return {};
    } else {
        const std::int64_t each = counted.own.front().takes;
        if (each <= 0 || rest < 0 || rest % each != 0) return {};
        open = rest / each;
    }
    return unrolledRow(row, size, counted, [open](Variable) { return open; });
}

}  // namespace lacewright
