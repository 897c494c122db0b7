#pragma once
/// Names of the kinds of phase, and what an unknown name may have meant.

#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// Names of all phases and second occurrences, in the order of the file.
std::vector<std::string> kind_names(const ParameterSet& set);

/// Those that are carbides.
std::vector<std::string> carbide_kind_names(const ParameterSet& set);

/// "did you mean 'M3C'? " for "m3c" or "cementite" when M3C is known; else empty.
std::string kind_hint(const std::vector<std::string>& known, std::string_view name);

/// gibbsteel.input.205: the name is not one of those known.
Problem no_such_kind(const std::vector<std::string>& known, std::string_view name,
                     const std::string& place);

}  // namespace gibbsteel::internal
