#pragma once
/// The mill certificate, sorted into modelled and not modelled, and what the latter
/// bind by simple stoichiometry.

#include <string>
#include <vector>

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel {

/// A compound that takes elements out of the calculation (only when asked for).
struct BoundCompound {
  std::string name;             ///< "MnS", "TiN", "NbN", "VN"
  double weight_percent = 0.0;  ///< of the steel
  bool operator==(const BoundCompound&) const = default;
};

/// The mill certificate, sorted into modelled and not modelled.
struct MillAnalysis {
  NamedValues given;         ///< as entered, weight percent; Fe is the balance
  NamedValues modelled;      ///< weight percent that enter the calculation, Fe first
  NamedValues not_modelled;  ///< known elements that the parameter file does not model
  std::vector<BoundCompound> bound;  ///< empty unless asked for

  /// Mole fractions of modelled, normalized to sum 1. An element below a mole fraction
  /// of 1e-15 counts as absent.
  /// @throws InputError gibbsteel.input.206 (another set, which lacks an element)
  NamedValues mole_fractions(const ParameterSet& set) const;
  /// As given: "0.55C 4.5Cr, balance Fe" [weight percent]
  std::string brief() const;
  bool operator==(const MillAnalysis&) const = default;
};

/// Checks and sorts a composition in weight percent.
///
/// Fe may be left out (it is the balance) or given (then all must sum to 100 within
/// 0.05). With `bind_tramp_elements`, S ties up Mn, and N ties up Ti, then Nb, then V,
/// atom for atom, while both last; not S or N that `set` models: it is in there.
/// @throws InputError with every problem: gibbsteel.input.201 (no such element),
///         .202 (not a finite number), .203 (negative), .204 (above 100, or sum above
///         100), .207 (sum with Fe is not 100), .208 (empty, or nothing that can be
///         modelled)
MillAnalysis read_analysis(const NamedValues& weight_percent, const ParameterSet& set,
                           bool bind_tramp_elements = false);

}  // namespace gibbsteel
