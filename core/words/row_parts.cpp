#include "core/words/row_parts.h"

#include <algorithm>
#include <map>

namespace lacewright {
namespace {

constexpr std::int64_t kMostWrittenOut = 200;  // stitches of a plain repeat among its neighbours

WordRun runOf(const Chart& chart, Side side, const WorkedStretch& stretch, StitchWords& words) {
    WordRun run;
    for (std::size_t i = 0; i < stretch.stitches.size(); ++i) {
        const Stitch& stitch = (*chart.stitches)[stretch.stitches[i]];
        run.words.push_back(words.of(stretch.stitches[i], side));
        run.columns.push_back(stretch.columns[i]);
        run.takes += stitch.takes;
        run.makes += stitch.makes;
    }
    return run;
}

void addStitches(WorkedStretch& to, const WorkedStretch& more) {
    to.stitches.insert(to.stitches.end(), more.stitches.begin(), more.stitches.end());
    to.columns.insert(to.columns.end(), more.columns.begin(), more.columns.end());
}

bool isWorkedOnce(const CountedRun& part) {
    return part.times == 1 && part.count.empty() && !part.kept;
}

void append(std::vector<CountedRun>& parts, CountedRun part) {
    if (part.run.words.empty()) return;
    if (parts.empty() || !isWorkedOnce(part) || !isWorkedOnce(parts.back())) {
        parts.push_back(std::move(part));
        return;
    }
    WordRun& last = parts.back().run;
    last.words.insert(last.words.end(), part.run.words.begin(), part.run.words.end());
    last.columns.insert(last.columns.end(), part.run.columns.begin(), part.run.columns.end());
    last.takes += part.run.takes;
    last.makes += part.run.makes;
}

// The word of a stretch that holds nothing else; -1 otherwise.
WordIndex onlyWord(const std::vector<WordIndex>& run) {
    const bool same = !run.empty() &&
                      std::all_of(run.begin(), run.end(), [&](WordIndex w) { return w == run[0]; });
    return same ? run.front() : -1;
}

bool isPlain(WordIndex word, const StitchWords& words) {
    return word >= 0 && !words[word].verb.empty();
}

void moveStitches(WordRun& from, std::size_t at, std::size_t count, std::vector<int>& columns) {
    const auto first = static_cast<std::ptrdiff_t>(at);
    const auto last = static_cast<std::ptrdiff_t>(at + count);
    columns.insert(columns.end(), from.columns.begin() + first, from.columns.begin() + last);
    from.words.erase(from.words.begin() + first, from.words.begin() + last);
    from.columns.erase(from.columns.begin() + first, from.columns.begin() + last);
    from.takes -= static_cast<std::int64_t>(count);
    from.makes -= static_cast<std::int64_t>(count);
}

void absorb(PartedRow& row, WordIndex word) {
    std::vector<int> columns;
    if (!row.before.empty() && isWorkedOnce(row.before.back())) {
        WordRun& run = row.before.back().run;
        std::size_t count = 0;
        while (count < run.words.size() && run.words[run.words.size() - 1 - count] == word) ++count;
        moveStitches(run, run.words.size() - count, count, columns);
        if (run.words.empty()) row.before.pop_back();
    }
    WordRun& star = row.star->run;
    columns.insert(columns.end(), star.columns.begin(), star.columns.end());
    if (!row.after.empty() && isWorkedOnce(row.after.front())) {
        WordRun& run = row.after.front().run;
        std::size_t count = 0;
        while (count < run.words.size() && run.words[count] == word) ++count;
        moveStitches(run, 0, count, columns);
        if (run.words.empty()) row.after.erase(row.after.begin());
    }
    star.words.assign(columns.size(), word);
    star.takes = star.makes = static_cast<std::int64_t>(columns.size());
    star.columns = std::move(columns);
}

}  // namespace

std::vector<CountedRun> PartedRow::all() const {
    std::vector<CountedRun> parts;
    for (const CountedRun& part : before) append(parts, part);
    if (star) append(parts, *star);
    for (const CountedRun& part : after) append(parts, part);
    return parts;
}

int starredRepeat(const std::vector<std::vector<WorkedStretch>>& bySize) {
    struct Share {
        std::size_t sizes = 0;
        int most = 1;
        bool open = false;
    };
    std::map<int, Share> repeats;
    for (const auto& stretches : bySize) {
        std::set<int> here;
        for (const WorkedStretch& stretch : stretches) {
            if (stretch.repeat < 0 || stretch.stitches.empty() || stretch.times == 0) continue;
            Share& worked = repeats[stretch.repeat];
            if (here.insert(stretch.repeat).second) ++worked.sizes;
            worked.most = std::max(worked.most, stretch.times);
            worked.open = worked.open || stretch.open;
        }
    }
    int starred = kNoRepeat;
    int most = 1;
    for (const auto& [repeat, worked] : repeats) {
        if (worked.sizes < bySize.size() || (worked.most <= most && !worked.open)) continue;
        most = worked.most;
        starred = repeat;
    }
    return starred;
}

std::set<int> keptRepeats(const Chart& chart, Side side, int starred,
                          std::vector<std::vector<WorkedStretch>>& bySize, StitchWords& words) {
    std::map<int, std::set<int>> times;
    std::set<int> kept;
    std::set<int> plain;
    for (const auto& stretches : bySize) {
        for (const WorkedStretch& stretch : stretches) {
            if (stretch.repeat < 0 || stretch.repeat == starred) continue;
            times[stretch.repeat].insert(stretch.times);
            const WordRun run = runOf(chart, side, stretch, words);
            const WordIndex only = onlyWord(run.words);
            const bool countable =
                only >= 0 && words.costs().countable[static_cast<std::size_t>(only)];
            const auto length = static_cast<std::int64_t>(run.words.size()) * stretch.times;
            (countable && length <= kMostWrittenOut ? plain : kept).insert(stretch.repeat);
        }
    }
    std::erase_if(kept, [&](int repeat) { return times[repeat].size() < 2; });
    std::erase_if(plain, [&](int r) { return times[r].size() < 2 || kept.contains(r); });
    for (auto& stretches : bySize) {
        for (WorkedStretch& stretch : stretches) {
            if (!plain.contains(stretch.repeat)) continue;
            const WorkedStretch once = stretch;
            stretch.stitches.clear();
            stretch.columns.clear();
            for (int i = 0; i < once.times; ++i) addStitches(stretch, once);
            stretch.times = 1;
            stretch.repeat = kNoRepeat;
        }
    }
    return kept;
}

PartedRow partedRow(const Chart& chart, Side side, const std::vector<WorkedStretch>& stretches,
                    const ToldRepeats& told, StitchWords& words) {
    PartedRow row;
    for (const WorkedStretch& stretch : stretches) {
        CountedRun part{runOf(chart, side, stretch, words), stretch.times, {}, stretch.open, false};
        part.kept = stretch.repeat >= 0 && told.kept.contains(stretch.repeat);
        if (part.times == 0 && !part.kept) continue;
        if (stretch.open && !told.names.empty())
            part.count = told.names[static_cast<std::size_t>(stretch.repeat)];
        row.takes += part.run.takes * part.times;
        row.makes += part.run.makes * part.times;
        if (told.starred != kNoRepeat && stretch.repeat == told.starred && !row.star) {
            row.star = std::move(part);
        } else {
            append(row.star ? row.after : row.before, std::move(part));
        }
    }
    return row;
}

std::optional<std::vector<std::vector<CountedRun>>> sectionsOf(const std::vector<CountedRun>& parts,
                                                               std::size_t kept) {
    std::vector<std::vector<CountedRun>> sections(1);
    for (const CountedRun& part : parts) {
        if (!part.kept) {
            sections.back().push_back(part);
            continue;
        }
        sections.push_back({part});
        sections.emplace_back();
    }
    if (sections.size() != 2 * kept + 1) return {};
    return sections;
}

std::optional<std::vector<WorkedStretch>> joinedIfPlain(const Chart& chart, Side side,
                                                        const std::vector<WorkedStretch>& stretches,
                                                        StitchWords& words) {
    const auto isRepeat = [](const WorkedStretch& stretch) { return stretch.repeat >= 0; };
    const auto first = std::find_if(stretches.begin(), stretches.end(), isRepeat);
    const auto end = std::find_if(stretches.rbegin(), stretches.rend(), isRepeat).base();
    if (end - first < 2) return {};
    WorkedStretch joined;
    joined.repeat = first->repeat;
    joined.open = true;
    for (auto stretch = first; stretch < end; ++stretch) {
        for (int i = stretch->open ? 1 : stretch->times; i > 0; --i) addStitches(joined, *stretch);
    }
    if (!isPlain(onlyWord(runOf(chart, side, joined, words).words), words)) return {};
    std::vector<WorkedStretch> all(stretches.begin(), first);
    all.push_back(std::move(joined));
    all.insert(all.end(), end, stretches.end());
    return all;
}

void absorbPlain(std::vector<PartedRow>& rows, const StitchWords& words) {
    const WordIndex word = onlyWord(rows.front().star->run.words);
    if (!isPlain(word, words)) return;
    const bool everywhere = std::all_of(rows.begin(), rows.end(), [word](const PartedRow& row) {
        return onlyWord(row.star->run.words) == word;
    });
    if (!everywhere) return;
    for (PartedRow& row : rows) absorb(row, word);
}

}  // namespace lacewright
