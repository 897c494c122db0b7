#include "curve_graph.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::parameter_file {

CurveGraph::CurveGraph(const ParameterSet& set) : states_(set.curves.size()) {
  for (const Curve& curve : set.curves) {
    index_.emplace(curve.name, nodes_.size());
    Node& node = nodes_.emplace_back();
    node.curve = &curve;
  }
  for (std::size_t i = 0; i < nodes_.size(); ++i) visit(i);
}

const CurveGraph::Node* CurveGraph::find(const std::string& name) const {
  const auto found = index_.find(name);
  return found == index_.end() ? nullptr : &nodes_[found->second];
}

void CurveGraph::visit(std::size_t index) {
  if (states_[index] != State::untouched) return;
  states_[index] = State::open;
  path_.push_back(index);
  for (const CurvePiece& piece : nodes_[index].curve->pieces) {
    follow(index, piece.value);
  }
  path_.pop_back();
  states_[index] = State::done;
}

void CurveGraph::follow(std::size_t index, const Expression& expression) {
  Node& node = nodes_[index];
  node.steps += 1.0 + static_cast<double>(expression.terms.size());
  for (const CurveShare& share : expression.curves) {
    const auto found = index_.find(share.curve);
    if (found == index_.end()) {
      node.usable = false;
      continue;
    }
    if (states_[found->second] == State::open) {
      node.usable = false;
      if (!node.circle.empty()) continue;  // one is enough to tell
      const auto begin = std::find(path_.begin(), path_.end(), found->second);
      for (auto it = begin; it != path_.end(); ++it) {
        node.circle.push_back(nodes_[*it].curve->name);
      }
      continue;
    }
    visit(found->second);
    const Node& part = nodes_[found->second];
    node.usable = node.usable && part.usable;
    node.nesting = std::max(node.nesting, part.nesting + 1);
    node.steps += 1.0 + part.steps;
  }
}

double CurveGraph::total_steps(const ParameterSet& set) const {
  double total = 0.0;
  for (const Node& node : nodes_) {
    total += node.steps * static_cast<double>(node.curve->pieces.size());
  }
  for (const Phase& phase : set.phases) {
    for (const auto* list :
         {&phase.energy, &phase.curie_temperature, &phase.magnetic_moment}) {
      for (const Term& term : *list) {
        for (const CurveShare& share : term.value.curves) {
          const Node* node = find(share.curve);
          total += node == nullptr ? 0.0 : node->steps;
        }
      }
    }
  }
  return total;
}

double CurveGraph::value(const Expression& expression, double kelvin, Side side) const {
  double sum = 0.0;
  for (const TemperatureTerm& term : expression.terms) {
    const double log_factor = term.power.times_log ? std::log(kelvin) : 1.0;
    sum += term.coefficient * std::pow(kelvin, term.power.exponent) * log_factor;
  }
  for (const CurveShare& share : expression.curves) {
    const Node& part = nodes_[index_.at(share.curve)];
    sum += share.factor * value(*part.curve, kelvin, side);
  }
  return sum;
}

double CurveGraph::value(const Curve& curve, double kelvin, Side side) const {
  for (const CurvePiece& piece : curve.pieces) {
    const bool holds =
        side == Side::below ? kelvin <= piece.up_to : kelvin < piece.up_to;
    if (holds) return value(piece.value, kelvin, side);
  }
  return curve.pieces.empty() ? 0.0 : value(curve.pieces.back().value, kelvin, side);
}

double CurveGraph::jump_bound(const Expression& expression) {
  double sum = 0.0;
  for (const CurveShare& share : expression.curves)
    sum += std::abs(share.factor) * jump_bound(index_.at(share.curve));
  return sum;
}

double CurveGraph::jump_bound(std::size_t index) {
  if (nodes_[index].jump) return *nodes_[index].jump;
  const Curve& curve = *nodes_[index].curve;
  double inherited = 0.0, own = 0.0;
  for (const CurvePiece& piece : curve.pieces) {
    inherited = std::max(inherited, jump_bound(piece.value));
    if (&piece == &curve.pieces.back()) break;
    own = std::max(own, std::abs(value(curve, piece.up_to, Side::above) -
                                 value(curve, piece.up_to, Side::below)));
  }
  nodes_[index].jump = inherited + own;
  return inherited + own;
}

}  // namespace gibbsteel::parameter_file
