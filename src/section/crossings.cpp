#include "section/crossings.hpp"

#include <algorithm>
#include <iterator>
#include <numeric>

namespace gibbsteel::internal {
namespace {

using Offset = std::ptrdiff_t;

}  // namespace

void merge_at(std::size_t k, Crossings& edge) {
  const auto i = static_cast<Offset>(k);
  edge.at[k] = std::midpoint(edge.at[k], edge.at[k + 1]);
  edge.at.erase(edge.at.begin() + i + 1);
  edge.labels.erase(edge.labels.begin() + i + 1);
  if (edge.labels[k] != edge.labels[k + 1]) return;
  edge.at.erase(edge.at.begin() + i);
  edge.labels.erase(edge.labels.begin() + i + 1);
}

void set_ends(std::size_t first, std::size_t last, Crossings& edge) {
  if (edge.labels.front() != first) {
    if (edge.labels.size() > 1 && edge.labels[1] == first && edge.at.front() < 0.5) {
      edge.labels.erase(edge.labels.begin());
      edge.at.erase(edge.at.begin());
    } else {
      edge.labels.insert(edge.labels.begin(), first);
      edge.at.insert(edge.at.begin(), 0.0);
    }
  }
  if (edge.labels.back() == last) return;
  edge.labels.push_back(last);
  edge.at.push_back(1.0);
}

void merge_narrow(double length, Crossings& edge) {
  while (edge.at.size() > 1) {
    std::size_t narrowest = 0;
    const auto width = [&](std::size_t k) { return edge.at[k + 1] - edge.at[k]; };
    for (std::size_t k = 1; k + 1 < edge.at.size(); ++k)
      if (width(k) < width(narrowest)) narrowest = k;
    if (width(narrowest) * length >= 1.0) return;
    merge_at(narrowest, edge);
  }
}

std::pair<Crossings, Crossings> halves(const Crossings& edge) {
  const auto middle = std::lower_bound(edge.at.begin(), edge.at.end(), 0.5);
  const auto k = middle - edge.at.begin();
  Crossings low{{edge.labels.begin(), edge.labels.begin() + k + 1},
                {edge.at.begin(), middle}};
  Crossings high{{edge.labels.begin() + k, edge.labels.end()}, {middle, edge.at.end()}};
  for (double& s : low.at) s *= 2.0;
  for (double& s : high.at) s = 2.0 * s - 1.0;
  return {std::move(low), std::move(high)};
}

Crossings reversed(const Crossings& edge) {
  Crossings turned{{edge.labels.rbegin(), edge.labels.rend()},
                   {edge.at.rbegin(), edge.at.rend()}};
  for (double& s : turned.at) s = 1.0 - s;
  return turned;
}

}  // namespace gibbsteel::internal
