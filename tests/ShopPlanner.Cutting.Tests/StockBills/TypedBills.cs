namespace ShopPlanner.Cutting.Tests.StockBills;

/// <summary>Whole stock bills from books in the public domain, sizes and counts as printed; planed both sides unless noted there.</summary>
internal static class TypedBills
{
    /// <summary>H. H. Windsor, Mission Furniture: How to Make It (Popular Mechanics Handbooks), Part 1, Chicago 1909, p. 17; the
    /// list does not state the wood, which is the book's oak.</summary>
    private const string Tabouret = """
        1 | 7/8 x 17 x 17 | oak | top
        4 | 7/8 x 4-3/4 x 18-1/2 | oak | leg
        2 | 7/8 x 2-3/4 x 15-3/4 | oak | lower stretcher
        2 | 7/8 x 2-1/4 x 13-1/4 | oak | top stretcher
        """;

    /// <summary>The same, Part 2, Chicago 1910, p. 70.</summary>
    private const string Bookcase = """
        1 | 3/4 x 15 x 31-1/4 | hard wood | top
        1 | 3/4 x 4 x 30-1/4 | hard wood | top back board
        2 | 3/4 x 14 x 50 | hard wood | sides
        1 | 3/4 x 14 x 28-3/4 | hard wood | bottom
        1 | 3/4 x 4 x 28-3/4 | hard wood | bottom rail
        1 | 3/4 x 2 x 45-3/4 | hard wood | center piece
        4 | 3/4 x 1-1/2 x 45-1/4 | hard wood | door sides
        4 | 3/4 x 1-1/2 x 14 | hard wood | door ends
        4 | 1/2 x 1/2 x 12-1/2 | hard wood | pieces door lattice
        4 | 1/2 x 1/2 x 7 | hard wood | pieces door lattice
        2 | 1-1/4 x 1-1/4 x 13 | soft wood | bottom cleats
        2 | 1 x 1 x 12-1/2 | soft wood | top cleats
        3 | 1/2 x 12 x 28-1/2 | soft wood | shelves
        12 | 3/8 x 4 x 29-3/4 | soft wood | pieces backing
        """;

    /// <summary>The same, Part 3, Chicago 1912, p. 7.</summary>
    private const string LibraryTable = """
        4 | 2 x 2 x 30-1/4 | quarter-sawed oak | legs
        1 | 1-1/8 x 30 x 42 | quarter-sawed oak | top
        2 | 3/4 x 17-1/8 x 29 | quarter-sawed oak | end pieces
        2 | 7/8 x 2 x 37 | quarter-sawed oak | top rails
        2 | 7/8 x 2 x 25-1/2 | quarter-sawed oak | top rails
        1 | 3/4 x 2 x 32 | quarter-sawed oak | lower brace
        4 | 3/4 x 7 x 29 | quarter-sawed oak | shelves
        8 | 1/4 x 1-1/8 x 17-1/8 | quarter-sawed oak | slats
        2 | 3/4 x 5-3/4 x 25 | quarter-sawed oak | drawer fronts
        4 | 3/8 x 3-3/4 x 14 | soft wood | drawer sides
        2 | 3/8 x 3-3/8 x 24-1/4 | soft wood | drawer ends
        2 | 3/8 x 13-1/4 x 24-1/4 | soft wood | drawer bottoms
        2 | 3/4 x 2 x 23-1/2 | soft wood | drawer supports
        2 | 3/4 x 2 x 25 | soft wood | drawer supports
        """;

    public static readonly Dictionary<string, StockBill> All = new()
    {
        ["Tabouret"] = StockBill.Read("Tabouret", "Windsor 1909, part 1, p. 17", Tabouret),
        ["Bookcase"] = StockBill.Read("Bookcase", "Windsor 1910, part 2, p. 70", Bookcase),
        ["Library table"] = StockBill.Read("Library table", "Windsor 1912, part 3, p. 7", LibraryTable),
    };
}
