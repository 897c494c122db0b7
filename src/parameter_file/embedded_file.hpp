#pragma once
/// The texts of files in thermo_data/; generated at build time by embed.cmake.

#include <string_view>

namespace gibbsteel::parameter_file {

std::string_view embedded_tool_steel();
std::string_view embedded_published_measurements();

}  // namespace gibbsteel::parameter_file
