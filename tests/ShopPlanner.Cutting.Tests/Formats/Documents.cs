using System.Collections.Immutable;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Documents to begin from, and the short way to read one.</summary>
internal static class Documents
{
    /// <summary>The request printed in the format's description.</summary>
    public const string Request = """
        {
          "format": "shop-planner/cut-request", "version": 1, "unit": "in",
          "saw":  { "kerf": "1/8", "boardEndTrim": "1/2", "sheetEdgeTrim": "1/4" },
          "keep": { "boardLength": 12, "sheetLength": 12, "sheetWidth": 6 },
          "materials": [
            { "id": "pine-1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
            { "id": "birch-18", "form": "sheet", "thickness": "23/32" }
          ],
          "stock": [
            { "id": "pine-1x3-8ft", "material": "pine-1x3", "length": "8 ft", "price": 6.48 },
            { "id": "B7", "material": "pine-1x3", "length": "41 3/8", "offcut": true, "quantity": 1 },
            { "id": "birch-full", "material": "birch-18", "length": 96, "width": 48, "price": 64.00, "quantity": 4 }
          ],
          "parts": [
            { "id": "A", "name": "Leg", "material": "pine-1x3", "length": "34 1/2", "quantity": 4 },
            { "id": "P", "name": "Side panel", "material": "birch-18", "length": 27, "width": "13 1/4", "quantity": 2, "grain": "length" }
          ],
          "limits": { "seconds": 10 }
        }
        """;

    /// <summary>The plan printed in the format's description, with the cut's parts named.</summary>
    public const string Plan = """
        {
          "format": "shop-planner/cut-plan", "version": 1, "unit": "in",
          "status": "proven", "cost": 76.96, "costLowerBound": 76.96, "seconds": 0.05,
          "buy": [ { "stock": "birch-full", "quantity": 1, "cost": 64.00 } ],
          "layouts": [
            { "stock": "birch-full", "copies": 1,
              "pieces":    [ { "part": "P", "x": 0.25, "y": 0.25, "dx": 27, "dy": 13.25, "turned": false } ],
              "leftovers": [ { "x": 27.375, "y": 0.25, "dx": 68.375, "dy": 47.5, "keep": true } ],
              "cuts":      [ { "n": 1, "piece": "sheet", "kind": "crosscut", "at": 27.375, "gives": ["1a", "1b"], "parts": ["P", null] } ] }
          ],
          "unplaced": [ { "part": "Z", "quantity": 1, "reason": "longer than any stock of this material" } ]
        }
        """;

    public static (CutRequest? Request, ImmutableArray<Fault> Faults) ReadRequest(string json) =>
        CutRequestJson.Read(Encoding.UTF8.GetBytes(json));

    public static (CutPlan? Plan, ImmutableArray<Fault> Faults) ReadPlan(string json) =>
        CutPlanJson.Read(Encoding.UTF8.GetBytes(json));

    /// <summary>The document with one text, which must stand in it exactly once, replaced.</summary>
    public static string With(this string json, string old, string replacement)
    {
        Assert.Equal(2, json.Split(old).Length);
        return json.Replace(old, replacement, StringComparison.Ordinal);
    }

    public static Length In(decimal inches) => Length.FromInches(inches);
}
