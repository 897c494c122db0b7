"""Which family of steels and which quantity a record belongs to."""

import json
from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent
HARDENED_ABOVE = 800.0  # [C]; analyses of steels soaked below are of annealed ones
QUENCHED = ("martensite_start", "retained_austenite", "as_quenched_hardness")


def families():
    """Family -> names of its steels, in the order of the page."""
    return json.loads((FOLDER / "families.json").read_text(encoding="utf-8"))


def family_of(record):
    return next(f for f, steels in families().items() if record["steel"] in steels)


STEELS = (
    "high-speed steels",
    "cold-work steels",
    "bearing, oil-hardening and plain carbon steels",
    "hot-work and shock-resisting steels",
    "stainless steels",
)


def is_steel(record):
    return family_of(record) in STEELS


def is_hardened(record):
    """A soak of a steel in its hardening range: W1 hardens from 790 C."""
    if not is_steel(record):
        return False
    hot = (record.get("celsius") or 0.0) > HARDENED_ABOVE
    return hot or record["quantity"] in QUENCHED


# Quantity of a record -> name on the page; `{e}` element, `{p}` phase.
NAMES = {
    "appearance_shift": "shift of A1 by an element [C per wt%]",
    "appears": "temperature at which a phase appears or vanishes [C]",
    "as_quenched_hardness": "as-quenched hardness [HRC]",
    "atom_percent": "element in one carbide [at%]",
    "atom_ratio": "carbon to metal in MC",
    "carbon_activity": "carbon activity",
    "cell_volume": "lattice and volume",
    "composition_limit": "highest content of an element in a carbide [wt%]",
    "congruent_composition": "loops of austenite in ferrite [wt%]",
    "congruent_temperature": "loops of austenite in ferrite [C]",
    "curie_maximum": "Curie temperature [C]",
    "density": "lattice and volume",
    "entropy": "heat capacity, heat content, entropy",
    "eutectoid_activity": "carbon activity",
    "eutectoid_carbon": "carbon of the eutectoid [wt%]",
    "heat_capacity": "heat capacity, heat content, entropy",
    "heat_content": "heat capacity, heat content, entropy",
    "interaction": "effect of an element on carbon activity",
    "lattice_parameter": "lattice and volume",
    "log_activity_coefficient": "carbon activity",
    "loop_nose": "loops of austenite in ferrite [wt%]",
    "martensite_start": "martensite start [C]",
    "partition_coefficient": "partition between cementite and ferrite",
    "partition_direction": "partition between cementite and ferrite",
    "phases_present": "list of phases",
    "reaction_enthalpy": "heat of a reaction",
    "reaction_gibbs_energy": "Gibbs energy of a reaction [J/mol]",
    "reaction_temperature": "temperature at which a phase appears or vanishes [C]",
    "retained_austenite": "retained austenite [%]",
    "solubility_product": "solubility product of MC",
    "transformation_heat": "heat of a reaction",
    "vanishes": "temperature at which a phase appears or vanishes [C]",
    "volume_expansion": "lattice and volume",
    "volume_fraction_gained": "carbide gained on cooling [vol%]",
}


def quantity_of(record):
    """Name of the group; records of one group have one unit where it names one."""
    kind, phase = record["quantity"], record.get("phase")
    element = record.get("element")
    if "minutes" in record:
        return "timed soak: carbide, carbon, start, austenite, hardness"
    if "celsius_range" in record:
        return "martensite start, soak not stated [C]"
    if "measured_carbide" in record:
        return "short soak: start, austenite, hardness with counted carbide"
    if kind == "weight_percent":
        if phase == "matrix":
            return f"{element} in the matrix [wt%]"
        if phase in ("austenite", "ferrite"):
            return f"{element} in {phase} beside carbide or graphite [wt%]"
        if phase == "carbides":
            return f"{element} in all carbides together [wt%]"
        return "element in one carbide [wt%]"
    if kind == "volume_fraction":
        what = {"carbides": "all carbide", "MC": "MC"}.get(phase, "M3C or M6C")
        return f"{what} [vol%]"
    if kind == "mass_fraction":
        return "carbide [mass%]"
    return NAMES[kind]


def has_unit(group):
    return group.endswith("]")


def scale_of(record):
    """Fractions are shown in percent."""
    fractions = ("volume_fraction", "mass_fraction", "volume_fraction_gained")
    percent = record["quantity"] in (*fractions, "retained_austenite")
    return 100.0 if percent else 1.0
