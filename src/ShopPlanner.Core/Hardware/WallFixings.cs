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
        "Wood Handbook's older rule for group IV woods, 2,520 × diameter², and no more than a #10 screw by the design "
            + "specification's yield equations (inputs from memory)",
        Certainty.FromMemory
    );

    /// <summary>What a fixing is counted at.</summary>
    public static readonly SourceNote Half = new(
        "Common practice: counted at half, since nobody inspects the stud, its pilot hole or the drywall between",
        Certainty.CommonPractice
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

    /// <summary>Fixings there are figures for.</summary>
    public static readonly ImmutableArray<StudFixing> Fixings =
    [
        new("screw-10", "#10 screws", 0.190, false),
        new("screw-12", "#12 screws", 0.216, false),
        new("lag-1/4", "1/4 in lag screws", 0.25, true),
        new("lag-5/16", "5/16 in lag screws", 0.3125, true),
        new("lag-3/8", "3/8 in lag screws", 0.375, true),
    ];

    // Sideways load of a #10 screw in wood of gravity 0.42, 3/4 in near piece, lb: what nothing here is counted above.
    private const double MostSideways = 83.7;

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

    /// <summary>What one fixing holds against being pulled out, before it is halved, kg.</summary>
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

    /// <summary>What one fixing holds sideways, before it is halved, kg.</summary>
    public static Working<double> Shear(StudFixing fixing) =>
        Load(
            "One fastener, sideways",
            Math.Min(2520 * fixing.Diameter * fixing.Diameter, MostSideways),
            "2,520 × {diameter}², at most 83.7 lb (38 kg)",
            Sideways,
            ("diameter", Diameter(fixing))
        );

    /// <summary>How many fixings the top row needs: shares of weight and pull add up, each fixing counted at half.</summary>
    public static Working<double> Count(
        Working<double> load,
        Working<double> pull,
        Working<double> sideways,
        Working<double> withdrawal
    ) =>
        Working.Of(
            "Fasteners in the top row, at least",
            Math.Max(2, Math.Ceiling(2 * ((load.Value / sideways.Value) + (pull.Value / withdrawal.Value)))),
            QuantityKind.Bare,
            0,
            "2 × ({load} ÷ {sideways} + {pull} ÷ {withdrawal}), rounded up, at least 2",
            Half,
            ("load", load),
            ("sideways", sideways),
            ("pull", pull),
            ("withdrawal", withdrawal)
        );

    /// <summary>How many anchors: their maker's load counts for weight and pull together.</summary>
    public static Working<double> Anchors(Working<double> load, Working<double> pull, Working<double> each) =>
        Working.Of(
            "Fasteners in the top row, at least",
            Math.Max(2, Math.Ceiling((load.Value + pull.Value) / each.Value)),
            QuantityKind.Bare,
            0,
            "({load} + {pull}) ÷ {each}, rounded up, at least 2",
            Half with
            {
                Text = "Common practice: weight and pull together against the anchor maker's working load",
            },
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
