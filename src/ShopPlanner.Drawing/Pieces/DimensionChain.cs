using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A link of a chain of dimensions.</summary>
/// <param name="From">Its start, a mark of the rule.</param>
/// <param name="To">Its end, a mark of the rule.</param>
/// <param name="Words">The figure.</param>
internal readonly record struct ChainLink(Length From, Length To, string Words);

/// <summary>
/// Chains of dimensions from one end of the piece to the other. Places are rounded to the marks of a rule before they are taken
/// from each other, so that the figures add up to the outside size to the last fraction.
/// </summary>
internal static class DimensionChain
{
    private const int MarksPerInch = 64,
        MarksPerMm = 10;

    /// <summary>The finest mark in a note: <c>1⁄64</c>.</summary>
    public static string Finest(LengthUnit unit) => unit == LengthUnit.Inch ? "1⁄64" : "0.1";

    /// <summary>The nearest mark of the rule.</summary>
    public static Length Mark(Length length, LengthUnit unit)
    {
        var step = Step(unit);
        return Length.FromTicks((long)Math.Round(length.Ticks / (double)step, MidpointRounding.AwayFromZero) * step);
    }

    /// <summary>Whether a length ends on a mark.</summary>
    public static bool IsExact(Length length, LengthUnit unit) => length.Ticks % Step(unit) == 0;

    /// <summary>The figure of a length that ends on a mark.</summary>
    public static string Figure(Length length, LengthUnit unit) => LengthFormat.Set(length, unit, MarksPerInch).Text;

    /// <summary>The spans, and what lies before, between and behind them.</summary>
    /// <param name="spans">None over another.</param>
    /// <param name="end">Of the piece.</param>
    /// <param name="unit">Of the figures.</param>
    public static ImmutableArray<ChainLink> Of(IEnumerable<Span> spans, Length end, LengthUnit unit)
    {
        var links = ImmutableArray.CreateBuilder<ChainLink>();
        var at = Length.Zero;
        foreach (var span in spans.OrderBy(one => one.From))
        {
            Add(Mark(span.From, unit));
            Add(Mark(span.To, unit));
        }

        Add(Mark(end, unit));
        return links.ToImmutable();

        void Add(Length next)
        {
            if (next <= at)
                return;
            links.Add(new(at, next, Figure(next - at, unit)));
            at = next;
        }
    }

    private static long Step(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.TicksPerInch / MarksPerInch : Length.TicksPerMillimetre / MarksPerMm;
}
