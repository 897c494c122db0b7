/// Kernels in lanes against Eigen and against one number at a time: the results do not
/// depend on the number of lanes, to the bit.

#include <doctest/doctest.h>

#include <Eigen/Dense>
#include <random>

#include "../../benchmarks/high_speed_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "lanes/lane_kernels.hpp"
#include "minimizer/column_pool.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

std::vector<std::size_t> lane_counts() {
  std::vector<std::size_t> counts;
  for (std::size_t lanes = 1; lanes <= widest_lanes(); lanes *= 2)
    counts.push_back(lanes);
  return counts;
}

using Dense = Eigen::MatrixXd;

Dense random_matrix(Eigen::Index rows, Eigen::Index columns, std::mt19937_64& random) {
  std::uniform_real_distribution<double> uniform(-1.0, 1.0);
  return Dense::NullaryExpr(rows, columns, [&] { return uniform(random); });
}

/// A factor, orthonormal directions and rows of `elements` numbers.
struct Rows {
  Rows(std::size_t n, std::size_t elements) : shape{} {
    std::mt19937_64 random(n * 100 + elements);
    const auto rows = static_cast<Eigen::Index>(n);
    lower = random_matrix(rows, rows, random).triangularView<Eigen::Lower>();
    lower.diagonal().array() += 3.0;
    basis = Eigen::HouseholderQR<Dense>(random_matrix(rows, 2, random)).householderQ() *
            Dense::Identity(rows, 2);
    x = random_matrix(rows, static_cast<Eigen::Index>(elements), random);
    stored = lower;
    stored.diagonal() = stored.diagonal().cwiseInverse().eval();
    shape.lower = stored.data();
    shape.basis = basis.data();
    shape.n = n;
    shape.sublattices = 2;
    shape.elements = elements;
    shape.stride = ElementRows::stride_for(elements);
  }

  /// The rows in the memory that the lanes work on.
  ElementRows in(AlignedNumbers& memory) const {
    memory.reserve(shape.n * shape.stride);
    ElementRows rows = shape;
    rows.x = memory.data();
    for (Eigen::Index i = 0; i < x.rows(); ++i)
      for (Eigen::Index e = 0; e < x.cols(); ++e)
        rows.x[static_cast<std::size_t>(i) * rows.stride +
               static_cast<std::size_t>(e)] = x(i, e);
    return rows;
  }

  Dense lower, stored, basis, x;
  ElementRows shape;
};

Dense as_matrix(const double* numbers, std::size_t rows, std::size_t columns,
                std::size_t stride) {
  using RowMajor =
      Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
  const auto index = [](std::size_t i) { return static_cast<Eigen::Index>(i); };
  return Eigen::Map<const RowMajor, 0, Eigen::OuterStride<>>(
      numbers, index(rows), index(columns), Eigen::OuterStride<>(index(stride)));
}

}  // namespace

TEST_CASE("rows of the elements: those of Eigen, the same bits in every lane count") {
  for (const std::size_t n : {2u, 7u, 13u})
    for (const std::size_t elements : {1u, 3u, 8u, 10u, 17u}) {
      const Rows rows(n, elements);
      Dense expected = rows.lower.triangularView<Eigen::Lower>().solve(rows.x);
      expected -= rows.basis * (rows.basis.transpose() * expected);
      const Dense products = 0.3 * expected.transpose() * expected;
      Dense first, first_products;
      for (const std::size_t lanes : lane_counts()) {
        CAPTURE(n);
        CAPTURE(elements);
        CAPTURE(lanes);
        AlignedNumbers memory, sums;
        const ElementRows in = rows.in(memory);
        lane_kernels(lanes).project_rows(in);
        const Dense x = as_matrix(in.x, n, elements, in.stride);
        CHECK((x - expected).cwiseAbs().maxCoeff() < 1e-14);
        sums.reserve(elements * in.stride);
        lane_kernels(lanes).add_row_products(in, 0.3, sums.data());
        const Dense lower = as_matrix(sums.data(), elements, elements, in.stride)
                                .triangularView<Eigen::Lower>();
        const Dense wanted = products.triangularView<Eigen::Lower>();
        CHECK((lower - wanted).cwiseAbs().maxCoeff() < 1e-14);
        if (lanes == 1) first = x, first_products = lower;
        CHECK(x == first);
        CHECK(lower == first_products);
      }
    }
}

TEST_CASE("energies of many compositions: those of the kernel, to the bit") {
  const Steel& steel = benchmarks::high_speed_steel();
  const PhaseSystem system(default_parameters(), steel.elements(),
                           benchmarks::all_phases());
  const auto conditions =
      conditions_of(system, Temperature::celsius(1100.0), steel.mole_fractions());
  ColumnPool pool(conditions.elements());
  add_seeds(conditions, pool);
  for (std::size_t f = 0; f < conditions.phases.size(); ++f) {
    const Candidate& candidate = conditions.phases[f];
    std::vector<double> y, expected;
    for (const std::size_t column : pool.columns_of(f)) {
      const auto one = pool.y(column);
      y.insert(y.end(), one.begin(), one.end());
      expected.push_back(gibbs_energy(*candidate.phase, candidate.at, one.data()));
    }
    for (const std::size_t lanes : lane_counts()) {
      CAPTURE(candidate.phase->name);
      CAPTURE(lanes);
      std::vector<double> energy(expected.size());
      lane_kernels(lanes).energies({candidate.phase, &candidate.at, conditions.rt,
                                    y.data(), energy.size(), energy.data()});
      CHECK(energy == expected);
    }
  }
}

TEST_CASE("distances of columns: the sums written down, to the bit") {
  std::mt19937_64 random(3);
  std::uniform_real_distribution<double> uniform(0.0, 1.0);
  const std::vector<double> mu{-3e4, -7e4, 1e3};
  for (const std::size_t count : {1u, 7u, 8u, 9u, 40u}) {
    ColumnBlocks blocks(mu.size());
    std::vector<double> expected;
    for (std::size_t k = 0; k < count; ++k) {
      const double x[] = {uniform(random), uniform(random), uniform(random)};
      const double energy = -1e5 * uniform(random);
      blocks.add(x, energy);
      double d = energy;
      for (std::size_t e = 0; e < mu.size(); ++e) d -= mu[e] * x[e];
      expected.push_back(d);
    }
    for (const std::size_t lanes : lane_counts()) {
      CAPTURE(count);
      CAPTURE(lanes);
      AlignedNumbers out;
      out.reserve(blocks.count() * ColumnBlocks::kColumns);
      lane_kernels(lanes).column_distances(blocks, mu.data(), out.data());
      CHECK(std::vector<double>(out.data(), out.data() + count) == expected);
    }
  }
}
