#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/piece_line.h"
#include "core/words/reader.h"
#include "core/words/row_table.h"
#include "core/words/rows_again.h"
#include "core/words/size_scope.h"
#include "core/words/text_lines.h"

namespace lacewright {

struct RowsContext {
    std::string_view text;
    Wording wording = Wording::Modern;
    std::size_t& sizes;  // how many are known; 0: none yet
};

// The lines of a text whose headings were read: rows, and sentences that speak of rows.
class RowsReader {
 public:
    // Requires: all of these outlive this.
    RowsReader(TextLines& lines, ReadRows& read, const RowsContext& context);

    // Fills the rows of read.pattern; what cannot be read goes to read.messages.
    void read();

 private:
    WrittenPattern& pattern() { return read_.pattern; }
    const WrittenPattern& pattern() const { return read_.pattern; }
    void error(const Place& place, std::string what, std::string expected = {});

    // rows_reader.cpp
    void countOn(RowHeading& heading, const Place& place);
    void passOver(const Line& line, const char* why = "this line works no row and is passed over");
    void strangeLine(const Line& line);
    ParsedRow parsed(Line line);
    bool isProse(std::size_t index) const;
    void readRows();
    std::size_t readRow(std::size_t index);
    bool goesOn(std::size_t index) const;
    void addNext(int rows, Line text, const Place& place);
    void addPlain(int rows, const Place& place);

    // row_sentences.cpp
    std::optional<PieceStart> startsPiece(std::size_t index) const;
    void beginPiece(const PieceStart& piece, const Place& place);
    void beginScope(const SizeScope& scope, std::size_t index, const TokenCursor& at);
    void readSentence(std::size_t index);
    bool readShaping(TokenCursor& at);
    bool onlyForScope(std::vector<RowsAgainWords>& again) const;
    void repeatRows(std::vector<RowsAgainWords> again, std::size_t index, TokenCursor& at);

    TextLines& lines_;
    ReadRows& read_;
    std::string_view text_;
    Wording wording_;
    std::size_t& sizes_;
    RowTable table_;
    std::optional<Vocabulary> vocabulary_;  // with the pattern's own stitches
    std::vector<std::size_t> scope_;        // sizes that the rows now read are for; empty: all
    bool lettingFall_ = false;              // somewhere loops of a double over are dropped
    int part_ = 0;                          // rows before the part of the work that is read
    bool parted_ = false;                   // lines that are no rows stand before the next one
};

}  // namespace lacewright
