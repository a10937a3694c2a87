using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What holds a shelf on its wall cleat: lag screws into studs, counted for a full shelf.</summary>
/// <param name="Outside">Of the shelf.</param>
/// <param name="Height">Of the cleat's bevel over the lower edge, on which the shelf leans against the wall.</param>
/// <param name="Builder">Takes hardware, steps and findings.</param>
internal sealed record WallHanging(Outside Outside, Length Height, Builder Builder)
{
    private static readonly SourceNote Books = new(
        "Common practice: 25 lb per square foot, a row of books on a shelf 12 in deep, and 4 lb per square foot for the shelf "
            + "itself",
        Certainty.CommonPractice
    );

    // The lightest wood that studs are of: the cautious figure.
    private static readonly SourceNote Lightest = new(
        "National Design Specification 2018, Table 12.3.3A: 0.36, the lightest usual stud wood",
        Certainty.Quoted
    );

    private static readonly Length Spacing = Length.FromInches(16);

    private static readonly Length Thread = Length.FromInches(1.5m);

    /// <summary>Adds screws and findings.</summary>
    public void Note(LengthUnit unit)
    {
        var needed = Needed();
        var studs = Math.Max(1, (int)(Outside.Width.Value / Spacing));
        var count = Math.Max((int)needed.Value, studs);
        Builder.IsFixedToWall = true;
        Builder.Buy("Lag screws, 1/4 in × 3 in or longer by the wall's covering, with washers", count);
        Builder.Warn(
            Severity.Safety,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Screw the wall cleat into studs or solid masonry with {count} screws, as their maker says. "
            ) + "Drywall alone carries no shelf.",
            null,
            needed
        );
        if (studs < 2)
            Builder.Warn(
                Severity.Fails,
                $"Only one stud lies behind it for certain, and a shelf on one stud swings. Make it at least "
                    + $"{LengthFormat.WithUnit(Spacing * 2, unit)} long."
            );
        if (needed.Value > studs)
            Builder.Warn(
                Severity.Fails,
                string.Create(CultureInfo.InvariantCulture, $"Full of books it needs {needed.Value:0} screws, and {studs} ")
                    + (studs == 1 ? "stud takes" : "studs take")
                    + string.Create(CultureInfo.InvariantCulture, $" {studs} for certain, one each. ")
                    + $"Make it longer, less deep than {LengthFormat.WithUnit(Outside.Depth.Value, unit)}, or higher.",
                null,
                needed
            );
    }

    private Working<double> Needed()
    {
        var each = Working.Looked("Load", QuantityKind.AreaLoad.ToMetric(29, LengthUnit.Inch), QuantityKind.AreaLoad, 0, Books);
        var area = (double)Area.Of(Outside.Width.Value, Outside.Depth.Value).ToSquareMetres();
        var load = Working.Of(
            "Full shelf",
            each.Value * area,
            QuantityKind.Mass,
            0,
            "{each} × {width} × {depth}",
            Working.Geometry,
            ("each", each),
            ("width", Outside.Width),
            ("depth", Outside.Depth)
        );
        var fixing = WallFixings.Fixings.First(one => one.Word == "lag-1/4");
        var pull = WallFixings.Pull(load, Outside.Depth, Working.Given("Cleat over the lower edge", Height));
        var gravity = Working.Looked("Specific gravity of the studs", 0.36, QuantityKind.Bare, 2, Lightest);
        var thread = Working.Given("Thread in the stud", Thread);
        var held = new WallLoad(
            load,
            pull,
            WallFixings.Shear(fixing, gravity, thread),
            WallFixings.Withdrawal(fixing, gravity, thread)
        );
        return WallFixings.Count(held, Working.Given("Screws along the bottom", 0.0, QuantityKind.Bare, 0));
    }
}
