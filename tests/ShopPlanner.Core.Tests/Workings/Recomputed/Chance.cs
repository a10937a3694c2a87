using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings.Recomputed;

/// <summary>Random sizes as they are typed, with their value in plain inches, pounds or percent.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    /// <summary>Sixteenths of an inch from one number of inches to another.</summary>
    public double Inches(double from, double to) => random.Next((int)(from * 16), (int)(to * 16) + 1) / 16.0;

    public int Whole(int from, int to) => random.Next(from, to + 1);

    public T Of<T>(params T[] all) => all[random.Next(all.Length)];

    /// <summary>As typed.</summary>
    public static string Text(double value) => value.ToString("0.########", CultureInfo.InvariantCulture);

    /// <summary>What a form answers, by the names of its results, in inches and pounds; nothing where it refuses.</summary>
    public static Dictionary<string, double>? Answer(string form, params string[] given) =>
        Asked
            .Run(form, given)
            .Answer?.Results.Where(one => one.Figure.Number(LengthUnit.Inch) is not null)
            .ToDictionary(one => one.Name, one => Number(one));

    // Lengths with their full value, whatever they are shown in.
    private static double Number(Working working) =>
        working is Working<Length> length ? (double)length.Value.ToInches() : working.Figure.Number(LengthUnit.Inch)!.Value;
}
