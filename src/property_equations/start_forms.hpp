#pragma once
/// The two shapes that most martensite start equations have, and their coefficients.

#include <string>

#include "gibbsteel/named_values.hpp"

namespace gibbsteel::internal {

/// constant + sum of coefficient times weight percent.
struct LinearStart {
  double constant;
  NamedValues per_percent;

  double operator()(const NamedValues& wt) const;
  std::string terms() const;    ///< " - 33 Mn - 17 Cr"
  std::string formula() const;  ///< "561 - 33 Mn - 17 Cr"
};

/// constant - depth (1 - exp(-rate C)) + linear terms.
struct ExponentialStart {
  double depth, rate;
  LinearStart linear;

  double operator()(const NamedValues& wt) const;
  NamedValues slope(const NamedValues& wt) const;
  std::string formula() const;
};

LinearStart steven_haynes();            ///< Eq. (H1)
LinearStart andrews_linear();           ///< Eq. (H2)
LinearStart andrews_product();          ///< Eq. (H3), its linear part
LinearStart cobalt_silicon();           ///< Eq. (H4), what is added
LinearStart stuhlmann();                ///< Eq. (H5)
LinearStart capdevila();                ///< Eq. (H6)
const ExponentialStart& van_bohemen();  ///< Eq. (H7)
ExponentialStart barbier();             ///< Eq. (H8)
ExponentialStart ingber_kunert();       ///< Eq. (H9)
LinearStart finkler_schirra();          ///< Eq. (H10)
LinearStart payson_savage();            ///< Eq. (H11), in degrees Fahrenheit

}  // namespace gibbsteel::internal
