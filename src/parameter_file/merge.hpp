#pragma once
/// Joins a file with the set it is laid on.

#include "draft.hpp"
#include "gibbsteel/parameter_set.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

/// Reports what a layer cannot do. The result is not checked for sense yet.
ParameterSet merge(const Draft& draft, const ParameterSet* below, Problems& problems);

}  // namespace gibbsteel::parameter_file
