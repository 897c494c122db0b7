/// The warning where carbon is more active than in graphite.

#include <doctest/doctest.h>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

State soak(const NamedValues& weight_percent, double celsius,
           const SoakOptions& options = {}) {
  return Steel(weight_percent).soak(Temperature::celsius(celsius), options);
}

std::string graphite(const State& state) {
  for (const Warning& warning : state.warnings)
    if (warning.code == "gibbsteel.warning.359") return warning.text;
  return "";
}

}  // namespace

TEST_CASE("359: graphite may form in a steel rich in silicon") {
  const NamedValues o6{{"C", 1.45}, {"Si", 1.0}, {"Mn", 0.8}, {"Mo", 0.25}};
  CHECK(graphite(soak(o6, 800)) ==
        "Carbon activity 1.17 with 1 wt% Si: graphite may form in place of cementite, "
        "as in graphitic tool steels. It was not allowed here.");
  SoakOptions allowed;
  allowed.graphite = true;
  CHECK(graphite(soak(o6, 800, allowed)).empty());
  NamedValues lean = o6;
  lean.set("Si", 0.7);
  CHECK(soak(lean, 740).carbon_activity > 1.0);
  CHECK(graphite(soak(lean, 740)).empty());
  CHECK(graphite(soak({{"C", 0.6}, {"Si", 2.0}}, 850)).empty());
}
