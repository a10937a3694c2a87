using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a shelf.</summary>
/// <param name="Unit">Of the rule.</param>
/// <param name="Elasticity">GPa.</param>
/// <param name="Material">Gives weight and creep.</param>
/// <param name="IsNamed">Whether the material was named; else a stiffness was given alone, and the material is a guess.</param>
/// <param name="Span">Between supports.</param>
/// <param name="Depth">Front to back.</param>
/// <param name="Thickness">Of the shelf.</param>
/// <param name="Load">What stands on it.</param>
/// <param name="Strip">Height of the edge strip; nothing for none.</param>
/// <param name="StripThickness">Of the edge strip.</param>
/// <param name="IsFixed">Whether both ends are clamped.</param>
/// <param name="CountsItself">Whether the shelf's own weight counts.</param>
internal sealed record SagAsked(
    LengthUnit Unit,
    Working<double> Elasticity,
    Strength Material,
    bool IsNamed,
    Working<Length> Span,
    Working<Length> Depth,
    Working<Length> Thickness,
    ShelfLoad Load,
    Working<Length> Strip,
    Working<Length> StripThickness,
    bool IsFixed,
    bool CountsItself
) : Question(Unit)
{
    // Of what is usual for shelves it is the heaviest and creeps the most.
    private const string Worst = "mdf";

    /// <summary>The shelf at any span.</summary>
    public Shelf Shelf =>
        new(
            Elasticity,
            Depth,
            Thickness,
            IsFixed,
            Strip.Value.IsPositive
                ? Sag.EdgeStrip(Depth, Thickness, Strip, StripThickness)
                : Working.Given("Edge strip", 1, QuantityKind.Bare, 0),
            Sag.Creep(Material),
            span => Load.On(span, Depth),
            CountsItself ? Weigh : null
        );

    public static SagAsked Read(FormReader reader)
    {
        var given = reader.MaybeGivenQuantity("Modulus of elasticity", "modulus", 2);
        var isNamed = given is null || reader.Has("species");
        var species = reader.Choice("species");
        var row = StrengthTable.Find(isNamed ? species : Worst)!;
        var (span, depth) = (reader.Given("Span", "span"), reader.Given("Depth", "depth"));
        return new(
            reader.Unit,
            given ?? StrengthTable.Elasticity(row),
            row,
            isNamed,
            span,
            depth,
            reader.Given("Thickness", "thickness"),
            ShelfLoad.Read(reader, span, depth),
            reader.Given("Strip height", "edge-strip"),
            reader.Given("Strip thickness", "strip-thickness"),
            reader.Choice("support") == "fixed",
            reader.Choice("own-weight") == "counted"
        );
    }

    private Working<double> Weigh(Working<Length> span)
    {
        var density = Weight.Density(Material, Weight.Indoors);
        var strip = Strip.Value.IsPositive ? Area.Of(Strip.Value, StripThickness.Value) : default;
        var volume = (Area.Of(Depth.Value, Thickness.Value) + strip) * span.Value;
        (string, Working)[] inputs = [("density", density), ("span", span), ("depth", Depth), ("thickness", Thickness)];
        return Working.Of(
            "Own weight",
            (double)volume.ToCubicMetres() * density.Value,
            QuantityKind.Mass,
            1,
            "{density} × {span} × {depth} × {thickness}"
                + (Strip.Value.IsPositive ? ", and {strip} × {stripthickness} of edge strip" : ""),
            Weight.Rule,
            Strip.Value.IsPositive ? [.. inputs, ("strip", Strip), ("stripthickness", StripThickness)] : inputs
        );
    }
}
