#pragma once
/// Every stable code in one place. include/gibbsteel/ERROR_CODES.md explains each of
/// them to the user; tests/parameter_file/error_codes_test.cpp keeps page and table
/// equal.

#include <array>
#include <string_view>

namespace gibbsteel::codes {

struct CodeMeaning {
  std::string_view code;
  std::string_view meaning;
};

// Parameter files: the text itself.
inline constexpr std::string_view kUnreadable = "gibbsteel.data.101";
inline constexpr std::string_view kNotJson = "gibbsteel.data.102";
inline constexpr std::string_view kBeyondLimit = "gibbsteel.data.103";
inline constexpr std::string_view kNotUtf8 = "gibbsteel.data.104";
inline constexpr std::string_view kKeyTwice = "gibbsteel.data.105";
inline constexpr std::string_view kNumberTooExtreme = "gibbsteel.data.106";
inline constexpr std::string_view kWrongFormat = "gibbsteel.data.107";
inline constexpr std::string_view kWrongUnit = "gibbsteel.data.108";
inline constexpr std::string_view kManyMore = "gibbsteel.data.109";
// Shape of the content.
inline constexpr std::string_view kMissingKey = "gibbsteel.data.110";
inline constexpr std::string_view kUnknownKey = "gibbsteel.data.111";
inline constexpr std::string_view kWrongType = "gibbsteel.data.112";
inline constexpr std::string_view kOutOfRange = "gibbsteel.data.113";
inline constexpr std::string_view kWrongWord = "gibbsteel.data.114";
inline constexpr std::string_view kBadName = "gibbsteel.data.115";
inline constexpr std::string_view kEmpty = "gibbsteel.data.116";
inline constexpr std::string_view kCannotWrite = "gibbsteel.data.117";
// Elements and validity.
inline constexpr std::string_view kNoElement = "gibbsteel.data.120";
inline constexpr std::string_view kWrongMolarMass = "gibbsteel.data.121";
inline constexpr std::string_view kUnusedElement = "gibbsteel.data.122";
inline constexpr std::string_view kUndefinedElement = "gibbsteel.data.123";
inline constexpr std::string_view kRangeReversed = "gibbsteel.data.124";
// Sources, curves and expressions.
inline constexpr std::string_view kUnknownSource = "gibbsteel.data.130";
inline constexpr std::string_view kUnknownCurve = "gibbsteel.data.131";
inline constexpr std::string_view kCurveCycle = "gibbsteel.data.132";
inline constexpr std::string_view kPiecesNotAscending = "gibbsteel.data.133";
inline constexpr std::string_view kCurveTooShort = "gibbsteel.data.134";
inline constexpr std::string_view kCurveJumps = "gibbsteel.data.135";
inline constexpr std::string_view kUnknownPower = "gibbsteel.data.136";
inline constexpr std::string_view kNoValue = "gibbsteel.data.137";
// Phases.
inline constexpr std::string_view kUnknownConstituent = "gibbsteel.data.140";
inline constexpr std::string_view kConstituentTwice = "gibbsteel.data.141";
inline constexpr std::string_view kCanBeEmpty = "gibbsteel.data.142";
inline constexpr std::string_view kSecondOccurrence = "gibbsteel.data.143";
inline constexpr std::string_view kNameTwice = "gibbsteel.data.144";
// Terms and volumes.
inline constexpr std::string_view kWrongSiteCount = "gibbsteel.data.150";
inline constexpr std::string_view kNotOnSublattice = "gibbsteel.data.151";
inline constexpr std::string_view kBadMix = "gibbsteel.data.152";
inline constexpr std::string_view kOrderPresence = "gibbsteel.data.153";
inline constexpr std::string_view kOrderRange = "gibbsteel.data.154";
inline constexpr std::string_view kTooManyMixes = "gibbsteel.data.155";
inline constexpr std::string_view kTermTwice = "gibbsteel.data.156";
inline constexpr std::string_view kEnergyMissing = "gibbsteel.data.157";
inline constexpr std::string_view kNotConstant = "gibbsteel.data.158";
inline constexpr std::string_view kMagnetismMissing = "gibbsteel.data.159";
inline constexpr std::string_view kVolumeMissing = "gibbsteel.data.160";
// Layers.
inline constexpr std::string_view kLayerRedefines = "gibbsteel.data.170";
inline constexpr std::string_view kLayerChanges = "gibbsteel.data.171";

/// Thrown as DataError.
inline constexpr auto kDataCodes = std::to_array<CodeMeaning>({
    {kUnreadable, "the file cannot be read"},
    {kNotJson, "the text is not JSON"},
    {kBeyondLimit, "the file is beyond a limit of size, depth or count"},
    {kNotUtf8, "the text is not UTF-8"},
    {kKeyTwice, "one object has the same key twice"},
    {kNumberTooExtreme, "a number is too large or too small for double precision"},
    {kWrongFormat, "the file is not a parameter file of a version that can be read"},
    {kWrongUnit, "a quantity is declared in a unit other than the fixed one"},
    {kManyMore, "there are more problems than are listed"},
    {kMissingKey, "a required key is missing"},
    {kUnknownKey, "a key is not part of the format"},
    {kWrongType, "a value has the wrong JSON type"},
    {kOutOfRange, "a number is outside the range that makes sense"},
    {kWrongWord, "a word is not one of those that can stand here"},
    {kBadName, "a name cannot be used"},
    {kEmpty, "a list or object that needs entries has none"},
    {kCannotWrite, "a parameter set cannot be written as a file"},
    {kNoElement, "a symbol is not that of a chemical element"},
    {kWrongMolarMass, "a molar mass differs from that of the element"},
    {kUnusedElement, "an element occurs in no phase"},
    {kUndefinedElement, "an element is used that the file does not define"},
    {kRangeReversed, "the low end of a range is not below the high end"},
    {kUnknownSource, "a source key is not defined"},
    {kUnknownCurve, "a curve is not defined"},
    {kCurveCycle, "curves refer to one another in a circle"},
    {kPiecesNotAscending, "the pieces of a curve do not ascend in temperature"},
    {kCurveTooShort, "a curve does not cover the validity range"},
    {kCurveJumps, "a curve jumps where two pieces meet"},
    {kUnknownPower, "a power of T is not one of those the format knows"},
    {kNoValue, "a term or curve piece holds no number"},
    {kUnknownConstituent, "a constituent is neither a defined element nor vacancy"},
    {kConstituentTwice, "a sublattice lists a constituent twice"},
    {kCanBeEmpty, "a phase could be without any atom"},
    {kSecondOccurrence, "a second occurrence does not fit its phase"},
    {kNameTwice, "two phases or occurrences have the same name"},
    {kWrongSiteCount, "`on` does not have one entry per sublattice"},
    {kNotOnSublattice, "`on` names a constituent that is not on that sublattice"},
    {kBadMix, "a list of mixing constituents is not two or three different ones"},
    {kOrderPresence, "`order` is missing where constituents mix, or given where not"},
    {kOrderRange, "`order` is outside the range for its kind of term"},
    {kTooManyMixes, "more mixes in a term than the model has"},
    {kTermTwice, "the same term is given twice"},
    {kEnergyMissing, "an end member has no energy"},
    {kNotConstant, "a Curie temperature or moment depends on temperature"},
    {kMagnetismMissing, "a phase has magnetic terms but no `magnetism`"},
    {kVolumeMissing, "an end member has no volume though others have"},
    {kLayerRedefines, "a layer defines again what a lower file defines"},
    {kLayerChanges, "a layer changes what a layer cannot change"},
});

// Arguments.
inline constexpr std::string_view kNotAnElement = "gibbsteel.input.201";
inline constexpr std::string_view kNotFinite = "gibbsteel.input.202";
inline constexpr std::string_view kNegative = "gibbsteel.input.203";
inline constexpr std::string_view kAboveHundred = "gibbsteel.input.204";
inline constexpr std::string_view kNoSuchPhase = "gibbsteel.input.205";
inline constexpr std::string_view kNotModelled = "gibbsteel.input.206";
inline constexpr std::string_view kSumWithIron = "gibbsteel.input.207";
inline constexpr std::string_view kNothingModelled = "gibbsteel.input.208";
inline constexpr std::string_view kNotInState = "gibbsteel.input.209";
inline constexpr std::string_view kBadTemperature = "gibbsteel.input.210";
inline constexpr std::string_view kTemperatureUnit = "gibbsteel.input.211";
inline constexpr std::string_view kHalfSuppressed = "gibbsteel.input.212";
inline constexpr std::string_view kNoSuchCurve = "gibbsteel.input.213";
inline constexpr std::string_view kNotAboveZero = "gibbsteel.input.214";
inline constexpr std::string_view kElementTwice = "gibbsteel.input.215";
inline constexpr std::string_view kNoElementInput = "gibbsteel.input.216";
inline constexpr std::string_view kNoParameterInput = "gibbsteel.input.217";
inline constexpr std::string_view kNoIronToBalance = "gibbsteel.input.218";
inline constexpr std::string_view kNotLinearizable = "gibbsteel.input.219";
inline constexpr std::string_view kSiteFractionCount = "gibbsteel.input.230";
inline constexpr std::string_view kMoleFractions = "gibbsteel.input.231";
inline constexpr std::string_view kSolveOption = "gibbsteel.input.232";
inline constexpr std::string_view kNoSuchColumn = "gibbsteel.input.290";
inline constexpr std::string_view kFileEnding = "gibbsteel.input.291";
inline constexpr std::string_view kWrongDimension = "gibbsteel.input.292";
inline constexpr std::string_view kEstimateRow = "gibbsteel.input.293";
inline constexpr std::string_view kRangeWithoutLength = "gibbsteel.input.250";
inline constexpr std::string_view kSearchOption = "gibbsteel.input.251";

/// Thrown as InputError.
inline constexpr auto kInputCodes = std::to_array<CodeMeaning>({
    {kNotAnElement, "a symbol in a composition is not that of a chemical element"},
    {kNotFinite, "a weight percent is not a finite number"},
    {kNegative, "a weight percent is negative"},
    {kAboveHundred, "a weight percent or the sum of them is above 100"},
    {kNoSuchPhase, "a phase name is not known"},
    {kNotModelled, "an element is not modelled by the parameter set"},
    {kSumWithIron, "a composition with Fe does not sum to 100"},
    {kNothingModelled,
     "a composition is empty or holds no element that the parameter set models"},
    {kNotInState, "a state does not hold what was asked for by name"},
    {kBadTemperature, "a temperature is not finite or outside what makes sense"},
    {kTemperatureUnit, "a temperature is not given by exactly one of its units"},
    {kHalfSuppressed,
     "one of two kinds of one phase model is suppressed without the other"},
    {kNoSuchCurve, "a curve name is not known"},
    {kNotAboveZero, "a temperature given to the minimizer is not above 0 K"},
    {kElementTwice, "a phase system names an element twice"},
    {kNoElementInput, "an element cannot be an input of sensitivities"},
    {kNoParameterInput,
     "a place in the parameter file holds no number that can be an input"},
    {kNoIronToBalance, "a steel without iron has nothing to balance an element with"},
    {kNotLinearizable, "an equilibrium cannot be linearized"},
    {kSiteFractionCount, "the number of site fractions does not fit the phase"},
    {kMoleFractions,
     "mole fractions do not fit the system, are not positive or do not sum to 1"},
    {kSolveOption, "an option of the minimizer is outside its range"},
    {kNoSuchColumn, "a sweep has no column of numbers of this name"},
    {kFileEnding, "a report cannot be saved as this kind of file"},
    {kWrongDimension, "a quantity with a unit is not of the kind that is needed"},
    {kEstimateRow, "a row of estimates for a report is not complete"},
    {kRangeWithoutLength, "a range of temperatures does not go upwards"},
    {kSearchOption, "an option of a search is outside its range"},
});

// Warnings.
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
});

}  // namespace gibbsteel::codes
