#!/usr/bin/env python3
"""Checks cut plans against the cut requests that they answer, from the open formats alone
(src/ShopPlanner.Cutting/Formats/README.md).

    check_plans.py FOLDER

Every NAME.request.json in the folder is read with its NAME.plan.json. A line for each breach begins with the
name; the last line says how many pairs were read and how many of them hold. Exit status 0 when all hold, else 1.
"""
import json
import sys
from collections import Counter
from fractions import Fraction
from pathlib import Path

from wood import SLACK, Box, can_be_parted, length


class Request:
    def __init__(self, document):
        self.unit = document["unit"]
        saw, keep = document.get("saw") or {}, document.get("keep") or {}
        self.kerf = self.length(saw.get("kerf")) or Fraction(0)
        self.end_trim = self.length(saw.get("boardEndTrim")) or Fraction(0)
        self.edge_trim = self.length(saw.get("sheetEdgeTrim")) or Fraction(0)
        self.widest_rip = self.length(saw.get("widestRip"))
        self.longest_crosscut = self.length(saw.get("longestCrosscut"))
        self.keep = [self.length(keep.get(name)) for name in ("boardLength", "sheetLength", "sheetWidth")]
        store, carry = document.get("store"), document.get("carry")
        self.store_cuts = store["cuts"] if store else 0
        self.tolerance = (self.length(store.get("tolerance")) if store else None) or Fraction(0)
        self.carry = [self.length(carry[name]) for name in ("longest", "widest")] if carry else None
        self.materials = {one["id"]: one for one in document["materials"]}
        self.stock = {one["id"]: one for one in document["stock"]}
        self.parts = {one["id"]: one for one in document["parts"]}

    def length(self, value):
        return None if value is None else length(value, self.unit)

    def size(self, entry):
        across = entry.get("width")
        if across is None:
            across = self.materials[entry["material"]].get("width")
        return self.length(entry["length"]), self.length(across)

    def is_sheet(self, stock):
        return self.materials[stock["material"]]["form"] == "sheet"

    def trims(self, stock):
        """What is taken off an edge of new stock, along and across."""
        if stock.get("offcut"):
            return Fraction(0), Fraction(0)
        return (self.edge_trim, self.edge_trim) if self.is_sheet(stock) else (self.end_trim, Fraction(0))

    def keeps(self, stock, box):
        """A board's leftover is long enough and at least half as wide as the board's material; a sheet's reaches both sides,
        either way round."""
        along, across = box.size(0), box.size(1)
        board, one, other = self.keep
        if not self.is_sheet(stock):
            wide = self.length(self.materials[stock["material"]]["width"])
            return board is not None and along >= board - SLACK and 2 * across >= wide - SLACK
        if one is None or other is None:
            return False
        return max(along, across) >= max(one, other) - SLACK and min(along, across) >= min(one, other) - SLACK


class LayoutCheck:
    def __init__(self, request, unit, layout, stock):
        self.request, self.unit, self.layout, self.stock = request, unit, layout, stock
        self.whole = Box(0, 0, *request.size(stock))
        self.pieces = [Box.placed(piece, unit) for piece in layout["pieces"]]
        self.lefts = [(Box.placed(left, unit), bool(left.get("keep"))) for left in layout.get("leftovers", [])]

    def faults(self):
        if self.layout.get("copies", 1) < 1:
            yield "is cut less than once"
        if not self.pieces:
            yield "is cut for no part"
        for entry, box in zip(self.layout["pieces"], self.pieces):
            yield from self.piece(entry, box)
        yield from self.together()
        yield from self.leftovers()
        yield from Bench(self).faults()

    def piece(self, entry, box):
        request, part = self.request, self.request.parts.get(entry["part"])
        if part is None:
            yield f"holds {entry['part']}, which is no part of the request"
            return
        if part["material"] != self.stock["material"]:
            yield f"holds {entry['part']}, which is of another material"
        turned = bool(entry.get("turned"))
        if turned and (not request.is_sheet(self.stock) or part.get("grain", "length") != "any"):
            yield f"turns {entry['part']} across its grain"
        wanted = request.size(part)[:: -1 if turned else 1]
        if any(abs(box.size(axis) - wanted[axis]) > SLACK for axis in (0, 1)):
            yield f"holds {entry['part']} in another size than wanted"
        margin = request.trims(self.stock)[1] if request.is_sheet(self.stock) else 0
        (x0, x1), (y0, y1) = self.whole.sides
        if not Box(x0 + margin, y0 + margin, x1 - margin, y1 - margin).holds(box):
            yield f"holds {entry['part']} outside the usable wood"

    def together(self):
        if not can_be_parted(self.pieces, self.request.kerf):
            yield "holds pieces that straight cuts of the kerf's width do not free"
        if self.pieces and not self.request.is_sheet(self.stock):
            ends = min(box.sides[0][0] for box in self.pieces), self.whole.size(0) - max(box.sides[0][1] for box in self.pieces)
            if max(ends) < self.request.trims(self.stock)[0] - SLACK:
                yield "has no end that the trim squares"

    def leftovers(self):
        kept = [box for box, keep in self.lefts if keep]
        if kept and not can_be_parted(self.pieces + kept, self.request.kerf):
            yield "keeps a leftover that no straight cut frees"
        for box, keep in self.lefts:
            if not self.whole.holds(box) or min(box.size(0), box.size(1)) <= 0:
                yield "has a leftover outside the stock or without a size"
            if keep != self.request.keeps(self.stock, box):
                yield "keeps what is not worth keeping" if keep else "wastes what is worth keeping"


class Bench:
    """Makes the cuts of a layout in turn, at the store and at home."""

    def __init__(self, check):
        self.check, self.request, self.stock = check, check.request, check.stock
        self.hand = {"sheet" if self.request.is_sheet(self.stock) else "board": check.whole}
        self.named, self.store_edges, self.store_axis, self.at_home = {}, set(), None, False
        self.panels = [check.whole]

    def faults(self):
        cuts = self.check.layout.get("cuts", [])
        for number, cut in enumerate(cuts, 1):
            if cut["n"] != number:
                yield f"has cut {cut['n']} where cut {number} is due"
            box = self.hand.pop(cut["piece"], None)
            if box is None:
                yield f"cuts {cut['piece']}, which is not in hand"
                return
            yield from self.make(cut, box)
        yield from self.carried()
        for entry, box in zip(self.check.layout["pieces"], self.check.pieces):
            name = next((name for name, lying in self.hand.items() if lying.like(box)), None)
            if name is None:
                yield f"does not cut {entry['part']} free"
            elif cuts and self.named.get(name) != entry["part"]:
                yield f"does not say that {name} is {entry['part']}"
        for box, keep in self.check.lefts:
            if keep and not any(lying.holds(box) for lying in self.hand.values()):
                yield "cuts through a leftover to keep"
        if len(self.named) > len(self.check.pieces):
            yield "calls more pieces finished than it has"

    def make(self, cut, box):
        axis = 0 if cut["kind"] == "crosscut" else 1
        at = length(cut["at"], self.check.unit)
        if not 0 <= at < box.size(axis):
            yield f"makes cut {cut['n']} beside the piece"
        start = box.sides[axis][0]
        first, second = box.cut(axis, start + at, start + at + self.sawdust(at, start, axis))
        remains = second.size(axis) > SLACK
        if cut.get("by") == "store":
            yield from self.by_store(cut, axis, box, first, second if remains else None)
        else:
            yield from self.by_hand(cut, axis, at, box)
        names, parts = cut["gives"], cut.get("parts", [])
        if len(names) != (2 if remains else 1):
            yield f"names another number of pieces at cut {cut['n']} than it gives"
        for name, part, given in zip(names, parts + [None, None], (first, second)):
            if name in self.hand:
                yield f"gives the name {name} twice"
            self.hand[name] = given
            if part is not None:
                self.named[name] = part

    def sawdust(self, at, start, axis):
        """A squaring cut at nothing takes the rough edge only, where that is less than the kerf."""
        if at > 0:
            return self.request.kerf
        if axis == self.store_axis and start in self.store_edges:
            return min(self.request.kerf, self.request.tolerance)
        return self.request.kerf if start > 0 else min(self.request.kerf, self.request.trims(self.stock)[axis])

    def by_store(self, cut, axis, box, first, second):
        if self.stock.get("offcut") or self.stock.get("storeCuts") is False or self.at_home:
            yield f"lets the store make cut {cut['n']}, which it cannot"
        if self.store_axis not in (None, axis) or box not in self.panels:
            yield f"lets the store make cut {cut['n']}, which is not parallel or not through the whole stock"
        self.store_axis = axis
        self.panels = [panel for panel in self.panels if panel is not box] + [first] + ([second] if second else [])
        if len(self.panels) - 1 + (second is None) > self.request.store_cuts:
            yield "lets the store make too many cuts"
        self.store_edges |= {first.sides[axis][1]} | ({second.sides[axis][0]} if second else set())

    def by_hand(self, cut, axis, at, box):
        self.at_home = True
        request, across = self.request, box.size(1)
        if axis == 0 and request.longest_crosscut is not None and across > request.longest_crosscut + SLACK:
            yield f"needs a longer crosscut than the saw makes at cut {cut['n']}"
        narrower = min(at, across - at - request.kerf)
        if axis == 1 and request.widest_rip is not None and narrower > request.widest_rip + SLACK:
            yield f"needs a wider rip than the saw makes at cut {cut['n']}"

    def carried(self):
        request = self.request
        if request.carry is not None and not self.stock.get("offcut"):
            for panel in self.panels:
                sides = (panel.size(0), panel.size(1))
                if request.is_sheet(self.stock):
                    fits = max(sides) <= max(request.carry) + SLACK and min(sides) <= min(request.carry) + SLACK
                else:
                    fits = sides[0] <= request.carry[0] + SLACK
                if not fits:
                    yield "has a panel that cannot be carried home"
        for entry, box in zip(self.check.layout["pieces"], self.check.pieces):
            if not any(self.trimmed(panel).holds(box) for panel in self.panels):
                yield f"holds {entry['part']} across a cut by the store or in its rough edge"

    def trimmed(self, panel):
        if self.store_axis is None:
            return panel
        low, high = panel.sides[self.store_axis]
        low += self.request.tolerance if low in self.store_edges else 0
        high -= self.request.tolerance if high in self.store_edges else 0
        sides = [panel.sides[0], panel.sides[1]]
        sides[self.store_axis] = (low, high)
        return Box(sides[0][0], sides[1][0], sides[0][1], sides[1][1])


def figures(request, plan):
    """Counts of pieces and stock, what is bought, what it costs and what is claimed of it."""
    placed, used, missing, bought, paid = Counter(), Counter(), Counter(), Counter(), Counter()
    for layout in plan["layouts"]:
        used[layout["stock"]] += layout.get("copies", 1)
        for piece in layout["pieces"]:
            placed[piece["part"]] += layout.get("copies", 1)
    for one in plan.get("unplaced", []):
        missing[one["part"]] += one["quantity"]
        if one["quantity"] < 1 or not one["reason"].strip() or one["part"] not in request.parts:
            yield f"leaves {one['part']} out without a number, a reason or a wish for it"
    for one in plan.get("buy", []):
        bought[one["stock"]] += one["quantity"]
        paid[one["stock"]] += Fraction(str(one["cost"]))
    for name, part in request.parts.items():
        if placed[name] + missing[name] != part.get("quantity", 1):
            yield f"places {placed[name]} of {name} and leaves {missing[name]} out"
    for name in bought.keys() - request.stock.keys():
        yield f"buys {name}, which is no stock of the request"
    cost = Fraction(0)
    for name, stock in request.stock.items():
        price = Fraction(str(stock.get("price") or 0))
        cost += price * used[name]
        there = stock.get("quantity")
        if there is not None and used[name] > there:
            yield f"cuts {used[name]} of {name}, of which there are {there}"
        if bought[name] != (0 if stock.get("offcut") else used[name]) or paid[name] != price * bought[name]:
            yield f"buys {bought[name]} of {name} for {float(paid[name])} and cuts {used[name]}"
    yield from claims(request, plan, cost)


def claims(request, plan, cost):
    said, bound = Fraction(str(plan["cost"])), Fraction(str(plan.get("costLowerBound", 0)))
    if plan["unit"] != request.unit:
        yield "is in another unit than its request"
    if said != cost:
        yield f"says a cost of {float(said)}, the stock comes to {float(cost)}"
    if bound > said:
        yield "says a lower bound above its cost"
    if plan["status"] == "proven" and bound != said:
        yield "is called proven below its cost"
    if (plan["status"] == "incomplete") != bool(plan.get("unplaced")):
        yield "is called incomplete or not against what it leaves out"


def faults(request_document, plan):
    request = Request(request_document)
    for number, layout in enumerate(plan["layouts"], 1):
        stock = request.stock.get(layout["stock"])
        if stock is None:
            yield f"layout {number} cuts {layout['stock']}, which is no stock of the request"
            continue
        for fault in LayoutCheck(request, plan["unit"], layout, stock).faults():
            yield f"layout {number} {fault}"
    yield from figures(request, plan)


def main(folder):
    pairs, good = 0, 0
    for path in sorted(Path(folder).glob("*.request.json")):
        name = path.name.removesuffix(".request.json")
        request = json.loads(path.read_text(encoding="utf-8"))
        plan = json.loads(path.with_name(name + ".plan.json").read_text(encoding="utf-8"))
        found = list(faults(request, plan))
        pairs, good = pairs + 1, good + (not found)
        for fault in found:
            print(f"{name}: {fault}")
    print(f"{pairs} pairs read, {good} hold")
    return 0 if pairs == good else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
