using System.Text.Json;
using System.Xml.Linq;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs.Export;

/// <summary>Parts as JSON, as a table, as an outline.</summary>
public sealed class PartTextTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void The_json_holds_every_part_to_the_tick(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        using var document = JsonDocument.Parse(PartsJson.Write(piece));
        var root = document.RootElement;
        Assert.Equal(
            ["unit", "outside", "parts", "joints", "hardware", "steps", "warnings"],
            root.EnumerateObject().Select(member => member.Name)
        );
        Length Size(JsonElement number) => Length.From(number.GetDecimal(), piece.Unit);
        foreach (var (part, json) in piece.Parts.Zip(root.GetProperty("parts").EnumerateArray()))
        {
            Assert.Equal(
                (part.Id, part.Name, part.Material.Role),
                (Text(json, "id"), Text(json, "name"), Text(json, "material"))
            );
            Assert.Equal(
                (part.Length.Value, part.Width.Value, part.Thickness.Value),
                (Size(json.GetProperty("length")), Size(json.GetProperty("width")), Size(json.GetProperty("thickness")))
            );
            Assert.Equal(
                (part.RoughLength, part.RoughWidth),
                (Size(json.GetProperty("rough").GetProperty("length")), Size(json.GetProperty("rough").GetProperty("width")))
            );
            Assert.Equal(
                part.Copies.Select(copy => (copy.Mark, copy.Box)),
                json.GetProperty("copies").EnumerateArray().Select(copy => (Text(copy, "mark"), BoxOf(copy, Size)))
            );
        }

        Assert.Equal(piece.Parts.Length, root.GetProperty("parts").GetArrayLength());
        Assert.Equal(
            piece.Joints.Select(joint => (joint.From, joint.Into, joint.Along.ToString().ToLowerInvariant(), joint.Depth)),
            root.GetProperty("joints")
                .EnumerateArray()
                .Select(joint =>
                    (Text(joint, "from"), Text(joint, "into"), Text(joint, "along"), Size(joint.GetProperty("depth")))
                )
        );
        Assert.Equal(piece.Hardware.Length, root.GetProperty("hardware").GetArrayLength());
        Assert.Equal(
            PieceJudge.Of(piece).Select(warning => (warning.Text, warning.Part, warning.Place)),
            root.GetProperty("warnings")
                .EnumerateArray()
                .Select(warning => (Text(warning, "text"), Maybe(warning, "part"), Maybe(warning, "place")))
        );
        Assert.Equal(piece.Steps, root.GetProperty("steps").EnumerateArray().Select(step => step.GetString()));
    }

    // The rail is told by the fill that asks for it; the case without a back is 30 in high on 11 3/4 in: to the wall.
    [Fact]
    public void A_finding_has_its_severity_and_its_place()
    {
        var piece = Made.Piece(
            Made.Carcass("30", "12", "30", """{ "kind": "slats", "material": "stile", "count": 2, "lie": "lengthways" }""")
        );
        var wall = PieceJudge.Of(piece).Single(one => one.Severity == Severity.Anchor);
        Assert.Contains("Anchor it to the wall", wall.Text, StringComparison.Ordinal);
        using var document = JsonDocument.Parse(PartsJson.Write(piece));
        var severities = document
            .RootElement.GetProperty("warnings")
            .EnumerateArray()
            .Select(warning => Text(warning, "severity"))
            .ToList();
        Assert.Contains("wall", severities);
        Assert.All(severities, one => Assert.Contains(one, new[] { "check", "safety", "wall", "fix" }));
        var rail = Made.Piece(Made.Carcass("30", "12", "30", """{ "kind": "hanging-rail", "material": "stile" }"""));
        Assert.Contains(rail.Warnings, one => (one.Severity, one.Place) == (Severity.Safety, "bays.fills.0"));
    }

    [Fact]
    public void Spacers_and_practice_pieces_are_parts_without_copies()
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf("pantry-cupboard")));
        using var document = JsonDocument.Parse(PartsJson.Write(piece));
        var practice = Assert.Single(
            document.RootElement.GetProperty("parts").EnumerateArray(),
            part => part.TryGetProperty("purpose", out _)
        );
        Assert.Equal(
            ("practice", 0, 2),
            (
                Text(practice, "purpose"),
                practice.GetProperty("copies").GetArrayLength(),
                practice.GetProperty("quantity").GetInt32()
            )
        );
    }

    // A spacer must not be wider than the board it comes from: then its length sets the gap.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void A_spacer_can_be_cut_from_its_board(int slats)
    {
        var fill = $$"""{ "kind": "slats", "material": "stile", "count": {{slats}}, "lie": "across" }""";
        var piece = Made.Piece(Made.Carcass("25 1/2", "12", "30", fill));
        var spacer = Assert.Single(piece.Parts, part => part.Purpose == PartPurpose.Spacer);
        Assert.True(spacer.Width.Value <= Made.Inches(2.5m), $"{spacer.Width.Value} wide");
        var gap = (Made.Inches(24) - (Made.Inches(2.5m) * slats)).Ticks / (slats - 1);
        Assert.Contains(Length.FromTicks(gap), new[] { spacer.Length.Value, spacer.Width.Value });
    }

    [Fact]
    public void A_table_quotes_what_must_be_and_lets_no_formula_through()
    {
        var json = Made
            .Case.Replace("\"name\": \"Rail\"", "\"name\": \"=1+1, \\\"x\\\"\"", StringComparison.Ordinal)
            .Replace("\"name\": \"Plywood\"", "\"name\": \"@ply\"", StringComparison.Ordinal);
        var lines = PartsCsv.Write(Made.Piece(json)).Split("\r\n");
        Assert.Equal("mark,name,material,quantity,length,width,thickness,rough length,rough width,unit,grain,purpose", lines[0]);
        Assert.Equal("A,Side,'@ply,2,36,12,0.75,36,12,in,length,", lines[1]);
        Assert.Equal(
            "E,\"'=1+1, \"\"x\"\"\",Pine 1x3,1,10,2.5,0.75,10,2.5,in,length,",
            Assert.Single(lines, line => line.Contains("1+1", StringComparison.Ordinal))
        );
        Assert.Equal("", lines[^1]);
    }

    [Fact]
    public void An_outline_is_of_full_size()
    {
        var side = Made.Piece(
            Made.Case.Replace("\"name\": \"Case\"", "\"name\": \"<Case> & more\"", StringComparison.Ordinal)
        ).Parts[0];
        var svg = XDocument.Parse(PartSvg.Write(side with { Name = "Side <left> & \u0001 right" })).Root!;
        XNamespace space = "http://www.w3.org/2000/svg";
        var outline = svg.Element(space + "rect")!;
        Assert.Equal(("914.4", "304.8"), (outline.Attribute("width")!.Value, outline.Attribute("height")!.Value));
        Assert.Equal(
            ("924.4mm", "314.8mm", "-5 -5 924.4 314.8"),
            (svg.Attribute("width")!.Value, svg.Attribute("height")!.Value, svg.Attribute("viewBox")!.Value)
        );
        Assert.Equal("A Side <left> &   right", svg.Element(space + "title")!.Value);
    }

    // A side of 60 by 10 1/2 in with a notch 3 1/2 high and 2 1/2 deep: 1524, 266.7, 88.9 and 63.5 mm.
    [Fact]
    public void A_notch_is_cut_out_of_the_outline_and_named_in_the_json()
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf("bookcase")));
        var side = piece.Parts.Single(part => part.Name == "Side");
        var svg = XDocument.Parse(PartSvg.Write(side)).Root!;
        XNamespace space = "http://www.w3.org/2000/svg";
        var (deep, wide) = (side.Copies[0].ToeNotch!.Deep, side.Width.Value);
        Assert.Equal(
            FormattableString.Invariant($"M88.9 0H1524V{wide.ToMillimetres():0.######}H0V{deep.ToMillimetres():0.######}H88.9Z"),
            svg.Element(space + "path")!.Attribute("d")!.Value
        );
        using var document = JsonDocument.Parse(PartsJson.Write(piece));
        var copies = document.RootElement.GetProperty("parts")[0].GetProperty("copies").EnumerateArray().ToList();
        Assert.All(copies, copy => Assert.Equal(3.5m, copy.GetProperty("notch").GetProperty("high").GetDecimal()));
        Assert.False(document.RootElement.GetProperty("parts")[1].GetProperty("copies")[0].TryGetProperty("notch", out _));
    }

    private static Box BoxOf(JsonElement copy, Func<JsonElement, Length> size) =>
        new(
            size(copy.GetProperty("x")),
            size(copy.GetProperty("y")),
            size(copy.GetProperty("z")),
            size(copy.GetProperty("dx")),
            size(copy.GetProperty("dy")),
            size(copy.GetProperty("dz"))
        );

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString()!;

    private static string? Maybe(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) ? value.GetString() : null;
}
