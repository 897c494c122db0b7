#include "read_expression.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <optional>

#include "../internal/error_codes.hpp"
#include "message_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr int kHighestPower = 9;
constexpr NumberRange kAnyNumber{std::numeric_limits<double>::lowest(),
                                 std::numeric_limits<double>::max()};
constexpr NumberRange kDeviations{0.0, 1e12, false, true};
constexpr std::size_t kMostPowers = 20;
constexpr std::size_t kMostShares = 40;

std::optional<TemperaturePower> power_of(std::string_view text) {
  if (text == "1") return TemperaturePower{0, false};
  if (text == "T") return TemperaturePower{1, false};
  if (text == "T ln T") return TemperaturePower{1, true};
  for (int exponent = -kHighestPower; exponent <= kHighestPower; ++exponent) {
    if (exponent == 0 || exponent == 1) continue;
    if (text == power_text({exponent, false})) return TemperaturePower{exponent, false};
  }
  return std::nullopt;
}

void read_powers(const JsonNode& node, const std::string& place, Problems& problems,
                 Expression& expression) {
  if (!is_object(node, place, kMostPowers, problems)) return;
  for (const JsonNode& item : node.items) {
    const std::string item_place = place + "/" + pointer_step(item.key);
    const auto power = read_power(item.key, item_place, problems);
    const auto coefficient = read_number(item, item_place, kAnyNumber, problems);
    if (power && coefficient) expression.terms.push_back({*power, *coefficient, 0.0});
  }
}

void read_shares(const JsonNode& node, const std::string& place, Problems& problems,
                 Expression& expression) {
  if (!is_object(node, place, kMostShares, problems)) return;
  for (const JsonNode& item : node.items) {
    const std::string item_place = place + "/" + pointer_step(item.key);
    const auto factor = read_number(item, item_place, kAnyNumber, problems);
    if (factor) expression.curves.push_back({item.key, *factor});
  }
}

}  // namespace

std::string power_text(const TemperaturePower& power) {
  if (power.times_log) return "T ln T";
  if (power.exponent == 0) return "1";
  if (power.exponent == 1) return "T";
  return "T^" + std::to_string(power.exponent);
}

Expression read_expression(const FieldReader& fields, Problems& problems) {
  Expression expression;
  if (!fields.readable()) return expression;
  const JsonNode* terms = fields.find("terms", Need::optional);
  const JsonNode* curves = fields.find("curves", Need::optional);
  if (terms == nullptr && curves == nullptr) {
    problems.add(codes::kNoValue, fields.place(),
                 "neither \"terms\" nor \"curves\" is given",
                 "give at least one; a zero is written \"terms\": {\"1\": 0}");
  }
  if (curves != nullptr) {
    read_shares(*curves, fields.place_of("curves"), problems, expression);
  }
  if (terms != nullptr) {
    read_powers(*terms, fields.place_of("terms"), problems, expression);
  }
  return expression;
}

std::optional<TemperaturePower> read_power(const std::string& text,
                                           const std::string& place,
                                           Problems& problems) {
  const std::optional<TemperaturePower> power = power_of(text);
  if (!power) {
    problems.add(codes::kUnknownPower, place, in_quotes(text) + " is not a power of T",
                 "give \"1\", \"T\", \"T ln T\" or \"T^n\" with n from -9 to 9 but "
                 "neither 0 nor 1");
  }
  return power;
}

void read_deviations(const FieldReader& fields, Expression& expression,
                     Problems& problems) {
  const JsonNode* node = fields.find("standard_deviations", Need::optional);
  const std::string place = fields.place_of("standard_deviations");
  if (node == nullptr || !is_object(*node, place, kMostPowers, problems)) return;
  for (const JsonNode& item : node->items) {
    const std::string item_place = place + "/" + pointer_step(item.key);
    const auto power = read_power(item.key, item_place, problems);
    const auto deviation = read_number(item, item_place, kDeviations, problems);
    if (!power || !deviation) continue;
    const auto found =
        std::find_if(expression.terms.begin(), expression.terms.end(),
                     [&](const TemperatureTerm& term) { return term.power == *power; });
    if (found != expression.terms.end()) {
      found->standard_deviation = *deviation;
    } else {
      problems.add(codes::kDeviationWithoutNumber, item_place,
                   "the term has no coefficient of " + in_quotes(item.key),
                   "give standard deviations of the coefficients under \"terms\" only");
    }
  }
}

Provenance read_provenance(const FieldReader& fields, Need need,
                           const std::string& file) {
  static constexpr std::array<std::string_view, 3> kKinds{"published", "recalled",
                                                          "estimated"};
  static constexpr std::array<std::string_view, 3> kConfidences{"high", "medium",
                                                                "low"};
  Provenance provenance;
  provenance.file = file;
  const bool stated = fields.has("source") || fields.has("kind");
  const Need both = stated ? Need::required : need;
  provenance.source = fields.name("source", both).value_or("");
  if (const auto kind = fields.word("kind", both, kKinds)) {
    provenance.kind = static_cast<Kind>(*kind);
  }
  if (const auto level = fields.word("confidence", Need::optional, kConfidences)) {
    provenance.confidence = static_cast<Confidence>(*level + 1);
  }
  if (fields.has("note")) {
    provenance.note = fields.text("note", Need::optional).value_or("");
  }
  return provenance;
}

}  // namespace gibbsteel::parameter_file
