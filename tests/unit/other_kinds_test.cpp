/// Graphite and liquid in tables and lines of text.

#include "internal/other_kinds.hpp"

#include <doctest/doctest.h>

#include "gibbsteel/gibbsteel.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

SoakOptions with_graphite() {
  SoakOptions options;
  options.graphite = true;
  return options;
}

}  // namespace

TEST_CASE("kinds that occur, and those that may form") {
  const Steel steel({{"C", 1.5}, {"Si", 1.4}}, {"bar 9", with_liquid(), false});
  const State cold = steel.soak(Temperature::celsius(800), with_graphite());
  const State hot = steel.soak(Temperature::celsius(1300), with_graphite());
  using Names = std::vector<std::string>;
  CHECK(internal::other_kinds({&hot, &cold}) == Names{"liquid", "graphite"});
  CHECK(internal::other_kinds({}).empty());
  CHECK(internal::others_text(cold) == ", 2.6 vol% graphite");
  CHECK(internal::with_other_kinds({"M3C"}, {&cold}) == Names{"M3C", "graphite"});
  CHECK(internal::other_kind_names(*with_liquid(), cold.suppressed) ==
        Names{"graphite", "liquid"});
  const State usual = steel.soak(Temperature::celsius(800));
  CHECK(internal::other_kind_names(*with_liquid(), usual.suppressed) ==
        Names{"liquid"});
}

TEST_CASE("a twin study shows the graphite of the twin") {
  MatrixTwinOptions options;
  options.soak = with_graphite();
  const std::vector<Temperature> others{Temperature::celsius(700)};
  const TwinStudy study = twin_study(Steel({{"C", 1.5}, {"Si", 1.4}}),
                                     Temperature::celsius(800), others, options);
  REQUIRE(study.others.states.front().volume_percent_of("graphite") > 0.0);
  CHECK(study.full().find("\ntwin at, C  carbide, vol%  graphite  matrix C, wt%\n") !=
        std::string::npos);
}
