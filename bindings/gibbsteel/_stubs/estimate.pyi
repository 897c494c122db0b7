"""bind_estimate.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class Estimate(_Compiled):
    """A number with its band and where it comes from."""

    @property
    def name(self) -> str:
        """For instance ``"martensite start"``."""
    @property
    def value(self) -> float:
        """In `unit`; NaN when there is none, `remarks` then says why."""
    @property
    def low(self) -> float:
        """About two in three measurements lie in the band, of hardness more."""
    @property
    def high(self) -> float:
        """Upper end of the band."""
    @property
    def unit(self) -> str:
        """``"C"``, ``"vol%"``, ``"HV"``, ``"HRC"``, ``"um"``."""
    @property
    def equation(self) -> str:
        """Key of the equation, and what was added to it."""
    @property
    def source(self) -> str:
        """Citation of the equation."""
    @property
    def in_range(self) -> bool:
        """False: an input lies outside the stated range of the equation."""
    @property
    def remarks(self) -> list[str]:
        """What to know about it."""
    @property
    def known(self) -> bool:
        """False when there is no value."""
    def __float__(self) -> float: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def hrc_from_hv(hv: float) -> float:
    """Rockwell C from Vickers, Eq. (H21)."""

def hv_from_hrc(hrc: float) -> float:
    """Vickers from Rockwell C, Eq. (H21)."""

def carbide_hardness(kind: str) -> float:
    """Hardness of a kind of carbide [HV]."""

def mixture_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Martensite [HV] with fractions of austenite and carbide, Eq. (H20)."""

def quenched_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Eq. (H20) as it is used for estimates, with at most 12 % carbide [HV]."""

class TradeIndices(_Compiled):
    """The trade's rules of thumb, from weight percents."""

    @property
    def molybdenum_equivalent(self) -> float:
        """Mo + W/2, Eq. (H26)."""
    @property
    def carbon_balance(self) -> float:
        """C - 0.033W - 0.063Mo - 0.06Cr - 0.2V, Eq. (H27)."""
    @property
    def pitting_index(self) -> float:
        """Cr + 3.3(Mo + W/2) + 16N, Eq. (H28)."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def trade_indices(weight_percent: dict[str, float]) -> TradeIndices:
    """TradeIndices of a composition in weight percent."""

class HardeningFamily(_Compiled):
    """What one family of steels needs beside the general equations."""

    @property
    def key(self) -> str:
        """By which it is chosen: ``"high-speed"``."""
    @property
    def name(self) -> str:
        """In words."""
    @property
    def rule(self) -> str:
        """Composition by which it is chosen [wt% of the steel]."""
    @property
    def start_offset(self) -> float:
        """Added to the martensite start of Eq. (H12) [C]."""
    @property
    def start_error(self) -> float:
        """Standard deviation [C]."""
    @property
    def start_scatter(self) -> float:
        """Of the records about the offset [C]."""
    @property
    def start_records(self) -> int:
        """Number of records behind the offset."""
    @property
    def transformation_rate(self) -> float:
        """In Eq. (H13) [1/C]."""
    @property
    def retained_error(self) -> float:
        """Standard deviation of the fraction of retained austenite."""
    @property
    def retained_records(self) -> int:
        """Number of records behind the rate; 0: the published rate."""
    @property
    def hardness_offset(self) -> float:
        """Added to the as-quenched hardness [HV]."""
    @property
    def hardness_error(self) -> float:
        """Standard deviation [HV]."""
    @property
    def hardness_records(self) -> int:
        """Number of records behind the offset."""
    @property
    def hardness_steels(self) -> int:
        """Number of steels that the records are of."""
    @property
    def hardness_soaked(self) -> int:
        """Of the records: austenite computed with the shipped file, so the offset takes
        up what that file has wrong in it."""
    @property
    def fitted(self) -> str:
        """Which records."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def hardening_families() -> list[HardeningFamily]:
    """All families."""
