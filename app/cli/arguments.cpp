#include "app/cli/arguments.h"

#include <algorithm>

#include "app/cli/nearest.h"

namespace lacewright::cli {
namespace {

Error unknownOption(const std::string& name, const Verb& verb) {
    std::vector<std::string> names = {"--help"};
    for (const Option& option : verb.options) names.emplace_back(option.name);
    return misuse(std::string(verb.name) + " has no option \"" + name + "\"" +
                  didYouMean(name, names) + ".");
}

// One option, beginning at words[i]; moves i to its last word.
Outcome readOption(const std::vector<std::string>& words, std::size_t& i, const Verb& verb,
                   Call& call) {
    const std::size_t equals = words[i].find('=');
    const std::string name = words[i].substr(0, equals);
    const auto option = std::find_if(verb.options.begin(), verb.options.end(),
                                     [&](const Option& known) { return known.name == name; });
    if (option == verb.options.end()) return unknownOption(name, verb);
    std::string value;
    if (option->argument.empty()) {
        if (equals != std::string::npos) return misuse(name + " takes no argument.");
    } else if (equals != std::string::npos) {
        value = words[i].substr(equals + 1);
    } else if (i + 1 < words.size()) {
        value = words[++i];
    } else {
        return misuse(name + " must be followed by " + std::string(option->argument) + ".");
    }
    if (!call.options.emplace(name, value).second) return misuse(name + " is given twice.");
    return Done{};
}

}  // namespace

Outcome readArguments(const std::vector<std::string>& words, const Verb& verb, Call& call) {
    bool onlyFiles = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (!onlyFiles && words[i] == "--") {
            onlyFiles = true;
        } else if (!onlyFiles && words[i].size() > 1 && words[i].front() == '-') {
            if (Outcome read = readOption(words, i, verb, call); !read) return read;
        } else {
            call.files.push_back(words[i]);
        }
    }
    if (call.files.empty()) {
        return misuse(std::string(verb.name) + " needs " + std::string(verb.files) +
                      "; \"lacewright " + std::string(verb.name) + " --help\" says more.");
    }
    return Done{};
}

}  // namespace lacewright::cli
