using System.Collections.Immutable;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>A kind of frame, split, fill, top, shape or edge, with what it takes.</summary>
/// <param name="Name">As in a document: <c>fixed-shelf</c>.</param>
/// <param name="Title">As shown: <c>Fixed shelf</c>.</param>
/// <param name="Says">What it is, one plain sentence.</param>
/// <param name="Members">What it takes.</param>
public sealed record KindInfo(string Name, string Title, string Says, ImmutableArray<MemberInfo> Members);

/// <summary>What a member takes.</summary>
public enum MemberType
{
    /// <summary>A length by arithmetic.</summary>
    Length,

    /// <summary>A whole number by arithmetic.</summary>
    Count,

    /// <summary>One of its choices.</summary>
    Choice,

    /// <summary>The role of a material.</summary>
    Role,

    /// <summary>Degrees, by arithmetic on bare numbers.</summary>
    Angle,
}

/// <summary>A member of a kind.</summary>
/// <param name="Name">As in a document: <c>stile</c>.</param>
/// <param name="Label">As shown.</param>
/// <param name="Type">What it takes.</param>
/// <param name="Default">Text used where none is given; null where one must be given. Empty for a role, a length or a choice that
/// may be missing.</param>
/// <param name="Choices">What to choose from.</param>
public sealed record MemberInfo(
    string Name,
    string Label,
    MemberType Type,
    string? Default,
    params ImmutableArray<string> Choices
);
