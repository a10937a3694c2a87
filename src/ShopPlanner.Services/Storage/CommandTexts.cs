using System.Globalization;

namespace ShopPlanner.Services.Storage;

/// <summary>Texts about commands.</summary>
internal static class CommandTexts
{
    /// <summary>Returns a text that is equal for two commands exactly when they ask for the same.</summary>
    /// <param name="verb">What to do.</param>
    /// <param name="with">What with; each as <see cref="ShopJson"/> writes it.</param>
    public static string Asked(string verb, params object?[] with) => $"{verb} {ShopJson.Hash(with)}";

    /// <summary>Writes an id down as what was made.</summary>
    public static string Text(Guid id) => id.ToString("D", CultureInfo.InvariantCulture);
}
