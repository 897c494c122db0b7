#pragma once
/// The steel of the tests of short and timed soaks: AISI 52100.

#include "gibbsteel/measured_carbide.hpp"

inline gibbsteel::Steel bearing() {
  return gibbsteel::Steel({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}},
                          {"AISI 52100", {}, false});
}

inline gibbsteel::Temperature celsius(double value) {
  return gibbsteel::Temperature::celsius(value);
}

inline double carbon(const gibbsteel::ShortSoak& soak) {
  return soak.state.matrix.weight_percent["C"];
}
