namespace ShopPlanner.Core.Workings;

/// <summary>How sure a fact of the trade is; ordered from the surest.</summary>
public enum Certainty
{
    /// <summary>Read in the source named.</summary>
    Read,

    /// <summary>Read on a page that quotes the source named.</summary>
    Quoted,

    /// <summary>Worked out from read figures.</summary>
    Derived,

    /// <summary>From memory of the source named: to be verified.</summary>
    FromMemory,

    /// <summary>Common practice, no source: a default to be edited, never a rule.</summary>
    CommonPractice,
}

/// <summary>Where a fact comes from.</summary>
/// <param name="Text">The source as a reader can look it up.</param>
/// <param name="Certainty">How sure it is.</param>
public sealed record SourceNote(string Text, Certainty Certainty)
{
    /// <summary>The note of what everybody does and no source tells.</summary>
    public static SourceNote CommonPractice { get; } = new("Common practice", Certainty.CommonPractice);

    /// <summary>The note of a fact that rests on both: the less sure one counts.</summary>
    public SourceNote And(SourceNote other) =>
        other == this ? this : new(Text + "; " + other.Text, (Certainty)Math.Max((int)Certainty, (int)other.Certainty));
}
