using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>What comes before what, as trade books say it; each test names its book.</summary>
public sealed class FinishOrderTests
{
    // Wood Handbook (FPL-GTR-190), ch. 16: clear finishes are sand, stain, fill, seal, finish.
    // Handwork in Wood (1910), p. 214: stain, filler, then shellac or varnish.
    [Fact]
    public void Clear_sand_stain_fill_seal_finish() =>
        Finished
            .Listed("Red oak 1x6", "stain+clear")
            .InOrder(
                "parts:sand",
                "piece:sand",
                "piece:stain",
                "piece:fill-grain",
                "piece:seal",
                "piece:clear:first",
                "all:cure"
            );

    // Wood Handbook ch. 16: wax last. Mission Furniture, part 3 (1912), p. 25: shellac before wax, whose turpentine lifts stain.
    [Fact]
    public void Wax_after_shellac() =>
        Finished
            .Listed("Red oak 1x6", "stain+shellac+wax")
            .InOrder(
                "piece:stain",
                "piece:fill-grain",
                "piece:shellac:first",
                "piece:shellac:second",
                "piece:shellac:third",
                "piece:wax:first",
                "piece:wax:second"
            );

    // Wood Handbook ch. 16: opaque finishes are fill, sand, primer or sealer, top coats.
    [Fact]
    public void Opaque_fill_sand_primer_topcoats()
    {
        Finished
            .Listed("Red oak 1x6", "paint")
            .InOrder("piece:fill-grain", "piece:sand", "piece:prime", "piece:paint:first", "piece:paint:second");
        Finished
            .Listed("Birch plywood", "paint", true)
            .InOrder("piece:fill-edges", "piece:sand", "piece:prime", "piece:paint:first");
    }

    // Wood Handbook ch. 16: the seal lies between filler and finish. Shellac doesn't stand rain (common practice).
    [Fact]
    public void Filler_is_sealed_in_and_nothing_outdoors_is_sealed_with_shellac()
    {
        Finished.Listed("Red oak 1x6", "clear").InOrder("piece:fill-grain", "piece:seal", "piece:clear:first");
        Assert.False(Finished.Listed("Pine 1x12", "clear").Has("piece:seal"));
        Assert.False(Finished.Plan("outdoor-bench", "stain+polyurethane").Has("piece:seal"));
    }

    // Carpentry and Woodwork (1911), p. 425: prime, putty the holes, second coat; p. 367: nails set, then putty.
    // Mission Furniture, part 3 (1912), p. 82: putty before the last coats.
    [Fact]
    public void Paint_putty_on_the_primer()
    {
        var plan = Finished.Plan("bookcase", "paint");
        plan.InOrder("piece:prime", "piece:putty", "piece:paint:first");
        Assert.Contains("Set brads", plan.Step("piece:putty").Says[0], StringComparison.Ordinal);
    }

    // The same books: putty in the color of the finish before its last coats.
    [Fact]
    public void Clear_putty_before_the_last_coat()
    {
        var plan = Finished.Plan("bookcase", "clear");
        plan.InOrder("piece:clear:first", "piece:putty", "piece:clear:second", "piece:clear:third");
    }

    // Carpentry and Woodwork (1911), p. 484.
    [Theory]
    [InlineData("Red oak 1x6", true)]
    [InlineData("White ash", true)]
    [InlineData("Chestnut", true)]
    [InlineData("True mahogany", true)]
    [InlineData("Black walnut", true)]
    [InlineData("Butternut", true)]
    [InlineData("Yellow-poplar", false)]
    [InlineData("Pine 1x4", false)]
    [InlineData("Black cherry", false)]
    [InlineData("Yellow birch", false)]
    [InlineData("American beech", false)]
    [InlineData("Sweetgum", false)]
    [InlineData("Sycamore", false)]
    [InlineData("Sugar (hard) maple", false)]
    [InlineData("Western redcedar", false)]
    [InlineData("Cypress", false)]
    [InlineData("Redwood, old growth", false)]
    public void Filler_for_open_pores_alone(string wood, bool isFilled)
    {
        Assert.Equal(isFilled, Finished.Listed(wood, "shellac").Has("piece:fill-grain"));
        Assert.Equal(isFilled, FinishWood.Of(null, wood, null, false).HasOpenPores);
    }

    // Common practice: an oil that sinks in needs open pores.
    [Fact]
    public void No_filler_under_oil() => Assert.False(Finished.Listed("Red oak 1x6", "oil").Has("piece:fill-grain"));

    // Wood Handbook ch. 16; Carpentry and Woodwork (1911), p. 484; Handwork in Wood (1910), p. 214.
    [Fact]
    public void Filler_is_wiped_across_the_grain_then_lightly_along_it_and_sanded_when_dry()
    {
        var filler = Finished.Listed("Red oak 1x6", "shellac").Step("piece:fill-grain");
        Assert.Contains("across the grain, then lightly along it", filler.Says[0], StringComparison.Ordinal);
        Assert.Contains("Sand it lightly when it is dry", filler.Says[1], StringComparison.Ordinal);
        Assert.NotNull(filler.Wait);
    }

    // Handwork in Wood (1910), p. 210: wet, dry, sand before what is thinned with water.
    [Fact]
    public void Wetted_dried_and_sanded_before_a_water_based_coat()
    {
        var plan = Finished.Listed("Sugar (hard) maple", "clear");
        plan.InOrder("piece:raise-grain", "piece:smooth", "piece:dust", "piece:clear:first");
        Assert.NotNull(plan.Step("piece:raise-grain").Wait);
        Assert.False(Finished.Listed("Sugar (hard) maple", "polyurethane").Has("piece:raise-grain"));
    }

    // Carpentry and Woodwork (1911), p. 481: every coat hard before the next, rubbed between.
    [Fact]
    public void Every_coat_is_hard_and_rubbed_before_the_next()
    {
        foreach (var id in new[] { "paint", "enamel", "polyurethane", "clear", "shellac", "wiping-varnish" })
        {
            var plan = Finished.Listed("Pine 1x12", id);
            Assert.All(
                plan.Steps.Where(step => step.Action is WorkAction.Coat or WorkAction.Prime),
                step => Assert.True(step.Wait is { Minutes: > 0 }, step.Id)
            );
            Assert.Contains(
                FormattableString.Invariant($"{Coats.Product(id).BetweenGrit} grit once it is hard"),
                plan.Step($"piece:{id}:second").Says[0],
                StringComparison.Ordinal
            );
            Assert.InRange(Coats.Product(id).BetweenGrit!.Value, 220, 320);
        }
    }

    // Mission Furniture, part 1 (1909), p. 46, and part 2 (1910), pp. 73 and 88; Carpentry and Woodwork (1911): varnish, shellac
    // and wax two or three coats. Wood Handbook ch. 16: outdoors a primer and two top coats.
    [Fact]
    public void Usual_numbers_of_coats()
    {
        foreach (var id in new[] { "polyurethane", "clear", "shellac", "wax" })
            Assert.InRange(Coats.Product(id).Coats, 2, 3);
        var bench = Finished.Plan("outdoor-bench", "paint");
        bench.InOrder("piece:prime", "piece:paint:first", "piece:paint:second");
        Assert.False(bench.Has("piece:paint:third"));
    }

    // Mission Furniture, part 1 (1909), p. 108, part 2 (1910), pp. 9 and 50, part 3 (1912), pp. 7, 10, 25, 82: stain doesn't
    // take on glue.
    [Fact]
    public void Glue_is_scraped_before_stain()
    {
        var plan = WorkPlanner.Of(Finished.Piece("table"), Finished.Usual with { Finish = "stain+polyurethane" });
        Assert.Equal(
            ["clean:glue", "finish:piece:sand", "finish:piece:dust", "finish:piece:stain"],
            plan.Steps.Select(step => step.Id)
                .Where(id => id is "clean:glue" or "finish:piece:sand" or "finish:piece:dust" or "finish:piece:stain")
        );
    }

    // Mission Furniture, part 3 (1912), p. 67; Carpentry and Woodwork (1911), p. 369: inside faces are sanded before glue.
    [Fact]
    public void Parts_are_sanded_before_they_are_joined()
    {
        var plan = Finished.Plan("bookcase", "paint");
        var sand = plan.Step("parts:sand");
        Assert.Equal(WorkPhase.FinishBefore, sand.Phase);
        Assert.Equal(Finished.Piece("bookcase").Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark), sand.Handles);
        plan.InOrder("parts:sand", "piece:sand");
    }

    // Three trade magazines' pages: a panel's edges before the frame is glued; glue faces masked before that.
    [Fact]
    public void Panels_before_their_frames()
    {
        var plan = Finished.Plan("post-and-rail-cabinet", "paint");
        var panels = Finished
            .Piece("post-and-rail-cabinet")
            .Parts.Where(part => part.Name == "Door panel")
            .SelectMany(part => part.Copies)
            .Select(copy => copy.Mark)
            .ToList();
        var last = plan.Step("before:paint:second");
        Assert.Equal(WorkPhase.FinishBefore, last.Phase);
        Assert.Subset(last.Handles.ToHashSet(), panels.ToHashSet());
        Assert.DoesNotContain(plan.Step("piece:paint:second").Handles, mark => panels.Contains(mark));
        plan.InOrder("before:mask", "before:prime", "before:paint:first", "before:paint:second");
        Assert.Contains(
            "Wipe the edges of panels thin",
            string.Join(" ", plan.Step("before:paint:first").Says),
            StringComparison.Ordinal
        );
    }

    // Sources differ: Carpentry and Woodwork (1911), p. 357, has hinges before the finish, Mission Furniture, part 2 (1910),
    // p. 83, metal after it.
    [Fact]
    public void Hinges_are_a_choice_and_the_conflict_is_said()
    {
        var piece = Finished.Piece("post-and-rail-cabinet");
        var before = FinishPlanner.Of(piece, Finished.Usual).Step("piece:mask-hardware");
        var after = FinishPlanner.Of(piece, Finished.Usual with { HingesBefore = false }).Step("piece:mask-hardware");
        Assert.NotEqual(before.Says[0], after.Says[0]);
        Assert.Contains("Sources differ", before.Source!.Text, StringComparison.Ordinal);
    }

    // An army manual on painting (TM 5), 5-29: knots are sealed before paint. Wood Handbook ch. 16: the primer blocks stains.
    [Fact]
    public void Knots_are_sealed_before_the_primer()
    {
        Finished.Listed("Pine 1x12", "paint").InOrder("piece:sand", "piece:seal-knots", "piece:prime", "piece:paint:first");
        Assert.False(Finished.Listed("Sugar (hard) maple", "paint").Has("piece:seal-knots"));
        Assert.Contains("Stain-blocking", Coats.Product("primer").Name, StringComparison.Ordinal);
    }

    // Common practice, and a maple flooring association for sugar maple.
    [Theory]
    [InlineData("Pine 1x4", true)]
    [InlineData("Douglas-fir 2x4", true)]
    [InlineData("Paper birch", true)]
    [InlineData("Sugar (hard) maple", true)]
    [InlineData("Black cherry", true)]
    [InlineData("Red alder", true)]
    [InlineData("Quaking aspen", true)]
    [InlineData("Yellow-poplar", true)]
    [InlineData("Red oak 1x6", false)]
    [InlineData("Black walnut", false)]
    public void Conditioner_before_stain_where_the_wood_blotches(string wood, bool isNeeded)
    {
        var plan = Finished.Listed(wood, "stain+polyurethane");
        Assert.Equal(isNeeded, plan.Has("piece:condition"));
        if (isNeeded)
            plan.InOrder("piece:condition", "piece:stain");
    }

    // Mission Furniture, part 3 (1912), p. 5: 48 h from oil to shellac.
    [Fact]
    public void Oil_dries_two_days_before_shellac() =>
        Assert.Equal(48 * 60, Finished.Listed("Black walnut", "oil+shellac").Step("piece:oil:third").Wait!.Minutes);
}
