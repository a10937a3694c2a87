using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Parts that stand by themselves in a design: repeated, turned, joined to what they touch.</summary>
public sealed class FreePartTests
{
    // Two cleats 48 in apart, and so many slats across them with 1/2 in between.
    private const string Rack = """
        {
          "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Slatted rack",
          "dimensions": [
            { "name": "width", "value": "48" },
            { "name": "slats", "kind": "count", "value": "5" },
            { "name": "gap", "value": "1/2" },
            { "name": "depth", "value": "slats * 2 1/2 in + (slats - 1) * gap" },
            { "name": "height", "value": "2 1/4" }
          ],
          "materials": [
            { "role": "slat", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
            { "role": "cleat", "name": "Pine 1x2", "form": "board", "thickness": "3/4", "width": "1 1/2" },
            { "role": "ply", "name": "Plywood", "form": "sheet", "thickness": "3/4" }
          ],
          "frame": { "kind": "none" },
          "parts": [
            { "name": "Cleat", "material": "cleat", "length": "depth", "along": "y", "flat": "x",
              "at": [ [ "0 in", "0 in", "0 in" ], [ "width - 3/4 in", "0 in", "0 in" ] ] },
            { "name": "Slat", "material": "slat", "length": "width", "along": "x", "flat": "z",
              "at": [ [ "0 in", "0 in", "1 1/2 in" ] ],
              "repeat": { "count": "slats", "step": [ "0 in", "2 1/2 in + gap", "0 in" ] },
              "joints": [ { "with": "Cleat", "kind": "screwed", "along": "z" } ] }
          ]
        }
        """;

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(12)]
    public void A_part_is_repeated_as_often_as_its_count_says_and_each_copy_joined_to_all_it_touches(int slats)
    {
        var piece = Of(Rack, ("slats", $"{slats}"));
        Assert.Equal(slats, piece.Parts.Single(part => part.Name == "Slat").Quantity);
        Assert.Equal(2 * slats, piece.Joints.Length);
        Assert.All(piece.Joints, joint => Assert.Equal((JointKind.Screwed, Axis.Z), (joint.Kind, joint.Along)));
        var copies = piece.Parts.SelectMany(part => part.Copies).ToList();
        Assert.Equal(piece.Outside, copies.Select(copy => copy.Box).Aggregate((a, b) => a.Around(b)));
        for (var i = 0; i < copies.Count; i++)
        for (var k = i + 1; k < copies.Count; k++)
            Assert.Null(copies[i].Box.Shared(copies[k].Box));
    }

    [Fact]
    public void A_part_that_is_let_in_says_how_far()
    {
        var let = Rack.Replace("\"2 1/4\"", "\"2\"", StringComparison.Ordinal)
            .Replace("\"1 1/2 in\" ] ],", "\"1 1/4 in\" ] ],", StringComparison.Ordinal)
            .Replace(
                "\"kind\": \"screwed\", \"along\": \"z\"",
                "\"kind\": \"dado\", \"along\": \"z\", \"depth\": \"1/4 in\"",
                StringComparison.Ordinal
            );
        var piece = Of(let);
        Assert.Equal(10, piece.Joints.Length);
        Assert.All(piece.Joints, joint => Assert.Equal(Length.FromInches(0.25m), joint.Depth));
    }

    [Theory]
    [InlineData(
        "\"with\": \"Cleat\"",
        "\"with\": \"Rail\"",
        "parts.1.joints.0.with",
        "isn't a part of this design: it has Cleat, Slat"
    )]
    [InlineData("\"along\": \"z\" }", "\"along\": \"y\" }", "parts.1.joints.0", "isn't touched along y")]
    [InlineData(
        "\"along\": \"z\" }",
        "\"along\": \"z\", \"depth\": \"1/8 in\" }",
        "parts.1.joints.0",
        "isn't met along z by just the depth given"
    )]
    [InlineData(
        "\"along\": \"z\" }",
        "\"along\": \"z\", \"depth\": \"gap - 1 in\" }",
        "parts.1.joints.0.depth",
        "is less than zero"
    )]
    [InlineData(", \"along\": \"z\" }", " }", "parts.1.joints.0.along", "is missing: say whether they meet along x, y or z")]
    [InlineData("\"kind\": \"screwed\"", "\"kind\": \"nailed\"", "parts.1.joints.0.kind", "isn't a choice")]
    [InlineData("\"kind\": \"screwed\", ", "", "parts.1.joints.0.kind", "is missing")]
    [InlineData("\"count\": \"slats\"", "\"count\": \"gap\"", "parts.1.repeat.count", "is not a whole number")]
    [InlineData("\"2 1/2 in + gap\"", "\"2 1/2 in + gab\"", "parts.1.repeat.step.1", "isn't a name in this design")]
    [InlineData(
        "\"count\": \"slats\"",
        "\"count\": \"1000 * 3\"",
        "parts.1.repeat.count",
        "is not a whole number from 0 to 1000"
    )]
    public void A_fault_names_its_place(string old, string replacement, string place, string says)
    {
        Assert.Contains(old, Rack, StringComparison.Ordinal);
        var evaluation = Made.Evaluate(Rack.Replace(old, replacement, StringComparison.Ordinal));
        Assert.Null(evaluation.Piece);
        Assert.Contains(
            evaluation.Faults,
            fault => fault.Field == place && fault.Message.Contains(says, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_sheet_part_of_any_grain_may_be_turned_on_its_sheet()
    {
        var added = Rack.Replace(
            "\"parts\": [",
            """
            "parts": [ { "name": "Shelf", "material": "ply", "length": "10 in", "width": "8 in", "along": "x", "flat": "z",
              "grain": "any", "at": [ [ "1 in", "1 in", "0 in" ] ] },
            """,
            StringComparison.Ordinal
        );
        Assert.False(Of(added).Parts.Single(part => part.Name == "Shelf").GrainMatters);
    }

    [Fact]
    public void It_is_written_in_the_least_version_that_says_it_all_and_reads_back_equal()
    {
        var document = Read(Rack);
        var text = DesignJson.Write(document);
        Assert.Contains("\"version\": 2", text, StringComparison.Ordinal);
        Assert.Equal(text, DesignJson.Write(Read(text)));
        var plain = document with { Parts = [.. document.Parts.Select(one => one with { Repeat = null, Joints = [] })] };
        Assert.Contains("\"version\": 1", DesignJson.Write(plain), StringComparison.Ordinal);
    }

    private static DesignDocument Read(string json)
    {
        var reading = DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(json));
        Assert.Empty(reading.Faults);
        return reading.Document!;
    }

    private static Piece Of(string json, params (string Name, string Value)[] set)
    {
        var (piece, faults) = DesignEvaluator.Evaluate(Read(json), set.ToDictionary(one => one.Name, one => one.Value));
        Assert.Empty(faults);
        return piece!;
    }
}
