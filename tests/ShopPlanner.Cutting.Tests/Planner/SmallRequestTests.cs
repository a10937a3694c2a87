using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Whatever is asked, a plan comes back and passes the verifier.</summary>
public sealed class SmallRequestTests
{
    private const int Requests = 800;
    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(20), Workers = 1 };
    private static readonly SearchControl Rounds = new() { Iterations = 30, Workers = 1 };

    [Fact]
    public void Every_small_request_gets_a_plan_that_passes_the_verifier() => Check(SmallRequests.All, Brief, Requests);

    [Fact]
    public void A_small_request_planned_without_a_clock_passes_too() => Check(SmallRequests.All, Rounds, Requests / 4);

    [Fact]
    public void Limits_of_saw_store_and_car_change_nothing_about_that() => Check(SmallRequests.Limited, Brief, Requests);

    [Fact]
    public void Planning_again_after_an_edit_passes_too() =>
        SmallRequests.Edited.Sample(
            edit =>
            {
                var (before, after) = edit;
                Some.Planned(after, Brief with { Earlier = new(before, Some.Planned(before, Brief)) });
            },
            iter: Requests / 2,
            threads: 1,
            print: edit => CutRequestJson.Write(edit.Before) + CutRequestJson.Write(edit.After)
        );

    private static void Check(Gen<CutRequest> requests, SearchControl control, int count) =>
        requests.Sample(request => Some.Planned(request, control), iter: count, threads: 1, print: CutRequestJson.Write);
}
