/// A steel without carbon says so.

#include <doctest/doctest.h>

#include <algorithm>

#include "gibbsteel/gibbsteel.hpp"
#include "warned_soak.hpp"

using namespace gibbsteel;

TEST_CASE("no carbon is told of an alloy, not of iron or of a steel with carbon") {
  const char* const asks = "The steel has no carbon: was it left out?";
  CHECK(texts(soak({{"Cr", 4.5}, {"Mo", 2.75}}, 1120), "319") == asks);
  CHECK(texts(soak({{"C", 0.0}, {"Cr", 4.5}}, 1120), "319") == asks);
  CHECK(texts(soak({{"K", 0.56}, {"Cr", 4.5}}, 1120), "319") ==
        "The steel has no carbon: was K typed for C?");
  CHECK(texts(soak({{"Fe", 100.0}}, 1120), "319").empty());
  CHECK(texts(soak({{"C", 0.01}, {"Cr", 4.5}}, 1120), "319").empty());
}

TEST_CASE("where carbon is swept, none of it is meant") {
  const Steel steel({{"C", 0.5}, {"Cr", 4.5}});
  const auto tells = [](const auto& result) {
    return result.full().find("gibbsteel.warning.319") != std::string::npos;
  };
  const auto grid = [&](const char* element) {
    return soak_grid(steel, SweptVariable::element(element, {0.0, 0.5}),
                     SweptVariable::temperature({Temperature::celsius(1000)}));
  };
  CHECK(!tells(grid("C")));
  CHECK(grid("C").warnings_of(quantities::carbon_activity()).empty());
  const auto map = section_map(steel, {"C", 0.0, 0.9},
                               {Temperature::celsius(900), Temperature::celsius(1000)});
  CHECK(!tells(map));
  const auto no_carbon = [&](const Warning& w) {
    return w.code == "gibbsteel.warning.319";
  };
  CHECK(std::none_of(map.warnings.begin(), map.warnings.end(), no_carbon));
  const Steel without({{"Cr", 4.5}});
  CHECK(tells(soak_grid(without, SweptVariable::element("Cr", {4.0, 5.0}),
                        SweptVariable::temperature({Temperature::celsius(1000)}))));
}

TEST_CASE("the estimates of a steel without carbon carry it on") {
  const State state = soak({{"Ni", 4.0}}, 900);
  const auto warnings = hardening(state).warnings;
  const auto known = [](const Warning& w) { return w.code == "gibbsteel.warning.319"; };
  CHECK(std::count_if(warnings.begin(), warnings.end(), known) == 1);
}
