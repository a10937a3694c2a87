using System.Collections.Immutable;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Calculators;

/// <summary>
/// The cautions that answers share, in our own words. They remind; the maker's instructions, local codes and licensed practice
/// come before them.
/// </summary>
public static class Cautions
{
    /// <summary>Sawing: guard, riving knife.</summary>
    public static readonly Caution Guards = new(
        "guards",
        "Keep the guard, riving knife and anti-kickback parts on the saw, with the guard down on the work or within "
            + "1/4 in (6 mm) of it. A spreader must be thinner than the kerf. Wear eye and ear protection. The saw's manual "
            + "comes first.",
        new("29 CFR 1910.213 and state rules for woodworking machines that repeat it", Quoted)
    );

    /// <summary>A groove, dado, rabbet or tongue: the guard cannot stay on.</summary>
    public static readonly Caution GrooveWithoutGuard = new(
        "groove-without-guard",
        "A cut that doesn't go through needs the guard, and on many saws the riving knife, off the blade. Hold the work "
            + "down and against the fence with featherboards, use push blocks, and never pass a hand over the blade. Put the "
            + "guard and knife back afterward. Use only cutters the saw's maker allows.",
        new("California Code of Regulations, Title 8, §4296: featherboards or jigs where a guard cannot be used", Read)
    );

    /// <summary>Kickback: an offcut between blade and fence.</summary>
    public static readonly Caution TrappedCutoff = new(
        "trapped-cutoff",
        "A piece caught between the blade and the fence is thrown back hard. Never crosscut with the end of the work "
            + "against the fence: clamp a stop block well ahead of the blade. Keep the waste on the free side, stand out of "
            + "line with it, and push the piece between fence and blade until it is past the blade.",
        new("29 CFR 1910.213, guarding against kickback", FromMemory)
    );

    /// <summary>Pieces too short or narrow to hold by hand.</summary>
    public static readonly Caution SmallParts = new(
        "small-parts",
        "A piece under about 12 in (300 mm) long or 3 in (75 mm) wide puts your fingers too near the blade. Cut it last "
            + "from a longer or wider piece, or hold it in a sled or jig. Never hold it by hand alone.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Dust of wood and panels.</summary>
    public static readonly Caution Dust = new(
        "dust",
        "Wood dust harms your lungs, and dust of some woods, oak and beech among them, can cause cancer. Collect it "
            + "where it is made, wear a respirator that suits the work, and don't blow it off or sweep it dry.",
        new("OSHA and NIOSH pages on wood dust", Read)
    );

    /// <summary>Rags with drying oils.</summary>
    public static readonly Caution OilyRags = new(
        "oily-rags",
        "Rags with a drying oil (linseed, tung, Danish oil, oil stain) heat up by themselves and can catch fire. Spread "
            + "them flat, one by one, to dry outdoors, or keep them under water in a closed metal can. Then dispose of them as "
            + "your fire department and local rules say.",
        new("Fire-prevention pages of insurers and a university workshop; NFPA", Quoted)
    );

    /// <summary>Solvents and finishes.</summary>
    public static readonly Caution Solvents = new(
        "solvents",
        "Read the label and the safety data sheet. Ventilate the room, keep flames, sparks and pilot lights away, and "
            + "wear gloves and the respirator the label names. Never mix products unless the maker says so.",
        new("29 CFR 1910.94, 1910.134 and 1910.1200", FromMemory)
    );

    /// <summary>Old painted wood.</summary>
    public static readonly Caution LeadPaint = new(
        "lead-paint",
        "Paint from before 1978 may contain lead. Don't dry-sand, scrape or heat it. Test it first, keep children away, "
            + "and leave the work to a certified professional if you find lead.",
        new("EPA, lead-safe renovation", FromMemory)
    );

    /// <summary>Tall pieces and pieces with drawers.</summary>
    public static readonly Caution Tipping = new(
        "tipping",
        "Tall pieces and pieces with drawers or doors can tip and crush a child. A piece built at home has not "
            + "been tested: anchor it to the wall, keep heavy things low, and let only one drawer open at a time if you can.",
        new("16 CFR 1261 and ASTM F2057-23, as described by the CPSC", Read)
    );

    /// <summary>What a shelf holds.</summary>
    public static readonly Caution ShelfLoad = new(
        "shelf-load",
        "Shelf figures are estimates from average clear wood. Knots, joints and fasteners can be weaker. Never let "
            + "anyone sit or stand on a shelf. Over beds or seats, ask a professional.",
        new("Common practice", CommonPractice)
    );

    /// <summary>What hangs on a wall.</summary>
    public static readonly Caution WallFixing = new(
        "wall-fixing",
        "Screw into studs (often 16 or 24 in apart; find them first) with at least 1 1/2 in (38 mm) of screw in the "
            + "stud, or use anchors made for the wall, loaded as their maker says. Check for wires and pipes. Building codes "
            + "and licensed trades come first.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Drilling and driving screws.</summary>
    public static readonly Caution Drilling = new(
        "drilling",
        "Clamp the work: a bit that catches spins it. Keep the other hand out of line with the bit or the screw: it can come "
            + "through. Tie back hair and sleeves, never wear gloves at a drill press, and wear eye protection.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Large bits, such as the one for a hinge cup.</summary>
    public static readonly Caution LargeBit = new(
        "large-bit",
        "A 35 mm bit grabs: clamp the door to a drill press table or use a boring jig, run slowly, and set the depth stop on "
            + "scrap first. Never hold the door by hand alone.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Jointing edges.</summary>
    public static readonly Caution Jointer = new(
        "jointer",
        "Keep the jointer's guard over the knives and pass no hand above them: use push blocks. Joint nothing shorter than about "
            + "12 in (300 mm), take light cuts, and stand out of line with the work. The machine's manual comes first.",
        new("29 CFR 1910.213, jointers; the length is common practice", FromMemory)
    );

    /// <summary>All of them.</summary>
    public static readonly ImmutableArray<Caution> All =
    [
        Guards,
        GrooveWithoutGuard,
        TrappedCutoff,
        SmallParts,
        Dust,
        OilyRags,
        Solvents,
        LeadPaint,
        Tipping,
        ShelfLoad,
        WallFixing,
        Drilling,
        LargeBit,
        Jointer,
    ];
}
