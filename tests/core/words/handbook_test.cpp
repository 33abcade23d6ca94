#include <algorithm>
#include <iostream>
#include <map>
#include <sstream>

#include "tests/core/words/reading.h"

// Patterns of public-domain handbooks (1843-1918) against verdicts that two checkers outside this
// project worked out. Title, author and year stand in each file. The books hold genuine printing
// errors: a pattern that cannot be knitted as printed is a fact about the book.
namespace lacewright {
namespace {

struct Handbook {
    std::string file;
    std::string text;
    std::map<std::string, std::string> expected;  // "-" where the outside checkers do not say
};

std::map<std::string, std::string> verdictIn(const std::string& text) {
    std::map<std::string, std::string> verdict;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        const std::string start = "Note: verdict ";
        if (!line.starts_with(start)) continue;
        std::istringstream words(line.substr(start.size()));
        for (std::string word; words >> word;) {
            const auto equals = word.find('=');
            verdict[word.substr(0, equals)] = word.substr(equals + 1);
        }
    }
    return verdict;
}

std::vector<Handbook> handbooks() {
    std::vector<Handbook> all;
    for (NamedText& text : handbookTexts()) {
        Handbook book{std::move(text.name), std::move(text.text), {}};
        book.expected = verdictIn(book.text);
        all.push_back(std::move(book));
    }
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.file < b.file; });
    return all;
}

std::string yesNo(const std::optional<bool>& value) {
    return !value ? "-" : *value ? "yes" : "no";
}

// What differs from the outside verdict; empty when all agrees.
std::string difference(const Handbook& book, const WrittenProof& proof) {
    const std::map<std::string, std::string> found = {
        {"knittable", yesNo(proof.knittable)},
        {"closes", yesNo(proof.closes)},
        {"closes_from", yesNo(proof.closesFrom)},
        {"first_fault", proof.firstFault() ? std::to_string(proof.firstFault()->number) : "-"}};
    std::string out;
    for (const auto& [key, value] : found) {
        const std::string& expected = book.expected.at(key);
        const bool open = expected == "-" && key != "first_fault";
        if (!open && expected != value) out += " " + key + " " + value + " for " + expected;
    }
    return out;
}

TEST(Handbook, EveryPatternReadsWithoutAnError) {
    const auto books = handbooks();
    ASSERT_EQ(books.size(), 97u);
    for (const Handbook& book : books) {
        const ReadRows read = readWritten(book.text);
        for (const ReadMessage& message : read.messages) {
            EXPECT_FALSE(message.error) << rendered(message, book.text, book.file);
        }
        EXPECT_FALSE(read.pattern.rows.empty()) << book.file;
    }
}

TEST(Handbook, VerdictsAgreeWithTheOutsideCheckers) {
    int sturdy = 0;
    int agreed = 0;
    int loose = 0;
    int looseAgreed = 0;
    for (const Handbook& book : handbooks()) {
        const WrittenProof proof = proveWritten(readWritten(book.text).pattern);
        const std::string differs = difference(book, proof);
        if (book.expected.at("sturdy") == "yes") {
            ++sturdy;
            agreed += differs.empty() ? 1 : 0;
            EXPECT_EQ(differs, "") << book.file;
        } else {
            ++loose;
            looseAgreed += differs.empty() ? 1 : 0;
            if (!differs.empty()) std::cout << "not sturdy: " << book.file << differs << "\n";
        }
    }
    std::cout << agreed << " of " << sturdy << " sturdy verdicts agree, " << looseAgreed << " of "
              << loose << " others\n";
    EXPECT_GT(sturdy, 60);
}

}  // namespace
}  // namespace lacewright
