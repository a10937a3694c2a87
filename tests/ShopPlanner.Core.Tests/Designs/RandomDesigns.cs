using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Documents of any frame, split, fill and top, at sizes that a hand might try.</summary>
internal static class RandomDesigns
{
    /// <summary>What lies between a drawer or a door and what carries it, at most.</summary>
    public static readonly Length MostGap = Made.Inches(0.5625m);

    public static string Next(string frame, Random chance) => Edged(Plain(frame, chance));

    // One of the treatments for all shelves and dividers of a document.
    private static string Edged(string json)
    {
        string[] works = ["plain", "band", "lipping", "round"];
        var edge = $"\"edge\": \"{works[json.Length % works.Length]}\", \"edge_material\": \"board\",";
        return new[] { "divider", "fixed-shelf", "adjustable-shelves", "cleat-shelf" }.Aggregate(
            json,
            (text, kind) => text.Replace($"\"kind\": \"{kind}\",", $"\"kind\": \"{kind}\", {edge}", StringComparison.Ordinal)
        );
    }

    private static string Plain(string frame, Random chance) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Made up",
              "dimensions": [
                { "name": "width", "value": "{{Size(chance, 14, 60)}}" }, { "name": "depth", "value": "{{Size(chance, 9, 30)}}" },
                { "name": "height", "value": "{{Size(chance, 16, 72)}}" }
              ],
              "materials": [
                { "role": "square", "name": "Square", "form": "board", "thickness": "{{Pick(
                chance,
                "1 1/2",
                "2",
                "3 1/2"
            )}}", "width": "3 1/2" },
                { "role": "two", "name": "2x4", "form": "board", "thickness": "1 1/2", "width": "3 1/2" },
                { "role": "wide", "name": "1x8", "form": "board", "thickness": "3/4", "width": "7 1/4" },
                { "role": "board", "name": "1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
                { "role": "sheet", "name": "Plywood", "form": "sheet", "thickness": "{{Pick(chance, "23/32", "3/4", "15/32")}}" },
                { "role": "half", "name": "Half plywood", "form": "sheet", "thickness": "15/32" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "7/32" }
              ],
              "frame": {{Frame(frame, chance)}},
              "bays": {{Bay(chance, 2)}}{{Top(chance)}}
            }
            """;

    private static string Frame(string kind, Random chance) =>
        kind switch
        {
            "sheet-carcass" =>
                $$"""
                { "kind": "sheet-carcass", "case": "sheet", "back": "{{Pick(chance, "", "thin", "half")}}",
                  "back_fit": "{{Pick(chance, "planted", "rabbet", "let-in")}}", "back_setback": "{{Pick(
                    chance,
                    "1/2 in",
                    "3/4 in",
                    "0 in"
                )}}",
                  "over": "{{Pick(chance, "panel", "stretchers")}}", "let_in": "{{Pick(chance, "0 in", "1/8 in", "1/4 in")}}",
                  "toe": "{{Pick(chance, "0 in", "3 in")}}", "toe_setback": "{{Pick(chance, "0 in", "2 in")}}", "face": "{{Pick(
                    chance,
                    "",
                    "board"
                )}}" }
                """,
            "post-and-rail" =>
                $$"""
                { "kind": "post-and-rail", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "rail": "board",
                  "panel": "{{Pick(chance, "", "thin")}}", "panel_fit": "{{Pick(chance, "inset", "flush")}}", "joint": "{{Pick(
                    chance,
                    "pocket",
                    "mortise",
                    "dowel"
                )}}" }
                """,
            "leg-and-apron" =>
                $$"""
                { "kind": "leg-and-apron", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "apron": "{{Pick(
                    chance,
                    "board",
                    "two"
                )}}",
                  "setback": "{{Pick(chance, "0 in", "1/4 in")}}", "joint": "{{Pick(chance, "pocket", "mortise", "dowel")}}",
                  "stretcher": "{{Pick(chance, "", "board")}}", "stretchers": "{{Pick(chance, "all", "ends")}}" }
                """,
            "post-cabinet" =>
                $$"""
                { "kind": "post-cabinet", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "rail": "board",
                  "side": "{{Pick(chance, "sheet", "thin")}}", "side_fit": "{{Pick(chance, "flush", "inset")}}", "back": "{{Pick(
                    chance,
                    "",
                    "thin"
                )}}",
                  "foot": "{{Pick(chance, "4 in", "9 in")}}", "joint": "{{Pick(
                    chance,
                    "pocket",
                    "mortise",
                    "dowel"
                )}}", {{LowShelf(chance)}} }
                """,
            "drawer-table" =>
                $$"""
                { "kind": "drawer-table", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "apron": "{{Pick(
                    chance,
                    "wide",
                    "two",
                    "board"
                )}}",
                  "rail": "board", "joint": "{{Pick(chance, "pocket", "dowel")}}", {{LowShelf(chance)}} }
                """,
            "floating-shelf" => """{ "kind": "floating-shelf", "shelf": "sheet", "apron": "wide", "cleat": "board" }""",
            "box" =>
                $$"""
                { "kind": "box", "side": "{{Pick(chance, "sheet", "wide")}}", "bottom": "{{Pick(chance, "thin", "half")}}",
                  "front_lower": "{{Pick(chance, "0 in", "1 in")}}", "handles": "{{Pick(
                    chance,
                    "none",
                    "slots"
                )}}", "groove": "{{Pick(chance, "1/8 in", "7/32 in")}}",
                  "lid": "{{Pick(chance, "", "sheet")}}", "edging": "{{Pick(chance, "", "board")}}", "overhang": "{{Pick(
                    chance,
                    "0 in",
                    "1/2 in"
                )}}" }
                """,
            "bed-frame" =>
                $$"""
                { "kind": "bed-frame", "post": "square", "rail": "two", "ledger": "{{Pick(
                    chance,
                    "board",
                    "half"
                )}}", "beam": "{{Pick(chance, "", "two")}}",
                  "slat": "board", "slats": {{chance.Next(2, 6)}}, "head": "board", "boards": {{chance.Next(
                    0,
                    3
                )}}, "beam_legs": {{chance.Next(0, 3)}},
                  "foot_height": "12 in" }
                """,
            _ =>
                $$"""
                { "kind": "open-rack", "post": "two", "beam": "{{Pick(chance, "two", "board")}}", "deck": "{{Pick(
                    chance,
                    "",
                    "sheet"
                )}}",
                  "levels": {{chance.Next(1, 4)}} }
                """,
        };

    private static string LowShelf(Random chance) =>
        $$"""
            "low_rail": "{{Pick(chance, "", "board")}}", "low_height": "{{Pick(chance, "1 in", "3 in")}}", "slat": "{{Pick(
                chance,
                "",
                "board",
                "sheet"
            )}}",
            "slats": {{chance.Next(0, 4)}}
            """;

    private static string Bay(Random chance, int deep)
    {
        var fills = string.Join(", ", Enumerable.Range(0, chance.Next(0, 3)).Select(_ => Fill(chance)));
        if (deep == 0 || chance.Next(2) == 0)
            return $$"""{ "fills": [ {{fills}} ] }""";
        var split = Pick(chance, "divider", "fixed-shelf");
        var letIn = Pick(chance, "0 in", "1/8 in", "1/4 in");
        var bays = string.Join(", ", Enumerable.Range(0, chance.Next(2, 4)).Select(_ => Bay(chance, deep - 1)));
        return $$"""
            { "fills": [ {{fills}} ], "split": { "kind": "{{split}}", "material": "sheet", "let_in": "{{letIn}}" }, "bays": [ {{bays}} ] }
            """;
    }

    private static string Fill(Random chance) =>
        chance.Next(11) switch
        {
            0 =>
                $$"""{ "kind": "doors", "material": "board", "panel": "thin", "leaves": {{chance.Next(1, 3)}}, "fit": "{{Fit(chance)}}", "overlay": "3/8 in" }""",
            1 =>
                $$"""{ "kind": "doors", "make": "slab", "material": "sheet", "leaves": {{chance.Next(1, 3)}}, "fit": "{{Fit(chance)}}", "overlay": "1/4 in" }""",
            2 =>
                $$"""
                { "kind": "drawers", "count": {{chance.Next(
                    1,
                    4
                )}}, "front": "sheet", "box": "half", "bottom": "thin", "fit": "{{Fit(chance)}}",
                  "overlay": "1/4 in", "joint": "{{Pick(chance, "rabbet", "butt", "dado", "dovetail")}}", "heights": "{{Pick(
                    chance,
                    "equal",
                    "graded"
                )}}" }
                """,
            3 => $$"""{ "kind": "adjustable-shelves", "material": "sheet", "count": {{chance.Next(0, 4)}} }""",
            4 =>
                $$"""{ "kind": "cleat-shelf", "material": "sheet", "cleat": "{{Pick(chance, "board", "sheet")}}", "height": "{{chance.Next(0, 6)}} in" }""",
            5 => $$"""{ "kind": "back", "material": "{{Pick(chance, "thin", "half", "sheet")}}" }""",
            6 => """{ "kind": "hanging-rail", "material": "board" }""",
            7 => """{ "kind": "anti-tip" }""",
            8 =>
                $$"""{ "kind": "drop-in-bottom", "material": "{{Pick(chance, "sheet", "half")}}", "cleat": "{{Pick(chance, "half", "board")}}" }""",
            9 =>
                $$"""
                { "kind": "door-stops", "material": "{{Pick(chance, "board", "half")}}", "door": "{{Pick(
                    chance,
                    "board",
                    "sheet"
                )}}",
                  "where": "{{Pick(chance, "both", "top", "bottom")}}" }
                """,
            _ =>
                $$"""{ "kind": "slats", "material": "board", "count": {{chance.Next(1, 6)}}, "lie": "{{Pick(chance, "lengthways", "across", "upright")}}" }""",
        };

    private static string Top(Random chance) =>
        chance.Next(5) switch
        {
            0 => "",
            4 =>
                $$""", "top": { "kind": "slatted-top", "material": "board", "count": {{chance.Next(2, 4)}}, "lie": "{{Pick(chance, "across", "lengthways")}}" }""",
            1 => """, "top": { "kind": "solid-top", "material": "board", "overhang_ends": "1 in", "overhang_front": "1 in" }""",
            2 =>
                """, "top": { "kind": "sheet-top", "material": "sheet", "layers": "2", "overhang_ends": "1 in", "overhang_front": "1 in" }""",
            _ => """, "top": { "kind": "sheet-top", "material": "sheet", "edging": "board", "overhang_ends": "1/2 in" }""",
        };

    private static string Fit(Random chance) => Pick(chance, "inset", "overlay");

    private static string Pick(Random chance, params string[] words) => words[chance.Next(words.Length)];

    private static string Size(Random chance, int least, int most) =>
        (chance.Next(least * 64, (most * 64) + 1) / 64m).ToString("0.######", CultureInfo.InvariantCulture);
}
