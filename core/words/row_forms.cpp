#include "core/words/row_forms.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace lacewright {

namespace {

constexpr std::size_t kMostStretches = 64;

class Counter {
 public:
    Counter(std::size_t size, Variable first, const ReadingsChosen& chosen)
        : size_(size), next_(first), chosen_(chosen) {}

    CountedRow run(const Elements& elements) {
        AffineForm rest;
        row_.forms = backward(elements, rest);
        if (total_) row_.demands.push_back({row_.forms.makes, *total_});
        std::reverse(row_.own.begin(), row_.own.end());
        std::reverse(row_.readings.begin(), row_.readings.end());
        row_.chosen = chosen_;
        std::size_t next = 0;
        if (row_.uncountable.empty()) row_.overs = oversOf(elements, next);
        return std::move(row_);
    }

 private:
    // `next`: of the open stretches, the one that comes next.
    OverLoops oversOf(const Elements& elements, std::size_t& next) const {
        OverLoops sum;
        const auto add = [&sum](const OverLoops& more, std::int64_t times) {
            sum.all.add(more.all, times);
            sum.extra.add(more.extra, times);
        };
        for (const Element& element : elements) {
            if (const auto* work = std::get_if<Working>(&element.what)) {
                const bool over = work->takes == 0 && work->rightId.starts_with("yo");
                const std::int64_t loops = over ? work->makes * work->count.of(size_) : 0;
                if (loops > 0) add({AffineForm(loops), AffineForm(loops - 1)}, 1);
            } else if (const auto* group = std::get_if<Group>(&element.what)) {
                OverLoops once = oversOf(group->body, next);
                const std::int64_t times = chosenTimes(*group, size_, chosen_);
                const bool single = group->body.size() == 1 && once.all == AffineForm(1);
                if (single && times > 0) {  // "yo twice"
                    add({AffineForm(times), AffineForm(times - 1)}, 1);
                } else {
                    add(once, times);
                }
            } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
                add(oversOf(chosenReading(*choice, chosen_).elements, next), 1);
            } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
                if (next >= row_.own.size()) continue;
                const Variable times = row_.own[next++].variable;
                std::size_t none = row_.own.size();
                const OverLoops once = oversOf(stretch->body, none);
                add({AffineForm::of(times, once.all.constant()),
                     AffineForm::of(times, once.extra.constant())},
                    1);
                add(oversOf(stretch->lastTime, none), 1);
            }
        }
        return sum;
    }

    void refuse(const Place& place, std::string why) {
        if (!row_.uncountable.empty()) return;
        row_.uncountable = std::move(why);
        row_.uncountablePlace = place;
    }

    void hold(AffineForm& form, const Place& place) {
        bool large = std::abs(form.constant()) > kMostRowLoops;
        for (const auto& term : form.terms())
            large = large || std::abs(term.coefficient) > kMostRowLoops;
        if (!large) return;
        refuse(place, "this is more than " + std::to_string(kMostRowLoops) + " stitches");
        form = AffineForm();
    }

    // The sum of a sequence. Goes from the end, because "to last 2 sts" speaks of what follows:
    // `rest` is what everything after the sequence takes, and on return also the sequence itself.
    RowForms backward(const Elements& elements, AffineForm& rest) {
        RowForms sum;
        for (auto element = elements.rbegin(); element != elements.rend(); ++element) {
            const RowForms part = count(*element, rest);
            sum.takes.add(part.takes);
            sum.makes.add(part.makes);
            hold(sum.takes, element->place);
            hold(sum.makes, element->place);
        }
        return sum;
    }

    RowForms count(const Element& element, AffineForm& rest) {
        RowForms part;
        if (const auto* work = std::get_if<Working>(&element.what)) {
            const std::int64_t times = work->count.of(size_);
            part = {AffineForm(times * work->takes), AffineForm(times * work->makes)};
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            const std::int64_t times = timesOf(*group, element.place);
            if (times == 1) return backward(group->body, rest);
            const RowForms once = fixed(group->body, element.place);
            part.takes.add(once.takes, times);
            part.makes.add(once.makes, times);
        } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            part = {AffineForm(one->takes), fixed(one->body, element.place).makes};
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            part = open(*stretch, element.place, rest);
        } else if (const auto* choice = std::get_if<Choice>(&element.what)) {
            return backward(taken(*choice, element.place).elements, rest);
        }
        hold(part.takes, element.place);
        hold(part.makes, element.place);
        rest.add(part.takes);
        return part;
    }

    std::int64_t timesOf(const Group& group, const Place& place) {
        const std::int64_t times = chosenTimes(group, size_, chosen_);
        if (group.orTimes) {
            note(place, std::to_string(times) + " times in all", times == group.times.of(size_));
        }
        return times;
    }

    const Reading& taken(const Choice& choice, const Place& place) {
        const Reading& reading = chosenReading(choice, chosen_);
        note(place, reading.meaning, &reading == &choice.readings.front());
        return reading;
    }

    void note(const Place& place, const std::string& meaning, bool usual) {
        if (noted_.insert({place.offset, place.length, meaning}).second)
            row_.readings.push_back({place, meaning, usual});
    }

    // A stretch worked as often as there is room.
    RowForms open(const Stretch& stretch, const Place& place, AffineForm& rest) {
        const RowForms once = fixed(stretch.body, place);
        const RowForms last = fixed(stretch.lastTime, place);
        const std::int64_t takes = stretch.breaksAnywhere ? 1 : once.takes.constant();
        const std::int64_t makes = stretch.breaksAnywhere ? 1 : once.makes.constant();
        if (takes <= 0 && !stretch.named && !stretch.total)
            refuse(place, "this repeat uses up no stitches, so nothing says when it ends");
        if (row_.own.size() >= kMostStretches) refuse(place, "this row has too many open repeats");
        if (!row_.uncountable.empty()) return {};
        if (stretch.to != Landmark::None) row_.toUnknownPlace = true;
        if (stretch.leaves) demand(rest, stretch.leaves->of(size_), place);
        if (stretch.total) total_ = stretch.total->of(size_);
        const Variable variable = stretch.named ? namedCount(*stretch.named) : next_++;
        // Of several stretches that end at markers only the sum is known: the last has it all.
        if (stretch.to != Landmark::None && takes == 1 && makes == 1 && !row_.own.empty())
            row_.demands.push_back({AffineForm::of(variable), 0});
        row_.own.push_back({variable, place, takes, makes, stretch.starred});
        RowForms part{AffineForm::of(variable, takes), AffineForm::of(variable, makes)};
        part.takes.add(last.takes);
        part.makes.add(last.makes);
        return part;
    }

    void demand(const AffineForm& rest, std::int64_t leaves, const Place& place) {
        if (!rest.isConstant()) {
            row_.demands.push_back({rest, leaves});
        } else if (rest.constant() != leaves) {
            row_.wrongRest = WrongRest{place, leaves, rest.constant()};
        }
    }

    // A part that must come out as plain numbers.
    RowForms fixed(const Elements& elements, const Place& place) {
        const std::size_t own = row_.own.size();
        const std::size_t demands = row_.demands.size();
        const auto wrongRest = row_.wrongRest;
        AffineForm rest;
        RowForms sum = backward(elements, rest);
        if (row_.own.size() != own) {
            refuse(place,
                   "a stretch that is worked as often as there is room stands inside one "
                   "that is repeated");
            row_.own.resize(own);
            row_.demands.resize(demands);
            row_.wrongRest = wrongRest;
            sum = {};
        }
        return sum;
    }

    std::size_t size_;
    Variable next_;
    const ReadingsChosen& chosen_;
    CountedRow row_;
    std::optional<std::int64_t> total_;  // stitches that the row is to make
    // Of row_.readings: where the words stand, and what they mean.
    std::set<std::tuple<std::size_t, std::size_t, std::string>> noted_;
};

}  // namespace

std::vector<CountedRow> countedReadings(const WrittenRow& row, std::size_t size,
                                        Variable firstVariable) {
    std::vector<CountedRow> readings;
    for (const ReadingsChosen& chosen : waysToChoose(row.elements))
        readings.push_back(Counter(size, firstVariable, chosen).run(row.elements));
    return readings;
}

}  // namespace lacewright
