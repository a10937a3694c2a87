using System.Collections.Immutable;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Checking;

/// <summary>How widely a design is checked.</summary>
/// <param name="Changed">Values that are set in any case, by dimension.</param>
/// <param name="AtRandom">How many sets of values within the limits are tried, beside the design as it stands.</param>
/// <param name="Corners">Whether all combinations of least and greatest values are tried too.</param>
/// <param name="Seed">Of the random values: the same seed tries the same.</param>
public sealed record CheckOrder(ImmutableDictionary<string, string> Changed, int AtRandom, bool Corners, int Seed = 1);

/// <summary>Something that the judge says, at some values.</summary>
/// <param name="Severity">How severe it is.</param>
/// <param name="Text">As it is said at <paramref name="Values"/>; elsewhere its figures may differ.</param>
/// <param name="Part">Id of the part it is about; null for the piece.</param>
/// <param name="Times">At how many of the values tried it is said.</param>
/// <param name="Values">The first values at which it is said; empty for the design as it stands.</param>
public sealed record CheckFinding(
    Severity Severity,
    string Text,
    string? Part,
    int Times,
    ImmutableDictionary<string, string> Values
);

/// <summary>Values at which the design cannot be worked out, though each lies within its limits.</summary>
/// <param name="Fault">The first fault; its field names the place.</param>
/// <param name="Times">At how many of the values tried it comes up.</param>
/// <param name="Values">The first such values.</param>
public sealed record CheckFault(Fault Fault, int Times, ImmutableDictionary<string, string> Values);

/// <summary>What a check found.</summary>
/// <param name="Tried">How many sets of values were tried, the design as it stands among them.</param>
/// <param name="Faults">Where it cannot be worked out.</param>
/// <param name="Findings">What the judge says, the most severe first; what holds is left out.</param>
public sealed record CheckReport(int Tried, ImmutableArray<CheckFault> Faults, ImmutableArray<CheckFinding> Findings)
{
    /// <summary>Whether every set of values gives a piece that can be built and used.</summary>
    public bool Passes => Faults.IsEmpty && Findings.All(one => one.Severity != Severity.Fails);
}

/// <summary>Checks a design at many values, so that it can be handed on: everything that the judge says, with the values at
/// which it
/// says so.</summary>
public static partial class DesignCheck
{
    /// <summary>Runs a check.</summary>
    /// <param name="document">The design.</param>
    /// <param name="order">How widely.</param>
    /// <param name="stock">Largest stock by material; what is missing is looked up in the usual sizes of stores.</param>
    public static CheckReport Run(DesignDocument document, CheckOrder order, IReadOnlyDictionary<string, LargestStock> stock)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(stock);
        var (faults, findings, tried) = (new Dictionary<string, CheckFault>(), new Dictionary<string, CheckFinding>(), 0);
        foreach (var values in All(document, order))
        {
            tried++;
            var evaluation = DesignEvaluator.Evaluate(document, values);
            if (evaluation.Piece is { } piece)
                Note(findings, PieceJudge.Of(piece, stock), values);
            else
                Note(faults, evaluation.Faults[0], values);
        }

        return new(
            tried,
            [.. faults.Values.OrderByDescending(one => one.Times)],
            [.. findings.Values.OrderByDescending(one => one.Severity).ThenByDescending(one => one.Times)]
        );
    }

    private static IEnumerable<ImmutableDictionary<string, string>> All(DesignDocument document, CheckOrder order)
    {
        var chance = new Random(order.Seed);
        var others = Enumerable.Range(0, order.AtRandom).Select(_ => DesignValues.Random(document, chance));
        if (order.Corners)
            others = DesignValues.Corners(document).Concat(others);
        return others.Prepend(ImmutableDictionary<string, string>.Empty).Select(values => values.SetItems(order.Changed));
    }

    // The same sentence with other figures is one finding.
    private static void Note(
        Dictionary<string, CheckFinding> findings,
        ImmutableArray<PieceWarning> warnings,
        ImmutableDictionary<string, string> values
    )
    {
        foreach (var said in warnings.Where(one => one.Severity > Severity.Fine).DistinctBy(Key))
            findings[Key(said)] = findings.TryGetValue(Key(said), out var known)
                ? known with
                {
                    Times = known.Times + 1,
                }
                : new(said.Severity, said.Text, said.Part, 1, values);
    }

    private static void Note(Dictionary<string, CheckFault> faults, Fault fault, ImmutableDictionary<string, string> values)
    {
        var key = fault.Field + " " + Figures().Replace(fault.Message, "#");
        faults[key] = faults.TryGetValue(key, out var known) ? known with { Times = known.Times + 1 } : new(fault, 1, values);
    }

    private static string Key(PieceWarning said) => $"{said.Severity} {said.Part} {Figures().Replace(said.Text, "#")}";

    // Whole numbers, decimals and fractions, typeset ones too.
    [GeneratedRegex("""[\d\p{No}][\d\p{No}.,/⁄ ]*""")]
    private static partial Regex Figures();
}
