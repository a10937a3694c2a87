using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Finishing;

/// <summary>Where the rules of finishing come from. Where books differ, the note says each, and the figure is a
/// default.</summary>
public static class FinishSources
{
    /// <summary>The label in hand, which comes before every figure here.</summary>
    public static readonly SourceNote Can = new("The can in hand, as entered", Read);

    /// <summary>Hardening.</summary>
    public static readonly SourceNote Hardens = new(
        "Common practice: full hardness takes 7 to 30 days; the can comes first",
        CommonPractice
    );

    /// <summary>Clear finishes: sand, stain, fill, seal, finish, wax.</summary>
    public static readonly SourceNote ClearOrder = new(
        "Wood Handbook (FPL-GTR-190), ch. 16, finishing of interior wood: sand, stain, fill, seal, finish, wax",
        Read
    );

    /// <summary>Opaque finishes: fill, sand, prime, top coats.</summary>
    public static readonly SourceNote OpaqueOrder = new(
        "Wood Handbook (FPL-GTR-190), ch. 16, opaque finishes: fill, sand, primer or sealer, top coats",
        Read
    );

    /// <summary>Paint outdoors.</summary>
    public static readonly SourceNote Outdoors = new(
        "Wood Handbook (FPL-GTR-190), ch. 16, exterior wood: a primer and two top coats; planed softwood is wetted, dried and "
            + "scuffed with 50 to 80 grit",
        Read
    );

    /// <summary>How warm it has to be for paint.</summary>
    public static readonly SourceNote Warmth = new("Wood Handbook (FPL-GTR-190), ch. 16, temperature for painting", Read);

    /// <summary>Which woods are filled.</summary>
    public static readonly SourceNote Filled = new(
        $"{Carpentry}, p. 484: oak, ash, chestnut, mahogany, walnut and butternut are filled; woods with fine pores are not",
        Read
    );

    /// <summary>How filler is wiped.</summary>
    public static readonly SourceNote FillerWiped = new(
        $"Wood Handbook (FPL-GTR-190), ch. 16; {Carpentry}, p. 484; {Handwork}, p. 214",
        Read
    );

    /// <summary>How long filler dries.</summary>
    public static readonly SourceNote FillerDries = new(
        $"Sources differ: overnight in {Carpentry}, p. 484; a day and a night in {Mission1}, "
            + $"p. 77; 48 h in {Handwork}, p. 214",
        Read
    );

    /// <summary>How long shellac dries before it is rubbed.</summary>
    public static readonly SourceNote ShellacDries = new(
        $"Sources differ: 6 to 8 h in {Handwork}, p. 216; overnight in {Mission3}, p. 5; "
            + "24 h a coat in part 2 (1910), p. 82",
        Read
    );

    /// <summary>How long wax dries.</summary>
    public static readonly SourceNote WaxDries = new(
        $"Sources differ: half an hour in {Mission3}, p. 5; overnight in {Handwork}, p. 215; 24 h in {Mission2}, p. 82",
        Read
    );

    /// <summary>How long oil dries before shellac.</summary>
    public static readonly SourceNote OilDries = new($"{Mission3}, p. 5: 48 h from oil to shellac", Read);

    /// <summary>Wax comes after shellac.</summary>
    public static readonly SourceNote WaxLast = new($"{Mission3}, p. 25: shellac before wax, whose turpentine lifts stain", Read);

    /// <summary>Every coat is hard before the next.</summary>
    public static readonly SourceNote HardFirst = new(
        $"{Carpentry}, p. 481: every coat hard before the next, rubbed between",
        Read
    );

    /// <summary>Prime, then putty, then the next coat.</summary>
    public static readonly SourceNote Putty = new(
        $"{Carpentry}, pp. 367 and 425; {Mission3}, p. 82: nails set, then putty, then "
            + "the last coats; on paint, putty after the primer",
        Read
    );

    /// <summary>Inside faces are sanded before they are glued.</summary>
    public static readonly SourceNote SandedFirst = new(
        $"{Mission3}, p. 67; {Carpentry}, p. 369: inside faces before glue",
        Read
    );

    /// <summary>Wetting and sanding before what is thinned with water.</summary>
    public static readonly SourceNote Wetted = new($"{Handwork}, p. 210: wet, dry and sand before a water stain", Read);

    /// <summary>Knots.</summary>
    public static readonly SourceNote Knots = new("An army manual on painting (TM 5), 5-29: seal knots before painting", Read);

    /// <summary>Glue does not hold on a finish.</summary>
    public static readonly SourceNote Masked = new("A trade magazine's page on finishing before assembly", Quoted);

    /// <summary>Panels are finished before they go into their frames.</summary>
    public static readonly SourceNote PanelsFirst = new(
        "Three trade magazines' pages: finish a panel's edges before the frame is glued, or bare wood shows when it shrinks. "
            + "They differ on how much: a thick film may keep it out of its groove",
        Quoted
    );

    /// <summary>Hardware and the finish.</summary>
    public static readonly SourceNote Hinges = new(
        $"Sources differ: hinges before the finish in {Carpentry}, p. 357; metal after it in {Mission2}, "
            + "p. 83. Common practice is to fit them, take them off and put them back",
        CommonPractice
    );

    /// <summary>Common practice.</summary>
    public static readonly SourceNote Habit = SourceNote.CommonPractice;
}
