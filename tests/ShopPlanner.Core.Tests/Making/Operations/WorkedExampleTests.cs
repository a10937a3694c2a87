using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>Operations beside what trade books say of their order and sizes.</summary>
public sealed class WorkedExampleTests
{
    // Handwork in Wood (1910), ch. VII, no. 42: a tenon a third of the rail, 1 1/2 in → 1/2 in; training-school rules: the
    // mortise 1/8 in deeper than the tenon is long. The apron stands 1/4 in back: 1/4 + (1 1/2 - 1/2) / 2 = 3/4 in.
    [Fact]
    public void A_tables_mortises_are_cut_before_their_tenons()
    {
        var steps = Steps("table");
        var (mortise, tenon) = (steps.Step("mortise:frame:apron"), steps.Step("tenon:frame:apron"));
        Assert.Equal(Made.Inches(0.5m), mortise.Figure("Mortise width"));
        Assert.Equal(Made.Inches(1.375m), mortise.Figure("Mortise depth"));
        Assert.Equal(Made.Inches(0.75m), mortise.Figure("Fence to the mortise"));
        Assert.Equal(Made.Inches(1.25m), tenon.Figure("Tenon length"));
        Assert.Equal(mortise.Figure("Mortise length"), tenon.Figure("Tenon width"));
        Assert.Contains(mortise.Id, tenon.After);
        Assert.Equal((4, 4), (mortise.Handles.Length, tenon.Handles.Length));
        Assert.Equal(8, mortise.Joints.Length);
    }

    // The apron is flush with the leg's end: the tenon is two thirds of it (3 1/2 → 2 5/16 in), the rest is haunch.
    [Fact]
    public void A_mortise_keeps_away_from_the_end_of_a_leg()
    {
        var mortise = Steps("table").Step("mortise:frame:apron");
        Assert.Equal(Made.Inches(2.3125m), mortise.Figure("Mortise length"));
        Assert.Equal(Made.Inches(3.5m - 2.3125m), mortise.Figure("From the upper end"));
        Assert.Contains(mortise.Says, one => one.Contains("haunch", StringComparison.Ordinal));
    }

    // Carpentry and Woodwork (1911), p. 366; Mission Furniture, part 3 (1912), p. 25: the panel is glued before it is cut to
    // size. Handwork in Wood (1910), p. 195: what holds the top is cut in the rails before these are glued.
    [Fact]
    public void A_top_is_glued_flattened_and_cut_to_size_before_the_frame_is_glued()
    {
        var steps = Steps("table");
        var (glue, flat, size) = (steps.Step("glue-up:top"), steps.Step("flatten:top"), steps.Step("size:top"));
        Assert.Contains(glue.Id, flat.After);
        Assert.Contains(flat.Id, size.After);
        Assert.Equal((Made.Inches(60), Made.Inches(32)), (size.Figure("Length"), size.Figure("Width")));
        Assert.True(glue.Wait is { Minutes: >= 24 * 60, Clamps: >= 2 });
        Assert.Equal(glue.Handles.Length - 1, glue.Joints.Length);
        // The aprons' tenons are 1 1/4 in long: nothing is fastened there.
        var fasteners = steps.Step("top-fasteners");
        Assert.Equal(WorkPhase.Parts, fasteners.Phase);
        Assert.All(fasteners.Settings, one => Assert.True(one.Value > Made.Inches(1.25m)));
    }

    // Mission Furniture, part 2 (1910), p. 70: pegs are bored and the lower ends shaped in loose sides. Grooves and rabbets come
    // before the glue (p. 11).
    [Fact]
    public void A_bookcases_sides_are_cut_bored_and_notched_as_single_parts()
    {
        var steps = Steps("bookcase");
        var (dado, rabbet, notch) = (
            steps.Step("dado:carcass:case"),
            steps.Step("rabbet:carcass:back"),
            steps.Step("notch:side")
        );
        Assert.Equal(Made.Inches(0.25m), dado.Figure("Depth"));
        Assert.Equal(Made.Inches(0.71875m), dado.Figure("Width of the cut"));
        Assert.Contains(Made.Inches(3.5m).Ticks, dado.Figures("From the lower end to the cut, bottom"));
        Assert.Equal((Made.Inches(0.25m), Made.Inches(0.21875m)), (rabbet.Figure("Depth"), rabbet.Figure("Width of the cut")));
        Assert.Equal("inside face at the rear edge and underside at the rear edge", rabbet.Face);
        Assert.Equal(Made.Inches(3), notch.Figure("From the front edge"));
        Assert.Equal(Made.Inches(3.5m), notch.Figure("From the lower end"));
        Assert.Contains(dado.Id, notch.After);
        foreach (var id in new[] { dado.Id, rabbet.Id, notch.Id, "shelf-pins" })
            Assert.Equal(WorkPhase.Parts, steps.Step(id).Phase);
        Assert.Contains(dado.Id, steps.Step("shelf-pins").After);
    }

    // The top sits at the end of the sides: what takes it is open there.
    [Fact]
    public void A_dado_at_the_end_of_a_side_is_a_rabbet()
    {
        var rabbet = Steps("bookcase").Step("rabbet:carcass:case");
        Assert.Equal((Made.Inches(0.25m), Made.Inches(0.71875m)), (rabbet.Figure("Depth"), rabbet.Figure("Width of the cut")));
        Assert.Equal("inside face at the upper end", rabbet.Face);
    }

    // One book bores loose sides, a trade page the closed case: the builder decides.
    [Fact]
    public void Pin_holes_wait_for_the_case_where_the_builder_wants_it()
    {
        var piece = Piece("bookcase");
        var steps = OperationList.Of(piece, WorkChoices.Usual with { PinsBefore = false });
        Assert.Equal(WorkPhase.Fitting, steps.Step("shelf-pins").Phase);
        Assert.Contains("a trade page bores after assembly", steps.Step("shelf-pins").Source!.Text, StringComparison.Ordinal);
    }

    // Stiles and rails of 3/4 in take a panel of 7/32 in, 3/8 in deep. Doors are made large and trimmed to the opening
    // (Carpentry and Woodwork, 1911, pp. 355 and 357); cups are measured from the trimmed ends: 17.5 + 5 mm (a maker's sheet).
    [Fact]
    public void A_frame_door_is_grooved_tongued_trimmed_and_then_bored()
    {
        var steps = Steps("pantry-cupboard");
        var (groove, tongue) = (steps.Step("groove:door:thin"), steps.Step("tongue:door:door"));
        Assert.Equal(Made.Inches(0.375m), groove.Figure("Depth"));
        Assert.Equal((Made.Inches(0.75m - 0.21875m).Ticks - 64 + 1) / 2, groove.Figure("Fence to blade").Ticks);
        Assert.Equal(Made.Inches(0.375m), tongue.Figure("Tongue length"));
        Assert.Equal((Made.Inches(0.75m - 0.21875m).Ticks + 1) / 2, tongue.Figure("Taken off each face").Ticks);
        Assert.Contains(groove.Id, tongue.After);
        Assert.Equal(8, groove.Handles.Length);
        Assert.Equal(4, tongue.Handles.Length);
        Assert.Contains(groove.Says, one => one.Contains("test pieces", StringComparison.Ordinal));
        var (trim, cups) = (steps.Step("size:door:door-stile"), steps.Step("hinge-cups:door-stile"));
        Assert.Equal(Made.Inches(0.5m), trim.Figure("Cut long by"));
        Assert.Contains(trim.Id, cups.After);
        Assert.Equal(Length.FromMillimetres(22.5m), cups.Figure("Cup center from the edge"));
        Assert.True(cups.Figure("Depth of the cup") < Made.Inches(0.75m));
    }

    // A flap hangs along its width: cups up its side would be bored for nothing.
    [Theory]
    [InlineData("sides", true)]
    [InlineData("below", false)]
    [InlineData("above", false)]
    public void Only_doors_that_hang_at_their_sides_are_bored_for_cups(string hang, bool isBored)
    {
        var doors = $$"""{ "kind": "doors", "make": "slab", "material": "case", "leaves": "1", "hang": "{{hang}}" }""";
        var piece = Made.Piece(Made.Carcass("24", "12", "20", doors));
        Assert.Contains(piece.Joints, one => one.Kind == JointKind.Hinged);
        Assert.Equal(isBored, Worked.Steps(piece).Any(one => one.Action == WorkAction.BoreHinges));
    }

    // Handwork in Wood (1910), ch. VII, no. 42: 3/4 in rails take tenons 1/4 in thick, here in posts 3 in square.
    [Fact]
    public void Rails_of_three_quarters_take_a_quarter_inch_tenon()
    {
        var steps = Worked.Steps(Made.Piece(Cabinet("3", "mortise")));
        var mortise = steps.Step("mortise:frame:stile");
        Assert.Equal((Made.Inches(0.25m), Made.Inches(1)), (mortise.Figure("Mortise width"), mortise.Figure("Mortise depth")));
        // The panel's groove and the mortise come before the tenon; the groove lies in the same rails and legs.
        Assert.Contains(mortise.Id, steps.Step("tenon:frame:stile").After);
        Assert.Contains(steps, one => one.Id == "groove:frame:thin");
    }

    // Common practice: dowels of a third to a half of the thinner part, 3/4 in → 5/16 in, holes in both.
    [Fact]
    public void Dowels_are_bored_in_both_parts()
    {
        var piece = Made.Piece(Cabinet("2", "dowel"));
        var bored = Worked.Steps(piece).Step("dowel-holes");
        Assert.Equal(Made.Inches(0.3125m), bored.Figure("Bit"));
        foreach (var joint in piece.Joints.Where(one => one.Kind == JointKind.Dowel))
            Assert.True(bored.Handles.Contains(joint.From) && bored.Handles.Contains(joint.Into));
    }

    // Training-school rules: a dado a quarter of the side deep. The tongue is half of the front, on its inner side.
    [Theory]
    [InlineData("dado", "dado:drawer:box", 0.125)]
    [InlineData("rabbet", "rabbet:drawer:box", 0.25)]
    public void A_drawers_corners_are_cut_in_its_sides(string joint, string id, double deep)
    {
        var steps = Worked.Steps(Drawers(joint));
        Assert.Equal(Made.Inches((decimal)deep), steps.Step(id).Figure("Depth"));
        Assert.Equal(joint == "dado", steps.Any(one => one.Id == "tongue:drawer:box"));
        if (joint != "dado")
            return;
        Assert.Equal(Made.Inches(0.25m), steps.Step(id).Figure("Width of the cut"));
        // The outer face alone is cut back.
        var tongue = steps.Step("tongue:drawer:box");
        Assert.Equal("front face and rear face at the ends", tongue.Face);
        Assert.Contains(Made.Inches(0.25m).Ticks, tongue.Figures("Taken off the front face"));
        Assert.DoesNotContain(tongue.Says, one => one.Contains("each face", StringComparison.Ordinal));
    }

    [Fact]
    public void Dovetails_are_one_step_for_both_halves()
    {
        var piece = Drawers("dovetail");
        var step = Worked.Steps(piece).Step("dovetail:drawer");
        Assert.Equal(piece.Joints.Count(one => one.Kind == JointKind.Dovetail), step.Joints.Length);
        Assert.Equal(Made.Inches(0.5m), step.Figure("Length of the pins"));
    }

    // Band first: over the open end of a dado it would keep the shelf back by its thickness.
    [Fact]
    public void Edges_are_banded_before_dadoes_cross_them()
    {
        var steps = Steps("media-console");
        var band = steps.Step("edge-band");
        Assert.Contains(band.Id, steps.Step("dado:carcass:case").After);
        Assert.DoesNotContain(Steps("workbench"), one => one.Id == "edge-band");
    }

    [Fact]
    public void Both_cleats_of_a_floating_shelf_are_ripped_at_once_before_their_pockets()
    {
        var steps = Steps("floating-shelf");
        var bevel = steps.Step("bevel:frame");
        Assert.Equal(2, bevel.Handles.Length);
        var after = steps.Where(one => one.After.Contains(bevel.Id)).Select(one => one.Action).ToList();
        Assert.True(after.Contains(WorkAction.PocketHoles) || after.Contains(WorkAction.ScrewHoles));
    }

    [Fact]
    public void Order_that_rests_on_a_book_names_it()
    {
        var sources = DesignFiles.Names.SelectMany(name => Steps(name)).Select(one => one.Source).OfType<SourceNote>().ToList();
        string[] books = ["Handwork in Wood (1910)", "Carpentry and Woodwork (1911)", "Mission Furniture, part 2 (1910)"];
        foreach (var book in books)
            Assert.Contains(sources, one => one.Text.Contains(book, StringComparison.Ordinal));
    }

    private static Piece Piece(string name) => Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));

    private static ImmutableArray<WorkStep> Steps(string name) => Worked.Steps(Piece(name));

    private static string Cabinet(string leg, string joint) =>
        Made.PostAndRail("")
            .Replace("\"2 in\"", $"\"{leg} in\"", StringComparison.Ordinal)
            .Replace("\"joint\": \"pocket\"", $"\"joint\": \"{joint}\"", StringComparison.Ordinal);

    private static Piece Drawers(string joint) =>
        Made.Piece(
            Made.Carcass(
                "24",
                "20",
                "30",
                $$"""{ "kind": "drawers", "count": "2", "front": "case", "box": "box", "bottom": "thin", "joint": "{{joint}}" }"""
            )
        );
}
