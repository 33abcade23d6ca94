#include "app/cli/cli.h"

#include <algorithm>
#include <ostream>

#include "app/cli/arguments.h"
#include "app/cli/nearest.h"

namespace lacewright::cli {
namespace {

std::string call(const Verb& verb) {
    return "lacewright " + std::string(verb.name) + " " + std::string(verb.files);
}

// "  left   right" with the right sides under one another.
void writeColumns(std::ostream& out,
                  const std::vector<std::pair<std::string, std::string>>& lines) {
    std::size_t width = 0;
    for (const auto& line : lines) width = std::max(width, line.first.size());
    for (const auto& [left, right] : lines) {
        out << "  " << left << std::string(width - left.size() + 3, ' ') << right << "\n";
    }
}

void writeHelp(std::ostream& out) {
    out << "Draws lace knitting charts for many sizes and proves that they can be knitted.\n\n"
           "usage: lacewright [FILE...]          open the window\n"
           "       lacewright VERB ...           do something without it\n"
           "       lacewright VERB --help        what a verb can do\n"
           "       lacewright --version\n\nverbs:\n";
    std::vector<std::pair<std::string, std::string>> lines;
    for (const Verb& verb : verbs()) lines.emplace_back(verb.name, verb.summary);
    writeColumns(out, lines);
    out << "\nexit: 0 done, 1 a fault or a difference was found, 2 wrong use or an unreadable "
           "file\n";
}

void writeHelp(std::ostream& out, const Verb& verb) {
    const std::string summary(verb.summary);
    out << "usage: " << call(verb) << " [options]\n\n" << summary << "\n\noptions:\n";
    std::vector<std::pair<std::string, std::string>> lines;
    for (const Option& option : verb.options) {
        const std::string argument =
            option.argument.empty() ? "" : " " + std::string(option.argument);
        lines.emplace_back(std::string(option.name) + argument, option.help);
    }
    lines.emplace_back("--help", "this text");
    writeColumns(out, lines);
}

int refuseVerb(const std::string& word, std::ostream& err) {
    std::vector<std::string> names;
    for (const Verb& verb : verbs()) names.emplace_back(verb.name);
    err << "lacewright: there is no verb \"" << word << "\"" << didYouMean(word, names)
        << "; \"lacewright --help\" lists them all.\n";
    return kMisuse;
}

}  // namespace

int runCli(const std::vector<std::string>& args, std::ostream& out, std::ostream& err,
           const SheetPainters& painters) {
    if (args.empty() || args[0] == "--help" || args[0] == "-h") {
        writeHelp(out);
        return kDone;
    }
    if (args[0] == "--version") {
        out << "lacewright " LACEWRIGHT_VERSION "\n";
        return kDone;
    }
    const Verb* verb = findVerb(args[0]);
    if (verb == nullptr) return refuseVerb(args[0], err);
    Call call{{}, {}, out, err, painters};
    if (std::find(args.begin() + 1, args.end(), "--help") != args.end()) {
        writeHelp(out, *verb);
        return kDone;
    }
    if (const Outcome read = readArguments({args.begin() + 1, args.end()}, *verb, call); !read) {
        return call.refuse(read.error().text());
    }
    return verb->run(call);
}

bool isForCli(const std::vector<std::string>& args) {
    if (args.empty()) return false;
    if (args[0].starts_with("-") || findVerb(args[0]) != nullptr) return true;
    return args[0].find_first_of("./\\") == std::string::npos;
}

}  // namespace lacewright::cli
