#pragma once
/// Parameter files and sets that are sound in form and hard in content. They stand for
/// no material.

#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::hostile {

inline const std::vector<std::string>& thirty_elements() {
  static const std::vector<std::string> symbols{
      "Fe", "C",  "Cr", "Mo", "W",  "V",  "Co", "Ni", "Mn", "Si",
      "Ti", "Nb", "Ta", "Zr", "Hf", "Al", "Cu", "N",  "B",  "P",
      "S",  "Sn", "Sb", "As", "Pb", "Zn", "Mg", "Ca", "La", "Ce"};
  return symbols;
}

inline std::string in_quotes(const std::string& text) { return '"' + text + '"'; }

/// ["a", "b"]
inline std::string list_of(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "" : ", ") + in_quotes(name);
  return "[" + text + "]";
}

/// One term of an energy with a constant value [J/mol].
inline std::string term(const std::string& on, double value, int order = -1) {
  std::ostringstream text;
  text << "{\"on\": " << on;
  if (order >= 0) text << ", \"order\": " << order;
  text << ", \"terms\": {\"1\": " << value << "}, \"source\": \"x\", "
       << "\"kind\": \"estimated\"}";
  return text.str();
}

struct PhaseText {
  std::string name, sublattices;
  std::vector<std::string> terms;
};

/// A complete file, valid from 300 K to 3000 K, all of whose curves are 0.
inline std::string file_of(const std::vector<std::string>& symbols,
                           const std::vector<PhaseText>& phases) {
  std::ostringstream text;
  text << R"({"format": {"name": "gibbsteel parameter file", "version": 1},
"title": "hostile", "edition": "1", "licence": "CC0-1.0",
"units": {"energy": "J/mol of formula units", "temperature": "K",
  "volume": "cm3/mol of formula units", "curie_temperature": "K",
  "magnetic_moment": "Bohr magnetons per site of sublattice 1"},
"reference_state": "none",
"validity": {"temperature_K": [300, 3000], "weight_percent": {")" +
              symbols.front() +
              R"(": [0, 100]}},
"sources": {"x": {"citation": "made up"}},
"curves": {"zero": {"from_K": 300, "pieces": [{"up_to_K": 3000, "terms": {"1": 0}}],
  "source": "x", "kind": "estimated"}},
"elements": {)";
  for (std::size_t i = 0; i < symbols.size(); ++i)
    text << (i > 0 ? ",\n" : "") << in_quotes(symbols[i])
         << ": {\"molar_mass_g_per_mol\": " << find_element(symbols[i])->molar_mass
         << ", \"reference_curve\": \"zero\"}";
  text << "},\n\"phases\": {";
  for (std::size_t f = 0; f < phases.size(); ++f) {
    text << (f > 0 ? ",\n" : "") << in_quotes(phases[f].name)
         << R"(: {"role": "other", "lattice": "none", "sublattices": )"
         << phases[f].sublattices << ", \"energy\": [";
    for (std::size_t i = 0; i < phases[f].terms.size(); ++i)
      text << (i > 0 ? ",\n" : "") << phases[f].terms[i];
    text << "]}";
  }
  return text.str() + "}}";
}

/// An interaction of one order and size between every two of `symbols`.
inline void add_order(PhaseText& phase, const std::vector<std::string>& symbols,
                      int order, double size) {
  for (std::size_t i = 0; i < symbols.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      phase.terms.push_back(
          term("[" + list_of({symbols[i], symbols[j]}) + "]", size, order));
}

/// A solution of all `symbols` on one sublattice: end members around `level`, an
/// interaction between every two of them of a size up to `spread`.
inline PhaseText solution(const std::string& name,
                          const std::vector<std::string>& symbols, double level,
                          double spread) {
  PhaseText phase{
      name, "[{\"sites\": 1, \"constituents\": " + list_of(symbols) + "}]", {}};
  for (std::size_t i = 0; i < symbols.size(); ++i) {
    const double wave =
        static_cast<double>((i * 37 + name.size() * 11) % 19) / 9.0 - 1.0;
    phase.terms.push_back(term("[" + in_quotes(symbols[i]) + "]", level * wave));
  }
  for (std::size_t i = 0; i < symbols.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      const double wave = static_cast<double>((i * 13 + j * 29) % 23) / 11.0 - 1.0;
      phase.terms.push_back(
          term("[" + list_of({symbols[i], symbols[j]}) + "]", spread * wave, 0));
    }
  return phase;
}

inline std::vector<std::string> names_of(const ParameterSet& set) {
  std::vector<std::string> names;
  for (const Phase& phase : set.phases) names.push_back(phase.name);
  return names;
}

}  // namespace gibbsteel::hostile
