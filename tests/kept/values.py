"""One value of every class that can be pickled, as small as they come."""

from __future__ import annotations

import operator
from typing import Any

import gibbsteel as gs
from gibbsteel import quantities

PUNCH = {"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0}
BEARING = {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25, "P": 0.02, "S": 0.01}


def small_values(steel: gs.Steel) -> dict[str, Any]:
    """What a soak is made of, and what does without one."""
    state = steel.soak(celsius=1120)
    model = gs.default_parameters().phase_model("austenite", elements=["Fe", "C"])
    carbon = [1.0, 0.04, 0.96]
    return {
        "state": state,
        "state_of_a_certificate": gs.Steel(
            BEARING, name="ball 4", bind_tramp_elements=True
        ).soak(celsius=845, certify="proof"),
        "state_not_usable": gs.Steel({"C": 0.8}).soak(
            celsius=900, phases=["graphite"], graphite=True
        ),
        "report": state.report(coldest_celsius=-75),
        "sweep": steel.sweep(celsius=[900, 1000]),
        "solve_options": gs.SolveOptions(starts_per_phase=12, certify="proof"),
        "search_options": gs.SearchOptions(tolerance=0.02),
        "makeable_steps": gs.MakeableSteps({"C": 0.02}, 0.1),
        "equilibrium": gs.minimize(["Fe", "C"], [0.97, 0.03], 1100.0),
        "constituent": model.constituents[1],
        "phase_derivatives": model.derivatives(kelvin=1200.0, site_fractions=carbon),
        "trade_indices": gs.trade_indices(PUNCH),
        "soak_warning": state_with_warning().warnings[0],
    }


def state_with_warning() -> gs.State:
    """Outside the validity of the file."""
    return gs.Steel({"C": 0.8}).soak(celsius=1350)


def quantity_values() -> dict[str, Any]:
    """Quantities and equations, of the library and of the user."""
    own = gs.Quantity("carbide", "mass%", operator.attrgetter("carbide_mass_percent"))
    equations = gs.property_equations().with_equation(
        "martensite start",
        "own",
        operator.attrgetter("coldest_celsius"),
        formula="invented",
        source="invented",
        ranges={"C": (0.1, 1.0)},
        elements=["C"],
        error=20.0,
    )
    return {
        "quantity": quantities.volume_percent("M6C"),
        "quantity_of_hardening": quantities.hardness_hrc(coldest_celsius=-75),
        "quantity_of_the_users_own": own,
        "property_equations": equations,
        "hardening_family": gs.hardening_families()[0],
    }


def with_liquid() -> gs.ParameterSet:
    """The shipped file with the layer that adds liquid."""
    return gs.load_parameters(
        gs.parameter_files()["layers/liquid.json"],
        on_top_of=gs.default_parameters(),
    )


def search_values(steel: gs.Steel) -> dict[str, Any]:
    """Answers to what a user asks of a steel."""
    state = steel.soak(celsius=1120)
    return {
        "hardening_estimates": state.hardening(particle_diameter=1.5),
        "phase_changes": steel.phase_changes(celsius=(800, 900)),
        "phase_changes_with_a_gap": gs.Steel({"C": 1.0}).phase_changes(
            celsius=(700, 720), graphite=True, phases=["graphite"]
        ),
        "dissolution": steel.dissolution_temperature("M6C", celsius=(1000, 1200)),
        "melting_range": gs.Steel(
            {"C": 0.8, "Cr": 1.0}, name="bar 9", parameters=with_liquid()
        ).melting_range(),
        "temperature_search": steel.temperature_for(
            matrix_carbon=0.45, celsius=(1000, 1200)
        ),
        "composition_search": steel.composition_for(
            "C", percent=(0.5, 0.6), celsius=1120, matrix_carbon=0.5
        ),
        "matching_temperature": gs.matching_temperature(
            reference=state, steel=steel.changed(C=0.6), celsius=(1000, 1200)
        ),
        "hardening_window": steel.hardening_window(celsius=(950, 1150)),
        "sensitivities": steel.sensitivities(celsius=1120),
        "comparison": gs.compare([state, steel.soak(celsius=1050)]),
        "screen_table": gs.screen(
            [[0.5, 4.5], [float("nan"), 4.5]],
            ["C", "Cr"],
            celsius=1000,
            quantities=[gs.quantities.hardness_hrc()],
        ),
        "soak_grid": steel.grid(C=[0.5, 0.6], celsius=[1000, 1100]),
        "timed_soak": gs.Steel(BEARING).soak(celsius=850).timed_soak(30),
        "minutes_for": gs.Steel(BEARING).soak(celsius=850).minutes_for("C", 0.7),
        "short_soak": state.with_measured_carbide(
            [gs.MeasuredCarbide("M6C", 3.0, standard_deviation=0.5)]
        ),
        "measured_carbide": gs.MeasuredCarbide("M3C", 6.0, smallest_counted=0.2),
    }


def section_values() -> dict[str, Any]:
    """A coarse section, and one that was stopped."""
    bar = gs.Steel({"C": 0.6}, name="bar 3")
    coarse = gs.SectionOptions(
        columns=3, rows=3, temperature_tolerance=1.0, percent_tolerance=0.01
    )
    return {
        "section_map": bar.section_map(C=(0, 1.2), celsius=(700, 900), section=coarse),
        "section_map_with_gaps": bar.section_map(
            C=(0, 1), celsius=(700, 900), section=coarse, progress=lambda done: False
        ),
    }


def band_values(steel: gs.Steel, own: gs.Steel) -> dict[str, Any]:
    """Bands; `own` is of a file that states standard deviations."""
    return {
        "tolerance_band": steel.tolerance_band(
            celsius=1120,
            ranges={"C": (0.50, 0.60)},
            standard_deviations={"Mo": 0.05},
            furnace_celsius=8,
            segregation_percent=2,
            samples=8,
        ),
        "parameter_band": own.parameter_band(celsius=950, samples=8),
        # Cementite and graphite alone hold 6.7 wt% C or more.
        "unusable_samples": gs.Steel({"C": 7.0}).tolerance_band(
            celsius=900,
            ranges={"C": (6.4, 7.2)},
            quantities=[quantities.mass_percent("M3C")],
            samples=8,
            corners=False,
            graphite=True,
            phases=["M3C", "graphite"],
        ),
    }


def fitted_values() -> dict[str, Any]:
    """A calibration of two steels, and a screening with a row without a result."""
    heats = {
        "trial 1": {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9},
        "trial 2": {"C": 0.75, "Cr": 4.1, "W": 18.0, "V": 1.1},
    }
    measured = [
        gs.measurement(
            gs.Steel(heat, name=name),
            quantities.matrix("W"),
            tungsten,
            0.3,
            celsius=1200,
            record="invented",
        )
        for (name, heat), tungsten in zip(heats.items(), (2.3, 7.0), strict=True)
    ]
    places = ["/phases/M6C/energy/0/terms/1", "/phases/M6C/energy/2/terms/1"]
    return {
        "measurement": measured[0],
        "calibration": gs.calibrate(measured, dict.fromkeys(places, 2000.0)),
        **evidence_values(gs.Steel(heats["trial 1"], name="trial 1")),
        "screen_table": gs.screen(
            [[0.55, 4.5], [float("nan"), 4.5]], ["C", "Cr"], celsius=[1000]
        ),
    }


def evidence_values(steel: gs.Steel) -> dict[str, Any]:
    """What was measured on steels like one."""
    found = steel.evidence(celsius=1220, most_soaks=1)
    return {
        "recorded_measurement": gs.published_measurements()[0],
        "evidence_row": found.rows[0],
        "evidence": found,
    }


def values_with_parameters(own: gs.Steel) -> dict[str, Any]:
    """Pickles that carry a parameter set: of a small file, to keep them small."""
    design = gs.design(
        own,
        vary={"C": (0.3, 0.9)},
        targets=[gs.target(quantities.matrix("C"), at_most=0.5, celsius=950)],
    )
    return {
        "steel": gs.Steel(BEARING, name="ball 4", bind_tramp_elements=True),
        "steel_of_an_own_file": own,
        "parameter_set": own.parameters,
        "twin_study": own.twin_study(celsius=950),
        "design": design,
        "design_target": gs.target(quantities.matrix("C"), equal=0.5, celsius=1100),
    }


def error_values() -> dict[str, Any]:
    """What the library raises, and warns of."""
    try:
        gs.Steel({"C": -1.0})
    except gs.InputError as error:
        bad_input = error
    try:
        gs.load_parameters("no_such_file.json")
    except gs.DataError as error:
        bad_file = error
    warning = gs.OutsideValidityWarning("gibbsteel.warning.301", "too hot")
    return {"input_error": bad_input, "data_error": bad_file, "warning": warning}
