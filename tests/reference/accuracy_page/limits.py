"""What the model cannot do, and the range of compositions that records stand for."""

from evaluate import library

from .groups import is_steel
from .markdown import number, table

CANNOT = """## What the model cannot do

* **Time, but for cementite.** Results are equilibrium. A shop soak of minutes leaves
  more carbide and less carbon and alloy in the matrix; bearing and oil-hardening
  steels soaked near 850 C are the plainest case (52100: 0.6 % carbon after 20 to 40
  minutes, 0.88 % in the long-hold limit). For steels with cementite when annealed
  `short_soak_limit` is the other end, 0.63 %: carbon has moved, metals have not; and
  `timed_soak` says where so many minutes come to, 0.64 % after 30, as well as
  particle size and diffusion are known (a factor of three in time). Steels
  whose annealed carbide is rich in alloy have no such estimate; there
  `with_measured_carbide` takes the carbide from the microscope.
* **Segregation and the solidification structure.** A bar is taken as uniform;
  carbide streaks, coarse eutectic carbides and inherited carbides are not seen.
  `tolerance_band(segregation_percent=...)` shows what richer and poorer places
  would hold.
* **Melting.** There is no liquid, but in a [layer](layers/liquid.md): without it no
  solidus, no eutectic carbide, no upper end of the hardening range but the measured
  bounds of the file.
* **Tempering and other kinetics.** No precipitation sequence, no coarsening, no
  secondary hardening. Annealed steels are compared at the temperature where a slow
  cool freezes.
* **Boron, sulfur, aluminium, copper** are not modelled, and niobium, titanium,
  nitrogen and their carbonitrides only by a
  [layer](layers/niobium_titanium_nitrogen.md). Without it sulfur and nitrogen can be
  bound by simple stoichiometry. MnS is not a phase of the file.
* **Intermetallic phases.** Sigma, mu, R and Laves phases are missing: lean-carbon
  alloys rich in Mo, W or Cr below about 950 C are not to be trusted."""


def limits_section(outcomes):
    return (
        CANNOT
        + "\n\n## Where records stand\n\nWeight percents of the steels among the "
        "records (those not of pure systems), against the range that the file claims. "
        "A steel a fifth and more above the rows of V by Mo + W/2 carries "
        "`gibbsteel.warning.358`.\n\n"
        + table(["element", "file", "records", "from", "to"], list(rows(outcomes)))
    )


def rows(outcomes):
    compositions = [
        o.record["composition_wt"]
        for o in outcomes
        if is_steel(o.record) and "composition_wt" in o.record
    ]
    for symbol, (low, high) in library.parameters().weight_percent_validity.items():
        if symbol == "Fe":
            continue
        range_of_file = f"{low:g} to {high:g}"
        yield row(symbol, range_of_file, compositions, symbol)
        if symbol == "V":
            high_speed = [c for c in compositions if rich_in_molybdenum(c)]
            others = [c for c in compositions if not rich_in_molybdenum(c)]
            yield row("V, Mo + W/2 4 and more", range_of_file, high_speed, symbol)
            yield row("V, Mo + W/2 less than 4", range_of_file, others, symbol)


def rich_in_molybdenum(composition):
    return composition.get("Mo", 0.0) + 0.5 * composition.get("W", 0.0) >= 4.0


def row(name, range_of_file, compositions, symbol):
    there = [c[symbol] for c in compositions if c.get(symbol, 0.0) > 0.0]
    ends = [number(min(there)), number(max(there))] if there else ["-", "-"]
    return [name, range_of_file, len(there), *ends]
