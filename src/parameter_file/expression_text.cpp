#include "expression_text.hpp"

#include "message_text.hpp"
#include "number_text.hpp"
#include "read_expression.hpp"
#include "term_key.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr const char* kNotStated = "not stated";

void append_part(std::string& text, double factor, const std::string& of) {
  const bool negative = factor < 0.0;
  if (!text.empty()) {
    text += negative ? " - " : " + ";
  } else if (negative) {
    text += '-';
  }
  text += number_text(negative ? -factor : factor);
  if (of.empty()) return;
  text += ' ';
  text += of;
}

}  // namespace

std::string expression_text(const Expression& value) {
  std::string text;
  for (const CurveShare& share : value.curves) {
    std::string name = "(";
    name += share.curve;
    name += ')';
    append_part(text, share.factor, name);
  }
  for (const TemperatureTerm& term : value.terms) {
    const std::string power = power_text(term.power);
    append_part(text, term.coefficient, power == "1" ? std::string() : power);
    if (term.standard_deviation > 0.0)
      text += " (+- " + number_text(term.standard_deviation) + ")";
  }
  return text.empty() ? "0" : text;
}

std::string coefficient_text(const CoefficientName& name) {
  std::string text = printable(name.phase) + ", " +
                     std::string(to_string(name.property)) + " on " + on_text(name.on);
  if (name.order) text += " of order " + std::to_string(*name.order);
  return text + ", power " + power_text(name.power);
}

std::string kind_text(const Provenance& provenance) {
  std::string text(provenance.source.empty() ? kNotStated : to_string(provenance.kind));
  if (provenance.confidence != Confidence::unstated) {
    text += ", confidence ";
    text += to_string(provenance.confidence);
  }
  return text;
}

std::string source_text(const Provenance& provenance) {
  return provenance.source.empty() ? kNotStated : provenance.source;
}

}  // namespace gibbsteel::parameter_file
