using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>Finds what a person presses on a page of the bench.</summary>
internal static class BenchTestPages
{
    /// <summary>The form whose button carries these words or this name.</summary>
    public static IHtmlFormElement FormOf(this IHtmlDocument page, string button) =>
        page.QuerySelectorAll<IHtmlFormElement>("form")
            .FirstOrDefault(form =>
                form.QuerySelectorAll("button").Any(one => (one.GetAttribute("aria-label") ?? one.TextContent).Trim() == button)
            )
        ?? throw new InvalidOperationException(
            $"no form with the button '{button}'; there are: "
                + string.Join(
                    ", ",
                    page.QuerySelectorAll("button").Select(one => one.GetAttribute("aria-label") ?? one.TextContent.Trim())
                )
        );

    /// <summary>The same fields with some changed; a field that was not there is added.</summary>
    public static List<KeyValuePair<string, string>> With(
        this List<KeyValuePair<string, string>> fields,
        params (string Name, string Value)[] changes
    )
    {
        var changed = fields.Where(field => changes.All(change => change.Name != field.Key)).ToList();
        changed.AddRange(changes.Select(change => KeyValuePair.Create(change.Name, change.Value)));
        return changed;
    }

    /// <summary>The same fields without some.</summary>
    public static List<KeyValuePair<string, string>> Without(this List<KeyValuePair<string, string>> fields, string name) =>
        [.. fields.Where(field => field.Key != name)];
}
