using System.Globalization;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Stock;

/// <summary>Tags as they are written on the wood: <c>B7</c> in the bin, <c>R3</c> in the rack.</summary>
internal static class StockTags
{
    private const char Bin = 'B',
        Rack = 'R';

    private const int MostDigits = 6;

    /// <summary>The tag of a number that was never given.</summary>
    public static string Of(StockPlace place, long number) =>
        string.Create(CultureInfo.InvariantCulture, $"{(place == StockPlace.Bin ? Bin : Rack)}{number}");

    /// <summary>Returns the number of a tag; null where it is none of that place.</summary>
    public static long? NumberOf(string? tag, StockPlace place) =>
        tag is not null
        && long.TryParse(tag.AsSpan(Math.Min(1, tag.Length)), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && tag == Of(place, number)
            ? number
            : null;

    /// <summary>Where a piece of a tag was entered.</summary>
    public static StockPlace PlaceOf(string tag) => tag.StartsWith(Bin) ? StockPlace.Bin : StockPlace.Rack;

    /// <summary>The number of a tag; null for a text that is none.</summary>
    public static int? NumberOf(string tag) =>
        tag.Length is >= 2 and <= 1 + MostDigits
        && char.ToUpperInvariant(tag[0]) is Bin or Rack
        && tag[1] != '0'
        && int.TryParse(tag.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
