#include "core/check/sentences.h"

#include <algorithm>
#include <cstdlib>
#include <functional>

#include "core/base/text.h"

namespace lacewright {

std::string stitchCount(std::int64_t count) {
    return counted(count, "stitch", "stitches");
}

std::string timesText(std::int64_t times) {
    if (times == 1) return "once";
    if (times == 2) return "twice";
    return std::to_string(times) + " times";
}

namespace {

std::string moreOrFewer(std::int64_t difference) {
    return std::to_string(std::abs(difference)) + (difference > 0 ? " more" : " fewer");
}

std::string number(std::int64_t value) {
    static const char* const kWords[] = {"no", "one", "two", "three", "four", "five", "six"};
    return value >= 0 && value <= 6 ? kWords[value] : std::to_string(value);
}

// One form speaks of no repeat that the other does not, so their difference can be told as drawn.
bool sameRepeats(const AffineForm& a, const AffineForm& b) {
    const auto& fewer = a.terms().size() < b.terms().size() ? a : b;
    const auto& more = a.terms().size() < b.terms().size() ? b : a;
    return std::all_of(fewer.terms().begin(), fewer.terms().end(),
                       [&](const auto& term) { return more.coefficient(term.variable) != 0; });
}

class Sentence {
 public:
    Sentence(const MisfitPlace& place, const AffineForm& takes, const AffineForm& available,
             const Fit& fit)
        : place_(place), fit_(fit) {
        const bool asDrawn = sameRepeats(takes, available);
        takes_ = asDrawn ? takes : fit.required;
        available_ = asDrawn ? available : fit.available;
        asDrawn_ = asDrawn;
    }

    std::string text() const {
        switch (fit_.kind) {
            case FitKind::NotWhole:
                return notWhole();
            case FitKind::TooFew:
                return tooFew();
            default:
                return difference();
        }
    }

 private:
    std::string subject() const {
        return place_.name.empty() ? place_.row + " " + std::to_string(place_.number) : place_.name;
    }

    // "row 6 leaves" / "are cast on"
    std::string before(bool ofNeedle = false) const {
        if (place_.castOn) return ofNeedle ? "the cast-on gives" : "are cast on";
        const std::string below =
            place_.below.empty() ? lowerAscii(place_.row) + " " + std::to_string(place_.number - 1)
                                 : place_.below;
        return below + " leaves";
    }

    std::string repeatWords(Variable v, const char* article) const {
        const std::string name = place_.repeatName(v);
        return std::string(article) + " repeat" + (name.empty() ? "" : " of " + name);
    }

    std::string difference() const {
        if (place_.castOn && takes_.isConstant() && !available_.isConstant()) return never();
        const AffineForm rest = takes_ - available_;
        std::vector<std::string> parts;
        for (const auto& term : rest.terms()) {
            parts.push_back(moreOrFewer(term.coefficient) + " in " +
                            repeatWords(term.variable, "every"));
        }
        if (rest.constant() != 0) {
            const bool edges = !parts.empty();
            parts.push_back(moreOrFewer(rest.constant()) + (edges ? " outside" : ""));
        }
        if (rest == AffineForm()) parts.push_back("another number");
        std::string all = subject() + " takes " + listing(parts) + " than " + before();
        if (rest.isConstant() && !takes_.isConstant())
            all += ", however often the repeat is worked";
        return all + ": " + examples() + ".";
    }

    // A row without a repeat on a cast-on that is not fixed.
    std::string never() const {
        std::string all = subject() + " works no repeat and always takes " +
                          std::to_string(takes_.constant()) + ", but " + before(true) + " " +
                          available();
        if (fit_.onlyAt) {
            all += "; it fits only when " + place_.variableName(freeVariable()) + " is " +
                   std::to_string(*fit_.onlyAt);
        }
        return all + ".";
    }

    // "35 against 33 with one repeat, 69 against 65 with two"
    std::string examples() const {
        const auto& terms =
            takes_.terms().size() < available_.terms().size() ? available_.terms() : takes_.terms();
        // Where the rows below leave one number of each repeat, that is the number.
        if (fit_.required.isConstant() && fit_.available.isConstant())
            return against(fit_.required.constant(), fit_.available.constant());
        const auto start = [this](Variable v) {
            const auto at = fit_.example.find(v);
            return at == fit_.example.end() ? std::int64_t{1} : at->second;
        };
        // Of several repeats one that is out, worked more and more often while the others stay.
        const AffineForm rest = takes_ - available_;
        const Variable first = (rest.terms().empty() ? terms : rest.terms()).front().variable;
        const auto at = [&](std::int64_t step) {
            const auto value = [&](Variable v) {
                const std::int64_t base = asDrawn_ ? 1 : start(v);
                return v == first ? base + step : base;
            };
            return std::pair(takes_.at(std::cref(value)), available_.at(std::cref(value)));
        };
        const std::int64_t from = asDrawn_ ? 1 : start(first);
        // The first two numbers of repeats at which it shows.
        std::vector<std::string> shown;
        for (std::int64_t step = 0; step < 4 && shown.size() < 2; ++step) {
            const auto [takes, available] = at(step);
            if (takes == available) continue;
            std::string one = against(takes, available) + " with " + number(from + step);
            if (shown.empty()) {
                one += from + step == 1 ? " repeat" : " repeats";
                if (first != terms.front().variable) one += " of " + place_.repeatName(first);
            }
            shown.push_back(one);
        }
        return join(shown, ", ");
    }

    static std::string against(std::int64_t takes, std::int64_t available) {
        return std::to_string(takes) + " against " + std::to_string(available);
    }

    std::string available() const { return fit_.available.text(place_.variableName); }

    std::string notWhole() const {
        std::string all =
            subject() + " works " + ownRepeats() + ", but " + before(true) + " " + available();
        if (fit_.required.constant() != 0 && !fit_.required.terms().empty()) {
            const std::int64_t outside = std::abs(fit_.required.constant());
            all += ", of which " + std::to_string(outside) + (outside == 1 ? " lies" : " lie") +
                   (ownWidths().size() > 1 ? " outside them" : " outside it");
        }
        if (fit_.onlyWhen) {
            all += "; it fits only when " + place_.variableName(freeVariable()) + " leaves " +
                   std::to_string(fit_.onlyWhen->first) + " on division by " +
                   std::to_string(fit_.onlyWhen->second);
        }
        if (!fit_.onlyWhen && !fit_.onlyAt && fit_.available.terms().size() == 1) {
            all += "; it never fits, whatever " + place_.variableName(freeVariable()) + " is";
        }
        all += ": ";
        if (!fit_.available.isConstant())
            all += "with " + std::to_string(fit_.exampleAvailable) + " on the needle, ";
        const std::int64_t over = fit_.exampleAvailable - fit_.exampleRequired;
        if (over < 0) return all + std::to_string(-over) + " more would be needed.";
        return all + std::to_string(over) + (over == 1 ? " is" : " are") + " left over.";
    }

    std::string tooFew() const {
        return subject() + " needs " + std::to_string(fit_.exampleRequired) + " before its " +
               (ownWidths().size() > 1 ? "repeats begin" : "repeat begins") + ", but " +
               before(true) + " " + std::to_string(fit_.exampleAvailable) + ".";
    }

    std::vector<std::int64_t> ownWidths() const {
        std::vector<std::int64_t> widths;
        for (const auto& term : fit_.required.terms()) {
            if (fit_.freed.contains(term.variable)) widths.push_back(term.coefficient);
        }
        return widths;
    }

    // "a repeat of 4 stitches", "repeats of 4 and 6 stitches"
    std::string ownRepeats() const {
        const std::vector<std::int64_t> widths = ownWidths();
        if (widths.size() == 1) return "a repeat of " + stitchCount(widths.front());
        std::vector<std::string> numbers;
        for (const std::int64_t width : widths) numbers.push_back(std::to_string(width));
        return "repeats of " + listing(numbers) + " stitches";
    }

    Variable freeVariable() const {
        return fit_.available.terms().empty() ? 0 : fit_.available.terms().front().variable;
    }

    const MisfitPlace& place_;
    const Fit& fit_;
    AffineForm takes_;
    AffineForm available_;
    bool asDrawn_ = false;
};

}  // namespace

std::string misfitSentence(const MisfitPlace& place, const AffineForm& takes,
                           const AffineForm& available, const Fit& fit) {
    return Sentence(place, takes, available, fit).text();
}

}  // namespace lacewright
