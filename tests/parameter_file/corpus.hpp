#pragma once
/// Files of this folder.

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace corpus {

inline std::filesystem::path folder(const std::string& name) {
  return std::filesystem::path(GIBBSTEEL_SOURCE_DIR) / "tests" / "parameter_file" /
         name;
}

inline std::string content_of(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  REQUIRE_MESSAGE(stream.good(), file.string());
  return {std::istreambuf_iterator<char>(stream), {}};
}

/// The JSON files of a folder by name.
inline std::vector<std::filesystem::path> files_of(const std::string& name) {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder(name))) {
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

/// GIBBSTEEL_REGENERATE=1 writes expected texts instead of comparing them.
inline bool regenerating() { return std::getenv("GIBBSTEEL_REGENERATE") != nullptr; }

/// What the reader says to `text`; empty if it accepts it.
inline std::string complaint(std::string_view text, const std::string& name,
                             const gibbsteel::SharedParameters& below = nullptr,
                             const gibbsteel::FileLimits& limits = {}) {
  try {
    gibbsteel::parse_parameters(text, name, below, limits);
  } catch (const gibbsteel::DataError& error) {
    return error.what();
  }
  return "";
}

/// The small good file with one passage replaced.
inline std::string small_with(const std::string& old_text,
                              const std::string& new_text) {
  std::string text = content_of(folder("good") / "small.json");
  const std::size_t at = text.find(old_text);
  REQUIRE_MESSAGE(at != std::string::npos, old_text);
  return text.replace(at, old_text.size(), new_text);
}

}  // namespace corpus
