namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Pieces from trade books in the public domain, written as design documents. Sizes and counts are the books', worked
/// out from
/// outside sizes and joints; where the book's text leaves a place to its drawing, the place is ours.</summary>
internal static class PublishedPieces
{
    /// <summary>"Mission plant stand", H. H. Windsor, Mission Furniture: How to Make It, Part 1 (Popular Mechanics Company,
    /// Chicago 1909),
    /// p. 109 (Project Gutenberg 23770). Ours: the heights of lower rails and shelf, lower rails flush with the upper ones where
    /// the book
    /// sets them in by 1/8 in, and the tenons of 1/2 in, which make rails of 11 in reach between posts 10 in apart.</summary>
    public const string PlantStand = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Mission plant stand",
          "dimensions": [
            { "name": "width", "value": "15 1/2" }, { "name": "depth", "value": "15 1/2" }, { "name": "height", "value": "20 3/4" },
            { "name": "overhang", "value": "1 1/2" }, { "name": "tenon", "value": "1/2" },
            { "name": "low", "label": "Height of the lower rails", "value": "5" },
            { "name": "mortise", "label": "Slats let into the upper rails", "value": "1/4" },
            { "name": "slat", "label": "Length of a slat", "value": "height - 3/4 in - 3 in - low + mortise" }
          ],
          "materials": [
            { "role": "post", "name": "White oak 1 1/4 square", "form": "board", "thickness": "1 1/4", "width": "1 1/4" },
            { "role": "rail", "name": "White oak 3 wide", "form": "board", "thickness": "3/4", "width": "3" },
            { "role": "low_rail", "name": "White oak 2 wide", "form": "board", "thickness": "3/4", "width": "2" },
            { "role": "shelf", "name": "White oak 6 wide", "form": "board", "thickness": "3/4", "width": "6" },
            { "role": "slat", "name": "White oak 1/4", "form": "board", "thickness": "1/4", "width": "2" },
            { "role": "top", "name": "White oak, glued up", "form": "sheet", "thickness": "3/4" }
          ],
          "frame": {
            "kind": "leg-and-apron", "leg": "post", "apron": "rail", "joint": "mortise", "tenon": "tenon",
            "stretcher": "low_rail", "stretchers": "ends", "stretcher_height": "low"
          },
          "top": { "kind": "sheet-top", "material": "top", "overhang_ends": "overhang", "overhang_front": "overhang", "overhang_back": "overhang" },
          "parts": [
            { "name": "Shelf", "material": "shelf", "length": "width - 2 * (overhang + 1 1/4 in)", "along": "x", "flat": "z",
              "at": [ [ "overhang + 1 1/4 in", "(depth - 6 in) / 2", "low + 1/2 in" ] ] },
            { "name": "Slat", "material": "slat", "length": "slat", "along": "z", "flat": "x", "at": [
              [ "overhang + 1/4 in", "depth / 2 - 4 in", "low" ], [ "overhang + 1/4 in", "depth / 2 + 2 in", "low" ],
              [ "width - overhang - 1/2 in", "depth / 2 - 4 in", "low" ], [ "width - overhang - 1/2 in", "depth / 2 + 2 in", "low" ] ] },
            { "name": "Long slat", "material": "slat", "length": "slat + 1/2 in", "along": "z", "flat": "x", "at": [
              [ "overhang + 1/4 in", "depth / 2 - 1 in", "low - 1/2 in" ], [ "width - overhang - 1/2 in", "depth / 2 - 1 in", "low - 1/2 in" ] ] }
          ]
        }
        """;

    /// <summary>"A bookcase", H. H. Windsor, Mission Furniture: How to Make It, Part 2 (Popular Mechanics Company, Chicago 1910),
    /// p. 70
    /// (Project Gutenberg 23991). Left out: the doors, their lattice, the centre piece behind them, and the cleats under the top,
    /// in place
    /// of which our case has two stretchers. The backing is one panel here, let into both sides by 1/2 in, where the book takes
    /// twelve
    /// boards; the shelves stand back 1 5/8 in for the doors, and have 1/4 in of room at their ends.</summary>
    public const string Bookcase = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Bookcase",
          "dimensions": [
            { "name": "width", "value": "31 1/4" }, { "name": "depth", "value": "15" }, { "name": "height", "value": "50 3/4" },
            { "name": "overhang", "label": "Overhang of the top at each end", "value": "1/2" }, { "name": "rail", "label": "Bottom rail", "value": "4" }
          ],
          "materials": [
            { "role": "case", "name": "Oak, glued up", "form": "sheet", "thickness": "3/4" },
            { "role": "backing", "name": "Backing", "form": "sheet", "thickness": "3/8" },
            { "role": "shelf", "name": "Soft wood 1/2", "form": "sheet", "thickness": "1/2" },
            { "role": "back_board", "name": "Oak 4 wide", "form": "board", "thickness": "3/4", "width": "4" },
            { "role": "cleat", "name": "Soft wood 1 1/4 square", "form": "board", "thickness": "1 1/4", "width": "1 1/4" }
          ],
          "frame": {
            "kind": "sheet-carcass", "case": "case", "over": "stretchers", "toe": "rail", "toe_setback": "0 in",
            "back": "backing", "back_fit": "let-in", "back_groove": "1/2 in", "back_clearance": "0 in", "back_setback": "0 in"
          },
          "bays": { "fills": [ { "kind": "adjustable-shelves", "material": "shelf", "count": 3, "clearance": "1/4 in", "setback": "1 5/8 in" } ] },
          "top": { "kind": "sheet-top", "material": "case", "overhang_ends": "overhang", "overhang_front": "1 in" },
          "parts": [
            { "name": "Top back board", "material": "back_board", "length": "width - 2 * overhang", "along": "x", "flat": "y",
              "at": [ [ "overhang", "depth - 3/4 in", "height" ] ] },
            { "name": "Bottom cleat", "material": "cleat", "length": "depth - 2 in", "along": "y", "flat": "x", "at": [
              [ "overhang + 3/4 in", "1 3/4 in", "rail - 1 1/4 in" ], [ "width - overhang - 2 in", "1 3/4 in", "rail - 1 1/4 in" ] ] }
          ]
        }
        """;

    /// <summary>"An oak table", H. H. Windsor, Mission Furniture: How to Make It, Part 3 (Popular Mechanics Company, Chicago
    /// 1912), p. 25 (Project Gutenberg 23666). Left out: the top, glued from two pieces of 12 1/2 in and trimmed, and the
    /// stretcher, whose place the text leaves to its drawing. Ours: tenons of 1 in. The slats are housed by 1/4 in, as in the
    /// book.</summary>
    public const string OakTable = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Oak table",
          "dimensions": [
            { "name": "width", "value": "24 1/2" }, { "name": "depth", "value": "24 1/2" }, { "name": "height", "value": "31 1/2" },
            { "name": "leg", "value": "height - 7/8 in" }, { "name": "housing", "label": "Slats let into the rails", "value": "1/4" },
            { "name": "low", "label": "Height of the lower rails", "value": "6 1/8" }
          ],
          "materials": [
            { "role": "post", "name": "Oak 2 square", "form": "board", "thickness": "2", "width": "2" },
            { "role": "rail", "name": "Oak 6 1/2 wide", "form": "board", "thickness": "7/8", "width": "6 1/2" },
            { "role": "low_rail", "name": "Oak 3 wide", "form": "board", "thickness": "7/8", "width": "3" },
            { "role": "slat", "name": "Oak 3/8", "form": "board", "thickness": "3/8", "width": "3 1/2" },
            { "role": "top", "name": "Oak, glued up", "form": "sheet", "thickness": "7/8" }
          ],
          "frame": {
            "kind": "leg-and-apron", "leg": "post", "apron": "rail", "joint": "mortise", "tenon": "1 in",
            "stretcher": "low_rail", "stretchers": "ends", "stretcher_height": "low"
          },
          "top": { "kind": "sheet-top", "material": "top" },
          "parts": [
            { "name": "Slat", "material": "slat", "length": "leg - 6 1/2 in - low - 3 in + 2 * housing", "along": "z", "flat": "x", "at": [
              [ "1/4 in", "3 3/4 in", "low + 3 in - housing" ], [ "1/4 in", "10 1/2 in", "low + 3 in - housing" ],
              [ "1/4 in", "17 1/4 in", "low + 3 in - housing" ], [ "width - 5/8 in", "3 3/4 in", "low + 3 in - housing" ],
              [ "width - 5/8 in", "10 1/2 in", "low + 3 in - housing" ], [ "width - 5/8 in", "17 1/4 in", "low + 3 in - housing" ] ] }
          ]
        }
        """;
}
