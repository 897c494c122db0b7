#include "gibbsteel/band.hpp"

#include "gibbsteel/errors.hpp"

namespace gibbsteel {

std::string QuantityBand::label() const {
  return unit.empty() ? name : name + " [" + unit + "]";
}

const QuantityBand& Band::at(std::string_view name) const {
  std::string known;
  for (const QuantityBand& q : quantities) {
    if (q.name == name || q.label() == name) return q;
    known += (known.empty() ? "'" : ", '") + q.name + "'";
  }
  throw InputError({{"gibbsteel.input.209", "quantity",
                     "'" + std::string(name) + "' is not in this band",
                     known.empty() ? "the nominal state is not usable: it holds none"
                                   : "it holds " + known}});
}

}  // namespace gibbsteel
