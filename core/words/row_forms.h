#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/count/needle.h"
#include "core/words/readings_chosen.h"

namespace lacewright {

// One of several ways to understand a row's words, as it was taken.
struct TakenReading {
    Place place;
    std::string meaning;
    bool usual = true;  // the reading a knitter would try first
    bool operator==(const TakenReading&) const = default;
};

// "to last 2 sts" before something that takes another number.
struct WrongRest {
    Place place;
    std::int64_t said = 0;
    std::int64_t follows = 0;
};

inline constexpr int kMostNamedCounts = 100;
// The variable of the pattern's count `index`, in every row that names it: below -1.
constexpr Variable namedCount(std::size_t index) {
    return static_cast<Variable>(index) - kMostNamedCounts - 1;
}
constexpr bool isNamedCount(Variable variable) {
    return variable < -1;
}
constexpr std::size_t countIndex(Variable named) {
    return static_cast<std::size_t>(named - namedCount(0));
}

// How often an open stretch of the row is worked: a count that only this row has, or one that the
// pattern names.
struct OwnCount {
    Variable variable = 0;
    Place place;
    std::int64_t takes = 0;  // each time
    std::int64_t makes = 0;
    bool starred = false;
};

// Loops that a row's yarn overs make, in the row's own counts: each of them, and those beyond the
// first of every double or triple one.
struct OverLoops {
    AffineForm all;
    AffineForm extra;
};

// One reading of a row for one size, counted.
struct CountedRow {
    RowForms forms;             // in the row's own counts
    std::vector<OwnCount> own;  // in working order, one for each open stretch
    std::vector<Demand> demands;
    ReadingsChosen chosen;
    std::vector<TakenReading> readings;
    std::optional<WrongRest> wrongRest;
    std::string uncountable;  // why the row cannot be counted; empty when it can
    Place uncountablePlace;
    OverLoops overs;
    bool dropsOvers = false;      // it lets fall what yarn overs of the row below made
    bool toUnknownPlace = false;  // it goes to a marker or the like, and nothing says where that is
    // A short row or one beside stitches that wait: it is not worked over the whole needle. Its
    // forms hold on both sides the stitches that it does not come to.
    bool partial = false;
    AffineForm behind;  // how many these are
    AffineForm left;    // how many of them it leaves beyond its turn
};

inline constexpr std::int64_t kMostRowLoops = 1'000'000;  // taken or made by one row's fixed parts

// Every reading of the row, the usual one first. Own counts are numbered from `firstVariable`; all
// readings use the same numbers. `size` counts from 0.
std::vector<CountedRow> countedReadings(const WrittenRow& row, std::size_t size,
                                        Variable firstVariable);

}  // namespace lacewright
