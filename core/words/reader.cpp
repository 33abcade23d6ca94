#include "core/words/reader.h"

#include <algorithm>

#include "core/words/definition_line.h"
#include "core/words/figure.h"
#include "core/words/marker_places.h"
#include "core/words/pattern_heading.h"
#include "core/words/piece_line.h"
#include "core/words/remark_line.h"
#include "core/words/row_heading.h"
#include "core/words/row_table.h"
#include "core/words/rows_again.h"
#include "core/words/shaping_line.h"
#include "core/words/size_scope.h"
#include "core/words/text_lines.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostMessages = 200;
constexpr std::size_t kMostOwnStitches = 200;

class Reader {
 public:
    Reader(std::string_view text, Wording wording)
        : text_(text), wording_(wording), table_(read_.messages), lines_(text) {}

    ReadRows run() {
        readHeadings();
        readRows();
        if (table_.empty() && !read_.hasErrors()) {
            error(Place(), "there are no rows here", "\"Row 1: k1, yo, ..\"");
        }
        table_.finish(read_.pattern);
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

    // Rows of another part of the work that are numbered from 1 again are counted on. Lines that
    // stand between tell it from a row written twice; one that names a size begins no part.
    void countOn(RowHeading& heading, const Place& place) {
        const bool first =
            !heading.next && !heading.numbers.empty() && heading.numbers.front() == 1;
        if (first && parted_ && table_.holds(part_ + 1)) {
            part_ = table_.beginPart();
            read_.messages.push_back(
                {false,
                 place,
                 "rows are numbered from 1 again; they are counted on, so that "
                 "this is row " +
                     std::to_string(part_ + 1),
                 {},
                 {}});
        }
        for (int& number : heading.numbers) number += part_;
        parted_ = false;
    }

    std::optional<PieceStart> startsPiece(std::size_t index) const {
        const bool begun = !table_.empty() || read_.pattern.castOn;
        if (!begun || !lines_.rowsBegin(index)) return {};
        return pieceStart(TokenCursor(lines_[index]), text_, sizes_);
    }
    void beginPiece(const PieceStart& piece, const Place& place) {
        if (table_.empty()) {  // "CO 3 sts, knit 6 rows", then stitches picked up along these
            read_.pattern.castOn = piece.castOn;
            return;
        }
        part_ = table_.beginPiece(piece.castOn);
        scope_.clear();
        table_.beginScope({});
        read_.messages.push_back({false,
                                  place,
                                  "another piece begins here; its rows are counted on from row " +
                                      std::to_string(part_ + 1),
                                  {},
                                  {}});
    }

    void passOver(const Line& line, const char* why = "this line works no row and is passed over") {
        parted_ = !TokenCursor(line).isWord({"size", "sizes"});
        read_.messages.push_back({false, line.front().place, why, {}, {}});
    }

    void strangeLine(const Line& line) {
        read_.messages.push_back(
            {true, line.front().place, "this line does not say which row it is",
             "\"Row 1:\" or a heading such as \"Cast on:\"", nearestHeading(TokenCursor(line))});
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

    ParsedRow parsed(Line line) {
        const FigureContext figures{read_.messages, sizes_, true};
        return RowParser(std::move(line),
                         {*vocabulary_, figures, read_.pattern.counts, lettingFall_})
            .parse();
    }

    bool isProse(std::size_t index) const {
        const TokenCursor line(lines_[index]);
        if (isPlainRowsLine(line)) return false;
        if (lines_.followsSentence(index) && isProseLine(line, *vocabulary_)) return true;
        return lines_.standsAlone(index) &&
               (isGlossaryLine(line, *vocabulary_) ||
                (nearestHeading(line).empty() && !holdsStitches(line, *vocabulary_) &&
                 !continuesRow(line)));
    }

    void readRows() {
        vocabulary_.emplace(wording_);
        for (const OwnStitch& own : read_.pattern.ownStitches)
            vocabulary_->define(own.name, own.takes, own.makes);
        lettingFall_ = std::any_of(lines_.begin(), lines_.end(), [](const Line& line) {
            return std::any_of(line.begin(), line.end(), [](const Token& token) {
                return token.text.starts_with("drop") || token.text == "letting" ||
                       token.text == "fall" || token.text.starts_with("unw") ||
                       token.text == "elongated";
            });
        });
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            if (lines_[i].empty() || lines_.isRemark(i)) {
                parted_ = true;
            } else if (isPlainRowsLine(TokenCursor(lines_[i]))) {
                table_.leaveOut(plainRowsIn(TokenCursor(lines_[i])));
                passOver(lines_[i],
                         "these rows change no count; without numbers they are left out");
            } else {
                i = readRow(i);
            }
        }
    }

    // Gives the last line that was read.
    std::size_t readRow(std::size_t index) {
        TokenCursor at(lines_[index]);
        const auto heading = namesRows(lines_[index]) ? std::nullopt : parseRowHeading(at);
        if (!heading) {
            readSentence(index);
            return index;
        }
        const Place place = lines_[index].front().place;
        Line body(lines_[index].begin() + static_cast<std::ptrdiff_t>(at.position()),
                  lines_[index].end());
        std::size_t last = index;
        while (last + 1 < lines_.size() && goesOn(last + 1)) {
            body.pop_back();
            ++last;
            body.insert(body.end(), lines_[last].begin(), lines_[last].end());
        }
        if (body.size() == 1) {
            error(place, "this row says nothing", "its stitches");
            return last;
        }
        spellOutEachEnd(body);
        RowHeading counted = *heading;
        countOn(counted, place);
        ParsedRow row = parsed(std::move(body));
        if (row.same) {
            for (int& number : row.same->numbers) number += part_;
        }
        table_.add(counted, std::move(row), place);
        return last;
    }

    // "Size L only:", perhaps with a row behind it.
    void beginScope(const SizeScope& scope, std::size_t index, const TokenCursor& at) {
        Line& line = lines_[index];
        if (scope.unknown)
            return error(line.front().place,
                         "this line names a size that the pattern does not have",
                         "one of its sizes");
        scope_ = scope.sizes;
        table_.beginScope(scope_);
        if (at.atEnd()) return;
        line.erase(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(at.position()));
        readRow(index);
    }

    // The line goes on with the row above it.
    bool goesOn(std::size_t index) const {
        const Line& line = lines_[index];
        TokenCursor at(line);
        if (!line.empty() && parseSizeScope(at, read_.pattern.sizes)) return false;
        return !line.empty() && !beginsRow(line) && !lines_.isRemark(index) && !isProse(index) &&
               !lines_.isMisspelt(index) && !startsPiece(index) &&
               !isPlainRowsLine(TokenCursor(line));
    }

    // A line that does not begin with the name of a row.
    void readSentence(std::size_t index) {
        Line& line = lines_[index];
        const Place place = line.front().place;
        TokenCursor at(line);
        if (const auto scope = parseSizeScope(at, read_.pattern.sizes)) {
            beginScope(*scope, index, at);
        } else if (const auto again = parseRowsAgain(at, {read_.messages, sizes_});
                   !again.empty()) {
            repeatRows(again, index, at);
        } else if (Line first = line; parseAtBeginnings(first) > 0) {
            for (Line& clause : beginningsApart(line)) {
                if (const int rows = parseAtBeginnings(clause))
                    addNext(rows, std::move(clause), place);
            }
        } else if (const int plain = parseShapedAfter(line)) {
            addPlain(plain - 1, place);
            addNext(1, std::move(line), place);
        } else if (const auto piece = startsPiece(index)) {
            beginPiece(*piece, place);
        } else if (!table_.empty() && isCastOnLine(at) && !lines_.rowsFollow(index)) {
            passOver(line, "a cast-on that stands behind the rows is not counted with them");
        } else if (!table_.empty() && readShaping(at)) {
            return;
        } else if (!table_.empty() && tellsShaping(at)) {
            error(place, "the shaping in this sentence is not understood",
                  "the rows that shape, written out");
        } else if (saysHowOften(at) && !isGlossaryLine(at, *vocabulary_)) {
            error(place, "which rows are worked again here is not understood",
                  "a sentence such as \"Rep rows 3 and 4 5 more times\"");
        } else if (isProse(index) || (table_.empty() && isProseLine(at, *vocabulary_)) ||
                   (nearestHeading(at).empty() && !holdsStitches(at, *vocabulary_))) {
            passOver(line);
        } else {
            strangeLine(line);
        }
    }

    void addNext(int rows, Line text, const Place& place) {
        RowHeading heading;
        heading.next = true;
        heading.nextRows = rows;
        heading.label = "Next row";
        table_.add(heading, parsed(std::move(text)), place);
    }

    // Rows worked as they come.
    void addPlain(int rows, const Place& place) {
        if (rows > 0) addNext(rows, asTheyCome(place), place);
    }

    // "Inc 1 st at each end of next and every foll 4th row until there are 60 sts."
    bool readShaping(TokenCursor& at) {
        const std::vector<ShapedRows> shaped = parseShapingSentence(at, {read_.messages, sizes_});
        for (const ShapedRows& rows : shaped) {
            const Place place = rows.often.place;
            addPlain(rows.every - 1, place);
            addNext(1, rows.row, place);
            const bool once = rows.often.times && rows.often.times == Figure(0);
            if (!once || rows.often.stated) table_.repeat(rows.often);
        }
        return !shaped.empty();
    }

    // Sizes beyond the scope work the rows no more. False where the words do not say how often.
    bool onlyForScope(std::vector<RowsAgainWords>& again) const {
        for (RowsAgainWords& words : again) {
            if (!words.times) return false;
            Figure times;
            times.bySize.assign(read_.pattern.sizes.size(), 0);
            for (const std::size_t size : scope_) times.bySize[size] = words.times->of(size);
            words.times = std::move(times);
            words.stated.reset();
        }
        return true;
    }

    // "Rep these 2 rows 3 times more, dec 1 st at end of last row": the last row is then written
    // out, and what stands before it worked as often as is left.
    void repeatRows(std::vector<RowsAgainWords> again, std::size_t index, TokenCursor& at) {
        for (RowsAgainWords& words : again) {
            if (words.first > 0) words.first += part_;
            if (words.last > 0) words.last += part_;
        }
        if (!scope_.empty() && !onlyForScope(again))
            return error(at.peek().place,
                         "how often these sizes work the rows again is not understood",
                         "a sentence such as \"Rep rows 3 and 4 5 more times\"");
        const auto shaped = shapingBehind(at);
        if (shaped &&
            (again.back().until || lines_.nextNumber(index) + part_ == table_.currentNumber() + 1))
            return error(at.peek().place,
                         "shaping behind a sentence that repeats rows is not read here",
                         "the row that shapes, written out");
        if (shaped && again.back().times) {
            for (int& times : again.back().times->bySize) times = std::max(0, times - 1);
            again.back().stated.reset();
        }
        for (const RowsAgainWords& words : again) table_.repeat(words);
        if (!shaped) return;
        if (again.back().times) table_.repeatAllButLast(again.back());
        addNext(1, *shaped, at.peek().place);
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
    RowTable table_;
    TextLines lines_;
    std::optional<Vocabulary> vocabulary_;  // with the pattern's own stitches
    std::size_t sizes_ = 0;
    std::vector<std::size_t> scope_;  // sizes that the rows now read are for; empty: all
    bool lettingFall_ = false;        // somewhere loops of a double over are dropped
    int part_ = 0;                    // rows before the part of the work that is read
    bool parted_ = false;             // lines that are no rows stand before the next one
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
