using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making;

/// <summary>No work is told twice, and none is lost.</summary>
public sealed class ToldOnceTests
{
    public static TheoryData<string, string> Finished()
    {
        var data = new TheoryData<string, string>();
        foreach (var name in DesignFiles.Names)
        foreach (var finish in new[] { "paint", "clear", FinishChoices.None })
            data.Add(name, finish);
        return data;
    }

    [Theory, MemberData(nameof(Finished))]
    public void Sanding_scraping_and_banding_are_told_once(string name, string finish)
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!;
        var choices = WorkChoices.Usual with { Finish = finish };
        var plan = WorkPlanner.Of(piece, choices);
        var isGlued = AssemblyOrder.Of(piece, WorkChoices.Usual).Steps.Any(step => step.Id == "clean:glue");
        Assert.Equal(isGlued ? 1 : 0, plan.Steps.Count(step => step.Action == WorkAction.CleanGlue));
        // A glued panel is made flat before it is cut to size; all other sanding is the finish's own.
        var sanded = plan
            .Steps.Where(step => step is { Action: WorkAction.Sand, Phase: < WorkPhase.Assembly })
            .Where(step => !step.Id.StartsWith("flatten:", StringComparison.Ordinal));
        Assert.All(sanded, step => Assert.Equal(WorkPhase.FinishBefore, step.Phase));
        Assert.All(OperationList.Of(piece, choices), work => Assert.Contains(plan.Steps, step => step.Id == work.Id));
        var band = piece.Hardware.Where(item => item.Name.StartsWith("Edge band", StringComparison.Ordinal)).ToList();
        if (band.Count > 0)
            Assert.Single(plan.Steps, step => step is { Action: WorkAction.BandEdges, Joints.IsEmpty: true });
        foreach (var item in band)
        {
            var user = Assert.Single(plan.Steps, step => step.Fasteners.Any(one => one.Name == item.Name));
            Assert.Equal(WorkAction.BandEdges, user.Action);
            Assert.Equal(item.Quantity, user.Fasteners.Single(one => one.Name == item.Name).Quantity);
        }

        Assert.All(plan.Steps, step => Assert.All(step.After, id => Assert.Contains(plan.Steps, one => one.Id == id)));
    }
}
