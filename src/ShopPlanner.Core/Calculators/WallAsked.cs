using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a piece that hangs on a wall.</summary>
/// <param name="Unit">Lengths are told in it.</param>
/// <param name="Load">Of the piece and what goes in it, kg.</param>
/// <param name="Width">Along the wall.</param>
/// <param name="Depth">Out from the wall.</param>
/// <param name="Height">From the top fixings to the bottom edge.</param>
/// <param name="Fixing">What goes into the studs; null for anchors.</param>
/// <param name="Each">Working load of one anchor, kg.</param>
/// <param name="Spacing">From stud to stud.</param>
/// <param name="Found">Studs that somebody found behind it; null where nobody looked.</param>
/// <param name="Gravity">Of the studs.</param>
/// <param name="Thread">In each stud.</param>
/// <param name="Top">Fixings in each stud, at the top.</param>
/// <param name="Bottom">Fixings in each stud, along the bottom.</param>
internal sealed record WallAsked(
    LengthUnit Unit,
    Working<double> Load,
    Working<Length> Width,
    Working<Length> Depth,
    Working<Length> Height,
    StudFixing? Fixing,
    Working<double>? Each,
    Working<Length> Spacing,
    int? Found,
    Working<double> Gravity,
    Working<Length> Thread,
    int Top,
    int Bottom
) : Question(Unit)
{
    private static readonly SourceNote Lightest = new(
        "National Design Specification, Table 12.3.3A, eastern white pine and western woods, as quoted in open code",
        Certainty.Quoted
    );

    /// <summary>Whether it hangs on anchors and not in studs.</summary>
    public bool IsAnchor => Fixing is null;

    /// <summary>Whether the thread is long enough to count at all.</summary>
    public bool IsThreaded => Fixing is not { } fixing || Thread.Value >= WallFixings.LeastThread(fixing);

    public static WallAsked Read(FormReader reader)
    {
        var (weight, load) = (reader.GivenQuantity("Piece", "weight", 0), reader.GivenQuantity("Contents", "load", 0));
        var fixing = reader.Choice("fixing");
        return new(
            reader.Unit,
            Working.Of(
                "Load on the wall",
                weight.Value + load.Value,
                QuantityKind.Mass,
                0,
                "{weight} + {load}",
                Working.Geometry,
                ("weight", weight),
                ("load", load)
            ),
            reader.Given("Width", "width"),
            reader.Given("Depth", "depth"),
            reader.Given("Height", "height"),
            WallFixings.Fixings.FirstOrDefault(one => one.Word == fixing),
            reader.MaybeGivenQuantity("Working load of one anchor", "each", 0),
            Working.Given("Studs apart", Length.FromInches(reader.Choice("spacing") == "24" ? 24 : 16)),
            reader.MaybeCount("studs"),
            GravityOf(reader.Choice("stud")),
            reader.Given("Thread in the stud", "thread"),
            reader.Count("rows"),
            reader.Count("bottom")
        );
    }

    private static Working<double> GravityOf(string stud)
    {
        var value = stud switch
        {
            "spf" => 0.42,
            "df" => 0.50,
            _ => 0.36,
        };
        return Working.Looked("Specific gravity of the studs", value, QuantityKind.Bare, 2, Lightest);
    }
}
