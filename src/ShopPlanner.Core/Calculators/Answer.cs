using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What a form answers.</summary>
/// <param name="Results">The figures asked for, the main one first; at least one.</param>
public sealed record Answer(ImmutableArray<Working> Results)
{
    /// <summary>What follows from the figures, the most severe first.</summary>
    public ImmutableArray<Verdict> Verdicts { get; init; } = [];

    /// <summary>Where the work can hurt.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>Parts that the figures make, to be added to a project; often none.</summary>
    public ImmutableArray<ProposedPart> Parts { get; init; } = [];
}

/// <summary>A statement that follows from the figures: what happens, why, what to do.</summary>
/// <param name="Severity">How severe it is.</param>
/// <param name="Text">A plain sentence.</param>
public sealed record Verdict(Severity Severity, string Text);

/// <summary>A part that a working proposes.</summary>
/// <param name="Name">As a person calls it.</param>
/// <param name="Length">Along the grain, finished.</param>
/// <param name="Width">Across the grain, finished.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="Quantity">How many.</param>
public sealed record ProposedPart(string Name, Length Length, Length Width, Length Thickness, int Quantity)
{
    /// <summary>Added to the length, to be trimmed later.</summary>
    public Length CutLongBy { get; init; }

    /// <summary>Added to the width, to be trimmed later.</summary>
    public Length CutWideBy { get; init; }
}
