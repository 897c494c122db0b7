#include "internal/phase_capacity.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/phase_kernel.hpp"

namespace gibbsteel::internal {
namespace {

class Check {
 public:
  explicit Check(const Phase& phase) : phase_(phase) {}

  void require(bool good, std::string_view code, const char* what, const char* remedy) {
    if (!good) problems_.push_back({std::string(code), phase_.name, what, remedy});
  }

  void sizes() {
    std::size_t constituents = 0;
    for (const auto& sublattice : phase_.sublattices)
      constituents += sublattice.constituents.size();
    require(phase_.sublattices.size() <= kMaxSublattices, codes::kBeyondLimit,
            "has more than 6 sublattices", "use at most 6");
    require(constituents <= kMaxConstituents, codes::kBeyondLimit,
            "has more than 64 constituents", "use at most 64");
  }

  void terms(const std::vector<Term>& all) {
    for (const Term& term : all) {
      const auto mixing =
          std::count_if(term.on.begin(), term.on.end(),
                        [](const auto& names) { return names.size() > 1; });
      std::size_t widest = 1;
      for (const auto& names : term.on) widest = std::max(widest, names.size());
      const bool shape = term.on.size() == phase_.sublattices.size() && mixing <= 2 &&
                         widest <= (mixing == 2 ? 2u : 3u);
      require(shape, codes::kOrderRange, "has a term of a shape that is not known",
              "mix two or three constituents on one sublattice or two on two");
      const int most =
          mixing == 2 ? 0 : (widest == 3 ? 2 : static_cast<int>(kMaxOrder));
      const int order = term.order.value_or(0);
      require(order >= 0 && order <= most, codes::kOrderRange,
              "has a term of an order that is not known",
              "use orders 0 to 5 for two constituents, 0 to 2 for three, 0 for two "
              "times two");
    }
  }

  void constant(const std::vector<Term>& all) {
    terms(all);
    for (const Term& term : all)
      require(term.value.curves.empty(), codes::kNotConstant,
              "has a magnetic term made of curves", "give a number");
  }

  void finish() {
    if (!problems_.empty()) throw DataError(std::move(problems_));
  }

 private:
  const Phase& phase_;
  std::vector<Problem> problems_;
};

}  // namespace

void check_capacity(const Phase& phase) {
  Check check(phase);
  check.sizes();
  check.terms(phase.energy);
  check.constant(phase.curie_temperature);
  check.constant(phase.magnetic_moment);
  check.finish();
}

}  // namespace gibbsteel::internal
