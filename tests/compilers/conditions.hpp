#pragma once
/// The soaks whose numbers are compared between compilers and machines.

#include <array>
#include <utility>
#include <vector>

namespace gibbsteel::testing {

struct Condition {
  const char* name;
  double celsius;
  std::vector<std::pair<const char*, double>> weight_percent;  ///< balance Fe
};

/// Steels by standard designation (nominal compositions from memory) and compositions
/// that are hard on the numbers: traces, a miscibility gap, graphite-free cast iron.
inline const std::array kConditions{
    Condition{"1080 annealed", 650, {{"C", 0.8}, {"Mn", 0.75}, {"Si", 0.2}}},
    Condition{"1080 hardened", 800, {{"C", 0.8}, {"Mn", 0.75}, {"Si", 0.2}}},
    Condition{"52100", 845, {{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}}},
    Condition{
        "52100 hot", 1100, {{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}}},
    Condition{
        "O1", 800, {{"C", 0.95}, {"Mn", 1.2}, {"Cr", 0.5}, {"W", 0.5}, {"V", 0.2}}},
    Condition{"S7", 940, {{"C", 0.5}, {"Cr", 3.25}, {"Mo", 1.4}, {"Mn", 0.7}}},
    Condition{
        "H13", 1030, {{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.3}, {"V", 1.0}, {"Si", 1.0}}},
    Condition{"H13 annealed", 750, {{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.3}, {"V", 1.0}}},
    Condition{"A2", 970, {{"C", 1.0}, {"Cr", 5.2}, {"Mo", 1.1}, {"V", 0.25}}},
    Condition{"D2", 1020, {{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}}},
    Condition{"D2 annealed", 800, {{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}}},
    Condition{"420", 1050, {{"C", 0.38}, {"Cr", 13.6}, {"Mn", 0.5}, {"Si", 0.5}}},
    Condition{
        "M2", 1200, {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}}},
    Condition{"M2 low",
              1000,
              {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}}},
    Condition{
        "M42",
        1180,
        {{"C", 1.1}, {"Cr", 3.8}, {"Mo", 9.5}, {"W", 1.5}, {"V", 1.15}, {"Co", 8.0}}},
    Condition{"T1", 1250, {{"C", 0.75}, {"Cr", 4.1}, {"W", 18.0}, {"V", 1.1}}},
    Condition{"ten elements",
              1050,
              {{"C", 0.6},
               {"Cr", 4.0},
               {"Mo", 2.0},
               {"W", 2.0},
               {"V", 1.0},
               {"Co", 2.0},
               {"Ni", 1.0},
               {"Mn", 0.5},
               {"Si", 0.8}}},
    Condition{"traces", 900, {{"C", 1e-6}, {"Cr", 1e-5}, {"V", 1e-7}, {"Ni", 1e-4}}},
    Condition{"two ferrites", 450, {{"Cr", 45.0}, {"Ni", 1.0}}},
    Condition{"white iron", 1050, {{"C", 2.8}, {"Cr", 26.0}, {"Mn", 0.8}, {"Si", 0.6}}},
};

}  // namespace gibbsteel::testing
