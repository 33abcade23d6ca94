#pragma once

#include <algorithm>
#include <cctype>
#include <random>
#include <string>
#include <vector>

namespace lacewright::test {

struct RandomText {
    std::string text;
    int castOn = 0;
    std::vector<int> counts;  // stitches after each row
};

// Written rows that use up the loops there are by the way they are put together, in the varied
// spelling and punctuation of real ones.
class RandomRows {
 public:
    explicit RandomRows(unsigned seed) : random_(seed) {}

    RandomText next() {
        RandomText made;
        made.castOn = between(12, 48);
        made.text = pick({"Cast on: ", "CO ", "Cast on "}) + std::to_string(made.castOn) +
                    pick({"\n", " sts\n", " sts.\n"});
        int loops = made.castOn;
        const int rows = between(2, 6);
        for (int row = 1; row <= rows; ++row) {
            made.text +=
                pick({"Row ", "row ", "ROW "}) + std::to_string(row) + pick({": ", ". ", " - "});
            loops = addRow(made.text, loops);
            made.counts.push_back(loops);
        }
        return made;
    }

 private:
    struct Work {
        std::string text;
        int takes = 0;
        int makes = 0;
    };

    int between(int least, int most) {
        return std::uniform_int_distribution<int>(least, most)(random_);
    }
    std::string pick(const std::vector<std::string>& choices) {
        return choices[static_cast<std::size_t>(between(0, static_cast<int>(choices.size()) - 1))];
    }

    Work stitch() {
        switch (between(0, 9)) {
            case 0:
                return {pick({"yo", "YO", "yarn over"}), 0, 1};
            case 1:
                return {pick({"k2tog", "K2tog", "k2 tog", "k 2 tog"}), 2, 1};
            case 2:
                return {pick({"ssk", "SSK"}), 2, 1};
            case 3:
                return {pick({"sl 1, k2tog, psso", "sl1-k2tog-psso", "sk2p"}), 3, 1};
            case 4:
                return {pick({"p2tog", "P2tog"}), 2, 1};
            case 5:
                return {pick({"kfb", "k1f&b"}), 1, 2};
            case 6:
                return {pick({"(k1, yo, k1) in next st", "(k1, yo, k1) into next st"}), 1, 3};
            default: {
                const int count = between(1, 4);
                return {pick({"k", "p", "K", "P "}) + std::to_string(count), count, count};
            }
        }
    }

    Work several(int most) {
        Work all;
        for (int i = between(1, most); i > 0; --i) {
            const Work one = stitch();
            all.text += (all.text.empty() ? "" : pick({", ", "; ", " , "})) + one.text;
            all.takes += one.takes;
            all.makes += one.makes;
        }
        return all;
    }

    // A list that takes something each time.
    Work body() {
        Work work = several(3);
        while (work.takes == 0) work = several(3);
        return work;
    }

    // Adds the row and its full stop; gives the loops after it.
    int addRow(std::string& text, int loops) {
        int left = loops;
        int after = 0;
        std::vector<std::string> parts;
        const auto put = [&](const Work& work) {
            if (work.takes > left) return;
            parts.push_back(work.text);
            left -= work.takes;
            after += work.makes;
        };
        for (int i = between(0, 3); i > 0; --i) {
            if (between(0, 2) > 0) {
                put(stitch());
                continue;
            }
            const Work once = body();
            const int times = between(2, 4);
            put({pick({"[", "("}) + once.text + "] " + std::to_string(times) + " times",
                 once.takes * times, once.makes * times});
            fixBrackets(parts);
        }
        const int ending = between(0, 3);
        const Work once = body();
        const int edge = std::min(left, between(0, 3));
        const int times = (left - edge) / once.takes;
        if (ending == 0 || times == 0) {
            parts.push_back(pick({"k to end", "knit to end of row", "p across"}));
            after += left;
        } else {
            const int rest = left - times * once.takes;  // after the repeat
            std::string star =
                "*" + once.text + pick({"; rep from * ", ", repeat from * ", ", rep from * "});
            if (ending == 1 && times > 1) {
                star += times == 2
                            ? pick({"once more", "1 more time"})
                            : std::to_string(times - 1) + pick({" more times", " times more"});
            } else if (rest == 0) {
                star += pick({"to end", "across", "to end of row"});
            } else {
                star +=
                    "to last " + (rest == 1 ? std::string("st") : std::to_string(rest) + " sts");
            }
            parts.push_back(star);
            after += times * once.makes + rest;
            if (rest > 0) parts.push_back(pick({"k", "p"}) + std::to_string(rest));
        }
        for (std::size_t i = 0; i < parts.size(); ++i)
            text += (i == 0 ? "" : pick({", ", "; ", ", "})) + parts[i];
        if (between(0, 1) == 0) text += " (" + std::to_string(after) + " sts)";
        text += pick({".\n", "\n"});
        return after;
    }

    // The closing bracket is the counterpart of the opening one.
    static void fixBrackets(std::vector<std::string>& parts) {
        if (parts.empty() || parts.back().empty() || parts.back().front() != '(') return;
        const std::size_t at = parts.back().rfind("] ");
        if (at != std::string::npos) parts.back()[at] = ')';
    }

    std::mt19937 random_;
};

}  // namespace lacewright::test
