#include "core/words/size_words.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"
#include "core/count/tally.h"

namespace lacewright {
namespace {

std::string placeName(const Chart& chart, int column) {
    const Point* point = chart.pointAt(column);
    if (point == nullptr) return "column " + std::to_string(column);
    // A repeat may have the same letter.
    return (chart.findRepeat(point->name) != nullptr ? "point " : "") + point->name;
}

std::string timesWords(int times, bool more) {
    if (times == 1) return more ? "once more" : "once";
    return std::to_string(times) + (more ? " more times" : " times");
}

// Writes the instruction for one path: a run of columns goes on through the first pass of every
// repeat that it meets.
class Instruction {
 public:
    Instruction(const Chart& chart, const Path& path, const Reach& reach, const Times& times)
        : chart_(chart), start_(reach.start), at_(reach.start - 1) {
        parts_.push_back("begin at " + placeName(chart, reach.start));
        for (const Segment& segment : path) {
            if (segment.isBox()) {
                box(segment, times[static_cast<std::size_t>(segment.repeat)].value_or(1));
            } else {
                run(segment);
            }
        }
        // A size whose last repeat is left out ends before it.
        parts_.push_back(at_ == kNowhere ? "end there" : "end at " + placeName(chart, reach.end));
    }

    std::string text() const { return join(parts_, ", "); }

 private:
    // Where a run ends inside the row: at the last column of a repeat.
    std::string endOf(const Segment& box) const {
        if (isLettered(box)) return placeName(chart_, box.last);
        return "the end of repeat " + nameOf(box);
    }
    const std::string& nameOf(const Segment& box) const {
        return chart_.repeats[static_cast<std::size_t>(box.repeat)].name;
    }
    bool isLettered(const Segment& box) const {
        const Repeat& repeat = chart_.repeats[static_cast<std::size_t>(box.repeat)];
        return repeat.jogs.empty() && chart_.pointAt(box.first) != nullptr &&
               chart_.pointAt(box.last) != nullptr;
    }
    std::string wholeBox(const Segment& box) const {
        if (!isLettered(box)) return "repeat " + nameOf(box);
        return placeName(chart_, box.first) + " to " + placeName(chart_, box.last);
    }
    std::string startOf(const Segment& box) const {
        return isLettered(box) ? placeName(chart_, box.first)
                               : "the start of repeat " + nameOf(box);
    }

    static constexpr int kNowhere = -1;

    void goTo(const std::string& place, int first) {
        if (at_ + 1 != first) {
            if (!untold_.empty()) parts_.push_back("work to " + untold_);
            parts_.push_back("go on from " + place);
        }
        untold_.clear();
        at_ = first - 1;
    }

    void run(const Segment& segment) {
        if (segment.part == Segment::Part::StartOfSize) {
            parts_.push_back("work to " + endOf(segment));
        } else if (segment.part == Segment::Part::EndOfSize) {
            goTo(startOf(segment), segment.first);
        } else {
            goTo(placeName(chart_, segment.first), segment.first);
        }
        at_ = segment.last;
    }

    void box(const Segment& segment, int times) {
        if (times == 0) {
            const bool reached = at_ + 1 == segment.first && at_ >= start_;
            if (reached) parts_.push_back("work up to " + startOf(segment));
            parts_.push_back("leave out " + wholeBox(segment));
            at_ = kNowhere;
            return;
        }
        const bool contiguous = at_ + 1 == segment.first;
        if (contiguous && times > 1) parts_.push_back("work to " + endOf(segment));
        untold_ = contiguous && times == 1 ? endOf(segment) : "";
        const int again = contiguous ? times - 1 : times;
        if (again > 0) {
            parts_.push_back("then work " + wholeBox(segment) + " " +
                             timesWords(again, contiguous));
        }
        at_ = segment.last;
    }

    const Chart& chart_;
    int start_;
    int at_;  // the knitter stands after this column; kNowhere: has to be told where to go on
    std::string untold_;  // where the run just worked ends, if it has not been said
    std::vector<std::string> parts_;
};

std::int64_t takenOn(const Chart& chart, int row, const Size& size, const Path& path,
                     const Times& times) {
    const AffineForm taken = formsOf(chart, row, size, path, times).takes;
    return taken.at([](Variable) { return 1; });
}

std::string rowsText(const Chart& chart, const std::vector<InstructedRows>& rows) {
    std::vector<std::string> spans;
    bool several = rows.size() > 1;
    for (const InstructedRows& span : rows) {
        std::string text = std::to_string(chart.rowNumber(span.firstRow));
        if (span.firstRow != span.lastRow) {
            text += "\u2013" + std::to_string(chart.rowNumber(span.lastRow));
            several = true;
        }
        spans.push_back(std::move(text));
    }
    const std::string word = chart.worked == Worked::Flat ? "row" : "round";
    return word + (several ? "s " : " ") + listing(spans);
}

}  // namespace

std::vector<SizeInstruction> sizeInstructions(const Chart& chart, const Size& size) {
    const Times times = timesOf(chart, size);
    std::vector<SizeInstruction> instructions;
    std::map<std::string, std::size_t> known;  // instruction without its count
    for (const PathBand& band : pathBands(chart, &size)) {
        const std::string text = Instruction(chart, band.path, band.reach, times).text();
        const auto [at, isNew] = known.emplace(text, instructions.size());
        if (isNew) {
            const std::int64_t count = takenOn(chart, band.firstRow, size, band.path, times);
            instructions.push_back({{}, text + ": " + counted(count, "st", "sts")});
        }
        auto& rows = instructions[at->second].rows;
        if (!rows.empty() && rows.back().lastRow + 1 == band.firstRow) {
            rows.back().lastRow = band.lastRow;
        } else {
            rows.push_back({band.firstRow, band.lastRow});
        }
    }
    return instructions;
}

std::vector<std::string> sizeInstructionSentences(const Chart& chart, const Size& size) {
    const std::vector<SizeInstruction> instructions = sizeInstructions(chart, size);
    std::vector<std::string> sentences;
    for (std::size_t i = 0; i < instructions.size(); ++i) {
        const std::string rows =
            instructions.size() > 1 ? "on " + rowsText(chart, instructions[i].rows) + " " : "";
        std::string text = rows + instructions[i].text + ".";
        if (i == 0) {
            text = "Size " + size.name + ": " + text;
        } else if (!text.empty() && text[0] == 'o') {
            text[0] = 'O';
        }
        sentences.push_back(std::move(text));
    }
    return sentences;
}

}  // namespace lacewright
