#include "internal/temperature_functions.hpp"

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"

namespace gibbsteel::internal {
namespace {

/// T^n by repeated multiplication: the same bits on every platform.
double integer_power(double base, int exponent) noexcept {
  const int count = exponent < 0 ? -exponent : exponent;
  double product = 1.0;
  for (int i = 0; i < count; ++i) product *= base;
  return exponent < 0 ? 1.0 / product : product;
}

std::uint32_t curve_index(const ParameterSet& set, std::string_view name) {
  for (std::size_t i = 0; i < set.curves.size(); ++i)
    if (set.curves[i].name == name) return static_cast<std::uint32_t>(i);
  throw DataError(
      {{std::string(codes::kUnknownCurve), "curves",
        "there is no curve '" + std::string(name) + "'", "name a curve of the set"}});
}

}  // namespace

TemperatureValue power_value(TemperaturePower power, double t) noexcept {
  if (power.times_log) {
    const double log_t = std::log(t);
    return {t * log_t, log_t + 1.0, 1.0 / t};
  }
  const int n = power.exponent;
  const double value = integer_power(t, n);
  return {value, n * value / t, n * (n - 1) * value / (t * t)};
}

TemperaturePowers::TemperaturePowers(double kelvin) noexcept
    : kelvin_(kelvin), t_log_t_(power_value({1, true}, kelvin)) {
  for (int n = -kMost; n <= kMost; ++n)
    powers_[static_cast<std::size_t>(n + kMost)] = power_value({n, false}, kelvin);
}

TemperatureValue CompiledExpression::at(
    const TemperaturePowers& powers,
    std::span<const TemperatureValue> curve_values) const noexcept {
  TemperatureValue sum;
  for (const auto& term : terms) sum.add(term.coefficient, powers[term.power]);
  for (const auto& [curve, factor] : curves) sum.add(factor, curve_values[curve]);
  return sum;
}

CompiledExpression compile_expression(const ParameterSet& set,
                                      const Expression& source) {
  CompiledExpression result;
  result.terms = source.terms;
  for (const auto& share : source.curves)
    result.curves.emplace_back(curve_index(set, share.curve), share.factor);
  return result;
}

CurveTable::CurveTable(const ParameterSet& set) {
  for (const auto& curve : set.curves) {
    auto& pieces = pieces_.emplace_back();
    for (const auto& piece : curve.pieces)
      pieces.push_back({piece.up_to, compile_expression(set, piece.value)});
  }
  std::vector<bool> done(set.curves.size(), false);
  for (std::size_t i = 0; i < set.curves.size(); ++i) append_in_order(set, i, done);
}

void CurveTable::append_in_order(const ParameterSet& set, std::size_t curve,
                                 std::vector<bool>& done) {
  if (done[curve]) return;
  done[curve] = true;
  for (const auto& piece : pieces_[curve])
    for (const auto& share : piece.value.curves)
      append_in_order(set, share.first, done);
  order_.push_back(curve);
}

std::size_t CurveTable::piece_at(std::size_t curve, double kelvin) const noexcept {
  const auto& pieces = pieces_[curve];
  std::size_t k = 0;
  while (k + 1 < pieces.size() && kelvin >= pieces[k].up_to) ++k;
  return k;
}

void CurveTable::evaluate(const TemperaturePowers& powers,
                          std::span<TemperatureValue> out) const noexcept {
  for (const std::size_t i : order_)
    out[i] = pieces_[i][piece_at(i, powers.kelvin())].value.at(powers, out);
}

void CurveTable::propagate(double kelvin, std::span<double> change) const noexcept {
  for (const std::size_t i : order_)
    for (const auto& [curve, factor] : pieces_[i][piece_at(i, kelvin)].value.curves)
      change[i] += factor * change[curve];
}

}  // namespace gibbsteel::internal
