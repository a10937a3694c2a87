using System.Collections.Immutable;
using ShopPlanner.Core.Angles;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Arcs.</summary>
internal static class ArcCalculator
{
    private static readonly Length LongTrammel = Length.FromFeet(8);

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<ArcAsked, ArcMade>(
        "arc",
        "Arc",
        "Radius, trammel and points of a curve from its width and its height."
    )
    {
        Keys =
        [
            Key.Length("chord", "Width, straight across (chord)", most: "40 ft"),
            Key.Length("rise", "Height in the middle (rise)", least: "1/64 in", most: "20 ft"),
            Key.Count("points", "Points on each side of the middle", "4", "1", "50"),
        ],
        Read = reader => new(reader.Unit, reader.Given("Chord", "chord"), reader.Given("Rise", "rise"), reader.Count("points")),
        Refusals =
        [
            new(
                "rise",
                asked => asked.Rise.Value > asked.Chord.Value * 2,
                asked => $"is too high for this chord: at most {asked.Say(asked.Chord.Value * 2)}"
            ),
        ],
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Watch,
                made => made.Radius.Value > LongTrammel,
                "A trammel this long is hard to handle: bend a thin strip of wood through the points instead."
            ),
            new(
                Watch,
                made => made.IsMoreThanHalf,
                made =>
                    "The curve is more than half of a circle and bulges out past its chord: "
                    + $"{made.Asked.Say(made.Radius.Value * 2)} across at its widest."
            ),
            new(
                Tip,
                "Mark the points, drive small nails beside them, and bend "
                    + "a strip of clear wood along the nails to draw the curve."
            ),
        ],
        MostSevereFirst = true,
        Cautions = [ShopCautions.CurvedCuts, Cautions.SmallParts],
    }.Form;

    private sealed record ArcAsked(LengthUnit Unit, Working<Length> Chord, Working<Length> Rise, int Points) : Question(Unit);

    private sealed record ArcMade(ArcAsked Asked)
    {
        public Working<Length> Radius { get; } = Arcs.Radius(Asked.Chord, Asked.Rise);

        public bool IsMoreThanHalf => Asked.Rise.Value * 2 > Asked.Chord.Value;

        public IEnumerable<Working> Sizes => [Radius, Heights, Places, Center, Arcs.Along(Asked.Chord, Asked.Rise, Radius)];

        private string Marks => Asked.Unit == LengthUnit.Inch ? "to the nearest 1/32 in" : "to the nearest 0.5 mm";

        private Working<ImmutableArray<Length>> Heights
        {
            get
            {
                var heights = Arcs.Heights(Asked.Chord.Value, Asked.Rise.Value, Asked.Points, Asked.Unit);
                return Working.Of(
                    "Heights above the chord, from the middle out",
                    heights,
                    new LengthsFigure(heights),
                    "√({radius}² − x²) − ({radius} − {rise}), " + Marks,
                    Working.Geometry,
                    ("radius", Radius),
                    ("rise", Asked.Rise)
                );
            }
        }

        private Working<ImmutableArray<Length>> Places
        {
            get
            {
                var places = Arcs.Places(Asked.Chord.Value, Asked.Points, Asked.Unit);
                return Working.Of(
                    "x: from the middle to each",
                    places,
                    new LengthsFigure(places),
                    "{chord} ÷ 2 in equal steps, " + Marks,
                    Working.Geometry,
                    ("chord", Asked.Chord)
                );
            }
        }

        private Working<Length> Center =>
            Working.Of(
                IsMoreThanHalf ? "Trammel point above the chord" : "Trammel point below the chord",
                Length.FromTicks(Math.Abs((Radius.Value - Asked.Rise.Value).Ticks)),
                IsMoreThanHalf ? "{rise} − {radius}" : "{radius} − {rise}",
                Working.Geometry,
                ("radius", Radius),
                ("rise", Asked.Rise)
            );
    }
}
