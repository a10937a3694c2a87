using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A groove worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Groove">The groove and its tongue.</param>
internal sealed record GrooveMade(GrooveAsked Asked, CentredGroove Groove)
{
    /// <summary>How many times the piece is pushed through.</summary>
    public int Passes => (int)Groove.Passes.Value;

    /// <summary>How many settings of the fence it takes.</summary>
    public int Settings => Groove.Settings.Value.Length;

    /// <summary>Whether a setting takes paper beside the marks of a rule.</summary>
    public bool TakesPaper =>
        Groove.Settings.Value.Append(Groove.Cheek.Value).Any(one => SettingFigure.TakesPaper(one, Asked.Unit));

    /// <summary>Settings and sizes.</summary>
    public IEnumerable<Working> Sizes =>
        [
            Groove.Fence,
            Asked.Width,
            Groove.Passes,
            Groove.Settings,
            Groove.Reached,
            Asked.Depth,
            Groove.Tongue,
            Groove.Cheek,
            Working.Of("Tongue length", Asked.Depth.Value, "{depth}", Working.Geometry, ("depth", Asked.Depth)),
            Working.Given("Test pieces", Asked.Practice, QuantityKind.Bare, 0),
        ];

    /// <summary>Parts for a project.</summary>
    public ImmutableArray<ProposedPart> Proposed =>
        Asked.Practice == 0
            ? []
            : [new("Test piece", Length.FromInches(12), Length.FromInches(3), Asked.Stock.Value, Asked.Practice)];

    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => Asked.Say(length);
}
