using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>A screw or lag that goes into a stud.</summary>
/// <param name="Word">As chosen.</param>
/// <param name="Name">As shown.</param>
/// <param name="Diameter">Inches.</param>
/// <param name="IsLag">Whether it is a lag screw.</param>
internal sealed record StudFixing(string Word, string Name, double Diameter, bool IsLag);

/// <summary>What a piece loads its fixings with, and what one of them takes; all kg.</summary>
/// <param name="Load">Sideways, on all of them.</param>
/// <param name="Pull">Outward, on the top row.</param>
/// <param name="Sideways">One fixing, sideways.</param>
/// <param name="Withdrawal">One fixing, pulled out.</param>
internal sealed record WallLoad(Working<double> Load, Working<double> Pull, Working<double> Sideways, Working<double> Withdrawal)
{
    /// <summary>The share of what it may carry that a fixing of the top row carries; 1 is all.</summary>
    public double Share(double top, double bottom) =>
        ((Load.Value / ((top + bottom) * Sideways.Value)) + (Pull.Value / (top * Withdrawal.Value))) / WallFixings.ForYears;
}

/// <summary>Loads of a piece on a wall and what fixings in studs take of it; the fixing's maker and local codes come
/// first.</summary>
internal static class WallFixings
{
    /// <summary>Pull of a lag screw.</summary>
    public static readonly SourceNote LagPull = new(
        "National Design Specification, Table 12.2A: 1,800 × gravity^1.5 "
            + "× diameter^0.75, lb for each inch of thread without its tip",
        Certainty.Read
    );

    /// <summary>Load sideways.</summary>
    public static readonly SourceNote Sideways = new(
        "The design specification's yield equations for 3/4 in of wood over 1/2 in of drywall, which counts as a gap; a "
            + "lag screw "
            + "counts as a #10 screw",
        Certainty.FromMemory
    );

    /// <summary>The safety rule, the only one: design loads hold about a fifth of what breaks a fixing.</summary>
    public static readonly SourceNote Rule = new(
        "Published design loads, which hold their own safety (a screw pulls out of clear wood at about five times as "
            + "much), × 0.9 "
            + "for a load that stays longer than ten years (National Design Specification, Table 2.3.2); shares of weight "
            + "and pull "
            + "add up",
        Certainty.Quoted
    );

    /// <summary>How weight and pull add up.</summary>
    public static readonly SourceNote Statics = new(
        "Statics: weight × half of the depth ÷ height from the top fasteners to the bottom edge",
        Certainty.Derived
    );

    /// <summary>How many studs lie behind a piece for certain.</summary>
    public static readonly SourceNote StudRule = new(
        "Common practice: studs 16 or 24 in apart, not always; find each one",
        Certainty.CommonPractice
    );

    /// <summary>What counts of anchors.</summary>
    public static readonly SourceNote AnchorRule = new(
        "Common practice: weight and pull together against the anchor maker's working load",
        Certainty.CommonPractice
    );

    /// <summary>Fixings there are figures for.</summary>
    public static readonly ImmutableArray<StudFixing> Fixings =
    [
        new("screw-10", "#10 screws", 0.190, false),
        new("screw-12", "#12 screws", 0.216, false),
        new("lag-1/4", "1/4 in lag screws", 0.25, true),
        new("lag-5/16", "5/16 in lag screws", 0.3125, true),
        new("lag-3/8", "3/8 in lag screws", 0.375, true),
    ];

    /// <summary>What stays for years counts as more.</summary>
    public const double ForYears = 0.9;

    // Least penetration of a lag screw, in diameters (design specification, from memory).
    private const int LagDiameters = 4;
    private const double Near = 0.75;
    private const double Drywall = 0.5;

    /// <summary>Pull at the top fixings, kg.</summary>
    public static Working<double> Pull(Working<double> load, Working<Length> depth, Working<Length> height) =>
        Working.Of(
            "Pull at the top fasteners, total",
            load.Value * depth.Value.Ticks / 2.0 / height.Value.Ticks,
            QuantityKind.Mass,
            1,
            "{load} × ({depth} ÷ 2) ÷ {height}",
            Statics,
            ("load", load),
            ("depth", depth),
            ("height", height)
        );

    /// <summary>What one fixing holds against being pulled out, kg.</summary>
    public static Working<double> Withdrawal(StudFixing fixing, Working<double> gravity, Working<Length> thread)
    {
        var inches = (double)thread.Value.ToInches();
        var (pounds, template, source) = fixing.IsLag
            ? (
                1800 * Math.Pow(gravity.Value, 1.5) * Math.Pow(fixing.Diameter, 0.75) * inches,
                "1,800 × {gravity}^1.5 × {diameter}^0.75 × {thread}, in pounds and inches",
                LagPull
            )
            : (
                2850 * gravity.Value * gravity.Value * fixing.Diameter * inches,
                "2,850 × {gravity}² × {diameter} × {thread}, in pounds and inches",
                ScrewHolding.Withdrawal
            );
        return Load(
            "One fastener, pulled out",
            pounds,
            template,
            source,
            ("gravity", gravity),
            ("diameter", Diameter(fixing)),
            ("thread", thread)
        );
    }

    /// <summary>What one fixing holds sideways, kg.</summary>
    public static Working<double> Shear(StudFixing fixing, Working<double> gravity, Working<Length> thread)
    {
        var screw = Screw(fixing);
        var diameter = Length.FromInches((decimal)screw.Diameter);
        return Load(
            "One fastener, sideways",
            YieldLimit.Of(screw, gravity.Value, Near, (double)thread.Value.ToInches(), Drywall),
            "from {gravity}, {diameter} and {thread}, across 1/2 in of drywall",
            Sideways,
            ("gravity", gravity),
            ("diameter", Working.Looked("Diameter counted", diameter, new FineLengthFigure(diameter), WoodScrews.DrillSource)),
            ("thread", thread)
        );
    }

    /// <summary>The least thread in the stud with which a fixing counts sideways.</summary>
    public static Length LeastThread(StudFixing fixing) =>
        Length.FromInches((decimal)fixing.Diameter * (fixing.IsLag ? LagDiameters : ScrewHolding.LeastDiameters));

    /// <summary>The share of what it may carry that each fixing of the top row carries, in hundredths.</summary>
    /// <param name="held">Loads, and what one fixing takes of each.</param>
    /// <param name="top">Fixings in the top row.</param>
    /// <param name="bottom">Fixings along the bottom.</param>
    public static Working<double> Share(WallLoad held, Working<double> top, Working<double> bottom) =>
        Working.Of(
            "Each top fastener carries, of what it may",
            held.Share(top.Value, bottom.Value) * 100,
            QuantityKind.Percent,
            0,
            "({load} ÷ (({top} + {bottom}) × {sideways}) + {pull} ÷ ({top} × {withdrawal})) ÷ 0.9",
            Rule,
            ("load", held.Load),
            ("top", top),
            ("bottom", bottom),
            ("sideways", held.Sideways),
            ("pull", held.Pull),
            ("withdrawal", held.Withdrawal)
        );

    /// <summary>How many fixings the top row needs beside those along the bottom.</summary>
    public static Working<double> Count(WallLoad held, Working<double> bottom)
    {
        var count = 2;
        while (held.Share(count, bottom.Value) > 1)
            count++;
        return Working.Of(
            "Fasteners in the top row, at least",
            (double)count,
            QuantityKind.Bare,
            0,
            "the fewest, at least 2, with ({load} ÷ ((fasteners + {bottom}) × {sideways}) + {pull} ÷ (fasteners × "
                + "{withdrawal})) ÷ 0.9 "
                + "up to 1",
            Rule,
            ("load", held.Load),
            ("bottom", bottom),
            ("sideways", held.Sideways),
            ("pull", held.Pull),
            ("withdrawal", held.Withdrawal)
        );
    }

    /// <summary>How many anchors: their maker's load counts for weight and pull together.</summary>
    public static Working<double> Anchors(Working<double> load, Working<double> pull, Working<double> each) =>
        Working.Of(
            "Fasteners in the top row, at least",
            Math.Max(2, Math.Ceiling((load.Value + pull.Value) / each.Value)),
            QuantityKind.Bare,
            0,
            "({load} + {pull}) ÷ {each}, rounded up, at least 2",
            AnchorRule,
            ("load", load),
            ("pull", pull),
            ("each", each)
        );

    /// <summary>Studs that lie behind a width wherever it hangs.</summary>
    public static Working<double> Studs(Working<Length> width, Working<Length> spacing) =>
        Working.Of(
            "Studs behind it for certain",
            width.Value / spacing.Value,
            QuantityKind.Bare,
            0,
            "{width} ÷ {spacing}, rounded down",
            StudRule,
            ("width", width),
            ("spacing", spacing)
        );

    // Lags are counted as the thickest screw that the equations here are for with certainty.
    private static HoldingScrew Screw(StudFixing fixing) =>
        ScrewHolding.Screws.First(one => one.Gauge == (fixing.Word == "screw-12" ? 12 : 10));

    private static Working<Length> Diameter(StudFixing fixing)
    {
        var diameter = Length.FromInches((decimal)fixing.Diameter);
        return Working.Looked("Diameter", diameter, new FineLengthFigure(diameter), WoodScrews.DrillSource);
    }

    private static Working<double> Load(
        string name,
        double pounds,
        string template,
        SourceNote source,
        params (string Key, Working Input)[] inputs
    ) => Working.Of(name, QuantityKind.Mass.ToMetric(pounds, LengthUnit.Inch), QuantityKind.Mass, 1, template, source, inputs);
}
