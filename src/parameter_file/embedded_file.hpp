#pragma once
/// The text of thermo_data/tool_steel.json; generated at build time by embed.cmake.

#include <string_view>

namespace gibbsteel::parameter_file {

std::string_view embedded_tool_steel();

}  // namespace gibbsteel::parameter_file
