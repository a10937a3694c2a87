using System.Globalization;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// What each member of a cut request may be by itself. Every method returns what is wrong with a value, as the message of a
/// <see cref="Fault"/>, or null.
/// </summary>
internal static class CutRequestRanges
{
    /// <summary>The most pieces of all parts together.</summary>
    public const int MostPieces = 100_000;

    /// <summary>The longest search: a day.</summary>
    public const double MostSeconds = 86_400;

    /// <summary>The most entries of a list.</summary>
    public const int MostEntries = 100_000;

    /// <summary>The most pieces of one size of stock.</summary>
    public const int MostStock = 1_000_000_000;

    /// <summary>The most cuts by the store in one board or sheet.</summary>
    public const int MostStoreCuts = 100;

    public const string NegativeLength = "is less than zero: a length is zero or more";
    public const string TooLong = "is more than 100 m: no stock is that long";
    public const string NegativePrice = "is less than zero: a price is zero or more";

    public static string? Length(Length length) =>
        length < Core.Measures.Length.Zero ? NegativeLength
        : length > LengthText.Longest ? TooLong
        : null;

    public static string? Size(Length length) => Length(length) ?? (length.IsPositive ? null : DocumentRanges.Nothing);

    public static string? Price(decimal amount, decimal most) =>
        amount < 0 ? NegativePrice
        : amount > most ? string.Create(CultureInfo.InvariantCulture, $"is more than {most:N0}: write a price like 6.48")
        : null;
}

/// <summary>Notes what is wrong with the members of a draft, each by itself, with its path and its value.</summary>
internal sealed class CutRequestMembers(CutRequestDraft draft, Action<Fault> note)
{
    public void Check()
    {
        Length("saw.kerf", draft.Saw.Kerf);
        Length("saw.boardEndTrim", draft.Saw.BoardEndTrim);
        Length("saw.sheetEdgeTrim", draft.Saw.SheetEdgeTrim);
        Size("saw.widestRip", draft.Saw.WidestRip);
        Size("saw.longestCrosscut", draft.Saw.LongestCrosscut);
        Length("keep.boardLength", draft.Keep.BoardLength);
        Length("keep.sheetLength", draft.Keep.SheetLength);
        Length("keep.sheetWidth", draft.Keep.SheetWidth);
        Each("materials", draft.Materials, Material);
        Each("stock", draft.Stock, Stock);
        Each("parts", draft.Parts, Part);
        if (draft.Seconds is { } seconds)
            Note("limits.seconds", Text(seconds), DocumentRanges.Seconds(seconds, CutRequestRanges.MostSeconds));
        Limits();
    }

    private void Limits()
    {
        Count("store.cuts", draft.Store?.Most, 1, CutRequestRanges.MostStoreCuts);
        Length("store.tolerance", draft.Store?.Tolerance);
        Size("carry.longest", draft.Carry?.Longest);
        Size("carry.widest", draft.Carry?.Widest);
    }

    private void Each<T>(string list, T[] entries, Action<string, T> check, int most = CutRequestRanges.MostEntries)
    {
        Note(list, Text(entries.Length), DocumentRanges.Entries(entries.Length, most));
        for (var i = 0; i < entries.Length; i++)
            check($"{list}[{i}]", entries[i]);
    }

    private void Material(string path, MaterialDraft material)
    {
        Name(path + ".id", material.Id);
        Size(path + ".thickness", material.Thickness);
        Size(path + ".width", material.Width);
    }

    private void Stock(string path, StockDraft stock)
    {
        Name(path + ".id", stock.Id);
        Name(path + ".material", stock.Material);
        Size(path + ".length", stock.Length);
        Size(path + ".width", stock.Width);
        if (stock.Price is { } price)
            Note(path + ".price", Text(price.Amount), CutRequestRanges.Price(price.Amount, MoneyText.Largest.Amount));
        Count(path + ".quantity", stock.Quantity, 0, CutRequestRanges.MostStock);
        Each(path + ".badPlaces", stock.BadPlaces, Place, CutStock.MostBadPlaces);
    }

    private void Place(string path, PlaceDraft place)
    {
        Length(path + ".x", place.X);
        Length(path + ".y", place.Y);
        Size(path + ".dx", place.Dx);
        Size(path + ".dy", place.Dy);
    }

    private void Part(string path, PartDraft part)
    {
        Name(path + ".id", part.Id);
        if (part.Name is { } name)
            Note(path + ".name", name, DocumentRanges.Text(name));
        Name(path + ".material", part.Material);
        Size(path + ".length", part.Length);
        Size(path + ".width", part.Width);
        Count(path + ".quantity", part.Quantity, 1, CutRequestRanges.MostPieces);
        Size(path + ".finishedLength", part.FinishedLength);
        Size(path + ".finishedWidth", part.FinishedWidth);
        Name(path + ".practiceFor", part.PracticeFor);
    }

    private void Length(string path, Length? length)
    {
        if (length is { } given)
            Note(path, JsonOutput.Number(given, draft.Unit), CutRequestRanges.Length(given));
    }

    private void Size(string path, Length? length)
    {
        if (length is { } given)
            Note(path, JsonOutput.Number(given, draft.Unit), CutRequestRanges.Size(given));
    }

    private void Count(string path, int? count, int least, int most)
    {
        if (count is { } given)
            Note(path, Text(given), DocumentRanges.Count(given, least, most));
    }

    private void Name(string path, string? name)
    {
        if (name is not null)
            Note(path, name, DocumentRanges.Name(name));
    }

    private void Note(string path, string value, string? message)
    {
        if (message is not null)
            note(Fault.Of(path, value, message));
    }

    private static string Text(IFormattable number) => number.ToString(null, CultureInfo.InvariantCulture);
}
