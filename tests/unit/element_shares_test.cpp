/// Where the atoms of an element are.

#include <doctest/doctest.h>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

TEST_CASE("shares follow from the mass balance of the state and sum to 100") {
  const NamedValues analysis{
      {"C", 0.9}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  const State state = Steel(analysis).soak(Temperature::celsius(1100));
  REQUIRE(state.carbides().size() == 2);
  for (const auto& [element, percent] : analysis) {
    const NamedValues shares = state.element_shares(element);
    CHECK(shares.sum() == doctest::Approx(100.0).epsilon(1e-12));
    REQUIRE(shares.begin()->first == "matrix");
    CHECK(shares["matrix"] ==
          doctest::Approx(state.matrix.mass_percent *
                          state.matrix.weight_percent[element] / percent)
              .epsilon(1e-6));
    for (const Occurrence& o : state.carbides())
      CHECK(shares[o.kind] ==
            doctest::Approx(o.mass_percent * o.weight_percent[element] / percent)
                .epsilon(1e-6));
  }
}

TEST_CASE("carbon of an annealed plain steel, by the lever rule of the textbook") {
  // Fe-C just below the eutectoid (727 C): ferrite with 0.022 wt% C, cementite with
  // 6.67 wt% C; textbook values, quoted from memory. Lever rule for 0.4 wt% C:
  // ferrite holds 0.022 * (6.67 - 0.4) / (6.67 - 0.022) / 0.4 = 5.2 % of the carbon.
  // Taken within a quarter: the solubility is quoted as 0.018 to 0.025 wt%.
  const Steel steel({{"C", 0.4}});
  const NamedValues shares = steel.soak(Temperature::celsius(725)).element_shares("C");
  CHECK(shares["matrix"] == doctest::Approx(5.2).epsilon(0.25));
  CHECK(shares["M3C"] == doctest::Approx(94.8).epsilon(0.02));
}

TEST_CASE("two matrix phases are one share; without carbide it is all there") {
  const Steel steel({{"C", 0.4}});
  const State state = steel.soak(Temperature::celsius(750));
  REQUIRE(state.matrix_phases().size() == 2);
  CHECK(state.element_shares("C") == NamedValues{{"matrix", 100.0}});
}

TEST_CASE("an element that is not there is an error; not usable: nothing is known") {
  const Steel steel({{"C", 0.4}, {"Cr", 1.0}, {"Cu", 0.1}});
  const State state = steel.soak(Temperature::celsius(900));
  CHECK_THROWS_WITH_AS(state.element_shares("Cu"),
                       "[gibbsteel.input.299] element: the state holds no 'Cu'; choose "
                       "from: Fe, C, Cr",
                       InputError);
  SoakOptions options;
  options.phases = {{"M3C"}};
  CHECK(steel.soak(Temperature::celsius(900), options).element_shares("C").empty());
}
