using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>A working asked of a project's or a design's own parts.</summary>
/// <param name="Form">The working.</param>
/// <param name="Questions">As often as it is asked: once, or for each wood or panel; none where nothing of the parts asks for
/// it.</param>
/// <param name="Notes">What isn't counted and why, each a sentence.</param>
public sealed record PartTotal(WorkingForm Form, ImmutableArray<PartQuestion> Questions, ImmutableArray<string> Notes)
{
    /// <summary>The answers added up, where they can be; null where they cannot, or one of them is missing.</summary>
    public Working<double>? Sum { get; init; }

    /// <summary>From where to where the sum may lie; null where it has no range.</summary>
    public (Figure Least, Figure Most)? Range { get; init; }

    /// <summary>Why <see cref="Range"/> is as wide as it is.</summary>
    public SourceNote? RangeSource { get; init; }

    /// <summary>What follows from the sum.</summary>
    public ImmutableArray<Verdict> Verdicts { get; init; } = [];
}

/// <summary>A question that the parts answer by themselves: entered by hand, <see cref="Given"/> gives the same
/// outcome.</summary>
/// <param name="About">What it is about: <c>Top</c>, <c>Red oak</c>.</param>
/// <param name="Given">Texts by key.</param>
/// <param name="Added">What was added up, each part with its share.</param>
/// <param name="Outcome">What the form makes of it.</param>
public sealed record PartQuestion(
    string About,
    ImmutableSortedDictionary<string, string> Given,
    ImmutableArray<PartAdded> Added,
    FormOutcome Outcome
);

/// <summary>Parts that add up to one figure of a question.</summary>
/// <param name="Key">The key that takes the figure.</param>
/// <param name="Name">What the figure is: <c>Area to finish</c>.</param>
/// <param name="Figure">As it is entered.</param>
/// <param name="Shares">Each part's; they add up to it as they are shown.</param>
public sealed record PartAdded(string Key, string Name, Figure Figure, ImmutableArray<PartShare> Shares);

/// <summary>What a part adds.</summary>
/// <param name="Part">Name and number: <c>Shelf × 3</c>.</param>
/// <param name="How">From what: <c>2 faces, 1 long edge of 30″ × 11 ¼″ × ¾″</c>.</param>
/// <param name="Share">Its figure, as it is shown.</param>
public sealed record PartShare(string Part, string How, Figure Share);
