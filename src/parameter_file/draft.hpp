#pragma once
/// One parameter file as read, before it is joined with what lies below: every part
/// that can be faulty later keeps the JSON pointer at which it stands.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

template <class Value>
struct Placed {
  Value value;
  std::string place;  // JSON pointer
  bool sound = true;  // nothing of it was unreadable
};

struct DraftCurve {
  Curve curve;
  std::string place;
  std::vector<std::string> piece_places;
  bool sound = true;
};

struct DraftVolume {
  std::optional<double> at;
  std::optional<double> linear_expansion;
  std::string note;
  std::vector<Placed<VolumeTerm>> terms;
  std::string place;
  bool sound = true;
};

struct DraftSublattice {
  std::optional<double> sites;
  std::vector<Placed<std::string>> constituents;
  std::string place;
};

struct DraftPhase {
  std::string name;
  std::string place;
  bool sound = true;  // role, lattice, sublattices, magnetism
  std::optional<Role> role;
  std::optional<std::string> lattice;
  std::optional<std::vector<DraftSublattice>> sublattices;
  std::optional<Placed<SecondOccurrence>> second_occurrence;
  std::optional<Magnetism> magnetism;
  std::vector<Placed<Term>> energy;
  std::vector<Placed<Term>> curie_temperature;
  std::vector<Placed<Term>> magnetic_moment;
  std::optional<DraftVolume> room_volume;
  std::optional<DraftVolume> hot_volume;
  bool energy_sound = true;  // the list itself
};

struct Draft {
  FileRecord record;
  std::optional<std::string> reference_state;
  std::optional<std::pair<double, double>> temperatures;  // [K]
  std::vector<Placed<ElementRange>> ranges;
  std::vector<Placed<Source>> sources;
  std::vector<Placed<Element>> elements;
  std::vector<DraftCurve> curves;
  std::vector<DraftPhase> phases;
  std::vector<Placed<Correlation>> correlations;
  std::vector<Placed<SolidusBound>> bounds;
  // False where entries of the section were lost: then nothing is reported as
  // undefined.
  bool sources_sound = true;
  bool elements_sound = true;
  bool curves_sound = true;
  bool phases_sound = true;
};

}  // namespace gibbsteel::parameter_file
