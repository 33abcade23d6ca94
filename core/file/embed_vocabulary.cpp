// Build tool: reads resources/vocabulary.json and writes it out as C++, so that the program carries
// the words of the trade and a slip in the file stops the build.
// usage: embed_vocabulary vocabulary.json out.cpp

#include <fstream>
#include <iostream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

namespace {

using nlohmann::json;

const std::map<std::string, std::string> kRoles = {
    {"stitch", "Stitch"}, {"ground", "Ground"}, {"modifier", "Modifier"}, {"aside", "Aside"}};
const std::set<std::string> kDialects = {"any", "us", "uk", "older"};

std::string quoted(const std::string& text) {
    return "R\"~(" + text + ")~\"";
}

// A number, "#" (the number written in the term) or "-#".
std::string count(const json& value) {
    if (value.is_number_integer()) return "{" + std::to_string(value.get<int>()) + ",0}";
    const std::string text = value.get<std::string>();
    if (text == "#") return "{0,1}";
    if (text == "-#") return "{0,-1}";
    throw std::runtime_error("a count is a number, # or -#, not " + text);
}

std::string secondMeaning(const json& term) {
    const auto at = term.find("mayMean");
    if (at == term.end()) return "std::nullopt";
    std::ostringstream out;
    out << "SecondMeaning{" << quoted(at->at("meaning")) << "," << at->at("takes").get<int>() << ","
        << at->at("makes").get<int>() << "}";
    return out.str();
}

std::string term(const json& t, const json& sources) {
    const std::string role = t.value("role", "stitch");
    const bool counts = role == "stitch";
    const std::string dialect = t.value("dialect", "any");
    if (!kDialects.contains(dialect)) throw std::runtime_error("unknown dialect " + dialect);
    std::ostringstream out;
    out << "    {{";
    for (const json& spelling : t.at("spellings")) out << quoted(spelling) << ",";
    out << "}," << quoted(dialect) << ",TermRole::" << kRoles.at(role) << ","
        << (counts ? count(t.at("takes")) : "{1,0}") << ","
        << (counts ? count(t.at("makes")) : "{1,0}") << "," << quoted(t.value("meaning", "")) << ","
        << quoted(t.value("right", "")) << "," << quoted(t.value("wrong", "")) << ","
        << secondMeaning(t) << "," << quoted(sources.at(t.at("source").get<std::string>()))
        << "},\n";
    return out.str();
}

}  // namespace

int main(int argc, char** argv) try {
    if (argc != 3) {
        std::cerr << "usage: embed_vocabulary vocabulary.json out.cpp\n";
        return 2;
    }
    std::ifstream in(argv[1]);
    const json vocabulary = json::parse(in);
    std::ofstream out(argv[2]);
    out << "#include \"core/words/vocabulary.h\"\n\nnamespace lacewright {\n\n"
           "const std::vector<Term>& builtInTerms() {\n"
           "    static const std::vector<Term> terms = {\n";
    std::set<std::pair<std::string, bool>> seen;
    for (const json& t : vocabulary.at("terms")) {
        for (const json& spelling : t.at("spellings")) {
            if (!seen.insert({spelling, t.value("dialect", "any") == "older"}).second) {
                throw std::runtime_error("two terms are spelled " + spelling.dump());
            }
        }
        out << term(t, vocabulary.at("sources"));
    }
    out << "    };\n    return terms;\n}\n\n}  // namespace lacewright\n";
    return out.flush() ? 0 : 2;
} catch (const std::exception& error) {
    std::cerr << argv[1] << ": " << error.what() << "\n";
    return 2;
}
