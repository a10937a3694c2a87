namespace ShopPlanner.Web.Shared;

/// <summary>Leads to a page after a form: the browser asks for it with GET, so that reloading sends nothing again.</summary>
/// <param name="Address">The page, of this program.</param>
internal sealed record SeeOther(string Address) : IResult
{
    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        httpContext.Response.Headers.Location = Address;
        httpContext.Response.Headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }
}
