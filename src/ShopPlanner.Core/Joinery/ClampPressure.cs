using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How hard a glue line is pressed, MPa.</summary>
/// <param name="Least">Enough.</param>
/// <param name="Most">Not more.</param>
public sealed record ClampPressure(Working<double> Least, Working<double> Most)
{
    /// <summary>Softwood and hardwood.</summary>
    public static readonly SourceNote Maker = new(
        "A glue maker quoted on trade pages: 100–150 psi for softwood, 175–250 psi for hardwood",
        Certainty.Quoted
    );

    /// <summary>Woods between.</summary>
    public static readonly SourceNote Between = new(
        "Common practice: 125–175 psi for woods of medium density",
        Certainty.CommonPractice
    );

    // Hardwoods lighter than this are pressed like woods of medium density (common practice; our limit).
    private const double Light = 0.45;

    /// <summary>Softwood: 100 to 150 psi.</summary>
    public static ClampPressure Softwood => Of(100, 150, Maker);

    /// <summary>Light hardwood: 125 to 175 psi.</summary>
    public static ClampPressure Medium => Of(125, 175, Between);

    /// <summary>Hardwood: 175 to 250 psi.</summary>
    public static ClampPressure Hardwood => Of(175, 250, Maker);

    /// <summary>By wood.</summary>
    /// <param name="kind">Softwood or hardwood.</param>
    /// <param name="gravity">Specific gravity where it is known.</param>
    public static ClampPressure For(WoodKind kind, double? gravity) =>
        kind == WoodKind.Softwood ? Softwood
        : gravity < Light ? Medium
        : Hardwood;

    private static ClampPressure Of(double least, double most, SourceNote source) =>
        new(Psi("Lowest pressure", least, source), Psi("Highest pressure", most, source));

    // Shown to a hundredth of a megapascal.
    private static Working<double> Psi(string name, double psi, SourceNote source) =>
        Working.Looked(name, QuantityKind.Pressure.ToMetric(psi, LengthUnit.Inch), QuantityKind.Pressure, 2, source);
}
