using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>A sound plan within limits, and what the verifier says when the plan or the limits are changed.</summary>
public sealed class LimitDamageTests
{
    private static readonly CutRequest Request = Limited
        .Sheets([Limited.Panel("A", "27", "22", 6)], trim: "1/4")
        .By(3, "1/4", "60", "30")
        .Saw("30", "48");

    private static readonly CutPlan Sound = Some.Planned(Request);

    private static readonly Dictionary<
        string,
        (Func<CutRequest, CutRequest> Change, Func<CutPlan, CutPlan> Spoil, string Message)
    > Ways = new()
    {
        ["a car too short"] = (r => r with { Carry = new(Some.Of("40"), Some.Of("30")) }, p => p, "more than the car takes"),
        ["a car too narrow"] = (r => r with { Carry = new(Some.Of("60"), Some.Of("24")) }, p => p, "more than the car takes"),
        ["a store that makes no cuts"] = (r => r with { Store = null }, p => p, "makes no cuts by this request"),
        ["a seller that makes no cuts"] = (
            r => r with { Stock = [r.Stock[0] with { SoldUncut = true }] },
            p => p,
            "is sold without first cuts"
        ),
        ["a store that makes fewer cuts"] = (
            r => r with { Store = new(2, Some.Of("1/4")) },
            p => p,
            "are more cuts by the store than 2"
        ),
        ["a store that is less exact"] = (
            r => r with { Store = new(3, Some.Of("3/8")) },
            p => p,
            "wood left on for its tolerance"
        ),
        ["a sheet that is at home already"] = (
            r => r with { Stock = [r.Stock[0] with { Offcut = true }] },
            p => p,
            "at home already"
        ),
        ["a fence that opens less"] = (r => r.Saw("15", "48"), p => p, "is a wider rip than the saw makes"),
        ["a saw that reaches less"] = (r => r.Saw("30", "40"), p => p, "is a longer crosscut than the saw makes"),
        ["a store cut called one at home"] = (
            r => r,
            p => Cut(p, 2, cut => cut with { ByStore = false }),
            "more than the car takes"
        ),
        ["a cut at home called one by the store"] = (
            r => r with { Store = new(9, Some.Of("1/4")) },
            p => Cut(p, 4, cut => cut with { ByStore = true }),
            "not parallel"
        ),
        ["a store cut after one at home"] = (r => r, p => Cut(p, 0, cut => cut with { ByStore = false }), "after one at home"),
    };

    public static TheoryData<string> Names => [.. Ways.Keys];

    [Fact]
    public void The_plan_has_three_store_cuts_and_is_sound() => Assert.Equal(3, Assert.Single(Sound.Layouts).StoreCuts().Length);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_limit_overstepped_is_found_out(string way)
    {
        var (change, spoil, message) = Ways[way];
        var faults = PlanVerifier.Check(change(Request), spoil(Sound));
        Assert.Contains(faults, fault => fault.Message.Contains(message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheet_too_large_for_the_car_is_found_out_without_any_cut()
    {
        var request = Limited.Sheets([Limited.Panel("A", "96", "48")]);
        Assert.Contains(
            PlanVerifier.Check(request.By(longest: "60", widest: "30"), Some.Planned(request)),
            fault => fault.Message.Contains("more than the car takes", StringComparison.Ordinal)
        );
    }

    private static CutPlan Cut(CutPlan plan, int index, Func<Cut, Cut> spoil) =>
        plan with
        {
            Layouts = [plan.Layouts[0] with { Cuts = plan.Layouts[0].Cuts.SetItem(index, spoil(plan.Layouts[0].Cuts[index])) }],
        };
}
