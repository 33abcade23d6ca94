#include "core/words/row_phrases.h"

#include <algorithm>
#include <set>

#include "core/words/merge_phrases.h"

namespace lacewright {
namespace {

// A run of words with the columns they stand for and the loops they take and make.
struct Run {
    std::vector<WordIndex> words = {};
    std::vector<int> columns = {};
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

struct Counted {
    Run run;
    int times = 1;
};

// A row of one size, parted at the repeat that is starred.
struct Parted {
    std::vector<Counted> before;
    std::optional<Counted> star;
    std::vector<Counted> after;
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

class RowWorder {
 public:
    RowWorder(const Chart& chart, int rowIndex, StitchWords& words, Shortening shortening)
        : chart_(chart),
          row_(rowIndex),
          side_(chart.sideOf(rowIndex)),
          words_(words),
          shortening_(shortening) {}

    std::optional<RowPhrases> run(const std::vector<const Size*>& sizes) {
        std::vector<std::vector<WorkedStretch>> bySize;
        if (sizes.empty()) bySize.push_back(workedStretches(chart_, row_, nullptr));
        for (const Size* size : sizes) bySize.push_back(workedStretches(chart_, row_, size));
        open_ = sizes.empty();
        if (open_ && std::count_if(bySize[0].begin(), bySize[0].end(),
                                   [](const auto& stretch) { return stretch.open; }) > 1) {
            return {};
        }
        const int starred = starredRepeat(bySize);
        std::vector<Parted> rows;
        for (const auto& stretches : bySize) rows.push_back(parted(stretches, starred));
        return phrased(rows);
    }

 private:
    // The repeat that gets the star: the one worked most often in any size.
    static int starredRepeat(const std::vector<std::vector<WorkedStretch>>& bySize) {
        int repeat = -1;
        int most = 1;
        for (const auto& stretches : bySize) {
            for (const WorkedStretch& stretch : stretches) {
                if (stretch.repeat < 0 || stretch.stitches.empty()) continue;
                if (stretch.open || stretch.times > most) {
                    most = stretch.times;
                    repeat = stretch.repeat;
                }
            }
        }
        return repeat;
    }

    Run runOf(const WorkedStretch& stretch) {
        Run run;
        for (std::size_t i = 0; i < stretch.stitches.size(); ++i) {
            const Stitch& stitch = (*chart_.stitches)[stretch.stitches[i]];
            run.words.push_back(words_.of(stretch.stitches[i], side_));
            run.columns.push_back(stretch.columns[i]);
            run.takes += stitch.takes;
            run.makes += stitch.makes;
        }
        return run;
    }

    static void append(std::vector<Counted>& parts, Counted part) {
        if (part.run.words.empty()) return;
        if (part.times == 1 && !parts.empty() && parts.back().times == 1) {
            Run& last = parts.back().run;
            last.words.insert(last.words.end(), part.run.words.begin(), part.run.words.end());
            last.columns.insert(last.columns.end(), part.run.columns.begin(),
                                part.run.columns.end());
            last.takes += part.run.takes;
            last.makes += part.run.makes;
        } else {
            parts.push_back(std::move(part));
        }
    }

    Parted parted(const std::vector<WorkedStretch>& stretches, int starred) {
        Parted row;
        for (const WorkedStretch& stretch : stretches) {
            Counted part{runOf(stretch), stretch.times};
            row.takes += part.run.takes * part.times;
            row.makes += part.run.makes * part.times;
            if (stretch.repeat == starred && starred >= 0 && !row.star) {
                row.star = std::move(part);
            } else {
                append(row.star ? row.after : row.before, std::move(part));
            }
        }
        return row;
    }

    // The word of a row or stretch that holds nothing else; -1 otherwise.
    static WordIndex onlyWord(const std::vector<WordIndex>& run) {
        const bool same = !run.empty() && std::all_of(run.begin(), run.end(),
                                                      [&](WordIndex w) { return w == run[0]; });
        return same ? run.front() : -1;
    }

    Phrases shortened(const Run& run) const {
        return shortening_ == Shortening::RunsOnly ? countedRuns(run.words, words_.costs())
                                                   : shortestPhrases(run.words, words_.costs());
    }

    static void shift(Phrases& phrases, std::size_t by) {
        for (Phrase& phrase : phrases) {
            phrase.first += by;
            shift(phrase.body, by);
        }
    }

    // Phrases of parts one after the other; their positions begin at `from`.
    Phrases phrasesOf(const std::vector<Counted>& parts, std::size_t from) const {
        Phrases all;
        for (const Counted& part : parts) {
            Phrases phrases = shortened(part.run);
            shift(phrases, from);
            const std::size_t length = part.run.words.size();
            if (part.times == 1) {
                all.insert(all.end(), phrases.begin(), phrases.end());
            } else if (phrases.size() == 1 && (phrases[0].isBracket() || isCountable(phrases[0]))) {
                phrases[0].times.front() *= part.times;
                all.push_back(std::move(phrases[0]));
            } else {
                all.push_back({-1, std::move(phrases), {part.times}, from, length});
            }
            from += length;
        }
        return all;
    }

    bool isCountable(const Phrase& phrase) const {
        return !phrase.isBracket() &&
               words_.costs().countable[static_cast<std::size_t>(phrase.word)];
    }

    static std::int64_t takesOf(const std::vector<Counted>& parts) {
        std::int64_t takes = 0;
        for (const Counted& part : parts) takes += part.run.takes * part.times;
        return takes;
    }

    static void addColumns(const std::vector<Counted>& parts, std::vector<int>& columns) {
        for (const Counted& part : parts)
            columns.insert(columns.end(), part.run.columns.begin(), part.run.columns.end());
    }

    static std::size_t lengthOf(const std::vector<Counted>& parts) {
        std::size_t length = 0;
        for (const Counted& part : parts) length += part.run.words.size();
        return length;
    }

    // A plain repeat takes in the stitches beside it that are the same: "k2, *k4; rep from *"
    // becomes "k to ..". What it takes in need not be a whole number of repeats.
    void absorb(std::vector<Parted>& rows) const {
        const WordIndex word = onlyWord(rows.front().star->run.words);
        if (word < 0 || words_[word].verb.empty()) return;
        for (Parted& row : rows) {
            if (onlyWord(row.star->run.words) != word) return;
        }
        for (Parted& row : rows) {
            Run& star = row.star->run;
            const std::vector<int> inner = star.columns;
            star = {};
            const auto take = [&](Run& from, std::size_t at, std::size_t count) {
                const auto first = static_cast<std::ptrdiff_t>(at);
                const auto last = static_cast<std::ptrdiff_t>(at + count);
                star.columns.insert(star.columns.end(), from.columns.begin() + first,
                                    from.columns.begin() + last);
                from.words.erase(from.words.begin() + first, from.words.begin() + last);
                from.columns.erase(from.columns.begin() + first, from.columns.begin() + last);
                from.takes -= static_cast<std::int64_t>(count);
                from.makes -= static_cast<std::int64_t>(count);
            };
            if (!row.before.empty() && row.before.back().times == 1) {
                Run& run = row.before.back().run;
                std::size_t count = 0;
                while (count < run.words.size() && run.words[run.words.size() - 1 - count] == word)
                    ++count;
                take(run, run.words.size() - count, count);
                if (run.words.empty()) row.before.pop_back();
            }
            star.columns.insert(star.columns.end(), inner.begin(), inner.end());
            if (!row.after.empty() && row.after.front().times == 1) {
                Run& run = row.after.front().run;
                std::size_t count = 0;
                while (count < run.words.size() && run.words[count] == word) ++count;
                take(run, 0, count);
                if (run.words.empty()) row.after.erase(row.after.begin());
            }
            star.words.assign(star.columns.size(), word);
            star.takes = star.makes = static_cast<std::int64_t>(star.columns.size());
        }
    }

    // The whole row is one plain word in every size, and no size is without stitches.
    bool isPlain(const std::vector<Parted>& rows) const {
        std::set<WordIndex> all;
        for (const Parted& row : rows) {
            if (row.before.empty() && row.after.empty() && (!row.star || row.star->times == 0))
                return false;
            for (const auto* parts : {&row.before, &row.after}) {
                for (const Counted& part : *parts)
                    all.insert(part.run.words.begin(), part.run.words.end());
            }
            if (row.star) all.insert(row.star->run.words.begin(), row.star->run.words.end());
        }
        return all.size() == 1 && !words_[*all.begin()].verb.empty();
    }

    std::optional<RowPhrases> phrased(std::vector<Parted> rows) {
        RowPhrases result;
        result.side = side_;
        if (!open_) {
            for (const Parted& row : rows) {
                result.takes.push_back(row.takes);
                result.makes.push_back(row.makes);
            }
        } else if (!rows.front().star) {
            result.takes = {rows.front().takes};
            result.makes = {rows.front().makes};
        }
        const bool mayOpen = open_ || shortening_ == Shortening::Open;
        if (mayOpen && isPlain(rows)) return plain(std::move(result), rows);
        const bool everywhere =
            std::all_of(rows.begin(), rows.end(), [](const Parted& row) { return row.star; });
        const bool often = std::any_of(rows.begin(), rows.end(), [&](const Parted& row) {
            return row.star && (open_ || row.star->times > 1);
        });
        if (!everywhere || !often) {
            result.before = unstarred(rows);
            collectColumns(rows.front(), result);
            return result;
        }
        bool leavesSome = open_ || shortening_ == Shortening::Open;
        for (const Parted& row : rows) leavesSome = leavesSome && row.star->run.takes > 0;
        if (open_ && !leavesSome) return {};
        if (leavesSome) absorb(rows);
        return starred(std::move(result), rows, leavesSome);
    }

    static void collectColumns(const Parted& row, RowPhrases& result) {
        addColumns(row.before, result.columns);
        if (row.star) addColumns({*row.star}, result.columns);
        addColumns(row.after, result.columns);
    }

    RowPhrases plain(RowPhrases result, const std::vector<Parted>& rows) const {
        collectColumns(rows.front(), result);
        const Parted& row = rows.front();
        const WordIndex word = !row.before.empty() ? row.before.front().run.words.front()
                               : row.star          ? row.star->run.words.front()
                                                   : row.after.front().run.words.front();
        result.repeat = {{word, {}, {1}, 0, result.columns.size()}};
        result.leaves.assign(rows.size(), 0);
        return result;
    }

    Phrases unstarred(const std::vector<Parted>& rows) const {
        std::vector<Phrases> bySize;
        for (const Parted& row : rows) {
            std::vector<Counted> parts;
            for (const Counted& part : row.before) append(parts, part);
            if (row.star) append(parts, *row.star);
            for (const Counted& part : row.after) append(parts, part);
            bySize.push_back(phrasesOf(parts, 0));
        }
        return mergedPhrases(bySize);
    }

    std::optional<RowPhrases> starred(RowPhrases result, const std::vector<Parted>& rows,
                                      bool leavesSome) const {
        std::vector<Phrases> before;
        std::vector<Phrases> repeat;
        std::vector<Phrases> after;
        for (const Parted& row : rows) {
            std::size_t from = lengthOf(row.before);
            before.push_back(phrasesOf(row.before, 0));
            repeat.push_back(shortened(row.star->run));
            shift(repeat.back(), from);
            from += row.star->run.words.size();
            after.push_back(phrasesOf(row.after, from));
            if (leavesSome) {
                result.leaves.push_back(static_cast<int>(takesOf(row.after)));
            } else {
                result.times.push_back(row.star->times);
            }
        }
        result.before = mergedPhrases(before);
        result.repeat = mergedPhrases(repeat);
        result.after = mergedPhrases(after);
        if (leavesSome && result.repeat.size() == 1 && !result.repeat[0].isBracket() &&
            !words_[result.repeat[0].word].verb.empty()) {
            result.repeat[0].times = {1};  // "k to .." says no number
        }
        collectColumns(rows.front(), result);
        return result;
    }

    const Chart& chart_;
    int row_;
    Side side_;
    StitchWords& words_;
    Shortening shortening_;
    bool open_ = false;
};

}  // namespace

std::optional<RowPhrases> rowPhrases(const Chart& chart, int rowIndex,
                                     const std::vector<const Size*>& sizes, StitchWords& words,
                                     Shortening shortening) {
    return RowWorder(chart, rowIndex, words, shortening).run(sizes);
}

}  // namespace lacewright
