#include "gibbsteel/named_values.hpp"

#include <algorithm>

namespace gibbsteel {

NamedValues::NamedValues(std::initializer_list<Entry> entries) {
  for (const Entry& entry : entries) set(entry.first, entry.second);
}

double NamedValues::operator[](std::string_view name) const noexcept {
  for (const Entry& entry : entries_) {
    if (entry.first == name) return entry.second;
  }
  return 0.0;
}

bool NamedValues::contains(std::string_view name) const noexcept {
  return std::any_of(entries_.begin(), entries_.end(),
                     [&](const Entry& entry) { return entry.first == name; });
}

void NamedValues::set(std::string_view name, double value) {
  for (Entry& entry : entries_) {
    if (entry.first == name) {
      entry.second = value;
      return;
    }
  }
  entries_.emplace_back(name, value);
}

double NamedValues::sum() const noexcept {
  double total = 0.0;
  for (const Entry& entry : entries_) total += entry.second;
  return total;
}

}  // namespace gibbsteel
