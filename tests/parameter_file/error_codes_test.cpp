// The page of codes, the table of codes and the codes in the sources agree.

#include <doctest/doctest.h>

#include <map>
#include <set>

#include "corpus.hpp"
#include "internal/error_codes.hpp"

using namespace gibbsteel;

namespace {

std::map<std::string, std::string> table() {
  std::map<std::string, std::string> meanings;
  const auto add = [&](const auto& list) {
    for (const codes::CodeMeaning& known : list) {
      CAPTURE(known.code);
      CHECK(meanings.emplace(known.code, known.meaning).second);
    }
  };
  add(codes::kDataCodes);
  add(codes::kInputCodes);
  add(codes::kWarningCodes);
  return meanings;
}

/// Cells of a row "| a | b |" of a Markdown table.
std::vector<std::string> cells_of(const std::string& row) {
  std::vector<std::string> cells;
  std::size_t begin = 2;
  for (std::size_t end = row.find(" |", begin); end != std::string::npos;
       end = row.find(" |", begin)) {
    cells.push_back(row.substr(begin, end - begin));
    begin = end + 3;
  }
  return cells;
}

std::map<std::string, std::string> page() {
  std::map<std::string, std::string> meanings;
  std::ifstream stream(std::filesystem::path(GIBBSTEEL_SOURCE_DIR) / "include" /
                       "gibbsteel" / "ERROR_CODES.md");
  for (std::string line; std::getline(stream, line);) {
    if (line.rfind("| gibbsteel.", 0) != 0) continue;
    CAPTURE(line);
    const std::vector<std::string> cells = cells_of(line);
    REQUIRE(cells.size() == 4);
    CHECK(meanings.emplace(cells[0], cells[1]).second);
  }
  return meanings;
}

/// Codes written out anywhere in the library or its Python face.
std::set<std::string> used() {
  std::set<std::string> codes;
  for (const char* name : {"src", "bindings"}) {
    const auto root = std::filesystem::path(GIBBSTEEL_SOURCE_DIR) / name;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root)) {
      const auto kind = entry.path().extension();
      if (kind != ".cpp" && kind != ".hpp" && kind != ".py") continue;
      const std::string text = corpus::content_of(entry.path());
      for (const std::string area : {"data", "input", "warning"}) {
        const std::string start = "gibbsteel." + area + ".";
        for (std::size_t at = text.find(start); at != std::string::npos;
             at = text.find(start, at + 1)) {
          const std::string code = text.substr(at, start.size() + 3);
          if (code.find_last_not_of("0123456789") == start.size() - 1) {
            codes.insert(code);
          }
        }
      }
    }
  }
  return codes;
}

}  // namespace

TEST_CASE("the page of codes says what the table says") { CHECK(page() == table()); }

TEST_CASE("every code in the sources is in the table") {
  const auto known = table();
  CHECK(used().size() >= codes::kDataCodes.size());
  for (const std::string& code : used()) {
    CAPTURE(code);
    CHECK(known.contains(code));
  }
}

TEST_CASE("every code of a warning has a bit in a screen") {
  for (const codes::CodeMeaning& known : codes::kWarningCodes) {
    CAPTURE(known.code);
    const int number =
        std::stoi(std::string(known.code.substr(known.code.rfind('.') + 1)));
    CHECK(number >= 300);
    CHECK(number < 364);
  }
}

TEST_CASE("a problem reads: code, place, what is wrong, what would be right") {
  const Problem problem{"gibbsteel.data.104", "a.json: /x", "is 1", "give 2"};
  CHECK(problem.text() == "[gibbsteel.data.104] a.json: /x: is 1; give 2");
  const DataError error({problem, {"gibbsteel.data.110", "a.json", "b", "c"}});
  CHECK(
      std::string(error.what()) ==
      "[gibbsteel.data.104] a.json: /x: is 1; give 2\n[gibbsteel.data.110] a.json: b; "
      "c");
  CHECK(error.code() == "gibbsteel.data.104");
  CHECK(error.problems().size() == 2);
  CHECK(error.problems()[0] == problem);
}
