using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Fractions, decimals and millimeters.</summary>
internal static class ConvertCalculator
{
    private static readonly QuantityKind InchesOnly = new("in", "in", 1);
    private static readonly QuantityKind MillimetresOnly = new("mm", "mm", 1);

    /// <summary>What an inch is.</summary>
    private static readonly SourceNote Inch = new(
        "International yard and pound agreement of 1959: 1 in is 25.4 mm",
        Certainty.Read
    );

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<ConvertAsked, ConvertAsked>(
        "convert",
        "Fractions, decimals, millimeters",
        "A size as a fraction, a decimal and millimeters, with the marks of the rule on both sides of it."
    )
    {
        Keys =
        [
            Key.LengthOrZero("value", "Size").Hint("Any way you write it: 23/32, 0.72, 18 mm, 3 ft 2 1/2 in"),
            Key.Choice(
                "to",
                "Your rule reads to",
                "64",
                new("64", "1/64 in"),
                new("32", "1/32 in"),
                new("16", "1/16 in"),
                new("8", "1/8 in")
            ),
        ],
        Read = reader =>
            new(
                reader.Unit,
                reader.Given("Size", "value"),
                int.Parse(reader.Choice("to"), NumberStyles.None, CultureInfo.InvariantCulture)
            ),
        Make = asked => asked,
        Results = asked => asked.Sizes,
        Verdicts =
        [
            new(Fine, asked => asked.Below.Value == asked.Above.Value, asked => $"Exactly on a mark of 1/{asked.Per} in."),
            new(
                Watch,
                asked => asked.Below.Value != asked.Above.Value,
                asked =>
                    "Between two marks: set the lower one and add a shim of "
                    + $"{new FineLengthFigure(asked.Size.Value - asked.Below.Value).Text(asked.Unit)}, "
                    + "or take the size from the part itself."
            ),
        ],
    }.Form;

    private sealed record ConvertAsked(LengthUnit Unit, Working<Length> Size, int Per) : Question(Unit)
    {
        public Working<Length> Below => Mark("Mark below", Size.Value.Ticks / Step);

        public Working<Length> Above => Mark("Mark above", (Size.Value.Ticks + Step - 1) / Step);

        public Working[] Sizes =>
            Unit == LengthUnit.Inch
                ? [Nearest, Decimal, Millimetres, FeetAndInches, Below, Above]
                : [Millimetres, Nearest, Decimal, FeetAndInches, Below, Above];

        private Working<Length> Nearest =>
            Working.Of(
                "Nearest fraction",
                Size.Value,
                new InchFigure(Size.Value, Per),
                $"{{size}}, to the nearest 1/{Per} in",
                Inch,
                ("size", Size)
            );

        private Working<double> Decimal => Bare("Decimal inches", (double)Size.Value.ToInches(), InchesOnly);

        private Working<double> Millimetres => Bare("Millimeters", (double)Size.Value.ToMillimetres(), MillimetresOnly);

        private long Step => Length.TicksPerInch / Per;

        private Working<string> FeetAndInches
        {
            get
            {
                var feet = Size.Value.Ticks / Length.TicksPerFoot;
                var rest = Length.FromTicks(Size.Value.Ticks % Length.TicksPerFoot);
                var words = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{feet} ft {LengthFormat.WithUnit(rest, LengthUnit.Inch, Per)}"
                );
                return Working.Of("Feet and inches", words, new WordFigure(words), "{size}", Inch, ("size", Size));
            }
        }

        private Working<double> Bare(string name, double value, QuantityKind kind) =>
            Working.Of(name, value, kind, 6, "{size}", Inch, ("size", Size));

        private Working<Length> Mark(string name, long steps)
        {
            var mark = Length.FromTicks(steps * Step);
            return Working.Of(name, mark, new InchFigure(mark, Per), $"{{size}}, to 1/{Per} in", Inch, ("size", Size));
        }
    }

    // A fraction of an inch in both systems: that is what was asked for.
    private sealed record InchFigure(Length Length, int Denominator) : Figure
    {
        public override string Text(LengthUnit unit) => LengthFormat.WithUnit(Length, LengthUnit.Inch, Denominator);

        public override string UnitName(LengthUnit unit) => "in";

        public override double? Number(LengthUnit unit) => (double)Length.ToInches();
    }
}
