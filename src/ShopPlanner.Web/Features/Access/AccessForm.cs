using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Measures;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Features.Access;

/// <summary>Reading plain forms of this feature, and answering them with a page.</summary>
internal static class AccessForm
{
    /// <summary>A field as it was sent; empty where it was not.</summary>
    public static string Text(HttpContext context, string name) =>
        context.Request.HasFormContentType ? context.Request.Form[name].ToString() : "";

    /// <summary>The faults that stand beside no field.</summary>
    public static ImmutableArray<Fault> Elsewhere(ImmutableArray<Fault> faults, params string[] fields) =>
        [.. faults.Where(fault => !fields.Contains(fault.Field, StringComparer.OrdinalIgnoreCase))];

    /// <summary>A part of a page as an answer, kept nowhere.</summary>
    /// <typeparam name="T">The part.</typeparam>
    /// <param name="context">The request.</param>
    /// <param name="status">The HTTP status.</param>
    /// <param name="title">The window's title.</param>
    /// <param name="given">The part's parameters.</param>
    public static RazorComponentResult<PlainDocument> Answer<T>(
        HttpContext context,
        int status,
        string title,
        params (string Name, object? Value)[] given
    )
        where T : IComponent
    {
        context.Response.Headers.CacheControl = "no-store";
        return PlainAnswer.In<PlainLayout, T>(status, title, given);
    }
}
