"""Lengths and rectangles of wood, in exact fractions of a millimetre."""
import re
from fractions import Fraction

UNITS = {"in": Fraction(254, 10), "mm": Fraction(1), "ft": Fraction(3048, 10), "cm": Fraction(10), "m": Fraction(1000)}
SIGNS = {'"': "in", "'": "ft"}

# A plan says lengths to six decimals of its unit.
SLACK = Fraction(1, 10_000)

TERM = re.compile(
    r"""\s*(?:(?P<whole>\d+(?:\.\d+)?)(?![\d./]))?(?:[\s-]*(?P<over>\d+)/(?P<under>\d+))?\s*(?P<unit>in|ft|mm|cm|m|"|')?"""
)


def length(value, unit):
    """A length in millimetres, exact: a number of the unit, or a text of one or more terms like 8' 6 1/2"."""
    if not isinstance(value, str):
        return Fraction(str(value)) * UNITS[unit]
    total, at = Fraction(0), 0
    while at < len(value.rstrip()):
        term = TERM.match(value, at)
        if term is None or term.end() == at or not (term["whole"] or term["over"]):
            raise ValueError(f"{value!r} is no length")
        amount = Fraction(term["whole"] or 0)
        if term["over"]:
            amount += Fraction(int(term["over"]), int(term["under"]))
        total += amount * UNITS[SIGNS.get(term["unit"], term["unit"]) or unit]
        at = term.end()
    return total


class Box:
    """A rectangle by its sides along (x) and across (y) the stock."""

    def __init__(self, left, low, right, high):
        self.sides = ((left, right), (low, high))

    @staticmethod
    def placed(entry, unit):
        x, y, dx, dy = (length(entry[name], unit) for name in ("x", "y", "dx", "dy"))
        return Box(x, y, x + dx, y + dy)

    def size(self, axis):
        return self.sides[axis][1] - self.sides[axis][0]

    def holds(self, other):
        return all(
            mine[0] - SLACK <= theirs[0] and theirs[1] <= mine[1] + SLACK
            for mine, theirs in zip(self.sides, other.sides)
        )

    def like(self, other):
        return self.holds(other) and other.holds(self)

    def cut(self, axis, first, second):
        """The two parts of the box when everything between the two coordinates turns to sawdust."""
        parts = []
        for side in ((self.sides[axis][0], first), (second, self.sides[axis][1])):
            sides = [side, self.sides[1]] if axis == 0 else [self.sides[0], side]
            parts.append(Box(sides[0][0], sides[1][0], sides[0][1], sides[1][1]))
        return parts


def can_be_parted(boxes, kerf):
    """Whether straight cuts from edge to edge, each a kerf wide, free every box. Any cut that frees something may come first."""
    open_groups = [boxes]
    while open_groups:
        group = open_groups.pop()
        if len(group) < 2:
            continue
        for axis in (0, 1):
            parted = gaps(group, axis, kerf)
            if len(parted) > 1:
                open_groups += parted
                break
        else:
            return False
    return True


def gaps(group, axis, kerf):
    parted, reach = [[]], None
    for box in sorted(group, key=lambda one: one.sides[axis][0]):
        if reach is not None and box.sides[axis][0] - reach >= kerf - SLACK:
            parted.append([])
        parted[-1].append(box)
        reach = box.sides[axis][1] if reach is None else max(reach, box.sides[axis][1])
    return parted
