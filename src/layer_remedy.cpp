#include "internal/layer_remedy.hpp"

#include <algorithm>
#include <array>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::internal {
namespace {

/// The second goes with the first and liquid, and is laid by itself.
constexpr std::array kBeside{"iron_as_measured", "iron_as_measured_liquid",
                             "niobium_titanium_nitrogen", "liquid"};

/// Name of the layer beside the shipped file; empty for any other.
std::string layer_name(const FileRecord& file) {
  const std::string name = file.name.substr(0, file.name.rfind(".json"));
  return std::find(kBeside.begin(), kBeside.end(), name) == kBeside.end() ? "" : name;
}

/// `"niobium_titanium_nitrogen", "liquid"`; empty when the set holds other layers too.
std::string call_arguments(const ParameterSet& set, const std::string& layer) {
  std::string names;
  for (auto file = set.files.begin() + 1; file != set.files.end(); ++file) {
    const std::string name = layer_name(*file);
    if (name.empty()) return "";
    if (name != kBeside[1]) names += '"' + name + "\", ";
  }
  return names + '"' + layer + '"';
}

}  // namespace

std::string how_to_lay(const ParameterSet& set, const std::string& layer) {
  const FileRecord& shipped = default_parameters()->files.front();
  if (set.files.empty() || set.files.front().title != shipped.title) return "";
  const std::string text = "lay layers/" + layer + ".json on it";
  const std::string arguments = call_arguments(set, layer);
  if (arguments.empty() || set.files.front() != shipped) return text;
  return text + ", in Python steel.with_parameters(default_parameters(" + arguments +
         "))";
}

std::string layer_remedy(const ParameterSet& set, const std::string& layer) {
  const std::string how = how_to_lay(set, layer);
  return how.empty() ? "" : " L" + how.substr(1) + ".";
}

}  // namespace gibbsteel::internal
