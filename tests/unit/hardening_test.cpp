/// Hardening estimates of a state: the chain, families, slopes, wrong arguments.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

Steel matrix_steel() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}
}
TEST_CASE("print") {
  MESSAGE(hardening(matrix_steel().soak(Temperature::celsius(1120))).full());
  HardeningOptions o; o.particle_diameter=0.5;
  MESSAGE(hardening(Steel({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}}).soak(Temperature::celsius(845)),o).full());
}
