using System.Globalization;

namespace ShopPlanner.Cli.Tests;

/// <summary>Requests to run. A price is the stock's length in feet, so the cost is the feet bought.</summary>
internal static class Requests
{
    /// <summary>Two parts of 34 1/2 in. from one board of 8 ft, proven at once.</summary>
    public static readonly string Small = Boards(
        """{ "id": "A", "name": "Leg", "material": "pine", "length": "34 1/2", "quantity": 2 }"""
    );

    /// <summary>The same and a part that is longer than any board.</summary>
    public static readonly string TooLong = Boards(
        """
        { "id": "A", "material": "pine", "length": "34 1/2", "quantity": 2 }, { "id": "Z", "material": "pine", "length": "9 ft" }
        """
    );

    /// <summary>Sheets with many different parts: no proof is to be expected within a minute.</summary>
    public static string Hard()
    {
        var parts = Enumerable
            .Range(0, 60)
            .Select(i =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $$"""{ "id": "P{{i}}", "material": "ply", "length": {{311 + (i * 97 % 509)}}, "width": {{173 + (i * 61 % 397)}}, "quantity": 3, "grain": "any" }"""
                )
            );
        return $$"""
            { "format": "shop-planner/cut-request", "version": 1, "unit": "mm", "saw": { "kerf": 3 },
              "materials": [ { "id": "ply", "form": "sheet" } ],
              "stock": [ { "id": "full", "material": "ply", "length": 2440, "width": 1220, "price": 61.37 }, { "id": "half", "material": "ply", "length": 1220, "width": 1220, "price": 34.19 } ],
              "parts": [ {{string.Join(",", parts)}} ] }
            """;
    }

    private static string Boards(string parts) =>
        $$"""
            { "format": "shop-planner/cut-request", "version": 1, "unit": "in", "saw": { "kerf": "1/8" },
              "materials": [ { "id": "pine", "form": "board", "width": "2 1/2" } ],
              "stock": [ { "id": "pine-8ft", "material": "pine", "length": "8 ft", "price": 8 } ],
              "parts": [ {{parts}} ] }
            """;
}
