using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Where the order and the methods come from.</summary>
internal static class Sources
{
    /// <summary>Try before glue.</summary>
    public static readonly SourceNote DryFit = new(
        $"{Handwork}, pp. 130, 152, 196; {Mission1}, pp. 108–110; {Carpentry}, p. 365",
        Read
    );

    /// <summary>Ends first.</summary>
    public static readonly SourceNote EndsFirst = new(
        $"{Handwork}, pp. 130, 196; {Carpentry}, p. 367; Mission Furniture, parts 1 to 3 (1909 to 1912), over ten pieces",
        Read
    );

    /// <summary>Panels are free.</summary>
    public static readonly SourceNote FreePanel = new($"{Handwork}, pp. 130, 164; {Carpentry}, p. 355", Read);

    /// <summary>Square, flat, clean while the glue is wet.</summary>
    public static readonly SourceNote WhileWet = new($"{Handwork}, pp. 130–131", Read);

    /// <summary>Laps first.</summary>
    public static readonly SourceNote CrossFirst = new($"{Handwork}, p. 152", Read);

    /// <summary>The top after the frame, free to move.</summary>
    public static readonly SourceNote TopMoves = new($"{Handwork}, pp. 196–197; {Carpentry}, p. 367; {Mission1}, p. 111", Read);

    /// <summary>Screws before what covers them.</summary>
    public static readonly SourceNote ScrewsFirst = new($"{Mission1}, p. 111", Read);

    /// <summary>Doors are cut large and trimmed.</summary>
    public static readonly SourceNote DoorTrim = new($"{Carpentry}, pp. 355, 357; {Mission2}, p. 13; {Mission3}, p. 20", Read);

    /// <summary>Drawers are fitted to the dry case.</summary>
    public static readonly SourceNote DrawerFit = new($"{Handwork}, pp. 191–192, 196", Read);

    /// <summary>Glue off before stain.</summary>
    public static readonly SourceNote GlueOff = new(
        $"{Mission1}, p. 108; part 2 (1910), pp. 9, 50; part 3 (1912), pp. 7, 10, 25, 82",
        Read
    );

    /// <summary>Feet are leveled when the top is on.</summary>
    public static readonly SourceNote Feet = new($"{Carpentry}, pp. 366–367", Read);

    /// <summary>Pulls after the finish.</summary>
    public static readonly SourceNote Pulls = new($"{Mission2}, pp. 88, 111; {Carpentry}, p. 360", Read);
}
