using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making;

/// <summary>What a design says beside the order of work reaches whoever builds by that order.</summary>
public sealed class NotesTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void What_only_the_design_knows_is_read_first(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var steps = WorkPlanner.Of(piece, WorkChoices.Usual).Steps;
        Assert.Equal(piece.Steps, steps.Where(step => step.Action == WorkAction.Read).SelectMany(step => step.Says));
        Assert.Equal(piece.Steps.IsEmpty, steps[0].Action != WorkAction.Read);
    }

    [Fact]
    public void A_mattress_is_measured_before_a_bed_is_cut_to_it()
    {
        var steps = WorkPlanner.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf("bed"))), WorkChoices.Usual).Steps;
        Assert.Contains(steps[0].Says, says => says.StartsWith("Measure the mattress", StringComparison.Ordinal));
    }
}
