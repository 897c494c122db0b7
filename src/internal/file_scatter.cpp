#include "internal/file_scatter.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/temperature_for.hpp"
#include "internal/slopes_of_soak.hpp"

namespace gibbsteel::internal {

FileScatter::FileScatter(const ParameterSet& set)
    : numbers_(parameter_file::uncertain_numbers(set)) {
  deviations_.resize(static_cast<Eigen::Index>(numbers_.size()));
  for (const auto& number : numbers_) {
    deviations_[static_cast<Eigen::Index>(places_.size())] = number.standard_deviation;
    places_.push_back(number.place);
  }
  correlations_ = parameter_file::correlations_of(set, numbers_);
}

bool FileScatter::acts_on(const std::string& kind, const State& state) const {
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind)
      for (const auto& number : numbers_)
        if (parameter_file::acts_on(number, o.phase, state.analysis.modelled))
          return true;
  return false;
}

Eigen::VectorXd FileScatter::none() const {
  return Eigen::VectorXd::Zero(deviations_.size());
}

Eigen::VectorXd FileScatter::unknown() const {
  return Eigen::VectorXd::Constant(deviations_.size(), Occurrence::kUnknown);
}

FileScatter::Slopes FileScatter::slopes(const SoakProblem& problem,
                                        const Equilibrium& result, const State& state,
                                        const Quantity& quantity) const {
  Slopes found;
  found.scatters = unknown();
  const auto of_state = slopes_of_soak(problem, result, state,
                                       {std::vector<std::string>{}, places_, false});
  if (of_state.empty()) return found;  // not usable
  found.per_kelvin = quantity.slope(state, of_state.front());
  found.one_sided = of_state.front().one_sided;
  for (Eigen::Index i = 0; i < deviations_.size(); ++i)
    found.scatters[i] =
        deviations_[i] *
        quantity.slope(state, of_state[static_cast<std::size_t>(i) + 1]);
  return found;
}

double FileScatter::of_temperature(const Slopes& slopes,
                                   const Eigen::VectorXd& target) const {
  const Eigen::VectorXd moves = slopes.scatters - target;
  const double variance = moves.dot(correlations_ * moves);                 // Eq. (U5)
  const double kelvin = std::sqrt(variance) / std::abs(slopes.per_kelvin);  // Eq. (B8)
  if (!(kelvin > 0.0 && std::isfinite(kelvin))) return Occurrence::kUnknown;
  return std::min(kelvin, kFarthestUncertainty);
}

}  // namespace gibbsteel::internal
