using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace ShopPlanner.Web.Fields;

/// <summary>Options as the texts that a browser sends.</summary>
public static class ChoiceText
{
    /// <summary>Returns an option's text.</summary>
    public static string Of<T>(T value) => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";

    /// <summary>Returns whether one of the choices has that text, and which.</summary>
    public static bool TryFind<T>(IReadOnlyList<(T Value, string Name)> choices, string text, [MaybeNullWhen(false)] out T chosen)
    {
        ArgumentNullException.ThrowIfNull(choices);
        foreach (var (value, _) in choices)
            if (Of(value) == text)
            {
                chosen = value;
                return true;
            }

        chosen = default;
        return false;
    }
}
