/// One page that can be filed with a heat: whole texts, flags, bands, picked soaks.

#include <doctest/doctest.h>
#include <algorithm>

#include <cmath>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

const std::string kLine = std::string(78, '-') + "\n";
const std::string kDoubleLine = std::string(78, '=') + "\n";
const std::string kCautions =
    "\n"
    "Long-hold limit (true equilibrium): a shop soak of minutes leaves more carbide\n"
    "and less carbon in the matrix. Before hardening real parts try coupons and\n"
    "follow the steel maker's data. Hot salt, oil, cryogens and furnaces injure:\n"
    "local codes and licensed practice come first.\n";

/// Of plain(), up to the heading of the next section.
const std::string kCertificate = "\nCertificate as given, weight percent\n" + kLine +
                                 "0.8C 0.3Mn 0.03S 0.02P, balance Fe\n"
                                 "not modelled, left out: 0.03S 0.02P\n"
                                 "bound by tramp elements: nothing taken out\n"
                                 "in the calculation: 98.85Fe 0.8C 0.3Mn\n"
                                 "\nBasis\n" +
                                 kLine;

/// Of plain(true) at 700 C. Numbers as the shipped file gives them; what they stand on
/// is tested elsewhere.
const std::string kResults =
    "\nCarbides\n" + kLine +
    "              volume %  mass %\n"
    "M3C              12.04   11.78\n"
    "all carbides     12.04   11.78\n"
    "\nComposition of the carbides\n" +
    kLine +
    "weight percent in     Fe      C    Mn\n"
    "M3C                92.00  6.691  1.30\n"
    "\nMatrix\n" +
    kLine +
    "ferrite: 87.96 volume %, 88.22 mass %\n"
    "carbon activity (graphite = 1): 1.282\n"
    "density of the steel: 7.849 g/cm3\n"
    "weight percent in     Fe      C    Mn\n"
    "matrix             99.88  0.014  0.11\n"
    "\nEstimates after a quench to 20 C (68 F)\n" +
    kLine +
    "no martensite start: there is no austenite: nothing hardens\n"
    "\nHow well solved\n" +
    kLine +
    "solution: converged, every absent phase checked; nearest: austenite, 101 J/mol\n"
    "  of atoms from forming\n"
    "element balance: closed to 1e-12 of each element\n"
    "phases present: driving force within 1e-08 J/mol of atoms of zero, Eq. (E2)\n"
    "phases absent: lowest lies 100.9 J/mol of atoms above the plane of the phases\n"
    "  present\n"
    "condition number of the scaled equilibrium matrix, Eq. (N4): 1.9; rounding\n"
    "  costs amounts and potentials up to 1 of 16 digits\n"
    "certificate: many starts; tested, not proven\n"
    "Last digits are for comparing heats, not accuracy: see the warnings.\n";

/// Of plain() at 700, 775 and 850 C.
const std::string kSweepResults =
    "\nCarbides, volume percent\n" + kLine +
    "deg C  deg F    all    M3C\n"
    "700     1292  12.03  12.03\n"
    "775     1427      -      -\n"
    "850     1562      -      -\n"
    "\nCarbides, mass percent\n" +
    kLine +
    "deg C  deg F    all    M3C\n"
    "700     1292  11.78  11.78\n"
    "775     1427      -      -\n"
    "850     1562      -      -\n"
    "\nMatrix, weight percent\n" +
    kLine +
    "f: the matrix is not austenite alone\n"
    "deg C  deg F      C    Mn\n"
    "700     1292  0.014  0.13  f\n"
    "775     1427  0.800  0.30\n"
    "850     1562  0.800  0.30\n"
    "\nEstimates after a quench to 20 C (68 F)\n" +
    kLine +
    "family: between bearing (93 %) and general (7 %), by composition\n"
    "low to high: about two in three measurements, for this austenite; of hardness\n"
    "  all 38 that were compared, 15 of them fitted to; the error of the\n"
    "  composition of the austenite comes on top\n"
    "martensite start: exponential-mean (H12) - 21 C, mixed by (H29); mean of van\n"
    "  Bohemen 2012 and Barbier 2014 (from memory), own choice; offset of the\n"
    "  family: own estimate from 3 records, scatter 12 C; mixed: bearing (93 %) and\n"
    "  general (7 %).\n"
    "retained austenite: koistinen-marburger (H13), mixed by (H29); Koistinen &\n"
    "  Marburger, Acta Metall. 7 (1959) 59; mixed: bearing (93 %) and general (7\n"
    "  %).\n"
    "as-quenched hardness: carbon-quadratic (H18), mixed by (H20) + 51 HV, mixed by\n"
    "  (H29), HRC by (H21); fit to data of Krauss and Leslie used by Takahashi &\n"
    "  Bhadeshia, from memory; mixture: own estimate; offset of the family: own\n"
    "  estimate from 1 record; mixed: bearing (93 %) and general (7 %).\n"
    "As-quenched hardness is that of a fully martensitic quench, no pearlite, no\n"
    "  bainite: section, quench and hardenability are not considered.\n"
    "Ms: martensite start; RA: retained austenite; HRC: as-quenched hardness\n"
    "deg C  deg F  Ms, C  low  high  RA, vol%  low  high   HRC   low  high\n"
    "700     1292      -    -     -         -    -     -     -     -     -\n"
    "775     1427    214  184   245      11.8  5.8  18.7  66.0  64.0  67.7\n"
    "850     1562    214  184   245      11.8  5.8  18.7  66.0  64.0  67.7\n"
    "\nHow well solved\n" +
    kLine +
    "the worst of all usable soaks:\n"
    "element balance: closed to 1e-12 of each element\n"
    "phases present: driving force within 1e-08 J/mol of atoms of zero, Eq. (E2)\n"
    "phases absent: lowest lies 97.0 J/mol of atoms above the plane of the phases\n"
    "  present\n"
    "condition number of the scaled equilibrium matrix, Eq. (N4): 1.9; rounding\n"
    "  costs amounts and potentials up to 1 of 16 digits\n"
    "certificates: 3 soaks many starts\n"
    "Last digits are for comparing heats, not accuracy: see the warnings.\n";

Steel plain(bool bind = false) {
  return Steel({{"C", 0.8}, {"Mn", 0.3}, {"S", 0.03}, {"P", 0.02}},
               {"trial bar", {}, bind});
}

std::string origin_of(const State& state) {
  return "\nOrigin of the numbers\n" + kLine + "parameters: " + state.parameters +
         "\nparameters hash: " + state.parameters_hash + "\nlibrary: gibbsteel " +
         std::string(kVersion) + "\n";
}

Sweep sweep_of(const Steel& steel, double from, double step, int count) {
  std::vector<Temperature> temperatures;
  for (int i = 0; i < count; ++i)
    temperatures.push_back(Temperature::celsius(from + step * i));
  return steel.sweep(temperatures);
}

SoakOptions graphite_only() {
  SoakOptions options;
  options.graphite = true;
  options.phases = {{"graphite"}};
  return options;
}

}  // namespace

TEST_CASE("the whole page of a state") {
  // Fe-0.8C-0.3Mn below A1: ferrite and cementite (common practice, no source).
  const State state = plain(true).soak(Temperature::celsius(700));
  const std::string expected =
      "trial bar at 700 C (1292 F), long-hold limit\n" + kDoubleLine +
      "\nCertificate as given, weight percent\n" + kLine +
      "0.8C 0.3Mn 0.03S 0.02P, balance Fe\n"
      "not modelled, left out: 0.02P\n"
      "bound by tramp elements and taken out: MnS 0.081\n"
      "in the calculation: 98.85Fe 0.8C 0.2486Mn\n"
      "\nBasis\n" +
      kLine +
      "holding temperature: 700 C (1292 F)\n"
      "long-hold limit (true equilibrium)\n"
      "volumes at room temperature, austenite counted as untempered martensite\n"
      "phases not allowed to form: graphite\n" +
      kResults + origin_of(state) + "\nWarnings\n" + kLine +
      "! [gibbsteel.warning.307] Not modelled, and left out of the calculation: P\n"
      "  0.02 wt%.\n"
      "! [gibbsteel.warning.305] The matrix is ferrite: below the hardening range\n"
      "  (annealed condition).\n"
      "! [gibbsteel.warning.330] The matrix is ferrite: nothing hardens.\n" +
      kCautions;
  const Report page = report(state);
  CHECK(page.text() == expected);
  CHECK(page.flag.empty());
  CHECK(page.brief() == "Report: trial bar at 700 C (1292 F), long-hold limit");
}

TEST_CASE("the page of a state that is not usable: no number, and why") {
  const State state = plain().soak(Temperature::celsius(900), graphite_only());
  const std::string reason =
      "NOT USABLE: infeasible (no mixture of the allowed phases has this composition)";
  CHECK(result_flag(state) == reason);
  const Report page = report(state);
  CHECK(page.flag == reason);
  const std::string expected =
      "trial bar at 900 C (1652 F), long-hold limit\n" + kDoubleLine +
      "!! NOT USABLE: infeasible (no mixture of the allowed phases has this\n"
      "   composition)\n" +
      kCertificate +
      "holding temperature: 900 C (1652 F)\n"
      "long-hold limit (true equilibrium)\n"
      "volumes at room temperature, austenite counted as untempered martensite\n"
      "phases not allowed to form: austenite, ferrite, M6C, M7C3, M23C6, M3C, M2C,\n"
      "  M3C2, hexagonal MC\n" +
      origin_of(state);
  CHECK(page.text().substr(0, expected.size()) == expected);
  CHECK(page.text().find("nan") == std::string::npos);
}

TEST_CASE("outside validity is flagged with what is outside") {
  const State state =
      Steel({{"C", 3.2}, {"Cr", 21.0}}).soak(Temperature::celsius(1350));
  CHECK(result_flag(state) ==
        "OUTSIDE VALIDITY of the parameter file: The temperature is outside the "
        "validity of the parameter file, 600 C to 1300 C. 3.2 wt% C is outside the "
        "validity of the parameter file, 0 to 3. 21 wt% Cr is outside the "
        "validity of the parameter file, 0 to 20.");
  CHECK(report(state).text().find("!! OUTSIDE VALIDITY") != std::string::npos);
  CHECK(result_flag(plain().soak(Temperature::celsius(900))).empty());
}

TEST_CASE("estimates of a quench: bands, equations, sources, or why there are none") {
  const State state = plain().soak(Temperature::celsius(850));
  HardeningOptions quench;
  quench.coldest = Temperature::celsius(-80.0);
  const HardeningEstimates estimates = hardening(state, quench);
  const Report page = report(state, quench);
  const ReportSection& section = page.sections[4];
  CHECK(section.title == "Estimates after a quench to -80 C (-112 F)");
  REQUIRE(section.table.size() == 5);
  CHECK(section.table[1][0] == "martensite start");
  CHECK(section.table[1][1] ==
        std::to_string(std::lround(estimates.martensite_start.value)));
  CHECK(section.lines[2].find(estimates.martensite_start.source) != std::string::npos);
  CHECK(page.warnings.size() >= state.warnings.size());
  const State soft = plain().soak(Temperature::celsius(700));
  CHECK(hardening(soft).warnings.size() == 1);
  CHECK(report(soft).text().find("no martensite start: there is no austenite: nothing "
                                 "hardens\n") != std::string::npos);
}

TEST_CASE("the whole page of a sweep") {
  const Sweep sweep = sweep_of(plain(), 700, 75, 3);
  const std::string expected =
      "trial bar, 3 soaks from 700 to 850 C, long-hold limit\n" + kDoubleLine +
      kCertificate +
      "long-hold limit (true equilibrium) at each temperature, not the state after\n"
      "  minutes\n"
      "volumes at room temperature, austenite counted as untempered martensite\n"
      "phases not allowed to form: graphite\n" +
      kSweepResults + origin_of(sweep.states[0]) + "\nWarnings\n" + kLine +
      "! 700 to 850 C: [gibbsteel.warning.307] Not modelled, and left out of the\n"
      "  calculation: S 0.03, P 0.02 wt%.\n"
      "! 700 C: [gibbsteel.warning.305] The matrix is ferrite: below the hardening\n"
      "  range (annealed condition).\n"
      "! 700 C: [gibbsteel.warning.330] The matrix is ferrite: nothing hardens.\n"
      "! 775 to 850 C: [gibbsteel.warning.331] Extrapolated: exponential-mean: 0.8004\n"
      "  wt% C is outside its range, 0.3 to 0.8.\n" +
      kCautions;
  CHECK(report(sweep).text() == expected);
}

TEST_CASE("a sweep: the estimates of a quench by temperature, with their bands") {
  HardeningOptions quench;
  quench.coldest = Temperature::celsius(-80.0);
  const Sweep sweep = sweep_of(plain(), 700, 75, 3);
  const Report page = report(sweep, quench);
  const ReportSection& section = page.sections[5];
  CHECK(section.title == "Estimates after a quench to -80 C (-112 F)");
  REQUIRE(section.table.size() == 4);
  CHECK(section.table[0] == std::vector<std::string>{"deg C", "deg F", "Ms, C", "low",
                                                     "high", "RA, vol%", "low", "high",
                                                     "HRC", "low", "high"});
  CHECK(section.table[1] == std::vector<std::string>{"700", "1292", "-", "-", "-", "-",
                                                     "-", "-", "-", "-", "-"});
  const HardeningEstimates estimates = hardening(sweep.states[1], quench);
  CHECK(section.table[2][2] ==
        std::to_string(std::lround(estimates.martensite_start.value)));
  CHECK(section.table[2][3] ==
        std::to_string(std::lround(estimates.martensite_start.low)));
  CHECK(std::stod(section.table[2][7]) ==
        doctest::Approx(estimates.retained_austenite.high).epsilon(0.05));
  CHECK(std::stod(section.table[2][8]) ==
        doctest::Approx(estimates.hardness_hrc.value).epsilon(0.001));
  CHECK(section.lines[2].find(estimates.martensite_start.source) != std::string::npos);
  quench.particle_diameter = 0.5;
  const Sweep coarse = sweep_of(Steel({{"C", 1.2}, {"Cr", 5.0}}), 850, 50, 2);
  const auto headings = report(coarse, quench).sections[5].table[0];
  CHECK(headings[11] == "grain, um");
}

TEST_CASE("a sweep: what estimates warn of is told once, with the temperatures") {
  const Sweep sweep = sweep_of(Steel({{"C", 1.1}, {"Cr", 1.5}}), 700, 50, 5);
  const Report page = report(sweep);
  std::vector<std::string> of_estimates;
  for (const std::string& line : page.warnings)
    if (line.find("warning.33") != std::string::npos) of_estimates.push_back(line);
  CHECK(of_estimates ==
        std::vector<std::string>{
            "700 C: [gibbsteel.warning.330] The matrix is ferrite: nothing hardens.",
            "750 to 900 C: [gibbsteel.warning.336] A soak of minutes can leave carbide "
            "of such a steel undissolved: less carbon in the matrix than in the "
            "long-hold limit. Take timed_soak, compare short_soak_limit, or count the "
            "carbide and use with_measured_carbide.",
            "850 to 900 C: [gibbsteel.warning.331] at 850 C: Extrapolated: "
            "exponential-mean: 0.92 wt% C is outside its range, 0.3 to 0.8; "
            "carbon-quadratic: 0.92 wt% C is outside its range, 0 to 0.9."});
}

TEST_CASE("a sweep without austenite has no estimates, and says why") {
  const Report page = report(sweep_of(plain(), 600, 20, 3));
  const ReportSection& section = page.sections[5];
  CHECK(section.table.empty());
  CHECK(section.lines ==
        std::vector<std::string>{"no martensite start: there is no austenite: nothing "
                                 "hardens"});
  Sweep none = sweep_of(plain(), 900, 50, 2);
  for (State& state : none.states)
    state = plain().soak(state.temperature, graphite_only());
  for (const ReportSection& each : report(none).sections)
    CHECK(each.title.find("Estimates") == std::string::npos);
}

TEST_CASE("a long sweep: evenly picked, first and last among them") {
  const Report page = report(sweep_of(plain(), 600, 2, 61));
  CHECK(page.text().find("\nshown: 13 of 61 soaks, evenly picked\n") !=
        std::string::npos);
  const auto& table = page.sections[2].table;
  REQUIRE(table.size() == 14);
  for (std::size_t row = 1; row < table.size(); ++row)
    CHECK(table[row][0] == std::to_string(600 + 10 * (row - 1)));
}

TEST_CASE("the flag of a sweep names the soaks, also those that are not picked") {
  Sweep sweep = sweep_of(plain(), 1295, 2, 5);
  CHECK(result_flag(sweep) ==
        "2 of 5 soaks OUTSIDE VALIDITY of the parameter file: 1301, 1303 C");
  sweep.states[0] = plain().soak(Temperature::celsius(1295), graphite_only());
  sweep.cancelled = true;
  CHECK(result_flag(sweep) ==
        "1 of 5 soaks NOT USABLE: 1295 C; 2 of 5 soaks OUTSIDE VALIDITY of the "
        "parameter file: 1301, 1303 C; CANCELLED early");
  const Report page = report(sweep);
  CHECK(page.sections[2].table[1] ==
        std::vector<std::string>{"1295", "2363", "NOT USABLE"});
  const Sweep many = sweep_of(plain(), 1301, 1, 8);
  CHECK(result_flag(many) ==
        "8 of 8 soaks OUTSIDE VALIDITY of the parameter file: 1301, 1302, 1303, 1304, "
        "1305, 1306, ... C");
}

TEST_CASE("the page of a sweep without temperatures prints") {
  const Report page = report(plain().sweep({}));
  CHECK(page.text() == "trial bar, no temperatures given\n" + kDoubleLine + kCautions);
  CHECK(result_flag(plain().sweep({})).empty());
}

TEST_CASE("a result without a state is traced by its parameter set") {
  const State state = plain().soak(Temperature::celsius(900));
  CHECK(provenance(state.parameters, state.parameters_hash, VolumeBasis::room) ==
        provenance(state));
  const auto told = provenance("title", "hash");
  REQUIRE(told.size() == 5);
  CHECK(told[1].second == "title");
  CHECK(told[2].second == "hash");
  for (const auto& entry : told) CHECK(entry.first != "basis");
}

TEST_CASE("hardening estimates are traced as their state is") {
  const State state = Steel({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}})
                          .soak(Temperature::celsius(860));
  for (const State& one : {state, timed_soak(state, 30).state}) {
    auto told = provenance(one);
    told.erase(told.begin() + 4);  // the basis
    CHECK(provenance(hardening(one)) == told);
  }
}

TEST_CASE("provenance traces a table to its data") {
  const State state = plain().soak(Temperature::celsius(900));
  const auto told = provenance(state);
  REQUIRE(told.size() == 6);
  CHECK(told[0].second == "gibbsteel " + std::string(kVersion));
  CHECK(told[1].second == default_parameters()->title());
  CHECK(told[2].second == content_hash(*default_parameters()));
  CHECK(told[3].second == "long-hold limit (true equilibrium)");
  SoakOptions hot;
  hot.basis = VolumeBasis::soak;
  CHECK(provenance(plain().soak(Temperature::celsius(900), hot))[4].second ==
        "volumes at soak temperature");
}

TEST_CASE("the page of a sweep has the remarks of its estimates, once each") {
  const Steel m2({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}},
                 {"M2", {}, false});
  HardeningOptions cold;
  cold.coldest = Temperature::celsius(-75);
  const Report page = report(sweep_of(m2, 1150, 20, 4), cold);
  const auto& sections = page.sections;
  const auto found = std::find_if(sections.begin(), sections.end(), [](const auto& s) {
    return s.title.starts_with("Estimates after a quench");
  });
  REQUIRE(found != sections.end());
  const auto count = std::count_if(
      found->lines.begin(), found->lines.end(), [](const std::string& line) {
        return line.starts_with("1150 to 1210 C: as-quenched hardness: below 20 C");
      });
  CHECK(count == 1);
}

TEST_CASE("the page of a sweep tells soaks apart that are close") {
  const Report page = report(sweep_of(plain(), 700.1, 0.1, 3));
  const auto& table = page.sections[2].table;
  CHECK(table[1][0] == "700.10");
  CHECK(table[3][1] == "1292.54");
}
