using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Where the order and the methods come from.</summary>
internal static class Sources
{
    /// <summary>Try before glue.</summary>
    public static readonly SourceNote DryFit = new(
        "Handwork in Wood (1910), pp. 130, 152, 196; Mission Furniture 1, pp. 108–110; Carpentry and Woodwork (1911), p. 365",
        Read
    );

    /// <summary>Ends first.</summary>
    public static readonly SourceNote EndsFirst = new(
        "Handwork in Wood, pp. 130, 196; Carpentry and Woodwork, p. 367; Mission Furniture 1–3, over ten pieces",
        Read
    );

    /// <summary>Panels are free.</summary>
    public static readonly SourceNote FreePanel = new("Handwork in Wood, pp. 130, 164; Carpentry and Woodwork, p. 355", Read);

    /// <summary>Square, flat, clean while the glue is wet.</summary>
    public static readonly SourceNote WhileWet = new("Handwork in Wood, pp. 130–131", Read);

    /// <summary>Laps first.</summary>
    public static readonly SourceNote CrossFirst = new("Handwork in Wood, p. 152", Read);

    /// <summary>The top after the frame, free to move.</summary>
    public static readonly SourceNote TopMoves = new(
        "Handwork in Wood, pp. 196–197; Carpentry and Woodwork, p. 367; Mission Furniture 1, p. 111",
        Read
    );

    /// <summary>Screws before what covers them.</summary>
    public static readonly SourceNote ScrewsFirst = new("Mission Furniture 1, p. 111", Read);

    /// <summary>Doors are cut large and trimmed.</summary>
    public static readonly SourceNote DoorTrim = new(
        "Carpentry and Woodwork, pp. 355, 357; Mission Furniture 2, p. 13, and 3, p. 20",
        Read
    );

    /// <summary>Drawers are fitted to the dry case.</summary>
    public static readonly SourceNote DrawerFit = new("Handwork in Wood, pp. 191–192, 196", Read);

    /// <summary>Glue off before stain.</summary>
    public static readonly SourceNote GlueOff = new("Mission Furniture 1, p. 108; 2, pp. 9, 50; 3, pp. 7, 10, 25, 82", Read);

    /// <summary>Feet are leveled when the top is on.</summary>
    public static readonly SourceNote Feet = new("Carpentry and Woodwork, pp. 366–367", Read);

    /// <summary>Hinges fitted, taken off, put back after the finish: sources differ.</summary>
    public static readonly SourceNote Hinges = new(
        "Common practice; Carpentry and Woodwork, p. 357, hangs before the finish, Mission Furniture 2, p. 83, after it",
        CommonPractice
    );

    /// <summary>Pulls after the finish.</summary>
    public static readonly SourceNote Pulls = new("Mission Furniture 2, pp. 88, 111; Carpentry and Woodwork, p. 360", Read);

    /// <summary>Common practice.</summary>
    public static readonly SourceNote Common = new("Common practice", CommonPractice);
}
