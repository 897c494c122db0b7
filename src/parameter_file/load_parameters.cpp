#include <fstream>
#include <system_error>

#include "../internal/error_codes.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel {

namespace {

[[noreturn]] void refuse(std::string_view code, const std::string& file,
                         const std::string& what, const std::string& remedy) {
  throw DataError({{std::string(code), file, what, remedy}});
}

}  // namespace

SharedParameters load_parameters(const std::filesystem::path& file,
                                 const SharedParameters& on_top_of) {
  const std::string name = file.filename().string();
  const FileLimits limits;
  std::error_code error;
  const std::filesystem::file_status status = std::filesystem::status(file, error);
  if (!std::filesystem::exists(status))
    refuse(codes::kUnreadable, name, "there is no such file",
           "give the path of a parameter file");
  // A pipe or a device could keep us waiting, or never end.
  if (!std::filesystem::is_regular_file(status))
    refuse(codes::kUnreadable, name, "is a folder, a pipe or a device",
           "give the path of a parameter file");
  const auto size = std::filesystem::file_size(file, error);
  if (!error && size > limits.bytes)
    refuse(codes::kBeyondLimit, name, "has " + std::to_string(size) + " bytes",
           "at most " + std::to_string(limits.bytes) + " bytes are read");
  std::ifstream stream(file, std::ios::binary);
  std::string text(static_cast<std::size_t>(error ? 0 : size), '\0');
  stream.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (error || !stream)
    refuse(codes::kUnreadable, name, "cannot be read", "check that you may read it");
  return parse_parameters(text, name, on_top_of, limits);
}

}  // namespace gibbsteel
