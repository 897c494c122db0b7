#include "file_text.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel {

SharedParameters load_parameters(const std::filesystem::path& file,
                                 const SharedParameters& on_top_of) {
  const FileLimits limits;
  const std::string text = parameter_file::file_text(file, "parameter file", limits);
  return parse_parameters(text, file.filename().string(), on_top_of, limits);
}

}  // namespace gibbsteel
