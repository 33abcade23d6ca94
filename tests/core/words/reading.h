#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "core/base/disk.h"
#include "core/words/chart_from_rows.h"
#include "core/words/prove.h"
#include "core/words/reader.h"
#include "tests/support/source_tree.h"

// Short ways to say what a row reads as.
namespace lacewright {

// All errors, one per line; empty when the text is understood.
inline std::string errorsOf(const std::string& text, Wording wording = Wording::Modern) {
    std::string out;
    for (const ReadMessage& message : readWritten(text, {wording}).messages) {
        if (message.error) out += rendered(message, text, "text");
    }
    return out;
}

// "4m + 5 / 4m + 5": what row 1 takes and makes. The row may be a bare list of stitches.
inline std::string formsOfRow(const std::string& row, Wording wording = Wording::Modern) {
    const std::string text = "Row 1: " + row;
    const std::string errors = errorsOf(text, wording);
    if (!errors.empty()) return errors;
    const ReadRows read = readWritten(text, {wording});
    const WrittenProof proof = proveWritten(read.pattern);
    const CountedRow& counted = proof.rows.front().counted;
    if (!counted.uncountable.empty()) return counted.uncountable;
    const auto name = [&](Variable v) { return proof.nameOf(v); };
    return counted.forms.takes.text(name) + " / " + counted.forms.makes.text(name);
}

// "yes", or "row 3" for the first faulty row; errors come first.
inline std::string verdictOf(const std::string& text, std::size_t size = 0) {
    const std::string errors = errorsOf(text);
    if (!errors.empty()) return errors;
    const WrittenProof proof = proveWritten(readWritten(text).pattern, size);
    return proof.knittable ? "yes" : "row " + std::to_string(proof.firstFault()->number);
}

// "12 12 10": stitches after each row, "!" where the text states another count, "row 3" behind them
// for the first row that does not fit; errors come first.
inline std::string countsOf(const std::string& text, std::size_t size = 0) {
    const std::string errors = errorsOf(text);
    if (!errors.empty()) return errors;
    const WrittenProof proof = proveWritten(readWritten(text).pattern, size);
    std::string out;
    for (const WrittenRowProof& row : proof.rows) {
        out +=
            (out.empty() ? "" : " ") + row.after.text([&](Variable v) { return proof.nameOf(v); });
        if (row.stated) out += "!";
    }
    for (const RowsAgainProof& again : proof.again) {
        out += " x" + std::to_string(again.times);
        if (again.stated) out += "!";
    }
    if (proof.firstFault()) out += " row " + std::to_string(proof.firstFault()->number);
    return out;
}

// The chart of a text that must be readable and drawable; an empty one when it is not.
inline Chart chartOfText(const std::string& text) {
    EXPECT_EQ(errorsOf(text), "");
    const auto drawn = chartFromRows(readWritten(text).pattern);
    EXPECT_TRUE(drawn) << (drawn ? "" : drawn.error().message) << "\n" << text;
    return drawn ? drawn->chart : blankChart(1, 1);
}

struct NamedText {
    std::string name;
    std::string text;
};

// The patterns of public-domain handbooks 1843-1918 in tests/data/handbook, by name; title, author
// and year stand in each text.
inline std::vector<NamedText> handbookTexts() {
    std::vector<NamedText> texts;
    const std::filesystem::path folder = test::inSourceTree("tests/data/handbook");
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        texts.push_back(
            {entry.path().filename().string(), readFile(entry.path().string()).value()});
    }
    std::sort(texts.begin(), texts.end(),
              [](const NamedText& a, const NamedText& b) { return a.name < b.name; });
    EXPECT_EQ(texts.size(), 97u);
    return texts;
}

}  // namespace lacewright
