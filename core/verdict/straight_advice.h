#pragma once

#include <optional>
#include <set>

#include "core/check/check.h"
#include "core/verdict/straight_chart.h"
#include "core/words/prove.h"

namespace lacewright {

// Of any severity, and of one size or several: texts are searched for slips size by size.
bool tellsOfCounts(const Finding& finding);

// Advice about the straight chart of a text, told in words of its rows.
class StraightAdvice {
 public:
    // Requires: straight = straightChart of the pattern for the size; the pattern outlives this.
    StraightAdvice(const WrittenPattern& pattern, std::size_t size, StraightChart straight);

    // Gives the finding the suspects and mends that the chart's own finding has, if there is one.
    void adviseOn(Finding& finding) const;
    std::vector<Suspect> suspects() const { return translated(report_.suspects); }
    // Rows that fit but look out of place.
    std::vector<Finding> oddFindings() const;

 private:
    void keepToRow(int number, std::vector<Suspect>& suspects, std::vector<Mend>& mends) const;
    bool isMerelyTexture(const Finding& odd) const;
    const WrittenRow& writtenRow(int rowIndex) const;
    int numberOf(int number) const;
    bool concerns(const Finding& advised, int number) const;
    int placeOf(int rowIndex, int column) const;
    std::vector<Suspect> translated(const std::vector<Suspect>& suspects) const;
    std::vector<Mend> translated(const std::vector<Mend>& mends) const;

    const WrittenPattern& pattern_;
    std::size_t size_;
    WrittenProof proof_;
    StraightChart straight_;
    Report report_;
    // Rows that leave another number of stitches after their repeat than they say: wrong in
    // themselves, whatever the rows around them do.
    std::set<int> contradicting_;
};

}  // namespace lacewright
