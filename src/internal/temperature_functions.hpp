#pragma once
/// Values and temperature derivatives of the sums of powers and curves in a parameter
/// file, Eq. (P1).

#include <array>
#include <cstdint>
#include <span>
#include <utility>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// f, df/dT and d2f/dT2 at one temperature.
struct TemperatureValue {
  double value = 0.0;
  double dt = 0.0;
  double dt2 = 0.0;

  void add(double factor, const TemperatureValue& other) noexcept {
    value += factor * other.value;
    dt += factor * other.dt;
    dt2 += factor * other.dt2;
  }
};

/// T^n or T ln T.
TemperatureValue power_value(TemperaturePower power, double kelvin) noexcept;

/// The powers at one temperature, worked out once for all expressions.
class TemperaturePowers {
 public:
  explicit TemperaturePowers(double kelvin) noexcept;
  double kelvin() const noexcept { return kelvin_; }
  TemperatureValue operator[](TemperaturePower power) const noexcept {
    if (power.times_log) return t_log_t_;
    const int at = power.exponent + kMost;
    if (at < 0 || at > 2 * kMost) return power_value(power, kelvin_);
    return powers_[static_cast<std::size_t>(at)];
  }

 private:
  static constexpr int kMost = 9;  ///< exponents of a parameter file: -9 to 9
  double kelvin_;
  TemperatureValue t_log_t_;
  std::array<TemperatureValue, 2 * kMost + 1> powers_;
};

/// An expression whose curves are given by index.
struct CompiledExpression {
  std::vector<TemperatureTerm> terms;
  std::vector<std::pair<std::uint32_t, double>> curves;

  /// @param curve_values  values of all curves of the set at the same temperature
  TemperatureValue at(const TemperaturePowers& powers,
                      std::span<const TemperatureValue> curve_values) const noexcept;
};

CompiledExpression compile_expression(const ParameterSet& set,
                                      const Expression& source);

/// All curves of a set, each after the curves that it is made of. Expects curves that
/// exist and do not form a cycle (checked by the reader).
class CurveTable {
 public:
  explicit CurveTable(const ParameterSet& set);
  std::size_t size() const noexcept { return order_.size(); }
  /// @param out  length size(); entry i belongs to set.curves[i]
  void evaluate(const TemperaturePowers& powers,
                std::span<TemperatureValue> out) const noexcept;
  /// Piece of a curve that holds at a temperature.
  std::size_t piece_at(std::size_t curve, double kelvin) const noexcept;
  /// Adds to the change of every curve those of the curves that it is made of.
  /// @param change  length size(): what changes in the curve itself; on return all
  void propagate(double kelvin, std::span<double> change) const noexcept;

 private:
  struct Piece {
    double up_to;
    CompiledExpression value;
  };
  void append_in_order(const ParameterSet& set, std::size_t curve,
                       std::vector<bool>& done);

  std::vector<std::vector<Piece>> pieces_;
  std::vector<std::size_t> order_;
};

}  // namespace gibbsteel::internal
