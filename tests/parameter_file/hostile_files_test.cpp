// Files made to hurt: each is refused, with a message of bounded length, in a time that
// does not depend on what it pretends to hold.

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <sstream>

#include "corpus.hpp"
#include "gibbsteel/elements.hpp"

using namespace gibbsteel;

namespace {

/// Generous, because sanitizers and a busy machine slow things down; a release build
/// needs milliseconds.
constexpr double kMostSeconds = 5.0;
constexpr std::size_t kLongestMessage = 200 * 1000;  // [bytes], 200 problems

std::string refusal(const std::string& text, const FileLimits& limits = {}) {
  const auto start = std::chrono::steady_clock::now();
  const std::string said = corpus::complaint(text, "hostile.json", nullptr, limits);
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  MESSAGE("refused " << text.size() << " bytes in " << 1000.0 * took.count() << " ms");
  CHECK(took.count() < kMostSeconds);
  CHECK(said.size() < kLongestMessage);
  return said;
}

std::string repeated(const std::string& part, std::size_t count) {
  std::string text;
  text.reserve(part.size() * count);
  for (std::size_t i = 0; i < count; ++i) text += part;
  return text;
}

std::string wrapped(std::string open, const std::string& body, const char* close) {
  return open.append(body).append(close);
}

std::string first_line(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

const std::string kSmallCurves = R"("curves": {
    "iron": {)";
const std::string kCurveBegins = R"(": {"from_K": 298, "pieces": [{"up_to_K": 2000, )";
const std::string kCurveEnds = R"(}], "source": "invented", "kind": "estimated"},
)";

}  // namespace

TEST_CASE("bytes, depth, values and lengths are bounded before anything is built") {
  CHECK(refusal(std::string(9u << 20, ' ')) ==
        "[gibbsteel.data.103] hostile.json: has more than 8388608 bytes; split it into "
        "layers");
  CHECK(
      refusal(std::string(8u << 20, '[')) ==
      "[gibbsteel.data.103] hostile.json: /0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0: lists and "
      "objects are nested more than 16 deep; no part of a parameter file needs that; "
      "remove what is below");
  CHECK(
      refusal(wrapped("[", repeated("0,", 4'000'000), "0]")) ==
      "[gibbsteel.data.103] hostile.json: holds more than 400000 values; split it into "
      "layers");
  CHECK(
      refusal(wrapped("[\"", std::string(8'000'000, 'x'), "\"]")) ==
      "[gibbsteel.data.103] hostile.json: /0: the text is 8000000 bytes long; at most "
      "4000 bytes can stand here");
  CHECK(refusal(wrapped("{\"", std::string(8'000'000, 'x'), "\": 1}")) ==
        "[gibbsteel.data.103] hostile.json: a key is 8000000 bytes long; at most 120 "
        "bytes can stand here");
}

TEST_CASE("numbers of a million digits") {
  const std::string digits(1'000'000, '9');
  CHECK(first_line(refusal(wrapped("[", digits, "]"))).substr(0, 40) ==
        "[gibbsteel.data.106] hostile.json: /0: t");
  CHECK(
      refusal(wrapped("[0.", digits, "]")) ==
      "[gibbsteel.data.107] hostile.json: is a list; give a parameter file: an object "
      "with the key \"format\"");
}

TEST_CASE("the list of problems ends") {
  std::ostringstream keys;
  keys << '{';
  for (int i = 0; i < 300'000; ++i) keys << "\"k" << i << "\": 0, ";
  keys << R"("format": {"name": "gibbsteel parameter file", "version": 1}})";
  const std::string said = refusal(keys.str());
  CHECK(
      first_line(said) ==
      "[gibbsteel.data.111] hostile.json: /k0: this key is not known here; give "
      "\"format\", \"title\", \"edition\", \"licence\", \"units\", "
      "\"reference_state\", \"validity\", \"sources\", \"elements\", \"curves\", ...");
  CHECK(std::count(said.begin(), said.end(), '\n') == 200);
  CHECK(
      said.substr(said.rfind('\n') + 1) ==
      "[gibbsteel.data.109] hostile.json: has more problems; mend the 200 listed here "
      "first");
}

TEST_CASE("one key a hundred thousand times") {
  CHECK(
      first_line(refusal(wrapped("{", repeated("\"k\": 0, ", 100'000), "\"k\": 0}"))) ==
      "[gibbsteel.data.105] hostile.json: /k: this key stands more than once in its "
      "object; keep one of them, or rename the other");
}

TEST_CASE("control characters and length of what is quoted from the file") {
  const std::string said = refusal(corpus::small_with(
      "\"kind\": \"recalled\", \"confidence\": \"medium\"",
      wrapped("\"kind\": \"\\u001b[31m", std::string(3000, 'x'), "\"")));
  CHECK(
      said ==
      "[gibbsteel.data.114] hostile.json: /phases/austenite/energy/5/kind: is \"?[31m" +
          std::string(55, 'x') +
          "...\"; give \"published\", \"recalled\" or \"estimated\"");
}

TEST_CASE("C1 controls and marks of direction in what is quoted from the file") {
  CHECK(refusal(corpus::small_with("\"kind\": \"recalled\", \"confidence\": \"medium\"",
                                   "\"kind\": \"\xC2\x9B\\u202e31m\"")) ==
        "[gibbsteel.data.114] hostile.json: /phases/austenite/energy/5/kind: is "
        "\"??31m\"; "
        "give \"published\", \"recalled\" or \"estimated\"");
  const std::string key = "\"a\xE2\x80\xAE/b\": 0";
  CHECK(refusal("{" + key + ", " + key + "}") ==
        "[gibbsteel.data.105] hostile.json: /a?~1b: this key stands more than once in "
        "its object; keep one of them, or rename the other\n"
        "[gibbsteel.data.107] hostile.json: does not say that this is a parameter "
        "file; begin with \"format\": {\"name\": \"gibbsteel parameter file\", "
        "\"version\": 1}");
}

TEST_CASE("names hold no marks of direction") {
  CHECK(refusal(corpus::small_with(kSmallCurves,
                                   "\"curves\": {\n\"a\\u202eb\": 0,\n\"iron\": {")) ==
        "[gibbsteel.data.115] hostile.json: /curves/a?b: the name \"a?b\" cannot be "
        "used; give a name without control characters and without blanks at its ends");
}

TEST_CASE("curves that grow when spelled out") {
  // Seven levels of 40 curves, each made of the 40 below it: 40^7 terms.
  std::ostringstream curves;
  curves << "\"curves\": {\n";
  for (int level = 0; level < 7; ++level) {
    for (int i = 0; i < 40; ++i) {
      curves << "\"c" << level << '_' << i << kCurveBegins;
      for (int j = 0; level > 0 && j < 40; ++j) {
        curves << (j == 0 ? "\"curves\": {" : ", ") << "\"c" << level - 1 << '_' << j
               << "\": 1";
      }
      curves << (level > 0 ? "}, " : "") << "\"terms\": {\"1\": 1}" << kCurveEnds;
    }
  }
  curves << "\"iron\": {";
  CHECK(
      refusal(corpus::small_with(kSmallCurves, curves.str())) ==
      "[gibbsteel.data.103] hostile.json: /curves: the curves are made of one another "
      "so often that spelling them out takes more than 200000 terms; spell out in "
      "powers of T what is used most");
}

TEST_CASE("a long chain of curves") {
  std::ostringstream curves;
  curves << "\"curves\": {\n\"c0\"" << kCurveBegins.substr(1) << "\"terms\": {\"1\": 1}"
         << kCurveEnds;
  for (int i = 1; i < 900; ++i) {
    curves << "\"c" << i << kCurveBegins << "\"curves\": {\"c" << i - 1 << "\": 1}"
           << kCurveEnds;
  }
  curves << "\"iron\": {";
  CHECK(
      first_line(refusal(corpus::small_with(kSmallCurves, curves.str()))) ==
      "[gibbsteel.data.103] hostile.json: /curves: the curves are made of one another "
      "so often that spelling them out takes more than 200000 terms; spell out in "
      "powers of T what is used most");
}

TEST_CASE("a phase with a million end members") {
  const std::vector<std::string> symbols{"Ti", "V",  "Mn", "Co", "Ni",
                                         "Cu", "Mo", "Nb", "W",  "Ta"};
  std::ostringstream elements;
  std::string names;
  elements << "\"elements\": {\n";
  for (const std::string& symbol : symbols) {
    elements << '"' << symbol << R"(": {"molar_mass_g_per_mol": )"
             << find_element(symbol)->molar_mass << R"(, "reference_curve": "iron"}, )";
    names += (names.empty() ? "\"" : ", \"") + symbol + "\"";
  }
  std::string text = corpus::small_with("\"elements\": {\n", elements.str());
  const std::string sublattice = R"({"sites": 1, "constituents": [)" + names + "]}";
  const std::string phase = R"("phases": {
    "huge": {"role": "other", "lattice": "none", "sublattices": [)" +
                            repeated(sublattice + ", ", 5) + sublattice +
                            R"(], "energy": [
      {"on": ["Ti", "Ti", "Ti", "Ti", "Ti", "Ti"], "terms": {"1": 0},
       "source": "invented", "kind": "estimated"}]},
)";
  text.replace(text.find("\"phases\": {\n"), 12, phase);
  CHECK(
      refusal(text) ==
      "[gibbsteel.data.103] hostile.json: /phases/huge/energy: the phase has more than "
      "4000 end members; describe it with fewer sublattices or constituents");
}

TEST_CASE("counts of elements, curves, phases, terms and pieces are bounded") {
  FileLimits limits;
  limits.elements = 2;
  CHECK(first_line(refusal(corpus::small_with("", ""), limits)) ==
        "[gibbsteel.data.103] hostile.json: /elements: has 3 entries; at most 2 can "
        "stand here");
  limits = {};
  limits.phases = 1;
  CHECK(
      refusal(corpus::small_with("", ""), limits) ==
      "[gibbsteel.data.103] hostile.json: /phases: has 2 entries; at most 1 can stand "
      "here");
  limits = {};
  limits.terms_per_phase = 7;
  CHECK(
      refusal(corpus::small_with("", ""), limits) ==
      "[gibbsteel.data.103] hostile.json: /phases/austenite/energy: has 8 entries; at "
      "most 7 can stand here");
  limits = {};
  limits.pieces_per_curve = 1;
  CHECK(
      refusal(corpus::small_with("", ""), limits) ==
      "[gibbsteel.data.103] hostile.json: /curves/iron/pieces: has 2 entries; at most "
      "1 can stand here");
}

TEST_CASE("a file cut off anywhere, or with any byte changed, is refused or read") {
  const std::string text = corpus::small_with("", "");
  for (std::size_t length = 0; length + 2 < text.size(); length += 37) {
    CHECK(corpus::complaint(text.substr(0, length), "cut.json") != "");
  }
  std::size_t refused = 0;
  for (std::size_t at = 0; at < text.size(); at += 7) {
    for (const char byte : {'\0', '9', '"', '{', '\xFF'}) {
      std::string changed = text;
      changed[at] = byte;
      refused += corpus::complaint(changed, "changed.json") != "" ? 1u : 0u;
    }
  }
  CHECK(refused > 1000);
}

TEST_CASE("a path that is no readable file") {
  const auto said = [](const std::filesystem::path& file) -> std::string {
    try {
      load_parameters(file);
    } catch (const DataError& error) {
      return error.what();
    }
    return "";
  };
  CHECK(said(corpus::folder("good") / "no_such.json") ==
        "[gibbsteel.data.101] no_such.json: there is no such file; give the path of a "
        "parameter file");
  CHECK(
      said(corpus::folder("good")) ==
      "[gibbsteel.data.101] good: is a folder, a pipe or a device; give the path of a "
      "parameter file");
#ifdef __linux__
  CHECK(
      said("/dev/zero") ==
      "[gibbsteel.data.101] zero: is a folder, a pipe or a device; give the path of a "
      "parameter file");
#endif
}
