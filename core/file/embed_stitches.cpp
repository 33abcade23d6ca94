// Build tool: reads resources/stitches.json and writes it out as C++, so that the program carries
// its stitches and a slip in the file stops the build.
// usage: embed_stitches stitches.json out.cpp

#include <fstream>
#include <iostream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>
#include <stdexcept>

namespace {

using nlohmann::json;

const std::map<std::string, std::string> kKinds = {
    {"plain", "Plain"},       {"yarn over", "YarnOver"}, {"increase", "Increase"},
    {"decrease", "Decrease"}, {"gather", "Gather"},      {"cross", "Cross"},
    {"slip", "Slip"},         {"texture", "Texture"},    {"bind off", "BindOff"},
    {"cast on", "CastOn"},    {"no stitch", "NoStitch"}};
const std::map<std::string, std::string> kLeans = {
    {"none", "None"}, {"right", "Right"}, {"left", "Left"}, {"centred", "Centred"}};

std::string quoted(const json& text) {
    return "R\"~(" + text.get<std::string>() + ")~\"";
}

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

}  // namespace

int main(int argc, char** argv) try {
    if (argc != 3) {
        std::cerr << "usage: embed_stitches stitches.json out.cpp\n";
        return 2;
    }
    std::ifstream in(argv[1]);
    if (!in) throw std::runtime_error("cannot be read");
    const json catalogue = json::parse(in);
    std::ofstream out(argv[2]);
    out << "#include \"core/stitch/catalogue.h\"\n\nnamespace lacewright {\n\n"
           "const StitchCataloguePtr& builtInStitches() {\n"
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
    out << "        });\n    return catalogue;\n}\n\n}  // namespace lacewright\n";
    return out.flush() ? 0 : 2;
} catch (const std::exception& error) {
    std::cerr << argv[1] << ": " << error.what() << "\n";
    return 2;
}
