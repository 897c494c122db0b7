"""Own measurements of a punch steel: compared, fitted to, kept as a layer, taken off.

A cold-heading shop had coupons of one heat held for two hours, the carbon of the matrix
measured by a laboratory and the carbide counted. Heat and numbers are invented.
"""

import tempfile
from pathlib import Path

import _page as page
import gibbsteel as gs

HEAT = gs.Steel(
    {"C": 0.56, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0, "Mn": 0.3, "Si": 0.3},
    name="heat 7411",
)
M2 = gs.Steel({"C": 0.86, "Cr": 4.2, "Mo": 5.0, "W": 6.3, "V": 1.9}, name="M2")

CARBON = gs.quantities.matrix("C")
CARBIDE = gs.quantities.carbide_volume_percent()
OWN = [
    gs.measurement(HEAT, CARBON, 0.42, 0.015, celsius=1050),
    gs.measurement(HEAT, CARBON, 0.47, 0.015, celsius=1100),
    gs.measurement(HEAT, CARBON, 0.52, 0.015, celsius=1150),
    gs.measurement(HEAT, CARBIDE, 2.3, 0.3, celsius=1050),
    gs.measurement(HEAT, CARBIDE, 1.4, 0.3, celsius=1100),
]

# They rest on more than the numbers of this file.
AFTER_THE_QUENCH = ("as-quenched hardness", "martensite start", "retained austenite")


def published() -> list[gs.Measurement]:
    """Those of carbides and matrix."""
    known = [one.measurement for one in gs.published_measurements()]
    return [m for m in known if not m.quantity.name.startswith(AFTER_THE_QUENCH)]


def fitted(title: str, measurements: list[gs.Measurement]) -> gs.Calibration:
    """The numbers that the file calls uncertain, moved by the measurements."""
    fit = gs.calibrate(measurements, title=title, cross_validate=False)
    own = fit.measurements[: len(OWN)]
    before = sum(abs(m.residual_before) <= 1 for m in own)
    after = sum(abs(m.residual_after) <= 1 for m in own)
    check = fit.published
    print(f"{title}: {fit.status}")
    print(f"  own measurements met: {before} before, {after} after, of {len(own)}")
    print(
        f"  published ones met: {check.met_before} before, {check.met_after} after, of "
        f"{check.count}{'; fewer: other steels pay for it' if check.worse else ''}"
    )
    return fit


def changed(fit: gs.Calibration) -> None:
    print("What moved most, in standard deviations of the file:")
    moves = [(abs(n.after - n.before) / n.prior_deviation, n) for n in fit.numbers]
    for move, number in sorted(moves, key=lambda pair: -pair[0])[:4]:
        print(f"  {move:3.1f}  {number.text}")


def effect(label: str, parameters: gs.ParameterSet) -> None:
    row = f"  {label:22s}"
    for steel, celsius in ((HEAT, 1120), (M2, 1200)):
        state = steel.with_parameters(parameters).soak(celsius=celsius)
        carbon = state.matrix.weight_percent["C"]
        row += f"   {carbon:9.3f}   {state.carbide_volume_percent:12.1f}"
    print(row)


def effects(sets: dict[str, gs.ParameterSet]) -> None:
    print(f"{'':30s} heat 7411, 1120 C              M2, 1200 C")
    print(f"{'':25s}" + "   ".join(2 * [" C matrix   carbide vol%"]))
    for label, parameters in sets.items():
        effect(label, parameters)


def main() -> None:
    page.heading("What the file says, and what was measured on heat 7411")
    print(gs.calibrate(OWN, []))
    page.heading("Two fits")
    alone = fitted("Heat 7411 alone", OWN)
    together = fitted("Heat 7411 and published", [*OWN, *published()])
    changed(together)
    print()
    page.heading("Kept in a file, laid on top, taken off")
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "heat_7411.json"
        together.save_layer(file)
        layered = gs.load_parameters(file, on_top_of=gs.default_parameters())
    effects(
        {
            "the file that ships": gs.default_parameters(),
            "fit to heat 7411 alone": alone.parameters,
            "the layer, loaded": layered,
            "back to the file": gs.default_parameters(),
        }
    )
    calibrated = HEAT.with_parameters(layered)
    print(page.filled(f"computed with: {calibrated.parameters.title}"))
    state = calibrated.soak(celsius=1120)
    page.warnings([state], [state.hardening()])
    page.note(
        "Five numbers of one heat do not make a better file: the layer is for steels "
        "like this heat, and the numbers of the shop are invented."
    )
    print(page.CAUTION)


if __name__ == "__main__":
    main()
