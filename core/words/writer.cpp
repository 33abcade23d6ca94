#include "core/words/writer.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/words/reader.h"
#include "core/words/row_proof.h"

namespace lacewright {
namespace {

Error refusal(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
}

std::string oneLine(std::string_view text) {
    return join(
        [&] {
            std::vector<std::string> words;
            for (const std::string_view word : splitWords(text)) words.emplace_back(word);
            return words;
        }(),
        " ");
}

class Writer {
 public:
    Writer(const Chart& chart, const WriteOptions& options)
        : chart_(chart), options_(options), words_(chart, options.style.terms) {}

    Result<WrittenChart> run() {
        if (const auto problem = chooseSizes()) return *problem;
        for (int row = 0; row < chart_.height(); ++row) {
            if (const auto problem = addRow(row)) return *problem;
        }
        addUncharted();
        joinLines();
        result_.title = oneLine(chart_.name);
        result_.terms = options_.style.terms;
        result_.heading = heading();
        addGlossary();
        if (const auto problem = readBack()) return *problem;
        return std::move(result_);
    }

 private:
    std::optional<Error> chooseSizes() {
        for (const std::string& name : options_.sizes) {
            const Size* size = chart_.findSize(name);
            if (size == nullptr) return refusal("The chart has no size \"" + name + "\".");
            sizes_.push_back(size);
        }
        if (options_.sizes.empty()) {
            for (const Size& size : chart_.sizes) sizes_.push_back(&size);
        }
        for (const Size* size : sizes_) {
            for (const Repeat& repeat : chart_.repeats) {
                if (size->times.contains(repeat.name)) continue;
                return refusal("Size " + size->name + " does not say how often repeat " +
                               repeat.name + " is worked.");
            }
        }
        return {};
    }

    bool round() const { return chart_.worked == Worked::InTheRound; }

    std::string rowWord(bool several) const {
        if (round()) return several ? "Rnds" : "Rnd";
        return several ? "Rows" : "Row";
    }

    std::string sideText(Side side) const {
        if (round()) return "";
        return side == Side::Right ? " (RS)" : " (WS)";
    }

    std::string label(int rowIndex) const {
        return rowWord(false) + " " + std::to_string(chart_.rowNumber(rowIndex)) +
               sideText(chart_.sideOf(rowIndex));
    }

    // Heading lines without which a row cannot be read.
    std::string definitions() const {
        std::string text;
        for (const std::string& line : words_.definitions()) text += line + "\n";
        return text;
    }

    std::string sizesLine() const {
        if (sizes_.size() < 2) return "";
        std::string text = "Sizes: " + std::string("1");
        for (std::size_t i = 1; i < sizes_.size(); ++i)
            text += (i == 1 ? " (" : ", ") + std::to_string(i + 1);
        return text + ")";
    }

    bool proven(int rowIndex, const std::string& body) {
        const std::string text = (sizes_.size() < 2 ? "" : sizesLine() + "\n") + definitions() +
                                 (round() ? "Worked: round\n" : "") + rowWord(false) + " 1" +
                                 sideText(chart_.sideOf(rowIndex)) + ": " + body + ".\n";
        const ReadRows read = readWritten(text);
        return !read.hasErrors() && read.pattern.rows.size() == 1 &&
               provenSame(chart_, rowIndex, sizes_, words_, read.pattern,
                          read.pattern.rows.front());
    }

    std::optional<Error> addRow(int rowIndex) {
        for (int shortening = 0; shortening < kShortenings; ++shortening) {
            const auto row =
                rowPhrases(chart_, rowIndex, sizes_, words_, static_cast<Shortening>(shortening));
            if (!row) {
                return refusal("Without a size, " + label(rowIndex) +
                               " has several repeats whose counts are free, or one that takes no "
                               "stitches; choose a size.");
            }
            WrittenLine line{label(rowIndex),
                             rowPieces(*row, words_, options_.style),
                             {},
                             {rowIndex},
                             row->columns};
            const std::string body = textOf(line.pieces);
            if (body.empty()) {
                return refusal(label(rowIndex) + " has no stitches to write.");
            }
            if (!proven(rowIndex, body)) continue;
            if (!row->makes.empty() && row->makes != row->takes) {
                const std::vector<int> makes(row->makes.begin(), row->makes.end());
                const bool one =
                    std::all_of(makes.begin(), makes.end(), [](int n) { return n == 1; });
                const std::string figure = figureText(makes);
                const bool listed = figure.find('(') != std::string::npos;
                line.stated =
                    (listed ? "[" : "(") + figure + (one ? " st" : " sts") + (listed ? "]" : ")");
            }
            result_.lines.push_back(std::move(line));
            return {};
        }
        return refusal("No text says " + label(rowIndex) + " without doubt.");
    }

    std::string familyName(Side side) const {
        if (round()) return " and all even rnds";
        return side == Side::Right ? " and all RS rows" : " and all WS rows";
    }

    void addUncharted() {
        if (chart_.uncharted == Uncharted::None) return;
        const Side side = !round() && chart_.firstSide == Side::Right ? Side::Wrong : Side::Right;
        WrittenLine line;
        line.label = rowWord(false) + " 2" + familyName(side);
        const char* text = chart_.uncharted == Uncharted::Purl   ? "purl"
                           : chart_.uncharted == Uncharted::Knit ? "knit"
                                                                 : "work as is to end";
        line.pieces.push_back({text});
        result_.lines.insert(result_.lines.begin() + 1, std::move(line));
    }

    static bool alike(const WrittenLine& a, const WrittenLine& b) {
        return textOf(a.pieces) == textOf(b.pieces) && a.stated == b.stated;
    }

    // "Row 2 and all WS rows", "Rows 5-8".
    void joinLines() {
        if (chart_.uncharted != Uncharted::None || !chart_.rows.size()) return;
        std::vector<WrittenLine>& lines = result_.lines;
        const std::size_t n = lines.size();
        bool family = n >= 4 && n % 2 == 0;
        for (std::size_t i = 3; family && i < n; i += 2) family = alike(lines[i], lines[1]);
        if (family) {
            std::vector<WrittenLine> kept;
            for (std::size_t i = 0; i < n; ++i) {
                if (i % 2 == 1 && i > 1)
                    kept[1].rowIndices.push_back(static_cast<int>(i));
                else
                    kept.push_back(lines[i]);
            }
            kept[1].label = rowWord(false) + " 2" + familyName(chart_.sideOf(1));
            lines = std::move(kept);
            return;
        }
        std::vector<WrittenLine> kept;
        for (WrittenLine& line : lines) {
            const bool sideTold = chart_.firstSide == Side::Right || line.rowIndices[0] > 1;
            if (!kept.empty() && sideTold && alike(kept.back(), line)) {
                std::vector<int>& rows = kept.back().rowIndices;
                rows.push_back(line.rowIndices[0]);
                kept.back().label = rowWord(true) + " " +
                                    std::to_string(chart_.rowNumber(rows.front())) +
                                    (rows.size() == 2 ? " and " : "-") +
                                    std::to_string(chart_.rowNumber(rows.back()));
            } else {
                kept.push_back(std::move(line));
            }
        }
        lines = std::move(kept);
    }

    std::string castOn() const {
        if (!sizes_.empty()) {
            std::vector<int> counts;
            for (const Size* size : sizes_) {
                std::int64_t takes = 0;
                for (const WorkedStretch& stretch : workedStretches(chart_, 0, size)) {
                    for (const StitchIndex stitch : stretch.stitches)
                        takes += std::int64_t{stretch.times} * (*chart_.stitches)[stitch].takes;
                }
                counts.push_back(size->stitches ? *size->stitches : static_cast<int>(takes));
            }
            return "Cast on: " + figureText(counts);
        }
        CastOn castOn;
        if (chart_.castOn) {
            castOn = *chart_.castOn;
        } else {
            for (const WorkedStretch& stretch : workedStretches(chart_, 0, nullptr)) {
                for (const StitchIndex stitch : stretch.stitches)
                    (stretch.open ? castOn.multiple : castOn.plus) +=
                        (*chart_.stitches)[stitch].takes;
            }
        }
        if (castOn.multiple == 0) return "Cast on: " + std::to_string(castOn.plus);
        return "Cast on: multiple of " + std::to_string(castOn.multiple) + " plus " +
               std::to_string(castOn.plus);
    }

    std::vector<std::string> heading() const {
        std::vector<std::string> lines;
        lines.push_back(castOn());
        lines.push_back(round() ? "Worked: round" : "Worked: flat");
        if (!sizes_.empty()) {
            std::string names = "Sizes: " + nameOf(*sizes_.front());
            for (std::size_t i = 1; i < sizes_.size(); ++i)
                names += (i == 1 ? " (" : ", ") + nameOf(*sizes_[i]);
            lines.push_back(names + (sizes_.size() > 1 ? ")" : ""));
        }
        for (const std::string& line : words_.definitions()) lines.push_back(line);
        if (const auto& repeat = chart_.rowRepeat) {
            const std::string first = std::to_string(chart_.rowNumber(repeat->firstRow));
            if (repeat->lastRow == chart_.height() - 1) {
                lines.push_back("Repeat from row: " + first);
            } else {
                lines.push_back("Note: rows " + first + " to " +
                                std::to_string(chart_.rowNumber(repeat->lastRow)) +
                                " are worked again and again before going on");
            }
        }
        return lines;
    }

    // A name that a list of names can hold.
    static std::string nameOf(const Size& size) {
        std::string name;
        for (const char c : oneLine(size.name)) {
            const bool mark = std::string_view(",()[]:/").find(c) != std::string_view::npos;
            name += mark ? ' ' : c;
        }
        name = oneLine(name);
        return name.empty() ? "size" : name;
    }

    void addGlossary() {
        std::set<WordIndex> used;
        for (const WrittenLine& line : result_.lines) {
            for (const TextPiece& piece : line.pieces) {
                if (piece.word < 0 || !used.insert(piece.word).second) continue;
                const WorkWord& word = words_[piece.word];
                const Stitch& stitch = (*chart_.stitches)[word.stitch];
                const SideWording& wording =
                    word.side == Side::Right ? stitch.rightSide : stitch.wrongSide;
                std::string name = word.verb.empty() ? word.one : word.verb;
                std::string meaning = oneLine(wording.instruction);
                if (word.own || meaning.empty()) meaning = oneLine(stitch.name);
                result_.glossary.push_back({std::move(name), std::move(meaning)});
            }
        }
    }

    // The whole text once more, as a knitter gets it.
    std::optional<Error> readBack() {
        const std::string text = result_.text();
        const ReadRows read = readWritten(text);
        const auto doubtful = [](const std::string& where) {
            return refusal("The written rows do not read back as the chart" + where + ".");
        };
        for (const ReadMessage& message : read.messages) {
            if (message.error) return doubtful(": " + message.sentence());
        }
        if (read.pattern.sizeCount() != std::max<std::size_t>(1, sizes_.size()))
            return doubtful(" in their sizes");
        const std::size_t between =
            chart_.uncharted == Uncharted::None ? 0 : static_cast<std::size_t>(chart_.height());
        if (read.pattern.rows.size() != chart_.rows.size() + between)
            return doubtful(" in the number of rows");
        for (int row = 0; row < chart_.height(); ++row) {
            const WrittenRow* written = read.pattern.findRow(chart_.rowNumber(row));
            if (written == nullptr ||
                !provenSame(chart_, row, sizes_, words_, read.pattern, *written))
                return doubtful(" in " + label(row));
        }
        return {};
    }

    const Chart& chart_;
    const WriteOptions& options_;
    std::vector<const Size*> sizes_;
    StitchWords words_;
    WrittenChart result_;
};

}  // namespace

std::string WrittenLine::text() const {
    return label + ": " + textOf(pieces) + "." + (stated.empty() ? "" : " " + stated);
}

std::string WrittenChart::text() const {
    std::string text;
    if (!title.empty()) text += "Title: " + title + "\n";
    for (const std::string& line : heading) text += line + "\n";
    if (!glossary.empty()) {
        std::vector<std::string> entries;
        for (const GlossaryEntry& entry : glossary)
            entries.push_back(entry.word + ": " + entry.meaning);
        text += "Abbreviations: " + join(entries, "; ") + "\n";
    }
    text += "\n";
    for (const WrittenLine& line : lines) text += line.text() + "\n";
    return text;
}

Result<WrittenChart> writeRows(const Chart& chart, const WriteOptions& options) {
    if (chart.height() == 0) return refusal("The chart has no rows.");
    return Writer(chart, options).run();
}

}  // namespace lacewright
