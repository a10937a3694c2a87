using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Random edits of random jobs: the plan that begins with the one before passes the verifier, and is no dearer where less
/// is wanted.</summary>
public sealed class EditPropertyTests
{
    private static readonly SearchControl OneRound = new() { Iterations = 1, Workers = 1 };

    private static readonly Gen<Func<CutRequest, CutRequest>> Less = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100], Reduced);

    private static readonly Gen<Func<CutRequest, CutRequest>> Any = Gen.Select(Gen.Int[0, 8], Gen.Int[0, 100], Changed);

    [Fact]
    public void Whatever_the_edit_the_plan_can_be_cut() =>
        Gen.Select(PlanPropertyTests.Requests, Any, Any)
            .Sample(
                (request, one, other) =>
                {
                    var plan = Some.Planned(request, OneRound);
                    Some.Planned(other(one(request)), OneRound with { Earlier = new(request, plan) });
                },
                iter: 150,
                threads: 1
            );

    [Fact]
    public void Where_less_is_wanted_the_plan_is_no_dearer() =>
        Gen.Select(PlanPropertyTests.Requests, Less, Less)
            .Sample(
                (request, one, other) =>
                {
                    var plan = Some.Planned(request, OneRound);
                    var again = Some.Planned(other(one(request)), OneRound with { Earlier = new(request, plan) });
                    Assert.True(plan.Status == PlanStatus.Incomplete || again.Unplaced.IsEmpty);
                    Assert.True(
                        plan.Status == PlanStatus.Incomplete || again.Cost <= plan.Cost,
                        $"{again.Cost} after {plan.Cost}"
                    );
                },
                iter: 150,
                threads: 1
            );

    // Nothing in these makes a layout of the plan before impossible or its stock dearer.
    private static Func<CutRequest, CutRequest> Reduced(int kind, int chance) =>
        kind switch
        {
            0 => request => WithPart(request, chance, part => part with { Quantity = Math.Max(1, part.Quantity - 1) }),
            1 => request =>
                request.Parts.Length < 2
                    ? request
                    : request with
                    {
                        Parts = request.Parts.RemoveAt(chance % request.Parts.Length),
                    },
            2 => request =>
                WithPart(
                    request,
                    chance,
                    part => part with { Length = Length.FromTicks(Math.Max(1, part.Length.Ticks * 9 / 10)) }
                ),
            _ => request => request with { Saw = request.Saw with { Kerf = Length.FromTicks(request.Saw.Kerf.Ticks / 2) } },
        };

    private static Func<CutRequest, CutRequest> Changed(int kind, int chance) =>
        kind switch
        {
            4 => request => WithPart(request, chance, part => part with { Quantity = part.Quantity + (chance % 5) }),
            5 => request => WithPart(request, chance, part => part with { Length = Length.FromTicks(part.Length.Ticks * 5 / 4) }),
            6 => request =>
                request with
                {
                    Stock = request.Stock.SetItem(
                        chance % request.Stock.Length,
                        Other(request.Stock[chance % request.Stock.Length], chance)
                    ),
                },
            7 => request =>
                request with
                {
                    Stock = request.Stock.Length < 2 ? request.Stock : request.Stock.RemoveAt(chance % request.Stock.Length),
                },
            8 => request => request with { Saw = new(Some.Of("1/4"), Some.Of("1"), Some.Of("1/2")) },
            _ => Reduced(kind, chance),
        };

    private static CutStock Other(CutStock stock, int chance) =>
        chance % 2 == 0
            ? stock with
            {
                Length = Length.FromTicks(stock.Length.Ticks * 4 / 5),
            }
            : stock with
            {
                Price = Money.From(chance),
                Quantity = 1 + (chance % 3),
            };

    private static CutRequest WithPart(CutRequest request, int chance, Func<CutPart, CutPart> edit)
    {
        var at = chance % request.Parts.Length;
        return request with { Parts = request.Parts.SetItem(at, edit(request.Parts[at])) };
    }
}
