using System.Collections.Frozen;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>The words of stock bills: units, numbers, sides, and what tells a part from hardware or from talk.</summary>
internal static class BillWords
{
    private const int LongestUnit = 12;

    private static readonly FrozenDictionary<string, SizeUnit> Units = new Dictionary<string, SizeUnit>
    {
        ["in"] = SizeUnit.Inch,
        ["ins"] = SizeUnit.Inch,
        ["inch"] = SizeUnit.Inch,
        ["inches"] = SizeUnit.Inch,
        ["ft"] = SizeUnit.Foot,
        ["foot"] = SizeUnit.Foot,
        ["feet"] = SizeUnit.Foot,
        ["mm"] = SizeUnit.Millimetre,
        ["millimeter"] = SizeUnit.Millimetre,
        ["millimeters"] = SizeUnit.Millimetre,
        ["cm"] = SizeUnit.Centimetre,
        ["centimeter"] = SizeUnit.Centimetre,
        ["centimeters"] = SizeUnit.Centimetre,
        ["m"] = SizeUnit.Metre,
        ["meter"] = SizeUnit.Metre,
        ["meters"] = SizeUnit.Metre,
    }.ToFrozenDictionary();

    /// <summary>Returns the unit that a word is; none for another word.</summary>
    public static SizeUnit UnitOf(string word) =>
        word.Length > LongestUnit ? SizeUnit.None : Units.GetValueOrDefault(UnitSpelling.American(word));

    /// <summary>Numbers as words.</summary>
    public static readonly FrozenDictionary<string, int> Numbers = new Dictionary<string, int>
    {
        ["one"] = 1,
        ["two"] = 2,
        ["three"] = 3,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
        ["seven"] = 7,
        ["eight"] = 8,
        ["nine"] = 9,
        ["ten"] = 10,
        ["eleven"] = 11,
        ["twelve"] = 12,
        ["thirteen"] = 13,
        ["fourteen"] = 14,
        ["fifteen"] = 15,
        ["sixteen"] = 16,
        ["seventeen"] = 17,
        ["eighteen"] = 18,
        ["nineteen"] = 19,
        ["twenty"] = 20,
        ["thirty"] = 30,
        ["forty"] = 40,
        ["fifty"] = 50,
        ["dozen"] = 12,
        ["doz"] = 12,
    }.ToFrozenDictionary();

    /// <summary>Parts of a whole as words, by their denominator.</summary>
    public static readonly FrozenDictionary<string, int> Fractions = new Dictionary<string, int>
    {
        ["half"] = 2,
        ["halves"] = 2,
        ["quarter"] = 4,
        ["quarters"] = 4,
        ["fourth"] = 4,
        ["fourths"] = 4,
        ["eighth"] = 8,
        ["eighths"] = 8,
        ["sixteenth"] = 16,
        ["sixteenths"] = 16,
    }.ToFrozenDictionary();

    /// <summary>Words before a unit.</summary>
    public static readonly FrozenSet<string> FigureWords = Numbers.Keys.Concat(Fractions.Keys).ToFrozenSet();

    /// <summary>What a side is called after its figure.</summary>
    public static readonly FrozenDictionary<string, SizeRole> After = new Dictionary<string, SizeRole>
    {
        ["thick"] = SizeRole.Thickness,
        ["thk"] = SizeRole.Thickness,
        ["wide"] = SizeRole.Width,
        ["broad"] = SizeRole.Width,
        ["long"] = SizeRole.Length,
        ["square"] = SizeRole.Square,
        ["sq"] = SizeRole.Square,
        ["diam"] = SizeRole.Diameter,
        ["dia"] = SizeRole.Diameter,
        ["round"] = SizeRole.Diameter,
        ["high"] = SizeRole.Height,
        ["tall"] = SizeRole.Height,
        ["deep"] = SizeRole.Depth,
    }.ToFrozenDictionary();

    /// <summary>The nouns of sides, before or after a figure.</summary>
    public static readonly FrozenDictionary<string, SizeRole> Nouns = new Dictionary<string, SizeRole>
    {
        ["thickness"] = SizeRole.Thickness,
        ["width"] = SizeRole.Width,
        ["breadth"] = SizeRole.Width,
        ["length"] = SizeRole.Length,
        ["diameter"] = SizeRole.Diameter,
        ["height"] = SizeRole.Height,
        ["depth"] = SizeRole.Depth,
    }.ToFrozenDictionary();

    /// <summary>Words that end a side.</summary>
    public static readonly FrozenSet<string> SideWords = After.Keys.Concat(Nouns.Keys).ToFrozenSet();

    /// <summary>Abbreviations whose period doesn't end a sentence.</summary>
    public static readonly FrozenSet<string> Abbreviations = Set(
        "pc pcs pce pr prs no nos sq dia diam approx thk wd lg lgth qty doz ea fig figs lb lbs oz ex vol pp st"
    );

    /// <summary>Words after "in" where it isn't a unit.</summary>
    public static readonly string[] AfterIn = ["number", "the ", "each ", "all ", "front", "back", "place", "this ", "which"];

    /// <summary>Words for a piece of wood that don't say which.</summary>
    public static readonly FrozenSet<string> Pieces = Set(
        "piece pieces pc pcs pce board boards strip strips block blocks stick sticks"
    );

    /// <summary>Words that stand for nothing but the count.</summary>
    public static readonly FrozenSet<string> Bare = Set("piece pieces pc pcs pce off required wanted needed req'd reqd ea");

    /// <summary>Words for stock that follow its thickness.</summary>
    public static readonly FrozenSet<string> Stock = Set(
        "stock lumber board boards plank planks material stuff wood piece pieces strip strips timber timbers joist joists"
    );

    /// <summary>Round stock, sold by its diameter.</summary>
    public static readonly FrozenSet<string> Rounds = Set("dowel dowels doweling dowelling rod rods");

    /// <summary>Words that a name doesn't begin or end with.</summary>
    public static readonly FrozenSet<string> Edges = Set(
        "the a an for of and with each to in is are be by from at or on as that this these which all being measuring size sizes "
            + "it following there you we they its"
    );

    /// <summary>Words of headings that name no part.</summary>
    public static readonly FrozenSet<string> Lists = Set(
        "bill bills list following follows follow materials material lumber sizes size dimensions order stock needed required cut"
    );

    /// <summary>Verbs and helpers of a shopping sentence.</summary>
    public static readonly FrozenSet<string> Verbs = Set(
        "order get out cut make use take have procure secure buy saw plane prepare select obtain provide will should "
            + "must need needs "
            + "require requires required needed wanted next then also first now used made qty quantity"
    );

    /// <summary>What is bought ready made, or isn't wood.</summary>
    public static readonly FrozenSet<string> Hardware = Set(
        "screw screws nail nails brad brads tack tacks hinge hinges hinging glue caster casters castor castors knob "
            + "knobs pull pulls "
            + "handle handles lock locks catch catches bolt bolts nut nuts washer washers hook hooks eye eyes staple staples "
            + "leather cushion cushions stain varnish shellac wax filler paint oil turpentine glass mirror mirrors pane panes "
            + "wire cord rope chain canvas cloth felt webbing spring springs socket sockets glide glides sandpaper hardware "
            + "escutcheon escutcheons latch latches plaster upholstery burlap hair tile tiles lamp lamps battery"
    );

    /// <summary>Hardware that is made of wood too.</summary>
    public static readonly FrozenSet<string> Grips = Set("handle handles pull pulls knob knobs catch latch hook hooks");

    /// <summary>Metals: what is made of them isn't cut from boards.</summary>
    public static readonly FrozenSet<string> Metals = Set(
        "iron steel brass copper tin zinc lead bronze nickel aluminum galvanized"
    );

    /// <summary>What is cut into a part, with sizes of its own.</summary>
    public static readonly FrozenSet<string> Cuts = Set(
        "mortise mortises mortised tenon tenons hole holes groove grooves grooved rabbet rabbets dado dadoes bevel "
            + "beveled chamfer "
            + "chamfers notch notches slot slots gain gains drawing figure scale bore bored bit"
    );

    /// <summary>Words of sizes as bought.</summary>
    public static readonly FrozenSet<string> Bought = Set("rough bought nominal undressed unplaned");

    /// <summary>Words of sizes as finished.</summary>
    public static readonly FrozenSet<string> Finished = Set("finished finish net dressed");

    /// <summary>Words that make a figure uncertain.</summary>
    public static readonly FrozenSet<string> About = Set("about approximately approx nearly over least most");

    /// <summary>Words before a figure that is no count.</summary>
    public static readonly FrozenSet<string> NotCounts = Set(
        "no nos fig figs figure page number plate chapter vol gauge grade nominal on surfaced planed dressed every part step pp"
    );

    /// <summary>Whether the word at a place says that sizes are as bought: <c>rough</c>, <c>stock size</c>.</summary>
    public static bool IsBought(IReadOnlyList<BillToken> tokens, int at) =>
        tokens[at].IsIn(Bought) || (tokens[at].Is("stock") && at + 1 < tokens.Count && tokens[at + 1].Text is "size" or "sizes");

    private static FrozenSet<string> Set(string words) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);
}
