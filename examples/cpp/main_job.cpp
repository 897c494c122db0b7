/// Two punch steels of an invented tool shop, soaked from 1000 to 1200 C: which
/// carbides, and what is left in the matrix. The Python twin is ../main_job.py.

#include <iostream>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"

int main() {
  using namespace gibbsteel;
  const std::vector<Steel> heats{Steel({{"C", 0.55},
                                        {"Cr", 4.5},
                                        {"Mo", 2.75},
                                        {"W", 2.0},
                                        {"V", 1.0},
                                        {"Mn", 0.3},
                                        {"Si", 0.3}},
                                       {"punch heat 7 (matrix-style)", {}, false}),
                                 Steel({{"C", 0.90},
                                        {"Cr", 4.1},
                                        {"Mo", 5.0},
                                        {"W", 6.2},
                                        {"V", 1.9},
                                        {"Mn", 0.3},
                                        {"Si", 0.3}},
                                       {"punch heat 12 (full-carbide)", {}, false})};
  std::vector<Temperature> temperatures;
  for (int celsius = 1000; celsius <= 1200; celsius += 25)
    temperatures.push_back(Temperature::celsius(celsius));
  for (const Steel& steel : heats) {
    const Sweep sweep = steel.sweep(temperatures);
    if (sweep.failures() > 0) return 1;
    std::cout << sweep.full() << "\n";
  }
  return 0;
}
