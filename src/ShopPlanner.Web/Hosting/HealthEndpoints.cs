using ShopPlanner.Services.Health;

namespace ShopPlanner.Web.Hosting;

/// <summary>What a service manager, a proxy or a cloud host asks again and again. The answers tell nothing of the shop.</summary>
internal static class HealthEndpoints
{
    /// <summary>Whether the program answers.</summary>
    public const string Alive = "/healthz";

    /// <summary>Whether it can serve: the shop can be read.</summary>
    public const string Ready = "/readyz";

    /// <summary>Whether an address is one of the two.</summary>
    public static bool IsOne(PathString path) => path == Alive || path == Ready;

    /// <summary>Maps both.</summary>
    public static void MapHealth(this WebApplication app)
    {
        app.MapGet(Alive, () => Results.Text("ok\n"));
        app.MapGet(
            Ready,
            async (IConditionService condition, CancellationToken cancel) =>
                await condition.IsReadableAsync(cancel)
                    ? Results.Text("ok\n")
                    : Results.Text("the shop cannot be read\n", statusCode: StatusCodes.Status503ServiceUnavailable)
        );
    }
}
