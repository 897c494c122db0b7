#pragma once
/// Every stable code: of arguments here, of files in data_codes.hpp, of warnings in
/// warning_codes.hpp. include/gibbsteel/ERROR_CODES.md explains each of them to the
/// user; tests/parameter_file/error_codes_test.cpp keeps page and tables equal.

#include <array>
#include <string_view>

#include "internal/data_codes.hpp"
#include "internal/warning_codes.hpp"

namespace gibbsteel::codes {

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
inline constexpr std::string_view kOtherKindOfThing = "gibbsteel.input.220";
inline constexpr std::string_view kNoSuchLayer = "gibbsteel.input.221";
inline constexpr std::string_view kSiteFractionCount = "gibbsteel.input.230";
inline constexpr std::string_view kMoleFractions = "gibbsteel.input.231";
inline constexpr std::string_view kSolveOption = "gibbsteel.input.232";
inline constexpr std::string_view kToleranceRange = "gibbsteel.input.270";
inline constexpr std::string_view kToleranceTwice = "gibbsteel.input.271";
inline constexpr std::string_view kNominalOutside = "gibbsteel.input.272";
inline constexpr std::string_view kBalanceTolerance = "gibbsteel.input.273";
inline constexpr std::string_view kStandardDeviation = "gibbsteel.input.274";
inline constexpr std::string_view kFurnaceOrSegregation = "gibbsteel.input.275";
inline constexpr std::string_view kSampling = "gibbsteel.input.276";
inline constexpr std::string_view kNothingScatters = "gibbsteel.input.277";
inline constexpr std::string_view kToleranceSum = "gibbsteel.input.278";
inline constexpr std::string_view kElementRange = "gibbsteel.input.280";
inline constexpr std::string_view kAxisElement = "gibbsteel.input.281";
inline constexpr std::string_view kSectionOption = "gibbsteel.input.282";
inline constexpr std::string_view kNotLinear = "gibbsteel.input.283";
inline constexpr std::string_view kNoShortSoakLimit = "gibbsteel.input.284";
inline constexpr std::string_view kHalfRule = "gibbsteel.input.285";
inline constexpr std::string_view kSoakTime = "gibbsteel.input.287";
inline constexpr std::string_view kNoTemperatureUnit = "gibbsteel.input.286";
inline constexpr std::string_view kGridVariables = "gibbsteel.input.295";
inline constexpr std::string_view kGridValues = "gibbsteel.input.296";
inline constexpr std::string_view kNothingToDraw = "gibbsteel.input.297";
inline constexpr std::string_view kPlotOption = "gibbsteel.input.298";
inline constexpr std::string_view kElementNotInState = "gibbsteel.input.299";
inline constexpr std::string_view kParameterBand = "gibbsteel.input.279";
inline constexpr std::string_view kNoSuchEquation = "gibbsteel.input.240";
inline constexpr std::string_view kBadEquation = "gibbsteel.input.241";
inline constexpr std::string_view kNoSuchFamily = "gibbsteel.input.242";
inline constexpr std::string_view kColdest = "gibbsteel.input.243";
inline constexpr std::string_view kParticleDiameter = "gibbsteel.input.244";
inline constexpr std::string_view kCoolingRate = "gibbsteel.input.245";
inline constexpr std::string_view kNoSuchProperty = "gibbsteel.input.246";
inline constexpr std::string_view kRangeWithoutLength = "gibbsteel.input.250";
inline constexpr std::string_view kSearchOption = "gibbsteel.input.251";
inline constexpr std::string_view kTargetNotFinite = "gibbsteel.input.252";
inline constexpr std::string_view kCannotBe = "gibbsteel.input.340";
inline constexpr std::string_view kReferenceWithout = "gibbsteel.input.253";
inline constexpr std::string_view kWindowRule = "gibbsteel.input.254";
inline constexpr std::string_view kNotOneTarget = "gibbsteel.input.255";
inline constexpr std::string_view kFreeNumber = "gibbsteel.input.300";
inline constexpr std::string_view kMeasurement = "gibbsteel.input.301";
inline constexpr std::string_view kCalibrationOption = "gibbsteel.input.302";
inline constexpr std::string_view kNoLayer = "gibbsteel.input.303";
inline constexpr std::string_view kEvidenceOption = "gibbsteel.input.304";
inline constexpr std::string_view kForeignPickle = "gibbsteel.input.256";
inline constexpr std::string_view kLaterPickle = "gibbsteel.input.257";
inline constexpr std::string_view kDamagedPickle = "gibbsteel.input.258";
inline constexpr std::string_view kNotThere = "gibbsteel.input.288";
inline constexpr std::string_view kNoSuchColumn = "gibbsteel.input.290";
inline constexpr std::string_view kFileEnding = "gibbsteel.input.291";
inline constexpr std::string_view kWrongDimension = "gibbsteel.input.292";

/// Thrown as InputError.
inline constexpr auto kInputCodes = std::to_array<CodeMeaning>({
    {kNotAnElement, "a symbol is not that of a chemical element"},
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
    {kNoShortSoakLimit,
     "a short-soak limit or timed soak has no meaning for the steel"},
    {kSoakTime, "the minutes or the particle size of a timed soak are out of range"},
    {kOtherKindOfThing, "an argument is another kind of thing than is asked for"},
    {kNoSuchLayer, "there is no layer of that name beside the file that ships"},
    {kSiteFractionCount, "the number of site fractions does not fit the phase"},
    {kMoleFractions,
     "mole fractions do not fit the system, are not positive or do not sum to 1"},
    {kSolveOption, "an option of the minimizer is outside its range"},
    {kToleranceRange, "a tolerance range cannot be used"},
    {kToleranceTwice, "an element has two tolerances"},
    {kNominalOutside, "the steel itself is outside a tolerance range"},
    {kBalanceTolerance, "the balance element is given a tolerance"},
    {kStandardDeviation, "a standard deviation is not above 0"},
    {kFurnaceOrSegregation, "a furnace error or a segregation is outside its range"},
    {kSampling, "an option of the sampling is outside its range"},
    {kNothingScatters, "a tolerance band is asked for and nothing scatters"},
    {kToleranceSum, "tolerances let a composition sum to more than 100"},
    {kElementRange, "a range of weight percents does not go upwards from 0 or more"},
    {kAxisElement, "an axis of a map is that of Fe, or both are that of one element"},
    {kSectionOption, "an option of a section map is outside its range"},
    {kNotLinear, "bound tramp elements bend the composition over a section map"},
    {kHalfRule, "half a rule of a hardening window is given"},
    {kNoTemperatureUnit, "no unit of temperatures has this name"},
    {kGridVariables, "a grid of soaks is not over two different variables"},
    {kGridValues, "the values of a swept variable are none, or not finite numbers"},
    {kNothingToDraw, "a plot is given something that it cannot draw"},
    {kPlotOption, "an option of a plot is not one of those that it knows"},
    {kElementNotInState, "a state holds none of the element asked for"},
    {kParameterBand, "a parameter band cannot be made from this parameter set"},
    {kNoSuchEquation, "there is no equation of that kind with this key"},
    {kBadEquation, "an equation cannot be registered"},
    {kNoSuchFamily, "there is no family of steels with this key"},
    {kColdest, "the coldest temperature of a quench cannot be meant"},
    {kParticleDiameter,
     "a particle diameter is not above 0, or not given for a grain limit"},
    {kCoolingRate, "a cooling rate is not above 0"},
    {kNoSuchProperty, "there is no kind of property with this name"},
    {"gibbsteel.input.260", "a state has no usable matrix, or one of several phases"},
    {"gibbsteel.input.261", "a rounding step of weight percents is outside its range"},
    {"gibbsteel.input.262", "a carbide measurement cannot be one"},
    {"gibbsteel.input.263",
     "measured carbide would hold more of an element than the steel"},
    {"gibbsteel.input.264", "the composition of a measured carbide is not known"},
    {"gibbsteel.input.265", "a phase of a mass balance has no volume data"},
    {"gibbsteel.input.266",
     "a state was made with other parameters or on another volume basis"},
    {"gibbsteel.input.267", "a comparison is asked for without states"},
    {"gibbsteel.input.268", "a search along a composition cannot be done as asked"},
    {"gibbsteel.input.269", "a design cannot be done as asked"},
    {"gibbsteel.input.320",
     "the compositions of a screen are no table of numbers, one column per element"},
    {"gibbsteel.input.321", "an element has two columns in a screen or a table"},
    {"gibbsteel.input.322", "the number of temperatures of a screen does not fit"},
    {"gibbsteel.input.323", "a screen is asked for rows that it does not have"},
    {"gibbsteel.input.324", "a folder holds the results of another screen"},
    {"gibbsteel.input.325", "a folder cannot take the results of a screen"},
    {"gibbsteel.input.326", "tables of screens do not fit together"},
    {"gibbsteel.input.327", "an array cannot take a column of a screen"},
    {"gibbsteel.input.328",
     "an option of cutting a screen into pieces is out of range"},
    {"gibbsteel.input.329", "a table of certificates cannot be read"},
    {kRangeWithoutLength, "a range of temperatures does not go upwards"},
    {kSearchOption, "an option of a search is outside its range"},
    {kTargetNotFinite, "the value that a quantity is to have is not a finite number"},
    {kCannotBe, "no state can have the value that a quantity is to have"},
    {kReferenceWithout, "a reference state does not have the quantity to be matched"},
    {kWindowRule, "a rule of a hardening window is outside its range"},
    {kNotOneTarget, "a search is not asked for exactly one quantity and its value"},
    {kForeignPickle, "a pickle does not carry the mark of its class"},
    {kLaterPickle, "a pickle was written in a later format"},
    {kDamagedPickle, "the fields of a pickle are not those of its class"},
    {kNotThere, "a dict by element or phase does not hold the name"},
    {kNoSuchColumn, "a sweep has no column of numbers of this name"},
    {kFileEnding, "a report cannot be saved as this kind of file"},
    {kWrongDimension, "a quantity with a unit is not of the kind that is needed"},
    {kFreeNumber, "a number of the parameter set cannot be fitted"},
    {kMeasurement, "a measurement cannot be fitted to"},
    {kCalibrationOption, "an option of the calibration is outside its range"},
    {kNoLayer, "a calibration that has no layer cannot be saved"},
    {kEvidenceOption, "an option of the evidence is outside its range"},
});

}  // namespace gibbsteel::codes
