namespace ShopPlanner.Drawing.Shapes;

/// <summary>A colour of the drawings.</summary>
/// <param name="Tone">Its part.</param>
/// <param name="Variable">The page's CSS variable.</param>
/// <param name="Light">On paper and on a light page, <c>#RRGGBB</c>.</param>
/// <param name="Dark">On a dark page, <c>#RRGGBB</c>.</param>
public sealed record Ink(Tone Tone, string Variable, string Light, string Dark);

/// <summary>The colours: ink, a chalk line, a red pencil.</summary>
public static class Palette
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Ink> All { get; } =
    [
        new(Tone.Ink, "--ink", "#22303C", "#E8E4DA"),
        new(Tone.Faded, "--faded-ink", "#56626E", "#A9B0B5"),
        new(Tone.Hairline, "--grain", "#B9A98C", "#5D5A50"),
        new(Tone.Chalk, "--chalk", "#1F5FA8", "#7FB2EA"),
        new(Tone.Pencil, "--pencil", "#B3261E", "#F2938C"),
        new(Tone.Done, "--done", "#2F5C38", "#8FC79A"),
        new(Tone.Paper, "--paper", "#FBF9F4", "#15191D"),
    ];

    /// <summary>The colour of a part.</summary>
    public static Ink Of(Tone tone) => All.Single(ink => ink.Tone == tone);
}
