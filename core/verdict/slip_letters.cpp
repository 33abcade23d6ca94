#include "core/verdict/slip_letters.h"

#include <algorithm>
#include <string_view>

#include "core/check/mirror_partner.h"
#include "core/stitch/catalogue.h"
#include "core/words/reader.h"

namespace lacewright {
namespace {

constexpr std::string_view kBindsOff = "bo";
constexpr const char* kUsual = "Row 1: k1, p1, yo, k2tog, ssk, p2tog, sk2p";

// Stitches that a book has one of: "ssk" where it is not "skp".
bool areOne(const Working& a, const Working& b) {
    if (sameWork(a, b)) return true;
    if (a.takes != b.takes || a.makes != b.makes || a.takes < 2) return false;
    const StitchCatalogue& stitches = *builtInStitches();
    const auto one = stitches.find(a.rightId);
    const auto other = stitches.find(b.rightId);
    return one && other &&
           usualStitch(stitches, *one, false) == usualStitch(stitches, *other, false);
}

void addOnce(const Working& working, std::vector<Working>& letters) {
    // What only passes over or puts back is part of another stitch.
    if (working.makes < 0 || working.term == kEvenly || working.term == kDropsOvers) return;
    if (working.term == kBindsOff) return;  // is not written for a stitch
    for (const Working& known : letters) {
        if (sameWork(known, working)) return;
    }
    letters.push_back(working);
    letters.back().count = Figure(1);
}

void collect(const Elements& elements, std::vector<Working>& letters) {
    for (const Element& element : elements) {
        if (const auto* working = std::get_if<Working>(&element.what)) {
            addOnce(*working, letters);
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            collect(group->body, letters);
        } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            collect(stretch->body, letters);
            collect(stretch->lastTime, letters);
        }
    }
}

// "p5tog" and "p3tog" for "p4tog".
void addNeighbours(const Working& letter, std::vector<Working>& letters) {
    constexpr int kFewest = 4;
    const std::size_t at = letter.term.find_first_of("0123456789");
    if (letter.takes < kFewest || letter.makes != 1 || at == std::string::npos) return;
    const std::size_t end = letter.term.find_first_not_of("0123456789", at);
    for (const int number : {letter.takes - 1, letter.takes + 1}) {
        std::string term = letter.term;
        term.replace(at, std::min(end, term.size()) - at, std::to_string(number));
        const ReadRows read = readWritten("Row 1: " + term);
        if (!read.hasErrors()) collect(read.pattern.rows.front().elements, letters);
    }
}

}  // namespace

bool sameWork(const Working& a, const Working& b) {
    return a.term == b.term && a.takes == b.takes && a.makes == b.makes;
}

StitchIndex usualStitch(const StitchCatalogue& stitches, StitchIndex index, bool centred) {
    if (index == kCovered) return index;
    const Stitch& stitch = stitches[index];
    const bool decreases = stitch.kind == StitchKind::Decrease && stitch.makes == 1 &&
                           (stitch.takes == 2 || stitch.takes == 3);
    if (!decreases) return index;
    const bool purled = isPurled(stitch.id);
    const bool three = stitch.takes == 3;
    std::string_view usual;
    if (three && (centred || stitch.lean == Lean::Centred)) {
        usual = purled ? "sspp2" : "s2kp";
    } else if (stitch.lean == Lean::Right) {
        usual = purled ? (three ? "p3tog" : "p2tog") : (three ? "k3tog" : "k2tog");
    } else if (stitch.lean == Lean::Left) {
        usual = purled ? (three ? "sssp" : "ssp") : (three ? "sssk" : "ssk");
    }
    return stitches.find(usual).value_or(index);
}

std::vector<Working> lettersOf(const WrittenPattern& pattern) {
    std::vector<Working> letters;
    for (const WrittenRow& row : pattern.rows) collect(row.elements, letters);
    static const ReadRows usual = readWritten(kUsual);
    std::vector<Working> more;
    collect(usual.pattern.rows.front().elements, more);
    const std::size_t own = letters.size();
    for (std::size_t i = 0; i < own; ++i) addNeighbours(letters[i], more);
    for (const Working& letter : more) {
        const bool known = std::any_of(letters.begin(), letters.begin() + static_cast<long>(own),
                                       [&](const Working& other) { return areOne(letter, other); });
        if (!known) letters.push_back(letter);
    }
    return letters;
}

}  // namespace lacewright
