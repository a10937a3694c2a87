using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

public sealed class JudgingTests
{
    private static readonly Dictionary<string, LargestStock> NoStock = [];

    [Fact]
    public void A_wide_bookcase_bends_more_than_a_narrow_one()
    {
        Assert.DoesNotContain(Judge("bookcase", ("width", "18")), one => one.Text.Contains("sag", StringComparison.Ordinal));
        var wide = Judge("bookcase", ("width", "36")).First(one => one.Text.StartsWith("Shelf", StringComparison.Ordinal));
        Assert.NotEqual(Severity.Fine, wide.Severity);
        Assert.Equal("Sag after years", wide.Working!.Name);
    }

    // Worked by hand with the beam formula of the Wood Handbook, Eq. 9-2: load 25 lb/ft² on 24 in × 11 in = 45.83 lb; I = 11 ×
    // (23/32)³ ÷ 12 = 0.3404 in⁴;
    // 5 ÷ 384 × 45.83 × 24³ ÷ (1.80 × 10⁶ × 0.3404) = 0.01347 in, times 1.8 for creep = 0.0242 in.
    [Fact]
    public void The_sag_of_a_shelf_is_as_worked_by_hand()
    {
        var piece = One("Shelf", "Shelves", 24, 11, 23m / 32, "plywood-hardwood-faced");
        Assert.DoesNotContain(PieceJudge.Of(piece, NoStock), one => one.Severity == Severity.Fails);
        var longer = One("Shelf", "Shelves", 36, 11, 23m / 32, "plywood-hardwood-faced");
        var judged = Assert.Single(PieceJudge.Of(longer, NoStock)).Working;
        // Three halves of the span, to the fourth power: 0.02424 × 5.0625 = 0.1227 in; and the shelf itself, 36 × 11 × 23/32 in at
        // 0.55 × 62.4 lb/ft³ = 5.65 lb on 68.75 lb: 0.1328 in.
        Assert.Equal(0.1328, judged!.Figure.Number(LengthUnit.Inch)!.Value, 3);
    }

    [Fact]
    public void What_stands_under_a_shelf_shortens_its_span()
    {
        var piece = One("Shelf", "Shelves", 60, 11, 0.75m, "plywood-hardwood-faced");
        var post = new PartCopy("B1", Box(20, 0, -10, 4, 11, 10), Hand.Either, Axis.Z, Axis.Y);
        var propped = piece with
        {
            Parts = piece.Parts.Add(piece.Parts[0] with { Id = "B", Name = "Post", Assembly = "Frame", Copies = [post] }),
        };
        Assert.Equal((60, 36), (Span(piece), Span(propped)));
    }

    private static double Span(Piece piece) =>
        PieceJudge
            .Of(piece, NoStock)
            .First(one => one.Part == "A")
            .Working!.Inputs[0]
            .Working.Inputs.Single(one => one.Key == "span")
            .Working.Figure.Number(LengthUnit.Inch)!
            .Value;

    // Wood Handbook, Table 13-5: red oak 0.00369 flat-sawn; 32 in × 0.00369 × 5 % = 0.590 in.
    [Fact]
    public void A_table_top_of_red_oak_wants_room_to_move()
    {
        var top = Judge("table", ("depth", "32")).Single(one => one.Text.StartsWith("The top", StringComparison.Ordinal));
        Assert.Equal(0.590, top.Working!.Figure.Number(LengthUnit.Inch)!.Value, 3);
        // The next sixteenth that a rule can set.
        Assert.Contains("⅝″", top.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chest_with_all_drawers_open_tips_under_a_child()
    {
        var chest = DesignFiles.Read("drawer-chest");
        var brackets = chest.AllBays().SelectMany(bay => bay.Fills).Single(fill => fill.Kind == "anti-tip");
        var free = DesignEvaluator.Evaluate(chest.RemoveFill(brackets.Path), new Dictionary<string, string>()).Piece!;
        var warnings = PieceJudge.Of(free, NoStock);
        var tips = warnings.Single(one => one.Text.StartsWith("It tips", StringComparison.Ordinal));
        Assert.Equal(Severity.Anchor, tips.Severity);
        Assert.Equal("Stability factor", tips.Working!.Name);
        Assert.Contains(warnings, one => one.Text.Contains("27 in", StringComparison.Ordinal));
        Assert.DoesNotContain(Judge("table"), one => one.Text.Contains("tips", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("drawer-chest")]
    [InlineData("pantry-cupboard")]
    public void A_piece_fixed_to_the_wall_still_says_that_it_tips_until_it_is(string name)
    {
        var warnings = Judge(name);
        var tips = warnings.Single(one => one.Text.StartsWith("Until it is anchored to the wall", StringComparison.Ordinal));
        Assert.Equal((Severity.Safety, "Stability factor"), (tips.Severity, tips.Working!.Name));
        Assert.Contains(warnings, one => one.Severity == Severity.Safety && one.Text.Contains("studs", StringComparison.Ordinal));
    }

    // The sides stand 11 1/4 − 3/4 (face frame) = 10 1/2 in deep, their feet 3 in of toe space less: 60 ÷ 7 1/2 = 8. A workbench
    // whose legs stand 35 by 24 in comes to 1.46, under the 1.5 that counts as tall.
    [Fact]
    public void Open_shelves_that_are_tall_for_their_depth_go_to_the_wall()
    {
        var held = Judge("bookcase").Single(one => one.Working?.Name == "Height to depth");
        Assert.StartsWith("Anchor it to the wall before you load it", held.Text, StringComparison.Ordinal);
        Assert.Equal(8.0, held.Working!.Figure.Number(LengthUnit.Inch)!.Value, 3);

        var bookcase = DesignFiles.Read("bookcase");
        var brackets = bookcase.AllBays().SelectMany(bay => bay.Fills).Single(fill => fill.Kind == "anti-tip");
        var free = DesignEvaluator.Evaluate(bookcase.RemoveFill(brackets.Path), new Dictionary<string, string>()).Piece!;
        var tall = PieceJudge.Of(free, NoStock).Single(one => one.Working?.Name == "Height to depth");
        Assert.Equal(Severity.Anchor, tall.Severity);
        Assert.Contains("pull it over. Anchor it to the wall", tall.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("workbench")]
    [InlineData("table")]
    [InlineData("boot-room-bench")]
    [InlineData("wall-shelf")]
    public void What_is_low_or_deep_needs_no_wall_for_its_height(string name) =>
        Assert.DoesNotContain(Judge(name), one => one.Working?.Name == "Height to depth");

    // A desk has two bays with a drawer each, which say the same of open drawers.
    [Fact]
    public void What_two_bays_bring_alike_is_said_once() =>
        Assert.Single(Judge("desk"), one => one.Text.StartsWith("Open drawers", StringComparison.Ordinal));

    [Fact]
    public void Anti_tip_brackets_are_bought()
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read("drawer-chest"), new Dictionary<string, string>()).Piece!;
        Assert.True(piece.IsFixedToWall);
        Assert.Equal(2, piece.Hardware.Single(one => one.Name.StartsWith("Anti-tip", StringComparison.Ordinal)).Quantity);
    }

    [Fact]
    public void Over_a_toe_space_a_chest_tips_about_its_foot()
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read("drawer-chest"), new Dictionary<string, string>()).Piece!;
        var tips = PieceJudge.Of(piece, NoStock).First(one => one.Working?.Name == "Stability factor").Working!;
        double Of(string key) => tips.Inputs.Single(one => one.Key == key).Working.Figure.Number(LengthUnit.Inch)!.Value;
        // The toe space is 2 1/2 in deep behind a face frame of 3/4 in.
        Assert.Equal(3.25, Of("inset"), 6);
        var righting = Of("weight") * ((Of("depth") / 2) - 3.25);
        var tipping = (Of("open") * ((Of("reach") / 2) + 3.25)) + (60 * (Of("reach") + 3.25));
        Assert.Equal(righting / tipping, tips.Figure.Number(LengthUnit.Inch)!.Value, 6);
    }

    [Fact]
    public void A_door_reaches_out_by_the_width_of_its_leaf()
    {
        var evaluation = DesignEvaluator.Evaluate(DesignFiles.Read("pantry-cupboard"), new Dictionary<string, string>());
        var tips = PieceJudge.Of(evaluation.Piece!, NoStock).First(one => one.Working?.Name == "Stability factor").Working!;
        var reach = tips.Inputs.Single(one => one.Key == "reach").Working.Figure.Number(LengthUnit.Inch)!.Value;
        var stiles = evaluation
            .Piece!.Parts.Where(part => part.Name == "Door stile")
            .SelectMany(part => part.Copies)
            .OrderBy(copy => copy.Box.X)
            .ToList();
        Assert.Equal((double)(stiles[1].Box.EndX - stiles[0].Box.X).ToInches(), reach, 6);
    }

    [Fact]
    public void A_part_longer_than_any_stock_is_named()
    {
        var short4 = new Dictionary<string, LargestStock>
        {
            ["birch-ply-3-4"] = new(Length.FromInches(48), Length.FromInches(48)),
        };
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read("bookcase"), new Dictionary<string, string>()).Piece!;
        var side = PieceJudge.Of(piece, short4).Single(one => one.Text.Contains("longer than any", StringComparison.Ordinal));
        Assert.Equal((Severity.Fails, piece.Parts.Single(part => part.Name == "Side").Id), (side.Severity, side.Part));
        Assert.DoesNotContain(
            PieceJudge.Of(piece, NoStock),
            one => one.Text.Contains("longer than any", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void An_allowance_that_the_board_has_no_room_for_is_named()
    {
        var piece = One("Seat", "Top", 40, 5.5m, 0.75m, "pine-eastern-white", board: 5.5m);
        Assert.Empty(PieceJudge.Of(piece, NoStock));
        var longer = piece with { Parts = [piece.Parts[0] with { RoughWidth = Length.FromInches(6) }] };
        Assert.Contains("Use a smaller allowance", Assert.Single(PieceJudge.Of(longer, NoStock)).Text, StringComparison.Ordinal);
    }

    // 60 in of 1/2 in plywood on end supports alone.
    [Fact]
    public void A_sheet_top_is_judged_as_a_shelf()
    {
        var piece = One("Top", "Top", 60, 20, 0.5m, "plywood-hardwood-faced");
        Assert.Contains(PieceJudge.Of(piece), one => one.Text.StartsWith("Top will sag", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(BuiltInDesignTests.Names), MemberType = typeof(BuiltInDesignTests))]
    public void Amounts_come_to_what_the_parts_come_to(string name)
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!;
        var amounts = MaterialAmount.Of(piece);
        var members = piece.Parts.Where(part => part.Purpose == PartPurpose.Member).ToList();
        Assert.Equal(members.Sum(part => part.Quantity), amounts.Sum(one => one.Pieces));
        Assert.Equal(
            members.Sum(part => part.RoughLength.Ticks * part.RoughWidth.Ticks * part.Quantity),
            amounts.Aggregate(Area.Zero, (sum, one) => sum + one.Face).SquareTicks
        );
        Assert.InRange(PieceWeight.Of(piece.Parts).Value, 1, 200);
    }

    private static ImmutableArray<PieceWarning> Judge(string name, params (string Name, string Text)[] changed)
    {
        var evaluation = DesignEvaluator.Evaluate(DesignFiles.Read(name), changed.ToDictionary(one => one.Name, one => one.Text));
        Assert.Empty(evaluation.Faults);
        return PieceJudge.Of(evaluation.Piece!, NoStock);
    }

    private static Piece One(
        string name,
        string assembly,
        decimal length,
        decimal width,
        decimal thickness,
        string species,
        decimal? board = null
    )
    {
        var box = Box(0, 0, 0, length, width, thickness);
        var form = board is null ? Core.Materials.MaterialForm.Sheet : Core.Materials.MaterialForm.Board;
        var material = new RoleMaterial(
            "m",
            null,
            "Wood",
            form,
            box.Dz,
            board is { } wide ? Length.FromInches(wide) : null,
            species
        );
        var part = new PiecePart(
            "A",
            name,
            assembly,
            material,
            Working.Given("Length", box.Dx),
            Working.Given("Width", box.Dy),
            Working.Given("Thickness", box.Dz),
            box.Dx,
            box.Dy,
            true,
            PartPurpose.Member,
            "",
            [new("A1", box, Hand.Either, Axis.X, Axis.Z)],
            1
        );
        return new("One", LengthUnit.Inch, box, [part], [], [], [], [], []);
    }

    private static Box Box(decimal x, decimal y, decimal z, decimal dx, decimal dy, decimal dz) =>
        new(
            Length.FromInches(x),
            Length.FromInches(y),
            Length.FromInches(z),
            Length.FromInches(dx),
            Length.FromInches(dy),
            Length.FromInches(dz)
        );
}
