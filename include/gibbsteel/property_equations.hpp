#pragma once
/// The equations to choose from: those of this library and a user's own. A value that
/// never changes, passed in options; copies are cheap and may be used by any thread.

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/property_equation.hpp"

namespace gibbsteel {

/// Built in, by key. Martensite start [C], wt% of the austenite:
///
///   Eq. (H1) steven-haynes, Eq. (H2) andrews-linear, Eq. (H3) andrews-product,
///   Eq. (H4) the same three with the Co and Si terms of Kung & Rayment added
///   (steven-haynes-co-si, ...), Eq. (H5) stuhlmann, Eq. (H6) capdevila,
///   Eq. (H7) van-bohemen, Eq. (H8) barbier, Eq. (H9) ingber-kunert,
///   Eq. (H10) finkler-schirra, Eq. (H11) payson-savage,
///   Eq. (H12) exponential-mean: the mean of (H7) and (H8), used by default.
///
/// Retained austenite, fraction of the austenite: Eq. (H13) koistinen-marburger (by
/// default), Eq. (H14) van-bohemen-sietsma, Eq. (H15) van-bohemen-rate; the last two
/// start from a temperature of their own.
///
/// Martensite hardness [HV]: Eq. (H16) hodge-orehoski, Eq. (H17) just,
/// Eq. (H18) carbon-quadratic (by default), Eq. (H19) maynier.
///
/// Grain pinning, diameter [um]: Eq. (H22) hillert (by default, a lower bound),
/// Eq. (H23) zener, Eq. (H24) gladman, Eq. (H25) manohar.
///
/// Formula, source, range and error are members of each PropertyEquation.
class PropertyEquations {
 public:
  PropertyEquations();  ///< the built-in ones

  const std::vector<PropertyEquation>& all() const noexcept { return *equations_; }
  /// Keys of one kind, in order.
  std::vector<std::string> keys(PropertyKind kind) const;
  /// @throws InputError gibbsteel.input.240 (no equation of that kind has this key)
  const PropertyEquation& at(PropertyKind kind, std::string_view key) const;
  /// These and one more; an equation of the user's own with the same kind and key is
  /// replaced.
  /// @throws InputError gibbsteel.input.241 (no key, no function, error not a number
  ///         >= 0, a range with low above high, or a key that is built in)
  PropertyEquations with_equation(PropertyEquation equation) const;
  /// Number of the built-in ones; the user's own follow them.
  static std::size_t built_in();

 private:
  std::shared_ptr<const std::vector<PropertyEquation>> equations_;
};

}  // namespace gibbsteel
