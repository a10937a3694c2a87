using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>What the judge says of the designs at 300 random values and at all corners of their limits: nothing that cannot be
/// built, and nothing that falls over.</summary>
public sealed class DesignRangeTests
{
    private const int Trials = 300;

    public static TheoryData<string> Names =>
        [
            "post-and-rail-cabinet",
            "nightstand",
            "media-console",
            "floating-shelf",
            "toy-chest",
            "tray",
            "outdoor-bench",
            "bed",
            "desk",
            "table",
            "sideboard",
        ];

    [Theory, MemberData(nameof(Names))]
    public void It_has_nothing_to_fix_within_its_limits(string name)
    {
        var document = DesignFiles.Read(name);
        foreach (var values in DesignValues.Of(document, Trials, 20261128))
        {
            var said = name + ": " + string.Join(", ", values.Select(one => one.Key + "=" + one.Value));
            var evaluation = DesignEvaluator.Evaluate(document, values);
            Assert.True(evaluation.Faults.IsEmpty, said + " " + string.Join("; ", evaluation.Faults));
            var wrong = PieceJudge.Of(evaluation.Piece!).Where(one => one.Severity >= Severity.Anchor).ToList();
            Assert.True(wrong.Count == 0, said + " " + string.Join("; ", wrong.Select(one => one.Text)));
        }
    }
}
