#pragma once
/// Soaks over two swept variables: what maps are drawn from.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// What is swept: the soak temperature, or the weight percent of an element of the
/// steel (balance Fe).
struct SweptVariable {
  std::string name;            ///< "temperature", or the symbol of an element
  std::string unit;            ///< "C" (degrees Celsius), or "wt%"
  std::vector<double> values;  ///< in the order given

  static SweptVariable temperature(const std::vector<Temperature>& values);
  static SweptVariable element(std::string symbol, std::vector<double> weight_percent);
  bool is_temperature() const noexcept { return name == "temperature"; }
  /// "temperature [C]", "C in the steel [wt%]"
  std::string label() const;
  bool operator==(const SweptVariable&) const = default;
};

struct SoakGrid {
  std::string steel;
  MillAnalysis analysis;                   ///< of the steel that the grid was made from
  SweptVariable first;                     ///< rows
  SweptVariable second;                    ///< columns
  std::optional<Temperature> temperature;  ///< where it is not swept
  std::string parameters;                  ///< title and edition of the parameter set
  std::string parameters_hash;
  /// Row by row; empty where the caller stopped before the soak was done.
  std::vector<std::optional<State>> states;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  std::size_t rows() const noexcept { return first.values.size(); }
  std::size_t columns() const noexcept { return second.values.size(); }
  /// @pre row < rows(), column < columns()
  const std::optional<State>& at(std::size_t row, std::size_t column) const;
  /// One number per cell, row by row; NaN where a soak was not done or is not usable.
  /// @throws what the quantity throws
  std::vector<double> array(const Quantity& quantity) const;
  /// The distinct ones of the soaks, and those of the quantity, of each code the first;
  /// when it rests on families of steels also that soaks are near a border
  /// (gibbsteel.warning.335) or on both sides (.357).
  std::vector<Warning> warnings_of(const Quantity& quantity) const;
  std::size_t not_done() const noexcept;  ///< cells left empty
  std::size_t failures() const noexcept;  ///< soaks done that are not usable
  bool cancelled() const noexcept { return not_done() > 0; }
  /// Kinds of all carbides anywhere in the grid, in order of first appearance.
  std::vector<std::string> carbide_kinds() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables of carbide and of C in the matrix, warnings
};

/// Soaks at every pair of values; equal to that many single soaks of `steel.changed()`.
/// @param at        the soak temperature, when neither variable is the temperature
/// @param progress  called on the calling thread, after each soak that it did itself,
///                  with the number that all threads have done; return false to stop:
///                  the grid then holds what is done
/// @param threads   0: as many as the machine has cores; no number depends on it
/// @throws InputError with every problem: gibbsteel.input.295 (a variable twice, Fe, or
///         a temperature given and swept, or neither), .296 (no values, or not finite),
///         .210 (temperature), and as Steel for the compositions
SoakGrid soak_grid(const Steel& steel, const SweptVariable& first,
                   const SweptVariable& second, std::optional<Temperature> at = {},
                   const SoakOptions& options = {},
                   const std::function<bool(std::size_t)>& progress = {},
                   std::size_t threads = 0);

}  // namespace gibbsteel
