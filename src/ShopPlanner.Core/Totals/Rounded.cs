using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>An amount rounded to what is shown of it, so that shown shares add up to the shown sum.</summary>
/// <param name="Shown">In the unit of the system.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Digits">Decimals.</param>
/// <param name="Unit">The system.</param>
internal readonly record struct Rounded(decimal Shown, QuantityKind Kind, int Digits, LengthUnit Unit)
{
    /// <summary>As a figure.</summary>
    public Figure Figure => new QuantityFigure(Kind.ToMetric((double)Shown, Unit), Kind, Digits);

    /// <summary>As it is entered: <c>43.21 ft²</c>.</summary>
    public string Text => Number + " " + Kind.Name(Unit);

    /// <summary>As it is entered where the key has a unit of its own.</summary>
    public string Number => Shown.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>Rounds an amount of the kind's metric unit.</summary>
    public static Rounded Of(double metric, QuantityKind kind, int digits, LengthUnit unit, MidpointRounding how) =>
        new(Math.Round((decimal)kind.FromMetric(metric, unit), digits, how), kind, digits, unit);

    /// <summary>The sum.</summary>
    public static Rounded Sum(IEnumerable<Rounded> all, QuantityKind kind, int digits, LengthUnit unit) =>
        new(all.Sum(one => one.Shown), kind, digits, unit);
}
