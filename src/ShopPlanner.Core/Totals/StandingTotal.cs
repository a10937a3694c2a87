using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>Whether a piece tips, by its own size and parts. Little weight is the unsafe side: each part counts as the
/// lightest of
/// its wood and is rounded down; what opens is rounded up.</summary>
internal static class StandingTotal
{
    private const int Digits = 2;

    // As many as the form takes.
    private const int MostOpen = 12;

    public static PartTotal Of(TotalAsked asked)
    {
        if (asked.Parts.Standing is not { } standing)
            return asked.None(
                "A parts list doesn't say how the piece stands: only a design does. Enter depth, height and weight."
            );
        var weight = Added(asked, "weight", "Weight, empty", asked.Parts.Parts, MidpointRounding.ToNegativeInfinity);
        var said = new Dictionary<string, string>
        {
            ["width"] = asked.Enter(standing.Width),
            ["depth"] = asked.Enter(standing.Depth),
            ["toe"] = asked.Enter(standing.Toe),
            ["height"] = asked.Enter(standing.Height),
            ["weight"] = weight.Sum.Text,
            ["doors"] = "0",
        };
        ImmutableArray<PartAdded> added = [weight.Added];
        if (standing.Opens > 0)
        {
            var open = Added(
                asked,
                "open-weight",
                "Weight of all that opens",
                standing.Open,
                MidpointRounding.ToPositiveInfinity
            );
            var count = Math.Min(MostOpen, standing.Opens);
            said["doors"] = count.ToString(CultureInfo.InvariantCulture);
            said["open-weight"] = Each(open.Sum, count).Text;
            if (standing.Reach.IsPositive)
                said["reach"] = asked.Enter(standing.Reach);
            added = added.Add(open.Added);
        }

        return new(
            asked.Form,
            [asked.Ask("The whole piece", said, added)],
            [
                .. WeightTotal.Unknown(asked.Parts.Parts),
                "Hardware and what is in it aren't counted: empty, a piece stands least firmly.",
                .. standing.Opens > 1 ? [$"All {standing.Opens} doors and drawers are taken as open at once."] : (string[])[],
            ]
        );
    }

    private static (Rounded Sum, PartAdded Added) Added(
        TotalAsked asked,
        string key,
        string name,
        IEnumerable<CountedPart> parts,
        MidpointRounding how
    )
    {
        var known = parts.Where(part => WeightTotal.Row(part) is not null).ToList();
        var weights = known.Select(part => Weigh(part, asked.Unit, how)).ToList();
        var sum = Rounded.Sum(weights, QuantityKind.Mass, Digits, asked.Unit);
        var shares = known.Zip(
            weights,
            (part, weight) => new PartShare(part.Called, $"{Size(part, asked)}, {part.Material.Name}", weight.Figure)
        );
        return (sum, new(key, name, sum.Figure, [.. shares]));
    }

    private static string Size(CountedPart part, TotalAsked asked) => asked.Sizes(part.Length, part.Width, part.Thickness);

    private static Rounded Weigh(CountedPart part, LengthUnit unit, MidpointRounding how) =>
        Rounded.Of(
            Weight.Of(part.Volume, Weight.LeastDensity(WeightTotal.Row(part)!, Weight.Indoors)).Value,
            QuantityKind.Mass,
            Digits,
            unit,
            how
        );

    private static Rounded Each(Rounded sum, int count) =>
        sum with
        {
            Shown = Math.Round(sum.Shown / count, Digits, MidpointRounding.ToPositiveInfinity),
        };
}
