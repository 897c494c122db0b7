#include "calibrate/layer_correlations.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "gibbsteel/parameter_file.hpp"
#include "internal/number_format.hpp"
#include "parameter_file/number_in_words.hpp"

namespace gibbsteel::internal {
namespace {

using Names = std::vector<std::optional<CoefficientName>>;

struct Pair {
  std::size_t i = 0, j = 0;
  double coefficient = 0.0;
};

std::string count_of(std::size_t count, const char* what) {
  return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

std::vector<Pair> pairs_of(const Calibration& result, const Names& names,
                           std::vector<std::string>& remarks) {
  const std::size_t size = names.size();
  std::vector<Pair> pairs;
  std::size_t of_volumes = 0;
  for (std::size_t i = 0; i < size; ++i)
    for (std::size_t j = i + 1; j < size; ++j) {
      const double r = result.covariance[i * size + j] /
                       (result.numbers[i].deviation * result.numbers[j].deviation);
      if (r == 0.0) continue;
      if (names[i] && names[j])
        pairs.push_back({i, j, std::clamp(r, -1.0, 1.0)});
      else
        ++of_volumes;
    }
  if (of_volumes > 0)
    remarks.push_back("A file cannot state correlations of volumes: " +
                      count_of(of_volumes, "correlation") + " left out of the layer.");
  return pairs;
}

/// The largest ones, as many as a file may have.
void keep_largest(std::size_t most, std::vector<Pair>& pairs,
                  std::vector<std::string>& remarks) {
  if (pairs.size() <= most) return;
  remarks.push_back("A file holds at most " +
                    std::to_string(FileLimits{}.correlations) + " correlations: the " +
                    count_of(pairs.size() - most, "smallest one") +
                    " left out of the layer.");
  std::stable_sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) {
    return std::abs(a.coefficient) > std::abs(b.coefficient);
  });
  pairs.resize(most);
}

/// Leaving some out can make the rest impossible together; all are then made smaller
/// in the same proportion, no more than needed.
void make_possible(std::size_t size, std::vector<Pair>& pairs,
                   std::vector<std::string>& remarks) {
  const auto n = static_cast<Eigen::Index>(size);
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Identity(n, n);
  for (const auto& [i, j, r] : pairs) {
    const auto row = static_cast<Eigen::Index>(i),
               column = static_cast<Eigen::Index>(j);
    matrix(row, column) = matrix(column, row) = r;
  }
  const double smallest =
      Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd>(matrix, Eigen::EigenvaluesOnly)
          .eigenvalues()
          .minCoeff();
  if (smallest >= 0.0) return;
  const double factor = 1.0 / (1.0 - smallest);
  for (Pair& pair : pairs) pair.coefficient *= factor;
  if (factor < 0.999)
    remarks.push_back("The others are written times " + significant(factor, 3) +
                      ", so that they are possible together.");
}

bool is_one_of(const Names& names, const CoefficientName& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

/// True when a fitted number stands in the same term.
bool in_replaced_term(const Names& names, const CoefficientName& name) {
  return std::any_of(names.begin(), names.end(), [&](const auto& fitted) {
    return fitted && fitted->phase == name.phase && fitted->property == name.property &&
           fitted->on == name.on && fitted->order == name.order;
  });
}

}  // namespace

std::vector<Correlation> layer_correlations(const CalibrationProblem& problem,
                                            const Calibration& result,
                                            const Provenance& provenance,
                                            std::vector<std::string>& remarks) {
  Names names;
  for (const auto& number : problem.numbers())
    names.push_back(parameter_file::coefficient_name(problem.set(), number));
  std::vector<Correlation> kept;
  for (const Correlation& known : problem.set().correlations)
    if (!is_one_of(names, known.first) && !is_one_of(names, known.second) &&
        (in_replaced_term(names, known.first) || in_replaced_term(names, known.second)))
      kept.push_back(known);
  // What lies below counts too: the merged set must be a file that can be read.
  const std::size_t most = FileLimits{}.correlations;
  std::vector<Pair> pairs = pairs_of(result, names, remarks);
  keep_largest(most - std::min(most, problem.set().correlations.size()), pairs,
               remarks);
  make_possible(names.size(), pairs, remarks);
  for (const auto& [i, j, r] : pairs)
    kept.push_back({*names[i], *names[j], r, provenance});
  return kept;
}

}  // namespace gibbsteel::internal
