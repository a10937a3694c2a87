using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Sound plans of stock with bad places, and what the verifier says when bad places or trims lie elsewhere.</summary>
public sealed class BadPlaceDamageTests
{
    private static readonly CutRequest Request = Bad.Boards(
        [Bad.Board("B1", "70").At(Bad.Across("30", "3")).Raw(StockEdges.Near)],
        Some.Part("A", "25")
    );

    private static readonly CutPlan Sound = Some.Planned(Request);

    private static readonly Dictionary<string, (Func<CutStock, CutStock> Change, string Message)> Ways = new()
    {
        ["a knot in the part"] = (stock => stock.At(Bad.Place("10", "1", "1", "1")), "touches a bad place"),
        ["a knot in the leftover"] = (
            stock => stock.At(Bad.Place("50", "1", "1", "1")),
            "leftover to keep that touches a bad place"
        ),
        ["the other end raw"] = (stock => stock.Raw(StockEdges.Far), "reaches into a trim"),
        ["both ends raw"] = (stock => stock.Raw(StockEdges.Ends), "reaches into a trim"),
        ["no bad place"] = (stock => stock with { BadPlaces = BadPlaces.None }, ""),
    };

    public static TheoryData<string> Names => [.. Ways.Keys];

    [Fact]
    public void The_plan_keeps_the_wood_beyond_the_bad_place()
    {
        var kept = Assert.Single(Assert.Single(Sound.Layouts).Leftovers, left => left.Keep);
        Assert.Equal((Some.Of("33"), Some.Of("37")), (kept.X, kept.Dx));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_bad_place_or_a_trim_elsewhere_is_found_out(string way)
    {
        var (change, message) = Ways[way];
        var faults = PlanVerifier.Check(Request with { Stock = [change(Request.Stock[0])] }, Sound);
        if (message.Length == 0)
            Assert.Empty(faults);
        else
            Assert.Contains(faults, fault => fault.Message.Contains(message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_in_a_raw_end_is_found_out()
    {
        var plan = Some.Planned(Bad.Boards([Bad.Board("B1", "40")], Some.Part("A", "40")));
        var faults = PlanVerifier.Check(Bad.Boards([Bad.Board("B1", "40").Raw(StockEdges.Far)], Some.Part("A", "40")), plan);
        Assert.Contains(faults, fault => fault.Message == "leaves the usable wood");
    }

    [Fact]
    public void A_leftover_that_is_never_cut_off_the_bad_wood_is_found_out()
    {
        var spoiled = Sound with
        {
            Layouts = [Sound.Layouts[0] with { Cuts = Sound.Layouts[0].Cuts.RemoveAt(Sound.Layouts[0].Cuts.Length - 1) }],
        };
        Assert.Contains(
            PlanVerifier.Check(Request, spoiled),
            fault => fault.Message == "has a leftover to keep that stays on a bad place"
        );
    }

    [Fact]
    public void Bad_wood_called_a_leftover_to_keep_is_found_out()
    {
        var layout = Sound.Layouts[0];
        var spoiled = layout with { Leftovers = [.. layout.Leftovers.Select(left => left with { Keep = true })] };
        Assert.Contains(
            PlanVerifier.Check(Request, Sound with { Layouts = [spoiled] }),
            fault =>
                fault.Message.StartsWith("is a leftover to keep", StringComparison.Ordinal)
                || fault.Message.StartsWith("has a leftover to keep", StringComparison.Ordinal)
        );
    }
}
