"""State.timed_soak against a second form of Eqs. (B4) to (B7), written here; how it is
called. Its numbers against published soaks: records of tests/reference (`minutes`)."""

import inspect
import math
import pickle

import gibbsteel as gs
import pytest
from gibbsteel import _core

STEEL = {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}
GAS = 8.314462618
# D_0 [m2/s] and Q [J/mol] in austenite, as remembered: Cr Joensson's mobility, Mn
# review of Oikawa 1982, Si handbook tables.
DIFFUSION = {"Cr": (1.75e-4, 286000.0), "Mn": (1.78e-5, 264000.0)}
DIFFUSION["Si"] = (7.0e-6, 243000.0)


def bisect(function, low, high):
    """Root of a function that is below 0 at `low`."""
    for _ in range(80):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if function(middle) < 0 else (low, middle)
    return 0.5 * (low + high)


class Second:
    """52100 from annealed at 700 C, in site fractions per metal atom."""

    def __init__(self, celsius):
        self.kelvin = celsius + 273.15
        annealed = gs.Steel(STEEL).soak(celsius=700)
        cementite = annealed["M3C"]
        self.bulk = {**dict(cementite.site_fractions[0]), "Si": 0.0}
        atoms = {}
        for phase in annealed.occurrences:
            for symbol, x in phase.atom_fraction.items():
                atoms[symbol] = atoms.get(symbol, 0.0) + x * phase.mole_percent
        self.metals = [symbol for symbol in atoms if symbol != "C"]
        total = sum(atoms[m] for m in self.metals)
        self.all = {symbol: x / total for symbol, x in atoms.items()}
        self.start = 0.75 * cementite.mole_percent / total
        parameters = gs.default_parameters()
        elements = [*self.metals, "C"]
        self.austenite = parameters.phase_model("austenite", elements)
        self.cementite = parameters.phase_model("M3C", elements)

    def potentials(self, metals, carbon):
        """mu of carbon and of the metals in austenite."""
        names = [(c.name, c.sublattice) for c in self.austenite.constituents]
        of_carbon = names.index(next(n for n in names if n[0] == "C"))
        empty = names.index(("vacancy", names[of_carbon][1]))
        y = [metals.get(name, 0.0) for name, _ in names]
        y[of_carbon], y[empty] = carbon, 1.0 - carbon
        d = self.austenite.derivatives(site_fractions=y, kelvin=self.kelvin)
        rest = d.value - sum(a * b for a, b in zip(y, d.dy)) + d.dy[empty]
        found = {
            name: rest + d.dy[i]
            for i, (name, where) in enumerate(names)
            if where != names[of_carbon][1]
        }
        return d.dy[of_carbon] - d.dy[empty], found

    def excess(self, speed, share, mean, mu_carbon):
        """Above 0 when cementite would grow on a surface that recedes so fast."""
        crowding = 1 - 1.8 * share ** (1 / 3) + share - 0.2 * share**2
        crowding /= (1 - share) ** 2
        surface = {}
        for m in self.metals:
            if m == "Fe":
                continue
            d0, q = DIFFUSION[m]
            away = d0 * math.exp(-q / GAS / self.kelvin) / crowding
            top = speed * self.bulk[m] + away * mean[m]
            surface[m] = top / (speed + away)
        surface["Fe"] = 1.0 - sum(surface.values())
        same = bisect(
            lambda c: self.potentials(surface, c)[0] - mu_carbon, 1e-6, 0.33
        )
        of_metals = self.potentials(surface, same)[1]
        names = [c.name for c in self.cementite.constituents]
        skin = dict(self.bulk)
        for _ in range(60):
            y = [1.0 if name == "C" else skin[name] for name in names]
            d = self.cementite.derivatives(site_fractions=y, kelvin=self.kelvin)
            rest = d.value - sum(
                a * b for a, b, n in zip(y, d.dy, names) if n != "C"
            )
            raised = {
                n: skin[n]
                * math.exp(
                    (3 * of_metals[n] + mu_carbon - rest - d.dy[i])
                    / (3 * GAS * self.kelvin)
                )
                for i, n in enumerate(names)
                if n != "C"
            }
            total = sum(raised.values())
            skin = {n: value / total for n, value in raised.items()}
        return math.log(total)

    def mean(self, share):
        metals = {
            m: (self.all[m] - share * self.bulk[m]) / (1 - share) for m in self.metals
        }
        return metals, (self.all["C"] - share / 3) / (1 - share)

    def minutes_to(self, share, micrometres, steps=24):
        """Trapezia over the share, from where metals begin to matter."""

        def speed(s):
            mean, carbon = self.mean(s)
            mu = self.potentials(mean, carbon)[0]
            if self.excess(1e-9, s, mean, mu) < 0:
                return math.inf
            power = bisect(lambda p: self.excess(10**p, s, mean, mu), -22, -9)
            return 10**power

        radius, seconds, before = 0.5e-6 * micrometres, 0.0, 0.0
        for i in range(steps + 1):
            s = self.start + (share - self.start) * i / steps
            slowness = (
                radius**2 * (s / self.start) ** (2 / 3) / (3 * s * speed(s))
            )
            width = (self.start - share) / steps
            seconds += 0.5 * width * (before + slowness) if i else 0.0
            before = slowness
        return seconds / 60


@pytest.fixture(scope="module")
def long_hold():
    return gs.Steel(STEEL, name="52100").soak(celsius=845)


def carbon(soak):
    return soak.state.matrix.weight_percent["C"]


def test_a_second_form_takes_the_same_minutes(long_hold):
    second = Second(845)
    for minutes in (40, 90):
        soak = long_hold.timed_soak(minutes)
        left = soak.state["M3C"].mole_percent
        annealed = gs.Steel(STEEL).soak(celsius=700)["M3C"].mole_percent
        found = second.minutes_to(second.start * left / annealed, 0.6)
        assert found == pytest.approx(minutes, rel=0.02)


def test_52100_after_half_an_hour_is_near_what_shops_find(long_hold):
    """0.62 +- 0.06 wt% C (BRG-06) and 5 +- 2 vol% M3C (BRG-05), both from memory."""
    soak = long_hold.timed_soak(30)
    assert carbon(soak) == pytest.approx(0.62, abs=0.06)
    assert soak.state["M3C"].volume_percent == pytest.approx(5.0, abs=2.0)
    assert soak.state.solve_report.status == "timed soak"
    assert soak.state.usable
    assert soak.state.warnings[0].code == "gibbsteel.warning.360"


def test_it_is_called_with_minutes_and_what_was_there_before(long_hold):
    one = long_hold.timed_soak(minutes=60, particle_micrometres=0.5)
    same = long_hold.timed_soaks([60], particle_micrometres=0.5)[0]
    assert carbon(one) == carbon(same) > carbon(long_hold.timed_soak(60))
    cold = long_hold.timed_soak(60, annealed_celsius=620)
    assert cold.annealed_kelvin == pytest.approx(893.15)
    assert cold.annealed_celsius == pytest.approx(620)
    assert cold.annealed_fahrenheit == pytest.approx(1148)
    assert cold.measured == []
    assert "kept" not in repr(cold.carbides[0])
    assert carbon(long_hold.timed_soak(60, annealed_fahrenheit=1148)) == carbon(cold)
    assert (one.state.soak_minutes, one.state.particle_micrometres) == (60.0, 0.5)
    assert (long_hold.soak_minutes, long_hold.particle_micrometres) == (None, None)
    with pytest.raises(gs.InputError) as caught:
        long_hold.timed_soak(0)
    assert str(caught.value) == (
        "[gibbsteel.input.287] minutes: is 0; give minutes at temperature, above 0 and "
        "at most 100000"
    )


def test_what_is_no_number_is_refused(long_hold):
    def message(call):
        with pytest.raises(gs.InputError) as caught:
            call()
        return str(caught.value)

    assert message(lambda: long_hold.timed_soak("30")) == (
        "[gibbsteel.input.220] minutes: is str, not float; give a number"
    )
    assert message(lambda: long_hold.timed_soaks(30)) == (
        "[gibbsteel.input.220] minutes: is int; give a list of minutes"
    )
    assert message(lambda: long_hold.timed_soak(30, particle_micrometres=None)) == (
        "[gibbsteel.input.220] particle_micrometres: is NoneType, not float; give a "
        "number"
    )
    assert long_hold.timed_soaks([]) == []
    assert message(lambda: long_hold.timed_soak([15, 30])) == (
        "[gibbsteel.input.220] minutes: is list; timed_soaks takes several times"
    )
    for wrong in (True, 1j, 10**400, None):
        name = type(wrong).__name__
        assert message(lambda wrong=wrong: long_hold.timed_soak(wrong)) == (
            f"[gibbsteel.input.220] minutes: is {name}, not float; give a number"
        )
    matrix = gs.quantities.timed_soak_matrix
    assert message(lambda: matrix("C", "thirty")) == (
        "[gibbsteel.input.220] minutes: is str, not float; give a number"
    )
    assert message(lambda: matrix("C", 30, parameters="own")) == (
        "[gibbsteel.input.220] parameters: is str, not ParameterSet; give that of the "
        "steel"
    )


def test_an_own_parameter_set_must_be_given():
    own = gs.default_parameters("iron_as_measured")
    state = gs.Steel(STEEL, parameters=own).soak(celsius=845)
    with pytest.raises(gs.InputError, match="gibbsteel.input.266"):
        state.timed_soak(30)
    soak = state.timed_soak(30, parameters=own)
    assert soak.state.parameters_hash == own.content_hash
    with pytest.raises(gs.InputError, match="gibbsteel.input.220"):
        state.timed_soak(30, parameters="own")


def test_it_goes_on_into_estimates_comparisons_reports_and_pickles(long_hold):
    soak = long_hold.timed_soak(30)
    early, late = (s.hardening(coldest_celsius=20) for s in (soak, long_hold))
    assert early.martensite_start.value > late.martensite_start.value + 40
    table = gs.compare([long_hold, soak, long_hold.timed_soak(60)])
    text = str(table)
    assert "B: 52100 at 845 C, timed soak of 30 min;" in text
    assert "C: 52100 at 845 C, timed soak of 60 min;" in text
    assert "Estimate of a soak of minutes, counted from when" in text
    assert "timed soak" in str(soak.state.report())
    again = pickle.loads(pickle.dumps(soak))
    assert again.state.occurrences == soak.state.occurrences
    assert again.state.solve_report.status == "timed soak"
    assert (again.state.soak_minutes, again.state.particle_micrometres) == (30.0, 0.6)
    assert set(soak.state.to_frame()["soak_minutes"]) == {30.0}
    assert "soak_minutes" not in long_hold.to_frame()
    assert "timed soak" in soak._repr_html_()


def test_the_usual_size_of_particles_is_that_of_the_library(long_hold):
    usual = _core.default_particle_micrometres
    assert long_hold.timed_soak(30).state.particle_micrometres == usual
    of_size = "particle_micrometres"
    for function in (
        gs.State.timed_soak,
        gs.State.timed_soaks,
        gs.State.minutes_for,
        gs.quantities.timed_soak_matrix,
        gs.plot.soak_time,
        gs.plot.soak_limits,
    ):
        assert inspect.signature(function).parameters[of_size].default is usual


def test_a_temperature_for_the_same_minutes(long_hold):
    quantity = gs.quantities.timed_soak_matrix("C", 30)
    steel = gs.Steel(STEEL)
    search = steel.temperature_for(quantity, 0.75, celsius=(820, 900))
    found = steel.soak(celsius=search.crossings[0].celsius).timed_soak(30)
    assert carbon(found) == pytest.approx(0.75, abs=1e-3)
    text = " ".join(str(search).split())
    assert text.startswith(
        "steel, 820 to 900 C, timed soak of 30 min: found: C in the matrix, timed soak "
        "of 30 min is 0.75 wt% at 863 C (rising)"
    )
    assert "matrix C, long hold, wt% carbide, long hold, vol%" in text
    assert "Estimate of a soak of minutes, counted from" in text
    short = gs.quantities.short_soak_matrix("C")
    limit = steel.temperature_for(short, 0.65, celsius=(820, 900))
    assert "short-soak limit: found" in str(limit)
    again = pickle.loads(pickle.dumps(quantity))
    assert again.label == quantity.label
    assert again.value(long_hold) == quantity.value(long_hold)
    with pytest.raises(gs.InputError) as caught:
        gs.matching_temperature(
            reference=long_hold.timed_soak(60).state,
            steel=steel,
            quantity=quantity,
            celsius=(820, 900),
        )
    assert str(caught.value) == (
        "[gibbsteel.input.253] reference: the quantity 'C in the matrix, timed soak of "
        "30 min' has no value there; choose a soak that has it, or another quantity"
    )
    sized = gs.quantities.timed_soak_matrix("C", 30, 0.5, 680)
    assert pickle.loads(pickle.dumps(sized)).value(long_hold) == sized.value(long_hold)
    assert sized.value(long_hold) > quantity.value(long_hold)


def test_minutes_for_a_content(long_hold):
    found = long_hold.minutes_for("C", 0.75)
    assert found.status == "found"
    assert carbon(long_hold.timed_soak(found.minutes)) == pytest.approx(0.75, abs=1e-4)
    assert str(found) == found.text == repr(found)[1:-1]
    again = pickle.loads(pickle.dumps(found))
    assert (again.status, again.minutes, again.text) == (
        found.status,
        found.minutes,
        found.text,
    )
    assert (again.at_first, again.at_last) == (found.at_first, found.at_last)
    assert found.low_minutes == pytest.approx(found.minutes / 3)
    assert found.high_minutes == pytest.approx(found.minutes * 3)
    assert again.low_minutes == found.low_minutes
    assert again.high_minutes == found.high_minutes
    once = long_hold.minutes_for("C", 0.6)
    assert (once.status, once.minutes) == ("at once", 0.0)
    never = long_hold.minutes_for("C", 0.99)
    assert never.status == "never reached" and math.isnan(never.minutes)
    assert long_hold.minutes_for("C", 0.75, particle_micrometres=1.2).minutes == (
        pytest.approx(4.0 * found.minutes)
    )
    with pytest.raises(gs.InputError, match="gibbsteel.input.220. weight_percent"):
        long_hold.minutes_for("C", "0.75")


def test_hardness_after_minutes_is_what_a_search_is_about():
    steel = gs.Steel(STEEL)
    hardness = gs.quantities.hardness_hrc(coldest_celsius=20)
    early = gs.quantities.after_minutes(hardness, minutes=20)
    assert early.label == "as-quenched hardness, timed soak of 20 min [HRC]"
    search = steel.temperature_for(early, 64, celsius=(780, 860))
    found = steel.soak(celsius=search.crossings[0].celsius)
    hrc = found.timed_soak(20).hardening(coldest_celsius=20).hardness_hrc.value
    assert hrc == pytest.approx(64, abs=0.01)
    of_long_hold = steel.temperature_for(hardness, 64, celsius=(740, 860))
    assert of_long_hold.crossings[0].celsius < found.celsius - 10
    again = pickle.loads(pickle.dumps(early))
    assert (again.label, again.value(found)) == (early.label, early.value(found))
    with pytest.raises(gs.InputError) as caught:
        gs.quantities.after_minutes("hardness", 20)
    assert str(caught.value) == (
        "[gibbsteel.input.220] quantity: is str, not Quantity; give one of "
        "gibbsteel.quantities"
    )
