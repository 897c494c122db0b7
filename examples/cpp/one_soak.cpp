/// One soak, read value by value: what a program of your own would do.

#include <iostream>

#include "gibbsteel/gibbsteel.hpp"

int main() {
  using namespace gibbsteel;
  const Steel steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}});
  const State state = steel.soak(Temperature::celsius(1120));
  if (!state.usable()) {  // never read a number before this test
    std::cerr << state.solve_report.full();
    return 1;
  }
  std::cout << state.brief() << "\n";
  for (const Occurrence& carbide : state.carbides())
    std::cout << carbide.brief() << "\n";
  for (const Warning& warning : state.warnings) std::cout << warning.text << "\n";
  try {
    Steel({{"C", -0.5}, {"cr", 4.5}});
  } catch (const InputError& error) {
    std::cout << error.what() << "\n";
  }
  return 0;
}
