/// Sets made by hand cannot overrun what the kernels hold.

#include <doctest/doctest.h>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/phase_model.hpp"
#include "internal/phase_kernel.hpp"

using namespace gibbsteel;

// The limits of files and the arrays of the kernels are the same numbers.
static_assert(FileLimits{}.sublattices_per_phase <= internal::kMaxSublattices);
static_assert(FileLimits{}.constituents_per_phase <= internal::kMaxConstituents);

namespace {

const std::vector<std::string> kActive{"Fe", "C"};

std::string refusal(const Phase& phase) {
  try {
    PhaseModel(*default_parameters(), phase, kActive);
  } catch (const DataError& error) {
    return error.what();
  }
  return "accepted";
}

Phase ferrite() { return *default_parameters()->find_phase("ferrite"); }

}  // namespace

TEST_CASE("too many sublattices or constituents") {
  Phase many = ferrite();
  many.energy.clear();
  many.curie_temperature.clear();
  many.magnetic_moment.clear();
  many.sublattices.assign(7, {1.0, {"Fe"}});
  CHECK(refusal(many) ==
        "[gibbsteel.data.103] ferrite: has more than 6 sublattices; use at most 6");
  many.sublattices.assign(1, {1.0, std::vector<std::string>(65, "Fe")});
  CHECK(refusal(many) ==
        "[gibbsteel.data.103] ferrite: has more than 64 constituents; use at most 64");
}

TEST_CASE("orders and shapes that no kernel knows") {
  for (const int order : {-3, 6, 40}) {
    Phase phase = ferrite();
    phase.energy.push_back({{{"Fe", "Cr"}, {"vacancy"}}, order, {}, {}});
    CHECK(refusal(phase) ==
          "[gibbsteel.data.154] ferrite: has a term of an order that is not known; use "
          "orders 0 to 5 for two constituents, 0 to 2 for three, 0 for two times two");
  }
  Phase phase = ferrite();
  phase.energy.push_back({{{"Fe", "Cr", "Mo"}, {"C", "vacancy"}}, 0, {}, {}});
  CHECK(
      refusal(phase) ==
      "[gibbsteel.data.154] ferrite: has a term of a shape that is not known; mix two "
      "or three constituents on one sublattice or two on two");
}

TEST_CASE("a magnetic term made of curves") {
  Phase phase = ferrite();
  phase.curie_temperature[0].value.curves = {{"iron, body-centred", 1.0}};
  CHECK(refusal(phase).find("has a magnetic term made of curves; give a number") !=
        std::string::npos);
}
