#include "core/words/row_phrases.h"

#include <algorithm>
#include <set>

#include "core/words/merge_phrases.h"
#include "core/words/named_repeats.h"
#include "core/words/row_parts.h"

namespace lacewright {
namespace {

class RowWorder {
 public:
    RowWorder(const Chart& chart, int rowIndex, StitchWords& words, Shortening shortening)
        : chart_(chart),
          row_(rowIndex),
          side_(chart.sideOf(rowIndex)),
          words_(words),
          shortening_(shortening) {}

    RowPhrases run(const std::vector<const Size*>& sizes) {
        std::vector<std::vector<WorkedStretch>> bySize;
        if (sizes.empty()) bySize.push_back(workedStretches(chart_, row_, nullptr));
        for (const Size* size : sizes) bySize.push_back(workedStretches(chart_, row_, size, true));
        open_ = sizes.empty();
        const bool joined = shortening_ == Shortening::Open && joinPlain(bySize);
        if (open_ && !joined && namesRepeats(chart_, row_)) names_ = repeatNames(chart_);
        ToldRepeats told;
        told.names = names_;
        if (names_.empty()) told.starred = starredRepeat(bySize);
        if (!open_) told.kept = keptRepeats(chart_, side_, told.starred, bySize, words_);
        std::vector<PartedRow> rows;
        for (const auto& stretches : bySize)
            rows.push_back(partedRow(chart_, side_, stretches, told, words_));
        return phrased(rows);
    }

 private:
    // Several plain repeats become one in every size; false where some size does not let them.
    bool joinPlain(std::vector<std::vector<WorkedStretch>>& bySize) {
        std::vector<std::vector<WorkedStretch>> joined;
        for (const auto& stretches : bySize) {
            auto one = joinedIfPlain(chart_, side_, stretches, words_);
            if (!one) return false;
            joined.push_back(std::move(*one));
        }
        bySize = std::move(joined);
        return true;
    }

    Phrases shortened(const WordRun& run) const {
        return shortening_ == Shortening::RunsOnly ? countedRuns(run.words, words_.costs())
                                                   : shortestPhrases(run.words, words_.costs());
    }

    // Phrases of parts one after the other; their positions begin at `from`.
    Phrases phrasesOf(const std::vector<CountedRun>& parts, std::size_t from) const {
        Phrases all;
        for (const CountedRun& part : parts) {
            Phrases phrases = shortened(part.run);
            shift(phrases, from);
            const std::size_t length = part.run.words.size();
            if (!part.count.empty()) {
                all.push_back({-1, std::move(phrases), {1}, from, length, part.count});
            } else if (part.times == 1 && !part.kept) {
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

    Phrases joined(const std::vector<Phrases>& bySize) const {
        const WordNumbers numbers{
            [this](WordIndex word) { return words_[word].countable; },
            [this](WordIndex word) { return !words_[word].verb.empty(); },
        };
        return mergedPhrases(bySize, numbers);
    }

    bool isCountable(const Phrase& phrase) const {
        return !phrase.isBracket() &&
               words_.costs().countable[static_cast<std::size_t>(phrase.word)];
    }

    static std::int64_t takesOf(const std::vector<CountedRun>& parts) {
        std::int64_t takes = 0;
        for (const CountedRun& part : parts) takes += part.run.takes * part.times;
        return takes;
    }

    static void addColumns(const std::vector<CountedRun>& parts, std::vector<int>& columns) {
        for (const CountedRun& part : parts)
            columns.insert(columns.end(), part.run.columns.begin(), part.run.columns.end());
    }

    static std::size_t lengthOf(const std::vector<CountedRun>& parts) {
        std::size_t length = 0;
        for (const CountedRun& part : parts) length += part.run.words.size();
        return length;
    }

    // The whole row is one plain word in every size, and no size is without stitches.
    bool isPlain(const std::vector<PartedRow>& rows) const {
        std::set<WordIndex> all;
        for (const PartedRow& row : rows) {
            if (row.before.empty() && row.after.empty() && (!row.star || row.star->times == 0))
                return false;
            for (const auto* parts : {&row.before, &row.after}) {
                for (const CountedRun& part : *parts)
                    all.insert(part.run.words.begin(), part.run.words.end());
            }
            if (row.star) all.insert(row.star->run.words.begin(), row.star->run.words.end());
        }
        return all.size() == 1 && !words_[*all.begin()].verb.empty();
    }

    RowPhrases phrased(std::vector<PartedRow> rows) {
        RowPhrases result;
        result.side = side_;
        if (!open_) {
            for (const PartedRow& row : rows) {
                result.takes.push_back(row.takes);
                result.makes.push_back(row.makes);
            }
        } else if (!rows.front().star && names_.empty()) {
            result.takes = {rows.front().takes};
            result.makes = {rows.front().makes};
        }
        const bool mayOpen = open_ || shortening_ == Shortening::Open;
        if (mayOpen && isPlain(rows)) return plain(std::move(result), rows);
        const bool everywhere =
            std::all_of(rows.begin(), rows.end(), [](const PartedRow& row) { return row.star; });
        const bool often = std::any_of(rows.begin(), rows.end(), [&](const PartedRow& row) {
            return row.star && (row.star->open || row.star->times > 1);
        });
        if (!everywhere || !often) {
            result.before = unstarred(rows);
            collectColumns(rows.front(), result);
            return result;
        }
        bool leavesSome = open_ || shortening_ == Shortening::Open;
        for (const PartedRow& row : rows) leavesSome = leavesSome && row.star->run.takes > 0;
        if (leavesSome) absorbPlain(rows, words_);
        return starred(std::move(result), rows, leavesSome);
    }

    static void collectColumns(const PartedRow& row, RowPhrases& result) {
        addColumns(row.before, result.columns);
        if (row.star) addColumns({*row.star}, result.columns);
        addColumns(row.after, result.columns);
    }

    RowPhrases plain(RowPhrases result, const std::vector<PartedRow>& rows) const {
        collectColumns(rows.front(), result);
        const PartedRow& row = rows.front();
        const WordIndex word = !row.before.empty() ? row.before.front().run.words.front()
                               : row.star          ? row.star->run.words.front()
                                                   : row.after.front().run.words.front();
        result.repeat = {{word, {}, {1}, 0, result.columns.size()}};
        result.leaves.assign(rows.size(), 0);
        return result;
    }

    Phrases unstarred(const std::vector<PartedRow>& rows) const {
        std::vector<std::vector<CountedRun>> bySize;
        for (const PartedRow& row : rows) {
            bySize.push_back(row.all());
        }
        return merged(bySize, std::vector<std::size_t>(rows.size(), 0));
    }

    // The parts of every size as one list of phrases; the positions of each begin at `from`.
    // Repeats that are kept in all sizes part the row, so that each numbers its own.
    Phrases merged(const std::vector<std::vector<CountedRun>>& bySize,
                   std::vector<std::size_t> from) const {
        const auto kept = static_cast<std::size_t>(
            std::count_if(bySize.front().begin(), bySize.front().end(),
                          [](const CountedRun& part) { return part.kept; }));
        std::vector<std::vector<std::vector<CountedRun>>> sections;
        for (const auto& parts : bySize) {
            auto own = sectionsOf(parts, kept);
            if (!own) own = {{parts}};
            sections.push_back(std::move(*own));
        }
        const bool alike = std::all_of(sections.begin(), sections.end(), [&](const auto& own) {
            return own.size() == sections.front().size();
        });
        if (!alike) {
            for (std::size_t i = 0; i < sections.size(); ++i) sections[i] = {bySize[i]};
        }
        Phrases all;
        for (std::size_t k = 0; k < sections.front().size(); ++k) {
            std::vector<Phrases> phrases;
            for (std::size_t i = 0; i < sections.size(); ++i) {
                phrases.push_back(phrasesOf(sections[i][k], from[i]));
                from[i] += lengthOf(sections[i][k]);
            }
            Phrases one = joined(phrases);
            all.insert(all.end(), std::make_move_iterator(one.begin()),
                       std::make_move_iterator(one.end()));
        }
        return all;
    }

    RowPhrases starred(RowPhrases result, const std::vector<PartedRow>& rows,
                       bool leavesSome) const {
        std::vector<std::vector<CountedRun>> before;
        std::vector<Phrases> repeat;
        std::vector<std::vector<CountedRun>> after;
        std::vector<std::size_t> behind;
        for (const PartedRow& row : rows) {
            before.push_back(row.before);
            repeat.push_back(shortened(row.star->run));
            shift(repeat.back(), lengthOf(row.before));
            after.push_back(row.after);
            behind.push_back(lengthOf(row.before) + row.star->run.words.size());
            if (leavesSome) {
                result.leaves.push_back(static_cast<int>(takesOf(row.after)));
            } else {
                result.times.push_back(row.star->times);
            }
        }
        result.before = merged(before, std::vector<std::size_t>(rows.size(), 0));
        result.repeat = joined(repeat);
        result.after = merged(after, behind);
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
    std::vector<std::string> names_;  // of the chart's repeats, where this row uses them
};

}  // namespace

RowPhrases rowPhrases(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                      StitchWords& words, Shortening shortening) {
    return RowWorder(chart, rowIndex, words, shortening).run(sizes);
}

}  // namespace lacewright
