using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>Sheet goods with their true thicknesses.</summary>
internal static class SheetList
{
    private const string SoftPlyTint = "#F3E0B8",
        BirchTint = "#F2E6CE",
        OakTint = "#ECD3B2",
        MapleTint = "#F4E9D6";
    private const string MdfTint = "#E2D5C2",
        ParticleTint = "#E9DBC0";

    private static readonly SheetSize FourByEight = new(Length.FromInches(96), Length.FromInches(48));
    private static readonly SheetSize Oversize = new(Length.FromInches(97), Length.FromInches(49));
    private static readonly SheetSize Metric = new(Length.FromMillimetres(2440), Length.FromMillimetres(1220));

    private static readonly SourceNote Category = new(
        "PS 1 performance categories and label thickness, the plywood trade association's table",
        Certainty.Quoted
    );

    private static readonly SourceNote ThreeQuarter = new(
        "A 3/4 in hardwood plywood sheet is commonly 23/32 in; tolerance of HP-1 quoted by a trade magazine",
        Certainty.Quoted
    );

    private static readonly SourceNote QuarterPly = new(
        "A 1/4 in sheet is commonly 7/32 in, as panel dealers' pages quote it, within the tolerance of HP-1: measure the sheet",
        Certainty.Quoted
    );

    private static readonly SourceNote ThinPly = new(
        "Common practice, within the tolerance of HP-1: measure the sheet",
        Certainty.CommonPractice
    );

    private static readonly SourceNote Mill = new(
        "A European mill's table of sanded birch plywood, consistent with EN 315",
        Certainty.Read
    );

    private static readonly SourceNote Board = new(
        "Common practice: thickness as named; tolerance of ANSI A208.2 quoted by an industry guide",
        Certainty.CommonPractice
    );

    /// <summary>All of them, by kind and thickness.</summary>
    public static readonly ImmutableArray<SheetGood> All =
    [
        Soft("1/4", 0.225m, 0.219m, 0.281m),
        Soft("11/32", 0.322m, 0.313m, 0.375m),
        Soft("3/8", 0.354m, 0.344m, 0.406m),
        Soft("15/32", 0.451m, 0.438m, 0.500m),
        Soft("1/2", 0.483m, 0.469m, 0.531m),
        Soft("19/32", 0.578m, 0.563m, 0.625m),
        Soft("5/8", 0.609m, 0.594m, 0.656m),
        Soft("23/32", 0.703m, 0.688m, 0.750m),
        Soft("3/4", 0.734m, 0.719m, 0.781m),
        Soft("7/8", 0.849m, 0.831m, 0.919m),
        Soft("1", 0.970m, 0.950m, 1.050m),
        Soft("1 1/8", 1.091m, 1.069m, 1.181m),
        .. Faced("birch-ply", "Birch plywood", BirchTint),
        .. Faced("oak-ply", "Red oak plywood", OakTint),
        .. Faced("maple-ply", "Maple plywood", MapleTint),
        Multiply(6.5m, 0.4m, 0.5m),
        Multiply(9, 0.4m, 0.5m),
        Multiply(12, 0.5m, 0.7m),
        Multiply(15, 0.6m, 0.8m),
        Multiply(18, 0.7m, 0.9m),
        Multiply(21, 0.8m, 1.0m),
        Multiply(24, 0.9m, 1.1m),
        .. Composite("mdf", "MDF", SheetKind.Mdf, MdfTint),
        .. Composite("particleboard", "Particleboard", SheetKind.Particleboard, ParticleTint),
    ];

    private static SheetGood Soft(string nominal, decimal label, decimal least, decimal greatest) =>
        new(
            "softwood-ply-" + Key(nominal),
            $"Softwood plywood {nominal} in",
            SheetKind.SoftwoodPlywood,
            nominal,
            Length.FromInches(label),
            Length.FromInches(least),
            Length.FromInches(greatest),
            [FourByEight],
            SoftPlyTint,
            Category
        );

    private static SheetGood[] Faced(string id, string name, string tint) =>
        [
            Faced(id, name, tint, "1/4", "7/32", QuarterPly),
            Faced(id, name, tint, "1/2", "15/32", ThinPly),
            Faced(id, name, tint, "3/4", "23/32", ThreeQuarter),
        ];

    private static SheetGood Faced(string id, string name, string tint, string nominal, string actual, SourceNote source)
    {
        var range = SheetTolerances.HardwoodPlywood(Inches.Of(nominal));
        return new(
            id + "-" + Key(nominal),
            $"{name} {nominal} in",
            SheetKind.HardwoodPlywood,
            nominal,
            Inches.Of(actual),
            range.Least,
            range.Greatest,
            [FourByEight],
            tint,
            source
        );
    }

    private static SheetGood Multiply(decimal millimetres, decimal over, decimal under)
    {
        var thickness = Length.FromMillimetres(millimetres);
        return new(
            "birch-multiply-" + Key(millimetres),
            $"Birch plywood {Number(millimetres)} mm",
            SheetKind.BirchMultiply,
            Number(millimetres) + " mm",
            thickness,
            thickness - Length.FromMillimetres(under),
            thickness + Length.FromMillimetres(over),
            [Metric],
            BirchTint,
            Mill
        );
    }

    private static IEnumerable<SheetGood> Composite(string id, string name, SheetKind kind, string tint)
    {
        string[] inches = ["1/4", "3/8", "1/2", "5/8", "3/4", "1"];
        decimal[] millimetres = [3, 6, 9, 12, 15, 16, 18, 19, 22, 25];
        return inches
            .Select(n => Composite($"{id}-{Key(n)}", $"{name} {n} in", kind, n, Inches.Of(n), [FourByEight, Oversize], tint))
            .Concat(
                millimetres.Select(n =>
                    Composite(
                        $"{id}-{Key(n)}",
                        $"{name} {Number(n)} mm",
                        kind,
                        Number(n) + " mm",
                        Length.FromMillimetres(n),
                        [Metric],
                        tint
                    )
                )
            );
    }

    private static SheetGood Composite(
        string id,
        string name,
        SheetKind kind,
        string nominal,
        Length thickness,
        ImmutableArray<SheetSize> sizes,
        string tint
    )
    {
        var range = SheetTolerances.Mdf(thickness);
        return new(id, name, kind, nominal, thickness, range.Least, range.Greatest, sizes, tint, Board);
    }

    private static string Key(string fraction) => fraction.Replace('/', '-').Replace(' ', '-');

    private static string Key(decimal millimetres) => Number(millimetres).Replace('.', '-') + "mm";

    private static string Number(decimal number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
