using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of drawer fronts.</summary>
internal sealed record FrontsAsked(
    LengthUnit Unit,
    bool IsOverlay,
    Working<Length> Height,
    Working<Length> Width,
    int Count,
    Working<Length> Outer,
    Working<Length> Between,
    Graded Graded,
    Working<Length> Step,
    Working<double> Ratio,
    Length Thickness
) : Question(Unit)
{
    /// <summary>What the fronts share.</summary>
    public Working<Length> Shared { get; } = DrawerFronts.Shared(Height, Outer, Between, Count);

    /// <summary>Whether there is but one.</summary>
    public bool IsSingle => Count == 1;

    /// <summary>The top front's height in ticks, not rounded.</summary>
    public double First => DrawerFronts.First(Shared.Value, Count, Graded, Step.Value, Ratio.Value);

    public static FrontsAsked Read(FormReader reader) =>
        new(
            reader.Unit,
            reader.Choice("fit") == "overlay",
            reader.Given("Height", "height"),
            reader.Given("Width", "width"),
            reader.Count("count"),
            reader.Given("Gap at each outer edge", "outer"),
            reader.Given("Gap between fronts", "between"),
            Enum.Parse<Graded>(reader.Choice("graded"), true),
            reader.Given("Each taller by", "step"),
            Working.Given("Each taller, times", reader.Number("ratio"), QuantityKind.Bare, 3),
            reader.Length("thickness")
        );
}

/// <summary>Drawer fronts worked out.</summary>
/// <param name="Asked">What they were worked out from.</param>
internal sealed record FrontsMade(FrontsAsked Asked)
{
    /// <summary>From the top down.</summary>
    public ImmutableArray<Length> Heights { get; } =
        DrawerFronts.Heights(Asked.First, Asked.Count, Asked.Graded, Asked.Step.Value, Asked.Ratio.Value);

    /// <summary>Heights, width and places.</summary>
    public IEnumerable<Working> Sizes => [HeightsShown, Width, Tops, Asked.Shared];

    /// <summary>Parts for a project: the grain runs across a front.</summary>
    public ImmutableArray<ProposedPart> Proposed =>
        Asked.IsSingle || Asked.Graded == Graded.Equal
            ? [new("Drawer front", Width.Value, Heights.Min(), Asked.Thickness, Asked.Count)]
            :
            [
                .. Heights.Select(
                    (height, i) => new ProposedPart($"Drawer front {i + 1}", Width.Value, height, Asked.Thickness, 1)
                ),
            ];

    private Working<ImmutableArray<Length>> HeightsShown
    {
        get
        {
            var (template, source, inputs) = Asked.Graded switch
            {
                Graded.Step when !Asked.IsSingle => (
                    "({shared} − {step} × {number} × ({number} − 1) ÷ 2) ÷ {number}, then {step} more each",
                    Working.Geometry,
                    new (string, Working)[] { ("step", Asked.Step) }
                ),
                Graded.Ratio when !Asked.IsSingle => (
                    "{shared} × ({ratio} − 1) ÷ ({ratio}^{number} − 1), then {ratio} times each",
                    Working.Geometry,
                    [("ratio", Asked.Ratio)]
                ),
                _ => ("{shared} ÷ {number}", Working.Geometry, []),
            };
            var number = Working.Given("Fronts", Asked.Count, QuantityKind.Bare, 0);
            return Working.Of(
                "Front heights, from the top",
                Heights,
                new LengthsFigure(Heights),
                template,
                source,
                [("shared", Asked.Shared), ("number", number), .. inputs]
            );
        }
    }

    private Working<Length> Width =>
        Working.Of(
            "Front width",
            Asked.Width.Value - (Asked.Outer.Value * 2),
            "{width} − 2 × {outer}",
            DrawerFronts.Gaps,
            ("width", Asked.Width),
            ("outer", Asked.Outer)
        );

    private Working<ImmutableArray<Length>> Tops
    {
        get
        {
            var top = Asked.Outer.Value;
            var tops = ImmutableArray.CreateBuilder<Length>();
            foreach (var height in Heights)
            {
                tops.Add(top);
                top += height + Asked.Between.Value;
            }

            ImmutableArray<Length> places = tops.ToImmutable();
            return Working.Of(
                "Top edges, from the top",
                places,
                new LengthsFigure(places),
                "{outer}, then each front and {between}",
                Working.Geometry,
                ("outer", Asked.Outer),
                ("between", Asked.Between)
            );
        }
    }
}
