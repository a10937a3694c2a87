using System.Text;

namespace ShopPlanner.Core.Bills;

/// <summary>Texts taken from a bill's own words.</summary>
internal static class BillNames
{
    /// <summary>The longest text that is passed on from one line to others.</summary>
    public const int MostCharacters = 80;

    /// <summary>Returns a text at most that long.</summary>
    public static string Short(string text)
    {
        if (text.Length <= MostCharacters)
            return text;
        var end = char.IsHighSurrogate(text[MostCharacters - 1]) ? MostCharacters - 1 : MostCharacters;
        return text[..end].TrimEnd() + "…";
    }

    /// <summary>Joins tokens as they stand in their text, with one space where there is room.</summary>
    /// <param name="text">Of the tokens.</param>
    /// <param name="tokens">In order.</param>
    public static string Join(string text, IEnumerable<BillToken> tokens)
    {
        var joined = new StringBuilder();
        var end = -1;
        foreach (var token in tokens)
        {
            if (joined.Length > MostCharacters)
                break;
            if (token.Gap > 0 && joined.Length > 0)
                joined.Append(' ');
            else if (token.Start == end + 1 && joined.Length > 0)
                joined.Append(text[end]);
            joined.Append(text, token.Start, token.End - token.Start);
            end = token.End;
        }

        return Short(joined.ToString().Trim());
    }
}
