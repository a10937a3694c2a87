using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What follows from the sizes of a glue-up.</summary>
internal static class GlueUpVerdicts
{
    // Newtons.
    private static readonly double StrongClamp = QuantityKind.Force.ToMetric(1000, LengthUnit.Inch);

    public static IEnumerable<Verdict> Of(
        GlueUpAsked asked,
        Working<int> strips,
        Working<Length> strip,
        Clamping clamping,
        LengthUnit unit
    )
    {
        string Say(Length length) => LengthFormat.WithUnit(length, unit, 16);
        if (strips.Value == 1)
        {
            yield return new(Severity.Fine, "One board is wide enough: there is nothing to glue.");
            yield break;
        }

        if (Lacking(asked, strip, clamping, Say) is { } lacking)
            yield return lacking;
        if (asked.ClampForce is null && clamping.Least.Value > StrongClamp)
            yield return new(
                Severity.Watch,
                $"{clamping.Least.Figure.Text(unit)} is more than many clamps press with (common "
                    + "practice: about 1,000 lbf, 4,400 N): look it up, give it as clamp-force, or set more clamps."
            );
        if (GlueUpForms.IsMuch(strips.Value))
            yield return new(
                Severity.Watch,
                "More than five strips at once are many for the glue's open time (common practice): "
                    + "glue two halves, then the halves."
            );
        if (GlueUpForms.IsWide(strip.Value))
            yield return new(
                Severity.Watch,
                $"Strips of {Say(strip.Value)} cup more than narrow ones (common practice): rip "
                    + "them in two, or choose quartersawn boards."
            );
        yield return new(
            Severity.Fine,
            "Put the clamps above and below in turn, so that they do not bow the panel; dry-fit "
                + "first, and see that it lies flat before the glue grabs."
        );
        yield return new(
            Severity.Fine,
            "White or yellow glue, unless its label says else: 30 to 60 min in clamps at 50 °F (10 "
                + "°C) or more, no load for 24 h."
        );
    }

    // Fewer clamps reach as far with wider cauls: each covers twice the strip and the caul together.
    private static Verdict? Lacking(GlueUpAsked asked, Working<Length> strip, Clamping clamping, Func<Length, string> say)
    {
        if (asked.Clamps is not { } have || have >= clamping.Clamps.Value)
            return null;
        var share = Length.FromTicks((asked.Length.Value.Ticks + (2 * have) - 1) / (2 * have));
        var caul = share - strip.Value;
        return new(
            Severity.Fails,
            $"{have} of {clamping.Clamps.Value:0} clamps are at hand: glue in stages"
                + (
                    have > 1 && caul > asked.Caul.Value
                        ? $", or spread the pressure with stiff cauls at least {say(caul)} wide."
                        : "."
                )
        );
    }
}
