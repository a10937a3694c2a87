using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>What operations share: their minutes, cautions for small parts, test pieces, waits for glue.</summary>
internal static class WorkEffort
{
    // As the caution for small parts has it.
    private static readonly Length Short = Length.FromInches(12);
    private static readonly Length Narrow = Length.FromInches(3);

    /// <summary>Minutes at work: for the setting, and for each cut or hole (estimates, common practice).</summary>
    public static int Minutes(int setting, double each, int count) => setting + (int)Math.Ceiling(each * count);

    /// <summary>The cautions, with the one for small parts where a part is one.</summary>
    public static ImmutableArray<Caution> Cautions(IEnumerable<Workpiece> pieces, params ReadOnlySpan<Caution> cautions) =>
        pieces.Any(IsSmall) ? [.. cautions, Calculators.Cautions.SmallParts] : [.. cautions];

    /// <summary>A sentence on trying a setting: on the test pieces of one of the parts, or on an offcut.</summary>
    public static string TryFirst(PieceWork work, IEnumerable<Workpiece> pieces)
    {
        var parts = pieces.Select(one => one.Part.Id).ToHashSet(StringComparer.Ordinal);
        var tests = work
            .Piece.Parts.Where(part =>
                part is { Purpose: PartPurpose.Practice, PracticeFor: { } other, Quantity: > 0 } && parts.Contains(other)
            )
            .Select(part => part.Id)
            .ToList();
        return tests.Count == 0
            ? OffcutTrials.Says
            : $"Try the setting on the test pieces ({string.Join(", ", tests)}) first, until the joint slides together by hand.";
    }

    /// <summary>The wait while glue holds under clamps.</summary>
    /// <param name="clamps">How many are held.</param>
    public static WorkWait InClamps(int clamps) => new("glue in clamps", 60, OperationSources.Clamped) { Clamps = clamps };

    /// <summary>The wait until a glued panel may be planed.</summary>
    /// <param name="clamps">How many are held.</param>
    public static WorkWait GlueHard(int clamps) => new("glue hardens", 24 * 60, OperationSources.Hardened) { Clamps = clamps };

    private static bool IsSmall(Workpiece piece) => piece.Part.Length.Value < Short || piece.Part.Width.Value < Narrow;
}
