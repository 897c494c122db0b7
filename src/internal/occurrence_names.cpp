#include "internal/occurrence_names.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "gibbsteel/elements.hpp"

namespace gibbsteel::internal {
namespace {

std::string english(const std::string& symbol) {
  const auto facts = find_element(symbol);
  return facts ? std::string(facts->name) : symbol;
}

bool is_metal(const std::string& symbol) {
  static constexpr std::array<std::string_view, 7> kNonmetals{"C", "N", "B", "S",
                                                              "P", "O", "H"};
  return std::find(kNonmetals.begin(), kNonmetals.end(), symbol) == kNonmetals.end();
}

/// Metals (Si counts as one) by how much richer `o` is in them than `first`, the
/// richest first.
std::vector<std::string> richer_in(const Occurrence& o, const Occurrence& first) {
  std::vector<std::pair<double, std::string>> order;
  for (const auto& [symbol, fraction] : o.atom_fraction)
    if (is_metal(symbol))
      order.emplace_back(fraction - first.atom_fraction[symbol], symbol);
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<std::string> names;
  for (const auto& [difference, symbol] : order) names.push_back(english(symbol));
  return names;
}

std::string name_with(const std::string& kind, const std::vector<std::string>& metals,
                      std::size_t count) {
  std::string text = kind + ", ";
  for (std::size_t i = 0; i + 1 < count; ++i) text += metals[i] + "- and ";
  return text + metals[count - 1] + "-rich";
}

bool is_taken(const std::vector<Occurrence>& all, const std::string& name) {
  return std::any_of(all.begin(), all.end(),
                     [&](const Occurrence& o) { return o.name == name; });
}

}  // namespace

void name_occurrences(std::vector<Occurrence>& all) {
  for (Occurrence& o : all) {
    if (!is_taken(all, o.kind)) {
      o.name = o.kind;
      continue;
    }
    const auto first =
        std::find_if(all.begin(), all.end(),
                     [&](const Occurrence& other) { return other.name == o.kind; });
    const auto metals = richer_in(o, *first);
    std::size_t count = 1;
    while (count < metals.size() && is_taken(all, name_with(o.kind, metals, count)))
      ++count;
    o.name = name_with(o.kind, metals, count);
  }
}

}  // namespace gibbsteel::internal
