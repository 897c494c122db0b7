/// The page of a short soak: what was counted or computed, and the band of its matrix.

#include <doctest/doctest.h>

#include "bearing_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

using Table = std::vector<std::vector<std::string>>;

/// The section of that title; fails where there is none.
ReportSection section(const Report& page, std::string_view title) {
  for (const ReportSection& each : page.sections)
    if (each.title == title) return each;
  FAIL("no section '" << title << "'");
  return {};
}

std::vector<std::string> titles(const Report& page) {
  std::vector<std::string> all;
  for (const ReportSection& each : page.sections) all.push_back(each.title);
  return all;
}

/// The report of the state alone says where its band is.
void check_state_page(const ShortSoak& soak) {
  const ReportSection basis = section(report(soak.state), "Basis");
  CHECK(basis.lines.back() ==
        "how sure the matrix is: not on this page, see the report of the ShortSoak "
        "that this state is part of");
  const auto own = section(report(soak), "Basis").lines;
  CHECK(own == std::vector<std::string>(basis.lines.begin(), basis.lines.end() - 1));
}

}  // namespace

TEST_CASE("the page of a timed soak: carbide as computed, matrix with its band") {
  const ShortSoak soak = timed_soak(bearing().soak(celsius(845)), 30);
  const Report page = report(soak);
  CHECK(page.title == "AISI 52100 at 845 C (1553 F), timed soak of 30 min");
  CHECK(titles(page) ==
        std::vector<std::string>{
            "Certificate as given, weight percent", "Basis", "Carbide as computed",
            "Carbides", "Composition of the carbides", "Matrix", "Band of the matrix",
            "Estimates after a quench to 20 C (68 F)", "How well solved",
            "Origin of the numbers"});
  CHECK(section(page, "Carbide as computed").table ==
        Table{{"carbide, vol%", "timed soak", "long hold"}, {"M3C", "5.99", "2.04"}});
  const ReportSection band = section(page, "Band of the matrix");
  CHECK(band.lines == std::vector<std::string>{
                          "low, high: a third of the minutes, annealed up to 50 C "
                          "colder, and three times, up to 30 C hotter"});
  CHECK(band.table == Table{{"matrix, wt%", "value", "low", "high", "long hold"},
                            {"C", "0.639", "0.609", "0.787", "0.882"},
                            {"Cr", "1.01", "0.96", "1.20", "1.25"},
                            {"Mn", "0.27", "0.25", "0.31", "0.34"},
                            {"Si", "0.27", "0.26", "0.27", "0.26"}});
  CHECK(page.warnings == report(soak.state).warnings);
  CHECK(page.caution == report(soak.state).caution);
  check_state_page(soak);
}

TEST_CASE("the page of a count: what was seen, its scatter, its size limit") {
  const ShortSoak soak = with_measured_carbide(bearing().soak(celsius(845)),
                                               {{"M3C", 6.0, 0.4, 0.2}, {"M7C3", 0.0}});
  const ReportSection counted = section(report(soak), "Carbide as counted");
  CHECK(counted.lines ==
        std::vector<std::string>{
            "+-: standard deviation of the count",
            "size limit of the count: M3C 0.2 micrometre, M7C3 not given"});
  CHECK(counted.table == Table{{"carbide", "vol%", "+-", "long hold", "composition of"},
                               {"M3C", "6.00", "0.40", "2.04", "845 C"}});
  const ReportSection band = section(report(soak), "Band of the matrix");
  CHECK(band.lines ==
        std::vector<std::string>{"low, high: carbide composition of the soak or of "
                                 "annealing at 740 C, and two standard deviations of "
                                 "the count"});
  REQUIRE(band.table.size() == 5);
  CHECK(band.table[1] ==
        std::vector<std::string>{"C", "0.639", "0.588", "0.690", "0.882"});
  check_state_page(soak);
}

TEST_CASE("the page of a short-soak limit: its band ends at the long hold") {
  const ShortSoak soak = short_soak_limit(bearing().soak(celsius(845)));
  const ReportSection band = section(report(soak), "Band of the matrix");
  CHECK(band.lines ==
        std::vector<std::string>{"low, high: this limit and the long-hold limit"});
  REQUIRE(band.table.size() == 5);
  CHECK(band.table[1] ==
        std::vector<std::string>{"C", "0.630", "0.630", "0.882", "0.882"});
  check_state_page(soak);
}

TEST_CASE("the estimates of the page are those of the quench asked for") {
  const ShortSoak soak = timed_soak(bearing().soak(celsius(845)), 30);
  HardeningOptions quench;
  quench.coldest = celsius(-80);
  CHECK(section(report(soak, quench), "Estimates after a quench to -80 C (-112 F)") ==
        section(report(soak.state, quench),
                "Estimates after a quench to -80 C (-112 F)"));
}
