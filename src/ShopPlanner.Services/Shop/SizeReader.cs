using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Shop;

/// <summary>Reads the sizes of the shop's settings; what is wrong adds a fault and counts as nothing.</summary>
/// <param name="unit">Of texts that name none.</param>
/// <param name="faults">What was found wrong.</param>
internal sealed class SizeReader(LengthUnit unit, List<Fault> faults)
{
    // No blade or bit of a home shop takes more; a larger one is a slip, such as 18 for 1/8.
    private static readonly Length MostKerf = Length.FromInches(1, 0, 1);
    private static readonly Length MostTrim = Length.FromInches(24, 0, 1);

    /// <summary>Returns a kerf. Every blade takes wood: a kerf of nothing would plan each piece too near its neighbor.</summary>
    public Length Kerf(string field, string text) => Take(LengthText.ParsePositive(text, unit), field, text, MostKerf);

    /// <summary>Returns a kerf, or the usual one where none is given.</summary>
    public Length KerfOr(Length usual, string field, string text) => IsEmpty(text) ? usual : Kerf(field, text);

    /// <summary>Returns a trim, which may be nothing.</summary>
    public Length Trim(string field, string text) => Take(LengthText.Parse(text, unit), field, text, MostTrim);

    /// <summary>Returns a limit; null where none is given.</summary>
    public Length? Limit(string field, string text) =>
        IsEmpty(text) ? null : Take(LengthText.ParsePositive(text, unit), field, text, LengthText.Longest);

    private static bool IsEmpty(string text) => text.Trim().Length == 0;

    private Length Take(Parsed<Length> parsed, string field, string text, Length most)
    {
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(field));
        else if (parsed.Value > most)
            faults.Add(Fault.Of(field, text, $"is more than {LengthFormat.WithUnit(most, unit)}: check for a typing slip"));
        else
            return parsed.Value;
        return Length.Zero;
    }
}
