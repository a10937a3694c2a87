using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>Documents that were read are kept while their texts are the same.</summary>
public sealed class ReadPlansTests
{
    private readonly ReadPlans kept = new();
    private int reads;

    [Fact]
    public void The_same_texts_are_read_once()
    {
        var plan = Plan(Guid.CreateVersion7());
        Assert.Equal(1, Of(plan));
        Assert.Equal(1, Of(Plan(plan.Id)));
    }

    [Theory]
    [InlineData("order")]
    [InlineData("request")]
    [InlineData("names")]
    [InlineData("plan")]
    public void A_text_that_differs_is_read(string which)
    {
        var id = Guid.CreateVersion7();
        Of(Plan(id));
        Assert.Equal(2, Of(Plan(id, which)));
        Assert.Equal(3, Of(Plan(id)));
    }

    [Fact]
    public void Texts_that_run_into_each_other_are_not_the_same()
    {
        var id = Guid.CreateVersion7();
        Of(Plan(id, order: "ab", request: "c"));
        Assert.Equal(2, Of(Plan(id, order: "a", request: "bc")));
    }

    [Fact]
    public void The_plan_used_longest_ago_is_let_go()
    {
        var ids = Enumerable.Range(0, ReadPlans.Most).Select(_ => Guid.CreateVersion7()).ToList();
        foreach (var id in ids)
            Of(Plan(id));
        Of(Plan(ids[0]));
        Of(Plan(Guid.CreateVersion7()));
        Assert.Equal(ReadPlans.Most, kept.Count);
        var before = reads;
        Assert.Equal(before, Of(Plan(ids[0])));
        Assert.Equal(before + 1, Of(Plan(ids[1])));
    }

    private int Of(StoredPlan plan)
    {
        kept.Of(
            plan,
            _ =>
            {
                reads++;
                return (null!, null!);
            }
        );
        return reads;
    }

    private static StoredPlan Plan(Guid id, string changed = "", string order = "o", string request = "r") =>
        new()
        {
            Id = id,
            Name = "Bench",
            OrderJson = order + (changed == "order" ? "2" : ""),
            RequestJson = request + (changed == "request" ? "2" : ""),
            NamesJson = "n" + (changed == "names" ? "2" : ""),
            PlanJson = "p" + (changed == "plan" ? "2" : ""),
            RequestHash = "",
            PlannerVersion = "",
        };
}
