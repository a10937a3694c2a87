using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings.Forms;

/// <summary>Grooves, drawers, glue-ups.</summary>
internal static class JoineryForms
{
    public static readonly ImmutableArray<WorkingForm> All = [GrooveForm(), DrawerForm(), GlueUpForm()];

    private static WorkingForm GrooveForm() => new(
        "groove", "Centred groove and tongue", "Fence settings for a groove in the middle of an edge, and the tongue that fits it.",
        [
            new("stock", "Thickness of the piece", KeyKind.Length) { Most = "6 in" },
            new("groove", "What the blade or bit cuts", KeyKind.Length) { Default = "1/8 in", Most = "2 in" },
            new("panel", "Thickness of the panel", KeyKind.Length) { Optional = true, Most = "2 in", Hint = "Left out, the groove is a third of the piece" },
            new("fit", "Room in the groove", KeyKind.LengthOrZero) { Default = "1/64 in", Most = "1/8 in" },
            new("depth", "Depth of the groove", KeyKind.Length) { Default = "3/8 in", Most = "3 in" },
        ],
        reader =>
        {
            var (stock, blade, fit) = (Working.Given("Piece", reader.Length("stock")), Working.Given("Blade", reader.Length("groove")), Working.Given("Fit", reader.Length("fit")));
            var (panel, depth) = (reader.MaybeLength("panel"), Working.Given("Depth", reader.Length("depth")));
            return () => Grooved(stock, blade, panel is { } p ? Working.Given("Panel", p) : null, fit, depth);
        });

    private static FormOutcome Grooved(Working<Length> stock, Working<Length> blade, Working<Length>? panel, Working<Length> fit, Working<Length> depth)
    {
        var width = panel is null
            ? Working.Of("Groove", Length.Max(blade.Value, Length.FromTicks(stock.Value.Ticks / 3)), "a third of {stock}, at least {blade}", CentredGroove.Third, ("stock", stock), ("blade", blade))
            : Working.Of("Groove", panel.Value + fit.Value, "{panel} + {fit}", CentredGroove.Panel, ("panel", panel), ("fit", fit));
        if (blade.Value > width.Value) return Fault.Of("groove", Text(blade.Value), $"cuts wider than the groove that is wanted, {Text(width.Value)}");
        if (width.Value * 2 > stock.Value) return Fault.Of(panel is null ? "groove" : "panel", Text(width.Value), "leaves walls thinner than a quarter of the piece: they break");
        var groove = CentredGroove.Of(stock, blade, width, fit);
        var passes = Working.Looked("Passes", groove.Passes, QuantityKind.Bare, 0, Working.Geometry);
        ImmutableArray<Working> results = [width, groove.Fence, .. groove.Middle is { } middle ? new Working[] { middle } : [], passes, groove.Tongue, groove.Cheek, depth];
        return new Answer(results)
        {
            Verdicts =
            [
                new(Gravity.Fine, "Turn the piece end for end for the second pass: the groove lies in the middle even where the fence is a little off."),
                new(Gravity.Watch, "Cut two practice pieces of the same stock first, groove in one, tongue on the other, until they slide together by hand."),
            ],
            Cautions = [Cautions.GrooveWithoutGuard, Cautions.SmallParts],
            Parts = [new("Practice piece", Length.FromInches(12), Length.FromInches(3), stock.Value, 2)],
        };
    }

    private static WorkingForm DrawerForm() => new(
        "drawer", "Drawer", "The box of a drawer from its opening, and the slide that fits.",
        [
            new("opening-width", "Opening, width", KeyKind.Length) { Most = "6 ft" },
            new("opening-height", "Opening, height", KeyKind.Length) { Most = "3 ft" },
            new("opening-depth", "Opening, depth", KeyKind.Length) { Most = "4 ft" },
            new("slide-clearance", "Room for the slide at each side", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "2 in", Hint = "By the slide's sheet" },
            new("joint", "Corners", KeyKind.Choice) { Default = "butt", Choices = [new("butt", "butted"), new("rabbet", "rabbeted"), new("dado", "in dadoes"), new("dovetail", "dovetailed")] },
            new("bottom", "Depth of the bottom's groove", KeyKind.LengthOrZero) { Default = "1/4 in", Most = "1 in", Hint = "0: planted on from below" },
            new("side", "Thickness of the sides", KeyKind.Length) { Default = "1/2 in", Most = "2 in" },
            new("height-clearance", "Room above and below together", KeyKind.LengthOrZero) { Default = "1 in", Most = "6 in" },
        ],
        reader =>
        {
            var (width, high, deep) = (Working.Given("Opening width", reader.Length("opening-width")), Working.Given("Opening height", reader.Length("opening-height")), Working.Given("Opening depth", reader.Length("opening-depth")));
            var (clearance, groove, side) = (Working.Given("Slide", reader.Length("slide-clearance")), Working.Given("Groove", reader.Length("bottom")), Working.Given("Side", reader.Length("side")));
            var (room, joint) = (Working.Given("Room", reader.Length("height-clearance")), Enum.Parse<DrawerJoint>(reader.Choice("joint"), true));
            return () => Drawer(width, high, deep, clearance, side, joint, groove, room);
        });

    private static FormOutcome Drawer(
        Working<Length> width, Working<Length> high, Working<Length> deep, Working<Length> clearance, Working<Length> side, DrawerJoint joint, Working<Length> groove, Working<Length> room)
    {
        if ((clearance.Value + side.Value) * 2 >= width.Value) return Fault.Of("slide-clearance", Text(clearance.Value), "and the sides leave nothing of the opening between them");
        if (room.Value >= high.Value) return Fault.Of("height-clearance", Text(room.Value), "leaves no height for the box");
        if (groove.Value >= side.Value) return Fault.Of("bottom", Text(groove.Value), "goes through the side");
        if (DrawerBox.Slide(deep) is not { } slide) return Fault.Of("opening-depth", Text(deep.Value), "is shorter than the shortest usual slide, 10 in");
        var height = Working.Of("Box height", high.Value - room.Value, "{opening} − {room}", Working.Geometry, ("opening", high), ("room", room));
        var box = DrawerBox.Of(width, height, Working.Of("Box depth", slide.Value, "as long as the {slide}", DrawerBox.SlideLengths, ("slide", slide)), clearance, side, joint, groove);
        return new Answer([box.Width, box.Height, box.Depth, box.FrontBack, box.BottomWidth, box.BottomDepth, slide])
        {
            Verdicts = [new(Gravity.Watch, "Buy the slides first: their sheet says what room they want, and a box a little too wide jams.")],
            Cautions = [Cautions.Tipping],
            Parts =
            [
                new("Drawer side", box.Depth.Value, box.Height.Value, side.Value, 2), new("Drawer front and back", box.FrontBack.Value, box.Height.Value, side.Value, 2),
                new("Drawer bottom", box.BottomWidth.Value, box.BottomDepth.Value, Length.FromInches(0.25m), 1),
            ],
        };
    }

    private static WorkingForm GlueUpForm() => new(
        "glue-up", "Glue-up", "Strips, clamps and pressure for a wide panel.",
        [
            new("width", "Width of the panel", KeyKind.Length) { Most = "8 ft" },
            new("length", "Length of the panel", KeyKind.Length) { Most = "16 ft" },
            new("thickness", "Thickness", KeyKind.Length) { Default = "3/4 in", Most = "6 in" },
            new("board", "Width of a board", KeyKind.Length) { Default = "5 1/2 in", Most = "24 in" },
            new("joints", "Joints", KeyKind.Choice) { Default = "butt", Choices = [new("butt", "butted"), new("tongue", "tongue and groove"), new("spline", "with a spline")] },
            new("species", "Wood", KeyKind.Choice) { Default = "pine-eastern-white", Choices = WoodForms.Strong },
            new("jointing", "Jointed off each edge", KeyKind.LengthOrZero) { Default = "1/16 in", Most = "1 in" },
            new("tongue", "Length of a tongue", KeyKind.Length) { Default = "1/4 in", Most = "1 in" },
            new("caul", "Width of the cauls", KeyKind.LengthOrZero) { Default = "1 in", Most = "12 in" },
            new("oversize", "Left on all round, to trim", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "3 in" },
            new("spread", "What the glue's label says a gallon covers", KeyKind.Quantity) { Quantity = QuantityKind.Coverage, Default = "267 ft²/gal", Least = "20 ft²/gal", Most = "2000 ft²/gal" },
        ],
        reader =>
        {
            var oversize = reader.Length("oversize");
            var (width, length) = (Working.Given("Width, with what is trimmed", reader.Length("width") + oversize), Working.Given("Length, with what is trimmed", reader.Length("length") + oversize));
            var (thickness, jointing) = (Working.Given("Thickness", reader.Length("thickness")), reader.Length("jointing"));
            var board = Working.Given("Board, jointed", reader.Length("board") - (jointing * 2));
            var lost = Working.Given("Tongue", reader.Choice("joints") == "tongue" ? reader.Length("tongue") : Length.Zero);
            var hard = MaterialCatalogue.TryFindSpecies(reader.Choice("species"), out var species) && species.Kind == WoodKind.Hardwood;
            var (caul, spread) = (Working.Given("Caul", reader.Length("caul")), Working.Given("Spread", reader.Quantity("spread"), QuantityKind.Coverage, 0));
            return () => Glued(width, length, thickness, board, lost, hard, caul, spread, jointing);
        });

    private static FormOutcome Glued(
        Working<Length> width, Working<Length> length, Working<Length> thickness, Working<Length> board, Working<Length> lost, bool hard, Working<Length> caul, Working<double> spread, Length jointing)
    {
        if (board.Value <= lost.Value + lost.Value) return Fault.Of("board", Text(board.Value), "is all joint: a wider board or a shorter tongue is wanted");
        var strips = GlueUp.Strips(width, board, lost);
        var strip = GlueUp.StripWidth(width, strips, lost);
        var rip = Working.Of("Rip each strip at", strip.Value + (jointing * 2), "{strip} + 2 × {jointing}", GlueUp.Jointing, ("strip", strip), ("jointing", Working.Given("jointing", jointing)));
        var spacing = GlueUp.Spacing(strip, caul);
        var clamps = GlueUp.Clamps(length, spacing);
        var pressure = Working.Looked("Pressure", QuantityKind.Pressure.ToMetric(hard ? 212.5 : 125, LengthUnit.Inch), QuantityKind.Pressure, 0, GlueUp.PressureSource);
        var area = Area.Of(length.Value, thickness.Value) * Math.Max(0, strips.Value - 1);
        var glue = Working.Of(
            "Glue", (double)area.ToSquareMetres() / spread.Value, QuantityKind.Liquid, 3, "{area} ÷ {spread}", GlueUp.GlueRate,
            ("area", Working.Looked("Area of the joints", (double)area.ToSquareMetres(), QuantityKind.Area, 2, Working.Geometry)), ("spread", spread));
        return new Answer([strips, strip, rip, spacing, clamps, GlueUp.Force(pressure, length, thickness, clamps), glue])
        {
            Verdicts =
            [
                new(Gravity.Fine, "Clamps above and below in turn; dry-fit first; check that it lies flat before the glue grabs."),
                .. strips.Value > 5 ? new[] { new Verdict(Gravity.Watch, "More than five strips at once is much in the glue's open time: glue two halves, then the halves.") } : [],
            ],
            Cautions = [Cautions.Guards, Cautions.Dust],
            Parts = [new("Panel strip", length.Value, rip.Value, thickness.Value, strips.Value)],
        };
    }

    private static string Text(Length length) => LengthFormat.Plain(length, LengthUnit.Inch).Text + " in";
}
