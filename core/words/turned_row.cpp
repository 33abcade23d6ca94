#include "core/words/turned_row.h"

#include <algorithm>

namespace lacewright {

namespace {

bool isAside(const Element& element, std::string_view term) {
    const auto* aside = std::get_if<Aside>(&element.what);
    return aside != nullptr && aside->term == term;
}

// What is worked from one turn to the next.
struct Legs {
    std::vector<Elements> legs;  // none of them empty; none at all where nothing turns
    bool turnsAtEnd = false;
    bool setsAside = false;  // "leave rem sts on a holder"
};

Legs legsOf(const Elements& elements) {
    Legs found;
    Elements leg;
    bool goesOn = false;  // the leg that is read goes on with the one before
    const auto close = [&] {
        const auto does = [](const Element& e) { return !std::holds_alternative<Aside>(e.what); };
        const auto makesOnly = [&](const Element& e) {
            const auto* work = std::get_if<Working>(&e.what);
            return !does(e) || (work != nullptr && work->takes == 0);
        };
        const bool works = std::any_of(leg.begin(), leg.end(), does);
        // "Turn and cast on 6 sts" goes no way back, and a turn behind it none either.
        const bool makes = works && !found.legs.empty() && !goesOn &&
                           std::all_of(leg.begin(), leg.end(), makesOnly);
        if (makes || (works && goesOn)) {
            found.legs.back().insert(found.legs.back().end(), leg.begin(), leg.end());
        } else if (works) {
            found.legs.push_back(std::move(leg));
        }
        goesOn = makes;
        leg.clear();
        return works && !makes;
    };
    for (const Element& element : elements) {
        const bool turn = isAside(element, "turn");
        const bool hold = isAside(element, "hold");
        if (!turn && !hold) {
            leg.push_back(element);
            continue;
        }
        close();
        found.turnsAtEnd = true;
        found.setsAside = found.setsAside || hold;
    }
    if (close()) found.turnsAtEnd = false;
    return found;
}

class Turner {
 public:
    Turner(const WrittenRow& row, std::size_t size, Variable first, const Needle& needle,
           const AffineForm& waiting, Worked worked)
        : row_(row),
          size_(size),
          first_(first),
          needle_(needle),
          worked_(worked),
          behind_(waiting),
          legs_(turnsSomewhere(row) ? legsOf(row.elements) : Legs()) {}

    std::vector<CountedRow> run() {
        if (legs_.legs.size() > 1) return onItsWay();
        std::vector<CountedRow> all = countedReadings(row_, size_, first_);
        for (CountedRow& counted : all) reach(counted);
        return turnedAtEnd(std::move(all));
    }

 private:
    // Adds what the row cannot reach, as if it were slipped.
    void reach(CountedRow& counted) const {
        if (behind_ == AffineForm() && gained_ == AffineForm()) return;
        counted.forms.takes.add(behind_);
        counted.forms.takes.add(gained_, -1);
        counted.forms.makes.add(behind_);
        counted.behind = behind_;
        counted.partial = true;
    }

    static void refuse(CountedRow& counted, std::string why) {
        if (counted.uncountable.empty()) counted.uncountable = std::move(why);
        counted.partial = true;
    }

    // More than none for every allowed number of repeats.
    bool positive(const AffineForm& form) const {
        std::int64_t least = form.constant();
        for (const auto& term : form.terms()) {
            if (term.coefficient < 0) return false;
            least += term.coefficient * needle_.smallest(term.variable);
        }
        return least > 0;
    }

    std::vector<CountedRow> turnedAtEnd(std::vector<CountedRow> all) const {
        if (!legs_.turnsAtEnd || !needle_.loops()) return all;
        std::vector<CountedRow> aside;
        for (CountedRow& counted : all) {
            if (!counted.uncountable.empty()) continue;
            AffineForm rest = *needle_.loops() - counted.forms.takes;
            if (!counted.own.empty()) {
                // "K to last 6 sts, turn" says how many are left.
                if (!counted.wrongRest) continue;
                rest = AffineForm(counted.wrongRest->said - counted.wrongRest->follows);
                if (positive(rest)) counted.wrongRest.reset();
            }
            if (!positive(rest)) continue;
            if (worked_ == Worked::InTheRound) {
                refuse(counted,
                       "it turns before the end of the round, and nothing says how far "
                       "the work then goes");
                continue;
            }
            counted.partial = true;
            CountedRow parted = counted;
            parted.forms.takes.add(rest);
            parted.readings.push_back(
                {row_.place, "the stitches beyond the turn are set aside", legs_.setsAside});
            aside.push_back(std::move(parted));
            counted.forms.takes.add(rest);
            counted.forms.makes.add(rest);
            counted.behind.add(rest);
            counted.left = rest;
        }
        if (aside.empty()) return all;
        if (legs_.setsAside) return aside;
        all.insert(all.end(), std::make_move_iterator(aside.begin()),
                   std::make_move_iterator(aside.end()));
        return all;
    }

    // "K20, turn, p10, turn, k to end": all legs as one row.
    std::vector<CountedRow> onItsWay() {
        std::vector<CountedRow> all = readings(legs_.legs.back());
        for (std::size_t i = 0; i + 1 < legs_.legs.size(); ++i) {
            if (workLeg(legs_.legs[i])) continue;
            for (CountedRow& counted : all)
                refuse(counted, "it turns on its way, and how many stitches it leaves is not sure");
            return all;
        }
        for (CountedRow& counted : all) {
            reach(counted);
            counted.partial = true;
        }
        return turnedAtEnd(std::move(all));
    }

    std::vector<CountedRow> readings(const Elements& leg) const {
        WrittenRow part = row_;
        part.elements = leg;
        return countedReadings(part, size_, first_);
    }

    bool workLeg(const Elements& leg) {
        if (!needle_.loops() || worked_ == Worked::InTheRound) return false;
        const CountedRow counted = readings(leg).front();
        if (!counted.uncountable.empty() || counted.wrongRest || counted.own.size() > 1)
            return false;
        const AffineForm room = *needle_.loops() + gained_ - behind_;
        RowForms forms = counted.forms;
        if (!counted.own.empty()) {
            const Fit fit = solvedOver(room, forms.takes, counted);
            if (!fit.fits()) return false;
            const auto solved = [&](Variable variable) {
                const auto at = fit.solved.find(variable);
                return at == fit.solved.end() ? nullptr : &at->second;
            };
            forms = {forms.takes.substituted(solved), forms.makes.substituted(solved)};
        }
        const AffineForm rest = room - forms.takes;
        if (rest != AffineForm() && !positive(rest)) return false;
        gained_ = gained_ + forms.makes - forms.takes;
        behind_ = rest;
        return true;
    }

    static Fit solvedOver(const AffineForm& room, const AffineForm& takes,
                          const CountedRow& counted) {
        Needle part;
        part.hold(room);
        return part.fit(takes, counted.demands);
    }

    const WrittenRow& row_;
    std::size_t size_;
    Variable first_;
    const Needle& needle_;
    Worked worked_;
    AffineForm behind_;  // out of reach of the leg that comes next
    AffineForm gained_;  // by the legs so far
    Legs legs_;
};

}  // namespace

bool turnsSomewhere(const WrittenRow& row) {
    return std::any_of(row.elements.begin(), row.elements.end(),
                       [](const Element& e) { return isAside(e, "turn") || isAside(e, "hold"); });
}

std::vector<CountedRow> readingsOver(const WrittenRow& row, std::size_t size,
                                     Variable firstVariable, const Needle& needle,
                                     const AffineForm& waiting, Worked worked) {
    return Turner(row, size, firstVariable, needle, waiting, worked).run();
}

}  // namespace lacewright
