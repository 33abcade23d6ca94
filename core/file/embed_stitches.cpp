// Build tool: resources/stitches.json as C++.

#include <map>
#include <set>
#include <sstream>

#include "core/file/embed.h"

namespace {

using lacewright::embed::quoted;
using nlohmann::json;

const std::map<std::string, std::string> kKinds = {
    {"plain", "Plain"},       {"yarn over", "YarnOver"}, {"increase", "Increase"},
    {"decrease", "Decrease"}, {"gather", "Gather"},      {"cross", "Cross"},
    {"slip", "Slip"},         {"texture", "Texture"},    {"bind off", "BindOff"},
    {"cast on", "CastOn"},    {"no stitch", "NoStitch"}};
const std::map<std::string, std::string> kLeans = {
    {"none", "None"}, {"right", "Right"}, {"left", "Left"}, {"centred", "Centred"}};

// The C++ name of a word of the catalogue.
std::string nameOf(const json& word, const std::map<std::string, std::string>& names) {
    const auto name = names.find(word.get<std::string>());
    if (name == names.end()) throw std::runtime_error("unknown word " + word.dump());
    return name->second;
}

std::string strokes(const json& glyph) {
    std::ostringstream out;
    out << "{";
    for (const json& stroke : glyph) {
        out << "{" << stroke.at("at").at(0).get<int>() << "," << stroke.at("at").at(1).get<int>()
            << "," << quoted(stroke.at("tail")) << ","
            << (stroke.value("filled", false) ? "true" : "false") << "},";
    }
    out << "}";
    return out.str();
}

std::string wording(const json& side) {
    return "{" + quoted(side.at("abbreviation")) + "," + quoted(side.at("instruction")) + "}";
}

std::string stitch(const json& s) {
    std::ostringstream out;
    out << "    {" << quoted(s.at("id")) << "," << quoted(s.at("name")) << ","
        << s.at("takes").get<int>() << "," << s.at("makes").get<int>() << ","
        << s.at("span").get<int>() << ",Lean::" << nameOf(s.at("lean"), kLeans)
        << ",StitchKind::" << nameOf(s.at("kind"), kKinds) << "," << quoted(s.at("mirror")) << ","
        << wording(s.at("right")) << "," << wording(s.at("wrong")) << "," << strokes(s.at("glyph"))
        << "," << (s.value("shaded", false) ? "true" : "false") << "," << quoted(s.at("source"))
        << "},\n";
    return out.str();
}

void write(const json& catalogue, std::ostream& out) {
    out << "const StitchCataloguePtr& builtInStitches() {\n"
           "    static const StitchCataloguePtr catalogue =\n"
           "        std::make_shared<StitchCatalogue>(std::vector<Stitch>{\n";
    std::set<std::string> ids;
    for (const json& s : catalogue.at("stitches")) {
        if (!ids.insert(s.at("id").get<std::string>()).second) {
            throw std::runtime_error("two stitches are called " + s.at("id").dump());
        }
        try {
            out << stitch(s);
        } catch (const std::exception& error) {
            throw std::runtime_error("stitch " + s.at("id").dump() + ": " + error.what());
        }
    }
    out << "        });\n    return catalogue;\n}\n";
}

}  // namespace

int main(int argc, char** argv) {
    return lacewright::embed::run(argc, argv, "core/stitch/catalogue.h", write);
}
