using System.Collections.Immutable;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Calculators;

/// <summary>Cautions of single tools and of loads on people, in our own words; like <see cref="Cautions"/> they remind, and the
/// maker's instructions and local codes come before them.</summary>
public static class ShopCautions
{
    /// <summary>Chisels and mortising.</summary>
    public static readonly Caution Chisels = new(
        "chisels",
        "Clamp the work, keep both hands behind the edge, and strike away from yourself. A dull chisel slips: sharpen it first. "
            + "Wear eye protection. On a mortiser or drill press, hold the work down with its clamp or fence.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Router bits.</summary>
    public static readonly Caution Router = new(
        "router",
        "Clamp the work or use featherboards, feed against the turn of the bit, and take deep cuts in several passes. Unplug the "
            + "router before you change a bit, and keep to the speed the bit's maker allows.",
        new("Common practice", CommonPractice)
    );

    /// <summary>A tilted blade or a miter gauge at an angle.</summary>
    public static readonly Caution AngledCuts = new(
        "angled-cuts",
        "A tilted blade or a turned miter gauge pulls the work sideways: clamp it to the gauge or a sled, keep the cutoff free, "
            + "and tilt the blade away from the fence. Check that blade, guard and fence clear each other before you start.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Tapers on a table saw.</summary>
    public static readonly Caution TaperJig = new(
        "taper-jig",
        "Rip a taper only in a jig or sled that clamps the piece, never freehand. Keep the cutoff on the free side of the "
            + "blade, and push with a block, never with fingers on the small end.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Curves on a bandsaw or with a jigsaw.</summary>
    public static readonly Caution CurvedCuts = new(
        "curved-cuts",
        "Saw beside the line and smooth to it. Set a bandsaw's guard just above the work, make relief cuts where the curve is "
            + "tight, and keep fingers out of the blade's path. Clamp the work for a jigsaw or a router on a trammel.",
        new("Common practice", CommonPractice)
    );

    /// <summary>Setting a saw up.</summary>
    public static readonly Caution Unplugged = new(
        "unplugged",
        "Unplug the saw before you measure at the blade or loosen anything, and put guard and riving knife back before the next "
            + "cut. Adjust only what the saw's manual lets you adjust.",
        new("29 CFR 1910.147 and saw makers' manuals: shut the power off before adjusting", FromMemory)
    );

    /// <summary>What people sit or lie on.</summary>
    public static readonly Caution PeopleLoad = new(
        "people-load",
        "Someone can be hurt when a seat or a bed breaks. These figures are for straight-grained wood without knots in the "
            + "middle third, and they don't judge joints. Load it with more than the weight, low above the floor, before anyone "
            + "uses it. Bunk and high beds have standards of their own: this figure is not for them.",
        new("EN 1725:2023, scope (bunk and high beds are excluded); the rest common practice", CommonPractice)
    );

    /// <summary>What hangs from screws.</summary>
    public static readonly Caution HangingLoad = new(
        "hanging-load",
        "Don't hang a load over people, beds or seats by these figures. They are for sound, dry wood and a pilot hole of the "
            + "right size. The screw maker's tables, local codes and a professional come first.",
        new("Common practice", CommonPractice)
    );

    /// <summary>An iron, and contact cement.</summary>
    public static readonly Caution HotIron = new(
        "hot-iron",
        "An iron for edge banding burns: keep its cord and your other hand clear, and set it down on its heel. Trim away from "
            + "yourself. Contact cement gives off vapors that burn: follow its label.",
        new("Common practice", CommonPractice)
    );

    /// <summary>A finish that children touch.</summary>
    public static readonly Caution ToyFinish = new(
        "toy-finish",
        "Use only a finish whose maker states that it is fit for toys or children's furniture, and let it harden as long as the "
            + "label says before a child uses the piece. Cribs, bunk beds, high chairs and toy chests have safety rules of their "
            + "own.",
        new("CPSC, rules for children's products", FromMemory)
    );

    /// <summary>A finish that food touches.</summary>
    public static readonly Caution FoodFinish = new(
        "food-finish",
        "Use only a finish whose maker states that it is fit for contact with food, and let it harden as long as the label says. "
            + "Nothing here claims that a finish is safe for food.",
        new("Common practice", CommonPractice)
    );

    /// <summary>All of them.</summary>
    public static readonly ImmutableArray<Caution> All =
    [
        Chisels,
        Router,
        AngledCuts,
        TaperJig,
        CurvedCuts,
        Unplugged,
        PeopleLoad,
        HangingLoad,
        HotIron,
        ToyFinish,
        FoodFinish,
    ];
}
