using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>
/// The order of assembly beside what trade books in the public domain state. Mission Furniture: How to Make It, H. H. Windsor,
/// parts 1 to 3 (1909, 1910, 1912; Project Gutenberg 23770, 23991, 23666); Carpentry and Woodwork, E. W. Foster (1911; 43574).
/// The first of a pair is over before the second begins, where the book says before, first, when dry or the like. What the books
/// say of cutting joints and of the finish is left to the tests of those.
/// </summary>
public sealed class BookOrderTests
{
    private static readonly Told Whole = Told.Tried("whole piece set up dry");
    private static readonly Told GlueOff = Told.Done("glue scraped off", WorkAction.CleanGlue);

    public static TheoryData<string> Names => [.. Files];

    private static readonly string[] Files =
    [
        "plant-stand",
        "china-closet",
        "tabouret",
        "library-table",
        "wardrobe",
        "oak-table",
        "oak-buffet",
        "sewing-table",
        "school-library-table",
        "medicine-cabinet",
    ];

    [Theory, MemberData(nameof(Names))]
    public void Every_stated_precedence_is_kept(string name)
    {
        var book = Book.Read(name);
        foreach (var (before, after) in Stated(name))
        {
            var (first, second) = (book.When(before), book.When(after));
            Assert.True(first is not null, $"{name}: no step is '{before.Words}'");
            Assert.True(second is not null, $"{name}: no step is '{after.Words}'");
            Assert.True(
                first.Value.Last < second.Value.First,
                $"{name}: '{before.Words}' {first} isn't before '{after.Words}' {second} in "
                    + string.Join("; ", book.Plan.Steps.Select((step, i) => $"{i} {step.Id}"))
            );
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void The_order_can_be_followed(string name)
    {
        var book = Book.Read(name);
        Orders.Precede(book.Plan, name);
        Orders.Hold(book.Piece, Core.Making.Assembly.AssemblyOrder.Of(book.Piece, WorkChoices.Usual), name);
    }

    [Theory]
    [InlineData("plant-stand", 2, "Post 2, Upper rail 1, Lower rail 1, Slat 2, Long slat 1")]
    [InlineData("tabouret", 1, "Lower stretcher 2")]
    [InlineData("tabouret", 1, "Top stretcher 2")]
    [InlineData("oak-table", 2, "Post 2, Upper rail 1, Lower rail 1, Slat 3")]
    [InlineData("oak-buffet", 1, "Top board 1, Rail 2")]
    [InlineData("oak-buffet", 1, "Bottom board 1, Rail 2")]
    [InlineData("oak-buffet", 2, "Back post 1, Front post 1, End rail 2, End upright 2, End panel 1")]
    [InlineData("sewing-table", 2, "Post 2, Side rail 2, Side panel 1")]
    [InlineData("school-library-table", 2, "Leg 2, Short rail 1, Cross rail 1")]
    [InlineData("medicine-cabinet", 1, "Hinge stile 1, Door stile 1, Door rail 2, Door panel 1")]
    public void Subassemblies_are_those_of_the_book(string name, int count, string parts)
    {
        var book = Book.Read(name);
        var found = book.Plan.Subassemblies.SelectMany(unit => unit.Units).Select(unit => Counted(book, unit)).ToList();
        var wanted = string.Join(", ", parts.Split(", ").Order(StringComparer.Ordinal));
        Assert.True(found.Count(one => one == wanted) == count, string.Join("; ", found));
    }

    // Mission Furniture 1, p. 110, 2, p. 50, and 3, p. 28: 24 hours in clamps; the others say dry, and no figure.
    [Theory]
    [InlineData("plant-stand", "Upper rail", "Post", 24)]
    [InlineData("china-closet", "Lower front board", "Post", 24)]
    [InlineData("oak-table", "Upper rail", "Post", 24)]
    [InlineData("oak-buffet", "End rail", "Front post", 1)]
    [InlineData("school-library-table", "Short rail", "Leg", 1)]
    [InlineData("medicine-cabinet", "Door rail", "Door stile", 8)]
    public void Glue_sets_as_long_as_the_book_says(string name, string one, string other, int hours)
    {
        var book = Book.Read(name);
        var glued = book.Plan.Steps.First(step => book.Joins(step, one, other));
        Assert.True(glued.Wait is { } wait && wait.Minutes >= hours * 60, glued.Id);
    }

    private static string Counted(Book book, IEnumerable<string> marks) =>
        string.Join(", ", marks.GroupBy(book.NameOf).Select(same => $"{same.Key} {same.Count()}").Order(StringComparer.Ordinal));

    private static (Told Before, Told After)[] Stated(string name) =>
        name switch
        {
            "plant-stand" => PlantStand(),
            "china-closet" => ChinaCloset(),
            "tabouret" => Tabouret(),
            "library-table" => LibraryTable(),
            "wardrobe" => Wardrobe(),
            "oak-table" => OakTable(),
            "oak-buffet" => OakBuffet(),
            "sewing-table" => SewingTable(),
            "school-library-table" => SchoolLibraryTable(),
            _ => MedicineCabinet(),
        };

    // Part 1, pp. 109-112.
    private static (Told, Told)[] PlantStand()
    {
        var sides = Told.Made("two sides with slats glued", "Upper rail", "Post");
        var rails = Told.JoinedLast("other two rails fitted", "Upper rail", "Post");
        var shelf = Told.Joined("shelf screwed", "Shelf", "Lower rail");
        var slats = Told.Any("slats fastened to lower rails", ("Slat", "Lower rail"), ("Long slat", "Lower rail"));
        var top = Told.Joined("top screwed from below", "Top");
        return
        [
            (Whole, sides),
            (sides, rails),
            (sides, shelf),
            (shelf, top),
            (rails, top),
            (sides, slats),
            (slats, top),
            (Told.Joined("shelf screwed at one end", "Shelf", "Lower rail"), top),
        ];
    }

    // Part 2, pp. 47-50.
    private static (Told, Told)[] ChinaCloset()
    {
        var frame = Told.Any(
            "posts, end and front pieces glued",
            ("Post", "Lower end brace"),
            ("Post", "Upper end brace"),
            ("Post", "Lower front board"),
            ("Post", "Upper front board")
        );
        var boards = Told.Any("top and bottom boards", ("Bottom board", "End cleat"), ("Top board", "End cleat"));
        var back = Told.Any("back put on", ("Back piece", "Bottom board"), ("Back piece", "Top board"));
        var shelves = Told.Joined("shelves fixed through the back", "Shelf", "Back piece");
        return [(Whole, frame), (frame, boards), (frame, GlueOff), (back, shelves), (boards, back)];
    }

    // Part 1, pp. 17-20.
    private static (Told, Told)[] Tabouret()
    {
        var legs = Told.Joined("legs glued to top stretchers", "Leg", "Top stretcher");
        var crosses = Told.Any("crosses joined", ("Lower stretcher", "Lower stretcher"), ("Top stretcher", "Top stretcher"));
        return [(crosses, legs), (legs, Told.Joined("top screwed on", "Top"))];
    }

    // Part 3, pp. 7-10.
    private static (Told, Told)[] LibraryTable()
    {
        var table = Told.Any("table glued and screwed", ("Shelf", "Post"), ("Shelf", "End piece"));
        return
        [
            (Whole, table),
            (table, Told.Joined("slats nailed on", "Slat", "Shelf")),
            (table, Told.Joined("drawer supports screwed to end boards", "Drawer support", "End piece")),
        ];
    }

    // Part 3, pp. 20-24.
    private static (Told, Told)[] Wardrobe()
    {
        var frame = Told.Any(
            "frame with end panels glued",
            ("Post", "End rail"),
            ("Post", "Front rail"),
            ("Post", "Lower back rail"),
            ("Post", "Top back rail")
        );
        return
        [
            (frame, Told.Joined("shelves on cleats", "Shelf")),
            (frame, Told.Any("doors made and hung", ("Door stile", "Door top rail"), ("Door stile", "Post"))),
        ];
    }

    // Part 3, pp. 25-28.
    private static (Told, Told)[] OakTable()
    {
        var ends = Told.Made("two ends glued", "Upper rail", "Post");
        var rails = Told.JoinedLast("remaining two upper rails jointed", "Upper rail", "Post");
        var dry = Told.Done("each end set up dry", WorkAction.DryFit, "Slat");
        var whole = Told.Any("table glued", ("Stretcher", "Lower rail"));
        return [(dry, ends), (ends, rails), (ends, whole), (rails, Told.Joined("top fastened", "Top piece", "Upper rail"))];
    }

    // Part 2, pp. 5-9.
    private static (Told, Told)[] OakBuffet()
    {
        var ends = Told.Made("two ends with panels glued", "End rail", "Front post");
        var slipped = Told.JoinedLast("ends slipped on rail tenons", "Rail", "Front post");
        return
        [
            (Told.Joined("top board glued to its rails", "Top board", "Rail"), slipped),
            (Told.Joined("bottom board glued to its rails", "Bottom board", "Rail"), slipped),
            (Whole, ends),
            (ends, slipped),
            (Told.Joined("partitions in place", "Partition", "Top board"), slipped),
            (Told.Placed("back board in place", "Back board"), slipped),
            (slipped, Told.Joined("doors made", "Door panel", "Door piece")),
        ];
    }

    // Part 3, pp. 84-88.
    private static (Told, Told)[] SewingTable()
    {
        var sides = Told.Made("two table sides glued", "Side rail", "Post");
        var whole = Told.Any("whole table glued", ("Front rail", "Post"), ("Back rail", "Post"), ("Back panel", "Post"));
        return
        [
            (Whole, sides),
            (sides, whole),
            (whole, Told.Joined("drawer slides nailed in", "Drawer slide", "Post")),
            (Told.Joined("top screwed from below", "Top", "Side rail"), Told.Joined("leaves hinged", "Leaf", "Top")),
        ];
    }

    // Carpentry and Woodwork, pp. 361-367.
    private static (Told, Told)[] SchoolLibraryTable()
    {
        var boards = Told.Joined("top glued up", "Top board", "Top board");
        var ends = Told.Made("two ends glued", "Short rail", "Leg");
        var rails = Told.Any("shelf tenons and long rails put in", ("Shelf", "Cross rail"), ("Long rail", "Leg"));
        var top = Told.Any("top put on", ("Top board", "Short rail"), ("Top board", "Long rail"));
        var feet = Told.Done("feet levelled", WorkAction.TrimToSize, "Leg");
        var wedges = Told.Done("wedges placed", WorkAction.PutIn, "Wedge");
        return [(Whole, ends), (boards, ends), (ends, rails), (rails, top), (top, feet), (feet, GlueOff), (GlueOff, wedges)];
    }

    // Carpentry and Woodwork, pp. 354-357.
    private static (Told, Told)[] MedicineCabinet()
    {
        var door = Told.Joined("door glued with loose panel", "Door panel");
        var trimmed = Told.Done("door planed to its opening", WorkAction.FitDoor);
        var top = Told.Joined("top screwed on", "Top", "False top");
        var shelves = Told.Joined("shelves slid in and glued", "Shelf", "Side");
        var back = Told.Joined("back nailed to sides and shelves", "Back");
        return
        [
            (door, trimmed),
            (Told.Joined("false top nailed to sides", "False top", "Side"), top),
            (top, shelves),
            (shelves, back),
            (trimmed, Told.Done("hinges", WorkAction.Hang)),
            (back, trimmed),
        ];
    }
}
