#include <algorithm>
#include <array>
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

// What every row may say besides stitches. Source: Craft Yarn Council, Knitting Abbreviations.
const std::array<GlossaryEntry, 6> kCommon = {{{"rep", "Repeat"},
                                               {"st", "Stitch"},
                                               {"sts", "Stitches"},
                                               {"RS", "Right side"},
                                               {"WS", "Wrong side"},
                                               {"Rnd", "Round"}}};

bool hasWord(const std::string& text, const std::string& word) {
    const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || !letter(text[at - 1])) && (end == text.size() || !letter(text[end])))
            return true;
    }
    return false;
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
    std::set<int> met;
    for (const WrittenLine& line : lines) {
        page += "<li><strong>" + escapeXml(line.label) + ":</strong> ";
        for (const TextPiece& piece : line.pieces) {
            if (piece.word < 0) {
                page += escapeXml(piece.text);
            } else if (piece.entry >= 0 && met.insert(piece.entry).second) {
                const std::string& meaning =
                    glossary[static_cast<std::size_t>(piece.entry)].meaning;
                page += "<abbr title=\"" + escapeXml(meaning) + "\">" + escapeXml(piece.text) +
                        "</abbr>";
            } else {
                page += "<abbr>" + escapeXml(piece.text) + "</abbr>";
            }
        }
        page += ".";
        if (!line.stated.empty()) page += " " + escapeXml(line.stated);
        page += "</li>\n";
    }
    page += "</ol>\n<h2>Abbreviations</h2>\n<dl>\n";
    std::vector<GlossaryEntry> entries = glossary;
    for (const GlossaryEntry& common : kCommon) {
        const bool used = std::any_of(lines.begin(), lines.end(), [&](const WrittenLine& line) {
            return hasWord(line.text(), common.word);
        });
        if (used) entries.push_back(common);
    }
    for (const GlossaryEntry& entry : entries) {
        page += "<dt>" + escapeXml(entry.word) + "</dt><dd>" + escapeXml(entry.meaning) + "</dd>\n";
    }
    return page + "</dl>\n</main>\n</body>\n</html>\n";
}

}  // namespace lacewright
