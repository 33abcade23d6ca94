#include "core/verdict/figure_slips.h"

#include <cmath>
#include <cstdlib>

namespace lacewright {
namespace {

constexpr int kMostOff = 4;
constexpr int kMostOffInSize = 12;
constexpr double kMistaken = 0.002;  // how often a number is written for another
constexpr double kEvenSteps = 1.5;   // log odds of sizes that grow by equal steps
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
    return std::log(kMistaken / (2 * off)) + (growsEvenly(written) ? -kEvenSteps : even);
}

std::string figureInWords(const Figure& figure) {
    std::string text = std::to_string(figure.bySize.front());
    for (std::size_t i = 1; i < figure.bySize.size(); ++i)
        text += (i == 1 ? " (" : ", ") + std::to_string(figure.bySize[i]);
    return figure.bySize.size() > 1 ? text + ")" : text;
}

}  // namespace lacewright
