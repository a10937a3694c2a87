using System.Collections.Immutable;

namespace ShopPlanner.Core.Calculators;

/// <summary>Forms that belong together, under a heading.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Forms">At least one.</param>
public sealed record WorkingSubject(string Title, ImmutableArray<WorkingForm> Forms);

/// <summary>The forms by subject, for those who look for one.</summary>
public static class WorkingSubjects
{
    private static readonly (string Title, string[] Names)[] Order =
    [
        ("Sizes and amounts", ["actual-size", "board-feet", "price", "convert", "weight"]),
        ("Joints", ["mortise", "dado", "groove", "dowels"]),
        ("Doors and drawers", ["door", "hinges", "hinge-overlay", "butt-hinges", "drawer", "fronts", "slides"]),
        ("Wood movement", ["moisture", "movement", "top-fastening", "glue-up"]),
        ("Strength and stability", ["sag", "slats", "stability", "wall"]),
        ("Screws, holes and spacing", ["screws", "screw-holding", "pins", "spacing"]),
        ("Angles and curves", ["square", "miter", "taper", "arc"]),
        ("Your saw", ["kerf", "five-cuts", "parallel"]),
        ("Finishing", ["coats", "edge-band"]),
    ];

    /// <summary>All of them; a form that no subject names comes last, under a heading of its own.</summary>
    public static readonly ImmutableArray<WorkingSubject> All = Of(WorkingForms.All);

    /// <summary>The same for some forms.</summary>
    public static ImmutableArray<WorkingSubject> Of(IReadOnlyList<WorkingForm> forms)
    {
        IEnumerable<WorkingForm> Named(string[] names) => names.SelectMany(name => forms.Where(form => form.Name == name));
        var named = Order.Select(subject => new WorkingSubject(subject.Title, [.. Named(subject.Names)]));
        var rest = new WorkingSubject("More", [.. forms.Where(form => !Order.Any(subject => subject.Names.Contains(form.Name)))]);
        return [.. named.Append(rest).Where(subject => !subject.Forms.IsEmpty)];
    }
}
