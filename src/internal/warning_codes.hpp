#pragma once
/// Stable codes of warnings; see error_codes.hpp.

#include <array>
#include <string_view>

#include "internal/data_codes.hpp"

namespace gibbsteel::codes {

inline constexpr std::string_view kTemperatureOutside = "gibbsteel.warning.301";
inline constexpr std::string_view kCompositionOutside = "gibbsteel.warning.302";
inline constexpr std::string_view kNoLiquid = "gibbsteel.warning.303";
inline constexpr std::string_view kNearSolidus = "gibbsteel.warning.304";
inline constexpr std::string_view kMatrixNotAustenite = "gibbsteel.warning.305";
inline constexpr std::string_view kIntermetallics = "gibbsteel.warning.306";
inline constexpr std::string_view kLeftOut = "gibbsteel.warning.307";
inline constexpr std::string_view kNotUsable = "gibbsteel.warning.308";
inline constexpr std::string_view kNoVolumes = "gibbsteel.warning.309";
inline constexpr std::string_view kWeakSpot = "gibbsteel.warning.310";
inline constexpr std::string_view kNotUnique = "gibbsteel.warning.311";
inline constexpr std::string_view kCarbideFormers = "gibbsteel.warning.312";
inline constexpr std::string_view kTypedPpm = "gibbsteel.warning.313";
inline constexpr std::string_view kTypedFractions = "gibbsteel.warning.314";
inline constexpr std::string_view kPartlyMolten = "gibbsteel.warning.315";
inline constexpr std::string_view kNotInLiquid = "gibbsteel.warning.316";
inline constexpr std::string_view kNearMelting = "gibbsteel.warning.317";
inline constexpr std::string_view kLeftOutTooMuch = "gibbsteel.warning.318";
inline constexpr std::string_view kNoCarbon = "gibbsteel.warning.319";
inline constexpr std::string_view kFirstOrderDoubtful = "gibbsteel.warning.350";
inline constexpr std::string_view kSamplesLeftOut = "gibbsteel.warning.351";
inline constexpr std::string_view kBeyondCorners = "gibbsteel.warning.352";
inline constexpr std::string_view kToleranceOutside = "gibbsteel.warning.353";
inline constexpr std::string_view kPhasesChange = "gibbsteel.warning.354";
inline constexpr std::string_view kHardensInPart = "gibbsteel.warning.330";
inline constexpr std::string_view kEquationOutside = "gibbsteel.warning.331";
inline constexpr std::string_view kStaysAustenite = "gibbsteel.warning.332";
inline constexpr std::string_view kNitrogenLeftOut = "gibbsteel.warning.333";
inline constexpr std::string_view kMassForVolume = "gibbsteel.warning.334";
inline constexpr std::string_view kNearFamilyBorder = "gibbsteel.warning.335";
inline constexpr std::string_view kShopSoakShort = "gibbsteel.warning.336";
inline constexpr std::string_view kShortSoakLimit = "gibbsteel.warning.349";
inline constexpr std::string_view kTimedSoak = "gibbsteel.warning.360";
inline constexpr std::string_view kSolidPartOnly = "gibbsteel.warning.337";
inline constexpr std::string_view kOffsetOfShipped = "gibbsteel.warning.338";
inline constexpr std::string_view kMapNotComplete = "gibbsteel.warning.355";
inline constexpr std::string_view kExactPhases = "gibbsteel.warning.356";
inline constexpr std::string_view kSeveralFamilies = "gibbsteel.warning.357";
inline constexpr std::string_view kBeyondRecords = "gibbsteel.warning.358";
inline constexpr std::string_view kGraphite = "gibbsteel.warning.359";
inline constexpr std::string_view kQuantityFailed = "gibbsteel.warning.361";

/// Carried by warnings on a state.
inline constexpr auto kWarningCodes = std::to_array<CodeMeaning>({
    {kTemperatureOutside,
     "the temperature is outside the validity of the parameter file"},
    {kCompositionOutside, "an element is outside the validity of the parameter file"},
    {kNoLiquid, "the temperature is high and the parameter file has no liquid"},
    {kNearSolidus,
     "a similar steel is known to melt, or not known to be free of melt, at this "
     "temperature"},
    {kMatrixNotAustenite, "the matrix is not austenite alone"},
    {kIntermetallics, "phases that the parameter file lacks may form"},
    {kLeftOut, "elements of the certificate were left out of the calculation"},
    {kNotUsable, "the calculation gave no usable result"},
    {kNoVolumes, "a phase present has no volume data"},
    {kWeakSpot, "the shipped file is known to be off for this kind of steel"},
    {kNotUnique, "the equilibrium leaves amounts or chemical potentials free"},
    {kCarbideFormers,
     "an element that forms carbide or nitride is not modelled, and there is much of "
     "it"},
    {kTypedPpm, "so much N, S or P that ppm may have been typed for weight percent"},
    {kTypedFractions,
     "so little alloy that fractions may have been typed for weight percent"},
    {kPartlyMolten, "the steel is partly or wholly molten at the temperature"},
    {kNotInLiquid, "the liquid of the parameter file lacks an element of the steel"},
    {kNearMelting, "liquid is close to forming at the temperature"},
    {kLeftOutTooMuch,
     "an element that is not modelled is more than a residual or a micro-addition"},
    {kNoCarbon, "a steel has no carbon"},
    {kFirstOrderDoubtful, "a first-order band is one-sided or missing"},
    {kSamplesLeftOut,
     "samples gave no usable result, or have no number, and are left out of a band"},
    {kBeyondCorners, "samples lie beyond the worst corners found"},
    {kToleranceOutside, "tolerances reach outside the validity of the parameter file"},
    {kPhasesChange, "phases come and go within the tolerances"},
    {kHardensInPart, "only part of the matrix, or nothing, hardens"},
    {kEquationOutside, "an equation of the estimates is used outside its range"},
    {kStaysAustenite, "martensite start is not above the coldest temperature"},
    {kNitrogenLeftOut, "nitrogen is left out of the estimates"},
    {kMassForVolume, "mass fractions stand for volume fractions in the estimates"},
    {kNearFamilyBorder, "the steel is near the border of its family of steels"},
    {kShopSoakShort, "a soak of minutes can leave carbide of such a steel undissolved"},
    {kSolidPartOnly, "the estimates are those of the solid part of a melting steel"},
    {kOffsetOfShipped,
     "the hardness offset of a family was fitted with other numbers than those of the "
     "parameter set"},
    {"gibbsteel.warning.345",
     "the state is a short soak with measured carbide, not an equilibrium"},
    {"gibbsteel.warning.346", "small carbides were not counted"},
    {"gibbsteel.warning.347",
     "a phase that was not measured is kept at its long-hold volume"},
    {"gibbsteel.warning.348",
     "less carbide was measured than the long-hold limit holds"},
    {kShortSoakLimit, "the state is a short-soak limit, not an equilibrium"},
    {kTimedSoak, "the state is an estimate of a soak of minutes, not an equilibrium"},
    {kMapNotComplete, "parts of a section map are not known"},
    {kExactPhases, "a parameter band takes the numbers of a phase as exact"},
    {kSeveralFamilies, "hardening estimates come from several families of steels"},
    {kBeyondRecords, "no published record of a steel like this one was compared"},
    {kGraphite, "carbon is more active than in graphite, in a steel rich in silicon"},
    {kQuantityFailed, "a quantity of a screen failed"},
});

}  // namespace gibbsteel::codes
