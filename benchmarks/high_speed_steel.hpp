#pragma once
/// The steel that most benchmarks soak: nine elements beside iron, all phases of the
/// shipped file.

#include <string>
#include <vector>

#include "gibbsteel/gibbsteel.hpp"

namespace gibbsteel::benchmarks {

/// 0.85C 4.1Cr 5Mo 6.2W 1.9V 5Co 0.3Ni 0.3Mn 0.3Si
inline const Steel& high_speed_steel() {
  static const Steel steel{{{"C", 0.85},
                            {"Cr", 4.1},
                            {"Mo", 5.0},
                            {"W", 6.2},
                            {"V", 1.9},
                            {"Co", 5.0},
                            {"Ni", 0.3},
                            {"Mn", 0.3},
                            {"Si", 0.3}}};
  return steel;
}

inline std::vector<std::string> all_phases() {
  std::vector<std::string> names;
  for (const Phase& phase : default_parameters()->phases) names.push_back(phase.name);
  return names;
}

}  // namespace gibbsteel::benchmarks
