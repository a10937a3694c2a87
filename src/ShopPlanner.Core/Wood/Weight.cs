using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Wood;

/// <summary>What wood weighs.</summary>
public static class Weight
{
    /// <summary>Specific gravity and moisture.</summary>
    public static readonly SourceNote Rule = new(
        "Density = 1000 kg/m³ × specific gravity × (1 + moisture); Wood Handbook, FPL-GTR-190, ch. 4",
        Certainty.Derived
    );

    /// <summary>Moisture of wood that stands indoors, percent (common practice).</summary>
    public static readonly Working<double> Indoors = Working.Given("Moisture", 8, QuantityKind.Percent, 0);

    /// <summary>What one person lifts under the best conditions, kg: the load constant of the NIOSH lifting equation, 51 lb (from
    /// memory).</summary>
    public const double OnePerson = 23;

    /// <summary>Density, kg/m³; a panel's is as published, whatever its moisture.</summary>
    /// <param name="row">The wood or panel.</param>
    /// <param name="moisture">Percent.</param>
    public static Working<double> Density(Strength row, Working<double> moisture)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Density(row, row.Gravity, moisture);
    }

    /// <summary>Density where little weight is the unsafe side, kg/m³: of the lightest of a mixed lot.</summary>
    /// <inheritdoc cref="Density(Strength, Working{double})" path="/param"/>
    public static Working<double> LeastDensity(Strength row, Working<double> moisture)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Density(row, row.Lightest, moisture);
    }

    private static Working<double> Density(Strength row, double value, Working<double> moisture)
    {
        var gravity = Working.Looked(
            "Specific gravity of " + WoodNames.InText(row.Name),
            value,
            QuantityKind.Bare,
            2,
            row.GravitySource
        );
        return row.IsPanel
            ? Working.Of("Density", 1000 * value, QuantityKind.Density, 0, "62.4 lb/ft³ × {gravity}", Rule, ("gravity", gravity))
            : Working.Of(
                "Density",
                1000 * value * (1 + (moisture.Value / 100)),
                QuantityKind.Density,
                0,
                "62.4 lb/ft³ × {gravity} × (1 + {moisture})",
                Rule,
                ("gravity", gravity),
                ("moisture", moisture)
            );
    }

    /// <summary>Weight, kg.</summary>
    public static Working<double> Of(Volume volume, Working<double> density)
    {
        var cubic = (double)volume.ToCubicMetres();
        var amount = Working.Looked(
            "Volume",
            cubic,
            new QuantityFigure((double)volume.ToBoardFeet(), QuantityKind.BoardFeet, 2),
            Working.Geometry
        );
        return Working.Of(
            "Weight",
            cubic * density.Value,
            QuantityKind.Mass,
            1,
            "{volume} × {density}",
            Rule,
            ("volume", amount),
            ("density", density)
        );
    }
}
