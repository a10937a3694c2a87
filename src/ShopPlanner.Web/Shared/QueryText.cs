using System.Globalization;

namespace ShopPlanner.Web.Shared;

/// <summary>Reads what stands behind the question mark of an address. What cannot be read is as good as not there: an address is
/// typed, shortened and sent on, and the page behind it is still the right one.</summary>
public static class QueryText
{
    /// <summary>Returns whether the text is <c>true</c>, or a name without a value.</summary>
    public static bool Flag(string? text) =>
        text is not null && (text.Length == 0 || (bool.TryParse(text, out var flag) && flag));

    /// <summary>A whole number, nought or more; nought where there is none.</summary>
    public static int Number(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    /// <summary>An id; null where there is none.</summary>
    public static Guid? Id(string? text) => Guid.TryParse(text, out var id) ? id : null;
}
