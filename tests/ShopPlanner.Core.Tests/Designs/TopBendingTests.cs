using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>How tops bend between their rails: Wood Handbook, Eq. 9-2, worked by hand; strips that cross share the load by their
/// stiffness (Grashof).</summary>
public sealed class TopBendingTests
{
    // Red oak, 1.82 million psi: 78 by 42 in of 3/4 in on aprons set back 1/4 in and 1 1/2 in thick: 74 1/2 in along the grain,
    // 38 1/2 in across it. Load 25 lb/ft² on 74.5 × 42 in = 543.2 lb; I = 42 × 0.75³ ÷ 12 = 1.4766 in⁴; held the other way too, 1
    // + 0.04 × (74.5 ÷ 38.5)⁴ = 1.5608: 5 ÷ 384 × 543.2 × 74.5³ ÷ (1.82 × 10⁶ × 1.4766 × 1.5608) = 0.6973 in, more than 74.5 ÷
    // 144.
    [Fact]
    public void A_long_table_without_a_cross_rail_sags_more_than_it_should()
    {
        var judged = Judge(Table("0", "78", "42")).Single(one => one.Text.StartsWith("Top will sag", StringComparison.Ordinal));
        Assert.Equal(Severity.Fails, judged.Severity);
        var first = judged.Working!.Inputs.Single(one => one.Key == "first").Working;
        Assert.Equal(0.6973, first.Figure.Number(LengthUnit.Inch)!.Value, 2);
        Assert.Equal(1.5608, Input(first, "stiffer"), 3);
    }

    [Fact]
    public void A_cross_rail_under_the_middle_carries_it() =>
        Assert.DoesNotContain(
            Judge(Table("1", "78", "42")),
            one => one.Text.StartsWith("Top will sag", StringComparison.Ordinal)
        );

    // Eastern white pine, 8600 psi: a seat 60 in long spans 57 in between the end aprons, 17 in between the long ones. One person
    // on 12 in of it: 6 × 250 × 57 ÷ 4 ÷ (12 × 0.75²) = 3167 psi alone, by 1 + 0.04 × (57 ÷ 17)³ = 2.508 less: 1263 psi. That is
    // more than a tenth of the strength and less than a quarter.
    [Fact]
    public void A_seat_is_judged_by_a_person_on_it()
    {
        var piece = Evaluate("boot-room-bench", ("width", "60"), ("depth", "20"));
        var judged = PieceJudge.Of(piece).Single(one => one.Working?.Name == "Bending stress in the top");
        Assert.Equal(Severity.Watch, judged.Severity);
        Assert.Equal(1262.8, judged.Working!.Figure.Number(LengthUnit.Inch)!.Value, 0);
    }

    // 60 by 30 in of plywood 1/4 in thick on four rails of 1 1/2 in: 57 in along, 27 in across.
    [Fact]
    public void A_thin_sheet_on_rails_all_around_is_judged_between_them()
    {
        var thin = Top(0.25m, [(0, 0, 60, 1.5m), (0, 28.5m, 60, 1.5m), (0, 1.5m, 1.5m, 27), (58.5m, 1.5m, 1.5m, 27)]);
        var judged = Judge(thin).Single(one => one.Text.StartsWith("Top will sag", StringComparison.Ordinal));
        var span = Input(judged.Working!.Inputs.Single(one => one.Key == "first").Working, "span");
        Assert.Equal(57, span, 6);
    }

    [Fact]
    public void A_top_that_lies_on_a_panel_does_not_bend() =>
        Assert.DoesNotContain(
            Judge(Top(0.25m, [(0, 0, 60, 30)])),
            one => one.Text.StartsWith("Top will sag", StringComparison.Ordinal)
        );

    private static double Input(Working working, string key) =>
        working.Inputs.Single(one => one.Key == key).Working.Figure.Number(LengthUnit.Inch)!.Value;

    private static ImmutableArray<PieceWarning> Judge(Piece piece) => PieceJudge.Of(piece);

    private static Piece Table(string cross, string width, string depth)
    {
        var table = DesignFiles.Read("table");
        var frame = table.Frame with { Members = table.Frame.Members.SetItem("cross", cross) };
        return Evaluate(table with { Frame = frame }, ("width", width), ("depth", depth), ("overhang", "0"));
    }

    private static Piece Evaluate(string name, params (string Name, string Text)[] changed) =>
        Evaluate(DesignFiles.Read(name), changed);

    private static Piece Evaluate(
        ShopPlanner.Core.Designs.Documents.DesignDocument document,
        params (string Name, string Text)[] changed
    )
    {
        var evaluation = DesignEvaluator.Evaluate(document, changed.ToDictionary(one => one.Name, one => one.Text));
        Assert.Empty(evaluation.Faults);
        return evaluation.Piece!;
    }

    // A sheet of 60 by 30 in on parts of 3 in height at these corners, wide and deep.
    private static Piece Top(decimal thick, (decimal X, decimal Y, decimal Dx, decimal Dy)[] below)
    {
        var material = new RoleMaterial(
            "m",
            null,
            "Plywood",
            Core.Materials.MaterialForm.Sheet,
            Length.FromInches(thick),
            null,
            "plywood-hardwood-faced"
        );
        var top = Part("A", "Top", "Top", material, [Box(0, 0, 3, 60, 30, thick)]);
        var rails = Part("B", "Rail", "Frame", material, [.. below.Select(one => Box(one.X, one.Y, 0, one.Dx, one.Dy, 3))]);
        return new("One", LengthUnit.Inch, Box(0, 0, 0, 60, 30, 30), [top, rails], [], [], [], [], []);
    }

    private static PiecePart Part(string id, string name, string assembly, RoleMaterial material, Box[] boxes) =>
        new(
            id,
            name,
            assembly,
            material,
            Working.Given("Length", boxes[0].Dx),
            Working.Given("Width", boxes[0].Dy),
            Working.Given("Thickness", boxes[0].Dz),
            boxes[0].Dx,
            boxes[0].Dy,
            true,
            PartPurpose.Member,
            "",
            [.. boxes.Select((box, i) => new PartCopy(id + (i + 1), box, Hand.Either, Axis.X, Axis.Z))],
            boxes.Length
        );

    private static Box Box(decimal x, decimal y, decimal z, decimal dx, decimal dy, decimal dz) =>
        new(Made.Inches(x), Made.Inches(y), Made.Inches(z), Made.Inches(dx), Made.Inches(dy), Made.Inches(dz));
}
