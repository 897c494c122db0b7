#include <gibbsteel/gibbsteel.hpp>
#include <iostream>

int main() {
  const gibbsteel::Steel steel({{"C", 1.0}, {"Cr", 5.0}, {"Mo", 1.0}});
  const auto state = steel.soak(gibbsteel::Temperature::celsius(950.0));
  std::cout << "gibbsteel " << gibbsteel::kVersion << ": "
            << (state.usable() ? "usable" : "not usable") << '\n';
  return state.usable() ? 0 : 1;
}
