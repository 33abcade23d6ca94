#include "core/words/writer.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"
#include "core/words/between_rows.h"
#include "core/words/named_repeats.h"
#include "core/words/reader.h"
#include "core/words/row_proof.h"
#include "core/words/written_heading.h"
#include "core/words/written_lines.h"
#include "core/words/yarn_over_words.h"

namespace lacewright {
namespace {

Error refusal(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
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
        addUnchartedLine(chart_, result_.lines);
        joinLines(chart_, result_.lines);
        result_.title = oneLine(chart_.name);
        result_.terms = options_.style.terms;
        result_.heading = headingLines(chart_, sizes_, words_);
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
        if (sizes_.empty()) return tooManyOpenRepeats(chart_);
        for (const Size* size : sizes_) {
            for (const Repeat& repeat : chart_.repeats) {
                if (size->times.contains(repeat.name)) continue;
                return refusal("Size " + size->name + " does not say how often repeat " +
                               repeat.name + " is worked.");
            }
        }
        return {};
    }

    // Heading lines without which a row cannot be read.
    std::string definitions() const {
        std::string text;
        for (const std::string& line : words_.definitions()) text += line + "\n";
        if (sizes_.empty()) text += repeatsLine(chart_) + "\n";
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
                                 (chart_.worked == Worked::InTheRound ? "Worked: round\n" : "") +
                                 rowWord(chart_, false) + " 1" +
                                 sideText(chart_, chart_.sideOf(rowIndex)) + ": " + body + ".\n";
        const ReadRows read = readWritten(text);
        return !read.hasErrors() && read.pattern.rows.size() == 1 &&
               provenSame(chart_, rowIndex, sizes_, words_, read.pattern,
                          read.pattern.rows.front());
    }

    std::optional<Error> addRow(int rowIndex) {
        for (int shortening = 0; shortening < kShortenings; ++shortening) {
            const RowPhrases row =
                rowPhrases(chart_, rowIndex, sizes_, words_, static_cast<Shortening>(shortening));
            WrittenLine line{rowLabel(chart_, rowIndex),
                             rowPieces(row, words_, options_.style),
                             {},
                             {rowIndex},
                             row.columns};
            const std::string body = textOf(line.pieces);
            if (body.empty()) {
                return refusal(rowLabel(chart_, rowIndex) + " has no stitches to write.");
            }
            if (!proven(rowIndex, body)) continue;
            if (options_.style.terms == Terms::Uk) {
                auto pieces = yarnOversByNeighbours(line.pieces, words_);
                if (pieces != line.pieces && proven(rowIndex, textOf(pieces)))
                    line.pieces = std::move(pieces);
            }
            if (!row.makes.empty() && row.makes != row.takes) {
                const std::vector<int> makes(row.makes.begin(), row.makes.end());
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
        return refusal("No text says " + rowLabel(chart_, rowIndex) + " without doubt.");
    }

    void addGlossary() {
        std::map<std::string, int> entries;
        for (WrittenLine& line : result_.lines) {
            for (TextPiece& piece : line.pieces) {
                if (piece.word < 0) continue;
                std::string name = glossaryWord(piece, words_);
                const auto next = static_cast<int>(result_.glossary.size());
                const auto [entry, fresh] = entries.try_emplace(name, next);
                piece.entry = entry->second;
                if (!fresh) continue;
                const WorkWord& word = words_[piece.word];
                const Stitch& stitch = (*chart_.stitches)[word.stitch];
                const SideWording& wording =
                    word.side == Side::Right ? stitch.rightSide : stitch.wrongSide;
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
                return doubtful(" in " + rowLabel(chart_, row));
            if (chart_.uncharted == Uncharted::None) continue;
            written = read.pattern.findRow(chart_.rowNumber(row) + 1);
            if (written == nullptr || !provenBetween(chart_, row, sizes_, read.pattern, *written))
                return doubtful(" in the row after " + rowLabel(chart_, row));
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
