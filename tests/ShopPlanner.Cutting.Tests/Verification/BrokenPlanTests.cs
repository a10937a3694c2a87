using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Verification;

/// <summary>A sound plan broken in one place at a time: the verifier finds each kind of violation and says so.</summary>
public sealed class BrokenPlanTests
{
    private static readonly Dictionary<string, (Func<CutPlan, CutPlan> Spoil, string Message)> Ways = new()
    {
        // Layouts and pieces.
        ["a stock that is not requested"] = (
            p => p.Layout(Damage.New, l => l with { Stock = "other" }),
            "isn't a stock in the request"
        ),
        ["no copies"] = (p => p.Layout(Damage.New, l => l with { Copies = 0 }), "must be one or more"),
        ["a stock cut for nothing"] = (p => p.Layout(Damage.New, l => l with { Pieces = [], Cuts = [] }), "is cut for no part"),
        ["a part that is not requested"] = (p => p.Piece("A", a => a with { Part = "Z" }), "isn't a part in the request"),
        ["a part of another material"] = (p => p.Piece("A", a => a with { Part = "P" }), "is another material"),
        ["a part turned across its grain"] = (
            p => p.Piece("P", a => a with { Turned = true, Dx = a.Dy, Dy = a.Dx }),
            "is turned across the grain"
        ),
        ["a board part turned"] = (p => p.Piece("A", a => a with { Turned = true }), "is turned across the grain"),
        ["a piece a sixty-fourth too long"] = (
            p => p.Piece("A", a => a with { Dx = a.Dx + Damage.SixtyFourth }),
            "is not the size wanted"
        ),
        ["a piece a tick too narrow"] = (
            p => p.Piece("P", a => a with { Dy = a.Dy - Length.FromTicks(1) }),
            "is not the size wanted"
        ),
        ["a piece in the margin of a new sheet"] = (p => p.Piece("P", a => a with { X = Length.Zero }), "leaves the usable wood"),
        ["a piece beyond the end"] = (p => p.Piece("A", a => a with { X = Some.Of("57") }), "leaves the usable wood"),
        ["pieces on top of each other"] = (p => p.Piece("A", a => a with { X = Some.Of("1/2") }), "cannot be freed"),
        ["pieces a tick closer than the kerf"] = (p => p.Layout(Damage.New, Closer), "cannot be freed"),

        // Leftovers.
        ["a leftover outside the stock"] = (
            p => p.Kept(Damage.Ply, left => left with { Dx = Some.Of("96") }),
            "outside the stock"
        ),
        ["a leftover without size"] = (p => p.Kept(Damage.Ply, left => left with { Dx = Length.Zero }), "outside the stock"),
        ["a kept leftover on a piece"] = (
            p => p.Kept(Damage.New, left => left with { X = left.X - Some.Of("2") }),
            "overlaps a piece"
        ),
        ["a kept leftover that touches a piece"] = (
            p => p.Kept(Damage.New, left => left with { X = left.X - Length.FromTicks(1) }),
            "overlaps a piece"
        ),
        ["a sliver kept"] = (
            p => p.Kept(Damage.Ply, left => left with { Dy = Some.Of("5") }),
            "smaller than what is worth keeping"
        ),
        ["a short end kept"] = (
            p => p.Kept(Damage.New, left => left with { X = Some.Of("90"), Dx = Some.Of("6") }),
            "smaller than what is worth keeping"
        ),

        ["a strip less than half as wide as its board kept"] = (
            p => p.Kept(Damage.New, left => left with { Dy = Some.Of("1 15/64") }),
            "smaller than what is worth keeping"
        ),
        ["an end of a board worth keeping called waste"] = (
            p => p.Kept(Damage.New, left => left with { Keep = false }),
            "marked as waste that is worth keeping"
        ),
        ["a strip half as wide as its board called waste"] = (
            p => p.Kept(Damage.New, left => left with { Dy = Some.Of("1 1/4"), Keep = false }),
            "marked as waste that is worth keeping"
        ),
        ["a part of a sheet worth keeping called waste"] = (
            p => p.Kept(Damage.Ply, left => left with { Dx = Some.Of("6"), Dy = Some.Of("12"), Keep = false }),
            "marked as waste that is worth keeping"
        ),

        // Cuts.
        ["a cut out of order"] = (p => p.Cut(Damage.Ply, 1, cut => cut with { N = 7 }), "is out of order"),
        ["a cut into a piece that is not there"] = (
            p => p.Cut(Damage.Ply, ^1, cut => cut with { Piece = "9b" }),
            "is not in hand"
        ),
        ["a cut beside the piece"] = (
            p => p.Cut(Damage.New, ^1, cut => cut with { At = Some.Of("96") }),
            "is not on the piece in hand"
        ),
        ["a setting off by a sixty-fourth"] = (
            p => p.Cut(Damage.New, ^1, cut => cut with { At = cut.At + Damage.SixtyFourth }),
            "is not cut free"
        ),
        ["a rip where a crosscut is meant"] = (
            p => p.Cut(Damage.New, ^1, cut => cut with { Kind = CutKind.Rip }),
            "is not on the piece in hand"
        ),
        ["the last cut forgotten"] = (p => p.Layout(Damage.Ply, l => l with { Cuts = l.Cuts[..^1] }), "is not cut free"),
        ["a name given twice"] = (p => p.Cut(Damage.New, ^1, cut => cut with { First = "1a" }), "is a name given before"),
        ["a piece without a name"] = (
            p => p.Cut(Damage.New, ^1, cut => cut with { Second = null }),
            "leaves a piece without a name"
        ),
        ["a finished part not named"] = (
            p => p.Cut(Damage.New, ^1, cut => cut with { FirstPart = null, SecondPart = null }),
            "is not named"
        ),
        ["a finished part named as another"] = (p => p.Cut(Damage.New, ^1, cut => cut with { FirstPart = "P" }), "is not named"),
        ["waste called a part"] = (p => p.Cut(Damage.New, 0, cut => cut with { FirstPart = "A" }), "finishes more parts"),

        // Counts, cost and claims.
        ["a piece missing"] = (p => p.Layout(Damage.New, l => l with { Pieces = l.Pieces[..1] }), "do not come to 2"),
        ["a piece both placed and unplaced"] = (p => p with { Unplaced = [new("A", 1, "forgotten")] }, "do not come to 2"),
        ["an unplaced part without a reason"] = (p => p with { Unplaced = [new("A", 1, " ")] }, "lacks a quantity or a reason"),
        ["an unplaced part nobody wants"] = (p => p with { Unplaced = [new("Z", 1, "why not")] }, "isn't a part in the request"),
        ["more stock than there is"] = (p => p.Layout(Damage.Ply, l => l with { Copies = 3 }), "are used and 2 are there"),
        ["a purchase forgotten"] = (p => p with { Buy = p.Buy[..1] }, "are on the shopping list"),
        ["an offcut bought"] = (p => p with { Buy = [.. p.Buy, new("B1", 1, Money.Zero)] }, "are on the shopping list"),
        ["a purchase of something else"] = (
            p => p with { Buy = [.. p.Buy, new("other", 1, Money.Zero)] },
            "isn't a stock in the request"
        ),
        ["a wrong price"] = (
            p => p with { Buy = [p.Buy[0] with { Cost = Money.From(5) }, .. p.Buy[1..]] },
            "is not 1 times 6.00"
        ),
        ["a wrong sum"] = (p => p with { Cost = Money.From(65.99m) }, "is not what the stock comes to"),
        ["a bound above the cost"] = (p => p with { CostLowerBound = Money.From(67) }, "is more than the cost"),
        ["a claim without proof"] = (p => p with { CostLowerBound = Money.From(65) }, "the bound does not meet the cost"),
        ["incomplete with everything placed"] = (
            p => p with { Status = PlanStatus.Incomplete },
            "does not agree with what is unplaced"
        ),
        ["another unit"] = (p => p with { Unit = LengthUnit.Millimetre }, "is not the request's"),
    };

    public static TheoryData<string> Names => [.. Ways.Keys];

    public static CutPlan Broken(string way) => Ways[way].Spoil(Damage.Sound);

    [Fact]
    public void The_plan_is_sound_before_it_is_broken()
    {
        Assert.Equal(PlanStatus.Proven, Damage.Sound.Status);
        Assert.Empty(PlanVerifier.Check(Damage.Request, Damage.Sound));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_broken_plan_is_found_out(string way)
    {
        var (spoil, message) = Ways[way];
        var faults = PlanVerifier.Check(Damage.Request, spoil(Damage.Sound));
        Assert.Contains(faults, fault => fault.Message.Contains(message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Damage.New, "6", "2 1/2", false)]
    [InlineData(Damage.New, "12", "1 1/4", true)]
    [InlineData(Damage.New, "12", "1 15/64", false)]
    [InlineData(Damage.Ply, "12", "6", true)]
    [InlineData(Damage.Ply, "6", "12", true)]
    [InlineData(Damage.Ply, "11 63/64", "11 63/64", false)]
    [InlineData(Damage.Ply, "40", "5 63/64", false)]
    public void A_leftover_is_kept_just_when_the_rule_in_words_says_so(string stock, string dx, string dy, bool keep)
    {
        CutPlan Marked(bool kept) =>
            Damage.Sound.Kept(stock, left => left with { Dx = Some.Of(dx), Dy = Some.Of(dy), Keep = kept });
        bool IsRefused(bool kept) =>
            PlanVerifier
                .Check(Damage.Request, Marked(kept))
                .Any(fault => fault.Message.Contains("worth keeping", StringComparison.Ordinal));
        Assert.Equal((false, true), (IsRefused(keep), IsRefused(!keep)));
        var material = Damage.Request.Materials.Single(one => Damage.Request.Stock.Single(s => s.Id == stock).Material == one.Id);
        Assert.Equal(keep, Damage.Request.Keep.Keeps(material, Some.Of(dx), Some.Of(dy)));
    }

    private static Layout Closer(Layout layout) =>
        layout with
        {
            Pieces = [layout.Pieces[0], layout.Pieces[1] with { X = layout.Pieces[1].X - Length.FromTicks(1) }],
        };
}
