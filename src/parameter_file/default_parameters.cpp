#include "embedded_file.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel {

SharedParameters default_parameters() {
  static const SharedParameters set =
      parse_parameters(parameter_file::embedded_tool_steel(), "tool_steel.json");
  return set;
}

}  // namespace gibbsteel
