using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Where physics or arithmetic knows one direction, no answer goes the other way.</summary>
public sealed class MonotonicTests
{
    // Form, result, key, its unit, from, to; whether the result rises with it.
    public static TheoryData<string, string, string, string, double, double, bool> Directions() =>
        new()
        {
            { "sag", "Sag at first", "load", "lb", 1, 1500, true },
            { "sag", "Sag at first", "span", "in", 4, 100, true },
            { "sag", "Sag after years", "load", "lb/ft", 1, 200, true },
            { "sag", "Sag after years", "thickness", "in", 0.25, 3, false },
            { "sag", "Sag after years", "depth", "in", 4, 40, false },
            { "sag", "Sag after years", "modulus", "GPa", 1, 20, false },
            { "sag", "Sag after years", "edge-strip", "in", 0, 4, false },
            { "sag", "Longest span within the limit", "load", "lb", 1, 1500, false },
            { "sag", "Longest span within the limit", "load", "lb/ft", 1, 300, false },
            { "sag", "Longest span within the limit", "thickness", "in", 0.25, 2, true },
            { "movement", "Change in width", "width", "in", 1, 100, true },
            { "movement", "Change in width", "to", "%", 0, 40, true },
            { "movement", "Change in width", "to", "% RH", 1, 99, true },
            { "movement", "Change in width", "from", "%", 0, 40, false },
            { "moisture", "Equilibrium moisture content", "humidity", "", 0, 100, true },
            { "weight", "Weight", "thickness", "in", 0.1, 20, true },
            { "weight", "Weight", "moisture", "", 0, 40, true },
            { "board-feet", "Board feet", "thickness", "in", 0.1, 10, true },
            { "board-feet", "Board feet", "length", "ft", 1, 40, true },
            { "stability", "Stability factor", "weight", "lb", 11, 500, true },
            { "stability", "Stability factor", "open-weight", "lb", 0, 100, false },
            { "stability", "Stability factor", "leaning", "lb", 1, 300, false },
            { "stability", "Stability factor", "toe", "in", 0, 7, false },
            { "stability", "Stability factor", "reach", "in", 1, 30, false },
            { "stability", "Stability factor", "doors", "", 1, 11, false },
            { "hinges", "Hinges", "weight", "lb", 0.5, 60, true },
            { "hinges", "Hinges", "height", "in", 5, 100, true },
            { "glue-up", "Clamps", "length", "in", 4, 190, true },
            { "glue-up", "Clamps", "clamp-force", "lbf", 30, 3000, false },
            { "glue-up", "Force on the joint", "thickness", "in", 0.25, 3, true },
            { "glue-up", "Glue", "spread", "ft²/gal", 20, 2000, false },
            { "coats", "Finish with waste", "area", "ft²", 1, 9000, true },
            { "coats", "Finish with waste", "coverage", "ft²/gal", 10, 2000, false },
            { "coats", "To buy", "area", "ft²", 1, 9000, true },
            { "dowels", "Diameter", "thickness", "in", 0.4, 3, true },
            { "dowels", "Depth of each hole", "thickness", "in", 0.4, 3, true },
            { "pins", "Holes in each row", "height", "in", 13, 140, true },
            { "pins", "Holes in each row", "pitch", "in", 0.5, 8, false },
            { "door", "Panel width", "opening-width", "in", 8, 100, true },
            { "door", "Panel width", "clearance", "in", 0, 0.37, false },
            { "drawer", "Box width", "slide-clearance", "in", 0, 2, false },
            { "wall", "Fasteners in the top row, at least", "load", "lb", 0, 900, true },
            { "wall", "Fasteners in the top row, at least", "depth", "in", 2, 40, true },
            { "wall", "Fasteners in the top row, at least", "height", "in", 4, 90, false },
            { "wall", "One fastener, sideways", "thread", "in", 1.2, 6, true },
            { "wall", "One fastener, pulled out", "thread", "in", 1.2, 6, true },
            { "groove", "First fence setting", "groove", "in", 0.13, 0.7, false },
        };

    [Theory]
    [MemberData(nameof(Directions))]
    public void It_goes_one_way(string form, string result, string key, string unit, double from, double to, bool rises)
    {
        var everyday = Everyday.Of(form);
        const int steps = 240;
        double? last = null;
        for (var step = 0; step <= steps; step++)
        {
            var value = from + ((to - from) * step / steps);
            var number = unit.Length == 0 && key is "doors" ? Math.Floor(value) : value;
            var text = (number.ToString("0.#####", CultureInfo.InvariantCulture) + " " + unit).Trim();
            // What the everyday inputs leave no room for is refused, and tested where that is told.
            if (Asked.Run(form, everyday.With(key, text).Given).Answer is not { } answer)
                continue;
            if (answer.Results.Single(one => one.Name == result).Figure.Number(LengthUnit.Inch) is not { } figure)
                continue;
            Assert.True(
                last is not { } before || (rises ? figure >= before - 1e-9 : figure <= before + 1e-9),
                $"{form} {key}={text}: {result} {figure} after {last}"
            );
            last = figure;
        }

        Assert.NotNull(last);
    }
}
