using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Operations on parts of which nothing is known but their sizes.</summary>
internal static class PlainParts
{
    private const int SettingMinutes = 10;
    private const double CutMinutes = 4;
    private const double EaseMinutes = 2;

    public static IEnumerable<Operation> Of(ImmutableArray<PlainPart> parts)
    {
        var rough = parts.Where(one => one.RoughLength > one.Length || one.RoughWidth > one.Width).ToList();
        if (rough.Count > 0)
            yield return new(Stage.Size, Size(rough));
        if (parts.IsEmpty)
            yield break;
        yield return new(Stage.Ease, Ease(parts));
    }

    private static WorkStep Size(List<PlainPart> parts)
    {
        var figures = new FigureList();
        foreach (var one in parts)
        {
            if (one.RoughLength > one.Length)
                figures.Add("Length", one.Mark, one.Length);
            if (one.RoughWidth > one.Width)
                figures.Add("Width", one.Mark, one.Width);
        }

        return new(
            "size:parts",
            WorkPhase.Parts,
            WorkAction.TrimToSize,
            "Cut the parts to their finished size",
            ["Set each stop once and cut all parts of that size.", "Leave extra length on what you trim after it is glued."],
            Marks(parts),
            [],
            WorkEffort.Minutes(SettingMinutes, CutMinutes, Count(parts))
        )
        {
            Tool = "Table saw, and miter saw with a stop",
            Settings = figures.Figures,
            Cautions = [Cautions.Guards, Cautions.TrappedCutoff],
        };
    }

    private static WorkStep Ease(ImmutableArray<PlainPart> parts) =>
        new(
            "ease-edges",
            WorkPhase.Parts,
            WorkAction.EaseEdges,
            "Ease the edges",
            ["Break every edge that hands will touch. Leave alone the edges where parts meet: they must stay sharp."],
            Marks(parts),
            [],
            WorkEffort.Minutes(SettingMinutes, EaseMinutes, Count(parts))
        )
        {
            Tool = "Sanding block, or trim router with a small round-over bit",
            Cautions = [ShopCautions.Router],
            Source = OperationSources.EaseLate,
        };

    private static int Count(IEnumerable<PlainPart> parts) => parts.Sum(one => one.Quantity);

    private static ImmutableArray<string> Marks(IEnumerable<PlainPart> parts) =>
        [.. parts.Select(one => one.Mark).Distinct(StringComparer.Ordinal)];
}
