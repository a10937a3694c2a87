using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings.Recomputed;

/// <summary>Doors, drawers, grooves, panels, gaps, holes and screws worked out once more in plain inches, with none of the
/// program's code.</summary>
public sealed class JoineryRecomputedTests
{
    private const int Cases = 40;
    private const double Tick = 0.0003;

    [Fact]
    public void Doors()
    {
        var chance = new Chance(21);
        for (var i = 0; i < Cases; i++)
        {
            var (wide, high, leaves) = (chance.Inches(20, 60), chance.Inches(20, 80), chance.Whole(1, 2));
            var (gap, stile, groove, room) = (chance.Inches(0, 0.25), chance.Inches(1.5, 3), chance.Inches(0.25, 0.5), 0.0625);
            var answer = Chance.Answer(
                "door",
                "opening-width=" + Chance.Text(wide),
                "opening-height=" + Chance.Text(high),
                $"leaves={leaves}",
                "gap=" + Chance.Text(gap),
                "stile=" + Chance.Text(stile),
                "groove=" + Chance.Text(groove),
                "clearance=1/16"
            )!;
            var leaf = (wide - (gap * (leaves + 1))) / leaves;
            Assert.Equal(leaf, answer["Door width"], Tick);
            Assert.Equal(high - (2 * gap), answer["Door height"], Tick);
            Assert.Equal(leaf - (2 * stile) + (2 * groove), answer["Rail length"], Tick);
            Assert.Equal(leaf - (2 * stile) + (2 * groove) - (2 * room), answer["Panel width"], Tick);
            // Both panels' edges in their grooves fill the leaf.
            Assert.Equal(groove - room, answer["Panel's edge in the groove"], Tick);
        }
    }

    [Fact]
    public void Drawers()
    {
        var chance = new Chance(22);
        for (var i = 0; i < Cases; i++)
        {
            var (wide, high, deep) = (chance.Inches(10, 40), chance.Inches(4, 12), chance.Inches(12, 28));
            var (side, planted) = (chance.Of(0.5, 0.625, 0.75), chance.Whole(0, 1) == 0);
            var answer = Chance.Answer(
                "drawer",
                "opening-width=" + Chance.Text(wide),
                "opening-height=" + Chance.Text(high),
                "opening-depth=" + Chance.Text(deep),
                "side=" + Chance.Text(side),
                "groove=" + (planted ? "0" : "1/4"),
                "bottom=1/4"
            )!;
            Assert.Equal(wide - 1, answer["Box width"], Tick);
            Assert.Equal(high - 1 - (planted ? 0.25 : 0), answer["Box height"], Tick);
            Assert.Equal(Math.Min(28, Math.Floor(deep / 2) * 2), answer["Box depth"], Tick);
            Assert.Equal(wide - 1 - (2 * side), answer["Front and back length"], Tick);
            // The bottom is a sixteenth smaller than the grooves it lies in.
            Assert.Equal(wide - 1 - (planted ? 0 : (2 * (side - 0.25)) + 0.0625), answer["Bottom, across"], Tick);
        }
    }

    [Fact]
    public void Grooves()
    {
        var chance = new Chance(23);
        for (var i = 0; i < Cases; i++)
        {
            var stock = chance.Inches(0.5, 2);
            var groove = chance.Inches(0.125, stock - 0.25);
            var answer = Chance.Answer("groove", "stock=" + Chance.Text(stock), "groove=" + Chance.Text(groove), "cutter=1/8")!;
            // Wall, groove, wall; the tongue a fifth of a millimeter thinner than the groove.
            Assert.Equal(stock, (2 * answer["First fence setting"]) + answer["Width reached"], Tick);
            Assert.Equal(groove, answer["Width reached"], Tick);
            Assert.Equal(groove - (0.2 / 25.4), answer["Tongue thickness"], Tick);
        }
    }

    [Fact]
    public void Glue_ups()
    {
        var chance = new Chance(24);
        for (var i = 0; i < Cases; i++)
        {
            var (wide, length, board) = (chance.Inches(6, 48), chance.Inches(12, 90), chance.Inches(2.5, 9));
            var answer = Chance.Answer(
                "glue-up",
                "width=" + Chance.Text(wide),
                "length=" + Chance.Text(length),
                "board=" + Chance.Text(board),
                "species=softwood",
                "clamp-force=500 lbf"
            )!;
            var strips = 1;
            while (strips * (board - 0.125) < wide + 0.5)
                strips++;
            Assert.Equal(strips, answer["Strips"]);
            if (strips == 1)
                continue;
            // A glue maker's least pressure for softwood: 100 psi on the whole joint; no clamp beyond its 500 lb.
            var force = 100 * (length + 0.5) * 0.75;
            Assert.Equal(1, answer["Force on the joint"] / force, 1e-6);
            Assert.True(answer["Clamps"] * 500 >= force - 1e-6);
            var strip = answer["Width of each jointed strip"];
            Assert.True(strips * strip >= wide + 0.5 - Tick && strip <= board - 0.125 + Tick);
            // Pressure spreads at 45° from pads a strip and a caul away.
            Assert.True((length + 0.5) / answer["Clamps"] <= (2 * (strip + 1)) + Tick);
        }
    }

    [Fact]
    public void Gaps()
    {
        var chance = new Chance(25);
        for (var i = 0; i < Cases; i++)
        {
            var (span, piece, widest) = (chance.Inches(20, 90), chance.Inches(0.5, 3), chance.Inches(0.5, 5));
            var atEnds = chance.Whole(0, 1) == 0;
            var answer = Chance.Answer(
                "spacing",
                "span=" + Chance.Text(span),
                "member=" + Chance.Text(piece),
                "max-gap=" + Chance.Text(widest),
                "ends=" + (atEnds ? "members" : "gaps")
            );
            double Gap(int count) => (span - (count * piece)) / (atEnds ? count - 1 : count + 1);
            var fewest = atEnds ? 2 : 1;
            while (Gap(fewest) > widest)
                fewest++;
            if (Gap(fewest) < 0)
            {
                Assert.Null(answer);
                continue;
            }

            Assert.Equal(fewest, answer!["How many"]);
            Assert.Equal(Gap(fewest), answer["Gap"], Tick);
        }
    }

    [Fact]
    public void Shelf_pins()
    {
        var chance = new Chance(26);
        for (var i = 0; i < Cases; i++)
        {
            var (high, first, pitch) = (chance.Inches(20, 80), chance.Inches(2, 8), chance.Inches(0.5, 3));
            var answer = Chance.Answer(
                "pins",
                "height=" + Chance.Text(high),
                "first=" + Chance.Text(first),
                "pitch=" + Chance.Text(pitch)
            )!;
            var holes = 0;
            for (var at = first; at <= high - first + 1e-9; at += pitch)
                holes++;
            Assert.Equal(holes, answer["Holes in each row"]);
            Assert.True(answer["Depth of the holes"] <= (23.0 / 32) - 0.125 + Tick);
        }
    }

    [Fact]
    public void Hinges()
    {
        var chance = new Chance(27);
        for (var i = 0; i < Cases; i++)
        {
            var (high, weight) = (chance.Inches(13, 100), chance.Whole(1, 59));
            var answer = Chance.Answer("hinges", "height=" + Chance.Text(high), "width=12", $"weight={weight} lb")!;
            // A maker's sheet: 15, 30, 45, 60 lb; common practice: 40, 60, 80, 100 in.
            var byWeight = 2 + new[] { 15, 30, 45 }.Count(step => weight >= step);
            var byHeight = 2 + new[] { 40, 60, 80 }.Count(step => high > step);
            Assert.Equal(Math.Max(byWeight, byHeight), answer["Hinges"]);
        }
    }

    [Fact]
    public void Screws()
    {
        var chance = new Chance(28);
        for (var i = 0; i < Cases * 3; i++)
        {
            var (near, into) = (chance.Inches(0.25, 3), chance.Inches(0.25, 4));
            if (Chance.Answer("screws", "thickness=" + Chance.Text(near), "into=" + Chance.Text(into)) is not { } answer)
                continue;
            var (length, diameter) = (answer["Screw length"], 0.060 + (0.013 * answer["Gauge"]));
            var deep = length - near;
            Assert.Equal(deep, answer["In the far piece"], Tick);
            Assert.True(deep <= into - 0.125 + Tick, $"{length} through {near} into {into}");
            Assert.True(deep >= (3 * diameter) - Tick, $"{length} through {near} into {into}");
            Assert.True(answer["Keep from an edge"] >= (4 * diameter) - Tick);
            Assert.True(answer["Keep from an end"] >= (7 * diameter) - Tick);
        }
    }

    [Fact]
    public void Dowels()
    {
        var chance = new Chance(29);
        for (var i = 0; i < Cases; i++)
        {
            var (thick, wide) = (chance.Inches(0.5, 2.5), chance.Inches(2, 30));
            string[] given = ["thickness=" + Chance.Text(thick), "width=" + Chance.Text(wide)];
            if (Chance.Answer("dowels", given) is not { } answer)
                continue;
            var rod = answer["Diameter"];
            Assert.InRange(rod, (thick / 3) - Tick, (thick / 2) + Tick);
            Assert.True(answer["Length of the dowel"] >= (5 * rod) - Tick);
            Assert.Equal((answer["Length of the dowel"] / 2) + 0.0625, answer["Depth of each hole"], Tick);
            var places = ((Working<ImmutableArray<Length>>)Asked.Result("dowels", "Centers from one end", given)).Value;
            Assert.All(
                places.Zip(places.Skip(1)),
                pair => Assert.InRange((double)(pair.Second - pair.First).ToInches(), 2 * rod - Tick, 6 + Tick)
            );
        }
    }

    [Fact]
    public void Coats()
    {
        var chance = new Chance(30);
        for (var i = 0; i < Cases; i++)
        {
            var (area, coats, rate, loss) = (
                chance.Whole(1, 900),
                chance.Whole(1, 5),
                chance.Whole(100, 600),
                chance.Whole(0, 30)
            );
            var answer = Chance.Answer("coats", $"area={area}", $"coats={coats}", $"coverage={rate}", $"loss={loss}")!;
            var gallons = area * coats / (double)rate * (1 + (loss / 100.0));
            Assert.Equal(gallons, answer["Finish with waste"], 1e-6);
            // Never less in the cans than is wanted, and never a gallon too many.
            Assert.InRange(answer["To buy"], gallons - 1e-6, gallons + 0.5001);
        }
    }
}
