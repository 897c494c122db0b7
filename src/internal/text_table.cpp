#include "internal/text_table.hpp"

#include <algorithm>
#include <sstream>

namespace gibbsteel::internal {

const char* const kCaution =
    "Long-hold limit (true equilibrium): a shop soak of minutes leaves more carbide "
    "and "
    "less carbon in the matrix. Before hardening real parts try coupons and follow the "
    "steel maker's data. Hot salt, oil, cryogens and furnaces injure: local codes and "
    "licensed practice come first.";

const char* const kMeasuredCaution =
    "Mass balance with carbide seen under the microscope: no better than the count. "
    "Before hardening real parts try coupons and follow the steel maker's data. Hot "
    "salt, oil, cryogens and furnaces injure: local codes and licensed practice come "
    "first.";

const char* const kShortSoakCaution =
    "Short-soak limit: carbon has moved, metals have not; as a rule a real soak lies "
    "between this and the long-hold limit. Before hardening real parts try coupons and "
    "follow the "
    "steel maker's data. Hot salt, oil, cryogens and furnaces injure: local codes and "
    "licensed practice come first.";

const char* const kTimedSoakCaution =
    "Estimate of a soak of minutes, counted from when the whole section is at "
    "temperature and known to a factor of three, which bands of hardening estimates do "
    "not hold. Before "
    "hardening real parts try coupons and follow the steel maker's data. Hot salt, "
    "oil, cryogens and furnaces injure: local codes and licensed practice come first.";

std::string text_table(const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::size_t> widths;
  for (const auto& row : rows)
    for (std::size_t c = 0; c < row.size(); ++c) {
      if (c == widths.size()) widths.push_back(0);
      widths[c] = std::max(widths[c], row[c].size());
    }
  std::string text;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t c = 0; c < row.size(); ++c) {
      const std::string fill(widths[c] - row[c].size(), ' ');
      line += c == 0 ? row[c] + fill : "  " + fill + row[c];
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  return text;
}

std::string wrapped(const std::string& text, std::size_t width, std::size_t indent) {
  std::istringstream words(text);
  std::string result, line, word;
  while (words >> word) {
    if (!line.empty() && line.size() + 1 + word.size() > width) {
      result += line + "\n";
      line = std::string(indent, ' ') + word;
    } else {
      line += (line.empty() ? "" : " ") + word;
    }
  }
  return result + line + "\n";
}

}  // namespace gibbsteel::internal
