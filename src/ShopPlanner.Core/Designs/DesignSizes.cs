using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs;

/// <summary>A text of a named dimension.</summary>
public enum DimensionText
{
    /// <summary>What people read.</summary>
    Label,

    /// <summary>The value: a length, a whole number, or arithmetic on other names.</summary>
    Value,

    /// <summary>The least value; empty for none.</summary>
    Least,

    /// <summary>The greatest value; empty for none.</summary>
    Most,
}

/// <summary>Changes of a design's named dimensions.</summary>
public static class DesignSizes
{
    /// <summary>The dimensions that every design has: its outside size.</summary>
    public static ImmutableArray<string> Outside { get; } = ["width", "depth", "height"];

    /// <summary>What is wrong with the name of a new dimension; null where it will do.</summary>
    public static Fault? CheckName(this DesignDocument document, string name)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(name);
        return DimensionName.Flaw(name) is { } flaw ? Fault.Of("name", name, flaw)
            : document.Dimensions.Any(one => one.Name == name) ? Fault.Of("name", name, "is taken: choose another name")
            : null;
    }

    /// <summary>One more dimension; its name must pass <see cref="CheckName"/>.</summary>
    public static DesignDocument AddDimension(this DesignDocument document, DesignDimension dimension)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(dimension);
        return document.CheckName(dimension.Name) is null
            ? document with
            {
                Dimensions = document.Dimensions.Add(dimension),
            }
            : document;
    }

    /// <summary>Sets a text of a dimension. A label or value that is emptied stays as it was.</summary>
    public static DesignDocument WithDimension(this DesignDocument document, string name, DimensionText which, string text)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(text);
        var said = text.Trim();
        DesignDimension Changed(DesignDimension one) =>
            (which, said.Length) switch
            {
                (DimensionText.Least, _) => one with { Least = said.Length == 0 ? null : said },
                (DimensionText.Most, _) => one with { Most = said.Length == 0 ? null : said },
                (_, 0) => one,
                (DimensionText.Label, _) => one with { Label = said },
                _ => one with { Value = said },
            };
        return document with { Dimensions = [.. document.Dimensions.Select(one => one.Name == name ? Changed(one) : one)] };
    }

    /// <summary>Takes a dimension out that is not of the outside size. Where its name is still used, working the design out says
    /// where.</summary>
    public static DesignDocument RemoveDimension(this DesignDocument document, string name)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Outside.Contains(name)
            ? document
            : document with
            {
                Dimensions = document.Dimensions.RemoveAll(one => one.Name == name),
            };
    }
}
