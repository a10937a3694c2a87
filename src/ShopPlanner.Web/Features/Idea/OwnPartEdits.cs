using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Changes of an extra part's repetition, grain and joints.</summary>
internal static class OwnPartEdits
{
    private const string NoStep = "0 in";

    /// <summary>How many copies follow one another from each corner; an empty text, or 1, takes the repetition away.</summary>
    public static DesignDocument WithCopies(this DesignDocument document, string path, string count) =>
        document.Changed(
            path,
            part =>
                part with
                {
                    Repeat = count.Trim() is "" or "1" ? null : new(count.Trim(), part.Repeat?.Step ?? [NoStep, NoStep, NoStep]),
                }
        );

    /// <summary>How far it is from one copy to the next along an axis; an empty text is nothing.</summary>
    public static DesignDocument WithStep(this DesignDocument document, string path, int axis, string step) =>
        document.Changed(
            path,
            part =>
                part.Repeat is not { } repeat
                    ? part
                    : part with
                    {
                        Repeat = repeat with { Step = repeat.Step.SetItem(axis, step.Trim() is "" ? NoStep : step.Trim()) },
                    }
        );

    /// <summary>Whether the part may be turned on its sheet.</summary>
    public static DesignDocument WithGrain(this DesignDocument document, string path, bool any) =>
        document.Changed(path, part => part with { AnyGrain = any });

    /// <summary>One more joint, glued along the part's length, to be set as it is.</summary>
    public static DesignDocument AddJoint(this DesignDocument document, string path, string with) =>
        document.Changed(path, part => part with { Joints = part.Joints.Add(new(with, JointKind.Glued, part.Along, null, "")) });

    /// <summary>Another joint in the place of one.</summary>
    public static DesignDocument WithJoint(this DesignDocument document, string path, Func<PartJoint, PartJoint> change) =>
        document.Renumbered([
            .. document.Parts.Select(part =>
                part with
                {
                    Joints = [.. part.Joints.Select(joint => joint.Path == path ? change(joint) : joint)],
                }
            ),
        ]);

    /// <summary>Takes a joint away.</summary>
    public static DesignDocument RemoveJoint(this DesignDocument document, string path) =>
        document.Renumbered([
            .. document.Parts.Select(part => part with { Joints = part.Joints.RemoveAll(joint => joint.Path == path) }),
        ]);

    /// <summary>Takes a part out; the joints of those behind it are found at their new places.</summary>
    public static DesignDocument RemoveOwnPart(this DesignDocument document, string path) =>
        document.Renumbered(document.RemovePart(path).Parts);

    private static DesignDocument Changed(this DesignDocument document, string path, Func<FreePart, FreePart> change) =>
        document.Renumbered([.. document.Parts.Select(part => part.Path == path ? change(part) : part)]);

    // A joint is found by its place, which moves with the parts and joints before it.
    private static DesignDocument Renumbered(this DesignDocument document, ImmutableArray<FreePart> parts) =>
        document with
        {
            Parts =
            [
                .. parts.Select(
                    (part, i) =>
                        part with
                        {
                            Path = Path("parts", i),
                            Joints = [.. part.Joints.Select((joint, n) => joint with { Path = JointPath(i, n) })],
                        }
                ),
            ],
        };

    private static string JointPath(int part, int number) => Path(Path("parts", part) + ".joints", number);

    private static string Path(string place, int number) => $"{place}.{number.ToString(CultureInfo.InvariantCulture)}";
}
