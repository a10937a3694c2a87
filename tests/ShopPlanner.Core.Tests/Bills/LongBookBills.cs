namespace ShopPlanner.Core.Tests.Bills;

/// <summary>
/// The longest stock bills of those books; see <see cref="BookBills"/>.
/// </summary>
internal static class LongBookBills
{
    public static readonly BookBill[] All =
    [
        // Mission Furniture: How to Make It, Part 2, H. H. Windsor (Popular Mechanics Handbooks), 1910, p. 47
        new(
            "China closet",
            """
            Quarter-sawed oak:
            4 posts, 2 by 2 by 54 in., S-4-S.
            2 top and bottom boards, 3/4 by 15-3/4 by 39-1/2 in., S-1-S.
            2 shelves, 3/4 by 15-1/2 by 38 in., S-2-S.
            2 lower end braces, 3/4 by 5 by 15 in., S-2-S.
            2 upper end braces, 3/4 by 4-1/4 by 15 in., S-2-S.
            1 lower front board, 3/4 by 3 by 40 in., S-1-S.
            1 upper front board, 3/4 by 2-1/4 by 40 in., S-1-S.
            4 door frames, 3/4 by 1-3/4 by 43-1/2 in., S-2-S.
            4 door frames, 3/4 by 2 by 19 in., S-2-S.
            4 upright end pieces, 3/4 by 1-1/2 by 39-1/2 in., S-2-S.
            5 back pieces, 1/2 by 8 by 46-1/2 in., S-1-S.
            2 cleats, 1 by 1 by 37-3/4 in., soft wood.
            4 cleats, 1 by 1 by 12-3/4 in., soft wood.
            4 blocks, 1/2 by 1 by 1-1/2 in.
            """,
            [
                "4 posts: 2 x 2 x 54, Quarter-sawed oak",
                "2 top and bottom boards: 3/4 x 15 3/4 x 39 1/2, Quarter-sawed oak",
                "2 shelves: 3/4 x 15 1/2 x 38, Quarter-sawed oak",
                "2 lower end braces: 3/4 x 5 x 15, Quarter-sawed oak",
                "2 upper end braces: 3/4 x 4 1/4 x 15, Quarter-sawed oak",
                "1 lower front board: 3/4 x 3 x 40, Quarter-sawed oak",
                "1 upper front board: 3/4 x 2 1/4 x 40, Quarter-sawed oak",
                "4 door frames: 3/4 x 1 3/4 x 43 1/2, Quarter-sawed oak",
                "4 door frames: 3/4 x 2 x 19, Quarter-sawed oak",
                "4 upright end pieces: 3/4 x 1 1/2 x 39 1/2, Quarter-sawed oak",
                "5 back pieces: 1/2 x 8 x 46 1/2, Quarter-sawed oak",
                "2 cleats: 1 x 1 x 37 3/4, soft wood",
                "4 cleats: 1 x 1 x 12 3/4, soft wood",
                "4 blocks: 1/2 x 1 x 1 1/2, Quarter-sawed oak",
            ]
        ),
        // Mission Furniture: How to Make It, Part 3, H. H. Windsor (Popular Mechanics Handbooks), 1912, p. 7
        new(
            "Library table",
            """
            Quarter-sawed oak:
            4 legs, 2 by 2 by 30-1/4 in., S-4-S.
            1 top, 1-1/8 by 30 by 42 in., S-4-S.
            2 end pieces, 3/4 by 17-1/8 by 29 in., S-2-S.
            2 top rails, 7/8 by 2 by 37 in., S-4-S.
            2 top rails, 7/8 by 2 by 25-1/2 in., S-4-S.
            1 lower brace, 3/4 by 2 by 32 in., S-4-S.
            4 shelves, 3/4 by 7 by 29 in., S-4-S.
            8 slats, 1/4 by 1-1/8 by 17-1/8 in., S-4-S.
            2 drawer fronts, 3/4 by 5-3/4 by 25 in., S-4-S.
            4 drawer sides, 3/8 by 3-3/4 by 14 in., soft wood.
            2 drawer ends, 3/8 by 3-3/8 by 24-1/4 in., soft wood.
            2 drawer bottoms, 3/8 by 13-1/4 by 24-1/4 in., soft wood.
            2 drawer supports, 3/4 by 2 by 23-1/2 in., soft wood.
            2 drawer supports, 3/4 by 2 by 25 in., soft wood.
            """,
            [
                "4 legs: 2 x 2 x 30 1/4, Quarter-sawed oak",
                "1 top: 1 1/8 x 30 x 42, Quarter-sawed oak",
                "2 end pieces: 3/4 x 17 1/8 x 29, Quarter-sawed oak",
                "2 top rails: 7/8 x 2 x 37, Quarter-sawed oak",
                "2 top rails: 7/8 x 2 x 25 1/2, Quarter-sawed oak",
                "1 lower brace: 3/4 x 2 x 32, Quarter-sawed oak",
                "4 shelves: 3/4 x 7 x 29, Quarter-sawed oak",
                "8 slats: 1/4 x 1 1/8 x 17 1/8, Quarter-sawed oak",
                "2 drawer fronts: 3/4 x 5 3/4 x 25, Quarter-sawed oak",
                "4 drawer sides: 3/8 x 3 3/4 x 14, soft wood",
                "2 drawer ends: 3/8 x 3 3/8 x 24 1/4, soft wood",
                "2 drawer bottoms: 3/8 x 13 1/4 x 24 1/4, soft wood",
                "2 drawer supports: 3/4 x 2 x 23 1/2, soft wood",
                "2 drawer supports: 3/4 x 2 x 25, soft wood",
            ]
        ),
        // Mission Furniture: How to Make It, Part 3, H. H. Windsor (Popular Mechanics Handbooks), 1912, p. 20
        new(
            "Wardrobe",
            """
            Quarter-sawed oak:
            4 posts, 1-3/4 by 1-3/4 by 64-1/2 in., S-4-S.
            2 front rails, 3/4 by 1-1/2 by 37-1/2 in., S-4-S.
            1 top and 1 bottom board, 3/4 by 18-1/2 by 37 in., S-4-S.
            1 top back rail, 3/4 by 4-1/4 by 37-1/2 in., S-4-S.
            1 lower back rail, 3/4 by 4 by 37-1/2 in., S-4-S.
            6 end rails, 3/4 by 6 by 18-1/2 in., S-4-S.
            4 end uprights, 3/4 by 4 by 22-1/2 in., S-4-S.
            8 end panels, 3/8 by 7-1/2 by 22-1/2 in., S-4-S.
            5 shelves, 3/4 by 17-3/4 by 19-1/2 in., S-4-S.
            2 drawer fronts, 3/4 by 4-3/4 by 8-1/2 in., S-4-S.
            1 door, 3/4 by 7-3/4 by 10 in., S-4-S.
            1 shelf partition, 3/4 by 10 by 19 in., S-4-S.
            2 drawer fronts, 3/4 by 7 by 17 in., S-4-S.
            1 drawer front, 3/4 by 8 by 17 in., S-4-S.
            1 partition, of several pieces, 3/4 by 19-1/2 by 57-3/4 in., S-4-S.
            4 door uprights, 3/4 by 2-1/2 by 57 in., S-4-S.
            2 top rails, 3/4 by 3-1/2 by 14-1/2 in., S-4-S.
            2 middle rails, 3/4 by 6 by 14-1/2 in., S-4-S.
            2 lower rails, 3/4 by 4-1/2 by 14-1/2 in., S-4-S.
            4 center uprights, 3/4 by 2-1/2 by 23 in., S-4-S.
            8 panels, 3/8 by 6 by 22-1/2 in., S-4-S.
            4 pieces, 3/8 by 4-3/4 by 19 in., soft wood.
            2 pieces, 3/8 by 8 by 19 in., soft wood.
            2 pieces, 3/8 by 4-1/4 by 8 in., soft wood.
            4 pieces, 1/2 by 7 by 19 in., soft wood.
            3 pieces, 1/2 by 16-1/2 by 19 in., soft wood.
            2 pieces, 1/2 by 6-1/2 by 16-1/2 in., soft wood.
            2 pieces, 1/2 by 8 by 19 in., soft wood.
            1 piece, 1/2 by 7-1/2 by 16-1/2 in., soft wood.
            1 back, of several pieces, 3/8 by 36 by 58 in., S-2-S.
            """,
            [
                "4 posts: 1 3/4 x 1 3/4 x 64 1/2, Quarter-sawed oak",
                "2 front rails: 3/4 x 1 1/2 x 37 1/2, Quarter-sawed oak",
                "2 top and bottom board: 3/4 x 18 1/2 x 37, Quarter-sawed oak",
                "1 top back rail: 3/4 x 4 1/4 x 37 1/2, Quarter-sawed oak",
                "1 lower back rail: 3/4 x 4 x 37 1/2, Quarter-sawed oak",
                "6 end rails: 3/4 x 6 x 18 1/2, Quarter-sawed oak",
                "4 end uprights: 3/4 x 4 x 22 1/2, Quarter-sawed oak",
                "8 end panels: 3/8 x 7 1/2 x 22 1/2, Quarter-sawed oak",
                "5 shelves: 3/4 x 17 3/4 x 19 1/2, Quarter-sawed oak",
                "2 drawer fronts: 3/4 x 4 3/4 x 8 1/2, Quarter-sawed oak",
                "1 door: 3/4 x 7 3/4 x 10, Quarter-sawed oak",
                "1 shelf partition: 3/4 x 10 x 19, Quarter-sawed oak",
                "2 drawer fronts: 3/4 x 7 x 17, Quarter-sawed oak",
                "1 drawer front: 3/4 x 8 x 17, Quarter-sawed oak",
                "1 partition: 3/4 x 19 1/2 x 57 3/4, Quarter-sawed oak",
                "4 door uprights: 3/4 x 2 1/2 x 57, Quarter-sawed oak",
                "2 top rails: 3/4 x 3 1/2 x 14 1/2, Quarter-sawed oak",
                "2 middle rails: 3/4 x 6 x 14 1/2, Quarter-sawed oak",
                "2 lower rails: 3/4 x 4 1/2 x 14 1/2, Quarter-sawed oak",
                "4 center uprights: 3/4 x 2 1/2 x 23, Quarter-sawed oak",
                "8 panels: 3/8 x 6 x 22 1/2, Quarter-sawed oak",
                "4 pieces: 3/8 x 4 3/4 x 19, soft wood",
                "2 pieces: 3/8 x 8 x 19, soft wood",
                "2 pieces: 3/8 x 4 1/4 x 8, soft wood",
                "4 pieces: 1/2 x 7 x 19, soft wood",
                "3 pieces: 1/2 x 16 1/2 x 19, soft wood",
                "2 pieces: 1/2 x 6 1/2 x 16 1/2, soft wood",
                "2 pieces: 1/2 x 8 x 19, soft wood",
                "1 piece: 1/2 x 7 1/2 x 16 1/2, soft wood",
                "1 back: 3/8 x 36 x 58, Quarter-sawed oak",
            ]
        ),
    ];
}
