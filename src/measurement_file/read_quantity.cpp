#include "measurement_file/read_quantity.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "internal/error_codes.hpp"
#include "parameter_file/message_text.hpp"

namespace gibbsteel::measurement_file {
namespace {

using namespace parameter_file;

enum Word : std::size_t {
  weight_percent,
  volume_percent,
  mass_percent,
  carbon_activity,
  martensite_start,
  retained_austenite,
  retained_austenite_of_matrix,
  hardness_hrc,
  hardness_hv,
};
constexpr std::array<std::string_view, 9> kWords{"weight percent",
                                                 "volume percent",
                                                 "mass percent",
                                                 "carbon activity",
                                                 "martensite start",
                                                 "retained austenite",
                                                 "retained austenite of the matrix",
                                                 "hardness HRC",
                                                 "hardness HV"};
constexpr std::string_view kMatrix = "matrix", kCarbides = "carbides";
constexpr NumberRange kColdest{-200.0, 100.0};  // [C]

std::optional<std::string> element_of(const FieldReader& fields, Problems& problems) {
  auto symbol = fields.name("of", Need::required);
  if (!symbol || gibbsteel::find_element(*symbol)) return symbol;
  problems.add(codes::kNoElement, fields.place_of("of"),
               in_quotes(*symbol) + " is no element",
               "give the symbol of a chemical element, as \"Cr\"");
  return std::nullopt;
}

Quantity percent_in(const std::string& part, const std::string& element) {
  if (part == kMatrix) return quantities::matrix(element);
  if (part == kCarbides) return quantities::in_carbides(element);
  return quantities::in_phase(part, element);
}

Quantity amount_of(Word word, const std::string& part) {
  const bool volume = word == volume_percent;
  if (part == kCarbides)
    return volume ? quantities::carbide_volume_percent()
                  : quantities::carbide_mass_percent();
  return volume ? quantities::volume_percent(part) : quantities::mass_percent(part);
}

/// What does not belong to a quantity is no typing error of somebody else.
void refuse_unused(const FieldReader& fields, std::string_view key, Word word,
                   Problems& problems) {
  if (!fields.has(key)) return;
  problems.add(codes::kUnknownKey, fields.place_of(key),
               "does not belong to " + in_quotes(kWords[word]), "leave it out");
}

std::optional<Quantity> read_part(const FieldReader& fields, Word word,
                                  Problems& problems) {
  refuse_unused(fields, "coldest_celsius", word, problems);
  const auto part = fields.name("in", Need::required);
  if (word == weight_percent) {
    const auto element = element_of(fields, problems);
    if (!part || !element) return std::nullopt;
    return percent_in(*part, *element);
  }
  refuse_unused(fields, "of", word, problems);
  if (!part) return std::nullopt;
  if (*part != kMatrix) return amount_of(word, *part);
  problems.add(codes::kWrongWord, fields.place_of("in"), "is \"matrix\"",
               "give \"carbides\" or a kind of phase");
  return std::nullopt;
}

std::optional<Quantity> read_hardening(const FieldReader& fields, Word word,
                                       Problems& problems) {
  for (const auto key : {"in", "of"}) refuse_unused(fields, key, word, problems);
  HardeningOptions options;
  if (const auto coldest = fields.number("coldest_celsius", Need::optional, kColdest))
    options.coldest = Temperature::celsius(*coldest);
  if (word == martensite_start) return quantities::martensite_start(options);
  if (word == retained_austenite) return quantities::retained_austenite(options);
  if (word == retained_austenite_of_matrix)
    return quantities::retained_austenite_of_matrix(options);
  if (word == hardness_hrc) return quantities::hardness_hrc(options);
  return quantities::hardness_hv(options);
}

}  // namespace

std::optional<Quantity> read_quantity(const FieldReader& fields, Problems& problems) {
  const auto found = fields.word("quantity", Need::required, kWords);
  if (!found) return std::nullopt;
  const auto word = static_cast<Word>(*found);
  if (word <= mass_percent) return read_part(fields, word, problems);
  if (word != carbon_activity) return read_hardening(fields, word, problems);
  for (const auto key : {"in", "of", "coldest_celsius"})
    refuse_unused(fields, key, word, problems);
  return quantities::carbon_activity();
}

}  // namespace gibbsteel::measurement_file
