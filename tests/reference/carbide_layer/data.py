"""Measurements for the calibration: published records, and phases seen in steels.

Records of confidence `low` are not used. Steels in `TEST` are held back, all of their
records: they were chosen by steel before the first fit (M4 is the one high-speed steel
with full analyses besides T1 and M2; 440C and the W-Cr-V hot-work steel stand for the
families that the fitted steels are not of).
"""

from math import nan

import gibbsteel as gs
from accuracy_page.groups import STEELS, family_of
from evaluate import record_file
from gibbsteel import quantities

HOT_WORK = "W-Cr-V hot-work die steels (about 0.3C, 5-9W, 2.5-3Cr, 0.3-0.5V)"
TEST = ("AISI M4 (HS6-5-4)", "AISI 440C", HOT_WORK, "1.45C-14Cr-4V")
# Soaks of minutes, far from the long-hold limit by their own notes.
NOT_EQUILIBRIUM = ("AISI 52100",)
NONE = 0.3  # [vol%] that a phase may have where none was seen
AT_SOLVUS = 10.0  # [J/mol of atoms], about 2 C


def amount(kind, of_kind, of_all):
    return of_all() if kind == "carbides" else of_kind(kind)


def atom_percent(kind, element):
    def value(state):
        present = {o.kind: o for o in reversed(state.occurrences)}
        if kind not in present:
            return nan
        return 100.0 * present[kind].atom_fraction[element]

    return gs.Quantity(f"{element} in {kind}", "at%", value)


def quantity_of(record):
    """The quantity and the factor from the record's unit to its own; None: no such."""
    kind, phase, element = (record.get(k) for k in ("quantity", "phase", "element"))
    if kind == "weight_percent":
        if phase == "matrix":
            return quantities.matrix(element), 1.0
        if phase == "carbides":
            return quantities.in_carbides(element), 1.0
        return quantities.in_phase(phase, element), 1.0
    if kind == "volume_fraction":
        all_of_it = quantities.carbide_volume_percent
        return amount(phase, quantities.volume_percent, all_of_it), 100.0
    if kind == "mass_fraction":
        all_of_it = quantities.carbide_mass_percent
        return amount(phase, quantities.mass_percent, all_of_it), 100.0
    if kind == "atom_percent":
        return atom_percent(phase, element), 1.0
    return None


def is_used(record):
    return (
        record["confidence"] != "low"
        and record["comparison"] == "within"
        and family_of(record) in STEELS
        and record["steel"] not in NOT_EQUILIBRIUM
        and "composition_wt" in record
        and quantity_of(record) is not None
    )


def from_record(record):
    quantity, factor = quantity_of(record)
    uncertainty = record["uncertainty"]
    if isinstance(uncertainty, list):
        uncertainty = max(uncertainty)
    return gs.measurement(
        record["composition_wt"],
        quantity,
        record["value"] * factor,
        uncertainty * factor,
        celsius=record["celsius"],
        name=record["steel"],
        record=record["id"],
        held_back=record["steel"] in TEST,
        **record.get("soak", {}),
    )


def composition(identity):
    records = {r["id"]: r for r in record_file.records()}
    return records[identity]["composition_wt"]


def seen(identity, steel, kind, celsius, within=AT_SOLVUS):
    """A phase that was found: its driving force is 0."""
    force = quantities.driving_force(kind)
    return (composition(identity), steel, force, within, celsius, identity)


def not_seen(identity, steel, kind, celsius, record=""):
    """A phase that was looked for, or would have been noticed, and was not there."""
    none = quantities.volume_percent(kind)
    return (composition(identity), steel, none, NONE, celsius, record)


X210CRW12 = {"C": 2.1, "Si": 0.25, "Mn": 0.35, "Cr": 12.0, "W": 0.7}
CR6 = {"C": 1.05, "Si": 0.25, "Mn": 1.0, "Cr": 1.0, "W": 1.2}
# (weight percents, steel, Celsius) of steels without M23C6. In austenite of Fe-W-C at
# 1000 C M6C and WC are found (Pollock and Stadelmaier 1970, Bergstroem 1977, from
# memory, with TI-20); the carbide of O1, 105WCr6 and 4140 is cementite, that of
# X210CrW12 M7C3 (common practice, no source).
WITHOUT = (
    *((CR6, "105WCr6", celsius) for celsius in (800, 815, 830)),
    *((X210CRW12, "X210CrW12", celsius) for celsius in (700, 760, 820, 960)),
    ({"C": 0.4, "Cr": 1.0, "Mo": 0.2, "Mn": 0.8}, "AISI 4140", 650),
    ({"C": 0.9, "Si": 0.3, "Mn": 1.1, "Cr": 0.5, "W": 0.5}, "AISI O1", 815),
    ({"C": 0.7, "W": 6.0}, "Fe-W-C", 1000),
    ({"C": 1.0, "W": 3.0}, "Fe-W-C", 1000),
)

# (weight percents, steel, Celsius) of steels whose matrix is austenite alone where they
# are hardened: common practice, no source, for the ranges the grades are hardened in;
# 20Cr-4V: the notes on the first parameter file. Held back: 14Cr-4V. H24 and H26, with
# 15 and 18 % tungsten and 0.5 % carbon, may hold ferrite and are not asked.
AUSTENITE = (
    ({"C": 0.85, "Cr": 4.1, "W": 18.0, "V": 2.1}, "AISI T2", 1280),
    ({"C": 0.35, "Cr": 2.0, "W": 11.0, "V": 0.4}, "AISI H22", 1200),
    ({"C": 0.33, "Cr": 3.5, "W": 9.25, "V": 0.5}, "AISI H21", 1200),
    ({"C": 0.6, "Cr": 4.0, "W": 6.0, "Mo": 5.0, "V": 2.0}, "AISI H42", 1180),
    ({"C": 1.8, "Cr": 5.25, "Mo": 1.3, "V": 9.0, "Si": 0.9}, "1.8C-5Cr-9V", 1120),
    ({"C": 1.45, "Cr": 14.5, "Mo": 2.0, "V": 4.0}, "1.45C-14Cr-4V", 1065),
    ({"C": 1.9, "Cr": 20.0, "Mo": 1.0, "V": 4.0, "Si": 0.7}, "1.9C-20Cr-4V", 1150),
)
RESIDUAL = {"Mn": 0.3, "Si": 0.3}  # of an ordinary melt, where nothing else stands
FERRITE = 2.0  # [vol%] of ferrite that nobody would have noticed


def phases():
    """Value 0 of a driving force or an amount, from lists of phases.

    The M2 solvus: M23C6 is gone at 1095 C after a short soak; the record's note has the
    equilibrium 950 to 1050 C, so 950 C is taken at the uncertainty of 50 C. Without an
    id: common practice, no source.
    """
    t1, m2, h13 = "AISI T1 (HS18-0-1)", "AISI M2 (HS6-5-2)", "AISI H13"
    listed = [
        *(seen("hss/T1-A-phases", t1, "M23C6", celsius) for celsius in (700, 750)),
        not_seen("hss/T1-A-phases", t1, "M7C3", 700),
        not_seen("hss/T1-A-phases", t1, "M7C3", 750, "hss/T1-A-phases"),
        not_seen("hss/T1-A-phases", t1, "ferrite", 1250, "hss/T1-1250-phases"),
        not_seen("hss/T1-A-phases", t1, "ferrite", 1290),
        not_seen("hss/T1-A-phases", t1, "MC", 1250, "hss/T1-1250-phases"),
        seen("hss/M2-M23C6-solvus", m2, "M23C6", 750, 20.0),
        seen("hss/M2-M23C6-solvus", m2, "M23C6", 950, 300.0),
        not_seen("hss/M2-M23C6-solvus", m2, "M23C6", 1095, "hss/M2-M23C6-solvus"),
        not_seen("hss/M2-M23C6-solvus", m2, "M7C3", 750),
        not_seen("coldwork/D2-02", "AISI D2", "M23C6", 1030),
        not_seen("coldwork/A2-02", "AISI A2", "M23C6", 970),
        not_seen("coldwork/H-13", "AISI S7", "M23C6", 940),
        not_seen("coldwork/H-02", h13, "M23C6", 750, "coldwork/H-02"),
        seen("coldwork/H-02", h13, "M7C3", 750),
        seen("coldwork/H-02", h13, "M6C", 750),
        seen("coldwork/H-10", HOT_WORK, "M23C6", 750),
        not_seen("coldwork/H-10", HOT_WORK, "M7C3", 750, "coldwork/H-10"),
    ]
    melts = [(RESIDUAL | percents, s, t) for percents, s, t in AUSTENITE]
    without = (("M23C6", NONE, WITHOUT), ("ferrite", FERRITE, melts))
    for kind, within, steels in without:
        none = quantities.volume_percent(kind)
        listed += [(percents, s, none, within, t, "") for percents, s, t in steels]
    return [
        gs.measurement(
            percents,
            quantity,
            0.0,
            uncertainty,
            celsius=celsius,
            name=steel,
            record=record,
            held_back=steel in TEST,
        )
        for percents, steel, quantity, uncertainty, celsius, record in listed
    ]


def loop():
    """The nose of the Fe-W loop near 1100 C as tie-line of an alloy within it."""
    return [
        gs.measurement(
            {"W": 4.5},
            quantities.in_phase("austenite", "W"),
            3.3,
            0.5,
            celsius=1100,
            name="Fe-W",
            record="systems/GL-15",
        )
    ]


def measurements():
    chosen = [from_record(r) for r in record_file.records() if is_used(r)]
    return [*chosen, *phases(), *loop()]
