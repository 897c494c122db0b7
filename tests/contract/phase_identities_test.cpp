/// Identities that hold for every phase whatever its parameters.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "phase_contract.hpp"

using namespace gibbsteel;

namespace {

constexpr double kKelvin = 1273.15;

std::size_t sublattices(const PhaseModel& model) {
  return model.constituents().back().sublattice + 1;
}

/// mu_e = G + sum_s (G_i(s) - sum_j y_j G_j): potential of the end member that has
/// constituent `pick[s]` on sublattice s.
double end_member_potential(const PhaseModel& model, const PhaseDerivatives& d,
                            const std::vector<double>& y,
                            const std::vector<std::size_t>& pick) {
  double mu = d.value;
  for (const std::size_t i : pick) mu += d.dy[i];
  for (std::size_t i = 0; i < y.size(); ++i) mu -= y[i] * d.dy[i];
  (void)model;
  return mu;
}

/// Calls `action(pick, weight)` for every end member, weight = product of its
/// fractions.
template <typename Action>
void for_end_members(const PhaseModel& model, const std::vector<double>& y,
                     const Action& action) {
  std::vector<std::size_t> pick;
  const auto recurse = [&](const auto& self, std::size_t s, double weight) -> void {
    if (s == sublattices(model)) return action(pick, weight);
    for (std::size_t i = 0; i < y.size(); ++i) {
      if (model.constituents()[i].sublattice != s) continue;
      pick.push_back(i);
      self(self, s + 1, weight * y[i]);
      pick.pop_back();
    }
  };
  recurse(recurse, 0, 1.0);
}

}  // namespace

TEST_CASE("every phase: end-member potentials add up to the energy (homogeneity)") {
  std::mt19937_64 random(7);
  contract::for_every_phase(
      [&](const ParameterSet&, const Phase& phase, const PhaseModel& model) {
        CAPTURE(phase.name);
        const auto y = contract::random_fractions(model, random);
        const auto d = model.evaluate(Temperature::kelvin(kKelvin), y);
        double sum = 0.0;
        for_end_members(model, y, [&](const auto& pick, double weight) {
          sum += weight * end_member_potential(model, d, y, pick);
        });
        CHECK(sum == doctest::Approx(d.value).epsilon(1e-11));
      });
}

TEST_CASE("every phase: Gibbs-Duhem, weighted changes of potentials cancel") {
  std::mt19937_64 random(11);
  contract::for_every_phase(
      [&](const ParameterSet&, const Phase& phase, const PhaseModel& model) {
        CAPTURE(phase.name);
        const auto y = contract::random_fractions(model, random);
        const auto other = contract::random_fractions(model, random);
        // Direction towards another composition keeps the sums of the sublattices.
        constexpr double h = 1e-5;
        std::vector<double> up(y), down(y);
        for (std::size_t i = 0; i < y.size(); ++i) {
          up[i] += h * (other[i] - y[i]);
          down[i] -= h * (other[i] - y[i]);
        }
        const auto t = Temperature::kelvin(kKelvin);
        const auto du = model.evaluate(t, up), dd = model.evaluate(t, down);
        double sum = 0.0, size = 1.0;
        for_end_members(model, y, [&](const auto& pick, double weight) {
          const double change = (end_member_potential(model, du, up, pick) -
                                 end_member_potential(model, dd, down, pick)) /
                                (2.0 * h);
          sum += weight * change;
          size += weight * std::abs(change);
        });
        CHECK(std::abs(sum) < 1e-6 * size);
      });
}

TEST_CASE("every phase: a site fraction of zero is the limit of small ones") {
  std::mt19937_64 random(13);
  contract::for_every_phase([&](const ParameterSet&, const Phase& phase,
                                const PhaseModel& model) {
    const auto& all = model.constituents();
    const auto t = Temperature::kelvin(kKelvin);
    for (std::size_t i = 0; i < all.size(); ++i) {
      auto y = contract::random_fractions(model, random);
      if (y[i] > 0.999) continue;  // alone on its sublattice
      CAPTURE(phase.name);
      CAPTURE(all[i].name);
      const auto without = [&](double left) {
        auto z = y;
        for (std::size_t k = 0; k < z.size(); ++k)
          if (all[k].sublattice == all[i].sublattice)
            z[k] = k == i ? left : z[k] / (1.0 - y[i]) * (1.0 - left);
        return z;
      };
      const auto at_zero = model.evaluate(t, without(0.0));
      CHECK(std::isfinite(at_zero.value));
      CHECK(at_zero.dy[i] == -std::numeric_limits<double>::infinity());
      CHECK(at_zero.dy2[i * all.size() + i] == std::numeric_limits<double>::infinity());
      const auto nearby = model.evaluate(t, without(1e-13));
      CHECK(nearby.value == doctest::Approx(at_zero.value).epsilon(1e-9));
    }
  });
}

TEST_CASE("every phase: leaving an element out is the same as none of it") {
  contract::for_every_phase([&](const ParameterSet& set, const Phase& phase,
                                const PhaseModel& full) {
    const std::vector<std::string> few{"Fe", "C", "Cr", "Mo"};
    const PhaseModel reduced(set, phase, few);
    if (!reduced.reachable()) return;
    CAPTURE(phase.name);
    std::mt19937_64 random(17);
    const auto y = contract::random_fractions(reduced, random);
    std::vector<double> z(full.constituents().size(), 0.0);
    for (std::size_t i = 0; i < y.size(); ++i)
      for (std::size_t k = 0; k < z.size(); ++k)
        if (full.constituents()[k].name == reduced.constituents()[i].name &&
            full.constituents()[k].sublattice == reduced.constituents()[i].sublattice)
          z[k] = y[i];
    const auto t = Temperature::kelvin(kKelvin);
    CHECK(reduced.evaluate(t, y).value ==
          doctest::Approx(full.evaluate(t, z).value).epsilon(1e-13));
  });
}

TEST_CASE("every phase: permuting the constituents permutes the derivatives") {
  contract::for_every_phase(
      [&](const ParameterSet& set, const Phase& phase, const PhaseModel& model) {
        CAPTURE(phase.name);
        Phase turned = phase;
        for (auto& sublattice : turned.sublattices)
          std::reverse(sublattice.constituents.begin(), sublattice.constituents.end());
        const auto elements = contract::symbols(set);
        const PhaseModel other(set, turned, elements);
        std::mt19937_64 random(19);
        const auto y = contract::random_fractions(model, random);
        const auto& from = model.constituents();
        const auto& to = other.constituents();
        std::vector<std::size_t> place(y.size());
        std::vector<double> z(y.size());
        for (std::size_t i = 0; i < y.size(); ++i)
          for (std::size_t k = 0; k < y.size(); ++k)
            if (to[k].name == from[i].name && to[k].sublattice == from[i].sublattice)
              z[place[i] = k] = y[i];
        const auto t = Temperature::kelvin(kKelvin);
        const auto a = model.evaluate(t, y), b = other.evaluate(t, z);
        CHECK(b.value == doctest::Approx(a.value).epsilon(1e-13));
        const std::size_t n = y.size();
        for (std::size_t i = 0; i < n; ++i) {
          CHECK(std::abs(b.dy[place[i]] - a.dy[i]) < 1e-6);
          for (std::size_t j = 0; j < n; ++j)
            CHECK(b.dy2[place[i] * n + place[j]] ==
                  doctest::Approx(a.dy2[i * n + j]).epsilon(1e-9).scale(1e5));
        }
      });
}

TEST_CASE("not a number in, not a number out") {
  contract::for_every_phase(
      [&](const ParameterSet&, const Phase& phase, const PhaseModel& model) {
        CAPTURE(phase.name);
        std::mt19937_64 random(23);
        auto y = contract::random_fractions(model, random);
        y[0] = std::numeric_limits<double>::quiet_NaN();
        CHECK(std::isnan(model.evaluate(Temperature::kelvin(kKelvin), y).value));
      });
}
