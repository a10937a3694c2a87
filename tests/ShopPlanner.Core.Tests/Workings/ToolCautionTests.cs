namespace ShopPlanner.Core.Tests.Workings;

/// <summary>No answer without the caution of its tool.</summary>
public sealed class ToolCautionTests
{
    public static TheoryData<string, string, string[]> Tools() =>
        new()
        {
            { "screws", "drilling", ["thickness=3/4", "into=1 1/2"] },
            { "dowels", "drilling", ["thickness=3/4", "width=4"] },
            { "pins", "drilling", ["height=30"] },
            { "hinges", "large-bit", ["height=30", "width=12"] },
            { "hinges", "drilling", ["height=30", "width=12"] },
            { "spacing", "small-parts", ["span=30", "member=1", "count=3"] },
            { "spacing", "guards", ["span=30", "member=1", "count=3"] },
            { "glue-up", "jointer", ["width=20", "length=40"] },
            { "glue-up", "guards", ["width=20", "length=40"] },
            { "groove", "groove-without-guard", ["stock=3/4"] },
            { "door", "groove-without-guard", ["opening-width=20", "opening-height=30"] },
            { "drawer", "groove-without-guard", ["opening-width=15", "opening-height=6", "opening-depth=21"] },
            { "sag", "shelf-load", ["span=36"] },
            { "stability", "tipping", ["depth=12", "height=30", "weight=40 lb"] },
            { "stability", "wall-fixing", ["depth=12", "height=30", "weight=40 lb"] },
            { "coats", "solvents", ["area=40"] },
            { "coats", "dust", ["area=40"] },
        };

    [Theory]
    [MemberData(nameof(Tools))]
    public void Each_tool_that_an_answer_needs_has_its_caution(string form, string caution, string[] given) =>
        Assert.Contains(Asked.Answer(form, given).Cautions, one => one.Id == caution);
}
