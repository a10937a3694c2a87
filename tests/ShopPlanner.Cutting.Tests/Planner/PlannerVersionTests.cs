using System.Security.Cryptography;
using System.Text;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// The version of the planner is true: as long as it stays the same, the same requests get the same plans. The search ends after
/// a number of rounds and no clock is asked, so that a fast machine and a slow one come to one plan.
/// </summary>
public sealed class PlannerVersionTests
{
    private static readonly SearchControl Steps = new()
    {
        Iterations = 40,
        Workers = 1,
        Seed = 3,
    };

    /// <summary>The plans that <see cref="CutPlanner.Version"/> makes: the first half of a SHA-256 of each as a document.</summary>
    private static readonly Dictionary<string, string> Pinned = new()
    {
        ["boards"] = "b9b4d970dee8e0db05b167bd4e2e3e41",
        ["boards of limited stock"] = "b62dcd53c19e041b9eeebe0cbbc97b8c",
        ["many boards"] = "ba51cdcac7a74eff4a5c25f9235c3023",
        ["ripped boards"] = "940cce510f288794cc4ae93ac82327b6",
        ["sheets"] = "d5653d358418a2a2454805bad7b02919",
        ["many sheets"] = "0fb546a8f926ba572a868e08e6566a0f",
        ["sheets of limited stock"] = "8612718bc1e2734eeee01ff229c73e18",
        ["sheets without a price"] = "deda67dc2e637416e3164e58da718dbc",
        ["sheets within limits of saw, store and car"] = "15b3c6a7f6fcec14229b0823b07013c5",
        ["boards and sheets"] = "2ce1a4055ced0a145379ed7ca97f40a8",
    };

    public static TheoryData<string> Names() => [.. PinnedRequests.All().Select(one => one.Name)];

    [Fact]
    public void Every_request_has_its_plan_pinned() =>
        Assert.Equal(PinnedRequests.All().Select(one => one.Name).Order(), Pinned.Keys.Order());

    [Theory]
    [MemberData(nameof(Names))]
    public void A_version_of_the_planner_makes_the_same_plan_of_the_same_request(string name)
    {
        var request = PinnedRequests.All().Single(one => one.Name == name).Request;
        var hash = Hash(Some.Planned(request, Steps));
        Assert.True(
            Pinned.GetValueOrDefault(name) == hash,
            $"The plan of '{name}' is {hash} now. If plans change on purpose, raise CutPlanner.Version (now "
                + $"\"{CutPlanner.Version}\") and pin the new plans here; if not, the change has a fault."
        );
    }

    private static string Hash(CutPlan plan) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CutPlanJson.Write(plan with { Seconds = 0 }))))[..32];
}
