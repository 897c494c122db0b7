/// Solidus and liquidus. What the layer with liquid says is not tested here, only that
/// the answer is that of soaks, and how it is told.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

using Names = std::vector<std::string>;

TemperatureRange range(double low, double high) {
  return {Temperature::celsius(low), Temperature::celsius(high)};
}

Steel steel_of(const NamedValues& weight_percent, std::string name = "heat") {
  return Steel(weight_percent, {std::move(name), with_liquid(), false});
}

const NamedValues kHighSpeed{
    {"C", 0.9}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};

/// Percent of the liquid so many kelvin above a temperature.
double liquid(const Steel& steel, Temperature t, double above) {
  const State state = steel.soak(Temperature::kelvin(t.in_kelvin() + above));
  REQUIRE(state.usable());
  return state.volume_percent_of("liquid");
}

std::string degrees(const std::optional<Temperature>& t) {
  return internal::degrees(t.value());
}

}  // namespace

TEST_CASE("soaks on both sides of solidus and liquidus have their phases") {
  const Steel steel = steel_of(kHighSpeed);
  const auto found = melting_range(steel, melting_search_range(*with_liquid()));
  CHECK(found.status == MeltingStatus::found);
  REQUIRE(found.solidus);
  REQUIRE(found.liquidus);
  CHECK(liquid(steel, *found.solidus, -0.02) == 0.0);
  CHECK(liquid(steel, *found.solidus, 0.02) > 0.0);
  CHECK(liquid(steel, *found.liquidus, -0.02) < 100.0);
  CHECK(liquid(steel, *found.liquidus, 0.02) == doctest::Approx(100.0));
  CHECK(found.solids_at_solidus == Names{"austenite", "MC", "M6C"});
  CHECK(found.primary_solids == Names{"ferrite"});
  CHECK(found.at_solidus.volume_percent_of("liquid") < 0.1);
  CHECK(found.at_solidus.volume_percent_of("M6C") > 0.0);
  CHECK(found.at_liquidus.volume_percent_of("ferrite") < 0.1);
  CHECK(found.brief() ==
        "heat, melting, long-hold limit: begins to melt at " + degrees(found.solidus) +
            " +-30 (solidus, out of austenite + MC + M6C), molten above " +
            degrees(found.liquidus) + " +-15 (liquidus, ferrite melts last)");
}

TEST_CASE("pure iron melts at one temperature, and so does a eutectic begin to") {
  const auto iron = melting_range(steel_of({{"Fe", 100.0}}), range(1450, 1550));
  CHECK(iron.status == MeltingStatus::found);
  CHECK(*iron.solidus == *iron.liquidus);
  // 1811 K: Dinsdale, CALPHAD 15 (1991) 317.
  CHECK(std::abs(iron.solidus->in_kelvin() - 1811.0) < 0.1);
  CHECK(iron.primary_solids == Names{"ferrite"});
  const auto white = melting_range(steel_of({{"C", 3.0}}), range(1000, 1550));
  CHECK(white.solids_at_solidus == Names{"austenite", "M3C"});
  CHECK(white.at_solidus.volume_percent_of("M3C") == 0.0);
  CHECK(white.primary_solids == Names{"austenite"});
}

TEST_CASE("what a range that begins or ends within the melting range can tell") {
  const Steel steel = steel_of({{"C", 0.8}});
  const auto all = melting_range(steel, range(1000, 1550));
  const double from = all.solidus.value().in_celsius(),
               to = all.liquidus.value().in_celsius(), half = 0.5 * (from + to);
  const auto between = [&](double low, double high) {
    return melting_range(steel, range(low, high));
  };
  const auto first = between(from - 20.0, half);
  CHECK(first.status == MeltingStatus::solidus_only);
  CHECK_FALSE(first.liquidus);
  CHECK(std::abs(first.solidus->in_celsius() - from) < 0.02);
  CHECK(first.text ==
        "begins to melt at " + degrees(first.solidus) +
            " +-30 (solidus, out of austenite), not yet molten at the high "
            "end of the range, " +
            degrees(first.range.high));
  const auto second = between(half, to + 20.0);
  CHECK(second.status == MeltingStatus::liquidus_only);
  CHECK_FALSE(second.solidus);
  CHECK_FALSE(second.at_solidus.usable());
  CHECK(second.text == "partly molten already at the low end of the range, " +
                           degrees(second.range.low) + "; molten above " +
                           degrees(second.liquidus) +
                           " +-15 (liquidus, austenite melts last)");
  CHECK(between(half - 1.0, half + 1.0).status == MeltingStatus::partly_molten);
  CHECK(between(to + 1.0, to + 20.0).status == MeltingStatus::molten);
}

TEST_CASE("no liquid in the range, in the file, among the phases that may form") {
  const Steel steel = steel_of({{"C", 0.8}});
  CHECK(melting_range(steel, range(1000, 1200)).brief() ==
        "heat, melting, long-hold limit: no liquid forms in the range, 1000 to 1200 C");
  SoakOptions options;
  options.suppressed = {"liquid"};
  const auto forbidden = melting_range(steel, range(1000, 1550), options);
  CHECK(forbidden.status == MeltingStatus::no_liquid);
  CHECK(forbidden.text == "liquid was not allowed to form: leave it among the phases");
  const Steel shipped({{"C", 0.8}}, {"heat", {}, false});
  const auto lacks = melting_range(shipped, range(1000, 1250));
  CHECK(lacks.status == MeltingStatus::no_liquid);
  CHECK(lacks.fields.empty());
  CHECK(lacks.full().rfind("heat, melting, long-hold limit: the parameter file has no "
                           "liquid: lay\n  layers/liquid.json on it, in Python\n  "
                           "steel.with_parameters(default_parameters(\"liquid\"))\n"
                           "analysis, wt%: 0.8C, balance Fe\n"
                           "parameters: ",
                           0) == 0);
}

TEST_CASE("of a search that was stopped only what is sure is told") {
  const Steel steel = steel_of({{"C", 0.8}});
  const auto stop_after = [&](std::size_t most) {
    SearchOptions search;
    search.progress = [most](std::size_t done) { return done < most; };
    return melting_range(steel, range(1300, 1550), {}, search);
  };
  const auto early = stop_after(3);
  CHECK(early.status == MeltingStatus::not_known);
  CHECK(early.text == "part of the range is not known");
  const auto late = stop_after(phase_changes(steel, range(1300, 1550)).soaks - 5);
  CHECK(late.status == MeltingStatus::not_known);
  REQUIRE(late.solidus);
  CHECK(late.text == "part of the range is not known; begins to melt at " +
                         degrees(late.solidus) + " +-30 (solidus, out of austenite)");
}

namespace {

/// Phase changes of a steel whose field `i` has a gap of that width [K] in its middle.
PhaseChanges with_gap(PhaseChanges changes, std::size_t i, double width) {
  PhaseField upper = changes.fields[i];
  const double middle = 0.5 * (upper.low.in_kelvin() + upper.high.in_kelvin());
  PhaseField& lower = changes.fields[i];
  lower.high = Temperature::kelvin(middle - 0.5 * width);
  upper.low = Temperature::kelvin(middle + 0.5 * width);
  lower.high_edge = upper.low_edge = Edge::gap;
  changes.gaps = {{lower.high, upper.low, "made up"}};
  changes.fields.insert(changes.fields.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                        upper);
  return changes;
}

/// The change at the top of field `i` is where nothing is known.
PhaseChanges gap_for_change(PhaseChanges changes, std::size_t i) {
  PhaseField &below = changes.fields[i], &above = changes.fields[i + 1];
  below.high = Temperature::kelvin(below.high.in_kelvin() - 1.0);
  above.low = Temperature::kelvin(above.low.in_kelvin() + 1.0);
  below.high_edge = above.low_edge = Edge::gap;
  changes.gaps = {{below.high, above.low, "made up"}};
  return changes;
}

}  // namespace

TEST_CASE("gaps: harmless where narrow and alike on both sides") {
  const auto changes = phase_changes(steel_of({{"C", 0.8}}), range(1300, 1550));
  const auto whole = melting_range(changes);
  REQUIRE(changes.fields.size() == 3);
  for (const std::size_t field : {0u, 1u, 2u}) {
    const auto narrow = melting_range(with_gap(changes, field, 5.0));
    CHECK(narrow.status == MeltingStatus::found);
    CHECK(narrow.text == whole.text);
  }
  const auto low = melting_range(with_gap(changes, 0, 20.0));
  CHECK(low.status == MeltingStatus::not_known);
  CHECK_FALSE(low.solidus);
  CHECK(low.text.rfind("part of the range is not known, 13", 0) == 0);
  CHECK(low.liquidus == whole.liquidus);
  const auto high = melting_range(with_gap(changes, 2, 20.0));
  CHECK(high.status == MeltingStatus::not_known);
  CHECK_FALSE(high.liquidus);
  CHECK(high.solidus == whole.solidus);
  CHECK_FALSE(melting_range(gap_for_change(changes, 0)).solidus);
  CHECK_FALSE(melting_range(gap_for_change(changes, 1)).liquidus);
}

TEST_CASE("warnings of the ends stand in where solidus or liquidus is not found") {
  const auto codes_of = [](const MeltingRange& found) {
    std::vector<std::string> codes;
    for (const Warning& warning : found.warnings()) codes.push_back(warning.code);
    return codes;
  };
  const Steel rich = steel_of({{"C", 0.8}, {"Cr", 25.0}});
  CHECK(codes_of(melting_range(rich, range(1000, 1100)))[0] == "gibbsteel.warning.302");
  CHECK(codes_of(melting_range(rich, range(1000, 1550)))[0] == "gibbsteel.warning.302");
  CHECK(codes_of(melting_range(steel_of({{"C", 0.8}}), range(1000, 1550))).empty());
}

namespace {

/// "71.00  0.800" of Fe and C.
std::string percents(const State& state, const char* kind) {
  const NamedValues& values = state.at(kind).weight_percent;
  return internal::fixed(values["Fe"], 2) + "  " + internal::fixed(values["C"], 3);
}

std::string title_and_edition(const FileRecord& file) {
  return file.title + " (edition " + file.edition + ")";
}

const char* const kRest =
    "Last digits are for comparing heats, not accuracy.\n\n"
    "Of the mean composition: carbide streaks of a bar, segregated places of a\n"
    "  casting, and steels with P, S or B, begin to melt lower (incipient melting);\n"
    "  places with 20 % more carbon and alloy by up to 60 C.\n"
    "Long-hold limit (true equilibrium): a shop soak of minutes leaves more carbide\n"
    "and less carbon in the matrix. Before hardening real parts try coupons and\n"
    "follow the steel maker's data. Hot salt, oil, cryogens and furnaces injure:\n"
    "local codes and licensed practice come first.\n";

}  // namespace

TEST_CASE("as text") {
  const auto found = melting_range(steel_of({{"C", 0.8}}), range(1300, 1550));
  const std::string first = degrees(found.solidus), last = degrees(found.liquidus);
  const auto& files = with_liquid()->files;
  CHECK(
      found.full() ==
      "heat, melting, long-hold limit: begins to melt at " + first +
          " +-30 (solidus, out of\n  austenite), molten above " + last +
          " +-15 (liquidus, austenite melts last)\nanalysis, wt%: 0.8C, balance Fe\n" +
          internal::wrapped("parameters: " + title_and_edition(files.front()) + " + " +
                                title_and_edition(files.back()),
                            78, 2) +
          "\nphases present\n  austenite           1300 to " + first +
          "\n  austenite + liquid  " + first.substr(0, 4) + " to " + last +
          "\n  liquid              " + last.substr(0, 4) +
          " to 1550 C\n\nweight percent in     Fe      C\nfirst liquid       " +
          percents(found.at_solidus, "liquid") + "\nlast austenite     " +
          percents(found.at_liquidus, "austenite") + "\n" + kRest);
  CHECK(found.warnings().empty());
}

TEST_CASE("the range that is searched by itself ends where the file does") {
  const TemperatureRange hot = melting_search_range(*with_liquid());
  CHECK(hot.low.in_celsius() == doctest::Approx(1000.0));
  CHECK(hot.high.in_kelvin() == with_liquid()->highest_temperature);
  ParameterSet cool = *with_liquid();
  cool.highest_temperature = 1200.0;
  CHECK(melting_search_range(cool).low.in_kelvin() == cool.lowest_temperature);
}

TEST_CASE("wrong arguments are named whether or not the file has a liquid") {
  for (const SharedParameters& set : {default_parameters(), with_liquid()}) {
    const Steel steel({{"C", 0.8}}, {"", set, false});
    CHECK_THROWS_WITH_AS(
        melting_range(steel, range(1200, 1100)),
        "[gibbsteel.input.250] range: goes from 1200.0 C to 1100.0 C; give the lower "
        "temperature first",
        InputError);
    SoakOptions options;
    options.suppressed = {"M7C"};
    CHECK_THROWS_AS(melting_range(steel, range(1000, 1200), options), InputError);
  }
}
