namespace ShopPlanner.Services.Common;

/// <summary>Where a shop's data lies unless told otherwise.</summary>
public static class ShopFolder
{
    /// <summary>Returns a folder under the user's own application data, the demo apart from the rest.</summary>
    public static string Default(bool demo) =>
        Path.Combine(
            Environment.GetFolderPath(
                Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.DoNotVerify
            ),
            "ShopPlanner",
            demo ? "demo" : "data"
        );

    /// <summary>Returns the server's database that keeps the shop: as named, else as the environment says; null for
    /// neither.</summary>
    public static string? Server(string? named) =>
        named is { Length: > 0 } ? named
        : Environment.GetEnvironmentVariable("SHOP_PLANNER_DATABASE") is { Length: > 0 } given ? given
        : null;
}
