using System.Collections.Immutable;

namespace ShopPlanner.Core.Making.Model;

/// <summary>What a builder decides about the work; where sources differ, it is one of these. Immutable.</summary>
public sealed record WorkChoices
{
    /// <summary>Id of the glue.</summary>
    public string Glue { get; init; } = "pva";

    /// <summary>Id of the finish.</summary>
    public string Finish { get; init; } = "paint";

    /// <summary>Id of the treatment of sheets' edges that are seen: <c>iron-on</c>, <c>filler</c>, <c>bare</c>; null for what
    /// suits the finish.</summary>
    public string? Edges { get; init; }

    /// <summary>What the finish will meet; null to take it from the piece's name.</summary>
    public ImmutableArray<FinishUse>? Uses { get; init; }

    /// <summary>Whether shelf pin holes are drilled before the case is closed; sources differ.</summary>
    public bool PinsBefore { get; init; } = true;

    /// <summary>Whether hinges are fitted, and taken off again, before the finish; sources differ.</summary>
    public bool HingesBefore { get; init; } = true;

    /// <summary>Whether edges of panels that go into grooves are finished before the frame is glued.</summary>
    public bool PanelEdgesBefore { get; init; } = true;

    /// <summary>Whether doors and drawers are made after the case stands and can be measured. Books differ: a buffet of 1910
    /// has its doors made then; a school book of 1911 glues the door first, larger than its opening.</summary>
    public bool DoorsAfterCase { get; init; } = true;

    /// <summary>Whether cleats and runners are fastened to the one part that holds them while it still lies flat. Books differ:
    /// two of 1910 do so; tables of 1912 get their runners after they are glued.</summary>
    public bool CleatsFirst { get; init; } = true;

    /// <summary>Grit to begin sanding with.</summary>
    public int StartGrit { get; init; } = 80;

    /// <summary>Grit to end with; null for what suits the finish.</summary>
    public int? EndGrit { get; init; }

    /// <summary>Coats; null for the usual number.</summary>
    public int? Coats { get; init; }

    /// <summary>Hours that the label in hand says, by what has to pass (<c>recoat</c>, <c>cure</c>, <c>primer</c>, <c>clamp</c>,
    /// <c>glue</c>); what is not there is the usual figure.</summary>
    public ImmutableDictionary<string, double> Hours { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>What a builder starts from.</summary>
    public static WorkChoices Usual { get; } = new();
}
