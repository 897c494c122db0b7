"""Hardness scales, hardness of a mixture, and the trade's rules of thumb."""

from __future__ import annotations

from . import _core
from ._core import HardeningFamily, TradeIndices
from .composition import as_weight_percent


def hardening_families() -> list[HardeningFamily]:
    """The families of steels that hardening estimates tell apart.

    Returns
    -------
    list of HardeningFamily
        Each with its key, its rule of composition, and the records behind it.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> "high-speed" in [family.key for family in gs.hardening_families()]
    True
    """
    return _core.hardening_families()


def hrc_from_hv(hv: float) -> float:
    """Rockwell C from Vickers hardness, Eq. (H21).

    Parameters
    ----------
    hv : float
        [HV], 238 to 940.

    Returns
    -------
    float
        [HRC], within 0.3 of the table of ASTM E140 in that range (from memory). NaN
        outside 20 to 68.3 HRC, the ends of the table as the curve has them. Estimates
        of ``state.hardening()`` go on along the curve above 68.3 HRC: a value there
        says so in its remarks, the high end of a band does not.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> round(gs.hrc_from_hv(700), 1)
    60.1
    """
    return _core.hrc_from_hv(hv)


def hv_from_hrc(hrc: float) -> float:
    """Vickers from Rockwell C hardness, Eq. (H21) solved for HV.

    Parameters
    ----------
    hrc : float
        [HRC], 20 to 68.3.

    Returns
    -------
    float
        [HV]; NaN outside that range.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> round(gs.hv_from_hrc(60))
    699
    """
    return _core.hv_from_hrc(hrc)


def carbide_hardness(kind: str) -> float:
    """Hardness of a kind of carbide; common practice, no source.

    Parameters
    ----------
    kind : str
        For instance ``"M3C"``.

    Returns
    -------
    float
        [HV]

    Raises
    ------
    InputError
        Not a carbide of the file that ships: gibbsteel.input.205.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.carbide_hardness("MC")
    2600.0
    """
    return _core.carbide_hardness(kind)


def mixture_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Hardness of martensite, retained austenite and carbide, Eq. (H20).

    Parameters
    ----------
    martensite : float
        Its hardness [HV].
    austenite : float
        Retained, as a fraction of the matrix, 0 to 1.
    carbide : float
        As a fraction of the steel, 0 to 1.
    carbide_hv : float
        Its hardness [HV].

    Returns
    -------
    float
        [HV]; own estimate. NaN for a fraction or a hardness that cannot be.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.mixture_hardness(martensite=800, austenite=0, carbide=0, carbide_hv=1500)
    800.0
    """
    return _core.mixture_hardness(
        martensite=martensite,
        austenite=austenite,
        carbide=carbide,
        carbide_hv=carbide_hv,
    )


def quenched_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Eq. (H20) as the estimates use it: large carbides add less than their share.

    Parameters
    ----------
    martensite : float
        Its hardness [HV].
    austenite : float
        Retained, as a fraction of the matrix, 0 to 1.
    carbide : float
        As a fraction of the steel, 0 to 1.
    carbide_hv : float
        Its hardness [HV].

    Returns
    -------
    float
        [HV]; mean of counting at most 12 % of carbide and of counting none. NaN for a
        fraction or a hardness that cannot be.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.quenched_hardness(martensite=800, austenite=0, carbide=0, carbide_hv=1500)
    800.0
    """
    return _core.quenched_hardness(
        martensite=martensite,
        austenite=austenite,
        carbide=carbide,
        carbide_hv=carbide_hv,
    )


def trade_indices(weight_percent: dict[str, float]) -> TradeIndices:
    """Rules of thumb for an alloy content, Eq. (H26) to (H28).

    Parameters
    ----------
    weight_percent : dict of str to float
        [wt%] by element; one that is not listed counts as 0.

    Returns
    -------
    TradeIndices
        Common practice, no source.

    Raises
    ------
    InputError
        What is no weight percent of an element: gibbsteel.input.201 to .204.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.trade_indices({"Mo": 5.0, "W": 6.0}).molybdenum_equivalent
    8.0
    """
    return _core.trade_indices(as_weight_percent(weight_percent, {}))
