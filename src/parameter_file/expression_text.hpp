#pragma once
/// Expressions and provenance in words, for pages that people read.

#include <string>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

/// "1 (iron, body-centred) - 1462.4 + 8.282 T"
std::string expression_text(const Expression& value);
/// "M6C, energy on (Cr + Fe, C) of order 0, power T"
std::string coefficient_text(const CoefficientName& name);
/// "recalled, confidence high", or "not stated" where the file gives no source
std::string kind_text(const Provenance& provenance);
/// Key of the source, or "not stated"
std::string source_text(const Provenance& provenance);

}  // namespace gibbsteel::parameter_file
