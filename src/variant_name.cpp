#include "internal/variant_name.hpp"

#include <algorithm>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

/// True for " 0.9 C" when the symbol is C.
bool says(const std::string& part, const std::string& symbol) {
  const std::string end = " " + symbol;
  if (part.size() <= end.size() + 1 || part.front() != ' ' || !part.ends_with(end))
    return false;
  const std::string number = part.substr(1, part.size() - end.size() - 1);
  return number.find_first_not_of("0123456789.e-") == std::string::npos;
}

/// The name without the parts between commas that say how much of the element there is.
std::string without(const std::string& name, const std::string& symbol) {
  std::string kept;
  for (std::size_t begin = 0; begin <= name.size();) {
    const std::size_t end = std::min(name.find(',', begin), name.size());
    const std::string part = name.substr(begin, end - begin);
    if (begin == 0)
      kept = part;
    else if (!says(part, symbol))
      kept += "," + part;
    begin = end + 1;
  }
  return kept;
}

}  // namespace

std::string variant_name(std::string name, const NamedValues& weight_percent) {
  if (name.empty()) return name;
  for (const auto& [symbol, percent] : weight_percent)
    name = without(name, symbol) + ", " + significant(percent, 6) + " " + symbol;
  return name;
}

}  // namespace gibbsteel::internal
