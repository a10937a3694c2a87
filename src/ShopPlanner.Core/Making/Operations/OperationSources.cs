using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Where the order or the method of an operation rests on a rule of the trade. Books are named by title, year and page;
/// the words are our own.</summary>
internal static class OperationSources
{
    /// <summary>Edges are glued before the panel is cut to size and its corners are notched.</summary>
    public static readonly SourceNote PanelThenSize = new(
        $"{Carpentry}, p. 366, and {Mission3}, p. 25: a panel is glued up first, then cut to size and notched",
        Certainty.Read
    );

    /// <summary>A glued panel rests before it is planed.</summary>
    public static readonly SourceNote SunkenJoint = new(
        "A wood scientist's trade page: glue wets the edges, and a joint that is planed while swollen sinks later; about 7 days "
            + "are usually enough",
        Certainty.Quoted
    );

    /// <summary>Grooves and rabbets are cut before the frame is glued.</summary>
    public static readonly SourceNote GrooveThenGlue = new(
        $"{Mission2}, p. 11: grooves and rabbets are cut before the frame is glued",
        Certainty.Read
    );

    /// <summary>Mortises come before a leg's taper, and both before the ends are glued.</summary>
    public static readonly SourceNote MortiseThenTaper = new(
        $"{Handwork}, p. 196, and {Mission1}, p. 18: legs are mortised before they are tapered",
        Certainty.Read
    );

    /// <summary>Which of mortise and tenon is cut first.</summary>
    public static readonly SourceNote MortiseOrTenon = new(
        $"Either order is told: {Mission1}, p. 110, marks mortises from their tenons; so does part 3 "
            + "(1912), pp. 20, 25 and 84, or the reverse. Here the mortise comes first, since a tenon is easier to fit",
        Certainty.Read
    );

    /// <summary>Toe notches and feet are shaped before the case is glued.</summary>
    public static readonly SourceNote NotchThenGlue = new(
        $"Told in this order: {Mission2}, p. 70, and part 1 (1909), p. 44, shape the lower ends before the case is glued",
        Certainty.Read
    );

    /// <summary>Pin holes are bored in loose sides.</summary>
    public static readonly SourceNote PinsThenGlue = new(
        $"{Mission2}, p. 70, bores loose sides; a trade page bores after assembly",
        Certainty.Read
    );

    /// <summary>Screw holes in rails come before the rails are glued.</summary>
    public static readonly SourceNote HolesThenGlue = new(
        $"{Carpentry}, p. 369, and {Mission1}, p. 19: the top's screw holes are bored in the rails before these are glued",
        Certainty.Read
    );

    /// <summary>Holes are bored in single parts.</summary>
    public static readonly SourceNote HolesFirst = new(
        "Common practice: clearance and bolt holes are bored in single parts, where a template and a drill press still fit",
        Certainty.CommonPractice
    );

    /// <summary>The grooves or slots that hold a top come before the frame is glued.</summary>
    public static readonly SourceNote ButtonsThenGlue = new(
        $"{Handwork}, pp. 195 to 197: the rails are grooved for the top's buttons before they are glued, and the top "
            + "stays free to move",
        Certainty.Read
    );

    /// <summary>Doors are made large and trimmed to their opening.</summary>
    public static readonly SourceNote TrimToOpening = new(
        $"{Carpentry}, pp. 355 and 357, and {Mission3}, p. 20: a door is made large and trimmed to its opening",
        Certainty.Read
    );

    /// <summary>Cups are bored before the door hangs.</summary>
    public static readonly SourceNote CupsThenHang = new(
        "Common practice: cups and gains are cut before the door is hung",
        Certainty.CommonPractice
    );

    /// <summary>Bands and edging come before dadoes.</summary>
    public static readonly SourceNote BandThenDado = new(
        "Common practice: a band is put on before dadoes and grooves cross it, so that it doesn't close their ends",
        Certainty.CommonPractice
    );

    /// <summary>Pockets.</summary>
    public static readonly SourceNote PocketsFirst = new(
        "Common practice: pocket holes are bored in single parts, where the jig and its clamp still fit",
        Certainty.CommonPractice
    );

    /// <summary>Dowel holes.</summary>
    public static readonly SourceNote DowelsFirst = new(
        $"{Handwork}, p. 130: dowels sit in one part before the last glue, so both rows are bored before it",
        Certainty.Derived
    );

    /// <summary>Edges are eased after the joints are cut.</summary>
    public static readonly SourceNote EaseLate = new(
        "Common practice: edges are eased after all joints are cut, never where parts meet flush",
        Certainty.CommonPractice
    );

    /// <summary>Both parts of a hanging cleat come from one board.</summary>
    public static readonly SourceNote OneBoard = new(
        "Common practice: one cut at 45° through a wide board gives both cleats",
        Certainty.CommonPractice
    );

    /// <summary>How dovetails are cut.</summary>
    public static readonly SourceNote Dovetails = new(
        "Common practice: one half is cut first and the other marked from it",
        Certainty.CommonPractice
    );

    /// <summary>How long glue stays in clamps.</summary>
    public static readonly SourceNote Clamped = new(
        "Glue makers' pages: 30 to 60 min in clamps at 50 °F (10 °C) or warmer; the glue's label comes first",
        Certainty.Quoted
    );

    /// <summary>When glue is hard.</summary>
    public static readonly SourceNote Hardened = new(
        "Glue makers' pages: no load for 24 h; the glue's label comes first",
        Certainty.Quoted
    );
}
