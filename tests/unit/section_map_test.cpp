// Section maps as users call them: input, text, equality, stopping.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/section_map.hpp"

using namespace gibbsteel;

namespace {

SectionOptions coarse() {
  SectionOptions options;
  options.columns = options.rows = 4;
  options.temperature_tolerance = 0.5;
  options.percent_tolerance = 0.005;
  return options;
}

const TemperatureRange kRange{Temperature::celsius(700), Temperature::celsius(900)};

SectionMap iron_carbon(const SectionOptions& options) {
  return section_map(Steel({{"C", 0.6}}, {"bar 3", nullptr, false}), {"C", 0.0, 1.2},
                     kRange, {}, options);
}

std::string message(const SweptElement& x, const TemperatureRange& y,
                    const SectionOptions& options) {
  try {
    section_map(Steel({{"C", 0.6}}), x, y, {}, options);
  } catch (const InputError& error) {
    return error.what();
  }
  return "no error";
}

}  // namespace

TEST_CASE("every problem of a section map is named at once") {
  SectionOptions options;
  options.percent_tolerance = 0.0;
  options.rows = 1;
  const TemperatureRange falling{Temperature::celsius(900), Temperature::celsius(700)};
  CHECK(message({"Fe", 2.0, 1.0}, falling, options) ==
        "[gibbsteel.input.282] options.percent_tolerance: is 0; give 0.00001 to 5 wt%\n"
        "[gibbsteel.input.282] options.rows: is 1; give 2 to 200\n"
        "[gibbsteel.input.280] x axis: goes from 2 to 1 wt%; give two weight percents "
        "from 0 upwards, the lower one first\n"
        "[gibbsteel.input.281] x axis: is that of Fe; name another element: Fe is the "
        "balance\n"
        "[gibbsteel.input.250] range: goes from 900.0 C to 700.0 C; give the lower "
        "temperature first");
}

TEST_CASE("an axis that is too short to resolve is refused") {
  const TemperatureRange short_range{Temperature::celsius(800),
                                     Temperature::celsius(800.005)};
  CHECK(
      message({"C", 0.8, 0.80001}, short_range, coarse()) ==
      "[gibbsteel.input.282] x axis: is 1e-05 wt% from end to end; give 0.0001 wt% "
      "or more\n"
      "[gibbsteel.input.282] y axis: is 0.005 K from end to end; give 0.01 K or more");
}

TEST_CASE("a map narrower than the tolerances asked for is resolved more finely") {
  const Steel bar({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}});
  const auto plane = [&](double high, double from, double to) {
    return section_map(bar, {"C", 0.8, high},
                       {Temperature::celsius(from), Temperature::celsius(to)});
  };
  const auto low = plane(0.9, 800.0, 800.01);
  CHECK(low.y_tolerance == doctest::Approx(0.001));
  CHECK(low.x_tolerance == 0.001);
  REQUIRE(low.fields.size() == 1);
  CHECK(low.fields[0].label == "austenite + M3C");
  CHECK(low.fields[0].area_share == doctest::Approx(1.0));
  const auto narrow = plane(0.8001, 700.0, 900.0);
  CHECK(narrow.x_tolerance == doctest::Approx(1e-5));
  CHECK(narrow.y_tolerance == 0.1);
  REQUIRE(narrow.fields.size() == 4);
  double sum = 0.0;
  for (const SectionField& field : narrow.fields) sum += field.area_share;
  CHECK(sum == doctest::Approx(1.0));
  CHECK(narrow.boundaries.size() == 3);
  const SectionField* field = narrow.field_at({0.80005, 850.0});
  REQUIRE(field);
  const State soak =
      bar.changed({{"C", 0.80005}}, "bar").soak(Temperature::celsius(850));
  CHECK((field->label == "austenite") == (soak.carbide_volume_percent == 0.0));
}

TEST_CASE("two axes of one element are refused") {
  const SweptElement carbon{"C", 0.0, 1.0};
  CHECK_THROWS_WITH_AS(
      section_map(Steel({{"C", 0.6}}), carbon, carbon, Temperature::celsius(1000)),
      "[gibbsteel.input.281] y axis: is that of C, as the x axis is; name two elements",
      InputError);
}

TEST_CASE("a composition that bound tramp elements bend is refused") {
  const Steel steel({{"C", 0.6}, {"V", 0.1}, {"N", 0.02}}, {"", nullptr, true});
  CHECK_THROWS_WITH_AS(section_map(steel, {"V", 0.0, 0.3}, kRange, {}, coarse()),
                       "[gibbsteel.input.283] steel: binds tramp elements so that its "
                       "composition is not "
                       "linear over the map; narrow the ranges, or use a steel without "
                       "bind_tramp_elements",
                       InputError);
}

TEST_CASE("fields cover the map, and each label point lies in its field") {
  const auto map = iron_carbon(coarse());
  CHECK(map.complete());
  CHECK(map.brief() ==
        "bar 3, 0.00 to 1.20 wt% C against 700 to 900 C: 5 fields, 6 boundaries, "
        "long-hold limit");
  double sum = 0.0;
  for (const SectionField& field : map.fields) {
    sum += field.area_share;
    const SectionField* found = map.field_at(field.label_point);
    REQUIRE(found);
    CHECK(found->label == field.label);
  }
  CHECK(sum == doctest::Approx(1.0).epsilon(1e-4));
  CHECK(map.field_at({-0.1, 800.0}) == nullptr);
  CHECK(map.full().find("long-hold limit") != std::string::npos);
  CHECK(map.full().find("local codes") != std::string::npos);
}

TEST_CASE("a eutectoid is one node whatever the tolerances of the axes") {
  for (const double kelvin : {0.05, 0.5, 2.0}) {
    CAPTURE(kelvin);
    SectionOptions options = coarse();
    options.temperature_tolerance = kelvin;
    options.percent_tolerance = 0.001;
    const auto map =
        section_map(Steel({{"C", 0.6}}), {"C", 0.4, 1.2}, kRange, {}, options);
    CHECK(map.nodes.size() == 1);
    CHECK(map.fields.size() == 4);
    CHECK(map.boundaries.size() == 4);
  }
}

TEST_CASE("a map over two elements holds the fields of soaks inside it") {
  const Steel steel({{"C", 1.0}, {"Cr", 5.0}});
  const auto map =
      section_map(steel, SweptElement{"C", 0.6, 1.4}, SweptElement{"Cr", 2.0, 8.0},
                  Temperature::celsius(1000), {}, coarse());
  CHECK(map.complete());
  REQUIRE(map.temperature.has_value());
  CHECK(map.temperature->in_celsius() == doctest::Approx(1000.0));
  const SectionField* field = map.field_at({0.7, 3.0});
  REQUIRE(field);
  CHECK(field->label == "austenite");
  field = map.field_at({1.3, 7.0});
  REQUIRE(field);
  CHECK(field->label == "austenite + M7C3");
}

TEST_CASE("the map does not depend on the number of threads") {
  auto options = coarse();
  options.threads = 1;
  const auto one = iron_carbon(options);
  options.threads = 3;
  const auto three = iron_carbon(options);
  CHECK(one.boundaries == three.boundaries);
  CHECK(one.fields == three.fields);
  CHECK(one.nodes == three.nodes);
  CHECK(one.soaks == three.soaks);
}

TEST_CASE("a search that is stopped keeps the part done and marks the rest") {
  auto options = coarse();
  int calls = 0;
  options.progress = [&](std::size_t) { return ++calls < 3; };
  const auto map = iron_carbon(options);
  CHECK(map.stopped == "cancelled");
  CHECK(!map.complete());
  REQUIRE(!map.gaps.empty());
  CHECK(map.gaps[0].reason == "not searched: cancelled");
  CHECK(map.brief().find("NOT COMPLETE") != std::string::npos);
  REQUIRE(!map.warnings.empty());
  CHECK(map.warnings.back().code == "gibbsteel.warning.355");
}
