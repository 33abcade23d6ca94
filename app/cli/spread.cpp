#include "core/plan/spread.h"

#include <ostream>

#include "app/cli/measures.h"
#include "app/cli/verb.h"
#include "core/base/text.h"

// Stitches made or taken away evenly across a row.
namespace lacewright::cli {
namespace {

template <class Value>
struct Spelling {
    std::string_view text;
    Value value;
};
constexpr Spelling<Change> kIncreases[] = {{"m1", Change::MakeOne}, {"kfb", Change::FrontAndBack}};
constexpr Spelling<SpreadEnds> kEnds[] = {
    {"half", SpreadEnds::Half}, {"whole", SpreadEnds::Whole}, {"grouped", SpreadEnds::Grouped}};

// What the option says, the first spelling where it says nothing.
template <class Value, std::size_t size>
Result<Value> chosen(const Call& call, const std::string& option,
                     const Spelling<Value> (&spellings)[size]) {
    const std::string said = lowerAscii(call.get(option, std::string(spellings[0].text)));
    std::vector<std::string> names;
    for (const auto& [text, value] : spellings) {
        if (text == said) return value;
        names.emplace_back(text);
    }
    return misuse(option + " must be one of " + join(names, ", ") + ", not \"" + said + "\".");
}

}  // namespace

int runSpread(const Call& call) {
    if (call.files.size() != 2) return call.refuse("spread takes two numbers of stitches.");
    const auto before = wholeIn(call.files[0]);
    const auto after = wholeIn(call.files[1]);
    if (!before || !after || *before < 1 || *after < 1 || *before == *after) {
        return call.refuse("spread takes two numbers of stitches that differ, both from 1.");
    }
    const auto increase = chosen(call, "--increase", kIncreases);
    if (!increase) return call.refuse(increase.error().text());
    const auto ends = chosen(call, "--ends", kEnds);
    if (!ends) return call.refuse(ends.error().text());
    if (*after < *before && call.has("--increase")) {
        return call.refuse("--increase has no meaning where stitches become fewer.");
    }
    const auto spread = spreadTo(*before, *after, *increase, *ends);
    if (!spread) return call.refuse(spread.error().text());
    call.out << spreadSentence(*spread) << '\n';
    return kDone;
}

}  // namespace lacewright::cli
