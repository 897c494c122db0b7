#pragma once
/// Curves that are made of other curves: circles, nesting, size when spelled out, and
/// the value on either side of a temperature.

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

enum class Side { below, above };

class CurveGraph {
 public:
  explicit CurveGraph(const ParameterSet& set);

  struct Node {
    const Curve* curve = nullptr;
    bool usable = true;               ///< no circle and no undefined curve below it
    std::size_t nesting = 1;          ///< 1: made of no other curve
    double steps = 0.0;               ///< terms met when it is spelled out
    std::vector<std::string> circle;  ///< names along a circle that begins here
    std::optional<double> jump;       ///< most that it jumps, once asked for [J/mol]
  };
  const std::vector<Node>& nodes() const noexcept { return nodes_; }
  const Node* find(const std::string& name) const;

  /// Terms met when every curve, at each of its pieces, and every term of every phase
  /// is spelled out.
  double total_steps(const ParameterSet& set) const;

  /// Value of a usable curve; `side` decides where two pieces meet.
  double value(const Curve& curve, double kelvin, Side side) const;

  /// No less than what a sum of usable curves jumps anywhere [J/mol]: the jumps of each
  /// curve, with its factor, added up as if they met at one temperature. To be asked
  /// for only after total_steps() was found small.
  double jump_bound(const Expression& expression);

 private:
  enum class State { untouched, open, done };
  void visit(std::size_t index);
  void follow(std::size_t index, const Expression& expression);
  double value(const Expression& expression, double kelvin, Side side) const;
  double jump_bound(std::size_t index);

  std::vector<Node> nodes_;
  std::vector<State> states_;
  std::vector<std::size_t> path_;
  std::unordered_map<std::string, std::size_t> index_;
};

}  // namespace gibbsteel::parameter_file
