#pragma once
/// The candidate phases of a parameter set, compiled for the elements present.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/phase_model.hpp"

namespace gibbsteel {

class PhaseSystem {
 public:
  /// @param elements  symbols present, each modelled by `set`, none twice; at least one
  /// @param phases    names of candidate phases; names of second occurrences ("MC") are
  ///                  accepted for the phase model that holds them
  /// @throws InputError gibbsteel.input.205 (no such phase), .215 (element named
  /// twice),
  ///         .206 (element not
  /// modelled)
  PhaseSystem(SharedParameters set, std::vector<std::string> elements,
              const std::vector<std::string>& phases);

  const ParameterSet& parameters() const noexcept { return *set_; }
  const SharedParameters& shared_parameters() const noexcept { return set_; }
  const std::vector<std::string>& elements() const noexcept { return elements_; }
  /// Reachable candidate phases only.
  const std::vector<PhaseModel>& phases() const noexcept { return phases_; }
  /// Parameters of phases()[i].
  const Phase& definition(std::size_t i) const noexcept { return *definitions_[i]; }

 private:
  SharedParameters set_;
  std::vector<std::string> elements_;
  std::vector<PhaseModel> phases_;
  std::vector<const Phase*> definitions_;
};

}  // namespace gibbsteel
