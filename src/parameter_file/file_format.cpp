#include "file_format.hpp"

#include <array>
#include <string>

#include "../internal/error_codes.hpp"
#include "field_reader.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 2> kFormatKeys{"name", "version"};
constexpr double kFormatVersion = 1.0;

}  // namespace

bool has_format(const JsonNode& root, std::string_view kind, Problems& problems) {
  const std::string a_kind = "a " + std::string(kind);
  if (root.type != JsonNode::Type::object) {
    problems.add(codes::kWrongFormat, "", "is " + std::string(kind_of(root)),
                 "give " + a_kind + ": an object with the key \"format\"");
    return false;
  }
  const JsonNode* format = root.find("format");
  const JsonNode* name = format == nullptr ? nullptr : format->find("name");
  const std::string wanted = "gibbsteel " + std::string(kind);
  if (name == nullptr || name->text != wanted) {
    problems.add(
        codes::kWrongFormat, format == nullptr ? "" : "/format",
        "does not say that this is " + a_kind,
        "begin with \"format\": {\"name\": \"" + wanted + "\", \"version\": 1}");
    return false;
  }
  const JsonNode* version = format->find("version");
  if (version == nullptr || version->type != JsonNode::Type::number ||
      version->number != kFormatVersion) {
    problems.add(codes::kWrongFormat, "/format/version",
                 "is no version that can be read here", "version 1 can be read");
    return false;
  }
  const FieldReader check_keys(*format, "/format", problems, kFormatKeys);
  return true;
}

}  // namespace gibbsteel::parameter_file
