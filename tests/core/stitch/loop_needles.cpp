#include "tests/core/stitch/loop_needles.h"

#include <algorithm>
#include <map>
#include <regex>

namespace lacewright {
namespace {

constexpr int kLoopsAtHand = 20;

// What short names stand for, in parts. From the abbreviation list of the Craft Yarn Council and,
// for ksp, dsd, twists and crosses, from memory.
const std::map<std::string, std::string, std::less<>> kMeanings = {
    {"ssk", "sl1, sl1, return, return, k2tog tbl"},
    {"ssp", "sl1, sl1, return, return, p2tog tbl"},
    {"sssk", "sl1, sl1, sl1, return, return, return, k3tog tbl"},
    {"sssp", "sl1, sl1, sl1, return, return, return, p3tog tbl"},
    {"skp", "sl1, k1, psso"},
    {"ksp", "k1, return, pass next over, sl1"},
    {"sk2p", "sl1, k2tog, psso"},
    {"dsd", "ssk, return, pass next over, sl1"},
    {"s2kp", "sl2, k1, p2sso"},
    {"sspp2", "sl2, p1, p2sso"},
    {"sk3p", "sl1, k3tog, psso"},
    {"kfb", "(k1, k1) in next st"},
    {"pfb", "(p1, p1) in next st"},
    {"kfbf", "(k1, k1, k1) in next st"},
    {"pfbf", "(p1, p1, p1) in next st"},
    {"RT", "hold 1, k1, k held 1"},
    {"LT", "hold 1, k1, k held 1"},
    {"MB", "(k1, yo, k1, yo, k1) in next st, turn, p5, turn, k5tog"},
    {"nupp 5", "(k1, yo, k1, yo, k1) in next st, turn, p5tog, turn, sl1"},
    {"nupp 7", "([k1, yo] 3 times, k1) in next st, turn, p7tog, turn, sl1"},
    {"wrap 3 sts", "k3"},
    {"bead 1", "k1"},
    {"k1b", "k1"},
    {"p1b", "p1"},
    {"pass sl st over both", "pass over 2"},
    {"pass sl st over all three", "pass over 3"},
    {"pass 2nd st over 1st", "pass next 1 over"},
    {"pass 3rd st over 2", "pass next 2 over"},
    {"pass next over", "pass next 1 over"},
    {"psso", "pass 1 over 1"},
    {"p2sso", "pass 2 over 1"},
    {"p3sso", "pass 3 over 1"},
    {"p4sso", "pass 4 over 1"},
    {"1 st left from BO", "sl1"},
    {"yo twice", "yo, yo"},
    {"yo 3 times", "yo, yo, yo"}};

int numberOr(const std::string& digits, int otherwise) {
    return digits.empty() ? otherwise : std::stoi(digits);
}

// Writes "[k1, yo] 3 times" out as "k1, yo, k1, yo, k1, yo".
std::string writtenOut(std::string text) {
    static const std::regex kRepeated(R"(\[(.*)\] (\d+) times)");
    std::smatch m;
    while (std::regex_search(text, m, kRepeated)) {
        std::string all = m[1];
        for (int i = std::stoi(m[2]); i > 1; --i) all += ", " + m[1].str();
        text = m.prefix().str() + all + m.suffix().str();
    }
    return text;
}

// Splits at commas outside brackets.
std::vector<std::string> partsOf(std::string_view text) {
    std::vector<std::string> parts(1);
    int depth = 0;
    for (const char c : text) {
        if (c == '(' || c == '[') ++depth;
        if (c == ')' || c == ']') --depth;
        if (c == ',' && depth == 0) {
            parts.emplace_back();
        } else if (c != ' ' || !parts.back().empty()) {
            parts.back() += c;
        }
    }
    return parts;
}

}  // namespace

LoopNeedles::LoopNeedles() {
    for (int loop = kLoopsAtHand - 1; loop >= 0; --loop) left_.push_back(loop);
}

bool LoopNeedles::work(std::string_view text) {
    const std::vector<std::string> parts = partsOf(writtenOut(std::string(text)));
    return std::all_of(parts.begin(), parts.end(), [this](const auto& p) { return workPart(p); });
}

WorkedLoops LoopNeedles::worked() const {
    return {kLoopsAtHand - static_cast<int>(left_.size()), static_cast<int>(right_.size()), onTop_,
            passedOver_};
}

bool LoopNeedles::workPart(const std::string& part) {
    if (const auto meaning = kMeanings.find(part); meaning != kMeanings.end()) {
        return work(meaning->second);
    }
    static const std::regex kSame(R"(\((.*)\) in next (?:st|(\d+) sts))");
    static const std::regex kCross(R"((\d)/(\d) ([RL])P?C)");
    std::smatch m;
    if (std::regex_match(part, m, kSame)) return workIntoSame(m[1], numberOr(m[2], 1));
    if (std::regex_match(part, m, kCross)) {
        const bool toTheRight = m[3] == "R";
        const std::string first = m[toTheRight ? 2 : 1];
        const std::string second = m[toTheRight ? 1 : 2];
        return work("hold " + first + ", k" + second + ", k held " + first);
    }
    return workSimple(part);
}

bool LoopNeedles::workSimple(const std::string& part) {
    static const std::regex kPlain(R"([kp](\d*)( tbl| wrapping (?:twice|3 times))?)");
    static const std::regex kTogether(R"([kp](\d)tog( tbl| twisted)?)");
    static const std::regex kSlip(R"(sl ?(\d)(?: wyi[bf])?)");
    static const std::regex kFromYarn("yo|M1[LR]?P?|M1 bl|[LR]LIP?|CO 1");
    static const std::regex kGone("BO 1|drop 1");
    static const std::regex kPass(R"(pass (\d) over (\d))");
    static const std::regex kPassSlipped(R"(pass over (\d))");
    static const std::regex kPassNext(R"(pass next (\d) over)");
    static const std::regex kHold(R"((hold|k held) (\d))");
    std::smatch m;
    if (part == "turn") return std::swap(left_, right_), true;
    if (part == "return") {
        if (right_.empty()) return false;
        left_.push_back(right_.back());
        right_.pop_back();
        return true;
    }
    if (std::regex_match(part, m, kPlain)) return bring(numberOr(m[1], 1));
    if (std::regex_match(part, m, kTogether)) {
        return workTogether(std::stoi(m[1]), m[2].str() == " tbl");
    }
    if (std::regex_match(part, m, kSlip)) return slip(std::stoi(m[1]));
    if (std::regex_match(part, kFromYarn)) return right_.push_back(-1), true;
    if (std::regex_match(part, kGone)) return left_.empty() ? false : (left_.pop_back(), true);
    if (std::regex_match(part, m, kPass)) return passOver(std::stoi(m[2]), std::stoi(m[1]));
    if (std::regex_match(part, m, kPassSlipped)) return passOver(std::stoi(m[1]), 1);
    if (std::regex_match(part, m, kPassNext)) return passOnLeft(std::stoi(m[1]));
    if (std::regex_match(part, m, kHold)) {
        const int count = std::stoi(m[2]);
        return m[1] == "hold" ? hold(count) : workHeld(count);
    }
    return false;
}

bool LoopNeedles::bring(int count) {
    if (static_cast<int>(left_.size()) < count) return false;
    right_.insert(right_.end(), left_.rbegin(), left_.rbegin() + count);
    left_.resize(left_.size() - static_cast<std::size_t>(count));
    return true;
}

// Loops slid onto a cable needle keep their order along the work.
bool LoopNeedles::hold(int count) {
    if (static_cast<int>(left_.size()) < count) return false;
    held_.insert(held_.end(), left_.end() - count, left_.end());
    left_.resize(left_.size() - static_cast<std::size_t>(count));
    return true;
}

bool LoopNeedles::workHeld(int count) {
    if (static_cast<int>(held_.size()) < count) return false;
    right_.insert(right_.end(), held_.rbegin(), held_.rbegin() + count);
    held_.resize(held_.size() - static_cast<std::size_t>(count));
    return true;
}

// Slipped together as if to work them together, loops change places: the last one lies deepest.
bool LoopNeedles::slip(int count) {
    if (!bring(count)) return false;
    std::reverse(right_.end() - count, right_.end());
    return true;
}

// A needle put in from the left (knitwise) meets the last loop first and leaves it in front; put in
// through the back loops it leaves the first in front.
bool LoopNeedles::workTogether(int count, bool throughBack) {
    if (static_cast<int>(left_.size()) < count) return false;
    onTop_ = throughBack ? left_.back() : *(left_.end() - count);
    passedOver_ = false;
    left_.resize(left_.size() - static_cast<std::size_t>(count));
    right_.push_back(onTop_);
    return true;
}

// Every part works the same loops again, so they are put back after each but the last.
bool LoopNeedles::workIntoSame(const std::string& inner, int count) {
    if (static_cast<int>(left_.size()) < count) return false;
    const std::vector<int> before = left_;
    for (const std::string& part : partsOf(inner)) {
        left_ = before;
        if (!workPart(part)) return false;
        const auto used = before.size() - left_.size();
        if (part != "yo" && static_cast<int>(used) != count) return false;
    }
    left_.assign(before.begin(), before.end() - count);
    onTop_ = -1;
    return true;
}

// Lifts `count` loops over the `depth` loops nearest the tip of the right needle. The deepest of
// them ends on top.
bool LoopNeedles::passOver(int depth, int count) {
    if (static_cast<int>(right_.size()) < depth + count) return false;
    onTop_ = *(right_.end() - depth - count);
    passedOver_ = true;
    right_.erase(right_.end() - depth - count, right_.end() - depth);
    return true;
}

bool LoopNeedles::passOnLeft(int place) {
    if (static_cast<int>(left_.size()) <= place) return false;
    const auto passed = left_.end() - 1 - place;
    onTop_ = *passed;
    passedOver_ = true;
    left_.erase(passed);
    return true;
}

std::optional<WorkedLoops> workOut(std::string_view abbreviation) {
    LoopNeedles needles;
    if (!needles.work(abbreviation)) return std::nullopt;
    return needles.worked();
}

}  // namespace lacewright
