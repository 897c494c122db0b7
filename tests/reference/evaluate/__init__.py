"""Computes the quantities that tests/reference/records.json compares with.

One file per kind of quantity; `KINDS` names what a record may ask for under "quantity".
"""

from . import (
    activity,
    composition_limit,
    curie_maximum,
    eutectoid,
    gamma_loop,
    hardening,
    partition,
    phase_amount,
    phase_composition,
    phase_temperature,
    phases_present,
    reaction,
    solubility_product,
    thermal_property,
    volume,
)
from .library import Absent, NotComputed

KINDS = {
    function.__name__: function
    for function in (
        activity.carbon_activity,
        activity.interaction,
        activity.log_activity_coefficient,
        composition_limit.composition_limit,
        curie_maximum.curie_maximum,
        eutectoid.eutectoid_activity,
        eutectoid.eutectoid_carbon,
        eutectoid.transformation_heat,
        gamma_loop.congruent_composition,
        gamma_loop.congruent_temperature,
        gamma_loop.loop_nose,
        hardening.as_quenched_hardness,
        hardening.martensite_start,
        hardening.retained_austenite,
        partition.partition_coefficient,
        partition.partition_direction,
        phase_amount.mass_fraction,
        phase_amount.volume_fraction,
        phase_amount.volume_fraction_gained,
        phase_composition.atom_percent,
        phase_composition.atom_ratio,
        phase_composition.weight_percent,
        phase_temperature.appearance_shift,
        phase_temperature.appears,
        phase_temperature.vanishes,
        phases_present.phases_present,
        reaction.reaction_enthalpy,
        reaction.reaction_gibbs_energy,
        reaction.reaction_temperature,
        solubility_product.solubility_product,
        thermal_property.entropy,
        thermal_property.heat_capacity,
        thermal_property.heat_content,
        volume.cell_volume,
        volume.density,
        volume.lattice_parameter,
        volume.volume_expansion,
    )
}

__all__ = ["KINDS", "Absent", "NotComputed"]
