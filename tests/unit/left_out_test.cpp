/// Much of an element that the parameter set does not model: warning 318, and what
/// windows and melting ranges say then.

#include <doctest/doctest.h>

#include "gibbsteel/gibbsteel.hpp"
#include "warned_soak.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

const NamedValues kPunch{{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0},
                         {"V", 1.0},  {"Mn", 0.3}, {"Si", 0.3}};

NamedValues with(NamedValues steel, const NamedValues& more) {
  for (const auto& [symbol, percent] : more) steel.set(symbol, percent);
  return steel;
}

std::string told(const NamedValues& more) {
  return texts(soak(with(kPunch, more), 1000), "318");
}

const std::string kMuch =
    "Not modelled, and more than a residual or a micro-addition: ";
const std::string kWithout =
    ". The numbers are those of a steel without, not of this one.";

TemperatureRange range(double low, double high) {
  return {Temperature::celsius(low), Temperature::celsius(high)};
}

bool has_318(const std::vector<Warning>& warnings) {
  for (const Warning& warning : warnings)
    if (warning.code == "gibbsteel.warning.318") return true;
  return false;
}

}  // namespace

TEST_CASE("318: each element from its own bound on, with what it does") {
  CHECK(told({{"B", 2.0}}) ==
        kMuch +
            "B 2 wt% (forms borides, which bind iron, Cr, Mo and W; melts with iron "
            "from 1175 C, with carbon and alloy lower)" +
            kWithout);
  CHECK(told({{"P", 0.3}}) ==
        kMuch +
            "P 0.3 wt% (forms phosphide, and makes grain boundaries brittle; melts "
            "with iron from 1050 C, with carbon and alloy lower)" +
            kWithout);
  CHECK(told({{"S", 0.3}}) ==
        kMuch +
            "S 0.3 wt% (forms iron sulphide, as there is too little Mn to bind it; "
            "melts with iron from 988 C, with carbon and alloy lower)" +
            kWithout);
  CHECK(told({{"S", 0.4}, {"Mn", 1.0}}) ==
        kMuch + "S 0.4 wt% (binds Mn and Cr in sulphide)" + kWithout);
  CHECK(told({{"Cu", 3.0}, {"Al", 2.0}}) ==
        kMuch +
            "Cu 3 wt% (stays in the matrix and lowers martensite start); Al 2 wt% "
            "(stays in the matrix and makes for ferrite)" +
            kWithout);
  CHECK(told({{"Cu", 9.0}}) ==
        kMuch +
            "Cu 9 wt% (stays in the matrix and lowers martensite start; melts with "
            "iron from 1095 C, with carbon and alloy lower)" +
            kWithout);
}

TEST_CASE("318: elements that do not melt with iron, or of which it is not known") {
  CHECK(told({{"Pb", 0.5}, {"Se", 0.4}}) ==
        kMuch +
            "Pb 0.5 wt% (does not dissolve in steel); Se 0.4 wt% (binds Mn in "
            "selenide)" +
            kWithout);
  CHECK(
      told({{"U", 20.0}, {"K", 0.56}}) ==
      kMuch +
          "U 20 wt% (may melt with iron, at a temperature not known here); K 0.56 wt% "
          "(may melt with iron, at a temperature not known here)" +
          kWithout);
  CHECK(told({{"P", 0.06}}) ==
        kMuch + "P 0.06 wt% (forms phosphide, and makes grain boundaries brittle)" +
            kWithout);
}

TEST_CASE("318: sulphur that Mn leaves free, whether MnS is taken out or not") {
  const NamedValues free = with(kPunch, {{"S", 0.3}});  // 0.12 of it is left
  const std::string kFree =
      " wt% (forms iron sulphide, as there is too little Mn to bind it; melts with "
      "iron "
      "from 988 C, with carbon and alloy lower)";
  const Steel bound(free, {"", {}, true});
  const auto window = hardening_window(bound, {}, range(750, 1250));
  CHECK(texts(bound.soak(Temperature::celsius(880)), "318") ==
        kMuch + "S 0.125" + kFree + kWithout);
  CHECK(window.ceiling == Temperature::celsius(888));
  CHECK(texts(soak({{"C", 0.5}, {"Cr", 4.5}, {"S", 0.09}}, 1000), "318") ==
        kMuch + "S 0.09" + kFree + kWithout);
  CHECK(texts(soak({{"C", 0.5}, {"Cr", 4.5}, {"S", 0.03}}, 1000), "318").empty());
  const NamedValues h13{{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.3}, {"V", 1.0}};
  CHECK(texts(soak(with(h13, {{"S", 0.2}, {"Mn", 0.3}}), 1000), "318") ==
        kMuch + "S 0.2" + kFree + kWithout);
  CHECK(texts(soak(with(h13, {{"S", 0.2}, {"Mn", 0.4}}), 1000), "318").empty());
  // AISI 420F: Cr takes part in the sulphide.
  CHECK(texts(soak({{"C", 0.35}, {"Cr", 13.0}, {"Mn", 0.4}, {"S", 0.25}}, 1000), "318")
            .empty());
}

TEST_CASE("where it is not known how an element melts, no window is known") {
  const Steel steel(with(kPunch, {{"Sb", 1.0}}));
  const auto window = hardening_window(steel, {}, range(750, 1250));
  CHECK(window.status == WindowStatus::not_known);
  const Steel niobium(with(kPunch, {{"Nb", 3.0}}), {"", with_liquid(), false});
  CHECK(melting_range(niobium, range(900, 1500))
            .text.starts_with("computed without Nb 3 wt%, not modelled: "));
}

TEST_CASE("318: the temperature stands in the unit of the call too") {
  SoakOptions options;
  options.temperature_unit = TemperatureUnit::fahrenheit;
  const State state =
      Steel(with(kPunch, {{"B", 2.0}})).soak(Temperature::fahrenheit(1900), options);
  CHECK(texts(state, "318") ==
        kMuch +
            "B 2 wt% (forms borides, which bind iron, Cr, Mo and W; melts with iron "
            "from 1175 C, 2147 F, with carbon and alloy lower)" +
            kWithout);
}

TEST_CASE("318: what 312 tells of, and what a layer models, is not told twice") {
  CHECK(told({{"Nb", 1.0}, {"Ti", 1.0}, {"Zr", 1.0}, {"Ta", 1.0}, {"N", 0.3}}).empty());
}

TEST_CASE("318: bound sulphur does not count") {
  const NamedValues heat = with(kPunch, {{"S", 0.36}, {"Mn", 1.0}});
  const Steel plain(heat), bound(heat, {"", {}, true});
  CHECK(!texts(plain.soak(Temperature::celsius(1000)), "318").empty());
  CHECK(texts(bound.soak(Temperature::celsius(1000)), "318").empty());
}

TEST_CASE("318: ordinary certificates do not get it") {
  const NamedValues residuals{{"P", 0.03},  {"S", 0.03},  {"Cu", 0.25}, {"Al", 0.03},
                              {"B", 0.003}, {"Sn", 0.02}, {"As", 0.02}, {"N", 0.03},
                              {"O", 0.005}, {"H", 2e-4},  {"Ca", 2e-3}, {"Sb", 0.01},
                              {"Ti", 0.02}, {"Nb", 0.02}};
  const NamedValues grades[] = {
      {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5}, {"W", 6.2}, {"V", 1.9}, {"Mn", 0.3}},
      {{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}, {"Mn", 0.35}},
      {{"C", 1.0}, {"Cr", 5.2}, {"Mo", 1.1}, {"V", 0.3}, {"Mn", 0.6}},
      {{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}},
      {{"C", 0.9}, {"Mn", 1.2}, {"Cr", 0.5}, {"W", 0.5}, {"V", 0.1}},
      {{"C", 1.05}, {"Mn", 0.25}, {"Si", 0.25}},
      {{"C", 0.5}, {"Cr", 1.4}, {"W", 2.2}, {"V", 0.2}, {"Si", 0.8}, {"Mn", 0.25}},
      {{"C", 0.36}, {"Cr", 1.9}, {"Ni", 1.0}, {"Mo", 0.2}, {"Mn", 1.4}},
      {{"C", 0.75}, {"Cr", 4.1}, {"W", 18}, {"V", 1.1}, {"Mn", 0.3}},
      {{"C", 1.45}, {"Cr", 13.0}, {"Mn", 0.5}, {"Si", 0.5}}};
  for (const NamedValues& grade : grades)
    CHECK(texts(soak(with(grade, residuals), 1000), "318").empty());
  const NamedValues h13{{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.3}, {"V", 1.0}, {"Si", 1.0}};
  CHECK(texts(soak(with(h13, {{"S", 0.15}, {"Mn", 0.8}}), 1020), "318").empty());
  CHECK(texts(soak(with(h13, {{"S", 0.35}, {"Mn", 0.8}}), 1020), "318").empty());
  CHECK(told({{"Pb", 0.25}}).empty());
}

TEST_CASE("hardening estimates carry 318") {
  CHECK(has_318(hardening(soak(with(kPunch, {{"B", 2.0}}), 1120)).warnings));
  CHECK(!has_318(hardening(soak(with(kPunch, {{"B", 0.003}}), 1120)).warnings));
}

TEST_CASE("no window is claimed free of melt with boron, sulphur or phosphorus") {
  const std::string melt =
      "possible melt of what is not modelled: B melts with iron from 1175 C, with "
      "carbon and alloy lower";
  for (const SharedParameters& set : {default_parameters(), with_liquid()}) {
    const Steel steel(with(kPunch, {{"B", 2.0}}), {"heat", set, false});
    const auto window = hardening_window(steel, {}, range(750, 1250));
    CHECK(window.status == WindowStatus::found);
    CHECK(window.ceiling_rule == WindowRule::left_out);
    CHECK(window.ceiling == Temperature::celsius(1075));
    CHECK(
        window.text.ends_with(" to 1075 C; floor set by: no ferrite alone; ceiling "
                              "set by: " +
                              melt));
    REQUIRE(window.remarks.size() == 5);
    CHECK(window.remarks[0] ==
          "Not known and left out: 1075 to 1250 C (" + melt + ").");
    CHECK(window.remarks[1] ==
          "Hardening and melting were judged without B 2 wt%, not modelled: they are "
          "not those of this steel.");
    CHECK(has_318(window.warnings()));
  }
}

TEST_CASE("a window where melt may be everywhere is not known") {
  const Steel steel(with(kPunch, {{"S", 0.5}, {"P", 0.3}}));
  const auto window = hardening_window(steel, {}, range(900, 1250));
  CHECK(window.status == WindowStatus::not_known);
  CHECK(window.text ==
        "none found, but part of the range, 900 to 1250 C, is not known (no ferrite: "
        "all over the range; possible melt of what is not modelled: S melts with iron "
        "from 988 C, P melts with iron from 1050 C, with carbon and alloy lower: "
        "nowhere)");
  CHECK(has_318(window.warnings()));
}

TEST_CASE("below what may melt, and with what does not melt, a window stays") {
  const Steel boron(with(kPunch, {{"B", 2.0}}));
  const auto cold = hardening_window(boron, {}, range(900, 1070));
  CHECK(cold.ceiling_rule == WindowRule::range);
  CHECK(cold.rules.size() == 1);
  const Steel copper(with(kPunch, {{"Cu", 3.0}}));
  const auto window = hardening_window(copper, {}, range(900, 1250));
  CHECK(window.ceiling_rule == WindowRule::range);
  CHECK(window.remarks[0] ==
        "Hardening and melting were judged without Cu 3 wt%, not modelled: they are "
        "not those of this steel.");
  const Steel plain(with(kPunch, {{"P", 0.03}, {"S", 0.03}}));
  for (const std::string& remark :
       hardening_window(plain, {}, range(900, 1250)).remarks)
    CHECK(remark.find("without") == std::string::npos);
}

TEST_CASE("a melting range begins with what it was computed without") {
  const auto text = [](const NamedValues& more) {
    const Steel steel(with({{"C", 0.8}, {"Mn", 0.3}}, more),
                      {"heat", with_liquid(), false});
    return melting_range(steel, range(1200, 1550)).text;
  };
  const std::string plain = text({{"P", 0.03}});
  CHECK(plain.starts_with("begins to melt at "));
  CHECK(text({{"B", 2.0}, {"Cu", 3.0}})
            .starts_with("computed without B 2 wt%, Cu 3 wt%, not modelled (possible "
                         "melt of what is not "
                         "modelled: B melts with iron from 1175 C, with carbon and "
                         "alloy lower): begins "
                         "to melt at "));
  CHECK(text({{"U", 20.0}})
            .starts_with("computed without U 20 wt%, not modelled (possible melt of "
                         "what is not modelled: U may melt with iron, at a temperature "
                         "not known here): begins to melt at "));
}
