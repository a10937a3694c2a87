using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Faces that can't be reached once the parts are joined, sanded before glue.</summary>
internal sealed class SandFamily : IOperationFamily
{
    private const int SettingMinutes = 10;
    private const double PartMinutes = 4;

    // These come apart again, or are not held: what they hold is sanded with the rest.
    private static readonly JointKind[] Loose =
    [
        JointKind.Hinged,
        JointKind.Sliding,
        JointKind.Resting,
        JointKind.Beveled,
        JointKind.Slotted,
    ];

    public IEnumerable<Operation> Of(PieceWork work)
    {
        // A panel of strips is flattened by itself.
        var strips = GluedPanels.Glued(work.Piece).SelectMany(marks => marks).ToHashSet(StringComparer.Ordinal);
        var joined = work
            .Joints.Where(one => !Loose.Contains(one.Kind))
            .SelectMany(one => new[] { one.From.Mark, one.Into.Mark })
            .Except(strips, StringComparer.Ordinal)
            .ToHashSet(StringComparer.Ordinal);
        var pieces = work.Workpieces.Where(one => one.Part.FacesToFinish.Length > 0 && joined.Contains(one.Mark)).ToList();
        return pieces.Count == 0 ? [] : [new Operation(Stage.Sand, Step(pieces, work.Choices))];
    }

    private static WorkStep Step(List<Workpiece> pieces, WorkChoices choices) =>
        new(
            "sand-inside",
            WorkPhase.Parts,
            WorkAction.Sand,
            "Sand the faces that you can't reach later",
            [
                $"Sand with the grain, grit {Grits.Told(choices)}, the faces that lie inside once the parts are joined.",
                "Keep off tongues, tenons and the edges and ends that meet another part: sanding rounds them.",
            ],
            [.. pieces.Select(one => one.Mark)],
            [],
            WorkEffort.Minutes(SettingMinutes, PartMinutes, pieces.Count)
        )
        {
            Tool = "Random orbit sander, or a sanding block",
            Face = "inside faces",
            Cautions = [Cautions.Dust],
            Source = OperationSources.SandThenGlue,
        };
}

/// <summary>Grits from the first to the last, none left out that is more than half again finer.</summary>
internal static class Grits
{
    // Common practice: 150 to 180 before paint or stain, to 220 before a clear finish.
    private const int UsualEnd = 180;

    private static readonly ImmutableArray<int> Sold = [60, 80, 100, 120, 150, 180, 220, 320];

    /// <summary>The grits in words: <c>80, 120 and 180</c>.</summary>
    public static string Told(WorkChoices choices) =>
        PartWords.Join([
            .. Of(choices.StartGrit, choices.EndGrit ?? UsualEnd).Select(one => one.ToString(CultureInfo.InvariantCulture)),
        ]);

    /// <summary>The grits.</summary>
    public static ImmutableArray<int> Of(int first, int last)
    {
        var grits = ImmutableArray.CreateBuilder<int>();
        grits.Add(first);
        while (grits[^1] < last)
        {
            var now = grits[^1];
            var next = Sold.Where(one => one > now && one * 2 <= now * 3).DefaultIfEmpty(last).Max();
            grits.Add(Math.Min(next, last));
        }

        return grits.ToImmutable();
    }
}
