#include "core/words/remark_line.h"

namespace lacewright {

namespace {

bool hasNumber(const TokenCursor& line) {
    for (std::size_t i = 0; !line.is(TokenKind::End, i); ++i) {
        if (line.isNumber(i)) return true;
    }
    return false;
}

}  // namespace

bool isRemarkLine(const TokenCursor& line, bool first) {
    if (line.isWord({"note", "notes", "tip"}) &&
        (line.is(TokenKind::Colon, 1) || line.is(TokenKind::Stop, 1) ||
         line.is(TokenKind::Dash, 1)))
        return true;
    if (!first) return false;
    if (line.isWord({"block", "fasten", "break", "cut", "weave", "sew", "wash", "finishing", "darn",
                     "press"}))
        return true;
    const bool bindOff = (line.isWord({"bind", "cast"}) && line.isWord({"off"}, 1)) ||
                         line.isWord({"bo", "castoff"});
    return bindOff && !hasNumber(line);
}

}  // namespace lacewright
