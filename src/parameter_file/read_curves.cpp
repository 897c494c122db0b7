#include <array>
#include <string_view>
#include <utility>

#include "../internal/error_codes.hpp"
#include "message_text.hpp"
#include "number_text.hpp"
#include "read_expression.hpp"
#include "read_sections.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 6> kCurveKeys{"from_K", "pieces",     "source",
                                                     "kind",   "confidence", "note"};
constexpr std::array<std::string_view, 3> kPieceKeys{"up_to_K", "curves", "terms"};
constexpr NumberRange kTemperatures{0.0, 20000.0, false, true};  // [K]

void check_ascending(const Curve& curve, const std::vector<std::string>& places,
                     Problems& problems) {
  double below = curve.from;
  for (std::size_t i = 0; i < curve.pieces.size(); ++i) {
    if (curve.pieces[i].up_to <= below) {
      problems.add(
          codes::kPiecesNotAscending, places[i] + "/up_to_K",
          "is " + number_text(curve.pieces[i].up_to) + ", but this piece begins at " +
              number_text(below),
          "give the pieces in ascending order, each ending above its beginning");
      return;
    }
    below = curve.pieces[i].up_to;
  }
}

}  // namespace

DraftCurve SectionReader::read_curve(const JsonNode& node,
                                     const std::string& place) const {
  const std::size_t before = problems.count();
  DraftCurve draft;
  draft.place = place;
  draft.curve.name = node.key;
  const FieldReader fields(node, place, problems, kCurveKeys);
  draft.curve.from =
      fields.number("from_K", Need::required, kTemperatures).value_or(298.15);
  const JsonNode* pieces = fields.find("pieces", Need::required);
  const std::string list_place = fields.place_of("pieces");
  if (pieces != nullptr &&
      is_list(*pieces, list_place, limits.pieces_per_curve, problems)) {
    for (std::size_t i = 0; i < pieces->items.size() && !problems.full(); ++i) {
      const std::string piece_place = list_place + "/" + std::to_string(i);
      const FieldReader piece(pieces->items[i], piece_place, problems, kPieceKeys);
      CurvePiece read;
      read.up_to = piece.number("up_to_K", Need::required, kTemperatures).value_or(0.0);
      read.value = read_expression(piece, problems);
      draft.curve.pieces.push_back(std::move(read));
      draft.piece_places.push_back(piece_place);
    }
  }
  draft.curve.provenance = read_provenance(fields, Need::required, file);
  draft.sound = problems.count() == before;
  if (draft.sound) {
    check_ascending(draft.curve, draft.piece_places, problems);
    draft.sound = problems.count() == before;
  }
  return draft;
}

void SectionReader::read_curves(Draft& draft) const {
  const JsonNode* node = section("curves", limits.curves, draft.curves_sound);
  if (node == nullptr) return;
  for (const JsonNode& item : node->items) {
    if (problems.full()) return;
    const std::string place = "/curves/" + pointer_step(item.key);
    if (!name_is_usable(item.key, place, problems)) continue;
    draft.curves.push_back(read_curve(item, place));
  }
}

}  // namespace gibbsteel::parameter_file
