using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Designs made up for a test.</summary>
internal static class Made
{
    /// <summary>A case with three names and a loose shelf: all that faults are tried on.</summary>
    public const string Case = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in",
          "name": "Case", "says": "A case.",
          "dimensions": [
            { "name": "width", "value": "30", "least": "10", "most": "60" },
            { "name": "depth", "value": "12" },
            { "name": "height", "value": "width + gap" },
            { "name": "gap", "value": "6" },
            { "name": "shelves", "kind": "count", "value": "1" }
          ],
          "materials": [
            { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
            { "role": "rail", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" }
          ],
          "frame": { "kind": "sheet-carcass", "case": "case", "let_in": "1/4 in" },
          "bays": { "fills": [ { "kind": "adjustable-shelves", "material": "case", "count": "shelves" } ] },
          "parts": [ { "name": "Rail", "material": "rail", "length": "10 in", "along": "x", "flat": "y",
            "at": [ [ "1 in", "1 in", "1 in" ] ] } ],
          "hardware": [ { "name": "Screw", "quantity": "4 * 2" } ]
        }
        """;

    private static readonly Dictionary<string, string> Nothing = [];

    /// <summary>A sheet carcass of 3/4 sheet with this in its bay.</summary>
    public static string Carcass(string width, string depth, string height, string fills, string frame = "") =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
              "dimensions": [
                { "name": "width", "value": "{{width}}" }, { "name": "depth", "value": "{{depth}}" },
                { "name": "height", "value": "{{height}}" }
              ],
              "materials": [
                { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" },
                { "role": "box", "name": "Half plywood", "form": "sheet", "thickness": "1/2" },
                { "role": "stile", "name": "Poplar 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" }
              ],
              "frame": { "kind": "sheet-carcass", "case": "case" {{frame}} },
              "bays": { "fills": [ {{fills}} ] }
            }
            """;

    /// <summary>Posts and rails with this in its bay.</summary>
    public static string PostAndRail(string fills, string frame = "") =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Cabinet",
              "dimensions": [
                { "name": "width", "value": "30" }, { "name": "depth", "value": "16" }, { "name": "height", "value": "34" }
              ],
              "materials": [
                { "role": "leg", "name": "Square", "form": "board", "thickness": "2 in", "width": "2 in" },
                { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" },
                { "role": "box", "name": "Half plywood", "form": "sheet", "thickness": "1/2" },
                { "role": "stile", "name": "Poplar 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" }
              ],
              "frame": { "kind": "post-and-rail", "leg": "leg", "rail": "stile", "panel": "thin", "joint": "pocket" {{frame}} },
              "bays": { "fills": [ {{fills}} ] }
            }
            """;

    /// <summary>Its piece, which must have no fault.</summary>
    public static Piece Piece(string json)
    {
        var evaluation = Evaluate(json);
        Assert.Empty(evaluation.Faults);
        return evaluation.Piece!;
    }

    /// <summary>Read and worked out: the faults of the reading where it has any.</summary>
    public static Evaluation Evaluate(string json) => Evaluate(Encoding.UTF8.GetBytes(json));

    public static Evaluation Evaluate(byte[] json)
    {
        var reading = DesignJson.Read(json);
        return reading.Document is { } document ? DesignEvaluator.Evaluate(document, Nothing) : new(null, reading.Faults);
    }

    public static Length Inches(decimal inches) => Length.FromInches(inches);

    /// <summary>Name of the part that a mark is of.</summary>
    public static string NameOf(Piece piece, string mark) =>
        piece.Parts.Single(part => part.Copies.Any(copy => copy.Mark == mark)).Name;

    public static IEnumerable<PartCopy> Copies(this Piece piece, string name) =>
        piece.Parts.Where(part => part.Name == name).SelectMany(part => part.Copies);
}
