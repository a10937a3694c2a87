namespace ShopPlanner.Web.Security;

/// <summary>A refusal as a page of its own, written without the pages' styles: files, too, may be refused.</summary>
internal static class RefusalPage
{
    /// <summary>Answers with it; nothing on the way may keep it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The HTTP status.</param>
    /// <param name="title">The window's title.</param>
    /// <param name="body">HTML; what came from outside is encoded.</param>
    public static Task AnswerAsync(HttpContext context, int status, string title, string body)
    {
        context.Response.StatusCode = status;
        context.Response.Headers.CacheControl = "no-store";
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(Document(title, body));
    }

    private static string Document(string title, string body) =>
        $"""
            <!doctype html>
            <html lang="en">
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>{title} — Shop Planner</title>
            <body style="font:1.1rem/1.5 sans-serif;max-width:40rem;margin:3rem auto;padding:0 1rem">
            {body}
            </body>
            </html>
            """;
}
