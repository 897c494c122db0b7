/// Which soak gives two steels the same matrix carbon as a third, and what the quench
/// then makes of them. Shop and heats are invented. The notebook is
/// ../notebooks/same_matrix_carbon.ipynb.

#include <iostream>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"

int main() {
  using namespace gibbsteel;
  const Steel heat_7({{"C", 0.55},
                      {"Cr", 4.5},
                      {"Mo", 2.75},
                      {"W", 2.0},
                      {"V", 1.0},
                      {"Mn", 0.3},
                      {"Si", 0.3}},
                     {"punch heat 7", {}, false});
  const Steel heat_9 = heat_7.changed({{"C", 0.65}, {"Co", 3.0}}, "punch heat 9");
  const Steel m2({{"C", 0.85},
                  {"Cr", 4.1},
                  {"Mo", 5.0},
                  {"W", 6.2},
                  {"V", 1.9},
                  {"Mn", 0.3},
                  {"Si", 0.3}},
                 {"M2", {}, false});
  const TemperatureRange range{Temperature::celsius(900), Temperature::celsius(1250)};

  std::vector<State> states{heat_7.soak(Temperature::celsius(1120))};
  for (const Steel* steel : {&heat_9, &m2}) {
    const MatchingTemperature match =
        matching_temperature(states.front(), *steel, quantities::matrix("C"), range);
    std::cout << match.full() << "\n";
    if (match.search.crossings.size() != 1) return 1;
    states.push_back(match.search.crossings.front().state);
  }
  const std::vector<Quantity> further{quantities::hardness_hrc()};
  std::cout << compare(states, further).full() << "\n";

  for (const State& state : states) {
    const HardeningEstimates quenched = hardening(state);
    std::cout << quenched.brief() << "\n";
    for (const Warning& warning : quenched.warnings)
      std::cout << "  ! " << warning.text << "\n";
  }
  return 0;
}
