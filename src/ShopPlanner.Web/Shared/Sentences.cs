namespace ShopPlanner.Web.Shared;

/// <summary>Phrases as sentences.</summary>
public static class Sentences
{
    /// <summary>Returns a phrase with a capital letter at its beginning.</summary>
    public static string Capital(string phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return phrase.Length == 0 ? phrase : char.ToUpperInvariant(phrase[0]) + phrase[1..];
    }

    /// <summary>Returns a phrase with its full stop.</summary>
    public static string Ended(string phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return phrase.EndsWith('.') ? phrase : phrase + ".";
    }

    /// <summary>Returns a phrase as a sentence; nothing for none.</summary>
    public static string Of(string phrase) => string.IsNullOrEmpty(phrase) ? "" : Capital(Ended(phrase));
}
