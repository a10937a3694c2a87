namespace ShopPlanner.Core.Documents;

/// <summary>Why a text is not read as a JSON document.</summary>
public enum JsonFlaw
{
    /// <summary>It is longer than allowed.</summary>
    TooLong,

    /// <summary>Nothing is in it.</summary>
    Empty,

    /// <summary>It is not UTF-8.</summary>
    NotUtf8,

    /// <summary>It is not JSON (RFC 8259), or is cut off.</summary>
    NotJson,

    /// <summary>An escape in a text is half a character.</summary>
    HalfCharacter,

    /// <summary>It is nested too deeply.</summary>
    TooDeep,

    /// <summary>It has more values than anything of ours.</summary>
    TooMany,
}

/// <summary>What forbids to read a JSON document, and where; each format says it in its own words.</summary>
/// <param name="Flaw">What is wrong.</param>
/// <param name="Path">The member there, like <c>parts[3].length</c>; empty where the document as a whole is wrong.</param>
/// <param name="At">The byte, without a byte order mark.</param>
/// <param name="Line">The line as the reader counts, from 1.</param>
public sealed record JsonProblem(JsonFlaw Flaw, string Path = "", int At = 0, int Line = 1);
