#pragma once
/// A phase with every kind of term the model knows, in numbers chosen at random: the
/// shipped files use only some of them. It stands for no material.

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::contract {

inline Term synthetic_term(std::vector<std::vector<std::string>> on,
                           std::optional<int> order, double a, double b) {
  Term term;
  term.on = std::move(on);
  term.order = order;
  term.value.terms = {{{0, false}, a},
                      {{1, false}, b},
                      {{1, true}, -0.3},
                      {{2, false}, 1e-4},
                      {{-1, false}, 2e4}};
  term.value.curves = {{"pieces", 0.5}};
  return term;
}

inline Term synthetic_constant(std::vector<std::vector<std::string>> on,
                               std::optional<int> order, double a) {
  Term term;
  term.on = std::move(on);
  term.order = order;
  term.value.terms = {{{0, false}, a}};
  return term;
}

/// Three sublattices, vacancies on two of them, orders 0 to 5, ternary and reciprocal
/// terms, a Curie temperature and a moment that change sign.
inline Phase synthetic_phase() {
  Phase p;
  p.name = "synthetic";
  p.sublattices = {{2.5, {"Fe", "Cr", "Mo"}},
                   {1.0, {"C", "Si", "vacancy"}},
                   {0.5, {"V", "vacancy"}}};
  p.magnetism = Magnetism{0.35, 2.0};
  double a = -1000.0;
  for (const char* metal : {"Fe", "Cr", "Mo"})
    for (const char* middle : {"C", "Si", "vacancy"})
      for (const char* last : {"V", "vacancy"})
        p.energy.push_back(
            synthetic_term({{metal}, {middle}, {last}}, std::nullopt, a *= -1.15, 3.0));
  for (int order = 0; order <= 5; ++order) {
    p.energy.push_back(synthetic_term({{"Fe", "Cr"}, {"C"}, {"V"}}, order,
                                      9000.0 - 2500.0 * order, -2.0));
    p.energy.push_back(synthetic_term({{"Fe"}, {"Si", "vacancy"}, {"vacancy"}}, order,
                                      -7000.0 + 3000.0 * order, 1.0));
  }
  for (int order = 0; order <= 2; ++order) {
    p.energy.push_back(synthetic_term({{"Fe", "Cr", "Mo"}, {"C"}, {"vacancy"}}, order,
                                      20000.0 - 15000.0 * order, 4.0));
    p.energy.push_back(synthetic_term({{"Mo"}, {"C", "Si", "vacancy"}, {"V"}}, order,
                                      -11000.0 + 9000.0 * order, -3.0));
  }
  p.energy.push_back(
      synthetic_term({{"Fe", "Mo"}, {"C", "vacancy"}, {"V"}}, 0, -31000.0, 6.0));
  p.energy.push_back(
      synthetic_term({{"Cr"}, {"Si", "vacancy"}, {"V", "vacancy"}}, 0, 17000.0, 2.0));
  p.curie_temperature = {
      synthetic_constant({{"Fe"}, {"vacancy"}, {"vacancy"}}, std::nullopt, 60000.0),
      synthetic_constant({{"Cr"}, {"C"}, {"V"}}, std::nullopt, -90000.0),
      synthetic_constant({{"Fe", "Cr"}, {"vacancy"}, {"V"}}, 1, 40000.0)};
  p.magnetic_moment = {
      synthetic_constant({{"Fe"}, {"vacancy"}, {"vacancy"}}, std::nullopt, 2.2),
      synthetic_constant({{"Mo"}, {"Si"}, {"vacancy"}}, std::nullopt, -1.1)};
  return p;
}

inline SharedParameters synthetic_set() {
  auto set = std::make_shared<ParameterSet>();
  for (const char* symbol : {"Fe", "C", "Cr", "Mo", "V", "Si"})
    set->elements.push_back({symbol, 1.0, "pieces", ""});
  Curve curve;
  curve.name = "pieces";
  curve.pieces = {{1100.0, {{{{0, false}, 500.0}, {{3, false}, -1e-7}}, {}}},
                  {6000.0, {{{{0, false}, 700.0}, {{-9, false}, 1e28}}, {}}}};
  set->curves = {curve};
  set->phases = {synthetic_phase()};
  return set;
}

}  // namespace gibbsteel::contract
