namespace ShopPlanner.Core.Tests.Bills;

/// <summary>
/// Stock bills of books in the public domain, without the longest: counts, names and sizes are the books', the lines are put
/// together from them.
/// </summary>
internal static class BookBills
{
    public static readonly BookBill[] All =
    [
        // Mission Furniture: How to Make It, Part 1, H. H. Windsor (Popular Mechanics Handbooks), 1909, p. 17
        new(
            "Tabouret",
            """
            For the top order one piece 7/8 in. thick and 17 in. square, with two
            surfaces planed; for the legs, four pieces each 7/8 in. thick, 4-3/4 in. wide
            and 18-1/2 in. long. There are two lower stretchers 7/8 in. thick, 2-3/4 in.
            wide and 15-3/4 in. long and two top stretchers 7/8 in. thick, 2-1/4 in. wide
            and 13-1/4 in. long. The keys can be made from the waste.
            """,
            [
                "1 top: 7/8 x 17 x 17",
                "4 legs: 7/8 x 4 3/4 x 18 1/2",
                "2 lower stretchers: 7/8 x 2 3/4 x 15 3/4",
                "2 top stretchers: 7/8 x 2 1/4 x 13 1/4",
            ]
        ),
        // Mission Furniture: How to Make It, Part 1, H. H. Windsor (Popular Mechanics Handbooks), 1909, p. 109
        new(
            "Mission plant stand",
            """
            Quarter-sawed white oak:
            Top: 1 piece, 3/4 by 15-1/2 by 15-1/2 in., S-2-S.
            Posts: 4 pieces, 1-1/4 by 1-1/4 by 20 in., S-4-S.
            Rails: 4 pieces, 3/4 by 3 by 11 in., S-2-S;
                   2 pieces, 3/4 by 2 by 11 in., S-2-S.
            Shelf: 1 piece, 3/4 by 6 by 10 in., S-2-S.
            Slats: 4 pieces, 1/4 by 2 by 12-1/4 in., S-2-S; 2 pieces, 1/4 by 2 by 12-3/4 in., S-2-S.
            """,
            [
                "1 Top: 3/4 x 15 1/2 x 15 1/2, Quarter-sawed white oak",
                "4 Posts: 1 1/4 x 1 1/4 x 20, Quarter-sawed white oak",
                "4 Rails: 3/4 x 3 x 11, Quarter-sawed white oak",
                "2 Rails: 3/4 x 2 x 11, Quarter-sawed white oak",
                "1 Shelf: 3/4 x 6 x 10, Quarter-sawed white oak",
                "4 Slats: 1/4 x 2 x 12 1/4, Quarter-sawed white oak",
                "2 Slats: 1/4 x 2 x 12 3/4, Quarter-sawed white oak",
            ]
        ),
        // Mission Furniture: How to Make It, Part 2, H. H. Windsor (Popular Mechanics Handbooks), 1910, p. 70
        new(
            "Bookcase",
            """
            1 top, 3/4 by 15 by 31-1/4 in., hard wood, S-1-S.
            1 top back board, 3/4 by 4 by 30-1/4 in., hard wood, S-1-S.
            2 sides, 3/4 by 14 by 50 in., hard wood, S-1-S.
            1 bottom, 3/4 by 14 by 28-3/4 in., hard wood, S-1-S.
            1 bottom rail, 3/4 by 4 by 28-3/4 in., hard wood, S-1-S.
            1 center piece, 3/4 by 2 by 45-3/4 in., hard wood, S-2-S.
            4 door sides, 3/4 by 1-1/2 by 45-1/4 in., hard wood, S-2-S.
            4 door ends, 3/4 by 1-1/2 by 14 in., hard wood, S-2-S.
            4 pieces door lattice, 1/2 by 1/2 by 12-1/2 in., hard wood.
            4 pieces door lattice, 1/2 by 1/2 by 7 in., hard wood.
            2 bottom cleats, 1-1/4 by 1-1/4 by 13 in., soft wood.
            2 top cleats, 1 by 1 by 12-1/2 in., soft wood.
            3 shelves, 1/2 by 12 by 28-1/2 in., soft wood.
            12 pieces backing, 3/8 by 4 by 29-3/4 in., soft wood.
            4 hinges.
            2 door handles.
            """,
            [
                "1 top: 3/4 x 15 x 31 1/4, hard wood",
                "1 top back board: 3/4 x 4 x 30 1/4, hard wood",
                "2 sides: 3/4 x 14 x 50, hard wood",
                "1 bottom: 3/4 x 14 x 28 3/4, hard wood",
                "1 bottom rail: 3/4 x 4 x 28 3/4, hard wood",
                "1 center piece: 3/4 x 2 x 45 3/4, hard wood",
                "4 door sides: 3/4 x 1 1/2 x 45 1/4, hard wood",
                "4 door ends: 3/4 x 1 1/2 x 14, hard wood",
                "4 pieces door lattice: 1/2 x 1/2 x 12 1/2, hard wood",
                "4 pieces door lattice: 1/2 x 1/2 x 7, hard wood",
                "2 bottom cleats: 1 1/4 x 1 1/4 x 13, soft wood",
                "2 top cleats: 1 x 1 x 12 1/2, soft wood",
                "3 shelves: 1/2 x 12 x 28 1/2, soft wood",
                "12 pieces backing: 3/8 x 4 x 29 3/4, soft wood",
            ]
        ),
        // Mission Furniture: How to Make It, Part 3, H. H. Windsor (Popular Mechanics Handbooks), 1912, p. 82
        new(
            "Hall bench",
            """
            4 slats, 7/8 by 4 by 17 in., cheap wood.
            2 cleats, 7/8 by 1 by 26 in., cheap wood.
            4 end rails, 7/8 by 2 by 16-1/4 in., oak, S-2-S.
            2 ends, 7/8 by 16 by 16-1/4 in., oak, S-2-S.
            2 sides, 7/8 by 4 by 25 in., oak, S-2-S.
            2 pieces, 7/8 by 5-1/2 by 25 in., oak, S-2-S.
            """,
            [
                "4 slats: 7/8 x 4 x 17, cheap wood",
                "2 cleats: 7/8 x 1 x 26, cheap wood",
                "4 end rails: 7/8 x 2 x 16 1/4, oak",
                "2 ends: 7/8 x 16 x 16 1/4, oak",
                "2 sides: 7/8 x 4 x 25, oak",
                "2 pieces: 7/8 x 5 1/2 x 25, oak",
            ]
        ),
        // The Boy Mechanic, Volume 1: 700 Things for Boys to Do (Popular Mechanics), 1913, p. 226
        new(
            "Workbench for the amateur",
            """
            Of birch or maple:
            4 leg, 3 by 3 by 36.
            2 side rails, 3 by 3 by 62-1/2 in.
            2 end rails, 3 by 3 by 20 in.
            1 back board, 1 by 9 by 80 in.
            1 top board, 2 by 12 by 77 in.
            1 top board, 1 by 12 by 77 in.
            2 crosspieces, 1-1/2 by 3 by 24 in.
            1 piece for clamp, 1-1/2 by 6-1/2 by 12 in.
            1 piece for clamp, 1-1/2 by 6-1/2 by 14 in.
            4 guides, 2 by 2 by 18 in.
            1 screw block, 3 by 3 by 6 in.
            1 piece, 1-1/2 by 4-1/2 by 10-1/2 in.
            """,
            [
                "4 leg: 3 x 3 x 36, birch or maple",
                "2 side rails: 3 x 3 x 62 1/2, birch or maple",
                "2 end rails: 3 x 3 x 20, birch or maple",
                "1 back board: 1 x 9 x 80, birch or maple",
                "1 top board: 2 x 12 x 77, birch or maple",
                "1 top board: 1 x 12 x 77, birch or maple",
                "2 crosspieces: 1 1/2 x 3 x 24, birch or maple",
                "1 piece for clamp: 1 1/2 x 6 1/2 x 12, birch or maple",
                "1 piece for clamp: 1 1/2 x 6 1/2 x 14, birch or maple",
                "4 guides: 2 x 2 x 18, birch or maple",
                "1 screw block: 3 x 3 x 6, birch or maple",
                "1 piece: 1 1/2 x 4 1/2 x 10 1/2, birch or maple",
            ]
        ),
        // Carpentry and Woodwork, Edwin W. Foster, 1911, fig. 133
        new(
            "Nail box",
            """
            Pine, length x width x thickness:
            2 pieces  15 x 1-3/4 x 1/2
            2 pieces  3 x 1-3/4 x 1/2
            2 pieces  3-1/2 x 1-3/4 x 3/8
            """,
            ["2 pieces: 1/2 x 1 3/4 x 15, Pine", "2 pieces: 1/2 x 1 3/4 x 3, Pine", "2 pieces: 3/8 x 1 3/4 x 3 1/2, Pine"]
        ),
        // Carpentry and Woodwork, Edwin W. Foster, 1911, fig. 235
        new(
            "Packing case",
            """
            Of one-inch stock:
            2 pieces  4 ft. 8 in. x 3 ft. 2 in.  Top and bottom
            2   "     4 ft. 8 in. x 2 ft. 6 in.  Side
            2   "     3 ft. 0 in. x 2 ft. 6 in.  End
            """,
            ["2 Top and bottom: 1 x 38 x 56", "2 Side: 1 x 30 x 56", "2 End: 1 x 30 x 36"]
        ),
    ];
}
