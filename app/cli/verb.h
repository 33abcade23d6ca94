#pragma once

#include <functional>
#include <iosfwd>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

// A verb of the command line is a row of the table in verbs.cpp and a file of its own.
namespace lacewright {
struct Sheet;
}

namespace lacewright::cli {

inline constexpr int kDone = 0;
inline constexpr int kFound = 1;   // a fault, or a difference
inline constexpr int kMisuse = 2;  // wrong arguments, or a file that cannot be read or written

// Back ends that need more than the core has; absent where the program is built without a window.
// Each writes all pages of a sheet to the file.
struct SheetPainters {
    std::function<Outcome(const Sheet& sheet, const std::string& path)> pdf;
    std::function<Outcome(const Sheet& sheet, const std::string& path)> png;
};

struct Option {
    std::string_view name;      // "--size"
    std::string_view argument;  // what stands after it in the help: "NAME"; empty: nothing does
    std::string_view help;
};

// What was said after the verb.
struct Call {
    std::vector<std::string> files;              // everything that is no option; mostly files
    std::map<std::string, std::string> options;  // by name; empty text where no argument belongs
    std::ostream& out;
    std::ostream& err;
    const SheetPainters& painters;

    bool has(const std::string& name) const { return options.contains(name); }
    std::string get(const std::string& name, const std::string& otherwise = {}) const {
        const auto found = options.find(name);
        return found == options.end() ? otherwise : found->second;
    }
    // One sentence on the error stream; gives kMisuse.
    int refuse(const std::string& sentence) const;
};

// What is wrong with the arguments, as one sentence.
Error misuse(std::string sentence);

struct Verb {
    std::string_view name;
    std::string_view files;    // what stands after it in the help: "FILE..."
    std::string_view summary;  // one line
    std::vector<Option> options;
    int (*run)(const Call& call) = nullptr;
};

const std::vector<Verb>& verbs();
const Verb* findVerb(std::string_view name);

int runCheck(const Call& call);
int runChart(const Call& call);
int runCompare(const Call& call);
int runDraw(const Call& call);
int runPickUp(const Call& call);
int runSizes(const Call& call);
int runSpread(const Call& call);
int runWrite(const Call& call);

}  // namespace lacewright::cli
