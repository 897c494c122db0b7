#include "file_text.hpp"

#include <fstream>
#include <system_error>

#include "../internal/error_codes.hpp"
#include "gibbsteel/errors.hpp"

namespace gibbsteel::parameter_file {

namespace {

[[noreturn]] void refuse(std::string_view code, const std::string& file,
                         const std::string& what, const std::string& remedy) {
  throw DataError({{std::string(code), file, what, remedy}});
}

}  // namespace

std::string file_text(const std::filesystem::path& file, std::string_view kind,
                      const FileLimits& limits) {
  const std::string name = file.filename().string();
  const std::string remedy = "give the path of a " + std::string(kind);
  std::error_code error;
  const std::filesystem::file_status status = std::filesystem::status(file, error);
  if (!std::filesystem::exists(status))
    refuse(codes::kUnreadable, name, "there is no such file", remedy);
  // A pipe or a device could keep us waiting, or never end.
  if (!std::filesystem::is_regular_file(status))
    refuse(codes::kUnreadable, name, "is a folder, a pipe or a device", remedy);
  const auto size = std::filesystem::file_size(file, error);
  if (!error && size > limits.bytes)
    refuse(codes::kBeyondLimit, name, "has " + std::to_string(size) + " bytes",
           "at most " + std::to_string(limits.bytes) + " bytes are read");
  std::ifstream stream(file, std::ios::binary);
  std::string text(static_cast<std::size_t>(error ? 0 : size), '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (error || !stream)
    refuse(codes::kUnreadable, name, "cannot be read", "check that you may read it");
  return text;
}

}  // namespace gibbsteel::parameter_file
