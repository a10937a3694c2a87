using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

public sealed class EditingTests
{
    private static readonly Dictionary<string, string> NoChange = [];

    public static TheoryData<string> Fills => [.. DesignKinds.Fills.Select(one => one.Name)];

    [Fact]
    public void A_change_gives_a_document_that_reads_back_with_the_same_paths()
    {
        var document = DesignFiles
            .Read("bookcase")
            .Split("bays.bays.1", "divider", 3)
            .AddFill("bays.bays.1.bays.2", "adjustable-shelves")
            .AddFill("bays", "doors");
        var again = DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(DesignJson.Write(document))).Document!;
        Assert.Equal(again.AllBays().Select(bay => bay.Path), document.AllBays().Select(bay => bay.Path));
        Assert.Equal(again.Nodes().Select(node => node.Path), document.Nodes().Select(node => node.Path));
        Assert.Equal(
            ["bays", "bays.bays.0", "bays.bays.1", "bays.bays.1.bays.0", "bays.bays.1.bays.1", "bays.bays.1.bays.2"],
            document.AllBays().Select(bay => bay.Path)
        );
    }

    [Theory, MemberData(nameof(Fills))]
    public void Each_fill_can_be_put_in_a_bay_and_taken_out_again(string kind)
    {
        var document = DesignFiles.Read("drawer-chest");
        var empty = document.RemoveFill("bays.fills.1").RemoveFill("bays.fills.0");
        var before = DesignJson.Write(empty);
        var filled = empty.AddFill("bays", kind);
        Assert.Empty(DesignEvaluator.Evaluate(filled, NoChange).Faults);
        Assert.Equal(before, DesignJson.Write(filled.RemoveFill("bays.fills.0")));
    }

    [Fact]
    public void An_empty_text_takes_the_default_and_a_size_that_is_cleared_shares_the_rest()
    {
        var document = DesignFiles.Read("pantry-cupboard").WithMember("bays.fills.0", "gap", " ").WithSize("bays", 0, "");
        Assert.False(document.Bays!.Fills[0].Members.ContainsKey("gap"));
        Assert.Equal(["*", "*"], document.Bays.Sizes);
        Assert.Equal(" ", document.WithMember("bays.fills.0", "material", " ").Bays!.Fills[0].Members["material"]);
    }

    [Fact]
    public void A_role_that_is_used_stays()
    {
        var document = DesignFiles.Read("bookcase");
        Assert.Equal(document, document.RemoveMaterial("face"));
        var free = document.WithMember("frame", "face", "");
        Assert.False(free.Uses("face"));
        Assert.DoesNotContain(free.RemoveMaterial("face").Materials, one => one.Role == "face");
    }

    [Fact]
    public void Values_that_were_set_become_the_designs_own()
    {
        var document = DesignFiles.Read("bookcase").WithValues(new Dictionary<string, string> { ["width"] = "24 1/2" });
        Assert.Equal(Length.FromInches(24.5m), DesignEvaluator.Evaluate(document, NoChange).Piece!.Outside.Dx);
    }

    [Fact]
    public void Limits_by_arithmetic_follow_the_other_values()
    {
        var ranges = DimensionRange.Of(
            DesignFiles.Read("pantry-cupboard"),
            new Dictionary<string, string> { ["height"] = "50", ["width"] = "12" }
        );
        var lower = ranges.Single(one => one.Dimension.Name == "lower");
        Assert.Equal(
            (Length.FromInches(10).Ticks, Length.FromInches(28.5m).Ticks, false),
            (lower.Least, lower.Most, lower.IsSet)
        );
        Assert.Equal(Length.FromInches(18.6m).Ticks, lower.Value);
        Assert.Equal(
            (null, true),
            (ranges.Single(one => one.Dimension.Name == "width").Value, ranges.Single(one => one.Dimension.Name == "width").IsSet)
        );
    }

    [Fact]
    public void A_frame_is_changed_to_each_other_and_back()
    {
        var document = DesignFiles.Read("bookcase");
        foreach (var kind in DesignKinds.Frames.Where(one => one.Name != "none"))
            Assert.Empty(DesignEvaluator.Evaluate(document.WithFrame(kind.Name) with { Bays = null }, NoChange).Faults);
        var none = document.WithFrame("none") with { Bays = null };
        Assert.Equal("parts", Assert.Single(DesignEvaluator.Evaluate(none, NoChange).Faults).Field);
        Assert.Empty(DesignEvaluator.Evaluate(document.WithTop("sheet-top").WithTop(null), NoChange).Faults);
    }
}
