#include "gibbsteel/search_options.hpp"

#include "internal/number_format.hpp"

namespace gibbsteel {

std::vector<Problem> SearchOptions::problems() const {
  std::vector<Problem> found;
  const auto require = [&](bool good, const char* name, const std::string& value,
                           const char* remedy) {
    if (!good) found.push_back({"gibbsteel.input.251", name, "is " + value, remedy});
  };
  using internal::shortest;
  require(node_spacing >= 0.01 && node_spacing <= 100.0, "node_spacing",
          shortest(node_spacing), "give 0.01 to 100 [K]");
  require(tolerance >= 1e-4 && tolerance <= 1.0, "tolerance", shortest(tolerance),
          "give 0.0001 to 1 [K]");
  require(most_soaks >= 10, "most_soaks", std::to_string(most_soaks),
          "give 10 or more");
  return found;
}

}  // namespace gibbsteel
