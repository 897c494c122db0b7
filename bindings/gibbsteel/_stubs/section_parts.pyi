"""bind_section_parts.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Array, _Compiled

class SectionAxis(_Compiled):
    """One axis of a section map."""

    @property
    def element(self) -> str:
        """Symbol; empty for an axis of temperature."""
    @property
    def low(self) -> float:
        """[`unit`]"""
    @property
    def high(self) -> float:
        """[`unit`]"""
    @property
    def unit(self) -> str:
        """``"wt%"`` or ``"C"``."""
    @property
    def label(self) -> str:
        """``"C [wt%]"``, ``"temperature [C]"``."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionBoundary(_Compiled):
    """A line between two fields."""

    @property
    def left(self) -> list[str]:
        """Phases on the left, walking along the points."""
    @property
    def right(self) -> list[str]:
        """Phases on the right."""
    @property
    def left_only(self) -> list[str]:
        """Phases that vanish to the right."""
    @property
    def right_only(self) -> list[str]:
        """Phases that vanish to the left."""
    @property
    def invariant(self) -> bool:
        """True: a reaction at one temperature."""
    @property
    def closed(self) -> bool:
        """True: the last point is the first."""
    @property
    def of_gap(self) -> bool:
        """True: nothing is known on one side."""
    @property
    def points(self) -> _Array:
        """Shape (n, 2), in the units of the axes."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionField(_Compiled):
    """A region with one set of phases."""

    @property
    def phases(self) -> list[str]:
        """Kinds; two of a kind are listed twice."""
    @property
    def label(self) -> str:
        """``"austenite + M3C"``."""
    @property
    def label_point(self) -> tuple[float, float]:
        """A point inside, as far from the outline as can be."""
    @property
    def label_room(self) -> float:
        """Its distance from the outline, as a share of the axes."""
    @property
    def area_share(self) -> float:
        """Of the map, 0 to 1."""
    @property
    def outline(self) -> _Array:
        """Shape (n, 2); closed, the first point is not repeated."""
    @property
    def holes(self) -> list[_Array]:
        """Outlines of the fields inside it."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionNode(_Compiled):
    """A point where boundaries meet."""

    @property
    def at(self) -> tuple[float, float]:
        """In the units of the axes."""
    @property
    def fields(self) -> list[str]:
        """Labels of the fields around it."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionGap(_Compiled):
    """A region of which nothing is known."""

    @property
    def outline(self) -> _Array:
        """Shape (n, 2); no phase boundary."""
    @property
    def reason(self) -> str:
        """Why nothing is known."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
