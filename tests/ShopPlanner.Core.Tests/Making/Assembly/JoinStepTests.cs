using System.Collections.Immutable;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>What the steps say, measure and wait for.</summary>
public sealed class JoinStepTests
{
    private const string Frame = """
        {
          "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Frame",
          "dimensions": [ { "name": "width", "value": "24" }, { "name": "depth", "value": "3/4" }, { "name": "height", "value": "36" } ],
          "materials": [ { "role": "stile", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" } ],
          "frame": { "kind": "none" },
          "parts": [
            { "name": "Stile", "material": "stile", "length": "36 in", "along": "z", "flat": "y",
              "at": [ [ "0 in", "0 in", "0 in" ], [ "21 1/2 in", "0 in", "0 in" ] ] },
            { "name": "Rail", "material": "stile", "length": "21 in", "along": "x", "flat": "y",
              "at": [ [ "1 1/2 in", "0 in", "0 in" ], [ "1 1/2 in", "0 in", "33 1/2 in" ] ],
              "joints": [ { "with": "Stile", "kind": "mortise-and-tenon", "along": "x", "depth": "1 in" } ] }
          ]
        }
        """;

    // Geometry: the diagonal of 24 × 36 in is 43.267 in.
    [Fact]
    public void Both_diagonals_of_a_frame_are_told()
    {
        var check = Plan(WorkChoices.Usual).Steps.Select(step => step.Check).OfType<WorkCheck>().Single();
        Assert.InRange(check.Reads.Value.ToInches(), 43.2665m, 43.2675m);
        Assert.Equal(Made.Inches(0.0625m), check.Off);
    }

    // Common practice: 1/32 in small, 1/16 in to 4 ft, 1/8 in above.
    [Theory]
    [InlineData("8", 0.03125)]
    [InlineData("48", 0.0625)]
    [InlineData("60", 0.125)]
    public void The_allowance_grows_with_the_frame(string height, double off)
    {
        var sized = Frame
            .Replace("\"36\"", $"\"{height}\"", StringComparison.Ordinal)
            .Replace("\"36 in\"", "\"height\"", StringComparison.Ordinal)
            .Replace("\"33 1/2 in\"", "\"height - 2 1/2 in\"", StringComparison.Ordinal)
            .Replace("\"24\"", "\"12\"", StringComparison.Ordinal)
            .Replace("\"21 1/2 in\"", "\"9 1/2 in\"", StringComparison.Ordinal)
            .Replace("\"21 in\"", "\"9 in\"", StringComparison.Ordinal);
        var plan = AssemblyOrder.Of(Made.Piece(sized), WorkChoices.Usual);
        Assert.Equal(Made.Inches((decimal)off), plan.Steps.Select(step => step.Check).OfType<WorkCheck>().Single().Off);
    }

    // Wood glue: no load for 24 hours, clamps 30 to 60 minutes (general pages); hide glue: clamps 24 hours (Mission Furniture).
    [Theory]
    [InlineData("pva", 60, 1440)]
    [InlineData("hide", 1440, 1440)]
    public void Clamps_stay_as_long_as_the_glue_asks(string glue, int clamps, int sets)
    {
        var wait = Plan(WorkChoices.Usual with { Glue = glue }).Steps.Select(step => step.Wait).OfType<WorkWait>().Single();
        Assert.Equal((clamps, sets), (wait.ClampMinutes, wait.Minutes));
    }

    [Fact]
    public void The_label_comes_first()
    {
        var choices = WorkChoices.Usual with { Hours = ImmutableDictionary<string, double>.Empty.Add("clamp", 2).Add("glue", 1) };
        var wait = Plan(choices).Steps.Select(step => step.Wait).OfType<WorkWait>().Single();
        Assert.Equal((120, 120), (wait.ClampMinutes, wait.Minutes));
    }

    [Fact]
    public void Doors_are_made_after_the_case_or_before_it_as_the_builder_wants()
    {
        var book = Book.Read("oak-buffet");
        int Door(bool after) =>
            Place(AssemblyOrder.Of(book.Piece, WorkChoices.Usual with { DoorsAfterCase = after }), "join:door");
        int Case(bool after) =>
            Place(AssemblyOrder.Of(book.Piece, WorkChoices.Usual with { DoorsAfterCase = after }), "join:piece");
        Assert.True(Door(true) > Case(true));
        Assert.True(Door(false) < Case(false));
    }

    [Fact]
    public void Runners_go_on_their_partition_first_or_after_the_glue_up()
    {
        var piece = Book.Read("oak-buffet").Piece;
        Assert.Contains(
            AssemblyOrder.Of(piece, WorkChoices.Usual).Subassemblies,
            one => one.Name == "Partition with drawer slides"
        );
        var later = AssemblyOrder.Of(piece, WorkChoices.Usual with { CleatsFirst = false });
        Assert.DoesNotContain(later.Subassemblies, one => one.Name == "Partition with drawer slides");
        Orders.Hold(piece, later, "runners later");
    }

    [Fact]
    public void What_nothing_brings_in_is_told_with_what_shuts_it_in()
    {
        var finding = Assert.Single(AssemblyOrder.Of(Made.Piece(Pinwheel), WorkChoices.Usual).Findings);
        Assert.Equal(Core.Workings.Severity.Fails, finding.Severity);
        Assert.Contains("in any order", finding.Text, StringComparison.Ordinal);
        Assert.True(finding.Marks.Length >= 3);
    }

    // Four boards around a hub, each doweled into the side of the next and into the hub: none can leave first.
    private const string Pinwheel = """
        {
          "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Pinwheel",
          "dimensions": [ { "name": "width", "value": "6" }, { "name": "depth", "value": "6" }, { "name": "height", "value": "1" } ],
          "materials": [ { "role": "board", "name": "Pine 5/4 x 2", "form": "board", "thickness": "1", "width": "2" } ],
          "frame": { "kind": "none" },
          "parts": [
            { "name": "Front", "material": "board", "length": "4 in", "along": "x", "flat": "z", "at": [ [ "0 in", "0 in", "0 in" ] ],
              "joints": [ { "with": "Right", "kind": "dowel", "along": "x" } ] },
            { "name": "Right", "material": "board", "length": "4 in", "along": "y", "flat": "z", "at": [ [ "4 in", "0 in", "0 in" ] ],
              "joints": [ { "with": "Back", "kind": "dowel", "along": "y" } ] },
            { "name": "Back", "material": "board", "length": "4 in", "along": "x", "flat": "z", "at": [ [ "2 in", "4 in", "0 in" ] ],
              "joints": [ { "with": "Left", "kind": "dowel", "along": "x" } ] },
            { "name": "Left", "material": "board", "length": "4 in", "along": "y", "flat": "z", "at": [ [ "0 in", "2 in", "0 in" ] ],
              "joints": [ { "with": "Front", "kind": "dowel", "along": "y" } ] },
            { "name": "Hub", "material": "board", "length": "2 in", "along": "x", "flat": "z", "at": [ [ "2 in", "2 in", "0 in" ] ],
              "joints": [ { "with": "Front", "kind": "dowel", "along": "y" }, { "with": "Right", "kind": "dowel", "along": "x" },
                { "with": "Back", "kind": "dowel", "along": "y" }, { "with": "Left", "kind": "dowel", "along": "x" } ] }
          ]
        }
        """;

    private static int Place(AssemblyPlan plan, string id) =>
        plan.Steps.Select((step, i) => (step.Id, i)).First(one => one.Id.StartsWith(id, StringComparison.Ordinal)).i;

    private static AssemblyPlan Plan(WorkChoices choices) => AssemblyOrder.Of(Made.Piece(Frame), choices);
}
