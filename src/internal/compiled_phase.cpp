#include "internal/compiled_phase.hpp"

#include <algorithm>
#include <optional>
#include <tuple>
#include <utility>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/phase_capacity.hpp"

namespace gibbsteel::internal {
namespace {

/// Finds constituents of one sublattice by name.
std::optional<std::uint16_t> index_of(const CompiledPhase& phase,
                                      std::size_t sublattice, std::string_view name) {
  for (std::size_t i = phase.first[sublattice]; i < phase.first[sublattice + 1]; ++i)
    if (phase.constituents[i].name == name) return static_cast<std::uint16_t>(i);
  return std::nullopt;
}

void add_constituents(CompiledPhase& out, const Phase& phase,
                      std::span<const std::string> active) {
  out.reachable = true;
  for (std::size_t s = 0; s < phase.sublattices.size(); ++s) {
    out.first.push_back(out.constituents.size());
    for (const auto& name : phase.sublattices[s].constituents) {
      const auto at = std::find(active.begin(), active.end(), name);
      if (at == active.end() && name != kVacancy) continue;
      const int element =
          at == active.end() ? -1 : static_cast<int>(at - active.begin());
      out.constituents.push_back({name, s, element});
      out.sites.push_back(phase.sublattices[s].sites);
    }
    if (out.first.back() == out.constituents.size()) out.reachable = false;
  }
  out.first.push_back(out.constituents.size());
}

/// Indices of a term's constituents; empty when one of them is not active.
struct TermShape {
  TermGroup group;
  bool operator<(const TermShape& other) const {
    const auto key = [](const TermGroup& g) {
      return std::tie(g.mixing, g.single_count, g.mixed, g.single);
    };
    return key(group) < key(other.group);
  }
};

std::optional<TermShape> shape_of(const CompiledPhase& phase, const Term& term) {
  TermShape shape;
  std::size_t mixed = 0, mixing_sublattices = 0, widest = 1;
  for (std::size_t s = 0; s < term.on.size(); ++s) {
    const auto& names = term.on[s];
    mixing_sublattices += names.size() > 1 ? 1u : 0u;
    widest = std::max(widest, names.size());
    for (const auto& name : names) {
      const auto i = index_of(phase, s, name);
      if (!i) return std::nullopt;
      if (names.size() > 1)
        shape.group.mixed[mixed++] = *i;
      else
        shape.group.single[shape.group.single_count++] = *i;
    }
  }
  if (mixing_sublattices == 2)
    shape.group.mixing = Mixing::reciprocal;
  else if (mixing_sublattices == 1)
    shape.group.mixing = widest == 2 ? Mixing::binary : Mixing::ternary;
  return shape;
}

/// @throws DataError when the coefficient is there already: neither the first nor the
///         last of two may win silently
void fill(CompiledExpression& coefficient, const ParameterSet& set,
          const CompiledPhase& phase, const Term& term) {
  if (!coefficient.terms.empty() || !coefficient.curves.empty())
    throw DataError({{std::string(codes::kTermTwice), phase.name,
                      "has the same term twice", "keep one of the two"}});
  coefficient = compile_expression(set, term.value);
}

/// Groups terms that differ in order only; orders a file leaves out become zeros.
CompiledTerms compile_terms(const ParameterSet& set, const CompiledPhase& phase,
                            const std::vector<Term>& terms) {
  std::vector<std::pair<TermShape, const Term*>> shapes;
  shapes.reserve(terms.size());
  for (const Term& term : terms)
    if (const auto shape = shape_of(phase, term)) shapes.emplace_back(*shape, &term);
  const auto by_shape = [](const auto& a, const auto& b) { return a.first < b.first; };
  std::stable_sort(shapes.begin(), shapes.end(), by_shape);
  CompiledTerms result;
  for (auto begin = shapes.begin(); begin != shapes.end();) {
    const auto end = std::upper_bound(begin, shapes.end(), *begin, by_shape);
    TermGroup group = begin->first.group;
    int highest = 0;
    for (auto member = begin; member != end; ++member)
      highest = std::max(highest, member->second->order.value_or(0));
    group.first_coefficient = result.polynomial.coefficient_count;
    group.coefficient_count = static_cast<std::uint8_t>(highest + 1);
    result.polynomial.coefficient_count += group.coefficient_count;
    result.coefficients.resize(result.polynomial.coefficient_count);
    for (; begin != end; ++begin) {
      const Term& term = *begin->second;
      const auto order = static_cast<std::uint32_t>(term.order.value_or(0));
      fill(result.coefficients[group.first_coefficient + order], set, phase, term);
    }
    result.polynomial.groups.push_back(group);
  }
  return result;
}

/// Curie temperatures and moments do not depend on T (checked by the reader).
void compile_constant(const ParameterSet& set, const CompiledPhase& phase,
                      const std::vector<Term>& terms, Polynomial& polynomial,
                      std::vector<double>& coefficients) {
  auto compiled = compile_terms(set, phase, terms);
  polynomial = std::move(compiled.polynomial);
  for (const auto& expression : compiled.coefficients)
    coefficients.push_back(expression.at(TemperaturePowers(1.0), {}).value);
}

}  // namespace

CompiledPhase compile_phase(const ParameterSet& set, const Phase& phase,
                            std::span<const std::string> active) {
  check_capacity(phase);
  CompiledPhase result;
  result.name = phase.name;
  add_constituents(result, phase, active);
  if (!result.reachable) return result;
  result.energy = compile_terms(set, result, phase.energy);
  if (phase.magnetism) {
    result.structure_factor = phase.magnetism->structure_factor;
    result.negative_value_divisor = phase.magnetism->negative_value_divisor;
    compile_constant(set, result, phase.curie_temperature, result.curie,
                     result.curie_coefficients);
    compile_constant(set, result, phase.magnetic_moment, result.moment,
                     result.moment_coefficients);
    if (result.curie.groups.empty() || result.moment.groups.empty())
      result.structure_factor = 0.0;
  }
  return result;
}

void PhaseCoefficients::refresh(const CompiledPhase& phase,
                                const TemperaturePowers& powers,
                                std::span<const TemperatureValue> curve_values) {
  kelvin = powers.kelvin();
  const std::size_t count = phase.energy.coefficients.size();
  value.resize(count);
  dt.resize(count);
  dt2.resize(count);
  for (std::size_t i = 0; i < count; ++i) {
    const auto v = phase.energy.coefficients[i].at(powers, curve_values);
    value[i] = v.value;
    dt[i] = v.dt;
    dt2[i] = v.dt2;
  }
}

}  // namespace gibbsteel::internal
