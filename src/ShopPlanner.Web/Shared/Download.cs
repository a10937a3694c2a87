using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ShopPlanner.Web.Shared;

/// <summary>Files to save, never to be opened inside a page.</summary>
internal static class Download
{
    private const int MostNameCharacters = 60;

    /// <summary>Text, as UTF-8.</summary>
    public static FileContentHttpResult Text(string content, string type, string name, string ending) =>
        TypedResults.File(Encoding.UTF8.GetBytes(content), $"{type}; charset=utf-8", FileName(name, ending));

    /// <summary>Anything else.</summary>
    public static FileContentHttpResult Bytes(byte[] content, string type, string name, string ending) =>
        TypedResults.File(content, type, FileName(name, ending));

    /// <summary>A name that every system can store: letters, digits and hyphens.</summary>
    internal static string FileName(string name, string ending)
    {
        var plain = new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]);
        var words = string.Join('-', plain.Split('-', StringSplitOptions.RemoveEmptyEntries));
        var shown = words.Length <= MostNameCharacters ? words : words[..MostNameCharacters].TrimEnd('-');
        return (shown.Length == 0 ? "shop-planner" : shown) + "." + ending;
    }
}
