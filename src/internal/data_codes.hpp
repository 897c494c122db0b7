#pragma once
/// Stable codes of parameter files, thrown as DataError; see error_codes.hpp.

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
inline constexpr std::string_view kLayerAlone = "gibbsteel.data.172";
// Standard deviations and correlations.
inline constexpr std::string_view kDeviationWithoutNumber = "gibbsteel.data.180";
inline constexpr std::string_view kCorrelationUnknown = "gibbsteel.data.181";
inline constexpr std::string_view kCorrelationWithoutDeviation = "gibbsteel.data.182";
inline constexpr std::string_view kCorrelationTwice = "gibbsteel.data.183";
inline constexpr std::string_view kCorrelationsImpossible = "gibbsteel.data.184";

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
    {kCurveJumps,
     "a curve jumps where two pieces meet, or factors make small jumps large"},
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
    {kLayerAlone, "a layer is read without the file that it lies on"},
    {kDeviationWithoutNumber,
     "a standard deviation is given for a coefficient that the term lacks"},
    {kCorrelationUnknown, "a correlation names a coefficient that does not exist"},
    {kCorrelationWithoutDeviation,
     "a correlation names a coefficient without a standard deviation"},
    {kCorrelationTwice,
     "a correlation is given twice, or of a coefficient with itself"},
    {kCorrelationsImpossible, "no numbers can be correlated as stated"},
});

}  // namespace gibbsteel::codes
