/// The derivatives that the optimizers are given, against central differences, and the
/// energy and the balance of the library's own answer in the variables of each posing.

#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>

#include <cmath>

#include "amounts_posing.hpp"
#include "logits_posing.hpp"
#include "outcome.hpp"

namespace {

using namespace gibbsteel;
using namespace gibbsteel::contest;

const Task& task() {
  static const Task made = make_task(
      "test",
      NamedValues{
          {"C", 0.9}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}, {"Si", 0.3}},
      Temperature::celsius(1100.0));
  return made;
}

/// The naive start with amounts that differences are not too coarse for.
Sets even_start() {
  Sets sets = naive_start(task());
  for (PhasePoint& set : sets) set.amount = 0.05;
  return sets;
}

using Vector = std::vector<double>;

/// (f(x + h) - f(x - h)) / 2h along variable i, h relative to the variable.
template <class Function>
auto central(Vector x, std::size_t i, const Function& f) {
  const double h = 1e-5 * std::max(std::abs(x[i]), 1e-3);
  const double at = x[i];
  x[i] = at + h;
  const Vector above = f(x);
  x[i] = at - h;
  const Vector below = f(x);
  Vector slope(above.size());
  for (std::size_t k = 0; k < slope.size(); ++k)
    slope[k] = (above[k] - below[k]) / (2.0 * h);
  return slope;
}

void check_close(double value, double expected) {
  INFO(value, " ", expected);
  CHECK(std::abs(value - expected) < 1e-6 * (1.0 + std::abs(expected)));
}

}  // namespace

TEST_CASE("amounts: gradient and Hessian are those of the energy") {
  const AmountsPosing posing(task(), even_start());
  const Vector x = posing.start();
  Vector gradient(x.size());
  posing.gradient(x.data(), gradient.data());
  const auto value = [&](const Vector& at) { return Vector{posing.value(at.data())}; };
  const auto slopes = [&](const Vector& at) {
    Vector g(at.size());
    posing.gradient(at.data(), g.data());
    return g;
  };
  const auto places = posing.hessian_places();
  Vector hessian(places.size());
  posing.hessian(x.data(), hessian.data());
  std::vector<Vector> full(x.size(), Vector(x.size()));
  for (std::size_t k = 0; k < places.size(); ++k) {
    full[places[k].row][places[k].column] = hessian[k];
    full[places[k].column][places[k].row] = hessian[k];
  }
  for (std::size_t i = 0; i < x.size(); ++i) {
    check_close(gradient[i], central(x, i, value)[0]);
    const Vector differences = central(x, i, slopes);
    for (std::size_t j = 0; j < x.size(); ++j) check_close(full[i][j], differences[j]);
  }
}

TEST_CASE("logits: gradients are those of the energy and the balance") {
  const LogitsPosing posing(task(), even_start());
  const std::size_t elements = task().mole_fractions.size();
  const Vector x = posing.start();
  Vector gradient(x.size()), balance(elements), slopes(elements * x.size());
  posing.value(x.data(), gradient.data());
  posing.balance(x.data(), balance.data(), slopes.data());
  const auto value = [&](const Vector& at) {
    return Vector{posing.value(at.data(), nullptr)};
  };
  const auto balance_at = [&](const Vector& at) {
    Vector out(elements);
    posing.balance(at.data(), out.data(), nullptr);
    return out;
  };
  for (std::size_t i = 0; i < x.size(); ++i) {
    check_close(gradient[i], central(x, i, value)[0]);
    const Vector differences = central(x, i, balance_at);
    for (std::size_t e = 0; e < elements; ++e)
      check_close(slopes[e * x.size() + i], differences[e]);
  }
}

TEST_CASE("both posings hold the library's answer") {
  const Sets& present = task().reference.present;
  const AmountsPosing amounts(task(), present);
  const LogitsPosing logits(task(), present);
  const double energy = task().reference.gibbs_energy / amounts.conditions().rt;
  CHECK(amounts.value(amounts.start().data()) ==
        doctest::Approx(energy).epsilon(1e-12));
  CHECK(logits.value(logits.start().data(), nullptr) ==
        doctest::Approx(energy).epsilon(1e-12));
  const Vector x = amounts.start();
  Vector sums(amounts.right_hand_sides().size());
  for (const Entry& entry : amounts.constraints())
    sums[entry.row] += entry.value * x[entry.column];
  for (std::size_t r = 0; r < sums.size(); ++r)
    CHECK(std::abs(sums[r] - amounts.right_hand_sides()[r]) < 1e-12);
  Vector balance(task().mole_fractions.size());
  logits.balance(logits.start().data(), balance.data(), nullptr);
  for (const double error : balance) CHECK(std::abs(error) < 1e-12);
}

TEST_CASE("an answer with less of an element is not taken for a lower energy") {
  Answer answer;
  answer.sets = task().reference.present;
  const Outcome right = judge(task(), answer);
  CHECK(std::abs(right.gap) < 1e-6);
  CHECK(right.balance < 1e-12);
  answer.sets.pop_back();
  const Outcome wrong = judge(task(), answer);
  CHECK(wrong.balance > 1e-4);
  CHECK(wrong.gap > -1e-6);
}

TEST_CASE("naive and random starts hold the elements") {
  for (const Sets& start :
       {naive_start(task()), random_start(task(), 1), random_start(task(), 2)}) {
    const Outcome outcome = judge(task(), {start, 0, ""});
    CHECK(outcome.balance < 1e-14);
    CHECK(outcome.gap > 0.0);
    for (const PhasePoint& set : start) {
      CHECK(set.amount > 0.0);
      for (const double y : set.y) CHECK(y > 0.0);
    }
  }
}
