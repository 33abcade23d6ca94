#include "core/words/stitch_words.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/base/text.h"
#include "core/words/reader.h"
#include "core/words/unrolled_row.h"

namespace lacewright {
namespace {

using Keys = std::vector<std::string>;

struct Understood {
    Keys keys;
    int takes = 0;
    int makes = 0;
};

// What a reader makes of these words on that side, with the heading lines given; nothing when they
// are not understood, or in more than one way.
std::optional<Understood> understood(const std::string& words, Side side,
                                     const std::string& heading = {}) {
    const std::string text =
        heading + (side == Side::Right ? "Row 1 (RS): " : "Row 1 (WS): ") + words + ".";
    const ReadRows read = readWritten(text);
    if (read.hasErrors() || read.pattern.rows.size() != 1) return {};
    const WrittenRow& row = read.pattern.rows.front();
    const std::vector<CountedRow> readings = countedReadings(row, 0, 1);
    if (readings.size() != 1 || !readings.front().own.empty()) return {};
    const auto stitches = unrolledRow(read.pattern, row, 0, readings.front(), {});
    if (!stitches) return {};
    Understood result;
    for (const UnrolledStitch& stitch : *stitches) {
        result.keys.push_back(stitch.key);
        result.takes += stitch.takes;
        result.makes += stitch.makes;
    }
    return result;
}

// The words mean this stitch: one working of it or of one that is the same work, or several
// workings that together take and make as much.
bool means(const Understood& words, const Stitch& stitch, Side side) {
    if (words.takes != stitch.takes || words.makes != stitch.makes) return false;
    if (words.keys.size() != 1) return true;
    const std::string& key = words.keys.front();
    return key == workKey(stitch.id, side);
}

std::string numberWord(int number) {
    static constexpr std::array<std::string_view, 13> kNames = {
        "no",    "one",   "two",  "three", "four",   "five",  "six",
        "seven", "eight", "nine", "ten",   "eleven", "twelve"};
    return number >= 0 && number < static_cast<int>(kNames.size())
               ? std::string(kNames[static_cast<std::size_t>(number)])
               : std::to_string(number);
}

bool allEqual(const std::vector<int>& numbers) {
    return std::all_of(numbers.begin(), numbers.end(),
                       [&](int number) { return number == numbers.front(); });
}

struct UkName {
    std::string_view us;
    std::string_view uk;
};
// Terms used outside the United States, from memory of British patterns.
constexpr std::array<UkName, 6> kUkNames = {{{"yo", "yrn"},
                                             {"yo twice", "yrn twice"},
                                             {"yo 3 times", "yrn 3 times"},
                                             {"skp", "skpo"},
                                             {"sk2p", "sk2po"},
                                             {"BO 1", "cast off 1"}}};

std::string inTerms(const std::string& abbreviation, Terms terms) {
    if (terms == Terms::Us) return abbreviation;
    for (const UkName& name : kUkNames) {
        if (name.us == abbreviation) return std::string(name.uk);
    }
    return abbreviation == "CO 1" ? "cast on 1" : abbreviation;
}

// How the abbreviation takes a number.
WorkWord countedForm(const std::string& abbreviation) {
    WorkWord word;
    word.one = abbreviation;
    const std::size_t one = abbreviation.find(" 1");
    const bool number = one != std::string::npos &&
                        (one + 2 == abbreviation.size() || abbreviation[one + 2] == ' ');
    if (abbreviation == "k" || abbreviation == "p") {
        word.before = abbreviation;
        word.one = abbreviation + "1";
        word.countable = true;
        word.verb = abbreviation;
        word.bare = abbreviation == "k" ? "knit" : "purl";
    } else if (abbreviation == "k tbl" || abbreviation == "p tbl") {
        word.before = abbreviation.substr(0, 1);
        word.after = " tbl";
        word.one = word.before + "1" + word.after;
        word.countable = true;
    } else if (number) {
        word.before = abbreviation.substr(0, one + 1);
        word.after = abbreviation.substr(one + 2);
        word.countable = true;
    } else if (abbreviation == "yo" || abbreviation == "yrn") {
        word.countable = word.timesForm = true;
    }
    return word;
}

// A name that could be taken for a list of stitches, or for another stitch of the catalogue.
bool misleads(const std::string& name, const std::string& id) {
    if (name.find_first_of(",;.:()[]{}*") != std::string::npos) return true;
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& other = stitches[static_cast<StitchIndex>(i)];
        if (other.id == id) continue;
        for (const SideWording* wording : {&other.rightSide, &other.wrongSide}) {
            if (lowerAscii(wording->abbreviation) == lowerAscii(name)) return true;
        }
    }
    return false;
}

Keys repeated(const Keys& keys, int times) {
    Keys all;
    for (int i = 0; i < times; ++i) all.insert(all.end(), keys.begin(), keys.end());
    return all;
}

}  // namespace

std::string figureText(const std::vector<int>& bySize) {
    std::string text = std::to_string(bySize.front());
    if (bySize.size() == 1 || allEqual(bySize)) return text;
    for (std::size_t i = 1; i < bySize.size(); ++i)
        text += (i == 1 ? " (" : ", ") + std::to_string(bySize[i]);
    return text + ")";
}

std::string timesText(const std::vector<int>& times, Numerals numerals) {
    if (!allEqual(times)) return figureText(times) + " times";
    const int number = times.front();
    if (number == 1) return "once";
    if (number == 2) return "twice";
    const bool words = numerals == Numerals::Words;
    return (words ? numberWord(number) : std::to_string(number)) + " times";
}

std::string WorkWord::text(const std::vector<int>& times, Numerals numerals) const {
    if (allEqual(times) && times.front() == 1) return one;
    if (timesForm) return one + " " + timesText(times, numerals);
    return before + figureText(times) + after;
}

WordIndex StitchWords::of(StitchIndex stitch, Side side) {
    const auto found = known_.find({stitch, side});
    if (found != known_.end()) return found->second;
    WorkWord word = wordFor(stitch, side);
    word.stitch = stitch;
    word.side = side;
    WordIndex index = 0;
    while (index < static_cast<WordIndex>(words_.size()) &&
           (words_[static_cast<std::size_t>(index)].one != word.one ||
            words_[static_cast<std::size_t>(index)].keys != word.keys)) {
        ++index;
    }
    if (index == static_cast<WordIndex>(words_.size())) {
        const auto parts = std::count(word.one.begin(), word.one.end(), ',');
        costs_.weight.push_back(1 + static_cast<int>(parts));
        costs_.countable.push_back(word.countable);
        words_.push_back(std::move(word));
    }
    known_[{stitch, side}] = index;
    return index;
}

WorkWord StitchWords::wordFor(StitchIndex index, Side side) {
    const Stitch& stitch = (*chart_.stitches)[index];
    const std::string& written =
        (side == Side::Right ? stitch.rightSide : stitch.wrongSide).abbreviation;
    const auto builtIn = builtInStitches()->find(stitch.id);
    if (written.empty() || !builtIn || *builtIn != index) return ownWord(stitch);
    WorkWord word = countedForm(inTerms(written, terms_));
    const auto once = understood(word.one, side);
    if (!once || !means(*once, stitch, side)) return ownWord(stitch);
    word.keys = once->keys;
    if (word.countable) {
        const auto thrice = understood(word.text({3}, Numerals::Digits), side);
        word.countable = thrice && thrice->keys == repeated(word.keys, 3);
    }
    return word;
}

WorkWord StitchWords::ownWord(const Stitch& stitch) {
    const auto line = [&](const std::string& name) {
        return "Stitch " + name + ": takes " + std::to_string(stitch.takes) + " makes " +
               std::to_string(stitch.makes);
    };
    const auto readable = [&](const std::string& name) {
        const auto thrice = understood(name + ", k1, " + name, Side::Right, line(name) + "\n");
        return !name.empty() && thrice && thrice->keys.size() == 3 && thrice->keys[1] == "k" &&
               thrice->keys[0] == thrice->keys[2] && thrice->keys[0] != "k" &&
               thrice->takes == 2 * stitch.takes + 1 && thrice->makes == 2 * stitch.makes + 1;
    };
    std::string& name = ownNames_[stitch.id];
    if (name.empty()) {
        const auto taken = [&](const std::string& other) {
            return std::any_of(ownNames_.begin(), ownNames_.end(), [&](const auto& own) {
                return own.first != stitch.id && lowerAscii(own.second) == lowerAscii(other);
            });
        };
        // A definition would change what the word means on the other side.
        const auto builtIn = [&](const std::string& word) {
            const auto known = understood(word, Side::Right);
            return known && builtInStitches()->find(stitch.id) &&
                   means(*known, stitch, Side::Right);
        };
        for (const std::string& candidate : {stitch.rightSide.abbreviation, stitch.id}) {
            if (name.empty() && !misleads(candidate, stitch.id) && !taken(candidate) &&
                !builtIn(candidate) && readable(candidate))
                name = candidate;
        }
        for (int i = 1; name.empty() && i < kMaxOwnStitches + 2; ++i) {
            std::string letters = "st ";
            for (int n = i; n > 0; n = (n - 1) / 26)
                letters += static_cast<char>('a' + (n - 1) % 26);
            if (!taken(letters)) name = letters;
        }
        definitions_.push_back(line(name));
    }
    WorkWord word;
    word.one = name;
    word.own = true;
    if (const auto once = understood(name, Side::Right, line(name) + "\n")) word.keys = once->keys;
    return word;
}

}  // namespace lacewright
