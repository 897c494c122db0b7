/// How much carbide a new composition will hold: one soak, the hardening range, where
/// the carbides end, and what a normal heat does. The shop and its purchase limits are
/// invented. The notebook is ../notebooks/carbide_of_a_new_composition.ipynb.

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
  const Temperature soak = Temperature::celsius(1120);
  const State state = heat_7.soak(soak);
  if (!state.usable()) return 1;
  std::cout << state.full() << "\n";

  std::vector<Temperature> temperatures;
  for (int celsius = 900; celsius <= 1220; celsius += 20)
    temperatures.push_back(Temperature::celsius(celsius));
  std::cout << heat_7.sweep(temperatures).full() << "\n";

  const TemperatureRange range = usual_range(*heat_7.parameters());
  for (const char* kind : {"M6C", "MC"})
    std::cout << dissolution_temperature(heat_7, kind, range).brief() << "\n";

  HeatTolerances normal_heat;
  normal_heat.ranges = {{"C", 0.53, 0.57}, {"V", 0.90, 1.10}, {"Mo", 2.60, 2.90}};
  normal_heat.furnace_error = 8.0;
  ToleranceOptions options;
  options.samples = 64;
  const std::vector<Quantity> asked{quantities::carbide_volume_percent(),
                                    quantities::matrix("C")};
  std::cout << "\n" << tolerance_band(heat_7, soak, normal_heat, asked, options).full();
  return 0;
}
