// Standard deviations and correlations of a parameter file: read, named, layered,
// listed. The numbers are those of good/uncertain.json.

#include <doctest/doctest.h>

#include "corpus.hpp"
#include "first_edition.hpp"
#include "parameter_file/uncertain_numbers.hpp"

using namespace gibbsteel;

namespace {

SharedParameters uncertain() {
  return load_parameters(corpus::folder("good") / "uncertain.json");
}

/// A layer with these entries of `energy` of austenite and, after them, more text.
SharedParameters layered(const std::string& energy, const std::string& more = "") {
  return parse_parameters(
      R"({"format": {"name": "gibbsteel parameter file", "version": 1}, "title": "l",
          "edition": "1", "licence": "CC0-1.0",
          "phases": {"austenite": {"energy": [)" +
          energy + "]}}" + more + "}",
      "layer.json", uncertain());
}

const std::string kIronCarbide =
    R"({"on": ["Fe", "C"], "terms": {"1": 77000, "T": -16}, "source": "invented",
        "kind": "estimated")";

const CoefficientName kConstant{
    "austenite", PhaseProperty::energy, {{"Fe"}, {"C"}}, {}, {0, false}};
const CoefficientName kSlope{
    "austenite", PhaseProperty::energy, {{"Fe"}, {"C"}}, {}, {1, false}};

}  // namespace

TEST_CASE("standard deviations stand with their numbers, in the order of the file") {
  const SharedParameters set = uncertain();
  CHECK(set->find_coefficient(kConstant)->standard_deviation == 900.0);
  CHECK(set->find_coefficient(kSlope)->standard_deviation == 0.6);
  std::string places;
  for (const auto& number : parameter_file::uncertain_numbers(*set))
    places += number.place + "\n";
  CHECK(places ==
        "/phases/austenite/energy/2/terms/1\n"
        "/phases/austenite/energy/2/terms/T\n"
        "/phases/austenite/energy/4/terms/T\n"
        "/phases/austenite/curie_temperature/0/terms/1\n"
        "/phases/austenite/magnetic_moment/0/terms/1\n"
        "/phases/austenite/room_volume/terms/1/cm3_per_mol\n");
  CHECK(parameter_file::uncertain_numbers(*first_edition()).empty());
  // The calibrated numbers of the file that ships.
  CHECK(parameter_file::uncertain_numbers(*default_parameters()).size() == 31);
}

TEST_CASE("the matrix of correlations: stated ones, 1 on the diagonal, else 0") {
  const SharedParameters set = uncertain();
  const auto matrix =
      parameter_file::correlations_of(*set, parameter_file::uncertain_numbers(*set));
  REQUIRE(matrix.rows() == 6);
  CHECK(matrix.isApprox(matrix.transpose()));
  CHECK(matrix.diagonal().isOnes());
  CHECK(matrix(0, 1) == -0.9);
  CHECK(matrix(2, 3) == 0.5);
  CHECK(matrix.cwiseAbs().sum() == doctest::Approx(6.0 + 2.0 * (0.9 + 0.5)));
}

TEST_CASE("other values go where the numbers came from") {
  const SharedParameters set = uncertain();
  const ParameterSet other = parameter_file::with_values(*set, {1, 2, 3, 4, 5, 6});
  CHECK(other.find_coefficient(kConstant)->coefficient == 1.0);
  CHECK(other.find_coefficient(kSlope)->coefficient == 2.0);
  CHECK(other.phases[0].energy[4].value.terms[1].coefficient == 3.0);
  CHECK(other.phases[0].energy[4].value.terms[0].coefficient == 10833.0);
  CHECK(other.phases[0].curie_temperature[0].value.terms[0].coefficient == 4.0);
  CHECK(other.phases[0].room_volume->terms[1].cm3_per_mol == 6.0);
}

TEST_CASE("a replaced term takes its standard deviations and correlations with it") {
  const SharedParameters set = layered(kIronCarbide + "}");
  CHECK(set->find_coefficient(kConstant)->coefficient == 77000.0);
  CHECK(set->find_coefficient(kConstant)->standard_deviation == 0.0);
  REQUIRE(set->correlations.size() == 1);
  CHECK(set->correlations[0].coefficient == 0.5);
}

TEST_CASE("a layer states its own, and a pair given again replaces the one below") {
  const SharedParameters set =
      layered(kIronCarbide + R"(, "standard_deviations": {"1": 500, "T": 0.3}})",
              R"(, "correlations": [
            {"between": [
               {"phase": "austenite", "property": "energy", "on": ["Fe", "C"],
                "power": "T"},
               {"phase": "austenite", "property": "energy", "on": ["Fe", "C"],
                "power": "1"}],
             "coefficient": -0.7, "source": "invented", "kind": "estimated"},
            {"between": [
               {"phase": "austenite", "property": "curie_temperature",
                "on": ["Fe", "vacancy"], "power": "1"},
               {"phase": "austenite", "property": "energy",
                "on": [["Cr", "Fe"], "vacancy"], "order": 0, "power": "T"}],
             "coefficient": 0.4, "source": "invented", "kind": "estimated"}])");
  CHECK(set->find_coefficient(kConstant)->standard_deviation == 500.0);
  REQUIRE(set->correlations.size() == 2);
  CHECK(set->correlations[0].coefficient == -0.7);
  CHECK(set->correlations[1].coefficient == 0.4);
  CHECK(set->correlations[1].provenance.file == "layer.json");
  CHECK(*parse_parameters(write_parameters(*set), "again.json") !=
        *set);  // file names differ
  CHECK(write_parameters(*parse_parameters(write_parameters(*set), "again.json")) ==
        write_parameters(*set));
}

TEST_CASE("the page of sources lists them") {
  const std::string page = sources_page(*uncertain());
  CHECK(page.find("77207 (+- 900) - 15.877 T (+- 0.6)") != std::string::npos);
  CHECK(page.find("11.8 (+- 0.2)") != std::string::npos);
  CHECK(page.find("| austenite, energy on (Fe, C), power 1 | austenite, energy on (Fe, "
                  "C), power T | -0.9 | fitted | estimated | one fit |") !=
        std::string::npos);
  const std::string without =
      sources_page(*load_parameters(corpus::folder("good") / "small.json"));
  CHECK(without.find("(+-") == std::string::npos);
  CHECK(without.find("Correlations") == std::string::npos);
}

TEST_CASE("too many correlations are refused before any work") {
  std::string list;
  for (int i = 0; i < 201; ++i) list += std::string(i ? "," : "") + "{}";
  CHECK_THROWS_WITH_AS(
      layered(kIronCarbide + "}", ", \"correlations\": [" + list + "]"),
      "[gibbsteel.data.103] layer.json: /correlations: has 201 entries; at most 200 "
      "can stand here",
      DataError);
}
