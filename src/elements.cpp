#include "gibbsteel/elements.hpp"

#include <array>

namespace gibbsteel {

namespace {

// IUPAC 2021 abridged standard atomic weights, from memory; 0 where there is none.
constexpr auto kElements = std::to_array<ElementFacts>({
    {"H", "hydrogen", 1.008},       {"He", "helium", 4.0026},
    {"Li", "lithium", 6.94},        {"Be", "beryllium", 9.0122},
    {"B", "boron", 10.81},          {"C", "carbon", 12.011},
    {"N", "nitrogen", 14.007},      {"O", "oxygen", 15.999},
    {"F", "fluorine", 18.998},      {"Ne", "neon", 20.180},
    {"Na", "sodium", 22.990},       {"Mg", "magnesium", 24.305},
    {"Al", "aluminium", 26.982},    {"Si", "silicon", 28.085},
    {"P", "phosphorus", 30.974},    {"S", "sulfur", 32.06},
    {"Cl", "chlorine", 35.45},      {"Ar", "argon", 39.95},
    {"K", "potassium", 39.098},     {"Ca", "calcium", 40.078},
    {"Sc", "scandium", 44.956},     {"Ti", "titanium", 47.867},
    {"V", "vanadium", 50.942},      {"Cr", "chromium", 51.996},
    {"Mn", "manganese", 54.938},    {"Fe", "iron", 55.845},
    {"Co", "cobalt", 58.933},       {"Ni", "nickel", 58.693},
    {"Cu", "copper", 63.546},       {"Zn", "zinc", 65.38},
    {"Ga", "gallium", 69.723},      {"Ge", "germanium", 72.630},
    {"As", "arsenic", 74.922},      {"Se", "selenium", 78.971},
    {"Br", "bromine", 79.904},      {"Kr", "krypton", 83.798},
    {"Rb", "rubidium", 85.468},     {"Sr", "strontium", 87.62},
    {"Y", "yttrium", 88.906},       {"Zr", "zirconium", 91.224},
    {"Nb", "niobium", 92.906},      {"Mo", "molybdenum", 95.95},
    {"Tc", "technetium", 0.0},      {"Ru", "ruthenium", 101.07},
    {"Rh", "rhodium", 102.91},      {"Pd", "palladium", 106.42},
    {"Ag", "silver", 107.87},       {"Cd", "cadmium", 112.41},
    {"In", "indium", 114.82},       {"Sn", "tin", 118.71},
    {"Sb", "antimony", 121.76},     {"Te", "tellurium", 127.60},
    {"I", "iodine", 126.90},        {"Xe", "xenon", 131.29},
    {"Cs", "caesium", 132.91},      {"Ba", "barium", 137.33},
    {"La", "lanthanum", 138.91},    {"Ce", "cerium", 140.12},
    {"Pr", "praseodymium", 140.91}, {"Nd", "neodymium", 144.24},
    {"Pm", "promethium", 0.0},      {"Sm", "samarium", 150.36},
    {"Eu", "europium", 151.96},     {"Gd", "gadolinium", 157.25},
    {"Tb", "terbium", 158.93},      {"Dy", "dysprosium", 162.50},
    {"Ho", "holmium", 164.93},      {"Er", "erbium", 167.26},
    {"Tm", "thulium", 168.93},      {"Yb", "ytterbium", 173.05},
    {"Lu", "lutetium", 174.97},     {"Hf", "hafnium", 178.49},
    {"Ta", "tantalum", 180.95},     {"W", "tungsten", 183.84},
    {"Re", "rhenium", 186.21},      {"Os", "osmium", 190.23},
    {"Ir", "iridium", 192.22},      {"Pt", "platinum", 195.08},
    {"Au", "gold", 196.97},         {"Hg", "mercury", 200.59},
    {"Tl", "thallium", 204.38},     {"Pb", "lead", 207.2},
    {"Bi", "bismuth", 208.98},      {"Po", "polonium", 0.0},
    {"At", "astatine", 0.0},        {"Rn", "radon", 0.0},
    {"Fr", "francium", 0.0},        {"Ra", "radium", 0.0},
    {"Ac", "actinium", 0.0},        {"Th", "thorium", 232.04},
    {"Pa", "protactinium", 231.04}, {"U", "uranium", 238.03},
    {"Np", "neptunium", 0.0},       {"Pu", "plutonium", 0.0},
    {"Am", "americium", 0.0},       {"Cm", "curium", 0.0},
    {"Bk", "berkelium", 0.0},       {"Cf", "californium", 0.0},
    {"Es", "einsteinium", 0.0},     {"Fm", "fermium", 0.0},
    {"Md", "mendelevium", 0.0},     {"No", "nobelium", 0.0},
    {"Lr", "lawrencium", 0.0},      {"Rf", "rutherfordium", 0.0},
    {"Db", "dubnium", 0.0},         {"Sg", "seaborgium", 0.0},
    {"Bh", "bohrium", 0.0},         {"Hs", "hassium", 0.0},
    {"Mt", "meitnerium", 0.0},      {"Ds", "darmstadtium", 0.0},
    {"Rg", "roentgenium", 0.0},     {"Cn", "copernicium", 0.0},
    {"Nh", "nihonium", 0.0},        {"Fl", "flerovium", 0.0},
    {"Mc", "moscovium", 0.0},       {"Lv", "livermorium", 0.0},
    {"Ts", "tennessine", 0.0},      {"Og", "oganesson", 0.0},
});

struct OtherName {
  std::string_view name;
  std::string_view symbol;
};
constexpr auto kOtherNames = std::to_array<OtherName>({{"aluminum", "Al"},
                                                       {"sulphur", "S"},
                                                       {"cesium", "Cs"},
                                                       {"columbium", "Nb"},
                                                       {"Cb", "Nb"}});

constexpr char lower(char letter) noexcept {
  return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a')
                                        : letter;
}

constexpr bool same_but_for_case(std::string_view a, std::string_view b) noexcept {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (lower(a[i]) != lower(b[i])) return false;
  }
  return true;
}

std::string_view without_blanks(std::string_view text) noexcept {
  constexpr std::string_view kBlanks = " \t\r\n";
  const std::size_t first = text.find_first_not_of(kBlanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

}  // namespace

std::optional<ElementFacts> find_element(std::string_view symbol) noexcept {
  for (const ElementFacts& facts : kElements) {
    if (facts.symbol == symbol) return facts;
  }
  return std::nullopt;
}

std::string_view suggest_element(std::string_view text) noexcept {
  const std::string_view bare = without_blanks(text);
  for (const ElementFacts& facts : kElements) {
    if (same_but_for_case(facts.symbol, bare) || same_but_for_case(facts.name, bare)) {
      return facts.symbol;
    }
  }
  for (const OtherName& other : kOtherNames) {
    if (same_but_for_case(other.name, bare)) return other.symbol;
  }
  return {};
}

}  // namespace gibbsteel
