#include "core/verdict/wording_odds.h"

#include <algorithm>
#include <cmath>

namespace lacewright {
namespace {

constexpr double kByChance = 0.03;  // that a wrong mend words the row like another

void word(const Elements& elements, std::string& wording);

std::string nameOf(const Working& working) {
    const bool plain = working.takes == 1 && working.makes == 1;
    std::string name = working.term + " ";
    if (!plain && working.count != Figure(1)) name += std::to_string(working.count.of(0)) + " ";
    return name;
}

void word(const Elements& elements, std::string& wording) {
    std::string before;
    for (const Element& element : elements) {
        if (const auto* working = std::get_if<Working>(&element.what)) {
            std::string name = nameOf(*working);
            const bool goesOn = name == before && working->takes == 1 && working->makes == 1;
            if (!goesOn) wording += name;
            before = std::move(name);
            continue;
        }
        before.clear();
        if (const auto* group = std::get_if<Group>(&element.what)) {
            wording += "[";
            word(group->body, wording);
            wording += "]";
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            wording += stretch->starred ? "*" : "-";
            word(stretch->body, wording);
            wording += "-";
            word(stretch->lastTime, wording);
            wording += "*";
        } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            wording += "{";
            word(one->body, wording);
            wording += "}";
        }
    }
}

// Of a row that says more than one stretch of plain stitches; else empty.
std::string wordingOf(const Elements& elements) {
    const bool one = std::all_of(elements.begin(), elements.end(), [](const Element& element) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        return (stretch != nullptr && !stretch->starred) ||
               std::holds_alternative<Aside>(element.what);
    });
    std::string wording;
    if (!one) word(elements, wording);
    return wording;
}

}  // namespace

WordingOdds::WordingOdds(const SlipTrial& trial) {
    const auto& rows = trial.said().rows;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        textOf_.push_back(trial.textOf(row));
        wordings_.push_back(wordingOf(rows[row].elements));
        if (wordings_.back().empty() || textOf_.back() != row) continue;
        rows_[wordings_.back()].push_back(row);
        ++texts_;
    }
}

double WordingOdds::of(std::size_t row, const Elements& elements) const {
    const std::string wording = wordingOf(elements);
    const std::size_t own = textOf_[row];
    const auto others = [&](const std::string& words) {
        const auto at = rows_.find(words);
        if (at == rows_.end()) return std::size_t{0};
        return at->second.size() - (wordings_[own] == words ? 1 : 0);
    };
    // Texts worded like another one, this row left aside.
    std::size_t alike = 0;
    for (const auto& [words, same] : rows_) {
        const std::size_t count = others(words);
        alike += count > 1 ? count : 0;
    }
    const std::size_t seen = texts_ - (wordings_[own].empty() ? 0 : 1);
    const double share = (static_cast<double>(alike) + 1) / (static_cast<double>(seen) + 2);
    return others(wording) > 0 ? std::log(share / kByChance)
                               : std::log((1 - share) / (1 - kByChance));
}

}  // namespace lacewright
