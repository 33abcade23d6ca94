#include "core/words/worked_row.h"

#include <algorithm>

#include "core/base/text.h"

namespace lacewright {

namespace {

class Worker {
 public:
    Worker(const WrittenRow& row, const WrittenRowProof& proof, std::size_t size,
           std::vector<std::string> ownNames)
        : row_(row), proof_(proof), size_(size), ownNames_(std::move(ownNames)) {
        worked_.number = row.number;
        worked_.side = row.side;
    }

    Result<WorkedRow> run() {
        if (proof_.counted.partial) {
            refuse(
                "is not worked over all the stitches there are, which rows of a chart cannot "
                "show");
        } else if (proof_.counted.dropsOvers) {
            refuse("lets loops of the row below fall without saying where they lie");
        } else if (!proof_.counted.uncountable.empty()) {
            refuse("cannot be counted: " + proof_.counted.uncountable);
        } else {
            walk(row_.elements);
            flush();
        }
        if (problem_) return *problem_;
        return std::move(worked_);
    }

 private:
    void refuse(const std::string& why) {
        if (problem_) return;
        problem_ = Error{ErrorCode::Refused, row_.label + " " + why + ".", {}};
    }

    bool room(std::size_t more) {
        if (terms_.size() + written_ + more <= kMostRowStitches) return true;
        refuse("has too many stitches to write out");
        return false;
    }

    // Increases or decreases spread over the stretch before them.
    static bool shapes(const Element& element) {
        if (const auto* stretch = std::get_if<Stretch>(&element.what))
            return stretch->total.has_value();
        const auto* work = std::get_if<Working>(&element.what);
        return work != nullptr && work->term == kEvenly;
    }

    // How many these are, and the loops that each takes. Requires: shapes(element), and that its
    // open stretch, if it is one, comes next.
    std::optional<std::pair<std::int64_t, int>> shapingOf(const Element& element) const {
        if (const auto* work = std::get_if<Working>(&element.what))
            return std::pair<std::int64_t, int>(work->count.of(size_), work->takes);
        const auto& stretch = std::get<Stretch>(element.what);
        const auto times = proof_.fit.solved.find(proof_.counted.own[own_].variable);
        if (times == proof_.fit.solved.end() || !times->second.isConstant()) return {};
        return std::pair(times->second.constant(),
                         std::get<Working>(stretch.body.front().what).takes);
    }

    // Elements that are worked once; open stretches among them become parts of their own.
    void walk(const Elements& elements) {
        const auto shaping = std::find_if(elements.begin(), elements.end(),
                                          [](const Element& e) { return shapes(e); });
        for (const Element& element : elements) {
            if (problem_) return;
            if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
                if (stretch->total) {
                    ++own_;  // spread over the stretch before it
                } else if (shaping != elements.end() && &element < &*shaping) {
                    shapedEvenly(*stretch, *shaping, element.place);
                } else {
                    open(*stretch, element.place);
                }
            } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
                walk(chosenReading(*choice, proof_.counted.chosen).elements);
            } else if (const auto* group = std::get_if<Group>(&element.what);
                       group && chosenTimes(*group, size_, proof_.counted.chosen) == 1) {
                walk(group->body);
            } else {
                collect(element, terms_);
            }
        }
    }

    // An element without open stretches, written out.
    void collect(const Element& element, std::vector<TermWorked>& out) {
        if (problem_) return;
        if (const auto* work = std::get_if<Working>(&element.what)) {
            if (work->term == kEvenly) return;  // spread over the stretch before it
            const int times = work->count.of(size_);
            if (!room(out.size() + static_cast<std::size_t>(std::max(0, times)))) return;
            out.insert(out.end(), static_cast<std::size_t>(std::max(0, times)),
                       {work->term, work->takes, work->makes, work->rightId, work->wrongId,
                        element.place});
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            const std::vector<TermWorked> once = collected(group->body);
            const std::int64_t times = chosenTimes(*group, size_, proof_.counted.chosen);
            if (once.size() == 1 && once.front().rightId == "yo" && (times == 2 || times == 3)) {
                const std::string id = "yo" + std::to_string(times);  // "yo twice"
                out.push_back({id, 0, static_cast<int>(times), id, id, element.place});
                return;
            }
            for (std::int64_t i = 0; i < times && !once.empty(); ++i) {
                if (!room(out.size() + once.size())) return;
                out.insert(out.end(), once.begin(), once.end());
            }
        } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            out.push_back(
                intoOneStitch(collected(one->body), one->takes, row_.side, element.place));
        } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
            for (const Element& e : chosenReading(*choice, proof_.counted.chosen).elements)
                collect(e, out);
        } else if (std::holds_alternative<Stretch>(element.what)) {
            ++own_;  // within something worked no times at all
        }
    }

    std::vector<TermWorked> collected(const Elements& elements) {
        std::vector<TermWorked> out;
        for (const Element& element : elements) collect(element, out);
        return out;
    }

    std::vector<RowStitch> stitchesOf(std::vector<TermWorked> terms) {
        auto stitches = rightSideStitches(std::move(terms), row_.side, ownNames_);
        if (stitches) {
            settleMoss(*stitches);
            return std::move(*stitches);
        }
        refuse("cannot be drawn: " + stitches.error().message);
        return {};
    }

    // Moss stitch: knit and purl by turns along the row and from row to row, knit at the right edge
    // of its run on odd rows.
    void settleMoss(std::vector<RowStitch>& stitches) const {
        const std::size_t all = stitches.size();
        for (std::size_t first = 0, end = 0; first < all; first = end + 1) {
            end = first;
            while (end < all && stitches[end].moss) ++end;
            for (std::size_t i = first; i < end; ++i) {
                const std::size_t fromRight = row_.side == Side::Right ? i - first : end - 1 - i;
                const bool knit = (fromRight + static_cast<std::size_t>(row_.number)) % 2 == 1;
                stitches[i].id = knit ? "k" : "p";
            }
        }
    }

    // A stretch of moss stitch; when it is as long as there are repeats, in pairs.
    void moss(const RowStitch& one, const AffineForm& count, const Place& place) {
        const auto even = [](std::int64_t n) { return n % 2 == 0; };
        const bool pairs =
            even(count.constant()) &&
            std::all_of(count.terms().begin(), count.terms().end(),
                        [&](const AffineForm::Term& t) { return even(t.coefficient); });
        if (!count.isConstant() && !pairs)
            return refuse("works moss stitch over stitches that are not always an even number");
        const std::int64_t length = count.isConstant() ? count.constant() : 2;
        if (length < 0 || !room(static_cast<std::size_t>(length))) return;
        std::vector<RowStitch> stitches(static_cast<std::size_t>(length), one);
        settleMoss(stitches);
        if (count.isConstant()) return once(std::move(stitches));
        AffineForm times(count.constant() / 2);
        for (const auto& term : count.terms()) times.add(term.variable, term.coefficient / 2);
        written_ += stitches.size();
        worked_.parts.push_back({std::move(stitches), times, false, place});
    }

    // What was worked once up to here.
    void flush() {
        std::vector<RowStitch> stitches = stitchesOf(std::move(terms_));
        terms_.clear();
        once(std::move(stitches));
    }

    void once(std::vector<RowStitch> stitches) {
        if (stitches.empty()) return;
        written_ += stitches.size();
        auto& parts = worked_.parts;
        if (!parts.empty() && parts.back().times == AffineForm(1) && !parts.back().starred) {
            RowPart& last = parts.back();
            last.place = spanning(last.place, stitches.back().place);
            last.stitches.insert(last.stitches.end(), std::make_move_iterator(stitches.begin()),
                                 std::make_move_iterator(stitches.end()));
            return;
        }
        const Place place = spanning(stitches.front().place, stitches.back().place);
        parts.push_back({std::move(stitches), AffineForm(1), false, place});
    }

    void open(const Stretch& stretch, const Place& place) {
        flush();
        if (problem_ || own_ >= proof_.counted.own.size()) return;
        const OwnCount& own = proof_.counted.own[own_++];
        const auto solved = proof_.fit.solved.find(own.variable);
        AffineForm times =
            solved == proof_.fit.solved.end() ? AffineForm::of(own.variable) : solved->second;
        std::vector<RowStitch> body = stitchesOf(collected(stretch.body));
        if (problem_ || body.empty()) return;
        if (body.size() == 1 && body.front().moss) {
            moss(body.front(), times, place);
        } else if (stretch.breaksAnywhere && body.size() > 1) {
            rib(std::move(body), times, place);
        } else if (times != AffineForm()) {
            written_ += body.size();
            worked_.parts.push_back({std::move(body), std::move(times), stretch.starred, place});
        }
        std::vector<TermWorked> last = collected(stretch.lastTime);
        terms_.insert(terms_.end(), std::make_move_iterator(last.begin()),
                      std::make_move_iterator(last.end()));
    }

    // "K, inc 4 sts evenly": the increases or decreases stand in the middle of as many equal parts.
    void shapedEvenly(const Stretch& stretch, const Element& shaping, const Place& place) {
        if (own_ + 1 >= proof_.counted.own.size() + (std::holds_alternative<Working>(shaping.what)))
            return;
        const auto solved = proof_.fit.solved.find(proof_.counted.own[own_++].variable);
        const std::vector<TermWorked> body = collected(stretch.body);
        const auto told = shapingOf(shaping);
        if (solved == proof_.fit.solved.end() || !solved->second.isConstant() || body.size() != 1 ||
            !told)
            return refuse("does not say where its increases or decreases stand");
        const std::int64_t shaped = told->first;
        const std::int64_t plain = solved->second.constant();
        const bool decreases = told->second > 0;  // in the place of stitches, not between them
        const std::int64_t parts = plain + (decreases ? shaped : 0);
        if (plain < 0 || !room(static_cast<std::size_t>(plain + shaped))) return;
        const bool purl = body.front().term == "p";
        TermWorked change =
            decreases ? TermWorked{purl ? "p2tog" : "k2tog", 2, 1, "k2tog", "p2tog", place}
                      : TermWorked{purl ? "m1p" : "m1", 0, 1, "m1", "m1p", place};
        if (purl) std::swap(change.rightId, change.wrongId);
        std::int64_t done = 0;
        const auto isNext = [&](std::int64_t part) {
            return done < shaped && (2 * done + 1) * parts / (2 * shaped) <= part;
        };
        for (std::int64_t part = 0; part < parts; ++part) {
            const bool instead = decreases && isNext(part);
            for (; isNext(part); ++done) terms_.push_back(change);
            if (!instead) terms_.push_back(body.front());
        }
        terms_.insert(terms_.end(), static_cast<std::size_t>(shaped - done), change);
    }

    // A rib that may stop in the middle of its body: `count` stitches of it. What does not make a
    // whole pass comes first.
    void rib(std::vector<RowStitch> body, const AffineForm& count, const Place& place) {
        const auto length = static_cast<std::int64_t>(body.size());
        const std::int64_t odd = ((count.constant() % length) + length) % length;
        const bool whole =
            std::all_of(count.terms().begin(), count.terms().end(),
                        [&](const AffineForm::Term& t) { return t.coefficient % length == 0; });
        if (!whole) return refuse("has a rib that does not end the same way for every count");
        once({body.begin(), body.begin() + odd});
        std::rotate(body.begin(), body.begin() + odd, body.end());
        AffineForm times((count.constant() - odd) / length);
        for (const auto& term : count.terms()) times.add(term.variable, term.coefficient / length);
        if (times != AffineForm()) worked_.parts.push_back({std::move(body), times, false, place});
    }

    const WrittenRow& row_;
    const WrittenRowProof& proof_;
    std::size_t size_;
    std::vector<std::string> ownNames_;
    WorkedRow worked_;
    std::vector<TermWorked> terms_;
    std::size_t own_ = 0;      // open stretches met so far
    std::size_t written_ = 0;  // stitches in parts
    std::optional<Error> problem_;
};

std::int64_t sum(const std::vector<RowStitch>& stitches, int RowStitch::*count) {
    std::int64_t total = 0;
    for (const RowStitch& stitch : stitches) total += stitch.*count;
    return total;
}

}  // namespace

std::int64_t RowPart::takes() const {
    return sum(stitches, &RowStitch::takes);
}

std::int64_t RowPart::makes() const {
    return sum(stitches, &RowStitch::makes);
}

Result<WorkedRow> workedRow(const WrittenPattern& pattern, const WrittenRow& row,
                            const WrittenRowProof& proof, std::size_t size) {
    std::vector<std::string> ownNames;
    for (const OwnStitch& own : pattern.ownStitches) ownNames.push_back(lowerAscii(own.name));
    return Worker(row, proof, size, std::move(ownNames)).run();
}

std::vector<RowStitch> unrolled(const WorkedRow& row, const AffineForm::Assignment& values) {
    std::vector<RowStitch> all;
    for (const RowPart& part : row.parts) {
        for (std::int64_t i = part.times.at(values); i > 0; --i)
            all.insert(all.end(), part.stitches.begin(), part.stitches.end());
    }
    return all;
}

}  // namespace lacewright
