#pragma once
/// The text of a file on disk.

#include <filesystem>
#include <string>
#include <string_view>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::parameter_file {

/// @param kind  for messages: "parameter file"
/// @throws DataError gibbsteel.data.101 (cannot be read), .103 (too large)
std::string file_text(const std::filesystem::path& file, std::string_view kind,
                      const FileLimits& limits);

}  // namespace gibbsteel::parameter_file
