/// Places of numbers, against the text of the file itself.

#include "parameter_file/parameter_numbers.hpp"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "gibbsteel/parameter_file.hpp"

using namespace gibbsteel;
using Pointer = nlohmann::json::json_pointer;

namespace {

/// Places of the numbers that depend on nothing else: everything below "curves" and
/// "phases" but bounds, sites, orders, constants of the models and standard deviations.
void collect(const nlohmann::json& node, const std::string& place,
             std::set<std::string>& out) {
  static const std::set<std::string> kOthers{"order",
                                             "up_to_K",
                                             "from_K",
                                             "at_K",
                                             "magnetism",
                                             "sublattices",
                                             "second_occurrence",
                                             "standard_deviations"};
  if (node.is_number()) out.insert(place);
  if (node.is_object())
    for (const auto& [key, value] : node.items())
      if (!kOthers.contains(key))
        collect(value, (Pointer(place) / key).to_string(), out);
  if (node.is_array())
    for (std::size_t i = 0; i < node.size(); ++i)
      collect(node[i], (Pointer(place) / i).to_string(), out);
}

}  // namespace

TEST_CASE("every place holds its number in the text, and no number is missing") {
  const auto set = default_parameters();
  const auto text = nlohmann::json::parse(write_parameters(*set));
  std::set<std::string> places;
  for (const auto& number : parameter_file::parameter_numbers(*set)) {
    CAPTURE(number.place);
    REQUIRE(text.contains(Pointer(number.place)));
    CHECK(text.at(Pointer(number.place)).get<double>() == number.value);
    CHECK(places.insert(number.place).second);
  }
  std::set<std::string> expected;
  collect(text.at("curves"), "/curves", expected);
  collect(text.at("phases"), "/phases", expected);
  CHECK(places == expected);
}

TEST_CASE("units of the numbers") {
  const auto set = default_parameters();
  const auto unit_of = [&](const std::string& end) {
    for (const auto& number : parameter_file::parameter_numbers(*set))
      if (number.place.ends_with(end) && number.place.starts_with("/curves"))
        return number.unit;
    return std::string("not found");
  };
  CHECK(unit_of("/terms/1") == "J/mol");
  CHECK(unit_of("/terms/T") == "J/(mol K)");
  CHECK(unit_of("/terms/T ln T") == "J/(mol K)");
  CHECK(unit_of("/terms/T^2") == "J/(mol K^2)");
  CHECK(unit_of("/terms/T^-1") == "J K/mol");
  CHECK(unit_of("/terms/T^-9") == "J K^9/mol");
}
