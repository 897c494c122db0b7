#pragma once
/// Curves and phases as JSON, see write_parameters.cpp.

#include <string>

#include "gibbsteel/parameter_set.hpp"
#include "json_text.hpp"

namespace gibbsteel::parameter_file {

void add_expression(JsonText& object, const Expression& expression);
void add_provenance(JsonText& object, const Provenance& provenance);

std::string curve_json(const Curve& curve);
std::string phase_json(const Phase& phase);
std::string correlation_json(const Correlation& correlation);
/// Terms and volumes only, as a layer gives them for a phase that lies below.
std::string phase_terms_json(const Phase& phase);

}  // namespace gibbsteel::parameter_file
