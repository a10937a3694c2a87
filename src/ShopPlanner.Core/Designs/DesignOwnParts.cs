using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Designs;

/// <summary>A text of a part that stands by itself in a design.</summary>
public enum OwnPartText
{
    /// <summary>What people call it.</summary>
    Name,

    /// <summary>Its material's role.</summary>
    Material,

    /// <summary>Along the grain: a length or arithmetic.</summary>
    Length,

    /// <summary>Across the grain; empty for a board's own width.</summary>
    Width,

    /// <summary>Direction of its length: <c>x</c>, <c>y</c> or <c>z</c>.</summary>
    Along,

    /// <summary>Direction of its thickness.</summary>
    Flat,

    /// <summary>Corners of its copies: <c>0, 0, 0; 10 in, 0, 0</c>.</summary>
    At,
}

/// <summary>Changes of the parts that a design names by themselves.</summary>
public static class DesignOwnParts
{
    private const string NoStep = "0 in";

    /// <summary>One more part, in the corner of the piece, to be put where it belongs.</summary>
    public static DesignDocument AddPart(this DesignDocument document, string name)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(name);
        if (document.Materials.IsEmpty || name.Trim().Length == 0)
            return document;
        var width = document.Materials[0].Width is null ? "4 in" : null;
        ImmutableArray<string> corner = ["0 in", "0 in", "0 in"];
        var part = new FreePart(name.Trim(), document.Materials[0].Role, "12 in", width, Axis.X, Axis.Z, [corner], "");
        return Numbered(document, document.Parts.Add(part));
    }

    /// <summary>Takes a part out. Those behind it move up, and their joints with them.</summary>
    public static DesignDocument RemovePart(this DesignDocument document, string path)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Numbered(document, document.Parts.RemoveAll(one => one.Path == path));
    }

    /// <summary>Sets a text of a part. A name that is emptied stays as it was, and so does a direction that is none.</summary>
    public static DesignDocument WithPart(this DesignDocument document, string path, OwnPartText which, string text)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(text);
        return Changed(document, path, one => Changed(one, which, text.Trim()));
    }

    /// <summary>Sets how many copies follow one another from each corner of a part; an empty text, or 1, takes the repetition
    /// away.</summary>
    public static DesignDocument WithCopies(this DesignDocument document, string path, string count)
    {
        ArgumentNullException.ThrowIfNull(count);
        var copies = count.Trim();
        return Changed(
            document,
            path,
            part => part with { Repeat = copies is "" or "1" ? null : new(copies, part.Repeat?.Step ?? [NoStep, NoStep, NoStep]) }
        );
    }

    /// <summary>Sets how far it is from one copy to the next.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Of the part; one that isn't repeated stays as it is.</param>
    /// <param name="axis">0 to the right, 1 to the back, 2 up.</param>
    /// <param name="step">A length or arithmetic; empty for nothing.</param>
    public static DesignDocument WithStep(this DesignDocument document, string path, int axis, string step)
    {
        ArgumentNullException.ThrowIfNull(step);
        var far = step.Trim() is { Length: > 0 } given ? given : NoStep;
        return Changed(
            document,
            path,
            part =>
                part.Repeat is { } repeat ? part with { Repeat = repeat with { Step = repeat.Step.SetItem(axis, far) } } : part
        );
    }

    /// <summary>Sets whether a part may rotate on its sheet.</summary>
    public static DesignDocument WithGrain(this DesignDocument document, string path, bool any) =>
        Changed(document, path, part => part with { AnyGrain = any });

    /// <summary>Adds a joint of a part with another, glued along the part's length, to be set as it is.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Of the part.</param>
    /// <param name="with">Name of the other.</param>
    public static DesignDocument AddJoint(this DesignDocument document, string path, string with) =>
        Changed(document, path, part => part with { Joints = part.Joints.Add(new(with, JointKind.Glued, part.Along, null, "")) });

    /// <summary>Changes a joint.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Of the joint.</param>
    /// <param name="change">Returns it as it is to be.</param>
    public static DesignDocument WithJoint(this DesignDocument document, string path, Func<PartJoint, PartJoint> change) =>
        Changed(
            document,
            PartOf(path),
            part => part with { Joints = [.. part.Joints.Select(one => one.Path == path ? change(one) : one)] }
        );

    /// <summary>Takes a joint away.</summary>
    public static DesignDocument RemoveJoint(this DesignDocument document, string path) =>
        Changed(document, PartOf(path), part => part with { Joints = part.Joints.RemoveAll(one => one.Path == path) });

    /// <summary>The corners of a part as one text.</summary>
    public static string Corners(FreePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return string.Join("; ", part.At.Select(corner => string.Join(", ", corner)));
    }

    // A joint's path begins with that of its part: parts.0.joints.1.
    private static string PartOf(string joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return joint.Split(".joints.")[0];
    }

    private static DesignDocument Changed(DesignDocument document, string path, Func<FreePart, FreePart> change)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Numbered(document, [.. document.Parts.Select(one => one.Path == path ? change(one) : one)]);
    }

    private static FreePart Changed(FreePart part, OwnPartText which, string text) =>
        which switch
        {
            OwnPartText.Name when text.Length > 0 => part with { Name = text },
            OwnPartText.Material => part with { Role = text },
            OwnPartText.Length => part with { Length = text },
            OwnPartText.Width => part with { Width = text.Length == 0 ? null : text },
            OwnPartText.Along when DesignReader.Directions.TryGetValue(text, out var along) => part with { Along = along },
            OwnPartText.Flat when DesignReader.Directions.TryGetValue(text, out var flat) => part with { Flat = flat },
            OwnPartText.At => part with { At = Read(text) },
            _ => part,
        };

    // Arithmetic may have commas of its own, in parentheses. A corner of fewer or more than three sizes is filled up, or cut off
    // behind the third, so that what is wrong stays in sight where it was typed.
    private static ImmutableArray<ImmutableArray<string>> Read(string text) =>
        [
            .. text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(corner => Split(corner).Concat(Enumerable.Repeat("", 3)).Take(3).ToImmutableArray())
                .DefaultIfEmpty(["", "", ""]),
        ];

    private static IEnumerable<string> Split(string corner)
    {
        var (from, depth) = (0, 0);
        for (var i = 0; i < corner.Length; i++)
        {
            depth += corner[i] switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            if (corner[i] != ',' || depth > 0)
                continue;
            yield return corner[from..i].Trim();
            from = i + 1;
        }

        yield return corner[from..].Trim();
    }

    // Parts and joints are found by their places, which move with those before them.
    private static DesignDocument Numbered(DesignDocument document, ImmutableArray<FreePart> parts) =>
        document with
        {
            Parts = [.. parts.Select((one, i) => Numbered(one, Path("parts", i)))],
        };

    private static FreePart Numbered(FreePart part, string path) =>
        part with
        {
            Path = path,
            Joints = [.. part.Joints.Select((one, i) => one with { Path = Path(path + ".joints", i) })],
        };

    private static string Path(string place, int number) => place + "." + number.ToString(CultureInfo.InvariantCulture);
}
