using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ShopPlanner.Web.Frame;

/// <summary>Answers a form with a whole document.</summary>
internal static class PlainAnswer
{
    /// <summary>A part of a page in a layout.</summary>
    /// <typeparam name="TLayout">The layout.</typeparam>
    /// <typeparam name="T">The part.</typeparam>
    /// <param name="status">The HTTP status.</param>
    /// <param name="title">The window's title.</param>
    /// <param name="given">The part's parameters.</param>
    public static RazorComponentResult<PlainDocument> In<TLayout, T>(
        int status,
        string title,
        params (string Name, object? Value)[] given
    )
        where TLayout : LayoutComponentBase
        where T : IComponent =>
        new(
            new Dictionary<string, object?>
            {
                [nameof(PlainDocument.Title)] = title,
                [nameof(PlainDocument.Body)] = Part<TLayout>((nameof(LayoutComponentBase.Body), Part<T>(given))),
            }
        )
        {
            StatusCode = status,
        };

    private static RenderFragment Part<T>(params (string Name, object? Value)[] given)
        where T : IComponent =>
        builder =>
        {
            builder.OpenComponent<T>(0);
            foreach (var (name, value) in given)
                builder.AddComponentParameter(1, name, value);
            builder.CloseComponent();
        };
}
