#include "tolerance/corner_search.hpp"

#include <cmath>
#include <map>

namespace gibbsteel::internal {
namespace {

using Corner = std::vector<bool>;  ///< true: the high end of that input

class Search {
 public:
  Search(const SoakAt& soak_at, const std::vector<Quantity>& quantities,
         const ToleranceOptions& options, ToleranceBand& band)
      : soak_at_(soak_at), quantities_(quantities), options_(options), band_(band) {}

  /// @param sign  +1 for the highest value, -1 for the lowest
  WorstCorner best(std::size_t quantity, double sign) {
    Corner corner = start(quantity, sign);
    soak({corner});
    while (!band_.cancelled) {
      const auto neighbours = neighbours_of(corner);
      soak(neighbours);
      Corner better = corner;
      for (const Corner& candidate : neighbours)
        if (score(candidate, quantity, sign) > score(better, quantity, sign))
          better = candidate;
      if (better == corner) break;
      corner = better;
    }
    const double value = sign * score(corner, quantity, sign);
    if (!std::isfinite(value)) return {};
    return {value, point_of(corner)};
  }

 private:
  /// The end of each input that its slope, or its trend over the samples, asks for.
  Corner start(std::size_t quantity, double sign) const {
    Corner corner;
    const QuantityBand& q = band_.quantities[quantity];
    for (std::size_t i = 0; i < band_.inputs.size(); ++i) {
      const double slope = q.contributions[i].slope;
      corner.push_back(sign * (std::isnan(slope) ? trend(quantity, i) : slope) >= 0.0);
    }
    return corner;
  }

  /// Something with the sign of the covariance; 0 without samples.
  double trend(std::size_t quantity, std::size_t input) const {
    const std::size_t columns = band_.inputs.size(), values = band_.quantities.size();
    const double mean = band_.quantities[quantity].sampled.mean;
    double sum = 0.0;
    for (std::size_t row = 0; row < band_.samples; ++row) {
      const double value = band_.sample_values[row * values + quantity] - mean;
      const double x = band_.sample_inputs[row * columns + input];
      if (!std::isnan(value)) sum += value * (x - band_.inputs[input].mean);
    }
    return sum;
  }

  std::vector<Corner> neighbours_of(const Corner& corner) const {
    std::vector<Corner> all(corner.size(), corner);
    for (std::size_t i = 0; i < corner.size(); ++i) all[i][i] = !corner[i];
    return all;
  }

  std::vector<double> point_of(const Corner& corner) const {
    std::vector<double> point;
    for (std::size_t i = 0; i < corner.size(); ++i)
      point.push_back(corner[i] ? band_.inputs[i].high : band_.inputs[i].low);
    return point;
  }

  /// Soaks those corners that were not soaked before.
  void soak(const std::vector<Corner>& corners) {
    std::vector<Corner> fresh;
    std::vector<std::vector<double>> points;
    for (const Corner& corner : corners) {
      if (known_.contains(corner)) continue;
      fresh.push_back(corner);
      points.push_back(point_of(corner));
    }
    if (fresh.empty()) return;
    const auto numbers = numbers_at(soak_at_, points, quantities_, options_.threads);
    for (std::size_t i = 0; i < fresh.size(); ++i) {
      known_[fresh[i]] = numbers[i].values;
      if (!numbers[i].trouble.empty())
        band_.unusable_corners.push_back({points[i], numbers[i].trouble});
    }
    band_.corners = known_.size();
    if (options_.progress && !options_.progress(band_.samples)) band_.cancelled = true;
  }

  /// Larger is better; a corner without a value is the worst.
  double score(const Corner& corner, std::size_t quantity, double sign) const {
    const double value = known_.at(corner)[quantity];
    return std::isnan(value) ? -HUGE_VAL : sign * value;
  }

  const SoakAt& soak_at_;
  const std::vector<Quantity>& quantities_;
  const ToleranceOptions& options_;
  ToleranceBand& band_;
  std::map<Corner, std::vector<double>> known_;
};

}  // namespace

void search_corners(const SoakAt& soak_at, const std::vector<Quantity>& quantities,
                    const ToleranceOptions& options, ToleranceBand& band) {
  Search search(soak_at, quantities, options, band);
  for (std::size_t q = 0; q < quantities.size(); ++q) {
    if (band.cancelled) return;  // a search that was cut short is no result
    const WorstCorner low = search.best(q, -1.0);
    const WorstCorner high = search.best(q, 1.0);
    if (band.cancelled) return;
    band.quantities[q].lowest_corner = low;
    band.quantities[q].highest_corner = high;
  }
}

}  // namespace gibbsteel::internal
