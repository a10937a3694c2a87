namespace ShopPlanner.Core.Workings;

/// <summary>The severity of a statement that follows from figures; ordered from the mildest.</summary>
public enum Severity
{
    /// <summary>Good to know while it is done; nothing was judged.</summary>
    Tip,

    /// <summary>It holds.</summary>
    Fine,

    /// <summary>Something to look at or to decide.</summary>
    Watch,

    /// <summary>It can hurt someone unless it is done as said.</summary>
    Safety,

    /// <summary>It can fall over or down until it is fixed to the wall, and nothing in it does that yet.</summary>
    Anchor,

    /// <summary>It cannot be built or used like this.</summary>
    Fails,
}

/// <summary>Severities as people read them.</summary>
public static class SeverityWords
{
    /// <summary>Returns the word: <c>Tip</c>, <c>OK</c>, <c>Check</c>, <c>Safety</c>, <c>Anchor it</c> or
    /// <c>Fix this</c>.</summary>
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Tip => "Tip",
            Severity.Fine => "OK",
            Severity.Watch => "Check",
            Severity.Safety => "Safety",
            Severity.Anchor => "Anchor it",
            _ => "Fix this",
        };
}
