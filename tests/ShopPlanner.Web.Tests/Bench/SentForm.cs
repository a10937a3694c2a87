using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>A form of a page as the browser would send it.</summary>
internal sealed record SentForm(string Action, Dictionary<string, string> Fields)
{
    /// <summary>The form with a button whose words begin like this.</summary>
    public static SentForm Find(string html, string button)
    {
        var page = new HtmlParser().ParseDocument(html);
        var found = page.QuerySelectorAll("form button").First(one => one.TextContent.Trim().StartsWith(button, StringComparison.Ordinal));
        var form = (IHtmlFormElement)found.Closest("form")!;
        var inputs = form.QuerySelectorAll("input").Cast<IHtmlInputElement>().Where(input => input.Type != "checkbox" || input.IsChecked);
        return new SentForm(form.GetAttribute("action")!, inputs.ToDictionary(input => input.Name!, input => input.Value));
    }
}
