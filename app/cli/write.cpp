#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/verb.h"
#include "core/base/disk.h"
#include "core/base/text.h"
#include "core/file/chart_file.h"
#include "core/words/writer.h"

namespace lacewright::cli {
namespace {

Result<WriteOptions> readOptions(const Call& call, const Chart& chart) {
    WriteOptions options;
    const std::string name = call.get("--size", "all");
    if (name != "all") {
        if (chart.findSize(name) == nullptr) {
            std::vector<std::string> names;
            for (const Size& size : chart.sizes) names.push_back(size.name);
            return misuse("The chart has no size \"" + name + "\"" + didYouMean(name, names) + ".");
        }
        options.sizes = {name};
    }
    const std::string terms = lowerAscii(call.get("--terms", "us"));
    if (terms != "us" && terms != "uk")
        return misuse("--terms must be us or uk, not \"" + terms + "\".");
    options.style.terms = terms == "uk" ? Terms::Uk : Terms::Us;
    const std::string brackets = lowerAscii(call.get("--brackets", "square"));
    if (brackets != "square" && brackets != "round")
        return misuse("--brackets must be square or round, not \"" + brackets + "\".");
    options.style.brackets = brackets == "round" ? Brackets::Round : Brackets::Square;
    const std::string numerals = lowerAscii(call.get("--numerals", "digits"));
    if (numerals != "digits" && numerals != "words")
        return misuse("--numerals must be digits or words, not \"" + numerals + "\".");
    options.style.numerals = numerals == "words" ? Numerals::Words : Numerals::Digits;
    return options;
}

}  // namespace

int runWrite(const Call& call) {
    if (call.files.size() != 1) return call.refuse("write takes one chart at a time.");
    const Result<Chart> chart = loadChart(call.files[0]);
    if (!chart) return call.refuse(chart.error().text());
    const Result<WriteOptions> options = readOptions(call, *chart);
    if (!options) return call.refuse(options.error().text());
    const Result<WrittenChart> written = writeRows(*chart, *options);
    if (!written) return call.refuse(written.error().text());
    const std::string text = call.has("--html") ? written->html() : written->text();
    const std::string out = call.get("-o");
    if (out.empty()) {
        call.out << text;
        return kDone;
    }
    const Outcome saved = writeFile(out, text);
    if (!saved) return call.refuse(saved.error().text());
    return kDone;
}

}  // namespace lacewright::cli
