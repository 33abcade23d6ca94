#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/words/figure.h"
#include "core/words/token_cursor.h"
#include "core/words/vocabulary.h"
#include "core/words/written.h"

// The grammar of one row, after its heading: `row` in "The grammar of written rows" of
// DEVELOPERS.md.
//
// Errors are collected and the parser goes on at the next comma, semicolon, full stop or bracket.
namespace lacewright {

// Rows that take over the text of others: "as row 3", "rep rows 1 and 2 twice", "as inc row".
struct SameRows {
    std::vector<int> numbers;  // in turn, for the rows under the heading
    int last = 0;              // instead: so many rows just above, "rep last 2 rows"
    std::string label;         // instead: the row so named, "inc", and its number: "rib row 2"
    int named = 0;
    std::optional<int> times;
    Place place;
};

struct ParsedRow {
    Elements elements;
    std::optional<Figure> statedCount;
    Place statedPlace;
    std::optional<SameRows> same;
    std::string words;  // as they stand there, without marks
};

// Common to the rows of one text.
struct ReadContext {
    const Vocabulary& vocabulary;
    FigureContext figures;
    const std::vector<std::string>& counts;  // that the pattern names
    bool lettingFall = false;                // the text lets loops fall, "dropping extra wraps"
};

class RowParser {
 public:
    // Requires: the last token is End; no NewLine among them.
    RowParser(std::vector<Token> tokens, ReadContext context);

    ParsedRow parse();

 private:
    // How often a stretch is worked.
    struct Tail {
        std::optional<Figure> times;       // as written
        bool more = false;                 // "3 more times"
        bool inAll = false;                // "3 times in all"
        std::optional<std::size_t> named;  // "A times": which of the pattern's counts
        bool toEnd = false;
        Landmark to = Landmark::None;
        Figure before{0};
        Figure stitches{1};
        std::optional<Figure> leaves;  // "to last 2 sts"
        bool any() const { return times || named || toEnd || to != Landmark::None || leaves; }
    };
    struct Ending {
        Elements with;
        Elements insteadOf;
        int mark = 0;           // "ending last rep at **"
        bool lastTime = false;  // the last pass itself differs
    };

    // row_parser.cpp
    bool parseStated(ParsedRow& row);
    bool bareCount(ParsedRow& row);
    void sequence(Elements& out);
    void item(Elements& out);
    static void passBeyondRound(Elements& elements);
    void settleBareStitch(Elements& elements) const;
    void recover();
    void complain(const Place& place, std::string what, std::string expected = {},
                  std::string nearest = {});
    bool skipSeparators();

    // row_parser_bracket.cpp
    void bracket(Elements& out);
    bool timesBracket(Elements& out);

    // row_parser_figures.cpp
    Figure figure();
    std::optional<Figure> times(Tail& tail);
    std::optional<Figure> timesApart(Tail& tail);
    std::optional<Figure> plainTimes(Tail& tail);
    bool namedTimes(Tail& tail);
    Tail parseTail();

    // row_parser_repeat.cpp
    void starred(Elements& out);
    void again(Elements& out);
    bool atRepeat() const;
    bool repeatComesLater(int stars) const;
    bool anyRepeatLater() const;
    bool repeatsMarked() const;
    bool isOpen(int stars) const;
    bool affordable(const Elements& copied, const Place& place);
    std::optional<int> repeatTarget() const;
    void passRepeatWords();
    Element repeated(Elements body, const Place& start, int worked);
    Element stretchOf(Elements body, const Tail& tail, const Place& place, bool starred) const;

    // row_parser_ending.cpp
    bool moreFollows();
    Ending parseEnding();
    Elements endingOf(const Elements& body, Figure& times, const Place& place);
    Elements lastPass(const Elements& body, const Ending& ending, const Place& place);

    // row_parser_extent.cpp
    bool parseExtent(Tail& tail);
    bool bracketedExtent(Tail& tail);
    bool parseLandmark(Tail& tail);
    bool acceptMarker();
    bool parseLast(Tail& tail);
    void parseUntil(Tail& tail);

    // row_parser_same.cpp
    bool namesChart();
    bool parseSame(ParsedRow& row);

    // row_parser_turn.cpp
    bool passWraps();
    bool dropsOvers(Elements& out);
    bool passWrapped();
    bool passRestOnHold(Elements& out);
    bool putsOnHold(Elements& out);

    // row_parser_stitch.cpp
    void stitch(Elements& out, const TermMatch& match, const Place& place);
    bool mayMeanOther(const Term& term, const Working& work);
    bool passedOverLater() const;

    // row_parser_ground.cpp
    void ground(Elements& out, const Term& term, const Place& place);
    bool knitsAndPurls(Elements& out);

    // row_parser_bobble.cpp
    void foldBobbles(Elements& elements) const;
    int loopsFrontAndBack();

    // row_parser_cable.cpp
    int slippedToCableNeedle();
    bool cable(Elements& out);

    // row_parser_count.cpp
    Working working(const Term& term, const TermMatch& match) const;
    void countOf(Working& work, const TermMatch& match, Tail& tail, bool& counted);
    void passWhere();
    void modifiers(Working& work);

    // row_parser_times.cpp
    // `olderWord`: an over in a word of older books, "over twice".
    void workedTimes(Elements& out, Element element, const Figure& times, bool olderWord = false);
    void workedUntil(Elements& out, Element element, const Tail& tail, bool counted);
    bool wrapsForPurl(bool olderWord);
    static Element wrappedForPurl(Working one, Working two, const Place& place);
    bool evenly(Elements& out);

    // row_parser_thread.cpp
    bool threadOver(Elements& out);

    // row_parser_into.cpp
    bool parseInto(int& stitches, bool& each);
    int loopsOfOver();
    void intoOneUnbracketed(Elements& out, int takes, const Place& place);
    static Element intoOver(Elements body, int loops, const Place& place);

    // row_parser_aside.cpp
    bool passYarn();
    bool passNeedles();
    bool passAside();
    bool passMade();
    bool passHowNupps();
    void passWhatIsPassedOver();
    bool passOverWhich();
    void passFabric();
    bool leftOnNeedle(Elements& out);
    bool passIntoOvers();

    TokenCursor at_;
    ReadContext context_;
    std::vector<int> openStars_;
    std::map<int, Elements> marked_;  // stretches between two stars that were not repeated at once
    std::size_t copied_ = 0;          // elements written out a second time
    int depth_ = 0;                   // of brackets and stars
    int brackets_ = 0;
    std::optional<std::size_t> bare_;  // offset of the last stitch written without a count
    bool bareInFull_ = false;          // "knit" rather than "k"
};

}  // namespace lacewright
