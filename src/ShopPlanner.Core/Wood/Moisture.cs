using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>The moisture that wood comes to in air of some temperature and humidity.</summary>
public static class Moisture
{
    /// <summary>The equation with its metric coefficients.</summary>
    public static readonly SourceNote Equation = new(
        "Wood Handbook, FPL-GTR-190, Eq. 4-5, coefficients for °C as quoted by a conservation-science package from FPL-RN-0268",
        Certainty.Quoted
    );

    /// <summary>Temperature that is taken where only a humidity is given: 70 °F.</summary>
    public const double RoomCelsius = 190.0 / 9;

    private const double Coldest = -1.2;
    private const double Hottest = 130;

    /// <summary>Equilibrium moisture content, percent; right to about 1% of moisture, whatever the wood.</summary>
    /// <param name="temperature">°C.</param>
    /// <param name="humidity">Relative humidity, percent from 0 to 100.</param>
    public static Working<double> Equilibrium(Working<double> temperature, Working<double> humidity) =>
        Working.Of(
            "Equilibrium moisture content",
            Percent(temperature.Value, humidity.Value / 100),
            QuantityKind.Percent,
            1,
            "1800/W × [K h ÷ (1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²) ÷ (1 + K₁ K h + K₁ K₂ K² h²)] at {temperature}, h = {humidity}",
            Equation,
            ("temperature", temperature),
            ("humidity", humidity)
        ) with
        {
            OutsideRange =
                temperature.Value is < Coldest or > Hottest ? "the equation was made for 30 to about 265 °F (−1 to 130 °C)"
                : humidity.Value > 95 ? "above 95% humidity the equation is unreliable"
                : null,
        };

    private static double Percent(double t, double h)
    {
        var w = 349 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        var k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        var k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        var (kh, all) = (k * h, k1 * k2 * k * k * h * h);
        return 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * all)) / (1 + (k1 * kh) + all)));
    }
}
