#include "core/verdict/figure_slips.h"

#include <cmath>
#include <cstdlib>

#include "core/words/stitch_words.h"

namespace lacewright {
namespace {

constexpr int kMostOff = 4;
constexpr int kMostOffInSize = 12;
constexpr double kMistaken = 0.0003;       // how often a number is written for another
constexpr double kMistakenInList = 0.001;  // and one of those for several sizes
constexpr double kCastOnRead = 4.0;      // log odds against a cast-on that no knitter stumbled over
constexpr double kMiscounted = 0.001;    // how often the count of a row is said wrongly
constexpr double kMiscountedToo = 0.02;  // and of one more size
constexpr double kEvenSteps = 1.5;       // log odds of sizes that grow by equal steps
constexpr std::size_t kFewestSteps = 3;

bool growsEvenly(const Figure& figure) {
    const auto& all = figure.bySize;
    for (std::size_t i = 2; i < all.size(); ++i) {
        if (all[i] - all[i - 1] != all[1] - all[0]) return false;
    }
    return all.size() >= kFewestSteps;
}

}  // namespace

std::vector<Figure> figuresNear(const Figure& figure, std::size_t size, int leastOff) {
    std::vector<Figure> near;
    const bool list = figure.bySize.size() > 1 && size < figure.bySize.size();
    const int most = list ? kMostOffInSize : kMostOff;
    for (int off = -most; off <= most; ++off) {
        if (off == 0 || (!list && std::abs(off) < leastOff)) continue;
        Figure other = figure;
        int& number = other.bySize[list ? size : 0];
        number += off;
        if (number >= 0) near.push_back(std::move(other));
    }
    return near;
}

double figureOdds(const Figure& meant, const Figure& written) {
    double off = 1;
    for (std::size_t i = 0; i < written.bySize.size(); ++i)
        off += std::abs(meant.bySize[i] - written.bySize[i]);
    const double even = growsEvenly(meant) ? kEvenSteps : 0;
    const double mistaken = written.bySize.size() > 1 ? kMistakenInList : kMistaken;
    return std::log(mistaken / off) + (growsEvenly(written) ? -kEvenSteps : even);
}

double statedOdds(const Figure& meant, const Figure& written) {
    double wrong = 0;
    for (std::size_t i = 0; i < written.bySize.size(); ++i)
        wrong += meant.bySize[i] != written.bySize[i] ? 1 : 0;
    return std::log(kMiscounted) + (wrong - 1) * std::log(kMiscountedToo);
}

std::vector<WrittenCastOn> castOnsNear(const WrittenCastOn& castOn, std::size_t size) {
    std::vector<WrittenCastOn> near;
    for (Figure WrittenCastOn::*part : {&WrittenCastOn::plus, &WrittenCastOn::multiple}) {
        for (Figure& figure : figuresNear(castOn.*part, size)) {
            // What is no multiple does not become one.
            if (part == &WrittenCastOn::multiple && castOn.multiple.of(size) == 0) continue;
            WrittenCastOn& other = near.emplace_back(castOn);
            other.*part = std::move(figure);
            if (other.multiple.of(size) + other.plus.of(size) == 0) near.pop_back();
        }
    }
    return near;
}

double castOnOdds(const WrittenCastOn& meant, const WrittenCastOn& written) {
    const double odds = meant.plus == written.plus ? figureOdds(meant.multiple, written.multiple)
                                                   : figureOdds(meant.plus, written.plus);
    return odds - (written.plus.bySize.size() > 1 ? 0 : kCastOnRead);
}

std::string castOnMend(const WrittenCastOn& meant, const WrittenCastOn& written) {
    const std::string plus = figureText(meant.plus.bySize);
    const std::string insteadOf = " instead of ";
    if (meant.multiple == Figure(0))
        return "Cast on " + plus + " sts" + insteadOf + figureText(written.plus.bySize);
    const std::string multiple = figureText(meant.multiple.bySize);
    std::string words = "Cast on a multiple of " + multiple + " sts";
    if (meant.plus == written.plus) return words + insteadOf + figureText(written.multiple.bySize);
    if (meant.plus != Figure(0)) words += " plus " + plus;
    if (written.plus == Figure(0)) return words + insteadOf + "a multiple of " + multiple + " sts";
    return words + insteadOf + "plus " + figureText(written.plus.bySize);
}

}  // namespace lacewright
