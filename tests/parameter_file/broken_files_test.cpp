// Every file under broken/ and broken_layers/ is refused with exactly the message that
// stands beside it. The files differ from good/small.json (layers/titanium.json) in one
// place; their names say which.

#include <doctest/doctest.h>

#include <set>

#include "corpus.hpp"
#include "internal/error_codes.hpp"

using namespace gibbsteel;

namespace {

void check_folder(const std::string& name, const SharedParameters& below) {
  for (const auto& file : corpus::files_of(name)) {
    CAPTURE(file.filename().string());
    const std::string said =
        corpus::complaint(corpus::content_of(file), file.filename().string(), below);
    CHECK(said != "");
    std::filesystem::path expected = file;
    expected.replace_extension(".expected.txt");
    if (corpus::regenerating()) {
      std::ofstream(expected, std::ios::binary) << said << "\n";
    }
    CHECK(said + "\n" == corpus::content_of(expected));
  }
}

std::set<std::string> codes_in(const std::string& name) {
  std::set<std::string> codes;
  for (const auto& file : corpus::files_of(name)) {
    std::filesystem::path expected = file;
    expected.replace_extension(".expected.txt");
    codes.insert(corpus::content_of(expected).substr(1, 18));
  }
  return codes;
}

}  // namespace

TEST_CASE("broken files are refused with the whole expected message") {
  CHECK(corpus::files_of("broken").size() >= 45);
  check_folder("broken", nullptr);
}

TEST_CASE("broken layers are refused with the whole expected message") {
  CHECK(corpus::files_of("broken_layers").size() >= 15);
  check_folder("broken_layers", load_parameters(corpus::folder("good") / "small.json"));
}

TEST_CASE("nearly every code of a parameter file has a broken file that shows it") {
  std::set<std::string> shown = codes_in("broken");
  shown.merge(codes_in("broken_layers"));
  // Tested elsewhere: no file at all, more problems than are listed, writing.
  for (const auto code : {codes::kUnreadable, codes::kManyMore, codes::kCannotWrite}) {
    shown.insert(std::string(code));
  }
  for (const codes::CodeMeaning& known : codes::kDataCodes) {
    CAPTURE(known.code);
    CHECK(shown.contains(std::string(known.code)));
  }
}
