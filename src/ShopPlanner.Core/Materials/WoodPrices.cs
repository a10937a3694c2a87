using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>What a price is for.</summary>
internal enum PricedBy
{
    /// <summary>A board foot.</summary>
    BoardFoot,

    /// <summary>A cubic meter.</summary>
    CubicMetre,

    /// <summary>A square foot.</summary>
    SquareFoot,

    /// <summary>A square meter.</summary>
    SquareMetre,

    /// <summary>A whole sheet.</summary>
    Sheet,
}

/// <summary>Prices of wood by volume, area and sheet.</summary>
internal static class WoodPrices
{
    /// <summary>How waste is counted.</summary>
    public static readonly SourceNote WasteRule = new(
        "Common practice, in two ways: waste added to the net amount, or taken as a share of what you buy",
        Certainty.CommonPractice
    );

    /// <summary>Board measure.</summary>
    public static readonly SourceNote Board = new("Board measure: a board foot is 144 cubic inches", Certainty.Read);

    private const double FeetPerCubicMetre = 1 / 0.002359737216;
    private const double FeetPerSquareMetre = 1 / 0.09290304;

    /// <summary>Whether a price is for wood by its volume.</summary>
    public static bool IsVolume(PricedBy by) => by is PricedBy.BoardFoot or PricedBy.CubicMetre;

    /// <summary>Price of a board foot, or of a square foot for sheets.</summary>
    /// <param name="by">What the price is for.</param>
    /// <param name="price">In units of the currency.</param>
    /// <param name="sheet">The sheet's face, square feet.</param>
    public static Working<double> PerFoot(PricedBy by, Working<double> price, Working<double> sheet)
    {
        var (value, template) = by switch
        {
            PricedBy.CubicMetre => (price.Value / FeetPerCubicMetre, "{price} ÷ 423.776"),
            PricedBy.SquareMetre => (price.Value / FeetPerSquareMetre, "{price} ÷ 10.764"),
            PricedBy.Sheet => (price.Value / sheet.Value, "{price} ÷ {sheet}"),
            _ => (price.Value, "{price}"),
        };
        return Priced(
            IsVolume(by) ? "Price of a board foot" : "Price of a square foot",
            value,
            template,
            IsVolume(by) ? Board : Working.Geometry,
            by == PricedBy.Sheet ? [("price", price), ("sheet", sheet)] : [("price", price)]
        );
    }

    /// <summary>The same price by the metric measure.</summary>
    public static Working<double> PerMetre(PricedBy by, Working<double> foot) =>
        IsVolume(by)
            ? Priced("Price of a cubic meter", foot.Value * FeetPerCubicMetre, "{foot} × 423.776", Board, ("foot", foot))
            : Priced(
                "Price of a square meter",
                foot.Value * FeetPerSquareMetre,
                "{foot} × 10.764",
                Working.Geometry,
                ("foot", foot)
            );

    /// <summary>What must be bought for a net amount.</summary>
    /// <param name="net">In feet, board or square.</param>
    /// <param name="waste">Percent.</param>
    /// <param name="isShare">Whether waste is a share of what is bought.</param>
    /// <param name="kind">Of the amount.</param>
    public static Working<double> Bought(Working<double> net, Working<double> waste, bool isShare, QuantityKind kind) =>
        Working.Of(
            "Amount to buy",
            isShare ? net.Value / (1 - (waste.Value / 100)) : net.Value * (1 + (waste.Value / 100)),
            kind,
            2,
            isShare ? "{net} ÷ (1 − {waste})" : "{net} × (1 + {waste})",
            WasteRule,
            ("net", net),
            ("waste", waste)
        );

    /// <summary>An amount of money.</summary>
    public static Working<double> Priced(
        string name,
        double value,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Working.Of(name, value, new PriceFigure(value), template, source, inputs);
}
