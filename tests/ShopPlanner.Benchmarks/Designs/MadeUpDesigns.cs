namespace ShopPlanner.Benchmarks;

/// <summary>Invented designs, for time only.</summary>
public static class MadeUpDesigns
{
    private const string Materials = """
        "materials": [
          { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
          { "role": "box", "name": "Half plywood", "form": "sheet", "thickness": "1/2" },
          { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" },
          { "role": "stile", "name": "Poplar 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" } ]
        """;

    public static IEnumerable<(string Name, string Text)> All() =>
        [("cupboard, made up", Cupboard), ("slatted case, made up", SlattedCase())];

    /// <summary>Case 5, dividers 2, two doors 10 and shelves 4, five drawers 30, shelves 9: 60, practice pieces apart.</summary>
    private static readonly string Cupboard = Design(
        "72",
        "20",
        "60",
        """
        { "split": { "kind": "divider", "material": "case" }, "bays": [
          { "fills": [
            { "kind": "doors", "material": "stile", "panel": "thin", "leaves": 2, "fit": "inset" },
            { "kind": "adjustable-shelves", "material": "case", "count": 4 } ] },
          { "fills": [ { "kind": "drawers", "count": 5, "front": "case", "box": "box", "bottom": "thin", "heights": "graded" } ] },
          { "fills": [ { "kind": "adjustable-shelves", "material": "case", "count": 9 } ] } ] }
        """
    );

    // Case 5, dividers 9, ten rows of 48 slats 480, shelves 6: 500, spacers apart.
    private static string SlattedCase()
    {
        var bays = Enumerable
            .Range(0, 10)
            .Select(i =>
                $$"""
                    { "fills": [
                      { "kind": "slats", "material": "box", "count": 48, "width": "1/8 in", "lie": "upright" },
                      { "kind": "adjustable-shelves", "material": "case", "count": {{(i < 6 ? 1 : 0)}}, "setback": "1 in" } ] }
                    """
            );
        return Design(
            "100",
            "20",
            "60",
            $$"""
            { "split": { "kind": "divider", "material": "case" }, "bays": [ {{string.Join(",", bays)}} ] }
            """
        );
    }

    private static string Design(string width, string depth, string height, string bays) =>
        $$"""
            { "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Made up",
              "dimensions": [
                { "name": "width", "value": "{{width}}" }, { "name": "depth", "value": "{{depth}}" },
                { "name": "height", "value": "{{height}}" } ],
              {{Materials}},
              "frame": { "kind": "sheet-carcass", "case": "case", "back": "thin" },
              "bays": {{bays}} }
            """;
}
