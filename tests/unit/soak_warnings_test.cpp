/// Warnings of a soak, word for word. Each case also shows a neighbour without it.

#include <doctest/doctest.h>

#include <cmath>

#include "first_edition.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "internal/number_format.hpp"
#include "internal/soak_warnings.hpp"
#include "warned_soak.hpp"
#include "with_liquid.hpp"

using namespace gibbsteel;

namespace {

const std::string kNoLiquid =
    "Above 1180 C, and the parameter file has no liquid: melting is not predicted.";
const std::string kLay =
    " Lay layers/liquid.json on it, in Python "
    "steel.with_parameters(default_parameters(";

}  // namespace

TEST_CASE("an ordinary soak of an ordinary steel carries no warning") {
  CHECK(soak({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}}, 1120)
            .warnings.empty());
}

TEST_CASE("301: temperature outside the validity of the file") {
  CHECK(texts(soak({{"C", 0.4}}, 590), "301") ==
        "The temperature is outside the validity of the parameter file, 600 C to 1300 "
        "C.");
  CHECK(texts(soak({{"C", 0.4}}, 1310), "301") ==
        "The temperature is outside the validity of the parameter file, 600 C to 1300 "
        "C.");
  CHECK(texts(soak({{"C", 0.4}}, 610), "301").empty());
  CHECK(
      texts(soak({{"C", 0.4}}, 2000), "301") ==
      "The temperature is outside the validity of the parameter file, 600 C to 1300 C. "
      "Did you mean 2000 F (1093 C)?");
}

TEST_CASE("301: a number in the wrong unit is named as it was given") {
  const std::string outside =
      "The temperature is outside the validity of the parameter "
      "file, ";
  const auto hint = [&](Temperature t, TemperatureUnit unit) {
    SoakOptions options;
    options.temperature_unit = unit;
    return texts(Steel({{"C", 0.4}}).soak(t, options), "301");
  };
  using enum TemperatureUnit;
  CHECK(hint(Temperature::celsius(1393), celsius) ==
        outside + "600 C to 1300 C. Did you mean 1393 K (1120 C)?");
  CHECK(hint(Temperature::celsius(1450), celsius) ==
        outside + "600 C to 1300 C. Did you mean 1450 F (788 C) or 1450 K (1177 C)?");
  CHECK(hint(Temperature::kelvin(2050), kelvin) ==
        outside +
            "600 C (873 K) to 1300 C (1573 K). Did you mean 2050 F (1121 C)? It was "
            "given as 2050 K.");
  CHECK(hint(Temperature::kelvin(850), kelvin) ==
        outside +
            "600 C (873 K) to 1300 C (1573 K). Did you mean 850 C? It was given as 850 "
            "K.");
  CHECK(hint(Temperature::fahrenheit(1050), fahrenheit) ==
        outside +
            "600 C (1112 F) to 1300 C (2372 F). Did you mean 1050 C or 1050 K (777 C)? "
            "It was given as 1050 F.");
  CHECK(hint(Temperature::fahrenheit(3000), fahrenheit) ==
        outside + "600 C (1112 F) to 1300 C (2372 F).");
  CHECK(hint(Temperature::kelvin(1120), kelvin).empty());
}

TEST_CASE("302: one warning per element outside its range, at the bound none") {
  CHECK(texts(soak({{"C", 3.2}, {"Cr", 21}, {"Mo", 1}}, 1000), "302") ==
        "3.2 wt% C is outside the validity of the parameter file, 0 to 3.\n"
        "21 wt% Cr is outside the validity of the parameter file, 0 to 20.");
  CHECK(texts(soak({{"C", 1}, {"Cr", 20}}, 1000), "302").empty());
}

TEST_CASE("303: above 1180 C without a liquid in the file") {
  CHECK(texts(soak({{"C", 0.4}}, 1181), "303") == kNoLiquid + kLay + "\"liquid\")).");
  CHECK(texts(soak({{"C", 0.4}}, 1180), "303").empty());
}

TEST_CASE("303: the remedy keeps the layers that are there, and is for the file") {
  const auto at = [](const SharedParameters& set) {
    return texts(Steel({{"C", 0.4}}, {"", set, false}).soak(Temperature::celsius(1190)),
                 "303");
  };
  CHECK(at(load_parameters(GIBBSTEEL_SOURCE_DIR
                           "/thermo_data/layers/niobium_titanium_nitrogen.json",
                           default_parameters())) ==
        kNoLiquid + kLay + "\"niobium_titanium_nitrogen\", \"liquid\")).");
  auto layered = std::make_shared<ParameterSet>(*default_parameters());
  layered->files.push_back({"shop.json", "Shop layer", "1", ""});
  CHECK(at(layered) == kNoLiquid + " Lay layers/liquid.json on it.");
  CHECK(at(first_edition()) == kNoLiquid + " Lay layers/liquid.json on it.");
  auto other = std::make_shared<ParameterSet>(*default_parameters());
  other->files.front().title = "Another file";
  CHECK(at(other) == kNoLiquid);
}

TEST_CASE("305: ferrite in the matrix") {
  const State state = soak({{"C", 0.1}}, 800);
  CHECK(texts(state, "305") ==
        "The matrix is not austenite alone: ferrite and austenite.");
  CHECK(state.matrix_phases().size() == 2);
  CHECK(texts(soak({{"C", 0.1}}, 950), "305").empty());
  CHECK(texts(soak({{"C", 0.4}}, 700), "305") ==
        "The matrix is ferrite: below the hardening range (annealed condition).");
  // 20 % Cr without carbon never turns to austenite: gamma loop, 11.5 % at its nose.
  CHECK(texts(soak({{"Cr", 20.0}}, 1000), "305") ==
        "The matrix is not austenite alone: ferrite.");
  CHECK(texts(soak({{"Cr", 90.0}, {"C", 10.0}}, 1000), "305") ==
        "There is no matrix phase at all.");
}

TEST_CASE("306: sigma, Laves and mu phases are missing") {
  const NamedValues lean{{"C", 0.05}, {"Cr", 18.0}, {"Mo", 8.0}};
  CHECK(texts(soak(lean, 900), "306") ==
        "The matrix holds more than 13 wt% Cr or 2 wt% Mo + W/2. Below 950 C sigma, "
        "Laves "
        "or mu phase may form from it; they are not in the parameter file.");
  CHECK(texts(soak(lean, 950), "306").empty());
  // Annealed high-speed steel of the same alloy content: the carbides hold it.
  CHECK(texts(soak(kHighSpeed, 800), "306").empty());
  ParameterSet set = *default_parameters();
  State state = soak(lean, 900);
  set.phases.front().name = "sigma";
  state.warnings = internal::soak_warnings(set, state);
  CHECK(texts(state, "306").empty());
}

TEST_CASE("307: elements that are not modelled, zeros not mentioned") {
  CHECK(texts(soak({{"C", 0.4}, {"P", 0.02}, {"S", 0.01}, {"Cu", 0.0}}, 900), "307") ==
        "Not modelled, and left out of the calculation: P 0.02, S 0.01 wt%.");
  CHECK(texts(soak({{"C", 0.4}, {"Cu", 0.0}}, 900), "307").empty());
}

TEST_CASE("308: no usable result") {
  SoakOptions options;
  options.phases = {{"M3C"}};
  const State state = soak({{"C", 0.4}}, 900, options);
  CHECK(texts(state, "308") ==
        "The calculation gave no usable result: infeasible (no mixture of the allowed "
        "phases has this composition).");
  CHECK(texts(state, "305").empty());
}

TEST_CASE("309: no volume data") {
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  for (Phase& phase : set->phases)
    if (phase.name != "austenite") phase.hot_volume.reset();
  SoakOptions options;
  const Steel steel({{"C", 1.2}}, {"", set, false});
  CHECK(texts(steel.soak(Temperature::celsius(800), options), "309").empty());
  options.basis = VolumeBasis::soak;
  CHECK(
      texts(steel.soak(Temperature::celsius(800), options), "309") ==
      "The parameter file has no volume data for M3C: volume percents are not known.");
}

TEST_CASE("310: weak spots of the shipped file, and of no other") {
  const std::string tungsten =
      "Known weak spot: the tungsten in the matrix of high-speed steels reads up to 1 "
      "wt% high near their hardening temperature.";
  CHECK(texts(soak(kHighSpeed, 1200), "310") == tungsten);
  CHECK(texts(soak(kHighSpeed, 1100), "310").empty());
  auto layered = std::make_shared<ParameterSet>(*default_parameters());
  layered->files.push_back({"shop.json", "Shop layer", "1", ""});
  const auto t = Temperature::celsius(1200);
  CHECK(texts(Steel(kHighSpeed, {"", layered, false}).soak(t), "310") == tungsten);
  auto other = std::make_shared<ParameterSet>(*default_parameters());
  other->files.front().title = "Another file";
  CHECK(texts(Steel(kHighSpeed, {"", other, false}).soak(t), "310").empty());
}

namespace {

/// Whether a soak carries this weak spot.
bool shows(const NamedValues& steel, double celsius, const char* text,
           const SharedParameters& set = default_parameters()) {
  const State state =
      Steel(steel, {"", set, false}).soak(Temperature::celsius(celsius));
  return texts(state, "310").find(text) != std::string::npos;
}

}  // namespace

TEST_CASE("310: weak spots of hardened cobalt and hot-work steels") {
  const NamedValues t15{{"C", 1.55}, {"Cr", 4}, {"W", 12}, {"V", 5}, {"Co", 5}};
  const char* ratio =
      "Known weak spot: in 12W-5V-5Co steels the file shows far more MC than M6C; "
      "about "
      "1:1 is observed.";
  CHECK(shows(t15, 1220, ratio));
  CHECK_FALSE(shows(kHighSpeed, 1220, ratio));
  const NamedValues m42{{"C", 1.08}, {"Cr", 3.8}, {"Mo", 9.5},
                        {"W", 1.5},  {"V", 1.2},  {"Co", 8}};
  const char* m6c =
      "Known weak spot: in cobalt steels rich in molybdenum M6C reads high, and Mo, W "
      "and V of the matrix read low.";
  CHECK(shows(m42, 1190, m6c));
  CHECK_FALSE(shows(t15, 1190, m6c));
  const NamedValues h13{{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.4}, {"V", 1.0}, {"Si", 1.0}};
  const char* carbon =
      "Known weak spot: the matrix carbon of 5Cr-Mo-V hot-work steels reads about "
      "0.06 wt% low.";
  CHECK(shows(h13, 1030, carbon));
  CHECK_FALSE(shows({{"C", 1.0}, {"Cr", 5.2}, {"Mo", 1.1}, {"V", 0.3}}, 1030, carbon));
}

TEST_CASE("310: 12Cr cold-work steels, and high-chromium steels rich in vanadium") {
  const NamedValues d2{{"C", 1.55}, {"Cr", 12}, {"Mo", 0.8}, {"V", 0.9}};
  const NamedValues lean{{"C", 1.4}, {"Cr", 14}, {"Mo", 2}, {"V", 3}};
  const NamedValues rich{{"C", 2.3}, {"Cr", 14}, {"Mo", 1.3}, {"V", 9}, {"Si", 1}};
  const NamedValues most{{"C", 1.9}, {"Cr", 20}, {"Mo", 1}, {"V", 4}, {"Si", 0.5}};
  const char* carbon = "the matrix carbon of 12Cr cold-work steels";
  CHECK(shows(d2, 1030, carbon));
  for (const NamedValues& steel : {lean, rich, most})
    CHECK_FALSE(shows(steel, 1120, carbon));
  const char* ferrite =
      "Known weak spot: in 14Cr steels rich in vanadium the ferrite is doubtful; as in "
      "20Cr-4V steels the file puts too much vanadium into M7C3.";
  CHECK(shows(rich, 1120, ferrite));
  CHECK_FALSE(shows(lean, 1070, ferrite));  // shows none
  CHECK_FALSE(shows(most, 1120, ferrite));  // has a text of its own
  CHECK_FALSE(shows({{"C", 2.15}, {"Cr", 4.75}, {"V", 9}, {"W", 13}, {"Co", 10}}, 1170,
                    "in 12W-5V-5Co steels"));
}

TEST_CASE("310: ferrite in high-speed steels lean in carbon") {
  const std::string lean =
      "Known weak spot: in high-speed steels of about 0.5 % carbon the file shows "
      "ferrite that may be false.";
  const NamedValues h26{{"C", 0.45}, {"Cr", 4}, {"W", 18}, {"V", 1}};
  CHECK(texts(soak(h26, 1120), "310") == lean);
  CHECK_FALSE(shows(h26, 1050, lean.c_str()));  // shows none
  NamedValues m2{{"C", 0.5}, {"Cr", 4}, {"Mo", 5}, {"W", 6}, {"V", 2}};
  CHECK(shows(m2, 1120, lean.c_str()));
  m2.set("Si", 1.0);  // has a text of its own
  CHECK_FALSE(shows(m2, 1120, lean.c_str()));
  CHECK_FALSE(shows({{"C", 0.25}, {"Cr", 4}, {"W", 15}}, 1180, lean.c_str()));
}

TEST_CASE("310: matrix carbon is doubted only where carbide holds some") {
  const NamedValues h11{{"C", 0.38}, {"Cr", 5.1}, {"Mo", 1.3}, {"V", 0.5}, {"Si", 1}};
  const char* hot_work = "the matrix carbon of 5Cr-Mo-V hot-work steels";
  CHECK(shows(h11, 1000, hot_work));
  CHECK_FALSE(shows(h11, 1150, hot_work));
  // Not more than carbide holds, and not where that is next to nothing.
  CHECK(shows(h11, 1000, "hot-work steels reads about 0.05 wt% low."));
  const NamedValues rich{{"C", 0.38}, {"Cr", 5},   {"Mo", 3},
                         {"V", 0.5},  {"Mn", 0.4}, {"Si", 0.4}};
  CHECK(shows(rich, 1030, "hot-work steels reads about 0.03 wt% low."));
  CHECK_FALSE(shows(rich, 1060, hot_work));
  // Matrix-type high-speed steels are none.
  const NamedValues matrix{{"C", 0.48}, {"Cr", 4.3}, {"Mo", 2.8}, {"V", 1.0}};
  CHECK_FALSE(shows(matrix, 1000, hot_work));
  const char* stainless = "the matrix carbon of 13 to 17Cr stainless grades";
  CHECK(shows({{"C", 0.38}, {"Cr", 13.5}}, 1000, stainless));
  CHECK_FALSE(shows({{"C", 0.12}, {"Cr", 12.5}}, 1000, stainless));
}

TEST_CASE("358: more vanadium than any steel of the published records") {
  const std::string end =
      ". How far off carbides, matrix and hardness are is not known.";
  const std::string other =
      "No published record near: those of steels with less than 4 wt% Mo + W/2 end at "
      "1.19 wt% V, this steel has ";
  const NamedValues nine{{"C", 2.45}, {"Cr", 5.25}, {"V", 9.75}, {"Mo", 1.3}};
  const NamedValues three{{"C", 0.8}, {"Cr", 7.5}, {"V", 2.75}, {"Mo", 1.3}};
  CHECK(texts(soak(nine, 1120), "358") == other + "9.75" + end);
  CHECK(texts(soak(three, 750), "358") == other + "2.75" + end);
  const NamedValues computed{{"C", 2}, {"Cr", 5}, {"V", 2.4636852551482993}};
  CHECK(texts(soak(computed, 1000), "358") == other + "2.46" + end);
  NamedValues tungsten{{"C", 2.15}, {"Cr", 4.75}, {"V", 9}, {"W", 13}, {"Co", 10}};
  CHECK(texts(soak(tungsten, 1170), "358") ==
        "No published record near: those of steels with 4 wt% Mo + W/2 and more end at "
        "4.9 wt% V, this steel has 9" +
            end);
  tungsten.set("V", 5.25);
  CHECK(texts(soak(tungsten, 1170), "358").empty());
  CHECK(texts(soak(kHighSpeed, 1170), "358").empty());
  CHECK(texts(soak({{"C", 0.4}, {"Cr", 5}, {"V", 1.4}, {"Mo", 1.3}}, 1000), "358")
            .empty());
  auto another = std::make_shared<ParameterSet>(*default_parameters());
  another->files.front().title = "Another file";
  CHECK(texts(Steel(nine, {"", another, false}).soak(Temperature::celsius(1120)), "358")
            .empty());
}

TEST_CASE("317: close to the computed solidus, with liquid in the file and none yet") {
  const NamedValues steel{{"C", 0.6}, {"Cr", 4.5}, {"Mo", 3}, {"W", 2}, {"V", 1}};
  const auto close_at = [&](double celsius, const SharedParameters& set) {
    const State state =
        Steel(steel, {"", set, false}).soak(Temperature::celsius(celsius));
    return texts(state, "317");
  };
  CHECK(close_at(1280, with_liquid()) ==
        "Close to melting: within 60 C of the computed solidus, which may be 30 C too "
        "high, and below which carbide streaks melt.");
  CHECK(close_at(1200, with_liquid()).empty());
  CHECK(close_at(1320, with_liquid()).empty());
  CHECK(close_at(1280, default_parameters()).empty());
}

TEST_CASE("310: the solidus of high-speed steels, where there is one") {
  const char* solidus =
      "Known weak spot: the solidus of high-speed steels reads up to 30 C high, of "
      "12W-5V-5Co steels 60 C.";
  CHECK(shows(kHighSpeed, 1190, solidus, with_liquid()));
  CHECK_FALSE(shows(kHighSpeed, 1170, solidus, with_liquid()));
  CHECK_FALSE(shows(kHighSpeed, 1190, solidus));
  CHECK_FALSE(shows({{"C", 1.0}, {"Cr", 1.5}}, 1190, solidus, with_liquid()));
}

TEST_CASE("310: weak spots that belong to one edition of the file") {
  const NamedValues t1{{"C", 0.75}, {"Cr", 4.1}, {"W", 18}, {"V", 1.1}};
  const char* tungsten =
      "Known weak spot: in hardened 18W steels M6C reads about 1 wt% high.";
  CHECK(shows(t1, 1290, tungsten));
  CHECK_FALSE(shows(t1, 1100, tungsten));
  const char* before =
      "Known weak spot: in hardened 18W steels M6C reads 2 to 3 wt% high.";
  CHECK(shows(t1, 1290, before, first_edition()));
  CHECK_FALSE(shows(t1, 1290, before));
  CHECK_FALSE(shows(t1, 1290, tungsten, first_edition()));
  const NamedValues mould{
      {"C", 0.38}, {"Cr", 13.6}, {"Mn", 0.5}, {"V", 0.3}, {"Si", 0.8}};  // record SS-08
  const char* ferrite =
      "Known weak spot: in 13Cr steels with 0.3 % carbon and more, silicon and "
      "vanadium "
      "make the file show ferrite that is not expected.";
  CHECK(shows(mould, 1020, ferrite, first_edition()));
  CHECK_FALSE(
      shows({{"C", 0.38}, {"Cr", 13.6}, {"Si", 0.4}}, 1020, ferrite, first_edition()));
  CHECK_FALSE(shows(mould, 1020, ferrite));  // gone with chromium with silicon
}

TEST_CASE("310: M23C6 where cementite, or M7C3 alone, is expected") {
  const NamedValues oil{{"C", 1.03}, {"Cr", 1.05}, {"Mn", 1.0}, {"W", 1.15}};
  const NamedValues shock{{"C", 0.5}, {"Cr", 1.4}, {"W", 2.3}, {"V", 0.2}, {"Si", 0.8}};
  const NamedValues air{{"C", 1.0}, {"Cr", 1.0}, {"Mn", 2.0}, {"Mo", 1.25}};  // A4
  const char* m23c6 =
      "Known weak spot: M23C6 in steels with 1 to 3 % tungsten or molybdenum rests on "
      "estimates; in low-alloy steels cementite is expected, in 12Cr die steels M7C3 "
      "alone.";
  const NamedValues die{{"C", 2.1}, {"Cr", 12}, {"W", 0.8}, {"Mn", 0.3}};
  const SharedParameters first_calibration =
      load_parameters(GIBBSTEEL_SOURCE_DIR "/thermo_data/editions/2026-11-26.json");
  CHECK(shows(die, 960, m23c6, first_calibration));
  CHECK_FALSE(shows(die, 960, m23c6));  // held to M7C3 alone since
  CHECK_FALSE(
      shows({{"C", 2.1}, {"Cr", 12}, {"Mn", 0.3}}, 960, m23c6, first_calibration));
  CHECK(shows(oil, 800, m23c6, first_calibration));
  CHECK_FALSE(shows(oil, 800, m23c6));
  CHECK_FALSE(shows(oil, 800, m23c6, first_edition()));
  CHECK(shows(shock, 750, m23c6));
  CHECK(shows(air, 840, m23c6));
  CHECK_FALSE(shows({{"C", 0.9}, {"Cr", 0.5}, {"Mn", 1.1}, {"W", 0.5}}, 790, m23c6));
}

TEST_CASE("311: amounts or potentials that the equilibrium leaves free") {
  State state = soak({{"C", 0.4}}, 900);
  CHECK(texts(state, "311").empty());
  state.solve_report.unique = false;
  state.warnings = internal::soak_warnings(*default_parameters(), state);
  CHECK(
      texts(state, "311") ==
      "The equilibrium leaves amounts or chemical potentials free; one of the possible "
      "answers is shown.");
}

TEST_CASE("312: much of an element that forms carbide or nitride and is not modelled") {
  const std::string rest =
      " wt%: forms carbide or nitride that is not modelled: matrix carbon and MC are "
      "not right for this steel.";
  const std::string remedy =
      " Lay layers/niobium_titanium_nitrogen.json on it, in Python "
      "steel.with_parameters(default_parameters(\"niobium_titanium_nitrogen\")).";
  CHECK(texts(soak({{"C", 0.6}, {"Nb", 0.08}, {"Ti", 0.03}}, 1000), "312") ==
        "Nb 0.08, Ti 0.03" + rest + remedy);
  CHECK(texts(soak({{"C", 0.6}, {"N", 0.2}, {"Ti", 0.02}}, 1000), "312") ==
        "N 0.2" + rest + remedy);
  CHECK(texts(soak({{"C", 0.6}, {"Zr", 0.2}}, 1000), "312") == "Zr 0.2" + rest);
  CHECK(texts(soak({{"C", 0.6}, {"Nb", 0.1}, {"N", 0.1}}, 1000), "312").empty());
}

TEST_CASE("313 and 314: contents that look like another unit") {
  CHECK(texts(soak({{"C", 0.6}, {"S", 20}, {"P", 1.5}, {"N", 0.9}}, 1000), "313") ==
        "S 20, P 1.5 wt%: were ppm typed for weight percent?");
  CHECK(texts(soak({{"C", 0.6}, {"S", 0.3}}, 1000), "313").empty());
  CHECK(texts(soak({{"C", 0.0055}, {"Cr", 0.045}}, 1000), "314") ==
        "All contents together are 0.0505 wt%: were fractions typed for percent?");
  CHECK(texts(soak({{"C", 0.3}}, 1000), "314").empty());
  CHECK(texts(soak({{"Fe", 100.0}}, 1000), "314").empty());
}

TEST_CASE("310: each weak spot shows where the notes of the file put it") {
  CHECK(texts(soak(kHighSpeed, 800), "310") ==
        "Known weak spot: in annealed high-speed steels the carbide holds too little "
        "iron and its total reads up to 3 wt% low; M7C3 may show where M23C6 is "
        "observed.");
  const Steel before(kHighSpeed, {"", first_edition(), false});
  CHECK(texts(before.soak(Temperature::celsius(800)), "310") ==
        "Known weak spot: in annealed high-speed steels the file does not form the "
        "M23C6 that is observed; the total carbide reads up to 4 wt% low.");
  CHECK(texts(soak({{"C", 2.25}, {"Cr", 12}}, 950), "310") ==
        "Known weak spot: the matrix carbon of 12Cr cold-work steels reads up to 0.17 "
        "wt% high with 2 % carbon, up to 0.1 with 1.5 %.");
  CHECK(texts(soak({{"C", 0.68}, {"Cr", 13}}, 1050), "310") ==
        "Known weak spot: the matrix carbon of 13 to 17Cr stainless grades reads up to "
        "0.2 wt% low.");
  CHECK(texts(soak({{"C", 1.9}, {"Cr", 20}, {"V", 4}, {"Mo", 1}}, 1150), "310")
            .find("Known weak spot: in 20Cr-4V steels the file puts too much vanadium "
                  "into M7C3, and with silicon shows ferrite that is not expected.") ==
        0);
  NamedValues silicon = kHighSpeed;
  silicon.set("Si", 1.2);
  silicon.set("C", 0.7);
  CHECK(
      texts(soak(silicon, 1200), "310")
          .find("Known weak spot: with 1 % silicon and more in a high-speed steel the "
                "file shows ferrite that is not expected.") == 0);
  CHECK(texts(soak({{"C", 1.08},
                    {"Cr", 3.8},
                    {"Mo", 9.5},
                    {"W", 1.5},
                    {"V", 1.2},
                    {"Co", 8}},
                   750),
              "310")
            .find("Known weak spot: below 800 C the amount of M2C in steels rich in "
                  "molybdenum is doubtful.") != std::string::npos);
}

TEST_CASE("315: partly molten, with how much, and molten") {
  const Steel steel({{"C", 0.8}}, {"heat", with_liquid(), false});
  const auto melting = melting_range(steel, melting_search_range(*with_liquid()));
  const double from = melting.solidus.value().in_celsius(),
               to = melting.liquidus.value().in_celsius();
  const auto at = [&](double celsius) {
    return steel.soak(Temperature::celsius(celsius));
  };
  CHECK(texts(at(from - 1.0), "315").empty());
  const State half = at(0.5 * (from + to));
  const std::string percent =
      internal::fixed(half.volume_percent_of("liquid"), 1) + " vol%";
  CHECK(texts(half, "315") == "Partly molten: " + percent +
                                  " of the steel is liquid; matrix and carbides are "
                                  "what is still solid. melting_range gives the "
                                  "solidus.");
  CHECK(half.brief().find(" vol% carbide, " + percent + " liquid, matrix ") !=
        std::string::npos);
  CHECK(texts(melting.at_solidus, "315") ==
        "Partly molten: less than 0.1 vol% of the steel is liquid; matrix and carbides "
        "are what is still solid. melting_range gives the solidus.");
  const State molten = at(to + 1.0);
  CHECK(texts(molten, "315") == "Molten: nothing solid is left.");
  CHECK(texts(molten, "305").empty());
  CHECK(texts(molten, "303").empty());
  CHECK(molten.brief() == "heat at " + internal::fixed(to + 1.0, 0) + " C (" +
                              internal::fixed(32.0 + 1.8 * (to + 1.0), 0) +
                              " F), long-hold limit: molten");
}

TEST_CASE("315: many soaks share one warning from the least to the most liquid") {
  const Steel steel({{"C", 0.8}}, {"heat", with_liquid(), false});
  const auto melting = melting_range(steel, melting_search_range(*with_liquid()));
  const double from = melting.solidus.value().in_kelvin(),
               to = melting.liquidus.value().in_kelvin();
  std::vector<Temperature> temperatures;
  for (const double share : {-0.5, 0.2, 0.8, 1.5})
    temperatures.push_back(Temperature::kelvin(std::lerp(from, to, share)));
  const Sweep sweep = steel.sweep(temperatures);
  const auto percent = [&](std::size_t i) {
    return internal::fixed(sweep.states[i].volume_percent_of("liquid"), 1) + " vol%";
  };
  const auto warnings = sweep.warnings();
  REQUIRE(warnings.size() == 2);
  CHECK(warnings[0] ==
        Warning{"gibbsteel.warning.315",
                "Partly molten: " + percent(1) + " to " + percent(2) +
                    " of the steel is liquid; matrix and carbides are what is still "
                    "solid. melting_range gives the solidus."});
  CHECK(warnings[1] ==
        Warning{"gibbsteel.warning.315", "Molten: nothing solid is left."});
  const std::string table = sweep.full();
  CHECK(table.find("\nl: partly or wholly molten\n") != std::string::npos);
  CHECK(table.find("     0.00  100.00       -  l\n") != std::string::npos);
}

TEST_CASE("305: C given as F is asked for, where it would be a hardening temperature") {
  const auto told = [](double number, TemperatureUnit unit, const NamedValues& steel) {
    SoakOptions options;
    options.temperature_unit = unit;
    return texts(Steel(steel).soak(temperature_in(unit, number), options), "305");
  };
  using enum TemperatureUnit;
  const NamedValues hot_work{{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.3}, {"V", 1.0}};
  const std::string cold =
      "The matrix is ferrite: below the hardening range (annealed condition).";
  CHECK(told(1120, fahrenheit, hot_work) ==
        cold + " Did you mean 1120 C? It was given as 1120 F.");
  CHECK(told(1250, fahrenheit, hot_work) ==
        cold + " Did you mean 1250 C? It was given as 1250 F.");
  CHECK(told(1260, fahrenheit, hot_work) == cold);
  CHECK(told(650, celsius, hot_work) == cold);
  CHECK(told(900, kelvin, hot_work) == cold);
  CHECK(told(1050, fahrenheit, hot_work) == cold);  // 301 asks
  CHECK(told(1900, fahrenheit, hot_work).empty());
}

TEST_CASE("316: an element that the liquid cannot hold") {
  auto set = std::make_shared<ParameterSet>(*with_liquid());
  for (Phase& phase : set->phases)
    if (phase.name == "liquid")
      std::erase_if(phase.sublattices[0].constituents, [](const std::string& name) {
        return name == "V" || name == "Mo";
      });
  const Steel steel({{"C", 0.8}, {"Mo", 0.0}, {"V", 0.2}}, {"heat", set, false});
  const State state = steel.soak(Temperature::celsius(1450));
  REQUIRE(state.volume_percent_of("liquid") > 0.0);
  CHECK(texts(state, "316") ==
        "The liquid of the parameter file cannot hold V: the steel melts lower than "
        "predicted. Read a computed solidus and liquidus as upper limits.");
  CHECK(texts(steel.soak(Temperature::celsius(1050)), "316").empty());
  const Steel whole({{"C", 0.8}, {"V", 0.2}}, {"heat", with_liquid(), false});
  CHECK(texts(whole.soak(Temperature::celsius(1450)), "316").empty());
}

TEST_CASE("316: boron and the like melt below the computed solidus") {
  const auto told = [](const NamedValues& steel, double celsius) {
    const State state =
        Steel(steel, {"", with_liquid(), false}).soak(Temperature::celsius(celsius));
    return texts(state, "316");
  };
  CHECK(told({{"C", 0.4}, {"B", 0.01}, {"S", 0.2}}, 1150) ==
        "The liquid of the parameter file cannot hold B, S: the steel melts lower than "
        "predicted. Read a computed solidus and liquidus as upper limits.");
  CHECK(told({{"C", 0.4}, {"B", 0.01}}, 1050).empty());
  CHECK(told({{"C", 0.4}, {"B", 0.003}, {"S", 0.02}, {"P", 0.02}}, 1150).empty());
  CHECK(texts(soak({{"C", 0.4}, {"B", 0.01}}, 1150), "316").empty());
}
