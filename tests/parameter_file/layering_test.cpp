// One file laid on another: what is added, what is replaced, and that every number
// keeps the name of the file it came from. The numbers are those of
// layers/titanium.json.

#include <doctest/doctest.h>

#include "corpus.hpp"
#include "gibbsteel/assemblage.hpp"
#include "gibbsteel/phase_model.hpp"

using namespace gibbsteel;

namespace {

SharedParameters small() {
  return load_parameters(corpus::folder("good") / "small.json");
}

SharedParameters layered() {
  return load_parameters(corpus::folder("layers") / "titanium.json", small());
}

const Term& term_on(const Phase& phase, const std::vector<std::vector<std::string>>& on,
                    std::optional<int> order = {}) {
  for (const Term& term : phase.energy) {
    if (term.on == on && term.order == order) return term;
  }
  FAIL("no such term");
  return phase.energy.front();
}

}  // namespace

TEST_CASE("a layer adds elements, curves, sources, phases and constituents") {
  const SharedParameters set = layered();
  CHECK(set->find_element("Ti")->file == "titanium.json");
  CHECK(set->find_element("Fe")->file == "small.json");
  CHECK(set->find_curve("titanium")->provenance.file == "titanium.json");
  CHECK(set->find_source("added")->file == "titanium.json");
  CHECK(set->find_phase("TiC2 of nobody")->file == "titanium.json");
  CHECK(set->find_phase("austenite")->file == "small.json");
  CHECK(set->find_phase("austenite")->sublattices[0].constituents ==
        std::vector<std::string>{"Cr", "Fe", "Ti"});
  CHECK(set->find_phase("austenite")->sublattices[1].constituents ==
        std::vector<std::string>{"C", "vacancy"});
  CHECK(set->solidus_bounds.size() == 2);
  CHECK(set->solidus_bounds[1].provenance.file == "titanium.json");
}

TEST_CASE("a layer replaces a term whatever the order of the names in a mix") {
  const SharedParameters set = layered();
  const Phase& austenite = *set->find_phase("austenite");
  CHECK(austenite.energy.size() == small()->find_phase("austenite")->energy.size() + 3);
  const Term& replaced = term_on(austenite, {{"Fe", "Cr"}, {"vacancy"}}, 1);
  CHECK(replaced.value.terms[0].coefficient == -99.0);
  CHECK(replaced.provenance.file == "titanium.json");
  const Term& kept = term_on(austenite, {{"Cr", "Fe"}, {"vacancy"}}, 0);
  CHECK(kept.value.terms[0].coefficient == 10833.0);
  CHECK(kept.provenance.file == "small.json");
}

TEST_CASE("a layer adds to what a second occurrence counts, and that is written") {
  const SharedParameters set =
      load_parameters(corpus::folder("layers") / "nitrogen.json", small());
  const auto counted = [](const ParameterSet& of) {
    return of.find_phase("austenite")->second_occurrence->constituents;
  };
  CHECK(counted(*small()) == std::vector<std::string>{"C"});
  CHECK(counted(*set) == std::vector<std::string>{"C", "N"});
  const std::string text = write_parameters(*set);
  CHECK(text.find("\"constituent\": [\"C\", \"N\"]") != std::string::npos);
  const SharedParameters again = parse_parameters(text, "again.json");
  CHECK(counted(*again) == counted(*set));
  CHECK(write_parameters(*again) == text);
}

TEST_CASE("carbon and nitrogen together make MC of austenite") {
  const SharedParameters set =
      load_parameters(corpus::folder("layers") / "nitrogen.json", small());
  const Phase& phase = *set->find_phase("austenite");
  const std::vector<std::string> active{"Cr", "Fe", "C", "N"};
  const PhaseModel model(*set, phase, active);
  const auto kind = [&](double carbon, double nitrogen) {
    std::vector<double> y;
    for (const auto& c : model.constituents())
      y.push_back(c.name == "C"         ? carbon
                  : c.name == "N"       ? nitrogen
                  : c.name == "vacancy" ? 1.0 - carbon - nitrogen
                                        : 0.5);
    return kind_of(phase, model, y);
  };
  CHECK(kind(0.3, 0.1) == "austenite");
  CHECK(kind(0.3, 0.3) == "MC");
  CHECK(kind(0.0, 0.9) == "MC");
  CHECK(kind(0.5, 0.0) == "austenite");
}

TEST_CASE("a layer adds and replaces volumes") {
  const SharedParameters set = layered();
  const VolumeData& volume = *set->find_phase("austenite")->room_volume;
  CHECK(volume.at == 298.15);
  CHECK(volume.note == "a note on volumes");
  REQUIRE(volume.terms.size() == 6);
  CHECK(volume.terms[1].on == std::vector<std::string>{"Fe", "C"});
  CHECK(volume.terms[1].cm3_per_mol == 11.7);
  CHECK(volume.terms[1].provenance.file == "titanium.json");
  CHECK(volume.terms[0].provenance.file == "small.json");
  CHECK(volume.terms[0].provenance.source == "");
}

TEST_CASE("a layer replaces validity ranges and keeps the others") {
  const SharedParameters set = layered();
  CHECK(set->find_range("C")->high == 2.0);
  CHECK(set->find_range("Cr")->high == 3.0);
  CHECK(set->find_range("Ti")->high == 1.0);
  CHECK(set->lowest_temperature == 900.0);
}

TEST_CASE("the set knows its files and leaves the set below alone") {
  const SharedParameters below = small();
  const ParameterSet copy = *below;
  const SharedParameters set =
      load_parameters(corpus::folder("layers") / "titanium.json", below);
  CHECK(*below == copy);
  REQUIRE(set->files.size() == 2);
  CHECK(set->files[0] == copy.files[0]);
  CHECK(set->files[1] ==
        FileRecord{"titanium.json", "A layer for tests", "2", "CC0-1.0"});
  CHECK(set->title() ==
        "A small file for tests (edition 1) + A layer for tests (edition 2)");
  CHECK(content_hash(*set) != content_hash(copy));
}

TEST_CASE("a layer named like a file below is told apart") {
  const std::string text =
      corpus::content_of(corpus::folder("layers") / "titanium.json");
  const SharedParameters set = parse_parameters(text, "small.json", small());
  CHECK(set->files[1].name == "small.json (layer 1)");
  CHECK(set->find_element("Ti")->file == "small.json (layer 1)");
}

TEST_CASE("a layered set is written as one file that reads back to the same numbers") {
  const SharedParameters set = layered();
  const std::string text = write_parameters(*set);
  const SharedParameters again = parse_parameters(text, "merged.json");
  CHECK(write_parameters(*again) == text);
  CHECK(again->files[0].title == "A small file for tests + A layer for tests");
  CHECK(again->files[0].edition == "1 + 2");
  CHECK(again->files[0].licence == "CC0-1.0");
  CHECK(again->find_phase("austenite")->energy.size() ==
        set->find_phase("austenite")->energy.size());
}

TEST_CASE("a layer over the shipped file") {
  const std::string layer = R"({
    "format": {"name": "gibbsteel parameter file", "version": 1},
    "title": "One changed number", "edition": "1", "licence": "CC0-1.0",
    "phases": {"graphite": {"energy": [{"on": ["C"], "curves": {"carbon, graphite": 1},
      "terms": {"1": -100}, "source": "estimated", "kind": "estimated"}]}}})";
  const SharedParameters set =
      parse_parameters(layer, "graphite.json", default_parameters());
  const Term& term = set->find_phase("graphite")->energy.at(0);
  CHECK(term.value.terms.at(0).coefficient == -100.0);
  CHECK(term.provenance.file == "graphite.json");
  CHECK(set->find_phase("graphite")->file == "tool_steel.json");
}

TEST_CASE("the layer shown in thermo_data/README.md does what the page says") {
  const std::string page = corpus::content_of(
      std::filesystem::path(GIBBSTEEL_SOURCE_DIR) / "thermo_data" / "README.md");
  const std::size_t begin = page.find("```json\n") + 8;
  const std::string layer = page.substr(begin, page.find("```", begin) - begin);
  const SharedParameters set =
      parse_parameters(layer, "less_vanadium.json", default_parameters());
  const auto energy = [](const ParameterSet& of) {
    for (const Term& term : of.find_phase("M7C3")->energy) {
      if (term.on == std::vector<std::vector<std::string>>{{"V"}, {"C"}}) return term;
    }
    return Term{};
  };
  CHECK(energy(*set).value.curves == energy(*default_parameters()).value.curves);
  CHECK(energy(*set).value.terms.at(0).coefficient -
            energy(*default_parameters()).value.terms.at(0).coefficient ==
        40000.0);
  CHECK(energy(*set).provenance.file == "less_vanadium.json");
  std::string slip = layer;
  slip.replace(slip.find("vanadium, body-centred"), 22, "vanadium, bodycentred");
  const std::string said =
      corpus::complaint(slip, "less_vanadium.json", default_parameters());
  CHECK(said != "");
  CHECK(page.find(said) != std::string::npos);
}
