#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/words/prove.h"
#include "core/words/reader.h"

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

}  // namespace lacewright
