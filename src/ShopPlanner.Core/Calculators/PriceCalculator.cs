using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Prices of wood.</summary>
internal static class PriceCalculator
{
    // Square feet are shown in both systems: the price is for them.
    private static readonly QuantityKind SquareFeet = new("ft²", "ft²", 1);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Number("price", "Price", least: "0", most: "1000000"),
        Key.Choice(
            "per",
            "For",
            "board-foot",
            new("board-foot", "a board foot"),
            new("cubic-meter", "a cubic meter"),
            new("square-foot", "a square foot"),
            new("square-meter", "a square meter"),
            new("sheet", "a whole sheet")
        ),
        Key.Length("thickness", "Thickness as sold", "1 in", most: "12 in").Hint("For wood sold by volume: 1 for 4/4, 2 for 8/4"),
        Key.Length("width", "Width of the part", most: "10 ft"),
        Key.Length("length", "Length of the part", most: "40 ft"),
        Key.Count("count", "Parts", "1", "1", "10000"),
        Key.Number("waste", "Waste, percent", "0", "0", "90"),
        Key.Choice("counted", "Waste is", "added", new("added", "added to the parts"), new("share", "a share of what you buy")),
        Key.Choice(
            "thin",
            "Stock under 1 in",
            "as-inch",
            new("as-inch", "counts as 1 in"),
            new("real", "counts as its real thickness")
        ),
        Key.Length("sheet-width", "Sheet width", "48 in", "1 in", "10 ft"),
        Key.Length("sheet-length", "Sheet length", "96 in", "1 in", "20 ft"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<PriceAsked, PriceMade>(
        "price",
        "Price of wood",
        "What a part costs by the board foot, the square foot or the sheet, and what one price is in the other measure."
    )
    {
        Keys = Keys,
        Read = PriceAsked.Read,
        Make = asked => new(asked),
        Results = made => made.Figures,
        Verdicts =
        [
            new(
                Tip,
                made => made.Asked.Waste.Value > 0,
                made =>
                    made.Asked.IsShare
                        ? "Waste is counted as a share of what you buy. Added "
                            + "to the parts instead, the same percentage buys less."
                        : "Waste is added to the parts. As a share of what you buy, the same percentage buys more."
            ),
            new(
                Watch,
                made => made.Asked.By == PricedBy.Sheet,
                "This is the part's share of a sheet. You buy whole sheets: plan the cuts to see how many."
            ),
            new(
                Watch,
                made => WoodPrices.IsVolume(made.Asked.By) && made.Asked.Waste.Value == 0,
                "Without waste. Rough boards lose 15 to 30 percent to knots, ends and milling (common practice)."
            ),
        ],
    }.Form;

    private sealed record PriceAsked(
        LengthUnit Unit,
        Working<double> Price,
        PricedBy By,
        Working<double> Net,
        Working<double> Waste,
        bool IsShare,
        Working<double> Sheet,
        Working<double> Parts
    ) : Question(Unit)
    {
        public static PriceAsked Read(FormReader reader)
        {
            var by = reader.Choice("per") switch
            {
                "cubic-meter" => PricedBy.CubicMetre,
                "square-foot" => PricedBy.SquareFoot,
                "square-meter" => PricedBy.SquareMetre,
                "sheet" => PricedBy.Sheet,
                _ => PricedBy.BoardFoot,
            };
            var price = reader.Number("price");
            var sheet = Area.Of(reader.Length("sheet-width"), reader.Length("sheet-length"));
            return new(
                reader.Unit,
                Working.Looked("Price", price, new PriceFigure(price), Working.AsGiven),
                by,
                WoodPrices.IsVolume(by) ? Volume(reader) : Face(reader),
                Working.Given("Waste", reader.Number("waste"), QuantityKind.Percent, 1),
                reader.Choice("counted") == "share",
                Working.Looked("Sheet", (double)sheet.ToSquareFeet(), SquareFeet, 2, Working.Geometry),
                PartsOf(reader)
            );
        }

        private static Working<double> PartsOf(FormReader reader) =>
            Working.Given("Parts", reader.Count("count"), QuantityKind.Bare, 0);

        private static Working<double> Volume(FormReader reader)
        {
            var (width, length) = (reader.Given("Width", "width"), reader.Given("Length", "length"));
            var thickness = reader.Length("thickness");
            var thin = reader.Choice("thin") == "real" ? ThinStock.RealThickness : ThinStock.AsOneInch;
            var feet = BoardMeasure.Counted(thickness, width.Value, length.Value, reader.Count("count"), thin).ToBoardFeet();
            return Working.Of(
                "Board feet of the parts",
                (double)feet,
                QuantityKind.BoardFeet,
                3,
                "{thickness} × {width} × {length} × {parts} ÷ 144 in³",
                WoodPrices.Board,
                ("thickness", Working.Given("Thickness as sold", thickness)),
                ("width", width),
                ("length", length),
                ("parts", PartsOf(reader))
            );
        }

        private static Working<double> Face(FormReader reader)
        {
            var (width, length) = (reader.Given("Width", "width"), reader.Given("Length", "length"));
            // A price by the face doesn't ask for the thickness; a wrong one is told all the same.
            _ = reader.Length("thickness");
            return Working.Of(
                "Area of the parts",
                (double)Area.Of(width.Value, length.Value).ToSquareFeet() * reader.Count("count"),
                SquareFeet,
                3,
                "{width} × {length} × {parts}",
                Working.Geometry,
                ("width", width),
                ("length", length),
                ("parts", PartsOf(reader))
            );
        }
    }

    private sealed record PriceMade(PriceAsked Asked)
    {
        private readonly Working<double> foot = WoodPrices.PerFoot(Asked.By, Asked.Price, Asked.Sheet);

        private readonly Working<double> bought = WoodPrices.Bought(
            Asked.Net,
            Asked.Waste,
            Asked.IsShare,
            WoodPrices.IsVolume(Asked.By) ? QuantityKind.BoardFeet : SquareFeet
        );

        public IEnumerable<Working> Figures => [All, Each, bought, foot, WoodPrices.PerMetre(Asked.By, foot)];

        private Working<double> All =>
            WoodPrices.Priced(
                "Price of the parts",
                foot.Value * bought.Value,
                "{foot} × {bought}",
                Working.Geometry,
                ("foot", foot),
                ("bought", bought)
            );

        private Working<double> Each =>
            WoodPrices.Priced(
                "Price of one part",
                All.Value / Asked.Parts.Value,
                "{all} ÷ {parts}",
                Working.Geometry,
                ("all", All),
                ("parts", Asked.Parts)
            );
    }
}
