using AngleSharp.Dom;
using Bunit;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests;

/// <summary>Types into fields as the script of the pages does.</summary>
internal static class Typing
{
    private static long counter;

    /// <summary>Sends a text from a field, typed over what is stored.</summary>
    public static Task TypedAsync(this IElement field, string text) =>
        field.TriggerEventAsync(
            "ontyped",
            new TypedEventArgs
            {
                Value = text,
                Base = field.GetAttribute("data-kept") ?? "",
                Seq = Interlocked.Increment(ref counter),
            }
        );

    /// <inheritdoc cref="TypedAsync" />
    public static void Typed(this IElement field, string text) => _ = field.TypedAsync(text);

    /// <summary>Presses a button that makes something, or sends a form.</summary>
    public static Task PressAsync(this IElement button, Guid? id = null) =>
        (button.Closest("form[data-form]") ?? button).TriggerEventAsync(
            "oncommand",
            new CommandEventArgs { Id = id ?? Guid.NewGuid() }
        );
}
