#include "core/sheet/text_blocks.h"

#include <algorithm>
#include <utility>

#include "core/base/text.h"
#include "core/sheet/text_width.h"

namespace lacewright {
namespace {

constexpr int kSentenceGap = 3;            // units
constexpr int kWidestLabel = 90;           // units a name before its text may take
constexpr int kEntryGap = 7;               // units
constexpr std::size_t kLinesTogether = 6;  // longer entries may go on in the next column

class EntryMaker {
 public:
    EntryMaker(const Drawing& drawing, int columnWidth) : drawing_(drawing), width_(columnWidth) {}

    void heading(const std::string& group, const std::string& words) {
        group_ = group;
        Entry entry = begin();
        entry.lines.push_back({Role::Heading, drawing_.body() * 1.2, words});
        entry.heading = true;
        entry.keepsNext = true;
        entry.gap = 2;
        entries_.push_back(std::move(entry));
    }

    void paragraph(std::string_view words) {
        for (const std::string_view line : splitLines(words)) {
            Entry entry = begin();
            addLines(entry, Role::Body, line);
            if (!entry.lines.empty()) finish(std::move(entry), kSentenceGap);
        }
    }

    // A name, and sentences beside it; `labelWidth` is the room that the names of a list need.
    void named(Role role, const std::string& name, int labelWidth,
               const std::vector<std::string>& sentences) {
        Entry entry = begin();
        const Line label{role, drawing_.body(), name};
        if (labelWidth <= kWidestLabel) {
            entry.label = label;
            entry.indent = labelWidth;
        } else {
            addLines(entry, role, name);
        }
        for (const std::string& sentence : sentences) addLines(entry, Role::Body, sentence);
        finish(std::move(entry), kSentenceGap);
    }

    void stitch(const Stitch& stitch, const StitchUse& use) {
        Entry entry = begin();
        entry.glyph = use.glyph;
        entry.cells = stitch.span;
        entry.shaded = stitch.shaded;
        entry.above = stitch.span * kCellUnits > width_ / 2;
        entry.indent = entry.above ? 0 : stitch.span * kCellUnits + kCellGap;
        const std::string& shortName = stitch.rightSide.abbreviation;
        const bool adds = !shortName.empty() && shortName != stitch.name;
        addLines(entry, Role::Name, adds ? stitch.name + " (" + shortName + ")" : stitch.name);
        addMeaning(entry, stitch, use);
        finish(std::move(entry), kEntryGap);
    }

    std::vector<Entry> take() { return std::move(entries_); }

 private:
    Entry begin() const {
        Entry entry;
        entry.group = group_;
        return entry;
    }

    // Puts the entry away; lines beyond kLinesTogether become entries of their own.
    void finish(Entry entry, int gap) {
        std::vector<Line> rest;
        if (entry.lines.size() > kLinesTogether) {
            const auto from = entry.lines.begin() + static_cast<std::ptrdiff_t>(kLinesTogether);
            rest.assign(from, entry.lines.end());
            entry.lines.erase(from, entry.lines.end());
        }
        const int indent = entry.indent;
        entries_.push_back(std::move(entry));
        for (Line& line : rest) {
            Entry more = begin();
            more.indent = indent;
            more.lines.push_back(std::move(line));
            entries_.push_back(std::move(more));
        }
        entries_.back().gap = gap;
    }

    static std::string reading(const SideWording& wording) {
        return wording.instruction.empty() ? wording.abbreviation : wording.instruction;
    }

    void addMeaning(Entry& entry, const Stitch& stitch, const StitchUse& use) {
        const std::string right = reading(stitch.rightSide);
        const std::string wrong = reading(stitch.wrongSide);
        const bool sides = drawing_.hasWrongSides() && right != wrong;
        if (use.onRight && !right.empty()) {
            addLines(entry, Role::Body, (sides ? "Right side: " : "") + right + ".");
        }
        if (use.onWrong && !wrong.empty() && (sides || !use.onRight)) {
            addLines(entry, Role::Body, (sides ? "Wrong side: " : "") + wrong + ".");
        }
    }

    void addLines(Entry& entry, Role role, std::string_view words) {
        const double points = drawing_.body();
        const int room = std::max(width_ - entry.indent, 4 * kCellUnits);
        const double fontSizes = room / (points * drawing_.unitsPerPoint());
        for (std::string& line : wrapped(words, fontSizes, lookOf(role).bold)) {
            entry.lines.push_back({role, points, std::move(line)});
        }
    }

    const Drawing& drawing_;
    int width_;
    std::string group_;
    std::vector<Entry> entries_;
};

void addLegend(EntryMaker& maker, const Drawing& drawing) {
    maker.heading("legend", "Symbols");
    for (std::size_t i = 1; i < drawing.uses.size(); ++i) {
        if (!drawing.uses[i].used()) continue;
        maker.stitch((*drawing.chart.stitches)[static_cast<StitchIndex>(i)], drawing.uses[i]);
    }
}

void addSizes(EntryMaker& maker, const Drawing& drawing) {
    if (drawing.chart.sizes.empty()) return;
    maker.heading("sizes", "Sizes");
    int width = 0;
    for (const Size& size : drawing.chart.sizes) {
        width = std::max(width, drawing.textUnits(size.name, drawing.body(), true) + kCellGap);
    }
    for (const Size& size : drawing.chart.sizes) {
        const bool chosen = &size == drawing.size;
        maker.named(chosen ? Role::ChosenSizeName : Role::Name, size.name, width,
                    sizeSentences(drawing, size));
    }
}

}  // namespace

std::vector<Entry> textEntries(const Drawing& drawing, int columnWidth) {
    EntryMaker maker(drawing, columnWidth);
    addLegend(maker, drawing);
    addSizes(maker, drawing);
    maker.heading("reading", "Working the chart");
    for (const std::string& sentence : readingSentences(drawing.chart)) maker.paragraph(sentence);
    for (const std::string& sentence : countSentences(drawing)) maker.paragraph(sentence);
    if (!trim(drawing.chart.notes).empty()) {
        maker.heading("notes", "Notes");
        maker.paragraph(drawing.chart.notes);
    }
    if (!trim(drawing.chart.source).empty()) {
        maker.heading("source", "Source");
        maker.paragraph(drawing.chart.source);
    }
    return maker.take();
}

}  // namespace lacewright
