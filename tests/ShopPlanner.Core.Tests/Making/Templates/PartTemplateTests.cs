using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Tests.Making.Operations;

namespace ShopPlanner.Core.Tests.Making.Templates;

/// <summary>Templates say what the steps of the work say.</summary>
public sealed class PartTemplateTests
{
    public static TheoryData<string> Designs => [.. DesignFiles.Names];

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_hole_lies_in_its_face_and_on_its_sheet_and_every_use_once(string design)
    {
        foreach (var (said, piece) in Worked.BuiltIn(design, 3))
            Assert.All(
                PartTemplates.Of(piece, PartTemplates.UsualPull),
                template =>
                {
                    var window = template.Window;
                    Assert.True(window.X >= Length.Zero && window.EndX <= template.Wide, said);
                    Assert.True(window.Y >= Length.Zero && window.EndY <= template.High, said);
                    Assert.True(window is { Wide.IsPositive: true, High.IsPositive: true }, said);
                    Assert.All(template.Holes, hole => Assert.True(window.Holds(hole.At), said));
                    Assert.NotEmpty(template.Uses);
                    Assert.Equal(template.Kind == TemplateKind.Shape, template.Holes.IsEmpty);
                }
            );
    }

    [Theory]
    [InlineData("bookcase")]
    [InlineData("pantry-cupboard")]
    public void Pins_begin_where_the_step_has_them(string design)
    {
        var piece = Piece(design);
        var step = Worked.Steps(piece).Single(one => one.Action == WorkAction.DrillPins);
        foreach (var template in Templates(piece, TemplateKind.Pins))
        {
            var mark = template.Uses[0].Mark;
            var row = template.Title.EndsWith("front row", StringComparison.Ordinal) ? "Front row" : "Back row";
            var y = template.Holes[0].At.Y;
            Assert.Contains(template.Holes.Min(hole => hole.At.X), Figures(step, "Lowest hole", mark));
            Assert.Contains(Length.Min(y, template.High - y), Figures(step, row, mark));
        }
    }

    // Those of a copy; one that is the same on all of them names none.
    private static IEnumerable<Length> Figures(WorkStep step, string name, string mark) =>
        step
            .Settings.Where(one => one.Name.StartsWith(name, StringComparison.Ordinal))
            .Where(one => one.Name.Contains(mark) || !one.Name.Contains(','))
            .Select(one => one.Value);

    [Fact]
    public void Cups_lie_where_the_step_has_them_and_all_four_ends_take_one_sheet()
    {
        var piece = Piece("pantry-cupboard");
        var step = Worked.Steps(piece).Single(one => one.Action == WorkAction.BoreHinges);
        var end = Templates(piece, TemplateKind.Cups).First();
        Assert.Contains(
            end.Holes.Single().At.X,
            step.Settings.Where(one => one.Name.StartsWith("Hinge 1", StringComparison.Ordinal)).Select(one => one.Value)
        );
        Assert.Equal(4, end.Uses.Length);
        Assert.Equal(Enum.GetValues<SheetTurn>(), end.Uses.Select(use => use.Turn).Order());
        // A sheet that is turned over top to bottom lies on the same end of the other stile.
        Assert.All(end.Uses, use => Assert.Contains("outer edge", use.Across, StringComparison.Ordinal));
        Assert.All(
            end.Uses,
            use => Assert.Equal(use.Turn is SheetTurn.AsPrinted or SheetTurn.OverUpward ? "lower end" : "upper end", use.Along)
        );
    }

    [Fact]
    public void Left_and_right_sides_share_a_sheet_turned_over()
    {
        var rows = Templates(Piece("bookcase"), TemplateKind.Pins).ToList();
        Assert.Equal(2, rows.Count);
        Assert.All(rows, row => Assert.Equal(["A1L", "A2R"], row.Uses.Select(use => use.Mark)));
        Assert.All(rows, row => Assert.Equal([SheetTurn.AsPrinted, SheetTurn.OverUpward], row.Uses.Select(use => use.Turn)));
        Assert.All(rows.SelectMany(row => row.Uses), use => Assert.Equal(("inside face", "lower end"), (use.Face, use.Along)));
    }

    [Fact]
    public void A_knob_has_one_hole_in_the_middle_of_the_front()
    {
        var piece = Piece("nightstand");
        var knob = PartTemplates.Of(piece, Length.Zero).Single(one => one.Kind == TemplateKind.Pull);
        var hole = Assert.Single(knob.Holes);
        Assert.InRange((hole.At.X * 2 - knob.Wide).Ticks, -1, 1);
        Assert.InRange((hole.At.Y * 2 - knob.High).Ticks, -1, 1);
        Assert.Equal(("middle of the length", "middle of the width"), (knob.Uses[0].Along, knob.Uses[0].Across));
    }

    private static Piece Piece(string design) => Worked.BuiltIn(design, 0).First().Piece;

    private static IEnumerable<PartTemplate> Templates(Piece piece, TemplateKind kind) =>
        PartTemplates.Of(piece, PartTemplates.UsualPull).Where(one => one.Kind == kind);
}
