// The file that ships with the library.

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

#include "gibbsteel/parameter_file.hpp"

using namespace gibbsteel;

namespace {

const std::string kFolder = std::string(GIBBSTEEL_SOURCE_DIR) + "/thermo_data/";

std::string content_of(const std::string& file) {
  std::ifstream stream(kFolder + file, std::ios::binary);
  REQUIRE(stream.good());
  return {std::istreambuf_iterator<char>(stream), {}};
}

}  // namespace

TEST_CASE("the shipped file is embedded as it is and canonical") {
  const SharedParameters set = default_parameters();
  CHECK(write_parameters(*set) == content_of("tool_steel.json"));
  CHECK(*load_parameters(kFolder + "tool_steel.json") == *set);
  CHECK(default_parameters() == set);  // read once, then shared
}

TEST_CASE("the shipped file holds what the project was given") {
  // Counts of the first parameter set as handed to the project (design, section 5).
  const SharedParameters set = default_parameters();
  CHECK(set->elements.size() == 10);
  CHECK(set->curves.size() == 30);
  CHECK(set->phases.size() == 10);
  std::size_t energies = 0, curie_temperatures = 0, moments = 0, volumes = 0;
  for (const Phase& phase : set->phases) {
    energies += phase.energy.size();
    curie_temperatures += phase.curie_temperature.size();
    moments += phase.magnetic_moment.size();
    volumes += phase.room_volume->terms.size() + phase.hot_volume->terms.size();
  }
  CHECK(energies == 244);  // 241 in the first set; Cr with Si twice, Fe with Ni in M3C
  CHECK(curie_temperatures == 54);  // 53 in the first set; the last of Fe-V
  CHECK(moments == 41);
  CHECK(volumes == 264);
  CHECK(set->find_phase("austenite")->second_occurrence->name == "MC");
  CHECK(set->find_phase("austenite")->second_occurrence->sublattice == 1);
  CHECK(set->title() ==
        "Tool steels: Fe C Cr Mo W V Co Ni Mn Si (edition 2026-11-26.3)");
}

TEST_CASE("earlier editions are kept as they shipped") {
  const std::pair<std::string, std::string> editions[] = {
      {"2026-11-25", "5f1d64709daa53ac"},
      {"2026-11-26", "30945f236e1a5730"},
      {"2026-11-26.2", "792047117bf8ce30"}};
  for (const auto& [edition, hash] : editions) {
    const std::string file = "editions/" + edition + ".json";
    const SharedParameters kept = load_parameters(kFolder + file);
    CHECK(content_hash(*kept) == hash);
    CHECK(write_parameters(*kept) == content_of(file));
    CHECK(kept->title() ==
          "Tool steels: Fe C Cr Mo W V Co Ni Mn Si (edition " + edition + ")");
    CHECK(content_hash(*default_parameters()) != content_hash(*kept));
  }
}

TEST_CASE("the shipped file is the first edition with the calibrated layer on it") {
  const SharedParameters layered =
      load_parameters(kFolder + "layers/carbides.json",
                      load_parameters(kFolder + "editions/2026-11-25.json"));
  // As texts, after what the files say of themselves: title and edition differ.
  const auto body = [](const std::string& text) {
    const std::size_t begin = text.find("\"licence\"");
    REQUIRE(begin != std::string::npos);
    return text.substr(begin);
  };
  CHECK(body(content_of("tool_steel.json")) == body(write_parameters(*layered)));
}

TEST_CASE("the committed page of sources is the generated one") {
  const std::string page = sources_page(*default_parameters());
  // GIBBSTEEL_REGENERATE=1 writes the page instead of comparing it.
  if (std::getenv("GIBBSTEEL_REGENERATE") != nullptr) {
    std::ofstream(kFolder + "SOURCES.md", std::ios::binary) << page;
  }
  CHECK(page == content_of("SOURCES.md"));
}
