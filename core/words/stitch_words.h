#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/grouping.h"

namespace lacewright {

enum class Terms { Us, Uk };            // "yo", "skp", "BO 3" or "yrn", "skpo", "cast off 3"
enum class Numerals { Digits, Words };  // "3 times" or "three times"
enum class Brackets { Square, Round };  // "[yo, k2tog] 3 times" or "(..) 3 times"

struct WriterStyle {
    Terms terms = Terms::Us;
    Numerals numerals = Numerals::Digits;
    Brackets brackets = Brackets::Square;
};

// "twice", "3 times", "3 (4, 5) times"; one number where all sizes agree.
std::string timesText(const std::vector<int>& times, Numerals numerals);
// "3" or "3 (4, 5)".
std::string figureText(const std::vector<int>& bySize);

// How a piece of work is written. "k3" is before + number + after.
struct WorkWord {
    std::string one;     // worked once: "k1", "k2tog"
    std::string before;  // with `countable`: what stands before the number
    std::string after;   // and after it
    bool countable = false;
    bool timesForm = false;         // "yo twice" rather than "yo 2"
    std::string bare;               // over a whole row: "knit", "purl"; empty for most
    std::string verb;               // "k", "p" for "k to end"; empty for most
    std::vector<std::string> keys;  // what it unrolls into, see unrolled_row.h
    StitchIndex stitch = 0;         // the first stitch of the chart that is written so
    Side side = Side::Right;
    bool own = false;  // defined by a line "Stitch NAME: .."

    std::string text(const std::vector<int>& times, Numerals numerals) const;
};

// The words for the stitches of one chart. A stitch is written with the catalogue's abbreviation
// where a reader takes it for that stitch, and otherwise by a name of its own that the pattern
// defines.
class StitchWords {
 public:
    StitchWords(const Chart& chart, Terms terms) : chart_(chart), terms_(terms) {}

    // Stitches that are the same work on that side have the same word.
    // Requires: an index of the chart's catalogue that is not kCovered and no "no stitch".
    WordIndex of(StitchIndex stitch, Side side);
    const WorkWord& operator[](WordIndex word) const {
        return words_[static_cast<std::size_t>(word)];
    }
    const WordCosts& costs() const { return costs_; }
    // In the order of their first use.
    const std::vector<WorkWord>& all() const { return words_; }
    // "Stitch NAME: takes 2 makes 1" for each stitch named so, a line each.
    const std::vector<std::string>& definitions() const { return definitions_; }

 private:
    WorkWord wordFor(StitchIndex index, Side side);
    WorkWord ownWord(const Stitch& stitch);

    const Chart& chart_;
    Terms terms_;
    std::map<std::pair<StitchIndex, Side>, WordIndex> known_;
    std::map<std::string, std::string> ownNames_;  // by stitch id
    std::vector<WorkWord> words_;
    WordCosts costs_;
    std::vector<std::string> definitions_;
};

}  // namespace lacewright
