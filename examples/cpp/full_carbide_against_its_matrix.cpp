/// A full-carbide high-speed steel against the steel made of its own matrix: what the
/// twin still holds, and where both have the same matrix carbon. The shop is invented.
/// The notebook is ../notebooks/full_carbide_against_its_matrix.ipynb.

#include <iostream>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"

int main() {
  using namespace gibbsteel;
  const Steel m2({{"C", 0.85},
                  {"Cr", 4.1},
                  {"Mo", 5.0},
                  {"W", 6.2},
                  {"V", 1.9},
                  {"Mn", 0.3},
                  {"Si", 0.3}},
                 {"M2", {}, false});
  std::vector<Temperature> others;
  for (int celsius = 1000; celsius < 1200; celsius += 25)
    others.push_back(Temperature::celsius(celsius));
  const TwinStudy study = twin_study(m2, Temperature::celsius(1200), others);
  std::cout << study.full() << "\n";

  const State reference = m2.soak(Temperature::celsius(1150));
  const TemperatureRange range{Temperature::celsius(950), Temperature::celsius(1230)};
  const MatchingTemperature match =
      matching_temperature(reference, study.twin, quantities::matrix("C"), range);
  std::cout << match.full();
  return match.search.crossings.size() == 1 ? 0 : 1;
}
