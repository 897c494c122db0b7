/// How much is molten, in words: edges of the percentages, files without volumes.

#include <doctest/doctest.h>

#include <algorithm>
#include <memory>

#include "gibbsteel/gibbsteel.hpp"
#include "internal/liquid_share.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

/// The steel melts over some degrees, from 1383 to 1476 C.
const NamedValues kPlain{{"C", 0.8}};

State soak(const SharedParameters& set, double celsius) {
  return Steel(kPlain, {"bar 9", set, false}).soak(Temperature::celsius(celsius));
}

std::string told(const std::vector<Warning>& warnings) {
  for (const Warning& warning : warnings)
    if (warning.code == "gibbsteel.warning.315") return warning.text;
  return "";
}

SharedParameters without_volume_of_liquid() {
  auto set = std::make_shared<ParameterSet>(*with_liquid());
  for (Phase& phase : set->phases)
    if (phase.name == "liquid") phase.room_volume.reset();
  return set;
}

}  // namespace

TEST_CASE("percent of liquid, close to nothing and close to all") {
  CHECK(internal::percent_text({0.04, false, false}) == "less than 0.1 vol%");
  CHECK(internal::percent_text({13.44, false, false}) == "13.4 vol%");
  CHECK(internal::percent_text({99.97, false, false}) == "more than 99.9 vol%");
  CHECK(internal::percent_text({100.0, false, true}) == "100.0 vol%");
}

TEST_CASE("without volumes the liquid counts by mass, apart from those with") {
  const State by_mass = soak(without_volume_of_liquid(), 1430);
  const std::string mass = told(by_mass.warnings);
  CHECK(mass.find(" wt% of the steel is liquid") != std::string::npos);
  const State by_volume = soak(with_liquid(), 1430);
  CHECK(told(by_volume.warnings).find(" vol% of the steel") != std::string::npos);
}

TEST_CASE("a section map shows the melt, and does not warn of it besides") {
  SectionOptions options;
  options.columns = options.rows = 4;
  const auto map = section_map(
      Steel(kPlain, {"bar 9", with_liquid(), false}), {"C", 0.6, 1.0},
      {Temperature::celsius(1300), Temperature::celsius(1500)}, {}, options);
  const auto melts = [](const SectionField& field) {
    const auto& kinds = field.phases;
    return std::find(kinds.begin(), kinds.end(), "liquid") != kinds.end();
  };
  CHECK(std::any_of(map.fields.begin(), map.fields.end(), melts));
  CHECK(told(map.warnings).empty());
}
