#include "lanes/descents.hpp"
#include "lanes/run_descents.hpp"

namespace gibbsteel::internal {

void descend_one(DescentTask& task) noexcept { one::Descents<double>(task).run(); }

}  // namespace gibbsteel::internal
