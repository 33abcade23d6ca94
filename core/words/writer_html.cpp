#include <set>

#include "core/base/text.h"
#include "core/words/writer.h"

namespace lacewright {
namespace {

// A heading line "Name: text" as a term and its description.
std::string described(const std::string& line) {
    const std::size_t colon = line.find(": ");
    if (colon == std::string::npos) return "<dt>" + escapeXml(line) + "</dt>\n";
    return "<dt>" + escapeXml(line.substr(0, colon)) + "</dt><dd>" +
           escapeXml(line.substr(colon + 2)) + "</dd>\n";
}

}  // namespace

// Real headings, lists and abbreviations: a screen reader finds its way by them. An abbreviation is
// explained where it is first met and in the list at the end, not read out each time.
std::string WrittenChart::html() const {
    const std::string name = title.empty() ? "Written rows" : escapeXml(title);
    std::string page = "<!DOCTYPE html>\n<html lang=\"";
    page += terms == Terms::Uk ? "en-GB" : "en-US";
    page += "\">\n<head>\n<meta charset=\"utf-8\">\n<title>" + name +
            "</title>\n<meta name=\"viewport\" content=\"width=device-width\">\n"
            "<style>body{font:1.1em/1.6 sans-serif;max-width:45em;margin:1em auto;padding:0 1em}"
            "ol{list-style:none;padding:0}li{margin:.5em 0}dt{font-weight:bold}"
            "abbr{text-decoration:none}</style>\n</head>\n<body>\n<main>\n<h1>" +
            name + "</h1>\n<dl>\n";
    for (const std::string& line : heading) page += described(line);
    page += "</dl>\n<h2>Rows</h2>\n<ol role=\"list\">\n";
    std::set<WordIndex> met;
    std::size_t next = 0;  // of the glossary, which is in the order of first use
    for (const WrittenLine& line : lines) {
        page += "<li><strong>" + escapeXml(line.label) + ":</strong> ";
        for (const TextPiece& piece : line.pieces) {
            if (piece.word < 0) {
                page += escapeXml(piece.text);
            } else if (met.insert(piece.word).second && next < glossary.size()) {
                page += "<abbr title=\"" + escapeXml(glossary[next++].meaning) + "\">" +
                        escapeXml(piece.text) + "</abbr>";
            } else {
                page += "<abbr>" + escapeXml(piece.text) + "</abbr>";
            }
        }
        page += ".";
        if (!line.stated.empty()) page += " " + escapeXml(line.stated);
        page += "</li>\n";
    }
    page += "</ol>\n<h2>Abbreviations</h2>\n<dl>\n";
    for (const GlossaryEntry& entry : glossary) {
        page += "<dt>" + escapeXml(entry.word) + "</dt><dd>" + escapeXml(entry.meaning) + "</dd>\n";
    }
    return page + "</dl>\n</main>\n</body>\n</html>\n";
}

}  // namespace lacewright
