#include "core/words/reader.h"

#include <algorithm>

#include "core/words/definition_line.h"
#include "core/words/marker_places.h"
#include "core/words/pattern_heading.h"
#include "core/words/row_heading.h"
#include "core/words/rows_reader.h"
#include "core/words/text_lines.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostMessages = 200;
constexpr std::size_t kMostOwnStitches = 200;

// A line that is no row, but for the one that begins the round: "place marker and join".
bool speaksOfMarkers(const Line& line) {
    if (line.empty() || beginsRow(line)) return false;
    bool speaks = false;
    for (TokenCursor at(line); !at.atEnd(); at.advance()) {
        if (at.isWord({"join", "joining", "joined", "beg", "beginning", "bor", "start"}))
            return false;
        speaks = speaks || at.isWord({"marker", "markers", "pm", "mark", "marks"});
    }
    return speaks;
}

class Reader {
 public:
    Reader(std::string_view text, Wording wording) : text_(text), wording_(wording), lines_(text) {}

    ReadRows run() {
        read_.pattern.marksElsewhere = std::any_of(lines_.begin(), lines_.end(), speaksOfMarkers);
        readHeadings();
        RowsReader(lines_, read_, {text_, wording_, sizes_}).read();
        checkRepeatFrom();
        nameSizes();
        if (!read_.hasErrors()) settleMarkers(read_.pattern);
        std::stable_sort(
            read_.messages.begin(), read_.messages.end(),
            [](const auto& a, const auto& b) { return a.place.offset < b.place.offset; });
        if (read_.messages.size() > kMostMessages) read_.messages.resize(kMostMessages);
        return std::move(read_);
    }

 private:
    void error(const Place& place, std::string what, std::string expected = {}) {
        read_.messages.push_back({true, place, std::move(what), std::move(expected), {}});
    }

    // "k = knit" and the like; `inList` once their heading was passed.
    bool parseDefined(TokenCursor& at, bool& inList) {
        const bool opens = parseDefinitionsOpening(at);
        inList = inList || opens;
        auto& own = read_.pattern.ownStitches;
        const auto defined = parseDefinitions(at, inList, wording_, own);
        if (defined && own.size() + defined->size() <= kMostOwnStitches)
            own.insert(own.end(), defined->begin(), defined->end());
        return opens || defined;
    }

    // Headings stand before the first row; own stitches and "Repeat from row" anywhere.
    void readHeadings() {
        bool rows = false;
        bool inList = false;
        HeadingTarget target{read_.pattern, read_.messages, wording_, sizes_, text_};
        for (Line& line : lines_) {
            if (line.empty()) continue;
            TokenCursor at(line);
            const bool anywhere =
                at.isWord({"stitch"}) || (at.isWord({"repeat"}) && at.isWord({"from"}, 1));
            if (beginsRow(line) && !anywhere) {
                TokenCursor heading(line);
                rows = rows || (!namesRows(line) && parseRowHeading(heading));
                noteRound(line);
            } else if (((!rows || anywhere) && parsePatternHeading(at, target)) ||
                       (!rows && parseDefined(at, inList))) {
                line.clear();
            }
        }
    }

    void noteRound(const Line& line) {
        TokenCursor at(line);
        const auto heading = parseRowHeading(at);
        if (heading && heading->round) read_.pattern.worked = Worked::InTheRound;
    }

    void checkRepeatFrom() {
        const auto& from = read_.pattern.repeatFrom;
        if (!from || read_.pattern.rows.empty() || read_.pattern.findRow(*from)) return;
        error(read_.pattern.rows.back().place,
              "row " + std::to_string(*from) + " is to be repeated from, but is not written");
        read_.pattern.repeatFrom.reset();
    }

    // Figures list several sizes that no heading names.
    void nameSizes() {
        if (!read_.pattern.sizes.empty()) return;
        for (std::size_t i = 1; sizes_ > 1 && i <= sizes_; ++i)
            read_.pattern.sizes.push_back(std::to_string(i));
    }

    std::string_view text_;
    Wording wording_;
    ReadRows read_;
    TextLines lines_;
    std::size_t sizes_ = 0;
};

// The text says itself which wording it uses.
bool saysWording(std::string_view text) {
    const TextLines lines(text);
    return std::any_of(lines.begin(), lines.end(), [](const Line& line) {
        return !line.empty() && TokenCursor(line).isWord({"wording"});
    });
}

std::ptrdiff_t errorsIn(const ReadRows& read) {
    return std::count_if(read.messages.begin(), read.messages.end(),
                         [](const ReadMessage& m) { return m.error; });
}

// Requires: there is one.
Place firstError(const ReadRows& read) {
    return std::find_if(read.messages.begin(), read.messages.end(),
                        [](const ReadMessage& m) { return m.error; })
        ->place;
}

}  // namespace

const WrittenRow* WrittenPattern::findRow(int number) const {
    const auto at = std::find_if(rows.begin(), rows.end(),
                                 [&](const WrittenRow& row) { return row.number == number; });
    return at == rows.end() ? nullptr : &*at;
}

bool ReadRows::hasErrors() const {
    return std::any_of(messages.begin(), messages.end(),
                       [](const ReadMessage& m) { return m.error; });
}

ReadRows readWritten(std::string_view text, const ReadOptions& options) {
    ReadRows read = Reader(text, options.wording).run();
    if (options.wording == Wording::Older || !read.hasErrors() || saysWording(text)) return read;
    // Words that only older books use show what the text is.
    ReadRows older = Reader(text, Wording::Older).run();
    if (errorsIn(older) >= errorsIn(read)) return read;
    const Place place = firstError(read);
    older.messages.insert(older.messages.begin(),
                          {false,
                           place,
                           "these words are read as books before 1920 use them: \"o\" is an over, "
                           "\"n\" narrows, \"make 1\" is an over",
                           {},
                           {}});
    return older;
}

}  // namespace lacewright
