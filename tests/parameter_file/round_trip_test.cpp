// Reading and writing: canonical text, numbers, texts, what cannot be written.

#include <doctest/doctest.h>

#include <limits>

#include "corpus.hpp"
#include "parameter_file/number_text.hpp"

using namespace gibbsteel;

namespace {

std::string written_error(const ParameterSet& set) {
  try {
    write_parameters(set);
  } catch (const DataError& error) {
    return error.what();
  }
  return "";
}

}  // namespace

TEST_CASE("good files are accepted; those in canonical form are written unchanged") {
  for (const auto& file : corpus::files_of("good")) {
    CAPTURE(file.filename().string());
    const std::string text = corpus::content_of(file);
    const SharedParameters set = load_parameters(file);
    CHECK(write_parameters(*set) == text);
    CHECK(*parse_parameters(text, file.filename().string()) == *set);
  }
}

TEST_CASE("layout, order of keys and a byte order mark do not matter") {
  const SharedParameters small = load_parameters(corpus::folder("good") / "small.json");
  const std::string text = corpus::content_of(corpus::folder("good") / "small.json");
  std::string tight;  // none of the texts in the file holds two blanks or a line break
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool indent = text[i] == '\n' || (text[i] == ' ' && text[i - 1] == ' ') ||
                        (text[i] == ' ' && text[i - 1] == '\n');
    if (!indent) tight += text[i];
  }
  CHECK(*parse_parameters(tight, "small.json") == *small);
  CHECK(*parse_parameters("\xEF\xBB\xBF" + text, "small.json") == *small);
  const std::string moved = corpus::small_with(
      R"("role": "carbide",
      "lattice": "orthorhombic",)",
      R"("lattice": "orthorhombic", "role": "carbide",)");
  CHECK(*parse_parameters(moved, "small.json") == *small);
}

TEST_CASE("numbers are written in the shortest form that reads back") {
  using parameter_file::number_text;
  CHECK(number_text(0.0) == "0");
  CHECK(number_text(-0.0) == "0");
  CHECK(number_text(3.0) == "3");
  CHECK(number_text(-264300000.0) == "-264300000");
  CHECK(number_text(2.29603e+31) == "2.29603e+31");
  CHECK(number_text(-5.8927e-08) == "-5.8927e-08");
  CHECK(number_text(0.0001) == "0.0001");
  CHECK(number_text(0.1 + 0.2) == "0.30000000000000004");
  CHECK(number_text(1e15) == "1e+15");
  for (const double value :
       {1.0 / 3.0, 298.15, 1e-300, 123456789.123456789,
        std::numeric_limits<double>::max(), std::numeric_limits<double>::min()}) {
    CHECK(std::strtod(number_text(value).c_str(), nullptr) == value);
  }
}

TEST_CASE("texts with quotes, control characters and other alphabets survive") {
  ParameterSet set = *load_parameters(corpus::folder("good") / "graphite_only.json");
  set.sources[0].citation = "\"a\" \\ b\tc\nd\x01 \xC3\xA9 \xE9\x8B\xBC";
  const std::string text = write_parameters(set);
  const SharedParameters again = parse_parameters(text, "x.json");
  CHECK(again->sources[0].citation == set.sources[0].citation);
  CHECK(write_parameters(*again) == text);
}

TEST_CASE("what JSON cannot hold is not written") {
  ParameterSet set = *load_parameters(corpus::folder("good") / "small.json");
  set.elements[0].molar_mass = std::numeric_limits<double>::quiet_NaN();
  CHECK(written_error(set) ==
        "[gibbsteel.data.117] parameter set: holds a number that is not finite; give "
        "finite numbers only");
  set.elements[0].molar_mass = 55.845;
  set.reference_state = "\xFF";
  CHECK(
      written_error(set) ==
      "[gibbsteel.data.117] parameter set: holds a text that is not UTF-8; give every "
      "text as UTF-8");
}

TEST_CASE("the content hash tells files apart and is stable") {
  const ParameterSet set = *load_parameters(corpus::folder("good") / "small.json");
  ParameterSet other = set;
  CHECK(content_hash(set).size() == 16);
  CHECK(content_hash(other) == content_hash(set));
  other.elements[0].molar_mass = 55.846;
  CHECK(content_hash(other) != content_hash(set));
  // The name of the file is not content.
  other = set;
  other.files[0].name = "renamed.json";
  CHECK(content_hash(other) == content_hash(set));
}

TEST_CASE("the page of sources names every number and says where none is stated") {
  const std::string page =
      sources_page(*load_parameters(corpus::folder("good") / "small.json"));
  const std::filesystem::path stored = corpus::folder("good") / "small.sources.md";
  if (corpus::regenerating()) std::ofstream(stored, std::ios::binary) << page;
  CHECK(page == corpus::content_of(stored));
}
